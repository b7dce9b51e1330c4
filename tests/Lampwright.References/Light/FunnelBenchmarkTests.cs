using System.Globalization;
using Lampwright.Light;

namespace Lampwright.References.Light;

/// <summary>
/// The funnel of the benchmark set: radiosity of 12096 patches extrapolated, confirmed by 4e8 random walks (0.539774 ± 0.00003).
/// </summary>
public class FunnelBenchmarkTests
{
    private static readonly LightSpec Benchmark = new(
        new EmitterFace(0.03, 0.03, true, 120 * Math.PI / 180),
        new FunnelSpec(0.04, 0.04, 0.3, 0.3, 0.15, 0.6, 0),
        new DiffuserSpec(0.3, 0.3, 0.6, 0.35),
        0.5,
        new SubjectSpec(1, 0.3, 0.3, 100, 1.0 / 60),
        4000,
        new LightPaths()
    );

    [Fact]
    public void Direct_fraction_meets_the_benchmark()
    {
        // id funnel, direct_fraction 0.553032, half of the last digit and the quadrature
        var share = LightModel.Prepare(Benchmark).DirectShare;
        Assert.True(Math.Abs(share - 0.553032) < 2e-6, Text("direct", share, 0.553032));
    }

    [Theory]
    // name, expected, relative tolerance (the ring method's stated error within light.funnel), source
    [InlineData("efficiency", 0.53976, 0.001, "radiosity 12096 patches, extrapolated")]
    [InlineData("axis_cd", 1718.1, 0.001, "radiosity 12096 patches, extrapolated")]
    [InlineData("E_1m_lx", 1681.0, 0.003, "radiosity 12096 patches, extrapolated")]
    public void Funnel_meets_the_benchmark(string name, double expected, double relative, string source)
    {
        var result = LightModel.Prepare(Benchmark).Result(Benchmark.Nominal);
        var actual = name switch
        {
            "efficiency" => result.Exit,
            "axis_cd" => result.AxisCdPerLm * 10000,
            _ => result.CentreLuxPerLm * 10000,
        };
        Assert.True(Math.Abs((actual / expected) - 1) < relative, Text(name + " from " + source, actual, expected));
    }

    private static string Text(string name, double actual, double expected) =>
        string.Create(CultureInfo.InvariantCulture, $"{name}: {actual:R} instead of {expected:R} for {Benchmark}");
}
