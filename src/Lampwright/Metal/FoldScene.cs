using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>The folded part as a body with thickness for the 3D view, the files and the printed views.</summary>
/// <remarks>Costs milliseconds: made when somebody looks, never in an evaluation. Arcs are cut to a sag of 0.05 mm, bends to 7.5°.</remarks>
public static class FoldScene
{
    private static readonly double Sag = 5e-5;

    private static readonly double MostTurn = Math.PI / 24;

    /// <summary>With more holes in a flat its skins stay whole in the picture and only the rims are drawn: cutting costs their square.</summary>
    private static readonly int MostCut = 1500;

    /// <summary>The body of a part, its points in the part's frame.</summary>
    /// <param name="part">The folded part.</param>
    /// <param name="place">Where it stands in the scene; the part's own frame where null.</param>
    public static SceneBody Of(FoldedPart part, Frame? place = null)
    {
        var faces = new List<SceneFace>();
        var edges = new List<SceneEdge>();
        var holes = part.Holes.ToLookup(h => h.Face, StringComparer.Ordinal);
        var joints = part.Bends.Select(b => b.Flange).Append("root").ToHashSet(StringComparer.Ordinal);
        foreach (var face in part.Faces)
        {
            Flat(part, face, [.. holes[face.Face]], joints, faces, edges);
        }

        foreach (var bend in part.Bends)
        {
            Bend(part, bend, faces, edges);
        }

        return new(part.Name, part.Name, faces, edges, place ?? Frame.World);
    }

    private static void Flat(
        FoldedPart part,
        FoldedFace face,
        List<FoldedHole> holes,
        HashSet<string> joints,
        List<SceneFace> faces,
        List<SceneEdge> edges
    )
    {
        var outline = face.Flat.Points(Sag);
        var rims = holes.ConvertAll(h => h.Outline.Points(Sag));
        var cut = Triangulation.Of(outline, rims.Count <= MostCut ? rims : []);
        var t = part.ThicknessM;
        Vec3 Out(Vec2 p, double z) => face.Frame.Out(new(p.X, p.Y, z));

        var (skin, back) = (new SceneMesh(), new SceneMesh());
        foreach (var p in cut.Points)
        {
            skin.Point(Out(p, 0), face.Frame.Z);
            back.Point(Out(p, -t), -face.Frame.Z);
        }

        for (var i = 0; i < cut.Triangles.Count; i += 3)
        {
            var (a, b, c) = (cut.Triangles[i], cut.Triangles[i + 1], cut.Triangles[i + 2]);
            skin.Triangle(a, b, c);
            back.Triangle(a, c, b);
        }

        faces.Add(skin.Face(face.Id + ".outside"));
        faces.Add(back.Face(face.Id + ".inside"));

        var rim = new SceneMesh();
        for (var i = 0; i < face.Flat.Corners.Count; i++)
        {
            var (corner, next) = (face.Flat.Corners[i], face.Flat.Corners[(i + 1) % face.Flat.Corners.Count]);
            if (joints.Contains(corner.EdgeId))
            {
                continue;
            }

            var run = corner.Bulge == 0 ? [corner.Point, next.Point] : ArcPoints(face.Flat, i);
            Wall(rim, run, Out, t);
            var id = corner.EdgeId.Length > 0 ? $"{face.Id}.{corner.EdgeId}" : face.Id + ".relief";
            edges.Add(new(id, [.. run.Select(p => Out(p, 0))]));
            edges.Add(new(id, [.. run.Select(p => Out(p, -t))]));
        }

        Add(faces, rim, face.Id + ".rim");
        var walls = new SceneMesh();
        for (var k = 0; k < holes.Count; k++)
        {
            // Seen from inside the hole the wall faces its middle: the rim is run clockwise.
            List<Vec2> loop = [.. rims[k].Reverse()];
            loop.Add(loop[0]);
            Wall(walls, loop, Out, t);
            edges.Add(new(holes[k].Id, [.. loop.Select(p => Out(p, 0))]));
            edges.Add(new(holes[k].Id, [.. loop.Select(p => Out(p, -t))]));
        }

        Add(faces, walls, face.Id + ".holes");
    }

    private static List<Vec2> ArcPoints(Outline outline, int index)
    {
        var (a, b) = (outline.Corners[index], outline.Corners[(index + 1) % outline.Corners.Count]);
        List<Vec2> points = [.. new Outline([a, new(b.Point)]).Points(Sag)];
        return points;
    }

    private static void Wall(SceneMesh mesh, List<Vec2> run, Func<Vec2, double, Vec3> outward, double t)
    {
        for (var i = 1; i < run.Count; i++)
        {
            mesh.Quad(outward(run[i - 1], -t), outward(run[i], -t), outward(run[i], 0), outward(run[i - 1], 0));
        }
    }

