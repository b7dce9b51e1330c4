using System.Text.Json;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Web.Fold;

/// <summary>Writes one body, and how it unfolds where that is known.</summary>
internal static class FoldBody
{
    /// <summary>Writes a body at its place.</summary>
    /// <param name="w">Where to.</param>
    /// <param name="body">The body.</param>
    /// <param name="folded">How it is folded, so that the page can unfold it; null for a body that stays as it is.</param>
    /// <param name="place">Where the body's frame stands in the scene.</param>
    public static void Write(Utf8JsonWriter w, SceneBody body, FoldedPart? folded, Frame place)
    {
        w.WriteStartObject();
        w.WriteString("id", body.Id);
        w.WriteString("name", body.Name);
        WriteFrame(w, "place", place.Then(body.Place));
        w.WriteStartArray("faces");
        foreach (var face in body.Faces)
        {
            w.WriteStartObject();
            w.WriteString("id", face.Id);
            WritePoints(w, "p", face.Points, 1000);
            WritePoints(w, "n", face.Normals, 1);
            w.WriteStartArray("t");
            foreach (var i in face.Triangles)
            {
                w.WriteNumberValue(i);
            }

            w.WriteEndArray();
            w.WriteEndObject();
        }

        w.WriteEndArray();
        w.WriteStartArray("edges");
        foreach (var edge in body.Edges)
        {
            w.WriteStartObject();
            w.WriteString("id", edge.Id);
            WritePoints(w, "p", edge.Points, 1000);
            w.WriteEndObject();
        }

        w.WriteEndArray();
        if (folded is { Bends.Count: > 0, IsTube: false })
        {
            WriteFold(w, folded);
        }

        w.WriteEndObject();
    }

    private static void WriteFold(Utf8JsonWriter w, FoldedPart folded)
    {
        w.WriteStartObject("fold");
        w.WriteStartArray("faces");
        foreach (var face in folded.Faces)
        {
            w.WriteStartObject();
            w.WriteString("id", face.Face);
            WriteFrame(w, "frame", face.Frame);
            w.WriteEndObject();
        }

        w.WriteEndArray();
        w.WriteStartArray("bends");
        foreach (var bend in folded.Bends)
        {
            w.WriteStartObject();
            w.WriteString("flange", bend.Flange);
            w.WriteString("parent", bend.Parent);
            WriteFrame(w, "axis", bend.Axis);
            w.WriteNumber("angle", bend.AngleRad);
            w.WriteNumber("inside", Mm(bend.InsideRadiusM * 1000));
            w.WriteNumber("allowance", Mm(bend.AllowanceM * 1000));
            w.WriteEndObject();
        }

        w.WriteEndArray();
        w.WriteEndObject();
    }

    private static void WriteFrame(Utf8JsonWriter w, string name, Frame frame)
    {
        w.WriteStartArray(name);
        WriteVec(w, frame.X, 1);
        WriteVec(w, frame.Y, 1);
        WriteVec(w, frame.Z, 1);
        WriteVec(w, frame.Origin, 1000);
        w.WriteEndArray();
    }

    private static void WritePoints(Utf8JsonWriter w, string name, IReadOnlyList<Vec3> points, double scale)
    {
        w.WriteStartArray(name);
        foreach (var p in points)
        {
            WriteVec(w, p, scale);
        }

        w.WriteEndArray();
    }

    private static void WriteVec(Utf8JsonWriter w, Vec3 v, double scale)
    {
        w.WriteNumberValue(Mm(v.X * scale));
        w.WriteNumberValue(Mm(v.Y * scale));
        w.WriteNumberValue(Mm(v.Z * scale));
    }

    // A tenth of a micrometre is more than a picture shows and keeps the text short.
    private static double Mm(double value) => Math.Round(value, 4);
}
