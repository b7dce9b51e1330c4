using Lampwright.Balance;
using Lampwright.Design;
using Lampwright.Evaluation.Draws;
using Lampwright.Geometry;
using Lampwright.Tables;

namespace Lampwright.Evaluation.Assembling;

/// <summary>One tilt joint in a draw.</summary>
internal sealed class TiltRows : IRowPart
{
    private static readonly int Numbers = 6;
    private readonly AssemblyRows _assembly;
    private readonly bool[] _tilting;
    private readonly Vec3 _axisAt;
    private readonly Vec3 _forward;
    private readonly Vec3 _up;
    private readonly TiltSpec _spec;
    private readonly int _torque;
    private readonly int _friction;
    private readonly int _clamp;
    private readonly int _face;

    private TiltRows(
        Tilt tilt,
        TiltSpec spec,
        AssemblyRows assembly,
        TiltAxis axis,
        Vec3 gravity,
        Variables variables,
        Outputs outputs
    )
    {
        (Tilt, _spec, _assembly) = (tilt, spec, assembly);
        _tilting = axis.Tilting;
        _axisAt = axis.At;
        _up = -gravity;
        _forward = axis.Direction.Cross(_up) is var f && f.Length > 1e-6 ? f.Unit : new(1, 0, 0);
        _torque = variables.Of(tilt.Torque);
        _friction = variables.Of(tilt.Friction);
        _clamp = variables.Factor(BalanceMethodErrors.NutFactor);
        _face = variables.Factor(BalanceMethodErrors.FaceWear);
        First = outputs.Add(Numbers);
    }

    /// <summary>The tilt joint of the design.</summary>
    public Tilt Tilt { get; }

    /// <summary>Place of the tilting mass, kg; offset (mm), worst moment, worst angle (degrees), holding moment and safety follow.</summary>
    public int First { get; }

    /// <summary>The rows of a tilt joint; null when its axis is not placed or its screw is no thread of the table.</summary>
    public static TiltRows? Of(Tilt tilt, AssemblyRows assembly, Vec3 gravity, Variables variables, Outputs outputs)
    {
        if (
            MetricThread.Named(tilt.Screw) is not { } thread
            || TiltAxis.Of(tilt, assembly) is not { } axis
            || tilt.Washer is not { } washer
            || !(washer.Width.Nominal >= 0 && washer.Width.Nominal < washer.Height.Nominal)
            || tilt.Screws is < 1 or > 100
            || tilt.Faces is < 1 or > 100
        )
        {
            return null;
        }

        var spec = new TiltSpec(
            tilt.Screws,
            thread.DiameterM,
            tilt.Torque.Nominal,
            ScrewTightening.DefaultNutFactor,
            tilt.Faces,
            washer.Width.Nominal,
            washer.Height.Nominal,
            tilt.Friction.Nominal,
            0,
            0,
            0
        );
        return new(tilt, spec, assembly, axis, gravity, variables, outputs);
    }

    /// <summary>The station's spec in one row.</summary>
    public TiltSpec Spec(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        var (mass, centre) = _assembly.BalanceOf(y, _tilting);
        var r = centre - _axisAt;
        return _spec with
        {
            TorqueNm = Math.Max(0, x[_torque]),
            Friction = Math.Clamp(x[_friction], 0, 10),
            ClampFactor = x[_clamp],
            FaceFactor = x[_face],
            MassKg = mass,
            ForwardM = mass > 0 ? r.Dot(_forward) : 0,
            UpM = mass > 0 ? r.Dot(_up) : 0,
        };
    }

    /// <inheritdoc/>
    public double Row(ReadOnlySpan<double> x, Span<double> y)
    {
        var result = TiltJoint.Result(Spec(x, y));
        y[First] = Spec(x, y).MassKg;
        y[First + 1] = result.OffsetM * 1000;
        y[First + 2] = result.WorstMomentNm;
        y[First + 3] = result.WorstTiltRad * 180 / Math.PI;
        y[First + 4] = result.HoldingNm;
        y[First + 5] = result.SafetyFactor;
        return 0;
    }
}
