namespace Lampwright.Steps.ChainProof;

/// <summary>What one end of the values adds where it has its say: ascending with the index.</summary>
internal readonly record struct ChainAxis(double[] Values, double[] Heat)
{
    public double At(int index, double heat) => heat == 0 ? Values[index] : Values[index] + (Heat[index] * heat);

    public int FirstFrom(int least, int most, double from, double heat)
    {
        var (a, z) = (least, most + 1);
        while (a < z)
        {
            var m = (a + z) >>> 1;
            (a, z) = At(m, heat) < from ? (m + 1, z) : (a, m);
        }

        return a;
    }

    public int LastTo(int least, int most, double to, double heat)
    {
        var (a, z) = (least - 1, most);
        while (a < z)
        {
            var m = (a + z + 1) >> 1;
            (a, z) = At(m, heat) > to ? (a, m - 1) : (m, z);
        }

        return a;
    }
}
