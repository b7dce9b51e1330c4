using System.Globalization;

namespace Lampwright.Metal.Bending;

/// <summary>What is in the way of a bend, and what frees it, as one says it in the shop.</summary>
public static class BendWords
{
    /// <summary>What is in the way.</summary>
    public static string Of(Hindrance hindrance)
    {
        var at = hindrance.AngleRad > 1e-6 ? $" with the apron at {Mm.Degrees(hindrance.AngleRad)}" : "";
        return hindrance.Obstacle switch
        {
            Obstacle.None => "nothing is in the way",
            Obstacle.Bed => $"{hindrance.Flat} meets the bed{at}",
            Obstacle.Clamp => $"{hindrance.Flat} meets the clamp{at}",
            Obstacle.Apron => $"{hindrance.Flat} meets the apron{at}",
            Obstacle.Fingers when hindrance.FromM > 0 =>
                $"{hindrance.Flat} leaves {Mm.Of(Math.Max(hindrance.ToM, 0))} for fingers where {Mm.Of(hindrance.FromM)} must be clamped",
            Obstacle.Fingers => $"{hindrance.Flat} stands where the fingers must stand{at}",
            Obstacle.FingerWidths =>
                $"no fingers of the set make a row of {Mm.Of(hindrance.FromM)} to {Mm.Of(hindrance.ToM)}",
            Obstacle.Part => $"{hindrance.Flat} meets {hindrance.Other}{at}",
            Obstacle.Hold when double.IsFinite(hindrance.FromM) =>
                $"the clamp would hold {Mm.Of(Math.Max(hindrance.FromM, 0))} of {hindrance.Flat}",
            Obstacle.Hold => $"nothing of {hindrance.Flat} lies flat under the clamp",
            Obstacle.Closing => $"it is swung to {Mm.Degrees(hindrance.AngleRad)}, further than the brake closes",
            Obstacle.Length => "it is longer than the brake",
            _ => throw new InvalidOperationException("An obstacle that nobody knows."),
        };
    }

    /// <summary>What would free a part.</summary>
    public static string Of(Freeing freeing)
    {
        var ways = new List<string>();
        if (freeing.FingerFromM > 0)
        {
            ways.Add($"one more finger of {Mm.Of(freeing.FingerFromM)} to {Mm.Of(freeing.FingerToM)}");
        }

        if (freeing.ByHand)
        {
            ways.Add($"{freeing.Stroke.Name} bent last, by hand over a bar");
        }

        if (freeing.BySeam)
        {
            ways.Add($"{freeing.Stroke.Name} as a part of its own with a seam");
        }

        return string.Join(", or ", ways);
    }

    /// <summary>How many orders, in figures that can be read.</summary>
    public static string Orders(double orders) =>
        orders < 1e15
            ? orders.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', '\u202F')
            : orders.ToString("0.0e0", CultureInfo.InvariantCulture);

    /// <summary>Widths of fingers in millimetres, widest first: 75 + 50 + 25.</summary>
    public static string Fingers(IReadOnlyList<double> widthsM) =>
        string.Join(
            " + ",
            widthsM.OrderDescending().Select(w => Math.Round(w * 1000, 1).ToString("0.#", CultureInfo.InvariantCulture))
        );
}
