using Lampwright.Design;
using Lampwright.Evaluation.Draws;
using Lampwright.Heat;
using Lampwright.Light;
using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Steps, heat and light of one design, ready to be computed for many draws.</summary>
/// <remarks>A row holds every switch position in the three scenes; what is common to all of them follows.</remarks>
internal sealed partial class CoupledLight : IRowPart
{
    private static readonly double ZeroC = 273.15;

    private readonly EmitterDraws _emitter;
    private readonly DriverDraws _driver;
    private readonly ChainDraws _chain;
    private readonly CoolingDraws _cooling;
    private readonly OpticsDraws? _optics;
    private readonly RippleDraws? _ripple;
    private readonly Subject _subject;
    private readonly double _currentMaxA;
    private readonly double _junctionMaxK;
    private readonly double _careLux;
    private readonly int _first;
    private readonly int _common;
    private readonly int _scenes;
    private readonly int _parts;
    private readonly int _wanted;
    private readonly int _losses;
    private readonly int _lossCount;

    public CoupledLight(CoupledInputs inputs, Variables variables, Outputs outputs)
    {
        Inputs = inputs;
        _subject = inputs.Design.Subject ?? new Subject();
        _emitter = new(inputs.Fit, inputs.Parts, variables);
        _driver = new(inputs.Driver, inputs.Threshold, inputs.Parts.Driver!, variables);
        _chain = new(inputs.Network, inputs.Steps, inputs.FixedIsOnBoard, variables);
        _cooling = new(inputs, variables);
        _optics = inputs.Light is { } model ? new(model, inputs.Design, inputs.Parts, variables) : null;
        _ripple = RippleDraws.Of(inputs.Parts, variables);
        _currentMaxA = inputs.Parts.Emitter.CurrentMax?.Nominal ?? inputs.Fit.Model.ToA;
        _junctionMaxK = inputs.Parts.Emitter.JunctionMax?.Nominal ?? DefaultJunctionMaxK;
        _careLux = inputs.Parts.Emitter.Cct is { } cct ? BlueLight.ThresholdLux(cct.Nominal) : 0;
        Wanted = new(inputs.Steps.Targets);

        Size = PositionRow.FirstResistorW + _chain.Resistors;
        _first = outputs.Add(Size * Positions * Scene.All.Count);
        _common = outputs.Add(CommonRow.Count);
        _scenes = outputs.Add(SceneRow.Count * Scene.All.Count);
        Soldered = SolderedPart.Of(Inputs.Network.Spec);
        _parts = outputs.Add(PartRow.Count * Soldered.Count);
        _wanted = outputs.Add(2 * Wanted.Count);
        _lossCount = inputs.Sink is { Nominal.Fan: not null } sink ? sink.Nominal.AirLosses.Count + 1 : 0;
        _losses = outputs.Add(_lossCount);
        Brightest = Positions - 1;
        MetBy = new int[Wanted.Count];
    }

    /// <summary>Hottest junction that is taken where the data sheet's is not given (common practice, no source).</summary>
    public static double DefaultJunctionMaxK => 398.15;

    /// <summary>What it is made of.</summary>
    public CoupledInputs Inputs { get; }

    /// <summary>Count of switch positions.</summary>
    public int Positions => Inputs.Network.CombinationCount;

    /// <summary>Count of resistors, the fixed one with them.</summary>
    public int Resistors => _chain.Resistors;

    /// <summary>Count of places of one switch position.</summary>
    public int Size { get; }

    /// <summary>The wanted steps.</summary>
    public WantedSteps Wanted { get; }

    /// <summary>Position with the most current at nominal values.</summary>
    public int Brightest { get; private set; }

    /// <summary>Position that stands for each wanted step at nominal values: its own where the switches are thrown one after another, else the nearest.</summary>
    public int[] MetBy { get; }

    /// <summary>Whether the junction could be computed at all: it cannot without a sink.</summary>
    public bool HasSink => Inputs.Sink is not null || _cooling.IsMeasured;

    /// <summary>True where the sink was measured in the state of the scene normal, so that computed air says nothing of it.</summary>
    public bool IsTried => _cooling.NormalIsMeasured;

    /// <summary>First place of a switch position in a scene.</summary>
    public int Place(int scene, int position) => _first + (((scene * Positions) + position) * Size);

    /// <summary>Place of a number that holds for the whole light.</summary>
    public int CommonPlace(int number) => _common + number;

