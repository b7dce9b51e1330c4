using System.Globalization;
using Lampwright.Light;

namespace Lampwright.Tests.Light;

/// <summary>
/// The ring method against an independent random walk of its own (seeded): rectangular funnels, and the mirrored share.
/// </summary>
public class FunnelWalkTests
{
    private static readonly double Degree = Math.PI / 180;

    [Theory]
    // small, large, depth, wall, mirrored share, transmittance, reflectance, open mouth, tolerance of efficiency (relative)
    [InlineData(0.044, 0.044, 0.28, 0.18, 0.15, 0.62, 0.0, 0.62, 0.30, 0.006)]
    [InlineData(0.03, 0.03, 0.40, 0.10, 0.12, 0.80, 0.0, 0.60, 0.35, 0.02)]
    [InlineData(0.044, 0.044, 0.28, 0.18, 0.15, 0.62, 0.15, 0.62, 0.30, 0.006)]
    [InlineData(0.044, 0.044, 0.28, 0.18, 0.15, 0.85, 0.80, 0.62, 0.30, 0.02)]
    [InlineData(0.10, 0.06, 0.10, 0.06, 0.15, 0.85, 0.0, 0.60, 0.30, 0.02)]
    [InlineData(0.044, 0.044, 0.28, 0.18, 0.15, 0.62, 0.0, 1.0, 0.0, 0.006)]
    public void Ring_method_meets_a_random_walk(
        double smallWidth,
        double smallHeight,
        double largeWidth,
        double largeHeight,
        double depth,
        double wall,
        double mirrored,
        double transmittance,
        double reflectance,
        double tolerance
    )
    {
        var funnel = new FunnelSpec(smallWidth, smallHeight, largeWidth, largeHeight, depth, wall, mirrored);
        var face = new EmitterFace(0.022, 0.022, true, 115 * Degree);
        var enclosure = FunnelEnclosure.Prepare(FunnelGeometry.Prepare(funnel, face), wall, mirrored, 0.5, reflectance);
        var flux = enclosure.Flux(wall, mirrored, 0.5, transmittance, reflectance);
        var walk = new Walk(funnel, face, 0.5, transmittance, reflectance).Exit(200_000);
        var text = string.Create(
            CultureInfo.InvariantCulture,
            $"{flux} against a walk's exit of {walk:R} ± {Math.Sqrt(walk * (1 - walk) / 200_000):0.0000} for {funnel}"
        );
        TestContext.Current.TestOutputHelper?.WriteLine(text);
        Assert.True(Math.Abs((flux.Exit / walk) - 1) < tolerance, text);
    }

    /// <summary>Follows single rays with Russian roulette at every surface; shares no code with the ring method.</summary>
    private sealed class Walk(FunnelSpec funnel, EmitterFace face, double back, double pass, double give)
    {
        private readonly Random random = new(20240607);

        public double Exit(int rays)
        {
            var exits = 0;
            var power = 1 / (face.BeamExponent + 1);
            for (var i = 0; i < rays; i++)
            {
                var r = face.WidthM / 2 * Math.Sqrt(random.NextDouble());
                var a = 2 * Math.PI * random.NextDouble();
                double[] p = [r * Math.Cos(a), r * Math.Sin(a), 0];
                double[] d = Lobe([0, 0, 1], Math.Pow(random.NextDouble(), power));
                while (true)
                {
                    // Planes n·x = c with the funnel on the side n·x < c.
                    var (best, hit, normal) = (double.PositiveInfinity, -1, new double[3]);
                    for (var s = 0; s < 6; s++)
                    {
                        var (n, c) = Plane(s);
                        var along = Dot(n, d);
                        if (along <= 1e-12)
                        {
                            continue;
                        }

                        var t = (c - Dot(n, p)) / along;
                        if (t < best)
                        {
                            (best, hit, normal) = (Math.Max(t, 0), s, n);
                        }
                    }

                    for (var k = 0; k < 3; k++)
                    {
                        p[k] += best * d[k];
                    }

                    var u = random.NextDouble();
                    double[] inward = [-normal[0], -normal[1], -normal[2]];
                    if (hit == 4)
                    {
                        if (u < pass)
                        {
                            exits++;
                            break;
                        }

                        if (u > pass + give)
                        {
                            break;
                        }
                    }
                    else if (u > (hit == 5 ? back : funnel.WallReflectance))
                    {
                        break;
                    }

                    if (hit < 4 && random.NextDouble() < funnel.SpecularShare)
                    {
                        var along = 2 * Dot(d, normal);
                        d = [d[0] - (along * normal[0]), d[1] - (along * normal[1]), d[2] - (along * normal[2])];
                    }
                    else
                    {
                        d = Lobe(inward, Math.Sqrt(random.NextDouble()));
                    }
                }
            }

            return (double)exits / rays;
        }

        private (double[] Normal, double Limit) Plane(int side)
        {
            if (side == 4)
            {
                return ([0, 0, 1], funnel.DepthM);
            }

            if (side == 5)
            {
                return ([0, 0, -1], 0);
            }

            var (small, large) =
                side < 2 ? (funnel.SmallWidthM, funnel.LargeWidthM) : (funnel.SmallHeightM, funnel.LargeHeightM);
            var slope = (large - small) / 2 / funnel.DepthM;
            var length = Math.Sqrt(1 + (slope * slope));
            var sign = side % 2 == 0 ? 1.0 : -1.0;
            double[] normal = side < 2 ? [sign / length, 0, -slope / length] : [0, sign / length, -slope / length];
            return (normal, small / 2 / length);
        }

        private double[] Lobe(double[] normal, double cosine)
        {
            var sine = Math.Sqrt(Math.Max(0, 1 - (cosine * cosine)));
            var a = 2 * Math.PI * random.NextDouble();
            double[] helper = Math.Abs(normal[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0];
            var u = Unit(Cross(helper, normal));
            var v = Cross(normal, u);
            var (x, y) = (sine * Math.Cos(a), sine * Math.Sin(a));
            return
            [
                (x * u[0]) + (y * v[0]) + (cosine * normal[0]),
                (x * u[1]) + (y * v[1]) + (cosine * normal[1]),
                (x * u[2]) + (y * v[2]) + (cosine * normal[2]),
            ];
        }

        private static double Dot(double[] a, double[] b) => (a[0] * b[0]) + (a[1] * b[1]) + (a[2] * b[2]);

        private static double[] Cross(double[] a, double[] b) =>
            [(a[1] * b[2]) - (a[2] * b[1]), (a[2] * b[0]) - (a[0] * b[2]), (a[0] * b[1]) - (a[1] * b[0])];

        private static double[] Unit(double[] a)
        {
            var length = Math.Sqrt(Dot(a, a));
            return [a[0] / length, a[1] / length, a[2] / length];
        }
    }
}
