using Lampwright.Steps;
using Lampwright.Tables;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md section 1.</summary>
public class ResistorRows
{
    // E.R-1, E.R-2: IEC 60063, published second-hand.
    [Theory]
    [InlineData(
        "E24",
        "100 110 120 130 150 160 180 200 220 240 270 300 330 360 390 430 470 510 560 620 680 750 820 910"
    )]
    [InlineData(
        "E96",
        "100 102 105 107 110 113 115 118 121 124 127 130 133 137 140 143 147 150 154 158 162 165 169 174 178 182 187 191 196 200 205 210 215 221 226 232 237 243 249 255 261 267 274 280 287 294 301 309 316 324 332 340 348 357 365 374 383 392 402 412 422 432 442 453 464 475 487 499 511 523 536 549 562 576 590 604 619 634 649 665 681 698 715 732 750 768 787 806 825 845 866 887 909 931 953 976"
    )]
    public void Series_is_the_standards(string name, string values)
    {
        var got = string.Join(' ', ESeries.Decade(name).Select(v => (int)Math.Round(v * 100)));
        Assert.Equal(values, got);
    }

    // E.R-3: IEC 60063, memory: E192 has 920 where the formula gives 919.
    [Theory]
    [InlineData(9.20, true)]
    [InlineData(9.19, false)]
    public void E192_has_its_exception(double value, bool there) =>
        Assert.Equal(there, ESeries.Decade("E192").Any(v => Math.Abs(v - value) < 1e-9));

    // E.R-4a: derived, formula on the series; tolerance 0.01 %.
    [Theory]
    [InlineData("E6", 20.0)]
    [InlineData("E24", 7.14)]
    public void Largest_half_gap(string name, double percent)
    {
        var got = 100 * ESeries.LargestHalfGap(name);
        Assert.True(Math.Abs(got - percent) <= 0.01, $"{name}: {got} %, expected {percent} %");
    }

    [Theory]
    [InlineData("472", 4700)] // E.R-5a, IEC 60062 style, published second-hand
    [InlineData("4531", 4530)] // E.R-5a
    [InlineData("R15", 0.15)] // E.R-5a
    [InlineData("151", 150)] // E.R-5b, IEC 60062 style, published second-hand
    [InlineData("2R4", 2.4)] // E.R-5b
    [InlineData("R005", 0.005)] // E.R-6a, LMP25 series table, published
    [InlineData("R100", 0.100)] // E.R-6a
    [InlineData("R500", 0.500)] // E.R-6a
    [InlineData("L500", 0.0005)] // E.R-6a, Bourns CSS2H-2512 data sheet, published
    [InlineData("65A", 464)] // E.R-7a, EIA-96, memory
    [InlineData("01C", 10000)] // E.R-7a
    [InlineData("R010", 0.010)] // known error in circulation: one data sheet prints 0.001 ohm for it
    public void Marking_means(string text, double ohm)
    {
        var read = Marking.Read(text);
        Assert.True(read.Ohm is { } got && Math.Abs(got - ohm) <= 1e-12 * ohm, $"{text}: {read}");
    }

    // E.R-8a: TT Electronics LCS series, published second-hand; E.R-9a, 9b: Bourns CRA2512, published; E.R-10: AAC LRS2512, published.
    [Theory]
    [InlineData(70, 155, 85, 0.8235)]
    [InlineData(70, 155, 112.5, 0.5)]
    [InlineData(70, 170, 100, 0.70)]
    [InlineData(70, 170, 125, 0.45)]
    [InlineData(100, 275, 100, 1)]
    [InlineData(100, 275, 275, 0)]
    public void Derated_rating(double fullTo, double zeroAt, double at, double share)
    {
        var got = new ResistorPart(0.1, 0, 1, fullTo + 273.15, zeroAt + 273.15).AllowedW(at + 273.15);
        Assert.True(Math.Abs(got - share) <= 1e-4, $"{fullTo}/{zeroAt} at {at} degC: {got}, expected {share}");
    }

