using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Edits;

namespace Lampwright.Tests.Files.DesignFile;

public sealed class WorkspaceTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("lampwright").FullName;

    private string FilePath => Path.Combine(_folder, "light.toml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private Workspace Opened(string text = "format = 1\r\n[place]\r\naltitude = \"1 m\" # here\r\n")
    {
        File.WriteAllText(FilePath, text);
        return Workspace.Open(FilePath, out _)!;
    }

    private static EditResult Set(Workspace workspace, string value) =>
        workspace.Edit(t => DesignEdits.Set(t, "place.altitude", value));

    [Fact]
    public void Edits_are_undone_and_redone_over_the_text()
    {
        var workspace = Opened();
        var first = workspace.Text.Text;
        var raised = 0;
        workspace.Changed += (_, _) => raised++;
        Set(workspace, "2 m");
        Set(workspace, "3 m");
        Assert.True(workspace.IsDirty);
        Assert.Equal(3, workspace.Design.Design.Place.Altitude.Nominal);
        Assert.True(workspace.Undo() && workspace.Undo());
        Assert.Equal(first, workspace.Text.Text);
        Assert.False(workspace.IsDirty);
        Assert.False(workspace.Undo());
        Assert.True(workspace.Redo());
        Assert.Equal(2, workspace.Design.Design.Place.Altitude.Nominal);
        Set(workspace, "4 m");
        Assert.False(workspace.CanRedo);
        Assert.Equal(6, raised);
    }

    [Fact]
    public void A_refused_edit_is_no_step()
    {
        var workspace = Opened();
        Assert.False(workspace.Edit(t => DesignEdits.SetRaw(t, "place.altitude", "[")).IsDone);
        Assert.False(workspace.CanUndo);
        Assert.False(workspace.IsDirty);
    }

    [Fact]
    public void Saving_writes_the_text_and_leaves_nothing_else_in_the_folder()
    {
        var workspace = Opened("\uFEFFformat = 1\r\n[place]\r\naltitude = \"1 m\"\r\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(
                FilePath,
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite
            );
        }

        Set(workspace, "2 m");
        Assert.True(workspace.Save().IsSaved);
        Assert.False(workspace.IsDirty);
        Assert.Equal(
            "\uFEFFformat = 1\r\n[place]\r\naltitude = \"2 m\"\r\n",
            System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(FilePath))
        );
        Assert.Equal([FilePath], Directory.GetFileSystemEntries(_folder));
        if (!OperatingSystem.IsWindows())
        {
            Assert.True(File.GetUnixFileMode(FilePath).HasFlag(UnixFileMode.GroupWrite));
        }
    }

    [Fact]
    public void A_change_from_outside_is_noticed_and_both_texts_are_there()
    {
        var workspace = Opened();
        Set(workspace, "2 m");
        Assert.Equal(DiskState.Same, workspace.Look(out _));
        File.WriteAllText(FilePath, "format = 1\n[place]\naltitude = \"9 m\"\n");
        File.SetLastWriteTimeUtc(FilePath, DateTime.UtcNow.AddSeconds(5));
        Assert.Equal(DiskState.Changed, workspace.Look(out var theirs));
        Assert.Contains("9 m", theirs, StringComparison.Ordinal);
        var refused = workspace.Save();
        Assert.False(refused.IsSaved);
        Assert.Equal(theirs, refused.Theirs);
        Assert.Contains("9 m", File.ReadAllText(FilePath), StringComparison.Ordinal);
        Assert.Null(workspace.TakeTheirs());
        Assert.Equal(9, workspace.Design.Design.Place.Altitude.Nominal);
        Assert.True(workspace.Undo());
        Assert.Equal(2, workspace.Design.Design.Place.Altitude.Nominal);
        Assert.True(workspace.Save().IsSaved);
        File.Delete(FilePath);
        Assert.Equal(DiskState.Gone, workspace.Look(out _));
    }

    [Fact]
    public void A_file_touched_but_not_changed_is_the_same()
    {
        var workspace = Opened();
        File.SetLastWriteTimeUtc(FilePath, DateTime.UtcNow.AddHours(1));
        Assert.Equal(DiskState.Same, workspace.Look(out _));
    }

    [Fact]
    public void A_file_that_cannot_be_read_is_a_problem()
    {
        Assert.Null(Workspace.Open(Path.Combine(_folder, "none.toml"), out var problem));
        Assert.Contains("no file", problem!.Message, StringComparison.Ordinal);
        File.WriteAllBytes(FilePath, [0xff, 0xfe, 0x00, 0x80]);
        Assert.Null(Workspace.Open(FilePath, out problem));
        Assert.Contains("UTF-8", problem!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_tabs_at_once_lose_no_edit()
    {
        var workspace = Opened("format = 1\n[given]\na = 0\nb = 0\n");
        Parallel.For(
            0,
            100,
            i =>
                workspace.Edit(t =>
                {
                    var path = i % 2 == 0 ? "given.a" : "given.b";
                    var now = int.Parse(
                        ((Lampwright.Files.DesignFile.Document.DocScalar)t.Find(path)!).Text,
                        System.Globalization.CultureInfo.InvariantCulture
                    );
                    return DesignEdits.SetRaw(t, path, FormattableString.Invariant($"{now + 1}"));
                })
        );
        Assert.Contains("a = 50\nb = 50\n", workspace.Text.Text, StringComparison.Ordinal);
    }
}
