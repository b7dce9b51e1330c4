using System.Globalization;

namespace Lampwright.Quantities;

/// <summary>What a text of units comes to.</summary>
/// <param name="Factor">How many SI units one of it is.</param>
/// <param name="Offset">What is added after the factor; other than 0 only for a temperature on a scale.</param>
/// <param name="Dimension">What it measures.</param>
public readonly record struct UnitValue(double Factor, double Offset, Dimension Dimension);

/// <summary>Reads units: one name, or products, quotients and whole powers of them (<c>W/(m*K)</c>, <c>mm2</c>, <c>kg·m/s²</c>).</summary>
/// <remarks>
/// A product after a quotient without brackets (<c>W/m*K</c>) is read two ways by people and is refused. A temperature scale
/// inside a compound unit means its step: <c>degC/W</c> is <c>K/W</c>.
/// </remarks>
public static class UnitText
{
    private static readonly int DeepestBrackets = 8;

    /// <summary>Reads a whole text as a unit; the empty text is a bare number.</summary>
    /// <param name="text">The text, blanks round it allowed.</param>
    /// <param name="unit">What it comes to.</param>
    /// <param name="error">Why it is no unit; offsets count from the start of the text.</param>
    public static bool TryParse(ReadOnlySpan<char> text, out UnitValue unit, out QuantityError? error) =>
        TryParse(text, 0, out unit, out error);

    internal static bool TryParse(ReadOnlySpan<char> text, int origin, out UnitValue unit, out QuantityError? error)
    {
        unit = new UnitValue(1, 0, Dimension.None);
        error = null;
        var trimmed = text.Trim();
        if (trimmed.IsEmpty)
        {
            return true;
        }

        // The common case: one known name and nothing else.
        if (UnitTable.Find(trimmed) is { } single)
        {
            unit = new UnitValue(single.Factor, single.Offset, single.Dimension);
            return true;
        }

        var reader = new Reader(trimmed, origin + text.IndexOf(trimmed[0]));
        if (!reader.Product(0, out unit))
        {
            error = reader.Error;
            return false;
        }

        return true;
    }

    /// <summary>True where the character can stand in the name of a unit.</summary>
    internal static bool IsNameCharacter(char c) =>
        char.IsLetter(c) || c is '°' or '%' or '″' or '′' or '"' or '\u2126' or '℃' or '℉' or '_';

    /// <summary>Reads one name with its power at the start of the text; for expressions, where signs between names calculate.</summary>
    internal static bool TryTerm(ReadOnlySpan<char> text, out UnitValue unit, out int length)
    {
        var reader = new Reader(text, 0);
        var fine = reader.NamedTerm(out unit, out var offset);
        if (fine && offset != 0 && unit.Dimension == Dimension.TemperatureDifference)
        {
            unit = new UnitValue(unit.Factor, offset, Dimension.Temperature);
        }

        length = reader.Position;
        return fine;
    }

