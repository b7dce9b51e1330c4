using Lampwright.Design;
using Lampwright.Quantities;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Maps;

/// <summary>Turns the name of a standard cut-out into an opening and the holes of its screws.</summary>
internal static class CutOuts
{
    /// <summary>What follows the name of a cut-out where the holes of its screws are meant.</summary>
    public static string ScrewsOf => " screws";

    /// <summary>Hole patterns of an item, with those of its standard cut-out where it does not give them itself.</summary>
    public static IReadOnlyList<Design.HolePattern> Of(Item item)
    {
        if (StandardCutOut.Named(item.Cutout) is not { } standard)
        {
            return item.Holes;
        }

        var path = $"item.{item.Name}.cutout";
        Design.HolePattern[] named =
        [
            new("cutout", Opening(standard, path), "", null, null, "front"),
            .. standard.Screws.Count > 0
                ? new Design.HolePattern[]
                {
                    new("screws", Screw(standard, path), "", Places(standard, path), null, "front"),
                }
                : [],
        ];
        return [.. item.Holes, .. named.Where(n => item.Holes.All(own => own.Id != n.Id))];
    }

    /// <summary>Holes of a part, each that names a standard cut-out made into its opening (the hole's own id) and its <c>.screws</c>.</summary>
    public static IEnumerable<Hole> Of(Part part)
    {
        foreach (var hole in part.Holes)
        {
            if (StandardCutOut.Named(hole.CutOut) is not { } standard)
            {
                yield return hole;
                continue;
            }

            var path = $"part.{part.Name}.hole.{hole.Id}.cutout";
            yield return hole with
            {
                Shape = Opening(standard, path),
                For = standard.Name,
            };
            if (standard.Screws.Count > 0 && hole.Layout is null)
            {
                yield return hole with
                {
                    Id = hole.Id + ".screws",
                    Shape = Screw(standard, path),
                    For = standard.Name + ScrewsOf,
                    Layout = Places(standard, path),
                    CutOut = "",
                    Live = null,
                };
            }
        }
    }

    private static HoleShape Opening(StandardCutOut of, string path) =>
        new(
            of.IsRound ? HoleKind.Round : HoleKind.Rectangle,
            Value.Exact(of.WidthM, path),
            Value.Exact(of.HeightM, path),
            of.CornerM > 0 ? Value.Exact(of.CornerM, path) : null
        );

    private static HoleShape Screw(StandardCutOut of, string path) =>
        new(HoleKind.Round, Value.Exact(of.ScrewHoleM, path), Value.Exact(of.ScrewHoleM, path), null);

    private static PointsLayout Places(StandardCutOut of, string path) =>
        new([.. of.Screws.Select(s => new Spot(Value.Exact(s.X, path), Value.Exact(s.Y, path)))]);
}
