using Lampwright.Evaluation.Answers;

namespace Lampwright.Web.Desk;

/// <summary>What lies between the pages and the design file: one for the whole program, so that two tabs show the same light.</summary>
public interface IBoardDesk
{
    /// <summary>What is to be shown now.</summary>
    BoardState State { get; }

    /// <summary>Raised after <see cref="State"/> has changed, on any thread.</summary>
    event Action? Changed;

    /// <summary>Writes one value into the text and nothing else; empty text takes the key out, so that its default holds.</summary>
    /// <param name="path">Path of the value.</param>
    /// <param name="text">The value as the file would have it, without quotes.</param>
    /// <param name="session">Edits with the same path and session are one step of undo.</param>
    /// <returns>What would be accepted when the text is not; empty when it was taken.</returns>
    Task<string> SetAsync(string path, string text, string session);

    /// <summary>Takes over what readings correct: a value, or a table in braces.</summary>
    /// <param name="path">Path of the value.</param>
    /// <param name="text">What the take-over says would be written.</param>
    /// <returns>Why it was not taken; empty when it was.</returns>
    Task<string> TakeOverAsync(string path, string text);

    /// <summary>Writes a chain into the file as the maker's choice, in one step of undo.</summary>
    /// <param name="chain">The chain that is taken.</param>
    /// <returns>Why it was not taken; empty when it was.</returns>
    Task<string> TakeChainAsync(ChainOffer chain);

    /// <summary>Searches on until the best chain of this text is proven; an edit or <see cref="StopProving"/> ends it.</summary>
    Task ProveAsync();

    /// <summary>Ends the search for a proof with the best so far.</summary>
    void StopProving();

    /// <summary>Takes the last edit back.</summary>
    Task UndoAsync();

    /// <summary>Does again what was taken back.</summary>
    Task RedoAsync();

    /// <summary>Saves the text to the design file.</summary>
    Task SaveAsync();

    /// <summary>Takes the text that somebody else wrote; the own text stays one step of undo away.</summary>
    Task TakeOutsideAsync();

    /// <summary>Keeps the own text; the next save writes over the other.</summary>
    Task KeepOwnAsync();

    /// <summary>The packet of what stands on the desk now, as a zip.</summary>
    /// <param name="cancellation">Ends the writing.</param>
    /// <exception cref="InvalidOperationException">There is nothing to write a packet of; the message says why.</exception>
    Task<byte[]> PacketAsync(CancellationToken cancellation);

    /// <summary>The blank of a part as a dimensioned drawing (SVG); empty when there is none.</summary>
    string BlankDrawing(string part);
}
