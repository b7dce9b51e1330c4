using Lampwright.Design;
using Lampwright.Files.DesignFile;
using Lampwright.Quantities;

namespace Lampwright.Tests.Files.DesignFile;

/// <summary>What a driver's table says of its input, its dimming input and its sense parts.</summary>
public sealed class DriverKeysTests
{
    private static readonly string Whole = """
        format = 1
        [given]
        drop = "0.8 V"
        [place]
        supply = { kind = "dc", voltage = "12.6 V", resistance = "0.2 ohm ± 25 %" }
        [driver.main]
        current = { rated = "1.75 A" }
        input = ["9 V", "36 V"]
        lockout = { on = "9.0 V", off = "{driver.main.lockout.on - drop}" }
        restart = "0.6 s ± 0.2 s"
        dimming = { kind = "1-10 V", least = "10 %" }
        [driver.main.sense]
        resistance = "0.165 ohm"
        control = "peak"
        inductor_ripple = "0.3 A"
        offset = "2 mV ± 1 mV"
        second = { resistance = "0.5 ohm", current = "0.61 A" }
        """;

    private static LoadedDesign Load(string text) => DesignLoader.Parse(text, "light.toml", _ => null);

    private static FileProblem One(string text)
    {
        var problems = Load(text).Problems;
        Assert.True(problems.Count == 1, string.Join("\n", problems));
        return problems[0];
    }

    [Fact]
    public void Every_key_is_bound_with_its_spread_and_its_expression()
    {
        var loaded = Load(Whole);
        Assert.True(loaded.Problems.Count == 0, string.Join("\n", loaded.Problems));
        var driver = loaded.Design.Drivers[0];
        Assert.Equal((9, 36), (driver.InputLeast!.Nominal, driver.InputMost!.Nominal));
        Assert.Equal(9.0, driver.InputOn!.Nominal);
        Assert.Equal(8.2, driver.InputOff!.Nominal, 1e-12);
        Assert.Equal(Origin.Computed, driver.InputOff.Origin);
        Assert.Equal((0.6, 0.2), (driver.Restart!.Nominal, driver.Restart.HalfWidth));
        Assert.Equal(DimmingKind.OneToTenVolts, driver.Dimming);
        Assert.Equal(0.1, driver.DimmingLeast!.Nominal, 1e-12);
        var sense = driver.Sense!;
        Assert.Equal(SenseControl.Peak, sense.Control);
        Assert.Equal(0.3, sense.InductorRipple!.Nominal);
        Assert.Equal((0.002, 0.001), (sense.Offset!.Nominal, sense.Offset.HalfWidth));
        Assert.Equal((0.5, 0.61), (sense.Second!.Resistance.Nominal, sense.Second.Current.Nominal));
        Assert.Equal("driver.main.sense.second.current", sense.Second.Current.Path);
        var supply = loaded.Design.Place.Supply!;
        Assert.Equal((0.2, 0.05), (supply.Resistance!.Nominal, supply.Resistance.HalfWidth));
    }

    [Fact]
    public void What_nobody_has_looked_at_stays_unknown_and_is_noted_where_the_table_is_written()
    {
        var loaded = Load("format = 1\n[driver.main]\ndimming = {}\nsense = { marks = [\"R33\"] }\n");
        var driver = loaded.Design.Drivers[0];
        Assert.Equal(DimmingKind.Unknown, driver.Dimming);
        Assert.Equal(SenseControl.Unknown, driver.Sense!.Control);
        Assert.Null(driver.InputLeast);
        Assert.Null(driver.InputOn);
        Assert.Null(driver.Restart);
        Assert.Null(driver.Sense.Second);
        Assert.Contains(loaded.Notes, n => n.Code == "FIL001" && n.Path == "driver.main.dimming.kind");
        Assert.Contains(loaded.Notes, n => n.Code == "FIL001" && n.Path == "driver.main.sense.control");
    }

    [Theory]
    [InlineData("chopped", DimmingKind.Chopped)]
    [InlineData("voltage", DimmingKind.Voltage)]
    [InlineData("none", DimmingKind.None)]
    [InlineData("unknown", DimmingKind.Unknown)]
    public void Every_kind_of_dimming_input_is_read(string word, DimmingKind kind) =>
        Assert.Equal(
            kind,
            Load($"format = 1\n[driver.main]\ndimming = {{ kind = \"{word}\" }}\n").Design.Drivers[0].Dimming
        );

    [Theory]
    [InlineData("average", SenseControl.Average)]
    [InlineData("primary", SenseControl.Primary)]
    [InlineData("unknown", SenseControl.Unknown)]
    public void Every_kind_of_control_is_read(string word, SenseControl control) =>
        Assert.Equal(
            control,
            Load($"format = 1\n[driver.main]\nsense = {{ control = \"{word}\" }}\n").Design.Drivers[0].Sense!.Control
        );

    [Theory]
    [InlineData("input = [\"264 V\", \"100 V\"]", 9, "driver.main.input", "least voltage first")]
    [InlineData("input = [\"100 V\"]", 9, "driver.main.input", "two values")]
    [InlineData("lockout = { on = \"8 V\", off = \"9 V\" }", 31, "driver.main.lockout.off", "not above")]
    [InlineData("lockout = { on = \"8 V\" }", 11, "driver.main.lockout.off", "off =")]
    [InlineData("restart = \"0.6\"", 12, "driver.main.restart", "s")]
    [InlineData("dimming = { kind = \"0-10 V\" }", 20, "driver.main.dimming.kind", "1-10 V")]
    [InlineData("dimming = { kind = \"none\", least = 1.5 }", 36, "driver.main.dimming.least", "0 to 1")]
    [InlineData("sense = { control = \"mean\" }", 21, "driver.main.sense.control", "average")]
    [InlineData("sense = { offset = \"2 A\" }", 21, "driver.main.sense.offset", "voltage")]
    [InlineData("sense = { second = { resistance = \"1 ohm\" } }", 20, "driver.main.sense.second.current", "current =")]
    public void A_wrong_value_is_told_where_it_stands(string line, int column, string path, string accepted)
    {
        var problem = One($"format = 1\n[driver.main]\n{line}\n");
        Assert.Equal((3, column, path), (problem.Line, problem.Column, problem.Path));
        Assert.Contains(accepted, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_voltages_of_a_lock_out_are_accepted_and_one_above_the_other_leaves_both_unknown()
    {
        var equal = Load("format = 1\n[driver.main]\nlockout = { on = \"9 V\", off = \"9 V\" }\n");
        Assert.Empty(equal.Problems);
        Assert.Equal(9, equal.Design.Drivers[0].InputOff!.Nominal);
        var turned = Load("format = 1\n[driver.main]\nlockout = { on = \"9 V\", off = \"9.1 V\" }\n");
        Assert.Null(turned.Design.Drivers[0].InputOn);
        Assert.Null(turned.Design.Drivers[0].InputOff);
    }
}
