using System.Diagnostics;
using System.Globalization;
using System.Text;
using Lampwright.Heat.Grid;

namespace Lampwright.References.Heat;

/// <summary>A problem of the grid solver as a deck for CalculiX: hexahedra of eight nodes, films and fluxes on their faces.</summary>
/// <remarks>
/// Cells are laid as the grid lays them, between faces of the shape; a source gives each element what of it lies on the element. One metal only.
/// </remarks>
internal static class CalculixDeck
{
    public static readonly string Program = "/usr/bin/ccx";

    /// <summary>Writes the deck; gives the number of elements.</summary>
    public static int Write(GridSpec spec, string file, double cellM, string solver = "ITERATIVE SCALING")
    {
        var (xs, fin) = Across(spec, cellM);
        var inBase = Even(0, spec.BaseThicknessM, cellM);
        double[] ys = Even(0, spec.AlongM, cellM),
            zs = spec.Fins.Count > 0
                ? [.. inBase, .. Even(spec.BaseThicknessM, spec.FinHeightM, cellM).Skip(1)]
                : inBase;
        int nx = fin.Length,
            ny = ys.Length - 1,
            nz = zs.Length - 1,
            nb = inBase.Length - 1;
        bool Metal(int i, int k) => i >= 0 && i < nx && k < nz && (k < nb || fin[i]);
        long Node(int i, int j, int k) => 1 + i + (nx + 1L) * (j + (ny + 1L) * k);
        var used = new bool[(nx + 1) * (nz + 1)];
        StringBuilder elements = new(),
            films = new(),
            fluxes = new();
        var count = 0;
        void Film(int element, string face, double film)
        {
            if (film > 0)
            {
                films.Append(CultureInfo.InvariantCulture, $"{element},{face},0.,{film:G12}\n");
            }
        }

        for (var k = 0; k < nz; k++)
        {
            for (var j = 0; j < ny; j++)
            {
                for (var i = 0; i < nx; i++)
                {
                    if (!Metal(i, k))
                    {
                        continue;
                    }

                    // Layers count downward: nodes of layer k + 1 are the lower face, S1; then S2 above, S3 at y-, S4 at x+, S5 at y+, S6 at x-.
                    var e = ++count;
                    elements.Append(
                        CultureInfo.InvariantCulture,
                        $"{e},{Node(i, j, k + 1)},{Node(i + 1, j, k + 1)},{Node(i + 1, j + 1, k + 1)},{Node(i, j + 1, k + 1)},{Node(i, j, k)},{Node(i + 1, j, k)},{Node(i + 1, j + 1, k)},{Node(i, j + 1, k)}\n"
                    );
                    used[i * (nz + 1) + k] = used[(i + 1) * (nz + 1) + k] = true;
                    used[i * (nz + 1) + k + 1] = used[(i + 1) * (nz + 1) + k + 1] = true;
                    Film(e, "F2", k == 0 ? spec.Films.AboveWPerM2K : 0);
                    Film(
                        e,
                        "F1",
                        Metal(i, k + 1) ? 0
                            : k < nb ? spec.Films.BelowWPerM2K
                            : spec.Films.FinTipsWPerM2K
                    );
                    Film(
                        e,
                        "F6",
                        i == 0 ? spec.Films.AcrossEdgesWPerM2K
                            : Metal(i - 1, k) ? 0
                            : spec.Films.FinSidesWPerM2K
                    );
                    Film(
                        e,
                        "F4",
                        i == nx - 1 ? spec.Films.AcrossEdgesWPerM2K
                            : Metal(i + 1, k) ? 0
                            : spec.Films.FinSidesWPerM2K
                    );
                    Film(e, "F3", j == 0 ? spec.Films.AlongEdgesWPerM2K : 0);
                    Film(e, "F5", j == ny - 1 ? spec.Films.AlongEdgesWPerM2K : 0);
                    var heat =
                        k > 0
                            ? 0
                            : spec.Sources.Sum(s =>
                                s.PowerW
                                / (s.WidthM * s.DepthM)
                                * Overlap(xs[i], xs[i + 1], s.CentreAcrossM, s.WidthM)
                                * Overlap(ys[j], ys[j + 1], s.CentreAlongM, s.DepthM)
                            );
                    var flux = heat / ((xs[i + 1] - xs[i]) * (ys[j + 1] - ys[j]));
                    if (flux > 0)
                    {
                        fluxes.Append(CultureInfo.InvariantCulture, $"{e},S2,{flux:G12}\n");
                    }
                }
            }
        }

        using var deck = new StreamWriter(file, append: false, Encoding.ASCII, 1 << 20);
        deck.Write("*NODE,NSET=NALL\n");
        for (var k = 0; k <= nz; k++)
        {
            for (var j = 0; j <= ny; j++)
            {
                for (var i = 0; i <= nx; i++)
                {
                    if (used[i * (nz + 1) + k])
                    {
                        deck.Write(
                            string.Create(
                                CultureInfo.InvariantCulture,
                                $"{Node(i, j, k)},{xs[i]:G12},{ys[j]:G12},{-zs[k]:G12}\n"
                            )
                        );
                    }
                }
            }
        }

        deck.Write("*ELEMENT,TYPE=DC3D8,ELSET=EALL\n");
        foreach (var chunk in elements.GetChunks())
        {
            deck.Write(chunk.Span);
        }

        // The top face is asked for at its nodes, in one set.
        deck.Write("*NSET,NSET=TOP,GENERATE\n");
        deck.Write(string.Create(CultureInfo.InvariantCulture, $"1,{(nx + 1) * (ny + 1)},1\n"));
        deck.Write(
            string.Create(
                CultureInfo.InvariantCulture,
                $"*MATERIAL,NAME=METAL\n*CONDUCTIVITY\n{spec.ConductivityWPerMK:G12}\n*SOLID SECTION,ELSET=EALL,MATERIAL=METAL\n"
            )
        );
        deck.Write(
            $"*INITIAL CONDITIONS,TYPE=TEMPERATURE\nNALL,0.\n*STEP\n*HEAT TRANSFER,STEADY STATE,SOLVER={solver}\n"
        );
        deck.Write("*FILM\n");
        foreach (var chunk in films.GetChunks())
        {
            deck.Write(chunk.Span);
        }

        deck.Write("*DFLUX\n");
        foreach (var chunk in fluxes.GetChunks())
        {
            deck.Write(chunk.Span);
        }

        deck.Write("*NODE PRINT,NSET=TOP\nNT\n*END STEP\n");
        return count;
    }

