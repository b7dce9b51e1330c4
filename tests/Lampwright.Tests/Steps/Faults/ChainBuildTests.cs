using CsCheck;
using Lampwright.Steps;
using Lampwright.Steps.Faults;

namespace Lampwright.Tests.Steps.Faults;

public class ChainBuildTests
{
    private static readonly CornerSpec Off = new(0.01, 0.01, 0.02);

    private static ChainBuild Build(ChainSpec chain) => ChainBuilds.Of(FaultChains.Spec(chain), new(chain), Off);

    [Fact]
    public void Leads_say_drop_and_heat_and_whether_they_count()
    {
        var build = Build(FaultChains.Series);
        Assert.Equal(["LED +", "LED −", "out", "back"], build.Leads.Select(l => l.Name));
        var lead = build.Leads[2];
        Assert.Equal(0.12 * 0.026 * ((230 + 40) / 250.0), lead.Ohm!.Value, 9);
        Assert.Equal(lead.Ohm.Value * lead.MostA * lead.MostA, lead.HeatW!.Value, 9);
        Assert.True(build.Leads[3].InLoop);
        Assert.False(Build(FaultChains.Taps).Leads.Single(l => l.Name == "back").InLoop);
        Assert.True(Build(FaultChains.Taps).Leads.Single(l => l.Name == "out").InLoop);
    }

    [Fact]
    public void A_meter_shows_all_leads_cold()
    {
        var row = Build(FaultChains.Series).Patterns[^1];
        Assert.Equal("0000", row.Switches);
        var lead = 2 * 0.12 * 0.026 * ((230 + 25) / 250.0);
        Assert.Equal(0.195 + 0.13 + 0.16 + 0.24 + 0.36 + lead, row.Ohm, 9);
        Assert.Equal(((0.195 + 0.13 + 0.16 + 0.24 + 0.36) * 1.01) + (lead * 1.07), row.MostOhm, 9);
        Assert.Equal(row.CurrentA * 0.195, row.FixedV, 12);
    }

    [Fact]
    public void Resistors_dissipate_what_their_current_asks()
    {
        var build = Build(FaultChains.Series);
        var most = build.Patterns.Max(p => p.CurrentA);
        Assert.Equal(most * most * 0.195, build.Resistors[0].MostW, 6);
        Assert.True(build.Resistors.All(r => r.Mounting.Length > 0));
        Assert.All(build.Contacts, c => Assert.True(c.OpenV < 0.339 && c.MostA == most));
    }

    [Fact]
    public void A_bleed_is_offered_that_dims_a_loose_lead()
    {
        var offer = Build(FaultChains.Series).Bleed!;
        Assert.False(offer.Given);
        Assert.True(offer.LooseA <= offer.DimmestA * 1.25, $"{offer}");
        Assert.True(offer.LooseA >= 0.25, $"under what the driver holds: {offer}");
        Assert.True(Math.Abs(offer.BrightestShift) < 0.02, $"{offer}");
        Assert.True(Build(FaultChains.Series with { BleedOhm = 1.5 }).Bleed!.Given);
        Assert.Null(Build(FaultChains.Branches).Bleed);
        Assert.Equal(0.339 / 2.0, Build(FaultChains.Branches).FloorOhm!.Value, 12);
    }

    // E.Y-10, published (EDN, 26 Sep 1996): Inominal ≥ Iop/0.75.
    [Theory]
    [InlineData(24, 24, 1, false, 1.0, 1.6)]
    [InlineData(72, 24, 1, false, 3.0, 4.0)]
    [InlineData(69, 230, 0.6, true, 0.5, 0.8)]
    public void A_fuse_carries_the_working_current_for_good(
        double watts,
        double volts,
        double factor,
        bool isAc,
        double working,
        double rating
    )
    {
        var fuse = SupplyFuse.Of(watts, volts, factor, isAc);
        Assert.Equal(working, fuse.WorkingA, 9);
        Assert.Equal(rating, fuse.RatingA!.Value, 9);
        Assert.True(fuse.RatingA * 0.75 >= fuse.WorkingA);
    }

    [Fact]
    public void No_draw_lies_beyond_the_worst_corner()
    {
        foreach (
            var chain in new[] { FaultChains.Series, FaultChains.Taps, FaultChains.Branches, FaultChains.Selector }
        )
        {
            var warm = chain with
            {
                Fixed = chain.Fixed with { TempcoPerK = 100e-6 },
                Switched = [.. chain.Switched.Select(r => r with { TempcoPerK = 100e-6 })],
                TempcoIsLimit = true,
            };
            var network = new ChainNetwork(warm);
            var driver = FaultChains.Spec(warm).Law;
            var corners = WorstCorners.Of(network, driver, 320, Off);
            var n = network.SwitchCount;
            Gen.Double[-1, 1]
                .Array[(2 * n) + 6]
                .Sample(
                    u =>
                    {
                        var amps = new double[network.CombinationCount];
                        var draw = new ChainDraw
                        {
                            Driver = driver.With(1 + (0.02 * u[0]), 1, 1),
                            AirK = 320,
                            OhmFactors = [.. u.Skip(6).Take(n + 1).Select(x => 1 + (0.01 * x))],
                            ContactOhms = [.. u.Skip(5).Take(Math.Max(n, 1)).Select(x => 0.006 * (1 + x))],
                            TempcoFactor = u[1],
                            LeadFactor = 1 + (0.07 * u[2]),
                            RiseFactor = 1 + (0.3 * u[3]),
                        };
                        network.Currents(draw, amps);
                        for (var i = 0; i < amps.Length; i++)
                        {
                            Assert.InRange(amps[i], corners[i].LeastA * (1 - 1e-6), corners[i].MostA * (1 + 1e-6));
                            Assert.True(corners[i].ChainLeastA >= corners[i].LeastA);
                        }
                    },
                    seed: "0000lampft05",
                    iter: 200
                );
        }
    }
}
