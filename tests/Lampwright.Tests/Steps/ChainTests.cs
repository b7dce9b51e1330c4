using CsCheck;
using Lampwright.Steps;

namespace Lampwright.Tests.Steps;

public class ChainTests
{
    private static readonly DriverModel Driver = new(0.287, 0.165, 0, 0.89);

    private static ResistorPart Part(double ohm, double tempco = 0) => new(ohm, tempco, 3, 343.15, 428.15);

    private static ChainSpec Chain(
        Arrangement arrangement = Arrangement.SeriesChain,
        double contact = 0.012,
        double tempco = 0
    ) =>
        new(
            arrangement,
            Part(0.16, tempco),
            [Part(0.1, tempco), Part(0.2, tempco), Part(0.39, tempco), Part(0.82, tempco)],
            contact,
            0.040,
            new(0.35, 0.75)
        );

    private static ChainResult Result(ChainSpec spec, double airK = 313.15) =>
        ChainResult.From(new(spec), Driver, airK, 2.0, 1.75, 0.3);

    [Fact]
    public void Combinations_count_down_from_all_closed()
    {
        var r = Result(Chain());
        Assert.Equal(16, r.Combinations.Count);
        Assert.Equal(["1111", "1110", "1101"], r.Combinations.Take(3).Select(c => c.Switches));
        Assert.Equal("0000", r.Combinations[^1].Switches);
        Assert.Equal(0, r.ByCurrent[0]);
    }

    [Fact]
    public void All_open_is_the_sum_and_all_closed_the_fixed_one_with_contacts()
    {
        var spec = Chain() with { Lead = null };
        var r = Result(spec);
        Assert.Equal(0.16 + 0.1 + 0.2 + 0.39 + 0.82, r.Combinations[^1].ResistanceOhm, 12);
        var closed = new[] { 0.1, 0.2, 0.39, 0.82 }.Sum(x => x * 0.012 / (x + 0.012));
        Assert.Equal(0.16 + closed, r.Combinations[0].ResistanceOhm, 12);
        Assert.Equal(closed / (0.16 + closed), r.Combinations[0].ContactShare, 9);
    }

    [Theory]
    [InlineData(Arrangement.SeriesChain)]
    [InlineData(Arrangement.ParallelBranches)]
    public void Opening_a_switch_never_raises_the_current(Arrangement arrangement)
    {
        var n = new ChainNetwork(Chain(arrangement, tempco: 100e-6));
        var i = new double[16];
        n.Currents(new ChainDraw { Driver = Driver, AirK = 330 }, i);
        for (var a = 0; a < 16; a++)
        {
            for (var b = 0; b < 4; b++)
            {
                if ((a & (1 << b)) == 0)
                {
                    Assert.True(
                        i[a | (1 << b)] <= i[a],
                        $"{n.Switches(a)} {i[a]}, {n.Switches(a | (1 << b))} {i[a | (1 << b)]}"
                    );
                }
            }
        }
    }

    [Fact]
    public void Currents_are_ordered_as_resistances_are()
    {
        Gen.Double[0.01, 2]
            .Array[5]
            .Sample(
                ohms =>
                {
                    var spec = Chain() with
                    {
                        Fixed = Part(ohms[0]),
                        Switched = [.. ohms.Skip(1).Select(x => Part(x))],
                    };
                    var r = Result(spec);
                    for (var k = 1; k < r.ByCurrent.Count; k++)
                    {
                        var (a, b) = (r.Combinations[r.ByCurrent[k - 1]], r.Combinations[r.ByCurrent[k]]);
                        Assert.True(a.ResistanceOhm <= b.ResistanceOhm * (1 + 1e-9), string.Join(' ', ohms));
                    }
                },
                seed: "0000lampst02",
                iter: 200
            );
    }

    [Theory]
    [InlineData(Arrangement.SeriesChain)]
    [InlineData(Arrangement.ParallelBranches)]
    [InlineData(Arrangement.Selector)]
    public void Power_of_the_parts_is_threshold_times_current_where_contacts_and_leads_take_none(
        Arrangement arrangement
    )
    {
        var r = Result(Chain(arrangement, contact: 0) with { ContactMostOhm = null, Lead = null });
        Assert.All(r.Combinations, c => Assert.Equal(0.287 * c.CurrentA, c.Resistors.Sum(x => x.PowerW), 9));
    }

