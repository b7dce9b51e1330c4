using Lampwright.Design;
using Lampwright.Geometry;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Maps;

/// <summary>What a hole or pattern of the design comes down to: a shape, its places, and what it is for.</summary>
/// <param name="Shape">What is cut, in the pattern's own frame.</param>
/// <param name="Places">Centres from the pattern's centre, m; null when the layout is a field that only Metal expands.</param>
/// <param name="Layout">How many and where, for Metal; null for a single hole.</param>
/// <param name="Purpose">What it is for, in words for the drill list.</param>
/// <param name="Tapped">True when a thread is cut.</param>
internal sealed record ResolvedHoles(
    Metal.HoleShape Shape,
    IReadOnlyList<Vec2>? Places,
    HoleLayout? Layout,
    string Purpose,
    bool Tapped
);

/// <summary>
/// Says each hole once: a pattern belongs to the bought thing, and the part that receives it takes shape and places from there.
/// </summary>
internal sealed class HolePatterns
{
    private readonly Dictionary<string, Design.HolePattern> _patterns = new(StringComparer.Ordinal);

    private static readonly int MostScrews = 8;

    private readonly Dictionary<string, StandardCutOut> _standards = new(StringComparer.Ordinal);

    public HolePatterns(LightDesign design)
    {
        void Take(string owner, IEnumerable<Design.HolePattern> holes)
        {
            foreach (var h in holes)
            {
                _patterns.TryAdd(owner + "." + h.Id, h);
            }
        }

        design.Emitters.ToList().ForEach(e => Take("emitter." + e.Name, e.Holes));
        design.Drivers.ToList().ForEach(d => Take("driver." + d.Name, d.Holes));
        design.Sinks.ToList().ForEach(s => Take("sink." + s.Name, s.Holes));
        design.Fans.ToList().ForEach(f => Take("fan." + f.Name, f.Holes));
        design.Diffusers.ToList().ForEach(d => Take("diffuser." + d.Name, d.Holes));
        foreach (var item in design.Items)
        {
            Take("item." + item.Name, CutOuts.Of(item));
            Take(item.Name, CutOuts.Of(item));
            if (StandardCutOut.Named(item.Cutout) is { } standard && item.Holes.All(h => h.Id != "cutout"))
            {
                _standards[$"item.{item.Name}.cutout"] = _standards[$"{item.Name}.cutout"] = standard;
            }
        }
    }

    /// <summary>The pattern of a bought thing, by its id; null when there is none.</summary>
    public Design.HolePattern? Find(string id) => _patterns.GetValueOrDefault(id);

    /// <summary>The standard cut-out that a hole is, by its own word or that of the item it receives; null for others.</summary>
    public StandardCutOut? Standard(Design.Hole hole) =>
        StandardCutOut.Named(hole.CutOut) ?? (hole.Shape is null ? _standards.GetValueOrDefault(hole.For) : null);

    /// <summary>
    /// Whether a screw or a bought thing fills a hole. A fan's opening lets a finger pass until it has a guard, and words alone fill nothing; a
    /// few holes of a fan are those of its screws.
    /// </summary>
    public bool Fills(Design.Hole hole)
    {
        if (Thread(hole.For) is not null)
        {
            return true;
        }

        if (_patterns.TryGetValue(hole.For, out var pattern))
        {
            return Thread(pattern.For) is not null
                || !(IsFan(hole.For) || IsFan(Standard(hole)?.Name))
                || IsOfScrews(hole.Layout ?? pattern.Layout);
        }

        return hole.For.EndsWith(CutOuts.ScrewsOf, StringComparison.Ordinal)
            ? StandardCutOut.Named(hole.For[..^CutOuts.ScrewsOf.Length]) is not null
            : StandardCutOut.Named(hole.CutOut) is { } standard && !IsFan(standard.Name);
    }

    private static bool IsFan(string? name) =>
        name is not null
        && (
            name.StartsWith("fan.", StringComparison.Ordinal)
            || name.StartsWith("fan ", StringComparison.OrdinalIgnoreCase)
        );

    private static bool IsOfScrews(HoleLayout? layout) =>
        layout is not (null or FieldLayout) && Places(layout)?.Count > 1 && Places(layout)?.Count <= MostScrews;

