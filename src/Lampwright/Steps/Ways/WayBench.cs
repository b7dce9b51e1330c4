using System.Globalization;

namespace Lampwright.Steps.Ways;

/// <summary>What all ways are judged with: the facts, the nominal numbers, and the parts that their circuits are put together from.</summary>
internal sealed class WayBench
{
    private readonly WayNumber[] _numbers = new WayNumber[WayNumbers.Count];

    public WayBench(WaysSpec spec)
    {
        Facts = new(spec);
        var numbers = new WayNumbers(Facts);
        Draw = numbers.Nominal;
        Reach = numbers.Reach;
        Half = new(Draw);
        Gives = DriverGives.Of(Facts, Draw, Half);
        numbers.Of(Draw, _numbers);
        Emitter = new(Facts.Model, Facts.WarmK);
    }

    public WayFacts Facts { get; }

    public WayDraw Draw { get; }

    public SenseReach Reach { get; }

    public HalfLight Half { get; }

    public DriverGives Gives { get; }

    public EmitterLine Emitter { get; }

    public ref readonly WayNumber Numbers(WayKind kind) => ref _numbers[(int)kind];

    /// <summary>Efficiency at half of the light in words; empty where half is not to be had.</summary>
    public string AtHalf(WayKind kind) =>
        Numbers(kind).EfficiencyAtHalf is { } share ? Text($" ({share * 100:0} % efficiency)") : "";

    /// <summary>The driver's output at a set current.</summary>
    public DriverOutput Output(double setA) =>
        new(
            setA,
            Facts.WindowLeastV,
            Facts.LimitRangeV.Most,
            Facts.Over,
            Facts.Under,
            Facts.RestartS ?? WayExamples.RestartS
        );

    /// <summary>The emitter on the driver at a set current.</summary>
    public WayCircuit Plain(double setA) => new(Output(setA), Emitter, Facts.OutputF);

    /// <summary>A way with its numbers and its picture; stops that protect people go before everything else.</summary>
    public Way Judged(WayKind kind, WayCircuit circuit, WayWords words, IReadOnlyList<string> stops, bool opensDriver)
    {
        words = WithinEmitter(kind, WithinDriver(kind, words));
        ref readonly var n = ref Numbers(kind);
        var stopped = stops.Count > 0;
        return new()
        {
            Kind = kind,
            Name = WayNames.Of(kind),
            Regulates = words.Regulates,
            Blinks = words.Blinks,
            Hiccups = words.Hiccups,
            HiccupHz = words.Hiccups == Told.Yes ? words.HiccupHz : null,
            LightShare = n.LightShare,
            CurrentA = n.CurrentA,
            EfficiencyAtHalf = n.EfficiencyAtHalf,
            AddedHeatAtHalfW = n.AddedHeatAtHalfW,
            HeatAtHalfW = n.HeatAtHalfW,
            Stresses = words.Stresses,
            OpensDriver = opensDriver,
            Safety = WaySafety.Of(Facts, kind, opensDriver),
            Stops = stops,
            Verdict = stopped ? Verdict.Stop : words.Verdict,
            Reason = stopped
                ? WaySafety.Stopped(Facts, stops, words.Reason, words.Verdict >= Verdict.AskFirst)
                : words.Reason,
            Picture = new(circuit, Crossings.Of(circuit)),
            Circuit = circuit,
        };
    }

    // These leave the driver at its own current, and a part that comes off gives the emitter all of it.
    private static bool KeepsDriver(WayKind kind) =>
        kind
            is WayKind.SupplyResistor
                or WayKind.ConverterBehind
                or WayKind.SeriesResistor
                or WayKind.ShuntResistor
                or WayKind.ChoppedBehindCapacitor
                or WayKind.ChoppedWithoutCapacitor
                or WayKind.DimmingInput;

