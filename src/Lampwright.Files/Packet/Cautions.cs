using Lampwright.Design;
using Lampwright.Evaluation;

namespace Lampwright.Files.Packet;

/// <summary>A caution for work that can hurt.</summary>
/// <param name="Id">Permanent id, one word.</param>
/// <param name="Title">What it is about, in a few words.</param>
/// <param name="Text">What to mind.</param>
/// <param name="Where">Where it applies, in words, for the document.</param>
public sealed record Caution(string Id, string Title, string Text, string Where);

/// <summary>The usual cautions, once for packet, screen and docs/cautions.md.</summary>
/// <remarks>They are usual practice, not advice for a case, and defer to local codes and to people with a licence.</remarks>
public static class Cautions
{
    private static readonly (Caution Caution, Func<LightDesign, LightEvaluation, bool> Applies)[] rules =
    [
        (
            new(
                "mains",
                "Mains",
                "Local electrical codes and licensed practice come before anything on this paper. Work with the plug out and in your sight, never with the supply on. Every metal part that can be touched gets protective earth, each by its own screw. Fuse, strain relief and clearances as the driver's sheet asks.",
                "the supply is alternating, or not given"
            ),
            (d, _) => d.Place.Supply is not { Kind: SupplyKind.Dc }
        ),
        (
            new(
                "battery",
                "Battery",
                "A battery feeds a short circuit with everything it has. Put a fuse at its pole, take off rings and bracelets, connect the battery last.",
                "the supply is direct"
            ),
            (d, _) => d.Place.Supply is { Kind: SupplyKind.Dc }
        ),
        (
            new(
                "charge",
                "Stored charge",
                "Capacitors in the driver stay charged after the plug is out. Wait as long as its sheet says, then measure below 10 V at input and output before touching.",
                "there is a driver"
            ),
            (d, _) => d.Drivers.Count > 0
        ),
        (
            new(
                "sense",
                "Sense wires",
                "Wires may leave the driver's sense parts only when those are on the isolated output side, and someone has looked and measured. Not sure means no. An opened driver has lost its maker's approval. Dummy load first; never connect an emitter to a live driver.",
                "resistors are put into a driver's sense path"
            ),
            (d, _) => d.Steps is not null
        ),
        (
            new(
                "hot",
                "Hot parts",
                "Emitter, sink, resistors and front burn skin within seconds and stay hot after switching off. First power-up at the dimmest position, any fan running, a thermometer on the sink, fingers off.",
                "always"
            ),
            (_, _) => true
        ),
        (
            new(
                "bright",
                "Bright light",
                "Do not look into the emitter, not even for a moment and not into a bare one at its dimmest. Test with the diffuser on or the light turned to a wall; warn who stands by.",
                "there is an emitter"
            ),
            (d, _) => d.Emitters.Count > 0
        ),
        (
            new(
                "grinding",
                "Cutting, drilling, grinding",
                "Goggles always; no gloves at a turning drill; clamp thin sheet down, it climbs the drill. Deburr before you handle: cut sheet is a blade. Sparks fly far, clear what burns.",
                "there are sheet parts"
            ),
            (d, _) => d.Parts.Count > 0
        ),
        (
            new(
                "brake",
                "Bending",
                "Fingers out of the brake before the beam moves; one person moves it. Long strips swing up as they bend.",
                "a part has bends"
            ),
            (_, e) => e.Metal?.Parts.Any(p => p.Blank.Bends.Count > 0) ?? false
        ),
        (
            new(
                "fumes",
                "Fumes",
                "Weld, solder and paint with air moving away from your face. Never weld zinc-coated sheet or near degreaser with chlorine. Heat drives fumes out of fresh paint: burn a new light in outdoors or under a hood.",
                "there are sheet parts, or parts to solder"
            ),
            (d, _) => d.Parts.Count > 0 || d.Steps is not null
        ),
        (
            new(
                "falling",
                "Falling loads",
                "A light over people or things gets a second, independent hold: a steel rope through the yoke. Hold the head before loosening a clamp. Load the stand's foot before mounting the head.",
                "the light hangs on a tilt joint, an arm or a stand"
            ),
            (d, _) => d.Tilts.Count + d.Arms.Count + d.Stands.Count > 0
        ),
        (
            new(
                "unattended",
                "Left alone",
                "A one-off without tests of its own is not left on unattended until it has run for some hours at the brightest position with somebody by, and until it is known what a stopped fan does to it.",
                "always"
            ),
            (_, _) => true
        ),
    ];

    /// <summary>All cautions, in the order they are printed.</summary>
    public static IReadOnlyList<Caution> All { get; } = [.. rules.Select(r => r.Caution)];

    /// <summary>Those that apply to a light.</summary>
    public static IReadOnlyList<Caution> For(LightDesign design, LightEvaluation evaluation)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(evaluation);
        return [.. rules.Where(r => r.Applies(design, evaluation)).Select(r => r.Caution)];
    }
}
