using System.Globalization;
using System.Text;
using Lampwright.Files.Drawings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Files.Drawings;

public sealed class DxfBlankTests
{
    /// <summary>
    /// Reads the file with ezdxf, audits it, and lets shapely measure what CUT encloses: outline less holes. Arcs are cut finer
    /// than a micrometre, so the area is met to far better than a square millimetre.
    /// </summary>
    private const string Measure = """
        import sys, math, ezdxf
        from shapely.geometry import Polygon
        doc = ezdxf.readfile(sys.argv[1])
        audit = doc.audit()
        space = doc.modelspace()
        shapes = []
        for e in space.query('*[layer=="CUT"]'):
            points = []
            for piece in [e] if e.dxftype() == 'CIRCLE' else e.virtual_entities():
                run = [piece.dxf.start, piece.dxf.end] if piece.dxftype() == 'LINE' else list(piece.flattening(0.0002))
                run = [(v.x, v.y) for v in run]
                if points and math.dist(points[-1], run[0]) > math.dist(points[-1], run[-1]):
                    run.reverse()
                points += run
            shapes.append(Polygon(points))
        shapes.sort(key=lambda s: -s.area)
        outer, holes = shapes[0], shapes[1:]
        inside = all(outer.contains(h) for h in holes)
        area = outer.area - sum(h.area for h in holes)
        bends = space.query('LINE[layer=="BEND"]')
        marks = space.query('LINE[layer=="MARK"]')
        circles = space.query('CIRCLE[layer=="CUT"]')
        x0, y0, x1, y1 = outer.bounds
        print(doc.dxfversion, len(audit.errors) + len(audit.fixes), len(holes), inside, '%.4f' % area, len(bends), len(marks),
              len(circles), '%.3f %.3f %.3f %.3f' % (x0, y0, x1, y1))
        """;

    [Fact]
    public Task An_independent_reader_finds_area_and_holes_of_a_plate() => Holds(SampleBlanks.Plate());

    [Fact]
    public Task An_independent_reader_finds_area_and_holes_of_a_tray() => Holds(SampleBlanks.Tray());

    [Fact]
    public Task An_independent_reader_finds_area_and_holes_of_a_computed_blank() =>
        Holds(SheetPart.Of(Tests.Metal.Parts.Tray()).Blank!);

    [Fact]
    public async Task An_independent_reader_measures_the_slot_of_the_reference_page() // M.X1, formula (derived): 120 + 9π mm²
    {
        var slot = Outline.Slot(new(0.013, 0.003), 0.026, 0.006);
        var blank = SampleBlanks.Of("slot", slot, [], []);
        var output = await Reader.PythonAsync(
            Encoding.ASCII.GetBytes(DxfBlank.File(blank)),
            ".dxf",
            Measure,
            "ezdxf",
            "shapely"
        );
        Assert.Equal(148.274, double.Parse(output.Split(' ')[4], CultureInfo.InvariantCulture), 0.01);
    }

    [Fact]
    public Task An_odd_name_leaves_a_clean_file() => Holds(SampleBlanks.Plate("pl\r\n  0\r\nEOF ä ∅ <b>"));

    [Fact]
    public void The_file_is_ascii_and_release_12()
    {
        var text = DxfBlank.File(SampleBlanks.Plate("ä∅"));
        Assert.All(text, c => Assert.True(c is >= ' ' and < (char)127 or '\r' or '\n', $"character {(int)c}"));
        Assert.Contains("$ACADVER\r\n  1\r\nAC1009\r\n", text, StringComparison.Ordinal);
        Assert.EndsWith("  0\r\nEOF\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_comma_culture_changes_nothing()
    {
        var expected = DxfBlank.File(SampleBlanks.Tray());
        var before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        try
        {
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(expected, DxfBlank.File(SampleBlanks.Tray()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Half_circles_have_bulge_one_and_quarter_circles_the_tangent_of_an_eighth_turn()
    {
        var text = DxfBlank.File(SampleBlanks.Plate());
        Assert.Contains(" 42\r\n1.0\r\n", text, StringComparison.Ordinal);
        Assert.Contains(" 42\r\n0.414214\r\n", text, StringComparison.Ordinal);
    }

    private static async Task Holds(Blank blank)
    {
        var output = await Reader.PythonAsync(
            Encoding.ASCII.GetBytes(DxfBlank.File(blank)),
            ".dxf",
            Measure,
            "ezdxf",
            "shapely"
        );
        var words = output.Trim().Split(' ');
        Assert.Equal("AC1009", words[0]);
        Assert.Equal("0", words[1]);
        Assert.Equal(blank.Holes.Count.ToString(CultureInfo.InvariantCulture), words[2]);
        Assert.Equal("True", words[3]);
        Assert.Equal(blank.AreaM2 * 1e6, double.Parse(words[4], CultureInfo.InvariantCulture), 0.2);
        Assert.Equal(blank.Bends.Count.ToString(CultureInfo.InvariantCulture), words[5]);
        Assert.Equal((2 * blank.Holes.Count).ToString(CultureInfo.InvariantCulture), words[6]);
        Assert.Equal(blank.Holes.Count(h => h.DiameterM > 0).ToString(CultureInfo.InvariantCulture), words[7]);
        Assert.Equal(blank.WidthM * 1000, double.Parse(words[10], CultureInfo.InvariantCulture), 0.002);
        Assert.Equal(blank.HeightM * 1000, double.Parse(words[11], CultureInfo.InvariantCulture), 0.002);
    }
}
