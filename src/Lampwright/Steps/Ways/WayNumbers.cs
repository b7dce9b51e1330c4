namespace Lampwright.Steps.Ways;

/// <summary>What one draw tells the ways of dimming.</summary>
/// <param name="Model">The emitter of this draw (<see cref="EmitterModel.With"/>).</param>
/// <param name="JunctionK">Its junction temperature at full current, in kelvin.</param>
/// <param name="SetA">Current the driver gives as it is, in amperes; above 0.</param>
/// <param name="Efficiency">Output over input power of the driver, above 0 to 1.</param>
/// <param name="LimitV">Voltage at which the driver's protection acts, in volts: as told, or one that may be; above 0.</param>
/// <param name="OutputF">Output capacitor in farad; above 0.</param>
public readonly record struct WayDraw(
    EmitterModel Model,
    double JunctionK,
    double SetA,
    double Efficiency,
    double LimitV,
    double OutputF
);

/// <summary>The numbers of one way for one draw; null where the way does not get there.</summary>
/// <param name="LightShare">Light it reaches over the light at the driver's own current.</param>
/// <param name="CurrentA">Emitter currents it reaches, in amperes; means where the current is chopped.</param>
/// <param name="EfficiencyAtHalf">Power in the emitter over power from the supply at half of the light.</param>
/// <param name="HeatAtHalfW">Heat of driver and added parts at half of the light, in watts.</param>
/// <param name="AddedHeatAtHalfW">Of that, heat outside of the driver, in watts.</param>
public readonly record struct WayNumber(
    Extent? LightShare,
    Extent? CurrentA,
    double? EfficiencyAtHalf,
    double? HeatAtHalfW,
    double? AddedHeatAtHalfW
);

/// <summary>The numbers of all ways of dimming: closed forms without words, crossings or allocation, made for the draws.</summary>
/// <remarks>
/// Build it once from the spec, then call <see cref="Of"/> for each draw with that draw's emitter, junction, current and efficiency; start from
/// <see cref="Nominal"/> and change what the draw changes. Which of the numbers are null hangs on the spec (what the driver does at its limit)
/// and, near a limit, on the draw: a band is taken over the draws that have a number.
/// The nominal numbers are those that <see cref="WaysComparison"/> puts into each <see cref="Way"/>.
/// <b>Validity</b>: the driver's efficiency is taken as constant over its output; the junction stays as warm as at full current. Where it
/// is not known what the driver does at its voltage limit, the numbers are those of one that clamps. Where it is not told at which voltage, the
/// middle of an assumed range stands (1 to 1.4 times the window's top; without a window 1.05 to 1.75 times the cold emitter: common
/// practice, no source), and the draws go through the range.
/// <b>Source</b>: derived from the circuits' equations; each way names its own. <b>Checked by</b>: derived rows, solver, invariant.
/// </remarks>
public sealed class WayNumbers
{
    private readonly WayFacts _facts;
    private readonly SenseReach _reach;

    /// <summary>Prepares the numbers for a light.</summary>
    /// <param name="spec">What the comparison is told.</param>
    /// <exception cref="ArgumentOutOfRangeException">The driver's rated current is not above zero.</exception>
    public WayNumbers(WaysSpec spec)
        : this(new WayFacts(spec ?? throw new ArgumentNullException(nameof(spec)))) { }

    internal WayNumbers(WayFacts facts)
    {
        _facts = facts;
        _reach = new(facts);
        Nominal = new(facts.Model, facts.WarmK, facts.SetA, facts.Efficiency, facts.LimitV, facts.OutputF);
    }

    /// <summary>How many ways there are: the length of what <see cref="Of"/> writes, in the order of <see cref="WayKind"/>.</summary>
    public static int Count => 13;

    /// <summary>The draw that changes nothing.</summary>
    public WayDraw Nominal { get; }

