using Lampwright.Heat;

namespace Lampwright.References.Heat.Truth;

/// <summary>A value as a maker writes it: what he thinks it is, and how far off it may be to either side.</summary>
internal readonly record struct Given(double Nominal, double HalfWidth = 0)
{
    /// <summary>What it really is: anywhere between the limits.</summary>
    public double True(Random chance) => Nominal + HalfWidth * (2 * chance.NextDouble() - 1);
}

/// <summary>A light as its maker writes it down, the light that he then has, and the group it counts in.</summary>
internal sealed record MadeLight(
    string Group,
    bool Hot,
    SinkSpec Spec,
    Given Emissivity,
    Given LayerM,
    Given LayerWPerMK,
    Given JunctionKPerW,
    Given AmbientK,
    Given RunV,
    double BodyM,
    TrueLight Light,
    double RiseK
)
{
    /// <summary>What Lampwright is told of it.</summary>
    public Posed Posed =>
        new(Spec, Emissivity, LayerM, LayerWPerMK, JunctionKPerW, AmbientK, RunV, BodyM, Light.Fan is not null);
}

/// <summary>Where the lights come from: each range with its reason. None of it is known to the code that is tested.</summary>
internal static class Populations
{
    private static readonly double RatedV = 12;

    /// <summary>One light.</summary>
    public static MadeLight Draw(Random chance)
    {
        double Between(double low, double high) => low + (high - low) * chance.NextDouble();
        double Normal() =>
            Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

        var blown = chance.NextDouble() < 0.5;
        var thin = chance.NextDouble() < 0.5;
        var hot = chance.NextDouble() < 0.33;
        var plain = !blown && chance.NextDouble() < 0.1;

        // What the maker measures with a rule and a caliper, or reads from the sink's drawing.
        double across = Between(0.05, 0.12),
            along = Between(0.05, 0.14),
            thick = thin ? Between(0.002, 0.004) : Between(0.006, 0.012),
            fin = Between(0.0008, 0.002),
            gap = blown ? Between(0.0025, 0.005) : Between(0.006, 0.012),
            height = blown ? Between(0.015, 0.045) : Between(0.02, 0.06),
            body = Between(0.014, 0.030);
        var fins = plain ? 0 : Math.Max(4, (int)Math.Round((across + gap) / (gap + fin)));
        var centred = chance.NextDouble() < 0.5;
        double atX = centred ? across / 2 : Between(body * 0.6, across - body * 0.6),
            atY = centred ? along / 2 : Between(body * 0.6, along - body * 0.6);
        var tilt = blown ? 0 : Between(0, Math.PI / 4);
        var pressure = 101325 * Math.Pow(1 - 2.25577e-5 * Between(0, 1500), 5.2559);

        // Black anodised, or bare from the mill.
        var emissivity = chance.NextDouble() < 0.5 ? new Given(0.85, 0.08) : new Given(0.08, 0.05);
        var grease = chance.NextDouble() < 0.6;
        var layer = grease ? new Given(60e-6, 30e-6) : new Given(500e-6, 50e-6);
        var conductivity = grease ? new Given(3, 0.45) : new Given(2, 0.3);
        var nominalJunction = Between(0.1, 0.6);
        var junction = new Given(nominalJunction, 0.15 * nominalJunction);
        var ambient = hot ? new Given(315, 2) : new Given(298, 3);
        var run = new Given(Between(8, 12), 0.2);

        // The fan: what air passes the sink's front at free flow, still pressure of small axial fans; points as read from the sheet's curve.
        var front = across * height;
        var sheet = new TrueFan(Between(1.5, 4) * front, Between(20, 70), Between(-0.2, 0.6), Between(0, 0.06));
        FanPoint[] read =
        [
            .. new[] { 0, 0.25, 0.5, 0.75, 1 }.Select(x => new FanPoint(
                x * sheet.FreeM3PerS * (1 + 0.01 * Normal()),
                x == 1 ? 0 : Math.Max(0.01, sheet.Form(x) + 0.015 * Normal()) * sheet.StillPa
            )),
        ];
        List<TrueOpening> holes = [];
        List<AirLoss> losses = [];
        if (blown && chance.NextDouble() < 0.75)
        {
            foreach (var leaves in new[] { false, true })
            {
                double open = Between(0.3, 0.6),
                    hole = Between(0.003, 0.006),
                    field = front * Between(0.8, 1.6);
                losses.Add(AirLoss.PerforatedSheet("hole", field, open, hole));

                // Holes keep some burr or have it broken by a countersink: a broken edge takes up to a quarter of the loss (Idelchik, diagram 4-13; memory).
                holes.Add(new(open, hole, field, Between(0.75, 1.05), leaves));
            }
        }

        var spec = new SinkSpec
        {
            AcrossM = across,
            AlongM = along,
            BaseThicknessM = thick,
            ConductivityWPerMK = 209,
            FinCount = fins,
            FinHeightM = plain ? 0 : height,
            FinThicknessM = plain ? 0 : fin,
            Footprints = [new(atX, atY, body, body)],
            Emissivity = emissivity.Nominal,
            PressurePa = pressure,
            ChannelTiltRad = tilt,
            AirLosses = losses,
            Housed = losses.Count > 0,
            Fan = blown
                ? new FanSpec
                {
                    Curve = read,
                    VoltageRatio = run.Nominal / RatedV,
                    BoxAcrossM = across,
                    BoxAlongM = height,
                }
                : null,
        };

        // From here on: what he really has. The fan from its carton: speed within 10 % (data sheets of small fans), against voltage not from zero but from where its
        // drive begins to turn; close to other things it gives less pressure than in the test chamber (AMCA 201, system effect).
        var startV = Between(-0.5, 1.5);
        var speed = (run.True(chance) - startV) / (RatedV - startV) * (1 + Math.Clamp(0.04 * Normal(), -0.1, 0.1));
        var fan = blown
            ? sheet with
            {
                FreeM3PerS = sheet.FreeM3PerS * speed,
                StillPa = sheet.StillPa * speed * speed * Between(0.88, 1.02),
            }
            : null;

        // Grease bridges two faces of 1 to 5 µm: (σ1 + σ2)/(2k)·(Anom/Areal) (Prasher 2006, Proc. IEEE 94:1571; memory); voids to 8 % of the area.
        var trueK = conductivity.True(chance);
        var boundaries = Between(2e-6, 10e-6) / (2 * trueK) * Between(1, 1.1);
        var layerM2K = (layer.True(chance) / trueK + boundaries) / (1 - Between(0, 0.08));

        // Heat gathers under the lit circle: all of the body's back or nine tenths of its side.
        var lit = body * Between(0.9, 1);
        var light = new TrueLight
        {
            // Sawn to length, extruded by EN 755-9; 6063 conducts 193 (T1) to 218 W/(m·K) (O).
            AcrossM = across,
            AlongM = along + Between(-0.0005, 0.0005),
            BaseM = thick + Between(-0.00015, 0.00015),
            ConductivityWPerMK = Between(193, 218),
            Fins = fins,
            FinHeightM = plain ? 0 : height + Between(-0.0003, 0.0003),
            FinM = plain ? 0 : fin + Between(-0.0001, 0.0001),
            Emissivity = emissivity.True(chance),
            PressurePa = pressure,
            AmbientK = ambient.True(chance),
            TiltRad = tilt,
            Source = (atX, atY, lit, lit),

            // The layer passes the heat of the whole back: what the case spreads is in its own resistance.
            LayerM2KPerW = layerM2K * lit * lit / (body * body),
            JunctionKPerW = junction.True(chance),
            Fan = fan,
            Openings = holes,
            Leak = Between(0, 0.06),
            Uneven = Between(0.05, 0.3),
            Turbulence = Between(0, 0.12),
            DraughtMPerS = Between(0, 0.1),
            Between = (chance.NextDouble(), chance.NextDouble(), chance.NextDouble(), chance.NextDouble()),
            StillScatter = Math.Exp(0.05 * Normal()),
            WallsWarmerK = Between(0, 4),
        };
        var rise = hot ? Between(25, 50) : Between(8, 35);
        var group =
            (
                blown ? "fan"
                : plain ? "plain plate"
                : "still air"
            )
            + (
                plain ? ""
                : thin ? ", thin base"
                : ", thick base"
            );
        return new(group, hot, spec, emissivity, layer, conductivity, junction, ambient, run, body, light, rise);
    }
}
