using Lampwright.Heat.Network;

namespace Lampwright.Evaluation.Boxes;

/// <summary>Faces and flanges of the folded parts round a light, and how heat passes between them.</summary>
/// <param name="Panels">One for each face or flange; narrow flanges count with the face they stand on.</param>
/// <param name="Bridges">Along the sheet and through joints.</param>
/// <param name="Seats">Panels that the sink is screwed to.</param>
/// <param name="Covered">Indices of panels that no hand reaches: sheet under the sink.</param>
/// <param name="ReflectorStandsFree">True where no part stands round the reflector.</param>
internal sealed record SheetPanels(
    IReadOnlyList<NetworkPanel> Panels,
    IReadOnlyList<PanelBridge> Bridges,
    IReadOnlyList<SinkSeat> Seats,
    IReadOnlySet<int> Covered,
    bool ReflectorStandsFree
);
