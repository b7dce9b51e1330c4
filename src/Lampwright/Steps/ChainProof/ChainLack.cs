using System.Globalization;

namespace Lampwright.Steps.ChainProof;

/// <summary>What a stock lacks: why there is no chain, or which value would make the best one better.</summary>
public static class ChainLack
{
    // A value that betters the worst error by less than this share is not worth a purchase.
    private static readonly double WorthIt = 0.2;

    /// <summary>The result where there is nothing to search.</summary>
    internal static ChainSearchResult Impossible(ChainModel model, ChainTold told)
    {
        var spec = model.Spec;
        var missing =
            model.Wanted.Length == 0 ? Of(ChainLimit.NothingWanted, "No wanted current is a number above zero.")
            : !model.Alike && model.Wanted.Length > model.Combinations
                ? Of(
                    ChainLimit.TooFewSwitches,
                    Text(
                        $"{model.Wanted.Length} steps are wanted; {spec.Switches} switches thrown one after another give {model.Combinations}."
                    )
                )
            : Of(ChainLimit.NoStock, ChainEmpty.Words(spec));
        return ChainSearchResult.None(told, true, 0, missing, null);
    }

    /// <summary>The result where no chain keeps the limits.</summary>
    internal static ChainSearchResult NoChain(
        ChainModel model,
        ChainTold told,
        bool proven,
        long boxes,
        ChainCertificate? certificate,
        CancellationToken stop
    )
    {
        var missing =
            stop.IsCancellationRequested || !proven
                ? Of(ChainLimit.Together, "The search ended before it found a chain that keeps every limit.")
                : Why(model);
        return ChainSearchResult.None(told, proven, boxes, missing, certificate);
    }

    /// <summary>The value that would better the worst error most, null where none is worth it.</summary>
    /// <remarks>One position at a time is made free between the least and the greatest value, all others kept.</remarks>
    /// <param name="spec">What was asked.</param>
    /// <param name="found">What was found.</param>
    public static ChainMissing? Better(ChainSearchSpec spec, ChainSearchResult found)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(found);
        if (!found.Found)
        {
            return null;
        }

        PositionParts[] picked = [.. found.Parts];
        var now = found.WorstError;
        var wanted = found
            .Steps.MaxBy(s => spec.Objective == ChainObjective.Nominal ? Math.Abs(s.Error) : s.WorstError)!
            .WantedA;
        (int Position, double Ohm, double Error)? best = null;
        for (var k = spec.Fixed is null ? 0 : 1; k < picked.Length; k++)
        {
            var (ohm, e) = Free(spec, picked, k, now);
            if (e < (best?.Error ?? (now * (1 - WorthIt))))
            {
                best = (k, ohm, e);
            }
        }

