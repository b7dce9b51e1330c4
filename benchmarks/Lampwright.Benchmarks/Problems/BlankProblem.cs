using System.Diagnostics;
using System.Text.Json;
using Lampwright.Geometry;
using Lampwright.Metal.Fields;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using NetTopologySuite.Operation.Union;

namespace Lampwright.Benchmarks.Problems;

/// <summary><c>blank</c>: faces laid together, holes outside, near an edge and near each other, beside NetTopologySuite.</summary>
/// <remarks>
/// The file has <c>faces</c> (rings of corners), <c>holes</c> (x, y, radius), <c>min_web</c>, <c>min_edge</c>. The peer is used as its guide shows: unary
/// union, a prepared polygon for what lies inside, distance to the boundary, an STR tree for the pairs; the faster of boundary by geometry and by
/// indexed distance was kept. Its answer must be ours, else the run ends.
/// </remarks>
internal sealed class BlankProblem : Problem
{
    private sealed record Peer(double Area, int Outside, int NearEdge, int Webs);

    /// <inheritdoc/>
    public override string Name => "blank";

    /// <inheritdoc/>
    public override Prepared Load(string file)
    {
        using var text = JsonDocument.Parse(File.ReadAllText(file));
        var root = text.RootElement;
        try
        {
            Vec2[][] faces =
            [
                .. root.GetProperty("faces")
                    .EnumerateArray()
                    .Select(f =>
                        f.EnumerateArray().Select(p => new Vec2(p[0].GetDouble(), p[1].GetDouble())).ToArray()
                    ),
            ];
            double[] Column(int at) => [.. root.GetProperty("holes").EnumerateArray().Select(h => h[at].GetDouble())];
            var (x, y, r) = (Column(0), Column(1), Column(2));
            var (edge, web) = (root.GetProperty("min_edge").GetDouble(), root.GetProperty("min_web").GetDouble());
            return new(() => BlankField.Of(faces, x, y, r, edge, web), Answer)
            {
                PeerMs = () => PeerMs(faces, x, y, r, edge, web),
            };
        }
        catch (Exception e)
            when (e
                    is KeyNotFoundException
                        or InvalidOperationException
                        or IndexOutOfRangeException
                        or ArgumentException
            )
        {
            throw new BadProblemException($"{file} states no blank: {e.Message}");
        }
    }

    private static object Answer(object solution)
    {
        var field = (BlankField)solution;
        return new
        {
            UnionAreaMm2 = Math.Round(field.Area, 6),
            Segments = field.Rims.Sum(r => r.Length),
            Outside = field.Outside.Count,
            NearEdge = field.NearEdge.Count,
            ThinWebs = field.ThinWebs.Count,
        };
    }

    private static bool _warm;

    private static double PeerMs(Vec2[][] faces, double[] x, double[] y, double[] r, double edge, double web)
    {
        // The peer gets its compiled form before it is timed, as we do.
        for (var i = 0; i < 40 && !_warm; i++)
        {
            GC.KeepAlive(Solve(faces, x, y, r, edge, web));
        }

        _warm = true;
        var start = Stopwatch.GetTimestamp();
        var theirs = Solve(faces, x, y, r, edge, web);
        var ms = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        var ours = BlankField.Of(faces, x, y, r, edge, web);
        var same =
            Math.Abs(theirs.Area - ours.Area) <= 1e-9 * ours.Area
            && (theirs.Outside, theirs.NearEdge, theirs.Webs)
                == (ours.Outside.Count, ours.NearEdge.Count, ours.ThinWebs.Count);
        return same ? ms : throw new BadProblemException($"the peer answers otherwise: {theirs}");
    }

    private static Peer Solve(Vec2[][] faces, double[] x, double[] y, double[] r, double edge, double web)
    {
        var factory = new GeometryFactory();
        var polygons = faces.Select(f =>
            (NetTopologySuite.Geometries.Geometry)
                factory.CreatePolygon([.. f.Append(f[0]).Select(p => new Coordinate(p.X, p.Y))])
        );
        var union = UnaryUnionOp.Union([.. polygons]);
        var prepared = NetTopologySuite.Geometries.Prepared.PreparedGeometryFactory.Prepare(union);
        var boundary = new NetTopologySuite.Operation.Distance.IndexedFacetDistance(union.Boundary);
        var (outside, near, webs) = (0, 0, 0);
        var tree = new STRtree<int>();
        for (var i = 0; i < x.Length; i++)
        {
            var point = factory.CreatePoint(new Coordinate(x[i], y[i]));
            if (!prepared.Contains(point))
            {
                outside++;
            }
            else if (boundary.Distance(point) - r[i] < edge * (1 - 1e-9))
            {
                near++;
            }

            tree.Insert(new(x[i] - r[i], x[i] + r[i], y[i] - r[i], y[i] + r[i]), i);
        }

        for (var i = 0; i < x.Length; i++)
        {
            var box = new Envelope(x[i] - r[i] - web, x[i] + r[i] + web, y[i] - r[i] - web, y[i] + r[i] + web);
            foreach (var j in tree.Query(box))
            {
                if (
                    j > i
                    && Math.Sqrt(((x[i] - x[j]) * (x[i] - x[j])) + ((y[i] - y[j]) * (y[i] - y[j]))) - r[i] - r[j]
                        < web * (1 - 1e-9)
                )
                {
                    webs++;
                }
            }
        }

        return new(union.Area, outside, near, webs);
    }
}
