using System.Numerics;

namespace Lampwright.Metal.Bending;

/// <summary>All states of a part that can be reached by strokes, one after the other.</summary>
internal sealed class OrderSearch
{
    private readonly FoldTree tree;
    private readonly BrakeSolids solids;
    private readonly FingerRow fingers;
    private readonly bool[] present;
    private readonly List<Stroke> strokes;
    private readonly List<StrokeChecks> moves;
    private readonly bool[] reached;
    private readonly ulong[] can;
    private readonly int[] bits;
    private readonly ulong[] bends;

    /// <summary>Searches through a part.</summary>
    /// <param name="tree">The part.</param>
    /// <param name="solids">The brake.</param>
    /// <param name="fingers">Its fingers.</param>
    /// <param name="moves">What is known of each stroke from each side; it grows.</param>
    /// <param name="present">Flats that belong to the part.</param>
    public OrderSearch(FoldTree tree, BrakeSolids solids, FingerRow fingers, List<StrokeChecks> moves, bool[] present)
    {
        (this.tree, this.solids, this.fingers, this.present) = (tree, solids, fingers, present);
        this.moves = moves.FindAll(m => present[m.Stroke.Parent] && present[m.Stroke.Children[0]]);
        moves = this.moves;
        strokes = [.. moves.Select(m => m.Stroke).Distinct()];
        bends = [.. strokes.Select(s => s.Bends.Aggregate(0UL, (sum, b) => sum | 1UL << b))];
        bits = [.. moves.Select(m => 1 << strokes.IndexOf(m.Stroke))];
        reached = new bool[1 << strokes.Count];
        can = new ulong[reached.Length];
        reached[0] = true;
        for (var state = 0; state < reached.Length; state++)
        {
            if (!reached[state])
            {
                continue;
            }

            States++;
            for (var m = 0; m < moves.Count; m++)
            {
                if (
                    (state & bits[m]) == 0
                    && moves[m].At(Bends(state), present, fingers, out _).Obstacle == Obstacle.None
                )
                {
                    can[state] |= 1UL << m;
                    reached[state | bits[m]] = true;
                }
            }
        }

        Looks = moves.Sum(m => m.Looks);
    }

    public bool IsComplete => reached[^1];

    public int States { get; }

    public int Looks { get; }

    public bool IsReachedWithout(Stroke stroke) => reached[(reached.Length - 1) & ~(1 << strokes.IndexOf(stroke))];

    /// <summary>The moves of an order with the bends that are made before each.</summary>
    /// <param name="fewest">With the fewest changes; else any.</param>
    public List<(int Move, ulong Done)> Order(bool fewest)
    {
        // Cheapest way to each state with each last move; a state's bits only grow, so that one pass in their order settles it.
        var cost = new Dictionary<(int State, int Last), (double Cost, int Before)>();
        var rows = new Dictionary<(int Move, int State), string>();
        var layers = new List<int>[reached.Length];
        layers[0] = [-1];
        cost[(0, -1)] = (0, -1);
        for (var state = 0; state < reached.Length; state++)
        {
            if (layers[state] is not { } lasts)
            {
                continue;
            }

            foreach (var m in Enumerable.Range(0, moves.Count).Where(m => (can[state] >> m & 1) == 1))
            {
                var next = state | bits[m];
                var row = Row(m, state);
                rows[(m, state)] = row;
                foreach (var last in lasts)
                {
                    var so = cost[(state, last)].Cost + Change(last, m, state, row, rows);
                    if (!cost.TryGetValue((next, m), out var known))
                    {
                        (layers[next] ??= []).Add(m);
                    }
                    else if (so >= known.Cost - 1e-12)
                    {
                        continue;
                    }

                    cost[(next, m)] = (so, last);
                }

                if (!fewest && layers[next].Count > 0 && next == reached.Length - 1)
                {
                    break;
                }
            }

            if (!fewest && state > 0)
            {
                // One way to each state is enough.
                var best = lasts.MinBy(l => cost[(state, l)].Cost);
                lasts.RemoveAll(l => l != best);
            }
        }

        var order = new List<(int, ulong)>();
        var (at, move) = (reached.Length - 1, layers[^1]?.MinBy(l => cost[(reached.Length - 1, l)].Cost) ?? -1);
        while (at != 0)
        {
            var before = cost[(at, move)].Before;
            at &= ~bits[move];
            order.Add((move, Bends(at)));
            move = before;
        }

        order.Reverse();
        return order;
    }

