using Lampwright.Design;
using Lampwright.Geometry;

namespace Lampwright.Evaluation.Sections;

/// <summary>A sink as boxes in its own frame: what stands on its base, each with the node that has its temperature.</summary>
/// <remarks>
/// Pins are drawn as square bars of their diameter. Of a stack it is not said how far its pipes reach over the base: it stands on it, as fit-up takes it, with
/// its pipes spread evenly.
/// </remarks>
internal static class SinkSolids
{
    /// <summary>The base; null where its sizes are not given.</summary>
    public static (Vec3 At, Vec3 Size)? Base(Sink sink) =>
        sink is { Across.Nominal: > 0 and var across, Along.Nominal: > 0 and var along }
            ? (default(Vec3), new Vec3(across, along, Math.Max(sink.BaseThickness?.Nominal ?? 0, 1e-3)))
            : null;

    /// <summary>Fins, pins, plates and pipes; empty for a plain plate or where only a resistance is known.</summary>
    public static IReadOnlyList<(Vec3 At, Vec3 Size)> Standing(Sink sink)
    {
        if (Base(sink) is not { } plate)
        {
            return [];
        }

        var z = plate.Size.Z;
        if (sink.Stack is { } stack)
        {
            return [.. Stack(sink, stack, plate.Size)];
        }

        if (sink.Pins is { } pins)
        {
            var (d, h) = (pins.Diameter.Nominal, pins.Height.Nominal);
            return
            [
                .. from i in Enumerable.Range(0, pins.Across)
                from j in Enumerable.Range(0, pins.Along)
                select (
                    new Vec3(Even(i, pins.Across, d, plate.Size.X), Even(j, pins.Along, d, plate.Size.Y), z),
                    new Vec3(d, d, h)
                ),
            ];
        }

        return
            sink
                is {
                    FinCount: > 0 and var count,
                    FinHeight.Nominal: > 0 and var high,
                    FinThickness.Nominal: > 0 and var thick
                }
            ?
            [
                .. Enumerable
                    .Range(0, count)
                    .Select(i =>
                        (new Vec3(Even(i, count, thick, plate.Size.X), 0, z), new Vec3(thick, plate.Size.Y, high))
                    ),
            ]
            : [];
    }

    private static IEnumerable<(Vec3 At, Vec3 Size)> Stack(Sink sink, SinkStack stack, Vec3 plate)
    {
        var pitch = stack.Thickness.Nominal + stack.Gap.Nominal;
        var (x, y) = ((plate.X - stack.Across.Nominal) / 2, (plate.Y - stack.Along.Nominal) / 2);
        var top = plate.Z + ((stack.Count - 1) * pitch) + stack.Thickness.Nominal;
        for (var i = 0; i < stack.Count; i++)
        {
            yield return (
                new(x, y, plate.Z + (i * pitch)),
                new(stack.Across.Nominal, stack.Along.Nominal, stack.Thickness.Nominal)
            );
        }

        if (sink.Pipes is not { Count: > 0 } pipes)
        {
            yield break;
        }

        var (d, isWide) = (pipes.Diameter.Nominal, stack.Across.Nominal >= stack.Along.Nominal);
        var length = isWide ? stack.Across.Nominal : stack.Along.Nominal;
        for (var i = 0; i < pipes.Count; i++)
        {
            var at = (length * (i + 0.5) / pipes.Count) - (d / 2);
            yield return (
                isWide ? new(x + at, (plate.Y - d) / 2, plate.Z) : new((plate.X - d) / 2, y + at, plate.Z),
                new(d, d, top - plate.Z)
            );
        }
    }

    private static double Even(int i, int count, double size, double over) =>
        count > 1 ? i * (over - size) / (count - 1) : (over - size) / 2;
}
