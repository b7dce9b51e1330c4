using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Web.Desk;

/// <summary>Everything the board shows at one moment: the file's text and what came of it.</summary>
public sealed record BoardState
{
    /// <summary>Counts every change of text or answers, so that a page can tell old from new.</summary>
    public required long Version { get; init; }

    /// <summary>Name of the design file, without folders.</summary>
    public required string FileName { get; init; }

    /// <summary>Text of the design file with all edits.</summary>
    public required string Text { get; init; }

    /// <summary>True while edits are not saved.</summary>
    public bool IsUnsaved { get; init; }

    /// <summary>True when an edit can be taken back.</summary>
    public bool CanUndo { get; init; }

    /// <summary>True when an edit that was taken back can be done again.</summary>
    public bool CanRedo { get; init; }

    /// <summary>Text that somebody else wrote to the file; null when nobody did.</summary>
    public string? OutsideText { get; init; }

    /// <summary>What the maker gives, as the last readable text says it.</summary>
    public LightDesign Design { get; init; } = new();

    /// <summary>What is known of the light; the last known while the file cannot be read.</summary>
    public LightEvaluation? Light { get; init; }

    /// <summary>True while the bands of this text are still being computed.</summary>
    public bool BandsArePending { get; init; }

    /// <summary>What could not be read.</summary>
    public IReadOnlyList<FileProblem> Problems { get; init; } = [];

    /// <summary>What the maker gives, table by table.</summary>
    public IReadOnlyList<GivenTable> Given { get; init; } = [];

    /// <summary>Paths of tables that the shop file gives and the design file does not.</summary>
    public IReadOnlyList<string> InShop { get; init; } = [];

    /// <summary>True while the best chain shown is that of an earlier text.</summary>
    public bool ChainIsPending { get; init; }

    /// <summary>How far the search for a proof is; null while none runs.</summary>
    public ChainProgress? Proving { get; init; }

    /// <summary>Something that went wrong with the last act (a file that cannot be written); empty when nothing did.</summary>
    public string Trouble { get; init; } = "";

    /// <summary>Time from the last edit to its nominal result, milliseconds.</summary>
    public double NominalMs { get; init; }
}
