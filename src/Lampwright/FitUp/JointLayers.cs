namespace Lampwright.FitUp;

/// <summary>A joint with its patterns and bodies found, and the side of each that touches its neighbour.</summary>
/// <param name="Spec">The joint.</param>
/// <param name="Layers">Its layers from the screw's head on.</param>
internal sealed record JointLayers(JointSpec Spec, IReadOnlyList<JointLayer> Layers)
{
    /// <summary>Side of a layer that touches the next one.</summary>
    public Contact Towards(int layer) => layer == 0 ? Layers[0].Touching : Layers[layer].Opposite;

    /// <summary>Side of a layer that touches the one before it.</summary>
    public Contact Back(int layer) => Layers[layer].Touching;

    /// <summary>Turn told for a layer against the one before it: that of the joint for the second layer, none for those behind it.</summary>
    public double? Turn(int layer) => layer == 1 ? Spec.TurnRad : null;

    /// <summary>Which side a word names: false near, true far, null neither.</summary>
    public static bool? IsFarSide(PatternSpec pattern, string word)
    {
        bool Is(string name) => string.Equals(word.Trim(), name, StringComparison.OrdinalIgnoreCase);
        return Is(pattern.NearSide) ? false
            : Is(pattern.FarSide) ? true
            : Is("outside") || Is("near") ? false
            : Is("inside") || Is("far") ? true
            : null;
    }
}

/// <summary>One layer of a joint.</summary>
/// <param name="Body">The body.</param>
/// <param name="Pattern">Its pattern.</param>
/// <param name="IsFar">True when its far side touches the layer before it (the first: the layer after it).</param>
internal sealed record JointLayer(BodySpec Body, PatternSpec Pattern, bool IsFar)
{
    /// <summary>The side that <see cref="IsFar"/> names.</summary>
    public Contact Touching { get; } = Contact.Of(Pattern, IsFar);

    /// <summary>The side opposite of it.</summary>
    public Contact Opposite { get; } = Contact.Of(Pattern, !IsFar);
}
