using System.Globalization;
using System.IO.Compression;
using System.Text;
using Lampwright.Files.Drawings;
using Lampwright.Files.Opening;
using Lampwright.Metal;
using Lampwright.Tests.House;
using Lampwright.Tests.Metal.Proof;

namespace Lampwright.Tests.Files.Drawings;

/// <summary>Every blank of every example, and some of the random parts, read with ezdxf and measured with shapely.</summary>
public sealed class DxfOfManyPartsTests
{
    /// <summary>Area and length of what CUT draws, one line a file; arcs cut so fine that they are met to a millionth.</summary>
    private const string Measure = """
        import sys, io, math, zipfile, ezdxf
        from shapely.geometry import Polygon
        from shapely.validation import explain_validity
        with zipfile.ZipFile(sys.argv[1]) as z:
            for name in z.namelist():
                doc = ezdxf.read(io.StringIO(z.read(name).decode('ascii').replace('\r\n', '\n')))
                audit = doc.audit()
                shapes = []
                for e in doc.modelspace().query('*[layer=="CUT"]'):
                    runs = []
                    for piece in [e] if e.dxftype() == 'CIRCLE' else e.virtual_entities():
                        run = [piece.dxf.start, piece.dxf.end] if piece.dxftype() == 'LINE' else list(piece.flattening(0.00005))
                        runs.append([(v.x, v.y) for v in run])
                    # Arcs come counter-clockwise, whichever way the outline runs them: each is turned so that it goes on where the last one ended.
                    if len(runs) > 1 and min(math.dist(runs[0][0], q) for q in (runs[1][0], runs[1][-1])) < 1e-6 < min(math.dist(runs[0][-1], q) for q in (runs[1][0], runs[1][-1])):
                        runs[0].reverse()
                    points = runs[0]
                    for run in runs[1:]:
                        if math.dist(points[-1], run[0]) > math.dist(points[-1], run[-1]):
                            run.reverse()
                        points = points + (run[1:] if math.dist(points[-1], run[0]) < 1e-9 else run)
                    shapes.append(Polygon(points))
                shapes.sort(key=lambda s: -s.area)
                outer, holes = shapes[0], shapes[1:]
                print('|'.join([name, doc.dxfversion, str(len(audit.errors) + len(audit.fixes)), next((explain_validity(s) for s in shapes if not s.is_valid), "True"), str(len(holes)),
                      str(all(outer.contains(h) for h in holes)), '%.5f' % (outer.area - sum(h.area for h in holes)),
                      '%.5f' % sum(s.exterior.length for s in shapes)]))
        """;

    [Theory]
    [InlineData("boatshed")]
    [InlineData("puppet-theatre")]
    [InlineData("herbarium")]
    public Task Blanks_of_an_example(string name) =>
        Holds(
            OpenedLight
                .At(Path.Combine(Repository.Root, "examples", name, name + ".toml"))
                .Prepare()
                .Nominal()
                .Metal!.Parts.Select(p => p.Blank)
        );

    [Fact]
    public Task Blanks_of_random_parts() =>
        Holds(
            Enumerable
                .Range(0, 400)
                .Select(i => SheetPart.Of(RandomParts.Of(i)))
                .Where(r =>
                    r.Blank is not null
                    && r.Findings.All(f => f.Code is not ("MET009" or "MET010" or "MET014" or "MET017"))
                )
                .Select(r => r.Blank!)
                .Take(40)
        );

    private static async Task Holds(IEnumerable<Blank> all)
    {
        List<Blank> blanks = [.. all];
        Assert.True(blanks.Count > 2, $"{blanks.Count} blanks");
        var output = await Reader.PythonAsync(Zipped(blanks), ".zip", Measure, "ezdxf", "shapely");
        var lines = output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(blanks.Count, lines.Length);
        for (var i = 0; i < blanks.Count; i++)
        {
            var (words, blank) = (lines[i].Trim().Split('|'), blanks[i]);
            var expected = $"AC1009|0|True|{blank.Holes.Count.ToString(CultureInfo.InvariantCulture)}|True";
            Assert.True(expected == string.Join('|', words[1..6]), $"{blank.Part}: {lines[i]}");
            var (area, length) = (Number(words[6]), Number(words[7]));
            Assert.True(
                Math.Abs(area - (blank.AreaM2 * 1e6)) < 0.05 + (2e-6 * area),
                $"{blank.Part}: {lines[i]}, area {blank.AreaM2 * 1e6}"
            );
            Assert.True(
                Math.Abs(length - (blank.CutLengthM * 1e3)) < 0.02 + (2e-5 * length),
                $"{blank.Part}: {lines[i]}, cuts {blank.CutLengthM * 1e3}"
            );
        }
    }

    private static byte[] Zipped(List<Blank> blanks)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            for (var i = 0; i < blanks.Count; i++)
            {
                using var stream = zip.CreateEntry(i.ToString("000", CultureInfo.InvariantCulture)).Open();
                stream.Write(Encoding.ASCII.GetBytes(DxfBlank.File(blanks[i])));
            }
        }

        return bytes.ToArray();
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
