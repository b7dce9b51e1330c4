using Lampwright.Heat;
using Lampwright.References.Heat.Truth;

namespace Lampwright.References.Heat.SecondTruth;

/// <summary>A light as its maker tells it, the heat it gets and the rises it really has.</summary>
internal sealed record MadeLight2(
    string Group,
    Posed Posed,
    double HeatW,
    double BaseK,
    double CaseK,
    double JunctionK
);

/// <summary>Lights of the second truth: what a maker may build, and how reality departs from what he can write down.</summary>
internal static class Lights
{
    private static readonly double StatedConductivity = 201;
    private static readonly double RatedV = 12;

    /// <summary>One light.</summary>
    public static MadeLight2 Of(Nature n)
    {
        var kind = n.Between(0, 1) switch
        {
            < 0.17 => "fins, still air",
            < 0.23 => "level fins, still air",
            < 0.31 => "plain plate, still air",
            < 0.54 => "fins, fan at their ends",
            < 0.64 => "fins, fan at their tips",
            < 0.78 => "fins in a housing, fan stopped",
            < 0.88 => "tower, fan",
            < 0.94 => "tower, still air",
            _ => "fins, fan, 2000 to 4000 m",
        };
        bool tower = kind.StartsWith("tower", StringComparison.Ordinal),
            stopped = kind.EndsWith("stopped", StringComparison.Ordinal),
            fan = kind.Contains("fan", StringComparison.Ordinal),
            runs = fan && !stopped,
            plain = kind.StartsWith("plain", StringComparison.Ordinal),
            level = kind.StartsWith("level", StringComparison.Ordinal);

        var sink = Drawn(n, fan, plain);
        var stack = Stacked(n, fan);
        var body = n.Between(0.012, Math.Min(0.032, 0.6 * Math.Min(sink.AcrossM, sink.AlongM)));
        var middle = n.Happens(0.6);
        double atX = middle ? sink.AcrossM / 2 : n.Between(0.55 * body, sink.AcrossM - 0.55 * body),
            atY = middle ? sink.AlongM / 2 : n.Between(0.55 * body, sink.AlongM - 0.55 * body);

        // Upright channels, leaning to 50°, the fins then looking up, down or aside.
        var tilt =
            level ? Math.PI / 2
            : fan || tower ? 0
            : n.Happens(0.4) ? 0
            : n.Between(0, 50 * Math.PI / 180);
        var up = level
            ? 1
            : Math.Sin(tilt)
                * (
                    n.Happens(0.4) ? 1
                    : n.Happens(0.5) ? -1
                    : 0
                );
        var altitude = kind.EndsWith('m') ? n.Between(2000, 4000) : n.Between(0, 1200);

        // The isothermal atmosphere at 15 °C is what a maker's barometer table says; the weather moves it by 8 hPa or so.
        var stated = 101325 * Math.Exp(-altitude / 8435);
        var blackened = n.Happens(0.6);
        var emissivity = blackened ? new Given(0.84, 0.08) : new Given(0.08, 0.05);
        var grease = n.Happens(0.6);
        var layer = grease ? new Given(n.Between(40e-6, 100e-6), 25e-6) : new Given(500e-6, 60e-6);
        var layerK = grease ? new Given(n.Between(1.5, 4), 0.4) : new Given(n.Between(1.5, 5), 0.3);
        var jc = n.Between(0.15, 0.8);
        var junction = new Given(jc, 0.15 * jc);
        var ambient = new Given(n.Happens(0.3) ? 313 : 296, n.Between(1, 3));
        var run = new Given(n.Between(7, 12), 0.2);

        var curve = Curve(
            n,
            tower ? stack.AcrossM * stack.HeightM : sink.AcrossM * (sink.FinHeightM + sink.BaseThicknessM)
        );
        var vents = fan && !tower && !kind.Contains("tips", StringComparison.Ordinal) || stopped ? Vents(n, sink) : [];
        var filter = runs && n.Happens(0.15) ? n.Between(4, 15) : 0;
        var wallsM2 = stopped
            ? n.Between(1.2, 2)
                * (
                    2 * (sink.AcrossM + sink.AlongM) * (sink.BaseThicknessM + sink.FinHeightM)
                    + sink.AcrossM * sink.AlongM
                )
            : 0;
        var draft = 0.8 * sink.AlongM;
        List<AirLoss> told = [.. vents.Select(v => AirLoss.PerforatedSheet("holes", v.FieldM2, v.Open, v.HoleM))];
        if (filter > 0)
        {
            told.Add(AirLoss.Filter("filter", filter, curve[^1].FlowM3PerS / 2));
        }

        var spec = sink with
        {
            Footprints = [new(atX, atY, body, body)],
            Tower = tower ? stack : null,
            FinCount = tower ? 0 : sink.FinCount,
            Emissivity = emissivity.Nominal,
            PressurePa = stated,
            ChannelTiltRad = tilt,
            FaceUp = up,
            Fan = fan ? new FanSpec { Curve = curve, VoltageRatio = run.Nominal / RatedV } : null,
            Entry = kind.Contains("tips", StringComparison.Ordinal) ? AirEntry.Tips : AirEntry.Ends,
            AirLosses = told,
            Housed = stopped,
            DraftHeightM = stopped ? draft : null,
            HousingConductanceWPerK = stopped ? 4 * wallsM2 : null,
        };

        var real = Built(n, spec, kind, runs, emissivity, ambient, run, vents, filter, wallsM2);
        var standing = new Standing(real);

        // The layer as stated, and the boundaries of its two faces: 4 mm²K/W, a half either way (Prasher, Proc. IEEE 94 (2006) 1571; from memory).
        double bond = Math.Max(5e-6, n.True(layer.Nominal, layer.HalfWidth)),
            carries = n.True(layerK.Nominal, layerK.HalfWidth),
            between = (bond / carries + 4e-6 * n.Factor(0.5)) / (body * body),
            inside = n.True(junction.Nominal, junction.HalfWidth),
            kernel = n.Between(0, 0.4),
            most = n.Between(50, 95);
        double Spread(double film) =>
            Plate.SpreadKPerW(
                sink.AcrossM,
                sink.AlongM,
                sink.BaseThicknessM,
                real.Conductivity,
                film,
                atX,
                atY,
                body,
                kernel
            );

        // As much heat as warms the base or the junction by what a maker may bear.
        var guess = standing.Rest(12);
        var heat = Math.Min(
            12 * n.Between(18, 60) / guess.RiseK,
            most / (guess.RiseK / 12 + Spread(guess.Film) + between + inside)
        );
        var (rise, film) = standing.Rest(heat);
        var caseK = rise + heat * (Spread(film) + between);
        return new(
            kind,
            new(spec, emissivity, layer, layerK, junction, ambient, run, body, runs),
            heat,
            rise,
            caseK,
            caseK + heat * inside
        );
    }