    // E.R-11a: AAC LRS data sheet, published; tolerance 0.01 A.
    [Theory]
    [InlineData(0.5, 1e-3, 22.36)]
    [InlineData(2, 1e-3, 44.72)]
    [InlineData(4, 0.25e-3, 126.49)]
    public void Greatest_current(double watts, double ohm, double amps)
    {
        var got = new ResistorPart(ohm, 0, watts, 343.15, 428.15).MostA;
        Assert.True(Math.Abs(got - amps) <= 0.01, $"{watts} W {ohm} ohm: {got} A, expected {amps} A");
    }

    // E.R-12: TE Connectivity RP73 data sheet 1773272, published: 2.5 x rated voltage is 6.25 x power.
    [Theory]
    [InlineData(2.5, 6.25)]
    public void Overload_in_volts_and_watts(double timesVoltage, double timesPower)
    {
        var part = new ResistorPart(0.1, 0, 1, 343.15, 428.15);
        var volts = part.MostV * timesVoltage;
        Assert.True(Math.Abs((volts * volts / part.Ohm / part.RatingW) - timesPower) < 1e-9, $"{part}");
    }

    // Text of section 1, second-hand: in eight values E24 is not the rounded power formula.
    [Fact]
    public void E24_differs_from_the_formula_in_eight_values()
    {
        double[] table = [2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 8.2];
        double[] formula = [2.6, 2.9, 3.2, 3.5, 3.8, 4.2, 4.6, 8.3];
        var series = ESeries.Decade("E24");
        var differs = Enumerable
            .Range(0, 24)
            .Select(i => (Table: Math.Round(series[i], 2), Formula: Math.Round(Math.Pow(10, i / 24.0), 1)))
            .Where(v => Math.Abs(v.Table - v.Formula) > 1e-9)
            .ToArray();
        Assert.Equal(table, differs.Select(v => v.Table));
        Assert.Equal(formula, differs.Select(v => v.Formula));
    }

    // Formulas of section 1: "5 x power for 5 s" is 2.236 x voltage; Imax·Vmax is the rating.
    [Fact]
    public void Overload_of_five_times_the_power()
    {
        var part = new ResistorPart(0.1, 0, 2, 343.15, 428.15);
        var volts = Math.Sqrt(5 * part.RatingW * part.Ohm);
        Assert.True(Math.Abs((volts / part.MostV) - 2.236) <= 5e-4, $"{volts / part.MostV}");
        Assert.True(Math.Abs((part.MostA * part.MostV) - part.RatingW) <= 1e-12, $"{part}");
    }

    // LMP25 series table, 2512, published: milliohms that are stocked and to order; the series marks them R002 to R500.
    [Theory]
    [InlineData("2 3 4 5 10 15 20 25 30 33 35 50 60 80 100 150 200 300 500")]
    [InlineData("18 22 24 27 36 39 47 56 62 68 82 110 120 130 160 180 220 240 250 270 330 360 390")]
    public void Sense_values_that_are_sold_are_read_from_their_marks(string milliohms)
    {
        foreach (var text in milliohms.Split(' '))
        {
            var ohm = int.Parse(text, System.Globalization.CultureInfo.InvariantCulture) / 1000.0;
            var mark = "R" + text.PadLeft(3, '0');
            Assert.True(Marking.Read(mark).Ohm is { } got && Math.Abs(got - ohm) <= 1e-12, $"{mark}: {ohm} ohm");
        }
    }

    // EIA-96 against IEC 60062: 22R is 22 ohm, or E96[22] 165 x 0.01 (R as Y, memory) = 1.65 ohm.
    [Theory]
    [InlineData("22R", 22, 1.65)]
    [InlineData("01R", 1, null)] // both are 1 ohm
    public void Mark_with_two_meanings_tells_both(string mark, double ohm, double? other)
    {
        var read = Marking.Read(mark);
        Assert.Equal(ohm, read.Ohm!.Value, 12);
        Assert.Equal(other, read.OtherOhm);
    }
}
