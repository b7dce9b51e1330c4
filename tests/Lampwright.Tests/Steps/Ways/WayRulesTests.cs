using Lampwright.Findings;
using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

public class WayRulesTests
{
    private static readonly WaysSpec Good = WaysLight.Good;

    private static void Raised(Rule rule, WaysSpec spec)
    {
        var findings = WaysComparison.Of(spec).Findings;
        Assert.True(findings.Any(f => f.Rule == rule), $"{rule.Code} not raised: {string.Join("; ", findings)}");
    }

    private static void Silent(Rule rule, WaysSpec spec)
    {
        var findings = WaysComparison.Of(spec).Findings;
        Assert.True(findings.All(f => f.Rule != rule), $"{rule.Code} raised: {string.Join("; ", findings)}");
    }

    [Fact]
    public void Good_light_raises_nothing() => Assert.Empty(WaysComparison.Of(Good).Findings);

    [Fact]
    public void Supply_below_the_least_input()
    {
        Raised(WayRules.SupplyTooLow, Good with { Supply = new(true, 99.9, 50) });
        Silent(WayRules.SupplyTooLow, Good with { Supply = new(true, 100, 50) });

        // 72.8 W at a power factor of 0.95 are 0.34 A at 226 V: 100 V are left only up to some hundred ohm in the line.
        Raised(WayRules.SupplyTooLow, Good with { Supply = new(true, 230, 50, 172.9) });
        Silent(WayRules.SupplyTooLow, Good with { Supply = new(true, 230, 50, 172.0) });
    }

    [Fact]
    public void Supply_above_the_greatest_input()
    {
        Raised(WayRules.SupplyTooHigh, Good with { Supply = new(true, 264.1, 50) });
        Silent(WayRules.SupplyTooHigh, Good with { Supply = new(true, 264, 50) });
    }

    [Fact]
    public void Lock_out_that_stops_above_its_start()
    {
        Raised(WayRules.LockOutContradicts, Good.Around(a => a with { InputOffV = 90 }));
        Silent(WayRules.LockOutContradicts, Good.Around(a => a with { InputOffV = 89.9 }));
        Raised(WayRules.LockOutContradicts, Good.Around(a => a with { InputOnV = 230 }));
        Silent(WayRules.LockOutContradicts, Good.Around(a => a with { InputOnV = 229 }));
        Raised(WayRules.LockOutContradicts, (Good with { Supply = null }).Around(a => a with { InputOnV = 265 }));
        Silent(WayRules.LockOutContradicts, (Good with { Supply = null }).Around(a => a with { InputOnV = 264 }));
    }

    [Fact]
    public void Output_limits_that_contradict()
    {
        Raised(WayRules.OutputContradicts, Good.Driver(d => d with { WindowLeastV = 42 }));
        Silent(WayRules.OutputContradicts, Good.Driver(d => d with { WindowLeastV = 41 }));
        Raised(WayRules.OutputContradicts, Good.Driver(d => d with { OverVoltageV = 41.9 }));
        Silent(WayRules.OutputContradicts, Good.Driver(d => d with { OverVoltageV = 42 }));
        Raised(WayRules.OutputContradicts, Good.Driver(d => d with { WindowMostV = null, OverVoltageV = 24 }));
        Silent(WayRules.OutputContradicts, Good.Driver(d => d with { WindowMostV = null, OverVoltageV = 24.1 }));
        Raised(WayRules.OutputContradicts, Good.Driver(d => d with { LeastA = 1.76 }));
        Silent(WayRules.OutputContradicts, Good.Driver(d => d with { LeastA = 1.75 }));
    }

    [Theory]
    [InlineData(0.05, true)]
    [InlineData(1.01, true)]
    [InlineData(double.NaN, true)]
    [InlineData(0.06, false)]
    [InlineData(1.0, false)]
    public void Power_factor_out_of_range(double factor, bool raised)
    {
        var spec = Good.Around(a => a with { PowerFactor = factor });
        if (raised)
        {
            Raised(WayRules.PowerFactorOutOfRange, spec);
        }
        else
        {
            Silent(WayRules.PowerFactorOutOfRange, spec);
        }
    }

    [Fact]
    public void Half_of_the_light_under_the_window()
    {
        var half = WaysComparison.Of(Good).Ways[(int)WayKind.FixedSense].Circuit.Source is DriverOutput d ? d.SetA : 0;
        var volts = Good.Model.VoltageV(half, Good.HotJunctionK);
        Raised(WayRules.HalfLeavesWindow, Good.Driver(x => x with { WindowLeastV = volts + 0.01 }));
        Silent(WayRules.HalfLeavesWindow, Good.Driver(x => x with { WindowLeastV = volts - 0.01 }));
    }
}
