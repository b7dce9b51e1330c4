using System.Collections.Frozen;

namespace Lampwright.Quantities;

/// <summary>The one table of units, with all spellings that are read.</summary>
/// <remarks>
/// Source: BIPM, The International System of Units, 9th edition (2019), tables 2, 4, 7 and 8; inch, pound and their kin by the
/// international yard and pound agreement of 1959 (1 in = 25.4 mm, 1 lb = 0.45359237 kg exactly); the conventional water
/// column at 4 °C, 9.80665 Pa per millimetre. From memory. Checked by: invariant (round trips) and reference rows.
/// The millikelvin is missing on purpose: <c>W/mK</c> would read as watts per millikelvin.
/// </remarks>
public static class UnitTable
{
    private static readonly double Pound = 0.45359237;
    private static readonly double StandardGravity = 9.80665;
    private static readonly double Inch = 0.0254;

    private static readonly Dictionary<char, double> PrefixFactors = new()
    {
        ['p'] = 1e-12,
        ['n'] = 1e-9,
        ['u'] = 1e-6,
        ['m'] = 1e-3,
        ['c'] = 1e-2,
        ['d'] = 1e-1,
        ['h'] = 1e2,
        ['k'] = 1e3,
        ['M'] = 1e6,
        ['G'] = 1e9,
    };

    private static readonly List<Unit> Listed = [];
    private static readonly FrozenDictionary<string, Unit> BySpelling = Build();

    /// <summary>Every unit once, in the order of the table.</summary>
    public static IReadOnlyList<Unit> All => Listed;

    /// <summary>Every spelling that is read.</summary>
    public static IEnumerable<string> Spellings => BySpelling.Keys;

    /// <summary>The unit of a spelling, or null. Upper and lower case count: mW is not MW.</summary>
    public static Unit? Find(ReadOnlySpan<char> spelling) =>
        BySpelling.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(spelling, out var unit) ? unit : null;

    private static FrozenDictionary<string, Unit> Build()
    {
        var table = new Dictionary<string, Unit>(StringComparer.Ordinal);

        void Add(string names, double factor, Dimension dimension, string prefixes = "", double offset = 0)
        {
            var spellings = names.Split(' ');
            Enter(spellings, "", 1);
            foreach (var prefix in prefixes)
            {
                Enter(spellings, prefix.ToString(), PrefixFactors[prefix]);
            }

            void Enter(string[] all, string prefix, double scale)
            {
                // Divided where the prefix is small, so that 1 mm is exactly 0.001 and not a rounding beside it.
                var scaled = scale < 1 ? factor / Math.Round(1 / scale) : factor * scale;
                var unit = new Unit(prefix + all[0], scaled, offset, dimension);
                Listed.Add(unit);
                foreach (var spelling in all.Where(s => prefix.Length == 0 || !s.EndsWith('s') || s == "s"))
                {
                    table.Add(prefix + spelling, unit);
                    if (prefix == "u")
                    {
                        table.Add("\u00B5" + spelling, unit);
                        table.Add("\u03BC" + spelling, unit);
                    }
                }
            }
        }

        Add("m metre meter", 1, Dimension.Length, "numcdk");
        Add("in inch inches ″ \"", Inch, Dimension.Length);
        Add("ft foot feet ′", 12 * Inch, Dimension.Length);
        Add("mil thou", Inch / 1000, Dimension.Length);
        Add("L l litre liter", 1e-3, Dimension.Volume, "mcd");
        Add("g gram grams", 1e-3, Dimension.Mass, "umk");
        Add("t tonne", 1e3, Dimension.Mass);
        Add("lb lbs pound", Pound, Dimension.Mass);
        Add("oz ounce", Pound / 16, Dimension.Mass);
        Add("s sec second seconds", 1, Dimension.Time, "num");
        Add("min minute minutes", 60, Dimension.Time);
        Add("h hr hour hours", 3600, Dimension.Time);
        Add("d day days", 86400, Dimension.Time);
        Add("Hz hertz", 1, Dimension.Frequency, "mkMG");
        Add("rpm", 2 * Math.PI / 60, Dimension.Angle / Dimension.Time);
        Add("K kelvin", 1, Dimension.TemperatureDifference);
        Add("degC °C ℃ celsius", 1, Dimension.Temperature, "", 273.15);
        Add("degF °F ℉ fahrenheit", 5.0 / 9, Dimension.Temperature, "", 459.67 * 5 / 9);
        Add("deg ° degree degrees", Math.PI / 180, Dimension.Angle);
        Add("rad radian radians", 1, Dimension.Angle, "um");
        Add("turn turns rev", 2 * Math.PI, Dimension.Angle);
        Add("sr", 1, Dimension.Angle.ToPower(2));
        Add("A amp amps ampere", 1, Dimension.Current, "numk");
        Add("V volt volts", 1, Dimension.Voltage, "numk");
        Add("ohm Ω \u2126 ohms", 1, Dimension.Resistance, "umkM");
        Add("W watt watts", 1, Dimension.Power, "numkM");
        Add("VA", 1, Dimension.Power, "k");
        Add("F farad", 1, Dimension.Capacitance, "pnum");
        Add("H henry", 1, Dimension.Inductance, "num");
        Add("Ah", 3600, Dimension.Charge, "m");
        Add("Wh", 3600, Dimension.Torque, "mk");
        Add("J joule", 1, Dimension.Torque, "umkM");
        Add("N newton", 1, Dimension.Force, "mk");
        Add("lbf", Pound * StandardGravity, Dimension.Force);
        Add("ozf", Pound * StandardGravity / 16, Dimension.Force);
        Add("kgf", StandardGravity, Dimension.Force);
        Add("Nm", 1, Dimension.Torque, "mk");
        Add("Ncm", 0.01, Dimension.Torque);
        Add("Nmm", 0.001, Dimension.Torque);
        Add("Pa pascal", 1, Dimension.Pressure, "mhkMG");
        Add("bar", 1e5, Dimension.Pressure, "m");
        Add("psi", Pound * StandardGravity / (Inch * Inch), Dimension.Pressure);
        Add("mmH2O", StandardGravity, Dimension.Pressure);
        Add("inH2O", StandardGravity * 25.4, Dimension.Pressure);
        Add("atm", 101325, Dimension.Pressure);
        Add("cfm CFM", Math.Pow(12 * Inch, 3) / 60, Dimension.VolumeFlow);
        Add("cd candela", 1, Dimension.LuminousIntensity, "mk");
        Add("lm lumen lumens", 1, Dimension.LuminousFlux, "mk");
        Add("lx lux", 1, Dimension.Illuminance, "mk");
        Add("fc footcandle", 1 / Math.Pow(12 * Inch, 2), Dimension.Illuminance);
        Add("% percent", 0.01, Dimension.None);
        Add("ppm", 1e-6, Dimension.None);
        Add("stops stop", 1, Dimension.Stops);
        return table.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
