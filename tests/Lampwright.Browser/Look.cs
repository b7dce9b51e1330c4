namespace Lampwright.Browser;

/// <summary>How a page is looked at.</summary>
/// <param name="Name">In words.</param>
/// <param name="Width">Width of the window.</param>
/// <param name="Height">Height of the window.</param>
/// <param name="IsDark">True for dark paper.</param>
public sealed record Look(string Name, int Width, int Height, bool IsDark)
{
    /// <summary>A desk's screen, light.</summary>
    public static Look Wide { get; } = new("wide, light", 1440, 900, false);

    /// <summary>All looks that a page must stand.</summary>
    public static IReadOnlyList<Look> All { get; } =
    [
        Wide,
        new("wide, dark", 1440, 900, true),
        new("phone, light", 390, 844, false),
        new("phone, dark", 390, 844, true),
    ];
}
