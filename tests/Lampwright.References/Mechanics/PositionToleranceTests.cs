using System.Globalization;
using Lampwright.FitUp;
using Lampwright.Tables;

namespace Lampwright.References.Mechanics;

/// <summary>Rows K.G of the reference page mechanics, section 4.</summary>
public class PositionToleranceTests
{
    [Theory]
    [InlineData("K.G2", "M4", 4.5, 0.5, 0.177, 0.25, 0.088)] // formula (derived)
    [InlineData("K.G3a", "M3", 3.4, 0.4, 0.141, 0.2, 0.071)] // formula (derived)
    [InlineData("K.G3b", "M6", 6.6, 0.6, 0.212, 0.3, 0.106)] // formula (derived)
    public void Zones_of_clearance_holes(
        string id,
        string size,
        double holeMm,
        double floatingMm,
        double floatingAxisMm,
        double fixedMm,
        double fixedAxisMm
    )
    {
        var screw = MetricThread.Named(size)!.DiameterM;
        var floating = PositionTolerance.FloatingM(holeMm / 1000, screw);
        var held = PositionTolerance.FixedM(holeMm / 1000, screw);
        Near(floatingMm, floating * 1000, id, $"{size} in {holeMm} mm, floating");
        Near(
            floatingAxisMm,
            PositionTolerance.PerAxisM(floating) * 1000,
            id,
            $"{size} in {holeMm} mm, floating, per axis"
        );
        Near(fixedMm, held * 1000, id, $"{size} in {holeMm} mm, fixed");
        Near(fixedAxisMm, PositionTolerance.PerAxisM(held) * 1000, id, $"{size} in {holeMm} mm, fixed, per axis");
        // The same as distances: each hole gives half of its clearance, a thread gives none.
        Near(
            floatingMm,
            PositionTolerance.BetweenM(holeMm / 1000, false, holeMm / 1000, false, screw) * 1000,
            id,
            $"distance"
        );
        Near(
            fixedMm,
            PositionTolerance.BetweenM(holeMm / 1000, false, screw, true, screw) * 1000,
            id,
            $"distance, fixed"
        );
    }

    [Fact]
    public void Medium_holes_of_M4_do_not_guarantee_a_fit() // K.G4a, formula (derived)
    {
        var zone = PositionTolerance.ZoneM(0.2e-3);
        var thread = MetricThread.Named("M4")!;
        Near(0.566, zone * 1000, "K.G4a", $"±0.2 mm per axis");
        Assert.True(zone > PositionTolerance.FloatingM(thread.ClearMediumM, thread.DiameterM), $"K.G4a: zone {zone}");
    }

    private static void Near(double expected, double actual, string id, FormattableString inputs) =>
        Assert.True(
            Math.Abs(expected - actual) <= 0.001,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{id} {inputs.ToString(CultureInfo.InvariantCulture)}: expected {expected} mm, found {actual} mm"
            )
        );
}
