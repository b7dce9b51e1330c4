using Lampwright.Design;
using Lampwright.Evaluation.Answers;
using Lampwright.Evaluation.Assembling;
using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Metalwork;
using Lampwright.FitUp;
using Lampwright.Geometry;
using Lampwright.Heat.Network;

namespace Lampwright.Evaluation.Sections;

/// <summary>Cuts the placed light open through its emitter, once along the fins and once across them.</summary>
/// <remarks>
/// Sheet is cut to its sharp corners, with its holes; bends are left out. What the plane misses but the network knows is cut through its own middle by a plane
/// beside it, as drawings of machines do it, and marked so. Up is against gravity where that lies in the plane.
/// </remarks>
internal sealed class LightSections
{
    private static readonly double EmitterM = 0.0015;
    private static readonly double FaceM = 0.0005;

    private readonly LightDesign _design;
    private readonly LightParts _parts;
    private readonly IReadOnlyList<MadePart> _made;
    private readonly FitUpResult _fitUp;
    private readonly IReadOnlyList<Thing> _things;
    private readonly SheetPanels _sheet;
    private readonly HashSet<string> _nodes;
    private readonly Dictionary<string, Frame> _places;
    private readonly HashSet<string> _housings;

    public LightSections(
        LightDesign design,
        LightParts parts,
        IReadOnlyList<MadePart> made,
        FitUpResult fitUp,
        IReadOnlyList<Thing> things,
        SheetPanels sheet,
        IEnumerable<string> nodes
    )
    {
        (_design, _parts, _made, _fitUp, _things, _sheet) = (design, parts, made, fitUp, things, sheet);
        _nodes = new(nodes, StringComparer.Ordinal);
        _housings = new(
            sheet.Panels.Where(p => p.Zone is PanelZone.Channel or PanelZone.Compartment).Select(p => Owner(p.Name)),
            StringComparer.Ordinal
        );
        _places = _fitUp.Placed.ToDictionary(p => p.Id, p => p.Frame, StringComparer.Ordinal);
    }

    /// <summary>Both cuts, the one that meets most first; empty where the sizes of the sink are not given.</summary>
    public IReadOnlyList<SectionCut> Cuts()
    {
        if (_parts.Sink is not { } sink || SinkSolids.Base(sink) is not { } plate)
        {
            return [];
        }

        var isPlaced = _places.TryGetValue("sink." + sink.Name, out var frame);
        if (!isPlaced)
        {
            _places.Clear();
            frame = Frame.World;
        }

        var seat = sink.Emitters.FirstOrDefault(e => _parts.EmitterPath == "emitter." + e.Emitter)?.At;
        var at = new Vec3(seat?.X?.Nominal ?? (plate.Size.X / 2), seat?.Y?.Nominal ?? (plate.Size.Y / 2), 0);
        return
        [
            .. new[] { ("along the fins", frame.X), ("across the fins", frame.Y) }
                .Select(c => Cut(c.Item1, sink, frame, at, Plane(frame, at, c.Item2, isPlaced)))
                .OrderByDescending(c => c.Pieces.Count(p => p is { IsBeside: false, Node: not null }))
                .ThenBy(c => c.Name, StringComparer.Ordinal),
        ];
    }

    private Frame Plane(Frame sink, Vec3 at, Vec3 normal, bool isPlaced)
    {
        var up = isPlaced ? -Orientation.Gravity(_design) : sink.Z;
        var inPlane = up - (normal * up.Dot(normal));
        var y = inPlane.Length > 0.5 ? inPlane.Unit : sink.Z;
        return new(sink.Out(at), y.Cross(normal).Unit, y, normal);
    }

