namespace Lampwright.Light;

/// <summary>The light-emitting surface of an emitter: its size and its beam.</summary>
/// <param name="WidthM">Size along the light's x, in metres, above 0; the diameter when round.</param>
/// <param name="HeightM">Size along the light's y, in metres, above 0; the diameter when round.</param>
/// <param name="Round">True for a disc, false for a rectangle.</param>
/// <param name="BeamRad">Full width of the beam at half of the peak intensity, in radians, above 0 and below π.</param>
public sealed record EmitterFace(double WidthM, double HeightM, bool Round, double BeamRad)
{
    /// <summary>Area of the face in square metres.</summary>
    public double AreaM2 => Round ? Math.PI * WidthM * WidthM / 4 : WidthM * HeightM;

    /// <summary>Largest dimension in metres: the diameter of a disc, the diagonal of a rectangle.</summary>
    public double LargestM => Round ? WidthM : Math.Sqrt((WidthM * WidthM) + (HeightM * HeightM));

    /// <summary>Exponent m of the cos^m beam.</summary>
    public double BeamExponent => Emission.BeamExponent(BeamRad);
}
