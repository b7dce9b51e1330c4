using Lampwright.Heat.Network;

namespace Lampwright.Tests.Heat.Network;

/// <summary>Splitting a network's slopes along who touches whom says what splitting all of them says.</summary>
public sealed class NetworkMatrixTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 7)]
    [InlineData(3, 30)]
    [InlineData(4, 80)]
    public void Solution_is_that_of_an_elimination_with_pivots(int seed, int count)
    {
        var random = new Random(seed);
        var (sparse, dense) = Filled(random, count, diagonal: 8);
        var full = new Elimination(count);
        double[] x = [.. Enumerable.Range(0, count).Select(_ => random.NextDouble() - 0.5)];
        double[] y = [.. x];
        Assert.True(sparse.Factor());
        Assert.True(full.Factor(dense));
        sparse.Solve(x);
        full.Solve(y);
        Assert.Equal(full.Sign, sparse.Sign);
        Assert.All(x.Zip(y), p => Assert.Equal(p.Second, p.First, 1e-10));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    public void A_diagonal_that_is_zero_is_split_with_pivots(int seed)
    {
        var random = new Random(seed);
        var (sparse, dense) = Filled(random, 12, diagonal: 0);
        var right = Enumerable.Range(0, 12).Select(i => i + 1.0).ToArray();
        double[] x = [.. right];
        Assert.True(sparse.Factor());
        sparse.Solve(x);
        for (var i = 0; i < 12; i++)
        {
            Assert.Equal(right[i], Enumerable.Range(0, 12).Sum(j => dense[(i * 12) + j] * x[j]), 1e-8);
        }
    }

    [Fact]
    public void Slopes_without_an_inverse_are_told()
    {
        var pattern = new NetworkPattern(2, [(0, 0), (0, 1), (1, 0), (1, 1)]);
        var matrix = new NetworkMatrix(pattern);
        matrix.Values.AsSpan().Fill(1);
        Assert.False(matrix.Factor());
        Assert.True(matrix.Factor(1, [1, 0]));
    }

    // A ring with a few chords: what touches what in a box of sheet.
    private static (NetworkMatrix Sparse, double[] Dense) Filled(Random random, int count, double diagonal)
    {
        var places = Enumerable.Range(0, count).Select(i => (Row: i, Column: (i + 1) % count)).ToList();
        places.AddRange(Enumerable.Range(0, count / 3).Select(_ => (random.Next(count), random.Next(count))));
        places = [.. places.Concat(places.Select(p => (p.Column, p.Row))).Where(p => p.Item1 != p.Item2).Distinct()];
        var pattern = new NetworkPattern(count, places);
        var (sparse, dense) = (new NetworkMatrix(pattern), new double[count * count]);
        foreach (var (row, column) in places.Concat(Enumerable.Range(0, count).Select(i => (i, i))))
        {
            var value = row == column ? -diagonal : random.NextDouble() + 0.1;
            sparse.Values[pattern.SlotOf(row, column)] = value;
            dense[(row * count) + column] = value;
        }

        return (sparse, dense);
    }
}
