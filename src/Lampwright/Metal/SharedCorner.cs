using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>A corner where two flanges of one flat meet: the notch between them and the mitres of what stands on them.</summary>
/// <param name="spec">The part.</param>
/// <param name="panel">The flat.</param>
/// <param name="corner">The nominal corner.</param>
/// <param name="a">The flange before the corner; its start side is settled.</param>
/// <param name="b">The flange after the corner; its end side is settled.</param>
/// <param name="tangents">Where the bend tangents cross.</param>
/// <param name="centres">Where the bend centre lines cross.</param>
internal sealed class SharedCorner(PartSpec spec, Panel panel, Vec2 corner, Bent a, Bent b, Vec2 tangents, Vec2 centres)
{
    public void Settle()
    {
        var (uA, uB) = (SideU(a), SideU(b));
        var tabs = a.Panel.Edges[3].Flanges.Count + b.Panel.Edges[1].Flanges.Count;
        var hole = spec.Relief.Kind == CornerRelief.Hole && !a.IsExplicit && !b.IsExplicit && tabs == 0;
        if (hole)
        {
            ReliefHole(uA, uB);
        }
        else
        {
            NotchAt(uA, uB);
        }

        (a.Side.FlatU, b.Side.FlatU) = (Flat(a, uA), Flat(b, uB));
        (a.Side.Kind, b.Side.Kind) = (SideKind.Shared, SideKind.Shared);
        Mitres();
    }

    /// <summary>Where the side runs through the bend zone.</summary>
    private double SideU(Bent bent)
    {
        var u = Math.Max(0, bent.U(centres));
        var staysBack =
            !bent.IsExplicit
            && (spec.Relief.Kind == CornerRelief.Clear || (spec.Relief.Kind == CornerRelief.Overlap && !Covers(bent)));
        return staysBack ? Math.Max(u, spec.Sheet.ThicknessM + spec.Relief.GapM) : u;
    }

    /// <summary>Of two flanges that overlap the one that the design gives first runs over the other's edge.</summary>
    private bool Covers(Bent bent) =>
        spec.Relief.Kind == CornerRelief.Overlap
        && !a.IsExplicit
        && !b.IsExplicit
        && bent.Panel.Index == Math.Min(a.Panel.Index, b.Panel.Index);

    /// <summary>An offset of its own is meant for the flat, even where the bend has to stay back.</summary>
    private double Flat(Bent bent, double u) => bent.IsExplicit || Covers(bent) ? 0 : u;

    private void NotchAt(double uA, double uB)
    {
        // Sides run at a right angle to their bends; the notch ends where they cross, for two automatic sides the bend centres.
        var sideA = new Line2(a.Zero + (a.Along * uA), a.Along.Left);
        var sideB = new Line2(b.Zero + (b.Along * uB), b.Along.Left);
        var notch = sideA.Crossing(sideB);
        if (notch is { } m && Inside(a, m) && Inside(b, m))
        {
            Zone(a, uA, a.V(m));
            Zone(b, uB, b.V(m));
        }
        else
        {
            Straight(a, uA);
            Straight(b, uB);
        }
    }

    private static bool Inside(Bent bent, Vec2 p) => bent.V(p) >= -1e-12 && bent.V(p) <= bent.Allowance;

    private void Zone(Bent bent, double u, double v)
    {
        var zone = bent.Side.Zone;
        // From where the tangents cross to the notch: what lies between the two belongs to one zone or the other.
        zone.Add(new(bent.U(tangents), 0));
        zone.Add(new(u, Math.Max(0, v)));
        zone.Add(new(u, bent.Allowance));
        bent.Side.OutlineFrom = 1;
        bent.Side.ParentPoint = tangents;
    }

    private void Straight(Bent bent, double u)
    {
        var widest = Math.Max(u, bent.U(tangents));
        bent.Side.Zone.Add(new(widest, 0));
        bent.Side.Zone.Add(new(u, bent.Allowance / 2));
        bent.Side.Zone.Add(new(u, bent.Allowance));
        bent.Side.ParentPoint = tangents;
    }

    private void ReliefHole(double uA, double uB)
    {
        var least = (tangents - centres).Length * 1.02;
        var most = 0.98 * Math.Min(Chord(a, uA), Chord(b, uB));
        var radius = Math.Min(Math.Max(ReliefHoleDiameter() / 2, least), Math.Max(most, least));
        var (pA, pB) = (HoleSide(a, uA, radius), HoleSide(b, uB, radius));
        var (from, to) = (pA - tangents, pB - tangents);
        var turn = Math.Atan2(to.Cross(from), to.Dot(from));
        turn = turn <= 0 ? turn + (2 * Math.PI) : turn;
        a.Side.ReliefBulge = -Math.Tan(turn / 4);
        var corner = Math.PI - Math.Acos(Math.Clamp(a.Along.Dot(-b.Along), -1, 1));
        a.Side.FlatBulge = -Math.Tan(corner / 4);
        a.Side.ReliefHole = b.Side.ReliefHole = true;
    }

