using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Assembling;
using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Build;
using Lampwright.Evaluation.Chains;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Dimming;
using Lampwright.Evaluation.Draws;
using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.Evaluation.Sections;
using Lampwright.Findings;
using Lampwright.FitUp;
using Lampwright.Readings;
using Lampwright.Steps;
using Lampwright.Steps.Board;
using Lampwright.Steps.ChainProof;
using Lampwright.Steps.Faults;
using Lampwright.Steps.Ways;

namespace Lampwright.Evaluation;

/// <summary>A design that every station has looked at. The nominal result is there at once; bands follow from draws.</summary>
/// <remarks>
/// Heavy work (fits, series, view factors, folding, placing) is done once, at nominal values. A draw then runs closed forms over
/// one row of numbers: first the coupled light, then metal, fit-up and balance, which read what came before.
/// </remarks>
public sealed class PreparedEvaluation
{
    private readonly LightDesign _design;
    private readonly IReadOnlyList<Reading> _readings;
    private readonly Variables _variables = new();
    private readonly Outputs _outputs = new();
    private readonly List<IRowPart> _rowParts = [];
    private readonly List<Finding> _findings;
    private readonly CoupledLight? _light;
    private readonly CoupledLight? _settled;
    private readonly ChainFaults? _faults;
    private readonly double[] _picture;
    private readonly BoxStudy? _box;
    private readonly SectionBuild? _section;
    private readonly WaysRows? _ways;
    private readonly BoardReading? _board;
    private readonly MetalRows _metal;
    private readonly List<Lampwright.Metal.BlankSketch> _sketches = [];
    private readonly Lazy<Answers.BendingAnswer> _bending;
    private readonly AssemblyRows _assembly;
    private readonly List<TiltRows> _tilts = [];
    private readonly List<ArmRows> _arms = [];
    private readonly List<StandRows> _stands = [];
    private readonly double[] _x;
    private readonly double[] _nominal;
    private readonly Heat.SinkResult? _working;
    private readonly AirStudy? _air;

    /// <summary>What the comparison of ways is told, at the usual temperatures; null where the design says too little.</summary>
    internal WaysSpec? WaysSpec => _ways?.Inputs.Spec;

    /// <summary>The box, for those who look into it.</summary>
    internal BoxStudy? Box => _box;

    /// <summary>Steps, heat and light together, for those who time them alone; null where they came to no rest.</summary>
    internal CoupledLight? Coupled => _settled;

    internal PreparedEvaluation(LightDesign design, IReadOnlyList<Reading> readings, IReadOnlyList<Finding> notes)
    {
        (_design, _readings) = (design, readings);
        _findings = [.. notes];

        var patterns = new HolePatterns(design);
        var (made, metalFindings) = MetalShop.Of(design, patterns, _sketches);
        _findings.AddRange(metalFindings);
        _findings.AddRange(DesignFindings.Of(design, patterns));

        var things = Things.Of(design, made);
        _findings.AddRange(DesignContradictions.Of(design, things));
        var fitUp = Fit.Of(FitUpMap.Spec(design, things));

        var told = CoupledPreparation.Of(design, made, fitUp, _findings);
        if (told is { } inputs)
        {
            _light = new(inputs, _variables, _outputs);
            _rowParts.Add(_light);
        }

        _picture = _light?.Inputs.Light is { } model ? LightBuild.Picture(model) : [];
        _metal = new(made, _variables, _outputs);
        _bending = new(() => BendPlans.Of(design, made));
        _assembly = new(things, fitUp, _metal, _variables, _outputs);
        _rowParts.Add(_metal);
        _rowParts.Add(_assembly);
        Support();
        _board = StepsMap.Driver(LightParts.DriverOf(design)) is { } driver ? BoardReading.Of(driver) : null;
        _ways = DimmingInputs.Of(design, told) is { } dimming ? new(dimming, _light, _variables, _outputs) : null;

        _x = _variables.Nominal();
        _nominal = new double[_outputs.Count];
        _light?.Decide(_x, _nominal);
        var residualK = 0.0;
        foreach (var part in _rowParts)
        {
            residualK = Math.Max(residualK, part.Row(_x, _nominal));
        }

        _working = _light is null ? null : CoupledFindings.Working(_light, _nominal);
        if (_light is not null)
        {
            _air = new(_light, _x, _nominal);
            _findings.AddRange(CoupledFindings.Of(_light, _nominal, _working, _air, residualK));

            // The last guess of a loop that found no rest is no answer: nothing that hangs on it is shown.
            _settled = CoupledFindings.IsSettled(residualK) && _light.Trouble is null ? _light : null;
            _faults = _settled is null ? null : ChainFaults.Of(_settled, _nominal);
            _findings.AddRange(_faults?.Findings ?? []);
        }

        if (_settled is { HasSink: true } cooled)
        {
            _box = new(cooled, cooled.Inputs.Map, _x, _nominal);
            _section = new(design, made, fitUp, things, _box);
        }

        _findings.AddRange(_board?.Findings ?? []);
        if (_ways is not null)
        {
            _findings.AddRange(_ways.Judge(_nominal, _settled is not null).Findings);
            _ = _ways.Row(_x, _nominal);
            _rowParts.Add(_ways);
        }

        _findings.AddRange(fitUp.Findings);
        _findings.AddRange(SupportFindings.Of(_design, _tilts, _arms, _stands, _x, _nominal));
    }