    private SectionCut Cut(string name, Sink sink, Frame frame, Vec3 at, Frame plane)
    {
        List<SectionPiece> sheets = [.. _made.SelectMany(m => Sheets(m, plane))];
        List<SectionPiece> bodies = [.. Bought(plane)];
        bodies.AddRange(OfSink(sink, frame, plane));
        bodies.AddRange(OfEmitters(frame, at, plane));
        List<SectionPiece> air = [.. AirIn(sheets)];
        List<SectionPiece> way = [.. LightWay(sheets)];

        // From the back to the front: beside the cut before what is cut, air before what stands in it.
        List<SectionPiece> all =
        [
            .. air.Where(p => p.IsBeside),
            .. sheets.Where(p => p.IsBeside),
            .. bodies.Where(p => p.IsBeside),
        ];
        all.AddRange([
            .. air.Where(p => !p.IsBeside),
            .. way,
            .. sheets.Where(p => !p.IsBeside),
            .. bodies.Where(p => !p.IsBeside),
        ]);
        var beam = -frame.Z;
        return new(
            name,
            [.. all.Select(p => p with { Outlines = [.. p.Outlines.Select(Mm)] })],
            new(0, 0),
            new(beam.Dot(plane.X), beam.Dot(plane.Y)),
            [
                .. _things
                    .Select(t => t.Body.Id)
                    .Where(id =>
                        !_places.ContainsKey(id)
                        && id != "sink." + sink.Name
                        && !id.StartsWith("emitter.", StringComparison.Ordinal)
                    ),
            ]
        );
    }

    private IEnumerable<SectionPiece> Sheets(MadePart made, Frame plane)
    {
        if (!_places.TryGetValue(made.Path, out var place))
        {
            yield break;
        }

        var own = place.Then(made.Place);
        var isReflector = made.Path == "part." + _parts.Reflector?.Part;
        var folded = made.Folded;
        IEnumerable<SectionPiece> Cut(Frame by, bool isBeside) =>
            folded
                .Faces.Select(f => new SectionPiece(
                    $"{made.Name}.{f.Face}",
                    isReflector ? Known("reflector") : Panel(made, f.Face),
                    SectionKind.Sheet,
                    isBeside,
                    PlaneCut.Plate(
                        by,
                        own.Then(f.Frame),
                        f.Nominal,
                        folded.Holes.Where(h => h.Face == f.Face).Select(h => h.Outline),
                        folded.ThicknessM
                    )
                ))
                .Where(p => p is { Node: not null, Outlines.Count: > 0 });

        var (least, most) = (folded.BoxLeast, folded.BoxMost);
        var ends = new[] { least, most };
        var depths = (
            from x in ends
            from y in ends
            from z in ends
            select plane.In(own.Out(new(x.X, y.Y, z.Z))).Z
        ).ToList();
        if (depths.Min() < 0 && depths.Max() > 0)
        {
            foreach (var piece in Cut(plane, false))
            {
                yield return piece;
            }

            yield break;
        }

        // Beside the cut only what houses sink and driver is worth a look; all else would lie before or behind something.
        if (!_housings.Contains(made.Name))
        {
            yield break;
        }

        foreach (var piece in Cut(Shifted(plane, (depths.Min() + depths.Max()) / 2), true))
        {
            yield return piece;
        }
    }

    /// <summary>The node of a face or flange: its own, else that of what it is bent from, where narrow flanges are counted.</summary>
    private string? Panel(MadePart made, string face)
    {
        for (var (at, turns) = ((string?)face, 0); at is not null && turns < 64; turns++)
        {
            if (Known($"{made.Name}.{at}") is { } node)
            {
                return node;
            }

            at = made.Folded.Bends.FirstOrDefault(b => b.Flange == at)?.Parent;
        }

        return null;
    }

    private IEnumerable<SectionPiece> Bought(Frame plane)
    {
        foreach (var thing in _things.Where(t => t.BoxM is not null && _places.ContainsKey(t.Body.Id)))
        {
            var id = thing.Body.Id;
            var kind = id[..id.IndexOf('.', StringComparison.Ordinal)];
            if (kind is "sink" or "emitter")
            {
                continue;
            }

            var node =
                id == _parts.DriverPath ? Known("driver") ?? Known("compartment air")
                : kind == "diffuser" && id == "diffuser." + _parts.Diffuser?.Name ? Known("diffuser")
                : Known(id);
            var (place, box) = (_places[id], thing.BoxM!.Value);
            var met = PlaneCut.Box(plane, place, box);
            var isBeside = met.Count == 0;
            if (isBeside)
            {
                met = PlaneCut.Box(Shifted(plane, plane.In(place.Out(box / 2)).Z), place, box);
            }

            if (met.Count > 0 && (node is not null || (kind == "fan" && !isBeside)))
            {
                yield return new(id, node, SectionKind.Body, isBeside, [met]);
            }
        }
    }