    /// <summary>Limits that the draws go through where the voltage at which the protection acts is not told, in volts; null where it is told.</summary>
    public Extent? AssumedLimitV => _facts.KnownLimitV is null ? _facts.LimitRangeV : null;

    internal SenseReach Reach => _reach;

    /// <summary>Writes the numbers of every way for one draw.</summary>
    /// <param name="draw">What this draw tells.</param>
    /// <param name="into">At least <see cref="Count"/> places.</param>
    public void Of(in WayDraw draw, Span<WayNumber> into)
    {
        var half = new HalfLight(draw);
        var efficiency = Math.Clamp(draw.Efficiency, 0.05, 1);
        var gives = DriverGives.Of(_facts, draw, half);
        into[(int)WayKind.SupplyResistor] = Range(half, gives.AsItIsA, gives.AsItIsA);
        into[(int)WayKind.ConverterBehind] = Converter(draw, half, efficiency);
        into[(int)WayKind.SeriesResistor] = Series(draw, half, gives, efficiency);
        into[(int)WayKind.ShuntResistor] = Shunt(draw, half, gives, efficiency);
        for (var kind = WayKind.FixedSense; kind <= WayKind.SelectorOpening; kind++)
        {
            into[(int)kind] = Sense(kind, draw, half, efficiency);
        }

        into[(int)WayKind.ChoppedBehindCapacitor] = Chopped(draw, half, gives, efficiency);
        into[(int)WayKind.ChoppedWithoutCapacitor] = WithoutCapacitor(half, gives, efficiency);
        into[(int)WayKind.DimmingInput] = Dimmed(half, gives.AtMostA, efficiency, InputLeast());
        into[(int)WayKind.OtherDriver] = Dimmed(half, half.SetA, efficiency, WayExamples.LeastShare);
    }

    // Set under the driver's current a step-down stage takes less than it everywhere, and the driver goes to its limit.
    private WayNumber Converter(in WayDraw draw, in HalfLight half, double efficiency)
    {
        var stage = WayExamples.ConverterEfficiency;
        if (_facts.Over == OverVoltage.Trips)
        {
            return default;
        }

        // Below its limit the stage needs more voltage than the emitter; above the driver's current it has nothing to hold.
        var fits = EmitterCurve.CurrentA(draw.Model, draw.LimitV, draw.JunctionK, half.SetA);
        var most = Math.Min(stage * half.SetA, fits);
        var range = Range(half, WayExamples.LeastShare * half.SetA, most);
        return half.HalfA > most
            ? range
            : AtHalf(range, half.HalfW, efficiency * stage, half.HalfW * ((1 / stage) - 1));
    }

    // The current stays until emitter and resistor together reach the driver's limit; there a clamp makes a voltage source of it.
    private WayNumber Series(in WayDraw draw, in HalfLight half, in DriverGives gives, double efficiency)
    {
        if (_facts.Over == OverVoltage.Trips)
        {
            return Range(half, gives.AsItIsA, gives.AsItIsA);
        }

        var range = Range(half, Math.Min(WayExamples.LeastShare * half.SetA, gives.AtMostA), gives.AtMostA);
        return draw.LimitV <= half.HalfV || half.HalfA > gives.AtMostA
            ? range
            : AtHalf(range, half.HalfW, efficiency * half.HalfV / draw.LimitV, half.HalfA * (draw.LimitV - half.HalfV));
    }

    // I0 splits between emitter and shunt at the emitter's own voltage.
    private WayNumber Shunt(in WayDraw draw, in HalfLight half, in DriverGives gives, double efficiency)
    {
        var least = WayExamples.LeastShare * half.SetA;
        if (_facts.WindowLeastV is { } window)
        {
            least = Math.Max(least, EmitterCurve.CurrentA(draw.Model, window, draw.JunctionK, half.SetA));
        }

        var range = Range(half, Math.Min(least, gives.AtMostA), gives.AtMostA);
        return half.HalfA < least || half.HalfA > gives.AtMostA
            ? range
            : AtHalf(range, half.HalfW, efficiency * half.HalfA / half.SetA, half.HalfV * (half.SetA - half.HalfA));
    }

