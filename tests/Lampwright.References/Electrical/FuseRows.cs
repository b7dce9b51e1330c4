using Lampwright.Steps;
using Lampwright.Steps.Faults;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md sections 6 and 8, as far as what is soldered rests on them.</summary>
public class FuseRows
{
    // E.Y-10, published (EDN, 26 Sep 1996): Inominal ≥ Iop/0.75 for the UL type.
    [Theory]
    [InlineData(0.75, 1.0)]
    [InlineData(1.5, 2.0)]
    [InlineData(3.0, 4.0)]
    public void Rating_of_a_fuse(double working, double least) =>
        Assert.Equal(least, SupplyFuse.LeastRatingA(working), 12);

    // E.Y-11, published (Littelfuse, Fuseology, chart 2): I²t of a pulse over the melting I²t, 10 s between pulses.
    [Theory]
    [InlineData(1e5, 0.22)]
    [InlineData(1e4, 0.29)]
    [InlineData(1e3, 0.38)]
    [InlineData(100, 0.48)]
    public void Pulses_that_a_fuse_lives_through(double pulses, double share) =>
        Assert.Equal(share, FusePulse.ShareEndured(pulses), 12);

    // E.Y-12a, derived (shape: Littelfuse, Fuseology, chart 1): half a sine of 20 A and 1 ms.
    [Fact]
    public void Half_a_sine() => Assert.Equal(0.200, FusePulse.HalfSineA2s(20, 1e-3), 12);

    // Section 6, derived: leads of E.S-5 (2 × 0.3 m of 0.5 mm², 39 ohm/km) count fully inside the loop, −10.5 %; a tap at the chain's far end takes
    // one of the two out: 0.2/(0.2 + 0.0117) = −5.53 %.
    [Theory]
    [InlineData(SenseTaps.OnTheBoard, -10.5, 0.1)]
    [InlineData(SenseTaps.AtTheChainsEnds, -5.53, 0.01)]
    public void Taps_decide_what_the_leads_do(SenseTaps taps, double percent, double tolerance)
    {
        var part = new ResistorPart(0.2, 0, 3, 343.15, 428.15);
        var network = new ChainNetwork(new(Arrangement.SeriesChain, part, [], 0, null, new(0.3, 0.5), Taps: taps));
        var amps = new double[1];
        network.Currents(new ChainDraw { Driver = new(0.2, 0.2, 0, 0.9), AirK = 293.15 }, amps);
        var got = 100 * (amps[0] - 1);
        Assert.True(Math.Abs(got - percent) <= tolerance, $"{taps}: {got} %, expected {percent} %");
    }
}
