using Lampwright.Design;
using Lampwright.Files.DesignFile.Document;
using Lampwright.Files.DesignFile.Schema;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Makes the design out of the merged tree; everything that can be bound is bound.</summary>
internal static class DesignBinder
{
    public static LightDesign Bind(LoadContext context)
    {
        var top = new TableReader(context, context.Root, "", "");
        _ = top.Count("format", 1);
        _ = top.Text("shop");
        BindGiven(top.Table("given"));
        var show = top.Table("show");
        var design = new LightDesign
        {
            Title = top.Text("title"),
            Show = new Show(show.Choice("length"), show.Choice("temperature"), show.Choice("paper"))
            {
                Templates = Templates(show.Table("templates")),
            },
            Place = Place(top.Table("place")),
            Emitters = [.. top.Named("emitter").Select(BindElectric.Emitter)],
            Drivers = [.. top.Named("driver").Select(BindDriver.Driver)],
            Steps = BindElectric.Steps(top.Table("steps"), top.Table("drawer")),
            Interfaces = [.. top.Named("interface").Select(BindCooling.Interface).OfType<ThermalInterface>()],
            Sinks = [.. top.Named("sink").Select(BindCooling.Sink)],
            Fans = [.. top.Named("fan").Select(BindCooling.Fan)],
            CutOuts = [.. top.Named("cutout").Select(BindCooling.CutOut)],
            Reflectors = [.. top.Named("reflector").Select(BindOptics.Reflector)],
            Diffusers = [.. top.Named("diffuser").Select(BindOptics.Diffuser)],
            Subject = BindOptics.Subject(top.Table("subject")),
            Sheets = [.. top.Named("sheet").Select(BindMetal.Sheet)],
            Brake = BindMetal.Brake(top.Table("brake")),
            Parts = [.. top.Named("part").Select(BindMetal.Part)],
            Items = [.. top.Named("item").Select(BindFitUp.Item)],
            Joints = [.. top.Named("joint").Select(BindFitUp.Joint)],
            Assembly = BindFitUp.Assembly(top.Table("assembly")),
            Tilts = [.. top.Named("tilt").Select(BindFitUp.Tilt)],
            Arms = [.. top.Named("arm").Select(BindFitUp.Arm).OfType<Arm>()],
            Stands = [.. top.Named("stand").Select(BindFitUp.Stand).OfType<Stand>()],
            Rules = Rules(top.Table("rules"), context),
            Readings = Readings(top.Table("readings")),
        };
        UnknownKeys.Tell(context);
        return design;
    }

    private static TemplatePrint Templates(TableReader r) =>
        new()
        {
            Paper = r.Choice("paper"),
            Roll = r.WithDefault("roll"),
            Faces = r.Choice("faces"),
            BarAcross = r.Optional("bar_across"),
            BarAlong = r.Optional("bar_along"),
        };

    private static Place Place(TableReader r) =>
        new()
        {
            Ambient = r.WithDefault("ambient"),
            AmbientMax = r.WithDefault("ambient_max"),
            Altitude = r.WithDefault("altitude"),
            Supply = Supply(r.Table("supply")),
        };

    private static Supply? Supply(TableReader r)
    {
        var (kind, voltage, frequency) = (r.Choice("kind"), r.Optional("voltage"), r.Optional("frequency"));
        var resistance = r.Optional("resistance");
        return kind.Length == 0 || voltage is null
            ? null
            : new Supply(
                kind == "dc" ? SupplyKind.Dc : SupplyKind.Ac,
                voltage,
                kind == "dc" ? null : frequency,
                resistance
            );
    }

    private static void BindGiven(TableReader given)
    {
        foreach (var name in given.Names)
        {
            _ = given.Any(name, "given.*");
        }
    }

    private static List<RuleOverride> Rules(TableReader rules, LoadContext context)
    {
        var overrides = new List<RuleOverride>();
        foreach (var name in rules.Names)
        {
            var rule = rules.Inner(name, "rules.*");
            if (RuleNames.Find(name) is not { } known)
            {
                Unknown(rules, name, context);
                continue;
            }

            var (formula, ofFirstSheet) = SheetFormula(rule, context);
            var value = formula is null ? rule.Optional("value") : ofFirstSheet;
            var because = rule.Text("because");
            if (value is null || because.Length == 0)
            {
                continue;
            }

            if (rule.DimensionOf("value", formula) is { } dimension && dimension != known.Dimension)
            {
                context.Problem(
                    (DocScalar)rule.Node("value")!,
                    rule.Path + ".value",
                    QuantityText.WrongDimension(((DocScalar)rule.Node("value")!).Text, dimension, known.Dimension)
                );
                continue;
            }

            overrides.Add(new RuleOverride(name, value, because) { Formula = formula });
            context.Notes.Add(
                FileRules.Overridden.At(
                    rule.Path,
                    $"{name} is overridden by {QuantityError.Shown(((DocScalar)rule.Node("value")!).Text)}: {QuantityError.Shown(because)}"
                )
            );
        }

        return overrides;
    }

    private static void Unknown(TableReader rules, string name, LoadContext context)
    {
        var names = RuleNames.All.Select(r => r.Name).ToList();
        var accepted = Nearest.Of(name, names) ?? string.Join(", ", names);
        context.Problem(
            rules.Written!,
            rules.Written!.Find(name)!.KeyStart,
            DocPath.Join("rules", name),
            QuantityError.Shown(name),
            accepted,
            $"rules: there is no rule '{QuantityError.Shown(name)}' to override. Accepted: {accepted}."
        );
    }

    /// <summary>An expression over <c>thickness</c> and <c>radius</c>, with its value for the first sheet, or for one of 1 mm.</summary>
    private static (Formula? Formula, Value? OfFirstSheet) SheetFormula(TableReader rule, LoadContext context)
    {
        if (
            rule.Node("value") is not DocScalar scalar
            || !ExpressionText.IsExpression(scalar.Text)
            || !ExpressionText.TryParse(scalar.Text, out var read, out _)
        )
        {
            return (null, null);
        }

        if (Formula.Of(read!, context.Values.Lookup) is not { } formula)
        {
            return (null, null);
        }

        var sheet = context.Ids.Names("sheet").FirstOrDefault() ?? "";
        var thickness = context.Values.Lookup($"sheet.{sheet}.thickness").Value?.Nominal.Si ?? 0.001;
        var radius = context.Values.Lookup($"sheet.{sheet}.radius").Value?.Nominal.Si ?? thickness;
        var at = rule.Path + ".value";
        if (formula.TryEvaluate(thickness, radius, out var value, out var error))
        {
            return (formula, new Value(value!.Nominal.Si, value.HalfWidth, Origin.Computed, at));
        }

        context.Problem(scalar, at, error!);
        return (formula, null);
    }

    private static ReadingsSource? Readings(TableReader r)
    {
        if (!r.IsThere)
        {
            return null;
        }

        var meter = r.Table("meter");
        return new ReadingsSource(r.Text("file"), meter.Text("kind"), meter.WithDefault("factor"));
    }
}
