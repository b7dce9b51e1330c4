using System.Text.Json;

namespace Lampwright.Benchmarks.Problems;

/// <summary>The statement of a tolerance problem: a series chain whose parts, contacts, lead and threshold scatter.</summary>
internal sealed record ToleranceFile(
    double Volts,
    double VoltsTolerance,
    double[] Ohms,
    double Tolerance,
    double TempcoPerK,
    double MostRiseK,
    double ContactMedianOhm,
    double ContactSigma,
    double LeadOhm,
    double LeadTolerance,
    int Samples,
    double[] Percentiles
)
{
    public int Switches => Ohms.Length - 1;

    public int Combinations => 1 << Switches;

    public static ToleranceFile Read(string file)
    {
        using var text = JsonDocument.Parse(File.ReadAllText(file));
        var root = text.RootElement;
        double Of(string key) =>
            root.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.Number
                ? value.GetDouble()
                : throw new BadProblemException($"{key} is missing or no number");
        double[] List(string key) =>
            root.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.Array
                ? [.. value.EnumerateArray().Select(v => v.GetDouble())]
                : throw new BadProblemException($"{key} is missing or no list");
        var read = new ToleranceFile(
            Of("v_sense"),
            Of("v_tol"),
            List("r"),
            Of("r_tol"),
            Of("tempco_ppm") * 1e-6,
            Of("dt_max"),
            Of("contact_median"),
            Of("contact_sigma"),
            Of("lead_ohm"),
            Of("lead_tol"),
            (int)Of("samples"),
            List("percentiles")
        );
        return
            read.Switches is >= 0 and <= 8
            && read.Ohms.All(r => r > 0)
            && read.Samples > 0
            && read.Volts > 0
            && read.ContactMedianOhm > 0
            ? read
            : throw new BadProblemException(
                "one to nine resistors above zero, a threshold and a contact above zero, and samples are needed"
            );
    }
}
