using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Files.Charts;

/// <summary>What the error of a chain is weighed against.</summary>
public enum TradeOffAxis
{
    /// <summary>Count of soldered parts.</summary>
    Parts,

    /// <summary>Load of the part that is nearest to its limit.</summary>
    Load,

    /// <summary>Count of switches.</summary>
    Switches,
}

/// <summary>Pictures of the best chain: how far each wanted step is missed, and what a smaller error costs.</summary>
public static class ChainCharts
{
    private static readonly double MostWorthSeeing = 100;

    /// <summary>Current of each wanted step against the wanted one, in percent, from its low to its high end; null without a chain.</summary>
    /// <param name="chain">The answer.</param>
    /// <param name="shown">Which chain.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="other">A second chain to lay beside it; null for none.</param>
    /// <param name="otherName">What that is called.</param>
    public static Chart? Errors(
        ChainAnswer chain,
        ChainSearchResult shown,
        string name,
        ChainSearchResult? other = null,
        string otherName = ""
    )
    {
        ArgumentNullException.ThrowIfNull(chain);
        ArgumentNullException.ThrowIfNull(shown);
        var gives = chain.Gives(shown).ToList();
        if (gives.Count == 0)
        {
            return null;
        }

        var beside = other is { Steps.Count: > 0 } ? 0.14 : 0;
        List<ChartLayer> layers = [new DotLayer(name, Palette.Flow, Points(gives), Shift: -beside)];
        if (beside > 0)
        {
            layers.Add(new DotLayer(otherName, Palette.Soft, Points([.. chain.Gives(other!)]), Shift: beside));
        }

        return new(
            "Given against wanted",
            new("", "") { Places = [.. gives.Select(g => g.Wanted)] },
            new("current, given against wanted", "%"),
            layers
        )
        {
            Says =
                "The dot is the nominal current against the wanted one; the bar holds it with every tolerance at either end.",
        };
    }

    /// <summary>Worst error of each offer against what it costs; null where there are none.</summary>
    /// <param name="chain">The answer.</param>
    /// <param name="along">What it is weighed against.</param>
    public static Chart? TradeOff(ChainAnswer chain, TradeOffAxis along)
    {
        ArgumentNullException.ThrowIfNull(chain);
        var pins = chain
            .Offers.Select((o, i) => (o, Pin: new Pin(Cost(o, along), Percent(o), Letter(i), Number(o))))
            .Where(p => p.Pin.Y <= MostWorthSeeing)
            .ToList();
        if (pins.Count == 0)
        {
            return null;
        }

        List<Pin> Those(bool proven) => [.. pins.Where(p => p.o.Choice.Found.Proven == proven).Select(p => p.Pin)];
        List<ChartLayer> layers = [];
        if (Those(false) is { Count: > 0 } open)
        {
            layers.Add(new PinLayer("best found", Palette.Flow, open, IsOpen: true));
        }

        if (Those(true) is { Count: > 0 } proven)
        {
            layers.Add(new PinLayer("proven best of its kind", Palette.Hold, proven));
        }

        return new(
            "What a smaller error costs",
            Axis(pins.ConvertAll(p => p.Pin), along),
            new("worst error", "%") { Least = 0 },
            layers
        )
        {
            Says = "Lower is nearer to what is wanted; further left is simpler or cooler.",
        };
    }

    /// <summary>Where the points of a trade-off lie in a drawing of a size, as shares of its width and height, by offer.</summary>
    /// <param name="chart">The trade-off.</param>
    /// <param name="width">Width of the drawing.</param>
    /// <param name="height">Height of the drawing.</param>
    /// <param name="size">Height of its text's em.</param>
    public static IReadOnlyDictionary<int, (double X, double Y)> Places(
        Chart chart,
        double width,
        double height,
        double size
    )
    {
        ArgumentNullException.ThrowIfNull(chart);
        var ink = new PlaceInk();
        ChartDrawing.Draw(chart with { Title = "", Says = "" }, ink, 0, 0, width, height, size);
        return ink.Places.ToDictionary(p => Number(p.Key), p => (p.Value.X / width, p.Value.Y / height));
    }

    /// <summary>The letter that an offer has in picture and list.</summary>
    public static string Letter(int offer) => ((char)('A' + (offer % 26))).ToString();

    private static int Number(string letter) => letter[0] - 'A';

    private static string Number(ChainOffer offer) => ChartText.Number(Percent(offer), 3) + " %";

    private static double Percent(ChainOffer offer) => 100 * offer.Choice.Found.WorstError;

    private static double Cost(ChainOffer offer, TradeOffAxis along) =>
        along switch
        {
            TradeOffAxis.Load => 100 * offer.Choice.Found.MostLoad,
            TradeOffAxis.Switches => offer.Choice.Switches,
            _ => offer.Choice.Found.PartCount,
        };

    private static Axis Axis(List<Pin> pins, TradeOffAxis along)
    {
        if (along == TradeOffAxis.Load)
        {
            return new("most loaded part, share of what it may carry", "%") { Least = 0 };
        }

        var name = along == TradeOffAxis.Parts ? "soldered parts" : "switches";
        return new(name, "")
        {
            Least = pins.Min(p => p.X) - 1,
            Most = pins.Max(p => p.X) + 1,
            Tick = 1,
        };
    }

    private static List<(double X, Predicted Y)> Points(List<(string Wanted, WantedStep Gives)> gives)
    {
        static double Off(double amps, WantedStep s) => 100 * ((amps / s.WantedA) - 1);
        return
        [
            .. gives.Select(
                (g, k) =>
                    (
                        (double)k,
                        new Predicted(
                            Off(g.Gives.CurrentA, g.Gives),
                            Off(g.Gives.LowA, g.Gives),
                            Off(g.Gives.HighA, g.Gives)
                        )
                    )
            ),
        ];
    }

    /// <summary>Draws nothing and keeps where the points lie.</summary>
    private sealed class PlaceInk : IInk
    {
        public Dictionary<string, (double X, double Y)> Places { get; } = new(StringComparer.Ordinal);

        public void Line(double x0, double y0, double x1, double y1, Stroke stroke) { }

        public void Path(
            IReadOnlyList<(double X, double Y)> points,
            bool closed,
            Stroke? stroke,
            Tint? fill = null,
            double opacity = 1
        ) { }

        public void Circle(double x, double y, double radius, Stroke? stroke, Tint? fill = null) { }

        public void Text(string text, double x, double y, TextStyle style) { }

        public void Readout(double x, double y, double width, double height, Readout readout) =>
            Places[readout.X] = (x + (width / 2), y + (height / 2));
    }
}
