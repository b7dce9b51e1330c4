namespace Lampwright.Heat.Grid;

/// <summary>Why a grid gave no answer.</summary>
public enum GridTrouble
{
    /// <summary>The iteration did not come to rest: HEA018.</summary>
    NotConverged,

    /// <summary>The cell asked for makes more cells than are computed: HEA019.</summary>
    TooManyCells,

    /// <summary>The problem has no answer as it is stated: HEA020.</summary>
    IllStated,
}

/// <summary>A grid that gave no answer, and where it stood. No temperature is told: the last guess is not a value.</summary>
/// <param name="Trouble">What went wrong.</param>
/// <param name="Reason">What went wrong, as a sentence.</param>
/// <param name="Cells">Cells of metal; 0 where none were laid.</param>
/// <param name="Iterations">Iterations done.</param>
/// <param name="Residual">What was left unbalanced, as part of what enters (root of squares); NaN where nothing was computed.</param>
/// <param name="BalanceError">Heat that was neither stored nor gone, as part of the power; NaN where nothing was computed.</param>
public sealed record GridFailure(
    GridTrouble Trouble,
    string Reason,
    long Cells,
    int Iterations,
    double Residual,
    double BalanceError
);

/// <summary>A solution, or the reason why there is none: exactly one of the two.</summary>
/// <typeparam name="T">What is found.</typeparam>
public sealed record GridAnswer<T>
    where T : class
{
    /// <summary>What was found; null where it failed.</summary>
    public T? Solution { get; init; }

    /// <summary>Why it failed; null where it did not.</summary>
    public GridFailure? Failure { get; init; }
}

/// <summary>How hard the grid solver tries.</summary>
public sealed record GridEffort
{
    /// <summary>Unbalanced heat, as part of what enters (root of squares over cells), at which it stops; 1e-12 to 1e-4.</summary>
    public double Residual { get; init; } = 1e-8;

    /// <summary>Iterations after which it gives up, from 1 on. Plates take about 8, sinks with fins 10 to 20.</summary>
    public int MostIterations { get; init; } = 60;

    /// <summary>Cells of metal beyond which nothing is computed; about 60 bytes each.</summary>
    public long MostCells { get; init; } = 8_000_000;

    /// <summary>Whether a second processor may help. The result is the same to the last bit.</summary>
    public bool WithHelper { get; init; } = true;
}
