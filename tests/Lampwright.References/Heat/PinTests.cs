using Lampwright.Heat;

namespace Lampwright.References.Heat;

/// <summary>Pins, plates on heat pipes, turbulent channels, noise: what stands in no row of the house's list of heat references.</summary>
public sealed class PinTests
{
    // Kreith, Manglik, Bohn, 7th ed., Ex. 7.6: methane at 20 degC across five staggered rows of 4 cm tubes, pitches 8 and 6 cm, 10 m/s before
    // them; k 0.0332, nu 1.627e-5, Pr 0.73; the book takes 0.92 for five rows and 0.36 for the power of Pr. [published, second-hand]
    [Fact]
    public void Staggered_rows_of_Kreith()
    {
        const double Re = 20 * 0.04 / 0.00001627;
        var book = 0.92 * 0.35 * Math.Pow(8.0 / 6, 0.2) * Math.Pow(Re, 0.6) * Math.Pow(0.73, 0.36) * 0.0332 / 0.04;
        var ours = PinFilm.Nusselt(Re, 0.73, staggered: true, 8.0 / 6, 5) * 0.0332 / 0.04;
        Check.Relative("Kreith Ex. 7.6", book, ours, 0.015, "methane, 10 m/s, D 40, ST 80, SL 60 mm, 5 rows");
        Check.Relative("Kreith Ex. 7.6", 166, ours, 0.02, "the same, rounded");
    }

    // Incropera Ex. 7.6 (6th ed. p. 440): air 15 degC, 6 m/s, tubes of 16.4 mm at 70 degC, seven staggered rows, SL 34.3, ST 31.3 mm;
    // nu 14.82e-6, k 0.0253, Pr 0.71 (0.701 at the wall): Re 13943, Nu 87.9, h 135.6 W/m2K. The book takes 0.95 for seven rows and a factor of
    // 0.35 x 0.98 rounded to 0.34; ours lies 2.1 % above. [memory]
    [Fact]
    public void Staggered_rows_of_Incropera()
    {
        const double Re = 31.3 / (31.3 - 16.4) * 6 * 0.0164 / 14.82e-6;
        const string Inputs = "air, 6 m/s, D 16.4, ST 31.3, SL 34.3 mm, 7 rows staggered";
        Check.Relative("Incropera Ex. 7.6", 13943, Re, 2e-3, Inputs);
        var nusselt = PinFilm.Nusselt(Re, 0.71, staggered: true, 31.3 / 34.3, 7) * Math.Pow(0.71 / 0.701, 0.25);
        Check.Relative("Incropera Ex. 7.6", 87.9, nusselt, 0.025, Inputs);
        Check.Relative("Incropera Ex. 7.6", 135.6, nusselt * 0.0253 / 0.0164, 0.025, Inputs);
    }

    // Brodkey and Hershey, Ex. 12.17 p. 630: eight rows of 0.75 in tubes in line, pitches 1.5 and 3 diameters, air from 20 to about 30 degC at
    // 7 m/s before them: h as 0.27 Re^0.63 Pr^0.36 with 0.98 for the rows. [published, second-hand]
    [Fact]
    public void Rows_in_line_of_Brodkey()
    {
        const double D = 0.75 * 0.0254,
            Re = 21 * D / 1.56e-5;
        var book = 0.98 * 0.27 * Math.Pow(Re, 0.63) * Math.Pow(0.71, 0.36);
        Check.Relative(
            "Brodkey Ex. 12.17",
            book,
            PinFilm.Nusselt(Re, 0.71, staggered: false, 0.5, 8),
            0.015,
            "D 19.05 mm, ST 1.5 D, SL 3 D, 8 rows in line, 7 m/s"
        );
    }

    // The same example's loss of pressure by Gunter and Shaw, 1.92 Re^-0.145 with the mass velocity 24.72 kg/m2s and density of about 1.17.
    // [published, second-hand; the book's own density is not given, so that only the form is held]
    [Fact]
    public void Loss_across_rows_of_Brodkey()
    {
        const double D = 0.75 * 0.0254,
            ST = 1.5 * D,
            SL = 3 * D;
        var air = Air.At(299, 101325);
        var dv = 4 * ((ST * SL) - (Math.PI * D * D / 4)) / (Math.PI * D);
        var g = 24.72;
        var re = dv * g / air.Viscosity;
        var book =
            1.92
            * Math.Pow(re, -0.145)
            * g
            * g
            / (2 * air.Density * (dv / (8 * SL)) * Math.Pow(ST / dv, 0.4) * Math.Pow(ST / SL, 0.6));
        var ours = PinFriction.LossPa(
            air,
            g / air.Density,
            PinFriction.VolumetricDiameterM(ST, SL, D),
            PinFriction.Arrangement(dv, ST, SL),
            8 * SL
        );
        Check.Relative("Brodkey Ex. 12.17", book, ours, 1e-9, "G 24.72 kg/m2s, 8 rows");
    }

