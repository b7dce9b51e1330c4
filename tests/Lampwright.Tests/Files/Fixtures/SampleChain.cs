using Lampwright.Evaluation.Answers;
using Lampwright.Steps;
using Lampwright.Steps.Faults;

namespace Lampwright.Tests.Files.Fixtures;

/// <summary>The chain of the sample light with its faults, its corners and what is soldered.</summary>
internal static class SampleChain
{
    public static StepsAnswer With(StepsAnswer steps)
    {
        static ResistorPart Part(double ohm) => new(ohm, 0, 3, 343.15, 428.15);
        var ohms = steps.Parts.Select(p => p.ResistanceOhm).ToList();
        var chain = new ChainSpec(
            Arrangement.SeriesChain,
            Part(ohms[0]),
            [.. ohms.Skip(1).Select(Part)],
            0.01,
            0.05,
            new(0.35, 0.75),
            ContactMostA: 4
        );
        var driver = new DriverSpec(
            1.75,
            0.25,
            24,
            42,
            0.89,
            new([]),
            Isolation.Yes,
            46,
            OverVoltage.Clamps,
            UnderVoltage.Hiccups
        );
        var spec = new FaultsSpec(chain, new(0.306, ohms[0], 0, 0.89), driver, new(30, 3, 2));
        var (network, off) = (new ChainNetwork(chain), new CornerSpec(0.01, 0, 0.02));
        var corners = WorstCorners.Of(network, spec.Law, spec.AirK, off).ToDictionary(c => c.Switches);
        return steps with
        {
            Combinations =
            [
                .. steps.Combinations.Select(c =>
                    c with
                    {
                        Corner = corners.GetValueOrDefault(c.Switches),
                        Share = 0.5,
                    }
                ),
            ],
            Faults = FaultPlay.All(spec),
            Build = ChainBuilds.Of(spec, network, off),
            Fuse = SupplyFuse.Of(70, 207, 0.95, isAc: true),
            Recommended = [.. steps.Combinations.Take(3).Select(c => c.Switches)],
        };
    }
}
