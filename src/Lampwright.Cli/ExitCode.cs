namespace Lampwright.Cli;

/// <summary>What the program says when it ends, for scripts.</summary>
internal static class ExitCode
{
    /// <summary>Evaluated; no finding says stop.</summary>
    public static int Evaluated => 0;

    /// <summary>Evaluated; a finding says not to build or power it.</summary>
    public static int Stop => 1;

    /// <summary>A file has problems, or cannot be written; what could be evaluated is shown.</summary>
    public static int Problems => 2;

    /// <summary>A fault of Lampwright's own.</summary>
    public static int OurFault => 3;

    /// <summary>The command itself was not understood.</summary>
    public static int NotUnderstood => 4;

    /// <summary>Ended from outside, as shells count it.</summary>
    public static int Interrupted => 130;
}
