using Lampwright.Design;
using Lampwright.Evaluation.Maps;
using Lampwright.Evaluation.Metalwork;
using Lampwright.FitUp;
using Lampwright.Geometry;
using Lampwright.Quantities;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Assembling;

/// <summary>Gathers everything a light is put together from.</summary>
internal static class Things
{
    // Acrylic sheet, of which most diffusers are (memory: 1.19 g/cm³).
    private static readonly double AcrylicKgPerM3 = 1190;
    private static readonly double BoughtWallM = 0.002;
    private static readonly double EmitterThicknessM = 0.0015;

    // More holes than this are no fastening but a field that air or light passes.
    private static readonly int MostHoles = 64;

    /// <summary>All things in the order of the file: parts, then sinks, emitters, fans, drivers, diffusers, items.</summary>
    public static List<Thing> Of(LightDesign design, IReadOnlyList<MadePart> made)
    {
        var things = new List<Thing>();
        foreach (var part in design.Parts)
        {
            var own = Enumerable.Range(0, made.Count).Where(i => made[i].Path == "part." + part.Name).ToList();
            if (own.Count > 0)
            {
                things.Add(Part(part, made, own));
            }
        }

        foreach (var s in design.Sinks)
        {
            things.Add(Sink(design, s));
        }

        foreach (var e in design.Emitters.Where(e => e.Body is not null))
        {
            var box = new Vec3(e.Body!.Width.Nominal, e.Body.Height.Nominal, EmitterThicknessM);
            var back = new PatternSpec(
                $"emitter.{e.Name}.back",
                [new PatternHole($"emitter.{e.Name}.back", new(box.X / 2, box.Y / 2, 0))],
                new(0, 0, -1),
                new(1, 0, 0),
                0.001,
                EmitterThicknessM
            )
            {
                NearSide = "back",
                FarSide = "front",
                IsMadeByHand = false,
            };
            things.Add(Bought("emitter." + e.Name, box, e.Mass, e.Holes, 1, EmitterThicknessM, [back]));
        }

        foreach (var f in design.Fans.Where(f => f.Box is not null))
        {
            things.Add(Bought("fan." + f.Name, Size(f.Box!), f.Mass, f.Holes, 1, f.Box!.Depth.Nominal));
        }

        foreach (var d in design.Drivers.Where(d => d.Box is not null))
        {
            things.Add(Bought("driver." + d.Name, Size(d.Box!), d.Mass, d.Holes, 1, BoughtWallM));
        }

        foreach (var d in design.Diffusers.Where(d => d.Size is not null))
        {
            var box = new Vec3(d.Size!.Width.Nominal, d.Size.Height.Nominal, d.Thickness?.Nominal ?? 0.003);
            var thing = Bought("diffuser." + d.Name, box, d.Mass, d.Holes, 1, box.Z);
            things.Add(d.Mass is null ? Computed(thing, box.X * box.Y * box.Z * AcrylicKgPerM3) : thing);
        }

        foreach (var i in design.Items.Where(i => i.Box is not null))
        {
            things.Add(Bought("item." + i.Name, Size(i.Box!), i.Mass, CutOuts.Of(i), 1, BoughtWallM));
        }

        return things;
    }

    private static Thing Part(Part part, IReadOnlyList<MadePart> made, List<int> own)
    {
        var id = "part." + part.Name;
        var mass = own.Sum(i => made[i].Folded.MassKg);
        var centre = own.Aggregate(
            default(Vec3),
            (sum, i) => sum + (made[i].Place.Out(made[i].Folded.CentreOfMass) * (made[i].Folded.MassKg / mass))
        );
        var patterns = part.Panels is { } panels
            ? Mouths(part.Name, panels.Depth.Nominal)
            : Patterns(part, made[own[0]]);
        return new(new BodySpec(id, mass, centre, patterns) { Path = id }, part.Count, null, null, own, null);
    }

    // A funnel is held by its openings: one place in the middle of each.
    private static List<PatternSpec> Mouths(string name, double depthM)
    {
        PatternSpec Mouth(string id, double z, double outward) =>
            new(
                $"{name}.{id}",
                [new PatternHole($"{name}.{id}", new(0, 0, z))],
                new(0, 0, outward),
                new(1, 0, 0),
                0.001,
                1e-4
            );
        return [Mouth("small", 0, -1), Mouth("large", depthM, 1)];
    }

    private static List<PatternSpec> Patterns(Part part, MadePart made)
    {
        var patterns = new List<PatternSpec>();
        foreach (var group in made.Folded.Holes.GroupBy(h => h.Hole))
        {
            var holes = group.Take(MostHoles + 1).ToList();
            if (holes.Count > MostHoles)
            {
                continue;
            }

            var face = made.Folded.Faces.First(f => f.Face == holes[0].Face);
            var tapped = HolePatterns.Thread(holes[0].Purpose) is { Tapped: true } t ? t.Thread : null;
            var (least, most) = holes[0].Outline.Box;
            patterns.Add(
                new(
                    $"{part.Name}.{group.Key}",
                    [.. holes.Select(h => new PatternHole(h.Id, h.Centre))],
                    face.Frame.Z,
                    face.Frame.X,
                    tapped?.DiameterM
                        ?? (holes[0].DiameterM > 0 ? holes[0].DiameterM : Math.Min(most.X - least.X, most.Y - least.Y)),
                    made.Folded.ThicknessM
                )
                {
                    IsTapped = tapped is not null,
                }
            );
        }

        return patterns;
    }

