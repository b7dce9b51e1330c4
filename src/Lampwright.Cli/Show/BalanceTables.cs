using Lampwright.Evaluation;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>Tilts, arms and stands.</summary>
internal static class BalanceTables
{
    /// <summary>Shows the station; false when it has no answer.</summary>
    public static bool Show(IAnsiConsole screen, LightEvaluation light)
    {
        if (light.Balance is not { } balance || balance is { Tilts.Count: 0, Arms.Count: 0, Stands.Count: 0 })
        {
            return false;
        }

        var tilts = new Cells(
            "tilt",
            ">times held",
            ">holds N·m",
            ">worst moment N·m",
            ">at tilt °",
            ">tilting kg",
            ">off the axis mm"
        );
        foreach (var t in balance.Tilts)
        {
            tilts.Row(
                Cells.Of(t.Name),
                Cells.Of(t.SafetyFactor, 1),
                Cells.Of(t.HoldingNm, 2),
                Cells.Of(t.WorstMomentNm, 2),
                Cells.Of(t.WorstAngleDeg, 0),
                Cells.Of(t.TiltingMassKg, 2),
                Cells.Of(t.OffsetMm, 1)
            );
        }

        tilts.On(screen, "Tilt joints");

        var arms = new Cells("arm", ">droop mm", ">stress MPa");
        foreach (var arm in balance.Arms)
        {
            arms.Row(Cells.Of(arm.Name), Cells.Of(arm.DroopMm, 2), Cells.Of(arm.StressMPa, 1));
        }

        arms.On(screen, "Arms");

        var stands = new Cells("stand", ">tips at °", ">foot for a slope of 6°, mm");
        foreach (var stand in balance.Stands)
        {
            stands.Row(Cells.Of(stand.Name), Cells.Of(stand.TipsAtDeg, 1), Cells.Of(stand.FootNeededMm, 0));
        }

        stands.On(screen, "Stands");
        return true;
    }
}
