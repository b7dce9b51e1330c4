using System.Globalization;
using System.Text.Json;
using Lampwright.Heat;
using Lampwright.Heat.Grid;
using Lampwright.References.Heat;

namespace Lampwright.Benchmarks.Problems;

/// <summary>Conduction on the grid, beside CalculiX on the same cells.</summary>
internal abstract class ConductionProblem : Problem
{
    /// <inheritdoc/>
    public override Prepared Load(string file)
    {
        using var read = JsonDocument.Parse(File.ReadAllText(file));
        try
        {
            var (spec, ambient) = Spec(read.RootElement);
            return Load(spec, ambient);
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException)
        {
            throw new BadProblemException(e.Message);
        }
    }

    private static Prepared Load(GridSpec spec, double ambient)
    {
        double peerMb = 0,
            peerMax = double.NaN,
            ownMb = double.NaN;
        var series = Series(spec);
        return new(
            () => Solved(spec),
            solution =>
            {
                var s = (GridSolution)solution;
                return new
                {
                    maxRise = s.MaxRiseK,
                    maxTemperature = ambient + s.MaxRiseK,
                    at = new[] { s.MaxAcrossM, s.MaxAlongM },
                    sourceMeanRises = s.Sources.Select(x => x.MeanK),
                    cells = s.Cells,
                    iterations = s.Iterations,
                    residual = s.Residual,
                    balanceError = s.BalanceError,
                    peakMemoryMb = Math.Round(double.IsNaN(ownMb) ? PeakMb() : ownMb, 1),
                    seriesMaxRise = series?.Peak().RiseK,
                    peerMaxRise = peerMax,
                    peerMemoryMb = Math.Round(peerMb, 1),
                };
            }
        )
        {
            PeerMs = File.Exists(CalculixDeck.Program)
                ? () =>
                {
                    // Before the deck is written: that takes memory of its own.
                    ownMb = double.IsNaN(ownMb) ? PeakMb() : ownMb;
                    var folder = Directory.CreateTempSubdirectory("lampwright-peer-").FullName;
                    try
                    {
                        CalculixDeck.Write(spec, Path.Combine(folder, "grid.inp"), spec.CellM);
                        var (ms, mb) = CalculixDeck.Run(folder, "grid");
                        (peerMb, peerMax) = (
                            mb,
                            CalculixDeck.Top(spec, Path.Combine(folder, "grid.dat"), spec.CellM).Cast<double>().Max()
                        );
                        return ms;
                    }
                    finally
                    {
                        Directory.Delete(folder, recursive: true);
                    }
                }
                : null,
            Also = series is null ? [] : [("seriesMs", () => Series(spec)!.Peak())],
        };
    }

    /// <summary>The problem that a file states, and its ambient.</summary>
    protected abstract (GridSpec Spec, double Ambient) Spec(JsonElement file);

    /// <summary>A number that must be there.</summary>
    protected static double Number(JsonElement of, string name) =>
        of.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number
            ? value.GetDouble()
            : throw new BadProblemException($"{name} is missing or no number");

    /// <summary>A number, or another where it is missing.</summary>
    protected static double Number(JsonElement of, string name, double missing) =>
        of.TryGetProperty(name, out _) ? Number(of, name) : missing;

    /// <summary>One source or several; one without a place is centred.</summary>
    protected static IReadOnlyList<GridSource> Sources(JsonElement file, double lx, double ly)
    {
        GridSource One(JsonElement s)
        {
            var at = s.TryGetProperty("at", out var place)
                ? place.EnumerateArray().Select(v => v.GetDouble()).ToArray()
                : [lx / 2, ly / 2];
            return at.Length == 2
                ? new(at[0], at[1], Number(s, "x"), Number(s, "y"), Number(s, "power"))
                : throw new BadProblemException("at takes two numbers");
        }

        return file.TryGetProperty("sources", out var several) ? [.. several.EnumerateArray().Select(One)]
            : file.TryGetProperty("source", out var one) ? [One(one)]
            : throw new BadProblemException("source or sources is missing");
    }

    /// <summary>The exact series, where there is one: a plate with no fins and a film below only.</summary>
    private static SpreadingPeak? Series(GridSpec spec) =>
        spec.Fins.Count > 0 || spec.Films != new GridFilms { BelowWPerM2K = spec.Films.BelowWPerM2K }
            ? null
            : new(
                spec.AcrossM,
                spec.AlongM,
                spec.BaseThicknessM,
                spec.ConductivityWPerMK,
                spec.Films.BelowWPerM2K,
                [
                    .. spec.Sources.Select(s => new Footprint(
                        s.CentreAcrossM,
                        s.CentreAlongM,
                        s.WidthM,
                        s.DepthM,
                        s.PowerW
                    )),
                ]
            );

    private static GridSolution Solved(GridSpec spec)
    {
        try
        {
            var answer = GridSolver.Solve(spec);
            return answer.Solution ?? throw new BadProblemException(answer.Failure!.Reason.TrimEnd('.'));
        }
        catch (ArgumentOutOfRangeException e)
        {
            throw new BadProblemException(e.Message);
        }
    }

    private static double PeakMb()
    {
        const string Status = "/proc/self/status";
        var line = File.Exists(Status)
            ? File.ReadLines(Status).FirstOrDefault(l => l.StartsWith("VmHWM:", StringComparison.Ordinal))
            : null;
        return line is null
            ? double.NaN
            : double.Parse(line.AsSpan(6).Trim().ToString().Split(' ')[0], CultureInfo.InvariantCulture) / 1024;
    }
}

/// <summary><c>plate FILE</c>: a plate with sources above and a film below.</summary>
internal sealed class PlateProblem : ConductionProblem
{
    /// <inheritdoc/>
    public override string Name => "plate";

    /// <inheritdoc/>
    protected override (GridSpec Spec, double Ambient) Spec(JsonElement file)
    {
        double lx = Number(file, "lx"),
            ly = Number(file, "ly");
        return (
            new()
            {
                AcrossM = lx,
                AlongM = ly,
                BaseThicknessM = Number(file, "lz"),
                ConductivityWPerMK = Number(file, "k"),
                Films = new() { BelowWPerM2K = Number(file, "h_bottom") },
                Sources = Sources(file, lx, ly),
                CellM = Number(file, "cell_mm", 1) / 1e3,
            },
            Number(file, "ambient", 0)
        );
    }
}

/// <summary><c>finned FILE</c>: the plate with fins below, a film on all faces that look into a gap or down.</summary>
internal sealed class FinnedProblem : ConductionProblem
{
    /// <inheritdoc/>
    public override string Name => "finned";

    /// <inheritdoc/>
    protected override (GridSpec Spec, double Ambient) Spec(JsonElement file)
    {
        double lx = Number(file, "lx"),
            ly = Number(file, "ly"),
            film = Number(file, "h_fin");
        return (
            new()
            {
                AcrossM = lx,
                AlongM = ly,
                BaseThicknessM = Number(file, "base"),
                ConductivityWPerMK = Number(file, "k"),
                Fins = GridSpec.EvenFins(lx, Number(file, "fin_thickness"), Number(file, "fin_pitch")),
                FinHeightM = Number(file, "fin_height"),
                Films = new()
                {
                    BelowWPerM2K = film,
                    FinSidesWPerM2K = film,
                    FinTipsWPerM2K = film,
                },
                Sources = Sources(file, lx, ly),
                CellM = Number(file, "cell_mm", 1) / 1e3,
            },
            Number(file, "ambient", 0)
        );
    }
}
