using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Lampwright.Benchmarks.Problems;

/// <summary>Distribution of a chain's current at every combination of its switches, from random samples, eight at a time.</summary>
/// <remarks>
/// Samples are drawn in numbered parts of 8,192, each with its own stream, which the workers claim: the counts, and with them the
/// percentiles, do not hang on who drew what. Of each combination the ratio R/V is counted in 4,096 bins over a range that no sample but some
/// beyond six sigma leaves; a percentile of I = 1/(R/V) is read from the counts and interpolated in its bin (a bin is about 5e-4 of the current
/// wide, a hundredth of that is left). Single precision: 1e-7.
/// </remarks>
internal sealed class ChainTolerance(ToleranceFile p)
{
    private const int PartSamples = 8192;
    private const int Block = 256;
    private const int Bins = 4096;

    private readonly float[] _from = new float[p.Combinations];
    private readonly float[] _scale = new float[p.Combinations];
    private readonly float[] _offset = new float[p.Combinations];

    /// <summary>Percentiles of the current of each combination in amperes, all closed first, counting down.</summary>
    public double[][] Percentiles()
    {
        Ranges();
        var parts = (p.Samples + PartSamples - 1) / PartSamples;
        var next = -1;
        var workers = Math.Min(Environment.ProcessorCount, parts);
        var counts = new int[workers][];
        void Work(int worker)
        {
            var mine = counts[worker] = new int[p.Combinations * Bins];
            var sampler = new Sampler(this, p);
            for (var part = Interlocked.Increment(ref next); part < parts; part = Interlocked.Increment(ref next))
            {
                sampler.Draw(part, Math.Min(PartSamples, p.Samples - (part * PartSamples)), mine);
            }
        }

        var helpers = Enumerable.Range(1, workers - 1).Select(w => Task.Run(() => Work(w))).ToArray();
        Work(0);
        Task.WaitAll(helpers);
        return [.. Enumerable.Range(0, p.Combinations).Select(c => Of(c, [.. counts.Where(n => n is not null)]))];
    }

    // Ends of R/V that hold every sample: uniform ones at their ends, contacts at six sigma.
    private void Ranges()
    {
        for (var c = 0; c < p.Combinations; c++)
        {
            double End(int side)
            {
                double Part(double r) => r * (1 + (side * p.Tolerance)) * (1 + (side * p.TempcoPerK * p.MostRiseK));
                var contact = p.ContactMedianOhm * Math.Exp(side * 6 * p.ContactSigma);
                var total = Part(p.Ohms[0]) + (p.LeadOhm * (1 + (side * p.LeadTolerance)));
                for (var k = 1; k <= p.Switches; k++)
                {
                    var r = Part(p.Ohms[k]);
                    total += ((c >> (p.Switches - k)) & 1) == 1 ? r : r * contact / (r + contact);
                }

                return total / (p.Volts * (1 - (side * p.VoltsTolerance)));
            }

            var (from, to) = (End(-1), End(1));
            _from[c] = (float)from;
            _scale[c] = (float)(Bins / Math.Max((to - from) * (1 + 1e-6), 1e-12));
            _offset[c] = (float)(-(double)_from[c] * _scale[c]);
        }
    }

    // Between neighbours in order, as the usual definition has it: place (n − 1)·share in the ascending currents.
    private double[] Of(int c, int[][] counts)
    {
        var all = new long[Bins];
        foreach (var n in counts)
        {
            for (var b = 0; b < Bins; b++)
            {
                all[b] += n[(c * Bins) + b];
            }
        }

        // Currents ascend where ratios fall.
        var found = new double[p.Percentiles.Length];
        var (bin, before) = (0, 0L);
        foreach (var i in Enumerable.Range(0, found.Length).OrderByDescending(i => p.Percentiles[i]))
        {
            var place = (1 - (p.Percentiles[i] / 100)) * (p.Samples - 1);
            while (bin < Bins - 1 && before + all[bin] <= place)
            {
                before += all[bin++];
            }

            var inside = all[bin] > 0 ? Math.Clamp((place - before + 0.5) / all[bin], 0, 1) : 0.5;
            found[i] = 1 / (_from[c] + ((bin + inside) / _scale[c]));
        }

        return found;
    }

    private sealed class Sampler
    {
        private readonly ToleranceFile _p;
        private readonly ChainTolerance _of;
        private readonly int[] _bins;
        private readonly Vector256<float>[] _totals;
        private readonly Vector256<float>[] _contacts;

