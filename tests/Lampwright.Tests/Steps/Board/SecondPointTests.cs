using Lampwright.Steps;
using Lampwright.Steps.Board;

namespace Lampwright.Tests.Steps.Board;

public class SecondPointTests
{
    private static DriverSpec Two(double volts, double offset, SenseControl control = SenseControl.Unknown) =>
        Boards.With(s =>
            s with
            {
                Marks = [],
                MeasuredA = null,
                MeasuredPair = new(0.2, (volts / 0.2) - offset),
                SecondPair = new(0.5, (volts / 0.5) - offset),
                Control = control,
            }
        );

    [Theory]
    [InlineData(0.25, 0.15)]
    [InlineData(0.3, 0)]
    [InlineData(0.2, -0.02)]
    public void Two_points_return_the_law_they_were_made_from(double volts, double offset)
    {
        var board = BoardReading.Of(Two(volts, offset));
        Assert.Equal(volts, board.Threshold.VoltageV!.Value, 12);
        Assert.Equal(offset, board.Law!.OffsetA, 12);
        Assert.Equal((volts / 0.5) - offset, board.Model!.Value.CurrentA(0.5), 12);
        Assert.Equal((volts / 0.3) - offset, board.Model!.Value.CurrentA(0.3), 12);
        Assert.Equal(0.3, board.Model.Value.SenseOhm((volts / 0.3) - offset), 9);
    }

    [Fact]
    public void A_second_point_narrows_the_law_between_the_points_and_up_to_it()
    {
        var one = BoardReading
            .Of(
                Two(0.3, 0) with
                {
                    Sense = Two(0.3, 0).Sense with { SecondPair = null, Carries = SenseCarries.Unknown },
                }
            )
            .Law!;
        var two = BoardReading.Of(Two(0.3, 0)).Law!;
        foreach (var ohm in (double[])[0.25, 0.35, 0.5, 0.8])
        {
            Assert.True(two.ErrorAt(ohm) < one.ErrorAt(ohm), $"{ohm}: {two.ErrorAt(ohm)} {one.ErrorAt(ohm)}");
        }

        Assert.Equal(0, two.ErrorAt(0.2), 12);
        Assert.Equal(two.ErrorAtSecond, two.ErrorAt(0.5), 12);
        Assert.Equal(1, two.FactorBeyond(0.35));
        Assert.Equal(2, two.FactorBeyond(1), 9);
        Assert.Equal(2, two.FactorBeyond(0.1), 9);
        Assert.True(two.ErrorAt(1) > two.ErrorAt(0.5));
    }

    [Fact]
    public void The_factor_of_a_draw_moves_the_current_by_the_error_of_the_law()
    {
        var board = BoardReading.Of(Two(0.3, 0.05));
        var (law, model) = (board.Law!, board.Model!.Value);
        foreach (var ohm in (double[])[0.1, 0.3, 0.5, 1])
        {
            var drawn = model.With(1, 1 + law.ErrorPerE, 1).CurrentA(ohm) / model.CurrentA(ohm);
            var expected = Math.Pow(1 + law.ErrorPerE, law.ErrorAt(ohm) / law.ErrorPerE);
            Assert.Equal(expected, ohm < 0.2 ? 1 / drawn : drawn, 9);
        }

        Assert.Equal(model.CurrentA(0.2), model.With(1, 1.1, 1).CurrentA(0.2), 12);
    }

    [Fact]
    public void Offset_error_is_that_of_the_two_equations()
    {
        // I_off = (I1·x2 − I2·x1)/(x1 − x2); I1 1.5 A ± 1 % at 5 S, I2 0.6 A ± 2 % at 2 S.
        var fit = SecondPoint.Fit(new(0.2, 1.5), 0.01, new(0.5, 0.6), 0.02);
        Assert.Equal(0, fit.OffsetA, 12);
        Assert.Equal(Math.Sqrt((0.03 * 0.03) + (0.06 * 0.06)) / 3, fit.OffsetErrorA, 12);
    }

    [Theory]
    [InlineData(0.2, 1.5, 0.5, 1.6)] // rises with the resistance
    [InlineData(0.2, 1.5, 0.5, 1.5)] // does not fall
    [InlineData(0.2, 1.5, 0.21, 1.4)] // too near
    [InlineData(0.2, 1.5, 0.5, 0.3)] // offset above the dimmer current
    [InlineData(0.2, 1.5, 0.5, 1.0)] // far slower than 1/R
    public void What_no_driver_does_is_a_described_problem(double r1, double i1, double r2, double i2)
    {
        Assert.NotEmpty(SecondPoint.Fit(new(r1, i1), 0.01, new(r2, i2), 0.01).Problem);
        var board = BoardReading.Of(
            Boards.With(s => s with { MeasuredPair = new(r1, i1), SecondPair = new(r2, i2), Marks = [] })
        );
        Assert.Null(board.Law!.SecondOhm);
        Assert.Equal(r1 * i1, board.Threshold.VoltageV!.Value, 12);
    }

    [Fact]
    public void A_current_that_no_resistance_reaches_gives_a_great_one_and_no_exception() =>
        Assert.True(BoardReading.Of(Two(0.2, -0.1)).Model!.Value.SenseOhm(0.05) > 100);
}
