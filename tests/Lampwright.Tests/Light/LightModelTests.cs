using System.Globalization;
using CsCheck;
using Lampwright.Light;

namespace Lampwright.Tests.Light;

public class LightModelTests
{
    private static readonly double Degree = Math.PI / 180;

    private static LightSpec Spec(
        double wall = 0.62,
        double mirror = 0.15,
        DiffuserSpec? diffuser = null,
        bool open = false
    ) =>
        new(
            new EmitterFace(0.022, 0.022, true, 115 * Degree),
            new FunnelSpec(0.044, 0.044, 0.28, 0.18, 0.15, wall, mirror),
            open ? null : diffuser ?? new DiffuserSpec(0.28, 0.18, 0.62, 0.30),
            0.5,
            new SubjectSpec(0.8, 0.3, 0.45, 100, 1.0 / 60),
            4000,
            new LightPaths()
        );

    [Fact]
    public void Shares_sum_to_one_for_any_surfaces()
    {
        var model = LightModel.Prepare(Spec());
        var open = LightModel.Prepare(Spec(open: true));
        Gen.Select(
                Gen.Double[0, 1],
                Gen.Double[0, 1],
                Gen.Double[0, 1],
                Gen.Double[0, 1],
                Gen.Double[0, 1],
                Gen.Double[0.8, 1.2]
            )
            .Sample(
                (wall, mirror, back, pass, give, factor) =>
                {
                    foreach (var light in new[] { model, open })
                    {
                        var r = light.Result(new LightDraw(wall, mirror, back, pass, give, 0.8, factor, factor));
                        var sum = r.Exit + r.AbsorbedReflector + r.AbsorbedDiffuser + r.AbsorbedBase;
                        var text = string.Create(
                            CultureInfo.InvariantCulture,
                            $"{r} for {wall} {mirror} {back} {pass} {give} {factor}"
                        );
                        Assert.True(Math.Abs(sum - 1) < 2e-6, text);
                        Assert.True(
                            r.Exit >= 0
                                && r.AbsorbedReflector >= -1e-9
                                && r.AbsorbedDiffuser >= -1e-9
                                && r.AbsorbedBase >= -1e-9,
                            text
                        );
                        Assert.True(double.IsFinite(r.CentreLuxPerLm) && double.IsFinite(r.CornerLuxPerLm), text);
                    }
                },
                seed: "0N0XIzNsQ0O2",
                iter: 300
            );
    }

    [Fact]
    public void Everything_leaves_white_walls_and_a_clear_mouth()
    {
        var r = LightModel.Prepare(Spec()).Result(new LightDraw(1, 0.3, 1, 1, 0, 0.8));
        Assert.Equal(1, r.Exit, 1e-6);
    }

    [Fact]
    public void Only_direct_light_leaves_black_walls()
    {
        var model = LightModel.Prepare(Spec());
        var r = model.Result(new LightDraw(0, 0, 0, 1, 0, 0.8));
        Assert.Equal(model.DirectShare, r.Exit, 1e-12);
    }

    [Fact]
    public void Lux_falls_to_a_quarter_at_twice_the_distance_far_away()
    {
        foreach (var spec in new[] { Spec(), Spec(open: true), Spec() with { Funnel = null, Diffuser = null } })
        {
            var model = LightModel.Prepare(spec);
            var near = model.Result(spec.Nominal with { DistanceM = 50 });
            var far = model.Result(spec.Nominal with { DistanceM = 100 });
            Assert.Equal(4, near.CentreLuxPerLm / far.CentreLuxPerLm, 0.03);
            Assert.Equal(0, far.ShortcutError, 0.004);
        }
    }

    [Fact]
    public void Light_over_a_wide_plane_is_the_light_that_leaves()
    {
        // The sum over a plane of 60 m half-width at 1 m holds all but 1 % of a Lambertian exit.
        foreach (var open in new[] { false, true })
        {
            var spec = Spec(open: open);
            var exit = LightModel.Prepare(spec).Result(spec.Nominal).Exit;
            var wide = spec with { Subject = spec.Subject with { DistanceM = 1, WidthM = 1, HeightM = 1 } };
            double Sum(double half)
            {
                var model = LightModel.Prepare(
                    wide with
                    {
                        Subject = wide.Subject with { WidthM = 2 * half, HeightM = 2 * half },
                    }
                );
                var n = 121;
                var grid = model.SubjectGrid(n, n);
                var cell = 2 * half / (n - 1);
                var sum = 0.0;
                for (var i = 0; i < n * n; i++)
                {
                    var edge = (i % n == 0 || i % n == n - 1 ? 0.5 : 1) * (i / n == 0 || i / n == n - 1 ? 0.5 : 1);
                    sum += edge * grid[i] * cell * cell;
                }

                return sum;
            }

            var share = Sum(5);
            // A Lambertian point 1 m off sends 96.2 % into a square of 5 m half-width.
            var expected = exit * 4 * ViewFactors.ElementToCornerRectangle(5, 5, 1);
            Assert.True(
                Math.Abs((share / expected) - 1) < (open ? 0.05 : 0.01),
                string.Create(CultureInfo.InvariantCulture, $"open {open}: {share} instead of {expected}")
            );
        }
    }

    [Fact]
    public void Reduced_enclosure_follows_the_full_solution_away_from_nominal()
    {
        var prepared = LightModel.Prepare(Spec(0.62));
        foreach (var wall in new[] { 0.42, 0.52, 0.72, 0.82 })
        {
            var full = LightModel.Prepare(Spec(wall));
            var expected = full.Result(full.Spec.Nominal);
            var actual = prepared.Result(prepared.Spec.Nominal with { WallReflectance = wall });
            Assert.Equal(1, actual.Exit / expected.Exit, 1e-3);
            Assert.Equal(1, actual.CentreLuxPerLm / expected.CentreLuxPerLm, 1e-3);
        }
    }

    [Fact]
    public void Bare_emitter_gives_all_its_light_and_its_peak_intensity()
    {
        var spec = Spec() with { Funnel = null, Diffuser = null };
        var r = LightModel.Prepare(spec).Result(spec.Nominal);
        Assert.Equal(1, r.Exit);
        Assert.Equal((spec.Emitter.BeamExponent + 1) / (2 * Math.PI), r.AxisCdPerLm, 1e-12);
        Assert.Equal(r.AxisCdPerLm / 0.64, r.CentreLuxPerLm, 0.002 * r.CentreLuxPerLm);
    }

    [Fact]
    public void Diffuser_alone_gives_back_and_forth_light()
    {
        var spec = Spec() with { Funnel = null };
        var r = LightModel.Prepare(spec).Result(spec.Nominal);
        Assert.Equal(0.62 / (1 - (0.30 * 0.5)), r.Exit, 1e-12);
        Assert.Equal(1, r.Exit + r.AbsorbedDiffuser + r.AbsorbedBase, 1e-12);
    }

    [Fact]
    public void An_emitter_larger_than_the_opening_is_computed_without_nonsense()
    {
        var spec = Spec() with { Emitter = new EmitterFace(0.1, 0.1, false, 115 * Degree) };
        var r = LightModel.Prepare(spec).Result(spec.Nominal);
        Assert.InRange(r.Exit, 0.1, 0.9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_distance_that_is_none_is_refused(double distance) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            LightModel.Prepare(Spec()).Result(Spec().Nominal with { DistanceM = distance })
        );
}
