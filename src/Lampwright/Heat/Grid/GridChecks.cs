using System.Globalization;

namespace Lampwright.Heat.Grid;

/// <summary>What must hold before a grid is laid: slips of the caller throw, slips of the maker are told.</summary>
internal static class GridChecks
{
    /// <summary>Why the problem has no answer, or null.</summary>
    internal static string? Trouble(GridSpec spec)
    {
        Guard.Positive(spec.AcrossM);
        Guard.Positive(spec.AlongM);
        Guard.Positive(spec.BaseThicknessM);
        Guard.Positive(spec.ConductivityWPerMK);
        Guard.Positive(spec.FinConductivityWPerMK ?? 1);
        Guard.Positive(spec.CellM);
        foreach (var film in Films(spec.Films))
        {
            Guard.InRange(film, 0, double.MaxValue);
        }

        foreach (var source in spec.Sources)
        {
            Guard.Positive(source.WidthM);
            Guard.Positive(source.DepthM);
            Guard.Finite(source.CentreAcrossM);
            Guard.Finite(source.CentreAlongM);
            Guard.InRange(source.PowerW, 0, double.MaxValue);
        }

        return Fins(spec) ?? Sources(spec) ?? Ways(spec);
    }

    private static string? Fins(GridSpec spec)
    {
        if (spec.Fins.Count == 0)
        {
            return null;
        }

        Guard.Positive(spec.FinHeightM);
        var end = 0.0;
        foreach (var fin in spec.Fins.OrderBy(f => f.FromM))
        {
            Guard.Positive(fin.ThicknessM);
            Guard.Finite(fin.FromM);
            if (fin.FromM < end - 1e-9)
            {
                return $"The fin from {Mm(fin.FromM)} on begins before {Mm(end)}, where its neighbour or the base ends.";
            }

            end = fin.FromM + fin.ThicknessM;
        }

        return end > spec.AcrossM + 1e-9
            ? $"The last fin ends at {Mm(end)}; the base is {Mm(spec.AcrossM)} across."
            : null;
    }

    private static string? Sources(GridSpec spec)
    {
        if (spec.Sources.Count == 0 || !(spec.PowerW > 0))
        {
            return "No source gives any heat.";
        }

        foreach (var s in spec.Sources)
        {
            if (
                s.CentreAcrossM - s.WidthM / 2 < -1e-9
                || s.CentreAcrossM + s.WidthM / 2 > spec.AcrossM + 1e-9
                || s.CentreAlongM - s.DepthM / 2 < -1e-9
                || s.CentreAlongM + s.DepthM / 2 > spec.AlongM + 1e-9
            )
            {
                return $"The source of {Mm(s.WidthM)} by {Mm(s.DepthM)} at {Mm(s.CentreAcrossM)}, {Mm(s.CentreAlongM)} reaches beyond the base of {Mm(spec.AcrossM)} by {Mm(spec.AlongM)}.";
            }
        }

        return null;
    }

    private static string? Ways(GridSpec spec)
    {
        var f = spec.Films;
        var fins = spec.Fins.Count > 0;
        var covered = fins && spec.Fins.Sum(x => x.ThicknessM) > spec.AcrossM - 1e-9;
        var any =
            f.AboveWPerM2K > 0
            || f.AcrossEdgesWPerM2K > 0
            || f.AlongEdgesWPerM2K > 0
            || (!covered && f.BelowWPerM2K > 0)
            || (fins && (f.FinTipsWPerM2K > 0 || (!covered && f.FinSidesWPerM2K > 0)));
        return any ? null : "No face has a film that carries heat away.";
    }

    private static double[] Films(GridFilms f) =>
        [
            f.BelowWPerM2K,
            f.FinSidesWPerM2K,
            f.FinTipsWPerM2K,
            f.AboveWPerM2K,
            f.AcrossEdgesWPerM2K,
            f.AlongEdgesWPerM2K,
        ];

    private static string Mm(double metres) => (metres * 1e3).ToString("0.###", CultureInfo.InvariantCulture) + " mm";
}
