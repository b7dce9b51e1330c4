namespace Lampwright.Heat;

/// <summary>What one thing in the air's way costs: Δp = ½ρ·(K/A²)·Q² + B·µ·Q.</summary>
/// <remarks>
/// Accuracy: perforated sheet and guards ±30 % in a lamp housing, where the holes see Re 100 to 2000.
/// Checked by: printed (Idelchik diagram 8-1, Blevins, Ozahi).
/// </remarks>
/// <param name="Path">Path in the design file, for the finding and for the picture of which loss costs most.</param>
/// <param name="KPerAreaSquared">K/A², 1/m⁴, 0 or above; infinite where there is no opening.</param>
/// <param name="LaminarPerM3">B, 1/m³, 0 or above: the part that goes with the viscosity.</param>
public sealed record AirLoss(string Path, double KPerAreaSquared, double LaminarPerM3 = 0)
{
    /// <summary>Open area that can be made larger, m²; 0 for what has a size of its own: a guard, a filter, a turn.</summary>
    public double OpenM2 { get; init; }

    /// <summary>Openings that stand side by side; empty for a single loss.</summary>
    public IReadOnlyList<AirLoss> Branches { get; init; } = [];

    /// <summary>Openings side by side: all lose the same pressure, and their flows add.</summary>
    /// <remarks>
    /// <see cref="KPerAreaSquared"/> and <see cref="LaminarPerM3"/> hold the limits of fast and of slow air, for the draft of a stopped fan;
    /// <see cref="LossPa"/> is exact between them.
    /// </remarks>
    /// <param name="branches">One or more.</param>
    public static AirLoss SideBySide(IReadOnlyList<AirLoss> branches)
    {
        ArgumentNullException.ThrowIfNull(branches);
        var open = branches.Where(b => double.IsFinite(b.KPerAreaSquared)).ToList();
        if (open.Count == 1)
        {
            return open[0];
        }

        var path = string.Join(" + ", branches.Select(b => b.Path));
        return open.Count == 0
            ? new AirLoss(path, double.PositiveInfinity)
            : new AirLoss(
                path,
                1 / Square(open.Sum(b => 1 / Math.Sqrt(b.KPerAreaSquared))),
                open.Any(b => b.LaminarPerM3 <= 0) ? 0 : 1 / open.Sum(b => 1 / b.LaminarPerM3)
            )
            {
                Branches = open,
                OpenM2 = open.Sum(b => b.OpenM2),
            };
    }

    /// <summary>The same with its opening made so many times larger; what has a size of its own stays.</summary>
    /// <param name="times">Factor on the open area, above 0.</param>
    public AirLoss Opened(double times)
    {
        Guard.Positive(times);
        return Branches.Count > 0 ? SideBySide([.. Branches.Select(b => b.Opened(times))])
            : OpenM2 <= 0 ? this
            : this with
            {
                KPerAreaSquared = KPerAreaSquared / (times * times),
                LaminarPerM3 = LaminarPerM3 / times,
                OpenM2 = OpenM2 * times,
            };
    }

    /// <summary>Pressure lost at a flow, Pa.</summary>
    /// <param name="flowM3PerS">Flow, m³/s, 0 or above.</param>
    /// <param name="air">The air in the opening.</param>
    public double LossPa(double flowM3PerS, in Air air)
    {
        if (flowM3PerS <= 0)
        {
            return 0;
        }

        if (Branches.Count == 0)
        {
            return flowM3PerS * ((0.5 * air.Density * KPerAreaSquared * flowM3PerS) + (LaminarPerM3 * air.Viscosity));
        }

        // The flow that a pressure drives through all of them bends one way only: Newton from below climbs to the zero and never beyond.
        var pressure = double.PositiveInfinity;
        foreach (var b in Branches)
        {
            pressure = Math.Min(pressure, b.LossPa(flowM3PerS / Branches.Count, air));
        }

        for (var i = 0; i < 60 && pressure > 0; i++)
        {
            double flow = 0,
                slope = 0;
            foreach (var b in Branches)
            {
                double quadratic = 0.5 * air.Density * b.KPerAreaSquared,
                    laminar = b.LaminarPerM3 * air.Viscosity,
                    root = Math.Sqrt((laminar * laminar) + (4 * quadratic * pressure));
                flow += 2 * pressure / (laminar + root);
                slope += 1 / root;
            }

            var step = (flowM3PerS - flow) / slope;
            pressure += step;
            if (Math.Abs(step) <= 1e-13 * pressure)
            {
                break;
            }
        }

        return pressure;
    }

