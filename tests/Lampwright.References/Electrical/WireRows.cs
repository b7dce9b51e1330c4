using Lampwright.Tables;

namespace Lampwright.References.Electrical;

/// <summary>electrical.md section 7.</summary>
public class WireRows
{
    // E.W-1, E.W-2: IEC 60228 / DIN VDE 0295, published second-hand; the three smallest are not in IEC 60228.
    [Theory]
    [InlineData(0.14, false, 134)]
    [InlineData(0.25, false, 76)]
    [InlineData(0.34, false, 53)]
    [InlineData(0.5, false, 39.0)]
    [InlineData(0.75, false, 26.0)]
    [InlineData(1, false, 19.5)]
    [InlineData(1.5, false, 13.3)]
    [InlineData(2.5, false, 7.98)]
    [InlineData(4, false, 4.95)]
    [InlineData(6, false, 3.30)]
    [InlineData(10, false, 1.91)]
    [InlineData(0.5, true, 40.1)]
    [InlineData(0.75, true, 26.7)]
    [InlineData(1, true, 20.0)]
    [InlineData(1.5, true, 13.7)]
    [InlineData(2.5, true, 8.21)]
    public void Class_5_conductor(double area, bool tinned, double ohmPerKm)
    {
        var got = 1000 * CopperWire.OhmPerMetre(area, tinned);
        Assert.True(Math.Abs(got - ohmPerKm) <= 1e-9 * ohmPerKm, $"{area} mm2: {got} ohm/km, expected {ohmPerKm}");
    }

    // E.W-3a: IEC 60228, published second-hand: R20 = R(T)·kt.
    [Theory]
    [InlineData(5, 1.064)]
    [InlineData(40, 0.926)]
    [InlineData(60, 0.862)]
    [InlineData(75, 0.820)]
    [InlineData(100, 0.758)]
    public void Temperature_correction(double celsius, double kt)
    {
        var got = 1 / CopperWire.TemperatureFactor(celsius + 273.15);
        Assert.True(Math.Abs(got - kt) <= 5e-4, $"{celsius} degC: {got}, expected {kt}");
    }

    // E.W-4a: wire table printing 6.385 and 16.14 ohm per 1000 ft, published second-hand; tolerance 0.1 %.
    [Theory]
    [InlineData(18, 20.95, 1.0237)]
    [InlineData(22, 52.96, 0.6438)]
    public void Gauge(int awg, double ohmPerKm, double mm)
    {
        var ohm = 1000 * CopperWire.AwgOhmPerMetre(awg);
        var d = CopperWire.AwgDiameterMm(awg);
        Assert.True(Math.Abs(ohm - ohmPerKm) <= 1e-3 * ohmPerKm, $"AWG {awg}: {ohm} ohm/km, expected {ohmPerKm}");
        Assert.True(Math.Abs(d - mm) <= 1e-3 * mm, $"AWG {awg}: {d} mm, expected {mm}");
    }

    // E.W-5: NKK M and A series general specifications, published.
    [Theory]
    [InlineData("toggle switch silver", 0.010)]
    [InlineData("toggle switch gold", 0.020)]
    [InlineData("toggle switch logic level", 0.050)]
    public void Contact(string kind, double ohm)
    {
        var table = TableResource.Read("contact-resistance.csv");
        var row = Enumerable.Range(0, table.RowCount).Single(i => table.Text(i, "contact") == kind);
        Assert.Equal(ohm, table.Number(row, "most_ohm"), 12);
    }
}
