namespace Lampwright.Web.Desk;

/// <summary>What the layout hands down to every page: the state, and which switch position the reader looks at.</summary>
/// <param name="State">What is to be shown now.</param>
/// <param name="Position">The switch position that is looked at, or empty before there is one.</param>
/// <param name="Look">Looks at another position.</param>
public sealed record BoardContext(BoardState State, string Position, Action<string> Look);
