namespace Lampwright.Steps.ChainProof;

/// <content>Windows where the fixed resistor is no part of the sum: beside branches, or before a chain with a resistor across its leads.</content>
internal sealed partial class ChainBoxes
{
    // 1/R = 1/R0 + 1/(lead + 1/S): the window in minus siemens of the branches, the fixed resistor at its ends.
    private (double From, double To) Branches(int t)
    {
        var (least, most) = (Windows.Least[t] - _model.LowBoard.FloorOhm, Windows.Most[t] - _model.HighBoard.FloorOhm);
        var (top, bottom) = (Inverse(least) - (1 / _up.Of(0)), Inverse(most) - (1 / _down.Of(0)));
        return (top <= 0 ? 0 : -Inside(top, _model.LowLead), bottom <= 0 ? 0 : -Inside(bottom, _model.HighLead));
    }

    // R = R0 + S·B/(B + S + b): the window of the chain, the fixed resistor at its ends.
    private (double From, double To) Shunted(int t, double heatUp, double heatDown) =>
        (
            _model.LowBoard.Unseen(Windows.Least[t] - _up.Of(0) - (_up.HeatOf(0) * heatUp)),
            _model.HighBoard.Unseen(Windows.Most[t] - _down.Of(0) - (_down.HeatOf(0) * heatDown))
        );

    private static double Inverse(double ohm) => ohm > 0 ? 1 / ohm : double.PositiveInfinity;

    // The fixed resistor beside branches or before a shunted chain: in ohm, from what the branches leave of the window.
    private bool CutFixed(
        int t,
        int live,
        Sides sides,
        double heatUp,
        double heatDown,
        Span<int> least,
        Span<int> most,
        ref bool cut
    )
    {
        var (from, to) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < live; i++)
        {
            var c = _live[i];
            if (_model.Shunted)
            {
                from = Math.Min(from, Windows.Least[t] - (_up.Warm(c, heatUp) - _up.Of(0) - (_up.HeatOf(0) * heatUp)));
                to = Math.Max(
                    to,
                    Windows.Most[t] - (_down.Warm(c, heatDown) - _down.Of(0) - (_down.HeatOf(0) * heatDown))
                );
                continue;
            }

            var (nearest, farthest) = (
                Windows.Least[t] - _model.LowBoard.FloorOhm,
                Windows.Most[t] - _model.HighBoard.FloorOhm
            );
            var dim = Inverse(nearest) - Outside(_up.Sum[c], _model.LowLead);
            var bright = Inverse(farthest) - Outside(_down.Sum[c], _model.HighLead);
            from = Math.Min(from, dim > 0 ? 1 / dim : double.MaxValue);
            to = Math.Max(to, bright > 0 ? 1 / bright : double.PositiveInfinity);
        }

        from = sides == Sides.Above ? double.NegativeInfinity : from - (1e-13 * Math.Abs(Windows.Least[t]));
        to = sides == Sides.Below ? double.PositiveInfinity : to + (1e-13 * Math.Abs(Windows.Most[t]));
        return least[0] == most[0]
            || Narrow(t, 0, _fixedUp, _fixedDown, from, to, heatUp, heatDown, least, most, ref cut);
    }

    private static double Outside(double sum, double lead) => sum < 0 ? 1 / (lead - (1 / sum)) : 0;

    private static double Inside(double siemens, double lead) =>
        (1 / siemens) - lead is > 0 and var ohm ? 1 / ohm : double.PositiveInfinity;
}
