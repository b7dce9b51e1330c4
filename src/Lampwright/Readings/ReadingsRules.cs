using Lampwright.Findings;

namespace Lampwright.Readings;

/// <summary>Rules of the station readings.</summary>
public static class ReadingsRules
{
    /// <summary>A reading lies a little outside what was predicted.</summary>
    public static readonly Rule OutsideBand = new(
        "REA001",
        "Reading outside its band",
        Severity.Note,
        "Read again; one reading in ten lies outside by chance, of temperatures about three.",
        "Bands are 5 to 95 %: JCGM 100:2008"
    );

    /// <summary>A reading lies far outside what was predicted.</summary>
    public static readonly Rule FarOutsideBand = new(
        "REA002",
        "Reading far outside its band",
        Severity.Warn,
        "Check wiring, switch position and meter, then the values of the design that the prediction hangs on most.",
        "Twice the 5 to 95 % band is met by chance once in a thousand: JCGM 100:2008"
    );

    /// <summary>A row that could not be read.</summary>
    public static readonly Rule Unreadable = new(
        "REA003",
        "Row of the readings not readable",
        Severity.Warn,
        "Correct the row; the others are used.",
        "Form of the readings file, docs/readings.md"
    );

    /// <summary>A reading that nothing is predicted for.</summary>
    public static readonly Rule NothingPredicted = new(
        "REA004",
        "Nothing is predicted for a reading",
        Severity.Note,
        "Check the switch position and the place, or give the design what the prediction needs.",
        "Form of the readings file, docs/readings.md"
    );

    /// <summary>A meter used outside the span it was calibrated in.</summary>
    public static readonly Rule MeterExtrapolated = new(
        "REA005",
        "Meter used outside its calibrated span",
        Severity.Warn,
        "Calibrate the meter over the span it is used in; its factor says nothing outside.",
        "Common practice, no source"
    );

    /// <summary>Too few readings to correct the design by.</summary>
    public static readonly Rule TooFew = new(
        "REA006",
        "Too few readings to correct the design by",
        Severity.Note,
        "Read at three switch positions or more, the brightest and the darkest among them.",
        "A straight line with its uncertainty wants three points: JCGM 100:2008, H.3"
    );

    /// <summary>A reading that does not belong to the others.</summary>
    public static readonly Rule Outlier = new(
        "REA007",
        "A reading does not belong to the others",
        Severity.Note,
        "Read this position again; nothing was left out.",
        "Grubbs, two-sided 5 %: NIST/SEMATECH e-Handbook 1.3.5.17 (memory)"
    );

    /// <summary>A sense threshold that no controller has.</summary>
    public static readonly Rule ThresholdImplausible = new(
        "REA008",
        "Measured sense threshold implausible",
        Severity.Warn,
        "Check that the current was measured with this resistance alone in the sense path.",
        "Range of Tables/sense-ranges.csv round the published thresholds: common practice, no source"
    );

    /// <summary>A meter that was never compared with a better one.</summary>
    public static readonly Rule MeterUncalibrated = new(
        "REA009",
        "Meter never compared with a better one",
        Severity.Note,
        "Compare it with a better one at three levels and give the factor; till then the comparison only sees gross errors.",
        "Common practice, no source"
    );

    /// <summary>All readings of a kind lie to one side.</summary>
    public static readonly Rule OneSided = new(
        "REA010",
        "All readings of a kind lie to one side",
        Severity.Note,
        "Look for one common cause: the meter's factor, the distance, the reflectances, the sense threshold.",
        "Common practice, no source"
    );

    /// <summary>All rules of the station.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        OutsideBand,
        FarOutsideBand,
        Unreadable,
        NothingPredicted,
        MeterExtrapolated,
        TooFew,
        Outlier,
        ThresholdImplausible,
        MeterUncalibrated,
        OneSided,
    ];
}
