using System.Numerics;
using System.Runtime.InteropServices;
using Lampwright.Geometry;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;
using Scene = Lampwright.Geometry.Scene;

namespace Lampwright.Files.Drawings;

/// <summary>Writes bodies as binary glTF (<c>.glb</c>): metres, y up, a node a body, a named mesh a face, the edges of a body as lines.</summary>
/// <remarks>
/// The scene's z (outward of the fixed part's face) becomes glTF's y (up): (x, y, z) is written as (x, z, −y), a turn, so
/// nothing is mirrored.
/// </remarks>
public static class GlbFold
{
    /// <summary>The file of one body.</summary>
    public static byte[] File(SceneBody body) => File(new Scene([body]));

    /// <summary>The file of a scene.</summary>
    public static byte[] File(Scene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var model = ModelRoot.CreateModel();
        var root = model.UseScene("lampwright");
        var metal = model.CreateMaterial("metal");
        metal.InitializePBRMetallicRoughness();
        Colour(metal, new(0.72f, 0.74f, 0.76f, 1));
        var line = model.CreateMaterial("edge");
        line.InitializeUnlit();
        Colour(line, new(0.11f, 0.16f, 0.2f, 1));
        foreach (var body in scene.Bodies)
        {
            var node = root.CreateNode(body.Id);
            foreach (var face in body.Faces.Where(f => f.Triangles.Count >= 3))
            {
                node.CreateNode(face.Id).Mesh = FaceMesh(model, metal, body.Place, face);
            }

            if (body.Edges.Any(e => e.Points.Count >= 2))
            {
                node.CreateNode(body.Id + ".edges").Mesh = EdgeMesh(model, line, body);
            }
        }

        return model.WriteGLB().ToArray();
    }

    private static Mesh FaceMesh(ModelRoot model, Material material, Frame place, SceneFace face)
    {
        var mesh = model.CreateMesh(face.Id);
        var primitive = mesh.CreatePrimitive();
        primitive.SetVertexAccessor("POSITION", Vectors(model, face.Points.Select(p => Up(place.Out(p)))));
        primitive.SetVertexAccessor(
            "NORMAL",
            Vectors(model, face.Normals.Select(n => Vector3.Normalize(Up(place.Direction(n)))))
        );
        return Finished(mesh, primitive, material, PrimitiveType.TRIANGLES, Indices(model, face.Triangles));
    }

    /// <summary>All lines of a body in one mesh: a perforated part has thousands of rims.</summary>
    private static Mesh EdgeMesh(ModelRoot model, Material material, SceneBody body)
    {
        var points = new List<Vector3>();
        var order = new List<int>();
        foreach (var edge in body.Edges)
        {
            for (var i = 0; i < edge.Points.Count; i++)
            {
                if (i > 0)
                {
                    order.Add(points.Count - 1);
                    order.Add(points.Count);
                }

                points.Add(Up(body.Place.Out(edge.Points[i])));
            }
        }

        var mesh = model.CreateMesh(body.Id + ".edges");
        var primitive = mesh.CreatePrimitive();
        primitive.SetVertexAccessor("POSITION", Vectors(model, points));
        return Finished(mesh, primitive, material, PrimitiveType.LINES, Indices(model, order));
    }

    private static Mesh Finished(
        Mesh mesh,
        MeshPrimitive primitive,
        Material material,
        PrimitiveType type,
        Accessor indices
    )
    {
        primitive.SetIndexAccessor(indices);
        primitive.DrawPrimitiveType = type;
        primitive.Material = material;
        return mesh;
    }

    private static Accessor Vectors(ModelRoot model, IEnumerable<Vector3> vectors)
    {
        var array = vectors.ToArray();
        var view = model.UseBufferView(
            MemoryMarshal.AsBytes<Vector3>(array).ToArray(),
            target: BufferMode.ARRAY_BUFFER
        );
        var accessor = model.CreateAccessor();
        accessor.SetVertexData(view, 0, array.Length, new AttributeFormat(DimensionType.VEC3));
        return accessor;
    }

    private static Accessor Indices(ModelRoot model, IReadOnlyList<int> indices)
    {
        var view = model.UseBufferView(
            MemoryMarshal.AsBytes<int>(indices.ToArray()).ToArray(),
            target: BufferMode.ELEMENT_ARRAY_BUFFER
        );
        var accessor = model.CreateAccessor();
        accessor.SetIndexData(view, 0, indices.Count, IndexEncodingType.UNSIGNED_INT);
        return accessor;
    }

    private static void Colour(Material material, Vector4 colour)
    {
        if (material.FindChannel("BaseColor") is { } channel)
        {
            channel.Color = colour;
        }
    }

    private static Vector3 Up(Vec3 v) => new((float)v.X, (float)v.Z, (float)-v.Y);
}
