using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>The box round a folded part, both skins and the backs of its bends.</summary>
internal static class FoldBox
{
    public static (Vec3 Least, Vec3 Most) Of(List<Panel> panels, double thickness)
    {
        var least = new Vec3(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        var most = -least;
        void Take(Vec3 p)
        {
            least = new(Math.Min(least.X, p.X), Math.Min(least.Y, p.Y), Math.Min(least.Z, p.Z));
            most = new(Math.Max(most.X, p.X), Math.Max(most.Y, p.Y), Math.Max(most.Z, p.Z));
        }

        foreach (var panel in panels)
        {
            foreach (var p in new Outline(panel.Flat).Points(1e-4))
            {
                Take(panel.Frame.Out(new(p.X, p.Y, 0)));
                Take(panel.Frame.Out(new(p.X, p.Y, -thickness)));
            }

            if (!panel.IsFlange)
            {
                continue;
            }

            // The back of a bend is farthest along an axis where its radius points along that axis.
            var (z, n) = (panel.AxisFrame.Z, panel.AxisFrame.Y);
            foreach (var (zi, ni) in ((double, double)[])[(z.X, n.X), (z.Y, n.Y), (z.Z, n.Z)])
            {
                for (var turn = -2; turn <= 2; turn++)
                {
                    var angle = Math.Atan2(ni, zi) + (turn * Math.PI);
                    var share = angle / panel.SignedAngle;
                    if (share is > 0 and < 1)
                    {
                        var (from, to) = BendZone.Range(panel, share * panel.Bend!.AllowanceM);
                        Take(FoldMass.BendPoint(panel, from, angle, 0, thickness));
                        Take(FoldMass.BendPoint(panel, to, angle, thickness, thickness));
                        Take(FoldMass.BendPoint(panel, to, angle, 0, thickness));
                        Take(FoldMass.BendPoint(panel, from, angle, thickness, thickness));
                    }
                }
            }
        }

        return (least, most);
    }
}
