namespace Lampwright.Steps.ChainProof;

/// <summary>Where the resistance of a combination must lie to meet a wanted current better than an error.</summary>
/// <remarks>
/// |I/It − 1| &lt; e at both ends of the range means Rlow ≥ Vhigh/(It·(1 + e) + Ioff) and Rhigh ≤ Vlow/(It·(1 − e) + Ioff): with the
/// current known at the edge of the window, the heat of the resistors is known there too and the test stays a sum.
/// </remarks>
internal sealed class ChainWindows
{
    private readonly ChainModel _model;

    public ChainWindows(ChainModel model)
    {
        _model = model;
        var n = model.Wanted.Length;
        (Least, Most, LeastHeat, MostHeat) = (new double[n], new double[n], new double[n], new double[n]);
        Error = double.PositiveInfinity;
        Narrow(double.PositiveInfinity);
    }

    /// <summary>A chain must be better than the best so far by this share of its error to be looked for.</summary>
    public static double Gain => 1e-9;

    /// <summary>The error that is to be bettered.</summary>
    public double Error { get; private set; }

    /// <summary>Least resistance that the low end must have, ohm.</summary>
    public double[] Least { get; }

    /// <summary>Greatest resistance that the high end may have, ohm.</summary>
    public double[] Most { get; }

    /// <summary>Square of the current at the least resistance, A².</summary>
    public double[] LeastHeat { get; }

    /// <summary>Square of the current at the greatest resistance, A².</summary>
    public double[] MostHeat { get; }

    /// <summary>Sets the windows to an error.</summary>
    public void Narrow(double error)
    {
        Error = error;
        var e = error * (1 - Gain);
        for (var t = 0; t < Least.Length; t++)
        {
            var (high, low) = (_model.Wanted[t] * (1 + e), _model.Wanted[t] * (1 - e));
            Least[t] = _model.AimHighV / (high + _model.OffsetA);
            Most[t] = low > 0 ? _model.AimLowV / (low + _model.OffsetA) : double.PositiveInfinity;
            LeastHeat[t] = double.IsFinite(high) ? high * high : 0;
            MostHeat[t] = low > 0 ? low * low : 0;
        }
    }
}
