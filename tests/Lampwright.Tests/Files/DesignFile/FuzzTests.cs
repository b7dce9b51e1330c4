using CsCheck;
using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Edits;
using Lampwright.Quantities;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class FuzzTests
{
    private static readonly string[] Pieces =
    [
        "\"",
        "'",
        "[",
        "]",
        "{",
        "}",
        "=",
        "\n",
        "\r\n",
        "#",
        ",",
        ".",
        "1,2 mm",
        "\"1e400 m\"",
        "nan",
        "-inf",
        "\"{gap}\"",
        "\"{a.b.c + }\"",
        "[[x]]",
        "[part.sink_tray]",
        "\"\"\"",
        "\\",
        "\u0000",
        "\uFEFF",
        "<script>",
        "±",
        "😀",
        "9223372036854775808",
        "{ x = 1 }",
        "true",
        "1979-05-27",
    ];

    private static readonly string[] Tokens =
    [
        "1",
        "-",
        "e",
        ".",
        ",",
        " ",
        "/",
        "±",
        "+-",
        "mm",
        "in",
        "K",
        "W",
        "(",
        ")",
        "*",
        "^",
        "2",
        "%",
        "degC",
        "½",
        "{",
        "}",
        "max(",
        "gap",
    ];

    [Fact]
    public void No_mutation_of_a_light_makes_the_loader_throw_or_hang()
    {
        Gen.Select(Gen.Int[0, Sketch.Text.Length - 1], Gen.Int[0, 40], Gen.Int[0, Pieces.Length - 1])
            .Array[1, 6]
            .Sample(
                changes =>
                {
                    var text = Sketch.Text;
                    foreach (var (at, cut, piece) in changes)
                    {
                        var start = Math.Min(at, text.Length);
                        text = string.Concat(
                            text.AsSpan(0, start),
                            Pieces[piece],
                            text.AsSpan(Math.Min(text.Length, start + cut))
                        );
                    }

                    WellFormed(DesignLoader.Parse(text, "light.toml", Sketch.Beside), text);
                },
                seed: "0N0XIzNsQ0O2",
                iter: 300
            );
    }

    [Fact]
    public void No_edit_of_a_broken_light_throws()
    {
        string[] paths =
        [
            "title",
            "given.gap",
            "emitter.main.points[0].flux",
            "emitter.main.points[9]",
            "sink.main.holes.mount.grid.count[0]",
            "part.sink_tray",
            "part.sink_tray.flange.wall_l.angle",
            "part.new.face",
            "fan.main",
            "steps.targets.every",
            "nothing.at.all",
            "",
            "..",
            "a[",
            "\"",
            "x\"y.z",
            "a[0][1]",
        ];
        Gen.Select(
                Gen.Int[0, Sketch.Text.Length - 1],
                Gen.Int[0, Pieces.Length],
                Gen.Int[0, paths.Length - 1],
                Gen.Int[0, Pieces.Length - 1]
            )
            .Sample(
                (at, piece, path, value) =>
                {
                    var broken = piece == Pieces.Length ? Sketch.Text : Sketch.Text.Insert(at, Pieces[piece]);
                    var text = DesignText.Parse(broken, "light.toml");
                    EditResult[] results =
                    [
                        DesignEdits.Set(text, paths[path], Pieces[value]),
                        DesignEdits.SetRaw(text, paths[path], Pieces[value]),
                        DesignEdits.Delete(text, paths[path]),
                        DesignEdits.AddTable(text, paths[path]),
                        DesignEdits.Rename(text, paths[path], "other"),
                    ];
                    foreach (var result in results)
                    {
                        Assert.True(result.Text.Problems.Count <= text.Problems.Count, result.Text.Text);
                    }
                },
                seed: "0N0XIzNsQ0O2",
                iter: 300
            );
    }

    [Fact]
    public void No_random_text_makes_the_loader_throw()
    {
        Gen.String.Sample(
            text => WellFormed(DesignLoader.Parse(text, "light.toml", Sketch.Beside), text),
            seed: "0N0XIzNsQ0O2",
            iter: 400
        );
    }

    [Fact]
    public void No_text_makes_the_reading_of_values_throw()
    {
        Gen.OneOf(Gen.String, Gen.Int[0, Tokens.Length - 1].Select(i => Tokens[i]).Array[0, 12].Select(string.Concat))
            .Sample(
                text =>
                {
                    if (QuantityText.TryParse(text, out var stated, out var error))
                    {
                        Assert.True(
                            double.IsFinite(stated.Si) && double.IsFinite(stated.HalfWidth) && stated.HalfWidth >= 0,
                            text
                        );
                    }
                    else
                    {
                        Assert.InRange(error!.Offset, 0, text.Length);
                        Assert.NotEqual("", error.Accepted);
                    }

                    if (Expression.TryParse(text, 0, out var expression, out _))
                    {
                        var fine = expression!.TryEvaluate(_ => default, out var value, out error);
                        Assert.True(fine ? double.IsFinite(value!.Nominal.Si) : error is not null, text);
                    }
                },
                seed: "0N0XIzNsQ0O2",
                iter: 5000
            );
    }

    private static void WellFormed(LoadedDesign loaded, string text)
    {
        foreach (var problem in loaded.Problems)
        {
            Assert.True(
                problem.Line >= 1 && problem.Column >= 1 && problem.Message.Length > 0 && problem.Accepted.Length > 0,
                $"{problem}\n{text}"
            );
        }

        foreach (var note in loaded.Notes)
        {
            _ = loaded.Positions.Find(note.Path);
        }
    }
}
