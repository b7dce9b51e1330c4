namespace Lampwright.Heat.Network;

/// <summary>A light as a network: what each node is, and the network itself.</summary>
/// <remarks>
/// <para>Junction, case, base and fins in a row; the sink's curve gives the heat from there into the air of its channel and, by
/// radiation, into the channel's walls; beside it the base conducts into sheet that it is screwed to. Driver and resistors, each a node,
/// warm the air of their compartment. Absorbed light warms reflector and
/// diffuser, these the air and the walls of the front. Panels pass heat along the sheet and through joints, and give it to the room.</para>
/// Validity: each panel even in temperature; sheet under the sink is a panel of its own. Source: Incropera ch. 3, 9, 13; the films of
/// <see cref="Panel"/>; inside h = 1.42·(ΔT/L)^¼ (Holman, simplified, memory). Accuracy: that of its factors. Checked by: invariant.
/// </remarks>
public sealed partial class LightNetwork
{
    // h = 1.42·(ΔT/L)^¼.
    private static readonly double SimpleFilm = 1.42;

    // Two painted surfaces, or opal and bright sheet, facing each other: 1/(1/ε₁ + 1/ε₂ - 1) with this for the walls.
    private static readonly double WallEmissivity = 0.9;

    // A part that does not warm itself is as warm as its air.
    private static readonly double LeastResistorKPerW = 0.01;

    // Each screwed area passes at least this to its sheet, so that no node hangs in the air, W/K.
    private static readonly double Thread = 1e-4;

    private readonly List<NetworkNode> nodes = [];
    private readonly List<NetworkLink> links = [];
    private readonly List<NetworkSource> sources = [];
    private readonly LightNetworkSpec spec;

    private LightNetwork(LightNetworkSpec spec, ThermalNetwork? like)
    {
        this.spec = spec;
        Room = Node("room", 0, spec.AmbientK);
        Junction = Node("junction", spec.JunctionJPerK);
        Case = Node("case", spec.CaseJPerK);
        Base = Node("base", spec.BaseJPerK + (spec.FinWPerK > 0 ? 0 : spec.FinJPerK));
        Fins = spec.FinWPerK > 0 ? Node("fins", spec.FinJPerK) : Base;
        sources.AddRange([EmitterSource(), new(Base, spec.Sink.OtherW)]);
        links.AddRange([ToCase(), ToBase()]);
        if (Fins != Base)
        {
            links.Add(new Conduction(Base, Fins, spec.FinWPerK));
        }

        Panels = [.. spec.Panels.Select(p => Node(p.Name, p.CapacityJPerK))];
        Channel();
        Compartment();
        Front();
        Sheet();
        Network = new ThermalNetwork(nodes, links, sources, like);
    }

    /// <summary>The network of a light.</summary>
    /// <param name="spec">The light in one scene.</param>
    public static LightNetwork Of(LightNetworkSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Guard.InRange(spec.AmbientK, 200, 400);
        return new LightNetwork(spec, null);
    }

    /// <summary>The network.</summary>
    public ThermalNetwork Network { get; }

    /// <summary>Node of the room.</summary>
    public int Room { get; }

    /// <summary>Node of the junction.</summary>
    public int Junction { get; }

    /// <summary>Node of the emitter's case.</summary>
    public int Case { get; }

    /// <summary>Node of the sink's base.</summary>
    public int Base { get; }

    /// <summary>Node of the fins; the base where both are one.</summary>
    public int Fins { get; }

    /// <summary>Node of the air that leaves the channel; -1 where the sink stands free.</summary>
    public int ChannelAir { get; private set; } = -1;

    /// <summary>Node of the compartment's air.</summary>
    public int CompartmentAir { get; private set; }

    /// <summary>Node of the driver's case.</summary>
    public int Driver { get; private set; }

    /// <summary>Node of the air in the front; -1 where no part stands round the reflector.</summary>
    public int FrontAir { get; private set; } = -1;

    /// <summary>Node of the reflector; -1 where there is none.</summary>
    public int Reflector { get; private set; } = -1;

    /// <summary>Node of the diffuser; -1 where there is none.</summary>
    public int Diffuser { get; private set; } = -1;

    /// <summary>Node of each panel.</summary>
    public IReadOnlyList<int> Panels { get; }

    /// <summary>Node of each resistor.</summary>
    public IReadOnlyList<int> Resistors { get; private set; } = [];

