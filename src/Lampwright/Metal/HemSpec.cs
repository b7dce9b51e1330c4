namespace Lampwright.Metal;

/// <summary>How a flange is made, where it is not simply bent on the brake.</summary>
public enum FlangeMaking
{
    /// <summary>Bent on the brake.</summary>
    Brake,

    /// <summary>Bent as far as the brake closes, then pressed flat on its parent: a closed hem.</summary>
    Hem,

    /// <summary>A bend of a joggle, set between two bars that stand off by the step.</summary>
    Joggle,
}

/// <summary>A joggle: a strip along an edge that is set off by a step, so that it lies flush under or over its neighbour.</summary>
/// <param name="Id">Permanent id of the strip beyond the step; the step itself is <c>ID_step</c>.</param>
/// <param name="OnEdge">The edge it stands on, as for a flange: the outside mould line of the first bend.</param>
/// <param name="LapM">Width of the strip that is flat, from its bend's end to its edge, metres.</param>
public sealed record JoggleSpec(string Id, string OnEdge, double LapM)
{
    /// <summary>How far the strip is set off, metres; null takes one thickness.</summary>
    public double? OffsetM { get; init; }

    /// <summary>Angle of both bends, radians; null takes 45°, or less where the step is too low for it.</summary>
    public double? AngleRad { get; init; }

    /// <summary>True when the strip lies on the outside of its parent's face, false (the usual) behind it.</summary>
    public bool Outwards { get; init; }

    /// <summary>Offset of its start, as for a flange; null lets the corner decide.</summary>
    public double? StartOffsetM { get; init; }

    /// <summary>Offset of its end, as for a flange; null lets the corner decide.</summary>
    public double? EndOffsetM { get; init; }
}
