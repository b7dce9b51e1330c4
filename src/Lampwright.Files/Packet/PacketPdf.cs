using Lampwright.Design;
using Lampwright.Evaluation;
using Lampwright.Files.Packet.Sheets;

namespace Lampwright.Files.Packet;

/// <summary>Writes <c>packet.pdf</c>: the papers for the shop.</summary>
public static class PacketPdf
{
    /// <summary>Writes the packet.</summary>
    /// <param name="design">What the maker gave.</param>
    /// <param name="evaluation">What is known of it.</param>
    /// <param name="state">Short code of the evaluation that the title blocks carry.</param>
    /// <param name="stream">What is written to; stays open.</param>
    public static void Write(LightDesign design, LightEvaluation evaluation, string state, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(evaluation);
        using var book = new PacketBook(design, evaluation, state);
        CoverPage.Draw(book);
        FindingsPage.Draw(book);
        CutListPage.Draw(book);
        PartPages.Draw(book);
        MarkingOutPage.Draw(book);
        DrillPage.Draw(book);
        BendCardsPage.Draw(book);
        JointsPage.Draw(book);

        // While a stop stands against wires from this driver, no sheet says how to run them or what to measure on them.
        var wired = evaluation.Board is not { Reading.Stops.Count: > 0 };
        if (wired)
        {
            WiringPage.Draw(book);
            BestChainPage.Draw(book);
        }

        WhyPage.Draw(book);
        ChartPages.Draw(book);
        HeatLimitsPage.Draw(book);
        HeatPage.Draw(book);
        if (wired)
        {
            FirstPowerPage.Draw(book);
            TestSheetPage.Draw(book);
            RepairCardPage.Draw(book);
            LabelsPage.Draw(book);
        }

        book.Save(stream);
    }
}
