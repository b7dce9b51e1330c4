namespace Lampwright.Tests.Files.DesignFile;

/// <summary>A whole small light with every kind of table, for the tests of the design file.</summary>
internal static class Sketch
{
    public static readonly string Shop = """
        # the shop
        [brake]
        length = "1.02 m"          # longest bend

        [sheet.mild]
        material  = "DC01"
        thickness = "1.2 mm ± 0.08 mm"
        size      = ["1000 mm", "500 mm"]
        radius    = "1.5 mm"
        bend      = { k = 0.42 }

        [sheet.stainless]
        material  = "1.4301"
        thickness = "1.0 mm"
        bend = "strips"
        strips = [{ length = "100 mm", legs = ["51.1 mm", "51.0 mm"] }]

        [drawer]
        resistors = ["0.1 ohm", "0.22 ohm"]
        """;

    public static readonly string Text = """
        # A light
        format = 1
        title  = "Copy light"
        shop   = "shop.toml"        # shared

        [show]
        length = "mm"

        [given]
        gap = "3 mm ± 0.2 mm"

        [place]
        ambient  = "22 degC ± 3 K"
        supply   = { kind = "ac", voltage = "230 V", frequency = "50 Hz" }

        [emitter.main]
        points = [
          { current = "0.45 A", voltage = "33.6 V", flux = "2300 lm" },
          { current = "1.80 A", voltage = "37.2 V", flux = "7900 lm" },
        ]
        voltage_slope    = "-18 mV/K ± 30 %"
        flux_hot         = { at = "85 degC", factor = 0.90 }
        junction_to_case = { value = "0.30 K/W", kind = "electrical" }
        body             = ["28 mm", "28 mm"]
        face             = "22 mm"
        cct = "4000 K"

        [driver.main]
        current    = { rated = "1.75 A", least = "0.3 A" }
        window     = ["24 V", "42 V"]
        over       = { voltage = "46 V", then = "trips" }
        efficiency = 0.89
        sense      = { marks = ["R33", "R33"], side = "secondary", carries = "smooth", measured = { at = "1.74 A" } }
        isolated   = "yes"
        ripple     = { depth = 0.08, frequency = "100 Hz" }

        [steps]
        emitter = "main"
        driver  = "main"
        switches    = 4
        targets     = { every = 0.5, of = "light", from = "1.70 A", count = 5 }
        chosen = { chain = ["0.1 ohm", "0.2 ohm", "0.39 ohm", "0.82 ohm"] }

        [interface.main]
        between = ["emitter.main", "sink.main"]
        thickness = "60 um ± 30 um"
        conductivity = "3 W/(m*K)"

        [sink.main]
        base     = { across = "92 mm", along = "92 mm", thickness = "6 mm" }
        fins     = { count = 21, height = "34 mm", thickness = "0.8 mm" }
        emitters = [{ emitter = "main", at = ["46 mm", "centre"] }]
        holes.mount = { for = "M4 tap", grid = { count = [2, 2], pitch = ["76 mm", "60 mm"] } }
        mass     = "310 g"

        [fan.main]
        box    = ["92 mm", "92 mm", "25 mm"]
        mass   = "110 g"
        curve  = [["0 m3/h", "34 Pa"], ["35 m3/h", "22 Pa"], ["62 m3/h", "0 Pa"]]
        run_at = "10 V"
        holes.mount = { shape = "round 4.3 mm", grid = { count = [2, 2], pitch = ["82.5 mm", "82.5 mm"] } }
        air    = ["sink_tray.vents", "sink.main", "sink_tray.outlet"]

        [reflector.main]
        part = "funnel"
        reflectance = 0.62

        [diffuser.front]
        size = ["280 mm", "180 mm"]
        transmittance = 0.62

        [subject]
        distance = "0.8 m"
        size     = ["0.30 m", "0.45 m"]

        [part.sink_tray]
        sheet = "mild"
        face  = { inside = ["{sink.main.base.across + 2*gap + 8 mm}", "{sink.main.base.along + 2*gap + 8 mm}"] }

        [part.sink_tray.flange.wall_l]
        on     = "face.left"
        height = { outside = "46 mm" }

        [part.sink_tray.flange.lip_l]
        on     = "wall_l.far"
        height = { outside = "14 mm" }
        angle  = "90 deg"

        [part.sink_tray.hole.outlet]
        on    = "face"
        at    = "centre"
        shape = "round 86 mm"

        [part.sink_tray.hole.fan]
        on     = "face"
        for    = "fan.main.mount"

        [part.sink_tray.hole.vents]
        on    = "wall_l"
        field = { shape = "round 4 mm", pitch = "6 mm", within = ["60 mm", "24 mm"] }

        [part.sink_tray.seam.corner_tl]
        between = ["wall_l.start", "lip_l.end"]
        gap  = "0 mm"

        [part.funnel]
        sheet  = "stainless"
        panels = { small = ["44 mm", "44 mm"], large = ["280 mm", "180 mm"], depth = "150 mm", blanks = "separate" }

        [part.yoke]
        sheet = "mild"
        face  = { outside = ["200 mm", "40 mm"] }
        hole.pivot = { on = "face", shape = "round 6.4 mm" }

        [part.side_r]
        mirror = "sink_tray"

        [item.inlet]
        box    = ["50 mm", "28 mm", "32 mm"]
        mass   = "24 g"
        cutout = "appliance inlet C14"

        [joint.fan]
        stack  = ["fan.main.mount", "sink_tray.fan"]
        sides  = ["back", "outside"]
        screw  = { size = "M4", length = "35 mm", nut = true, washers = 1 }

        [assembly]
        fixed   = "yoke"

        [tilt.main]
        between = ["yoke.pivot", "sink_tray.outlet"]
        torque  = "1.5 N*m ± 0.5 N*m"
        washer  = ["12 mm", "30 mm"]
        friction = "0.15 ± 0.03"

        [rules]
        hole_to_bend = { value = "{2*thickness + radius}", because = "small holes" }
        hole_to_edge = { value = "{2*gap}", because = "filed round after bending" }

        [readings]
        file  = "readings.csv"
        meter = { kind = "phone", factor = "1 ± 0.2" }
        """;

    public static string? Beside(string name) => name == "shop.toml" ? Shop : null;
}