    /// <summary>The stage of a move.</summary>
    public BendStage Stage(int move, ulong done)
    {
        var check = moves[move];
        check.At(done, present, fingers, out var room);
        var row = fingers.Between(room.LeastM, room.MostM) ?? [];
        var (stroke, part) = (check.Stroke, tree.Part);
        var seat = BrakeSeat.Of(part, stroke, check.Side, solids.Machine);
        var length = check.To - check.From;

        // Fingers that are narrower than the least are spread by the gaps between them.
        var width = Math.Max(row.Sum(), room.LeastM);

        // In the middle of the bend where nothing stands there, else as near to it as the walls allow.
        var middle = ((check.From + check.To) / 2) - (width / 2);
        var from = Math.Min(Math.Max(middle, room.LeftM), room.RightM - width);
        var clamped = check.Side == ClampedSide.Parent ? stroke.Parent : stroke.Children[0];
        return new(
            stroke,
            check.Side,
            part.Faces[clamped].Face,
            part.Bends[stroke.Bends[0]].AngleRad > 0,
            row,
            room.LeastM,
            room.MostM,
            length,
            from - check.From,
            seat.NoseBackM,
            check.HighestBehindM(done) > solids.Machine.OpeningM
        );
    }

    /// <summary>The furthest state where nothing went on: what is made, and why the rest stuck.</summary>
    public (IReadOnlyList<string> Made, IReadOnlyList<Blocked> Blocked) Furthest()
    {
        var best = 0;
        for (var state = 0; state < reached.Length; state++)
        {
            if (reached[state] && BitOperations.PopCount((uint)state) > BitOperations.PopCount((uint)best))
            {
                best = state;
            }
        }

        var blocked = new List<Blocked>();
        for (var s = 0; s < strokes.Count; s++)
        {
            if ((best >> s & 1) == 1)
            {
                continue;
            }

            var sides = moves.FindAll(m => m.Stroke == strokes[s]);
            blocked.Add(
                new(
                    strokes[s],
                    sides[0].At(Bends(best), present, fingers, out _),
                    sides.Count > 1 ? sides[1].At(Bends(best), present, fingers, out _) : null
                )
            );
        }

        return ([.. strokes.Where((_, s) => (best >> s & 1) == 1).Select(s => s.Name)], blocked);
    }

    private double Change(int last, int move, int state, string row, Dictionary<(int Move, int State), string> rows)
    {
        // From the flange is a shade worse: the whole part swings.
        var cost = moves[move].Side == ClampedSide.Flange ? 0.01 : 0;
        if (last < 0)
        {
            return cost;
        }

        cost += Up(last) == Up(move) ? 0 : 1;
        return rows[(last, state & ~bits[last])] == row ? cost : cost + 1;
    }

    private bool Up(int move) => tree.Part.Bends[moves[move].Stroke.Bends[0]].AngleRad > 0;

    private string Row(int move, int state)
    {
        moves[move].At(Bends(state), present, fingers, out var room);
        return string.Join(' ', fingers.Between(room.LeastM, room.MostM) ?? []);
    }

    private ulong Bends(int state)
    {
        var made = 0UL;
        for (var s = 0; s < bends.Length; s++)
        {
            made |= (state >> s & 1) == 1 ? bends[s] : 0;
        }

        return made;
    }
}
