using System.Text.Json;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Benchmarks.Problems;

/// <summary>Reads the statement of a chain problem.</summary>
/// <remarks>
/// Beside what shared statements have: <c>arrangement</c> (<c>series</c>, <c>parallel</c>, <c>selector</c>), <c>targets</c> (a list in A in place of
/// <c>stops</c> and <c>n_targets</c>), and, for the worst corner in place of the nominal error, any of <c>r_tol</c>, <c>v_tol</c>,
/// <c>lead_tol</c>, <c>tempco_ppm</c> with <c>dt_max</c>, <c>contact_least_ohm</c>, <c>contact_most_ohm</c>.
/// </remarks>
internal static class ChainFile
{
    public static ChainSearchSpec Read(string file)
    {
        using var text = JsonDocument.Parse(File.ReadAllText(file));
        var root = text.RootElement;
        var (volts, most) = (Need(root, "v_sense"), Need(root, "i_max"));
        var contact = Or(root, "contact_ohm", 0);
        string[] corner = ["r_tol", "v_tol", "lead_tol", "tempco_ppm", "contact_least_ohm", "contact_most_ohm"];
        if (!root.TryGetProperty("stock", out var stock) || stock.ValueKind != JsonValueKind.Array)
        {
            throw new BadProblemException("stock is missing");
        }

        try
        {
            return new ChainSearchSpec(
                Kind(root),
                Targets(root, most),
                (int)Need(root, "n_switched"),
                [.. stock.EnumerateArray().Select(p => Part(root, p))],
                new DriverModel(volts, volts / most, 0, 1),
                contact,
                Or(root, "lead_ohm", 0),
                most
            )
            {
                Objective = corner.Any(k => root.TryGetProperty(k, out _))
                    ? ChainObjective.WorstCorner
                    : ChainObjective.Nominal,
                Joined = Flag(root, "composites"),
                OneAfterAnother = Flag(root, "cumulative"),
                LeastOhm = Or(root, "min_ohm", 1e-9),
                MostOhm = Or(root, "max_ohm", 1e9),
                ThresholdTolerance = Or(root, "v_tol", 0),
                LeadTolerance = Or(root, "lead_tol", 0),
                ContactLeastOhm = Or(root, "contact_least_ohm", contact),
                ContactMostOhm = Or(root, "contact_most_ohm", contact),
                AirMostK = ResistorPart.ReferenceK + Or(root, "dt_max", 0),
            };
        }
        catch (ArgumentException e)
        {
            throw new BadProblemException(e.Message);
        }
    }

    private static Arrangement Kind(JsonElement root) =>
        root.TryGetProperty("arrangement", out var kind)
            ? kind.GetString() switch
            {
                "series" => Arrangement.SeriesChain,
                "parallel" => Arrangement.ParallelBranches,
                "selector" => Arrangement.Selector,
                var other => throw new BadProblemException($"arrangement {other} is not known"),
            }
            : Arrangement.SeriesChain;

    private static double[] Targets(JsonElement root, double most)
    {
        if (root.TryGetProperty("targets", out var list))
        {
            return [.. list.EnumerateArray().Select(v => v.GetDouble())];
        }

        var (stops, count) = (Need(root, "stops"), (int)Need(root, "n_targets"));
        return [.. Enumerable.Range(0, count).Select(k => most * Math.Pow(2, -stops * k / Math.Max(1, count - 1)))];
    }

    private static StockPart Part(JsonElement root, JsonElement part) =>
        new(
            Need(part, "ohm"),
            Need(part, "watt") * Or(root, "derate", 1),
            Or(part, "tol", Or(root, "r_tol", 0)),
            Or(root, "tempco_ppm", 0) * 1e-6,
            0,
            part.TryGetProperty("count", out var count) ? count.GetInt32() : null
        );

    private static double Need(JsonElement at, string key) =>
        at.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.Number
            ? value.GetDouble()
            : throw new BadProblemException($"{key} is missing or no number");

    private static double Or(JsonElement at, string key, double otherwise) =>
        at.TryGetProperty(key, out _) ? Need(at, key) : otherwise;

    private static bool Flag(JsonElement at, string key) =>
        at.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.True;
}
