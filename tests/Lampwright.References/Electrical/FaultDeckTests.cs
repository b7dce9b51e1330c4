using Lampwright.References.Electrical.Decks;
using Lampwright.Steps;
using Lampwright.Steps.Faults;

namespace Lampwright.References.Electrical;

/// <summary>Single faults beside a general-purpose circuit simulator: Decks/sense-chain.cir, drawn by hand, run by ngspice until it rests.</summary>
/// <remarks>Emitter current and sense voltage agree within 1 %, or 2 mA and 2 mV where the light is dark.</remarks>
public class FaultDeckTests
{
    private const double Off = 1e9;
    private const double Wire = 1e-5;
    private const double Contact = 0.01;
    private const double Lead = 0.012;

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "Electrical", "Decks");

    private static ResistorPart Part(double ohm) => new(ohm, 0, 3, 343.15, 428.15);

    // 12 mohm a lead: 0.0013 ohm/m · (230 + 20)/250.
    private static ChainSpec Series { get; } =
        new(Arrangement.SeriesChain, Part(0.2), [Part(0.2), Part(0.39)], Contact, null, new(Lead / 0.0195, 1));

    private static ChainSpec Taps { get; } =
        Series with
        {
            Taps = SenseTaps.AtTheChainsEnds,
            FallbackOhm = 100,
            BleedOhm = 1,
        };

    private static ChainSpec Branches { get; } = Series with { Arrangement = Arrangement.ParallelBranches };

    private static ChainSpec Selects { get; } =
        Series with
        {
            Arrangement = Arrangement.Selector,
            Selector = SelectorKind.Unknown,
        };

    private static Dictionary<string, double> Deck(ChainSpec chain, int closed)
    {
        var p = new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["vth"] = 0.2,
            ["ilim"] = 3,
            ["vover"] = 46,
            ["knee"] = 30,
            ["slope"] = 3,
            ["rledp"] = Wire,
            ["rledm"] = Wire,
            ["rout"] = Lead,
        };
        foreach (
            var name in "rfix_low rfix_g rbleed_g rbleed_low rfloor rback_g rback_low rtap r1 rsw1 r2 rsw2 rp1 rpsw1 rp2 rpsw2 rtouch_low_g rtouch_m_g rtouch_low_m rswap_k_g rswap_q_low".Split(
                ' '
            )
        )
        {
            p[name] = Off;
        }

        var (first, second) = ((closed & 1) == 1 ? Contact : Off, (closed & 2) == 2 ? Contact : Off);
        p["rsense"] = chain.HasTapLead ? chain.FallbackOhm ?? 1e15 : Wire;
        if (chain.HasTapLead)
        {
            (p["rfix_g"], p["rback_low"], p["rtap"], p["rbleed_low"]) = (0.2, Lead, Lead, chain.BleedOhm ?? Off);
        }
        else if (chain.Arrangement == Arrangement.ParallelBranches)
        {
            (p["rfix_g"], p["rback_g"], p["rfloor"]) = (0.2, Lead, chain.FloorOhm ?? Wire);
        }
        else
        {
            (p["rfix_low"], p["rback_g"], p["rbleed_g"]) = (0.2, Lead, chain.BleedOhm ?? Off);
        }

        if (chain.Arrangement == Arrangement.SeriesChain)
        {
            (p["r1"], p["r2"], p["rsw1"], p["rsw2"]) = (0.2, 0.39, first, second);
        }
        else
        {
            (p["rp1"], p["rp2"], p["rpsw1"], p["rpsw2"]) = (0.2, 0.39, first, second);
        }

        return p;
    }

    // Leads: 0 LED +, 1 LED −, 2 out, 3 back, 4 tap. The changes of the deck are written out by hand for every case.
    private static readonly Dictionary<
        string,
        (ChainSpec Chain, Fault Fault, int Closed, (string Name, double Ohm)[] Changes)
    > Cases = new(StringComparer.Ordinal)
    {
        ["series, sound"] = (Series, default, 3, []),
        ["series, all open"] = (Series, default, 0, []),
        ["series, S1 never closes"] = (Series, new(FaultKind.SwitchOpen, 0), 3, [("rsw1", Off)]),
        ["series, S2 never opens"] = (Series, new(FaultKind.SwitchClosed, 1), 0, [("rsw2", Contact)]),
        ["series, R0 short"] = (Series, new(FaultKind.ResistorShort, 0), 3, [("rfix_low", Wire)]),
        ["series, R0 open"] = (Series, new(FaultKind.ResistorOpen, 0), 3, [("rfix_low", Off)]),
        ["series, R2 open"] = (Series, new(FaultKind.ResistorOpen, 2), 1, [("r2", Off)]),
        ["series, R1 short"] = (Series, new(FaultKind.ResistorShort, 1), 0, [("r1", Wire)]),
        ["series, out broken"] = (Series, new(FaultKind.LeadBroken, 2), 3, [("rout", Off)]),
        ["series, LED + broken"] = (Series, new(FaultKind.LeadBroken, 0), 3, [("rledp", Off)]),
        ["series, out and back touch"] = (Series, new(FaultKind.LeadsTouch, 2, 3), 0, [("rtouch_m_g", Wire)]),
        ["series, LED − and back touch"] = (Series, new(FaultKind.LeadsTouch, 1, 3), 3, [("rtouch_low_g", Wire)]),
        ["series, LED − and out touch"] = (Series, new(FaultKind.LeadsTouch, 1, 2), 0, [("rtouch_low_m", Wire)]),
        ["series, LED − and back swapped"] = (
            Series,
            new(FaultKind.LeadsSwapped, 1, 3),
            3,
            [("rledm", Off), ("rback_g", Off), ("rswap_k_g", Wire), ("rswap_q_low", Lead)]
        ),
        ["series, plate pulled"] = (Series, new(FaultKind.PlatePulled), 3, [("rout", Off), ("rback_g", Off)]),
        ["series with bleed, out broken"] = (
            Series with
            {
                BleedOhm = 1,
            },
            new(FaultKind.LeadBroken, 2),
            3,
            [("rout", Off)]
        ),
        ["series with bleed, sound"] = (Series with { BleedOhm = 1 }, default, 0, []),
        ["taps, sound"] = (Taps, default, 3, []),
        ["taps, tap broken"] = (Taps, new(FaultKind.LeadBroken, 4), 3, [("rtap", Off)]),
        ["taps, back broken"] = (Taps, new(FaultKind.LeadBroken, 3), 0, [("rback_low", Off)]),
        ["taps, plate pulled"] = (
            Taps,
            new(FaultKind.PlatePulled),
            3,
            [("rout", Off), ("rback_low", Off), ("rtap", Off)]
        ),
        ["taps without fallback, tap broken"] = (
            Taps with
            {
                FallbackOhm = null,
            },
            new(FaultKind.LeadBroken, 4),
            3,
            [("rtap", 1e15)]
        ),
        ["selector, sound at 1"] = (Selects, default, 1, []),
        ["selector, sound at 2"] = (Selects, default, 2, []),
        ["selector, position 2 open"] = (Selects, new(FaultKind.SwitchOpen, 1), 2, [("rpsw2", Off)]),
        ["selector, position 1 always closed"] = (Selects, new(FaultKind.SwitchClosed, 0), 2, [("rpsw1", Contact)]),
        ["selector, breaks before it makes"] = (
            Selects,
            new(FaultKind.BetweenPositions),
            1,
            [("rpsw1", Off), ("rpsw2", Off)]
        ),
        ["selector, makes before it breaks"] = (
            Selects,
            new(FaultKind.BothPositions, 0),
            1,
            [("rpsw1", Contact), ("rpsw2", Contact)]
        ),
        ["selector, wiper stuck at 1"] = (
            Selects,
            new(FaultKind.SelectorStuck, 0),
            2,
            [("rpsw1", Contact), ("rpsw2", Off)]
        ),
        ["selector, wiper stuck at 2"] = (
            Selects,
            new(FaultKind.SelectorStuck, 1),
            1,
            [("rpsw1", Off), ("rpsw2", Contact)]
        ),
        ["selector, the wiper's lead broken"] = (Selects, new(FaultKind.LeadBroken, 3), 1, [("rback_g", Off)]),
        ["selector, the common lead broken"] = (Selects, new(FaultKind.LeadBroken, 2), 2, [("rout", Off)]),
        ["selector, R1 short"] = (Selects, new(FaultKind.ResistorShort, 1), 1, [("rp1", Wire)]),
        ["selector, R2 open"] = (Selects, new(FaultKind.ResistorOpen, 2), 2, [("rp2", Off)]),
        ["selector, out and back touch"] = (Selects, new(FaultKind.LeadsTouch, 2, 3), 2, [("rtouch_m_g", Wire)]),
        ["selector, LED − and back touch"] = (Selects, new(FaultKind.LeadsTouch, 1, 3), 2, [("rtouch_low_g", Wire)]),
        ["selector, plate pulled"] = (Selects, new(FaultKind.PlatePulled), 1, [("rout", Off), ("rback_g", Off)]),
        ["selector with bleed, breaks before it makes"] = (
            Selects with
            {
                BleedOhm = 1,
            },
            new(FaultKind.BetweenPositions),
            2,
            [("rpsw1", Off), ("rpsw2", Off)]
        ),
        ["selector with taps, breaks before it makes"] = (
            Taps with
            {
                Arrangement = Arrangement.Selector,
            },
            new(FaultKind.BetweenPositions),
            1,
            [("rpsw1", Off), ("rpsw2", Off)]
        ),
        ["selector with taps, tap broken"] = (
            Taps with
            {
                Arrangement = Arrangement.Selector,
            },
            new(FaultKind.LeadBroken, 4),
            2,
            [("rtap", Off)]
        ),
        ["selector with taps, wiper stuck at 2"] = (
            Taps with
            {
                Arrangement = Arrangement.Selector,
            },
            new(FaultKind.SelectorStuck, 1),
            1,
            [("rpsw1", Off), ("rpsw2", Contact)]
        ),
        ["parallel, sound"] = (Branches, default, 3, []),
        ["parallel, R2 short"] = (Branches, new(FaultKind.ResistorShort, 2), 2, [("rp2", Wire)]),
        ["parallel, out and back touch"] = (Branches, new(FaultKind.LeadsTouch, 2, 3), 3, [("rtouch_m_g", Wire)]),
        ["parallel with floor, out and back touch"] = (
            Branches with
            {
                FloorOhm = 0.15,
            },
            new(FaultKind.LeadsTouch, 2, 3),
            3,
            [("rtouch_m_g", Wire)]
        ),
        ["parallel with floor, back broken"] = (
            Branches with
            {
                FloorOhm = 0.15,
            },
            new(FaultKind.LeadBroken, 3),
            3,
            [("rback_g", Off)]
        ),
    };

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Agrees_with_the_circuit_simulator(string name)
    {
        Assert.SkipWhen(SpiceDeck.Program is null, "ngspice is not installed (Debian: ngspice).");
        var (chain, fault, closed, changes) = Cases[name];
        var driver = new DriverSpec(
            1,
            null,
            20,
            44,
            0.9,
            new([]),
            Isolation.Yes,
            46,
            OverVoltage.Clamps,
            UnderVoltage.Stops,
            LimitA: 3
        );
        var spec = new FaultsSpec(chain, new(0.2, 0.2, 0, 0.9), driver, new(30, 3, 2), 293.15);
        var ours = FaultPoints.At(new(chain, 293.15), spec, fault, closed, Contact, [], []);

        var deck = Deck(chain, closed);
        foreach (var (part, ohm) in changes)
        {
            deck[part] = ohm;
        }

        var rest = new SpiceDeck("sense-chain", deck).Run(Folder)[^1];
        var (amps, sense) = (rest.A, rest.V);
        Assert.True(
            Math.Abs(ours.EmitterMostA - amps) <= Math.Max(0.01 * amps, 2e-3),
            $"{name}: {ours.EmitterMostA} A, ngspice {amps} A"
        );

        // Where nothing conducts, what leaks decides the pad; only that it stays small is said.
        if (amps > 2e-3 && ours.SenseV < 1e3)
        {
            Assert.True(
                Math.Abs(ours.SenseV - sense) <= Math.Max(0.01 * Math.Abs(sense), 2e-3),
                $"{name}: sense {ours.SenseV} V, ngspice {sense} V"
            );
        }
    }
}
