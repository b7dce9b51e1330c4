using Lampwright.Evaluation;

namespace Lampwright.Web.Charts;

/// <summary>How a series is drawn.</summary>
public enum PlotKind
{
    /// <summary>A line through its points.</summary>
    Line,

    /// <summary>A bar for each category.</summary>
    Bars,

    /// <summary>A dashed line for a limit.</summary>
    Limit,

    /// <summary>Single marks.</summary>
    Marks,
}

/// <summary>One series of a chart on the page.</summary>
/// <param name="Name">Name in the legend and under the pointer.</param>
/// <param name="Ink">Class that gives it its meaning and colour: <c>light heat air metal limit measured</c>.</param>
/// <param name="Kind">How it is drawn.</param>
/// <param name="Points">Its points: x (or number of the category) and y with its band.</param>
/// <param name="Unit">Unit of y.</param>
public sealed record PlotSeries(
    string Name,
    string Ink,
    PlotKind Kind,
    IReadOnlyList<(double X, Predicted Y)> Points,
    string Unit
)
{
    /// <summary>A bar for each category.</summary>
    public static PlotSeries Bars(string name, string ink, IEnumerable<Predicted> values, string unit) =>
        new(name, ink, PlotKind.Bars, Numbered(values), unit);

    /// <summary>A line over categories or numbered places.</summary>
    public static PlotSeries Line(string name, string ink, IEnumerable<Predicted> values, string unit) =>
        new(name, ink, PlotKind.Line, Numbered(values), unit);

    /// <summary>A line through points that have no bands.</summary>
    public static PlotSeries Curve(string name, string ink, IEnumerable<double> x, IEnumerable<double> y, string unit) =>
        new(name, ink, PlotKind.Line, [.. x.Zip(y, (a, b) => (a, Predicted.Sharp(b)))], unit);

    /// <summary>One marked point.</summary>
    public static PlotSeries Mark(string name, string ink, double x, Predicted y, string unit) =>
        new(name, ink, PlotKind.Marks, [(x, y)], unit);

    /// <summary>A limit from one end of the axis to the other.</summary>
    public static PlotSeries Limit(string name, double x0, double x1, Predicted y, string unit) =>
        new(name, "limit", PlotKind.Limit, [(x0, y), (x1, y)], unit);

    private static IReadOnlyList<(double, Predicted)> Numbered(IEnumerable<Predicted> values) =>
        [.. values.Select((v, i) => ((double)i, v))];
}
