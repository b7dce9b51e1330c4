using Lampwright.Evaluation.Draws;
using Lampwright.Steps;

namespace Lampwright.Evaluation.Coupling;

/// <summary>Resistors, contacts and leads of a draw.</summary>
internal sealed class ChainDraws
{
    private readonly int[] _ohms;
    private readonly int[] _seconds;
    private readonly ResistorPair?[] _pairs;
    private readonly int[] _contacts;
    private readonly int _tempco;
    private readonly double _tempcoNominal;
    private readonly int _lead;
    private readonly int _rise;
    private readonly double _contactOhm;

    /// <param name="network">The chain.</param>
    /// <param name="steps">What the design says of its parts.</param>
    /// <param name="fixedIsOnBoard">True when the fixed resistor is the part the threshold was read with, whose own error cancels.</param>
    /// <param name="variables">Takes the variables.</param>
    public ChainDraws(ChainNetwork network, Design.Steps steps, bool fixedIsOnBoard, Variables variables)
    {
        var tolerance = steps.Part.Tolerance.Nominal;
        ResistorPart[] parts = [network.Spec.Fixed, .. network.Spec.Switched];
        _pairs = [.. parts.Select(p => p.Pair)];
        int Of(string name, ResistorPart part) => variables.Between(name, 1, part.Tolerance ?? tolerance);
        _ohms =
        [
            .. parts.Select(
                (p, k) =>
                    k == 0 && fixedIsOnBoard
                        ? variables.Exact("steps.r0", 1)
                        : Of(p.Pair is null ? $"steps.r{k}" : $"steps.r{k}a", p.Soldered()[0])
            ),
        ];
        _seconds = [.. _pairs.Select((p, k) => p is null ? _ohms[k] : Of($"steps.r{k}b", p.Second))];
        _contactOhm = steps.ContactTypical.Nominal;

        // The typical figure is the middle of the scatter, the most the end of life of one contact in twenty.
        var worn = _contactOhm > 0 ? Math.Max(0, (steps.ContactMost.Nominal / _contactOhm) - 1) : 0;
        _contacts =
        [
            .. Enumerable.Range(0, network.SwitchCount).Select(k => variables.Factor($"steps.contact.{k + 1}", worn)),
        ];

        // "100 ppm/K" on a part is a limit of either sign; a value with a spread of its own is taken as it stands.
        _tempcoNominal = steps.Part.Tempco.Nominal;
        _tempco =
            steps.Part.Tempco.HalfWidth > 0
                ? variables.Of(steps.Part.Tempco)
                : variables.Between("steps.part.tempco", 0, Math.Abs(_tempcoNominal));
        _lead = variables.Factor(StepsMethods.MethodErrors.First(e => e.Name == "steps.lead_resistance"));
        _rise = variables.Factor(StepsMethods.MethodErrors.First(e => e.Name == "steps.resistor_rise"));
    }

    /// <summary>Count of resistors, the fixed one with them.</summary>
    public int Resistors => _ohms.Length;

    /// <summary>Count of switches.</summary>
    public int Switches => _contacts.Length;

    /// <summary>Fills the factors of the resistors.</summary>
    public void Ohms(ReadOnlySpan<double> x, Span<double> factors)
    {
        for (var k = 0; k < _ohms.Length; k++)
        {
            factors[k] = _pairs[k] is { } pair ? pair.Ohm(x[_ohms[k]], x[_seconds[k]]) / pair.Ohm(1, 1) : x[_ohms[k]];
        }
    }

    /// <summary>Fills the contact resistances, ohm.</summary>
    public void Contacts(ReadOnlySpan<double> x, Span<double> ohms)
    {
        for (var k = 0; k < _contacts.Length; k++)
        {
            ohms[k] = _contactOhm * x[_contacts[k]];
        }
    }

    /// <summary>Factor of the temperature coefficient.</summary>
    public double Tempco(ReadOnlySpan<double> x) => _tempcoNominal != 0 ? x[_tempco] / _tempcoNominal : 0;

    /// <summary>Factor of the leads.</summary>
    public double Lead(ReadOnlySpan<double> x) => x[_lead];

    /// <summary>Factor of the resistors' own rise.</summary>
    public double Rise(ReadOnlySpan<double> x) => x[_rise];
}