    private static Thing Sink(LightDesign design, Sink s)
    {
        var (across, along, thick) = (
            s.Across?.Nominal ?? 0.05,
            s.Along?.Nominal ?? 0.05,
            s.BaseThickness?.Nominal ?? 0.005
        );
        var (fin, finThick) = (s.FinHeight?.Nominal ?? 0, s.FinThickness?.Nominal ?? 0);
        if (s.Pins is { } pins)
        {
            fin = pins.Height.Nominal;
        }

        // The stack is taken to stand on the base; how far its pipes reach over it is not said.
        if (s.Stack is { } stack)
        {
            fin = (stack.Count * stack.Thickness.Nominal) + ((stack.Count - 1) * stack.Gap.Nominal);
        }

        var box = new Vec3(across, along, thick + fin);
        var places = s
            .Emitters.Where(e => design.Emitters.Any(d => d.Name == e.Emitter && d.Body is not null))
            .Select(e => new PatternSpec(
                Seat(s, e.Emitter),
                [
                    new PatternHole(
                        Seat(s, e.Emitter),
                        new(e.At.X?.Nominal ?? (across / 2), e.At.Y?.Nominal ?? (along / 2), 0)
                    ),
                ],
                new(0, 0, -1),
                new(1, 0, 0),
                0.001,
                thick
            )
            {
                NearSide = "back",
                FarSide = "front",
            });
        var thing = Bought("sink." + s.Name, box, s.Mass, s.Holes, 1, thick, [.. places], byHand: true);
        var density = SinkMaterial.Named(s.Material)?.DensityKgPerM3 ?? 2700;
        var standing =
            s.Stack is { } plates
                ? plates.Count * plates.Across.Nominal * plates.Along.Nominal * plates.Thickness.Nominal
            : s.Pins is { } p ? p.Across * p.Along * Math.PI * p.Diameter.Nominal * p.Diameter.Nominal / 4 * fin
            : s.FinCount * fin * finThick * along;
        var (plate, fins) = (across * along * thick, standing);
        var mass = density * (plate + fins);
        var centre =
            plate + fins > 0
                ? new Vec3(across / 2, along / 2, ((plate * thick / 2) + (fins * (thick + (fin / 2)))) / (plate + fins))
                : box / 2;
        return (s.Mass is null ? Computed(thing, mass) : thing) is var weighed
            ? weighed with
            {
                Body = weighed.Body with { CentreOfMass = centre },
            }
            : thing;
    }

    /// <summary>Id of the place on a sink that an emitter is seated on.</summary>
    public static string Seat(Sink sink, string emitter) => $"sink.{sink.Name}.seat_{emitter}";

    private static Thing Computed(Thing thing, double massKg) =>
        thing with
        {
            ComputedMassKg = massKg,
            Body = thing.Body with { MassKg = massKg },
        };

    private static Thing Bought(
        string id,
        Vec3 box,
        Value? mass,
        IReadOnlyList<Design.HolePattern> holes,
        int count,
        double throughM,
        IReadOnlyList<PatternSpec>? more = null,
        bool byHand = false
    ) =>
        new(
            new BodySpec(
                id,
                mass?.Nominal,
                box / 2,
                [.. holes.Select(h => Pattern(id, h, box, throughM, byHand)).OfType<PatternSpec>(), .. more ?? []]
            )
            {
                Path = id,
            },
            count,
            box,
            mass,
            [],
            null
        );

    private static PatternSpec? Pattern(string id, Design.HolePattern hole, Vec3 box, double throughM, bool byHand)
    {
        if (HolePatterns.Of(hole) is not { Places: { } places } of || places.Count > MostHoles)
        {
            return null;
        }

        var face = BoxFace.Named(hole.On);
        var middle = face.Middle(box);
        var centre = new Vec2(hole.At?.X?.Nominal ?? middle.X, hole.At?.Y?.Nominal ?? middle.Y);
        var thread = HolePatterns.Thread(of.Purpose);
        var (least, most) = of.Shape.Outline.Box;
        return new(
            $"{id}.{hole.Id}",
            [
                .. places.Select(
                    (p, i) =>
                        new PatternHole(
                            places.Count == 1 ? $"{id}.{hole.Id}" : $"{id}.{hole.Id}[{i + 1}]",
                            face.At(centre + p, box)
                        )
                ),
            ],
            face.Outward,
            face.Along,
            thread is { Tapped: true } t ? t.Thread.DiameterM : Math.Min(most.X - least.X, most.Y - least.Y),
            hole.Through?.Nominal ?? Math.Min(throughM, face.Depth(box))
        )
        {
            NearSide = face.Name,
            FarSide = face.Opposite,
            IsTapped = thread?.Tapped ?? false,
            IsMadeByHand = byHand,
        };
    }

    private static Vec3 Size(Box b) => new(b.Width.Nominal, b.Height.Nominal, b.Depth.Nominal);
}
