using CsCheck;
using Lampwright.FitUp;
using Lampwright.Geometry;

namespace Lampwright.Tests.FitUp;

public sealed class BalancePointTests
{
    [Fact]
    public void Two_bodies_balance_between_them_by_their_masses()
    {
        var (mass, centre) = BalancePoint.Of([1, 3], [default, new(0.4, 0, 0.8)]);
        Assert.Equal(4, mass, 12);
        Assert.Equal(0.3, centre.X, 12);
        Assert.Equal(0.6, centre.Z, 12);
    }

    [Fact]
    public void No_mass_balances_at_zero_and_is_no_number_out_of_range() =>
        Assert.Equal((0, default), BalancePoint.Of([0, 0], [new(1, 2, 3), default]));

    [Fact]
    public void The_moment_about_the_balance_point_is_zero()
    {
        var body = Gen.Select(Gen.Double[0.001, 10], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1]);
        body.Array[1, 12]
            .Sample(
                bodies =>
                {
                    var masses = bodies.Select(b => b.Item1).ToArray();
                    var centres = bodies.Select(b => new Vec3(b.Item2, b.Item3, b.Item4)).ToArray();
                    var (_, at) = BalancePoint.Of(masses, centres);
                    var moment = masses
                        .Zip(centres)
                        .Aggregate(default(Vec3), (sum, b) => sum + ((b.Second - at) * b.First));
                    return moment.Length < 1e-9;
                },
                iter: 300,
                seed: "0000Lamp0000"
            );
    }

    [Fact]
    public void Masses_without_their_centres_are_the_callers_bug() =>
        Assert.Throws<ArgumentException>(() => BalancePoint.Of([1], []));
}