    /// <summary>A filter, of which the maker states a pressure at a flow; it goes with the flow, as through felt.</summary>
    /// <remarks>Validity: clean, slow air. Source: Darcy's law, air of 20 °C (common practice for the range).</remarks>
    /// <param name="path">Path in the design file.</param>
    /// <param name="pressurePa">Pressure stated, Pa, above 0.</param>
    /// <param name="flowM3PerS">At this flow, m³/s, above 0.</param>
    public static AirLoss Filter(string path, double pressurePa, double flowM3PerS) =>
        new(path, 0, Guard.Positive(pressurePa) / (Guard.Positive(flowM3PerS) * Air.At(293.15, 101325).Viscosity));

    /// <summary>A sharp turn by a right angle without vanes: 1.2 velocity heads.</summary>
    /// <remarks>Source: Idelchik, diagram 6-5 (memory).</remarks>
    /// <param name="path">Path in the design file.</param>
    /// <param name="areaM2">Area of the duct that turns, m².</param>
    public static AirLoss Turn(string path, double areaM2) => Of(path, 1.2, areaM2);

    /// <summary>A plain hole in a wall between two rooms: the way in and the way out, 1.5 heads, or less where a duct goes on.</summary>
    /// <remarks>Source: flush entrance 0.5 and free discharge 1.0, Idelchik.</remarks>
    /// <param name="path">Path in the design file.</param>
    /// <param name="areaM2">Open area, m²; 0 shuts the path.</param>
    public static AirLoss Hole(string path, double areaM2) => Of(path, 1.5, areaM2) with { OpenM2 = areaM2 };

    /// <summary>Any loss given by its K on an area.</summary>
    /// <param name="path">Path in the design file.</param>
    /// <param name="k">Loss coefficient on the area's velocity head, 0 or above.</param>
    /// <param name="areaM2">Area, m²; 0 shuts the path.</param>
    public static AirLoss Of(string path, double k, double areaM2) =>
        new(path, areaM2 > 0 ? k / (areaM2 * areaM2) : double.PositiveInfinity);

    /// <summary>Air that blows out into the room: one velocity head is lost.</summary>
    /// <param name="path">Path in the design file.</param>
    /// <param name="areaM2">Area it leaves through, m².</param>
    public static AirLoss Discharge(string path, double areaM2) => Of(path, 1.0, areaM2);

    /// <summary>A field of round holes in thin sheet: the quadratic loss, and the viscous one of small holes added.</summary>
    /// <remarks>
    /// Source: Idelchik, Handbook of Hydraulic Resistance, 3rd ed., diagram 8-1, joined by addition with 30/(f²·Re) of slow flow
    /// (Electronics Cooling, May 1998).
    /// </remarks>
    /// <param name="path">Path in the design file.</param>
    /// <param name="fieldAreaM2">Area of the whole field, m².</param>
    /// <param name="openRatio">Open area over field area f, 0 to 1.</param>
    /// <param name="holeDiameterM">Diameter of a hole, m, above 0.</param>
    public static AirLoss PerforatedSheet(string path, double fieldAreaM2, double openRatio, double holeDiameterM)
    {
        if (!(fieldAreaM2 > 0 && openRatio > 0))
        {
            return new AirLoss(path, double.PositiveInfinity);
        }

        var laminar = 15 / (fieldAreaM2 * openRatio * Guard.Positive(holeDiameterM));
        return new AirLoss(path, ThinSheetK(openRatio) / (fieldAreaM2 * fieldAreaM2), laminar)
        {
            OpenM2 = fieldAreaM2 * openRatio,
        };
    }

