using Lampwright.Metal;

namespace Lampwright.References.Metal;

/// <summary>Student's t of JCGM 100:2008, table G.2 (90 % two-sided); probes of IEC 60529 (second-hand) and ISO 13857, table 4 (memory).</summary>
public sealed class StripAndProbeRows
{
    [Theory]
    [InlineData(1, 6.31)]
    [InlineData(2, 2.92)]
    [InlineData(3, 2.35)]
    [InlineData(4, 2.13)]
    [InlineData(5, 2.02)]
    [InlineData(10, 1.81)]
    [InlineData(20, 1.72)]
    public void Student(int degrees, double t) =>
        Near.Is(t, StripMean.Student(degrees), 0.005, $"table G.2, {degrees}");

    [Theory]
    [InlineData(4, 2)]
    [InlineData(6, 5)]
    [InlineData(8, 5)]
    [InlineData(10, 20)]
    [InlineData(11.9, 80)]
    [InlineData(20, 120)]
    [InlineData(40, 120)]
    public void Fingertip_through_a_round_opening(double mm, double reach) =>
        Near.Is(reach, ProbeReach.Finger(HoleShape.Round(mm / 1000)) * 1000, 1e-9, $"ISO 13857 table 4, {mm}");

    [Theory]
    [InlineData(4, 2)]
    [InlineData(6, 10)]
    [InlineData(8, 20)]
    [InlineData(10, 80)]
    [InlineData(11.9, 100)]
    public void Fingertip_through_a_slot(double mm, double reach) =>
        Near.Is(reach, ProbeReach.Finger(HoleShape.Slot(0.04, mm / 1000)) * 1000, 1e-9, $"ISO 13857 table 4, {mm}");

    [Fact]
    public void Test_finger_and_wire()
    {
        Near.Is(80, ProbeReach.FingerLengthM * 1000, 0, "IEC 60529, finger 12 × 80");
        Near.Is(12, ProbeReach.FingerM * 1000, 0, "IEC 60529, finger 12 × 80");
        Near.Is(0, ProbeReach.Wire(HoleShape.Round(0.00099)), 0, "IEC 60529, wire 1.0");
        Near.Is(100, ProbeReach.Wire(HoleShape.Round(0.001)) * 1000, 0, "IEC 60529, wire 1.0 × 100");
    }
}
