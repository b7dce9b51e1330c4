using Lampwright.Design;
using Lampwright.Quantities;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Drivers.</summary>
internal static class BindDriver
{
    public static Driver Driver(TableReader r)
    {
        var current = r.Table("current");
        var window = r.Two("window");
        var input = Input(r);
        var (on, off) = LockOut(r.Table("lockout"));
        var dimming = r.Table("dimming");
        var over = r.Table("over");
        var ripple = r.Table("ripple");
        return new Driver(r.Name)
        {
            Rated = current.Optional("rated"),
            Least = current.Optional("least"),
            Limit = current.Optional("limit"),
            WindowLeast = window?.First,
            WindowMost = window?.Second,
            InputLeast = input?.Least,
            InputMost = input?.Most,
            InputOn = on,
            InputOff = off,
            OverVoltage = over.Optional("voltage"),
            OverThen = over.Choice("then"),
            Under = r.Choice("under"),
            Efficiency = r.WithDefault("efficiency"),
            Restart = r.Optional("restart"),
            Dimming = dimming.Choice("kind") switch
            {
                "1-10 V" => DimmingKind.OneToTenVolts,
                "chopped" => DimmingKind.Chopped,
                "voltage" => DimmingKind.Voltage,
                "none" => DimmingKind.None,
                _ => DimmingKind.Unknown,
            },
            DimmingLeast = dimming.Optional("least"),
            Sense = Sense(r.Table("sense")),
            Isolated = r.Choice("isolated") switch
            {
                "yes" => Known.Yes,
                "no" => Known.No,
                _ => Known.Unknown,
            },
            OutputCapacitor = r.Optional("output_capacitor"),
            RippleDepth = ripple.Optional("depth"),
            RippleFrequency = ripple.Optional("frequency"),
            PowerFactor = r.Optional("power_factor"),
            Box = r.Box("box"),
            Mass = r.Optional("mass"),
            CaseMax = r.Optional("case_max"),
            Holes = BindHoles.Patterns(r),
        };
    }

    /// <summary>The window of the input; a window that ends below its start is told and left out.</summary>
    private static (Value Least, Value Most)? Input(TableReader r)
    {
        if (r.Two("input") is not var (least, most))
        {
            return null;
        }

        if (least.Nominal <= most.Nominal)
        {
            return (least, most);
        }

        r.Context.Wrong(r.Node("input")!, r.Path + ".input", "ends below its start", "the least voltage first");
        return null;
    }

    /// <summary>Where the input starts and stops it; a stop above the start is told and both are left out.</summary>
    private static (Value? On, Value? Off) LockOut(TableReader r)
    {
        var (on, off) = (r.Optional("on"), r.Optional("off"));
        if (on is null || off is null)
        {
            return (null, null);
        }

        if (off.Nominal <= on.Nominal)
        {
            return (on, off);
        }

        r.Context.Wrong(
            r.Node("off")!,
            r.Path + ".off",
            "is above the voltage at which it starts",
            "a voltage not above that of on"
        );
        return (null, null);
    }

    private static Sense? Sense(TableReader r)
    {
        var measured = r.Table("measured");
        var marks = r.Texts("marks");
        var sense = new Sense(
            marks,
            r.Optional("resistance"),
            measured.Optional("at"),
            r.Choice("side") switch
            {
                "secondary" => SenseSide.Secondary,
                "primary" => SenseSide.Primary,
                _ => SenseSide.Unknown,
            },
            r.Choice("carries") switch
            {
                "smooth" => SenseCurrent.Smooth,
                "pulsed" => SenseCurrent.Pulsed,
                _ => SenseCurrent.Unknown,
            }
        )
        {
            Control = r.Choice("control") switch
            {
                "average" => SenseControl.Average,
                "peak" => SenseControl.Peak,
                "primary" => SenseControl.Primary,
                _ => SenseControl.Unknown,
            },
            InductorRipple = r.Optional("inductor_ripple"),
            Offset = r.Optional("offset"),
            Second = Second(r.Table("second")),
        };
        return r.IsThere ? sense : null;
    }

    private static SensePoint? Second(TableReader r)
    {
        var (ohm, current) = (r.Optional("resistance"), r.Optional("current"));
        return ohm is null || current is null ? null : new SensePoint(ohm, current);
    }
}
