using Lampwright.Steps.Faults;

namespace Lampwright.Files.Json;

/// <summary>Single faults of the chain, and what is soldered.</summary>
internal static class FaultsJson
{
    /// <summary>Numbers that stand without a band, each with its reason.</summary>
    public static IReadOnlyDictionary<string, string> PlainNumbers { get; } =
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["steps.combinations[].leastA"] = "worst corner of all parts at once, no percentile",
            ["steps.combinations[].mostA"] = "worst corner of all parts at once, no percentile",
            ["steps.combinations[].chainLeastA"] = "worst corner of all parts at once, no percentile",
            ["steps.combinations[].chainMostA"] = "worst corner of all parts at once, no percentile",
            ["steps.faults[].currentA"] =
                "what follows from one fault at nominal; where its size is not known the range stands beside it",
            ["steps.faults[].currentMostA"] =
                "what follows from one fault at nominal; where its size is not known the range stands beside it",
            ["steps.faults[].soundA"] =
                "what follows from one fault at nominal; where its size is not known the range stands beside it",
            ["steps.faults[].senseV"] =
                "what follows from one fault at nominal; where its size is not known the range stands beside it",
            ["steps.faults[].outputV"] =
                "what follows from one fault at nominal; where its size is not known the range stands beside it",
            ["steps.faults[].peakA"] =
                "what follows from one fault at nominal; where its size is not known the range stands beside it",
            ["steps.faults[].worstA"] = "worst corner of all parts at once, no percentile",
            ["steps.faults[].worstPeakA"] = "worst corner of all parts at once, no percentile",
            ["steps.build.leads[].lengthM"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.leads[].areaMm2"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.leads[].ohm"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.leads[].mostA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.leads[].dropV"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.leads[].heatW"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.resistors[].ohm"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.resistors[].mostW"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.resistors[].allowedW"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.resistors[].riseK"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.contacts[].mostA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.contacts[].openV"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.contacts[].ratedA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.patterns[].ohm"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.patterns[].leastOhm"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.patterns[].mostOhm"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.patterns[].currentA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.patterns[].fixedV"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.fixed[].currentA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.fixed[].fixedV"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.bleed.ohm"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.bleed.looseA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.bleed.dimmestA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.bleed.brightestShift"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.bleed.dimmestShift"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.floorLeastOhm"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.fuse.workingA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
            ["steps.build.fuse.ratingA"] =
                "of the nominal light, for the workbench; least and greatest stand beside it where they matter",
        };

    public static void Fault(JsonOut json, FaultResult f)
    {
        json.Text("what", f.What);
        json.Text("position", f.Position);
        json.Plain("currentA", f.CurrentA);
        json.Plain("currentMostA", f.CurrentMostA);
        json.Plain("worstA", f.WorstA);
        json.Plain("soundA", f.SoundA);
        json.Plain("senseV", f.SenseV);
        json.Plain("outputV", f.OutputV);
        json.Plain("peakA", f.PeakA);
        json.Plain("worstPeakA", f.WorstPeakA);
        json.Flag("runsToLimit", f.RunsToLimit);
        json.Object(
            "survives",
            () =>
            {
                json.Text("emitter", Word(f.Emitter));
                json.Text("driver", Word(f.Driver));
                json.Text("resistors", Word(f.Resistors));
            }
        );
        json.Text("overloaded", f.Overloaded);
        json.Text("standing", Standing(f.Standing));
        json.Text("words", f.Words);
        json.Text("see", f.See);
    }

    public static void Build(JsonOut json, ChainBuild? build, FuseRow? fuse)
    {
        if (build is null)
        {
            json.Null("build");
            return;
        }

        json.Object("build", () => Rows(json, build, fuse));
    }

    private static void Rows(JsonOut json, ChainBuild build, FuseRow? fuse)
    {
        json.Text("taps", build.Taps);
        json.Array(
            "leads",
            build.Leads,
            r =>
            {
                json.Text("name", r.Name);
                json.Text("from", r.From);
                json.Text("to", r.To);
                json.Plain("lengthM", r.LengthM);
                json.Plain("areaMm2", r.AreaMm2);
                json.Plain("ohm", r.Ohm);
                json.Plain("mostA", r.MostA);
                json.Plain("dropV", r.DropV);
                json.Plain("heatW", r.HeatW);
                json.Flag("inLoop", r.InLoop);
                json.Text("words", r.Words);
            }
        );
        json.Array(
            "resistors",
            build.Resistors,
            r =>
            {
                json.Text("name", r.Name);
                json.Text("from", r.From);
                json.Text("to", r.To);
                json.Plain("ohm", r.Ohm);
                json.Plain("mostW", r.MostW);
                json.Plain("allowedW", r.AllowedW);
                json.Plain("riseK", r.RiseK);
                json.Flag("onBoard", r.OnBoard);
                json.Text("mounting", r.Mounting);
            }
        );
        json.Array(
            "contacts",
            build.Contacts,
            r =>
            {
                json.Text("name", r.Name);
                json.Text("from", r.From);
                json.Text("to", r.To);
                json.Plain("mostA", r.MostA);
                json.Plain("openV", r.OpenV);
                json.Plain("ratedA", r.RatedA);
                json.Text("words", r.Words);
            }
        );
        json.Array(
            "patterns",
            build.Patterns,
            r =>
            {
                json.Text("switches", r.Switches);
                json.Plain("ohm", r.Ohm);
                json.Plain("leastOhm", r.LeastOhm);
                json.Plain("mostOhm", r.MostOhm);
                json.Plain("currentA", r.CurrentA);
                json.Plain("fixedV", r.FixedV);
            }
        );
        json.Array(
            "fixed",
            build.Fixed,
            r =>
            {
                json.Plain("currentA", r.CurrentA);
                json.Plain("fixedV", r.FixedV);
            }
        );
        if (build.Bleed is { } bleed)
        {
            json.Object(
                "bleed",
                () =>
                {
                    json.Flag("given", bleed.Given);
                    json.Plain("ohm", bleed.Ohm);
                    json.Plain("looseA", bleed.LooseA);
                    json.Plain("dimmestA", bleed.DimmestA);
                    json.Plain("brightestShift", bleed.BrightestShift);
                    json.Plain("dimmestShift", bleed.DimmestShift);
                    json.Text("words", bleed.Words);
                }
            );
        }
        else
        {
            json.Null("bleed");
        }

        json.Plain("floorLeastOhm", build.FloorOhm);
        if (fuse is null)
        {
            json.Null("fuse");
            return;
        }

        json.Object(
            "fuse",
            () =>
            {
                json.Plain("workingA", fuse.WorkingA);
                json.Plain("ratingA", fuse.RatingA);
                json.Text("words", fuse.Words);
            }
        );
    }

    private static string Word(Survival survival) =>
        survival switch
        {
            Survival.Yes => "yes",
            Survival.No => "no",
            _ => "unknown",
        };

    private static string Standing(FaultStanding standing) =>
        standing switch
        {
            FaultStanding.Counts => "counts",
            FaultStanding.ByConstruction => "by construction",
            FaultStanding.Excluded => "excluded",
            _ => "any light",
        };
}
