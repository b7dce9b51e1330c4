using Lampwright.Design;
using Lampwright.Evaluation.Assembling;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Metalwork;
using Lampwright.FitUp;
using Lampwright.Geometry;
using Lampwright.Heat;
using Lampwright.Heat.Network;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Boxes;

/// <summary>Reads panels, joints and zones off the design.</summary>
/// <remarks>
/// The channel is what the fan's air passes, the compartment what the driver is screwed into, the front what reflector or diffuser are
/// joined to; covers of the same size belong to what they cover. Other parts count as in room air where they are joined to one of these.
/// </remarks>
internal sealed partial class SheetPanelsMap
{
    // Sheet of a cover and of what it covers differ by sheet and play.
    private static readonly double CoverM = 0.012;

    // One screw presses about a square centimetre together; painted, clamped sheet passes some 5000 W/(m²·K): common practice, no source.
    private static readonly double ScrewWPerK = 0.5;

    // A flange narrower than this share of its face, and lower than this, is as warm as the face (common practice, no source).
    private static readonly double NarrowShare = 0.25;
    private static readonly double NarrowM = 0.025;

    // Of a perforated face at least this much is metal that gives heat.
    private static readonly double LeastMetal = 0.1;

    // Faces within 45° of level count as level.
    private static readonly double LevelCosine = 0.7;

    // Screws of a joint that names none.
    private static readonly int UsualScrews = 4;

