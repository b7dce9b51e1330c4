using System.Globalization;
using System.Text;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Files.Drawings;

/// <summary>Writes a blank as DXF of release 12 (<c>AC1009</c>): millimetres, ASCII, full size, zero at the lower left corner.</summary>
/// <remarks>
/// Layers: <c>CUT</c> (outline as a closed polyline whose arcs are bulges, round holes as circles, other holes as closed polylines),
/// <c>BEND</c> (middle of each bend zone), <c>MARK</c> (a cross where each hole is punched), <c>SET_OUT</c> and <c>SET_IN</c> (where the nose
/// of the brake sits, scribed on the outside or on the inside; all seen on the outside), <c>ENGRAVE</c> (letters, open polylines). The corner lines of a
/// tube's wrap are on <c>MARK</c>. A cutter runs CUT alone; a maker
/// prints all.
/// <para><b>Source</b>: DXF reference, release 12, group codes. <b>Checked by</b>: an independent reader (audit, area, count of
/// holes) and rows M.X1, M.X2.</para>
/// </remarks>
public static class DxfBlank
{
    /// <summary>Half an arm of a punch mark, mm.</summary>
    private static readonly double MarkMm = 1.5;

    /// <summary>The file as text; lines end in carriage return and line feed, as the format's readers on every system expect.</summary>
    public static string File(Blank blank)
    {
        ArgumentNullException.ThrowIfNull(blank);
        var dxf = new Writer();
        Header(dxf, blank);
        Tables(dxf);
        dxf.Pair(0, "SECTION").Pair(2, "ENTITIES");
        dxf.Polyline("CUT", blank.Outline);
        foreach (var hole in blank.Holes)
        {
            if (hole.DiameterM > 0)
            {
                dxf.Circle("CUT", hole.Centre, hole.DiameterM / 2);
            }
            else
            {
                dxf.Polyline("CUT", hole.Outline);
            }
        }

        foreach (var bend in blank.Bends)
        {
            dxf.Line("BEND", bend.CentreLine.A * 1000, bend.CentreLine.B * 1000);
            if (bend.Set is { } set)
            {
                dxf.Line(set.OnInside ? "SET_IN" : "SET_OUT", set.Line.A * 1000, set.Line.B * 1000);
            }
        }

        foreach (var mark in blank.Marks)
        {
            foreach (var stroke in mark.Strokes)
            {
                dxf.Stroke(mark.Kind == BlankMarkKind.Letters ? "ENGRAVE" : "MARK", stroke);
            }
        }

        foreach (var hole in blank.Holes)
        {
            var c = hole.Centre * 1000;
            dxf.Line("MARK", c - new Vec2(MarkMm, 0), c + new Vec2(MarkMm, 0));
            dxf.Line("MARK", c - new Vec2(0, MarkMm), c + new Vec2(0, MarkMm));
        }

        return dxf.Pair(0, "ENDSEC").Pair(0, "EOF").ToString();
    }

    private static void Header(Writer dxf, Blank blank)
    {
        dxf.Pair(
            999,
            $"{SafeName.Of(blank.Part)}, {Numbers.Mm(blank.ThicknessM)} mm {SafeName.Of(blank.Sheet)}, millimetres"
        );
        dxf.Pair(0, "SECTION").Pair(2, "HEADER");
        dxf.Pair(9, "$ACADVER").Pair(1, "AC1009");
        dxf.Pair(9, "$INSBASE").Point(default);
        var (least, most) = blank.Outline.Box;
        dxf.Pair(9, "$EXTMIN").Point(least * 1000);
        dxf.Pair(9, "$EXTMAX").Point(most * 1000);
        dxf.Pair(9, "$LUNITS").Pair(70, "2");
        dxf.Pair(9, "$MEASUREMENT").Pair(70, "1");
        dxf.Pair(9, "$INSUNITS").Pair(70, "4");
        dxf.Pair(0, "ENDSEC");
    }

    private static void Tables(Writer dxf)
    {
        dxf.Pair(0, "SECTION").Pair(2, "TABLES");
        dxf.Pair(0, "TABLE").Pair(2, "LTYPE").Pair(70, "1");
        dxf.Pair(0, "LTYPE")
            .Pair(2, "CONTINUOUS")
            .Pair(70, "0")
            .Pair(3, "Solid line")
            .Pair(72, "65")
            .Pair(73, "0")
            .Pair(40, "0.0");
        dxf.Pair(0, "ENDTAB");
        dxf.Pair(0, "TABLE").Pair(2, "LAYER").Pair(70, "7");
        foreach (
            var (layer, colour) in ((string, string)[])
                [
                    ("0", "7"),
                    ("CUT", "7"),
                    ("BEND", "1"),
                    ("MARK", "5"),
                    ("SET_OUT", "6"),
                    ("SET_IN", "4"),
                    ("ENGRAVE", "3"),
                ]
        )
        {
            dxf.Pair(0, "LAYER").Pair(2, layer).Pair(70, "0").Pair(62, colour).Pair(6, "CONTINUOUS");
        }

        dxf.Pair(0, "ENDTAB").Pair(0, "ENDSEC");
    }

    /// <summary>Group codes and values, a pair of lines each.</summary>
    private sealed class Writer
    {
        private readonly StringBuilder text = new();

        public Writer Pair(int code, string value)
        {
            text.Append(code.ToString(CultureInfo.InvariantCulture).PadLeft(3))
                .Append("\r\n")
                .Append(value)
                .Append("\r\n");
            return this;
        }

        public Writer Point(Vec2 p) => Pair(10, Numbers.File(p.X)).Pair(20, Numbers.File(p.Y)).Pair(30, "0.0");

        public void Line(string layer, Vec2 a, Vec2 b)
        {
            Pair(0, "LINE").Pair(8, layer).Point(a);
            Pair(11, Numbers.File(b.X)).Pair(21, Numbers.File(b.Y)).Pair(31, "0.0");
        }

        public void Circle(string layer, Vec2 centre, double radius) =>
            Pair(0, "CIRCLE").Pair(8, layer).Point(centre * 1000).Pair(40, Numbers.File(radius * 1000));

        public void Polyline(string layer, Outline outline)
        {
            Pair(0, "POLYLINE").Pair(8, layer).Pair(66, "1").Point(default).Pair(70, "1");
            foreach (var corner in outline.Corners)
            {
                Pair(0, "VERTEX").Pair(8, layer).Point(corner.Point * 1000);
                if (corner.Bulge != 0)
                {
                    Pair(42, Numbers.File(corner.Bulge));
                }
            }

            Pair(0, "SEQEND").Pair(8, layer);
        }

        public void Stroke(string layer, IReadOnlyList<Vec2> points)
        {
            Pair(0, "POLYLINE").Pair(8, layer).Pair(66, "1").Point(default).Pair(70, "0");
            foreach (var point in points)
            {
                Pair(0, "VERTEX").Pair(8, layer).Point(point * 1000);
            }

            Pair(0, "SEQEND").Pair(8, layer);
        }

        public override string ToString() => text.ToString();
    }
}
