using Lampwright.Evaluation.Draws;
using Lampwright.Evaluation.Metalwork;
using Lampwright.FitUp;
using Lampwright.Geometry;

namespace Lampwright.Evaluation.Assembling;

/// <summary>Masses, balance point, misses and reaches of a draw; bodies stay where they were placed at nominal values.</summary>
internal sealed class AssemblyRows : IRowPart
{
    private readonly MetalRows _metal;
    private readonly int[] _given;
    private readonly Vec3[] _centres;
    private readonly bool[] _placed;
    private readonly (int X, int Y, int Z)[] _within;
    private readonly Vec3[][] _sides;
    private readonly int _centre;
    private readonly int _layers;
    private readonly int _scatter;
    private readonly List<(int Place, HoleMeeting Hole, int X, int Y)> _misses = [];
    private readonly List<(int Place, ScrewGrip Grip, double LengthM)> _reaches = [];
    private readonly Dictionary<(string Joint, int Hole), int> _missPlaces = [];
    private readonly Dictionary<string, int> _reachPlaces = new(StringComparer.Ordinal);

    public AssemblyRows(
        IReadOnlyList<Thing> things,
        FitUpResult result,
        MetalRows metal,
        Variables variables,
        Outputs outputs
    )
    {
        (Things, Result, _metal) = (things, result, metal);
        _given =
        [
            .. things.Select(t =>
                t.GivenMass is { } m ? variables.Of(m.HalfWidth > 0 ? m : m with { HalfWidth = 0.02 * m.Nominal })
                : t.ComputedMassKg is { } kg ? variables.Between(t.Body.Id + ".mass", kg, 0.05 * kg)
                : -1
            ),
        ];
        _centres = new Vec3[things.Count];
        _placed = new bool[things.Count];
        for (var i = 0; i < things.Count; i++)
        {
            var at = result.Placed.FirstOrDefault(p => p.Id == things[i].Body.Id);
            (_placed[i], _centres[i]) = (at is not null, at?.CentreOfMass ?? default);
        }

        // Nobody says where in its box the weight of a bought thing sits: within a sixth of each side from the middle.
        _within =
        [
            .. things.Select(t =>
                t is { BoxM: not null, GivenMass: not null } ? (In(t, "x"), In(t, "y"), In(t, "z")) : (-1, -1, -1)
            ),
        ];
        int In(Thing t, string axis) =>
            variables.Between($"{t.Body.Id}.weight.{axis}", 0, FitUpMethodErrors.WeightInBox.HalfWidth);
        _sides =
        [
            .. things.Select(t =>
                result.Placed.FirstOrDefault(p => p.Id == t.Body.Id) is { Frame: var f } && t.BoxM is { } box
                    ? new[] { f.X * box.X, f.Y * box.Y, f.Z * box.Z }
                    : [default, default, default]
            ),
        ];
        _centre = outputs.Add(3 * things.Count);
        _layers = variables.Between("fitup.layers", 1, 0.03);
        _scatter = variables.Factor(FitUpMethodErrors.HoleScatter);
        First = outputs.Add(things.Count + 4);
        foreach (var joint in result.Joints)
        {
            for (var h = 0; h < joint.Holes.Count; h++)
            {
                var place = outputs.Add();
                _missPlaces.TryAdd((joint.Spec.Name, h), place);
                _misses.Add(
                    (
                        place,
                        joint.Holes[h],
                        variables.StandardNormal($"joint.{joint.Spec.Name}.{h + 1}.x"),
                        variables.StandardNormal($"joint.{joint.Spec.Name}.{h + 1}.y")
                    )
                );
            }

            if (joint is { Grip: { } grip, Spec.Screw: { } screw })
            {
                var place = outputs.Add(3);
                _reachPlaces.TryAdd(joint.Spec.Name, place);
                _reaches.Add((place, grip, screw.LengthM));
            }
        }
    }

    /// <summary>The things.</summary>
    public IReadOnlyList<Thing> Things { get; }

    /// <summary>What fit-up found at nominal values.</summary>
    public FitUpResult Result { get; }

    /// <summary>Place of the mass of the first thing, kg; the total (kg) and the balance point (mm) follow the last.</summary>
    public int First { get; }

    /// <summary>Place of the total mass.</summary>
    public int Total => First + Things.Count;

    /// <summary>Place of a hole's miss, mm.</summary>
    public int Miss(string joint, int hole) => _missPlaces[(joint, hole)];

    /// <summary>Place of a joint's grip, mm; engaged and standing out follow. -1 without a screw.</summary>
    public int Reach(string joint) => _reachPlaces.GetValueOrDefault(joint, -1);

    /// <summary>Balance point of some of the placed things in a row, m, and their mass, kg.</summary>
    /// <param name="y">The row.</param>
    /// <param name="which">Which things.</param>
    public (double MassKg, Vec3 Centre) BalanceOf(ReadOnlySpan<double> y, ReadOnlySpan<bool> which)
    {
        var (mass, sum) = (0.0, default(Vec3));
        for (var i = 0; i < Things.Count; i++)
        {
            if (which[i] && _placed[i])
            {
                mass += y[First + i];
                var c = _centre + (3 * i);
                sum += new Vec3(y[c], y[c + 1], y[c + 2]) * y[First + i];
            }
        }

        return mass > 0 ? (mass, sum / mass) : (0, default);
    }

    /// <inheritdoc/>
    public double Row(ReadOnlySpan<double> x, Span<double> y)
    {
        var (total, placed, moment) = (0.0, 0.0, default(Vec3));
        for (var i = 0; i < Things.Count; i++)
        {
            var thing = Things[i];
            var mass = _given[i] >= 0 ? x[_given[i]] : 0;
            foreach (var part in thing.MetalParts)
            {
                mass += y[_metal.Place(part) + 3];
            }

            mass *= thing.Count;
            y[First + i] = mass;
            total += mass;
            var centre = _centres[i];
            if (_within[i].X >= 0)
            {
                var s = _sides[i];
                centre += (s[0] * x[_within[i].X]) + (s[1] * x[_within[i].Y]) + (s[2] * x[_within[i].Z]);
            }

            var c = _centre + (3 * i);
            (y[c], y[c + 1], y[c + 2]) = (centre.X, centre.Y, centre.Z);
            if (_placed[i])
            {
                placed += mass;
                moment += centre * mass;
            }
        }

        y[Total] = total;
        var balance = placed > 0 ? moment / placed : default;
        (y[Total + 1], y[Total + 2], y[Total + 3]) = (balance.X * 1000, balance.Y * 1000, balance.Z * 1000);
        foreach (var (place, hole, ux, uy) in _misses)
        {
            y[place] = hole.MissM(x[ux], x[uy], x[_scatter]) * 1000;
        }

        foreach (var (place, grip, length) in _reaches)
        {
            var reach = grip.Reach(length, x[_layers]);
            (y[place], y[place + 1], y[place + 2]) = (
                reach.GripM * 1000,
                reach.EngagedM * 1000,
                reach.StandsOutM * 1000
            );
        }

        return 0;
    }
}
