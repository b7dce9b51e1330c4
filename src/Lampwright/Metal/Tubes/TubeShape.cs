using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Exact geometry of a tube: frames of its sides, its round corners, and where its ends are cut.</summary>
/// <remarks>
/// The part's frame is that of the face: x along the tube from the longest point of its start, y across the face, z outward. The sides follow each
/// other round the tube; x runs along it on all of them, and y of each begins at the outside of the side before.
/// </remarks>
internal sealed class TubeShape
{
    private readonly TubeSpec _tube;

    public TubeShape(TubeSpec tube, double wallM, double insideRadiusM)
    {
        _tube = tube;
        WallM = wallM;
        InsideRadiusM = insideRadiusM;
        var (w, h) = (tube.WidthM, tube.HeightM);
        var x = new Vec3(1, 0, 0);
        Frames =
        [
            Frame.World,
            new(new(0, w, 0), x, new(0, 0, -1), new(0, 1, 0)),
            new(new(0, w, -h), x, new(0, -1, 0), new(0, 0, -1)),
            new(new(0, 0, -h), x, new(0, 0, 1), new(0, -1, 0)),
        ];
        Widths = [w, h, w, h];
        Section = new(w, h, wallM, CornerM);
    }

    public double WallM { get; }

    public double InsideRadiusM { get; }

    public double CornerM => InsideRadiusM + WallM;

    /// <summary>Length of a corner's arc on the outside.</summary>
    public double ArcM => Math.PI / 2 * CornerM;

    public TubeSection Section { get; }

    public IReadOnlyList<Frame> Frames { get; }

    public IReadOnlyList<double> Widths { get; }

    /// <summary>Where the flat of a side begins on the wrap.</summary>
    public double FlatFrom(int side)
    {
        var at = 0.0;
        for (var i = 0; i < side; i++)
        {
            at += Widths[i] - (2 * CornerM) + ArcM;
        }

        return at;
    }

    /// <summary>The axis of the corner after a side: x along, y and z as that side's.</summary>
    public Frame Axis(int side) =>
        Frames[side] with
        {
            Origin = Frames[side].Out(new(0, Widths[side] - CornerM, -CornerM)),
        };

    /// <summary>A point of the outside of the corner after a side, at an angle from that side.</summary>
    public Vec3 OnCorner(int side, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return Axis(side).Out(new(0, CornerM * sin, CornerM * cos));
    }

    /// <summary>From where to where the tube reaches along x at a place of its section.</summary>
    public (double From, double To) Reach(Vec3 at) => (Off(_tube.Start, at), _tube.LengthM - Off(_tube.End, at));

    /// <summary>How far a cut stands back from the longest point, as middle and slope over the section: x = Middle + Slope · (distance from the middle).</summary>
    public (double Middle, double SlopeY, double SlopeDepth) Plane(TubeCut cut)
    {
        var tan = Math.Tan(cut.AngleRad);
        return cut.On == TubeSlant.Face
            ? (Math.Abs(tan) * _tube.WidthM / 2, tan, 0)
            : (Math.Abs(tan) * _tube.HeightM / 2, 0, tan);
    }

    /// <summary>The outline of a side between two places of its y; edges <c>root</c>, <c>end</c>, the next side, <c>start</c>.</summary>
    public Outline Side(int side, double fromY, double toY)
    {
        Vec2 At(double y, bool end)
        {
            var (from, to) = Reach(Frames[side].Out(new(0, y, 0)));
            return new(end ? to : from, y);
        }

        return new([
            new(At(fromY, false), 0, "root"),
            new(At(fromY, true), 0, "end"),
            new(At(toY, true), 0, TubeSpec.Sides[(side + 1) % 4]),
            new(At(toY, false), 0, "start"),
        ]);
    }

    private double Off(TubeCut cut, Vec3 at)
    {
        var (middle, slopeY, slopeDepth) = Plane(cut);
        return middle + (slopeY * (at.Y - (_tube.WidthM / 2))) + (slopeDepth * (-at.Z - (_tube.HeightM / 2)));
    }
}
