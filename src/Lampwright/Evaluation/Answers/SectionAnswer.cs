using System.Collections.Concurrent;
using Lampwright.Geometry;

namespace Lampwright.Evaluation.Answers;

/// <summary>The light cut open along its beam, and the temperature of each thing that is seen there.</summary>
public sealed record SectionAnswer
{
    private readonly ConcurrentDictionary<(string, string), BoxScene?> _found = new();

    /// <summary>The cuts, the one that meets most first; never empty.</summary>
    public required IReadOnlyList<SectionCut> Cuts { get; init; }

    /// <summary>Names of the scenes that can be asked for: <c>normal</c>, <c>hot</c>, and with a fan <c>fan slowed</c>, <c>fan stopped</c>, <c>fan stopped, hot</c>.</summary>
    public required IReadOnlyList<string> Scenes { get; init; }

    /// <summary>Voltage of the slowed fan at a position, V; null where it cannot be told or where it may not run slower than it is set.</summary>
    internal Func<string, double?> Slow { get; init; } = _ => null;

    internal Func<string, string, BoxScene?> Find { get; init; } = (_, _) => null;

    /// <summary>Temperatures of a position in a scene; null where there are none: a fan that may not run slower, a network without rest.</summary>
    /// <remarks>Bands stand at the brightest position only. Found when first asked for, in some milliseconds.</remarks>
    /// <param name="switches">Switch position.</param>
    /// <param name="scene">One of <see cref="Scenes"/>.</param>
    public BoxScene? At(string switches, string scene) =>
        _found.GetOrAdd((switches, scene), key => Find(key.Item1, key.Item2));

    /// <summary>Voltage that the fan is slowed to in the scene <c>fan slowed</c>, V: the least that keeps the junction on the hottest day, for a light at the
    /// upper end of its band, and no less than starts it every time; null where it may not run slower than it is set.</summary>
    /// <param name="switches">Switch position.</param>
    public double? SlowedToV(string switches) => Slow(switches);
}

/// <summary>One cut through the light. Lengths in mm; x to the right, y up.</summary>
/// <param name="Name"><c>along the fins</c> or <c>across the fins</c>.</param>
/// <param name="Pieces">What is cut, from the back to the front.</param>
/// <param name="Emitter">Where the light leaves the emitter.</param>
/// <param name="Beam">Unit vector of the beam; its length is below 1 where the cut is not quite along it.</param>
/// <param name="Missing">Ids of things that no joint places, so that they are not in the picture.</param>
public sealed record SectionCut(
    string Name,
    IReadOnlyList<SectionPiece> Pieces,
    Vec2 Emitter,
    Vec2 Beam,
    IReadOnlyList<string> Missing
);

/// <summary>What a piece of a section is.</summary>
public enum SectionKind
{
    /// <summary>Air that has a temperature of its own.</summary>
    Air,

    /// <summary>The room that the light passes, within the reflector.</summary>
    LightWay,

    /// <summary>Sheet.</summary>
    Sheet,

    /// <summary>Sink, emitter, driver, diffuser, fan.</summary>
    Body,
}

/// <summary>One thing in a section.</summary>
/// <param name="Id">What it is: <c>tray.face</c>, <c>driver.main</c>, <c>base</c>.</param>
/// <param name="Node">The node of the network whose temperature it has; null where the network does not know it.</param>
/// <param name="Kind">What it is.</param>
/// <param name="IsBeside">True where it lies beside the cut and is shown as a cut through its own middle shows it.</param>
/// <param name="Outlines">Its closed outlines, mm.</param>
public sealed record SectionPiece(
    string Id,
    string? Node,
    SectionKind Kind,
    bool IsBeside,
    IReadOnlyList<IReadOnlyList<Vec2>> Outlines
);