    // What the emitter wants at full current may be over what the driver gives: then all of its light is not to be had, whatever the way.
    private WayWords WithinDriver(WayKind kind, WayWords words)
    {
        if (!KeepsDriver(kind) || Gives.AtMostA >= Half.SetA * (1 - 1e-9))
        {
            return words;
        }

        var rest = char.ToLowerInvariant(words.Reason[0]) + words.Reason[1..];
        var wants = Text(
            $"At its {Half.SetA:0.##} A the emitter wants {Half.FullV:0.#} V ({Facts.ColdV:0.#} V cold) and the driver"
        );
        return Gives.TripsAtOnce && kind is not (WayKind.ShuntResistor or WayKind.DimmingInput)
            ? words with
            {
                Verdict = words.Verdict == Verdict.Stop ? Verdict.Stop : Verdict.DoesNotWork,
                Regulates = Told.No,
                Reason = Text($"{wants} trips at {Facts.LimitText}: it never comes to that current; {rest}"),
            }
            : words with
            {
                Verdict =
                    Gives.AtMostA < Half.HalfA && words.Verdict > Verdict.DoesNotWork
                        ? Verdict.DoesNotWork
                        : words.Verdict,
                Reason = Text(
                    $"{wants} gives its current up to {Facts.GivesUpToV:0.#} V: no more than {Gives.AtMostA:0.##} A, {Half.Share(Gives.AtMostA) * 100:0} % of that light, is to be had; {rest}"
                ),
            };
    }

    private WayWords WithinEmitter(WayKind kind, WayWords words)
    {
        return KeepsDriver(kind) && Facts.EmitterMostA is { } most && Half.SetA > most * (1 + 1e-9)
            ? words with
            {
                Verdict = Verdict.DoesNotWork,
                Reason = Text(
                    $"The driver stays at its {Half.SetA:0.##} A, over the {most:0.##} A the emitter takes, and nothing here holds it back: {char.ToLowerInvariant(words.Reason[0])}{words.Reason[1..]}"
                ),
            }
            : words;
    }

    /// <summary>How often a driver that trips comes back, in hertz; null where the time to its next try is not known.</summary>
    /// <remarks>
    /// Between two trips lie the wait and the time in which the output climbs again, at most from nothing to the limit. The spread of the
    /// wait, that of the capacitor and what is assumed of the limit widen it: the fastest is the shortest wait alone.
    /// </remarks>
    /// <param name="netA">Least current that is left for the capacitor on the way up, in amperes.</param>
    /// <param name="farad">Capacitor at the node, in farad.</param>
    /// <param name="extraS">Time beyond that, in seconds: a voltage that climbs over several chopped cycles.</param>
    public Extent? TripHz(double netA, double farad, double extraS = 0)
    {
        if (Facts.RestartRangeS is not { } wait)
        {
            return null;
        }

        var climb = (farad * Facts.LimitRangeV.Most / Math.Max(netA, 1e-3 * Facts.SetA)) + extraS;
        return new(
            1 / (Math.Max(wait.Most, WaySwitches.LeastRestartS) + climb),
            1 / Math.Max(wait.Least, WaySwitches.LeastRestartS)
        );
    }

    /// <summary>Whether a tripped driver tries again: known only with the time to its next try.</summary>
    public Told Retries => Facts.RestartS is null ? Told.Unknown : Told.Yes;

    /// <summary>A rate in words.</summary>
    public static string Rate(Extent? hz) =>
        hz is not { } r ? "at a rate that is not known"
        : r.Most > 1.1 * r.Least ? $"{Hertz(r.Least)} to {Hertz(r.Most)} times a second"
        : $"about {Hertz(r.Most)} times a second";

    // Two digits are all that such a rate is good for.
    private static string Hertz(double hz) =>
        hz < 10 ? Text($"{hz:0.0#}") : Text($"{Math.Round(hz / Decade(hz)) * Decade(hz):0}");

    private static double Decade(double hz) => Math.Pow(10, Math.Floor(Math.Log10(hz)) - 1);

    /// <summary>A resistance to three digits, as a maker would look for it.</summary>
    public static string Ohm(double ohm) =>
        ohm.ToString(
            ohm >= 99.95 ? "0"
                : ohm >= 9.995 ? "0.#"
                : "0.##",
            CultureInfo.InvariantCulture
        ) + " ohm";

    public static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>What is found of one way beyond its numbers.</summary>
internal sealed record WayWords(
    Verdict Verdict,
    string Reason,
    Told Regulates,
    Told Blinks,
    Told Hiccups,
    IReadOnlyList<string> Stresses,
    Extent? HiccupHz = null
);
