using Lampwright.Heat;

namespace Lampwright.References.Heat;

public sealed class FinTests
{
    // What a fin takes is film x sides x rise x efficiency; a fin without end is one of 30 m.
    private static double HeatW(double film, double k, double perimeter, double area, double length, double rise)
    {
        var l = Math.Min(length, 30);
        return film * perimeter * l * rise * Fin.Efficiency(Math.Sqrt(film * perimeter / (k * area)) * l);
    }

    // tanh(mL)/(mL); half of the last printed digit. [derived]
    [Theory]
    [InlineData("H.FN-01a", 0.2, 0.98688)]
    [InlineData("H.FN-01a", 1, 0.76159)]
    [InlineData("H.FN-01a", 2, 0.48201)]
    [InlineData("H.FN-01b", 0.5, 0.92423)]
    [InlineData("H.FN-01b", 1.5, 0.60343)]
    [InlineData("H.FN-01b", 3, 0.33168)]
    public void Efficiency(string id, double mL, double efficiency) =>
        Check.Absolute(id, efficiency, Fin.Efficiency(mL), 5e-6, $"mL {mL}");

    // Incropera Ex. 3.9 p. 145: endless rod of 5 mm; printed values are rounded. [published, second-hand]
    [Theory]
    [InlineData("H.FN-02a", 398, 8.3)]
    [InlineData("H.FN-02a", 14, 1.6)]
    [InlineData("H.FN-02b", 180, 5.6)]
    public void Endless_rod(string id, double k, double heat)
    {
        const double D = 0.005;
        var q = HeatW(100, k, Math.PI * D, Math.PI * D * D / 4, double.PositiveInfinity, 75);
        Check.Relative(id, heat, q, 0.03, $"d 5 mm, h 100, k {k}, 100 and 25 degC");
    }

    // Kreith Ex. 2.6 p. 99: copper pin. The printed 0.140 W is with its insulated tip. [published, second-hand]
    [Fact]
    public void Copper_pin()
    {
        const double D = 0.0025;
        double Q(double length) => HeatW(10, 396, Math.PI * D, Math.PI * D * D / 4, length, 70);
        Check.Relative("H.FN-05", 0.865, Q(double.PositiveInfinity), 0.003, "d 2.5 mm, h 10, k 396, endless");
        Check.Relative("H.FN-05", 0.140, Q(0.025 + D / 4), 0.003, "d 2.5, L 25 mm with corrected length");
    }

    // Shabany 2010, Ex. 7.1 p. 137 (inputs). [derived]
    [Fact]
    public void Plate_fin()
    {
        double Q(double length) => HeatW(30, 210, 0.084, 8e-5, length, 65);
        const string Inputs = "40 x 2 mm, L 30 mm, h 30, k 210, 90 and 25 degC";
        Check.Relative("H.FN-10", 13.37, Q(double.PositiveInfinity), 1e-3, Inputs);
        Check.Relative("H.FN-10", 4.704, Q(0.030), 1e-3, Inputs);
        Check.Relative("H.FN-10 corrected length", 4.840, Q(0.030 + 8e-5 / 0.084), 1e-3, Inputs);
    }

    // Cengel, solutions manual ch. 15. [published]
    [Fact]
    public void Pin_of_a_card() =>
        Check.Relative("H.FN-12", 0.973, Fin.Efficiency(14.40 * 0.02), 1e-3, "m 14.40, L 0.02");

    // Incropera Ex. 3.2 p. 107: chip on aluminium, both faces cooled. [published, second-hand]
    [Fact]
    public void Chip_on_a_plate()
    {
        var below = ContactLayer.ResistanceKPerW(0.008, 239, 1) + 0.9e-4 + 1 / 100.0;
        var rise = 1e4 / (100 + 1 / below);
        Check.Absolute("H.FN-13", 75.3, 25 + rise, 0.05, "1e4 W/m2, epoxy 0.9e-4, 8 mm k 239, h 100, 25 degC");
    }

    // Cengel Ex. 3-5: transistor on a copper plate. [published, second-hand]
    [Fact]
    public void Transistor_on_copper()
    {
        // the printed contact of 42000 W/m2K as two boundaries of half its resistance
        var contact = ContactLayer.ResistanceKPerW(0, 1, 8e-4, 0.5 / 42000);
        var plate = ContactLayer.ResistanceKPerW(0.01, 386, 0.01);
        var heat = 50 / (contact + plate + 4.0);
        const string Inputs = "contact 42000 on 8 cm2, copper 10 mm on 100 cm2, h 25, 70 and 20 degC";
        Check.Relative("H.FN-14", 4.0324, contact + plate + 4.0, 1e-3, Inputs);
        Check.Relative("H.FN-14", 12.4, heat, 1e-3, Inputs);
        Check.Absolute("H.FN-14", 0.37, heat * contact, 0.005, Inputs);
    }

    // Holman Ex. 2-11: two steel bars. [published, second-hand]
    [Fact]
    public void Two_steel_bars()
    {
        const double A = Math.PI * 0.03 * 0.03 / 4;
        var bar = ContactLayer.ResistanceKPerW(0.1, 16.3, A);
        var contact = ContactLayer.ResistanceKPerW(0, 1, A, 0.5 / 1893.93);
        var heat = 100 / (2 * bar + contact);
        Check.Relative("H.FN-15", 5.52, heat, 0.002, "d 30, L 100 mm, k 16.3, contact 1893.93, 100 K");
        Check.Relative("H.FN-15", 4.13, heat * contact, 0.002, "contact drop");
    }

