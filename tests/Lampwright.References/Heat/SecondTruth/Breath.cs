namespace Lampwright.References.Heat.SecondTruth;

/// <summary>A field of holes as it is, for the air that passes it.</summary>
/// <remarks>
/// Fast air: K = 1.34·f^-2.24 on the field's velocity head, mean deviation 12 % (Ozahi, Flow Meas. Instrum. 43 (2015) 6). Slow air: creeping flow through each hole in a thin
/// wall, 3µQ/a³ (Sampson 1891), and through the sheet's thickness 8µtQ/(πa⁴) (Dagan, Weinbaum and Pfeffer 1982; from memory).
/// </remarks>
internal readonly record struct Holes(double FieldM2, double Open, double HoleM, double SheetM, double Factor)
{
    /// <summary>Pressure lost, Pa.</summary>
    public double LossPa(double flow, Gas air)
    {
        var each = flow / (FieldM2 * Open / (Math.PI / 4 * HoleM * HoleM));
        double a = HoleM / 2,
            fast = 1.34 * Math.Pow(Open, -2.24) * air.Density / 2 * Math.Pow(flow / FieldM2, 2),
            slow = air.Viscosity * each * (3 / Math.Pow(a, 3) + 8 * SheetM / (Math.PI * Math.Pow(a, 4)));
        return Factor * (fast + slow);
    }
}

/// <summary>A fan as it came out of its box and as it sits in the light.</summary>
/// <param name="Points">Its curve as printed: flow in m³/s, pressure in Pa.</param>
/// <param name="Speed">Its speed over the printed one.</param>
/// <param name="Press">What the way to it and from it leave of its pressure.</param>
internal sealed record Blower((double Flow, double Press)[] Points, double Speed, double Press)
{
    /// <summary>Pressure at a flow, Pa.</summary>
    public double PressurePa(double flow, Gas air)
    {
        var q = flow / Speed;
        var i = 1;
        while (i < Points.Length - 1 && Points[i].Flow < q)
        {
            i++;
        }

        var (a, b) = (Points[i - 1], Points[i]);
        return Speed
            * Speed
            * Press
            * air.Density
            / 1.2
            * (a.Press + (q - a.Flow) / (b.Flow - a.Flow) * (b.Press - a.Press));
    }
}