    /// <summary>Heat of other emitters on the sink, W.</summary>
    internal double OtherW => spec.Sink.OtherW;

    /// <summary>Heat that the base gives to the sheet it is screwed to, W; 0 where the sink's curve holds it.</summary>
    /// <param name="kelvin">Temperature of each node, K.</param>
    public double SeatW(IReadOnlyList<double> kelvin)
    {
        ArgumentNullException.ThrowIfNull(kelvin);
        return spec.CurveHoldsSeats
            ? 0
            : spec.Seats.Sum(s => s.ContactWPerK * spec.Factors.Contact * (kelvin[Base] - kelvin[Panels[s.Panel]]));
    }

    // Still air carries with the square root of its pressure: Gr goes with the density squared, and Nu with Gr^(1/4).
    private double StillFilm =>
        SimpleFilm * spec.Factors.InsideFilm * Math.Sqrt(spec.PressurePa / Atmosphere.SeaLevelPa);

    private void Channel()
    {
        var f = spec.Factors;
        double Way(SinkSeat seat)
        {
            var contact = seat.ContactWPerK * f.Contact;
            return contact > 0 && seat.SheetWPerK > 0 ? 1 / ((1 / contact) + (1 / seat.SheetWPerK)) : 0;
        }

        foreach (var seat in spec.CurveHoldsSeats ? [] : spec.Seats)
        {
            links.Add(new Conduction(Base, Panels[seat.Panel], seat.ContactWPerK * f.Contact));
        }

        var sheet = spec.CurveHoldsSeats ? spec.Seats.Sum(Way) : 0;
        SinkHeat Out(int to, double share, bool seat = false) =>
            new(Fins, to, Base, Room, spec.Sink, share, f.SinkResistance, sheet, seat);
        foreach (var seat in spec.Seats.Where(_ => sheet > 0))
        {
            links.Add(Out(Panels[seat.Panel], Way(seat) / sheet, seat: true));
        }

        var walls = Inside(PanelZone.Channel);
        if (walls.Count == 0)
        {
            links.Add(Out(Room, 1));
            return;
        }

        ChannelAir = Node("channel air", 1);
        var all = walls.Sum(i => spec.Panels[i].InsideM2);
        links.Add(Out(ChannelAir, 1 - spec.RadiatedShare));
        foreach (var i in walls)
        {
            var (panel, area) = (Panels[i], spec.Panels[i].InsideM2);
            if (spec.RadiatedShare > 0)
            {
                links.Add(Out(panel, spec.RadiatedShare * area / all));
            }

            // The fan's air comes in as cool as the room and leaves as warm as the channel's: the walls see half of each.
            var natural = StillFilm * area / Fourth(spec.InsideLengthM);
            var forced = spec.WallFilmWPerM2K * f.InsideFilm * area;
            links.Add(new AirFilm(ChannelAir, panel, natural, forced / 2));
            if (forced > 0)
            {
                links.Add(new Conduction(panel, Room, forced / 2));
            }
        }

        links.Add(new AirStream(ChannelAir, Room, Room, spec.FanWPerK * f.AirFlow, spec.DraftWPerK32 * f.AirFlow));
    }

    private void Compartment()
    {
        var f = spec.Factors;
        var walls = Inside(PanelZone.Compartment);
        CompartmentAir = Node("compartment air", 1);
        Driver = spec.DriverCaseM2 > 1e-6 ? Node("driver", spec.DriverJPerK) : CompartmentAir;
        firstHeat = sources.Count;
        sources.Add(DriverSource());
        Resistors = [.. spec.Resistors.Select(r => Node(r.Name, r.JPerK))];
        firstResistor = links.Count;
        for (var i = 0; i < Resistors.Count; i++)
        {
            sources.Add(ResistorSource(i));
            links.Add(ResistorToAir(i));
        }

        var natural = StillFilm;
        if (Driver != CompartmentAir)
        {
            links.Add(new AirFilm(Driver, CompartmentAir, natural * spec.DriverCaseM2 / Fourth(spec.DriverLengthM)));
        }

        var all = walls.Sum(i => spec.Panels[i].InsideM2);
        var seen = Math.Min(all, Math.Max(spec.DriverCaseM2, 0)) * spec.InsideEmissivity * f.Emissivity;
        foreach (var i in walls)
        {
            var area = spec.Panels[i].InsideM2;
            links.Add(new AirFilm(CompartmentAir, Panels[i], natural * area / Fourth(spec.InsideLengthM)));
            if (Driver != CompartmentAir)
            {
                links.Add(new RadiationLink(Driver, Panels[i], seen * area / all));
            }
        }

        if (walls.Count == 0)
        {
            links.Add(new AirFilm(CompartmentAir, Room, natural * Math.Max(spec.DriverCaseM2, 1e-3) / Fourth(0.06)));
        }
    }

