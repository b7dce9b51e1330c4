using System.Diagnostics;
using Lampwright.Evaluation;
using Lampwright.Files.DesignFile;
using Lampwright.Files.DesignFile.Edits;
using Lampwright.Files.Drawings;
using Lampwright.Files.Opening;
using Lampwright.Files.Packet;

namespace Lampwright.Web.Desk;

/// <summary>The desk over one design file: edits as splices, answers computed beside the pages, the latest text wins.</summary>
/// <remarks>
/// All document state is the workspace's; an act once begun is finished, whoever goes away. The nominal answer is published as soon as it is there, the bands after it; an edit
/// that comes meanwhile stops what is being computed.
/// </remarks>
public sealed partial class BoardDesk : IBoardDesk, IDisposable
{
    private static readonly TimeSpan PictureFirst = TimeSpan.FromMilliseconds(50);
    private readonly Workspace _workspace;
    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _acts = new(1, 1);
    private readonly Timer _look;
    private CancellationTokenSource _latest = new();
    private (string Path, string Session, string Text)? _last;
    private string? _keptAgainst;
    private volatile LoadedDesign? _read;
    private DateTime _readings;
    private long _version;

    /// <summary>Opens the desk over a workspace and begins to compute.</summary>
    /// <param name="workspace">The design file that is worked on.</param>
    public BoardDesk(Workspace workspace)
    {
        _workspace = workspace;
        State = new()
        {
            Version = 0,
            FileName = Path.GetFileName(workspace.FilePath),
            Text = workspace.Text.Text,
        };
        // The first page should find answers, not an empty ledger.
        _ = BandsAsync(Nominal(_latest.Token), _latest.Token);
        _readings = ReadingsStamp();
        _workspace.Changed += (_, _) => Renew();
        _look = new(_ => LookOutside(), null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(1));
    }

    /// <inheritdoc/>
    public BoardState State { get; private set; }

    /// <inheritdoc/>
    public event Action? Changed;

    /// <inheritdoc/>
    public async Task<string> SetAsync(string path, string text, string session)
    {
        await _acts.WaitAsync(CancellationToken.None);
        try
        {
            return await Task.Run(() => Set(path, text, session), CancellationToken.None);
        }
        finally
        {
            _acts.Release();
        }
    }

    /// <inheritdoc/>
    public async Task<string> TakeOverAsync(string path, string text)
    {
        // A take-over may be a whole table in braces, which is no value that a hand would type.
        var isTable = text.StartsWith('{') && text.Contains('=', StringComparison.Ordinal);
        if (!isTable)
        {
            return await SetAsync(path, text, "take-over");
        }

        var refusal = "";
        await ActAsync(() => refusal = _workspace.Edit(t => DesignEdits.SetRaw(t, path, text)).Refusal ?? "");
        return refusal;
    }

    /// <inheritdoc/>
    public Task UndoAsync() => ActAsync(() => _workspace.Undo());

    /// <inheritdoc/>
    public Task RedoAsync() => ActAsync(() => _workspace.Redo());

    /// <inheritdoc/>
    public Task SaveAsync() =>
        ActAsync(() =>
        {
            var saved = _workspace.Save(overwrite: _keptAgainst is not null);
            _keptAgainst = saved.IsSaved ? null : _keptAgainst;
            Publish(s =>
                Standing(s) with
                {
                    Trouble = saved.Refusal ?? "",
                    OutsideText = saved.IsSaved ? null : saved.Theirs ?? s.OutsideText,
                }
            );
        });

    /// <inheritdoc/>
    public Task TakeOutsideAsync() =>
        ActAsync(() =>
        {
            var problem = _workspace.TakeTheirs();
            Publish(s => Standing(s) with { OutsideText = null, Trouble = problem?.Message ?? "" });
        });

    /// <inheritdoc/>
    public Task KeepOwnAsync() =>
        ActAsync(() =>
        {
            _keptAgainst = State.OutsideText;
            Publish(s => s with { OutsideText = null, IsUnsaved = true });
        });

