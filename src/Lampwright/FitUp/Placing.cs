using Lampwright.Geometry;

namespace Lampwright.FitUp;

/// <summary>Places bodies one after another by the joints that reach them.</summary>
internal sealed class Placing
{
    private readonly Dictionary<string, Frame> places = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Joint, int Layer), PlaneFit> fits = [];

    /// <summary>Frames of the bodies that are placed, in that of the fixed one.</summary>
    public IReadOnlyDictionary<string, Frame> Places => places;

    /// <summary>How a layer was laid on the one before it (or the other way round), for the layers that placed a body.</summary>
    public IReadOnlyDictionary<(string Joint, int Layer), PlaneFit> Fits => fits;

    /// <summary>Starts at the fixed body and takes the joints in their order until none reaches a new body.</summary>
    public static Placing Of(string fixedBody, IReadOnlyList<JointLayers> joints)
    {
        var placing = new Placing();
        placing.places.Add(fixedBody, Frame.World);
        var grew = true;
        while (grew)
        {
            grew = false;
            foreach (var joint in joints)
            {
                grew |= placing.Grow(joint);
            }
        }

        return placing;
    }

    private bool Grow(JointLayers joint)
    {
        var grew = false;
        for (var i = 1; i < joint.Layers.Count; i++)
        {
            grew |= Lay(joint, i);
        }

        for (var i = joint.Layers.Count - 1; i > 0; i--)
        {
            grew |= Lay(joint, i);
        }

        return grew;
    }

    private bool Lay(JointLayers joint, int layer)
    {
        var (before, after) = (joint.Layers[layer - 1].Body.Id, joint.Layers[layer].Body.Id);
        var (isBefore, isAfter) = (
            places.TryGetValue(before, out var first),
            places.TryGetValue(after, out var second)
        );
        if (isBefore == isAfter)
        {
            return false;
        }

        var (still, moved) = isBefore
            ? (joint.Towards(layer - 1), joint.Back(layer))
            : (joint.Back(layer), joint.Towards(layer - 1));
        var (frame, fit) = still.Carry(moved, joint.Turn(layer));
        places.Add(isBefore ? after : before, (isBefore ? first : second).Then(frame));
        fits[(joint.Spec.Name, layer)] = fit;
        return true;
    }
}
