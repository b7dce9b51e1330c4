using Lampwright.Balance;
using Lampwright.Design;
using Lampwright.Evaluation.Draws;

namespace Lampwright.Evaluation.Assembling;

/// <summary>An arm in a draw: the whole light hangs at its end.</summary>
internal sealed class ArmRows : IRowPart
{
    private readonly AssemblyRows _assembly;
    private readonly int _factor;

    public ArmRows(Design.Arm arm, AssemblyRows assembly, Variables variables, Outputs outputs)
    {
        (Arm, _assembly) = (arm, assembly);
        _factor = variables.Factor(BalanceMethodErrors.ArmDeflection);
        First = outputs.Add(2);
    }

    /// <summary>The arm of the design.</summary>
    public Design.Arm Arm { get; }

    /// <summary>Place of the droop, mm; the stress (MPa) follows.</summary>
    public int First { get; }

    /// <summary>Whether an arm's numbers can be computed with.</summary>
    public static bool IsUsable(Design.Arm arm) =>
        arm.Length.Nominal > 0 && arm.Width.Nominal > 0 && arm.Height.Nominal > 0 && arm.Wall is not { Nominal: <= 0 };

    /// <summary>The station's spec for the mass of one row.</summary>
    public ArmSpec Spec(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        var section = Arm.Wall is { } wall
            ? Section.Tube(Arm.Width.Nominal, Arm.Height.Nominal, wall.Nominal)
            : Section.Bar(Arm.Width.Nominal, Arm.Height.Nominal);
        var aluminium = Arm.Material.StartsWith("alu", StringComparison.OrdinalIgnoreCase);
        return new(
            Arm.Length.Nominal,
            section,
            aluminium ? 70e9 : 210e9,
            aluminium ? 2700 : 7850,
            y[_assembly.Total],
            DeflectionFactor: x[_factor]
        );
    }

    /// <inheritdoc/>
    public double Row(ReadOnlySpan<double> x, Span<double> y)
    {
        var result = Balance.Arm.Result(Spec(x, y));
        (y[First], y[First + 1]) = (result.DroopM * 1000, result.StressPa / 1e6);
        return 0;
    }
}

/// <summary>A stand in a draw.</summary>
internal sealed class StandRows : IRowPart
{
    private readonly AssemblyRows _assembly;

    public StandRows(Stand stand, AssemblyRows assembly, Outputs outputs)
    {
        (Stand, _assembly) = (stand, assembly);
        First = outputs.Add(2);
    }

    /// <summary>The stand of the design.</summary>
    public Stand Stand { get; }

    /// <summary>Place of the slope at which it tips, degrees; the foot that is needed (mm) follows.</summary>
    public int First { get; }

    /// <summary>Whether a stand's numbers can be computed with.</summary>
    public static bool IsUsable(Stand stand) => stand.Height.Nominal > 0 && stand.Foot.Nominal > 0;

    /// <summary>The station's spec for the mass of one row.</summary>
    public StandSpec Spec(ReadOnlySpan<double> y) =>
        new(
            Math.Max(y[_assembly.Total], 1e-6),
            Stand.Height.Nominal,
            Stand.Offset.Nominal,
            Math.Max(0, Stand.Mass.Nominal),
            Stability.DefaultStandHeightShare * Stand.Height.Nominal,
            Stand.Foot.Nominal
        );

    /// <inheritdoc/>
    public double Row(ReadOnlySpan<double> x, Span<double> y)
    {
        var result = Stability.Result(Spec(y));
        (y[First], y[First + 1]) = (result.TipsAtRad * 180 / Math.PI, result.FootNeededM * 1000);
        return 0;
    }
}
