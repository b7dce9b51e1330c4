using Lampwright.Design;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Emitters and steps.</summary>
internal static class BindElectric
{
    public static Emitter Emitter(TableReader r)
    {
        var points = r.Tables("points").Select(Point).OfType<EmitterPoint>().ToList();
        var face = r.OneOrTwo("face");
        var (junction, electrical) = Junction(r);
        return new Emitter(r.Name)
        {
            Points = points,
            Rated = Rating(r.Table("rated")),
            Reference = r.WithDefault("reference"),
            VoltageSlope = r.Optional("voltage_slope"),
            FluxHot = Hot(r.Table("flux_hot")),
            Maintenance = [.. r.Tables("maintenance").Select(Maintenance).OfType<MaintenanceReadings>()],
            CurrentMax = r.Optional("current_max"),
            JunctionMax = r.Optional("junction_max"),
            JunctionToCase = junction,
            JunctionToCaseIsElectrical = electrical,
            Body = r.Size("body"),
            Face = face?.Size,
            FaceIsRound = face?.IsOne ?? false,
            Beam = r.WithDefault("beam"),
            Cct = r.Optional("cct"),
            LightShare = r.Optional("light_share"),
            RadiationEfficacy = r.WithDefault("radiation_efficacy"),
            Mass = r.Optional("mass"),
            Holes = BindHoles.Patterns(r),
        };
    }

    public static Design.Steps? Steps(TableReader r, TableReader drawer)
    {
        var resistors = BindChain.Drawer(drawer);
        if (!r.IsThere)
        {
            return null;
        }

        var part = r.Table("part");
        var contact = r.Table("contact");
        var lead = r.Table("lead");
        var chosen = r.Table("chosen");
        return new Design.Steps
        {
            Emitter = r.Reference("emitter"),
            Driver = r.Reference("driver"),
            Arrangement = r.Choice("arrangement") switch
            {
                "parallel branches" => Arrangement.ParallelBranches,
                "selector" => Arrangement.Selector,
                _ => Arrangement.SeriesChain,
            },
            IsOneAfterAnother = r.Choice("thrown") == "one after another",
            Switches = r.Count("switches", 0),
            Selector = r.Choice("selector") switch
            {
                "make before break" => SelectorKind.MakeBeforeBreak,
                "break before make" => SelectorKind.BreakBeforeMake,
                _ => SelectorKind.Unknown,
            },
            Taps = r.Choice("taps") == "at the chain's ends" ? SenseTaps.AtTheChainsEnds : SenseTaps.OnTheBoard,
            Bleed = r.Optional("bleed"),
            Floor = r.Optional("floor"),
            Fallback = r.Optional("fallback"),
            Targets = Targets(r),
            Stock = Stock(r),
            Drawer = resistors,
            Part = new ResistorKind
            {
                Tolerance = part.WithDefault("tolerance"),
                Tempco = part.WithDefault("tempco"),
                Rating = part.WithDefault("rating"),
                FullTo = part.WithDefault("full_to"),
                ZeroAt = part.WithDefault("zero_at"),
                Fails = part.Choice("fails") switch
                {
                    "open" => ResistorFails.Open,
                    "short or open" => ResistorFails.ShortOrOpen,
                    _ => ResistorFails.Unknown,
                },
                Least = part.Optional("least"),
            },
            ContactTypical = contact.WithDefault("typical"),
            ContactMost = contact.WithDefault("most"),
            ContactRating = contact.Optional("rating"),
            LeadLength = lead.WithDefault("length"),
            LeadArea = lead.WithDefault("area"),
            LeadTinned = lead.Flag("tinned"),
            LeadsApart = lead.Flag("apart"),
            Chosen = BindChain.Chosen(chosen),
        };
    }

    private static EmitterPoint? Point(TableReader r)
    {
        var (current, voltage, flux) = (r.Optional("current"), r.Optional("voltage"), r.Optional("flux"));
        return current is null || voltage is null || flux is null ? null : new EmitterPoint(current, voltage, flux);
    }

    private static MaintenanceReadings? Maintenance(TableReader r)
    {
        var (at, hours, shares) = (r.Optional("case"), r.Quantities("hours"), r.Quantities("shares"));
        var samples = r.Count("samples", 0);
        return at is null || hours.Count == 0 || hours.Count != shares.Count
            ? null
            : new MaintenanceReadings(at, samples, hours, shares);
    }

    private static FluxHot? Hot(TableReader r)
    {
        var (at, factor) = (r.Optional("at"), r.Optional("factor"));
        return at is null || factor is null ? null : new FluxHot(at, factor);
    }

    private static EmitterRating? Rating(TableReader r)
    {
        var (current, voltage, flux) = (r.Optional("current"), r.Two("voltage"), r.Optional("flux"));
        return current is null || voltage is not { } range || flux is null
            ? null
            : new EmitterRating(current, range.First, range.Second, flux);
    }

    /// <summary>A bare value is the real resistance, as data sheets of today give it; a table says which it is.</summary>
    private static (Value? Value, bool Electrical) Junction(TableReader r)
    {
        var inner = r.TableOrValue("junction_to_case", "value");
        return (inner.Optional("value"), inner.Choice("kind") == "electrical");
    }

    private static Targets? Targets(TableReader steps)
    {
        if (steps.Node("targets") is DocArray list)
        {
            return Listed(steps.Table("targets", list).Mixed("list", list), null, steps, list);
        }

        var r = steps.Table("targets");
        var from = r.Optional("from");
        _ = r.Choice("of");
        if (r.Has("list"))
        {
            return Listed(r.Mixed("list"), from, r, r.Node("list")!);
        }

        var every = r.Optional("every");
        var count = r.Count("count", 0);
        return every is null ? null : new Targets(TargetKind.Stops, from, every.Nominal, count, []);
    }

    private static Targets? Listed(
        IReadOnlyList<(Value Value, Dimension Dimension)> items,
        Value? from,
        TableReader r,
        DocNode at
    )
    {
        if (items.Count == 0)
        {
            return null;
        }

        var first = items[0].Dimension;
        TargetKind? kind =
            first == Dimension.Current ? TargetKind.Currents
            : first == Dimension.Illuminance ? TargetKind.Lux
            : first.IsNone ? TargetKind.Percent
            : null;
        if (kind is null || items.Any(i => i.Dimension != first || !(i.Value.Nominal > 0)))
        {
            r.Context.Wrong(
                at,
                r.Path.EndsWith("targets", StringComparison.Ordinal) ? r.Path : r.Path + ".targets",
                "is no list of steps",
                "currents, or lux, or percent, all of one kind and above zero"
            );
            return null;
        }

        return new Targets(kind.Value, from, 0, items.Count, [.. items.Select(i => i.Value)]);
    }

    private static string Stock(TableReader r)
    {
        var stock = r.Text("stock");
        string[] known = ["E3", "E6", "E12", "E24", "E48", "E96", "E192", "drawer"];
        if (known.Contains(stock, StringComparer.Ordinal))
        {
            return stock;
        }

        if (r.Node("stock") is { } node)
        {
            r.Context.Wrong(node, r.Path + ".stock", "is no stock of resistors", string.Join(", ", known));
        }

        return "E24";
    }
}
