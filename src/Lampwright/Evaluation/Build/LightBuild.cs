using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;
using Lampwright.Evaluation.Maps;
using Lampwright.Light;

namespace Lampwright.Evaluation.Build;

/// <summary>Lays out the answer of the station light.</summary>
internal static class LightBuild
{
    private static readonly int PictureColumns = 21;
    private static readonly int PictureRows = 21;

    public static LightAnswer Of(CoupledLight light, LightModel model, Bands bands, double[] picture)
    {
        Predicted Common(int number) => bands.At(light.CommonPlace(number));
        Predicted Brightest(int number) => bands.At(light.Place(Scene.Normal, light.Brightest) + number);
        var parts = light.Inputs.Parts;
        var ripple = parts.Driver is { RippleDepth: not null, RippleFrequency: not null };
        return new LightAnswer
        {
            Efficiency = Common(CommonRow.Efficiency),
            ReflectorAbsorbs = Common(CommonRow.ReflectorAbsorbs),
            DiffuserAbsorbs = Common(CommonRow.DiffuserAbsorbs),
            FluxOutLm = Brightest(PositionRow.FluxOutLm),
            AxisCd = Common(CommonRow.AxisCd),
            LuxAtSubject = Brightest(PositionRow.Lux),
            Evenness = Common(CommonRow.Evenness),
            InverseSquareError = Common(CommonRow.InverseSquareError),
            Ev = Brightest(PositionRow.Ev),
            Aperture = Brightest(PositionRow.Aperture),
            PercentFlicker = ripple ? Common(CommonRow.PercentFlicker) : null,
            ShutterResidual = ripple ? Common(CommonRow.ShutterResidual) : null,
            CareDistanceM = parts.Emitter.Cct is not null ? Common(CommonRow.CareDistanceM) : null,
            ExitM = LightMap.Exit(model.Spec),
            SubjectPicture =
            [
                .. Enumerable
                    .Range(0, picture.Length / PictureColumns)
                    .Select(r => (IReadOnlyList<double>)picture[(r * PictureColumns)..((r + 1) * PictureColumns)]),
            ],
        };
    }

    /// <summary>Illuminance over the subject as shares of its centre; empty where the subject has no size.</summary>
    public static double[] Picture(LightModel model)
    {
        if (!(model.Spec.Subject.WidthM > 0 && model.Spec.Subject.HeightM > 0))
        {
            return [];
        }

        var grid = model.SubjectGrid(PictureColumns, PictureRows);
        var centre = grid[grid.Length / 2];
        return centre > 0 ? [.. grid.Select(e => e / centre)] : [];
    }
}
