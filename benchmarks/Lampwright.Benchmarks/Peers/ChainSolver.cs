using System.Diagnostics;
using Google.OrTools.Sat;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Benchmarks.Peers;

/// <summary>The same chain problem for a constraint solver (CP-SAT of OR-Tools), with its proof of optimality.</summary>
/// <remarks>
/// One yes or no for each value of each position; sums in tenths of a microohm; each wanted current takes one combination. A solver of whole
/// numbers wants lines, so it makes |R/Rt − 1| least in place of |I/It − 1|: as many chains, the same limits, an optimum of its own. Power limits are
/// lines too: I²·r ≤ P means R ≥ V·sqrt(r/P). Stopped after <see cref="MostSeconds"/>.
/// </remarks>
internal sealed class ChainSolver(ChainSearchSpec spec)
{
    private const double PerOhm = 1e7;
    private const long PerUnit = 10_000_000;

    public static double MostSeconds => 60;

    /// <summary>What came of the last run, in words.</summary>
    public string Status { get; private set; } = "not run";

    /// <summary>Worst |R/Rt − 1| of the last run.</summary>
    public double Error { get; private set; }

    private double? _stoppedMs;

    public static bool Takes(ChainSearchSpec spec) =>
        spec.Arrangement == Arrangement.SeriesChain
        && spec.Objective == ChainObjective.Nominal
        && spec.Stock.All(p => p.Count is null);

    /// <summary>One run; milliseconds. A run that was stopped is not repeated.</summary>
    public double Ms()
    {
        if (_stoppedMs is { } told)
        {
            return told;
        }

        var start = Stopwatch.GetTimestamp();
        using var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant(
                $"max_time_in_seconds:{MostSeconds},num_search_workers:{Environment.ProcessorCount}"
            ),
        };
        var status = solver.Solve(Model(out var error));
        var ms = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        Error = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? solver.Value(error) / (double)PerUnit
            : -1;
        Status = status == CpSolverStatus.Optimal ? "proven" : $"not proven in {MostSeconds} s ({status})";
        _stoppedMs = status == CpSolverStatus.Optimal ? null : ms;
        return ms;
    }

    private static long Whole(double ohm) => (long)Math.Round(ohm * PerOhm);

    private CpModel Model(out IntVar error)
    {
        var model = new CpModel();
        var values = Values();
        var (n, volts) = (spec.Switches, spec.Driver.ThresholdV);
        var (open, closed, root) = (new LinearExpr[n + 1], new LinearExpr[n + 1], new LinearExpr[n + 1]);
        for (var k = 0; k <= n; k++)
        {
            var is_ = values.Select((_, j) => model.NewBoolVar($"p{k}v{j}")).ToArray();
            model.AddExactlyOne(is_);
            LinearExpr Sum(Func<(double Ohm, double W), double> of) =>
                LinearExpr.WeightedSum(is_, values.Select(v => Whole(of(v))).ToArray());
            open[k] = Sum(v => v.Ohm);
            closed[k] = k == 0 ? open[k] : Sum(v => v.Ohm * spec.ContactOhm / (v.Ohm + spec.ContactOhm));
            root[k] = Sum(v => Math.Min(volts * Math.Sqrt(v.Ohm / v.W), 1e3));
        }

        LinearExpr Total(int index) =>
            LinearExpr.Sum([
                .. Enumerable.Range(0, n + 1).Select(k => k > 0 && ((index >> (n - k)) & 1) == 0 ? closed[k] : open[k]),
                LinearExpr.Constant(Whole(spec.LeadOhm)),
            ]);
        var all = Total(0);
        model.Add(all >= Whole(volts / spec.MostA));
        for (var k = 0; k <= n; k++)
        {
            model.Add((k == 0 ? all : all - closed[k] + open[k]) >= root[k]);
            if (k > 1 && !spec.OneAfterAnother)
            {
                model.Add(open[k] >= open[k - 1]);
            }
        }

        error = model.NewIntVar(0, PerUnit, "error");
        var wanted = spec.WantedA.OrderDescending().ToArray();
        for (var t = 0; t < wanted.Length; t++)
        {
            var ohm = Whole(volts / wanted[t]);
            var takes = Enumerable.Range(0, spec.CombinationCount).Select(c => model.NewBoolVar($"t{t}c{c}")).ToArray();
            model.AddExactlyOne(takes);
            var off = model.NewIntVar(0, ohm, $"off{t}");
            model.Add(error * ohm >= off * PerUnit);
            for (var c = 0; c < takes.Length; c++)
            {
                if (spec.OneAfterAnother && c != t)
                {
                    model.Add(takes[c] == 0);
                    continue;
                }

                var total = Total(spec.NetworkIndex(c));
                model.Add(total - ohm <= off).OnlyEnforceIf(takes[c]);
                model.Add(ohm - total <= off).OnlyEnforceIf(takes[c]);
            }
        }

        model.Minimize(error);
        return model;
    }

    private List<(double Ohm, double W)> Values()
    {
        var all = spec.Stock.Select(p => (p.Ohm, p.AllowedW)).ToList();
        if (spec.Joined)
        {
            var pairs =
                from i in Enumerable.Range(0, all.Count)
                from j in Enumerable.Range(0, i + 1)
                let a = all[i]
                let b = all[j]
                let sum = a.Ohm + b.Ohm
                from p in new[]
                {
                    (sum, Math.Min(a.AllowedW * sum / a.Ohm, b.AllowedW * sum / b.Ohm)),
                    (a.Ohm * b.Ohm / sum, Math.Min(a.AllowedW * sum / b.Ohm, b.AllowedW * sum / a.Ohm)),
                }
                select p;
            all.AddRange([.. pairs]);
        }

        return
        [
            .. all.Where(p => p.Ohm >= spec.LeastOhm * (1 - 1e-12) && p.Ohm <= spec.MostOhm * (1 + 1e-12))
                .GroupBy(p => Math.Round(p.Ohm, 12))
                .Select(g => g.MaxBy(p => p.AllowedW))
                .OrderBy(p => p.Ohm),
        ];
    }
}
