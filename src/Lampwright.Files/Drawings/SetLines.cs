using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>Draws where the nose of the brake's clamp sits: a line, and at its ends triangles that point under the clamp.</summary>
internal static class SetLines
{
    public static void Draw(DrawingBuilder draw, Blank blank, double k)
    {
        foreach (var bend in blank.Bends)
        {
            if (bend.Set is not { } set)
            {
                continue;
            }

            var kind = set.OnInside ? LineKind.SetInside : LineKind.Set;
            var (a, b) = (set.Line.A * k, set.Line.B * k);
            if ((b - a).Length < 1e-9)
            {
                continue;
            }

            draw.Line(bend.Id, kind, a, b);
            draw.Crowd.Take(a, b, 2);
            var along = (b - a).Unit;
            var toClamp = (bend.InnerTangent.A - bend.OuterTangent.A) * k;
            var under = along.Left.Dot(toClamp) >= 0 ? along.Left : -along.Left;
            var inset = Math.Min(6, (b - a).Length / 4);
            foreach (var foot in (Vec2[])[a + (along * inset), b - (along * inset)])
            {
                draw.Triangle(bend.Id, kind, foot - along, foot + along, foot + (under * 1.9));
            }
        }
    }
}
