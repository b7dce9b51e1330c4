namespace Lampwright.Files.Packet.Sheets;

/// <summary>What the title block of a sheet says.</summary>
/// <param name="Title">What the sheet shows.</param>
/// <param name="Material">Material and thickness, or empty.</param>
/// <param name="Scale">Scale, or empty.</param>
internal sealed record SheetTitle(string Title, string Material = "", string Scale = "");
