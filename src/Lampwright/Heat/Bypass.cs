namespace Lampwright.Heat;

/// <summary>Air of the fan that passes beside the fins of a sink that does not fill its duct.</summary>
/// <remarks>
/// Channels and the way round them are two ducts between the same two spaces: the air parts so that both lose the same pressure.
/// Validity: laminar, the sink's back on one wall of the duct, channels along it. Source: the losses of <see cref="ChannelFriction"/>,
/// the free way as the rectangle of its area and wetted length (derived). Accuracy: <see cref="HeatMethods.Bypass"/>.
/// Checked by: solver (tests/Lampwright.References/WholeLight), invariant. Once, at nominal: the share hardly moves with the flow.
/// </remarks>
public static class Bypass
{
    private static readonly double MostShare = 0.9;
    private static readonly double TypicalRiseK = 13;
    private static readonly int Rounds = 8;
    private static readonly int Halvings = 50;

    /// <summary>Share of the fan's air that passes beside the fins, 0 to 0.9; 0 without fins, without a fan, or where the fins fill the duct.</summary>
    /// <param name="spec">The sink; usable (<see cref="SinkModel.IsUsable"/>).</param>
    /// <param name="ductAcrossM">Clear width of the duct across the fins, m, above 0.</param>
    /// <param name="ductHeightM">Clear height of the duct over the wall that the sink's back lies on, m, above 0.</param>
    /// <param name="ambientK">Air that the fan draws in, K, 200 to 400.</param>
    public static double Share(SinkSpec spec, double ductAcrossM, double ductHeightM, double ambientK)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.Positive(ductAcrossM);
        Guard.Positive(ductHeightM);
        Guard.InRange(ambientK, 200, 400);
        var tall = spec.BaseThicknessM + spec.FinHeightM;
        var free = (Math.Max(ductAcrossM, spec.AcrossM) * Math.Max(ductHeightM, tall)) - (spec.AcrossM * tall);
        if (spec.FinCount < 2 || spec.GapM <= 1e-5 || spec.Entry != AirEntry.Ends || spec.Fan is null || free < 1e-9)
        {
            return 0;
        }

        // Walls and floor of the duct that the sink leaves bare, and the sink's sides and tips.
        var wetted = (2 * ductAcrossM) + (2 * ductHeightM) + (2 * tall);
        var diameter = 4 * free / wetted;
        var half = wetted / 2;
        var shorter = (half - Math.Sqrt(Math.Max(0, (half * half) - (4 * free)))) / 2;
        var fRe = ChannelFriction.DevelopedFRe(shorter / (half - shorter));
        var open = free / (free + (spec.AcrossM * tall));
        var ends = ChannelFriction.EntranceK(open) + ChannelFriction.ExitK(open);

        var curve = new FanCurve(spec.Fan.Curve);
        var cool = Air.At(ambientK, spec.PressurePa);
        var warm = Air.At(ambientK + (TypicalRiseK / 2), spec.PressurePa);
        var whole = SinkAir.In(spec with { BypassShare = 0 }, ambientK, fanRuns: true).Path;
        var share = 0.0;
        for (var round = 0; round < Rounds; round++)
        {
            var path = SinkAir.In(spec with { BypassShare = share }, ambientK, fanRuns: true).Path;
            var flow = FanOperatingPoint.Flow(curve, spec.Fan, 1, 1, path, cool, warm).X;
            if (flow <= 0)
            {
                return share;
            }

            var (least, most) = (0.0, MostShare);
            for (var i = 0; i < Halvings; i++)
            {
                share = (least + most) / 2;
                var beside = ChannelFriction.DuctLossPa(cool, flow * share / free, diameter, spec.AlongM, fRe, ends);
                if (whole.ChannelsPa(flow * (1 - share), cool, warm) > beside)
                {
                    least = share;
                }
                else
                {
                    most = share;
                }
            }
        }

        return share;
    }
}
