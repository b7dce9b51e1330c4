using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Findings;

namespace Lampwright.Files.Json;

/// <summary>Writes <c>evaluation.json</c>: everything known about a light, for other programs.</summary>
/// <remarks>
/// Every field is described in docs/evaluation-json.md. Fields stand in one order; units stand in the names; a predicted number is an
/// object of <c>value</c>, <c>low</c>, <c>high</c> (5th and 95th percentile); a number without a finite value is null. Curves that serve
/// only as pictures (fan, tilt moment, evenness over the subject) are nominal and therefore left out.
/// </remarks>
public static class EvaluationJson
{
    /// <summary>Version of the form of the file; a change that could break a reader raises it.</summary>
    public static int Format => 1;

    /// <summary>Plain numbers of the file, by place, with the reason why each is no prediction and carries no band.</summary>
    public static IReadOnlyDictionary<string, string> PlainNumbers { get; } =
        new Dictionary<string, string>(FaultsJson.PlainNumbers.Concat(ChainJson.PlainNumbers), StringComparer.Ordinal)
        {
            ["format"] = "version of this form",
            ["draws"] = "count of the draws behind the bands",
            ["steps.parts[].resistanceOhm"] = "nominal value printed on the part that is bought",
            ["steps.parts[].ratingW"] = "rating of the part, given",
            ["steps.parts[].pair[].resistanceOhm"] = "nominal value printed on the part that is bought",
            ["steps.parts[].pair[].ratingW"] = "rating of the part, given",
            ["ways[].hiccupHz.least"] = "a range over thresholds that nobody knows, not a band",
            ["ways[].hiccupHz.most"] = "a range over thresholds that nobody knows, not a band",
            ["ways[].crossings[].voltageV"] = "a point of the picture of the nominal circuit",
            ["ways[].crossings[].currentA"] = "a point of the picture of the nominal circuit",
            ["board.parallelOhm"] = "as given, else as marked; the threshold has the band",
            ["board.marks[].ohm"] = "what is printed on the part",
            ["board.leastCurrentA"] = "given with the driver, or half of the ripple that is given",
            ["heat.advice.limits[].valueC"] = "nominal, as in the scene's points, where the band stands",
            ["heat.advice.limits[].limitC"] = "given, or a standard's",
            ["heat.advice.limits[].marginK"] = "between the two",
            ["heat.advice.helps[].limitK"] = "difference of two nominal results, to rank by",
            ["heat.advice.helps[].junctionK"] = "difference of two nominal results, to rank by",
            ["heat.advice.helps[].skinK"] = "difference of two nominal results, to rank by",
            ["heat.advice.helps[].massKg"] = "of the stated step, from sizes and density",
            ["heat.advice.helps[].noiseDb"] = "of the stated step, by the fan laws",
            ["heat.advice.helps[].lightStops"] = "difference of two nominal results",
            ["heat.air.runsAtV"] = "given",
            ["heat.air.floorV"] = "given with the fan, or half of its rated voltage",
            ["heat.air.opening.wantedC"] = "given, or what leaves 10 K at the junction of the nominal light",
            ["heat.air.opening.openings[].openCm2"] = "area as drawn",
            ["heat.box.scenes[].ambientC"] = "the room, given",
            ["heat.box.scenes[].nodes[].limitC"] =
                "given, or read off the table of touch limits at the nominal temperature",
            ["heat.box.scenes[].nodes[].touchS"] =
                "given, or read off the table of touch limits at the nominal temperature",
            ["heat.box.scenes[].nodes[].burnS"] =
                "given, or read off the table of touch limits at the nominal temperature",
            ["heat.box.flows[].heatW"] = "of the nominal network that the picture draws",
            ["heat.box.warmUp.timesS[]"] = "moment that a curve is told at, chosen",
            ["heat.box.coolDown.timesS[]"] = "moment that a curve is told at, chosen",
            ["heat.box.fanStop.curves.timesS[]"] = "moment that a curve is told at, chosen",
            ["heat.box.fanStop.ambientC"] = "the room, given",
            ["heat.box.fanStop.lightLossStops"] = "of the nominal course; the times to the limits have bands",
            ["heat.box.fanStop.events[].timeS"] = "of the nominal course; the times to the limits have bands",
            ["heat.box.cutOuts[].normalC"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.cutOuts[].leastC"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.cutOuts[].mostC"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.cutOuts[].settingC"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.cutOuts[].tripsAfterS"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.cutOuts[].harmAfterS"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.played[].opensC"] = "given with the cut-out",
            ["heat.box.played[].toleranceK"] = "given with the cut-out",
            ["heat.box.played[].normalC"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.played[].tripsAfterS"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.played[].junctionAtTripC"] =
                "of the nominal course, with the band of the place in normal use and the error of the difference counted in",
            ["heat.box.duty.ambientC"] = "the room, given",
            ["heat.box.duty.share"] = "of the nominal light; a duty to keep to, not a prediction",
            ["heat.box.duty.onS"] = "of the nominal light; a duty to keep to, not a prediction",
            ["heat.box.duty.offS"] = "of the nominal light; a duty to keep to, not a prediction",
            ["heat.box.life.caseC"] = "the projection method states no band; it caps what may be told",
            ["heat.box.life.share"] = "the projection method states no band; it caps what may be told",
            ["heat.box.life.hours"] = "the projection method states no band; it caps what may be told",
            ["heat.box.life.calculatedHours"] = "the projection method states no band; it caps what may be told",
            ["heat.box.life.capHours"] = "the projection method states no band; it caps what may be told",
            ["heat.box.life.curve[].hours"] = "the projection method states no band; it caps what may be told",
            ["heat.box.life.curve[].share"] = "the projection method states no band; it caps what may be told",
            ["light.exitM[]"] = "sizes of the exit, given",
            ["metal.parts[].thicknessMm"] = "nominal thickness of the sheet, given",
            ["metal.parts[].count"] = "how many are made, given",
            ["metal.parts[].holeCount"] = "a count",
            ["metal.parts[].tube.lengthMm"] = "length to cut, given",
            ["metal.parts[].tube.sizeMm[]"] = "size of the tube, given",
            ["metal.parts[].tube.cornerMm"] = "corner of the tube, given or by its standard",
            ["metal.parts[].holes[].atMm[]"] = "place on its face or flange, given",
            ["metal.parts[].holes[].onBlankMm[]"] =
                "where to punch on the nominal blank; blankMm has the band of the blank",
            ["metal.parts[].holes[].diameterMm"] = "size of the hole to drill, given",
            ["metal.parts[].bends[].angleDeg"] = "angle to bend to, given",
            ["metal.parts[].bends[].insideRadiusMm"] = "radius of the brake, given",
            ["metal.bending.parts[].strokes[].swingToDeg"] = "angle to set on the brake",
            ["metal.bending.parts[].strokes[].noseBackMm"] = "place to set on the brake",
            ["metal.bending.parts[].strokes[].fingersMm[]"] = "fingers of the set, given",
            ["metal.bending.parts[].strokes[].lengthMm"] = "nominal length along the brake",
            ["metal.bending.parts[].strokes[].rowFromMm"] = "place to set on the brake",
            ["fitUp.placements[].originMm[]"] = "place in the nominal assembly; what the holes miss has bands",
            ["fitUp.placements[].xAxis[]"] = "direction in the nominal assembly",
            ["fitUp.placements[].yAxis[]"] = "direction in the nominal assembly",
            ["fitUp.placements[].boxMm[]"] = "sizes of a bought thing, given",
            ["fitUp.masses[].count"] = "a count",
            ["readings.rows[].line"] = "line in the readings file",
            ["readings.rows[].measured"] = "what the meter showed",
            ["readings.rows[].difference"] =
                "measured against the nominal prediction, which stands beside it with its band",
            ["readings.rows[].inBands"] = "the same difference counted in half-widths of that band",
            ["influences[].share"] = "share of the variance, itself a statistic of the draws",
            ["influences[].direction"] = "a sign, +1 or -1",
            ["findings[].line"] = "line in the design file",
            ["findings[].column"] = "column in the design file",
            ["findings[].place.fromMm[]"] = "where on the nominal blank it bites",
            ["findings[].place.toMm[]"] = "where on the nominal blank it bites",
            ["problems[].line"] = "line in the file",
            ["problems[].column"] = "column in the file",
        };

