using System.Diagnostics;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Lampwright.Benchmarks.Problems;

/// <summary><c>NAME FILE [--runs N] [--peer]</c>: solves a problem file and prints one line of JSON.</summary>
internal static class Speed
{
    private static readonly JsonSerializerOptions OneLine = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };

    /// <summary>Every kind of problem in this assembly, by its word.</summary>
    public static IReadOnlyDictionary<string, Problem> Kinds { get; } =
        typeof(Problem)
            .Assembly.GetTypes()
            .Where(t => t.IsSubclassOf(typeof(Problem)) && !t.IsAbstract)
            .Select(t => (Problem)Activator.CreateInstance(t)!)
            .ToDictionary(p => p.Name, StringComparer.Ordinal);

    /// <summary>Runs the words of the command line; 0 when solved, 3 when the call or the file was wrong.</summary>
    public static int Run(string[] words)
    {
        if (!Kinds.TryGetValue(words[0], out var kind))
        {
            return Wrong($"{words[0]} is no problem that is known here");
        }

        var (runs, peer, files) = (0, false, new List<string>());
        for (var i = 1; i < words.Length; i++)
        {
            switch (words[i])
            {
                case "--peer":
                    peer = true;
                    break;
                case "--runs"
                    when i + 1 < words.Length
                        && int.TryParse(words[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out runs)
                        && runs > 0:
                    i++;
                    break;
                case var word when word.StartsWith('-'):
                    return Wrong($"{word} is not understood here");
                default:
                    files.Add(words[i]);
                    break;
            }
        }

        if (files.Count != 1)
        {
            return Wrong($"{words[0]} takes one file");
        }

        try
        {
            Console.WriteLine(JsonSerializer.Serialize(Line(kind, files[0], runs, peer || kind.PeerUnasked), OneLine));
            return 0;
        }
        catch (Exception e) when (e is BadProblemException or IOException or JsonException)
        {
            return Wrong(e.Message);
        }
    }

    private static Dictionary<string, object?> Line(Problem kind, string file, int runs, bool withPeer)
    {
        var prepared = kind.Load(file);
        var (solution, first) = Timed(prepared.Solve);
        var rounds = runs > 0 ? runs : Math.Clamp((int)(3000 / Math.Max(first, 1)), 5, 41);
        var times = new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["ms"] = Warm(prepared.Solve, rounds, first),
        };
        foreach (var (name, work) in prepared.Also)
        {
            times[name] = Warm(work, rounds, first);
        }

        double? peer = null;
        if (withPeer && prepared.PeerMs is { } run)
        {
            // In turn with our own work, so that both see the same machine.
            var own =
                prepared.PeerAgainst == "ms"
                    ? prepared.Solve
                    : prepared.Also.Single(a => a.Name == prepared.PeerAgainst).Work;
            var (ours, theirs) = (new List<double>(), new List<double>());
            for (var i = 0; i < Math.Clamp(rounds, 1, 9); i++)
            {
                theirs.Add(run());
                ours.Add(Round(own));
            }

            (peer, times[prepared.PeerAgainst]) = (Median(theirs), Median(ours));
        }

        var line = new Dictionary<string, object?>(StringComparer.Ordinal)
        {
            ["problem"] = $"{kind.Name} {Path.GetFileName(file)}",
            ["answer"] = prepared.Answer(solution),
        };
        foreach (var (name, ms) in times)
        {
            line[name] = Math.Round(ms, 4);
        }

        line["firstMs"] = Math.Round(first, 3);
        line["peerMs"] = peer is { } p ? Math.Round(p, 3) : null;
        line["ratio"] = peer is { } q ? Math.Round(q / times[prepared.PeerAgainst], 2) : null;
        return line;
    }

    /// <summary>Median of warm runs. Short work is repeated until the compiler has brought it to its final form.</summary>
    private static double Warm(Func<object> work, int rounds, double firstMs)
    {
        for (var pause = 0; pause < 4 && firstMs < 1000; pause++)
        {
            var since = Stopwatch.StartNew();
            for (var i = 0; i < 10 && since.ElapsedMilliseconds < 2000 || since.ElapsedMilliseconds < 200; i++)
            {
                GC.KeepAlive(work());
            }

            Thread.Sleep(150);
        }

        return Median([.. Enumerable.Range(0, rounds).Select(_ => Round(work))]);
    }

    // One round: the caches filled again after whatever ran in between, then the time of one call; of short work the mean of as many
    // as fill a millisecond, as the peers count it.
    private static double Round(Func<object> work)
    {
        var once = Timed(work).Ms;
        if (once > 100)
        {
            return once;
        }

        var calls = Math.Clamp((int)(1 / Math.Max(once, 1e-4)), 1, 1000);
        var start = Stopwatch.GetTimestamp();
        for (var i = 0; i < calls; i++)
        {
            GC.KeepAlive(work());
        }

        return Stopwatch.GetElapsedTime(start).TotalMilliseconds / calls;
    }

    private static (object Result, double Ms) Timed(Func<object> work)
    {
        var start = Stopwatch.GetTimestamp();
        var result = work();
        return (result, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }

    private static double Median(List<double> runs)
    {
        runs.Sort();
        return runs[runs.Count / 2];
    }

    private static int Wrong(string words)
    {
        Console.Error.WriteLine(
            $"{words}. eng/speed NAME FILE [--runs N] [--peer], NAME one of: {string.Join(' ', Kinds.Keys.Order(StringComparer.Ordinal))}"
        );
        return 3;
    }
}
