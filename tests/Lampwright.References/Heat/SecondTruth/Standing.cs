namespace Lampwright.References.Heat.SecondTruth;

/// <summary>A real sink at a temperature of its base: eight nodes up each fin, a film from the marched channel, cavities that radiate.</summary>
internal sealed class Standing(Reality real)
{
    private static readonly int Nodes = 8;
    private static readonly double StefanBoltzmann = 5.670e-8;
    private double _forced;

    /// <summary>Air through the fins, m³/s; 0 with no fan.</summary>
    public double FlowM3PerS { get; private set; }

    /// <summary>Rise of the mean base over the room for a heat, K, and what the base gives off per m² and K.</summary>
    public (double RiseK, double Film) Rest(double heatW)
    {
        Blow();
        var high = 10.0;
        while (Given(high) < heatW && high < 2000)
        {
            high *= 2;
        }

        var rise = Crossing.Of(k => Given(k) - heatW, 1e-3, high);
        return (rise, heatW / rise / real.FootM2);
    }

    // Heat of the whole sink for a rise of its base; in a housing its air and its walls first find their own temperatures.
    private double Given(double riseK)
    {
        if (real.WallsM2 <= 0)
        {
            return Roots(riseK, 0, 0).Sum();
        }

        var wall = 0.0;
        double[] gives = [0, 0];
        _ = Crossing.Of(Lacks, 1e-3 * riseK, riseK);
        return gives.Sum();

        // What the air of the housing gives off less what it gets: out by the draft, into the walls, which also take what the sink radiates.
        double Lacks(double airK)
        {
            wall = Math.Min(wall, riseK);
            for (var i = 0; i < 3; i++)
            {
                gives = Roots(riseK, airK, wall);
                var radiated = gives[1];
                wall = Crossing.Of(w => Out(w) - Into(airK, w) - radiated, 1e-3 * airK, riseK);
            }

            return Carried(airK) + Into(airK, wall) - gives[0];
        }
    }

    // Through the walls to the room, outside: films and radiation of paint.
    private double Out(double wallK)
    {
        var faces = new Faces(real.AmbientK, real.Pascal, real.DraughtMPerS, real.WallFactor);
        return faces.ConvectedW(real.WallsM2, real.DraftM, 4 * real.DraftM, 0, wallK)
            + faces.RadiatedW(real.WallsM2, 0.85, wallK);
    }

    // From the air inside into the walls, or out of them where the sink's radiation makes them the warmer.
    private double Into(double airK, double wallK)
    {
        var low = Math.Min(airK, wallK);
        var faces = new Faces(real.AmbientK + low, real.Pascal, 0, real.WallFactor);
        return Math.Sign(airK - wallK)
            * faces.ConvectedW(real.WallsM2, real.DraftM, 4 * real.DraftM, 0, Math.Abs(airK - wallK));
    }

    // By the draft through the holes.
    private double Carried(double airK)
    {
        var air = new Gas(real.AmbientK + airK, real.Pascal);
        var head = 9.81 * real.DraftM * new Gas(real.AmbientK, real.Pascal).Density * airK / (real.AmbientK + airK);
        return air.Density * Gas.Cp * airK * Crossing.Of(q => Passing(q, air) - head, 0, 0.05);
    }

    // To the air, and radiated, of a base at a rise over the room; the air about it and what it sees are themselves warmer by some.
    private double[] Roots(double riseK, double airK, double seenK) =>
        real.PipesKPerW <= 0
            ? All(riseK, airK, seenK)
            : All(
                Crossing.Of(k => k + real.PipesKPerW * All(k, airK, seenK).Sum() - riseK, 1e-3 * riseK, riseK),
                airK,
                seenK
            );

    private double[] All(double riseK, double airK, double seenK)
    {
        double above = Math.Max(0, riseK - airK),
            convected = 0,
            radiated = 0;
        var faces = new Faces(
            real.AmbientK + airK,
            real.Pascal,
            real.WallsM2 > 0 ? 0 : real.DraughtMPerS,
            real.FaceFactor
        );
        var room = new Faces(real.AmbientK + seenK, real.Pascal, 0, 1);
        if (real.PipesKPerW <= 0)
        {
            var upright = Math.Max(real.AlongM * Math.Cos(real.TiltRad), 0.2 * real.AlongM);
            var round = 2 * (real.AcrossM + real.AlongM);
            var edges = round * real.BaseM;
            convected += faces.ConvectedW(real.BackM2, upright, round, -real.FaceUp, above);
            convected += faces.ConvectedW(edges, upright, round, 0, above);
            radiated += room.RadiatedW(real.BackM2 + edges, real.Emissivity, riseK - seenK);
            if (real.Fins < 2)
            {
                convected += faces.ConvectedW(real.AcrossM * real.AlongM, upright, round, real.FaceUp, above);
                radiated += room.RadiatedW(real.AcrossM * real.AlongM, real.Emissivity, riseK - seenK);
                return [convected, radiated];
            }
        }

        var gaps = real.Fins - 1;
        var open = gaps * real.GapM * real.AlongM;
        var (finW, finRadW, tipK) = Fin(riseK, airK, seenK);
        convected += finW;
        radiated += finRadW;
        if (real.PipesKPerW <= 0)
        {
            convected += Film(above) * open * above;
        }

        // Outer sides of the last fins, as warm as their middle.
        var outerK = (riseK + tipK) / 2;
        var sides = 2 * real.HeightM * real.AlongM;
        convected += faces.ConvectedW(
            sides,
            Math.Max(real.AlongM * Math.Cos(real.TiltRad), 0.3 * real.HeightM),
            2 * sides / real.AlongM,
            0,
            Math.Max(0, outerK - airK)
        );
        radiated += room.RadiatedW(sides, real.Emissivity, outerK - seenK);
        return [convected, radiated];
    }

