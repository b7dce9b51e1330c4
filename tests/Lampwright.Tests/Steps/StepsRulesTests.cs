using Lampwright.Findings;
using Lampwright.Steps;

namespace Lampwright.Tests.Steps;

public class StepsRulesTests
{
    private static ResistorPart Part(double ohm, double watts = 3) => new(ohm, 0, watts, 343.15, 428.15);

    // A light that raises nothing; every test turns one thing over its limit, and just inside it.
    private static readonly StepsSpec Good = new(
        new([new(0.2, 33, 1050), new(0.9, 34.9, 4350), new(1.8, 37.2, 7900)], VoltageSlopePerK: -18e-3, MostA: 2.0),
        new(
            1.75,
            0.2,
            24,
            42,
            0.89,
            new(["R33", "R33"], MeasuredA: 1.74, Side: SenseSide.Secondary, Carries: SenseCarries.Smooth),
            Isolation.Yes
        ),
        new(Arrangement.SeriesChain, Part(0.17), [Part(0.1), Part(0.2), Part(0.39)], 0.001, 0.002)
    );

    private static StepsSpec Sense(Func<SenseSpec, SenseSpec> change) =>
        Good with
        {
            Driver = Good.Driver with { Sense = change(Good.Driver.Sense) },
        };

    private static StepsSpec Fixed(double ohm) => Good with { Chain = Good.Chain! with { Fixed = Part(ohm) } };

    private static void Raised(Rule rule, StepsSpec spec)
    {
        var findings = StepsStation.Evaluate(spec).Findings;
        Assert.True(findings.Any(f => f.Rule == rule), $"{rule.Code} not raised: {string.Join("; ", findings)}");
    }

    private static void Silent(Rule rule, StepsSpec spec)
    {
        var findings = StepsStation.Evaluate(spec).Findings;
        Assert.True(findings.All(f => f.Rule != rule), $"{rule.Code} raised: {string.Join("; ", findings)}");
    }

    [Fact]
    public void Good_light_raises_nothing() => Assert.Empty(StepsStation.Evaluate(Good).Findings);

    [Theory]
    [InlineData(SenseSide.Primary)]
    [InlineData(SenseSide.Unknown)]
    public void Sense_not_secondary_is_a_stop_that_protects_people(SenseSide side)
    {
        Raised(StepsRules.SenseNotSecondary, Sense(s => s with { Side = side }));
        Assert.True(StepsRules.SenseNotSecondary is { Severity: Severity.Stop, ProtectsPeople: true });
    }

    [Theory]
    [InlineData(Isolation.No)]
    [InlineData(Isolation.Unknown)]
    public void Output_not_isolated_is_a_stop_that_protects_people(Isolation isolated)
    {
        Raised(StepsRules.OutputNotIsolated, Good with { Driver = Good.Driver with { Isolated = isolated } });
        Assert.True(StepsRules.OutputNotIsolated is { Severity: Severity.Stop, ProtectsPeople: true });
    }

    [Theory]
    [InlineData(SenseCarries.Pulsed)]
    [InlineData(SenseCarries.Unknown)]
    public void Pulsed_sense_is_a_stop_that_protects_people(SenseCarries carries)
    {
        Raised(StepsRules.PulsedSense, Sense(s => s with { Carries = carries }));
        Assert.True(StepsRules.PulsedSense is { Severity: Severity.Stop, ProtectsPeople: true });
    }

    [Fact]
    public void Without_wires_that_leave_the_driver_nobody_is_asked_for_its_side()
    {
        var untouched = Sense(s => s with { Side = SenseSide.Unknown, Carries = SenseCarries.Unknown }) with
        {
            Chain = null,
        };
        Silent(StepsRules.SenseNotSecondary, untouched);
        Silent(StepsRules.PulsedSense, untouched);
    }

    [Fact]
    public void More_than_the_emitter_takes()
    {
        var most = StepsStation.Evaluate(Good).Chain!.MostA;
        Raised(StepsRules.OverEmitter, Good with { Emitter = Good.Emitter with { MostA = most * 0.999 } });
        Silent(StepsRules.OverEmitter, Good with { Emitter = Good.Emitter with { MostA = most * 1.001 } });
        Raised(StepsRules.OverEmitter, Good with { Chain = null, Emitter = Good.Emitter with { MostA = 1.7 } });
        Silent(StepsRules.OverEmitter, Good with { Chain = null });
    }