    private static SinkSpec Drawn(Nature n, bool fan, bool plain)
    {
        double across = n.Between(0.045, 0.13),
            along = n.Between(0.05, 0.15),
            fin = n.Between(0.0008, 0.0022),
            gap = fan ? n.Between(0.0022, 0.005) : n.Between(0.005, 0.012);
        var fins = plain ? 0 : Math.Max(4, (int)Math.Round((across + gap) / (gap + fin)));
        return new()
        {
            AcrossM = across,
            AlongM = along,
            BaseThicknessM = n.Happens(0.4) ? n.Between(0.002, 0.004) : n.Between(0.005, 0.012),
            ConductivityWPerMK = StatedConductivity,
            FinCount = fins,
            FinThicknessM = fin,
            FinHeightM =
                plain ? 0
                : fan ? n.Between(0.015, 0.045)
                : n.Between(0.018, 0.06),
            Footprints = [],
        };
    }

    private static HeatPipeTower Stacked(Nature n, bool fan) =>
        new(
            2 * n.Whole(2, 5),
            0.006,
            0.4,
            null,
            n.Whole(25, 45),
            n.Between(0.08, 0.125),
            n.Between(0.04, 0.06),
            0.0004,
            fan ? n.Between(0.0016, 0.0026) : n.Between(0.003, 0.006)
        );

    // Four points of a printed curve: falling, a hollow where the blades stall.
    private static FanPoint[] Curve(Nature n, double faceM2)
    {
        double still = n.Between(22, 65),
            flow = faceM2 * n.Between(1.5, 4),
            hollow = n.Between(0.55, 0.72);
        return [new(0, still), new(flow * 0.35, still * hollow), new(flow * 0.7, still * 0.6 * hollow), new(flow, 0)];
    }

    private static Holes[] Vents(Nature n, SinkSpec sink)
    {
        var field = (sink.AcrossM + 0.004) * Math.Max(0.02, sink.FinHeightM + sink.BaseThicknessM);
        Holes One() => new(field, n.Between(0.2, 0.42), n.Between(0.003, 0.006), n.Between(0.0008, 0.0015), 1);
        return n.Happens(0.5) ? [One(), One()] : [One()];
    }

