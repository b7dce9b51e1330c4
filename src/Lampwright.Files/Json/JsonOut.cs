using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lampwright.Evaluation;

namespace Lampwright.Files.Json;

/// <summary>The one hand that writes JSON here: predicted numbers with their bands, nothing that is not a finite number.</summary>
internal sealed class JsonOut(Stream stream) : IDisposable
{
    // Texts of a design are data; the reader of a file does not run them. Signs such as Ω stay readable.
    private static readonly JsonWriterOptions options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly Utf8JsonWriter writer = new(stream, options);

    public void Object(string? name, Action content)
    {
        if (name is null)
        {
            writer.WriteStartObject();
        }
        else
        {
            writer.WriteStartObject(name);
        }

        content();
        writer.WriteEndObject();
    }

    public void ObjectOrNull<T>(string name, T? item, Action<T> content)
        where T : class
    {
        if (item is null)
        {
            writer.WriteNull(name);
        }
        else
        {
            Object(name, () => content(item));
        }
    }

    public void Array<T>(string name, IEnumerable<T> items, Action<T> item)
    {
        writer.WriteStartArray(name);
        foreach (var i in items)
        {
            Object(null, () => item(i));
        }

        writer.WriteEndArray();
    }

    public void Predicteds(string name, IEnumerable<Predicted> numbers)
    {
        writer.WriteStartArray(name);
        foreach (var number in numbers)
        {
            Predicted(null, number);
        }

        writer.WriteEndArray();
    }

    /// <summary>A predicted number with its band; null where it has no finite value.</summary>
    public void Predicted(string? name, Predicted? number)
    {
        if (name is not null)
        {
            writer.WritePropertyName(name);
        }

        if (number is not { } p || !double.IsFinite(p.Value) || !double.IsFinite(p.Low) || !double.IsFinite(p.High))
        {
            writer.WriteNullValue();
            return;
        }

        writer.WriteStartObject();
        writer.WritePropertyName("value");
        writer.WriteRawValue(Digits(p.Value));
        writer.WritePropertyName("low");
        writer.WriteRawValue(Digits(p.Low));
        writer.WritePropertyName("high");
        writer.WriteRawValue(Digits(p.High));
        writer.WriteEndObject();
    }

    /// <summary>A number that is not predicted; null where it is not finite or absent.</summary>
    public void Plain(string name, double? number)
    {
        writer.WritePropertyName(name);
        if (number is { } n && double.IsFinite(n))
        {
            writer.WriteRawValue(Digits(n));
        }
        else
        {
            writer.WriteNullValue();
        }
    }

    public void Plains(string name, params ReadOnlySpan<double> numbers)
    {
        writer.WriteStartArray(name);
        foreach (var n in numbers)
        {
            writer.WriteRawValue(Digits(double.IsFinite(n) ? n : 0));
        }

        writer.WriteEndArray();
    }

    public void Count(string name, int number) => writer.WriteNumber(name, number);

    public void Text(string name, string? text)
    {
        if (text is null)
        {
            writer.WriteNull(name);
        }
        else
        {
            writer.WriteString(name, text);
        }
    }

    public void Texts(string name, IEnumerable<string> texts)
    {
        writer.WriteStartArray(name);
        foreach (var text in texts)
        {
            writer.WriteStringValue(text);
        }

        writer.WriteEndArray();
    }

    public void Flag(string name, bool flag) => writer.WriteBoolean(name, flag);

    public void Null(string name) => writer.WriteNull(name);

    public void Dispose() => writer.Dispose();

    /// <summary>Nine figures: finer than any prediction, and the same text on every machine.</summary>
    private static string Digits(double number)
    {
        var text = number.ToString("G9", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }
}
