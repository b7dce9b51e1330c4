using System.Globalization;
using System.Text;
using Lampwright.Files.Json;
using Lampwright.Files.Opening;

namespace Lampwright.Tests.House;

/// <summary>A decimal comma in the culture of a machine changes nothing: not what is read, not what is computed, not what is written.</summary>
public sealed class CultureTests
{
    [Fact]
    public void An_evaluation_is_the_same_to_the_byte_where_the_comma_is_decimal()
    {
        var usual = In(CultureInfo.InvariantCulture);
        var comma = In(CommaCulture());
        Assert.Equal(usual, comma);
    }

    [Fact]
    public void An_evaluation_is_the_same_to_the_byte_a_second_time() =>
        Assert.Equal(In(CultureInfo.InvariantCulture), In(CultureInfo.InvariantCulture));

    /// <summary>Made here: with invariant globalization the machine's own cultures all look alike.</summary>
    private static CultureInfo CommaCulture()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "\u2212";
        culture.NumberFormat.PercentDecimalSeparator = ",";
        Assert.Equal("1,5", 1.5.ToString(culture));
        return culture;
    }

    private static string In(CultureInfo culture)
    {
        var (before, beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.DefaultThreadCurrentCulture);
        CultureInfo.CurrentCulture = culture;
        // The draws run on other threads.
        CultureInfo.DefaultThreadCurrentCulture = culture;
        try
        {
            var opened = OpenedLight.At(Path.Combine(Repository.Root, "examples/herbarium/herbarium.toml"));
            using var stream = new MemoryStream();
            EvaluationJson.Write(opened.Prepare().WithBands(64), opened.Problems, stream, opened.Place);
            return Encoding.UTF8.GetString(stream.ToArray());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.DefaultThreadCurrentCulture = beforeUi;
        }
    }
}
