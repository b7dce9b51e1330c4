using System.Globalization;
using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>One hole in the plane of its flat.</summary>
internal sealed record PlacedHole(HoleSpec Spec, string Member, Panel Panel, Vec2 Centre, Outline Outline)
{
    public double DiameterM => Spec.Shape.DiameterM;
}

/// <summary>Places holes and the members of their patterns; cost in proportion to their number.</summary>
internal static class HolePlaces
{
    /// <summary>All holes of a part; a hole that cannot be placed is left out with a finding.</summary>
    public static List<PlacedHole> Of(PartSpec spec, List<Panel> panels, List<Finding> findings)
    {
        var placed = new List<PlacedHole>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        var byId = panels.ToDictionary(p => p.Id, StringComparer.Ordinal);
        foreach (var hole in spec.Holes)
        {
            var path = $"part.{spec.Name}.hole.{hole.Id}";
            var panel = byId.GetValueOrDefault(hole.On);
            if (panel is null || !ids.Add(hole.Id))
            {
                findings.Add(
                    MetalRules.HoleOutside.At(
                        path + ".on",
                        panel is null
                            ? $"Hole {hole.Id} is on {hole.On}, but the part has only {string.Join(", ", panels.Select(p => p.Id))}."
                            : $"There are two holes called {hole.Id}."
                    )
                );
                continue;
            }

            var turned = new Placement2(default, new Vec2(1, 0).Turned(hole.RotationRad)).Out(hole.Shape.Outline);
            var count = Count(hole, turned);
            if (!(count + placed.Count <= spec.Limits.MostHoles))
            {
                findings.Add(
                    MetalRules.TooManyHoles.At(
                        path,
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"Hole {hole.Id} makes {count:0} holes; a part is computed with at most {spec.Limits.MostHoles}."
                        ),
                        string.Create(CultureInfo.InvariantCulture, $"{count:0}"),
                        string.Create(CultureInfo.InvariantCulture, $"{spec.Limits.MostHoles}")
                    )
                );
                if (hole.Pattern is null)
                {
                    // Single holes by the hundred thousand are told once.
                    break;
                }

                continue;
            }

            var zero = new Vec2(
                (hole.AnchorX ?? hole.Anchor) == HoleAnchor.Centre ? panel.Centre.X : 0,
                (hole.AnchorY ?? hole.Anchor) == HoleAnchor.Centre ? panel.Centre.Y : 0
            );
            var middle = hole.Shape.Middle.Turned(hole.RotationRad);
            var place = new Placement2(zero + hole.At, new Vec2(1, 0).Turned(hole.PatternRotationRad));
            foreach (var (member, at, turn) in Members(hole, turned))
            {
                var own = place.Then(new Placement2(at, new Vec2(1, 0).Turned(turn)));
                placed.Add(new(hole, member, panel, own.Out(middle), own.Out(turned)));
            }
        }

        return placed;
    }

    /// <summary>How many members a hole has, as a real number so that absurd patterns do not overflow.</summary>
    private static double Count(HoleSpec hole, Outline turned)
    {
        if (hole.Pattern is not { } pattern)
        {
            return 1;
        }

        return pattern.Kind switch
        {
            HolePatternKind.Grid => Math.Max(0.0, pattern.Count.Columns) * Math.Max(0.0, pattern.Count.Rows),
            HolePatternKind.Ring or HolePatternKind.Line => Math.Max(0.0, pattern.Count.Columns),
            HolePatternKind.Points => pattern.PlacesM.Count,
            _ => FieldRows(pattern, turned) is var (columns, rows, _, _) ? Math.Max(0, columns) * Math.Max(0, rows) : 0,
        };
    }

    /// <summary>Columns and rows of a field, the height of a row, and whether shifted rows are one hole shorter.</summary>
    private static (double Columns, double Rows, double RowPitch, bool Shorter) FieldRows(
        HolePattern pattern,
        Outline turned
    )
    {
        var (least, most) = turned.Box;
        var (w, h) = (pattern.Within.X - (most.X - least.X), pattern.Within.Y - (most.Y - least.Y));
        if (w < -1e-9 || h < -1e-9)
        {
            return (0, 0, 1, false);
        }

        var pitch = pattern.PitchM.X;
        var staggered = pattern.Kind == HolePatternKind.StaggeredField;
        var rowPitch = staggered ? pitch * Math.Sqrt(3) / 2 : pitch;
        var columns = Math.Floor((w + 1e-9) / pitch) + 1;
        var rows = Math.Floor((h + 1e-9) / rowPitch) + 1;
        return (columns, rows, rowPitch, staggered && w - ((columns - 1) * pitch) < (pitch / 2) - 1e-9);
    }

    private static IEnumerable<(string Member, Vec2 At, double Turn)> Members(HoleSpec hole, Outline turned)
    {
        if (hole.Pattern is not { } pattern)
        {
            yield return ("", default, 0);
            yield break;
        }

        switch (pattern.Kind)
        {
            case HolePatternKind.Grid:
                var (nx, ny) = pattern.Count;
                for (var j = 0; j < ny; j++)
                {
                    for (var i = 0; i < nx; i++)
                    {
                        yield return (
                            Member(i, j),
                            new((i - ((nx - 1) / 2.0)) * pattern.PitchM.X, (j - ((ny - 1) / 2.0)) * pattern.PitchM.Y),
                            0
                        );
                    }
                }

                break;
            case HolePatternKind.Line:
                for (var i = 0; i < pattern.Count.Columns; i++)
                {
                    var x = (i - ((pattern.Count.Columns - 1) / 2.0)) * pattern.PitchM.X;
                    yield return (Member(i), new(x, 0), 0);
                }

                break;
            case HolePatternKind.Points:
                for (var i = 0; i < pattern.PlacesM.Count; i++)
                {
                    yield return (Member(i), pattern.PlacesM[i], 0);
                }

                break;
            case HolePatternKind.Ring:
                for (var i = 0; i < pattern.Count.Columns; i++)
                {
                    var turn = pattern.StartAngleRad + (2 * Math.PI * i / pattern.Count.Columns);
                    yield return (Member(i), new Vec2(pattern.RingDiameterM / 2, 0).Turned(turn), turn);
                }

                break;
            default:
                var (columns, rows, rowPitch, shorter) = FieldRows(pattern, turned);
                var pitch = pattern.PitchM.X;

                // The holes fill the field by their boxes, wherever the zero of an outline lies.
                var zero = hole.Shape.Middle.Turned(hole.RotationRad);
                for (var j = 0; j < rows; j++)
                {
                    var shifted = pattern.Kind == HolePatternKind.StaggeredField;
                    var odd = shifted && j % 2 == 1;
                    var n = odd && shorter ? columns - 1 : columns;
                    var shift = !shifted || shorter ? 0 : (odd ? 1 : -1) * pitch / 4;
                    for (var i = 0; i < n; i++)
                    {
                        yield return (
                            Member(i, j),
                            new Vec2(((i - ((n - 1) / 2)) * pitch) + shift, (j - ((rows - 1) / 2)) * rowPitch) - zero,
                            0
                        );
                    }
                }

                break;
        }
    }

    private static string Member(int i) => string.Create(CultureInfo.InvariantCulture, $"[{i + 1}]");

    private static string Member(int i, int j) => string.Create(CultureInfo.InvariantCulture, $"[{i + 1},{j + 1}]");
}
