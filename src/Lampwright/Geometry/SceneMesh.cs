namespace Lampwright.Geometry;

/// <summary>Collects triangles of one face of a body.</summary>
internal sealed class SceneMesh
{
    private readonly List<Vec3> _points = [];
    private readonly List<Vec3> _normals = [];
    private readonly List<int> _triangles = [];

    public bool IsEmpty => _triangles.Count == 0;

    public int Point(Vec3 point, Vec3 normal)
    {
        _points.Add(point);
        _normals.Add(normal);
        return _points.Count - 1;
    }

    public void Triangle(int a, int b, int c)
    {
        _triangles.Add(a);
        _triangles.Add(b);
        _triangles.Add(c);
    }

    /// <summary>A flat quadrilateral, counter-clockwise seen from outside.</summary>
    public void Quad(Vec3 a, Vec3 b, Vec3 c, Vec3 d)
    {
        var cross = (c - a).Cross(d - b);
        var length = cross.Length;
        if (length < 1e-18)
        {
            return;
        }

        var normal = cross / length;
        var (i, j, k, l) = (Point(a, normal), Point(b, normal), Point(c, normal), Point(d, normal));
        Triangle(i, j, k);
        Triangle(i, k, l);
    }

    public SceneFace Face(string id) => new(id, _points, _normals, _triangles);
}