    /// <summary>A finger guard of round wire.</summary>
    /// <param name="path">Path in the design file.</param>
    /// <param name="areaM2">Area it covers, m².</param>
    /// <param name="openRatio">Open area over that area, 0 to 1.</param>
    public static AirLoss WireGuard(string path, double areaM2, double openRatio) =>
        openRatio > 0 ? Of(path, WireGuardK(openRatio, 400), areaM2) : new AirLoss(path, double.PositiveInfinity);

    /// <summary>K of thin sheet with sharp holes, on the approach velocity: [0.707·√(1-f) + 1 - f]²/f².</summary>
    /// <remarks>Validity: thickness below the hole's diameter. Source: Idelchik, 3rd ed., diagram 8-1.</remarks>
    /// <param name="openRatio">Open area over field area f, above 0 to 1.</param>
    public static double ThinSheetK(double openRatio)
    {
        var f = Guard.InRange(openRatio, 1e-6, 1);
        var root = (0.707 * Math.Sqrt(1 - f) + 1 - f) / f;
        return root * root;
    }

    /// <summary>K of a plate thicker than the holes are wide, or a bar grille: [0.5(1-f) + (1-f)² + λl/d]/f².</summary>
    /// <remarks>Source: Idelchik form (memory).</remarks>
    /// <param name="openRatio">Open area over field area f, above 0 to 1.</param>
    /// <param name="frictionLengths">Friction factor times length over diameter of the holes, 0 or above.</param>
    public static double ThickGrilleK(double openRatio, double frictionLengths = 0)
    {
        var f = Guard.InRange(openRatio, 1e-6, 1);
        return (0.5 * (1 - f) + (1 - f) * (1 - f) + frictionLengths) / (f * f);
    }

    /// <summary>K of a wire screen or finger guard, β(Re)·(1 - a²)/a².</summary>
    /// <remarks>Source: Blevins 1984, β by the wire's Reynolds number, interpolated in its logarithm.</remarks>
    /// <param name="openRatio">Open area over whole area a, above 0 to 1.</param>
    /// <param name="wireReynolds">Reynolds number of the wire.</param>
    public static double WireGuardK(double openRatio, double wireReynolds)
    {
        var a = Guard.InRange(openRatio, 1e-6, 1);
        return GuardBeta(wireReynolds) * (1 - a * a) / (a * a);
    }

    /// <summary>K of a sudden narrowing, on the small section: 0.5·(1-f)^¾.</summary>
    /// <remarks>Validity: Re above 1e4. Source: Idelchik.</remarks>
    /// <param name="areaRatio">Small over large area, 0 to 1.</param>
    public static double ContractionK(double areaRatio) => 0.5 * Math.Pow(1 - Guard.InRange(areaRatio, 0, 1), 0.75);

    /// <summary>K of a sudden widening, on the small section: (1-f)².</summary>
    /// <remarks>Validity: Re above 3300. Source: Borda-Carnot; Idelchik.</remarks>
    /// <param name="areaRatio">Small over large area, 0 to 1.</param>
    public static double ExpansionK(double areaRatio) => (1 - Guard.InRange(areaRatio, 0, 1)) * (1 - areaRatio);

    private static double Square(double x) => x * x;

    private static double GuardBeta(double reynolds)
    {
        ReadOnlySpan<double> re = [20, 40, 80, 100, 200, 400];
        ReadOnlySpan<double> beta = [1.3, 0.95, 0.75, 0.70, 0.60, 0.52];
        if (reynolds <= re[0])
        {
            return beta[0];
        }

        for (var i = 1; i < re.Length; i++)
        {
            if (reynolds <= re[i])
            {
                var t = Math.Log(reynolds / re[i - 1]) / Math.Log(re[i] / re[i - 1]);
                return beta[i - 1] + t * (beta[i] - beta[i - 1]);
            }
        }

        return beta[^1];
    }
}
