using System.Globalization;
using System.Text.RegularExpressions;
using Lampwright.Files.Drawings;
using Lampwright.Geometry;
using Lampwright.Metal;

namespace Lampwright.Tests.Files.Drawings;

public sealed class FoldFilesTests
{
    [Fact]
    public async Task An_independent_reader_finds_faces_and_box_of_a_glb()
    {
        var output = await Reader.CommandAsync(
            GlbFold.File(SampleBodies.Block(SampleBodies.Turned)),
            ".glb",
            "assimp",
            "assimp-utils",
            "info"
        );
        Assert.Equal(13, Number(output, "Faces")); // 12 triangles and one line
        Assert.Equal(7, Number(output, "Meshes"));
        Assert.Contains("block.x+", output, StringComparison.Ordinal);
        Assert.Contains("block.edges", output, StringComparison.Ordinal);
        // In the scene: x from 0.06 to 0.1, y from 0.2 to 0.26, z from 0.3 to 0.32; the file has y up.
        Near(new(0.06, 0.3, -0.26), Point(output, "Minimum point"));
        Near(new(0.1, 0.32, -0.2), Point(output, "Maximum point"));
    }

    [Fact]
    public async Task An_independent_reader_finds_every_triangle_of_a_folded_tray()
    {
        var part = SheetPart.Of(Tests.Metal.Parts.Tray()).Folded!;
        var body = FoldScene.Of(part);
        var triangles = body.Faces.Sum(f => f.Triangles.Count / 3);
        var lines = body.Edges.Sum(e => e.Points.Count - 1);
        var glb = await Reader.CommandAsync(GlbFold.File(body), ".glb", "assimp", "assimp-utils", "info");
        Assert.Equal(triangles + lines, Number(glb, "Faces"));
        var stl = await Reader.CommandAsync(StlFold.File(body), ".stl", "assimp", "assimp-utils", "info");
        Assert.Equal(triangles, Number(stl, "Faces"));
        Near(part.BoxLeast * 1000, Point(stl, "Minimum point"));
        Near(part.BoxMost * 1000, Point(stl, "Maximum point"));
    }

    [Fact]
    public async Task An_independent_reader_finds_triangles_and_box_of_an_stl()
    {
        var output = await Reader.CommandAsync(
            StlFold.File(SampleBodies.Block(SampleBodies.Turned)),
            ".stl",
            "assimp",
            "assimp-utils",
            "info"
        );
        Assert.Equal(12, Number(output, "Faces"));
        Near(new(60, 200, 300), Point(output, "Minimum point"));
        Near(new(100, 260, 320), Point(output, "Maximum point"));
    }

    [Fact]
    public void The_triangles_of_an_stl_enclose_the_volume_and_look_outward()
    {
        var bytes = StlFold.File(SampleBodies.Block(SampleBodies.Turned));
        var count = BitConverter.ToInt32(bytes, 80);
        Assert.Equal(84 + (50 * count), bytes.Length);
        var volume = 0.0;
        for (var i = 0; i < count; i++)
        {
            Vec3 V(int k) =>
                new(
                    BitConverter.ToSingle(bytes, 84 + (50 * i) + (12 * k)),
                    BitConverter.ToSingle(bytes, 88 + (50 * i) + (12 * k)),
                    BitConverter.ToSingle(bytes, 92 + (50 * i) + (12 * k))
                );
            volume += V(1).Dot(V(2).Cross(V(3))) / 6;
            Assert.True((V(2) - V(1)).Cross(V(3) - V(1)).Dot(V(0)) > 0, $"triangle {i}");
        }

        Assert.Equal(60.0 * 40 * 20, volume, 0.1);
    }

    [Fact]
    public void Two_bodies_stand_in_one_file_each_under_its_own_name()
    {
        var glb = GlbFold.File(
            new Scene([SampleBodies.Block(Frame.World, "a"), SampleBodies.Block(SampleBodies.Turned, "b")])
        );
        var json = System.Text.Encoding.UTF8.GetString(glb, 20, BitConverter.ToInt32(glb, 12));
        foreach (var name in (string[])["\"a\"", "\"b\"", "\"a.z+\"", "\"b.z+\""])
        {
            Assert.Contains(name, json, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_scene_without_bodies_is_an_empty_stl() => Assert.Equal(84, StlFold.File(new Scene([])).Length);

    private static int Number(string output, string name) =>
        int.Parse(
            Regex.Match(output, $@"^{name}:\s+(\d+)", RegexOptions.Multiline).Groups[1].Value,
            CultureInfo.InvariantCulture
        );

    private static Vec3 Point(string output, string name)
    {
        var match = Regex.Match(output, $@"{name}\s+\(([-\d.e]+) ([-\d.e]+) ([-\d.e]+)\)");
        double At(int i) => double.Parse(match.Groups[i].Value, CultureInfo.InvariantCulture);
        return new(At(1), At(2), At(3));
    }

    private static void Near(Vec3 expected, Vec3 actual) =>
        Assert.True((expected - actual).Length < 1e-5 * (1 + expected.Length), $"expected {expected}, found {actual}");
}
