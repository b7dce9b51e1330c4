using Lampwright.Findings;

namespace Lampwright.Steps.Board;

/// <summary>What forbids to bring wires out of a driver. Nothing lifts it but knowing better; no default, no override, no other key.</summary>
/// <remarks>
/// Primary, not isolated or unknown is a stop; pulsed or unknown is a stop. What is said of the control can add a stop and never take
/// one away: a controller on the primary side has its sense part there, and one that holds a peak sees no smooth current.
/// </remarks>
public static class BoardStops
{
    /// <summary>The stops that stand for wires from this driver; empty only where everything is known to be in order.</summary>
    public static IReadOnlyList<Finding> Of(DriverSpec driver)
    {
        ArgumentNullException.ThrowIfNull(driver);
        var sense = driver.Sense;
        var findings = new List<Finding>();
        if (sense.Side != SenseSide.Secondary || sense.Control == SenseControl.Primary)
        {
            var what =
                sense.Side == SenseSide.Primary ? "is on the primary side, at mains potential"
                : sense.Control == SenseControl.Primary
                    ? "belongs to a controller on the primary side, at mains potential, whatever else is said"
                : "may be on the primary side";
            findings.Add(
                StepsRules.SenseNotSecondary.At(
                    driver.Path + ".sense.side",
                    $"The sense part {what}; wires from it would leave the driver."
                )
            );
        }

        if (driver.Isolated != Isolation.Yes)
        {
            var what =
                driver.Isolated == Isolation.No ? "is not isolated from the mains" : "is not known to be isolated";
            findings.Add(
                StepsRules.OutputNotIsolated.At(
                    driver.Path + ".isolated",
                    $"The output {what}; wires from it would leave the driver."
                )
            );
        }

        if (sense.Carries != SenseCarries.Smooth || sense.Control == SenseControl.Peak)
        {
            var what =
                sense.Carries == SenseCarries.Pulsed ? "carries pulses"
                : sense.Control == SenseControl.Peak
                    ? "belongs to a controller that watches peaks, so its current is not smooth, whatever else is said"
                : "is not known to carry a smooth current";
            findings.Add(StepsRules.PulsedSense.At(driver.Path + ".sense.carries", $"The sense part {what}."));
        }

        return findings;
    }
}