    // All fins: conduction up eight nodes of each, both sides in the channel's air, the openings of the channels radiate.
    private (double ConvectedW, double RadiatedW, double TipK) Fin(double rootK, double airK, double seenK)
    {
        double dz = real.HeightM / Nodes,
            along = real.AlongM;
        var (area, link) = Shape();
        var rise = new double[Nodes];
        Array.Fill(rise, rootK * 0.9);
        double[] g = new double[Nodes],
            rad = new double[Nodes];

        // A cavity's opening is blacker than its walls (Gouffé 1945): walls over opening, of the tips and of both ends.
        double tips = real.GapM * along,
            ends = 2 * real.GapM * real.HeightM,
            walls = (2 * real.HeightM + real.GapM) * along,
            black = real.Emissivity / (real.Emissivity + (1 - real.Emissivity) * (tips + ends) / walls);
        double last = 0,
            seen = real.AmbientK + seenK;
        for (var pass = 0; pass < 12; pass++)
        {
            for (var i = 0; i < Nodes; i++)
            {
                var over = Math.Max(1e-3, rise[i] - airK);
                g[i] = 2 * area[i] * Film(over);

                // The opening at the tips is seen by what lies within about one gap of it; the ends by every height alike.
                var depth = (Nodes - 1 - i) * dz;
                var see = real.OnPipes is null
                    ? tips * (Math.Exp(-depth / real.GapM) - Math.Exp(-(depth + dz) / real.GapM)) + ends / Nodes
                    : (2 * tips + ends) * area[i] / area.Sum();
                var k = real.AmbientK + rise[i];
                rad[i] = black * see * StefanBoltzmann * (k * k + seen * seen) * (k + seen);
            }

            var tipFilm = real.FinM * along * 6;
            double[] main = new double[Nodes],
                right = new double[Nodes];
            for (var i = 0; i < Nodes; i++)
            {
                main[i] = g[i] + rad[i] + link[i] + (i < Nodes - 1 ? link[i + 1] : tipFilm);
                right[i] =
                    g[i] * airK
                    + rad[i] * seenK
                    + (i == 0 ? link[0] * rootK : 0)
                    + (i == Nodes - 1 ? tipFilm * airK : 0);
            }

            for (var i = 1; i < Nodes; i++)
            {
                var m = -link[i] / main[i - 1];
                main[i] += m * link[i];
                right[i] -= m * right[i - 1];
            }

            for (var i = Nodes - 1; i >= 0; i--)
            {
                rise[i] = (right[i] + (i < Nodes - 1 ? link[i + 1] * rise[i + 1] : 0)) / main[i];
            }

            if (Math.Abs(rise[^1] - last) < 1e-6)
            {
                break;
            }

            last = rise[^1];
        }

        double convected = 0,
            radiated = 0;
        for (var i = 0; i < Nodes; i++)
        {
            convected += g[i] * (rise[i] - airK);
            radiated += rad[i] * (rise[i] - seenK);
        }

        convected += real.FinM * along * 6 * (rise[^1] - airK);

        // A fin's two sides belong to two half channels; the outer halves of the two last fins are reckoned apart.
        var count = real.Fins - 1.0;
        return (convected * count, radiated * count, rise[^1]);
    }

    // One fin: half of its two faces at each node, and the way to each from the one before; straight, or in rings round pipes.
    private (double[] AreaM2, double[] LinkWPerK) Shape()
    {
        double[] area = new double[Nodes],
            link = new double[Nodes];
        for (var i = 0; i < Nodes; i++)
        {
            if (real.OnPipes is not { } pipes)
            {
                area[i] = real.HeightM / Nodes * real.AlongM;
                link[i] = real.Conductivity * real.FinM * real.AlongM / (real.HeightM / Nodes) * (i == 0 ? 2 : 1);
                continue;
            }

            double dr = (pipes.RoundM - pipes.PipeM / 2) / Nodes,
                from = pipes.PipeM / 2 + i * dr;
            area[i] = pipes.Count * Math.PI * (Math.Pow(from + dr, 2) - from * from);
            link[i] =
                pipes.Count
                * real.Conductivity
                * real.FinM
                * 2
                * Math.PI
                * (from + (i == 0 ? dr / 4 : 0))
                / (i == 0 ? dr / 2 : dr);
        }

        return (area, link);
    }