    private WayNumber Sense(WayKind kind, in WayDraw draw, in HalfLight half, double efficiency)
    {
        var (least, most) = _reach.Of(kind, draw);
        if (!(least <= most))
        {
            return default;
        }

        var range = Range(half, least, most);
        var outside = kind == WayKind.FixedSense ? 0 : _reach.OutsideW(half.HalfA, half.SetA);
        return half.HalfA < least || half.HalfA > most ? range : AtHalf(range, half.HalfW, efficiency, outside);
    }

    private WayNumber Chopped(in WayDraw draw, in HalfLight half, in DriverGives gives, double efficiency)
    {
        if (_facts.Over == OverVoltage.Trips)
        {
            return Range(half, gives.AsItIsA, gives.AsItIsA);
        }

        var found = ChoppedHalf.Of(draw, half);
        var (mostA, mostShare) = (Math.Min(found.MostA, gives.AtMostA), half.Share(gives.AtMostA));
        var range = new WayNumber(
            Ordered(Math.Min(found.LeastShare, mostShare), Math.Min(found.MostShare, mostShare)),
            Ordered(Math.Min(found.LeastA, mostA), mostA),
            null,
            null,
            null
        );
        return found.Duty is null || mostShare < 0.5
            ? range
            : AtHalf(
                range,
                found.EmitterW,
                efficiency * found.EmitterW / (found.EmitterW + found.SwitchW),
                found.SwitchW
            );
    }

    // Without the capacitor the emitter has all that the driver gives or nothing: light and time on go together.
    private WayNumber WithoutCapacitor(in HalfLight half, in DriverGives gives, double efficiency)
    {
        if (_facts.Over == OverVoltage.Trips)
        {
            return default;
        }

        var (onA, share) = (gives.AtMostA, half.Share(gives.AtMostA));
        if (!(onA > 0))
        {
            return default;
        }

        var range = new WayNumber(
            Ordered(WayExamples.LeastShare * share, share),
            Ordered(WayExamples.LeastShare * onA, onA),
            null,
            null,
            null
        );
        var duty = 0.5 / share;
        if (!(duty <= 1))
        {
            return range;
        }

        var (emitterW, switchW) = (duty * half.PowerW(onA), duty * onA * onA * WayExamples.SwitchOhm);
        return AtHalf(range, emitterW, efficiency * emitterW / (emitterW + switchW), switchW);
    }

    private double? InputLeast() =>
        _facts.Dimming switch
        {
            DimmingInput.None or DimmingInput.Unknown => null,
            _ => _facts.DimmingLeast ?? WayExamples.LeastShare,
        };

    private static WayNumber Dimmed(in HalfLight half, double mostA, double efficiency, double? leastShare)
    {
        if (leastShare is not { } share)
        {
            return default;
        }

        var range = Range(half, Math.Min(share * half.SetA, mostA), mostA);
        return half.HalfA < share * half.SetA || half.HalfA > mostA ? range : AtHalf(range, half.HalfW, efficiency, 0);
    }

    private static WayNumber Range(in HalfLight half, double leastA, double mostA) =>
        mostA > 0
            ? new(Ordered(half.Share(leastA), half.Share(mostA)), Ordered(leastA, mostA), null, null, null)
            : default;

    private static Extent Ordered(double a, double b) => new(Math.Min(a, b), Math.Max(a, b));

    private static WayNumber AtHalf(in WayNumber range, double emitterW, double efficiency, double addedW) =>
        range with
        {
            EfficiencyAtHalf = efficiency,
            HeatAtHalfW = emitterW * ((1 / efficiency) - 1),
            AddedHeatAtHalfW = addedW,
        };
}
