namespace Lampwright.References.Heat.Truth;

/// <summary>How hot a true light gets. No code and no correlation of the house: other published ones, the source beside each.</summary>
internal static class TruePhysics
{
    private static readonly double Sigma = 5.670374e-8;

    /// <summary>Rise of the junction where the base rises by <paramref name="riseK"/> and gives off <paramref name="heatW"/>, K.</summary>
    public static double JunctionRiseK(TrueLight light, double riseK, double heatW)
    {
        var source = light.Source.Width * light.Source.Depth;
        var inside = heatW * (light.LayerM2KPerW / source + light.JunctionKPerW);
        var film = FaceFilm(light, riseK, heatW);
        return riseK + heatW * TrueBase.OverMeanKPerW(light, film, FilmAlong(light, riseK, heatW)) + inside;
    }

    /// <summary>Heat given off with the base at a rise, W.</summary>
    public static double HeatW(TrueLight light, double riseK) =>
        light.Fan is null
            ? StillW(light, riseK) + RadiatedW(light, riseK)
            : BlownW(light, riseK) + RadiatedW(light, riseK);

    /// <summary>Flow that fan and path agree on, m³/s.</summary>
    public static double FlowM3PerS(TrueLight light, double riseK)
    {
        var cool = new TrueAir(light.AmbientK, light.PressurePa);
        var warm = new TrueAir(light.AmbientK + riseK / 2, light.PressurePa);
        var density = cool.Density / 1.2;
        var developed = DevelopedFRe(light);
        double low = 0,
            high = light.Fan!.FreeM3PerS;
        for (var i = 0; i < 36; i++)
        {
            var q = (low + high) / 2;
            var loss =
                light.Openings.Sum(o => OpeningPa(o, q, cool))
                + ChannelsPa(light, developed, q * (1 - light.Leak), cool, warm);
            (low, high) = light.Fan.PressurePa(q) * density > loss ? (q, high) : (low, q);
        }

        return (low + high) / 2;
    }

    /// <remarks>
    /// Weisbach's contraction 0.63 + 0.37·f³ and the loss of mixing (1/(f·Cc) - 1)² (Cornell 1958; Blevins 1984); at small Reynolds numbers the discharge
    /// coefficient of Wu, Burton and Schoenau 2002, Int. J. Fluid Power 3(3) (constants from memory). Where air leaves, the head of the approach is lost as well.
    /// </remarks>
    private static double OpeningPa(TrueOpening o, double q, in TrueAir air)
    {
        var v = q / o.FieldM2;
        var contraction = 0.63 + 0.37 * Math.Pow(o.OpenShare, 3);
        var k = Math.Pow(1 / (o.OpenShare * contraction) - 1, 2);
        var root = Math.Sqrt(v / o.OpenShare * o.HoleM / air.Kinematic) / 0.61;
        var discharge = 1 + 1.07 * Math.Exp(-0.126 * root) - 2.07 * Math.Exp(-0.246 * root);
        return (o.Edges * k / (discharge * discharge) + (o.Leaves ? 1 : 0)) * 0.5 * air.Density * v * v;
    }

    /// <remarks>
    /// Developing flow: Shah 1978, J. Fluids Eng. 100:177, with the exact series of Shah and London 1978 for the duct. Ends: between Kays and London's developed
    /// profile (0.8 - 0.4σ²; (1-σ)² - 0.4σ) and their flat one (0.5·(1-σ), Borda-Carnot).
    /// </remarks>
    private static double ChannelsPa(TrueLight light, double developed, double q, in TrueAir cool, in TrueAir warm)
    {
        double b = light.GapM,
            sigma = (light.Fins - 1) * b / light.AcrossM,
            u = q * cool.Density / warm.Density / ((light.Fins - 1) * b * light.FinHeightM),
            diameter = 2 * b * light.FinHeightM / (b + light.FinHeightM),
            re = u * diameter / warm.Kinematic,
            x = light.AlongM / (diameter * re);
        var entry = 3.44 / Math.Sqrt(x);
        var apparent = entry + (developed + 0.674 / (4 * x) - entry) / (1 + 2.9e-5 / (x * x));
        var parabolic = 0.8 - 0.4 * sigma * sigma + Math.Pow(1 - sigma, 2) - 0.4 * sigma;
        var flat = 0.5 * (1 - sigma) + Math.Pow(1 - sigma, 2);
        var ends = parabolic + light.Between.Ends * (flat - parabolic);
        return (ends + 4 * apparent / re * light.AlongM / diameter) * 0.5 * warm.Density * u * u;
    }

