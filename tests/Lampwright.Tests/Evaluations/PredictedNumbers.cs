using System.Collections;
using System.Reflection;
using Lampwright.Evaluation;

namespace Lampwright.Tests.Evaluations;

/// <summary>Walks an evaluation and finds every predicted number with the way to it.</summary>
internal static class PredictedNumbers
{
    public static IEnumerable<(string Path, Predicted Number)> Of(object? root, string path = "")
    {
        if (root is null or string)
        {
            yield break;
        }

        if (root is Predicted number)
        {
            yield return (path, number);
            yield break;
        }

        if (root is IEnumerable list)
        {
            var i = 0;
            foreach (var item in list)
            {
                foreach (var found in Of(item, $"{path}[{i}]"))
                {
                    yield return found;
                }

                i++;
            }

            yield break;
        }

        if (root.GetType().Namespace?.StartsWith("Lampwright.Evaluation", StringComparison.Ordinal) != true)
        {
            yield break;
        }

        foreach (var property in root.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetIndexParameters().Length > 0)
            {
                continue;
            }

            foreach (var found in Of(property.GetValue(root), $"{path}.{property.Name}"))
            {
                yield return found;
            }
        }
    }
}
