namespace Lampwright.Evaluation.Answers;

/// <summary>The light as a network: temperatures of every part that can be touched, over time, and what would protect it.</summary>
public sealed record BoxAnswer
{
    /// <summary>Scenes at rest: <c>normal</c>, <c>hot</c>, <c>fan stopped</c>, and with a fan <c>fan stopped, hot</c>.</summary>
    public required IReadOnlyList<BoxScene> Scenes { get; init; }

    /// <summary>Heat on each way in the scene normal, for a drawing; nominal.</summary>
    public required IReadOnlyList<BoxFlow> Flows { get; init; }

    /// <summary>From a cold light, scene normal.</summary>
    public required HeatCurves WarmUp { get; init; }

    /// <summary>From the warm light of the scene normal, switched off, its fan with it.</summary>
    public required HeatCurves CoolDown { get; init; }

    /// <summary>The fan stops at full light on the hottest day; null without a fan.</summary>
    public required FanStop? FanStop { get; init; }

    /// <summary>Where a thermal cut-out could sit; empty without a fan.</summary>
    public required IReadOnlyList<CutOutPlace> CutOuts { get; init; }

    /// <summary>The cut-outs of the design file, played through; empty where there is none.</summary>
    public required IReadOnlyList<CutOutPlayed> Played { get; init; }

    /// <summary>Hottest room for each switch position, in the order of the combinations.</summary>
    public required IReadOnlyList<RoomLimit> RoomLimits { get; init; }

    /// <summary>Run and rest at the highest ambient, brightest position, fan as set.</summary>
    public required Duty Duty { get; init; }

    /// <summary>Loss of light over the years; null where the maker's tests are not given.</summary>
    public required LifeAnswer? Life { get; init; }
}

/// <summary>Temperatures of one scene at the brightest position.</summary>
/// <param name="Name">Name of the scene.</param>
/// <param name="AmbientC">The room, °C.</param>
/// <param name="Nodes">Every node.</param>
public sealed record BoxScene(string Name, double AmbientC, IReadOnlyList<BoxNode> Nodes);

/// <summary>One node.</summary>
/// <param name="Name">For example <c>base</c>, <c>tray.face</c>.</param>
/// <param name="Kind"><c>inside</c>, <c>air</c> or <c>skin</c>.</param>
/// <param name="TemperatureC">Temperature, °C.</param>
/// <param name="LimitC">Its limit, °C; null where it has none. Of skin: metal, glass or plastic touched for a few seconds.</param>
/// <param name="TouchS">Of skin: longest contact that the limits of equipment allow, s: 0 where none, null where any.</param>
/// <param name="BurnS">Of skin: contact from which the burn threshold is passed, s; null where it never is.</param>
public sealed record BoxNode(
    string Name,
    string Kind,
    Predicted TemperatureC,
    double? LimitC,
    double? TouchS,
    double? BurnS
);

/// <summary>Heat on one way.</summary>
/// <param name="From">Node it leaves.</param>
/// <param name="To">Node it enters.</param>
/// <param name="HeatW">Heat, W.</param>
public sealed record BoxFlow(string From, string To, double HeatW);

/// <summary>Curves over time with bands.</summary>
/// <param name="TimesS">Moments, s.</param>
/// <param name="Lines">One for each node that is drawn.</param>
/// <param name="To90S">When the base has made nine tenths of its change, s.</param>
public sealed record HeatCurves(IReadOnlyList<double> TimesS, IReadOnlyList<HeatLine> Lines, Predicted To90S);

/// <summary>One curve.</summary>
/// <param name="Node">Its node.</param>
/// <param name="ValueC">Temperatures, °C.</param>
/// <param name="LowC">Lower end of the band, °C.</param>
/// <param name="HighC">Upper end of the band, °C.</param>
public sealed record HeatLine(
    string Node,
    IReadOnlyList<double> ValueC,
    IReadOnlyList<double> LowC,
    IReadOnlyList<double> HighC
);

/// <summary>What happens when the fan or its supply fails at full light.</summary>
/// <param name="AmbientC">The room, °C.</param>
/// <param name="Curves">Temperatures from the stop on.</param>
/// <param name="JunctionLimitS">When the junction passes its limit, s; null where it never does.</param>
/// <param name="SkinLimitS">When the first skin passes what may be touched for a few seconds, s; null where none does.</param>
/// <param name="Skin">Which skin; empty where none does.</param>
/// <param name="LightLossStops">Light lost by the hotter junction once all is at rest, or at its limit, stops.</param>
/// <param name="LossShows">True where that loss is a third of a stop or more, which a photographer would see.</param>
/// <param name="Events">What happens, in order.</param>
public sealed record FanStop(
    double AmbientC,
    HeatCurves Curves,
    Predicted? JunctionLimitS,
    Predicted? SkinLimitS,
    string Skin,
    double LightLossStops,
    bool LossShows,
    IReadOnlyList<FanStopEvent> Events
);

