using System.Buffers.Binary;
using System.Text;

namespace Lampwright.Files.Packet.Fonts;

/// <summary>What layout needs to know of a TrueType file: which glyph a character has, how wide it is, which glyphs are tabular figures.</summary>
/// <remarks>
/// Reads cmap format 4, hmtx and the single substitutions of the GSUB feature <c>tnum</c>. Source: OpenType specification 1.9,
/// chapters cmap, hmtx and GSUB (lookup types 1 and 7).
/// </remarks>
internal sealed class FontFile
{
    private readonly Dictionary<string, (int Offset, int Length)> tables = [];
    private readonly Dictionary<int, int> glyphs = [];
    private readonly int horizontalCount;
    private readonly int horizontal;

    public FontFile(byte[] bytes)
    {
        Bytes = bytes;
        for (var (i, count) = (0, U16(4)); i < count; i++)
        {
            var record = 12 + (16 * i);
            tables[Encoding.ASCII.GetString(bytes, record, 4)] = (U32(record + 8), U32(record + 12));
        }

        UnitsPerEm = U16(tables["head"].Offset + 18);
        horizontalCount = U16(tables["hhea"].Offset + 34);
        horizontal = tables["hmtx"].Offset;
        ReadCharacters();
    }

    public byte[] Bytes { get; }

    public int UnitsPerEm { get; }

    /// <summary>Glyph of each character of the basic plane.</summary>
    public IReadOnlyDictionary<int, int> Glyphs => glyphs;

    public int AdvanceOf(int glyph) => U16(horizontal + (4 * Math.Min(glyph, horizontalCount - 1)));

    /// <summary>Tabular form of each glyph that has one.</summary>
    public IReadOnlyDictionary<int, int> TabularForms()
    {
        var forms = new Dictionary<int, int>();
        if (!tables.TryGetValue("GSUB", out var gsub))
        {
            return forms;
        }

        var (features, lookups) = (gsub.Offset + U16(gsub.Offset + 6), gsub.Offset + U16(gsub.Offset + 8));
        for (var i = 0; i < U16(features); i++)
        {
            var record = features + 2 + (6 * i);
            if (Encoding.ASCII.GetString(Bytes, record, 4) != "tnum")
            {
                continue;
            }

            var feature = features + U16(record + 4);
            for (var k = 0; k < U16(feature + 2); k++)
            {
                var lookup = lookups + U16(lookups + 2 + (2 * U16(feature + 4 + (2 * k))));
                for (var n = 0; n < U16(lookup + 4); n++)
                {
                    ReadSubstitution(U16(lookup), lookup + U16(lookup + 6 + (2 * n)), forms);
                }
            }
        }

        return forms;
    }

    private void ReadSubstitution(int type, int subtable, Dictionary<int, int> forms)
    {
        if (type == 7)
        {
            ReadSubstitution(U16(subtable + 2), subtable + U32(subtable + 4), forms);
            return;
        }

        if (type != 1)
        {
            return;
        }

        var index = 0;
        foreach (var glyph in Coverage(subtable + U16(subtable + 2)))
        {
            forms.TryAdd(
                glyph,
                U16(subtable) == 1 ? (glyph + U16(subtable + 4)) & 0xFFFF : U16(subtable + 6 + (2 * index))
            );
            index++;
        }
    }

    private IEnumerable<int> Coverage(int table)
    {
        for (var i = 0; i < U16(table + 2); i++)
        {
            if (U16(table) == 1)
            {
                yield return U16(table + 4 + (2 * i));
                continue;
            }

            var range = table + 4 + (6 * i);
            for (var glyph = U16(range); glyph <= U16(range + 2); glyph++)
            {
                yield return glyph;
            }
        }
    }

    private void ReadCharacters()
    {
        var cmap = tables["cmap"].Offset;
        for (var i = 0; i < U16(cmap + 2); i++)
        {
            var subtable = cmap + U32(cmap + 4 + (8 * i) + 4);
            if (U16(subtable) == 4)
            {
                ReadSegments(subtable);
                return;
            }
        }
    }

    private void ReadSegments(int table)
    {
        var doubled = U16(table + 6);
        for (var i = 0; i < doubled; i += 2)
        {
            var (last, first) = (U16(table + 14 + i), U16(table + 16 + doubled + i));
            var delta = U16(table + 16 + (2 * doubled) + i);
            var place = table + 16 + (3 * doubled) + i;
            for (var code = first; code <= last && code != 0xFFFF; code++)
            {
                var offset = U16(place);
                var raw = offset == 0 ? code : U16(place + offset + (2 * (code - first)));
                if (raw != 0)
                {
                    glyphs[code] = (raw + delta) & 0xFFFF;
                }
            }
        }
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(Bytes.AsSpan(at));

    private int U32(int at) => (int)BinaryPrimitives.ReadUInt32BigEndian(Bytes.AsSpan(at));
}
