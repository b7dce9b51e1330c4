using Lampwright.Evaluation.Coupling;
using Lampwright.Heat;
using Lampwright.Steps;

namespace Lampwright.Tests.Evaluations;

public class OperatingPointTests
{
    private static readonly double AmbientK = 295;

    /// <summary>A sink of one resistance, no decay of flux: the loop is a straight line and has a closed form.</summary>
    [Theory]
    [InlineData(0.5, 0.4)]
    [InlineData(1.0, 2.0)]
    [InlineData(2.0, 0.1)]
    public void A_linear_loop_comes_to_its_closed_form(double currentA, double sinkKPerW)
    {
        var emitter = Emitter(decay: 0);
        var circuit = Circuit(emitter, SinkCurve.Measured(sinkKPerW));
        var point = OperatingPoints.AtCurrent(circuit, currentA, AmbientK);

        // Tj = Ta + R (I (V0 + k (Tj - Tr)) - F / K), solved for Tj.
        var r = sinkKPerW + circuit.InterfaceKPerW + circuit.JunctionKPerW;
        var k = emitter.SlopeVPerK;
        var v0 = emitter.VoltageV(currentA, emitter.ReferenceK);
        var light = emitter.FluxLm(currentA, emitter.ReferenceK) / circuit.RadiationLmPerW;
        var closed =
            (AmbientK + (r * ((currentA * (v0 - (k * emitter.ReferenceK))) - light))) / (1 - (r * currentA * k));
        Assert.Equal(closed, point.JunctionK, 1e-4);
        Assert.True(point.Converged);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(1.0)]
    [InlineData(3.0)]
    public void An_emitter_at_one_current_is_the_emitter(double currentA)
    {
        var model = Emitter(0.0018) with { VoltageBeyond = 0.02, FluxBeyond = -0.05 };
        var at = new EmitterAtCurrent(model, currentA);
        foreach (var kelvin in new[] { 250.0, 298.15, 350, 420 })
        {
            Assert.Equal(model.VoltageV(currentA, kelvin), at.VoltageV(kelvin), 1e-9);
            Assert.Equal(model.FluxLm(currentA, kelvin), at.FluxLm(kelvin), 1e-6);
        }
    }

    [Fact]
    public void The_loop_comes_to_the_same_point_from_any_guess()
    {
        var circuit = Circuit(Emitter(decay: 0.0018), SinkCurve.Measured(1.2));
        var cold = OperatingPoints.AtCurrent(circuit, 1.5, 250).JunctionK;
        var hot = OperatingPoints.AtCurrent(circuit, 1.5, 450).JunctionK;
        Assert.Equal(cold, hot, 1e-4);
    }

    [Fact]
    public void A_runaway_is_bounded_and_told_by_its_residual_or_its_heat()
    {
        var circuit = Circuit(Emitter(decay: 0.02), SinkCurve.Measured(60));
        var point = OperatingPoints.AtCurrent(circuit, 2, 300);
        Assert.True(double.IsFinite(point.JunctionK));
        Assert.InRange(point.JunctionK, 400, 1500);
    }

    [Fact]
    public void An_electrical_resistance_counts_on_all_power()
    {
        var real = Circuit(Emitter(0.0018), SinkCurve.Measured(0.5));
        var electrical = real with { JunctionIsElectrical = true };
        var (a, b) = (OperatingPoints.AtCurrent(real, 1.5, 300), OperatingPoints.AtCurrent(electrical, 1.5, 300));
        Assert.True(b.JunctionK > a.JunctionK);
        Assert.Equal(b.EmitterW * real.JunctionKPerW, b.JunctionK - b.CaseK, 1e-6);
        Assert.Equal(a.HeatW * real.JunctionKPerW, a.JunctionK - a.CaseK, 1e-6);
    }

    private static EmitterModel Emitter(double decay) =>
        new(1.2, 34, 1.1, -0.018, 298.15, 5000, 1, FluxForm.Power, 0.9, decay, 0.2, 2);

    private static Circuit Circuit(EmitterModel emitter, SinkCurve sink) =>
        new()
        {
            Emitter = emitter,
            Driver = new DriverModel(0.3, 0.2, 0, 0.9),
            Sink = sink,
            InterfaceKPerW = 0.05,
            JunctionKPerW = 0.3,
            JunctionIsElectrical = false,
            RadiationLmPerW = 320,
            AmbientK = AmbientK,
            Boxes = new Boxes(
                BoxModel.Curve(
                    new BoxSpec
                    {
                        Front = [new Panel(0.1, 0.1, PanelFacing.Side, 0.9)],
                        Compartment = [new Panel(0.1, 0.1, PanelFacing.Side, 0.9)],
                    },
                    AmbientK,
                    0
                ),
                AmbientK
            ),
        };
}