/// <summary>One moment after the fan stops.</summary>
/// <param name="TimeS">When, s.</param>
/// <param name="What">What happens.</param>
public sealed record FanStopEvent(double TimeS, string What);

/// <summary>A place for a thermal cut-out in the driver's input.</summary>
/// <param name="Place">The place.</param>
/// <param name="NormalC">Highest temperature there in normal use on the hottest day, upper end of the band, °C.</param>
/// <param name="LeastC">Lowest setting that never trips in normal use, °C.</param>
/// <param name="MostC">Highest setting that trips before harm, °C; null where nothing is harmed.</param>
/// <param name="SettingC">Setting to buy, °C; null where none exists.</param>
/// <param name="TripsAfterS">When it trips at the latest after the fan stops, s.</param>
/// <param name="HarmAfterS">When the first limit would be passed, s; null where none is.</param>
/// <param name="Harm">What is harmed first; empty where nothing is.</param>
/// <param name="Best">True for the place with the most room.</param>
public sealed record CutOutPlace(
    string Place,
    double NormalC,
    double LeastC,
    double? MostC,
    double? SettingC,
    double? TripsAfterS,
    double? HarmAfterS,
    string Harm,
    bool Best
);

/// <summary>A cut-out of the design file, played through.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Place">Its place.</param>
/// <param name="OpensC">Its setting, °C.</param>
/// <param name="ToleranceK">Tolerance to either side, K.</param>
/// <param name="NormalC">Highest temperature there in normal use, °C.</param>
/// <param name="TripsAfterS">When it trips at the latest after the fan stops, s; null where it does not.</param>
/// <param name="JunctionAtTripC">Junction then, °C; null where it does not trip.</param>
/// <param name="Verdict"><c>protects</c>, <c>too late</c>, <c>trips in normal use</c> or <c>not needed</c>.</param>
public sealed record CutOutPlayed(
    string Name,
    string Place,
    double OpensC,
    double ToleranceK,
    double NormalC,
    double? TripsAfterS,
    double? JunctionAtTripC,
    string Verdict
)
{
    /// <summary>Whether it may stay as it is: it protects, or nothing has to be protected.</summary>
    public bool IsGood => Verdict is "protects" or "not needed";
}

/// <summary>The hottest room in which one switch position may burn for ever.</summary>
/// <param name="Switches">Switch position.</param>
/// <param name="AmbientC">The room, °C.</param>
/// <param name="What">What limits it: <c>junction</c>, <c>driver</c> or the name of a skin.</param>
public sealed record RoomLimit(string Switches, Predicted AmbientC, string What);

/// <summary>Run and rest in a hot room.</summary>
/// <param name="AmbientC">The room, °C.</param>
/// <param name="Share">Share of the time it may run, 0 to 1.</param>
/// <param name="OnS">Longest run, s; null where it needs no rest.</param>
/// <param name="OffS">Rest after it, s; null where it needs none.</param>
/// <param name="What">What limits it; empty where nothing does.</param>
public sealed record Duty(double AmbientC, double Share, double? OnS, double? OffS, string What);

/// <summary>Loss of light over the years, from the maker's test.</summary>
/// <param name="CaseC">Case of the emitter in the scene normal, °C.</param>
/// <param name="Share">The share that is asked for, 0.7 for L70.</param>
/// <param name="Hours">Hours to it that may be told; null where nothing is claimed.</param>
/// <param name="CalculatedHours">Hours by the formula, for comparison only; null where nothing is claimed or it never falls there.</param>
/// <param name="CapHours">Longest time that may be told, h.</param>
/// <param name="IsCapped">True where the told hours are that cap.</param>
/// <param name="Curve">Share of the light over hours, to the cap; nominal.</param>
/// <param name="Why">Why nothing is claimed; empty where something is.</param>
public sealed record LifeAnswer(
    double CaseC,
    double Share,
    double? Hours,
    double? CalculatedHours,
    double CapHours,
    bool IsCapped,
    IReadOnlyList<LifePoint> Curve,
    string Why
);

/// <summary>One point of that curve.</summary>
/// <param name="Hours">Hours of burning, h.</param>
/// <param name="Share">Share of the first light.</param>
public sealed record LifePoint(double Hours, double Share);
