using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Evaluation.Answers;

/// <summary>Answer of the station metal.</summary>
/// <param name="Parts">Every part that is cut and folded; a funnel of separate panels counts as one part a panel.</param>
public sealed record MetalAnswer(IReadOnlyList<PartAnswer> Parts)
{
    /// <summary>What can be drawn of parts that have no blank, so that the places of their findings are seen.</summary>
    public IReadOnlyList<BlankSketch> Sketches { get; init; } = [];

    /// <summary>The order of bending of every part; looked for when first asked for.</summary>
    public Lazy<BendingAnswer> Bending { get; init; } = new(new BendingAnswer(null, false, [], []));
}

/// <summary>One folded part.</summary>
public sealed record PartAnswer
{
    /// <summary>Name of the part.</summary>
    public required string Name { get; init; }

    /// <summary>Name of its table in the design file (differs from the name for panels), for example <c>part.funnel</c>.</summary>
    public required string Path { get; init; }

    /// <summary>Name of the sheet.</summary>
    public required string Sheet { get; init; }

    /// <summary>Material of the sheet.</summary>
    public required string Material { get; init; }

    /// <summary>Nominal thickness, mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>How many are made.</summary>
    public required int Count { get; init; }

    /// <summary>Width of the blank, mm.</summary>
    public required Predicted BlankWidthMm { get; init; }

    /// <summary>Height of the blank, mm.</summary>
    public required Predicted BlankHeightMm { get; init; }

    /// <summary>Area of the blank without its holes, mm².</summary>
    public required Predicted AreaMm2 { get; init; }

    /// <summary>Mass of one, kg.</summary>
    public required Predicted MassKg { get; init; }

    /// <summary>The blank: outline, holes, bends.</summary>
    public required Blank Blank { get; init; }

    /// <summary>The fold: faces, holes and edges in space, in the part's frame.</summary>
    public required FoldedPart Folded { get; init; }

    /// <summary>The solid for pictures, in the part's frame; made when first asked for.</summary>
    public required Lazy<SceneBody> Solid { get; init; }
}
