using System.Globalization;

namespace Lampwright.Steps.ChainProof;

/// <summary>Why there is not one value for some position.</summary>
internal static class ChainEmpty
{
    /// <summary>One sentence, the nearest reason first.</summary>
    public static string Words(ChainSearchSpec spec)
    {
        if (spec.Fixed is { Usable: false } stays)
        {
            return stays.AllowedW > 0
                ? "The fixed resistor has no sound resistance or tolerance."
                : Text(
                    $"A part of this kind may carry nothing in air of {Celsius(spec):0} °C: take one of a higher rating or temperature, or cool the place where the resistors sit."
                );
        }

        var usable = spec.Stock.Where(p => p.Usable).ToArray();
        if (spec.Stock.Count == 0)
        {
            return spec.WantedA.Where(a => a is > 0 and < 1e9).ToArray() is { Length: > 0 } wanted
                ? Text(
                    $"The stock has no part in the range that can matter: the wanted steps ask for {spec.Driver.SenseOhm(wanted.Max()):0.####} ohm to {spec.Driver.SenseOhm(wanted.Min()):0.####} ohm in all."
                )
                : "The stock has no part.";
        }

        if (usable.Length == 0)
        {
            return spec.Stock.All(p => !(p.AllowedW > 0))
                ? Text(
                    $"No part of the stock may carry anything in air of {Celsius(spec):0} °C: parts of a higher rating or temperature are needed, or a cooler place."
                )
                : "No part of the stock has a resistance and a rating above zero.";
        }

        return usable.Max(p => p.Ohm) < spec.LeastSwitchedOhm
            ? Text(
                $"Every part of the stock is below {spec.LeastSwitchedOhm * 1000:0.##} mohm, the least that a switched position takes beside its worn contact."
            )
            : Text(
                $"No part of the stock may be taken for a position: its range is {usable.Min(p => p.Ohm):0.####} ohm to {usable.Max(p => p.Ohm):0.####} ohm."
            );
    }

    private static double Celsius(ChainSearchSpec spec) => (spec.AirMostK ?? spec.AirK) - 273.15;

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
