namespace Lampwright.Steps.ChainProof;

/// <summary>One numbered part of all chains: a box, what came of it.</summary>
internal sealed class ChainBranch
{
    public ChainBranch(int[] box, double bound)
    {
        Box = box;
        Bound = bound;
    }

    /// <summary>Least index of each position, then greatest.</summary>
    public int[] Box { get; }

    /// <summary>An error that no chain of it betters: at first that of the whole box, at the end that of what stayed open.</summary>
    public double Bound { get; set; }

    public double Error { get; set; } = double.PositiveInfinity;

    public int[]? Best { get; set; }

    public long Boxes { get; set; }

    public bool Complete { get; set; }

    public bool Done { get; set; }

    public List<ProofLine>? Lines { get; set; }
}

/// <summary>Closes the boxes of one part, depth first. One for each worker.</summary>
internal sealed class ChainWorker
{
    private readonly ChainModel _model;
    private readonly ChainWindows _windows;
    private readonly ChainBoxes _boxes;
    private readonly ChainError _error;
    private readonly ChainPicks _picks;
    private int[] _stack = new int[64];

    public ChainWorker(ChainModel model)
    {
        _model = model;
        _windows = new(model);
        _boxes = new(model, _windows);
        _error = new(model);
        _picks = new(model, _boxes.Limits);
    }

    /// <summary>The box of all chains.</summary>
    public static int[] Root(ChainModel model)
    {
        var p = model.Positions;
        var root = new int[2 * p];
        for (var k = 0; k < p; k++)
        {
            root[p + k] = model.Values(k).Count - 1;
        }

        return root;
    }

    /// <summary>Divides all chains into numbered parts, by halving down to a depth. Lines of the proof mark where each part goes.</summary>
    public List<ChainBranch> Divide(double error, int depth, List<ProofLine>? lines)
    {
        _windows.Narrow(error);
        _boxes.Forget();
        _boxes.Lines = lines;
        var branches = new List<ChainBranch>();
        Divide(Root(_model), depth, branches);
        return branches;
    }

    private void Divide(int[] box, int depth, List<ChainBranch> branches)
    {
        var p = _model.Positions;
        if (!_boxes.Keep(box.AsSpan(0, p), box.AsSpan(p)))
        {
            return;
        }

        var widest = depth > 0 ? _boxes.Widest(box.AsSpan(0, p), box.AsSpan(p)) : -1;
        if (widest < 0)
        {
            branches.Add(new(box, _error.Least(box.AsSpan(0, p), box.AsSpan(p))));

            // Stands for the lines of the part, which take its place.
            _boxes.Lines?.Add(new(CaseStep.Closed, -1, branches.Count - 1, ClosedBy.Computed, 0));
            return;
        }

        var cut = Middle(box, widest);
        _boxes.Lines?.Add(new(CaseStep.Halved, widest, cut, ClosedBy.Target, 0));
        var upper = (int[])box.Clone();
        (box[p + widest], upper[widest]) = (cut, cut + 1);
        Divide(box, depth - 1, branches);
        Divide(upper, depth - 1, branches);
    }

    /// <summary>Closes a part.</summary>
    /// <param name="branch">The part; takes what came of it.</param>
    /// <param name="error">The error that is to be bettered.</param>
    /// <param name="mostBoxes">Boxes after which it stays open.</param>
    /// <param name="withLines">Whether the lines of the proof are kept.</param>
    /// <param name="stop">Ends the search with what it has.</param>
    public void Close(ChainBranch branch, double error, long mostBoxes, bool withLines, CancellationToken stop)
    {
        var p = _model.Positions;
        var size = 2 * p;
        _windows.Narrow(error);
        _boxes.Forget();
        branch.Lines = withLines ? [] : null;
        _boxes.Lines = branch.Lines;
        branch.Box.CopyTo(_stack, 0);
        var open = 1;
        var boxes = 0L;
        while (open > 0)
        {
            if (boxes >= mostBoxes || ((boxes & 1023) == 1023 && stop.IsCancellationRequested))
            {
                branch.Bound = double.PositiveInfinity;
                for (var i = 0; i < open; i++)
                {
                    var left = _stack.AsSpan(i * size, size);
                    branch.Bound = Math.Min(branch.Bound, _error.Least(left[..p], left[p..]));
                }

                branch.Boxes = boxes;
                return;
            }

            boxes++;
            if ((open + 1) * size > _stack.Length)
            {
                Array.Resize(ref _stack, 2 * _stack.Length);
            }

            var box = _stack.AsSpan((open - 1) * size, size);
            if (!_boxes.Keep(box[..p], box[p..]))
            {
                open--;
                continue;
            }

            var widest = _boxes.Widest(box[..p], box[p..]);
            if (widest < 0)
            {
                open--;
                branch.Lines?.Add(new(CaseStep.Closed, 0, 0, ClosedBy.Computed, 0));
                Compute(branch, box[..p]);
                continue;
            }

            // The upper half waits below the lower one, which is looked at next.
            var cut = Middle(box, widest);
            branch.Lines?.Add(new(CaseStep.Halved, widest, cut, ClosedBy.Target, 0));
            var lower = _stack.AsSpan(open * size, size);
            box.CopyTo(lower);
            (lower[p + widest], box[widest]) = (cut, cut + 1);
            open++;
        }

        (branch.Boxes, branch.Complete, branch.Bound) = (boxes, true, double.PositiveInfinity);
    }

    private void Compute(ChainBranch branch, ReadOnlySpan<int> at)
    {
        var error = _error.Of(at, _windows.Error * (1 - ChainWindows.Gain));
        if (double.IsFinite(error) && _picks.Of(at) is not null)
        {
            (branch.Error, branch.Best) = (error, at.ToArray());
            _windows.Narrow(error);
        }
    }

    private int Middle(ReadOnlySpan<int> box, int k)
    {
        var p = _model.Positions;
        var values = _model.Values(k).Width;
        var (a, z) = (box[k], box[p + k] - 1);
        var middle = (values[a] + values[z + 1]) / 2;
        while (a < z)
        {
            var m = (a + z + 1) >> 1;
            if (values[m] > middle)
            {
                z = m - 1;
            }
            else
            {
                a = m;
            }
        }

        return a;
    }
}
