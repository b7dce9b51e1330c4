using Lampwright.Geometry;
using Lampwright.Geometry.Fields;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;

namespace Lampwright.Tests.Geometry;

/// <summary>The kernel for many holes beside an independent library and beside trying all, on random fields with a fixed start.</summary>
public sealed class FieldTests
{
    private static readonly GeometryFactory Factory = new();

    public static TheoryData<int> Rounds => [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Rounds))]
    public void Faces_laid_together_have_the_area_length_and_corners_that_others_find(int round)
    {
        var random = new Random(round);
        var faces = round % 3 == 0 ? Tiles(random) : Loose(random, round % 3 == 1);
        var rims = FaceUnion.Of(faces);
        var theirs = UnaryUnionOp.Union([.. faces.Select(Polygon)]);
        Assert.Equal(theirs.Area, rims.Sum(r => FaceUnion.SignedArea(r)), 1e-7 * theirs.Area);
        Assert.Equal(theirs.Length, rims.Sum(Length), 1e-7 * theirs.Length);
        Assert.All(rims, r => Assert.Null(Polygon2.SelfCrossing(r)));
    }

    [Theory]
    [MemberData(nameof(Rounds))]
    public void What_lies_inside_and_how_far_an_edge_is_agrees_with_trying_all(int round)
    {
        var random = new Random(1000 + round);
        var rims = FaceUnion.Of(round % 2 == 0 ? Tiles(random) : Loose(random, true));
        List<Segment2> pieces = [.. rims.SelectMany(r => r.Select((p, i) => Segment2.Of(p, r[(i + 1) % r.Length])))];
        var grid = new RimGrid(pieces, round % 5 == 0 ? 1 : 2000);
        var near = new List<int>();
        for (var i = 0; i < 500; i++)
        {
            var (x, y) = ((random.NextDouble() * 14) - 2, (random.NextDouble() * 14) - 2);
            var inside = rims.Count(r => Polygon2.Contains(r, new(x, y))) % 2 == 1;
            Assert.Equal(inside, grid.Contains(x, y));
            var within = random.NextDouble();
            var least = pieces.Min(p => p.From(new(x, y)));
            Assert.Equal(least < within ? least : double.PositiveInfinity, grid.Distance(x, y, within), 1e-12);
            grid.Near(new(x - within, y - within), new(x + within, y + within), near);
            Assert.Equal(near.Count, near.Distinct().Count());
            for (var k = 0; k < pieces.Count; k++)
            {
                Assert.True(pieces[k].From(new(x, y)) >= within || near.Contains(k));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Rounds))]
    public void Pairs_of_discs_are_those_found_by_trying_all(int round)
    {
        var random = new Random(2000 + round);
        var n = random.Next(2, 400);
        var (x, y, r) = (new double[n], new double[n], new double[n]);
        var stretch = round % 4 == 0 ? 1000 : 1;
        for (var i = 0; i < n; i++)
        {
            (x[i], y[i]) = (random.NextDouble() * 100 * stretch, random.NextDouble() * 100);
            r[i] = round % 3 == 0 ? 1.5 : Math.Exp((random.NextDouble() * 6) - 4);
        }

        if (round % 7 == 0)
        {
            Array.Clear(r);
        }

        var within = random.NextDouble() * 3;
        var found = DiscGrid.Near(x, y, r, within).Select(p => (p.First, p.Second)).Order().ToList();
        var all = new List<(int, int)>();
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n; j++)
            {
                var near = r[i] + r[j] + within;
                if (((x[i] - x[j]) * (x[i] - x[j])) + ((y[i] - y[j]) * (y[i] - y[j])) < near * near)
                {
                    all.Add((i, j));
                }
            }
        }

        Assert.Equal(all, found);
    }

    [Fact]
    public void Faces_that_touch_in_a_corner_keep_each_to_their_own_rim()
    {
        var rims = FaceUnion.Of([Box(0, 0, 1, 1), Box(1, 1, 2, 2)]);
        Assert.Equal(2, rims.Count);
        Assert.All(rims, r => Assert.Equal(1, FaceUnion.SignedArea(r), 12));
    }

    [Fact]
    public void A_frame_of_four_faces_has_an_outer_rim_and_an_opening()
    {
        var rims = FaceUnion.Of([Box(0, 0, 10, 1), Box(0, 9, 10, 10), Box(0, 1, 1, 9), Box(9, 1, 10, 9)]);
        Assert.Equal([-64, 100], rims.Select(r => FaceUnion.SignedArea(r)).Order().Select(a => Math.Round(a, 9)));
        Assert.All(rims, r => Assert.Equal(4, r.Length));
    }

    [Fact]
    public void Nothing_makes_nothing()
    {
        Assert.Empty(FaceUnion.Of([]));
        Assert.Empty(DiscGrid.Near([], [], [], 1));
        Assert.False(new RimGrid([], 10).Contains(0, 0));
    }

    /// <summary>A sheet cut into strips and those into faces, some left out: they adjoin along pieces of their edges.</summary>
    private static List<Vec2[]> Tiles(Random random)
    {
        var faces = new List<Vec2[]>();
        for (var y = 0.0; y < 10; )
        {
            var top = Math.Min(10, y + 0.3 + random.NextDouble());
            for (var x = 0.0; x < 10; )
            {
                var right = Math.Min(10, x + 0.3 + random.NextDouble());
                if (random.Next(4) > 0)
                {
                    var box = Box(x, y, right, top);
                    faces.Add(random.Next(2) == 0 ? box : [.. box.Reverse()]);
                }

                x = right;
            }

            y = top;
        }

        return faces;
    }

    /// <summary>Faces over each other, turned or not.</summary>
    private static List<Vec2[]> Loose(Random random, bool turned)
    {
        var faces = new List<Vec2[]>();
        for (var i = 0; i < 25; i++)
        {
            var at = new Vec2(random.NextDouble() * 10, random.NextDouble() * 10);
            var angle = turned ? random.NextDouble() * 6 : 0;
            var box = Box(0, 0, 0.5 + (2 * random.NextDouble()), 0.5 + (2 * random.NextDouble()));
            faces.Add([.. box.Select(p => at + p.Turned(angle))]);
        }

        return faces;
    }

    private static Vec2[] Box(double x0, double y0, double x1, double y1) =>
        [new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1)];

    private static double Length(Vec2[] rim) => rim.Select((p, i) => (rim[(i + 1) % rim.Length] - p).Length).Sum();

    private static NetTopologySuite.Geometries.Geometry Polygon(Vec2[] face) =>
        Factory.CreatePolygon([.. face.Append(face[0]).Select(p => new Coordinate(p.X, p.Y))]);
}
