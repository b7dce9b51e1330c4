using System.Globalization;
using System.IO.Compression;
using Lampwright.Files.Packet;
using Lampwright.Tests.Files.Fixtures;

namespace Lampwright.Tests.Files.Packet;

public sealed class PacketWriterTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("lampwright-packet-");

    private static readonly string[] expected =
    [
        "blanks/long.dxf",
        "blanks/long.svg",
        "blanks/plate.dxf",
        "blanks/plate.svg",
        "blanks/tray.dxf",
        "blanks/tray.svg",
        "cut-list.csv",
        "evaluation.json",
        "folded/long.glb",
        "folded/plate.glb",
        "folded/tray.glb",
        "marking-out.csv",
        "packet.pdf",
        "templates.pdf",
    ];

    private static CancellationToken Running => TestContext.Current.CancellationToken;

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void Folder_holds_everything_and_nothing_is_left_beside_it()
    {
        var target = Path.Combine(folder.FullName, "new", "packet");
        var told = new List<PacketProgress>();
        var names = PacketWriter.Write(
            SampleLight.Design(),
            SampleLight.Evaluation(),
            [],
            target,
            progress: new Told(told),
            cancel: Running
        );
        Assert.Equal(expected, names.Order(StringComparer.Ordinal));
        Assert.Equal(expected, FilesIn(target));
        Assert.Equal(
            ["packet"],
            Directory.GetFileSystemEntries(Path.Combine(folder.FullName, "new")).Select(Path.GetFileName)
        );
        Assert.Equal((14, 14), (told[^1].Done, told[^1].Total));
    }

    [Fact]
    public void Blank_of_a_part_that_is_gone_goes_and_the_makers_own_files_stay()
    {
        var target = folder.FullName;
        Directory.CreateDirectory(Path.Combine(target, "blanks"));
        File.WriteAllText(Path.Combine(target, "blanks", "gone.dxf"), "");
        File.WriteAllText(Path.Combine(target, "notes.txt"), "mine");
        PacketWriter.Write(SampleLight.Design(), SampleLight.Evaluation(), [], target, cancel: Running);
        Assert.False(File.Exists(Path.Combine(target, "blanks", "gone.dxf")));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(target, "notes.txt")));
    }

    [Fact]
    public void Cancelled_writing_leaves_the_folder_as_it_was()
    {
        var target = Path.Combine(folder.FullName, "packet");
        Directory.CreateDirectory(target);
        File.WriteAllText(Path.Combine(target, "packet.pdf"), "old");
        using var cancel = new CancellationTokenSource();
        var stop = new Told([], p => Cancel(p, cancel));
        Assert.Throws<OperationCanceledException>(() =>
            PacketWriter.Write(
                SampleLight.Design(),
                SampleLight.Evaluation(),
                [],
                target,
                progress: stop,
                cancel: cancel.Token
            )
        );
        Assert.Equal("old", File.ReadAllText(Path.Combine(target, "packet.pdf")));
        Assert.Equal(["packet"], folder.GetFileSystemInfos().Select(f => f.Name));
    }

    [Fact]
    public void Zip_holds_the_same_files()
    {
        using var zip = new ZipArchive(
            new MemoryStream(PacketWriter.Zip(SampleLight.Design(), SampleLight.Evaluation(), [], cancel: Running))
        );
        Assert.Equal(expected, zip.Entries.Select(e => e.FullName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Names_that_lead_out_of_the_folder_do_not()
    {
        var light = SampleLight.Evaluation();
        var part = light.Metal!.Parts[0] with { Name = "../../evil" };
        var target = Path.Combine(folder.FullName, "packet");
        PacketWriter.Write(SampleLight.Design(), light with { Metal = new([part]) }, [], target, cancel: Running);
        Assert.Equal(["packet"], folder.GetFileSystemInfos().Select(f => f.Name));
    }

    [Fact]
    public void Same_numbers_have_the_same_state_and_other_numbers_another()
    {
        Assert.Equal(PacketWriter.StateOf("a"u8), PacketWriter.StateOf("a"u8));
        Assert.NotEqual(PacketWriter.StateOf("a"u8), PacketWriter.StateOf("b"u8));
    }

    [Fact]
    public void Cut_list_has_a_row_a_part_with_the_decimal_point_a_point()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = "," } };
            using var writer = new StringWriter();
            CutListCsv.Write(SampleLight.Evaluation(), writer);
            var lines = writer.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);
            Assert.Equal(4, lines.Length);
            Assert.StartsWith("part,sheet,material,thickness_mm,count,width_mm", lines[0], StringComparison.Ordinal);
            Assert.StartsWith(
                "tray,mild,DC01,1.2,1,212,211.8,212.2,120,119.9,120.1,",
                lines[1],
                StringComparison.Ordinal
            );
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static void Cancel(PacketProgress progress, CancellationTokenSource cancel)
    {
        if (progress.Done == 4)
        {
            cancel.Cancel();
        }
    }

    private static IEnumerable<string> FilesIn(string target) =>
        Directory
            .GetFiles(target, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(target, f).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);

    private sealed class Told(List<PacketProgress> list, Action<PacketProgress>? also = null)
        : IProgress<PacketProgress>
    {
        public void Report(PacketProgress value)
        {
            list.Add(value);
            also?.Invoke(value);
        }
    }
}
