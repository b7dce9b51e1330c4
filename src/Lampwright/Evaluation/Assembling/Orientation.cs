using Lampwright.Design;
using Lampwright.FitUp;
using Lampwright.Geometry;

namespace Lampwright.Evaluation.Assembling;

/// <summary>Which way is down, and how placed things stand to it.</summary>
internal static class Orientation
{
    /// <summary>Unit vector of gravity in the frame of the fixed part, from words such as <c>-y</c>, which is also the default.</summary>
    public static Vec3 Gravity(LightDesign design) =>
        design.Assembly?.Gravity.Trim() switch
        {
            "x" or "+x" => new(1, 0, 0),
            "-x" => new(-1, 0, 0),
            "y" or "+y" => new(0, 1, 0),
            "-y" => new(0, -1, 0),
            "z" or "+z" => new(0, 0, 1),
            "-z" => new(0, 0, -1),
            _ => new(0, -1, 0),
        };

    /// <summary>Angle between a sink's channels and the upright, rad; level channels, the worst, for a sink that is not placed.</summary>
    public static double ChannelTiltRad(LightDesign design, FitUpResult fitUp, string sinkId)
    {
        if (fitUp.Placed.FirstOrDefault(p => p.Id == sinkId) is not { } sink)
        {
            return Math.PI / 2;
        }

        return Math.Acos(Math.Clamp(Math.Abs(sink.Frame.Y.Dot(Gravity(design))), 0, 1));
    }

    /// <summary>How far the face that a sink's fins stand on looks up, -1 to 1; null for a sink that is not placed.</summary>
    public static double? FaceUp(LightDesign design, FitUpResult fitUp, string sinkId) =>
        fitUp.Placed.FirstOrDefault(p => p.Id == sinkId) is { } sink ? -sink.Frame.Z.Dot(Gravity(design)) : null;
}
