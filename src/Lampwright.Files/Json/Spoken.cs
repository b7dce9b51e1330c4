using System.Globalization;
using System.Text;

namespace Lampwright.Files.Json;

/// <summary>The words of the core as lower-case words of a file: <c>SupplyResistor</c> is <c>supply resistor</c>.</summary>
public static class Spoken
{
    /// <summary>A word of the core.</summary>
    public static string Of(Enum word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var text = new StringBuilder();
        foreach (var sign in word.ToString())
        {
            if (char.IsUpper(sign) && text.Length > 0)
            {
                text.Append(' ');
            }

            text.Append(char.ToLower(sign, CultureInfo.InvariantCulture));
        }

        return text.ToString();
    }
}
