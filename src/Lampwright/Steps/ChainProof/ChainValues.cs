namespace Lampwright.Steps.ChainProof;

/// <summary>The values one position may take, ascending, with what each adds to a combination at both ends of its range.</summary>
/// <remarks>
/// What is added is ohm in series and for a selector, and minus siemens for branches, so that it always rises with the value.
/// <c>Up</c> is the greatest low end among the values up to an index, <c>Down</c> the least high end from an index on: with them a box
/// of values is bounded by its two last indices even where parts of different tolerance lie among each other.
/// </remarks>
internal sealed class ChainValues
{
    private readonly double[][] _most;

    public ChainValues(ChainSearchSpec spec, IReadOnlyList<PositionParts[]> values, bool isFixed)
    {
        Parts = values;
        var n = values.Count;
        var corners = values.Select(v => Of(spec, v[0], isFixed)).ToArray();
        Ohm = [.. corners.Select(c => c.Nominal)];
        Heat = [.. corners.Select(c => c.NominalHeat)];
        Part = [.. values.Select(v => v[0].Ohm)];
        ByPassed = [.. Part.Select(x => ChainNetwork.ByPassed(x, spec.ContactOhm))];
        ByPassedWarm = [.. Ohm.Select(x => ChainNetwork.ByPassed(x, spec.ContactOhm))];
        Bears = [.. values.Select(v => v.Max(p => PartBears.Of(spec, p)))];
        var parallel = spec.Arrangement == Arrangement.ParallelBranches;
        var selector = spec.Arrangement == Arrangement.Selector;
        var (least, most) = (ContactLeast(spec), ContactMost(spec));
        double Open(double x, double contact) =>
            isFixed ? x
            : parallel ? 0
            : selector ? x + contact
            : x;
        double Closed(double x, double contact) =>
            isFixed || selector ? 0
            : parallel ? -1 / (x + contact)
            : ChainNetwork.ByPassed(x, contact);
        Low = new(
            [.. corners.Select(c => Open(c.Low, least))],
            [.. corners.Select(c => Closed(c.Low, least))],
            [.. corners.Select(c => c.LowHeat)]
        );
        High = new(
            [.. corners.Select(c => Open(c.High, most))],
            [.. corners.Select(c => Closed(c.High, most))],
            [.. corners.Select(c => c.HighHeat)]
        );
        Up = new(Rising(Low.Open), Rising(Low.Closed), Rising(Low.Heat));
        Bare = Low;
        BareUp = Up;
        if (ContactBare(spec) is var bare && bare < least)
        {
            Bare = new(
                [.. corners.Select(c => Open(c.Low, bare))],
                [.. corners.Select(c => Closed(c.Low, bare))],
                Low.Heat
            );
            BareUp = new(Rising(Bare.Open), Rising(Bare.Closed), Up.Heat);
        }

        Down = new(Falling(High.Open), Falling(High.Closed), Falling(High.Heat));
        Width = parallel ? [.. Ohm.Select(x => -1 / x)] : Ohm;
        HasHeat = corners.Any(c => c.LowHeat != 0 || c.HighHeat != 0 || c.NominalHeat != 0);
        var levels = new List<double[]> { Bears };
        for (var span = 1; 2 * span <= n; span *= 2)
        {
            var below = levels[^1];
            levels.Add([.. Enumerable.Range(0, n - (2 * span) + 1).Select(i => Math.Max(below[i], below[i + span]))]);
        }

        _most = [.. levels];
    }

    /// <summary>What one end of each value adds: while its switch is open, while it is closed, and by its own heat while open.</summary>
    internal sealed record Ends(double[] Open, double[] Closed, double[] Heat);

    public IReadOnlyList<PositionParts[]> Parts { get; }

    public int Count => Ohm.Length;

    /// <summary>Nominal resistance in the nominal air.</summary>
    public double[] Ohm { get; }

    /// <summary>Nominal heat, ohm/A².</summary>
    public double[] Heat { get; }

    /// <summary>Stated resistance at 25 °C.</summary>
    public double[] Part { get; }

    /// <summary>Stated resistance with a nominal contact across it.</summary>
    public double[] ByPassed { get; }

    /// <summary>Nominal resistance with a nominal contact across it.</summary>
    public double[] ByPassedWarm { get; }

    /// <summary>Square of the greatest current that the strongest way to make each value may carry, A².</summary>
    public double[] Bears { get; }

    public Ends Low { get; }

    public Ends High { get; }

    /// <summary>The low end with the contact that limits count with.</summary>
    public Ends Bare { get; }

    /// <summary>The same, never falling along the values.</summary>
    public Ends BareUp { get; }

    public Ends Up { get; }

    public Ends Down { get; }

    /// <summary>What boxes are halved by.</summary>
    public double[] Width { get; }

    public bool HasHeat { get; }

    /// <summary>Square of the greatest current that any of the values of a range may carry, A².</summary>
    public double BearsAmong(int from, int to)
    {
        var level = System.Numerics.BitOperations.Log2((uint)(to - from + 1));
        var table = _most[level];
        return Math.Max(table[from], table[to - (1 << level) + 1]);
    }

    public static double ContactLeast(ChainSearchSpec spec) =>
        spec.Objective == ChainObjective.Nominal
            ? spec.ContactOhm
            : Math.Min(spec.ContactOhm, spec.ContactLeastOhm ?? spec.ContactOhm);

    /// <summary>Least resistance of a contact where a current could be too great.</summary>
    public static double ContactBare(ChainSearchSpec spec) =>
        spec.Objective == ChainObjective.Nominal
            ? spec.ContactOhm
            : Math.Min(ContactLeast(spec), spec.ContactBareOhm ?? double.PositiveInfinity);

    public static double ContactMost(ChainSearchSpec spec) =>
        spec.Objective == ChainObjective.Nominal
            ? spec.ContactOhm
            : Math.Max(spec.ContactOhm, spec.ContactMostOhm ?? spec.ContactOhm);

    // Branches and the resistor they stand beside see the threshold whatever the others do, so their heat is known beforehand.
    public static Corners Of(ChainSearchSpec spec, PositionParts parts, bool isFixed)
    {
        var corners = Corners.Of(spec, parts);
        if (spec.Arrangement != Arrangement.ParallelBranches)
        {
            return corners;
        }

        var volts = spec.Driver.ThresholdV;
        var spread = spec.Objective == ChainObjective.Nominal ? 0 : spec.ThresholdTolerance;
        var own = OwnShare(spec);
        double Amps(double factor, double x) => factor * volts / (x + (isFixed ? 0 : spec.ContactOhm));
        return corners.Settled(
            Amps(1, corners.Nominal),
            Amps((1 + spread) * (1 + own), corners.Low),
            Amps((1 - spread) * (1 - own), corners.High)
        );
    }

    /// <summary>What the fixed part's tolerance makes the threshold off by, relative; 0 where it was not found with that part.</summary>
    public static double OwnShare(ChainSearchSpec spec) =>
        spec is { Objective: ChainObjective.WorstCorner, ThresholdByFixed: true, Fixed: { } own } ? own.Tolerance : 0;

    private static double[] Rising(double[] ends)
    {
        var most = (double[])ends.Clone();
        for (var i = 1; i < most.Length; i++)
        {
            most[i] = Math.Max(most[i], most[i - 1]);
        }

        return most;
    }

    private static double[] Falling(double[] ends)
    {
        var least = (double[])ends.Clone();
        for (var i = least.Length - 2; i >= 0; i--)
        {
            least[i] = Math.Min(least[i], least[i + 1]);
        }

        return least;
    }
}