    // Cengel Ex. 3-4: equivalent thickness of an aluminium joint. [published, second-hand]
    [Fact]
    public void Joint_as_a_thickness() =>
        Check.Relative("H.TI-01", 1.0 / 11000, ContactLayer.ResistanceKPerW(0.0215, 237, 1), 0.003, "2.15 cm, k 237");

    // Definition. [derived]
    [Fact]
    public void Electrical_resistance_made_real() =>
        Check.Relative("H.LD-01", 50.0 / 3, JunctionResistance.RealKPerW(10, true, 0.40), 1e-12, "10 K/W, 0.40");

    // Sedra and Smith Ex. 14.4, 14.5 p. 1251, 1253. [published, second-hand]
    [Theory]
    [InlineData(25, 1, 62.5, 0, 0, 87.5)]
    [InlineData(50, 13.1, 3.12, 0.5, 4, 150)]
    [InlineData(50, 32, 3.12, 0, 0, 150)]
    public void Power_transistor(double ambient, double heat, double a, double b, double c, double junction) =>
        Check.Relative(
            "H.LD-05",
            junction,
            JunctionResistance.JunctionK(ambient, heat, a, b, c),
            0.005,
            $"{heat} W at {ambient} degC through {a}, {b}, {c} K/W"
        );

    // Sugandhi, thyristor textbook, Ex. 3.1. [published, second-hand]
    [Fact]
    public void Thyristor() =>
        Check.Absolute(
            "H.LD-06",
            72.5,
            JunctionResistance.JunctionK(50, 150, 0.02, 0.05, 0.08),
            1e-9,
            "150 W, 50 degC"
        );

    // IEC 62368-1 TS1 [published, second-hand]; ISO 13732-1 [memory].
    [Theory]
    [InlineData("H.TT-01", TouchStandard.Equipment, TouchMaterial.Metal, 61, 48)]
    [InlineData("H.TT-02", TouchStandard.Equipment, TouchMaterial.Metal, 5, 60)]
    [InlineData("H.TT-04", TouchStandard.BurnThreshold, TouchMaterial.Metal, 28800, 43)]
    public void Touch_limits(string id, TouchStandard standard, TouchMaterial material, double seconds, double limit) =>
        Check.Absolute(
            id,
            limit + 273.15,
            TouchLimits.LimitK(standard, material, seconds)!.Value,
            1e-9,
            $"{standard}, {material}, {seconds} s"
        );

    // Incropera Ex. 3.10 p. 156: finned cylinder; with 0.95 from the chart, and by Bessel functions. [published, second-hand]
    [Fact]
    public void Finned_cylinder()
    {
        const string Inputs = "t 6, L 20, r1 25 mm, 5 fins on 150 mm, k 186, h 50, 500 and 300 K";
        const double R2C = 0.048;
        var eta = Fin.AnnularEfficiency(50, 186, 0.006, 0.025, R2C);
        Check.Absolute("H.FN-03", 0.9786, eta, 1e-4, Inputs);
        double Heat(double efficiency) =>
            50
            * 200
            * (
                (5 * efficiency * 2 * Math.PI * ((R2C * R2C) - (0.025 * 0.025)))
                + (2 * Math.PI * 0.025 * (0.15 - (5 * 0.006)))
            );
        Check.Relative("H.FN-03", 690, Heat(0.95), 0.002, Inputs + ", chart");
        Check.Relative("H.FN-03", 704.7, Heat(eta), 0.002, Inputs + ", Bessel");
        Check.Relative("H.FN-03", 236, 50 * 2 * Math.PI * 0.025 * 0.15 * 200, 0.002, Inputs + ", without fins");
    }

    // EES function reference, eta_fin_constantCS_convtip. [published]
    [Fact]
    public void Fin_with_a_broad_tip()
    {
        var mL = Math.Sqrt(20 * 0.01 / (15 * 1e-3)) * 0.1;
        Check.Relative(
            "H.FN-06",
            0.8680,
            Fin.EfficiencyWithTip(mL, 1e-3 / (0.01 * 0.1)),
            1e-4,
            "h 20, L 0.1, A 1e-3, P 0.01, k 15"
        );
        Check.Relative(
            "H.FN-06 corrected length",
            0.8534,
            Fin.Efficiency(mL * (1 + (1e-3 / 0.01 / 0.1))),
            1e-4,
            "the same"
        );
    }

    // Lienhard Ex. 4.8 p. 172: aluminium rod. [published, second-hand]
    [Fact]
    public void Tip_of_a_rod()
    {
        const double D = 0.02,
            L = 0.08;
        var mL = Math.Sqrt(4 * 120 / (205 * D)) * L;
        const string Inputs = "d 20, L 80 mm, k 205, h 120, 150 and 26 degC";
        Check.Absolute("H.FN-08", 0.8656, mL, 1e-4, Inputs);
        Check.Absolute("H.FN-08", 111.43, 26 + (124 * Fin.TipOverRoot(mL, D / 4 / L)), 0.02, Inputs);
        Check.Absolute("H.FN-08", 114.66, 26 + (124 * Fin.TipOverRoot(mL, 0)), 0.02, Inputs + ", insulated tip");
    }
}
