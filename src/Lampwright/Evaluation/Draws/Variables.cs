using Lampwright.Quantities;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Draws;

/// <summary>How a variable scatters about its nominal value.</summary>
internal enum Scatter
{
    /// <summary>It does not.</summary>
    None,

    /// <summary>Every value between two limits is equally likely (JCGM 100:2008, 4.3.7).</summary>
    Rectangular,

    /// <summary>A positive factor whose logarithm is normal; the half-width is that of its 5 to 95 % band.</summary>
    LogNormal,

    /// <summary>Normal about the nominal value; the half-width is that of its 5 to 95 % band.</summary>
    Normal,
}

/// <summary>One named number that the stations are told: of the design, or the error of a method.</summary>
internal sealed record Variable(string Name, double Nominal, double HalfWidth, Scatter Scatter);

/// <summary>All variables of one evaluation. A variable named twice is one variable: predictions share it.</summary>
internal sealed class Variables
{
    private readonly Dictionary<string, int> _byName = new(StringComparer.Ordinal);
    private readonly List<Variable> _all = [];

    /// <summary>The variables in the order in which they were named.</summary>
    public IReadOnlyList<Variable> All => _all;

    /// <summary>Place of a value of the design.</summary>
    public int Of(Value value) =>
        Add(
            new(
                value.Path.Length > 0 ? value.Path : string.Create(null, $"#{_all.Count}"),
                value.Nominal,
                value.HalfWidth,
                value.HalfWidth > 0 ? Scatter.Rectangular : Scatter.None
            )
        );

    /// <summary>Place of a number that does not scatter.</summary>
    public int Exact(string name, double value) => Add(new(name, value, 0, Scatter.None));

    /// <summary>Place of a number that lies between limits, equally likely.</summary>
    public int Between(string name, double nominal, double halfWidth) =>
        Add(new(name, nominal, halfWidth, halfWidth > 0 ? Scatter.Rectangular : Scatter.None));

    /// <summary>Place of the factor (nominal 1) that carries a method's error.</summary>
    public int Factor(MethodError error) => Add(new(error.Name, 1, error.HalfWidth, Scatter.LogNormal));

    /// <summary>Place of a factor (nominal 1) with the given half-width of its 5 to 95 % band.</summary>
    public int Factor(string name, double halfWidth) =>
        Add(new(name, 1, halfWidth, halfWidth > 0 ? Scatter.LogNormal : Scatter.None));

    /// <summary>Place of a standard normal number (nominal 0, standard deviation 1): the scatter of a hand.</summary>
    public int StandardNormal(string name) => Add(new(name, 0, 1.6448536269514722, Scatter.Normal));

    /// <summary>Nominal values, by place.</summary>
    public double[] Nominal() => [.. _all.Select(v => v.Nominal)];

    private int Add(Variable variable)
    {
        if (_byName.TryGetValue(variable.Name, out var place))
        {
            return place;
        }

        _byName.Add(variable.Name, _all.Count);
        _all.Add(variable);
        return _all.Count - 1;
    }
}
