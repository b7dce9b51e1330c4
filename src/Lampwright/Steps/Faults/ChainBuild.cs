namespace Lampwright.Steps.Faults;

/// <summary>A lead of the wiring schedule.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Node it begins at.</param>
/// <param name="To">Node it ends at.</param>
/// <param name="LengthM">Length in metres; null where the design does not say.</param>
/// <param name="AreaMm2">Area of the copper in mm²; null where the design does not say.</param>
/// <param name="Ohm">Resistance warm, in ohm; null where length or area is not known.</param>
/// <param name="MostA">Greatest current, in amperes.</param>
/// <param name="DropV">Drop at that current, in volts; null where the resistance is not known.</param>
/// <param name="HeatW">Heat at that current, in watts; null where the resistance is not known.</param>
/// <param name="InLoop">Whether its drop counts in the sense loop.</param>
/// <param name="Words">What is to be minded.</param>
public sealed record LeadRow(
    string Name,
    string From,
    string To,
    double? LengthM,
    double? AreaMm2,
    double? Ohm,
    double MostA,
    double? DropV,
    double? HeatW,
    bool InLoop,
    string Words
);

/// <summary>A resistor to be soldered in.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Node of its first end.</param>
/// <param name="To">Node of its second end.</param>
/// <param name="Ohm">Resistance in ohm.</param>
/// <param name="MostW">Greatest power over all positions, in watts.</param>
/// <param name="AllowedW">Power it may take in its air, in watts; null where nothing is known of the part.</param>
/// <param name="RiseK">Rise over the air at that power, in kelvin; null where nothing is known of the part.</param>
/// <param name="OnBoard">Whether it sits on the driver's board.</param>
/// <param name="Mounting">How it is mounted.</param>
public sealed record ResistorRow(
    string Name,
    string From,
    string To,
    double Ohm,
    double MostW,
    double? AllowedW,
    double? RiseK,
    bool OnBoard,
    string Mounting
);

/// <summary>What one switch must bear.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Node of its first contact.</param>
/// <param name="To">Node of its second contact.</param>
/// <param name="MostA">Greatest current when closed, in amperes.</param>
/// <param name="OpenV">Greatest voltage across it when open, in volts.</param>
/// <param name="RatedA">What it is rated for, in amperes; null where it is not known.</param>
/// <param name="Words">What kind of contact it takes.</param>
public sealed record ContactRow(
    string Name,
    string From,
    string To,
    double MostA,
    double OpenV,
    double? RatedA,
    string Words
);

/// <summary>What a milliohm meter shows at one position with the plug out.</summary>
/// <param name="Switches">The position, 1 = closed.</param>
/// <param name="Ohm">Resistance between the pads LED − and G, cold, in ohm.</param>
/// <param name="LeastOhm">Least by tolerance, with contacts without resistance.</param>
/// <param name="MostOhm">Greatest by tolerance, with worn contacts.</param>
/// <param name="CurrentA">Current of that position, in amperes.</param>
/// <param name="FixedV">Voltage across the fixed resistor at that current, in volts.</param>
public sealed record PatternRow(
    string Switches,
    double Ohm,
    double LeastOhm,
    double MostOhm,
    double CurrentA,
    double FixedV
);

/// <summary>Volts across the fixed resistor against the current of the emitter.</summary>
/// <param name="CurrentA">Current in amperes.</param>
/// <param name="FixedV">Voltage across it, in volts.</param>
public sealed record FixedRow(double CurrentA, double FixedV);

/// <summary>A resistor across the leads on the board, offered or given, and what it does.</summary>
/// <param name="Given">Whether the design has one; else this one is offered.</param>
/// <param name="Ohm">Its resistance in ohm.</param>
/// <param name="LooseA">Greatest current with a lead off, in amperes; null where nothing known holds it.</param>
/// <param name="DimmestA">Current of the dimmest position with it, in amperes.</param>
/// <param name="BrightestShift">How much the brightest position moves, as a share.</param>
/// <param name="DimmestShift">How much the dimmest moves, as a share.</param>
/// <param name="Words">The judgement.</param>
public sealed record BleedRow(
    bool Given,
    double Ohm,
    double? LooseA,
    double DimmestA,
    double BrightestShift,
    double DimmestShift,
    string Words
);

/// <summary>The fuse in the supply.</summary>
/// <param name="WorkingA">Greatest working current, in amperes.</param>
/// <param name="RatingA">The rating to take, in amperes; null where no fuse of the list bears it.</param>
/// <param name="Words">The reason.</param>
public sealed record FuseRow(double WorkingA, double? RatingA, string Words);

/// <summary>What is soldered, as data for paper and page.</summary>
/// <param name="Leads">The wiring schedule.</param>
/// <param name="Resistors">The resistors, R0 first.</param>
/// <param name="Contacts">The switches.</param>
/// <param name="Patterns">What a milliohm meter shows at every position, and what flows there.</param>
/// <param name="Fixed">Volts across the fixed resistor against amps.</param>
/// <param name="Taps">Where the sense input takes its voltage, in words.</param>
/// <param name="Bleed">The resistor across the leads, given or offered; null for parallel branches, whose fixed resistor is it.</param>
/// <param name="FloorOhm">Least resistance of a floor for parallel branches, in ohm; null where none is needed or the emitter's limit is not known.</param>
public sealed record ChainBuild(
    IReadOnlyList<LeadRow> Leads,
    IReadOnlyList<ResistorRow> Resistors,
    IReadOnlyList<ContactRow> Contacts,
    IReadOnlyList<PatternRow> Patterns,
    IReadOnlyList<FixedRow> Fixed,
    string Taps,
    BleedRow? Bleed,
    double? FloorOhm
);
