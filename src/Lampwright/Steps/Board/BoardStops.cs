using Lampwright.Findings;

namespace Lampwright.Steps.Board;

/// <summary>What forbids to bring wires out of a driver. Nothing lifts it but knowing better; no default, no override, no other key.</summary>
/// <remarks>
/// Primary, not isolated or unknown is a stop; pulsed or unknown is a stop. What is said of the control can add a stop and never take
/// one away: a controller on the primary side has its sense part there, and one that holds a peak sees no smooth current.
/// </remarks>
public static class BoardStops
{
    /// <summary>Whether the sense part is not shown to be on the secondary side (STP001).</summary>
    public static bool SideStands(DriverSpec driver)
    {
        ArgumentNullException.ThrowIfNull(driver);
        return driver.Sense.Side != SenseSide.Secondary || driver.Sense.Control == SenseControl.Primary;
    }

    /// <summary>Whether the output is not shown to be isolated (STP002).</summary>
    public static bool IsolationStands(DriverSpec driver)
    {
        ArgumentNullException.ThrowIfNull(driver);
        return driver.Isolated != Isolation.Yes;
    }

    /// <summary>Whether the sense part is not shown to carry a smooth current (STP003).</summary>
    public static bool CurrentStands(DriverSpec driver)
    {
        ArgumentNullException.ThrowIfNull(driver);
        return driver.Sense.Carries != SenseCarries.Smooth || driver.Sense.Control == SenseControl.Peak;
    }

    /// <summary>The stops that stand for wires from this driver; empty only where everything is known to be in order.</summary>
    public static IReadOnlyList<Finding> Of(DriverSpec driver)
    {
        ArgumentNullException.ThrowIfNull(driver);
        var sense = driver.Sense;
        var findings = new List<Finding>();
        if (SideStands(driver))
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

        if (IsolationStands(driver))
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

        if (CurrentStands(driver))
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
