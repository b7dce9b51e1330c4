using Lampwright.Steps;

namespace Lampwright.Tests.Steps;

public class StepsAnyInputTests
{
    private static readonly double[] Odd = [0, -1, 1e-12, 1e12, double.NaN, double.PositiveInfinity, 0.18, 300];

    [Fact]
    public void Any_numbers_give_findings_and_no_exception_and_no_NaN()
    {
        var random = new Random(11);
        double Some(double usual) =>
            random.Next(8) == 0 ? Odd[random.Next(Odd.Length)] : usual * (0.2 + (2 * random.NextDouble()));
        ResistorPart Part() => new(Some(0.3), Some(1e-4), Some(2), Some(343), Some(430));
        for (var round = 0; round < 1500; round++)
        {
            var spec = new StepsSpec(
                new(
                    [
                        .. Enumerable
                            .Range(0, random.Next(5))
                            .Select(_ => new EmitterPoint(Some(1), Some(35), Some(4000))),
                    ],
                    Rated: new(30, 36, 1, 4000),
                    VoltageSlopePerK: -0.02,
                    FluxHot: new(358, Some(0.9)),
                    MostA: Some(2)
                ),
                new(
                    1.7 * random.NextDouble() + 0.01,
                    Some(0.3),
                    Some(24),
                    Some(42),
                    random.NextDouble() * 2,
                    new(["R33", random.Next(2) == 0 ? "??" : "R22"], Some(0.2), Some(1.7), new(Some(0.2), Some(1.7)))
                ),
                new(
                    (Arrangement)random.Next(3),
                    Part(),
                    [.. Enumerable.Range(0, random.Next(6)).Select(_ => Part())],
                    Some(0.01),
                    Some(0.03),
                    new(Some(0.3), Some(0.75))
                )
            );
            var result = StepsStation.Evaluate(spec);
            Assert.All(result.Emitter.VoltageResidualsV, v => Assert.True(double.IsFinite(v), $"{spec}"));
            Assert.All(result.Emitter.MethodErrors, e => Assert.True(double.IsFinite(e.HalfWidth), $"{e} {spec}"));
            Assert.True(result.Driver is not { } d || double.IsFinite(d.LossW(10) + d.ThresholdV), $"{spec}");
            Assert.True(double.IsFinite(result.Window.LeastV) && double.IsFinite(result.Window.MostV), $"{spec}");
            Assert.All(
                result.Chain?.Combinations ?? [],
                c =>
                    Assert.True(
                        double.IsFinite(
                            c.CurrentA
                                + c.ResistanceOhm
                                + c.ContactShare
                                + c.WornCurrentA
                                + c.RatedMargin
                                + (c.EmitterMargin ?? 0)
                                + (c.LeastMargin ?? 0)
                        ) && c.Resistors.All(x => double.IsFinite(x.Ohm + x.PowerW + x.AllowedW + x.TemperatureK)),
                        $"{c} {spec}"
                    )
            );
            Assert.All(
                result.Findings,
                f =>
                    Assert.True(
                        f.Message.Length > 0
                            && f.Path.Length > 0
                            && !f.Message.Contains("NaN", StringComparison.Ordinal),
                        $"{f}"
                    )
            );
        }
    }
}
