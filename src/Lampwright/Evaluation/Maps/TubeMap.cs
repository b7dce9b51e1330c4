using Lampwright.Design;
using Lampwright.Metal;
using Lampwright.Quantities;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the station metal of tubes.</summary>
internal static class TubeMap
{
    /// <summary>The stock that a tube is cut from, as a sheet rolled round: wall, material and inside corner radius.</summary>
    public static Sheet Stock(Part part, Tube tube)
    {
        var (wall, path) = (tube.Wall, $"part.{part.Name}.tube.corner");
        var (least, most) = TubeCorner.Range(wall.Nominal);
        var corner = tube.Corner ?? new Value((least + most) / 2, (most - least) / 2, Origin.Default, path);
        return new(Name(tube))
        {
            Material = tube.Material,
            Thickness = wall,
            Radius = corner with { Nominal = Math.Max(0, corner.Nominal - wall.Nominal) },
        };
    }

    /// <summary>Its size, cuts and nothing else.</summary>
    public static TubeSpec Of(Tube tube) =>
        new(tube.Size.Width.Nominal, tube.Size.Height.Nominal, tube.Length.Nominal)
        {
            Start = Cut(tube.Start),
            End = Cut(tube.End),
        };

    private static TubeCut Cut(TubeEnd? end) =>
        end is null ? TubeCut.Square : new(end.Angle.Nominal, end.IsOnTop ? TubeSlant.Top : TubeSlant.Face);

    private static string Name(Tube tube) =>
        FormattableString.Invariant(
            $"tube {tube.Size.Width.Nominal * 1000:0.##} × {tube.Size.Height.Nominal * 1000:0.##} × {tube.Wall.Nominal * 1000:0.##}"
        );
}