        return best is not { } b
            ? null
            : new(
                null,
                wanted,
                b.Position,
                b.Ohm,
                Power(spec, picked, b.Position, b.Ohm),
                b.Error,
                Text(
                    $"{b.Ohm:0.####} ohm in place of {picked[b.Position].Ohm:0.####} ohm ({Place(b.Position)}) would bring the worst error from {now:0.## %} to {b.Error:0.## %}."
                )
            );
    }

    // Coarse to fine over the logarithm of the resistance; each level is one model whose freed position has the values of a grid.
    private static (double Ohm, double Error) Free(ChainSearchSpec spec, PositionParts[] picked, int k, double now)
    {
        // What is no better than now is not computed to its end.
        var (best, error, width) = (picked[k].Ohm, now, Math.Log(4));
        for (var level = 0; level < 3; level++, width /= 16)
        {
            var centre = Math.Log(best);
            PositionParts[][] grid =
            [
                .. Enumerable
                    .Range(-16, 33)
                    .Select(i => new[] { Bought(picked[k], Math.Exp(centre + (width * i / 16))) }),
            ];
            IEnumerable<PositionParts[]> others = picked
                .Where((_, j) => j > 0 && j != k)
                .Select(p => new[] { p })
                .Concat(k > 0 ? grid : []);
            PositionParts[][] switched = [.. others.OrderBy(v => v[0].Ohm)];
            var model = new ChainModel(
                spec,
                k == 0
                    ? grid
                    :
                    [
                        [picked[0]],
                    ],
                switched
            );
            var (errors, limits) = (new ChainError(model), new ChainLimits(model));
            int[] at =
            [
                .. picked.Select((p, j) => j == 0 ? 0 : Array.FindIndex(switched, v => ReferenceEquals(v[0], p))),
            ];
            foreach (var value in grid)
            {
                at[k] = Array.IndexOf(k == 0 ? grid : switched, value);
                var e = limits.Broken(at, at) is null ? errors.Of(at, error) : double.PositiveInfinity;
                if (e < error)
                {
                    (best, error) = (value[0].Ohm, e);
                }
            }
        }

        return (best, error);
    }

    private static PositionParts Bought(PositionParts place, double ohm) =>
        new(Joint.Single, place.First with { Ohm = ohm, AllowedW = 1e9, Count = null });

    private static double Power(ChainSearchSpec spec, PositionParts[] picked, int k, double ohm)
    {
        var parts = (PositionParts[])picked.Clone();
        parts[k] = Bought(picked[k], ohm);
        return ChainCheck.PowerW(spec, parts, k);
    }

    // Which limit is it? Each is lifted in turn; the first whose absence lets a chain through is named.
    private static ChainMissing Why(ChainModel model)
    {
        var spec = model.Spec with { WithCertificate = false, MostBoxes = Math.Min(model.Spec.MostBoxes, 200_000) };
        var bright = spec.Driver.SenseOhm(Math.Min(model.MostA, 1e9));
        if (
            Lifted(
                spec with
                {
                    Stock = [.. spec.Stock.Select(p => p with { AllowedW = 1e12 })],
                    Fixed = spec.Fixed is { } f ? f with { AllowedW = 1e12 } : null,
                }
            ) is
            { } strong
        )
        {
            var heaviest = Enumerable
                .Range(0, strong.Length)
                .Select(k => (k, Watts: ChainCheck.PowerW(spec, strong, k)))
                .MaxBy(p => p.Watts);
            return new(
                ChainLimit.Power,
                null,
                heaviest.k,
                strong[heaviest.k].Ohm,
                heaviest.Watts,
                null,
                Text(
                    $"Every chain overloads a part: the best one without that limit needs {heaviest.Watts:0.##} W allowed at {strong[heaviest.k].Ohm:0.####} ohm ({Place(heaviest.k)})."
                )
            );
        }

        if (Lifted(spec with { MostA = 1e12, SwitchA = null, CornerMostA = null }) is { } dark)
        {
            return new(
                ChainLimit.MostCurrent,
                model.MostA,
                0,
                bright,
                null,
                null,
                Text(
                    $"Every chain gives more than {Math.Min(model.MostA, spec.CornerMostA ?? double.MaxValue):0.###} A{(spec.CornerMostA < model.MostA ? " when everything is off to the bright side" : "")}: with all closed at least {bright:0.####} ohm are needed, the stock comes to {ChainCheck.Brightest(spec, dark):0.####} ohm."
                )
            );
        }

        if (Lifted(spec with { LeastA = null, CornerLeastA = null }) is not null)
        {
            var least = spec.LeastA ?? spec.CornerLeastA;
            return new(
                ChainLimit.LeastCurrent,
                least,
                null,
                least > 0 ? spec.Driver.SenseOhm(least.Value) : null,
                null,
                null,
                Text(
                    $"Every chain falls below {least:0.###} A with all switches open: smaller values, or fewer switches, are needed."
                )
            );
        }

        if (
            Lifted(spec with { Stock = [.. spec.Stock.Select(p => p with { Count = null })] }) is { } many
            && ChainRefused.Lacks(spec, many) is { } lacks
        )
        {
            return Of(ChainLimit.Counts, $"The drawer has too few: {lacks} would make a chain.");
        }

        return Of(
            ChainLimit.Together,
            "No chain of this stock keeps greatest current, least current, power and counts together."
        );
    }

    private static PositionParts[]? Lifted(ChainSearchSpec spec)
    {
        var (usable, _, _) = ChainStock.Sorted(spec);
        var model = new ChainModel(spec, usable);
        var found = ChainSearch.Quick(model);
        return found is null ? null : new ChainPicks(model, new(model)).Of(found);
    }

    private static ChainMissing Of(ChainLimit limit, string words) => new(limit, null, null, null, null, null, words);

    private static string Place(int k) => k == 0 ? "the fixed resistor" : Text($"r{k}");

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
