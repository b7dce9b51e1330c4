using Lampwright.Design;
using Lampwright.Evaluation.Maps;
using Lampwright.FitUp;
using Lampwright.Geometry;

namespace Lampwright.Evaluation.Assembling;

/// <summary>The axis of a tilt joint and what turns about it.</summary>
/// <param name="At">A point of the axis in the frame of the fixed part, m.</param>
/// <param name="Direction">Its direction.</param>
/// <param name="Tilting">Which of the things turn.</param>
internal sealed record TiltAxis(Vec3 At, Vec3 Direction, bool[] Tilting)
{
    private static readonly double SameAxisM = 2e-3;

    /// <summary>Finds axis and tilting side; null when one of the two patterns does not exist or is not placed.</summary>
    public static TiltAxis? Of(Tilt tilt, AssemblyRows assembly)
    {
        if (
            tilt.Between.Count != 2
            || Pattern(assembly, FitUpMap.Pattern(tilt.Between[0], assembly.Things)) is not { } holds
            || Pattern(assembly, FitUpMap.Pattern(tilt.Between[1], assembly.Things)) is not { } turns
        )
        {
            return null;
        }

        var axis = (
            At: holds.Frame.Out(holds.Pattern.Holes[0].Centre),
            Along: holds.Frame.Direction(holds.Pattern.Outward)
        );

        // All joints on the axis are the hinge; what the rest of the joints still tie to the second pattern's body turns with it.
        var ties = assembly
            .Result.Joints.Where(j => !j.Spec.Stack.All(p => IsOnAxis(assembly, p, axis.At, axis.Along)))
            .Select(j => j.Spec.Stack.Select(p => Owner(assembly, p)).Where(i => i >= 0).ToList())
            .ToList();
        var tilting = new bool[assembly.Things.Count];
        tilting[turns.Thing] = true;
        for (var grew = true; grew; )
        {
            grew = false;
            foreach (var tie in ties.Where(t => t.Exists(i => tilting[i]) && t.Exists(i => !tilting[i])))
            {
                tie.ForEach(i => tilting[i] = true);
                grew = true;
            }
        }

        return tilting[holds.Thing] ? null : new(axis.At, axis.Along, tilting);
    }

    private static bool IsOnAxis(AssemblyRows assembly, string id, Vec3 at, Vec3 along)
    {
        if (Pattern(assembly, id) is not { } p || p.Pattern.Holes.Count != 1)
        {
            return false;
        }

        var from = p.Frame.Out(p.Pattern.Holes[0].Centre) - at;
        return from.Cross(along).Length < SameAxisM
            && Math.Abs(p.Frame.Direction(p.Pattern.Outward).Dot(along)) > 0.999;
    }

    private static int Owner(AssemblyRows assembly, string id)
    {
        for (var i = 0; i < assembly.Things.Count; i++)
        {
            if (assembly.Things[i].Body.Patterns.Any(p => p.Id == id))
            {
                return i;
            }
        }

        return -1;
    }

    private static (int Thing, PatternSpec Pattern, Frame Frame)? Pattern(AssemblyRows assembly, string id)
    {
        var owner = Owner(assembly, id);
        return
            owner >= 0
            && assembly.Result.Placed.FirstOrDefault(p => p.Id == assembly.Things[owner].Body.Id) is { } placed
            ? (owner, assembly.Things[owner].Body.Patterns.First(p => p.Id == id), placed.Frame)
            : null;
    }
}