    private ref struct Reader(ReadOnlySpan<char> text, int origin)
    {
        private readonly ReadOnlySpan<char> _text = text;
        private int _position;

        public QuantityError? Error { get; private set; }

        public readonly int Position => _position;

        public bool Product(int depth, out UnitValue unit)
        {
            unit = new UnitValue(1, 0, Dimension.None);
            var sign = 1;
            var divided = false;
            var terms = 0;
            var offset = 0.0;
            SkipBlanks();
            if (Take('/'))
            {
                (sign, divided, terms) = (-1, true, 1);
            }

            while (true)
            {
                SkipBlanks();
                if (!Term(depth, out var term, out var termOffset))
                {
                    return false;
                }

                if (!Dimension.TryCombine(unit.Dimension, term.Dimension, sign, out var dimension))
                {
                    return Fail(_position, 0, "a unit with powers from -60 to 60", "has too high a power");
                }

                unit = new UnitValue(sign > 0 ? unit.Factor * term.Factor : unit.Factor / term.Factor, 0, dimension);
                offset = terms == 0 ? termOffset : 0;
                terms++;
                SkipBlanks();
                if (_position >= _text.Length || _text[_position] == ')')
                {
                    break;
                }

                var at = _position;
                if (Take('/'))
                {
                    (sign, divided) = (-1, true);
                    continue;
                }

                var multiplied = Take('*') || Take('·') || Take('⋅') || Take('×');
                if (!multiplied && !StartsTerm(_text[_position]))
                {
                    return Fail(at, 1, "a unit such as mm, W/(m*K) or m3/h", "is no part of a unit");
                }

                if (divided)
                {
                    return Fail(
                        0,
                        _text.Length,
                        "brackets round what stands under the line, as in W/(m*K)",
                        "can be read two ways"
                    );
                }

                sign = 1;
            }

            if (depth == 0 && _position < _text.Length)
            {
                return Fail(
                    _position,
                    1,
                    "an opening bracket for it, or nothing",
                    "closes a bracket that was not opened"
                );
            }

            // A scale of temperature by itself is a temperature; in a product it is a step.
            if (terms == 1 && offset != 0 && unit.Dimension == Dimension.TemperatureDifference)
            {
                unit = new UnitValue(unit.Factor, offset, Dimension.Temperature);
            }

            if (!double.IsFinite(unit.Factor) || unit.Factor == 0)
            {
                return Fail(0, _text.Length, "a unit within reason", "is out of all measure");
            }

            return true;
        }

        private bool Term(int depth, out UnitValue unit, out double offset)
        {
            offset = 0;
            unit = new UnitValue(1, 0, Dimension.None);
            if (_position < _text.Length && _text[_position] == '(')
            {
                if (depth >= DeepestBrackets)
                {
                    return Fail(_position, 1, "at most eight brackets inside each other", "goes too deep");
                }

                var open = _position++;
                if (!Product(depth + 1, out unit))
                {
                    return false;
                }

                if (!Take(')'))
                {
                    return Fail(open, 1, "a closing bracket", "is not closed");
                }

                return Power(ref unit);
            }

            if (_position < _text.Length && _text[_position] == '1' && IsLoneOne())
            {
                _position++;
                return true;
            }

            return NamedTerm(out unit, out offset);
        }

        public bool NamedTerm(out UnitValue unit, out double offset)
        {
            offset = 0;
            unit = new UnitValue(1, 0, Dimension.None);
            var start = _position;
            while (
                _position < _text.Length
                && (IsNameCharacter(_text[_position]) || (_position > start && char.IsAsciiDigit(_text[_position])))
            )
            {
                _position++;
            }

            var name = _text[start.._position];
            var found = UnitTable.Find(name);
            if (found is null && name.Length > 0)
            {
                // mm2: what is left without the digits is the name, the digits are its power.
                var letters = name.TrimEnd("0123456789");
                if (letters.Length < name.Length && UnitTable.Find(letters) is { } powered)
                {
                    found = powered;
                    _position = start + letters.Length;
                }
            }

            if (found is null)
            {
                var rest = name.Length > 0 ? name : _text[start..Math.Min(_text.Length, start + 1)];
                Error = UnitHints.Unknown(origin + start, rest);
                return false;
            }

            unit = new UnitValue(found.Factor, 0, found.Dimension.AsDifference);
            offset = found.Offset;
            var before = _position;
            return Power(ref unit) && (before == _position || (offset = 0) == 0);
        }

        private bool Power(ref UnitValue unit)
        {
            var at = _position;
            var power = ReadPower();
            if (power is null)
            {
                return Fail(at, Math.Min(2, _text.Length - at), "a whole power such as m^2, m2 or m²", "is no power");
            }

            if (power == 1)
            {
                return true;
            }

            if (!unit.Dimension.TryToPower(power.Value, out var dimension))
            {
                return Fail(at, _position - at, "a power from -60 to 60", "is too high a power");
            }

            unit = new UnitValue(Math.Pow(unit.Factor, power.Value), 0, dimension);
            return true;
        }

        private int? ReadPower()
        {
            if (_position >= _text.Length)
            {
                return 1;
            }

            var c = _text[_position];
            if (Superscript(c) is not null || c is '⁻')
            {
                var negative = Take('⁻');
                var value = 0;
                var digits = 0;
                while (_position < _text.Length && Superscript(_text[_position]) is { } digit && digits < 3)
                {
                    value = (value * 10) + digit;
                    digits++;
                    _position++;
                }

                return digits == 0 ? null : (negative ? -value : value);
            }

            var start = _position;
            if (c == '^')
            {
                _position++;
                if (_position < _text.Length && _text[_position] is '-' or '+')
                {
                    _position++;
                }
            }
            else if (!char.IsAsciiDigit(c))
            {
                return 1;
            }

            var from = c == '^' ? start + 1 : start;
            while (_position < _text.Length && char.IsAsciiDigit(_text[_position]))
            {
                _position++;
            }

            return
                int.TryParse(
                    _text[from.._position],
                    NumberStyles.AllowLeadingSign,
                    CultureInfo.InvariantCulture,
                    out var parsed
                )
                && Math.Abs((long)parsed) <= 60
                ? parsed
                : null;
        }

        private static int? Superscript(char c) =>
            c switch
            {
                '¹' => 1,
                '²' => 2,
                '³' => 3,
                '⁰' => 0,
                >= '⁴' and <= '⁹' => c - '⁰',
                _ => null,
            };

        private readonly bool IsLoneOne() =>
            _position + 1 >= _text.Length || _text[_position + 1] is ' ' or '/' or '*' or ')' or '·';

        private static bool StartsTerm(char c) => IsNameCharacter(c) || c == '(';

        private void SkipBlanks()
        {
            while (_position < _text.Length && char.IsWhiteSpace(_text[_position]))
            {
                _position++;
            }
        }

        private bool Take(char c)
        {
            if (_position >= _text.Length || _text[_position] != c)
            {
                return false;
            }

            _position++;
            return true;
        }

        private bool Fail(int at, int length, string accepted, string why)
        {
            Error = QuantityError.At(origin + at, _text.Slice(at, Math.Min(length, _text.Length - at)), accepted, why);
            return false;
        }
    }
}