    private static void Add(List<SceneFace> faces, SceneMesh mesh, string id)
    {
        if (!mesh.IsEmpty)
        {
            faces.Add(mesh.Face(id));
        }
    }

    private static void Bend(FoldedPart part, FoldedBend bend, List<SceneFace> faces, List<SceneEdge> edges)
    {
        var rows = Rows(bend);
        var t = part.ThicknessM;
        var (outer, inner, sides) = (new SceneMesh(), new SceneMesh(), new SceneMesh());
        var away = bend.AngleRad > 0;
        var (near, far) = away
            ? (bend.InsideRadiusM + t, bend.InsideRadiusM)
            : (-bend.InsideRadiusM, -bend.InsideRadiusM - t);
        (Vec3 Point, Vec3 Normal) At(double x, double v, double reach)
        {
            var (sin, cos) = Math.SinCos(bend.AngleRad * v / bend.AllowanceM);
            return (bend.Axis.Out(new(x, reach * sin, reach * cos)), bend.Axis.Direction(new(0, sin, cos)));
        }

        void Row(SceneMesh mesh, (double V, double From, double To) row, double reach, int sign)
        {
            foreach (var x in (double[])[row.From, row.To])
            {
                var (point, normal) = At(x, row.V, reach);
                mesh.Point(point, normal * sign);
            }
        }

        for (var k = 0; k < rows.Count; k++)
        {
            Row(outer, rows[k], near, 1);
            Row(inner, rows[k], far, -1);
            if (k == 0)
            {
                continue;
            }

            var (a, b, c, d) = ((2 * k) - 2, (2 * k) - 1, 2 * k, (2 * k) + 1);
            outer.Triangle(a, b, d);
            outer.Triangle(a, d, c);
            inner.Triangle(a, d, b);
            inner.Triangle(a, c, d);
            var (p, q) = (rows[k - 1], rows[k]);
            sides.Quad(
                At(q.From, q.V, near).Point,
                At(q.From, q.V, far).Point,
                At(p.From, p.V, far).Point,
                At(p.From, p.V, near).Point
            );
            sides.Quad(
                At(p.To, p.V, near).Point,
                At(p.To, p.V, far).Point,
                At(q.To, q.V, far).Point,
                At(q.To, q.V, near).Point
            );
        }

        faces.Add(outer.Face(bend.Id + ".bend.outside"));
        faces.Add(inner.Face(bend.Id + ".bend.inside"));
        Add(faces, sides, bend.Id + ".bend.rim");
        foreach (var row in (ReadOnlySpan<(double V, double From, double To)>)[rows[0], rows[^1]])
        {
            edges.Add(new(bend.Id + ".bend", [At(row.From, row.V, near).Point, At(row.To, row.V, near).Point]));
        }

        foreach (var reach in (double[])[near, far])
        {
            edges.Add(new(bend.Id + ".bend", [.. rows.Select(r => At(r.From, r.V, reach).Point)]));
            edges.Add(new(bend.Id + ".bend", [.. rows.Select(r => At(r.To, r.V, reach).Point)]));
        }
    }

    /// <summary>Lines across the bend: where its sides turn and at least every few degrees.</summary>
    private static List<(double V, double From, double To)> Rows(FoldedBend bend)
    {
        var pieces = Math.Max(2, (int)Math.Ceiling(Math.Abs(bend.AngleRad) / MostTurn));
        var stops = new SortedSet<double>();
        for (var k = 0; k <= pieces; k++)
        {
            stops.Add(bend.AllowanceM * k / pieces);
        }

        foreach (var corner in bend.Zone.Corners)
        {
            stops.Add(Math.Clamp(corner.Point.Y, 0, bend.AllowanceM));
        }

        var rows = new List<(double, double, double)>(stops.Count);
        foreach (var v in stops)
        {
            var (from, to) = Range(bend.Zone, v);
            rows.Add((v, from, to));
        }

        return rows;
    }

    private static (double From, double To) Range(Outline zone, double v)
    {
        var (from, to) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < zone.Corners.Count; i++)
        {
            var (a, b) = (zone.Corners[i].Point, zone.Corners[(i + 1) % zone.Corners.Count].Point);
            if (v < Math.Min(a.Y, b.Y) - 1e-12 || v > Math.Max(a.Y, b.Y) + 1e-12)
            {
                continue;
            }

            var level = Math.Abs(b.Y - a.Y) < 1e-12;
            var x = level ? a.X : a.X + ((b.X - a.X) * Math.Clamp((v - a.Y) / (b.Y - a.Y), 0, 1));
            (from, to) = (Math.Min(from, x), Math.Max(to, x));
            if (level)
            {
                (from, to) = (Math.Min(from, b.X), Math.Max(to, b.X));
            }
        }

        return (from, to);
    }
}
