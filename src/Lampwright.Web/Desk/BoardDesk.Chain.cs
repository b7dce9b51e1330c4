using System.Diagnostics;
using Lampwright.Evaluation;
using Lampwright.Evaluation.Answers;
using Lampwright.Files.DesignFile.Edits;
using Lampwright.Steps.ChainProof;

namespace Lampwright.Web.Desk;

/// <content>The best chain: found beside the pages, proven when asked, taken over into the text.</content>
public sealed partial class BoardDesk
{
    private static readonly TimeSpan Glance = TimeSpan.FromMilliseconds(150);
    private volatile PreparedEvaluation? _prepared;
    private CancellationTokenSource? _proof;

    /// <inheritdoc/>
    public async Task<string> TakeChainAsync(ChainOffer chain)
    {
        ArgumentNullException.ThrowIfNull(chain);
        var refusal = "";
        await ActAsync(() =>
        {
            var withFixed = State.Light?.Steps?.Chain?.Asked.Fixed is null;
            var switches = State.Design.Steps?.Switches ?? 0;
            refusal =
                _workspace.Edit(t => ChainEdit.Take(t, chain.Choice.Found.Parts, withFixed, switches)).Refusal ?? "";
        });
        return refusal;
    }

    /// <inheritdoc/>
    public async Task ProveAsync()
    {
        CancellationTokenSource mine;
        CancellationToken text;
        PreparedEvaluation prepared;
        lock (_gate)
        {
            if (_proof is not null || _prepared is not { } now)
            {
                return;
            }

            (prepared, text) = (now, _latest.Token);
            mine = _proof = CancellationTokenSource.CreateLinkedTokenSource(text);
        }

        try
        {
            var told = new Glimpses(p => PublishUnless(text, s => s with { Proving = p }));
            told.Report(new(0, 0, State.Light?.Steps?.Chain?.Best.WorstError ?? double.PositiveInfinity, 0));
            var early = new Early(found =>
                PublishUnless(
                    text,
                    s =>
                        s with
                        {
                            // Proven is shown as soon as it is; the runners-up of before stay until theirs are there.
                            Light = s.Light?.WithChain(found with { Offers = s.Light.Steps?.Chain?.Offers ?? [] }),
                        }
                )
            );
            var chain = await Task.Run(
                () => prepared.Chain(true, true, told, mine.Token, early),
                CancellationToken.None
            );
            PublishUnless(
                text,
                s =>
                {
                    // Who has stopped it goes on choosing among what was there.
                    var before = s.Light?.Steps?.Chain?.Offers ?? [];
                    var stopped =
                        mine.IsCancellationRequested && chain is not null && chain.Offers.Count < before.Count;
                    var now =
                        chain is not null && stopped && !s.ChainIsPending ? chain with { Offers = before } : chain;
                    return s with { Light = s.Light?.WithChain(now), ChainIsPending = false };
                }
            );
        }
        catch (OperationCanceledException)
        {
            // A later text is being computed.
        }
        catch (Exception fault)
        {
            Publish(s => Told(s, fault));
        }
        finally
        {
            lock (_gate)
            {
                _proof = null;
            }

            mine.Dispose();
            Publish(s => s with { Proving = null });
        }
    }

    /// <inheritdoc/>
    public void StopProving()
    {
        lock (_gate)
        {
            _proof?.Cancel();
        }
    }

    private void BestChain(PreparedEvaluation prepared, bool withOffers, CancellationToken cancel)
    {
        var chain = prepared.Chain(toTheEnd: false, withOffers, null, cancel);
        PublishUnless(
            cancel,
            s =>
            {
                // What was proven meanwhile is not to be replaced by what a budget has ended.
                if (!s.ChainIsPending)
                {
                    return s;
                }

                // Runners-up of the text before are better than a hole, until those of this one are there.
                var stale = s.Light?.Steps?.Chain?.Offers ?? [];
                var now = withOffers || chain is null ? chain : chain with { Offers = stale };
                return s with { Light = Put(s.Light, now)?.WithChain(now), ChainIsPending = !withOffers };
            }
        );
    }

    /// <summary>A light that shows a chain, whatever has been said of it.</summary>
    private static LightEvaluation? Put(LightEvaluation? light, ChainAnswer? chain) =>
        light?.Steps is { } steps ? light with { Steps = steps with { Chain = chain } } : light;

    // Told at once and in order, where Progress<T> would post it.
    private sealed class Early(Action<ChainAnswer> tell) : IProgress<ChainAnswer>
    {
        public void Report(ChainAnswer value) => tell(value);
    }

    /// <summary>Lets through what the eye can follow.</summary>
    private sealed class Glimpses(Action<ChainProgress> tell) : IProgress<ChainProgress>
    {
        private readonly Stopwatch _since = new();

        public void Report(ChainProgress value)
        {
            if (!_since.IsRunning || _since.Elapsed > Glance)
            {
                _since.Restart();
                tell(value);
            }
        }
    }
}
