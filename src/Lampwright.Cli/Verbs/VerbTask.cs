namespace Lampwright.Cli.Verbs;

/// <summary>What a verb that evaluates is registered with.</summary>
/// <param name="Terminal">Where it speaks.</param>
/// <param name="Station">What it shows.</param>
internal sealed record VerbTask(Terminal Terminal, Station Station);
