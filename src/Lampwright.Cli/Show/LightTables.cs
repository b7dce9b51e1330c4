using Lampwright.Evaluation;
using Lampwright.Web.Show;
using Spectre.Console;

namespace Lampwright.Cli.Show;

/// <summary>What leaves the light and what lands on the subject.</summary>
internal static class LightTables
{
    /// <summary>Shows the station; false when it has no answer.</summary>
    public static bool Show(IAnsiConsole screen, LightEvaluation light)
    {
        if (light.Light is not { } l)
        {
            return false;
        }

        var cells = new Cells("at the brightest position", ">", "");
        void Row(string what, Cell number, string unit) => cells.Row(Cells.Of(what), number, Cells.Side(unit));
        Row("on the centre of the subject", Cells.Rounded(l.LuxAtSubject), "lx");
        Row("aperture", Cells.Of(l.Aperture, v => "f/" + Numbers.Fixed(v, 1)), "");
        Row("exposure value", Cells.Of(l.Ev, 1), "EV at ISO 100");
        Row("darkest corner of the subject", Cells.Percent(l.Evenness), "% of the centre");
        Row("flux that leaves", Cells.Rounded(l.FluxOutLm), "lm");
        Row("share of the emitter's flux", Cells.Percent(l.Efficiency), "%");
        Row("absorbed in the reflector", Cells.Percent(l.ReflectorAbsorbs), "%");
        Row("absorbed in the diffuser", Cells.Percent(l.DiffuserAbsorbs), "%");
        Row("intensity on the axis", Cells.Rounded(l.AxisCd), "cd");
        Row("inverse square reads too high by", Cells.Percent(l.InverseSquareError, 1), "%");
        Optional("percent flicker", l.PercentFlicker?.In(100), "%", 1);
        Optional("left of it after the shutter", l.ShutterResidual?.In(100), "%", 1);
        Optional("look into it no nearer than", l.CareDistanceM, "m", 2);
        cells.On(screen, "Light");
        return true;

        void Optional(string what, Predicted? number, string unit, int decimals)
        {
            if (number is { } p)
            {
                Row(what, Cells.Of(p, decimals), unit);
            }
        }
    }
}
