using System.Buffers.Binary;
using System.Text;

namespace Lampwright.Files.Packet.Fonts;

/// <summary>Gives a copy of a font in which the figures are the tabular ones, so that columns of numbers stand under each other.</summary>
/// <remarks>
/// The PDF library knows no font features. The copy carries a cmap of its own (format 4) that leads the figures, the signs and the
/// space between them to the glyphs of the feature <c>tnum</c>; nothing else of the font changes.
/// </remarks>
internal static class TabularFigures
{
    public static byte[] Of(byte[] font)
    {
        var file = new FontFile(font);
        var forms = file.TabularForms();
        var glyphs = file.Glyphs.ToDictionary(g => g.Key, g => forms.GetValueOrDefault(g.Value, g.Value));
        return WithTable(font, "cmap", CharacterMap(glyphs));
    }

    private static byte[] CharacterMap(Dictionary<int, int> glyphs)
    {
        var segments = new List<(int First, int Last, int Delta)>();
        foreach (var (code, glyph) in glyphs.OrderBy(g => g.Key))
        {
            var delta = (glyph - code) & 0xFFFF;
            if (segments.Count > 0 && segments[^1].Last == code - 1 && segments[^1].Delta == delta)
            {
                segments[^1] = segments[^1] with { Last = code };
            }
            else
            {
                segments.Add((code, code, delta));
            }
        }

        segments.Add((0xFFFF, 0xFFFF, 1));
        var doubled = 2 * segments.Count;
        var log = (int)Math.Log2(segments.Count);
        var range = 2 << log;
        var words = new List<int> { 0, 1, 3, 1, 0, 12, 4, 16 + (4 * doubled), 0, doubled, range, log, doubled - range };
        words.AddRange(segments.Select(s => s.Last));
        words.Add(0);
        words.AddRange(segments.Select(s => s.First));
        words.AddRange(segments.Select(s => s.Delta));
        words.AddRange(segments.Select(_ => 0));
        var bytes = new byte[2 * words.Count];
        for (var i = 0; i < words.Count; i++)
        {
            BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(2 * i), (ushort)words[i]);
        }

        return bytes;
    }

    private static byte[] WithTable(byte[] font, string tag, byte[] table)
    {
        var start = (font.Length + 3) & ~3;
        var result = new byte[start + ((table.Length + 3) & ~3)];
        font.CopyTo(result, 0);
        table.CopyTo(result, start);
        for (var record = 12; ; record += 16)
        {
            if (Encoding.ASCII.GetString(result, record, 4) == tag)
            {
                BinaryPrimitives.WriteUInt32BigEndian(result.AsSpan(record + 4), Sum(result.AsSpan(start)));
                BinaryPrimitives.WriteUInt32BigEndian(result.AsSpan(record + 8), (uint)start);
                BinaryPrimitives.WriteUInt32BigEndian(result.AsSpan(record + 12), (uint)table.Length);
                return result;
            }
        }
    }

    private static uint Sum(ReadOnlySpan<byte> bytes)
    {
        var sum = 0u;
        for (var i = 0; i + 3 < bytes.Length; i += 4)
        {
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(bytes[i..]));
        }

        return sum;
    }
}