    /// <summary>f·Re of the developed flow in the channel, Fanning: the exact series.</summary>
    private static double DevelopedFRe(TrueLight light)
    {
        var aspect = Math.Min(light.GapM, light.FinHeightM) / Math.Max(light.GapM, light.FinHeightM);
        var sum = 0.0;
        for (var n = 1; n < 20; n += 2)
        {
            sum += Math.Tanh(n * Math.PI / (2 * aspect)) / Math.Pow(n, 5);
        }

        return 24 / (Math.Pow(1 + aspect, 2) * (1 - 192 * aspect / Math.Pow(Math.PI, 5) * sum));
    }

    /// <summary>Film on the log mean in a channel, W/(m²·K): between VDI Heat Atlas Gb (eq. 36 to 43) and Stephan (Shah and Bhatti, in HTH 5.4.3).</summary>
    private static double ChannelFilm(TrueLight light, double u, in TrueAir air)
    {
        double diameter = 2 * light.GapM,
            graetz = u * diameter / air.Kinematic * air.Prandtl * diameter / light.AlongM,
            x = 1 / graetz;
        var vdi = Math.Cbrt(
            Math.Pow(7.541, 3)
                + Math.Pow(1.841 * Math.Cbrt(graetz), 3)
                + Math.Pow(Math.Pow(2 / (1 + 22 * air.Prandtl), 1.0 / 6) * Math.Sqrt(graetz), 3)
        );
        var stephan =
            7.55 + 0.024 * Math.Pow(x, -1.14) / (1 + 0.0358 * Math.Pow(x, -0.64) * Math.Pow(air.Prandtl, 0.17));
        return (vdi + light.Between.Film * (stephan - vdi)) * air.Conductivity / diameter * (1 + light.Turbulence);
    }

    /// <summary>Air that is blown through uneven channels: each warms its own air (effectiveness 1 - exp(-NTU)), fins with a tip that is cooled as well.</summary>
    private static double BlownW(TrueLight light, double riseK)
    {
        var cool = new TrueAir(light.AmbientK, light.PressurePa);
        var warm = new TrueAir(light.AmbientK + riseK / 2, light.PressurePa);
        var q = FlowM3PerS(light, riseK) * (1 - light.Leak);
        var mass = q * cool.Density / (light.Fins - 1);
        var mean = mass / (warm.Density * light.GapM * light.FinHeightM);
        var heat = 0.0;
        foreach (var (weight, off) in new[] { (1.0 / 6, -1.732), (2.0 / 3, 0.0), (1.0 / 6, 1.732) })
        {
            var part = Math.Max(0.05, 1 + off * light.Uneven);
            var h = ChannelFilm(light, mean * part, warm);
            var eta = FinWithTip(h, light.ConductivityWPerMK, light.FinM, light.FinHeightM);
            var ha = h * light.AlongM * (light.GapM + 2 * light.FinHeightM * eta);
            var capacity = mass * part * TrueAir.SpecificHeat;
            heat += weight * capacity * (1 - Math.Exp(-ha / capacity)) * riseK * (light.Fins - 1);
        }

        return heat;
    }

    /// <summary>Straight fin with a convecting tip (Incropera eq. 3.72), as an efficiency on the side faces.</summary>
    private static double FinWithTip(double h, double k, double t, double height)
    {
        double m = Math.Sqrt(2 * h / (k * t)),
            tip = h / (m * k),
            tanh = Math.Tanh(m * height);
        return (tanh + tip) / (1 + tip * tanh) / (m * height);
    }

    /// <remarks>
    /// Channels between Elenbaas 1942 (Incropera eq. 9.45) and the open fin channel of Van de Pol and Tierney 1973 (ASME 73-WA/HT; from memory), outer faces, tips and
    /// edges by Squire and Eckert (Lienhard eq. 8.27), the room's draught by Pohlhausen.
    /// </remarks>
    private static double StillW(TrueLight light, double riseK)
    {
        if (riseK <= 0)
        {
            return 0;
        }

        var air = new TrueAir(light.AmbientK + riseK / 2, light.PressurePa);
        var along = Math.Cos(light.TiltRad);
        double length = light.AlongM,
            ra = air.Rayleigh(riseK, length, light.AmbientK) * along;
        var plate =
            0.678
            * Math.Pow(ra, 0.25)
            * Math.Pow(air.Prandtl / (0.952 + air.Prandtl), 0.25)
            * air.Conductivity
            / length;
        var draught =
            0.664
            * Math.Sqrt(light.DraughtMPerS * length / air.Kinematic)
            * Math.Cbrt(air.Prandtl)
            * air.Conductivity
            / length;
        var open = Math.Cbrt(plate * plate * plate + draught * draught * draught);
        if (light.Fins < 2)
        {
            // Tilted faces: the larger of the upright plate with g·cosθ and the level one with g·sinθ (Raithby and Hollands, in HTH 4.3).
            var edges = 2 * (light.AcrossM + length) * light.BaseM;
            var face = Math.Max(open, LevelFilm(light, riseK, air));
            return light.StillScatter * (face * light.AcrossM * length + open * edges) * riseK;
        }

        double s = light.GapM,
            height = light.FinHeightM,
            el = air.Rayleigh(riseK, s, light.AmbientK) * along * s / length;
        var elenbaas = el / 24 * Math.Pow(1 - Math.Exp(-35 / el), 0.75) * air.Conductivity / s;
        double a = s / height,
            r = 2 * height * s / (2 * height + s),
            rar = air.Rayleigh(riseK, r, light.AmbientK) * along * r / length;
        var inner = 1 + (1 - Math.Exp(-0.83 * a)) * (9.14 * Math.Sqrt(a) * Math.Exp(-464.6 * s) - 0.61);
        var z = 24 * (1 - 0.483 * Math.Exp(-0.17 / a)) / Math.Pow((1 + a / 2) * inner, 3);
        var pol = rar / z * (1 - Math.Exp(-z * Math.Pow(0.5 / rar, 0.75))) * air.Conductivity / r;
        var h = elenbaas + light.Between.Still * (pol - elenbaas);
        var eta = FinWithTip(h, light.ConductivityWPerMK, light.FinM, height);
        var channels = h * (light.Fins - 1) * length * (s + 2 * height * eta);
        var outside = open * (2 * height * length * eta + 2 * (light.AcrossM + length) * light.BaseM);
        return light.StillScatter * (channels + outside) * riseK;
    }

