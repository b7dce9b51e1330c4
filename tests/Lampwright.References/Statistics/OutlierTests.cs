using Lampwright.Readings;

namespace Lampwright.References.Statistics;

/// <summary>Rows S.N of the reference page statistics, section 2.</summary>
public class OutlierTests
{
    private static readonly double[] Nist = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

    [Theory]
    [InlineData("S.N-7a", 5, 0.05, 1.715)] // Harvey, Analytical Chemistry, appendix 7 (published)
    [InlineData("S.N-7a", 8, 0.05, 2.126)]
    [InlineData("S.N-7c", 12, 0.05, 2.412)]
    [InlineData("S.N-7c", 15, 0.05, 2.549)]
    [InlineData("S.N-8", 20, 0.01, 3.001)] // formula, 3.0008 (derived)
    [InlineData("known errors", 7, 0.05, 2.020)] // the table above prints 2.202 by mistake
    [InlineData("known errors", 15, 0.01, 2.806)] // the table above prints 2.755 by mistake
    public void Grubbs_limit_two_sided(string id, int count, double significance, double expected) =>
        Check.Near(Outliers.GrubbsLimit(count, significance), expected, 1e-3, id, $"n {count}, α {significance}");

    [Fact]
    public void Grubbs_of_the_handbook_data() // S.N-9a, NIST/SEMATECH e-Handbook 1.3.5.17 (memory), 1e-4
    {
        var (g, index) = Outliers.Grubbs(Nist);
        Check.Near(g, 2.4688, 1e-4, "S.N-9a", $"handbook data");
        Assert.Equal(7, index);
        Check.Near(Outliers.GrubbsLimit(8, 0.05, twoSided: false), 2.0317, 1e-4, "S.N-9a", $"one-sided, n 8, α 0.05");
    }

    [Fact]
    public void Modified_z_of_the_handbook_data() => // S.N-9b, formula (derived)
        Check.Near(Outliers.ModifiedZ(Nist, 7), 29.96, 0.01, "S.N-9b", $"handbook data");
}