    /// <summary>The nominal result; every band is closed.</summary>
    public LightEvaluation Nominal() => Lay(Bands.OfNominal(_nominal), []);

    /// <summary>The result with bands and the ranking of what matters most.</summary>
    /// <param name="draws">Count of draws, at least 16.</param>
    /// <param name="cancel">Stops the work.</param>
    public LightEvaluation WithBands(int draws, CancellationToken cancel = default)
    {
        Guard.InRange(draws, 16, 1_000_000);
        _metal.PrepareDraws();
        var table = DrawTable.Of(_variables.All, _rowParts, _outputs.Count, draws, cancel);
        return Lay(
            Bands.Of(_nominal, table.Rows, cancel),
            Watch.Ranked(_settled, _assembly, _tilts, table, _variables.All)
        );
    }

    /// <summary>
    /// The best chain from the maker's stock, for <see cref="LightEvaluation.WithChain"/>; null where there is none to ask for,
    /// or where a stop stands against wires from the driver.
    /// </summary>
    /// <remarks>Apart from <see cref="Nominal"/>, so that typing never waits for it: a light whose values are chosen needs no search to be computed.</remarks>
    /// <param name="toTheEnd">True goes on until the chain is proven best; false ends with a budget of boxes that is the same on every machine.</param>
    /// <param name="withOffers">Whether runners-up are looked for too.</param>
    /// <param name="progress">Told how far it is; may be called from another thread.</param>
    /// <param name="stop">Ends it with the best so far.</param>
    /// <param name="early">Told the best chain with what is proven of it, before the runners-up are searched for; may be called from another thread.</param>
    public ChainAnswer? Chain(
        bool toTheEnd = false,
        bool withOffers = true,
        IProgress<ChainProgress>? progress = null,
        CancellationToken stop = default,
        IProgress<ChainAnswer>? early = null
    ) =>
        _settled is null || _board is { Stops.Count: > 0 }
            ? null
            : BestChain.Of(_settled, _nominal, toTheEnd, withOffers, progress, stop, early);

    // While no wire may leave the driver, nothing advises work on its sense path.
    private IEnumerable<Finding> Said(IEnumerable<Finding> findings) =>
        _board is { Stops.Count: > 0 } ? findings.Where(f => !SenseWork.Contains(f.Rule)) : findings;

    private static readonly IReadOnlySet<Rule> SenseWork = new HashSet<Rule>
    {
        StepsRules.ContactShare,
        FaultRules.NoFloor,
        FaultRules.LooseLead,
    };

    private void Support()
    {
        var gravity = Orientation.Gravity(_design);
        _tilts.AddRange(
            _design.Tilts.Select(t => TiltRows.Of(t, _assembly, gravity, _variables, _outputs)).OfType<TiltRows>()
        );
        _arms.AddRange(
            _design.Arms.Where(ArmRows.IsUsable).Select(a => new ArmRows(a, _assembly, _variables, _outputs))
        );
        _stands.AddRange(_design.Stands.Where(StandRows.IsUsable).Select(s => new StandRows(s, _assembly, _outputs)));
        _rowParts.AddRange(_tilts);
        _rowParts.AddRange(_arms);
        _rowParts.AddRange(_stands);
    }

    private LightEvaluation Lay(Bands bands, IReadOnlyList<Influence> influences)
    {
        var steps = _settled is null ? null : StepsBuild.Of(_settled, bands, _faults);
        var heat = _settled is { HasSink: true }
            ? HeatBuild.Of(_settled, bands, _working, _air!, _box, _nominal, _section)
            : null;

        // The box at rest and over time costs as much as all the rest at nominal: it speaks with the bands, while typing goes on.
        var boxFindings = _box is not null && bands.Draws > 0 ? BoxFindings.Of(_box) : [];
        var bendFindings = bands.Draws > 0 ? _bending.Value.Findings : [];
        var (readings, readingFindings) = ReadingsBuild.Of(_design, _readings, steps, heat, bands.Draws > 0);
        return new()
        {
            Title = _design.Title,
            Draws = bands.Draws,
            Steps = steps,
            Ways = _ways is null ? [] : WaysBuild.Of(_ways, bands),
            Board = _board is null ? null : BoardBuild.Of(_board, _light, bands),
            Heat = heat,
            Light = _settled?.Inputs.Light is { } model ? LightBuild.Of(_settled, model, bands, _picture) : null,
            Metal = _metal.Parts.Count + _sketches.Count > 0 ? MetalBuild.Of(_metal, _sketches, _bending, bands) : null,
            FitUp = _assembly.Things.Count > 0 ? FitUpBuild.Of(_assembly, bands) : null,
            Balance =
                _tilts.Count + _arms.Count + _stands.Count > 0
                    ? BalanceBuild.Of(_tilts, _arms, _stands, bands, _x, _nominal)
                    : null,
            Readings = readings,
            Findings =
            [
                .. Said(_findings)
                    .Concat(boxFindings)
                    .Concat(bendFindings)
                    .Concat(readingFindings)
                    .Distinct()
                    .OrderByDescending(f => f.Severity),
            ],
            Influences = influences,
        };
    }
}
