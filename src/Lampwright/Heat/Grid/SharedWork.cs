namespace Lampwright.Heat.Grid;

/// <summary>Work in numbered parts that the caller and one helper claim as they come free.</summary>
/// <remarks>
/// Nobody waits for a helper that has no processor: the caller claims all parts that nobody has begun, and waits only for a part that the
/// helper is in the middle of. What a part computes must not hang on who does it; then results are the same on any machine load.
/// </remarks>
internal sealed class SharedWork : IDisposable
{
    private Phase current = new(static _ => { }, 0);
    private bool ended;

    /// <summary>Starts, with a helper where there is to be one.</summary>
    internal SharedWork(bool withHelper)
    {
        if (withHelper)
        {
            ThreadPool.UnsafeQueueUserWorkItem(static work => work.Help(), this, preferLocal: false);
        }

        HasHelper = withHelper;
    }

    private bool HasHelper { get; }

    /// <summary>Does parts 0 to <paramref name="parts"/> - 1 and returns when all are done.</summary>
    internal void Do(int parts, Action<int> part)
    {
        if (parts < 2 || !HasHelper)
        {
            for (var i = 0; i < parts; i++)
            {
                part(i);
            }

            return;
        }

        var phase = new Phase(part, parts);
        Volatile.Write(ref current, phase);
        while (phase.DoNext())
        {
            // The caller works like a helper.
        }

        SpinWait wait = default;
        while (!phase.AllDone)
        {
            wait.SpinOnce(sleep1Threshold: -1);
        }

        phase.Rethrow();
    }

    /// <summary>Sends the helper home.</summary>
    public void Dispose() => Volatile.Write(ref ended, true);

    private void Help()
    {
        SpinWait wait = default;
        while (!Volatile.Read(ref ended))
        {
            if (Volatile.Read(ref current).DoNext())
            {
                wait.Reset();
            }
            else
            {
                wait.SpinOnce(sleep1Threshold: -1);
            }
        }
    }

    private sealed class Phase(Action<int> part, int parts)
    {
        private int next;
        private int done;
        private Exception? failed;

        internal bool AllDone => Volatile.Read(ref done) == parts;

        internal void Rethrow()
        {
            if (Volatile.Read(ref failed) is { } e)
            {
                throw new InvalidOperationException("A part of the work failed.", e);
            }
        }

        internal bool DoNext()
        {
            if (Volatile.Read(ref next) >= parts)
            {
                return false;
            }

            var mine = Interlocked.Increment(ref next) - 1;
            if (mine >= parts)
            {
                return false;
            }

            try
            {
                part(mine);
            }
            catch (Exception e)
            {
                // Told where the caller is; a helper's exception would end the program.
                Volatile.Write(ref failed, e);
            }

            Interlocked.Increment(ref done);
            return true;
        }
    }
}
