using Lampwright.Geometry;

namespace Lampwright.Light;

/// <summary>Where the emitter's light would fall after one, two… reflections if the funnel's wall were a perfect mirror.</summary>
/// <remarks>
/// Rays from evenly spread points and directions (Halton sequence, no random numbers), followed through the exact planes. The first
/// fall is known in closed form, so that the rays only share it out. <b>Validity</b>: flat mirror-like part of the wall's reflection;
/// a hazy lobe lies between this and the scattered part. <b>Accuracy</b>: about 1 % of the mirrored light.
/// </remarks>
internal static class MirrorPaths
{
    private static readonly int Rays = 2048;

    /// <summary>Falls that are followed after the first; what still travels then is taken as scattered.</summary>
    internal static readonly int Most = 5;

    /// <summary>The falls, each by ring and per lumen.</summary>
    public static double[][] Falls(FunnelGeometry geometry)
    {
        var falls = new double[Most][];
        for (var i = 0; i < Most; i++)
        {
            falls[i] = new double[FunnelGeometry.Count];
        }

        var (face, exponent) = (geometry.Face, geometry.Face.BeamExponent);
        var onWall = 0;
        for (var i = 1; i <= Rays; i++)
        {
            var (point, direction) = Start(face, exponent, i);
            if (!Next(geometry.Funnel, ref point, ref direction, out var ring, geometry.Levels))
            {
                continue;
            }

            onWall++;
            for (var fall = 0; fall < Most; fall++)
            {
                var again = Next(geometry.Funnel, ref point, ref direction, out ring, geometry.Levels);
                falls[fall][ring] += 1;
                if (!again)
                {
                    break;
                }
            }
        }

        var first = 0.0;
        for (var k = 1; k < FunnelGeometry.FirstMouth; k++)
        {
            first += geometry.First[k];
        }

        var scale = onWall == 0 ? 0 : first / onWall;
        foreach (var fall in falls)
        {
            for (var i = 0; i < fall.Length; i++)
            {
                fall[i] *= scale;
            }
        }

        return falls;
    }

    private static (Vec3 Point, Vec3 Direction) Start(EmitterFace face, double exponent, int index)
    {
        var (u, v, s, t) = (Halton(index, 2), Halton(index, 3), Halton(index, 5), Halton(index, 7));
        var (sine, cosine) = Math.SinCos(2 * Math.PI * v);
        var point = face.Round
            ? new Vec3(face.WidthM / 2 * Math.Sqrt(u) * cosine, face.WidthM / 2 * Math.Sqrt(u) * sine, 0)
            : new Vec3(face.WidthM * (u - 0.5), face.HeightM * (v - 0.5), 0);
        var along = Math.Pow(s, 1 / (exponent + 1));
        var across = Math.Sqrt(Math.Max(0, 1 - (along * along)));
        var (sineAcross, cosineAcross) = Math.SinCos(2 * Math.PI * t);
        return (point, new Vec3(across * cosineAcross, across * sineAcross, along));
    }

    private static double Halton(int index, int radix)
    {
        var (value, part) = (0.0, 1.0 / radix);
        for (var i = index; i > 0; i /= radix, part /= radix)
        {
            value += part * (i % radix);
        }

        return value;
    }

    /// <summary>Moves a ray to where it falls next and mirrors it there; false when it met the mouth or the base.</summary>
    private static bool Next(FunnelSpec funnel, ref Vec3 point, ref Vec3 direction, out int ring, double[] levels)
    {
        var best = double.PositiveInfinity;
        var wall = -1;
        for (var side = 0; side < 4; side++)
        {
            var sign = (side & 1) == 0 ? 1.0 : -1.0;
            var slope = Slope(funnel, side);
            var gap =
                side < 2
                    ? funnel.HalfWidthAt(point.Z) - (sign * point.X)
                    : funnel.HalfHeightAt(point.Z) - (sign * point.Y);
            var speed = (sign * (side < 2 ? direction.X : direction.Y)) - (slope * direction.Z);
            if (speed > 1e-12)
            {
                var time = Math.Max(gap, 0) / speed;
                if (time < best)
                {
                    (best, wall) = (time, side);
                }
            }
        }

        var toEnd =
            direction.Z > 0 ? (funnel.DepthM - point.Z) / direction.Z
            : direction.Z < 0 ? -point.Z / direction.Z
            : double.PositiveInfinity;
        if (wall < 0 || toEnd <= best)
        {
            var end = point + (direction * (double.IsFinite(toEnd) ? Math.Max(toEnd, 0) : 0));
            ring = direction.Z > 0 ? MouthRing(funnel, end) : 0;
            return false;
        }

        point += direction * best;
        ring = WallRing(levels, point.Z) + (wall < 2 ? 0 : FunnelGeometry.Walls);
        var outward = (wall & 1) == 0 ? 1.0 : -1.0;
        var k = Slope(funnel, wall);
        var normal = (wall < 2 ? new Vec3(-outward, 0, k) : new Vec3(0, -outward, k)) / Math.Sqrt(1 + (k * k));
        direction -= normal * (2 * direction.Dot(normal));
        return true;
    }

    private static double Slope(FunnelSpec funnel, int side) =>
        (side < 2 ? funnel.LargeWidthM - funnel.SmallWidthM : funnel.LargeHeightM - funnel.SmallHeightM)
        / 2
        / funnel.DepthM;

    private static int WallRing(double[] levels, double z)
    {
        var found = Array.BinarySearch(levels, z);
        var k = found >= 0 ? found : ~found - 1;
        return 1 + Math.Clamp(k, 0, FunnelGeometry.Walls - 1);
    }

    private static int MouthRing(FunnelSpec funnel, Vec3 point)
    {
        var part = Math.Max(Math.Abs(point.X) / funnel.LargeWidthM, Math.Abs(point.Y) / funnel.LargeHeightM) * 2;
        return FunnelGeometry.FirstMouth
            + Math.Clamp((int)(part * FunnelGeometry.Mouths), 0, FunnelGeometry.Mouths - 1);
    }
}
