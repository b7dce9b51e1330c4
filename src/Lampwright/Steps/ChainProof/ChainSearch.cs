namespace Lampwright.Steps.ChainProof;

/// <summary>Finds the chain of resistors with the least worst error against the wanted currents, and proves that none is better.</summary>
/// <remarks>
/// Branch and bound over boxes of ascending stock values. A first chain comes from ladders bettered place by place. All chains are
/// divided into numbered parts, which the workers claim one after another; a part is told what was found in those at least four before it, so
/// that the answer does not hang on the count of workers or on their speed, and nobody waits at a barrier.
/// <b>Validity</b>: direct current; see <see cref="Corners"/> for warm parts. A chain counts as better from a billionth of its error on.
/// <b>Source</b>: interval branch and bound with contraction (general method); formulas in docs/steps-chain.md.
/// <b>Checked by</b>: invariant (brute force on small stocks, an independent checker of the certificate), exhaustive enumeration.
/// </remarks>
public static class ChainSearch
{
    private static readonly int Depth = 6;
    private static readonly int Lag = 4;
    private static readonly double[] ScoutShares = [0.125, 0.4];
    private static readonly long ScoutBoxes = 800;

    /// <summary>The best chain, or what is missing; never hangs: it ends with its budget of boxes or when it is told to stop.</summary>
    /// <param name="spec">What is wanted and what may be taken.</param>
    /// <param name="progress">Told from time to time how far it is; may be called from any worker, one at a time.</param>
    /// <param name="stop">Ends the search with the best so far.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure that only a program can have got wrong.</exception>
    public static ChainSearchResult Find(
        ChainSearchSpec spec,
        IProgress<ChainProgress>? progress = null,
        CancellationToken stop = default
    )
    {
        ArgumentNullException.ThrowIfNull(spec);
        Check(spec);
        var (usable, unusable, beyond) = ChainStock.Sorted(spec);
        var told = new ChainTold(unusable, beyond, spec.Joined && !ChainStock.Joins(spec, usable));
        var model = new ChainModel(spec, usable);
        if (!model.IsPossible)
        {
            return ChainLack.Impossible(model, told);
        }

        var run = new Run(model, progress, stop);
        run.All();
        return run.Best is { } at
            ? ChainSearchResult.Of(model, told, at, run.Proven, run.Bound, run.Boxes, run.Certificate())
            : ChainLack.NoChain(model, told, run.Proven, run.Boxes, run.Certificate(), stop);
    }

    /// <summary>A chain that keeps the limits, null where the budget finds none.</summary>
    internal static int[]? Quick(ChainModel model)
    {
        if (!model.IsPossible)
        {
            return null;
        }

        var run = new Run(model, null, CancellationToken.None);
        run.All();
        return run.Best;
    }

    private static void Check(ChainSearchSpec spec)
    {
        Guard.InRange(spec.Switches, 0, ChainSpec.MostSwitches);
        Guard.InRange(spec.ContactOhm, 0, 1e6);
        Guard.InRange(spec.ContactLeastOhm ?? 0, 0, 1e6);
        Guard.InRange(spec.ContactMostOhm ?? 0, 0, 1e6);
        Guard.InRange(spec.ContactWornOhm ?? 0, 0, 1e6);
        Guard.InRange(spec.LeastSwitchedOhm, 0, 1e9);
        Guard.Positive(spec.CornerMostA ?? 1);
        Guard.Finite(spec.CornerLeastA ?? 0);
        Guard.InRange(spec.LeadOhm, 0, 1e6);
        Guard.InRange(spec.LeadTolerance, 0, 0.99);
        Guard.InRange(spec.ThresholdTolerance, 0, 0.99);
        Guard.Positive(spec.Driver.ThresholdV);
        Guard.InRange(spec.Driver.OffsetA, 0, 1e6);
        Guard.InRange(spec.AirK, 1, 2000);
        Guard.InRange(spec.AirLeastK ?? spec.AirK, 1, 2000);
        Guard.InRange(spec.AirMostK ?? spec.AirK, 1, 2000);
        Guard.Positive(spec.LeastOhm);
        Guard.InRange(spec.MostOhm, 0, 1e12);
        Guard.InRange(spec.MostBoxes, 0, 1e15);
        Guard.InRange(spec.Workers, 1, 64);
        Guard.Positive(spec.MostA);
        Guard.Positive(spec.BleedOhm ?? 1);
        Guard.InRange(spec.UnsensedLeadOhm, 0, 1e6);
        Guard.InRange(spec.FloorOhm, 0, 1e9);
        Guard.InRange(spec.FloorTolerance, 0, 0.99);
    }

