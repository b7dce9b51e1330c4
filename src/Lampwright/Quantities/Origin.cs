namespace Lampwright.Quantities;

/// <summary>Where a value of the design comes from.</summary>
public enum Origin
{
    /// <summary>Written in the design file or its shop file.</summary>
    Given,

    /// <summary>Not written; taken from a documented default, with a source.</summary>
    Default,

    /// <summary>Computed from other values of the design.</summary>
    Computed,

    /// <summary>Fitted from readings.</summary>
    Fitted,
}
