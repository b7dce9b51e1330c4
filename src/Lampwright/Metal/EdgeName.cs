using System.Globalization;
using Lampwright.Geometry;

namespace Lampwright.Metal;

/// <summary>Names of edges: <c>face.left</c> is edge <c>left</c> on <c>face</c>.</summary>
internal static class EdgeName
{
    public static (string On, string Edge) Split(string path)
    {
        var dot = path.LastIndexOf('.');
        return dot < 0 ? ("face", path) : (path[..dot], path[(dot + 1)..]);
    }

    /// <summary>Corners of a face, counter-clockwise, unnamed edges called e1…en from the first corner round.</summary>
    public static Corner[] Named(Outline outline)
    {
        var counter = outline.SignedArea >= 0 ? outline : outline.Reversed;
        return
        [
            .. counter.Corners.Select(
                (c, i) =>
                    c.EdgeId.Length > 0
                        ? c
                        : c with
                        {
                            EdgeId = string.Create(CultureInfo.InvariantCulture, $"e{i + 1}"),
                        }
            ),
        ];
    }
}
