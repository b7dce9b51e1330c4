using Lampwright.Steps;
using Lampwright.Steps.Board;

namespace Lampwright.Tests.Steps.Board;

public class BoardReadingTests
{
    [Fact]
    public void Marks_and_a_measured_current_give_the_threshold_with_its_band()
    {
        var board = BoardReading.Of(Boards.Good);
        Assert.Equal(0.165, board.ParallelOhm!.Value, 12);
        Assert.Equal(0.2871, board.Threshold.VoltageV!.Value, 12);
        Assert.True(board.IsPlausible);

        // Multimeter ±(2 % + 10 mA) of 1.74 A and parts of 1 %, each 0.9 of its limit; copper and solder 1.5 %.
        var current = 0.9 * (0.02 + (0.01 / 1.74));
        var half = Math.Sqrt((current * current) + (0.009 * 0.009) + (0.015 * 0.015));
        Assert.Equal(0.2871 * (1 - half), board.LeastV!.Value, 12);
        Assert.Equal(0.2871 * (1 + half), board.MostV!.Value, 12);
        Assert.Empty(board.Stops);
        Assert.Empty(board.Findings);
    }

    [Fact]
    public void The_draws_carry_the_same_errors_by_the_names_they_always_had()
    {
        var errors = DriverModel.MethodErrors(SenseThreshold.From(Boards.Good));
        Assert.Equal(["steps.sense_threshold", "steps.sense_law", "steps.driver_loss"], errors.Select(e => e.Name));
        Assert.Equal(BoardReading.Of(Boards.Good).Threshold.HalfWidth, errors[0].HalfWidth, 12);
    }

    [Fact]
    public void A_spread_that_is_given_with_a_value_is_not_drawn_twice()
    {
        var given = Boards.With(s => s with { Ohm = 0.165, OhmSpread = 0.02, CurrentSpread = 0.01 });
        var t = SenseThreshold.From(given);
        Assert.Equal(0, t.DrawnHalfWidth);
        Assert.Equal(0.9 * Math.Sqrt((0.02 * 0.02) + (0.01 * 0.01)), t.HalfWidth, 12);
    }

    [Fact]
    public void Rated_current_is_the_widest_way_and_nothing_known_has_no_threshold()
    {
        var rated = BoardReading.Of(Boards.With(s => s with { MeasuredA = null }));
        Assert.Equal(ThresholdBasis.RatedCurrent, rated.Threshold.Basis);
        Assert.True(rated.Threshold.HalfWidth > BoardReading.Of(Boards.Good).Threshold.HalfWidth);
        var nothing = BoardReading.Of(Boards.With(s => s with { Marks = ["??"] }));
        Assert.Null(nothing.LeastV);
        Assert.Null(nothing.Model);
        Assert.Null(nothing.Law);
    }

    [Fact]
    public void Half_of_the_ripple_is_in_the_threshold_and_leaves_the_current()
    {
        // Vcs 248 mV, 0.2 ohm, ripple 444 mA: TI AN-1954 p. 8 read backwards.
        var board = BoardReading.Of(
            Boards.With(s =>
                s with
                {
                    Marks = ["R200"],
                    MeasuredA = 1.018,
                    Control = SenseControl.Peak,
                    InductorRippleA = 0.444,
                }
            )
        );
        Assert.Equal(0.248, board.Threshold.VoltageV!.Value, 12);
        var model = board.Model!.Value;
        Assert.Equal(1.018, model.CurrentA(0.2), 12);
        Assert.Equal((0.248 / 0.4) - 0.222, model.CurrentA(0.4), 12);
        Assert.Equal(0.222, board.Least.CurrentA!.Value, 12);
        Assert.Equal(0, model.CurrentA(2));
    }

    [Fact]
    public void A_band_widens_with_the_factor_beyond_what_is_known()
    {
        var law = BoardReading.Of(Boards.Good).Law!;
        Assert.Equal(1, law.FactorBeyond(0.165), 9);
        Assert.Equal(4, law.FactorBeyond(0.66), 9);
        Assert.True(law.ErrorAt(0.165) < law.ErrorAt(0.33) && law.ErrorAt(0.33) < law.ErrorAt(0.66));
        Assert.True(law.ErrorAt(0.165) < law.ErrorAt(0.08));
    }

    [Fact]
    public void The_less_is_known_of_the_control_the_wider_the_law()
    {
        double PerE(SenseControl control, SenseCarries carries, double? ripple = null) =>
            SenseThreshold
                .From(Boards.With(s => s with { Control = control, Carries = carries, InductorRippleA = ripple }))
                .Law!.ErrorPerE;
        var average = PerE(SenseControl.Average, SenseCarries.Smooth);
        var smooth = PerE(SenseControl.Unknown, SenseCarries.Smooth);
        var unknown = PerE(SenseControl.Unknown, SenseCarries.Unknown);
        var peak = PerE(SenseControl.Peak, SenseCarries.Pulsed);
        var ripple = PerE(SenseControl.Peak, SenseCarries.Pulsed, 0.4);
        Assert.True(average < smooth && smooth < ripple && ripple < peak, $"{average} {smooth} {ripple} {peak}");
        Assert.Equal(unknown, peak);

        // A ripple of 30 % peak to peak that nobody subtracts, at a current e times lower: 0.15·(1 − 1/e)/(1/e).
        Assert.Equal(0.15 * (Math.E - 1), unknown, 12);
    }
}
