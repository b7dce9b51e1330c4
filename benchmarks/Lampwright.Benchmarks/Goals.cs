using System.Diagnostics;
using System.Globalization;
using Lampwright.Files.Opening;
using Lampwright.Files.Packet;

namespace Lampwright.Benchmarks;

/// <summary>The project's goals of speed beside what this machine does: medians of warm runs, and of cold starts of the program.</summary>
internal static class Goals
{
    private static readonly int WarmRuns = 41;
    private static readonly int ColdRuns = 9;

    public static int Show(string[] words)
    {
        var program = Path.Combine(Herbarium.Root, "out", "program", "Lampwright.Cli.dll");
        var wanted = words.FirstOrDefault() ?? "";
        var rows = new List<(string Name, string What, Func<Measured> Measure, double Goal, string Unit)>
        {
            ("load", "read the design file", () => Warm(() => OpenedLight.At(Herbarium.File)), double.NaN, "ms"),
            ("nominal", "nominal evaluation, warm", Nominal, 5, "ms"),
            ("bands", "evaluation with all bands, 512 draws, warm", Bands, 60, "ms"),
            ("packet", "packet, warm", Packet, 3000, "ms"),
            ("cold", "evaluate from cold", () => Cold(program, "evaluate", Herbarium.File), 600, "ms"),
            ("cold-packet", "packet from cold", ColdPacket(program), 3000, "ms"),
            ("memory", "greatest memory of the packet from cold", () => Memory(program), 300, "MB"),
            ("fold", "blank, fold and checks of 12 bends and 200 holes", Fold, 1, "ms"),
            ("field-1000", "perforated field of 1,000 holes", () => Field(1000), double.NaN, "ms"),
            ("field-2000", "2,000 holes", () => Field(2000), double.NaN, "ms"),
            ("field-5000", "5,000 holes", () => Field(5000), double.NaN, "ms"),
            ("field-10000", "10,000 holes", () => Field(10000), double.NaN, "ms"),
            ("field-20000", "20,000 holes", () => Field(20000), double.NaN, "ms"),
            ("bends", "order of 12 bends on a brake with 8 fingers", () => Bends(isFree: true), 1000, "ms"),
            ("bends-none", "proof that a part of 12 bends has none", () => Bends(isFree: false), 1000, "ms"),
            ("bend-cards", "from the file to the bend cards of a light with 20 parts", BendCards, 3000, "ms"),
            (
                "twenty",
                "from the file to templates, DXF, SVG of 20 parts, cold",
                () => Twenty(memory: false),
                3000,
                "ms"
            ),
            ("twenty-memory", "greatest memory of that", () => Twenty(memory: true), 400, "MB"),
        };

        if (words is ["papers-of", var file])
        {
            return MetalMeasures.Papers(file) > 0 ? 0 : 1;
        }

        Console.WriteLine(Machine());
        Console.WriteLine();
        Console.WriteLine("| measure | what | median | 10 % to 90 % | processor | goal |");
        Console.WriteLine("|---|---|---:|---:|---:|---:|");
        var missed = 0;
        foreach (
            var (name, what, measure, goal, unit) in rows.Where(r =>
                r.Name.StartsWith(wanted, StringComparison.Ordinal)
            )
        )
        {
            var m = measure();
            var text = double.IsNaN(goal) ? "" : $"{Figure(goal)} {unit}{(m.Median <= goal ? "" : ", missed")}";
            missed += m.Median > goal ? 1 : 0;
            Console.WriteLine(
                $"| {name} | {what} | {Figure(m.Median)} {unit} | {Figure(m.Low)} to {Figure(m.High)} | {(m.ProcessorMs > 0 ? Figure(m.ProcessorMs) + " ms" : "")} | {text} |"
            );
        }

        return missed == 0 ? 0 : 1;
    }

    private static Measured Nominal()
    {
        var opened = OpenedLight.At(Herbarium.File);
        return Warm(() => opened.Prepare().Nominal());
    }

    private static Measured Bands()
    {
        var opened = OpenedLight.At(Herbarium.File);
        return Warm(() => opened.Prepare().WithBands(512));
    }

    private static Measured Packet()
    {
        var opened = OpenedLight.At(Herbarium.File);
        var light = opened.Prepare().WithBands(512);
        return Warm(() => PacketWriter.Zip(opened.Loaded.Design, light, opened.Problems), 7);
    }

    private static Func<Measured> ColdPacket(string program) =>
        () =>
        {
            var folder = Directory.CreateTempSubdirectory("lampwright-speed-").FullName;
            try
            {
                return Cold(program, "packet", Herbarium.File, "--out", Path.Combine(folder, "packet"));
            }
            finally
            {
                Directory.Delete(folder, recursive: true);
            }
        };

