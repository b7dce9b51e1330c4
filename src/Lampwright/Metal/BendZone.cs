namespace Lampwright.Metal;

/// <summary>Reads the bend zone of a flange: how far it reaches along the root at each place of the bend.</summary>
internal static class BendZone
{
    /// <summary>Places v at which a side of the zone turns, with both ends.</summary>
    public static List<double> Stops(Panel panel)
    {
        var stops = new List<double>(8) { 0 };
        foreach (var side in (FlangeSide[])[panel.Start, panel.End])
        {
            foreach (var uv in side.Zone)
            {
                if (uv.Y > 1e-12 && uv.Y < panel.Bend!.AllowanceM - 1e-12)
                {
                    stops.Add(uv.Y);
                }
            }
        }

        stops.Add(panel.Bend!.AllowanceM);
        stops.Sort();
        return stops;
    }

    /// <summary>From where to where the zone reaches along x at a place v.</summary>
    public static (double From, double To) Range(Panel panel, double v) =>
        (U(panel.Start, v), panel.RootLength - U(panel.End, v));

    private static double U(FlangeSide side, double v)
    {
        var zone = side.Zone;
        for (var i = 1; i < zone.Count; i++)
        {
            if (v <= zone[i].Y && zone[i].Y > zone[i - 1].Y)
            {
                var share = (v - zone[i - 1].Y) / (zone[i].Y - zone[i - 1].Y);
                return zone[i - 1].X + ((zone[i].X - zone[i - 1].X) * Math.Clamp(share, 0, 1));
            }
        }

        return zone.Count == 0 ? 0 : zone[^1].X;
    }
}
