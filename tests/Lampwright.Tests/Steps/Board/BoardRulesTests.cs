using Lampwright.Findings;
using Lampwright.Steps;
using Lampwright.Steps.Board;

namespace Lampwright.Tests.Steps.Board;

public class BoardRulesTests
{
    private static bool Raises(Rule rule, DriverSpec driver) =>
        BoardReading.Of(driver).Findings.Any(f => f.Rule == rule);

    private static bool Raises(Rule rule, DriverSpec driver, double[] chainOhm)
    {
        ResistorPart Part(double ohm) => new(ohm, 0, 3, 343.15, 428.15);
        var chain = new ChainSpec(Arrangement.SeriesChain, Part(0.165), [.. chainOhm.Select(Part)], 0, 0);
        var points = new EmitterPoint[] { new(0.1, 33, 500), new(0.9, 34.9, 4350), new(1.8, 37.2, 7900) };
        return StepsStation.Evaluate(new(new(points), driver, chain)).Findings.Any(f => f.Rule == rule);
    }

    [Fact]
    public void Second_point_that_contradicts_the_first()
    {
        DriverSpec At(double amps) => Boards.With(s => s with { SecondPair = new(0.33, amps) });
        Assert.True(Raises(BoardRules.SecondContradicts, At(1.75)));
        Assert.False(Raises(BoardRules.SecondContradicts, At(0.87)));

        // An offset equal to the dimmer current: V = 0.165·(1.74 + I) = 0.33·2·I, I = 0.58 A.
        Assert.True(Raises(BoardRules.SecondContradicts, At(0.579)));
        Assert.False(Raises(BoardRules.SecondContradicts, At(0.581)));
    }

    [Fact]
    public void Peak_control_without_its_ripple()
    {
        var peak = Boards.With(s => s with { Control = SenseControl.Peak, Carries = SenseCarries.Pulsed });
        Assert.True(Raises(BoardRules.PeakWithoutRipple, peak));
        Assert.False(
            Raises(BoardRules.PeakWithoutRipple, peak with { Sense = peak.Sense with { InductorRippleA = 0.4 } })
        );
        Assert.False(
            Raises(BoardRules.PeakWithoutRipple, peak with { Sense = peak.Sense with { SecondPair = new(0.33, 0.75) } })
        );
    }

    [Fact]
    public void Law_used_far_beyond_what_is_known()
    {
        // 3 % per factor e: 10 % at a factor of exp(3.333) = 28.03 in resistance, 4.625 ohm in all.
        Assert.True(Raises(BoardRules.LawExtrapolated, Boards.Good, [4.47]));
        Assert.False(Raises(BoardRules.LawExtrapolated, Boards.Good, [4.44]));

        // Nothing known of control and current: 25.8 % per e, a factor of 1.474, 0.2432 ohm in all.
        var unknown = Boards.With(s => s with { Control = SenseControl.Unknown, Carries = SenseCarries.Unknown });
        Assert.True(Raises(BoardRules.LawExtrapolated, unknown, [0.079]));
        Assert.False(Raises(BoardRules.LawExtrapolated, unknown, [0.077]));
    }

    [Fact]
    public void Law_that_has_ended_is_told()
    {
        // The second point keeps the law's error small; the ripple says where the coil runs empty: 0.2 A.
        var peak = Boards.With(s =>
            s with
            {
                Control = SenseControl.Peak,
                InductorRippleA = 0.4,
                SecondPair = new(0.66, (1.94 * 0.165 / 0.66) - 0.2),
            }
        );
        Assert.True(Raises(BoardRules.LawExtrapolated, peak, [0.64]));
        Assert.False(Raises(BoardRules.LawExtrapolated, peak, [0.62]));
    }

    [Theory]
    [InlineData("R33", "3R32", true)]
    [InlineData("R33", "3R29", false)]
    [InlineData("R33", "472", true)]
    [InlineData("R33", "??", false)]
    public void Unusual_mix_of_marks(string a, string b, bool raised) =>
        Assert.Equal(raised, Raises(BoardRules.UnusualMix, Boards.With(s => s with { Marks = [a, b] })));

    [Theory]
    [InlineData("22R", true)]
    [InlineData("22R0", false)]
    [InlineData("97R", false)]
    public void Mark_with_two_meanings(string mark, bool raised) =>
        Assert.Equal(raised, Raises(BoardRules.AmbiguousMark, Boards.With(s => s with { Marks = [mark] })));

    [Theory]
    [InlineData(0.0144, true)]
    [InlineData(-0.0144, true)]
    [InlineData(0.0143, false)]
    public void Offset_large_against_the_threshold(double volts, bool raised) =>
        Assert.Equal(raised, Raises(BoardRules.OffsetLarge, Boards.With(s => s with { OffsetV = volts })));

    [Fact]
    public void An_offset_widens_the_threshold() =>
        Assert.True(
            BoardReading.Of(Boards.With(s => s with { OffsetV = 0.005 })).Threshold.HalfWidth
                > BoardReading.Of(Boards.Good).Threshold.HalfWidth
        );

    [Fact]
    public void Control_that_does_not_fit()
    {
        Assert.True(Raises(BoardRules.ControlDisagrees, Boards.With(s => s with { Control = SenseControl.Primary })));
        Assert.True(Raises(BoardRules.ControlDisagrees, Boards.With(s => s with { Control = SenseControl.Peak })));
        Assert.False(Raises(BoardRules.ControlDisagrees, Boards.Good));

        // Average control with a second point: its offset must be nothing within twice its error.
        DriverSpec At(double offset) =>
            Boards.With(s => s with { SecondPair = new(0.33, ((1.74 + offset) / 2) - offset) });
        var error = SenseThreshold.From(At(0)).Law!.OffsetErrorA;
        Assert.False(Raises(BoardRules.ControlDisagrees, At(1.9 * error)));
        Assert.True(Raises(BoardRules.ControlDisagrees, At(2.1 * error)));

        // A ripple above twice the current would empty the coil.
        DriverSpec Ripple(double amps) =>
            Boards.With(s =>
                s with
                {
                    Control = SenseControl.Peak,
                    Carries = SenseCarries.Pulsed,
                    InductorRippleA = amps,
                }
            );
        Assert.True(Raises(BoardRules.ControlDisagrees, Ripple(3.49)));
        Assert.False(Raises(BoardRules.ControlDisagrees, Ripple(3.47)));
    }

    [Fact]
    public void Rules_are_numbered_in_their_range() =>
        Assert.Equal(Enumerable.Range(32, 7).Select(i => $"STP{i:000}"), BoardRules.All.Select(r => r.Code));
}
