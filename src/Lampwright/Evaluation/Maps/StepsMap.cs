using Lampwright.Design;
using Lampwright.Evaluation.Coupling;
using Lampwright.Quantities;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;
using Lampwright.Steps.Ways;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the station steps what the design says of emitter, driver and chain.</summary>
internal static class StepsMap
{
    /// <summary>The emitter's spec.</summary>
    public static EmitterSpec Emitter(LightParts parts)
    {
        var e = parts.Emitter;
        return new(
            [.. e.Points.Select(p => new Steps.EmitterPoint(p.Current.Nominal, p.Voltage.Nominal, p.Flux.Nominal))],
            e.Reference.Nominal,
            e.Rated is { } r
                ? new(r.VoltageLeast.Nominal, r.VoltageMost.Nominal, r.Current.Nominal, r.Flux.Nominal)
                : null,
            e.VoltageSlope?.Nominal,
            e.FluxHot is { } h ? new(h.At.Nominal, h.Factor.Nominal) : null,
            e.CurrentMax?.Nominal,
            parts.EmitterPath
        );
    }

    /// <summary>The driver's spec; null when its rated current is not known.</summary>
    public static DriverSpec? Driver(Driver? driver)
    {
        if (driver is not { } d || (d.Rated ?? d.Sense?.MeasuredAt) is not { } rated)
        {
            return null;
        }

        return new(
            rated.Nominal,
            d.Least?.Nominal,
            d.WindowLeast?.Nominal,
            d.WindowMost?.Nominal,
            d.Efficiency.Nominal,
            Sense(d.Sense, d.Rated),
            d.Isolated switch
            {
                Known.Yes => Isolation.Yes,
                Known.No => Isolation.No,
                _ => Isolation.Unknown,
            },
            d.OverVoltage?.Nominal,
            d.OverThen switch
            {
                "clamps" => OverVoltage.Clamps,
                "trips" => OverVoltage.Trips,
                _ => OverVoltage.Unknown,
            },
            d.Under switch
            {
                "hiccups" => UnderVoltage.Hiccups,
                "stops" => UnderVoltage.Stops,
                _ => UnderVoltage.Unknown,
            },
            "driver." + d.Name,
            d.Limit?.Nominal
        );
    }

    /// <summary>What else is known of the driver, for the comparison of ways.</summary>
    public static DriverSurroundings Surroundings(Driver d) =>
        new(
            d.InputLeast?.Nominal,
            d.InputMost?.Nominal,
            d.InputOn?.Nominal,
            d.InputOff?.Nominal,
            d.OutputCapacitor?.Nominal,
            d.PowerFactor?.Nominal,
            d.Restart?.Nominal,
            d.Dimming switch
            {
                DimmingKind.None => DimmingInput.None,
                DimmingKind.OneToTenVolts => DimmingInput.OneToTenVolts,
                DimmingKind.Chopped => DimmingInput.Chopped,
                DimmingKind.Voltage => DimmingInput.Voltage,
                _ => DimmingInput.Unknown,
            },
            d.DimmingLeast?.Nominal,
            d.Restart?.HalfWidth ?? 0,
            d.OutputCapacitor?.HalfWidth ?? 0
        );

    /// <summary>What feeds the driver; null when the design does not say.</summary>
    public static SupplySpec? Supply(Place place) =>
        place.Supply is { } s
            ? new(s.Kind == SupplyKind.Ac, s.Voltage.Nominal, s.Frequency?.Nominal, s.Resistance?.Nominal)
            : null;

    /// <summary>The chain's spec.</summary>
    /// <param name="steps">What the design says.</param>
    /// <param name="first">The resistor that is never by-passed.</param>
    /// <param name="switched">The switched ones.</param>
    public static ChainSpec Chain(Design.Steps steps, ResistorPart first, IReadOnlyList<ResistorPart> switched)
    {
        var kind = steps.Part;
        return new(
            steps.Arrangement switch
            {
                Design.Arrangement.ParallelBranches => Steps.Arrangement.ParallelBranches,
                Design.Arrangement.Selector => Steps.Arrangement.Selector,
                _ => Steps.Arrangement.SeriesChain,
            },
            first,
            switched,
            steps.ContactTypical.Nominal,
            steps.ContactMost.Nominal,
            new(steps.LeadLength.Nominal, steps.LeadArea.Nominal * 1e6, Tinned: steps.LeadTinned),
            steps.Selector switch
            {
                Design.SelectorKind.MakeBeforeBreak => Steps.SelectorKind.MakeBeforeBreak,
                Design.SelectorKind.BreakBeforeMake => Steps.SelectorKind.BreakBeforeMake,
                _ => Steps.SelectorKind.Unknown,
            },
            TempcoIsLimit: kind.Tempco.HalfWidth <= 0,
            Taps: steps.Taps == Design.SenseTaps.AtTheChainsEnds
                ? Steps.SenseTaps.AtTheChainsEnds
                : Steps.SenseTaps.OnTheBoard,
            BleedOhm: steps.Bleed?.Nominal,
            FloorOhm: steps.Floor?.Nominal,
            FallbackOhm: steps.Fallback?.Nominal,
            Fails: kind.Fails switch
            {
                ResistorFails.Open => FailureKind.Open,
                ResistorFails.ShortOrOpen => FailureKind.ShortOrOpen,
                _ => FailureKind.Unknown,
            },
            ContactMostA: steps.ContactRating?.Nominal,
            LeadsApart: steps.LeadsApart,
            LeastOhm: kind.Least?.Nominal
        );
    }

