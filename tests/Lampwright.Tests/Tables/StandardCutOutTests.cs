using Lampwright.Tables;

namespace Lampwright.Tests.Tables;

public sealed class StandardCutOutTests
{
    [Fact]
    public void Every_fan_from_40_to_140_has_four_screws_on_a_square_round_an_opening_that_they_clear()
    {
        var fans = StandardCutOut.All.Where(c => c.Name.StartsWith("fan ", StringComparison.Ordinal)).ToList();
        Assert.Equal(8, fans.Count);
        Assert.All(
            fans,
            f =>
            {
                Assert.Equal(4, f.Screws.Count);
                var frame = double.Parse(f.Name[4..], System.Globalization.CultureInfo.InvariantCulture) / 1000;
                Assert.All(
                    f.Screws,
                    s =>
                    {
                        Assert.Equal(Math.Abs(s.X), Math.Abs(s.Y), 12);
                        Assert.InRange(Math.Abs(s.X) + (f.ScrewHoleM / 2), 0, frame / 2);
                        Assert.True(Math.Sqrt((s.X * s.X) + (s.Y * s.Y)) > ((f.WidthM + f.ScrewHoleM) / 2) + 0.001);
                    }
                );
                Assert.InRange(f.WidthM, 0.9 * frame, frame);
            }
        );
    }

    [Fact]
    public void A_name_is_found_whatever_its_case_and_an_unknown_one_is_not()
    {
        var inlet = StandardCutOut.Named("Appliance Inlet c14")!;
        Assert.Equal(0.040, inlet.Screws[1].X - inlet.Screws[0].X, 12);
        Assert.False(inlet.IsPublished);
        Assert.Null(StandardCutOut.Named("appliance inlet C15"));
        Assert.Null(StandardCutOut.Named(""));
    }

    [Fact]
    public void Screws_of_every_cut_out_lie_outside_its_opening() =>
        Assert.All(
            StandardCutOut.All,
            c =>
                Assert.All(
                    c.Screws,
                    s =>
                    {
                        var r = c.ScrewHoleM / 2;
                        var away = c.IsRound
                            ? Math.Sqrt((s.X * s.X) + (s.Y * s.Y)) - r - (c.WidthM / 2)
                            : Math.Max(Math.Abs(s.X) - (c.WidthM / 2), Math.Abs(s.Y) - (c.HeightM / 2)) - r;
                        Assert.True(away > 0.0005, c.Name);
                    }
                )
        );
}