    /// <summary>Place of a number of a scene.</summary>
    public int ScenePlace(int scene, int number) => _scenes + (scene * SceneRow.Count) + number;

    /// <summary>Place of a number of a resistor.</summary>
    public int PartPlace(int resistor, int number) => _parts + (resistor * PartRow.Count) + number;

    /// <summary>Place of the pressure lost at one thing in the air's way, in the order of the sink's losses; its own channels come last.</summary>
    public int LossPlace(int loss) => _losses + loss;

    /// <summary>Place of the current of a wanted step; that of its error follows.</summary>
    public int WantedPlace(int step) => _wanted + (2 * step);

    /// <summary>True where neither trials nor sizes say anything of the sink in a state of the fan.</summary>
    public bool Guesses(bool fanRuns) => _cooling.Guesses(fanRuns);

    /// <summary>Settles at nominal values which position is brightest and which stands for each wanted step.</summary>
    public void Decide(double[] x, double[] row)
    {
        Row(x, row);
        var guessed = Brightest;
        Brightest = Enumerable.Range(0, Positions).MaxBy(i => row[Place(Scene.Normal, i) + PositionRow.CurrentA]);
        if (Brightest != guessed)
        {
            Row(x, row);
        }

        Settle(x, row);
        Match(row);
    }

    /// <summary>Computes one row and returns the largest residual of the loop, K.</summary>
    /// <param name="x">Value of each variable.</param>
    /// <param name="y">Takes the numbers.</param>
    public double Row(ReadOnlySpan<double> x, Span<double> y)
    {
        var emitter = _emitter.At(x);
        var driver = _driver.At(x);
        var factors = _cooling.Factors(x);
        var spec = _cooling.Spec(x, factors);
        var optics = _optics?.At(x) ?? new LightResult(1, 0, 0, 0, 0, 0, 0, 1);
        var radiation = _cooling.RadiationLmPerW(x);
        var share = _cooling.LightShare(x);
        var (contact, airFlow) = (_cooling.Contact(x), _cooling.AirFlow(x));

        Span<double> contacts = stackalloc double[_chain.Switches];
        Span<double> ohms = stackalloc double[_chain.Resistors];
        Span<double> warm = stackalloc double[_chain.Resistors];
        Span<double> watts = stackalloc double[_chain.Resistors];
        Span<double> most = stackalloc double[_chain.Resistors];
        most.Clear();
        _chain.Contacts(x, contacts);
        _chain.Ohms(x, ohms);
        var (tempco, lead, rise) = (_chain.Tempco(x), _chain.Lead(x), _chain.Rise(x));
        var (worst, hottestAirK) = (0.0, 0.0);

        for (var s = 0; s < Scene.All.Count; s++)
        {
            var scene = Scene.All[s];
            var ambient = _cooling.AmbientK(x, scene);
            var curve = _cooling.Curve(x, spec, ambient, scene.FanRuns);
            var drawn = _housing?.Draw(s, factors, contact, airFlow, curve) ?? HousingDraw.Nominal;
            var full = _housing?.At(s, Brightest);
            var boxes = full is not null
                ? new Boxes(full, drawn.Times, ambient)
                : new Boxes(
                    BoxModel.Curve(Inputs.Boxes with { Factors = factors }, Math.Clamp(ambient, 200, 400), 0),
                    ambient
                );
            var circuit = new Circuit
            {
                Emitter = emitter,
                Driver = driver,
                Sink = curve,
                InterfaceKPerW = _cooling.InterfaceKPerW(x, factors),
                JunctionKPerW = _cooling.JunctionKPerW(x),
                JunctionIsElectrical = _cooling.JunctionIsElectrical,
                // What comes back to the emitter's base warms it: only the rest is carried off as light.
                LightShare = share * Math.Max(1 - optics.AbsorbedBase, 0.05),
                RadiationLmPerW = radiation / Math.Max(1 - optics.AbsorbedBase, 0.05),
                AmbientK = ambient,
                Boxes = boxes,
                SeatShare = full is null ? 0 : drawn.SeatShare(full.SeatShare),
            };
            var (guess, guessAir) = (ambient + 30, ambient + 10);
            for (var i = 0; i < Positions; i++)
            {
                var here = _housing?.At(s, i) is { } point
                    ? circuit with
                    {
                        Boxes = new Boxes(point, drawn.Times, ambient),
                        SeatShare = drawn.SeatShare(point.SeatShare),
                    }
                    : circuit;
                var p = OperatingPoints.AtPosition(
                    here,
                    Inputs.Network,
                    i,
                    contacts,
                    ohms,
                    tempco,
                    lead,
                    rise,
                    warm,
                    watts,
                    guess,
                    guessAir
                );
                (guess, guessAir) = (p.JunctionK, p.CompartmentK);
                worst = Math.Max(worst, p.ResidualK);
                var radiant = share * p.EmitterW ?? p.FluxLm / radiation;
                var frontK = here.Boxes.FrontK(
                    new(
                        p.HeatW,
                        p.DriverLossW,
                        OperatingPoints.Sum(watts),
                        radiant * optics.AbsorbedReflector,
                        radiant * optics.AbsorbedDiffuser
                    )
                );
                Fill(y.Slice(Place(s, i), Size), p, watts, optics, frontK, driver);
                if (s == Scene.AtHighestAmbient)
                {
                    hottestAirK = Math.Max(hottestAirK, p.CompartmentK);
                    for (var k = 0; k < most.Length; k++)
                    {
                        most[k] = Math.Max(most[k], watts[k]);
                    }
                }
            }

            FillScene(y, s, ambient, circuit, spec, scene.FanRuns);
            if (s == Scene.Normal)
            {
                FillWanted(y, circuit, optics);
                FillStaircase(y, circuit);
            }
        }

        FillParts(y, most, hottestAirK, rise);
        FillCommon(x, y, driver, optics, lead);
        FillStops(y);
        return worst;
    }

