using System.Buffers.Binary;
using System.Text;
using Lampwright.Geometry;

namespace Lampwright.Files.Drawings;

/// <summary>Writes bodies as binary STL, millimetres, in the scene's frame.</summary>
/// <remarks>
/// 80 bytes of header, the count of triangles, then 50 bytes a triangle: normal, three corners, zero. The normal is that of the
/// triangle itself. The header never starts with <c>solid</c>, which readers take for the text form.
/// </remarks>
public static class StlFold
{
    /// <summary>The file of one body.</summary>
    public static byte[] File(SceneBody body) => File(new Scene([body]));

    /// <summary>The file of a scene.</summary>
    public static byte[] File(Scene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var count = scene.Bodies.Sum(b => b.Faces.Sum(f => f.Triangles.Count / 3));
        var bytes = new byte[84 + (50 * count)];
        Encoding.ASCII.GetBytes("binary STL, millimetres", bytes);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(80), (uint)count);
        var at = 84;
        foreach (var body in scene.Bodies)
        {
            foreach (var face in body.Faces)
            {
                for (var i = 0; i + 2 < face.Triangles.Count; i += 3)
                {
                    var (a, b, c) = (Corner(body, face, i), Corner(body, face, i + 1), Corner(body, face, i + 2));
                    var normal = (b - a).Cross(c - a);
                    var length = normal.Length;
                    foreach (var v in (ReadOnlySpan<Vec3>)[length > 0 ? normal / length : default, a, b, c])
                    {
                        BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at), (float)v.X);
                        BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at + 4), (float)v.Y);
                        BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at + 8), (float)v.Z);
                        at += 12;
                    }

                    at += 2;
                }
            }
        }

        return bytes;
    }

    private static Vec3 Corner(SceneBody body, SceneFace face, int index) =>
        body.Place.Out(face.Points[face.Triangles[index]]) * 1000;
}