    [Fact]
    public void More_than_the_driver_is_rated_for()
    {
        Raised(StepsRules.OverRated, Fixed(0.155));
        Silent(StepsRules.OverRated, Fixed(0.165));
        Raised(StepsRules.FarOverRated, Fixed(0.143));
        Silent(StepsRules.FarOverRated, Fixed(0.155));
    }

    [Fact]
    public void Less_than_the_driver_holds()
    {
        var least = StepsStation.Evaluate(Good).Chain!.LeastA;
        Raised(StepsRules.UnderLeast, Good with { Driver = Good.Driver with { LeastA = least * 1.001 } });
        Silent(StepsRules.UnderLeast, Good with { Driver = Good.Driver with { LeastA = least * 0.999 } });
    }

    [Fact]
    public void Resistor_over_and_near_its_derated_rating()
    {
        var watts = StepsStation.Evaluate(Good).Chain!.Combinations[0].Resistors[0].PowerW;
        StepsSpec Rated(double w) => Good with { Chain = Good.Chain! with { Fixed = Part(0.17, w) } };
        Raised(StepsRules.ResistorOver, Rated(watts * 0.999));
        Silent(StepsRules.ResistorOver, Rated(watts * 1.001));
        Raised(StepsRules.ResistorNear, Rated(watts / 0.701));
        Silent(StepsRules.ResistorNear, Rated(watts / 0.699));
        Raised(StepsRules.ResistorOver, Good with { AirK = 430 });
    }

    [Fact]
    public void Emitter_outside_the_window()
    {
        var w = StepsStation.Evaluate(Good).Window;
        Raised(StepsRules.OverWindow, Good with { Driver = Good.Driver with { WindowMostV = w.MostV - 0.01 } });
        Silent(StepsRules.OverWindow, Good with { Driver = Good.Driver with { WindowMostV = w.MostV + 0.01 } });
        Raised(StepsRules.UnderWindow, Good with { Driver = Good.Driver with { WindowLeastV = w.LeastV + 0.01 } });
        Silent(StepsRules.UnderWindow, Good with { Driver = Good.Driver with { WindowLeastV = w.LeastV - 0.01 } });
        Silent(StepsRules.UnderWindow, Good with { Driver = Good.Driver with { WindowLeastV = null } });
    }