    // Film between the fins on wall less the air that comes in, W/(m²·K).
    private double Film(double overK)
    {
        if (real.Way is Ways.Blown or Ways.BlownAtTips)
        {
            return _forced;
        }

        var over = Math.Max(overK, 1e-3);
        var air = new Gas(real.AmbientK + over / 2, real.Pascal);
        if (real.Way == Ways.Level)
        {
            // Jones and Smith, J. Heat Transfer 92 (1970) 6: level fins that look up (constants from memory).
            var ra = air.Rayleigh(over, real.GapM);
            return 6.7e-4
                * ra
                * Math.Pow(1 - Math.Exp(-Math.Pow(7460 / Math.Max(ra, 1e-6), 0.44)), 1.7)
                * air.Conductivity
                / real.GapM
                * real.FilmFactor;
        }

        var half = real.GapM / 2;
        var gr =
            9.81 * Math.Cos(real.TiltRad) / air.Kelvin * over * Math.Pow(half, 4) / (air.Nu * air.Nu * real.AlongM);
        return Channels.Natural(gr) * air.Conductivity / half * real.FilmFactor;
    }

    private void Blow()
    {
        if (real.Blower is null || real.Way is not (Ways.Blown or Ways.BlownAtTips))
        {
            return;
        }

        var air = new Gas(real.AmbientK + 6, real.Pascal);
        var flow = Crossing.Of(
            q => Passing(q, air) + Channel(q, air).Pa - real.Blower.PressurePa(q, air),
            0,
            real.Blower.Points[^1].Flow * real.Blower.Speed
        );
        FlowM3PerS = flow;
        _forced = Channel(flow, air).Film * real.FilmFactor;
    }

    // What the air loses besides the fins, Pa.
    private double Passing(double flow, Gas air) =>
        real.Vents.Sum(v => v.LossPa(flow, air))
        + real.Turns.Sum(t => t.Heads * air.Density / 2 * Math.Pow(flow / t.AreaM2, 2))
        + (real.Filter is { } f ? f.Pa * Math.Pow(flow / f.Flow, 1.3) * air.Viscosity / 1.82e-5 : 0);

    // Pressure and mean film of the channels at a flow, the chink beside them taking its part.
    private (double Pa, double Film) Channel(double flow, Gas air)
    {
        var gaps = real.Fins - 1;
        double half = real.GapM / 2,
            area = gaps * real.GapM * real.HeightM,
            sigma = area / (real.AcrossM * real.HeightM),
            alpha = Math.Min(1, real.GapM / real.HeightM);
        if (real.ChinkM > 0)
        {
            // Air that slips past: a slit of its own width, by the same law of slow flow, speed as width to the 3/2 in between.
            var slip = (real.AcrossM + 2 * real.HeightM) * real.ChinkM * Math.Pow(real.ChinkM / real.GapM, 1.5);
            flow *= area / (area + slip);
        }

        var tips = real.Way == Ways.BlownAtTips;
        double length = tips ? real.AlongM / 2 : real.AlongM,
            mean = flow / area / (tips ? 2 : 1);
        if (mean <= 0)
        {
            return (0, 0.1);
        }

        // A rectangle drags less than two walls (one term of the exact series of the duct), and gives a little less heat off its corners.
        var rectangle =
            1 / (Math.Pow(1 + alpha, 2) * (1 - 192 / Math.Pow(Math.PI, 5) * alpha * Math.Tanh(Math.PI / 2 / alpha)));
        double film = 0,
            pa = 0;
        foreach (var share in real.Shares)
        {
            var u = mean * share;
            var xi = length * air.Nu / (u * half * half);
            var (heads, _) = Channels.Forced(xi);
            var (_, bulk) = Channels.Forced(xi * (1 - 0.48 * Math.Min(alpha, 0.5)));
            pa +=
                air.Density
                * u
                * u
                * (
                    real.DragFactor * Math.Max(heads - 3 * xi * (1 - rectangle), 0.5 * heads)
                    + (tips ? 1.3 + 0.5 : 0.21 * (1 - sigma * sigma) + 0.5 * (1 - sigma) * (1 - sigma))
                )
                / real.Shares.Length;

            // With the base as a third wall.
            film +=
                air.Density
                * Gas.Cp
                * u
                * real.GapM
                * real.HeightM
                * bulk
                / ((2 * real.HeightM + (real.PipesKPerW > 0 ? 0 : real.GapM)) * length)
                / real.Shares.Length;
        }

        return (pa, film);
    }
}
