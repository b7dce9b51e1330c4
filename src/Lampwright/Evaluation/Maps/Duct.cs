using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Metalwork;
using Lampwright.FitUp;
using Lampwright.Geometry;

namespace Lampwright.Evaluation.Maps;

/// <summary>The clear section of the housing that a sink stands in, as its fins see it.</summary>
/// <param name="AcrossM">Clear width across the fins, m.</param>
/// <param name="HeightM">Clear height from the wall that the sink lies on, m.</param>
internal sealed record Duct(double AcrossM, double HeightM)
{
    /// <summary>The duct of the sink; null where no part of the fan's way is placed square round it.</summary>
    public static Duct? Of(LightParts parts, IReadOnlyList<MadePart> made, FitUpResult fitUp)
    {
        if (parts.Sink is null || fitUp.Placed.FirstOrDefault(p => p.Id == parts.SinkPath) is not { } sink)
        {
            return null;
        }

        foreach (var name in (parts.Fan?.Air ?? []).Select(id => id.Split('.')[0]).Distinct(StringComparer.Ordinal))
        {
            if (
                made.FirstOrDefault(m => m.Name == name) is { } part
                && fitUp.Placed.FirstOrDefault(p => p.Id == part.Path) is { } placed
            )
            {
                // The open side is closed by a cover, as everywhere where a part houses something.
                // Between the walls counts the face, not the whole fold: lips turned outward are not in the air's way.
                var (low, high) = part.Folded.Faces[0].Nominal.Box;
                var wall = part.Folded.ThicknessM;
                var clear = new Vec3(
                    high.X - low.X - (2 * wall),
                    high.Y - low.Y - (2 * wall),
                    part.Folded.BoxMost.Z - part.Folded.BoxLeast.Z - wall
                );
                var (across, height) = (
                    Along(placed.Frame, sink.Frame.X, clear),
                    Along(placed.Frame, sink.Frame.Z, clear)
                );
                return across > 0 && height > 0 ? new(across, height) : null;
            }
        }

        return null;
    }

    // Extent of the clear box in a direction; 0 for one that is not square to it.
    private static double Along(Frame part, Vec3 direction, Vec3 clear)
    {
        ReadOnlySpan<(double Share, double Size)> sides =
        [
            (Math.Abs(part.X.Dot(direction)), clear.X),
            (Math.Abs(part.Y.Dot(direction)), clear.Y),
            (Math.Abs(part.Z.Dot(direction)), clear.Z),
        ];
        foreach (var (share, size) in sides)
        {
            if (share > 0.99)
            {
                return size;
            }
        }

        return 0;
    }
}