    /// <summary>Hot face that looks up, Raithby and Hollands: Nu = 1.4/ln(1 + 1.4/(0.835·0.515·Ra^¼)) on area over perimeter (from memory).</summary>
    private static double LevelFilm(TrueLight light, double riseK, in TrueAir air)
    {
        var length = light.AcrossM * light.AlongM / (2 * (light.AcrossM + light.AlongM));
        var ra = air.Rayleigh(riseK, length, light.AmbientK) * Math.Sin(light.TiltRad);
        return ra <= 0 ? 0 : 1.4 / Math.Log(1 + 1.4 / (0.835 * 0.515 * Math.Pow(ra, 0.25))) * air.Conductivity / length;
    }

    /// <remarks>View of a channel between Shabany's closed form (Electronics Cooling, Aug. 2008; memory) and its two-dimensional limit s/(s + 2H).</remarks>
    private static double RadiatedW(TrueLight light, double riseK)
    {
        var t4 =
            Sigma
            * (
                Math.Pow(light.AmbientK + riseK, 4)
                - Math.Pow(light.AmbientK + Math.Min(light.WallsWarmerK, riseK / 2), 4)
            );
        var edges = 2 * (light.AcrossM + light.AlongM) * light.BaseM;
        if (light.Fins < 2)
        {
            return light.Emissivity * (light.AcrossM * light.AlongM + edges) * t4;
        }

        double h = light.FinHeightM / light.GapM,
            l = light.AlongM / light.GapM,
            root = Math.Sqrt(1 + l * l) - 1;
        var closed = 1 - 2 * h * root / (2 * h * l + root);
        var view = closed + light.Between.View * (1 / (1 + 2 * h) - closed);
        var walls = (light.Fins - 1) * (2 * light.FinHeightM + light.GapM) * light.AlongM;
        var outside = (2 * light.FinHeightM + light.Fins * light.FinM) * light.AlongM + edges;
        return t4 * (walls / ((1 - light.Emissivity) / light.Emissivity + 1 / view) + light.Emissivity * outside);
    }

    /// <summary>Film on the faces that carries this heat at this rise, W/(m²·K): what the network is told.</summary>
    private static double FaceFilm(TrueLight light, double riseK, double heatW)
    {
        if (light.Fins < 2)
        {
            return heatW / (riseK * light.AcrossM * light.AlongM);
        }

        double low = 0,
            high = 2000;
        for (var i = 0; i < 50; i++)
        {
            var h = (low + high) / 2;
            var eta = FinWithTip(h, light.ConductivityWPerMK, light.FinM, light.FinHeightM);
            var area = (light.Fins - 1) * light.AlongM * (light.GapM + 2 * light.FinHeightM * eta);
            (low, high) = h * area * riseK < heatW ? (h, high) : (low, h);
        }

        return (low + high) / 2;
    }

    /// <summary>How the film on the inlet's air falls along the channel, mean 1: the air that comes has been warmed before.</summary>
    private static Func<double, double> FilmAlong(TrueLight light, double riseK, double heatW)
    {
        if (light.Fan is null)
        {
            return _ => 1;
        }

        var cool = new TrueAir(light.AmbientK, light.PressurePa);
        var capacity = FlowM3PerS(light, riseK) * (1 - light.Leak) * cool.Density * TrueAir.SpecificHeat;
        var ntu = -Math.Log(1 - Math.Clamp(heatW / (riseK * capacity), 0.01, 0.95));
        return y => ntu * Math.Exp(-ntu * y / light.AlongM) / (1 - Math.Exp(-ntu));
    }
}
