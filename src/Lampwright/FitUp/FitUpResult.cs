using Lampwright.Findings;
using Lampwright.Geometry;

namespace Lampwright.FitUp;

/// <summary>Everything the station knows of an assembly.</summary>
/// <param name="Placed">Bodies that joints place, in the order of the bodies told.</param>
/// <param name="Unplaced">Ids of bodies that no joint reaches.</param>
/// <param name="Joints">The joints whose patterns exist.</param>
/// <param name="Findings">Findings.</param>
public sealed record FitUpResult(
    IReadOnlyList<PlacedBody> Placed,
    IReadOnlyList<string> Unplaced,
    IReadOnlyList<JointResult> Joints,
    IReadOnlyList<Finding> Findings
);

/// <summary>A body in its place.</summary>
/// <param name="Id">Id of the body.</param>
/// <param name="Frame">Its frame in that of the fixed body.</param>
/// <param name="CentreOfMass">Its centre of mass in the frame of the fixed body, metres.</param>
/// <param name="MassKg">Its mass, kg; null when nobody knows it.</param>
public sealed record PlacedBody(string Id, Frame Frame, Vec3 CentreOfMass, double? MassKg);

/// <summary>What is known of one joint.</summary>
/// <param name="Spec">What it was told.</param>
/// <param name="Holes">Hole by hole.</param>
/// <param name="TurnsRad">Turn of each pattern against the one before it as placed, radians.</param>
/// <param name="Grip">The layers a screw passes; null without a screw or for an unknown size.</param>
/// <param name="Reach">What the screw reaches; null as above.</param>
public sealed record JointResult(
    JointSpec Spec,
    IReadOnlyList<HoleMeeting> Holes,
    IReadOnlyList<double> TurnsRad,
    ScrewGrip? Grip,
    ScrewReach? Reach
);

/// <summary>Holes of a stack that one screw passes.</summary>
/// <param name="Ids">Ids of the holes, in the order of the stack.</param>
/// <param name="DrawnMiss">Distance between the axes of the two that are furthest out, as drawn, in the plane of the joint, metres.</param>
/// <param name="AllowsM">Distance of those two that their clearance allows, metres; below 0 when the screw does not pass a hole.</param>
/// <param name="ScatterRmsM">Root mean square of their miss by hand along one axis, metres, after the part was shifted to fit.</param>
public sealed record HoleMeeting(IReadOnlyList<string> Ids, Vec2 DrawnMiss, double AllowsM, double ScatterRmsM)
{
    /// <summary>Distance as drawn, metres.</summary>
    public double DrawnMissM => DrawnMiss.Length;

    /// <summary>Distance in one draw, metres; runs per draw.</summary>
    /// <param name="unitX">Standardised scatter along one axis: mean 0, root mean square 1.</param>
    /// <param name="unitY">The same along the other.</param>
    /// <param name="scatterFactor">Factor of <see cref="FitUpMethodErrors.HoleScatter"/>; 1 is nominal.</param>
    public double MissM(double unitX, double unitY, double scatterFactor = 1)
    {
        var s = ScatterRmsM * scatterFactor;
        var (x, y) = (DrawnMiss.X + (s * unitX), DrawnMiss.Y + (s * unitY));
        return Math.Sqrt((x * x) + (y * y));
    }

    /// <summary>Distance that 19 of 20 such holes stay within, metres: as drawn plus 2.448 times the scatter.</summary>
    /// <remarks>95th percentile of a Rayleigh distribution, √(−2 ln 0.05), added to the drawn miss: on the safe side.</remarks>
    public double UsualMissM => DrawnMissM + (Math.Sqrt(-2 * Math.Log(0.05)) * ScatterRmsM);
}
