using Lampwright.Design;
using Lampwright.Findings;
using Lampwright.Readings;

namespace Lampwright.Evaluation;

/// <summary>Design in, everything known about it out. The one way to evaluate a design.</summary>
public static class Evaluator
{
    /// <summary>Count of draws behind the bands.</summary>
    public static int DefaultDraws => 512;

    /// <summary>Lets every station look at the design's nominal values; nominal result and bands come from what is returned.</summary>
    /// <param name="design">The design.</param>
    /// <param name="readings">Readings taken on the real light.</param>
    /// <param name="notes">What reading the file already had to say, shown with the other findings.</param>
    public static PreparedEvaluation Prepare(
        LightDesign design,
        IReadOnlyList<Reading>? readings = null,
        IReadOnlyList<Finding>? notes = null
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        return new PreparedEvaluation(design, readings ?? [], notes ?? []);
    }

    /// <summary>Everything known about a design, with bands.</summary>
    /// <param name="design">The design.</param>
    /// <param name="draws">Count of draws; 0 for the nominal result alone.</param>
    /// <param name="cancel">Stops the work.</param>
    public static LightEvaluation Evaluate(LightDesign design, int? draws = null, CancellationToken cancel = default)
    {
        var prepared = Prepare(design);
        var count = draws ?? DefaultDraws;
        return count > 0 ? prepared.WithBands(count, cancel) : prepared.Nominal();
    }
}
