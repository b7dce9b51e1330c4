namespace Lampwright.Heat;

/// <summary>What stands on the base of a sink.</summary>
public enum SinkForm
{
    /// <summary>Nothing: a plain plate.</summary>
    Plate,

    /// <summary>Plate fins.</summary>
    Fins,

    /// <summary>Round pins.</summary>
    Pins,

    /// <summary>A stack of plates on heat pipes.</summary>
    Tower,
}

/// <summary>Areas and channels of one draw of a sink, of any form.</summary>
internal readonly record struct SinkSurface
{
    /// <summary>Form.</summary>
    internal required SinkForm Form { get; init; }

    /// <summary>Clear gap between walls, or between pins, m.</summary>
    internal double GapM { get; init; }

    /// <summary>Height of a channel, m.</summary>
    internal double HeightM { get; init; }

    /// <summary>Length of the walls along the air's way, m.</summary>
    internal double AlongM { get; init; }

    /// <summary>Length that one piece of air passes, m: half of it where it enters at the tips.</summary>
    internal double FlowLengthM { get; init; }

    /// <summary>Area of fins, pins or plates on the air, m².</summary>
    internal double WallM2 { get; init; }

    /// <summary>Area of the base between them, m².</summary>
    internal double FloorM2 { get; init; }

    /// <summary>Narrowest area that the air passes, m².</summary>
    internal double FreeM2 { get; init; }

    /// <summary>Hydraulic diameter of a channel, or volumetric diameter of the pins, m.</summary>
    internal double DiameterM { get; init; }

    /// <summary>f·Re of developed flow in a channel.</summary>
    internal double FRe { get; init; }

    /// <summary>Losses at the ends of the channels on their velocity head.</summary>
    internal double EndsK { get; init; }

    /// <summary>Factor of the pins' arrangement in their friction; 0 without pins.</summary>
    internal double Arrangement { get; init; }

    /// <summary>Outside of the whole, without the face that the emitter lies on, m².</summary>
    internal double OutlineM2 { get; init; }

    /// <summary>Surface of a draw.</summary>
    internal static SinkSurface Of(SinkSpec spec) =>
        spec.Form switch
        {
            SinkForm.Tower => OfTower(spec.Tower!),
            SinkForm.Pins => OfPins(spec, spec.Pins!),
            SinkForm.Fins => OfFins(spec),
            _ => new SinkSurface
            {
                Form = SinkForm.Plate,
                GapM = spec.AcrossM,
                AlongM = spec.AlongM,
                FlowLengthM = spec.AlongM,
                FloorM2 = spec.AcrossM * spec.AlongM,
                DiameterM = 1,
                FRe = 24,
            },
        };

    /// <summary>Efficiency of fins, pins or plates under a film.</summary>
    internal double Efficiency(SinkSpec spec, double film) =>
        Form switch
        {
            SinkForm.Fins => Fin.PlateEfficiency(film, spec.ConductivityWPerMK, spec.FinThicknessM, spec.FinHeightM),
            SinkForm.Pins => Fin.PinEfficiency(film, spec.ConductivityWPerMK, spec.Pins!.DiameterM, spec.Pins.HeightM),
            SinkForm.Tower => Fin.AroundPipe(
                film,
                spec.ConductivityWPerMK,
                spec.Tower!.ThicknessM,
                spec.Tower.PipeDiameterM / 2,
                spec.Tower.EqualRadiusM
            ),
            _ => 1,
        };

    private static SinkSurface OfFins(SinkSpec spec)
    {
        var tips = spec.Entry == AirEntry.Tips;
        var gap = Math.Max(spec.GapM, 1e-5);
        var count = spec.FinCount - 1;
        var open = spec.OpenRatio;
        return new SinkSurface
        {
            Form = SinkForm.Fins,
            GapM = gap,
            HeightM = spec.FinHeightM,
            AlongM = spec.AlongM,
            FlowLengthM = tips ? spec.AlongM / 2 : spec.AlongM,
            WallM2 = count * 2 * spec.FinHeightM * spec.AlongM,
            FloorM2 = count * gap * spec.AlongM,
            FreeM2 = count * gap * spec.FinHeightM * (tips ? 2 : 1),
            DiameterM = ChannelFriction.HydraulicDiameterM(gap, spec.FinHeightM),
            FRe = DuctFRe(gap, spec.FinHeightM),

            // Air that enters at the tips turns by a right angle: one more velocity head (common practice, no source).
            EndsK = ChannelFriction.EntranceK(open) + ChannelFriction.ExitK(open) + (tips ? 1 : 0),
        };
    }

    private static SinkSurface OfPins(SinkSpec spec, PinArray pins)
    {
        double across = pins.PitchAcrossM(spec.AcrossM),
            along = pins.PitchAlongM(spec.AlongM),
            diameter = PinFriction.VolumetricDiameterM(across, along, pins.DiameterM),
            feet = pins.Count * Math.PI * pins.DiameterM * pins.DiameterM / 4,
            plan = spec.AcrossM * spec.AlongM;
        return new SinkSurface
        {
            Form = SinkForm.Pins,
            GapM = Math.Max(pins.GapM(spec.AcrossM, spec.AlongM), 1e-5),
            HeightM = pins.HeightM,
            AlongM = spec.AlongM,
            FlowLengthM = spec.AlongM,
            WallM2 = pins.Count * Math.PI * pins.DiameterM * pins.HeightM,
            FloorM2 = Math.Max(0, plan - feet),
            FreeM2 = pins.FreeAreaM2(spec.AcrossM, spec.AlongM),
            DiameterM = diameter,
            FRe = 24,
            Arrangement = PinFriction.Arrangement(diameter, across, pins.ToNextRowM(spec.AcrossM, spec.AlongM)),
            OutlineM2 = plan + (2 * (spec.AcrossM + spec.AlongM) * pins.HeightM),
        };
    }

    private static SinkSurface OfTower(HeatPipeTower tower)
    {
        var count = tower.Plates - 1;
        var open = tower.GapM / (tower.GapM + tower.ThicknessM);
        return new SinkSurface
        {
            Form = SinkForm.Tower,
            GapM = tower.GapM,
            HeightM = tower.AcrossM,
            AlongM = tower.AlongM,
            FlowLengthM = tower.AlongM,
            WallM2 = count * 2 * tower.AcrossM * tower.AlongM,
            FreeM2 = count * tower.GapM * tower.AcrossM,
            DiameterM = ChannelFriction.HydraulicDiameterM(tower.GapM, tower.AcrossM),
            FRe = DuctFRe(tower.GapM, tower.AcrossM),
            EndsK = ChannelFriction.EntranceK(open) + ChannelFriction.ExitK(open),
            OutlineM2 = (2 * tower.AcrossM * tower.AlongM) + (2 * (tower.AcrossM + tower.AlongM) * tower.HeightM),
        };
    }

    private static double DuctFRe(double a, double b) => ChannelFriction.DevelopedFRe(Math.Min(a, b) / Math.Max(a, b));
}
