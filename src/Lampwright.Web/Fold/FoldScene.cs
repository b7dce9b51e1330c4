using System.Text.Json;
using Lampwright.Evaluation;
using Lampwright.Geometry;

namespace Lampwright.Web.Fold;

/// <summary>A scene as the 3D view reads it: millimetres, flat arrays, permanent ids.</summary>
public static class FoldScene
{
    /// <summary>One folded part; null when there is no such part.</summary>
    public static byte[]? OfPart(LightEvaluation? light, string name)
    {
        var part = light?.Metal?.Parts.FirstOrDefault(p => p.Name == name);
        return part is null ? null : Written(w => FoldBody.Write(w, part.Solid.Value, part.Folded, Frame.World));
    }

    /// <summary>The whole light: folded parts as they are, bought things as boxes; null when nothing is placed.</summary>
    public static byte[]? OfAssembly(LightEvaluation? light)
    {
        if (light?.FitUp is not { } fitUp)
        {
            return null;
        }

        return Written(w =>
        {
            foreach (var place in fitUp.Placements)
            {
                var name = place.Id.StartsWith("part.", StringComparison.Ordinal) ? place.Id[5..] : place.Id;
                var part = light.Metal?.Parts.FirstOrDefault(p => p.Name == name);
                if (part is not null)
                {
                    FoldBody.Write(w, part.Solid.Value, null, place.Frame);
                }
                else if (place.BoxM is { } box)
                {
                    FoldBody.Write(w, BoxBody.Of(place.Id, box), null, place.Frame);
                }
            }
        });
    }

    private static byte[] Written(Action<Utf8JsonWriter> bodies)
    {
        var buffer = new System.Buffers.ArrayBufferWriter<byte>(64 * 1024);
        using (var writer = new Utf8JsonWriter(buffer))
        {
            writer.WriteStartObject();
            writer.WriteStartArray("bodies");
            bodies(writer);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        return buffer.WrittenSpan.ToArray();
    }
}
