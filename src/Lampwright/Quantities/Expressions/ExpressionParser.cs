namespace Lampwright.Quantities;

/// <summary>Reads an expression by descent: sums of products of powers.</summary>
internal sealed class ExpressionParser(string text, int origin)
{
    private static readonly int Longest = 1000;
    private static readonly int Deepest = 48;
    private readonly List<NameUse> _names = [];
    private int _position;
    private int _depth;
    private int _calls;

    public QuantityError? Error { get; private set; }

    public IReadOnlyList<NameUse> Names => _names;

    public ExpressionNode? Whole()
    {
        if (text.Length > Longest)
        {
            return Fail(0, text.Length, $"at most {Longest} characters", "is too long for an expression");
        }

        var root = Sum();
        SkipBlanks();
        return root is not null && _position < text.Length ? Unexpected() : root;
    }

    private ExpressionNode? Sum()
    {
        if (++_depth > Deepest)
        {
            return Fail(_position, 1, $"at most {Deepest} brackets inside each other", "goes too deep");
        }

        SkipBlanks();
        var start = _position;
        var left = Product();
        while (left is not null && TakeAny("+-−", out var sign))
        {
            var right = Product();
            left = right is null ? null : Binary(start, sign == '+' ? '+' : '-', left, right);
        }

        _depth--;
        return left;
    }

    private ExpressionNode? Product()
    {
        SkipBlanks();
        var start = _position;
        var left = Unary(afterDivision: false);
        while (left is not null && TakeAny("*/·×⋅", out var sign))
        {
            var right = Unary(afterDivision: sign == '/');
            left = right is null ? null : Binary(start, sign == '/' ? '/' : '*', left, right);
        }

        return left;
    }

    private ExpressionNode? Unary(bool afterDivision)
    {
        SkipBlanks();
        var start = _position;
        if (!TakeAny("+-−", out var sign))
        {
            return Power(afterDivision);
        }

        if (++_depth > Deepest)
        {
            return Fail(start, 1, "one sign", "is one sign too many");
        }

        var of = Unary(afterDivision);
        _depth--;
        return of is null || sign == '+' ? of : new MinusNode(origin + start, Slice(start), of);
    }

    private ExpressionNode? Power(bool afterDivision)
    {
        SkipBlanks();
        var start = _position;
        var left = Atom(afterDivision);
        if (left is null || !TakeAny("^", out _))
        {
            return left;
        }

        // Powers bind from the right, as on paper: 2^3^2 is 2^9.
        if (++_depth > Deepest)
        {
            return Fail(start, 1, "fewer powers of powers", "goes too deep");
        }

        var right = Unary(afterDivision: true);
        _depth--;
        return right is null ? null : Binary(start, '^', left, right);
    }

    private ExpressionNode? Atom(bool afterDivision)
    {
        SkipBlanks();
        if (_position >= text.Length)
        {
            return Fail(_position, 0, "a value, a name or a bracket is missing", "");
        }

        var c = text[_position];
        if (c == '(')
        {
            var open = _position++;
            var inner = Sum();
            SkipBlanks();
            return inner is null ? null
                : TakeAny(")", out _) ? inner
                : _position < text.Length ? Unexpected()
                : Fail(open, 1, "a closing bracket", "is not closed");
        }

        if (char.IsAsciiDigit(c) || c == '.' || NumberText.Vulgar(c) is not null)
        {
            return Number(afterDivision);
        }

        return IsNameStart(c) ? Name() : Unexpected();
    }

    private ExpressionNode? Number(bool afterDivision)
    {
        var start = _position;
        if (!NumberText.TryDecimal(text.AsSpan(start), origin + start, out var number, out var length, out var error))
        {
            Error ??= error;
            return null;
        }

        _position += length;
        if (!afterDivision && FractionWithUnit(start, out var fraction, out var end))
        {
            (number, _position) = (fraction, end);
        }

        if (_position < text.Length && text[_position] == ',' && _calls == 0)
        {
            return Fail(start, _position + 1 - start, "a point for the decimals", "has a decimal comma");
        }

        var quantity = new Quantity(number, Dimension.None);
        var at = _position;
        SkipBlanks();
        if (_position < text.Length && UnitText.IsNameCharacter(text[_position]))
        {
            if (!UnitText.TryTerm(text.AsSpan(_position), out var unit, out var unitLength))
            {
                return Fail(_position, 1, "a sign such as * between a number and a name", "is not a unit");
            }

            _position += unitLength;
            quantity = new Quantity((number * unit.Factor) + unit.Offset, unit.Dimension);
        }
        else
        {
            _position = at;
        }

        return new NumberNode(origin + start, Slice(start), quantity);
    }

