using Lampwright.Evaluation.Coupling;
using Lampwright.Heat;
using Lampwright.Heat.Network;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Boxes;

/// <summary>Tells the station heat what the network of a light is made of.</summary>
internal sealed class NetworkMap
{
    // Emitter without a mass in the file: its body, two millimetres of alumina thick (common practice, no source).
    private static readonly double BodyM = 0.002;

    // Of an emitter's heat capacity that part is in dice and phosphor (common practice, no source).
    private static readonly double JunctionShare = 0.05;

    // What stands in for sizes and masses that the file leaves out. All are common practice without a source; but for the reflector's emissivity and the
    // fins' joint they are heat capacities, which move courses over time and no temperature at rest.
    private static readonly double BareEmitterKg = 0.01;
    private static readonly double BareDriverKg = 0.2;
    private static readonly double BareSinkKg = 0.3;
    private static readonly double NoSinkJPerK = 100;
    private static readonly double BareDiffuserJPerK = 50;

    // A reflector that is no folded part: bright aluminium, 0.8 mm thick.
    private static readonly double BrightEmissivity = 0.2;
    private static readonly double ReflectorJPerM2K = 2000;

    // A wall of the compartment that is no folded part: steel, a millimetre thick.
    private static readonly double WallJPerM2K = 4000;

    // Base to fins where no sizes say it: next to nothing lies between them.
    private static readonly double FinsWPerK = 100;

    // Section of the fan's way over that of the sink, which plays in it (common practice, no source).
    private static readonly double SectionOverSink = 1.3;

    private readonly BoxSpec _boxes;
    private readonly SheetPanels _sheet;
    private readonly IReadOnlyList<NetworkPanel> _panels;
    private readonly double _baseJ;
    private readonly double _finJ;
    private readonly double _emitterJ;
    private readonly double _driverJ;
    private readonly double _diffuserJ;
    private readonly double _reflectorJ;
    private readonly double _reflectorM2;
    private readonly double _reflectorEmissivity;
    private readonly Panel? _shell;

    public NetworkMap(LightParts parts, BoxSpec boxes, SheetPanels sheet, IReadOnlyList<Metalwork.MadePart> made)
    {
        (_boxes, _sheet, _panels) = (boxes, sheet, PanelsOf(sheet, boxes));
        (_baseJ, _finJ) = SinkJPerK(parts.Sink);
        _emitterJ = EmitterJPerK(parts.Emitter);
        _driverJ = DriverJPerK(parts.Driver);
        _diffuserJ = DiffuserJPerK(parts.Diffuser);
        var own = made.Where(m => m.Path == "part." + parts.Reflector?.Part).ToList();
        if (own.Count > 0)
        {
            var material = HeatMaterial.OfGrade(own[0].Sheet.Material);
            _reflectorM2 = own.Sum(m => m.Blank.AreaM2 * m.Count);
            _reflectorJ =
                _reflectorM2 * own[0].Folded.ThicknessM * material.DensityKgPerM3 * material.SpecificHeatJPerKgK;
            _reflectorEmissivity = Math.Clamp(own[0].Sheet.Emissivity.Nominal, 0.02, 1);
        }
        else if (parts.Reflector is not null)
        {
            var front = boxes.Front[0];
            (_reflectorM2, _reflectorEmissivity) = (front.AreaM2, BrightEmissivity);
            _reflectorJ = ReflectorJPerM2K * front.AreaM2;
        }

        if (_reflectorM2 > 0 && sheet.ReflectorStandsFree)
        {
            var front = boxes.Front[0];
            _shell = front with { AreaM2 = _reflectorM2 };
        }
    }

    /// <summary>The panels round the light.</summary>
    public SheetPanels Sheet => _sheet;

