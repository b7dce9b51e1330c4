using System.Text;
using Lampwright.Files.DesignFile.Edits;

namespace Lampwright.Files.DesignFile;

/// <summary>How a workspace stands to its file on the disk.</summary>
public enum DiskState
{
    /// <summary>The file is as it was read or saved.</summary>
    Same,

    /// <summary>Somebody else changed it.</summary>
    Changed,

    /// <summary>It is gone.</summary>
    Gone,
}

/// <summary>What came of saving.</summary>
/// <param name="IsSaved">True where the file now holds the text.</param>
/// <param name="Theirs">The text that somebody else wrote meanwhile, where that is why it was not saved.</param>
/// <param name="Refusal">Why it was not saved, in a sentence; null where it was.</param>
public sealed record SaveResult(bool IsSaved, string? Theirs, string? Refusal);

/// <summary>One design file that is worked on: its text, undo and redo over the text, saving, and changes from outside.</summary>
/// <remarks>
/// The text is the only state. Safe for several threads: each member takes one lock, and <see cref="Changed"/> is raised outside of it.
/// Undo goes back over the whole life of the workspace, up to 500 steps.
/// </remarks>
public sealed class Workspace
{
    private static readonly int MostSteps = 500;
    private readonly Lock _gate = new();
    private readonly LinkedList<string> _undo = new();
    private readonly Stack<string> _redo = new();
    private readonly string _path;
    private DesignText _text;
    private string _saved;
    private string _fingerprint;
    private DateTime _stamp;
    private LoadedDesign? _loaded;

    private Workspace(string path, DesignText text, string fingerprint, DateTime stamp)
    {
        _path = path;
        _text = text;
        _saved = text.Text;
        _fingerprint = fingerprint;
        _stamp = stamp;
    }

    /// <summary>Raised after the text has changed, by whatever; on the thread that changed it.</summary>
    public event EventHandler? Changed;

    /// <summary>Path of the file.</summary>
    public string FilePath => _path;

    /// <summary>The text as it is now.</summary>
    public DesignText Text
    {
        get
        {
            lock (_gate)
            {
                return _text;
            }
        }
    }

    /// <summary>The design that the text means now; computed once per text.</summary>
    public LoadedDesign Design
    {
        get
        {
            DesignText text;
            lock (_gate)
            {
                if (_loaded?.Text == _text)
                {
                    return _loaded;
                }

                text = _text;
            }

            var loaded = DesignLoader.Parse(text, ReadBeside);
            lock (_gate)
            {
                _loaded = loaded;
            }

            return loaded;
        }
    }

    /// <summary>True where the text is not what the file holds.</summary>
    public bool IsDirty
    {
        get
        {
            lock (_gate)
            {
                return _text.Text != _saved;
            }
        }
    }

    /// <summary>True where there is a step to take back.</summary>
    public bool CanUndo
    {
        get
        {
            lock (_gate)
            {
                return _undo.Count > 0;
            }
        }
    }

    /// <summary>True where there is a step to take again.</summary>
    public bool CanRedo
    {
        get
        {
            lock (_gate)
            {
                return _redo.Count > 0;
            }
        }
    }

    /// <summary>Opens a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="problem">Why it cannot be opened; null where it was.</param>
    /// <returns>The workspace, or null where the file cannot be read as text.</returns>
    public static Workspace? Open(string path, out FileProblem? problem)
    {
        var stamp = File.Exists(path) ? File.GetLastWriteTimeUtc(path) : default;
        if (DesignLoader.ReadFile(path, out problem) is not { } text)
        {
            return null;
        }

        return new Workspace(
            Path.GetFullPath(path),
            DesignText.Parse(text, Path.GetFileName(path)),
            Print(text),
            stamp
        );
    }