    /// <summary>3/64 in and 1 1/2 in are one value; 3/4 without a unit is a division like any other.</summary>
    private bool FractionWithUnit(int start, out double number, out int end)
    {
        number = 0;
        end = start;
        if (
            !NumberText.TryRead(text.AsSpan(start), 0, out number, out var length, out _)
            || !text.AsSpan(start, length).ContainsAny("/½¼¾⅛⅜⅝⅞⅓⅔")
            || text.AsSpan(start, length).Contains('-')
        )
        {
            return false;
        }

        end = start + length;
        var next = end;
        while (next < text.Length && text[next] == ' ')
        {
            next++;
        }

        return next < text.Length
            && UnitText.IsNameCharacter(text[next])
            && UnitText.TryTerm(text.AsSpan(next), out _, out _);
    }

    private ExpressionNode? Name()
    {
        var start = _position;
        while (_position < text.Length)
        {
            var c = text[_position];
            if (IsNameStart(c) || char.IsAsciiDigit(c))
            {
                _position++;
            }
            else if (
                c == '.'
                && _position + 1 < text.Length
                && (IsNameStart(text[_position + 1]) || char.IsAsciiDigit(text[_position + 1]))
            )
            {
                _position++;
            }
            else if (c == '[' && text.IndexOf(']', _position) is var close and > 0)
            {
                _position = close + 1;
            }
            else
            {
                break;
            }
        }

        var name = text[start.._position];
        SkipBlanks();
        if (_position < text.Length && text[_position] == '(')
        {
            return Call(start, name);
        }

        _position = start + name.Length;
        _names.Add(new NameUse(name, origin + start, name.Length));
        return new NameNode(origin + start, name, name);
    }

    private CallNode? Call(int start, string name)
    {
        var open = _position++;
        _calls++;
        var arguments = new List<ExpressionNode>();
        while (true)
        {
            if (Sum() is not { } argument)
            {
                return null;
            }

            arguments.Add(argument);
            if (TakeAny(")", out _))
            {
                _calls--;
                return new CallNode(origin + start, Slice(start), name, arguments);
            }

            if (!TakeAny(",;", out _))
            {
                _ = _position < text.Length ? Unexpected() : Fail(open, 1, "a closing bracket", "is not closed");
                return null;
            }
        }
    }

    private BinaryNode Binary(int start, char sign, ExpressionNode left, ExpressionNode right) =>
        new(origin + start, Slice(start), sign, left, right);

    private string Slice(int start) => text[start.._position].TrimEnd();

    private static bool IsNameStart(char c) => char.IsLetter(c) || c is '_' or '°' or '%' or '\u2126';

    private void SkipBlanks()
    {
        while (_position < text.Length && char.IsWhiteSpace(text[_position]))
        {
            _position++;
        }
    }

    private bool TakeAny(string signs, out char taken)
    {
        SkipBlanks();
        taken = _position < text.Length ? text[_position] : '\0';
        if (taken == '\0' || !signs.Contains(taken, StringComparison.Ordinal))
        {
            return false;
        }

        _position++;
        return true;
    }

    private ExpressionNode? Unexpected() =>
        Fail(
            _position,
            1,
            "a sign + - * / ^ between values, or the end of the expression",
            "stands where it cannot be read"
        );

    private ExpressionNode? Fail(int at, int length, string accepted, string why)
    {
        var from = Math.Min(at, text.Length);
        Error ??= QuantityError.At(
            origin + from,
            text.AsSpan(from, Math.Min(length, text.Length - from)),
            accepted,
            why
        );
        return null;
    }
}