    private readonly LightDesign _design;
    private readonly LightParts _parts;
    private readonly IReadOnlyList<MadePart> _made;
    private readonly FitUpResult _fitUp;
    private readonly Vec3 _down;
    private readonly Dictionary<string, PanelZone> _zones = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);
    private readonly List<NetworkPanel> _panels = [];
    private readonly List<PanelBridge> _bridges = [];
    private readonly List<SinkSeat> _seats = [];
    private readonly HashSet<int> _covered = [];

    private SheetPanelsMap(LightDesign design, LightParts parts, IReadOnlyList<MadePart> made, FitUpResult fitUp)
    {
        (_design, _parts, _made, _fitUp) = (design, parts, made, fitUp);
        _down = Orientation.Gravity(design);
    }

    /// <summary>The panels of a design; none where nothing is folded.</summary>
    public static SheetPanels Of(LightDesign design, LightParts parts, IReadOnlyList<MadePart> made, FitUpResult fitUp)
    {
        var map = new SheetPanelsMap(design, parts, made, fitUp);
        map.Zones();
        foreach (var part in map._made.Where(m => map._zones.ContainsKey(m.Name)))
        {
            map.Add(part);
        }

        map.Joints();
        map.Seat();
        var free = !map._zones.ContainsValue(PanelZone.Front);
        return new(map._panels, map._bridges, map._seats, map._covered, free);
    }

    private void Zones()
    {
        var reflector = _parts.Reflector?.Part ?? "";
        void Take(IEnumerable<string> names, PanelZone zone)
        {
            foreach (var name in names.Where(n => n != reflector && _made.Any(m => m.Name == n)))
            {
                _zones.TryAdd(name, zone);
                foreach (var cover in Covers(name))
                {
                    _zones.TryAdd(cover, zone);
                }
            }
        }

        Take(
            (_parts.Fan?.Air ?? []).Where(id => !id.StartsWith("sink.", StringComparison.Ordinal)).Select(Owner),
            PanelZone.Channel
        );
        var driver = _parts.DriverPath + ".";
        Take(
            _design
                .Parts.Where(p => p.Holes.Any(h => h.For.StartsWith(driver, StringComparison.Ordinal)))
                .Select(p => p.Name),
            PanelZone.Compartment
        );
        var front = _design.Joints.Where(j =>
            j.Stack.Any(id =>
                (reflector.Length > 0 && Owner(id) == reflector) || id.StartsWith("diffuser.", StringComparison.Ordinal)
            )
        );
        Take(front.SelectMany(j => j.Stack).Select(Owner), PanelZone.Front);
        Take(
            _design
                .Joints.Where(j => j.Stack.Select(Owner).Any(_zones.ContainsKey))
                .SelectMany(j => j.Stack)
                .Select(Owner)
                .ToList(),
            PanelZone.None
        );
    }

    private IEnumerable<string> Covers(string name)
    {
        if (FaceOf(name) is not { } face)
        {
            yield break;
        }

        foreach (
            var other in _design
                .Joints.Where(j => j.Stack.Select(Owner).Contains(name))
                .SelectMany(j => j.Stack)
                .Select(Owner)
                .Distinct()
        )
        {
            if (
                other != name
                && FaceOf(other) is { } cover
                && Math.Abs(Math.Max(face.X, face.Y) - Math.Max(cover.X, cover.Y)) < CoverM
                && Math.Abs(Math.Min(face.X, face.Y) - Math.Min(cover.X, cover.Y)) < CoverM
            )
            {
                yield return other;
            }
        }
    }

    private Vec2? FaceOf(string name)
    {
        if (_made.FirstOrDefault(m => m.Name == name) is not { } part)
        {
            return null;
        }

        var (least, most) = part.Folded.Faces[0].Nominal.Box;
        return most - least;
    }

    private void Add(MadePart part)
    {
        var zone = _zones[part.Name];
        var sheet = part.Folded.ThicknessM;
        var material = HeatMaterial.OfGrade(part.Sheet.Material);
        var frame = _fitUp.Placed.FirstOrDefault(p => p.Id == part.Path)?.Frame;
        var design = _design.Parts.FirstOrDefault(p => p.Name == part.Name);
        var face = part.Folded.Faces[0];
        var (low, high) = face.Nominal.Box;
        var narrow = NarrowShare * Math.Min(high.X - low.X, high.Y - low.Y);
        foreach (var f in part.Folded.Faces)
        {
            var (least, most) = f.Nominal.Box;
            var size = most - least;
            var cut = part.Folded.Holes.Where(h => h.Face == f.Face).Sum(h => h.Outline.Area);
            var area = Math.Max(LeastMetal * f.Nominal.Area, f.Nominal.Area - cut);
            if (f.Face != "face" && Math.Min(size.X, size.Y) < narrow && size.Y < NarrowM)
            {
                Widen(_index[part.Name + ".face"], area, sheet, material);
                _index[part.Name + "." + f.Face] = _index[part.Name + ".face"];
                continue;
            }

            var (facing, length) = Stands(frame, f.Frame, size);
            _index[part.Name + "." + f.Face] = _panels.Count;
            _panels.Add(
                new(
                    part.Name + "." + f.Face,
                    new Heat.Panel(area, length, facing, Math.Clamp(part.Sheet.Emissivity.Nominal, 0.01, 1)),
                    area,
                    area * sheet * material.DensityKgPerM3 * material.SpecificHeatJPerKgK,
                    zone
                )
            );
            if (f.Face != "face" && _index.TryGetValue(part.Name + "." + Parent(design, f.Face), out var parent))
            {
                var (pl, pm) = part.Folded.Faces.First(p => p.Face == Parent(design, f.Face)).Nominal.Box;

                // From the middle of one to the middle of the other, over the length of the bend.
                var way = (size.Y / 2) + (size.X > 0 ? (pm - pl).X * (pm - pl).Y / Math.Max(size.X, 1e-3) / 2 : 0);
                _bridges.Add(
                    new(
                        parent,
                        _panels.Count - 1,
                        material.ConductivityWPerMK * sheet * size.X / Math.Max(way, 1e-3),
                        false
                    )
                );
            }
        }
    }

    private void Widen(int panel, double area, double sheet, HeatMaterial material)
    {
        var p = _panels[panel];
        _panels[panel] = p with
        {
            Outside = p.Outside with { AreaM2 = p.Outside.AreaM2 + area },
            CapacityJPerK = p.CapacityJPerK + (area * sheet * material.DensityKgPerM3 * material.SpecificHeatJPerKgK),
        };
    }

    private string Parent(Part? design, string flange)
    {
        var source = design is { Mirror: { } original }
            ? _design.Parts.FirstOrDefault(p => p.Name == original)
            : design;
        return source?.Flanges.FirstOrDefault(f => f.Id == flange)?.On.Split('.')[0] ?? "face";
    }

    private (PanelFacing Facing, double LengthM) Stands(Frame? part, Frame face, Vec2 size)
    {
        var flat = Math.Max(0.005, size.X * size.Y / (2 * (size.X + size.Y)));
        if (part is not { } frame)
        {
            return (PanelFacing.Side, Math.Max(0.005, Math.Min(size.X, size.Y)));
        }

        var up = -frame.Direction(face.Z).Dot(_down);
        if (Math.Abs(up) > LevelCosine)
        {
            return (up > 0 ? PanelFacing.Up : PanelFacing.Down, flat);
        }

        var along = Math.Abs(frame.Direction(face.X).Dot(_down)) > Math.Abs(frame.Direction(face.Y).Dot(_down));
        return (PanelFacing.Side, Math.Max(0.005, along ? size.X : size.Y));
    }

    private void Joints()
    {
        foreach (var joint in _design.Joints)
        {
            for (var i = 1; i < joint.Stack.Count; i++)
            {
                var (a, b) = (PanelOf(joint.Stack[i - 1]), PanelOf(joint.Stack[i]));
                if (
                    a is not { } first
                    || b is not { } second
                    || first == second
                    || joint.Stack[i].StartsWith("sink.", StringComparison.Ordinal)
                )
                {
                    continue;
                }

                var screws = joint.Screw is null ? UsualScrews : Math.Max(1, Count(joint.Stack[i - 1]));
                _bridges.Add(new(first, second, screws * ScrewWPerK, true));
                Cover(joint, i, first, second);
            }
        }
    }

    // Where two faces lie on each other neither gives heat to the room.
    private void Cover(Joint joint, int i, int a, int b)
    {
        if (
            joint.Sides.Count <= i
            || !_panels[a].Name.EndsWith(".face", StringComparison.Ordinal)
            || !_panels[b].Name.EndsWith(".face", StringComparison.Ordinal)
        )
        {
            return;
        }

        var (small, large) = _panels[a].InsideM2 < _panels[b].InsideM2 ? (a, b) : (b, a);
        var (smallSide, largeSide) =
            small == a ? (joint.Sides[i - 1], joint.Sides[i]) : (joint.Sides[i], joint.Sides[i - 1]);
        var area = _panels[small].InsideM2;
        if (smallSide == "outside")
        {
            _panels[small] = _panels[small] with { Outside = _panels[small].Outside with { AreaM2 = 0 } };
            _ = _covered.Add(small);
        }

        if (largeSide == "outside")
        {
            var left = Math.Max(0, _panels[large].Outside.AreaM2 - area);
            _panels[large] = _panels[large] with { Outside = _panels[large].Outside with { AreaM2 = left } };
        }
    }

    private int? PanelOf(string id)
    {
        var name = Owner(id);
        if (_design.Parts.FirstOrDefault(p => p.Name == name) is not { } part)
        {
            return null;
        }

        var hole = id[(name.Length + 1)..].Split('.', '[')[0];
        var source = part.Mirror is { } original ? _design.Parts.FirstOrDefault(p => p.Name == original) : part;
        var on = source?.Holes.FirstOrDefault(h => h.Id == hole)?.On ?? "face";
        return _index.TryGetValue(name + "." + on, out var panel) ? panel : null;
    }

    private int Count(string id)
    {
        var name = Owner(id);
        var hole = id.Length > name.Length ? id[(name.Length + 1)..].Split('.', '[')[0] : "";
        return _made.FirstOrDefault(m => m.Name == name)?.Folded.Holes.Count(h => h.Hole == hole) ?? 1;
    }

    private static string Owner(string id) => id.Split('.')[0];
}
