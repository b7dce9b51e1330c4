namespace Lampwright.Evaluation.Answers;

/// <summary>Answer of the station light, at the brightest position in the scene normal where a number hangs on it.</summary>
public sealed record LightAnswer
{
    /// <summary>Share of the emitter's flux that leaves the light.</summary>
    public required Predicted Efficiency { get; init; }

    /// <summary>Share that the reflector absorbs.</summary>
    public required Predicted ReflectorAbsorbs { get; init; }

    /// <summary>Share that the diffuser absorbs.</summary>
    public required Predicted DiffuserAbsorbs { get; init; }

    /// <summary>Flux that leaves the light, lm.</summary>
    public required Predicted FluxOutLm { get; init; }

    /// <summary>Luminous intensity on the axis far away, cd.</summary>
    public required Predicted AxisCd { get; init; }

    /// <summary>Illuminance at the centre of the subject, lx.</summary>
    public required Predicted LuxAtSubject { get; init; }

    /// <summary>Illuminance at the subject's darkest corner as a share of its centre.</summary>
    public required Predicted Evenness { get; init; }

    /// <summary>How much too high the inverse-square shortcut reads at the subject, as a share.</summary>
    public required Predicted InverseSquareError { get; init; }

    /// <summary>Exposure value at ISO 100.</summary>
    public required Predicted Ev { get; init; }

    /// <summary>Aperture (f-number) for the subject's ISO and shutter.</summary>
    public required Predicted Aperture { get; init; }

    /// <summary>Percent flicker of the driver's ripple as a share; absent when the ripple is not given.</summary>
    public Predicted? PercentFlicker { get; init; }

    /// <summary>Modulation that is left after the shutter has averaged, as a share; absent when the ripple is not given.</summary>
    public Predicted? ShutterResidual { get; init; }

    /// <summary>Distance within which looking into the light needs care, m; absent when the colour temperature is not given.</summary>
    public Predicted? CareDistanceM { get; init; }

    /// <summary>Width and height of the surface the light leaves from, m.</summary>
    public required (double Width, double Height) ExitM { get; init; }

    /// <summary>Illuminance over the subject as a share of its centre, rows from bottom to top, nominal; for the drawing.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> SubjectPicture { get; init; }
}
