using Lampwright.Findings;
using Lampwright.Steps;
using Lampwright.Steps.Board;
using Lampwright.Steps.Ways;

namespace Lampwright.Tests.Steps.Board;

public class BoardStopsTests
{
    public static TheoryData<SenseSide, Isolation, SenseCarries, SenseControl> EveryBoard()
    {
        var all = new TheoryData<SenseSide, Isolation, SenseCarries, SenseControl>();
        foreach (var side in Enum.GetValues<SenseSide>())
        foreach (var isolated in Enum.GetValues<Isolation>())
        foreach (var carries in Enum.GetValues<SenseCarries>())
        foreach (var control in Enum.GetValues<SenseControl>())
        {
            all.Add(side, isolated, carries, control);
        }

        return all;
    }

    /// <summary>Each of the 108 boards with everything else that could be told: nothing but the three facts lifts a stop.</summary>
    [Theory]
    [MemberData(nameof(EveryBoard))]
    public void No_default_and_no_other_fact_lifts_a_stop(
        SenseSide side,
        Isolation isolated,
        SenseCarries carries,
        SenseControl control
    )
    {
        var all = new StepsLimits(100, 100, 100, 100, 100, 100, 100, 100);
        var board = BoardReading.Of(
            Boards.With(s =>
                s with
                {
                    Side = side,
                    Carries = carries,
                    Control = control,
                    InductorRippleA = 0.2,
                    OffsetV = 0.001,
                    MeasuredPair = new(0.165, 1.74),
                    SecondPair = new(0.33, 0.87),
                }
            ) with
            {
                Isolated = isolated,
            },
            all
        );
        Assert.Equal(side != SenseSide.Secondary || control == SenseControl.Primary, board.Stops.Contains("STP001"));
        Assert.Equal(isolated != Isolation.Yes, board.Stops.Contains("STP002"));
        Assert.Equal(carries != SenseCarries.Smooth || control == SenseControl.Peak, board.Stops.Contains("STP003"));
        Assert.Equal(board.Stops, board.Findings.Where(f => f.Severity == Severity.Stop).Select(f => f.Code));
        Assert.All(board.Findings.Where(f => f.Severity == Severity.Stop), f => Assert.True(f.Rule.ProtectsPeople));

        // Questions: the stop stands beside its question, and nobody is sent to measure on a board that is not shown to be safe.
        Assert.Equal(board.Stops.Order(), board.Questions.Where(q => q.Stop.Length > 0).Select(q => q.Stop).Order());
        if (board.Stops.Count > 0)
        {
            Assert.Contains(
                board.Questions,
                q =>
                    q.Key.EndsWith(".second", StringComparison.Ordinal)
                    && q.HowToFindOut.StartsWith("Not", StringComparison.Ordinal)
            );
        }

        if (board.Stops.Contains("STP001") || board.Stops.Contains("STP002"))
        {
            var how = board.Questions.Single(q => q.Key.EndsWith(".carries", StringComparison.Ordinal)).HowToFindOut;
            Assert.Contains("Not by measuring", how, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(EveryBoard))]
    public void Every_way_through_the_sense_path_has_the_stops_of_the_board(
        SenseSide side,
        Isolation isolated,
        SenseCarries carries,
        SenseControl control
    )
    {
        var driver = Boards.With(s => s with { Side = side, Carries = carries, Control = control }) with
        {
            Isolated = isolated,
        };
        var model = EmitterFit.From(new([new(0.2, 33, 1050), new(0.9, 34.9, 4350), new(1.8, 37.2, 7900)])).Model;
        var ways = WaysComparison.Of(new(model, 2, driver, new(), null, null)).Ways;
        WayKind[] inside =
        [
            WayKind.FixedSense,
            WayKind.SteppedChain,
            WayKind.ParallelBranches,
            WayKind.SelectorShorting,
            WayKind.SelectorOpening,
        ];
        foreach (var way in ways.Where(w => inside.Contains(w.Kind)))
        {
            Assert.Empty(BoardReading.Of(driver).Stops.Except(way.Stops));
            Assert.True(way.Stops.Count == 0 || way.Verdict == Verdict.Stop, $"{way.Kind}: {way.Verdict}");
        }

        Assert.Equal(inside.Length, ways.Count(w => inside.Contains(w.Kind)));
    }

    [Fact]
    public void A_wired_chain_has_the_stops_of_the_board_and_a_driver_left_alone_has_none()
    {
        var unknown = Boards.With(s => s with { Side = SenseSide.Unknown });
        var part = new ResistorPart(0.165, 0, 3, 343.15, 428.15);
        var spec = new StepsSpec(new([new(1, 35, 4000)]), unknown, new(Arrangement.SeriesChain, part, [part], 0, 0));
        Assert.Contains(StepsStation.Evaluate(spec).Findings, f => f.Rule == StepsRules.SenseNotSecondary);
        Assert.DoesNotContain(
            StepsStation.Evaluate(spec with { Chain = null }).Findings,
            f => f.Rule == StepsRules.SenseNotSecondary
        );
        Assert.Equal(["STP001"], BoardReading.Of(unknown).Stops);
    }

    [Fact]
    public void Open_questions_are_those_without_an_answer()
    {
        Assert.Equal(
            ["driver.sense.second"],
            BoardReading.Of(Boards.Good).Questions.Where(q => q.IsOpen).Select(q => q.Key)
        );
        var nothing = new DriverSpec(1, null, null, null, 0.9, new([]));
        // A second point is work on the board, so that it is not asked for while a stop stands.
        Assert.Equal(4, BoardReading.Of(nothing).Questions.Count(q => q.IsOpen));
        Assert.Equal(["STP001", "STP002", "STP003"], BoardReading.Of(nothing).Stops);
    }
}
