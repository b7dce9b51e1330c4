namespace Lampwright.Geometry;

/// <summary>A plane or curved face of a body, as triangles. Metres.</summary>
/// <param name="Id">Permanent id of the face it shows, for example <c>sink_tray.wall_l.outside</c>.</param>
/// <param name="Points">Corners of the triangles, each once or shared.</param>
/// <param name="Normals">Unit normal at each of the points, outward.</param>
/// <param name="Triangles">Indices into the points, three to a triangle, counter-clockwise seen from outside.</param>
public sealed record SceneFace(
    string Id,
    IReadOnlyList<Vec3> Points,
    IReadOnlyList<Vec3> Normals,
    IReadOnlyList<int> Triangles
);

/// <summary>A line that is drawn over a body: an edge, the rim of a hole.</summary>
/// <param name="Id">Permanent id of what it shows.</param>
/// <param name="Points">Its points in order, metres.</param>
public sealed record SceneEdge(string Id, IReadOnlyList<Vec3> Points);

/// <summary>A body: what the 3D view, the files and the printed views draw alike. Metres.</summary>
/// <param name="Id">Permanent id of the body, for example <c>sink_tray</c>.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Faces">Its surface, closed.</param>
/// <param name="Edges">Its lines.</param>
/// <param name="Place">Where it stands in the scene; points are given in this frame.</param>
public sealed record SceneBody(
    string Id,
    string Name,
    IReadOnlyList<SceneFace> Faces,
    IReadOnlyList<SceneEdge> Edges,
    Frame Place
);

/// <summary>Bodies that are shown together.</summary>
/// <param name="Bodies">The bodies, in a stable order.</param>
public sealed record Scene(IReadOnlyList<SceneBody> Bodies);
