using Lampwright.Readings;

namespace Lampwright.References.Statistics;

/// <summary>Rows S.N of the reference page statistics, section 1.</summary>
public class FitTests
{
    // GUM H.3, thermometer calibration (JCGM 100; published, second-hand)
    private static readonly double[] GumT =
    [
        21.521,
        22.012,
        22.512,
        23.003,
        23.507,
        23.999,
        24.513,
        25.002,
        25.503,
        26.010,
        26.511,
    ];
    private static readonly double[] GumB =
    [
        -0.171,
        -0.169,
        -0.166,
        -0.159,
        -0.164,
        -0.165,
        -0.156,
        -0.157,
        -0.159,
        -0.161,
        -0.160,
    ];

    // NIST StRD Norris, 36 points as printed
    private static readonly string NorrisX =
        "0.2 337.4 118.2 884.6 10.1 226.5 666.3 996.3 448.6 777.0 558.2 0.4 0.6 775.5 666.9 338.0 447.5 11.6 556.0 228.1 995.8 887.6 120.2 0.3 0.3 556.8 339.1 887.2 999.0 779.0 11.1 118.3 229.2 669.1 448.9 0.5";
    private static readonly string NorrisY =
        "0.1 338.8 118.1 888.0 9.2 228.1 668.5 998.5 449.1 778.9 559.2 0.3 0.1 778.1 668.8 339.3 448.9 10.8 557.7 228.3 998.0 888.8 119.6 0.3 0.6 557.6 339.3 888.0 998.5 778.9 10.2 117.6 228.9 668.4 449.2 0.2";

    private static readonly double[] MeterShown = [52, 105, 210, 430, 860, 1700];
    private static readonly double[] MeterReference = [48, 101, 205, 415, 835, 1660];

    [Fact]
    public void Thermometer_calibration_as_printed() // S.N-1a, JCGM 100:2008, H.3 (memory), last digit
    {
        var line = StraightLine.Fit(GumT, GumB, 20);
        Check.Near(line.Intercept, -0.1712, 0.00005, "S.N-1a", $"y1");
        Check.Near(line.InterceptUncertainty, 0.0029, 0.00005, "S.N-1a", $"u(y1)");
        Check.Near(line.Slope, 0.00218, 0.000005, "S.N-1a", $"y2");
        Check.Near(line.SlopeUncertainty, 0.00067, 0.000005, "S.N-1a", $"u(y2)");
        Check.Near(line.Correlation, -0.930, 0.0005, "S.N-1a", $"r");
        Check.Near(line.ResidualDeviation, 0.0035, 0.00005, "S.N-1a", $"s");
        Check.Near(line.At(30).Value, -0.1494, 0.00005, "S.N-1a", $"at 30 °C");
        Check.Near(line.At(30).Uncertainty, 0.0041, 0.00005, "S.N-1a", $"at 30 °C");
    }

    [Fact]
    public void Thermometer_calibration_with_more_digits() // S.N-1b, least squares on the data (derived), 1e-4
    {
        var line = StraightLine.Fit(GumT, GumB, 20);
        Check.Near(line.Intercept, -0.171204, 1e-4 * 0.171204, "S.N-1b", $"y1");
        Check.Near(line.InterceptUncertainty, 0.002878, 2e-4 * 0.002878, "S.N-1b", $"u(y1)");
        Check.Near(line.Slope, 0.00218270, 1e-4 * 0.0021827, "S.N-1b", $"y2");
        Check.Near(line.SlopeUncertainty, 0.00066794, 1e-4 * 0.00066794, "S.N-1b", $"u(y2)");
        Check.Near(line.Correlation, -0.9304, 1e-4, "S.N-1b", $"r");
        Check.Near(line.ResidualDeviation, 0.003498, 2e-4 * 0.003498, "S.N-1b", $"s");
        Check.Near(line.At(30).Value, -0.149377, 1e-4 * 0.149377, "S.N-1b", $"at 30 °C");
        Check.Near(line.At(30).Uncertainty, 0.004139, 2e-4 * 0.004139, "S.N-1b", $"at 30 °C");
    }

    [Fact]
    public void Norris() // S.N-2, NIST StRD Norris, certified (published, second-hand), 1e-9
    {
        var line = StraightLine.Fit(Numbers(NorrisX), Numbers(NorrisY));
        Assert.Equal(36, line.Count);
        Check.Near(line.Intercept, -0.262323073774029, 1e-9, "S.N-2", $"B0");
        Check.Near(line.Slope, 1.00211681802045, 1e-9, "S.N-2", $"B1");
        Check.Near(line.InterceptUncertainty, 0.232818234301152, 1e-9, "S.N-2", $"sd of B0");
        Check.Near(line.SlopeUncertainty, 0.000429796848199937, 1e-9, "S.N-2", $"sd of B1");
        Check.Near(line.ResidualDeviation, 0.884796396144373, 1e-9, "S.N-2", $"residual sd");
        Check.Near(line.RSquared, 0.999993745883712, 1e-9, "S.N-2", $"R²");
    }

    [Fact]
    public void Meter_against_reference() // S.N-10, least squares (derived), 1e-6
    {
        Check.Near(
            StraightLine.FactorThroughOrigin(MeterShown, MeterReference).Value,
            0.974788,
            1e-6,
            "S.N-10",
            $"through the origin"
        );
        var power = MeterCalibration.PowerLaw(MeterShown, MeterReference);
        Check.Near(power.Intercept, -0.108043, 1e-6, "S.N-10", $"ln reference");
        Check.Near(power.Slope, 1.012173, 1e-6, "S.N-10", $"ln reference");
        Check.Near(
            MeterCalibration.Factor("phone", MeterShown, MeterReference).Factor,
            0.974788,
            1e-6,
            "S.N-10",
            $"meter"
        );
    }

    private static double[] Numbers(string text) =>
        [.. text.Split(' ').Select(n => double.Parse(n, System.Globalization.CultureInfo.InvariantCulture))];
}