    /// <summary>Nodes of the front that a hand reaches: panels round the reflector, or its own outside; and the diffuser.</summary>
    /// <param name="n">The network.</param>
    public IReadOnlyList<int> Front(LightNetwork n)
    {
        List<int> skins =
        [
            .. Enumerable
                .Range(0, _sheet.Panels.Count)
                .Where(i => _sheet.Panels[i].Zone == PanelZone.Front && !_sheet.Covered.Contains(i))
                .Select(i => n.Panels[i]),
        ];
        if (skins.Count == 0)
        {
            skins.Add(n.Reflector);
        }

        skins.Add(n.Diffuser);
        return [.. skins.Where(i => i >= 0).DefaultIfEmpty(n.Room)];
    }

    /// <summary>The network of one position; null without a sink.</summary>
    /// <param name="heat">What it sets free.</param>
    /// <param name="fanRuns">Whether the fan runs.</param>
    public LightNetworkSpec? Spec(CoupledHeat heat, bool fanRuns)
    {
        if (heat.Sink is not { } sink || !(heat.HeatW > 1e-6))
        {
            return null;
        }

        var (boxes, working) = (_boxes, heat.Working);
        var air = Air.At(heat.AmbientK, boxes.PressurePa);
        var flow = fanRuns ? sink.FlowM3PerS : 0;
        return new LightNetworkSpec
        {
            AmbientK = heat.AmbientK,
            PressurePa = boxes.PressurePa,
            Sink = sink,
            RadiatedShare =
                working is { } w && w.ConvectedW + w.RadiatedW > 0
                    ? Math.Clamp(w.RadiatedW / (w.ConvectedW + w.RadiatedW), 0, 1)
                    : 0,
            // Fins and base stay two nodes whatever the fan does, so that one course may follow the other.
            FinWPerK =
                _finJ <= 0 ? 0
                : working is { FinEfficiency: > 0 } f
                    ? f.ConvectedW
                        / Math.Max(f.BaseRiseK, 1e-3)
                        * Math.Max(f.FinEfficiency, 0.5)
                        / (1 - Math.Min(f.FinEfficiency, 0.999))
                : FinsWPerK,
            BaseJPerK = _baseJ,
            FinJPerK = _finJ,
            EmitterW = heat.HeatW,
            EmitterWPerK = heat.HeatWPerK,
            JunctionAtK = heat.JunctionK,
            JunctionKPerW = Math.Max(1e-4, (heat.JunctionK - heat.CaseK) / heat.HeatW),
            CaseKPerW = Math.Max(1e-4, (heat.CaseK - heat.BaseK) / heat.HeatW),
            JunctionJPerK = JunctionShare * _emitterJ,
            CaseJPerK = (1 - JunctionShare) * _emitterJ,
            DriverW = heat.DriverW,
            DriverCaseM2 = boxes.DriverCaseM2,
            DriverLengthM = boxes.DriverCaseLengthM,
            DriverJPerK = _driverJ,
            Resistors = heat.Resistors,
            ReflectorW = heat.ReflectorW,
            ReflectorM2 = _reflectorM2,
            ReflectorEmissivity = _reflectorEmissivity,
            ReflectorJPerK = _reflectorJ,
            ReflectorShell = _shell,
            DiffuserW = heat.DiffuserW,
            Diffuser = boxes.Diffuser,
            DiffuserJPerK = _diffuserJ,
            FanWPerK = flow * air.Density * air.SpecificHeat,
            WallFilmWPerM2K = heat.Spec is { } of && flow > 0 ? WallFilm(of, flow, air) : 0,
            DraftWPerK32 = heat.Spec is { } drawn ? Draft(drawn, air) : 0,
            InsideEmissivity = boxes.InsideEmissivity,
            Panels = _panels,
            Bridges = _sheet.Bridges,
            Seats = _sheet.Seats,
            CurveHoldsSeats = heat.IsMeasured,
        };
    }