    [Fact]
    public void Warm_resistors_lower_the_current_and_the_solution_is_consistent()
    {
        var cold = Result(Chain());
        var warm = Result(Chain(tempco: 400e-6));
        Assert.True(warm.MostA < cold.MostA);
        Assert.All(
            warm.Combinations,
            c =>
            {
                var x = c.Resistors[0];
                var expected = 0.16 * (1 + (400e-6 * (x.TemperatureK - 298.15)));
                Assert.True(Math.Abs(x.Ohm / expected - 1) < 1e-5, $"{c.Switches}: {x.Ohm} ohm, expected {expected}");
            }
        );
    }

    [Fact]
    public void Draw_without_factors_is_the_nominal_and_factors_do_what_they_say()
    {
        var n = new ChainNetwork(Chain());
        var (i, ohm, watts) = (new double[16], new double[16], new double[80]);
        n.Operate(new ChainDraw { Driver = Driver, AirK = 313.15 }, i, ohm, watts);
        var r = Result(Chain());
        for (var k = 0; k < 16; k++)
        {
            Assert.Equal(r.Combinations[k].CurrentA, i[k], 12);
            Assert.Equal(r.Combinations[k].ResistanceOhm, ohm[k], 12);
            Assert.Equal(r.Combinations[k].Resistors[4].PowerW, watts[(k * 5) + 4], 12);
        }

        double[] two = [2, 2, 2, 2, 2];
        double[] contact = [0.024];
        var j = new double[16];
        n.Currents(
            new ChainDraw
            {
                Driver = Driver,
                AirK = 313.15,
                OhmFactors = two,
                ContactOhms = contact,
                LeadFactor = 2,
            },
            j
        );
        Assert.All(Enumerable.Range(0, 16), k => Assert.Equal(i[k] / 2, j[k], 12));
    }

    [Fact]
    public void Draws_do_not_allocate()
    {
        var n = new ChainNetwork(Chain(tempco: 100e-6));
        var i = new double[16];
        n.Currents(new ChainDraw { Driver = Driver, AirK = 313.15 }, i);
        var before = GC.GetAllocatedBytesForCurrentThread();
        n.Currents(new ChainDraw { Driver = Driver, AirK = 314.15 }, i);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    [Fact]
    public void Parallel_branches_add_their_currents()
    {
        var r = Result(Chain(Arrangement.ParallelBranches, contact: 0) with { Lead = null });
        Assert.Equal(0.287 * ((1 / 0.16) + 10 + 5 + (1 / 0.39) + (1 / 0.82)), r.Combinations[0].CurrentA, 9);
        Assert.Equal(0.287 / 0.16, r.Combinations[^1].CurrentA, 9);
    }

    [Fact]
    public void Selector_has_one_combination_a_position_and_knows_its_overlap()
    {
        var r = Result(Chain(Arrangement.Selector, contact: 0) with { Lead = null });
        Assert.Equal(["1000", "0100", "0010", "0001"], r.Combinations.Select(c => c.Switches));
        Assert.Equal(0.287 / 0.26, r.Combinations[0].CurrentA, 9);
        Assert.Equal(0.287 / (0.16 + (0.1 * 0.2 / 0.3)), r.OverlapA!.Value, 9);
    }

    [Fact]
    public void No_switch_is_one_combination()
    {
        var r = Result(Chain() with { Switched = [] });
        Assert.Equal("", Assert.Single(r.Combinations).Switches);
    }

    [Theory]
    [InlineData(342, 3)]
    [InlineData(385.65, 1.5)]
    [InlineData(428.15, 0)]
    [InlineData(500, 0)]
    public void Derating_line(double airK, double watts) => Assert.Equal(watts, Part(0.1).AllowedW(airK), 9);

    [Fact]
    public void Bad_arguments_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new ChainNetwork(Chain() with { Fixed = Part(0) }));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new ChainNetwork(Chain() with { Switched = [.. Enumerable.Repeat(Part(1), 11)] })
        );
        Assert.False(StepsStation.Computable(Chain() with { Fixed = Part(double.NaN) }));
    }
}
