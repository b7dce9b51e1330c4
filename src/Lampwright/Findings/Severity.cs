namespace Lampwright.Findings;

/// <summary>How serious a finding is.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing has to change.</summary>
    Note,

    /// <summary>Likely to disappoint or to need rework.</summary>
    Warn,

    /// <summary>Do not build or power this.</summary>
    Stop,
}
