using System.Globalization;

namespace Lampwright.Metal.Fields;

/// <summary>Least distances of the members of one hole of the design.</summary>
internal sealed class HoleDistances
{
    public (double Distance, string Member) Edge { get; private set; } = (double.PositiveInfinity, "");

    public PlacedHole? AtEdge { get; private set; }

    public (double Distance, string Member) Bend { get; private set; } = (double.PositiveInfinity, "");

    public PlacedHole? AtBend { get; private set; }

    public (double Distance, string Member) Web { get; private set; } = (double.PositiveInfinity, "");

    public string WebWith { get; private set; } = "";

    /// <summary>The two holes of the thinnest web.</summary>
    public (PlacedHole? Own, PlacedHole? Other) WebHoles { get; private set; }

    public double BendRadius { get; private set; }

    /// <summary>The first member that was looked at.</summary>
    public PlacedHole? First { get; private set; }

    /// <summary>The first member that lies outside, or null.</summary>
    public PlacedHole? Outside { get; private set; }

    public void Take(PlacedHole hole, in (double Edge, double Bend, double BendRadius, bool Inside) seen)
    {
        First ??= hole;
        if (!seen.Inside)
        {
            Outside ??= hole;
        }

        if (seen.Edge < Edge.Distance)
        {
            (Edge, AtEdge) = ((seen.Edge, hole.Member), hole);
        }

        if (seen.Bend < Bend.Distance)
        {
            (Bend, BendRadius, AtBend) = ((seen.Bend, hole.Member), seen.BendRadius, hole);
        }
    }

    public void TakeWeb(double web, PlacedHole own, PlacedHole other)
    {
        if (web < Web.Distance)
        {
            Web = (web, own.Member);
            WebHoles = (own, other);
            WebWith = string.Create(CultureInfo.InvariantCulture, $"{other.Spec.Id}{other.Member}");
        }
    }
}
