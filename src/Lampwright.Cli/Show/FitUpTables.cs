using Lampwright.Evaluation;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>Joints, masses and the balance point.</summary>
internal static class FitUpTables
{
    /// <summary>Shows the station; false when it has no answer.</summary>
    public static bool Show(IAnsiConsole screen, LightEvaluation light)
    {
        if (light.FitUp is not { } fit)
        {
            return false;
        }

        screen.WriteLine();
        screen.WriteLine(
            $"Total mass {Words.WithBand(fit.TotalMassKg, v => Numbers.Fixed(v, 2), "kg")}; balance point "
                + $"x {Words.WithBand(fit.BalancePointMm.X, v => Numbers.Fixed(v, 0))}, "
                + $"y {Words.WithBand(fit.BalancePointMm.Y, v => Numbers.Fixed(v, 0))}, "
                + $"z {Words.WithBand(fit.BalancePointMm.Z, v => Numbers.Fixed(v, 0))} mm from the datum corner of the fixed part."
        );

        var joints = new Cells(
            "joint",
            "stack",
            "screw",
            ">worst hole misses mm",
            ">clearance allows mm",
            ">grip mm",
            ">engaged mm",
            ">stands out mm"
        );
        foreach (var joint in fit.Joints)
        {
            // The hole that is nearest to not meeting.
            var worst = joint.Holes.MinBy(h => h.AllowsMm.Value - h.MissMm.High);
            joints.Row(
                Cells.Of(joint.Name),
                Cells.Of(string.Join(" + ", joint.Stack)),
                Cells.Of(joint.Screw),
                Cells.Of(worst?.MissMm, 2),
                Cells.Of(worst?.AllowsMm, 2),
                Cells.Of(joint.GripMm, 1),
                Cells.Of(joint.EngagedMm, 1),
                Cells.Of(joint.SparesMm, 1)
            );
        }

        joints.On(screen, "Joints");

        var masses = new Cells("thing", ">count", ">kg");
        foreach (var mass in fit.Masses)
        {
            masses.Row(
                Cells.Of(mass.Id),
                Cells.Of(mass.Count, 0),
                mass.IsKnown ? Cells.Of(mass.MassKg, 3) : Cells.Side("not given")
            );
        }

        masses.On(screen, "Masses");
        if (fit.Unplaced.Count > 0)
        {
            screen.WriteLine();
            screen.WriteLine(Words.Plain("No joint reaches: " + string.Join(", ", fit.Unplaced) + "."));
        }

        return true;
    }
}
