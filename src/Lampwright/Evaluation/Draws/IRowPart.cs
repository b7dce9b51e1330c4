namespace Lampwright.Evaluation.Draws;

/// <summary>A part of the evaluation that fills its places of a row, after the parts before it have filled theirs.</summary>
internal interface IRowPart
{
    /// <summary>Computes its numbers of one draw.</summary>
    /// <param name="x">Value of each variable.</param>
    /// <param name="y">The row; numbers of earlier parts may be read.</param>
    /// <returns>Largest residual of anything that was iterated, in its own unit; 0 where nothing was.</returns>
    double Row(ReadOnlySpan<double> x, Span<double> y);
}
