namespace Lampwright.Evaluation.Answers;

/// <summary>Answer of the station readings.</summary>
/// <param name="Rows">Each reading beside its prediction.</param>
/// <param name="Takeovers">What the readings could correct in the file.</param>
public sealed record ReadingsAnswer(IReadOnlyList<ReadingRow> Rows, IReadOnlyList<Takeover> Takeovers);

/// <summary>One reading.</summary>
/// <param name="Line">Line in the readings file.</param>
/// <param name="What">What was measured: <c>current</c>, <c>voltage</c>, <c>lux</c>, <c>temperature</c> …</param>
/// <param name="Switches">Switch position.</param>
/// <param name="Place">Where, for temperatures: <c>sink</c>, <c>driver</c>, <c>front</c> …; empty otherwise.</param>
/// <param name="Unit">Unit of the numbers.</param>
/// <param name="Measured">What was read, after the meter's factor.</param>
/// <param name="Predicted">What was predicted; absent where nothing is predicted for it.</param>
/// <param name="Difference">Measured over predicted less 1; absent where nothing is predicted.</param>
/// <param name="InBands">Distance from the nominal prediction in half-widths of the band on that side; absent where nothing is predicted.</param>
public sealed record ReadingRow(
    int Line,
    string What,
    string Switches,
    string Place,
    string Unit,
    double Measured,
    Predicted? Predicted,
    double? Difference,
    double? InBands
);

/// <summary>A value of the file that the readings could replace.</summary>
/// <param name="Path">Path in the design file.</param>
/// <param name="Label">What it is, in words.</param>
/// <param name="Text">Text that would be written, with unit and spread.</param>
/// <param name="Because">From which readings.</param>
public sealed record Takeover(string Path, string Label, string Text, string Because);
