using Lampwright.Evaluation;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>The blanks.</summary>
internal static class MetalTables
{
    /// <summary>Shows the station; false when it has no answer.</summary>
    public static bool Show(IAnsiConsole screen, LightEvaluation light)
    {
        if (light.Metal is not { Parts.Count: > 0 } metal)
        {
            return false;
        }

        var cells = new Cells(
            "part",
            ">count",
            "sheet",
            ">mm thick",
            ">blank, mm wide",
            ">mm high",
            ">bends",
            ">holes",
            ">kg each"
        );
        foreach (var part in metal.Parts)
        {
            cells.Row(
                Cells.Of(part.Name),
                Cells.Of(part.Count, 0),
                Cells.Of($"{part.Sheet} ({part.Material})"),
                Cells.Of(part.ThicknessMm, 2),
                Cells.Of(part.BlankWidthMm, 1),
                Cells.Of(part.BlankHeightMm, 1),
                Cells.Of(part.Blank.Bends.Count, 0),
                Cells.Of(part.Blank.Holes.Count, 0),
                Cells.Of(part.MassKg, 3)
            );
        }

        cells.On(screen, "Blanks");
        BendTables.Show(screen, metal.Bending.Value);
        return true;
    }
}
