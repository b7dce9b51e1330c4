using Lampwright.Steps;
using Lampwright.Steps.Board;
using Lampwright.Tables;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md section 3, read as a maker reads a board: marks and a current in, threshold out.</summary>
public class BoardRows
{
    // Mean of the coil's current over one period, added up: it climbs to the threshold over the resistance and falls by the ripple (TI AN-1954 p. 8).
    private static double MeanOfTriangleA(double volts, double ohm, double rippleA)
    {
        const int Count = 20_000;
        const double Rising = 0.37;
        var sum = 0.0;
        for (var k = 0; k < Count; k++)
        {
            var x = (k + 0.5) / Count;
            var fallen = x < Rising ? (Rising - x) / Rising : (x - Rising) / (1 - Rising);
            sum += (volts / ohm) - (rippleA * fallen);
        }

        return sum / Count;
    }

    private static BoardReading Read(SenseSpec sense, double rated) =>
        BoardReading.Of(new(rated, null, null, null, 0.9, sense));

    // Thresholds typed from the makers' pages, against the table that steps and readings judge by.
    [Theory]
    [InlineData("ZXLD1366", 0.2, 1e-12)] // E.D-1a, Diodes DS31992 p. 17, published
    [InlineData("ZXLD1370", 0.218, 1e-12)] // E.D-2a, Diodes DS32165 eq. 10, published
    [InlineData("LM3409", 0.248, 1e-4)] // E.D-3, TI SNVS602J p. 10 eq. 2, published: Vadj/5 of 1.24 V
    [InlineData("LM3421", 0.100, 1e-12)] // E.D-6, TI SNVS574E p. 41, published
    [InlineData("MAX16804", 0.198, 1e-12)] // E.D-8, data sheet note 3, published
    [InlineData("UCC28730", 0.3197, 1e-4)] // E.D-9a, TI SLUSBL5A, published
    [InlineData("TSM1012", 1.25, 1e-12)] // E.D-10a, ST DocID10124 table 5, published: used directly
    public void Published_threshold_is_in_the_table(string controller, double volts, double tolerance)
    {
        var row = SenseThresholds.All.Single(t => t.Controller.StartsWith(controller, StringComparison.Ordinal));
        Assert.True(Math.Abs(row.VoltageV - volts) <= tolerance, $"{row}, printed {volts} V");
        Assert.InRange(volts, SenseThresholds.Possible.LeastV, SenseThresholds.Possible.MostV);
    }

    // The printed pairs of resistance and current read backwards: the threshold comes out within the row's tolerance.
    [Theory]
    [InlineData(0.20, 1.000, 0.2, 0.001)] // E.D-1a, Diodes DS31992 p. 17, published
    [InlineData(0.56, 0.357, 0.2, 0.003)] // E.D-1a: 357 mA to its last digit
    [InlineData(0.623, 0.35, 0.218, 0.003)] // E.D-2a, derived from DS32165 eq. 10
    [InlineData(0.218, 1.0, 0.218, 0.003)] // E.D-2a
    [InlineData(0.311, 0.7, 0.218, 0.003)] // E.D-2b
    [InlineData(0.1, 1.0, 0.100, 1e-9)] // E.D-6, TI SNVS574E p. 41, published
    [InlineData(0.56, 0.3536, 0.198, 0.02)] // E.D-8, MAX16804 data sheet note 3, published
    public void Threshold_from_a_printed_pair(double ohm, double amps, double volts, double relative)
    {
        var board = Read(new([], MeasuredPair: new(ohm, amps), Control: SenseControl.Average), amps);
        var got = board.Threshold.VoltageV!.Value;
        Assert.True(Math.Abs(got - volts) <= relative * volts, $"{ohm} ohm, {amps} A: {got} V, expected {volts} V");
        Assert.True(board.IsPlausible, board.Threshold.Reason);
        Assert.InRange(volts, board.LeastV!.Value, board.MostV!.Value);
    }

    // E.D-4, published: TI AN-1954, SNVA391D p. 8: Vcs 248 mV, Rs 200 mohm, ripple 444 mA, Iavg 1.02 A; tolerance 0.5 %.
    [Fact]
    public void Peak_control_is_read_with_its_ripple()
    {
        var sense = new SenseSpec(["R200"], MeasuredA: 1.02, Control: SenseControl.Peak, InductorRippleA: 0.444);
        var board = Read(sense, 1.0);
        Assert.True(Math.Abs(board.Threshold.VoltageV!.Value - 0.248) <= 0.005 * 0.248, $"{board.Threshold}");
        Assert.Equal(0.222, board.Law!.OffsetA, 12);

        // Taken for the average, the same board has another threshold, and at twice the resistance a current a half above the true one.
        var average = Read(sense with { Control = SenseControl.Average }, 1.0);
        var truth = MeanOfTriangleA(0.248, 0.4, 0.444);
        Assert.InRange(average.Model!.Value.CurrentA(0.4) / truth, 1.25, 1.35);
        Assert.True(Math.Abs(board.Model!.Value.CurrentA(0.4) - truth) <= 0.01 * truth, $"{board.Model} {truth}");
    }

    // E.D-4 without its ripple: two currents of the same controller find threshold and half of the ripple.
    [Fact]
    public void Two_points_of_peak_control_find_threshold_and_half_ripple()
    {
        double At(double ohm) => MeanOfTriangleA(0.248, ohm, 0.444);
        var board = Read(new([], MeasuredPair: new(0.2, At(0.2)), SecondPair: new(0.3, At(0.3))), 1.02);
        Assert.True(Math.Abs(board.Threshold.VoltageV!.Value - 0.248) < 1e-8, $"{board.Threshold}");
        Assert.True(Math.Abs(board.Law!.OffsetA - 0.222) < 1e-7, $"{board.Law}");
        Assert.True(Math.Abs(board.Model!.Value.CurrentA(0.4) - At(0.4)) < 1e-7);
    }

    // E.D-10a, E.D-10b, derived from ST DocID10124 rev. 2 table 5 and note 1: an offset on a 200 mV sense is that share of the current.
    [Theory]
    [InlineData(0.002, 0.01)]
    [InlineData(0.004, 0.02)]
    [InlineData(0.005, 0.025)]
    public void Offset_is_an_error_of_the_threshold_by_name(double offset, double limit)
    {
        var board = Read(new([], MeasuredPair: new(0.2, 1.0), OffsetV: offset), 1.0);
        var error = board.Threshold.Errors.Single(e => e.Name == "offset of the sense amplifier");
        Assert.True(Math.Abs(error.HalfWidth - (0.9 * limit)) < 1e-12, $"{offset} V: {error}");
    }

    // E.D-9b, memory: Rcs 1.089 ohm, 2.1 A through 15 turns to 1. The parts times the output current are no threshold there,
    // and a primary side is a stop whatever the number is.
    [Fact]
    public void Primary_side_sense_is_no_threshold_of_the_output_current_and_a_stop()
    {
        var sense = new SenseSpec(["1R089"], Control: SenseControl.Primary, Side: SenseSide.Primary);
        var board = Read(sense, 2.1);
        Assert.Equal(ThresholdLikelihood.Unknown, board.Threshold.Likelihood);
        Assert.False(board.IsPlausible);
        Assert.DoesNotContain(board.Findings, f => f.Rule == StepsRules.ImplausibleThreshold);
        Assert.Contains("STP001", board.Stops);
    }
}
