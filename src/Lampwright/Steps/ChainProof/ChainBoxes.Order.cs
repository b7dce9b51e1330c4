namespace Lampwright.Steps.ChainProof;

/// <content>What the order of alike positions and the counts of a drawer leave of a box.</content>
internal sealed partial class ChainBoxes
{
    // Positions that are alike may be put in order, so that only ascending chains are looked at.
    private bool Ascend(Span<int> least, Span<int> most)
    {
        for (var k = 2; k < least.Length; k++)
        {
            if (least[k] < least[k - 1])
            {
                if (most[k] < least[k - 1])
                {
                    Lines?.Add(new(CaseStep.Closed, 0, 0, ClosedBy.Order, 0));
                    return false;
                }

                least[k] = least[k - 1];
                Lines?.Add(new(CaseStep.CutBelow, k, least[k] - 1, ClosedBy.Order, 0));
            }
        }

        for (var k = least.Length - 2; k >= 1; k--)
        {
            if (most[k] > most[k + 1])
            {
                most[k] = most[k + 1];
                Lines?.Add(new(CaseStep.CutAbove, k, most[k] + 1, ClosedBy.Order, 0));
            }
        }

        return true;
    }

    // Of a value that can be had c times, ascending positions hold at most c: the next one is greater, the one before is smaller.
    private bool Counted(Span<int> least, Span<int> most)
    {
        for (var again = _model.Alike; again; )
        {
            again = false;
            for (var k = 1; k < least.Length; k++)
            {
                var before = k - _counts.Most(least[k]);
                if (before >= k || (before >= 1 && least[before] == least[k]))
                {
                    Lines?.Add(new(CaseStep.CutBelow, k, least[k], ClosedBy.Count, 0));
                    least[k]++;
                    again = true;
                    if (least[k] > most[k])
                    {
                        Lines?.Add(new(CaseStep.Closed, 0, 0, ClosedBy.Order, 0));
                        return false;
                    }
                }
            }

            for (var k = least.Length - 1; k >= 1; k--)
            {
                var after = k + _counts.Most(most[k]);
                if (after <= k || (after < least.Length && most[after] == most[k]))
                {
                    Lines?.Add(new(CaseStep.CutAbove, k, most[k], ClosedBy.Count, 0));
                    most[k]--;
                    again = true;
                    if (least[k] > most[k])
                    {
                        Lines?.Add(new(CaseStep.Closed, 0, 0, ClosedBy.Order, 0));
                        return false;
                    }
                }
            }

            if (again && !Ascend(least, most))
            {
                return false;
            }
        }

        if (!_counts.Short(least, most))
        {
            return true;
        }

        Lines?.Add(new(CaseStep.Closed, 0, 0, ClosedBy.Count, 0));
        return false;
    }
}
