using Lampwright.Quantities;

namespace Lampwright.Tests.Quantities;

public sealed class ExpressionTests
{
    private static readonly Dictionary<string, string> Named = new(StringComparer.Ordinal)
    {
        ["gap"] = "3 mm ± 0.2 mm",
        ["sink.main.base.across"] = "92 mm",
        ["r"] = "0.5 ohm ± 10 %",
        ["air"] = "22 degC ± 3 K",
        ["hot"] = "{air + 40 K}",
        ["angle"] = "30 deg",
        ["a"] = "{b}",
        ["b"] = "{c + 1 mm}",
        ["c"] = "{a}",
        ["bad"] = "1,2 mm",
        ["list[0]"] = "7 mm",
    };

    private static NamedValue Value(string text)
    {
        var values = new NamedValues(
            n => Named.TryGetValue(n, out var found) ? new NamedText(n, found) : null,
            () => Named.Keys
        );
        return values.Resolve(new NamedText("here", text));
    }

    private static Derived Fine(string text)
    {
        var value = Value(text);
        Assert.True(value.Value is not null, $"{text}: {value.Error?.Message}");
        return value.Value;
    }

    [Theory]
    [InlineData("{sink.main.base.across + 2*gap + 8 mm}", 0.106)]
    [InlineData("{ -gap + 5 mm }", 0.002)]
    [InlineData("{2^3}", 8)]
    [InlineData("{-2^2}", -4)]
    [InlineData("{2^-1}", 0.5)]
    [InlineData("{2^3^2}", 512)]
    [InlineData("{7 - 2 - 1}", 4)]
    [InlineData("{8/4/2}", 1)]
    [InlineData("{2*(gap + 1 mm)}", 0.008)]
    [InlineData("{gap^2}", 9e-6)]
    [InlineData("{(gap^2)^0.5}", 0.003)]
    [InlineData("{sqrt(gap*gap)}", 0.003)]
    [InlineData("{max(gap, 5 mm, 1/8 in)}", 0.005)]
    [InlineData("{min(gap, 1 mm)}", 0.001)]
    [InlineData("{abs(-gap)}", 0.003)]
    [InlineData("{sin(angle)}", 0.5)]
    [InlineData("{cos(60 deg)}", 0.5)]
    [InlineData("{tan(45 deg)}", 1)]
    [InlineData("{atan(1)/1 deg}", 45)]
    [InlineData("{round(10.4 mm, 0.5 mm)}", 0.0105)]
    [InlineData("{round(2.5)}", 3)]
    [InlineData("{1/2 in}", 0.0127)]
    [InlineData("{1 1/2 in + gap}", 0.0411)]
    [InlineData("{3/4*gap}", 0.00225)]
    [InlineData("{gap/3/2}", 0.0005)]
    [InlineData("{3 W/(m*K)}", 3)]
    [InlineData("{35 m3/h}", 35.0 / 3600)]
    [InlineData("{2*pi}", 2 * Math.PI)]
    [InlineData("{hot - air}", 40)]
    [InlineData("{hot}", 335.15)]
    [InlineData("{list[0]*2}", 0.014)]
    [InlineData("{0.62}", 0.62)]
    [InlineData("{50 %}", 0.5)]
    public void An_expression_has_its_value(string text, double si) =>
        Assert.Equal(si, Fine(text).Nominal.Si, Math.Abs(si) * 1e-12);

    [Theory]
    [InlineData("{2*gap}", 0.0004)]
    [InlineData("{gap + gap}", 0.0004)]
    [InlineData("{gap - gap}", 0)]
    [InlineData("{gap + 5 mm}", 0.0002)]
    [InlineData("{r*2}", 0.1)]
    [InlineData("{gap^2}", 1.2e-6)]
    [InlineData("{sqrt(gap*gap)}", 0.0002)]
    [InlineData("{1 mm} ± 0.1 mm", 0.0001)]
    [InlineData("{gap*2} ± 0.3 mm", 0.0005)]
    [InlineData("{hot}", 3)]
    public void A_spread_goes_along_with_its_slope(string text, double halfWidth) =>
        Assert.Equal(halfWidth, Fine(text).HalfWidth, 1e-12 + (halfWidth * 1e-9));

    [Theory]
    [InlineData("{gap + r}", 1, "a length", "a resistance")]
    [InlineData("{gap + 2}", 1, "a length", "a plain number")]
    [InlineData("{gapp}", 1, "names nothing", "did you mean gap")]
    [InlineData("{sink.main.base.acros}", 1, "names nothing", "sink.main.base.across")]
    [InlineData("{a}", 1, "circle", "a -> b -> c -> a")]
    [InlineData("{bad}", 1, "no value", "1.2 mm")]
    [InlineData("{gap +}", 6, "Nothing", "missing")]
    [InlineData("{(gap}", 1, "not closed", "bracket")]
    [InlineData("{gap)}", 4, "cannot be read", "end of the expression")]
    [InlineData("{2 gap}", 3, "not a unit", "sign such as *")]
    [InlineData("{gap/0}", 5, "zero", "other than zero")]
    [InlineData("{sqrt(gap)}", 1, "root of a length", "square")]
    [InlineData("{sqrt(0 - 1)}", 1, "negative", "zero or more")]
    [InlineData("{sin(30)}", 1, "a plain number", "30 deg")]
    [InlineData("{gap^0.3}", 5, "no power", "whole power")]
    [InlineData("{max(gap, r)}", 1, "compares", "of a kind")]
    [InlineData("{maxx(gap)}", 1, "no function", "max")]
    [InlineData("{air + air}", 1, "adds temperatures", "difference in K")]
    [InlineData("{2*air}", 1, "multiplies a temperature", "difference in K")]
    [InlineData("{1,5*gap}", 1, "decimal comma", "point")]
    [InlineData("{2*gap} mm", 7, "behind the brace", "units stand inside")]
    [InlineData("{2*gap", 0, "no closing brace", "{2*gap")]
    [InlineData("{}", 1, "Nothing", "missing")]
    [InlineData("{10^400}", 1, "no value", "exists")]
    public void A_wrong_expression_says_what_is_wrong(string text, int offset, string found, string accepted)
    {
        var value = Value(text);
        Assert.Null(value.Value);
        Assert.Contains(found, value.Error!.Message, StringComparison.Ordinal);
        Assert.Contains(accepted, value.Error.Message, StringComparison.Ordinal);
        Assert.Equal(offset, value.Error.Offset);
    }

    [Fact]
    public void A_chain_of_any_length_is_walked_without_recursion()
    {
        var values = new NamedValues(
            n =>
            {
                var i = int.Parse(n[1..], System.Globalization.CultureInfo.InvariantCulture);
                return new NamedText(n, i == 0 ? "1 mm" : FormattableString.Invariant($"{{x{i - 1} + 1 mm}}"));
            },
            () => []
        );
        Assert.Equal(100.001, values.Resolve(new NamedText("x100000", "{x99999 + 1 mm}")).Value!.Nominal.Si, 1e-6);
    }
}