    /// <summary>Does an edit; refused edits change nothing and are no step.</summary>
    /// <param name="edit">Makes the new text out of the present one, for example <c>t => DesignEdits.Set(t, path, "1.2 mm")</c>.</param>
    public EditResult Edit(Func<DesignText, EditResult> edit)
    {
        EditResult result;
        lock (_gate)
        {
            result = edit(_text);
            if (!result.IsDone || result.Text.Text == _text.Text)
            {
                return result;
            }

            Push(_text.Text);
            _redo.Clear();
            _text = result.Text;
        }

        Changed?.Invoke(this, EventArgs.Empty);
        return result;
    }

    /// <summary>Takes the last step back; false where there is none.</summary>
    public bool Undo()
    {
        lock (_gate)
        {
            if (_undo.Last is not { } last)
            {
                return false;
            }

            _undo.RemoveLast();
            _redo.Push(_text.Text);
            _text = Parsed(last.Value);
        }

        Changed?.Invoke(this, EventArgs.Empty);
        return true;
    }

    /// <summary>Takes the last step again; false where there is none.</summary>
    public bool Redo()
    {
        lock (_gate)
        {
            if (!_redo.TryPop(out var next))
            {
                return false;
            }

            Push(_text.Text);
            _text = Parsed(next);
        }

        Changed?.Invoke(this, EventArgs.Empty);
        return true;
    }

    /// <summary>Saves the text; not over what somebody else wrote meanwhile, unless told to.</summary>
    /// <param name="overwrite">True to save over a change from outside.</param>
    public SaveResult Save(bool overwrite = false)
    {
        lock (_gate)
        {
            if (!overwrite && Disk(sure: true, out var theirs) == DiskState.Changed)
            {
                return new SaveResult(
                    false,
                    theirs,
                    "The file was changed outside; both texts are there to choose from."
                );
            }

            try
            {
                AtomicFile.Write(_path, _text.Text);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return new SaveResult(false, null, $"The file could not be saved: {e.Message}");
            }

            _saved = _text.Text;
            _fingerprint = Print(_saved);
            _stamp = File.GetLastWriteTimeUtc(_path);
            return new SaveResult(true, null, null);
        }
    }

    /// <summary>Looks at the file: whether somebody else changed it, and what it says then.</summary>
    /// <param name="theirs">Its text where it was changed and can be read.</param>
    public DiskState Look(out string? theirs)
    {
        lock (_gate)
        {
            return Disk(sure: false, out theirs);
        }
    }

    /// <summary>Takes the text of the file as it is now on the disk; a step that can be undone.</summary>
    /// <returns>Why not, or null where it was done.</returns>
    public FileProblem? TakeTheirs()
    {
        lock (_gate)
        {
            if (DesignLoader.ReadFile(_path, out var problem) is not { } text)
            {
                return problem;
            }

            _saved = text;
            _fingerprint = Print(text);
            _stamp = File.GetLastWriteTimeUtc(_path);
            if (text == _text.Text)
            {
                return null;
            }

            Push(_text.Text);
            _redo.Clear();
            _text = Parsed(text);
        }

        Changed?.Invoke(this, EventArgs.Empty);
        return null;
    }

    private DiskState Disk(bool sure, out string? theirs)
    {
        theirs = null;
        if (!File.Exists(_path))
        {
            return DiskState.Gone;
        }

        // While looking again and again the clock of the file is enough; before anything is overwritten the content decides.
        var stamp = File.GetLastWriteTimeUtc(_path);
        if (!sure && stamp == _stamp)
        {
            return DiskState.Same;
        }

        var text = DesignLoader.ReadFile(_path, out _);
        if (text is not null && Print(text) == _fingerprint)
        {
            _stamp = stamp;
            return DiskState.Same;
        }

        theirs = text;
        return DiskState.Changed;
    }

    private void Push(string text)
    {
        _undo.AddLast(text);
        if (_undo.Count > MostSteps)
        {
            _undo.RemoveFirst();
        }
    }

    private DesignText Parsed(string text) => DesignText.Parse(text, Path.GetFileName(_path));

    private string? ReadBeside(string name) =>
        DesignLoader.ReadFile(Path.Combine(Path.GetDirectoryName(_path)!, name), out _);

    private static string Print(string text) => AtomicFile.Fingerprint(Encoding.UTF8.GetBytes(text));
}
