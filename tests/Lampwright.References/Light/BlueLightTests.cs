using Lampwright.Light;

namespace Lampwright.References.Light;

/// <summary>Rows L.B of the reference page light, section 5.</summary>
public class BlueLightTests
{
    [Theory]
    // half of 1/K_B,v of a Planckian: B of IEC 62471, CIE V (derived); the table stays within 5 % of it, as the row says
    [InlineData("L.B-1a", 2000, 4053)]
    [InlineData("L.B-1a", 3000, 1461)]
    [InlineData("L.B-1a", 4000, 865)]
    [InlineData("L.B-1a", 6500, 476)]
    public void Threshold_table_stays_near_planckian_light(string id, double cct, double expected) =>
        // 6500 K is 5.04 % from the printed row: half of the row's last digit on top.
        Check.Near(BlueLight.ThresholdLux(cct), expected, (0.05 * expected) + 0.5, id, $"{cct} K");

    [Theory]
    [InlineData("L.B-3a", 500, 2.52)] // formula (derived)
    [InlineData("L.B-3b", 1000, 1.78)]
    public void Care_distance(string id, double threshold, double expected) =>
        Check.Near(BlueLight.CareDistanceM(3183, threshold), expected, 0.01, id, $"3183 cd, {threshold} lx");
}
