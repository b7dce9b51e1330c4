namespace Lampwright.Files.Packet.Templates;

/// <summary>The face of the sheet that a template lies on.</summary>
internal enum TemplateFace
{
    /// <summary>The outside of the part is up: the blank as it is drawn.</summary>
    Outside,

    /// <summary>The inside is up: the mirror image.</summary>
    Inside,
}
