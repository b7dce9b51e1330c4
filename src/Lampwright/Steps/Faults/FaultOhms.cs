namespace Lampwright.Steps.Faults;

/// <summary>The resistances one play is made with: as stated, or one corner of what they may be.</summary>
/// <param name="resistors">Of each resistor of the circuit, in ohm; above 0.</param>
/// <param name="leads">Of each lead, in ohm; 0 for a wire.</param>
/// <param name="contacts">Of each closed contact, in ohm; 0 for a wire.</param>
public readonly ref struct FaultOhms(
    ReadOnlySpan<double> resistors,
    ReadOnlySpan<double> leads,
    ReadOnlySpan<double> contacts
)
{
    /// <summary>Of each resistor of the circuit, in ohm.</summary>
    public ReadOnlySpan<double> Resistors { get; } = resistors;

    /// <summary>Of each lead, in ohm.</summary>
    public ReadOnlySpan<double> Leads { get; } = leads;

    /// <summary>Of each closed contact, in ohm.</summary>
    public ReadOnlySpan<double> Contacts { get; } = contacts;
}
