using Lampwright.Geometry;

namespace Lampwright.Metal.Bending;

/// <summary>A folded part as plates that collide: both skins of each flat, and of each bend, open or closed.</summary>
/// <remarks>The skins lie a twentieth of a millimetre inside the metal, so that what rests on the machine does not count as hitting it.</remarks>
internal sealed class PartPlates
{
    private static readonly double InsideM = 5e-5;
    private static readonly double SagM = 2e-4;
    private static readonly int Chords = 3;

    private readonly Vec3[][][] flats;
    private readonly Vec3[][] middles;
    private readonly Vec3[][][] open;
    private readonly Vec3[][][] closed;

    public PartPlates(FoldedPart part)
    {
        var t = part.ThicknessM;
        flats = new Vec3[part.Faces.Count][][];
        middles = new Vec3[part.Faces.Count][];
        for (var i = 0; i < flats.Length; i++)
        {
            var face = part.Faces[i];
            var points = face.Flat.Points(SagM);
            Vec3[] At(double z) => [.. points.Select(p => face.Frame.Out(new(p.X, p.Y, z)))];
            flats[i] = [At(-InsideM), At(InsideM - t)];
            middles[i] = At(-t / 2);
        }

        open = new Vec3[part.Bends.Count][][];
        closed = new Vec3[part.Bends.Count][][];
        for (var b = 0; b < part.Bends.Count; b++)
        {
            (open[b], closed[b]) = Zone(part.Bends[b], t);
        }
    }

    /// <summary>Skins of a flat, where the folded part has them.</summary>
    public Vec3[][] Flat(int flat) => flats[flat];

    /// <summary>Middle of the sheet of a flat.</summary>
    public Vec3[] Middle(int flat) => middles[flat];

    /// <summary>Skins of a bend, seen from its parent.</summary>
    public Vec3[][] Bend(int bend, bool isClosed) => isClosed ? closed[bend] : open[bend];

    private static (Vec3[][] Open, Vec3[][] Closed) Zone(FoldedBend bend, double thickness)
    {
        var xs = bend.Zone.Corners.Select(c => c.Point.X).ToList();
        var (from, to) = (xs.Min(), xs.Max());
        var sign = Math.Sign(bend.AngleRad);
        double[] reaches = [sign * (bend.InsideRadiusM + InsideM), sign * (bend.InsideRadiusM + thickness - InsideM)];
        Vec3[] Quad(Func<double, Vec3> at, double v0, double v1)
        {
            var (a, b) = (at(v0), at(v1));
            return
            [
                bend.Axis.Out(a with { X = from }),
                bend.Axis.Out(a with { X = to }),
                bend.Axis.Out(b with { X = to }),
                bend.Axis.Out(b with { X = from }),
            ];
        }

        var open = reaches.Select(r => Quad(v => new(0, v, r), 0, bend.AllowanceM));
        var closed = reaches.SelectMany(r =>
            Enumerable
                .Range(0, Chords)
                .Select(k =>
                    Quad(
                        share =>
                        {
                            var (sin, cos) = Math.SinCos(bend.AngleRad * share);
                            return new(0, r * sin, r * cos);
                        },
                        k / (double)Chords,
                        (k + 1) / (double)Chords
                    )
                )
        );
        return ([.. open], [.. closed]);
    }
}
