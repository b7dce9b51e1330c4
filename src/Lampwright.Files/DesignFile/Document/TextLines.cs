namespace Lampwright.Files.DesignFile.Document;

/// <summary>Lines and columns of a text.</summary>
public sealed class TextLines
{
    private readonly List<int> _starts = [0];
    private readonly int _hidden;

    /// <summary>Finds the lines of a text; a byte order mark is no column.</summary>
    public TextLines(string text)
    {
        _hidden = text.StartsWith('\uFEFF') ? 1 : 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n')
            {
                _starts.Add(i + 1);
            }
        }
    }

    /// <summary>How many lines there are.</summary>
    public int Count => _starts.Count;

    /// <summary>Where a line starts; lines count from 1.</summary>
    public int StartOf(int line) => _starts[line - 1];

    /// <summary>Line and column of a place, both from 1.</summary>
    public (int Line, int Column) At(int offset)
    {
        var index = _starts.BinarySearch(offset);
        var line = index >= 0 ? index : ~index - 1;
        return (line + 1, Math.Max(1, offset - _starts[line] + 1 - (line == 0 ? _hidden : 0)));
    }
}
