using Lampwright.Design;

namespace Lampwright.Evaluation;

/// <summary>Design in, everything known about it out. The one way to evaluate a design.</summary>
public static class Evaluator
{
    /// <summary>Count of draws behind the bands.</summary>
    public static int DefaultDraws => 512;

    /// <summary>Lets every station look at the design's nominal values; nominal result and bands come from what is returned.</summary>
    /// <param name="design">The design.</param>
    public static PreparedEvaluation Prepare(LightDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new PreparedEvaluation(design);
    }

    /// <summary>Everything known about a design, with bands.</summary>
    /// <param name="design">The design.</param>
    /// <param name="draws">Count of draws; 0 for the nominal result alone.</param>
    /// <param name="cancel">Stops the work.</param>
    public static LightEvaluation Evaluate(LightDesign design, int? draws = null, CancellationToken cancel = default)
    {
        var prepared = Prepare(design);
        return (draws ?? DefaultDraws) > 0 ? prepared.WithBands(draws ?? DefaultDraws, cancel) : prepared.Nominal();
    }
}
