using Lampwright.Geometry;

namespace Lampwright.Files.Drawings;

/// <summary>Collects items in paper millimetres with y up, keeps the box round them, and turns all into a finished drawing.</summary>
internal sealed class DrawingBuilder
{
    private readonly List<DrawingItem> items = [];
    private double x0 = double.PositiveInfinity;
    private double y0 = double.PositiveInfinity;
    private double x1 = double.NegativeInfinity;
    private double y1 = double.NegativeInfinity;

    /// <summary>Places that are taken, for labels that look for room.</summary>
    public Crowd Crowd { get; } = new();

    /// <summary>True once a punch mark is drawn; at small scales there is no room for one.</summary>
    public bool HasMarks => items.Exists(i => i is DrawnPath { Line: LineKind.Mark });

    /// <summary>Lowest point so far.</summary>
    public double Bottom => y0;

    public double Left => x0;

    public double Right => x1;

    public double Top => y1;

    public void Line(string id, LineKind kind, Vec2 a, Vec2 b)
    {
        Take(a);
        Take(b);
        items.Add(new DrawnPath(id, kind, a, [new(b)], Closed: false));
    }

    public void Chain(string id, LineKind kind, params ReadOnlySpan<Vec2> points)
    {
        var steps = new List<DrawnStep>(points.Length);
        foreach (var p in points)
        {
            Take(p);
            steps.Add(new(p));
        }

        items.Add(new DrawnPath(id, kind, points[0], steps.Skip(1).ToArray(), Closed: false));
    }

    /// <summary>An outline given on paper with y up.</summary>
    public void Outline(string id, LineKind kind, Outline outline)
    {
        var (least, most) = outline.Box;
        Take(least);
        Take(most);
        var steps = new List<DrawnStep>(outline.Corners.Count);
        for (var i = 0; i < outline.Corners.Count; i++)
        {
            var to = outline.Corners[(i + 1) % outline.Corners.Count].Point;
            var bulge = outline.Corners[i].Bulge;
            if (bulge == 0)
            {
                steps.Add(new(to));
                continue;
            }

            var (centre, radius) = outline.Arc(i);
            var from = outline.Corners[i].Point - centre;
            steps.Add(new(to, centre, radius, Math.Atan2(from.Y, from.X), 4 * Math.Atan(bulge)));
        }

        items.Add(new DrawnPath(id, kind, outline.Corners[0].Point, steps, Closed: true));
    }

    public void Circle(string id, LineKind kind, Vec2 centre, double radius)
    {
        Take(centre - new Vec2(radius, radius));
        Take(centre + new Vec2(radius, radius));
        items.Add(new DrawnCircle(id, kind, centre, radius));
    }

    /// <summary>An arrow head, three times as long as it is wide.</summary>
    public void Arrow(Vec2 tip, Vec2 direction)
    {
        var back = tip - (direction.Unit * 2.6);
        var side = direction.Unit.Left * 0.43;
        items.Add(
            new DrawnPath(
                "",
                LineKind.Dimension,
                tip,
                [new(back + side), new(back - side), new(tip)],
                Closed: true,
                Filled: true
            )
        );
    }

    /// <summary>A filled triangle.</summary>
    public void Triangle(string id, LineKind kind, Vec2 a, Vec2 b, Vec2 tip)
    {
        Take(tip);
        items.Add(new DrawnPath(id, kind, a, [new(b), new(tip), new(a)], Closed: true, Filled: true));
    }

    /// <summary>A text; the angle is counter-clockwise, as y is up here.</summary>
    public TextBox Text(
        string id,
        string text,
        Vec2 at,
        double size,
        TextRole role,
        TextAnchor anchor = TextAnchor.Start,
        double angle = 0,
        LineKind? line = null
    )
    {
        var box = TextBox.Of(text, at, size, anchor, angle);
        foreach (var p in box.Corners)
        {
            Take(p);
        }

        Crowd.Take(box);
        items.Add(new DrawnText(id, text, at, size, angle, anchor, role, line));
        return box;
    }

    /// <summary>The drawing, with a margin round everything and y turned down.</summary>
    public Drawing Finish(string title, double scale, double margin, IReadOnlyList<HoleGroup> groups)
    {
        var zero = new Vec2(x0 - margin, y1 + margin);
        Vec2 Down(Vec2 p) => new(p.X - zero.X, zero.Y - p.Y);
        var turned = items.Select(item =>
            item switch
            {
                DrawnPath p => p with
                {
                    Start = Down(p.Start),
                    Steps =
                    [
                        .. p.Steps.Select(s =>
                            s.Radius == 0
                                ? new DrawnStep(Down(s.To))
                                : new DrawnStep(Down(s.To), Down(s.Centre), s.Radius, -s.StartRad, -s.SweepRad)
                        ),
                    ],
                },
                DrawnCircle c => c with { Centre = Down(c.Centre) },
                DrawnText t => (DrawingItem)(t with { At = Down(t.At), AngleRad = -t.AngleRad }),
                _ => throw new InvalidOperationException("An item of a drawing that nobody knows."),
            }
        );
        return new(title, x1 - x0 + (2 * margin), y1 - y0 + (2 * margin), scale, Down(default), [.. turned], groups);
    }

    private void Take(Vec2 p)
    {
        x0 = Math.Min(x0, p.X);
        y0 = Math.Min(y0, p.Y);
        x1 = Math.Max(x1, p.X);
        y1 = Math.Max(y1, p.Y);
    }
}
