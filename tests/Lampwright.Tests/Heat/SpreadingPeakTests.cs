using Lampwright.Heat;

namespace Lampwright.Tests.Heat;

public sealed class SpreadingPeakTests
{
    private static readonly Footprint[] Three =
    [
        new(0.03, 0.03, 0.02, 0.02, 40),
        new(0.07, 0.04, 0.015, 0.015, 35),
        new(0.05, 0.08, 0.02, 0.01, 25),
    ];

    private static SpreadingPeak Series(params Footprint[] sources) => new(0.1, 0.12, 0.006, 200, 400, sources);

    [Fact]
    public void Nothing_on_the_face_is_warmer_than_the_peak()
    {
        var series = Series(Three);
        var (rise, across, along) = series.Peak();
        Assert.Equal(rise, series.RiseAt(across, along), 1e-7 * rise);
        for (var i = 0; i <= 100; i++)
        {
            for (var j = 0; j <= 120; j += 2)
            {
                Assert.True(series.RiseAt(i / 1e3, j / 1e3) <= rise * (1 + 1e-9), $"{i}, {j}");
            }
        }

        for (var i = -10; i <= 10; i++)
        {
            Assert.True(series.RiseAt(across + i * 1e-5, along - i * 2e-5) <= rise * (1 + 1e-9));
        }
    }

    [Fact]
    public void Peak_of_a_lone_centred_source_is_its_centre()
    {
        var (_, across, along) = Series(new Footprint(0.05, 0.06, 0.03, 0.02, 10)).Peak();
        Assert.Equal(0.05, across, 1e-9);
        Assert.Equal(0.06, along, 1e-9);
    }

    [Fact]
    public void A_source_in_the_corner_is_hottest_at_the_corner()
    {
        var (rise, across, along) = Series(new Footprint(0.005, 0.005, 0.01, 0.01, 10)).Peak();
        Assert.InRange(across, 0, 0.001);
        Assert.InRange(along, 0, 0.001);
        Assert.Equal(Series(new Footprint(0.005, 0.005, 0.01, 0.01, 10)).RiseAt(0, 0), rise, 1e-3 * rise);
    }

    /// <summary>The plain series, as it is printed, cut at many terms.</summary>
    [Theory]
    [InlineData(0.031, 0.034, 0.02, 0.012, 1500, 3e-6)]
    [InlineData(0.09, 0.11, 0.02, 0.02, 1500, 3e-6)]
    public void Means_are_those_of_the_plain_series(double x, double y, double w, double d, int terms, double within)
    {
        Footprint source = new(0.03, 0.03, 0.02, 0.02);
        Footprint probe = new(x, y, w, d);
        const double A = 0.1,
            B = 0.12,
            T = 0.006,
            Ratio = 2;
        double Wave(double centre, double width, double wave) =>
            wave == 0 ? 1 : Math.Cos(wave * centre) * Math.Sin(wave * width / 2) / (wave * width / 2);
        var sum = 0.0;
        for (var m = 0; m < terms; m++)
        {
            var lambda = m * Math.PI / A;
            var across = Wave(source.CentreAcrossM, source.WidthM, lambda) * Wave(x, w, lambda);
            for (var n = m == 0 ? 1 : 0; n < terms; n++)
            {
                var delta = n * Math.PI / B;
                var along = Wave(source.CentreAlongM, source.DepthM, delta) * Wave(y, d, delta);
                var beta = Math.Sqrt(lambda * lambda + delta * delta);
                var tanh = Math.Tanh(beta * T);
                sum +=
                    (m == 0 || n == 0 ? 2 : 4) * across * along / beta * (beta + Ratio * tanh) / (beta * tanh + Ratio);
            }
        }

        var own = new Spreading(A, B, T, [source], probe).SpreadPerM(Ratio);
        Assert.Equal(sum / (A * B), own, within * new Spreading(A, B, T, [source], source).SpreadPerM(Ratio));
    }

    [Fact]
    public void Peak_and_series_of_one_point_agree()
    {
        Footprint source = new(0.03, 0.03, 0.02, 0.02);
        foreach (var (x, y) in new[] { (0.03, 0.03), (0.04, 0.03), (0.0, 0.12), (0.07, 0.05) })
        {
            var one = new Spreading(0.1, 0.12, 0.006, [source], new Footprint(x, y, 0.01, 0.01), local: true);
            Assert.Equal(Series(source).RiseAt(x, y), one.ResistanceKPerW(200, 400), 1e-7);
        }
    }

    /// <summary>A plate of twice the sides with mirrored sources is four such plates; its series is split at another place.</summary>
    [Fact]
    public void Where_the_series_is_split_does_not_show()
    {
        double[] signs = [-1, 1];
        var four = (
            from s in Three
            from i in signs
            from j in signs
            select s with
            {
                CentreAcrossM = 0.1 + i * (0.1 - s.CentreAcrossM),
                CentreAlongM = 0.12 + j * (0.12 - s.CentreAlongM),
            }
        ).ToArray();
        SpreadingPeak doubled = new(0.2, 0.24, 0.006, 200, 400, four);
        var single = Series(Three);
        foreach (
            var (x, y) in new[]
            {
                (0.03, 0.03),
                (0.0689, 0.0394),
                (0.04, 0.035),
                (0.0, 0.0),
                (0.1, 0.12),
                (0.0475, 0.0755),
            }
        )
        {
            Assert.Equal(single.RiseAt(x, y), doubled.RiseAt(x, y), 2e-7 * single.RiseAt(x, y));
        }
    }

    [Fact]
    public void Influence_is_mutual()
    {
        double Between(Footprint heated, Footprint seen) =>
            new Spreading(0.1, 0.12, 0.006, [heated with { Share = 1 }], seen).SpreadPerM(2);
        Assert.Equal(Between(Three[0], Three[1]), Between(Three[1], Three[0]), 1e-9 * Between(Three[0], Three[0]));
    }

    [Fact]
    public void A_source_that_covers_the_plate_does_not_spread() =>
        Assert.Equal(
            0,
            new Spreading(0.1, 0.12, 0.006, [new(0.05, 0.06, 0.1, 0.12)], new(0.02, 0.02, 0.01, 0.01)).SpreadPerM(2),
            1e-8
        );

    [Theory]
    [InlineData(0.0005)]
    [InlineData(0.2)]
    public void Very_thin_and_very_thick_plates_have_peaks(double thick)
    {
        var (rise, _, _) = new SpreadingPeak(0.1, 0.12, thick, 200, 400, Three).Peak();
        var least = 100 * (thick / (200 * 0.012) + 1 / (400 * 0.012));
        Assert.InRange(rise, least, 100 * least);
    }

    [Fact]
    public void Sources_beyond_the_plate_throw() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Series(new Footprint(0.005, 0.05, 0.02, 0.02, 1)));
}
