using Lampwright.Heat.Grid;
using static Lampwright.Tests.Heat.Grid.GridSamples;

namespace Lampwright.Tests.Heat.Grid;

public sealed class GridRandomTests
{
    public static TheoryData<int> Draws => new(Enumerable.Range(1, 60));

    /// <summary>Any shape, any films, cells that are not cubes: heat in is heat out, in few iterations.</summary>
    [Theory]
    [MemberData(nameof(Draws))]
    public void What_enters_leaves(int draw)
    {
        var spec = Drawn(new Random(draw));
        var solution = Solved(spec);
        Assert.InRange(Math.Abs(solution.BalanceError), 0, 1e-6);
        Assert.Equal(spec.PowerW, solution.HeatOutW, 1e-6 * spec.PowerW);
        Assert.InRange(solution.Iterations, 1, 30);
        Assert.InRange(solution.Residual, 0, 1e-7);
        Assert.True(solution.MaxRiseK > 0 && double.IsFinite(solution.MaxRiseK));
        Assert.All(solution.Sources, s => Assert.InRange(s.MeanK, 0, solution.MaxRiseK * (1 + 1e-9)));
    }

    private static GridSpec Drawn(Random random)
    {
        double Log(double least, double most) => least * Math.Pow(most / least, random.NextDouble());
        double across = Log(0.01, 0.2),
            along = Log(0.01, 0.2),
            thick = Log(0.001, 0.02);
        var fins = random.Next(3) > 0;
        double pitch = Math.Max(Log(0.002, 0.012), across / 40),
            fin = pitch * (0.15 + 0.7 * random.NextDouble());
        return new()
        {
            AcrossM = across,
            AlongM = along,
            BaseThicknessM = thick,
            ConductivityWPerMK = Log(15, 400),
            FinConductivityWPerMK = random.Next(2) == 0 ? null : Log(15, 400),
            Fins = fins ? GridSpec.EvenFins(across, fin, pitch, random.NextDouble() * (pitch - fin)) : [],
            FinHeightM = Log(0.003, 0.08),
            Films = new()
            {
                BelowWPerM2K = Log(0.5, 20_000),
                FinSidesWPerM2K = random.Next(4) == 0 ? 0 : Log(2, 500),
                FinTipsWPerM2K = random.Next(2) == 0 ? 0 : Log(2, 500),
                AboveWPerM2K = random.Next(2) == 0 ? 0 : Log(2, 500),
                AcrossEdgesWPerM2K = random.Next(2) == 0 ? 0 : Log(2, 5000),
                AlongEdgesWPerM2K = random.Next(2) == 0 ? 0 : Log(2, 5000),
            },
            Sources =
            [
                .. Enumerable
                    .Range(0, 1 + random.Next(4))
                    .Select(_ =>
                    {
                        double w = across * (0.05 + 0.6 * random.NextDouble()),
                            d = along * (0.05 + 0.6 * random.NextDouble());
                        return new GridSource(
                            w / 2 + (across - w) * random.NextDouble(),
                            d / 2 + (along - d) * random.NextDouble(),
                            w,
                            d,
                            Log(1e-3, 500)
                        );
                    }),
            ],
            CellM = Math.Max(Log(0.5e-3, 8e-3), Math.Max(across, along) / 90),
        };
    }
}