    private sealed class Run(ChainModel model, IProgress<ChainProgress>? progress, CancellationToken stop)
    {
        private readonly object _gate = new();
        private readonly List<ProofLine>? _lines = model.Spec.WithCertificate ? [] : null;
        private List<ChainBranch> _branches = [];
        private double _start;
        private int[]? _startAt;
        private int _next;
        private int _done;

        public int[]? Best { get; private set; }

        public double Error { get; private set; }

        public bool Proven { get; private set; }

        public double Bound { get; private set; }

        public long Boxes { get; private set; }

        public void All()
        {
            (_startAt, _start) = new ChainStarts(model).Best();
            var first = new ChainWorker(model);
            Scout(first);
            _branches = first.Divide(_start, Depth, _lines);
            var helpers = Enumerable
                .Range(1, Math.Min(model.Spec.Workers, _branches.Count) - 1 is > 0 and var n ? n : 0)
                .Select(_ => Task.Run(() => Work(new(model)), CancellationToken.None))
                .ToArray();
            Work(first);
            Task.WaitAll(helpers, CancellationToken.None);
            var (error, at) = (_start, double.IsFinite(_start) ? _startAt : null);
            foreach (var branch in _branches)
            {
                if (branch.Error < error)
                {
                    (error, at) = (branch.Error, branch.Best);
                }
            }

            (Best, Error) = (at, error);
            Boxes += _branches.Sum(b => b.Boxes) + _branches.Count;
            Proven = _branches.All(b => b.Complete);
            var closed = error * (1 - ChainWindows.Gain);
            Bound = Proven ? closed : Math.Min(closed, _branches.Where(b => !b.Complete).Min(b => b.Bound));
        }

        public ChainCertificate? Certificate()
        {
            if (_lines is null || !Proven)
            {
                return null;
            }

            var all = new List<ProofLine>();
            foreach (var line in _lines)
            {
                if (line.Position < 0)
                {
                    all.AddRange(_branches[line.Index].Lines!);
                }
                else
                {
                    all.Add(line);
                }
            }

            return new(model.Fixed.Parts, model.Switched.Parts, all);
        }

        // A bad first bound is what makes a search long. A search for a chain that is far better costs little, for almost every box is
        // closed at once, and finds it early where there is one.
        private void Scout(ChainWorker worker)
        {
            var all = new ChainBranch(ChainWorker.Root(model), 0);
            foreach (var share in ScoutShares)
            {
                worker.Close(all, Math.Min(_start, 1) * share, Math.Min(ScoutBoxes, model.Spec.MostBoxes), false, stop);
                Boxes += all.Boxes;
                if (all.Error < _start)
                {
                    (_start, _startAt) = (all.Error, all.Best);
                }
            }
        }

        private void Work(ChainWorker worker)
        {
            while (Claim() is { } claimed)
            {
                var branch = _branches[claimed.Number];
                worker.Close(branch, claimed.Error, claimed.MostBoxes, _lines is not null, stop);
                lock (_gate)
                {
                    branch.Done = true;
                    while (_done < _branches.Count && _branches[_done].Done)
                    {
                        _done++;
                    }

                    Monitor.PulseAll(_gate);
                    Tell();
                }
            }
        }

        private (int Number, double Error, long MostBoxes)? Claim()
        {
            lock (_gate)
            {
                var number = _next++;
                if (number >= _branches.Count)
                {
                    return null;
                }

                // Only rarely is a part so far back still open that this has to wait for it.
                var known = number - Lag + 1;
                while (_done < known)
                {
                    Monitor.Wait(_gate);
                }

                var (error, left) = (_start, model.Spec.MostBoxes);
                for (var i = 0; i < known; i++)
                {
                    error = Math.Min(error, _branches[i].Error);
                    left -= _branches[i].Boxes;
                }

                return (number, error, stop.IsCancellationRequested ? 0 : Math.Max(0, left / 4));
            }
        }

        private void Tell()
        {
            if (progress is null)
            {
                return;
            }

            var best = Math.Min(_start, _branches.Min(b => b.Error));
            var bound = _branches.Where(b => !b.Complete).Select(b => b.Bound).DefaultIfEmpty(best).Min();
            progress.Report(
                new(
                    _branches.Sum(b => b.Boxes),
                    (double)_branches.Count(b => b.Done) / _branches.Count,
                    best,
                    Math.Min(best, bound)
                )
            );
        }
    }
}
