namespace Lampwright.Steps.Board;

/// <summary>What to ask the maker about a driver's board. No answer is ever to be measured on a live primary.</summary>
/// <remarks><b>Source</b>: common practice, no source; local codes and licensed practice go before all of it.</remarks>
public static class BoardQuestions
{
    private static readonly string Unpowered =
        "Unplugged, and left until its capacitors are discharged: a data sheet of the driver, or of the controller whose type is printed on it. ";

    private static readonly string Licensed =
        "Where that does not tell, ask the driver's maker or a licensed person; do not measure on a live driver.";

    /// <summary>All questions, those that hold up a stop first.</summary>
    /// <param name="driver">What is known of the driver.</param>
    /// <param name="stops">The stops that stand.</param>
    public static IReadOnlyList<BoardQuestion> Of(DriverSpec driver, IReadOnlyList<string> stops)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(stops);
        var (sense, path) = (driver.Sense, driver.Path);
        string Standing(string code) => stops.Contains(code) ? code : "";
        List<BoardQuestion> all =
        [
            new(
                path + ".sense.side",
                "Which side of the isolation barrier is the sense part on?",
                "A sense part on the primary side is at mains potential; no wire may leave from it.",
                Unpowered
                    + "By eye: the barrier is the gap under the transformer, without copper, that only transformer, optocoupler and marked safety capacitors bridge. "
                    + Licensed,
                sense.Side == SenseSide.Unknown,
                Standing(StepsRules.SenseNotSecondary.Code)
            ),
            new(
                path + ".isolated",
                "Is the output isolated from the mains, with an extra-low voltage?",
                "A driver without isolation has its whole output at mains potential, however low its voltage is.",
                "The label or the data sheet says isolated, SELV or class 2 in words; a resistance measured with a hand meter proves nothing. "
                    + Licensed,
                driver.Isolated == Isolation.Unknown,
                Standing(StepsRules.OutputNotIsolated.Code)
            ),
            new(
                path + ".sense.carries",
                "Does the sense part carry the smooth output current or pulses?",
                "A part that carries pulses belongs to the switching stage; a longer loop there disturbs or destroys it.",
                Carries(stops),
                sense.Carries == SenseCarries.Unknown,
                Standing(StepsRules.PulsedSense.Code)
            ),
            new(
                path + ".sense.control",
                "Does the controller hold the average, the peak, or does it regulate from the primary side?",
                "Only where the average is held does the current follow 1/R; the peak subtracts half of the ripple.",
                Unpowered + "Its formula for the current names an average or a peak.",
                sense.Control == SenseControl.Unknown,
                ""
            ),
        ];
        if (sense.Control == SenseControl.Peak)
        {
            all.Add(
                new(
                    path + ".sense.inductor_ripple",
                    "How large is the ripple of the inductor current, peak to peak?",
                    "Half of it is missing from the average, at every step.",
                    Unpowered
                        + "It follows from inductance, off-time and output voltage by the formula of the data sheet.",
                    sense.InductorRippleA is null,
                    ""
                )
            );
        }

        all.Add(
            new(
                path + ".sense.second",
                "Which current flows with a second sense resistance?",
                "Two points give threshold and offset, and tell how far 1/R holds.",
                stops.Count > 0
                    ? "Not while a stop stands: it means work on the driver's board."
                    : "A part soldered in place of the old one with the driver unplugged and discharged, at no more current than before; then a meter in the isolated output's line. Altering a driver voids its approval.",
                sense.SecondPair is null && stops.Count == 0,
                ""
            )
        );
        return [.. all.OrderByDescending(q => q.Stop.Length > 0)];
    }

    private static string Carries(IReadOnlyList<string> stops) =>
        stops.Contains(StepsRules.SenseNotSecondary.Code) || stops.Contains(StepsRules.OutputNotIsolated.Code)
            ? Unpowered + "Not by measuring: side and isolation are not shown to be safe. " + Licensed
            : Unpowered
                + "By eye: a part between output capacitor and output terminal carries the smooth current, one at a switch or a diode carries pulses. "
                + "What is still open has to be measured by a person trained for it, with equipment rated for it.";
}