    /// <summary>Writes the file.</summary>
    /// <param name="evaluation">What is known; null when the file could not be evaluated at all.</param>
    /// <param name="problems">Problems of the design file.</param>
    /// <param name="stream">What is written to; stays open.</param>
    /// <param name="place">Line and column of a path in the design file; null where nothing is known of places.</param>
    public static void Write(
        LightEvaluation? evaluation,
        IReadOnlyList<FileProblem> problems,
        Stream stream,
        Func<string, (int Line, int Column)?>? place = null
    )
    {
        ArgumentNullException.ThrowIfNull(problems);
        ArgumentNullException.ThrowIfNull(stream);
        using var json = new JsonOut(stream);
        json.Object(
            null,
            () =>
            {
                json.Count("format", Format);
                json.Text("title", evaluation?.Title ?? "");
                json.Count("draws", evaluation?.Draws ?? 0);
                json.Flag("hasStop", evaluation?.HasStop ?? false);
                Station(json, "steps", evaluation?.Steps, StepsJson.Write);
                json.Array("ways", evaluation?.Ways ?? [], w => WaysJson.Write(json, w));
                Station(json, "board", evaluation?.Board, BoardJson.Write);
                Station(json, "heat", evaluation?.Heat, HeatJson.Write);
                Station(json, "light", evaluation?.Light, LightJson.Write);
                Station(json, "metal", evaluation?.Metal, MetalJson.Write);
                Station(json, "fitUp", evaluation?.FitUp, FitUpJson.Write);
                Station(json, "balance", evaluation?.Balance, BalanceJson.Write);
                Station(json, "readings", evaluation?.Readings, ReadingsJson.Write);
                Influences(json, evaluation?.Influences ?? []);
                json.Array("findings", evaluation?.Findings ?? [], f => Finding(json, f, place));
                json.Array("problems", problems, p => Problem(json, p));
            }
        );
    }

