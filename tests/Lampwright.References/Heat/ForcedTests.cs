using Lampwright.Heat;

namespace Lampwright.References.Heat;

public sealed class ForcedTests
{
    // Formula 1a, Teertstra 2000. [derived]
    [Theory]
    [InlineData(1, 0.35103)]
    [InlineData(50, 5.10855)]
    [InlineData(500, 14.26319)]
    public void Channel_film_by_Teertstra(double reStar, double nusselt) =>
        Check.Relative("H.FC-01a", nusselt, ChannelFilm.Nusselt(reStar, 0.707), 1e-4, $"Re* {reStar}, Pr 0.707");

    // VDI Heat Atlas Gb on the inlet basis. [derived]
    [Theory]
    [InlineData(1, 0.35349)]
    [InlineData(50, 5.22086)]
    [InlineData(500, 14.50471)]
    public void Channel_film_against_VDI(double reStar, double nusselt) =>
        Check.Relative("H.FC-02a", nusselt, ChannelFilm.Nusselt(reStar, 0.707), 0.05, $"Re* {reStar}, Pr 0.707");

    // Stephan; Shah and Bhatti: 1c written out here, on the inlet basis. [memory]
    [Theory]
    [InlineData(1, -0.007)]
    [InlineData(50, 0.055)]
    [InlineData(500, 0.047)]
    public void Channel_film_against_Stephan(double reStar, double difference)
    {
        const double Pr = 0.707;
        // x* = L/(Dh Re_Dh Pr) with Dh = 2b is 1/(4 Re* Pr)
        var x = 1 / (4 * reStar * Pr);
        var logMean = 7.55 + 0.024 * Math.Pow(x, -1.14) / (1 + 0.0358 * Math.Pow(x, -0.64) * Math.Pow(Pr, 0.17));
        var inlet = reStar * Pr / 2 * (1 - Math.Exp(-logMean / (reStar * Pr)));
        var ours = ChannelFilm.Nusselt(reStar, Pr);
        Check.Relative("H.FC-03", inlet, ours, 0.08, $"Re* {reStar}");
        Check.Absolute("H.FC-03", difference, ours / inlet - 1, 0.005, $"Re* {reStar}");
    }

    // Shah and London table 42; Incropera table 8.1. [memory]
    [Theory]
    [InlineData("H.FC-04a", 1, 14.227)]
    [InlineData("H.FC-04a", 1.0 / 3, 17.090)]
    [InlineData("H.FC-04a", 0.125, 20.585)]
    [InlineData("H.FC-04a", 0, 24)]
    [InlineData("H.FC-04b", 0.5, 15.548)]
    [InlineData("H.FC-04b", 0.25, 18.233)]
    public void Developed_friction_of_rectangular_ducts(string id, double aspect, double fRe) =>
        Check.Relative(id, fRe, ChannelFriction.DevelopedFRe(aspect), 1e-3, $"aspect {aspect}");

    // Shah 1978, parallel plates: our composite against it, and the composite's own values. [derived]
    [Theory]
    [InlineData(0.001, 111.57, 111.40)]
    [InlineData(0.01, 39.40, 41.95)]
    [InlineData(0.1, 25.64, 26.35)]
    public void Developing_friction(double xPlus, double shah, double composite)
    {
        var ours = ChannelFriction.ApparentFRe(xPlus, 24);
        Check.Relative("H.FC-05a", shah, ours, 0.07, $"x+ {xPlus}");
        Check.Relative("H.FC-06a", composite, ours, 1e-3, $"x+ {xPlus}");
    }

    // EES function reference, K_e_ParallelPlateHeader (Kays and London, turbulent). [published]
    [Fact]
    public void Exit_loss_of_parallel_plates() =>
        Check.Relative("H.FC-08", 0.3542, ChannelFriction.ExitK(0.4), 0.02, "Re 4000, L/D 10, sigma 0.4");

    // Incropera Ex. 7.1 p. 415. [published, second-hand]
    [Fact]
    public void Flat_plate_at_low_pressure()
    {
        const double Nu = 30.84e-6 * (101.325 / 6);
        var re = 10 * 0.5 / Nu;
        var nusselt = ForcedPlate.Nusselt(re, 0.687);
        const string Inputs = "air 300 degC, 10 m/s, 6 kPa, L 0.5 m, Ts 27 degC";
        Check.Relative("H.FC-09", 9600, re, 0.005, Inputs);
        Check.Relative("H.FC-09", 57.4, nusselt, 0.005, Inputs);
        Check.Relative("H.FC-09", 570, nusselt * 0.0364 / 0.5 * 0.5 * 273, 0.005, Inputs);
    }

