namespace Lampwright.Light;

/// <summary>The surface that the light leaves from.</summary>
public static class LightExit
{
    /// <summary>Width and height of the exit in metres: the mouth of the funnel, else the diffuser, else the emitter's face.</summary>
    public static (double WidthM, double HeightM) SizeM(LightSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return spec switch
        {
            { Funnel: { } funnel } => (funnel.LargeWidthM, funnel.LargeHeightM),
            { Diffuser: { } diffuser } => (diffuser.WidthM, diffuser.HeightM),
            _ => (spec.Emitter.WidthM, spec.Emitter.HeightM),
        };
    }

    /// <summary>Largest dimension of the exit in metres: the diagonal of a rectangle, the diameter of a disc.</summary>
    public static double LargestM(LightSpec spec)
    {
        var (width, height) = SizeM(spec);
        return spec.Funnel is null && spec.Diffuser is null
            ? spec.Emitter.LargestM
            : Math.Sqrt((width * width) + (height * height));
    }
}