    private void Front()
    {
        var f = spec.Factors;
        var walls = Inside(PanelZone.Front);
        if (spec.ReflectorM2 > 0)
        {
            Reflector = Node("reflector", spec.ReflectorJPerK);
        }

        if (spec.Diffuser is { } lens)
        {
            Diffuser = Node("diffuser", spec.DiffuserJPerK);
            links.Add(new PanelFace(Diffuser, Room, lens, spec.PressurePa, f.PanelFilm, f.Emissivity));
        }

        if (Reflector < 0 && Diffuser < 0)
        {
            return;
        }

        sources.AddRange([ReflectorSource(), DiffuserSource()]);
        var natural = StillFilm / Fourth(spec.InsideLengthM);
        if (Reflector >= 0 && Diffuser >= 0)
        {
            var area = Math.Min(spec.Diffuser!.AreaM2, spec.ReflectorM2);
            links.Add(new RadiationLink(Reflector, Diffuser, Facing(spec.ReflectorEmissivity) * f.Emissivity * area));

            // Still air between both: two films in a row.
            links.Add(new AirFilm(Reflector, Diffuser, natural * area / Math.Pow(2, 1.25)));
        }

        if (Reflector >= 0 && (spec.ReflectorShell is not null || walls.Count == 0))
        {
            var shell =
                spec.ReflectorShell ?? new Panel(spec.ReflectorM2, 0.1, PanelFacing.Side, spec.ReflectorEmissivity);
            links.Add(new PanelFace(Reflector, Room, shell, spec.PressurePa, f.PanelFilm, f.Emissivity));
        }

        if (walls.Count == 0)
        {
            return;
        }

        FrontAir = Node("front air", 1);
        var all = walls.Sum(i => spec.Panels[i].InsideM2);
        if (Reflector >= 0)
        {
            links.Add(new AirFilm(Reflector, FrontAir, natural * spec.ReflectorM2));
        }
        else
        {
            links.Add(new AirFilm(Diffuser, FrontAir, natural * spec.Diffuser!.AreaM2));
        }

        foreach (var i in walls)
        {
            var area = spec.Panels[i].InsideM2;
            links.Add(new AirFilm(FrontAir, Panels[i], natural * area));
            if (Reflector >= 0)
            {
                var seen = Facing(spec.ReflectorEmissivity) * f.Emissivity * spec.ReflectorM2 * area / all;
                links.Add(new RadiationLink(Reflector, Panels[i], seen));
            }
        }
    }

    private void Sheet()
    {
        var f = spec.Factors;
        for (var i = 0; i < Panels.Count; i++)
        {
            var outside = spec.Panels[i].Outside;
            if (outside.AreaM2 > 0)
            {
                links.Add(new PanelFace(Panels[i], Room, outside, spec.PressurePa, f.PanelFilm, f.Emissivity));
            }
            else
            {
                links.Add(new Conduction(Panels[i], Room, Thread));
            }
        }

        foreach (var b in spec.Bridges)
        {
            links.Add(new Conduction(Panels[b.A], Panels[b.B], b.WPerK * (b.IsJoint ? f.Contact : 1)));
        }
    }

    private List<int> Inside(PanelZone zone) =>
        [
            .. Enumerable
                .Range(0, spec.Panels.Count)
                .Where(i => spec.Panels[i].Zone == zone && spec.Panels[i].InsideM2 > 0),
        ];

    private int Node(string name, double capacity, double? given = null)
    {
        nodes.Add(new(name, Math.Max(0, capacity) * spec.Factors.Capacity, given));
        return nodes.Count - 1;
    }

    private static double Facing(double emissivity) =>
        emissivity <= 0 ? 0 : 1 / ((1 / emissivity) + (1 / WallEmissivity) - 1);

    private static double Fourth(double x) => Math.Sqrt(Math.Sqrt(Math.Max(x, 1e-3)));
}
