using Lampwright.Evaluation.Answers;

namespace Lampwright.Files.Json;

/// <summary>The answer of the station metal.</summary>
internal static class MetalJson
{
    public static void Write(JsonOut json, MetalAnswer metal)
    {
        json.Array("parts", metal.Parts, p => Part(json, p));
        BendingJson.Write(json, metal.Bending.Value);
    }

    private static void Part(JsonOut json, PartAnswer part)
    {
        json.Text("name", part.Name);
        json.Text("path", part.Path);
        json.Text("sheet", part.Sheet);
        json.Text("material", part.Material);
        json.Plain("thicknessMm", part.ThicknessMm);
        json.Count("count", part.Count);
        json.Predicteds("blankMm", [part.BlankWidthMm, part.BlankHeightMm]);
        json.Predicted("areaMm2", part.AreaMm2);
        json.Predicted("massKg", part.MassKg);
        json.Text("method", part.Blank.Method);
        json.Array(
            "bends",
            part.Blank.Bends,
            b =>
            {
                json.Text("id", b.Id);
                json.Text("flange", b.Flange);
                json.Plain("angleDeg", b.AngleRad * 180 / Math.PI);
                json.Text("direction", b.Direction.ToString().ToLowerInvariant());
                json.Plain("insideRadiusMm", b.InsideRadiusM * 1000);
            }
        );
        json.ObjectOrNull(
            "tube",
            part.Blank.Wrap,
            w =>
            {
                json.Plain("lengthMm", w.LengthM * 1000);
                json.Plains("sizeMm", w.Sides[0].WidthM * 1000, w.Sides[1].WidthM * 1000);
                json.Plain("cornerMm", w.Sides[0].CornerM * 1000);
            }
        );
        json.Count("holeCount", part.Blank.Holes.Count);
        var onFaces = part
            .Folded.Holes.DistinctBy(h => h.Id, StringComparer.Ordinal)
            .ToDictionary(h => h.Id, h => h.CentreOnFace, StringComparer.Ordinal);
        json.Array(
            "holes",
            part.Blank.Holes,
            h =>
            {
                json.Text("id", h.Id);
                json.Text("hole", h.Hole);
                json.Text("on", h.On);
                if (onFaces.TryGetValue(h.Id, out var at))
                {
                    json.Plains("atMm", at.X * 1000, at.Y * 1000);
                }
                else
                {
                    json.Null("atMm");
                }

                json.Plains("onBlankMm", h.Centre.X * 1000, h.Centre.Y * 1000);
                json.Plain("diameterMm", h.DiameterM > 0 ? h.DiameterM * 1000 : null);
                json.Text("purpose", h.Purpose);
            }
        );
    }
}
