using Lampwright.Steps;
using Lampwright.Steps.Board;

namespace Lampwright.Tests.Steps.Board;

public class AnyBoardTests
{
    private static readonly double[] Odd = [0, -1, 1e-12, 1e12, 1e300, double.NaN, double.PositiveInfinity, 0.18];
    private static readonly string Signs = "0123456789RLKMABCDEFXYZS.,Ω <>%-";

    [Fact]
    public void Any_marks_and_numbers_are_read_without_exception_and_without_NaN()
    {
        var random = new Random(32);
        string Mark() => new([.. Enumerable.Range(0, random.Next(7)).Select(_ => Signs[random.Next(Signs.Length)])]);
        double Some(double usual) =>
            random.Next(6) == 0 ? Odd[random.Next(Odd.Length)] : usual * (0.2 + (2 * random.NextDouble()));
        double? Maybe(double usual) => random.Next(3) == 0 ? null : Some(usual);
        SensePair? Pair() => random.Next(2) == 0 ? null : new(Some(0.2), Some(1.5));
        for (var round = 0; round < 5000; round++)
        {
            var driver = new DriverSpec(
                Some(1.5),
                Maybe(0.3),
                Maybe(24),
                Maybe(42),
                0.9,
                new(
                    [.. Enumerable.Range(0, random.Next(4)).Select(_ => random.Next(2) == 0 ? "R33" : Mark())],
                    Maybe(0.2),
                    Maybe(1.5),
                    Pair(),
                    (SenseSide)random.Next(3),
                    (SenseCarries)random.Next(3),
                    (SenseControl)random.Next(4),
                    Maybe(0.4),
                    Maybe(0.003),
                    Pair(),
                    Maybe(0.02),
                    Maybe(0.02)
                ),
                (Isolation)random.Next(3)
            );
            var board = BoardReading.Of(driver);
            var who = $"{round}: {driver} {board.Threshold}";
            Assert.True(board.Threshold.VoltageV is not { } v || (double.IsFinite(v) && v > 0), who);
            Assert.True(board.LeastV is null || (board.LeastV >= 0 && board.LeastV <= board.MostV), who);
            Assert.All(board.Threshold.Errors, e => Assert.True(e.HalfWidth is >= 0 and < 1e3, who));
            Assert.Equal(board.Threshold.VoltageV is null, board.Model is null);
            foreach (var ohm in (double[])[1e-3, 0.1, 0.5, 50, 1e6])
            {
                if (board.Model is { } model && board.Law is { } law)
                {
                    Assert.True(double.IsFinite(model.CurrentA(ohm)) && model.CurrentA(ohm) >= 0, who);
                    Assert.True(law.FactorBeyond(ohm) >= 1 && law.ErrorAt(ohm) is >= 0 and < 1e3, who);
                }
            }

            Assert.All(
                board.Findings,
                f =>
                    Assert.True(
                        f.Message.Length > 0 && !f.Message.Contains("NaN", StringComparison.Ordinal),
                        $"{f} {who}"
                    )
            );
        }
    }

    [Fact]
    public void Parallel_parts_are_less_than_the_least_and_more_than_it_over_their_count()
    {
        var random = new Random(33);
        for (var round = 0; round < 500; round++)
        {
            double[] ohms =
            [
                .. Enumerable.Range(0, 2 + random.Next(5)).Select(_ => Math.Pow(10, -3 + (5 * random.NextDouble()))),
            ];
            var together = Marking.Parallel(ohms)!.Value;
            Assert.True(together < ohms.Min() && together >= ohms.Min() / ohms.Length * (1 - 1e-12));
        }
    }

    [Fact]
    public void Threshold_scales_with_the_current()
    {
        var random = new Random(34);
        for (var round = 0; round < 200; round++)
        {
            var (amps, factor) = (0.1 + (3 * random.NextDouble()), 0.2 + (4 * random.NextDouble()));
            double At(double a) => SenseThreshold.From(Boards.With(s => s with { MeasuredA = a })).VoltageV!.Value;
            Assert.Equal(factor * At(amps), At(factor * amps), 12);
        }
    }
}
