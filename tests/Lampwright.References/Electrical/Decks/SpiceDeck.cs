using System.Diagnostics;
using System.Globalization;
using Lampwright.Steps;
using Lampwright.Steps.Ways;

namespace Lampwright.References.Electrical.Decks;

/// <summary>A circuit as one of the decks in this folder with its parameters, run by ngspice (Debian: ngspice).</summary>
internal sealed record SpiceDeck(string Name, IReadOnlyDictionary<string, double> Parameters)
{
    /// <summary>Path of ngspice, null where it is not installed.</summary>
    public static string? Program { get; } =
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Select(folder => Path.Combine(folder, "ngspice"))
            .FirstOrDefault(File.Exists);

    /// <summary>The deck of a circuit.</summary>
    /// <param name="circuit">The circuit; what a driver does under its window is not in the decks.</param>
    /// <param name="seconds">Time to simulate.</param>
    /// <param name="step">Greatest step, in seconds.</param>
    public static SpiceDeck Of(WayCircuit circuit, double seconds, double step)
    {
        var p = new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["farad"] = circuit.CapacitorF,
            ["v0"] = circuit.StartV,
            ["stop"] = seconds,
            ["step"] = step,
        };
        var inductive = Source(circuit.Source, p);
        var load = circuit.Load switch
        {
            ConverterLine c => Converter(c, p),
            ChoppedLine c => Chopped(c, p),
            EmitterLine e => Emitter(e, p, "emitter"),
            _ => throw new NotSupportedException(circuit.Load.ToString()),
        };
        var name =
            circuit.Source is DriverOutput ? $"driver-{load}"
            : inductive ? "inductance-constant-power"
            : "supply-constant-power";
        return new(name, p);
    }

    /// <summary>Runs the deck in a folder of its own: time, voltage of the node, emitter current.</summary>
    /// <param name="decks">Folder of the decks.</param>
    public IReadOnlyList<(double S, double V, double A)> Run(string decks)
    {
        var folder = Directory.CreateTempSubdirectory("lampwright-deck-").FullName;
        try
        {
            Prepare(decks, folder);
            Start(folder);
            return
            [
                .. File.ReadLines(Path.Combine(folder, "out.txt"))
                    .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                    .Select(w => (Number(w[0]), Number(w[1]), Number(w[2]))),
            ];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Copies the deck to a folder and writes its parameters beside it.</summary>
    public void Prepare(string decks, string folder)
    {
        File.Copy(Path.Combine(decks, Name + ".cir"), Path.Combine(folder, "deck.cir"));
        var lines = Parameters.Select(p => string.Create(CultureInfo.InvariantCulture, $".param {p.Key}={p.Value:R}"));
        File.WriteAllLines(Path.Combine(folder, "params.inc"), lines);
    }

    /// <summary>Runs a folder that was prepared; the milliseconds from start to end.</summary>
    public static double Start(string folder)
    {
        var start = new ProcessStartInfo(Program!, ["-b", "deck.cir"])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        var since = Stopwatch.GetTimestamp();
        using var process = Process.Start(start)!;
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        process.WaitForExit();
        var ms = Stopwatch.GetElapsedTime(since).TotalMilliseconds;
        var said = output.Result + errors.Result;

        // It ends with 1 where a deck prints nothing by itself; what it says tells whether it went wrong.
        return
            File.Exists(Path.Combine(folder, "out.txt"))
            && !said.Contains("aborted", StringComparison.OrdinalIgnoreCase)
            ? ms
            : throw new InvalidOperationException(said);
    }

    private static double Number(string word) => double.Parse(word, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static bool Source(SourceLine source, Dictionary<string, double> p)
    {
        if (source is SupplyBehindResistance s)
        {
            (p["open"], p["ohm"], p["henry"], p["i0"]) = (s.OpenV, s.Ohm, s.Henry, s.StartA);
            return s.Henry > 0;
        }

        var d = (DriverOutput)source;
        var limit = Math.Min(d.LimitV, 1e6);
        var trips = d.Over != OverVoltage.Clamps;
        (p["i0"], p["vlimit"], p["trips"], p["restart"]) = (
            d.SetA,
            limit,
            trips ? 1 : 0,
            Math.Clamp(d.RestartS, 1e-3, 1e3)
        );
        (p["tripv"], p["ripple"], p["ripplehz"]) = (trips ? limit : 1e6, d.RippleShare, d.RippleHz);
        return false;
    }

    private static string Converter(ConverterLine c, Dictionary<string, double> p)
    {
        (p["watts"], p["on"], p["off"], p["regulated"]) = (c.PowerW, c.OnV, c.OffV, c.EmitterRegulatedA);
        return c.DropOut is null ? "converter" : Emitter(c.DropOut, p, "converter-drop-out");
    }

    private static string Chopped(ChoppedLine c, Dictionary<string, double> p)
    {
        (p["hertz"], p["duty"], p["switchohm"]) = (c.FrequencyHz, c.Duty, Math.Max(c.SwitchOhm, 1e-4));
        return Emitter(c.Emitter, p, "chopped");
    }

    private static string Emitter(EmitterLine e, Dictionary<string, double> p, string load)
    {
        var m = e.Model;
        var straight = m.LogV < 1e-9;
        (p["straight"], p["aled"]) = (straight ? 1 : 0, straight ? 1 : m.LogV);
        p["cled"] = m.OffsetV + (m.SlopeVPerK * (e.JunctionK - m.ReferenceK));
        p["rled"] = Math.Max(1e-6, m.SeriesOhm - (straight ? 1e-3 : 0));
        (p["series"], p["shunt"]) = (Math.Max(e.SeriesOhm, 1e-6), Math.Min(e.ShuntOhm, 1e12));
        return load;
    }
}