    private static Measured Memory(string program)
    {
        var folder = Directory.CreateTempSubdirectory("lampwright-speed-").FullName;
        try
        {
            return Measured.Of(
                Enumerable
                    .Range(0, 3)
                    .Select(_ =>
                        Started(program, "packet", Herbarium.File, "--out", Path.Combine(folder, "packet")).PeakMb
                    )
            );
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Measured Fold() => Warm(() => MetalMeasures.Fold(MetalMeasures.TwelveBends, 12, 200));

    private static Measured Bends(bool isFree)
    {
        var part = MetalMeasures.Fold(BendMeasures.Hat, 12, 0).Folded!;
        return Warm(() => BendMeasures.Plan(part, isFree), 21);
    }

    private static Measured BendCards()
    {
        var path = MetalMeasures.LightOfTwentyParts();
        try
        {
            return Warm(() => BendMeasures.Cards(path), 11);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }
    }

    private static Measured Field(int holes)
    {
        var part = MetalMeasures.Perforated(holes);
        return Warm(() => MetalMeasures.Fold(part, 0, holes * 9 / 10), 21);
    }

    private static Measured Twenty(bool memory)
    {
        var path = MetalMeasures.LightOfTwentyParts();
        try
        {
            var self = typeof(Goals).Assembly.Location;
            var runs = Enumerable.Range(0, 4).Select(_ => Started(self, "--quick", "papers-of", path)).Skip(1).ToList();
            return Measured.Of(runs.Select(r => memory ? r.PeakMb : r.Ms)) with
            {
                ProcessorMs = memory ? 0 : runs.Select(r => r.ProcessorMs).Order().ElementAt(runs.Count / 2),
            };
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }
    }

    private static Measured Warm<T>(Func<T> work, int? runs = null)
    {
        // Until the code is compiled in its final form: that takes pauses as well as rounds, since the compiler waits for quiet.
        for (var pause = 0; pause < 6; pause++)
        {
            var since = Stopwatch.StartNew();
            for (var i = 0; i < 10 || since.ElapsedMilliseconds < 400; i++)
            {
                GC.KeepAlive(work());
            }

            Thread.Sleep(250);
        }

        var rounds = runs ?? WarmRuns;
        using var self = Process.GetCurrentProcess();
        var before = self.TotalProcessorTime;
        var measured = Measured.Of(
            Enumerable
                .Range(0, rounds)
                .Select(_ =>
                {
                    var start = Stopwatch.GetTimestamp();
                    GC.KeepAlive(work());
                    return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
                })
        );
        self.Refresh();
        return measured with { ProcessorMs = (self.TotalProcessorTime - before).TotalMilliseconds / rounds };
    }

    private static Measured Cold(string program, params string[] words)
    {
        var runs = Enumerable.Range(0, ColdRuns).Select(_ => Started(program, words)).Skip(1).ToList();
        return Measured.Of(runs.Select(r => r.Ms)) with
        {
            ProcessorMs = runs.Select(r => r.ProcessorMs).Order().ElementAt(runs.Count / 2),
        };
    }

    private static (double Ms, double PeakMb, double ProcessorMs) Started(string program, params string[] words)
    {
        if (!File.Exists(program))
        {
            throw new InvalidOperationException("The program is not built; run eng/speed, which builds it.");
        }

        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(program);
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        var since = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        var answer = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        var (peak, processorMs) = (0L, 0.0);
        while (!process.WaitForExit(5))
        {
            // The kernel forgets both when the process is gone: the last look before that counts.
            peak = Math.Max(peak, Peak(process.Id));
            processorMs = Math.Max(processorMs, ProcessorMs(process));
        }

        Task.WaitAll(answer, error);
        var ms = since.Elapsed.TotalMilliseconds;
        return process.ExitCode is 0 or 1
            ? (ms, peak / 1024.0, processorMs)
            : throw new InvalidOperationException(
                $"{string.Join(' ', words)} ended with {process.ExitCode}: {error.Result}"
            );
    }

    private static double ProcessorMs(Process process)
    {
        try
        {
            process.Refresh();
            return process.TotalProcessorTime.TotalMilliseconds;
        }
        catch (InvalidOperationException)
        {
            return 0;
        }
    }

    /// <summary>High-water mark of a process, KB, as the kernel keeps it; 0 where there is no such file.</summary>
    private static long Peak(int process)
    {
        try
        {
            foreach (var line in File.ReadLines($"/proc/{process}/status"))
            {
                if (line.StartsWith("VmHWM:", StringComparison.Ordinal))
                {
                    return long.Parse(line.AsSpan(6).Trim().ToString().Split(' ')[0], CultureInfo.InvariantCulture);
                }
            }
        }
        catch (IOException)
        {
            // It has just ended.
        }

        return 0;
    }

    private static string Machine()
    {
        var processor = File.Exists("/proc/cpuinfo")
            ? File.ReadLines("/proc/cpuinfo")
                .FirstOrDefault(l => l.StartsWith("model name", StringComparison.Ordinal))
                ?.Split(':')[1]
                .Trim()
            : null;
        return $"{processor ?? "processor not named"}, {Environment.ProcessorCount} cores; "
            + $"{System.Runtime.InteropServices.RuntimeInformation.OSDescription}; "
            + System.Runtime.InteropServices.RuntimeInformation.FrameworkDescription;
    }

    private static string Figure(double number) =>
        number.ToString(number < 10 ? "F2" : "F0", CultureInfo.InvariantCulture);

    private readonly record struct Measured(double Low, double Median, double High, double ProcessorMs)
    {
        public static Measured Of(IEnumerable<double> runs)
        {
            var sorted = runs.Order().ToArray();
            return new(sorted[sorted.Length / 10], sorted[sorted.Length / 2], sorted[sorted.Length * 9 / 10], 0);
        }
    }
}
