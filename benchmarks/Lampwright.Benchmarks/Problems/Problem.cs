namespace Lampwright.Benchmarks.Problems;

/// <summary>A kind of problem that <c>eng/speed NAME FILE</c> solves, times and holds against a peer.</summary>
/// <remarks>
/// To add one: a file of its own in this folder with a class that derives from this one and has no arguments. It is found by
/// itself; no list needs a line. <see cref="Load"/> reads the file (not timed) and says what is to be timed. Nothing else is to be written: the
/// words of the command line, warming up, medians, turns with the peer and the line of JSON are in <see cref="Speed"/>.
/// </remarks>
internal abstract class Problem
{
    /// <summary>The word on the command line: chain, tolerance, points, plate, finned, blank, ways, scenes, curves.</summary>
    public abstract string Name { get; }

    /// <summary>Whether the peer runs without being asked for by <c>--peer</c>.</summary>
    public virtual bool PeerUnasked => false;

    /// <summary>Reads a problem file.</summary>
    /// <param name="file">Path of the file.</param>
    /// <exception cref="BadProblemException">The file does not state such a problem.</exception>
    public abstract Prepared Load(string file);
}

/// <summary>A problem that has been read.</summary>
/// <param name="Solve">The work that <c>ms</c> and <c>firstMs</c> time; what it returns goes to <paramref name="Answer"/>.</param>
/// <param name="Answer">What is printed as <c>answer</c>, made of a solution once and not timed: anything that turns into JSON.</param>
internal sealed record Prepared(Func<object> Solve, Func<object, object> Answer)
{
    /// <summary>More pieces to be timed, each by the name it is printed with (<c>simulationMs</c>).</summary>
    public IReadOnlyList<(string Name, Func<object> Work)> Also { get; init; } = [];

    /// <summary>One run of the peer on the same problem: its milliseconds. Null where there is none or it is not installed.</summary>
    public Func<double>? PeerMs { get; init; }

    /// <summary>Which time the ratio is over: <c>ms</c>, or a name of <see cref="Also"/>.</summary>
    public string PeerAgainst { get; init; } = "ms";
}

/// <summary>A problem file that cannot be read; the message is for the one who called.</summary>
internal sealed class BadProblemException(string message) : Exception(message);
