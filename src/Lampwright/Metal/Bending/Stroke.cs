namespace Lampwright.Metal.Bending;

/// <summary>What one swing of the apron bends: a bend, or several of one line that turn alike.</summary>
/// <param name="Name">Names of the flanges.</param>
/// <param name="Bends">Indices of the bends in the folded part.</param>
/// <param name="Parent">Index of the flat that all start from.</param>
/// <param name="Children">Indices of the flats that they carry, in the order of the bends.</param>
/// <param name="AngleRad">Angle turned, radians, above 0.</param>
/// <param name="SwingRad">Angle that the apron is swung to: with springback, and for a hem as far as the brake closes.</param>
public sealed record Stroke(
    string Name,
    IReadOnlyList<int> Bends,
    int Parent,
    IReadOnlyList<int> Children,
    double AngleRad,
    double SwingRad
);

/// <summary>Which side of a bend lies under the clamp.</summary>
public enum ClampedSide
{
    /// <summary>The flat that the flange stands on; the flange is swung.</summary>
    Parent,

    /// <summary>The flange itself; the rest of the part is swung.</summary>
    Flange,
}

/// <summary>What is in the way.</summary>
public enum Obstacle
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The bed.</summary>
    Bed,

    /// <summary>The clamp's beam over the fingers.</summary>
    Clamp,

    /// <summary>The apron.</summary>
    Apron,

    /// <summary>The fingers, whichever are set.</summary>
    Fingers,

    /// <summary>No set of fingers is as wide as the bend and as narrow as what stands beside it.</summary>
    FingerWidths,

    /// <summary>Another flat of the part.</summary>
    Part,

    /// <summary>Too little metal lies under the clamp.</summary>
    Hold,

    /// <summary>The brake does not close so far.</summary>
    Closing,

    /// <summary>The bend is longer than the brake.</summary>
    Length,
}

/// <summary>Why a bend cannot be made as the part stands.</summary>
/// <param name="Obstacle">What is in the way.</param>
/// <param name="Flat">The flat that hits it: <c>face</c> or a flange's id; empty where none does.</param>
/// <param name="Other">The flat that it hits where it is the part itself.</param>
/// <param name="AngleRad">Where the apron stood, radians.</param>
/// <param name="FromM">Least width of fingers that would do, metres; 0 where it is not about them.</param>
/// <param name="ToM">Most width, metres.</param>
public readonly record struct Hindrance(
    Obstacle Obstacle,
    string Flat = "",
    string Other = "",
    double AngleRad = 0,
    double FromM = 0,
    double ToM = 0
);
