using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>The brake's sections made ready for collisions.</summary>
internal sealed class BrakeSolids(BrakeMachine machine)
{
    private readonly SectionSolid bed = new(machine.Bed);
    private readonly SectionSolid apron = new(machine.Apron);
    private readonly SectionSolid clamp = new(machine.Clamp);
    private readonly SectionSolid finger = new(machine.Finger);

    public BrakeMachine Machine { get; } = machine;

    public FingerRow Fingers { get; } = new(machine.FingerWidthsM, machine.FingerGapM);

    /// <summary>What of the bed, the clamp's beam and the apron a plate reaches into.</summary>
    /// <param name="plate">Corners of the plate, machine frame.</param>
    /// <param name="noseBack">How far the nose stands behind the axis, metres.</param>
    /// <param name="thickness">The clamp stands on the sheet.</param>
    /// <param name="angle">Angle of the apron, radians.</param>
    /// <param name="withApron">False past the angle of the bend, where the sheet springs.</param>
    public Obstacle Hit(ReadOnlySpan<Vec3> plate, double noseBack, double thickness, double angle, bool withApron) =>
        bed.Holds(plate, default, 0, out _, out _) ? Obstacle.Bed
        : clamp.Holds(plate, new(-noseBack, thickness), 0, out _, out _) ? Obstacle.Clamp
        : withApron && apron.Holds(plate, default, angle, out _, out _) ? Obstacle.Apron
        : Obstacle.None;

    /// <summary>Whether a plate reaches into the apron at an angle.</summary>
    public bool HitsApron(ReadOnlySpan<Vec3> plate, double angle) => apron.Holds(plate, default, angle, out _, out _);

    /// <summary>Where along the brake a plate would hit fingers, if any stood there.</summary>
    public bool HitsFingers(
        ReadOnlySpan<Vec3> plate,
        double noseBack,
        double thickness,
        out double from,
        out double to
    ) => finger.Holds(plate, new(-noseBack, thickness), 0, out from, out to);
}