    private void Fill(
        Span<double> row,
        in OperatingPoint p,
        ReadOnlySpan<double> watts,
        in LightResult optics,
        double frontK,
        in DriverModel driver
    )
    {
        var lux = p.FluxLm * optics.CentreLuxPerLm;
        row[PositionRow.ResistanceOhm] = p.ResistanceOhm;
        row[PositionRow.CurrentA] = p.CurrentA;
        row[PositionRow.VoltageV] = p.VoltageV;
        row[PositionRow.EmitterW] = p.EmitterW;
        row[PositionRow.FluxLm] = p.FluxLm;
        row[PositionRow.FluxOutLm] = p.FluxLm * optics.Exit;
        row[PositionRow.Lux] = lux;
        row[PositionRow.Ev] = Exposure.ValueAtIso100(lux, Exposure.DefaultConstant);
        row[PositionRow.Aperture] = Exposure.Aperture(
            lux,
            _subject.Iso,
            _subject.Shutter.Nominal,
            Exposure.DefaultConstant
        );
        row[PositionRow.HeatW] = p.HeatW;
        row[PositionRow.JunctionC] = p.JunctionK - ZeroC;
        row[PositionRow.CaseC] = p.CaseK - ZeroC;
        row[PositionRow.SinkC] = p.BaseK - ZeroC;
        row[PositionRow.DriverC] = p.DriverK - ZeroC;
        row[PositionRow.CompartmentC] = p.CompartmentK - ZeroC;
        row[PositionRow.FrontC] = frontK - ZeroC;
        row[PositionRow.DriverLossW] = p.DriverLossW;
        row[PositionRow.InputW] = driver.InputW(p.EmitterW);
        row[PositionRow.CurrentMarginA] = _currentMaxA - p.CurrentA;
        row[PositionRow.JunctionMarginK] = _junctionMaxK - p.JunctionK;
        watts.CopyTo(row[PositionRow.FirstResistorW..]);
    }

    private void FillScene(Span<double> y, int scene, double ambientK, in Circuit circuit, SinkSpec? spec, bool fanRuns)
    {
        var curve = circuit.Sink;
        var heat = y[Place(scene, Brightest) + PositionRow.HeatW];
        var flow = fanRuns ? curve?.FlowM3PerS ?? 0 : 0;
        y[ScenePlace(scene, SceneRow.AmbientC)] = ambientK - ZeroC;
        y[ScenePlace(scene, SceneRow.FlowM3PerH)] = flow * 3600;
        y[ScenePlace(scene, SceneRow.PressurePa)] =
            flow > 0 && spec is not null ? _cooling.PressurePa(spec, ambientK, flow) : 0;
        if (scene == Scene.Normal && spec is not null && _lossCount > 0)
        {
            var pressure = y[ScenePlace(scene, SceneRow.PressurePa)];
            CoolingDraws.Losses(spec, ambientK, flow, pressure, y.Slice(_losses, _lossCount));
        }

        y[ScenePlace(scene, SceneRow.SinkKPerW)] = heat > 0 ? circuit.SinkRisesK(heat).BaseK / heat : 0;
    }