    /// <inheritdoc/>
    public Task<byte[]> PacketAsync(CancellationToken cancellation) =>
        Task.Run(
            () =>
            {
                var opened = OpenedLight.Of(Loaded(), ReadBeside);
                var prepared = opened.Prepare();
                var light = prepared
                    .WithBands(Evaluator.DefaultDraws, cancellation)
                    .WithChain(prepared.Chain(stop: cancellation));
                return PacketWriter.Zip(
                    opened.Loaded.Design,
                    light,
                    opened.Problems,
                    opened.Place,
                    cancel: cancellation
                );
            },
            cancellation
        );

    /// <inheritdoc/>
    public string BlankDrawing(string part) =>
        State.Light?.Metal?.Parts.FirstOrDefault(p => p.Name == part) is { } answer
            ? SvgDrawing.Element(
                Lampwright.Files.Drawings.BlankDrawing.Fitting(
                    answer.Blank,
                    240,
                    300,
                    new() { Findings = State.Light?.Findings ?? [], LegendMm = 225 }
                )
            )
        : State.Light?.Metal?.Sketches.FirstOrDefault(s => s.Part == part) is { } sketch
            ? SvgDrawing.Element(SketchDrawing.Fitting(sketch, State.Light.Findings, 240, 190))
        : "";

    /// <summary>Stops computing and looking.</summary>
    public void Dispose()
    {
        _look.Dispose();
        StopProving();
        _latest.Cancel();
        _latest.Dispose();
        _acts.Dispose();
    }

    private string Set(string path, string text, string session)
    {
        var before = Loaded();
        var continues =
            _last is { } last && last.Path == path && last.Session == session && last.Text == _workspace.Text.Text;
        string? refusal = null;
        EditResult Edit(DesignText now)
        {
            var edited = text.Length == 0 ? DesignEdits.Delete(now, path) : DesignEdits.Set(now, path, text);
            if (!edited.IsDone)
            {
                refusal = edited.Refusal;
                return edited;
            }

            var after = DesignLoader.Parse(edited.Text, ReadBeside);
            refusal = Worse(before, after, path);
            if (refusal is not null)
            {
                return edited with { Text = now };
            }

            _read = after;
            return edited;
        }

        if (continues)
        {
            // Typing on in one field is one step: the half-typed value before it is taken back unseen.
            _workspace.Undo();
            if (!_workspace.Edit(Edit).IsDone || refusal is not null)
            {
                _workspace.Redo();
            }
        }
        else
        {
            _workspace.Edit(Edit);
        }

        _last = refusal is null ? (path, session, _workspace.Text.Text) : _last;
        return refusal ?? "";
    }

    /// <summary>The design of the text as it is now; what was read to judge an edit is not read again.</summary>
    private LoadedDesign Loaded() =>
        _read is { } read && ReferenceEquals(read.Text, _workspace.Text) ? read : _workspace.Design;

    /// <summary>What an edit would break, in words; null when it breaks nothing that was whole.</summary>
    private static string? Worse(LoadedDesign before, LoadedDesign after, string path)
    {
        bool IsOld(FileProblem problem) => before.Problems.Any(p => p.Path == problem.Path && p.Found == problem.Found);
        var worse = after.Problems.FirstOrDefault(p => p.Path == path) ?? after.Problems.FirstOrDefault(p => !IsOld(p));
        return worse?.Message;
    }

    private string? ReadBeside(string name) => TextBeside.Read(Path.GetDirectoryName(_workspace.FilePath) ?? ".", name);

    private async Task ActAsync(Action act)
    {
        await _acts.WaitAsync(CancellationToken.None);
        try
        {
            _last = null;
            await Task.Run(act, CancellationToken.None);
        }
        finally
        {
            _acts.Release();
        }
    }

    private void Renew()
    {
        CancellationToken mine;
        lock (_gate)
        {
            _latest.Cancel();
            _latest.Dispose();
            _latest = new();
            mine = _latest.Token;
        }

        _ = Task.Run(() => BandsAsync(Nominal(mine), mine), CancellationToken.None);
    }

