using Lampwright.Findings;

namespace Lampwright.Metal;

/// <summary>Looks through the numbers of a tube before anything is computed with them.</summary>
internal static class TubeChecks
{
    private static double SteepestRad => 80 * Math.PI / 180;

    public static bool Passes(PartSpec spec, List<Finding> findings)
    {
        var (tube, wall) = (spec.Tube!, spec.Sheet.ThicknessM);
        var path = $"part.{spec.Name}.tube";
        var before = findings.Count;
        void Stop(string at, string what, double observed, double limit) =>
            findings.Add(MetalRules.TubeCannotBe.At(path + at, what, Mm.Of(observed), Mm.Of(limit)));

        var most = spec.Limits.LongestM;
        var sizes = (double[])[tube.WidthM, tube.HeightM, tube.LengthM, wall];
        if (!sizes.All(s => s > 1e-5 && s <= most) || !(spec.Sheet.InsideRadiusM is >= 0 and < 0.5))
        {
            Stop("", "A size of the tube is nothing that can be bought.", sizes.Min(), most);
            return false;
        }

        var side = Math.Min(tube.WidthM, tube.HeightM);
        if (!(2 * wall < side - 1e-6))
        {
            Stop(".wall", $"Two walls of {Mm.Of(wall)} leave nothing open in a tube of {Mm.Of(side)}.", wall, side / 2);
        }

        var corner = spec.Sheet.InsideRadiusM + wall;
        if (2 * corner > side - 1e-6)
        {
            Stop(
                ".corner",
                $"Corners of {Mm.Of(corner)} outside leave nothing flat on a side of {Mm.Of(side)}.",
                corner,
                side / 2
            );
        }

        foreach (var (at, cut) in ((string, TubeCut)[])[(".start", tube.Start), (".end", tube.End)])
        {
            if (!(Math.Abs(cut.AngleRad) <= SteepestRad + 1e-9))
            {
                findings.Add(
                    MetalRules.TubeCannotBe.At(
                        path + at,
                        $"The end is cut at {Mm.Degrees(cut.AngleRad)} against square; up to 80° can be sawn.",
                        Mm.Degrees(cut.AngleRad),
                        "80°"
                    )
                );
            }
        }

        if (findings.Count == before)
        {
            Shortest(spec, tube, path, findings);
        }

        if (findings.Count > before)
        {
            return false;
        }

        var (least, largest) = TubeCorner.Range(wall);
        if (corner < least - 1e-6 || corner > largest + 1e-6)
        {
            findings.Add(
                MetalRules.TubeCorner.At(
                    path + ".corner",
                    $"The corners of {spec.Name} are {Mm.Of(corner)} outside; tube to EN 10219-2 with a wall of {Mm.Of(wall)} has {Mm.Of(least)} to {Mm.Of(largest)}.",
                    Mm.Of(corner),
                    $"{Mm.Of(least)} to {Mm.Of(largest)}"
                )
            );
        }

        return true;
    }

    /// <summary>The cuts of both ends must not meet: something is left on the shortest line along the tube.</summary>
    private static void Shortest(PartSpec spec, TubeSpec tube, string path, List<Finding> findings)
    {
        var shape = new TubeShape(tube, spec.Sheet.ThicknessM, spec.Sheet.InsideRadiusM);
        var shortest = double.PositiveInfinity;
        foreach (var y in (double[])[0, tube.WidthM])
        {
            foreach (var z in (double[])[0, -tube.HeightM])
            {
                var (from, to) = shape.Reach(new(0, y, z));
                shortest = Math.Min(shortest, to - from);
            }
        }

        if (!(shortest > 1e-4))
        {
            findings.Add(
                MetalRules.TubeCannotBe.At(
                    path + ".length",
                    $"The cuts of both ends meet: on its shortest line {spec.Name} would be {Mm.Of(shortest)} long.",
                    Mm.Of(shortest),
                    Mm.Of(1e-4)
                )
            );
        }
    }
}