    /// <summary>A resistor of the kind that the design names for all.</summary>
    /// <param name="steps">What the design says.</param>
    /// <param name="ohm">Its resistance in ohm.</param>
    /// <param name="ratingW">Its own rated power in watts; null for that of all.</param>
    /// <param name="tolerance">Its own tolerance as a share; null for that of all.</param>
    public static ResistorPart Part(Design.Steps steps, double ohm, double? ratingW = null, double? tolerance = null)
    {
        var kind = steps.Part;
        return new(ohm, kind.Tempco.Nominal, ratingW ?? kind.Rating.Nominal, kind.FullTo.Nominal, kind.ZeroAt.Nominal)
        {
            Tolerance = tolerance,
        };
    }

    /// <summary>A position that the maker has chosen.</summary>
    public static ResistorPart Part(Design.Steps steps, ChosenPosition position)
    {
        ResistorPart One(int i) =>
            Part(
                steps,
                position.Parts[i].Nominal,
                position.Ratings.Count == 0 ? null : position.Ratings[Math.Min(i, position.Ratings.Count - 1)].Nominal,
                Spread(position.Parts[i])
            );
        return position.Joining == Joining.One || position.Parts.Count < 2
            ? One(0)
            : ResistorPart.Of(
                position.Joining == Joining.InSeries ? Steps.ChainProof.Joint.Series : Steps.ChainProof.Joint.Parallel,
                One(0),
                One(1)
            );
    }

    /// <summary>A part of the drawer.</summary>
    public static ResistorPart Part(Design.Steps steps, DrawerPart part) =>
        Part(steps, part.Ohm.Nominal, part.Rating?.Nominal, Spread(part.Ohm));

    /// <summary>A position that a search has picked.</summary>
    public static ResistorPart Part(Design.Steps steps, PositionParts position)
    {
        ResistorPart One(StockPart p) => Part(steps, p.Ohm, p.RatingW, p.OwnTolerance ? p.Tolerance : null);
        return position.Second is { } second
            ? ResistorPart.Of(position.Joint, One(position.First), One(second))
            : One(position.First);
    }

    private static SenseSpec Sense(Sense? sense, Value? rated) =>
        new(
            sense?.Marks ?? [],
            sense?.Resistance?.Nominal,
            sense?.MeasuredAt?.Nominal,
            sense is { Resistance: { } ohm, MeasuredAt: { } at } ? new(ohm.Nominal, at.Nominal) : null,
            sense?.Side switch
            {
                Design.SenseSide.Secondary => Steps.SenseSide.Secondary,
                Design.SenseSide.Primary => Steps.SenseSide.Primary,
                _ => Steps.SenseSide.Unknown,
            },
            sense?.Carries switch
            {
                SenseCurrent.Smooth => SenseCarries.Smooth,
                SenseCurrent.Pulsed => SenseCarries.Pulsed,
                _ => SenseCarries.Unknown,
            },
            sense?.Control switch
            {
                Design.SenseControl.Average => Steps.SenseControl.Average,
                Design.SenseControl.Peak => Steps.SenseControl.Peak,
                Design.SenseControl.Primary => Steps.SenseControl.Primary,
                _ => Steps.SenseControl.Unknown,
            },
            sense?.InductorRipple?.Nominal,
            // A limit to either side: with a spread of its own it is the most that counts.
            sense?.Offset
                is { } offset
                ? offset.Nominal + offset.HalfWidth
                : null,
            sense?.Second is { } second ? new(second.Resistance.Nominal, second.Current.Nominal) : null,
            Spread(sense?.Resistance),
            Spread(sense?.MeasuredAt ?? rated)
        );

    // The draws scatter a value that has a spread of its own (DriverDraws); the threshold's own error leaves it out.
    private static double? Spread(Value? value) =>
        value is { HalfWidth: > 0, Nominal: not 0 } v ? Math.Abs(v.HalfWidth / v.Nominal) : null;
}