    /// <summary>Reads the text, publishes its nominal answer and gives what the bands are computed from; null when a later text came.</summary>
    private PreparedEvaluation? Nominal(CancellationToken cancel)
    {
        try
        {
            var clock = Stopwatch.StartNew();
            var loaded = Loaded();
            var given = GivenReader.Of(loaded.Text, loaded.ComesTo);
            var opened = OpenedLight.Of(loaded, ReadBeside);
            var prepared = opened.Prepare();
            var nominal = prepared.Nominal();
            PublishUnless(
                cancel,
                s =>
                    Standing(s) with
                    {
                        Text = loaded.Text.Text,
                        Given = given,
                        InShop = InShop(loaded),
                        Problems = opened.Problems,
                        Design = loaded.Design,
                        // The chain of the text before stays in sight until that of this one is there.
                        Light = Put(nominal, s.Light?.Steps?.Chain),
                        BandsArePending = true,
                        ChainIsPending = true,
                        Proving = null,
                        NominalMs = clock.Elapsed.TotalMilliseconds,
                        Trouble = "",
                    }
            );
            _prepared = prepared;
            return prepared;
        }
        catch (OperationCanceledException)
        {
            // A later text is being computed.
            return null;
        }
        catch (Exception fault)
        {
            Publish(s => Told(s, fault));
            return null;
        }
    }

    private static IReadOnlyList<string> InShop(LoadedDesign loaded) =>
        loaded.Shop is null
            ? []
            :
            [
                .. GivenReader
                    .Of(loaded.Shop, _ => "")
                    .Where(t => t.Fields.Any(f => f.Text.Length > 0) && loaded.Text.Find(t.Path) is null)
                    .Select(t => t.Path)
                    .Where(p => p.Length > 0),
            ];

    private async Task BandsAsync(PreparedEvaluation? prepared, CancellationToken cancel)
    {
        if (prepared is null)
        {
            return;
        }

        try
        {
            // The nominal answer is drawn first: the bands would take every processor from it.
            await Task.Delay(PictureFirst, cancel);
            await Task.Run(() => BestChain(prepared, withOffers: false, cancel), cancel);
            var banded = await Task.Run(() => prepared.WithBands(Evaluator.DefaultDraws, cancel), cancel);
            PublishUnless(
                cancel,
                s => s with { Light = banded.WithChain(s.Light?.Steps?.Chain), BandsArePending = false }
            );
            await Task.Run(() => BestChain(prepared, withOffers: true, cancel), cancel);
        }
        catch (OperationCanceledException)
        {
            // A later text is being computed.
        }
        catch (Exception fault)
        {
            Publish(s => Told(s, fault));
        }
    }

    /// <summary>A fault of the program while computing: said on the board, which goes on; the text and its undo stay.</summary>
    private BoardState Told(BoardState state, Exception fault) =>
        Standing(state) with
        {
            Text = _workspace.Text.Text,
            BandsArePending = false,
            Trouble =
                $"This text could not be computed, so the figures are those before it. It is a fault of Lampwright, not of your file: {fault.Message}",
        };

    private BoardState Standing(BoardState state) =>
        state with
        {
            IsUnsaved = _workspace.IsDirty,
            CanUndo = _workspace.CanUndo,
            CanRedo = _workspace.CanRedo,
        };

    private void LookOutside()
    {
        var readings = ReadingsStamp();
        if (readings != _readings)
        {
            _readings = readings;
            Renew();
        }

        if (_workspace.Look(out var theirs) == DiskState.Changed && theirs is not null)
        {
            if (theirs != State.OutsideText && theirs != _keptAgainst)
            {
                Publish(s => s with { OutsideText = theirs });
            }
        }
        else if (State.OutsideText is not null)
        {
            Publish(s => s with { OutsideText = null });
        }
    }

    // Readings are written by another hand, at the light; the board follows them.
    private DateTime ReadingsStamp() =>
        State.Design.Readings?.File is { Length: > 0 } name
        && Path.GetDirectoryName(_workspace.FilePath) is { } folder
        && File.Exists(Path.Combine(folder, name))
            ? File.GetLastWriteTimeUtc(Path.Combine(folder, name))
            : default;

    private void PublishUnless(CancellationToken cancel, Func<BoardState, BoardState> change)
    {
        lock (_gate)
        {
            cancel.ThrowIfCancellationRequested();
            State = change(State) with { Version = ++_version };
        }

        Changed?.Invoke();
    }

    private void Publish(Func<BoardState, BoardState> change) => PublishUnless(CancellationToken.None, change);
}