    // Factor for few rows, Cengel table 7-3. [memory]
    [Theory]
    [InlineData(false, 1, 0.70)]
    [InlineData(false, 2, 0.80)]
    [InlineData(false, 5, 0.93)]
    [InlineData(false, 13, 0.99)]
    [InlineData(true, 1, 0.64)]
    [InlineData(true, 3, 0.84)]
    [InlineData(true, 7, 0.96)]
    [InlineData(true, 20, 1.0)]
    public void Few_rows(bool staggered, int rows, double factor) =>
        Check.Absolute("Cengel table 7-3", factor, PinFilm.FewRows(staggered, rows), 1e-9, $"{rows} rows");

    // Zukauskas's branches at the middle of their ranges, Cengel table 7-2, Pr 0.71, deep bank. [memory]
    [Theory]
    [InlineData(false, 30, 0.9, 0.4)]
    [InlineData(false, 350, 0.52, 0.5)]
    [InlineData(false, 20000, 0.27, 0.63)]
    [InlineData(true, 100, 1.04, 0.4)]
    [InlineData(true, 20000, 0.35, 0.6)]
    public void Branches_of_Zukauskas(bool staggered, double reynolds, double factor, double power) =>
        Check.Relative(
            "Cengel table 7-2",
            factor * Math.Pow(reynolds, power) * Math.Pow(0.71, 0.36),
            PinFilm.Nusselt(reynolds, 0.71, staggered, 1, 20),
            1e-9,
            $"Re {reynolds}"
        );

    // Schmidt's closed form against the exact fin of Bessel functions, as in Incropera fig. 3.19. [derived]
    [Theory]
    [InlineData(10, 2)]
    [InlineData(30, 3)]
    [InlineData(60, 4)]
    [InlineData(30, 6)]
    public void Plate_about_a_pipe(double film, double ratio)
    {
        const double R = 0.003,
            T = 0.0004,
            K = 200;
        var exact = Fin.AnnularEfficiency(film, K, T, R, ratio * R);
        Check.Relative(
            "Schmidt 1949",
            exact,
            Fin.AroundPipe(film, K, T, R, ratio * R),
            0.012,
            $"h {film}, R/r {ratio}"
        );
    }

    // Gnielinski at Re 1e5, Pr 1.2, Darcy f 0.0185: test value of the ht library. [memory]
    [Fact]
    public void Turbulent_film() =>
        Check.Relative(
            "Gnielinski 1976",
            254.62682749359632,
            TurbulentChannel.Nusselt(1e5, 1.2, 0.0185 / 4),
            1e-9,
            "Re 1e5, Pr 1.2, f 0.0185"
        );

    // Petukhov at Re 1e5: Darcy 0.0180. [memory, to the digits of a Moody chart]
    [Fact]
    public void Turbulent_friction() =>
        Check.Relative("Moody", 0.0180, 4 * TurbulentChannel.Friction(1e5), 0.01, "smooth, Re 1e5");

    // A fan maker's circular, noise by 50 log10 of the speed: 12 V to 7 V 11.7 dB, to 9 V 6.25 dB. [published]
    [Theory]
    [InlineData(7, -11.7)]
    [InlineData(9, -6.25)]
    public void Noise_of_a_slower_fan(double volt, double difference) =>
        Check.Absolute("fan laws, noise", difference, FanLaws.NoiseDifferenceDb(volt / 12), 0.01, $"12 to {volt} V");

    // Choi et al., Appl. Therm. Eng. 44 (2012) 50: a processor cooler with heat pipes and fan, 0.11 to 0.19 K/W. Its sizes are not told; those here
    // are of the usual kind, so that only the order of the answer is held. [published, geometry incomplete]
    [Fact]
    public void Processor_cooler_with_heat_pipes()
    {
        SinkSpec spec = new()
        {
            AcrossM = 0.04,
            AlongM = 0.04,
            BaseThicknessM = 0.004,
            ConductivityWPerMK = 200,
            Tower = new HeatPipeTower(8, 0.006, 0.4, null, 45, 0.12, 0.05, 0.0004, 0.002),
            Footprints = [new Footprint(0.02, 0.02, 0.038, 0.038)],
            Fan = new FanSpec { Curve = [new(0, 20), new(100.0 / 3600, 0)] },
        };
        var r = SinkModel.Prepare(spec).At(spec, 298.15, true, 100)!.ResistanceKPerW;
        Assert.InRange(r, 0.11 * 0.65, 0.19 * 1.35);
    }
}
