using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Ways;

public class WaysAnyInputTests
{
    private static readonly double[] Odd = [0, -1, 1e-12, 1e12, double.NaN, double.PositiveInfinity, 0.18, 300];

    [Fact]
    public void Lights_of_the_shop_are_judged_in_full()
    {
        var random = new Random(3);
        for (var round = 0; round < 600; round++)
        {
            WellFormed(WaysLight.Random(random));
        }
    }

    [Fact]
    public void Any_numbers_give_ways_without_exception_or_NaN()
    {
        var random = new Random(5);
        double Some(double usual) => random.Next(6) == 0 ? Odd[random.Next(Odd.Length)] : usual;
        for (var round = 0; round < 600; round++)
        {
            var s = WaysLight.Random(random);
            var (d, a) = (s.Driver, s.Surroundings);
            WellFormed(
                s with
                {
                    EmitterMostA = Some(2),
                    WarmJunctionK = Some(340),
                    ColdJunctionK = Some(280),
                    HotJunctionK = Some(370),
                    Driver = d with
                    {
                        LeastA = Some(0.2),
                        WindowLeastV = Some(d.WindowLeastV ?? 20),
                        WindowMostV = Some(d.WindowMostV ?? 40),
                        OverVoltageV = Some(d.OverVoltageV ?? 45),
                        Efficiency = Some(0.9),
                        Sense = d.Sense with { Ohm = Some(0.2), MeasuredA = Some(d.RatedA) },
                    },
                    Surroundings = a with
                    {
                        InputLeastV = Some(90),
                        InputOnV = Some(90),
                        InputOffV = Some(80),
                        OutputCapacitorF = Some(1e-4),
                        PowerFactor = Some(0.9),
                        RestartS = Some(0.5),
                        DimmingLeast = Some(0.1),
                    },
                    Supply = new(random.Next(2) == 0, Some(230), 50, Some(1)),
                    Model = s.Model with
                    {
                        LogV = random.Next(5) == 0 ? 0 : s.Model.LogV,
                        FluxRefLm = Some(1000) is > 0 and < 1e7 and var f ? f : 0,
                    },
                }
            );
        }
    }

    private static void WellFormed(WaysSpec spec)
    {
        var result = WaysComparison.Of(spec);
        Assert.Equal(Enum.GetValues<WayKind>(), result.Ways.Select(w => w.Kind));
        foreach (var way in result.Ways)
        {
            var who = $"{way.Kind}: {way.Reason}\n{spec}";
            Range(way.LightShare, who);
            Range(way.CurrentA, who);
            Range(way.HiccupHz, who);
            Assert.True(way.EfficiencyAtHalf is null or (> 0 and <= 1), who);
            Assert.True(
                way.HeatAtHalfW is null || (way.HeatAtHalfW >= -1e-9 && double.IsFinite(way.HeatAtHalfW.Value)),
                who
            );
            Assert.True(way.AddedHeatAtHalfW is null || double.IsFinite(way.AddedHeatAtHalfW.Value), who);
            Assert.Equal(way.EfficiencyAtHalf is null, way.HeatAtHalfW is null);
            Assert.Equal(way.Verdict == Verdict.Stop, way.Stops.Count > 0);
            Assert.True(way.HiccupHz is null || way.Hiccups == Told.Yes, who);
            Assert.True(way.Hiccups != Told.Yes || way.Blinks == Told.Yes, who);
            Assert.True(way.Hiccups != Told.Yes || way.Regulates == Told.No, who);
            Assert.True(way.Verdict is not (Verdict.Works or Verdict.WithDrawback) || way.LightShare is not null, who);
            Assert.True(way.Reason.Length > 20 && way.Reason.EndsWith('.') && char.IsUpper(way.Reason[0]), who);
            foreach (var words in way.Stresses.Concat(way.Safety).Append(way.Reason).Append(way.Name))
            {
                Assert.DoesNotContain("NaN", words, StringComparison.Ordinal);
                Assert.DoesNotContain("Infinity", words, StringComparison.Ordinal);
                Assert.DoesNotContain("∞", words, StringComparison.Ordinal);
            }

            var before = double.NegativeInfinity;
            foreach (var c in way.Picture.Crossings)
            {
                Assert.True(double.IsFinite(c.VoltageV) && double.IsFinite(c.CurrentA) && c.VoltageV >= before, who);
                before = c.VoltageV;
            }
        }

        Assert.All(
            result.Findings,
            f =>
                Assert.True(
                    WayRules.All.Contains(f.Rule)
                        && f.Message.EndsWith('.')
                        && !f.Message.Contains("NaN", StringComparison.Ordinal),
                    f.Message
                )
        );
    }

    private static void Range(Extent? extent, string who) =>
        Assert.True(
            extent is not { } e || (e.Least >= 0 && e.Most >= e.Least && double.IsFinite(e.Most)),
            $"{extent} {who}"
        );
}
