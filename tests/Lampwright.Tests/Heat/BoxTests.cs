using CsCheck;
using Lampwright.Heat;

namespace Lampwright.Tests.Heat;

public sealed class BoxTests
{
    private static readonly BoxSpec Box = new()
    {
        Front = [new Panel(0.10, 0.15, PanelFacing.Side, 0.9)],
        Diffuser = new Panel(0.05, 0.05, PanelFacing.Down, 0.9),
        Compartment = [new Panel(0.03, 0.1, PanelFacing.Side, 0.9), new Panel(0.02, 0.04, PanelFacing.Up, 0.9)],
        DriverCaseM2 = 0.02,
    };

    private static readonly BoxHeat Heat = new(6, 3, 10, 4);

    private static readonly Gen<(BoxSpec Box, BoxHeat Heat, double Ambient, double Flow)> Any =
        from area in Gen.Double[0.01, 0.3]
        from compartment in Gen.Double[0.01, 0.2]
        from driver in Gen.Double[0.002, 0.04]
        from emissivity in Gen.Double[0.05, 0.95]
        from facing in Gen.Enum<PanelFacing>()
        from reflector in Gen.Double[0, 20]
        from diffuser in Gen.Double[0, 10]
        from loss in Gen.Double[0.1, 30]
        from chain in Gen.Double[0, 10]
        from flow in Gen.Double[0, 0.01]
        from inlet in Gen.Double[0, 8]
        from ambient in Gen.Double[250, 320]
        select (
            Box with
            {
                Front = [new Panel(area, 0.1, facing, emissivity)],
                Diffuser = area > 0.15 ? null : Box.Diffuser,
                Compartment = [new Panel(compartment, 0.08, facing, emissivity)],
                DriverCaseM2 = driver,
            },
            new BoxHeat(reflector, diffuser, loss, chain, flow > 0 ? inlet : 0),
            ambient,
            flow
        );

    [Fact]
    public void Energy_balance_closes_on_any_box() =>
        Law.Holds(
            Any,
            "0000KxQ3VJh4",
            200,
            c =>
            {
                var r = BoxModel.At(c.Box, c.Ambient, c.Flow, c.Heat);
                Assert.True(r is not null, $"{c} front {c.Box.Front[0]} compartment {c.Box.Compartment[0]}");
                Assert.True(Math.Abs(r.BalanceError) < 1e-6, $"{r} {c}");
                var heat = c.Heat.ReflectorW + c.Heat.DiffuserW + c.Heat.DriverW + c.Heat.ChainW;
                Assert.True(Math.Abs(r.PanelsW + r.VentW - heat) < 1e-6 * heat, $"{r} {c}");
            }
        );

    [Fact]
    public void Curve_follows_the_exact_solution_on_any_box() =>
        Law.Holds(
            Any,
            "0000KxQ3VJh4",
            200,
            c =>
            {
                var r = BoxModel.At(c.Box, c.Ambient, c.Flow, c.Heat)!;
                var curve = BoxModel.Curve(c.Box, c.Ambient, c.Flow);
                void Near(double exact, double read, string what)
                {
                    // The curve is laid to 150 K; beyond that it only has to stay finite and above.
                    var holds =
                        exact <= 150
                            ? Math.Abs(exact - read) < 0.1 + 3e-3 * exact
                            : double.IsFinite(read) && read > 140;
                    Assert.True(holds, $"{what}: exact {exact} curve {read}; {c}");
                }

                Near(r.FrontRiseK, curve.FrontRiseK(c.Heat), "front");
                Near(r.DiffuserRiseK, curve.DiffuserRiseK(c.Heat), "diffuser");
                Near(r.CompartmentAirRiseK, curve.CompartmentAirRiseK(c.Heat), "air");
                Near(r.CompartmentSkinRiseK, curve.CompartmentSkinRiseK(c.Heat), "skin");
                Near(r.DriverCaseRiseK, curve.DriverCaseRiseK(c.Heat), "case");
            }
        );

    [Fact]
    public void Case_is_hotter_than_air_and_air_than_skin()
    {
        var r = BoxModel.At(Box, 295, 0, Heat)!;
        Assert.True(r.DriverCaseRiseK > r.CompartmentAirRiseK);
        Assert.True(r.CompartmentAirRiseK > r.CompartmentSkinRiseK);
        Assert.True(r.CompartmentSkinRiseK > 0);
    }

    [Fact]
    public void Air_through_the_compartment_cools_it_and_warm_air_cools_it_less()
    {
        var still = BoxModel.At(Box, 295, 0, Heat)!.CompartmentAirRiseK;
        var cool = BoxModel.At(Box, 295, 0.005, Heat)!.CompartmentAirRiseK;
        var warm = BoxModel.At(Box, 295, 0.005, Heat with { InletRiseK = 5 })!.CompartmentAirRiseK;
        Assert.True(cool < warm && warm < still, $"{cool} {warm} {still}");
    }

    [Fact]
    public void Front_without_a_diffuser_takes_its_heat()
    {
        var with = BoxModel.At(Box, 295, 0, Heat)!;
        var without = BoxModel.At(Box with { Diffuser = null }, 295, 0, Heat)!;
        Assert.True(without.FrontRiseK > with.FrontRiseK);
        Assert.Equal(without.FrontRiseK, without.DiffuserRiseK);
    }

    [Fact]
    public void Box_without_heat_is_as_warm_as_the_room() =>
        Assert.Equal(new BoxResult(0, 0, 0, 0, 0, 0, 0, 0), BoxModel.At(Box, 295, 0, new BoxHeat(0, 0, 0)));

    [Fact]
    public void Box_without_panels_has_no_answer_and_no_nan()
    {
        var shut = Box with { Compartment = [] };
        Assert.Null(BoxModel.At(shut, 295, 0, Heat));
        Assert.True(double.IsFinite(BoxModel.Curve(shut, 295, 0).DriverCaseRiseK(Heat)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoxModel.Curve(Box, double.NaN, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoxModel.Curve(Box, 295, -1));
    }

    [Fact]
    public void Upright_panel_by_hand()
    {
        // 0.1 m², 10 cm, ε 0.9, 20 K over 293 K: about h 5.3 and h_r 5.8 W/m²K
        var q = new Panel(0.1, 0.1, PanelFacing.Side, 0.9).HeatW(20, 293, 101325, HeatFactors.Nominal);
        Assert.InRange(q, 20, 24);
        Assert.Equal(0, new Panel(0.1, 0.1, PanelFacing.Side, 0.9).HeatW(-1, 293, 101325, HeatFactors.Nominal));
    }
}