    /// <summary>Ids of all patterns of bought things.</summary>
    public IEnumerable<string> Ids => _patterns.Keys;

    /// <summary>Resolves a hole of a folded part; null when nothing says what is cut.</summary>
    public ResolvedHoles? Of(Design.Hole hole)
    {
        if (_patterns.TryGetValue(hole.For, out var pattern))
        {
            var of = Of(pattern);
            return of is null
                ? null
                : of with
                {
                    Shape = hole.Shape is { } own ? Shape(own) : Receiving(of),
                    Layout = hole.Layout ?? pattern.Layout,
                    Places = Places(hole.Layout ?? pattern.Layout),
                    Purpose = hole.For,
                    Tapped = false,
                };
        }

        return Resolve(hole.Shape, hole.For, hole.Layout);
    }

    /// <summary>Resolves a pattern of a bought thing; null when nothing says what the holes are.</summary>
    public static ResolvedHoles? Of(Design.HolePattern pattern) => Resolve(pattern.Shape, pattern.For, pattern.Layout);

    /// <summary>The thread that a purpose such as <c>M4 clearance</c> or <c>M4 tap</c> names; null when it names none.</summary>
    public static (MetricThread Thread, bool Tapped)? Thread(string purpose)
    {
        var words = purpose.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 2 && words[1] is "clearance" or "tap" && MetricThread.Named(words[0]) is { } thread
            ? (thread, words[1] == "tap")
            : null;
    }

    // A thread in the bought thing wants a clearance hole in the sheet that the screw passes first.
    private static Metal.HoleShape Receiving(ResolvedHoles of) =>
        of.Tapped && Thread(of.Purpose) is { } t ? Metal.HoleShape.Round(t.Thread.ClearMediumM) : of.Shape;

    private static ResolvedHoles? Resolve(Design.HoleShape? shape, string purpose, HoleLayout? layout)
    {
        var thread = Thread(purpose);
        Metal.HoleShape? cut =
            shape is not null ? Shape(shape)
            : thread is { } t ? Metal.HoleShape.Round(t.Tapped ? t.Thread.TapDrillM : t.Thread.ClearMediumM)
            : null;
        return cut is null ? null : new(cut, Places(layout), layout, purpose, thread?.Tapped ?? false);
    }

    private static Metal.HoleShape Shape(Design.HoleShape s) =>
        s.Kind switch
        {
            HoleKind.Round => Metal.HoleShape.Round(s.Width.Nominal),
            HoleKind.Slot => Metal.HoleShape.Slot(s.Width.Nominal, s.Height.Nominal),
            HoleKind.Outline => Metal.HoleShape.Of(
                new([.. s.Outline.Select(c => new Corner(new(c.X?.Nominal ?? 0, c.Y?.Nominal ?? 0)))]),
                s.Corner?.Nominal ?? 0
            ),
            _ => Metal.HoleShape.Rectangle(s.Width.Nominal, s.Height.Nominal, s.Corner?.Nominal ?? 0),
        };

    private static IReadOnlyList<Vec2>? Places(HoleLayout? layout)
    {
        switch (layout)
        {
            case null:
                return [default];
            case GridLayout g when (long)g.CountX * g.CountY <= MetalMap.MostPlaces:
                return
                [
                    .. Enumerable
                        .Range(0, g.CountX * g.CountY)
                        .Select(i => new Vec2(
                            ((i % g.CountX) - ((g.CountX - 1) / 2.0)) * g.PitchX.Nominal,
                            ((i / g.CountX) - ((g.CountY - 1) / 2.0)) * g.PitchY.Nominal
                        )),
                ];
            case RingLayout r when r.Count <= MetalMap.MostPlaces:
                return
                [
                    .. Enumerable
                        .Range(0, r.Count)
                        .Select(i => new Vec2(r.Diameter.Nominal / 2, 0).Turned(i * Math.Tau / r.Count)),
                ];
            case PointsLayout p:
                return [.. p.Points.Select(s => new Vec2(s.X?.Nominal ?? 0, s.Y?.Nominal ?? 0))];
            default:
                return null;
        }
    }
}
