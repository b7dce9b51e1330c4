namespace Lampwright.References.Heat.SecondTruth;

/// <summary>The second model against what is known exactly or was published; none of it is the station's.</summary>
public class SecondTruthChecks
{
    /// <summary>Poiseuille and Graetz between two walls: heads grow by 3, Nu on the hydraulic diameter is 7.541.</summary>
    [Fact]
    public void A_long_channel_comes_to_the_developed_limits()
    {
        var (near, far) = (Channels.Forced(0.7), Channels.Forced(1.2));
        Assert.Equal(3, (far.Heads - near.Heads) / 0.5, 0.02);
        Assert.Equal(7.541, -Math.Log((1 - far.Bulk) / (1 - near.Bulk)) / 0.5 * 4 * 0.71, 0.08);

        // Excess of the developing profile over the developed drag: 0.674 heads of ½ρu² (Shah and London 1978), the profile's momentum in it.
        Assert.InRange(2 * (far.Heads - 3 * 1.2), 0.60, 0.75);
    }

    /// <summary>Close behind the inlet each wall is Blasius's plate: drag 0.664·2/√Re and Pohlhausen's heat, as the layers are thin.</summary>
    [Fact]
    public void A_short_channel_comes_to_the_plates_limits()
    {
        var xi = 1e-3;
        var (heads, bulk) = Channels.Forced(xi);
        // 0.664·Re^½·Pr^⅓ on one wall; the core's acceleration adds a few percent.
        Assert.InRange(bulk / (0.664 * Math.Sqrt(xi) * Math.Pow(0.71, -2.0 / 3)), 0.95, 1.12);
        Assert.InRange(heads / (3.44 * Math.Sqrt(xi)), 0.45, 0.55 * 2);
    }

    /// <summary>
    /// Narrow channels: all the air leaves as warm as the walls, Nu = Ra/24 (Elenbaas 1942, exact). Wide ones: each wall a plate alone, 0.515·Ra^¼
    /// (Ostrach 1953), met from above as the neighbour draws.
    /// </summary>
    [Fact]
    public void A_rising_channel_comes_to_both_of_its_limits()
    {
        Assert.InRange(Channels.Natural(0.02) / (0.71 * 0.02 / 3), 0.97, 1.01);

        // Between both, El 341: Elenbaas's own fit of his measurements, 2.48.
        Assert.InRange(2 * Channels.Natural(341 / 16 / 0.71), 2.48 * 0.92, 2.48 * 1.08);

        // h·a/k over 0.515·(Gr·Pr)^¼, both with the half gap as length.
        Assert.InRange(Channels.Natural(1e5) / (0.515 * Math.Pow(0.71e5, 0.25)), 0.95, 1.35);
    }

    /// <summary>The same heat spreads the less the thicker and the better the plate; alone over the whole back it does not spread at all.</summary>
    [Fact]
    public void A_source_as_large_as_the_plate_drops_only_through_its_thickness()
    {
        var drop = Plate.SpreadKPerW(0.06, 0.06, 0.006, 200, 500, 0.03, 0.03, 0.06, 0);
        Assert.Equal(0.006 / 200 / (0.06 * 0.06), drop, 1e-4);
    }

    [Fact]
    public void Each_light_gets_hotter_from_its_base_to_its_junction()
    {
        var chance = new Random(5);
        Assert.All(
            Enumerable.Range(0, 60).Select(_ => Lights.Of(new(chance.Next()))),
            r =>
            {
                Assert.InRange(r.BaseK, 2, 70);
                Assert.InRange(r.CaseK, r.BaseK, 110);
                Assert.InRange(r.JunctionK, r.CaseK, 110);
            }
        );
    }

    /// <summary>
    /// One hot plate upright in a still room: 0.1 m, 40 K. Ra 2.9e6: Nu 21.9 by Churchill and Chu's laminar fit, 24.4 by McAdams's 0.59·Ra^¼, a film of
    /// 5.9 to 6.6 W/(m²·K).
    /// </summary>
    [Fact]
    public void A_plate_in_a_still_room_has_the_film_of_the_handbooks()
    {
        var faces = new Faces(295, 101325, 0, 1);
        Assert.InRange(faces.ConvectedW(0.01, 0.1, 0.4, 0, 40) / 0.4, 5.6, 6.8);
    }
}
