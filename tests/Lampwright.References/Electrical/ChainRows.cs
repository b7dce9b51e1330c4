using Lampwright.Steps;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md section 6.</summary>
public class ChainRows
{
    private static ResistorPart Part(double ohm) => new(ohm, 0, 3, 343.15, 428.15);

    private static double[] Currents(
        Arrangement arrangement,
        double fixedOhm,
        double[] switched,
        double contact = 0,
        LeadSpec? lead = null,
        double airK = 293.15
    )
    {
        var n = new ChainNetwork(new(arrangement, Part(fixedOhm), [.. switched.Select(Part)], contact, null, lead));
        var currents = new double[n.CombinationCount];
        n.Currents(new ChainDraw { Driver = new(0.2, 0.2, 0, 0.9), AirK = airK }, currents);
        return currents;
    }

    // E.S-1, derived: Vref 0.2 V, R0 0.2 ohm, steps of 1 EV from E24, thrown one after another; tolerance 1e-3.
    [Theory]
    [InlineData("1111", 1.000, 0)]
    [InlineData("0111", 0.5000, 0)]
    [InlineData("0011", 0.2532, +0.018)]
    [InlineData("0001", 0.1242, -0.009)]
    [InlineData("0000", 0.0623, -0.005)]
    public void Steps_of_one_stop(string switches, double amps, double errorStops)
    {
        var i = Currents(Arrangement.SeriesChain, 0.2, [0.2, 0.39, 0.82, 1.6])[15 - Convert.ToInt32(switches, 2)];
        var opened = switches.Count(c => c == '0');
        var error = Math.Log2(i) + opened;
        Assert.True(Math.Abs(i - amps) <= 1e-3, $"{switches}: {i} A, expected {amps} A");
        Assert.True(Math.Abs(error - errorStops) <= 1e-3, $"{switches}: {error} EV, expected {errorStops} EV");
    }

    // E.S-2a, d, e, derived with Rk·rc/(Rk+rc) replaced by rc: resistors so large that the difference is below the tolerance.
    [Theory]
    [InlineData(1, 0.010, -4.76, 0.01)] // E.S-2a
    [InlineData(4, 0.010, -16.67, 0.01)] // E.S-2a
    [InlineData(4, 0.050, -50, 0.1)] // E.S-2d
    [InlineData(4, 0.020, -28.6, 0.1)] // E.S-2e
    public void Closed_contacts_in_series(int count, double contact, double percent, double tolerance)
    {
        var i = Currents(Arrangement.SeriesChain, 0.2, [.. Enumerable.Repeat(1e4, count)], contact)[0];
        var got = 100 * (i - 1);
        Assert.True(Math.Abs(got - percent) <= tolerance, $"{count} x {contact} ohm: {got} %, expected {percent} %");
    }

    // E.S-2c, derived: chain of E.S-1, all four closed, 10 mohm contacts, exact.
    [Fact]
    public void Closed_contacts_exactly()
    {
        var got = 100 * (Currents(Arrangement.SeriesChain, 0.2, [0.2, 0.39, 0.82, 1.6], 0.010)[0] - 1);
        Assert.True(Math.Abs(got + 16.350) <= 0.001, $"{got} %, expected -16.350 %");
    }

    // E.S-3, derived: a contact error stays in its own branch.
    [Fact]
    public void Contact_in_a_branch()
    {
        double Branch(double contact)
        {
            var i = Currents(Arrangement.ParallelBranches, 0.2, [0.8], contact);
            return i[0] - i[1];
        }

        var got = 100 * ((Branch(0.010) / Branch(0)) - 1);
        Assert.True(Math.Abs(got + 1.23) <= 0.01, $"{got} %, expected -1.23 %");
    }

    // E.S-5, derived: 2 x 0.3 m of 0.5 mm2 (39 ohm/km).
    [Fact]
    public void Lead_in_the_loop()
    {
        var n = new ChainNetwork(new(Arrangement.SeriesChain, Part(0.2), [], 0, null, new(0.3, 0.5)));
        Assert.True(Math.Abs(n.LeadOhm(293.15) - 0.0234) < 1e-9, $"{n.LeadOhm(293.15)} ohm");
        var got = 100 * (Currents(Arrangement.SeriesChain, 0.2, [], 0, new(0.3, 0.5))[0] - 1);
        Assert.True(Math.Abs(got + 10.5) <= 0.1, $"{got} %, expected -10.5 %");
    }

    [Theory]
    [InlineData(75e-6, 60, 0.45)] // E.S-6a, derived
    [InlineData(100e-6, 60, 0.60)] // E.S-6b, derived
    public void Warm_resistor(double tempco, double rise, double percent)
    {
        // A part without self-heating worth speaking of in air that is that much warmer than 25 degC.
        var part = new ResistorPart(0.2, tempco, 1e6, 343.15, 428.15);
        var n = new ChainNetwork(new(Arrangement.SeriesChain, part, [], 0));
        var i = new double[1];
        n.Currents(new ChainDraw { Driver = new(0.2, 0.2, 0, 0.9), AirK = 298.15 + rise }, i);
        var got = 100 * ((1 / i[0]) - 1);
        Assert.True(Math.Abs(got - percent) <= 0.01, $"{tempco} over {rise} K: {got} %, expected {percent} %");
    }
}
