namespace Lampwright.Steps.ChainProof;

/// <summary>One question made ready for the search: values, combinations, wanted currents brightest first, limits.</summary>
internal sealed class ChainModel
{
    private readonly bool _topIsWanted;

    public ChainModel(ChainSearchSpec spec, StockPart[] usable)
        : this(
            spec,
            ChainStock.Values(spec, usable, isFixed: true),
            spec.Switches == 0 ? [] : ChainStock.Values(spec, usable, isFixed: false)
        ) { }

    public ChainModel(
        ChainSearchSpec spec,
        IReadOnlyList<PositionParts[]> fixedValues,
        IReadOnlyList<PositionParts[]> switchedValues
    )
    {
        Spec = spec;
        Fixed = new(spec, fixedValues, isFixed: true);
        Switched = new(spec, switchedValues, isFixed: false);
        var own = ChainValues.OwnShare(spec);
        AimFixed = own == 0 ? Fixed : new(spec, Turned(fixedValues), isFixed: true);
        Order =
        [
            .. Enumerable
                .Range(0, spec.WantedA.Count)
                .Where(k => spec.WantedA[k] is > 0 and < 1e9)
                .OrderByDescending(k => spec.WantedA[k]),
        ];
        Wanted = [.. Order.Select(k => spec.WantedA[k])];
        Positions = spec.Switches + 1;
        Combinations = spec.CombinationCount;
        Parallel = spec.Arrangement == Arrangement.ParallelBranches;
        Selector = spec.Arrangement == Arrangement.Selector;
        Alike = !spec.OneAfterAnother || Selector;
        HasHeat = !Parallel && (Fixed.HasHeat || Switched.HasHeat);
        var nominal = spec.Objective == ChainObjective.Nominal;
        var spread = nominal ? 0 : spec.ThresholdTolerance;
        var leads = nominal ? 0 : spec.LeadTolerance;
        (LowV, HighV) = (spec.Driver.ThresholdV * (1 - spread), spec.Driver.ThresholdV * (1 + spread));
        (AimLowV, AimHighV) = (LowV * (1 - own), HighV * (1 + own));
        (LowLead, HighLead) = (spec.LeadOhm * (1 - leads), spec.LeadOhm * (1 + leads));
        Bleed = !Parallel && spec.BleedOhm is { } bleed ? bleed : double.PositiveInfinity;
        Floor = Parallel ? spec.FloorOhm : 0;
        var floor = nominal ? 0 : spec.FloorTolerance;
        LowBoard = new(LowLead, spec.UnsensedLeadOhm * (1 + leads), Bleed, Floor * (1 - floor));
        HighBoard = new(HighLead, spec.UnsensedLeadOhm * (1 - leads), Bleed, Floor * (1 + floor));
        Board = new(spec.LeadOhm, spec.UnsensedLeadOhm, Bleed, Floor);
        OffsetA = spec.Driver.OffsetA;

        // One contact of a series chain or a selector carries at most what all closed gives.
        MostA = Parallel ? spec.MostA : Math.Min(spec.MostA, spec.SwitchA ?? double.PositiveInfinity);
        _topIsWanted = nominal && !Selector;
        Active = new bool[Combinations][];
        for (var c = 0; c < Combinations; c++)
        {
            var index = spec.NetworkIndex(c);
            Active[c] = new bool[Positions];
            Active[c][0] = true;
            for (var k = 1; k < Positions; k++)
            {
                var open = ((index >> (spec.Switches - k)) & 1) == 1;
                Active[c][k] =
                    Selector ? index == k - 1
                    : Parallel ? !open
                    : open;
            }
        }

        ActiveBits = [.. Active.Select(a => a.Select((on, k) => on ? 1 << k : 0).Sum())];
    }

    public ChainSearchSpec Spec { get; }

    public ChainValues Fixed { get; }

    public ChainValues Switched { get; }

    /// <summary>Wanted currents that are numbers, brightest first.</summary>
    public double[] Wanted { get; }

    /// <summary>Where each of them stands among what was asked.</summary>
    public int[] Order { get; }

    public int Positions { get; }

    public int Combinations { get; }

    public bool Parallel { get; }

    public bool Selector { get; }

    /// <summary>Whether the switched positions are alike, so that only ascending chains need be looked at.</summary>
    public bool Alike { get; }

    public bool HasHeat { get; }

    public double LowV { get; }

    public double HighV { get; }

    /// <summary>Least threshold that errors count with: with that of a fixed part which the threshold was found with.</summary>
    public double AimLowV { get; }

    /// <summary>Greatest threshold that errors count with.</summary>
    public double AimHighV { get; }

    /// <summary>
    /// The fixed position as errors count it. With a threshold of V = I0·R0 the current I0/(1 + C/R0) rises with R0, so the greatest current goes
    /// with the part and the threshold both at their greatest.
    /// </summary>
    public ChainValues AimFixed { get; }

    public double LowLead { get; }

    public double HighLead { get; }

    /// <summary>Leads and resistors on the board at the end of least resistance.</summary>
    public ChainBoard LowBoard { get; }

    /// <summary>Leads and resistors on the board at the end of greatest resistance.</summary>
    public ChainBoard HighBoard { get; }

    /// <summary>Leads and resistors on the board at nominal.</summary>
    public ChainBoard Board { get; }

    /// <summary>Resistor across the leads, infinite where there is none.</summary>
    public double Bleed { get; }

    /// <summary>Resistor in series with all branches.</summary>
    public double Floor { get; }

    /// <summary>Whether a resistor across the leads takes a part of the chain's current.</summary>
    public bool Shunted => !double.IsInfinity(Bleed);

    public double OffsetA { get; }

    public double MostA { get; }

    /// <summary>Whether a position's resistor has its full say in a combination: open in series, connected as a branch, chosen by the selector.</summary>
    public bool[][] Active { get; }

    /// <summary>The same as bits, position 0 the lowest.</summary>
    public int[] ActiveBits { get; }

    /// <summary>Whether there is anything to search: values for every position, something wanted, a combination for each step.</summary>
    public bool IsPossible =>
        Fixed.Count > 0
        && (Switched.Count > 0 || Spec.Switches == 0)
        && Wanted.Length > 0
        && (Alike || Wanted.Length <= Combinations);

    public ChainValues Values(int position) => position == 0 ? Fixed : Switched;

    // The same parts with the ends of their tolerance changed about; heat and air keep their sides.
    private static PositionParts[][] Turned(IReadOnlyList<PositionParts[]> values) =>
        [
            .. values.Select(ways =>
                ways.Select(p =>
                        p with
                        {
                            First = p.First with { Tolerance = -p.First.Tolerance },
                            Second = p.Second is { } b ? b with { Tolerance = -b.Tolerance } : null,
                        }
                    )
                    .ToArray()
            ),
        ];

    /// <summary>The only combination that may meet a wanted current, or −1 where any may.</summary>
    public int Assigned(int target) =>
        !Alike ? target
        : _topIsWanted && Wanted[target] >= MostA ? 0
        : -1;
}