    [Theory]
    [InlineData(OverVoltage.Clamps, "holds")]
    [InlineData(OverVoltage.Trips, "trips")]
    [InlineData(OverVoltage.Unknown, "may clamp")]
    public void Window_says_what_the_driver_does(OverVoltage over, string word)
    {
        var w = StepsStation.Evaluate(Good with { Driver = Good.Driver with { WindowMostV = 30, Over = over } }).Window;
        Assert.Contains(word, w.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Threshold_not_plausible()
    {
        Raised(StepsRules.ImplausibleThreshold, Sense(s => s with { Marks = ["1R0"] }));
        Silent(StepsRules.ImplausibleThreshold, Sense(s => s with { Marks = ["R68"] }));
        Raised(StepsRules.UnusualThreshold, Sense(s => s with { Marks = ["R68"] }));
        Silent(StepsRules.UnusualThreshold, Sense(s => s with { Marks = ["R27"] }));
    }

    [Fact]
    public void Marks_that_cannot_be_read()
    {
        Raised(StepsRules.UnreadableMarks, Sense(s => s with { Marks = ["R33", "R3E3"] }));
        Silent(StepsRules.UnreadableMarks, Good);
        Raised(StepsRules.NoThreshold, Sense(s => s with { Marks = [] }));
        Silent(StepsRules.NoThreshold, Sense(s => s with { Marks = [], Ohm = 0.165 }));
    }

    [Fact]
    public void Emitter_beyond_its_points()
    {
        var least = StepsStation.Evaluate(Good).Chain!.LeastA;
        StepsSpec From(double amps) =>
            Good with
            {
                Emitter = Good.Emitter with { Points = [new(amps, 33, 1500), .. Good.Emitter.Points.Skip(1)] },
            };
        Raised(StepsRules.Extrapolated, From(least * 1.26));
        Silent(StepsRules.Extrapolated, From(least * 1.24));
    }

    [Fact]
    public void Sense_facts_contradict()
    {
        Raised(StepsRules.Contradiction, Sense(s => s with { MeasuredA = 1.75 * 1.11 }));
        Silent(StepsRules.Contradiction, Sense(s => s with { MeasuredA = 1.75 * 1.09 }));
        Raised(StepsRules.Contradiction, Sense(s => s with { MeasuredPair = new(0.33, 1.74) }));
    }

    [Fact]
    public void Contacts_take_too_much()
    {
        StepsSpec Contact(double ohm) =>
            Good with
            {
                Chain = Good.Chain! with { ContactOhm = ohm, ContactMostOhm = null },
            };
        Raised(StepsRules.ContactShare, Contact(0.008));
        Silent(StepsRules.ContactShare, Contact(0.005));
        Raised(StepsRules.ContactShare, Good with { Chain = Good.Chain! with { ContactMostOhm = 0.010 } });
    }

    [Fact]
    public void Points_and_flux()
    {
        StepsSpec Points(params EmitterPoint[] points) => Good with { Emitter = Good.Emitter with { Points = points } };
        Raised(StepsRules.UnphysicalPoints, Points(new(0.2, 36), new(0.9, 35), new(1.8, 34)));
        Silent(StepsRules.UnphysicalPoints, Good);
        Raised(StepsRules.FewPoints, Points(new(0.2, 33, 1050), new(1.8, 37.2, 7900)));
        Silent(StepsRules.FewPoints, Good);
        Raised(StepsRules.NoFlux, Points(new(0.2, 33), new(0.9, 34.9), new(1.8, 37.2)));
        Silent(StepsRules.NoFlux, Good);
    }

    [Fact]
    public void Selector_that_opens()
    {
        StepsSpec Selector(SelectorKind kind) =>
            Good with
            {
                Chain = Good.Chain! with { Arrangement = Arrangement.Selector, Selector = kind },
            };
        Raised(StepsRules.SelectorOpens, Selector(SelectorKind.Unknown));
        Raised(StepsRules.SelectorOpens, Selector(SelectorKind.BreakBeforeMake));
        Silent(StepsRules.SelectorOpens, Selector(SelectorKind.MakeBeforeBreak));
    }

    [Fact]
    public void Chain_that_cannot_be_computed()
    {
        StepsSpec Switches(int count) =>
            Good with
            {
                Chain = Good.Chain! with { Switched = [.. Enumerable.Repeat(Part(0.1), count)] },
            };
        Raised(StepsRules.NotComputable, Switches(11));
        Silent(StepsRules.NotComputable, Switches(10));
        Raised(StepsRules.NotComputable, Fixed(0));
        Raised(StepsRules.NotComputable, Good with { Chain = Good.Chain! with { ContactOhm = double.NaN } });
    }

    [Fact]
    public void Wanted_step_missed_by_more_than_a_third_of_a_stop()
    {
        Assert.Null(StepsRules.Missed("steps.targets", 1, Math.Pow(2, 0.33)));
        Assert.Equal(StepsRules.StepMissed, StepsRules.Missed("steps.targets", 1, Math.Pow(2, -0.34))!.Rule);
    }

    [Fact]
    public void Limits_can_be_overridden_but_not_those_that_protect_people()
    {
        var loose = new StepsLimits(10, 10, 10, 10, 10);
        Silent(StepsRules.ContactShare, Good with { Chain = Good.Chain! with { ContactOhm = 0.05 }, Limits = loose });
        Raised(StepsRules.SenseNotSecondary, Sense(s => s with { Side = SenseSide.Unknown }) with { Limits = loose });
    }

    [Fact]
    public void Warm_keeps_fit_and_network()
    {
        var first = StepsStation.Evaluate(Good);
        var warm = StepsStation.Warm(Good with { AirK = 350, HotJunctionK = 360 }, first);
        Assert.Same(first.Network, warm.Network);
        Assert.Same(first.Emitter, warm.Emitter);
        Assert.True(warm.Window.LeastV > first.Window.LeastV);
        Assert.Equal(StepsStation.Evaluate(Good with { AirK = 350, HotJunctionK = 360 }).Window, warm.Window);
    }

    [Fact]
    public void Codes_are_unique_and_of_the_house_form()
    {
        Assert.Equal(StepsRules.All.Count, StepsRules.All.Select(r => r.Code).Distinct().Count());
        Assert.All(StepsRules.All, r => Assert.Matches("^STP[0-9]{3}$", r.Code));
    }
}
