using Lampwright.Tables;

namespace Lampwright.Readings;

/// <summary>The errors of this station's methods: none to draw, since what it computes carries measured uncertainties of its own.</summary>
public static class ReadingsMethodErrors
{
    /// <summary>All of them: none.</summary>
    public static IReadOnlyList<MethodError> All { get; } = [];
}