    /// <summary>Writes one station alone under its own name, for the verbs of the command line, with findings and problems.</summary>
    /// <param name="station">Name of the station as in the file: <c>steps heat light metal fitUp balance readings</c>.</param>
    /// <param name="evaluation">What is known.</param>
    /// <param name="problems">Problems of the design file.</param>
    /// <param name="stream">What is written to; stays open.</param>
    /// <param name="place">Line and column of a path in the design file.</param>
    public static void WriteStation(
        string station,
        LightEvaluation? evaluation,
        IReadOnlyList<FileProblem> problems,
        Stream stream,
        Func<string, (int Line, int Column)?>? place = null
    )
    {
        var alone = evaluation is null
            ? null
            : evaluation with
            {
                Steps = station == "steps" ? evaluation.Steps : null,
                Ways = station == "steps" ? evaluation.Ways : [],
                Board = station == "steps" ? evaluation.Board : null,
                Heat = station == "heat" ? evaluation.Heat : null,
                Light = station == "light" ? evaluation.Light : null,
                Metal = station == "metal" ? evaluation.Metal : null,
                FitUp = station == "fitUp" ? evaluation.FitUp : null,
                Balance = station == "balance" ? evaluation.Balance : null,
                Readings = station == "readings" ? evaluation.Readings : null,
            };
        Write(alone, problems, stream, place);
    }

    private static void Station<T>(JsonOut json, string name, T? answer, Action<JsonOut, T> write)
        where T : class
    {
        if (answer is null)
        {
            json.Null(name);
        }
        else
        {
            json.Object(name, () => write(json, answer));
        }
    }

    private static void Influences(JsonOut json, IReadOnlyList<Influence> influences) =>
        json.Array(
            "influences",
            influences,
            i =>
            {
                json.Text("result", i.Result);
                json.Text("variable", i.Variable);
                json.Plain("share", i.Share);
                json.Count("direction", i.Direction);
            }
        );

    private static void Finding(JsonOut json, Finding finding, Func<string, (int Line, int Column)?>? place)
    {
        var at = PlaceOf(finding.Path, place);
        json.Text("code", finding.Code);
        json.Text("severity", finding.Severity.ToString().ToLowerInvariant());
        json.Text("title", finding.Rule.Title);
        json.Text("path", finding.Path);
        json.Plain("line", at?.Line);
        json.Plain("column", at?.Column);
        json.Text("message", finding.Message);
        json.Text("observed", finding.Observed);
        json.Text("limit", finding.Limit);
        json.Text("scene", finding.Scene);
        json.Text("remedy", finding.Rule.Remedy);
        json.Text("source", finding.Rule.Source);
        json.Flag("protectsPeople", finding.Rule.ProtectsPeople);
        json.ObjectOrNull(
            "place",
            finding.Place,
            on =>
            {
                json.Text("part", on.Part);
                json.Text("flat", on.Flat);
                json.Plains("fromMm", on.A.X * 1000, on.A.Y * 1000);
                json.Plains("toMm", on.B.X * 1000, on.B.Y * 1000);
            }
        );
    }

    /// <summary>Place of a path, or of the nearest table round it that the file has.</summary>
    private static (int Line, int Column)? PlaceOf(string path, Func<string, (int Line, int Column)?>? place)
    {
        while (place is not null && path.Length > 0)
        {
            if (place(path) is { } at)
            {
                return at;
            }

            path = path[..Math.Max(0, path.LastIndexOfAny(['.', '[']))];
        }

        return null;
    }

    private static void Problem(JsonOut json, FileProblem problem)
    {
        json.Text("file", problem.File);
        json.Plain("line", problem.Line);
        json.Plain("column", problem.Column);
        json.Text("path", problem.Path);
        json.Text("found", problem.Found);
        json.Text("accepted", problem.Accepted);
        json.Text("message", problem.Message);
    }
}
