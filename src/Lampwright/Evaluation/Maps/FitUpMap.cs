using Lampwright.Design;
using Lampwright.Evaluation.Assembling;
using Lampwright.FitUp;

namespace Lampwright.Evaluation.Maps;

/// <summary>Tells the station fit-up what the design says of joints.</summary>
internal static class FitUpMap
{
    /// <summary>The station's spec.</summary>
    public static FitUpSpec Spec(LightDesign design, IReadOnlyList<Thing> things) =>
        new(
            Id(design.Assembly?.Fixed ?? "", things),
            [.. things.Select(t => t.Body)],
            [.. design.Joints.Select(j => Joint(j, things)), .. Seats(design)]
        );

    /// <summary>Full id of a pattern that the file names in full, without <c>item.</c>, or as <c>part.NAME.hole.ID</c>.</summary>
    public static string Pattern(string name, IReadOnlyList<Thing> things)
    {
        var words = name.Split('.');
        var whole = words is ["part", var part, "hole", var hole] ? $"{part}.{hole}" : name;
        bool Is(string id) => things.Any(t => t.Body.Patterns.Any(p => p.Id == id));
        return Is(whole) ? whole
            : Is("item." + whole) ? "item." + whole
            : whole;
    }

    /// <summary>Full id of a thing that the file names in full or by its last word.</summary>
    public static string Id(string name, IReadOnlyList<Thing> things) =>
        things.FirstOrDefault(t => t.Body.Id == name)?.Body.Id
        ?? things.FirstOrDefault(t => t.Body.Id.EndsWith("." + name, StringComparison.Ordinal))?.Body.Id
        ?? name;

    private static JointSpec Joint(Joint joint, IReadOnlyList<Thing> things) =>
        new(
            joint.Name,
            [.. joint.Stack.Select(p => Pattern(p, things))],
            joint.Sides,
            joint.Turn?.Nominal,
            joint.Screw is { } s ? new(s.Size, s.Length.Nominal, s.Nut, s.Washers) : null,
            joint.Marked switch
            {
                Marking.ByHand => HoleMarking.ByHand,
                Marking.CentrePunched => HoleMarking.CentrePunched,
                Marking.DrilledTogether => HoleMarking.DrilledTogether,
                _ => HoleMarking.ByTemplate,
            }
        );

    // An emitter lies where its sink says; nobody should have to write a joint for that as well.
    private static IEnumerable<JointSpec> Seats(LightDesign design) =>
        design.Sinks.SelectMany(s =>
            s.Emitters.Where(e => design.Emitters.Any(d => d.Name == e.Emitter && d.Body is not null))
                .Where(e =>
                    !design.Joints.Any(j =>
                        j.Stack.Any(p => p.StartsWith($"emitter.{e.Emitter}.", StringComparison.Ordinal))
                    )
                )
                .Select(e => new JointSpec(
                    $"seat of {e.Emitter}",
                    [Things.Seat(s, e.Emitter), $"emitter.{e.Emitter}.back"],
                    ["back", "back"],
                    null,
                    null,
                    HoleMarking.ByTemplate
                )
                {
                    Path = $"sink.{s.Name}.emitters",
                })
        );
}