    private static Reality Built(
        Nature n,
        SinkSpec spec,
        string kind,
        bool runs,
        Given emissivity,
        Given ambient,
        Given run,
        Holes[] vents,
        double filter,
        double wallsM2
    )
    {
        var tower = spec.Tower;
        bool tips = spec.Entry == AirEntry.Tips,
            level = kind.StartsWith("level", StringComparison.Ordinal);
        var fin = (tower?.ThicknessM ?? spec.FinThicknessM) * (1 + 0.04 * n.Between(-1, 1));
        var body = spec.Footprints[0].WidthM;

        // Film of the marched channel against measurements, each as its source gives it or from memory where the page says so.
        var film = (runs, tips, level, tower is not null) switch
        {
            // Plates on pipes: the pipes stir the air; fits of such coils hold to 10 or 15 % (Wang, Chi and Chang 2000; from memory).
            (true, _, _, true) => n.Factor(0.08) * n.Between(1.0, 1.25),
            // Duan and Muzychka 2006: within 11 % of measured impinged sinks.
            (true, true, _, _) => n.Factor(0.067),
            // Marched laminar channel within some 6 % of measured sinks; a fan's turbulence adds up to 15 % (from memory).
            (true, _, _, _) => n.Factor(0.06) * n.Between(1.0, 1.15),
            // Jones and Smith's fit holds their measurements to some 20 % (from memory).
            (_, _, true, _) => n.Factor(0.12),
            // Elenbaas's measurements scatter by 8 % or so about Bodoia and Osterle; open tips draw air in besides (Sparrow and Bahrami 1980; from memory).
            _ => n.Factor(0.08) * n.Between(1.0, 1.10),
        };
        var uneven = n.Between(0, 0.2);
        double[] shares = [.. Enumerable.Range(0, 5).Select(_ => Math.Clamp(1 + uneven * n.Normal(), 0.4, 1.6))];
        var mean = shares.Average();
        return new()
        {
            AcrossM = tower?.HeightM ?? spec.AcrossM,
            AlongM = tower?.AlongM ?? spec.AlongM,
            BaseM = spec.BaseThicknessM,
            FootM2 = spec.AcrossM * spec.AlongM,
            // The file knows no sink that hangs free: its back lies on sheet, or on what carries it. The first comparison had it in free air.
            BackM2 = 0,
            // 6063 drawn and aged: 193 to 218 by its temper (mill sheets; from memory).
            Conductivity = n.Between(193, 218),
            Fins = tower?.Plates ?? spec.FinCount,
            FinM = fin,
            HeightM = tower?.AcrossM ?? spec.FinHeightM + n.Between(-0.0003, 0.0003),
            GapM =
                tower?.GapM ?? (spec.FinCount < 2 ? 0.01 : (spec.AcrossM - spec.FinCount * fin) / (spec.FinCount - 1)),
            Emissivity = Math.Clamp(n.True(emissivity.Nominal, emissivity.HalfWidth), 0.02, 0.97),
            AmbientK = n.True(ambient.Nominal, ambient.HalfWidth),
            Pascal = spec.PressurePa * n.Factor(0.008),
            TiltRad = spec.ChannelTiltRad,
            FaceUp = spec.FaceUp ?? 0,
            Way =
                runs ? (tips ? Ways.BlownAtTips : Ways.Blown)
                : level ? Ways.Level
                : Ways.Rising,
            FilmFactor = film,
            FaceFactor = n.Factor(0.06),
            DraughtMPerS = n.Between(0, 0.1),
            Blower = spec.Fan is null ? null : Fan(n, spec.Fan, run),
            Vents =
            [
                .. vents.Select(v => v with { Factor = n.Factor(0.15), HoleM = v.HoleM + n.Between(-0.0001, 0.0001) }),
            ],
            // A clean filter of felt or foam: steeper than its flow, since the air between the fibres is not all slow.
            Filter = filter > 0 ? (filter * n.Factor(0.1), spec.Fan!.Curve[^1].FlowM3PerS / 2) : null,
            // The blades of a stopped fan stand in the way: 2 to 8 heads on the duct (from memory).
            Turns = wallsM2 > 0 ? [(n.Between(2, 8), spec.AcrossM * spec.FinHeightM)] : [],
            Shares = [.. shares.Select(s => s / mean)],
            DragFactor = n.Factor(0.1) * (tower is null ? 1 : n.Between(1, 1.4)),
            ChinkM = runs && !tips ? n.Between(0, 0.0012) : 0,
            WallsM2 = wallsM2,
            WallFactor = n.Factor(0.12),
            DraftM = spec.DraftHeightM ?? 0,
            PipesKPerW = tower is null ? 0 : Math.Max(0.08, n.True(0.4, 0.2)) / tower.Pipes,
            OnPipes = tower is null
                ? null
                : (tower.Pipes, tower.PipeDiameterM, Math.Sqrt(tower.AcrossM * tower.AlongM / Math.PI / tower.Pipes)),
        };
    }

    // Makers let speed scatter by 10 % (data sheets; from memory); what lies close to the blades takes up to 15 % of the pressure (AMCA 201; from
    // memory); speed follows volts in proportion or a little less or more.
    private static Blower Fan(Nature n, FanSpec fan, Given run)
    {
        var volts = n.True(run.Nominal, run.HalfWidth) / RatedV;
        return new(
            [.. fan.Curve.Select(p => (p.FlowM3PerS, p.PressurePa))],
            Math.Pow(volts, n.Between(0.85, 1.1)) * (1 + Math.Clamp(0.04 * n.Normal(), -0.1, 0.1)),
            n.Between(0.85, 1.0) * n.Factor(0.04)
        );
    }
}