    private double Chord(Bent bent, double u)
    {
        var d = bent.U(tangents) - u;
        return Math.Sqrt((bent.Allowance * bent.Allowance) + (d * d));
    }

    private Vec2 HoleSide(Bent bent, double u, double radius)
    {
        var d = bent.U(tangents) - u;
        var v = Math.Sqrt(Math.Max(0, (radius * radius) - (d * d)));
        var zone = bent.Side.Zone;
        zone.Add(new(bent.U(tangents) + radius, 0));
        zone.Add(new(u, Math.Min(v, bent.Allowance)));
        zone.Add(new(u, bent.Allowance));
        bent.Side.OutlineFrom = 1;
        bent.Side.ZoneBulge = -Math.Tan(Math.Atan2(v, -d) / 4);
        return bent.Zero + (bent.Along * u) - (bent.Tangent.Direction.Left * (v + bent.Tangent.LeftOf(bent.Zero)));
    }

    /// <summary>FAA-H-8083-31, chapter 4 (memory): the bend radius or more, 1/8 in in thin sheet, 3/16 in from 0.072 in.</summary>
    private double ReliefHoleDiameter() =>
        spec.Relief.HoleDiameterM
        ?? Math.Max(
            Math.Max(a.Panel.Bend!.InsideRadiusM, b.Panel.Bend!.InsideRadiusM),
            spec.Sheet.ThicknessM < 0.072 * 0.0254 ? 0.0254 / 8 : 3 * 0.0254 / 16
        );

    /// <summary>
    /// Where walls lean over their corner, or lips on them turn into it, both are cut along the plane that halves the corner.
    /// </summary>
    private void Mitres()
    {
        var (alongA, alongB) = (a.Along, b.Along);
        var halving = (alongA + alongB).Unit;
        var (p, q, depth) = (a.Panel, b.Panel, 0);
        while (true)
        {
            Mitre(p, p.Start, corner, halving, depth);
            Mitre(q, q.End, corner, halving, depth);
            if (Math.Abs(p.Height - q.Height) > 2 * spec.Sheet.ThicknessM)
            {
                return;
            }

            var (nextP, nextQ) = (p.Edges[2].Flanges, q.Edges[2].Flanges);
            if (nextP.Count == 0 || nextQ.Count == 0 || ++depth > 8)
            {
                return;
            }

            // A flange on a far edge runs its x with its parent's: start stays above start.
            (p, q) = (nextP[0], nextQ[^1]);
            p = nextP.MinBy(f => f.RootStart.X)!;
            q = nextQ.MaxBy(f => f.RootStart.X + f.RootLength)!;
        }
    }

    private void Mitre(Panel flange, FlangeSide side, Vec2 at, Vec2 halving, int depth)
    {
        var isStart = side == flange.Start;
        if ((isStart ? flange.Spec!.StartAngleRad : flange.Spec!.EndAngleRad) is not null)
        {
            return;
        }

        if (depth > 0 && (isStart ? flange.Spec.StartOffsetM : flange.Spec.EndOffsetM) > 0)
        {
            return;
        }

        // The plane holds the corner, the line that halves it and the normal of the flat; seen in the flange it is a line.
        var normal = panel.Frame.Direction(new(-halving.Y, halving.X, 0));
        var origin = panel.Frame.Out(new(at.X, at.Y, 0));
        var start = isStart ? flange.Frame.Origin : flange.Frame.Out(new(flange.RootLength, 0, 0));
        var alongU = isStart ? flange.Frame.X : -flange.Frame.X;
        var perU = normal.Dot(alongU);
        if (Math.Abs(perU) < 1e-6)
        {
            return;
        }

        var slope = -normal.Dot(flange.Frame.Y) / perU;
        var gap = spec.Relief.GapM / 2 / Math.Abs(perU);

        // Edges are cut square: of the two skins the one that reaches further over the plane counts.
        var skins = Math.Max(0, spec.Sheet.ThicknessM * normal.Dot(flange.Frame.Z) / perU);
        var u = (normal.Dot(origin - start) / perU) + skins + gap;
        if (slope > 1e-9)
        {
            side.Mitre = (u, slope);
        }
    }
}
