using Lampwright.Steps.Ways;

namespace Lampwright.Files.Charts;

/// <summary>Where source and load of one way of dimming meet.</summary>
public static class OperatingChart
{
    private const int Points = 240;

    /// <summary>Source line, load line and their crossings; null where the circuit has no lines.</summary>
    /// <param name="way">The way.</param>
    public static Chart? Of(Way way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return Of(way.Picture, way.Name);
    }

    /// <summary>Source line, load line and their crossings; null where the circuit has no lines.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="title">What it shows, in a few words.</param>
    public static Chart? Of(OperatingPicture picture, string title)
    {
        ArgumentNullException.ThrowIfNull(picture);
        return Of(picture.Lines(Points), picture.Crossings, title);
    }

    /// <summary>Source line, load line and their crossings; null where there are no lines.</summary>
    /// <param name="lines">The source line, then the load line.</param>
    /// <param name="crossings">Where they cross.</param>
    /// <param name="title">What it shows, in a few words.</param>
    public static Chart? Of(IReadOnlyList<OperatingLine> lines, IReadOnlyList<Crossing> crossings, string title)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(crossings);
        if (lines.Count < 2 || lines.Any(l => l.VoltageV.Count < 2))
        {
            return null;
        }

        var (source, load) = (Drawn(lines[0]), Drawn(lines[1]));
        var view = OperatingView.Of(source, load, crossings);
        var (stays, leaves) = (Pins(crossings, true), Pins(crossings, false));
        return new(
            title,
            new("Voltage", "V") { Least = view.LeastV, Most = view.MostV },
            new("Current", "A") { Least = 0, Most = view.MostA },
            [
                new LineLayer(lines[0].Name, Palette.Ink, source) { MostReadouts = 24 },
                new LineLayer(lines[1].Name, Palette.Flow, load, Dashed: true) { MostReadouts = 24 },
                .. leaves.Count > 0 ? [new PinLayer("does not stay", Palette.Stop, leaves, IsOpen: true)] : Nothing,
                .. stays.Count > 0 ? [new PinLayer("stays", Palette.Hold, stays)] : Nothing,
            ]
        )
        {
            Says = Words(crossings),
        };
    }

    private static IEnumerable<ChartLayer> Nothing => [];

    /// <summary>The line, broken where it jumps: a load that is switched off under a voltage takes nothing in between.</summary>
    private static IReadOnlyList<(double X, double Y)> Drawn(OperatingLine line)
    {
        var points = new List<(double X, double Y)>(line.VoltageV.Count);
        var span = line.VoltageV[^1] - line.VoltageV[0];
        for (var i = 0; i < line.VoltageV.Count; i++)
        {
            if (
                i > 0
                && line.VoltageV[i] - line.VoltageV[i - 1] <= 1e-6 * span
                && line.CurrentA[i] != line.CurrentA[i - 1]
            )
            {
                points.Add((line.VoltageV[i], double.NaN));
            }

            points.Add((line.VoltageV[i], line.CurrentA[i]));
        }

        return points;
    }

    private static List<Pin> Pins(IReadOnlyList<Crossing> crossings, bool stable) =>
        [.. crossings.Where(c => c.Stable == stable).Select(c => new Pin(c.VoltageV, c.CurrentA, c.Words, Numbers(c)))];

    private static string Numbers(Crossing c) => $"{ChartText.Number(c.VoltageV)} V, {ChartText.Number(c.CurrentA)} A";

    private static string Words(IReadOnlyList<Crossing> crossings)
    {
        var stays = crossings.Where(c => c.Stable).ToList();
        return crossings.Count == 0 ? "The lines do not cross: there is no point at which the circuit could run."
            : stays.Count == 0 ? "No crossing is one the circuit stays at: it runs away from each."
            : stays.Count == crossings.Count && stays.Count == 1
                ? $"They cross once, and the circuit stays there: {Numbers(stays[0])}."
            : stays.Count == 1 ? $"Of {crossings.Count} crossings the circuit stays at one: {Numbers(stays[0])}."
            : $"The circuit stays at any of {stays.Count} crossings: {string.Join("; ", stays.Select(Numbers))}.";
    }
}

/// <summary>The part of voltages and currents in which source and load can be told apart.</summary>
/// <param name="LeastV">Least voltage, in volts.</param>
/// <param name="MostV">Greatest voltage, in volts.</param>
/// <param name="MostA">Greatest current, in amperes; the least is 0.</param>
internal sealed record OperatingView(double LeastV, double MostV, double MostA)
{
    /// <summary>Wide enough for every crossing and for the current the source holds; no wider, where a line runs away.</summary>
    public static OperatingView Of(
        IReadOnlyList<(double X, double Y)> source,
        IReadOnlyList<(double X, double Y)> load,
        IReadOnlyList<Crossing> crossings
    )
    {
        var highest = crossings.Select(c => c.CurrentA).Where(double.IsFinite).DefaultIfEmpty(0).Max();
        var (given, taken) = (Most(source), Most(load));
        var flat =
            highest > 0 && given > 4 * highest
                ? highest
                : Math.Max(highest, highest > 0 ? given : Math.Min(given, taken));
        var top = 1.3 * flat;
        var seen = source.Concat(load).Where(p => p.Y > 0.01 * top).Select(p => p.X);
        var points = crossings.Select(c => c.VoltageV);
        var last = source.Concat(load).Select(p => p.X).Where(double.IsFinite).DefaultIfEmpty(1).Max();
        var end = Math.Min(last, 1.06 * seen.Concat(points).Where(double.IsFinite).DefaultIfEmpty(1).Max());
        var begin = load.Where(p => p.Y > 0.01 * top).Select(p => p.X).Concat(points).DefaultIfEmpty(0).Min();
        return new(begin > 0.5 * end ? RoundDown(begin - (0.25 * (end - begin)), end) : 0, end, RoundUp(top));
    }

    private static double Most(IReadOnlyList<(double X, double Y)> line) =>
        line.Select(p => p.Y).Where(double.IsFinite).DefaultIfEmpty(0).Max();

    private static double RoundDown(double value, double against)
    {
        var step = Scale.RoundTick(against / 20);
        return Math.Max(0, Math.Floor(value / step) * step);
    }

    private static double RoundUp(double value)
    {
        var step = Scale.RoundTick(Math.Max(value, 1e-6) / 20);
        return Math.Ceiling((value / step) - 1e-9) * step;
    }
}