    // Where no folded part holds the driver, the box that the road takes for it stands for its compartment.
    private static IReadOnlyList<NetworkPanel> PanelsOf(SheetPanels sheet, BoxSpec boxes) =>
        sheet.Panels.Any(p => p.Zone == PanelZone.Compartment)
            ? sheet.Panels
            :
            [
                .. sheet.Panels,
                .. boxes.Compartment.Select(
                    (p, i) =>
                        new NetworkPanel(
                            $"compartment.{i + 1}",
                            p,
                            p.AreaM2,
                            WallJPerM2K * p.AreaM2,
                            PanelZone.Compartment
                        )
                ),
            ];

    private static double WallFilm(SinkSpec sink, double flow, in Air air)
    {
        var section = SectionOverSink * sink.AcrossM * (sink.BaseThicknessM + Math.Max(sink.FinHeightM, 0.01));
        var reynolds = flow / section * sink.AlongM / air.KinematicViscosity;
        return 0.664 * Math.Sqrt(reynolds) * Math.Cbrt(air.Prandtl) * air.Conductivity / sink.AlongM;
    }

    private static double Draft(SinkSpec sink, in Air air)
    {
        var losses = sink.AirLosses.Sum(l => l.KPerAreaSquared);
        return losses > 0 && double.IsFinite(losses)
            ? air.Density
                * air.SpecificHeat
                * Math.Sqrt(2 * Physics.Gravity * sink.DraftM / (air.TemperatureK * losses))
            : 0;
    }

    private static (double Base, double Fins) SinkJPerK(Design.Sink? sink)
    {
        if (sink is null)
        {
            return (NoSinkJPerK, 0);
        }

        var material = HeatMaterial.OfGrade(sink.Material);
        var each =
            (Tables.SinkMaterial.Named(sink.Material)?.DensityKgPerM3 ?? material.DensityKgPerM3)
            * material.SpecificHeatJPerKgK;
        if (sink is not { Across: { } across, Along: { } along, BaseThickness: { } thick })
        {
            return ((sink.Mass?.Nominal ?? BareSinkKg) * material.SpecificHeatJPerKgK, 0);
        }

        var plate = across.Nominal * along.Nominal * thick.Nominal;
        var fins = sink.FinCount * (sink.FinHeight?.Nominal ?? 0) * (sink.FinThickness?.Nominal ?? 0) * along.Nominal;
        var scale = sink.Mass is { } mass ? mass.Nominal * material.SpecificHeatJPerKgK / (each * (plate + fins)) : 1;
        return (scale * each * plate, scale * each * fins);
    }

    private static double EmitterJPerK(Design.Emitter emitter)
    {
        var ceramic = HeatMaterial.Named("alumina");
        var mass =
            emitter.Mass?.Nominal
            ?? (
                emitter.Body is { } b
                    ? b.Width.Nominal * b.Height.Nominal * BodyM * ceramic.DensityKgPerM3
                    : BareEmitterKg
            );
        return Math.Max(0.1, mass * ceramic.SpecificHeatJPerKgK);
    }

    private static double DriverJPerK(Design.Driver? driver)
    {
        var mixed = HeatMaterial.Named("driver");
        var mass =
            driver?.Mass?.Nominal
            ?? (
                driver?.Box is { } b
                    ? b.Width.Nominal * b.Height.Nominal * b.Depth.Nominal * mixed.DensityKgPerM3
                    : BareDriverKg
            );
        return mass * mixed.SpecificHeatJPerKgK;
    }

    private static double DiffuserJPerK(Design.Diffuser? diffuser)
    {
        var acrylic = HeatMaterial.Named("acrylic");
        return diffuser switch
        {
            { Mass: { } mass } => mass.Nominal * acrylic.SpecificHeatJPerKgK,
            { Size: { } size, Thickness: { } t } => size.Width.Nominal
                * size.Height.Nominal
                * t.Nominal
                * acrylic.DensityKgPerM3
                * acrylic.SpecificHeatJPerKgK,
            _ => BareDiffuserJPerK,
        };
    }
}
