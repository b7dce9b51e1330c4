using Lampwright.Evaluation.Assembling;
using Lampwright.Evaluation.Coupling;
using Lampwright.Evaluation.Draws;

namespace Lampwright.Evaluation.Build;

/// <summary>The results a maker looks at first, ranked by what they hang on most.</summary>
internal static class Watch
{
    private static readonly int MostInputs = 6;

    public static IReadOnlyList<Influence> Ranked(
        CoupledLight? light,
        AssemblyRows assembly,
        IReadOnlyList<TiltRows> tilts,
        DrawTable table,
        IReadOnlyList<Variable> variables
    )
    {
        var ranking = new InfluenceRanking(variables, table.Columns);
        return
        [
            .. Results(light, assembly, tilts).SelectMany(r => ranking.Of(r.Name, table.Column(r.Place), MostInputs)),
        ];
    }

    private static IEnumerable<(string Name, int Place)> Results(
        CoupledLight? light,
        AssemblyRows assembly,
        IReadOnlyList<TiltRows> tilts
    )
    {
        if (light is not null)
        {
            var (normal, hot) = (
                light.Place(Scene.Normal, light.Brightest),
                light.Place(Scene.AtHighestAmbient, light.Brightest)
            );
            yield return ("current at the brightest position", normal + PositionRow.CurrentA);
            yield return ("lux at the subject, brightest position", normal + PositionRow.Lux);
            yield return ("junction in the scene hot, brightest position", hot + PositionRow.JunctionC);
        }

        if (assembly.Things.Count > 0)
        {
            yield return ("mass of the light", assembly.Total);
        }

        foreach (var tilt in tilts)
        {
            yield return ($"safety of the tilt joint {tilt.Tilt.Name}", tilt.First + 5);
        }
    }
}