        public Sampler(ChainTolerance of, ToleranceFile p)
        {
            (_of, _p) = (of, p);
            _bins = new int[p.Combinations * Block];
            _totals = new Vector256<float>[p.Combinations];
            _contacts = new Vector256<float>[p.Switches + 1];
        }

        public void Draw(int part, int samples, int[] counts)
        {
            var random = new EightStreams((ulong)part);
            for (var done = 0; done < samples; done += Block)
            {
                var now = Math.Min(Block, samples - done);
                for (var i = 0; i < now; i += 8)
                {
                    Eight(ref random, i);
                }

                for (var c = 0; c < _p.Combinations; c++)
                {
                    Count(counts.AsSpan(c * Bins, Bins), _bins.AsSpan(c * Block, now));
                }
            }
        }

        // No bin lies outside, so the checks of each index are spared; four at a time, since each waits for memory.
        private static void Count(Span<int> counts, ReadOnlySpan<int> bins)
        {
            ref var first = ref MemoryMarshal.GetReference(counts);
            ref var bin = ref MemoryMarshal.GetReference(bins);
            var i = 0;
            for (; i <= bins.Length - 4; i += 4)
            {
                Unsafe.Add(ref first, (nint)(uint)Unsafe.Add(ref bin, i))++;
                Unsafe.Add(ref first, (nint)(uint)Unsafe.Add(ref bin, i + 1))++;
                Unsafe.Add(ref first, (nint)(uint)Unsafe.Add(ref bin, i + 2))++;
                Unsafe.Add(ref first, (nint)(uint)Unsafe.Add(ref bin, i + 3))++;
            }

            for (; i < bins.Length; i++)
            {
                counts[bins[i]]++;
            }
        }

        private void Eight(ref EightStreams random, int at)
        {
            static Vector256<float> All(double x) => Vector256.Create((float)x);
            var one = Vector256<float>.One;
            var siemens = one / (All(_p.Volts) * (one + (All(_p.VoltsTolerance) * random.Symmetric())));
            var rise = All(_p.MostRiseK) * random.Unit();
            for (var k = 0; k < _p.Switches; k += 2)
            {
                var (a, b) = random.Normals();
                (_contacts[k], _contacts[k + 1]) = (Contact(a), Contact(b));
            }

            var lead = All(_p.LeadOhm) * (one + (All(_p.LeadTolerance) * random.Symmetric()));
            _totals[0] = (Part(ref random, _p.Ohms[0], rise) + lead) * siemens;
            for (var k = _p.Switches; k >= 1; k--)
            {
                var r = Part(ref random, _p.Ohms[k], rise);
                var contact = _contacts[k - 1];
                var (open, closed) = (r * siemens, r * contact / (r + contact) * siemens);
                var half = 1 << (_p.Switches - k);
                for (var c = 0; c < half; c++)
                {
                    _totals[c + half] = _totals[c] + open;
                    _totals[c] += closed;
                }
            }

            // What lies outside, beyond six sigma, is counted in the last bin: as an unsigned number it is too large.
            var most = Vector256.Create((uint)(Bins - 1));
            ref var bins = ref MemoryMarshal.GetArrayDataReference(_bins);
            for (var c = 0; c < _totals.Length; c++)
            {
                var place = Vector256.FusedMultiplyAdd(
                    _totals[c],
                    Vector256.Create(_of._scale[c]),
                    Vector256.Create(_of._offset[c])
                );
                var bin = Vector256.Min(Vector256.ConvertToInt32Native(place).AsUInt32(), most);
                bin.AsInt32().StoreUnsafe(ref bins, (nuint)((c * Block) + at));
            }
        }

        private Vector256<float> Contact(Vector256<float> normal) =>
            Vector256.Create((float)_p.ContactMedianOhm)
            * Vector256.Exp(normal * Vector256.Create((float)_p.ContactSigma));

        private Vector256<float> Part(ref EightStreams random, double ohm, Vector256<float> rise)
        {
            var one = Vector256<float>.One;
            var stated =
                Vector256.Create((float)ohm) * (one + (Vector256.Create((float)_p.Tolerance) * random.Symmetric()));
            return stated * (one + (Vector256.Create((float)_p.TempcoPerK) * random.Symmetric() * rise));
        }
    }
}
