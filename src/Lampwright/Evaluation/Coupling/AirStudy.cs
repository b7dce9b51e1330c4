using Lampwright.Heat;

namespace Lampwright.Evaluation.Coupling;

/// <summary>What the fan could do: how slow it may run at each position, and what its openings would have to be. At nominal values.</summary>
/// <remarks>
/// The junction is set to its limit, which gives heat and the rise that the sink may have in closed form; no loop is solved again. The current is that
/// of the hottest day. Laid when it is first asked for (about half a millisecond).
/// </remarks>
internal sealed class AirStudy
{
    private static readonly double ZeroC = 273.15;

    private readonly CoupledLight _light;
    private readonly double[] _x;
    private readonly double[] _row;
    private readonly Lazy<FanLadder?> _ladder;
    private readonly Lazy<(Opening Opening, double WantedK)?> _opening;

    public AirStudy(CoupledLight light, double[] x, double[] row)
    {
        (_light, _x, _row) = (light, x, row);
        _ladder = new(Ladder);
        _opening = new(FindOpening);
    }

    /// <summary>Rated voltage of the fan, V; 0 without one.</summary>
    public double RatedV => _light.Inputs.Parts.Fan is { } fan ? (fan.Rated ?? fan.RunAt)?.Nominal ?? 0 : 0;

    /// <summary>Voltage that it runs at, V; 0 without one.</summary>
    public double RunsAtV => RatedV * (_light.Inputs.Sink?.Nominal.Fan?.VoltageRatio ?? 0);

    /// <summary>Least share of the rated voltage that is advised: where it starts, half where that is not known (common practice).</summary>
    public double FloorRatio =>
        _light.Inputs.Sink?.Nominal.Fan is { StartRatio: > 0 } fan ? fan.StartRatio : HeatFindings.FanStartRatio;

    /// <summary>Air on the hottest day, K.</summary>
    public double AmbientK =>
        Math.Clamp(_row[_light.ScenePlace(Scene.AtHighestAmbient, SceneRow.AmbientC)] + ZeroC, 200, 400);

    /// <summary>The opening that gives the wanted temperature; null where there is none to change.</summary>
    public (Opening Opening, double WantedK)? Opening => _opening.Value;

    /// <summary>True where the question of the fan's voltage makes sense.</summary>
    public bool AsksVoltage => RatedV > 0 && _light.Inputs.Sink?.Nominal.Fan is not null && !_light.IsTried;

    /// <summary>Least voltage at a position, V; null where none up to the rated one holds the junction.</summary>
    /// <param name="position">Switch position.</param>
    /// <param name="margin">How many times the sink's rise is taken; 1 at nominal, more for a light that is worse than that.</param>
    public double? LeastV(int position, double margin = 1)
    {
        var limit = LimitK;
        var current = _row[_light.Place(Scene.AtHighestAmbient, position) + PositionRow.CurrentA];
        var (heat, inside) = _light.AtJunction(_x, current, limit);
        var allowed = ((limit - AmbientK) / margin) - inside;
        return allowed > 0 ? _ladder.Value?.LeastRatio(heat * OwnShare(position), allowed) * RatedV : null;
    }

    /// <summary>Junction's limit, K.</summary>
    public double LimitK => _light.Inputs.Parts.Emitter.JunctionMax?.Nominal ?? CoupledLight.DefaultJunctionMaxK;

    // What sheet takes off beside the sink with the fan as set; a slower one leaves it more, which is left out on the safe side.
    private double OwnShare(int position) => 1 - _light.SeatShare(Scene.AtHighestAmbient, position);

    private FanLadder? Ladder()
    {
        if (!AsksVoltage)
        {
            return null;
        }

        var most = Math.Max(1, _light.Inputs.Sink!.Nominal.Fan!.VoltageRatio);
        return FanLadder.Of(_light.Inputs.Sink, AmbientK, Math.Min(FloorRatio, 0.999 * most), most);
    }

    /// <summary>The opening for a temperature of the base, with the sink's rise so many times the nominal one; null where there is none to change.</summary>
    /// <param name="wantedK">Temperature of the base, K.</param>
    /// <param name="margin">How many times the rise is taken.</param>
    public Opening? OpeningFor(double wantedK, double margin)
    {
        var heat =
            _row[_light.Place(Scene.AtHighestAmbient, _light.Brightest) + PositionRow.HeatW]
            * OwnShare(_light.Brightest);
        return _light.Inputs.Sink is { } sink && heat > 0 && !_light.IsTried
            ? OpeningAdvice.For(sink, AmbientK, heat, (wantedK - AmbientK) / margin)
            : null;
    }

    private (Opening Opening, double WantedK)? FindOpening()
    {
        var place = _light.Place(Scene.AtHighestAmbient, _light.Brightest);
        var given = _light.Inputs.Parts.Sink?.Wanted?.Nominal;
        var room = LimitK - HeatFindings.JunctionMarginK - (_row[place + PositionRow.JunctionC] + ZeroC);
        if (given is null && room >= 0)
        {
            // Nobody asked, and the junction has its margin: how far the openings might be closed is no advice.
            return null;
        }

        var wanted = given ?? (_row[place + PositionRow.SinkC] + ZeroC + room);
        return OpeningFor(wanted, 1) is { } opening ? (opening, wanted) : null;
    }
}
