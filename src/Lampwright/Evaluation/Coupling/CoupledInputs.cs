using Lampwright.Design;
using Lampwright.Evaluation.Boxes;
using Lampwright.Evaluation.Maps;
using Lampwright.Heat;
using Lampwright.Light;
using Lampwright.Steps;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Evaluation.Coupling;

/// <summary>What the coupled light is made of, after each station has looked at its nominal values.</summary>
internal sealed record CoupledInputs
{
    public required LightDesign Design { get; init; }

    public required LightParts Parts { get; init; }

    /// <summary>How it is dimmed; a chain without switches where the file says nothing.</summary>
    public required Design.Steps Steps { get; init; }

    /// <summary>What the station steps was told.</summary>
    public required StepsSpec StepsSpec { get; init; }

    /// <summary>What it said at assumed temperatures.</summary>
    public required StepsResult Told { get; init; }

    public required EmitterFit Fit { get; init; }

    public required SenseThreshold Threshold { get; init; }

    public required DriverModel Driver { get; init; }

    public required ChainNetwork Network { get; init; }

    /// <summary>True when the fixed resistor is the part on the board that the threshold was read with.</summary>
    public required bool FixedIsOnBoard { get; init; }

    /// <summary>Where the resistor values come from: <c>given</c> or <c>first search</c>.</summary>
    public required string ChosenBy { get; init; }

    /// <summary>What the search for the chain came to, null where the values are given or nothing was searched for.</summary>
    public ChainSearchResult? Search { get; init; }

    public required PreparedSink? Sink { get; init; }

    /// <summary>The clear section of the housing round the sink; null where none is placed round it.</summary>
    public Duct? Duct { get; init; }

    /// <summary>Methods of the station heat that work outside of their range here; their bands are doubled.</summary>
    public required IReadOnlyList<string> OutsideRange { get; init; }

    public required LightModel? Light { get; init; }

    public required BoxSpec Boxes { get; init; }

    /// <summary>What the network of the light is made from: sheet, joints, capacities.</summary>
    public required NetworkMap Map { get; init; }
}
