namespace Lampwright.FitUp;

/// <summary>Which joints alone hold two sides of an assembly together.</summary>
internal static class Bridges
{
    /// <summary>
    /// For each joint whether its bodies come apart when it is taken away, so that nothing else says where they must meet.
    /// </summary>
    public static bool[] Of(IReadOnlyList<JointLayers> joints)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var bodies = new int[joints.Count][];
        for (var j = 0; j < bodies.Length; j++)
        {
            bodies[j] = new int[joints[j].Layers.Count];
            for (var i = 0; i < bodies[j].Length; i++)
            {
                var id = joints[j].Layers[i].Body.Id;
                if (!numbers.TryGetValue(id, out var number))
                {
                    number = numbers.Count;
                    numbers.Add(id, number);
                }

                bodies[j][i] = number;
            }
        }

        var bridges = new bool[bodies.Length];
        var roots = new int[numbers.Count];
        for (var left = 0; left < bodies.Length; left++)
        {
            for (var i = 0; i < roots.Length; i++)
            {
                roots[i] = i;
            }

            for (var j = 0; j < bodies.Length; j++)
            {
                for (var i = 1; j != left && i < bodies[j].Length; i++)
                {
                    roots[Root(roots, bodies[j][i])] = Root(roots, bodies[j][0]);
                }
            }

            bridges[left] = true;
            for (var i = 1; i < bodies[left].Length; i++)
            {
                bridges[left] &= Root(roots, bodies[left][i]) != Root(roots, bodies[left][0]);
            }
        }

        return bridges;
    }

    private static int Root(int[] roots, int body)
    {
        while (roots[body] != body)
        {
            roots[body] = roots[roots[body]];
            body = roots[body];
        }

        return body;
    }
}