    // Cengel Ex. 7-2. [memory]
    [Theory]
    [InlineData(6, 2687, 14300)]
    [InlineData(1.5, 408, 8670)]
    public void Flat_plate_at_altitude(double length, double nusselt, double heat)
    {
        const double Nu = 2.097e-5 / 0.823;
        var ours = ForcedPlate.Nusselt(8 * length / Nu, 0.7154);
        var inputs = $"plate 1.5 x 6 m, 140 and 20 degC, 8 m/s, 0.823 atm, along {length} m";
        Check.Relative("H.FC-11", nusselt, ours, 0.01, inputs);
        Check.Relative("H.FC-11", heat, ours * 0.02953 / length * 9 * 120, 0.01, inputs);
    }

    // Reference sink A: 100 x 100 mm, 20 fins of 1.0 x 30 mm, k 209, air 300 K. [derived]
    [Theory]
    [InlineData(1, 16.15, 0.9561, 0.5293)]
    [InlineData(3, 27.03, 0.9290, 0.3248)]
    public void Reference_sink_film_and_resistance(double velocity, double film, double efficiency, double resistance)
    {
        var air = Air.At(300, 101325);
        const double Gap = (0.1 - 20 * 0.001) / 19;
        var h =
            ChannelFilm.Nusselt(ChannelFilm.ReStar(velocity, Gap, 0.1, air.KinematicViscosity), air.Prandtl)
            * air.Conductivity
            / Gap;
        var eta = Fin.PlateEfficiency(h, 209, 0.001, 0.03);
        var r = 1 / (h * 19 * 0.1 * (Gap + 2 * 0.03 * eta));
        var inputs = $"sink A, U {velocity} m/s";
        Check.Relative("H.FC-12a", film, h, 1e-3, inputs);
        Check.Relative("H.FC-12a", efficiency, eta, 1e-3, inputs);
        Check.Relative("H.FC-12a", resistance, r, 1e-3, inputs);
    }

    // Reference sink A, composite friction, flat-profile ends. [derived]
    [Theory]
    [InlineData(1, 2.06)]
    [InlineData(3, 9.27)]
    public void Reference_sink_pressure(double velocity, double pressure)
    {
        var air = Air.At(300, 101325);
        const double Gap = (0.1 - 20 * 0.001) / 19;
        var inputs = $"sink A, U {velocity} m/s";
        Check.Relative("H.FC-13a", 0.007385, ChannelFriction.HydraulicDiameterM(Gap, 0.03), 1e-3, inputs);
        Check.Relative("H.FC-13a", 20.251, ChannelFriction.DevelopedFRe(Gap / 0.03), 1e-3, inputs);
        Check.Absolute("H.FC-13a", 0.151, ChannelFriction.EntranceK(0.8), 5e-4, inputs);
        Check.Absolute("H.FC-13a", 0.040, ChannelFriction.ExitK(0.8), 1e-9, inputs);
        var ends = ChannelFriction.EntranceK(0.8) + ChannelFriction.ExitK(0.8);
        Check.Relative("H.FC-13a", pressure, ChannelFriction.LossPa(air, velocity, Gap, 0.03, 0.1, ends), 3e-3, inputs);
    }

    // Kays and London, laminar developed profile between parallel plates; Ke from the momentum factor 1.2. [memory]
    [Theory]
    [InlineData("H.FC-07a", 0.2, 0.784, 0.560)]
    [InlineData("H.FC-07a", 0.8, 0.544, -0.280)]
    [InlineData("H.FC-07b", 0.5, 0.700, 0.050)]
    public void Ends_of_long_channels(string id, double open, double entrance, double exit)
    {
        Check.Absolute(id, entrance, ChannelFriction.DevelopedEntranceK(open), 1e-12, $"sigma {open}");
        Check.Absolute(id, exit, ChannelFriction.DevelopedExitK(open), 1e-12, $"sigma {open}");
    }
}