    /// <summary>Runs the deck FILE.inp; gives the time from start to end of the program, ms, and its greatest memory, MB.</summary>
    public static (double Ms, double PeakMb) Run(string folder, string name, int threads = 2)
    {
        var start = new ProcessStartInfo(Program, ["-i", name])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        start.Environment["OMP_NUM_THREADS"] = threads.ToString(CultureInfo.InvariantCulture);
        var since = Stopwatch.GetTimestamp();
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        double peak = 0;
        while (!process.WaitForExit(3))
        {
            peak = Math.Max(peak, PeakKb(process.Id) / 1024.0);
        }

        var ms = Stopwatch.GetElapsedTime(since).TotalMilliseconds;
        Task.WaitAll(said, errors);
        return process.ExitCode == 0 && said.Result.Contains("Job finished", StringComparison.Ordinal)
            ? (ms, peak)
            : throw new InvalidOperationException(
                $"CalculiX ended with {process.ExitCode}: {said.Result} {errors.Result}"
            );
    }

    /// <summary>Rises of the nodes of the top face, from FILE.dat: by x, then y.</summary>
    public static double[,] Top(GridSpec spec, string datFile, double cellM)
    {
        int nx = Across(spec, cellM).Fin.Length,
            ny = Even(0, spec.AlongM, cellM).Length - 1;
        var top = new double[nx + 1, ny + 1];
        foreach (var line in File.ReadLines(datFile))
        {
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (
                words.Length == 2
                && int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out var node)
            )
            {
                top[(node - 1) % (nx + 1), (node - 1) / (nx + 1)] = double.Parse(
                    words[1],
                    CultureInfo.InvariantCulture
                );
            }
        }

        return top;
    }

    /// <summary>Edges of the cells across, and which cells lie over fins.</summary>
    private static (double[] Edges, bool[] Fin) Across(GridSpec spec, double cellM)
    {
        List<double> edges = [0];
        List<bool> fin = [];
        void Add(double to, bool isFin)
        {
            if (to - edges[^1] > 1e-9)
            {
                var more = Even(edges[^1], to - edges[^1], cellM).Skip(1).ToArray();
                edges.AddRange(more);
                fin.AddRange(Enumerable.Repeat(isFin, more.Length));
            }
        }

        foreach (var f in spec.Fins)
        {
            Add(f.FromM, isFin: false);
            Add(f.FromM + f.ThicknessM, isFin: true);
        }

        Add(spec.AcrossM, isFin: false);
        return ([.. edges], [.. fin]);
    }

    private static double[] Even(double from, double length, double cellM)
    {
        var count = Math.Max(1, (int)Math.Round(length / cellM));
        return [.. Enumerable.Range(0, count + 1).Select(i => from + length * i / count)];
    }

    private static double Overlap(double from, double to, double centre, double size) =>
        Math.Max(0, Math.Min(to, centre + size / 2) - Math.Max(from, centre - size / 2));

    /// <summary>High-water mark of a process, KB, as the kernel keeps it.</summary>
    private static long PeakKb(int process)
    {
        try
        {
            var line = File.ReadLines($"/proc/{process}/status")
                .FirstOrDefault(l => l.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null
                ? 0
                : long.Parse(line.AsSpan(6).Trim().ToString().Split(' ')[0], CultureInfo.InvariantCulture);
        }
        catch (IOException)
        {
            return 0;
        }
    }
}
