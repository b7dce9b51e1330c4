namespace Lampwright.Steps.Board;

/// <summary>A question to the maker about the board, with how to find the answer out safely.</summary>
/// <param name="Key">Path in the design file that takes the answer.</param>
/// <param name="Ask">The question.</param>
/// <param name="Why">What hangs on it.</param>
/// <param name="HowToFindOut">Where the answer is found without danger.</param>
/// <param name="IsOpen">True while the design does not answer it.</param>
/// <param name="Stop">Code of the stop that stands while it is open or answered badly; empty where there is none.</param>
public sealed record BoardQuestion(string Key, string Ask, string Why, string HowToFindOut, bool IsOpen, string Stop);