    private IEnumerable<SectionPiece> OfSink(Sink sink, Frame frame, Frame plane)
    {
        var plate = SinkSolids.Base(sink)!.Value;
        var standing = SinkSolids.Standing(sink);
        if (standing.Count > 0)
        {
            // Between two fins the plane meets none: those nearest to it are seen there.
            double Off((Vec3 At, Vec3 Size) s) => Math.Abs(plane.In(frame.Out(s.At + (s.Size / 2))).Z);
            var shapes = standing.Select(s => PlaneCut.Box(plane, frame.Moved(frame.Direction(s.At)), s.Size)).ToList();
            if (shapes.All(s => s.Count == 0))
            {
                var nearest = standing.Min(Off);
                shapes =
                [
                    .. standing
                        .Where(s => Off(s) < nearest + 1e-6)
                        .Select(s =>
                            PlaneCut.Box(
                                Shifted(plane, plane.In(frame.Out(s.At + (s.Size / 2))).Z),
                                frame.Moved(frame.Direction(s.At)),
                                s.Size
                            )
                        ),
                ];
            }

            yield return new(
                "fins",
                Known("fins") ?? Known("base"),
                SectionKind.Body,
                false,
                [.. shapes.Where(s => s.Count > 0)]
            );
        }

        yield return new("base", Known("base"), SectionKind.Body, false, [PlaneCut.Box(plane, frame, plate.Size)]);
    }

    private IEnumerable<SectionPiece> OfEmitters(Frame frame, Vec3 at, Frame plane)
    {
        if (_design.Emitters.FirstOrDefault(e => "emitter." + e.Name == _parts.EmitterPath) is not { Body: { } body })
        {
            yield break;
        }

        IReadOnlyList<Vec2> Slab(double width, double height, double from, double thick) =>
            PlaneCut.Box(
                plane,
                frame.Moved(frame.Direction(new(at.X - (width / 2), at.Y - (height / 2), from))),
                new(width, height, thick)
            );
        var (w, h) = (body.Width.Nominal, body.Height.Nominal);
        yield return new(
            "case",
            Known("case"),
            SectionKind.Body,
            false,
            [Slab(w, h, -EmitterM + FaceM, EmitterM - FaceM)]
        );
        yield return new(
            "junction",
            Known("junction"),
            SectionKind.Body,
            false,
            [Slab(0.75 * w, 0.75 * h, -EmitterM, FaceM)]
        );
    }

    private IEnumerable<SectionPiece> AirIn(IReadOnlyList<SectionPiece> sheets)
    {
        foreach (
            var (zone, node) in new[]
            {
                (PanelZone.Channel, "channel air"),
                (PanelZone.Compartment, "compartment air"),
                (PanelZone.Front, "front air"),
            }
        )
        {
            var owners = _sheet
                .Panels.Where(p => p.Zone == zone)
                .Select(p => Owner(p.Name))
                .ToHashSet(StringComparer.Ordinal);
            var walls = sheets.Where(s => owners.Contains(Owner(s.Id))).ToList();
            var cut = walls.Where(w => !w.IsBeside).ToList();
            var hull = PlaneCut.Hull((cut.Count > 0 ? cut : walls).SelectMany(w => w.Outlines).SelectMany(o => o));
            if (Known(node) is { } known && hull.Count > 0)
            {
                yield return new(node, known, SectionKind.Air, cut.Count == 0, [hull]);
            }
        }
    }

    private static IEnumerable<SectionPiece> LightWay(IReadOnlyList<SectionPiece> sheets)
    {
        var hull = PlaneCut.Hull(
            sheets
                .Where(s => s is { Node: "reflector", IsBeside: false })
                .SelectMany(s => s.Outlines)
                .SelectMany(o => o)
        );
        return hull.Count > 0 ? [new("light", null, SectionKind.LightWay, false, [hull])] : [];
    }

    private string? Known(string node) => _nodes.Contains(node) ? node : null;

    private static string Owner(string id) => id[..Math.Max(0, id.IndexOf('.', StringComparison.Ordinal))];

    private static Frame Shifted(Frame plane, double by) => plane.Moved(plane.Z * by);

    private static IReadOnlyList<Vec2> Mm(IReadOnlyList<Vec2> outline) => [.. outline.Select(p => p * 1000)];
}
