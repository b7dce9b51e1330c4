using Lampwright.Files.Packet.Fonts;

namespace Lampwright.Files.Charts;

/// <summary>How a line is drawn.</summary>
/// <param name="Tint">Colour.</param>
/// <param name="Width">Width in the unit of the drawing.</param>
/// <param name="Dashes">Lengths of dash and gap in the unit of the drawing; empty for a full line.</param>
public sealed record Stroke(Tint Tint, double Width, IReadOnlyList<double> Dashes)
{
    /// <summary>A full line.</summary>
    public Stroke(Tint tint, double width)
        : this(tint, width, []) { }
}

/// <summary>Where a text stands against its point.</summary>
public enum Anchor
{
    /// <summary>Begins at it.</summary>
    Start,

    /// <summary>Is centred on it.</summary>
    Middle,

    /// <summary>Ends at it.</summary>
    End,
}

/// <summary>How a text is set.</summary>
/// <param name="Size">Height of the em in the unit of the drawing.</param>
/// <param name="Tint">Colour.</param>
/// <param name="Anchor">Where it stands against its point, which lies on the base line.</param>
/// <param name="Weight">Weight.</param>
/// <param name="TurnDeg">Turn about its point, degrees, counter-clockwise as seen.</param>
public sealed record TextStyle(
    double Size,
    Tint Tint,
    Anchor Anchor = Anchor.Start,
    Weight Weight = Weight.Regular,
    double TurnDeg = 0
);

/// <summary>Something that can be drawn on: a page or a picture for the browser. x to the right, y down, one unit for both.</summary>
public interface IInk
{
    /// <summary>A straight line.</summary>
    void Line(double x0, double y0, double x1, double y1, Stroke stroke);

    /// <summary>A chain of straight lines, filled or not.</summary>
    /// <param name="points">Its corners.</param>
    /// <param name="closed">Whether the last joins the first.</param>
    /// <param name="stroke">How it is drawn; null for none.</param>
    /// <param name="fill">What it is filled with; null for none.</param>
    /// <param name="opacity">Opacity of the fill, 0 to 1.</param>
    void Path(
        IReadOnlyList<(double X, double Y)> points,
        bool closed,
        Stroke? stroke,
        Tint? fill = null,
        double opacity = 1
    );

    /// <summary>A circle.</summary>
    void Circle(double x, double y, double radius, Stroke? stroke, Tint? fill = null);

    /// <summary>A line of text whose base line begins, is centred or ends at the point.</summary>
    void Text(string text, double x, double y, TextStyle style);

    /// <summary>An area that tells its number when pointed at; a page of paper leaves it out.</summary>
    void Readout(double x, double y, double width, double height, Readout readout);
}

/// <summary>What a place of a chart tells when it is pointed at.</summary>
/// <param name="Series">Name of the series.</param>
/// <param name="X">Place on the first axis, as text.</param>
/// <param name="Text">The number with its unit and band, as text.</param>
/// <param name="Value">The number.</param>
/// <param name="Low">Lower end of its band; absent without one.</param>
/// <param name="High">Upper end of its band; absent without one.</param>
public sealed record Readout(string Series, string X, string Text, double Value, double? Low, double? High);
