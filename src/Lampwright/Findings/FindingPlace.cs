using Lampwright.Geometry;

namespace Lampwright.Findings;

/// <summary>Where on a part's blank a finding bites: a place, or a stretch between two places.</summary>
/// <param name="Part">Name of the part.</param>
/// <param name="Flat"><c>face</c> or the id of the flange it lies in or whose bend it is.</param>
/// <param name="A">The place, or one end of the stretch, in the frame of the blank (or of its sketch), metres.</param>
/// <param name="B">The other end; <paramref name="A"/> again for a place.</param>
public sealed record FindingPlace(string Part, string Flat, Vec2 A, Vec2 B)
{
    /// <summary>Middle of the stretch.</summary>
    public Vec2 Middle => (A + B) / 2;

    /// <summary>True for a single place.</summary>
    public bool IsPoint => (B - A).Length < 1e-6;
}
