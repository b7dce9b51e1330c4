using Lampwright.Heat.Network;
using Lampwright.Heat.Time;
using Lampwright.Tests.Heat.Network;

namespace Lampwright.Tests.Heat.Time;

public sealed class CutOutTests
{
    // One node: rise 100·(1 - exp(-t/100)) over 300 K.
    private static HeatCourse Course() =>
        NetworkTransient.Follow(
            new([new("room", 0, 300), new("base", 100)], [new Conduction(1, 0, 1)], [new NetworkSource(1, 100)]),
            [300, 300],
            2000,
            1e-7
        );

    [Fact]
    public void Without_a_lag_it_trips_when_its_place_is_there() =>
        Assert.Equal(-100 * Math.Log(0.5), CutOut.TripsS(Course(), 1, 350, 0)!.Value, 1e-2);

    // Behind a lag: felt = 100·(1 - (T·e^(-t/T) - L·e^(-t/L))/(T - L)).
    [Theory]
    [InlineData(15)]
    [InlineData(60)]
    public void Behind_a_lag_it_feels_what_the_formula_says(double lag)
    {
        var (course, t) = (Course(), 80.0);
        var felt = 300 + (100 * (1 - (((100 * Math.Exp(-t / 100)) - (lag * Math.Exp(-t / lag))) / (100 - lag))));
        Assert.Equal(felt, CutOut.Sensed(course, 1, lag, t), 0.02);
        Assert.Equal(t, CutOut.TripsS(course, 1, felt, lag)!.Value, 1.5);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    public void Its_window_lies_between_use_and_harm(double lag)
    {
        var course = Course();
        var window = CutOut.Window(course, 1, 310, [new(1, 380, "junction")], 5, lag);
        Assert.Equal(320, window.LeastK, 1e-9);
        Assert.Equal(CutOut.Sensed(course, 1, lag, window.HarmS!.Value) - 5, window.MostK, 1e-9);
        Assert.InRange(window.SettingK!.Value, window.LeastK, window.MostK);
        Assert.True(window.TripsAfterS <= window.HarmS);
        Assert.Equal(0, (window.SettingK.Value - 273.15) % 5, 1e-6);
    }

    [Theory]
    [InlineData(364.9, true)]
    [InlineData(369, false)]
    public void No_setting_exists_where_use_comes_too_near_to_harm(double normalK, bool exists)
    {
        // Harm at 380 K: most 375; least is normal + 10, and a whole five degrees Celsius must lie between.
        var window = CutOut.Window(Course(), 1, normalK - 3, [new(1, 380, "junction")], 5, 0);
        Assert.Equal(exists, window.SettingK is not null);
    }

    [Fact]
    public void Where_nothing_is_harmed_there_is_no_upper_end()
    {
        var window = CutOut.Window(Course(), 1, 310, [new(1, 450, "junction")], 5, 0);
        Assert.Null(window.HarmS);
        Assert.Equal(double.PositiveInfinity, window.MostK);
        Assert.NotNull(window.SettingK);
    }

    [Fact]
    public void Bad_arguments_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CutOut.Window(Course(), 1, 310, [], -1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CutOut.TripsS(Course(), 1, 310, double.NaN));
    }

    [Fact]
    public void A_duty_keeps_its_limit_and_rests_longer_for_a_closer_one()
    {
        var spec = NetworkSamples.Light(true);
        var (on, off) = (
            LightNetwork.Of(spec),
            LightNetwork.Of(
                spec with
                {
                    EmitterW = 0,
                    EmitterWPerK = 0,
                    DriverW = 0,
                    Resistors = [.. spec.Resistors.Select(r => r with { HeatW = 0 })],
                    ReflectorW = 0,
                    DiffuserW = 0,
                }
            )
        );
        var rest = on.Network.Steady().Result!.Kelvin[on.Junction];
        DutyAdvice At(double limit) =>
            DutyCycle.Of(on.Network, off.Network, 300, [new(on.Junction, limit, "junction")]);
        Assert.Equal(1, At(rest + 1).Share);
        var (wide, close) = (At(rest - 2), At(rest - 8));
        Assert.True(close.Share < wide.Share && wide.Share < 1 && close.Share > 0);
        Assert.Equal("junction", close.What);
        Assert.Equal(0, At(299).Share);

        // Played on its own from the room: the limit is not passed within a run.
        IReadOnlyList<double> kelvin = [.. on.Network.Nodes.Select(_ => 300.0)];
        for (var k = 0; k < 6; k++)
        {
            var hot = NetworkTransient.Follow(on.Network, kelvin, close.OnS);
            Assert.True(hot.KelvinAt(on.Junction, close.OnS) < rest - 8 + 1);
            kelvin = NetworkTransient.Follow(off.Network, hot.EndK, close.OffS).EndK;
        }
    }
}
