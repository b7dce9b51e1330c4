using System.Text.Json;
using Lampwright.Benchmarks.Peers;
using Lampwright.Evaluation.Coupling;
using Lampwright.Heat;
using Lampwright.Steps;

namespace Lampwright.Benchmarks.Problems;

/// <summary><c>points</c>: current, junction, air and resistors of every switch position solved together, beside scipy's fsolve.</summary>
/// <remarks>The file is <c>points.json</c> of this folder, or one of its form. The loop is the one of the road, called as the road calls it.</remarks>
internal sealed class PointsProblem : Problem
{
    public override string Name => "points";

    public override Prepared Load(string file)
    {
        using var text = JsonDocument.Parse(File.ReadAllText(file));
        var root = text.RootElement;
        double Of(string key) =>
            root.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.Number
                ? value.GetDouble()
                : throw new BadProblemException($"{key} is missing or no number");
        double[] ohms = [.. root.GetProperty("r").EnumerateArray().Select(v => v.GetDouble())];
        double[] box = [.. root.GetProperty("box_m").EnumerateArray().Select(v => v.GetDouble())];
        ResistorPart Part(double ohm) =>
            new(ohm, Of("tempco_ppm") * 1e-6, Of("rating_w"), Of("full_to_k"), Of("zero_at_k"));
        var network = new ChainNetwork(
            new(Arrangement.SeriesChain, Part(ohms[0]), [.. ohms.Skip(1).Select(Part)], Of("contact_ohm"))
        );
        var ambient = Of("ambient_k");
        Panel[] panels =
        [
            new(box[0] * box[1], box[1], PanelFacing.Up, 0.9),
            new(2 * (box[0] + box[1]) * box[2], box[2], PanelFacing.Side, 0.9),
        ];
        var curve = BoxModel.Curve(new() { Front = panels, Compartment = panels }, ambient, 0);
        var circuit = new Circuit
        {
            Emitter = new(
                Of("log_v"),
                Of("offset_v"),
                Of("series_ohm"),
                Of("slope_v_per_k"),
                Of("reference_k"),
                Of("flux_lm"),
                Of("flux_a"),
                FluxForm.Saturating,
                Of("flux_shape"),
                Of("flux_decay_per_k"),
                0.01,
                10
            ),
            Driver = new(Of("v_sense"), ohms[0], 0, Of("efficiency")),
            Sink = SinkCurve.Measured(Of("sink_k_per_w"), Of("sink_at_w")),
            InterfaceKPerW = Of("interface_k_per_w"),
            JunctionKPerW = Of("junction_k_per_w"),
            JunctionIsElectrical = false,
            RadiationLmPerW = Of("radiation_lm_per_w"),
            AmbientK = ambient,
            Boxes = new(curve, ambient),
        };
        var points = new OperatingPoint[network.CombinationCount];
        var nominal = Enumerable.Repeat(1.0, ohms.Length).ToArray();
        return new(
            () => Solve(circuit, network, nominal, points),
            found => new
            {
                CurrentA = ((OperatingPoint[])found).Select(p => p.CurrentA).ToArray(),
                JunctionK = ((OperatingPoint[])found).Select(p => p.JunctionK).ToArray(),
                AirK = ((OperatingPoint[])found).Select(p => p.CompartmentK).ToArray(),
                WorstResidualK = ((OperatingPoint[])found).Max(p => p.ResidualK),
            }
        )
        {
            PeerMs = Python.Has("scipy") ? () => Peer(file, curve) : null,
        };
    }

    private static OperatingPoint[] Solve(
        in Circuit circuit,
        ChainNetwork network,
        ReadOnlySpan<double> ohms,
        OperatingPoint[] points
    )
    {
        Span<double> warm = stackalloc double[ohms.Length];
        Span<double> watts = stackalloc double[ohms.Length];
        Span<double> contacts = stackalloc double[network.SwitchCount];
        contacts.Fill(network.Spec.ContactOhm);
        var (guess, air) = (circuit.AmbientK + 30, circuit.AmbientK + 10);
        for (var i = 0; i < points.Length; i++)
        {
            points[i] = OperatingPoints.AtPosition(
                circuit,
                network,
                i,
                contacts,
                ohms,
                1,
                1,
                1,
                warm,
                watts,
                guess,
                air
            );
            (guess, air) = (points[i].JunctionK, points[i].CompartmentK);
        }

        return points;
    }

    // The housing's curve goes to the peer as a table over its heat.
    private static double Peer(string file, BoxCurve curve)
    {
        var heats = Enumerable.Range(0, 60).Select(i => 0.1 * Math.Pow(1.1, i)).ToArray();
        var table = Path.GetTempFileName();
        try
        {
            File.WriteAllText(
                table,
                JsonSerializer.Serialize(
                    new { w = heats, k = heats.Select(w => curve.CompartmentAirRiseK(new(0, 0, w))).ToArray() }
                )
            );
            return Python.Run("points.py", file, table).GetProperty("ms").GetDouble();
        }
        finally
        {
            File.Delete(table);
        }
    }
}