    private void FillWanted(Span<double> y, in Circuit circuit, in LightResult optics)
    {
        var full =
            Wanted.Count == 0 ? 0 : Wanted.FullLm(circuit, y[Place(Scene.Normal, Brightest) + PositionRow.FluxLm]);
        for (var k = 0; k < Wanted.Count; k++)
        {
            var flux = Wanted.FluxLm(circuit, k, optics.CentreLuxPerLm, full);
            var got = y[Place(Scene.Normal, MetBy[k]) + PositionRow.FluxLm];
            y[WantedPlace(k)] = WantedSteps.CurrentFor(circuit, flux);
            y[WantedPlace(k) + 1] = flux > 0 && got > 0 ? Math.Log2(got / flux) : 0;
        }
    }

    private void FillStaircase(Span<double> y, in Circuit circuit)
    {
        var row = Place(Scene.Normal, Brightest);
        var (junction, shell, heat) = (
            y[row + PositionRow.JunctionC],
            y[row + PositionRow.CaseC],
            y[row + PositionRow.HeatW]
        );
        var (mean, source) = circuit.SinkRisesK(heat);
        y[CommonPlace(CommonRow.JunctionToCaseK)] = junction - shell;
        y[CommonPlace(CommonRow.InterfaceK)] = heat * circuit.InterfaceKPerW;
        y[CommonPlace(CommonRow.SpreadingK)] = source - mean;
        y[CommonPlace(CommonRow.SinkToAirK)] = mean;
    }

    /// <summary>Every resistor that is soldered; two in a position follow each other.</summary>
    public IReadOnlyList<SolderedPart> Soldered { get; }

    private void FillParts(Span<double> y, ReadOnlySpan<double> most, double airK, double rise)
    {
        for (var i = 0; i < Soldered.Count; i++)
        {
            var (position, part, share) = Soldered[i];
            var watts = most[position] * share;
            y[PartPlace(i, PartRow.MostW)] = watts;
            y[PartPlace(i, PartRow.DeratedW)] = part.AllowedW(airK);
            y[PartPlace(i, PartRow.HottestC)] = airK + (watts * part.RisePerWattK * rise) - ZeroC;
        }
    }

    private void FillCommon(
        ReadOnlySpan<double> x,
        Span<double> y,
        in DriverModel driver,
        in LightResult optics,
        double lead
    )
    {
        var flux = y[Place(Scene.Normal, Brightest) + PositionRow.FluxLm];
        var air = y[Place(Scene.Normal, Brightest) + PositionRow.CompartmentC] + ZeroC;
        var ripple = _ripple?.At(x, _subject.Shutter.Nominal);
        y[CommonPlace(CommonRow.ThresholdV)] = driver.ThresholdV;
        y[CommonPlace(CommonRow.LeadOhm)] = Inputs.Network.LeadOhm(air) * lead;
        y[CommonPlace(CommonRow.Efficiency)] = optics.Exit;
        y[CommonPlace(CommonRow.ReflectorAbsorbs)] = optics.AbsorbedReflector;
        y[CommonPlace(CommonRow.DiffuserAbsorbs)] = optics.AbsorbedDiffuser;
        y[CommonPlace(CommonRow.AxisCd)] = optics.AxisCdPerLm * flux;
        y[CommonPlace(CommonRow.Evenness)] = optics.Evenness;
        y[CommonPlace(CommonRow.InverseSquareError)] = optics.ShortcutError;
        y[CommonPlace(CommonRow.PercentFlicker)] = ripple?.PercentFlicker ?? 0;
        y[CommonPlace(CommonRow.ShutterResidual)] = ripple?.ShutterResidual ?? 0;
        y[CommonPlace(CommonRow.CareDistanceM)] =
            _careLux > 0 && _optics is not null
                ? BlueLight.CareDistanceM(optics.AxisCdPerLm * flux, _careLux * _optics.Care(x))
                : 0;
    }

    private void FillStops(Span<double> y)
    {
        for (var s = 0; s < Scene.All.Count; s++)
        {
            var brightest = y[Place(s, Brightest) + PositionRow.FluxLm];
            for (var i = 0; i < Positions; i++)
            {
                var flux = y[Place(s, i) + PositionRow.FluxLm];
                y[Place(s, i) + PositionRow.Stops] = flux > 0 && brightest > 0 ? Math.Log2(flux / brightest) : -30;
            }
        }
    }
}
