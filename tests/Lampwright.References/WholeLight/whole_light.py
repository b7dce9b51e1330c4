#!/usr/bin/python3
"""Rest points of a whole light, found a second time.

Reads what a design gives (JSON on standard input, SI units, temperatures in kelvin, ohms, amperes) and writes, for each scene with the fan
running and each switch position, what current, light and heat come to. Nothing here knows how Lampwright does it: every
switch position is ONE system of equations for scipy's fsolve (current, junction, base, flow, share of air beside the fins, air of the chain
as it is told, and the temperature of every resistor at once), the optics are a walk of random rays, films and losses are written straight from
their sources, and the air is that of Lemmon and Jacobsen 2004.

Left out on purpose: natural convection beside the fan (below 0.1 % here).
"""

import json
import math
import sys

import numpy as np
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq, fsolve

SIGMA, G, R_AIR = 5.670374419e-8, 9.80665, 287.055


# ---- air ------------------------------------------------------------------------------------------------------------


class Air:
    """Lemmon and Jacobsen 2004 (dilute gas with the first terms of density), cp of Lemmon et al. 2000."""

    def __init__(self, t, p):
        self.rho = p / (R_AIR * t)
        tau, d = 132.6312 / t, p / (8314.51 * t) / 10.4477
        x = math.log(t / 103.3)
        omega = math.exp(sum(b * x**i for i, b in enumerate((0.431, -0.4623, 0.08406, 0.005341, -0.00331))))
        mu0 = 0.0266958 * math.sqrt(28.9586 * t) / (0.36**2 * omega)
        mu = mu0 + 10.72 * tau**0.2 * d - 8.876 * tau**0.6 * d * math.exp(-d) - 0.02916 * tau**3.6 * d**8 * math.exp(-d)
        k = 1.308 * mu0 + 1.405 * tau**-1.1 - 1.036 * tau**-0.3 + 8.743 * tau**0.1 * d + 14.76 * d**2
        k -= 16.62 * math.sqrt(tau) * d**3 * math.exp(-(d**2))
        u, v, w = 3364.011 / t, 2242.45 / t, 11580.4 / t
        c = 3.490888032 + 2.395525583e-6 * t + 7.172111248e-9 * t**2 - 3.115413101e-13 * t**3 + 0.223806688 * t**-1.5
        c += 0.791309509 * u**2 * math.exp(u) / (math.exp(u) - 1) ** 2
        c += 0.212236768 * v**2 * math.exp(v) / (math.exp(v) - 1) ** 2
        c += 0.197938904 * (2 / 3) * w**2 * math.exp(-w) / (2 / 3 + math.exp(-w)) ** 2
        self.mu, self.k, self.cp, self.t = mu * 1e-6, k * 1e-3, 8.31451 / 0.0289586 * c, t
        self.nu, self.pr = self.mu / self.rho, self.mu * self.cp / self.k

    def rayleigh(self, rise, length):
        return G / self.t * rise * length**3 * self.pr / self.nu**2


def pressure_at(altitude):
    """US Standard Atmosphere 1976."""
    km = altitude / 1000
    t = 288.15 - 6.5 * 6356.766 * km / (6356.766 + km)
    return 101325 * (t / 288.15) ** 5.25588


# ---- emitter --------------------------------------------------------------------------------------------------------


class Emitter:
    """Least squares on ln I, 1, I for the voltage; I/(a + b I) for the flux, squares of its relative misses."""

    def __init__(self, e):
        i, v, f = np.array(e["points"]).T
        self.v = np.linalg.lstsq(np.column_stack([np.log(i), np.ones_like(i), i]), v, rcond=None)[0]
        self.f = np.linalg.lstsq(np.column_stack([f / i, f]), np.ones_like(i), rcond=None)[0]
        self.ref, self.slope = e["reference_k"], e["voltage_slope_v_per_k"]
        self.decay = -math.log(e["flux_hot_factor"]) / (e["flux_hot_at_k"] - self.ref)

    def volts(self, i, t):
        return self.v @ [math.log(i), 1, i] + self.slope * (t - self.ref)

    def lumens(self, i, t):
        return i / (self.f[0] + self.f[1] * i) * math.exp(-self.decay * (t - self.ref))


# ---- optics: random rays --------------------------------------------------------------------------------------------


def light_shares(o, count=400_000, seed=4):
    """Shares of the light that leave, warm the reflector, the diffuser, and the emitter's plane, by following rays."""
    rng = np.random.default_rng(seed)
    a0, b0 = (s / 2 for s in o["small_m"])
    a1, b1 = (s / 2 for s in o["large_m"])
    depth = o["depth_m"]
    exponent = -math.log(2) / math.log(math.cos(o["beam_rad"] / 2))
    radius = o["face_m"] / 2
    r = radius * np.sqrt(rng.random(count))
    phi = 2 * np.pi * rng.random(count)
    p = np.column_stack([r * np.cos(phi), r * np.sin(phi), np.zeros(count)])
    d = lobe(rng, np.tile([0.0, 0.0, 1.0], (count, 1)), exponent)
    # Inward normals of the four walls and of the two openings, with a point of each plane.
    lean_x, lean_y = (a1 - a0) / depth, (b1 - b0) / depth
    normals = np.array(
        [[-1, 0, lean_x], [1, 0, lean_x], [0, -1, lean_y], [0, 1, lean_y], [0, 0, 1], [0, 0, -1]], dtype=float
    )
    normals /= np.linalg.norm(normals, axis=1)[:, None]
    points = np.array([[a0, 0, 0], [-a0, 0, 0], [0, b0, 0], [0, -b0, 0], [0, 0, 0], [0, 0, depth]])
    tally = dict(exit=0, reflector=0, diffuser=0, base=0)
    out = []
    for _ in range(500):
        if len(p) == 0:
            break
        # The frustum is convex: the nearest plane that the ray runs against is what it meets.
        closing = d @ normals.T
        gap = np.einsum("nk,nk->n", normals, points)[None, :] - p @ normals.T
        with np.errstate(divide="ignore", invalid="ignore"):
            run = np.where(closing < -1e-12, gap / closing, np.inf)
        run[run < 1e-12] = np.inf
        hit = np.argmin(run, axis=1)
        p = p + d * run[np.arange(len(p)), hit][:, None]
        n, dice = normals[hit], rng.random(len(p))
        wall, base, mouth = hit < 4, hit == 4, hit == 5
        passes = mouth & (dice < o["transmittance"])
        back = mouth & ~passes & (dice < o["transmittance"] + o["diffuser_reflectance"])
        kept = (wall & (dice < o["wall_reflectance"])) | (base & (dice < o["base_reflectance"])) | back
        tally["exit"] += int(passes.sum())
        tally["diffuser"] += int((mouth & ~passes & ~back).sum())
        tally["reflector"] += int((wall & ~kept).sum())
        tally["base"] += int((base & ~kept).sum())
        out.append(p[passes, :2])
        mirrored = wall & (rng.random(len(p)) < o["specular"])
        new = lobe(rng, n, 1.0)
        new[mirrored] = (d - 2 * np.einsum("nk,nk->n", d, n)[:, None] * n)[mirrored]
        p, d = p[kept], new[kept]
    return {k: v / count for k, v in tally.items()}, np.concatenate(out)


def lobe(rng, n, exponent):
    """Directions of intensity cos^m about the normals n."""
    count = len(n)
    cos = rng.random(count) ** (1 / (exponent + 1))
    sin, phi = np.sqrt(1 - cos**2), 2 * np.pi * rng.random(count)
    side = np.where(np.abs(n[:, :1]) < 0.7, [[1.0, 0.0, 0.0]], [[0.0, 1.0, 0.0]])
    t1 = np.cross(n, side)
    t1 /= np.linalg.norm(t1, axis=1)[:, None]
    t2 = np.cross(n, t1)
    return cos[:, None] * n + sin[:, None] * (np.cos(phi)[:, None] * t1 + np.sin(phi)[:, None] * t2)


# ---- sink -----------------------------------------------------------------------------------------------------------


class Sink:
    """Plate fins in a fan's air."""

    def __init__(self, s, fan, openings, pressure):
        self.s, self.p = s, pressure
        self.k, self.n = s["conductivity"], s["fins"]
        self.w, self.l, self.base = s["across_m"], s["along_m"], s["base_m"]
        self.h, self.t = s["fin_height_m"], s["fin_thickness_m"]
        self.b = (self.w - self.n * self.t) / (self.n - 1)
        self.sigma = (self.n - 1) * self.b / self.w
        self.fan = PchipInterpolator(*np.array(fan["curve"]).T)
        self.speed = fan["run_at_v"] / fan["rated_v"]
        self.openings = openings
        self._waves()

    def fan_pa(self, q, rho):
        """Fan laws: flow with speed, pressure with its square and the density; maker's points joined by a monotone cubic."""
        return float(self.fan(q / self.speed)) * self.speed**2 * rho / 1.2

    def openings_pa(self, q, cool):
        pa = 0.0
        for o in self.openings:
            if o["kind"] == "field":
                f, area = open_ratio(o), o["within_m"][0] * o["within_m"][1]
                v = q / area
                zeta = ((0.707 * math.sqrt(1 - f) + 1 - f) / f) ** 2  # Idelchik, diagram 8-1
                reynolds = v * o["hole_m"] / cool.nu * (1 / f)  # in the holes
                slow = 30 / (f * f * reynolds)  # slow flow, on the approach velocity
                pa += (zeta + slow) * cool.rho * v * v / 2
            else:
                v = q / (math.pi / 4 * o["hole_m"] ** 2)
                pa += 1.5 * cool.rho * v * v / 2  # sharp entrance and free discharge
        return pa

    def channels_pa(self, q, cool, warm):
        """Warm air in the channels; q is the flow of cool air that goes into them."""
        free = (self.n - 1) * self.b * self.h
        return duct_pa(q * cool.rho / warm.rho / free, free, 2 * (self.n - 1) * (self.b + self.h), self.l, self.sigma, warm,
                       self.b / self.h)

    def beside_pa(self, q, cool):
        """Cool air in what the housing leaves free round the sink, as a rectangle of that area and wetted length."""
        w, h = self.s["duct_m"]
        tall = self.base + self.h
        free, wet = w * h - self.w * tall, 2 * (w + h + tall)
        one = np.roots([1, -wet / 2, free]).real
        return duct_pa(q / free, free, wet, self.l, free / (w * h), cool, one.min() / one.max())

    def heat_w(self, rise, ambient, q):
        """Heat with a flow q of cool air in the channels: Teertstra's film on the inlet air, fins of Gardner, channels radiate by their view factor."""
        warm, cool = Air(ambient + rise / 2, self.p), Air(ambient, self.p)
        u = q * cool.rho / warm.rho / ((self.n - 1) * self.b * self.h)
        re = u * self.b**2 / (warm.nu * self.l)
        nu1 = re * warm.pr / 2
        nu2 = 0.664 * math.sqrt(re) * warm.pr ** (1 / 3) * math.sqrt(1 + 3.65 / math.sqrt(re))
        film = (nu1**-3 + nu2**-3) ** (-1 / 3) * warm.k / self.b
        m = math.sqrt(2 * film / (self.k * self.t)) * self.h
        eta = math.tanh(m) / m
        convected = film * (self.n - 1) * self.l * (self.b + 2 * self.h * eta) * rise
        e, f = self.s["emissivity"], self.channel_view()
        black = SIGMA * ((ambient + rise) ** 4 - ambient**4)
        walls = (self.n - 1) * (2 * self.h + self.b) * self.l / ((1 - e) / e + 1 / f)
        outside = e * (self.l * (2 * self.h + self.n * self.t) + 2 * (self.w + self.l) * self.base)
        return convected + black * (walls + outside)

    def channel_view(self):
        """Shabany's closed form is some per cent high; the exact one from the two view factors of rectangles."""
        s, h, l = self.b, self.h, self.l
        w, hh = l / s, h / s
        q = w * w + hh * hh
        fte = (
            w * math.atan(1 / w)
            + hh * math.atan(1 / hh)
            - math.sqrt(q) * math.atan(1 / math.sqrt(q))
            + 0.25
            * math.log(
                (1 + w * w)
                * (1 + hh * hh)
                / (1 + q)
                * (w * w * (1 + q) / ((1 + w * w) * q)) ** (w * w)
                * (hh * hh * (1 + q) / ((1 + hh * hh) * q)) ** (hh * hh)
            )
        ) / (math.pi * w)
        x, y = s / l, h / l
        fee = (
            2
            / (math.pi * x * y)
            * (
                math.log(math.sqrt((1 + x * x) * (1 + y * y) / (1 + x * x + y * y)))
                + x * math.sqrt(1 + y * y) * math.atan(x / math.sqrt(1 + y * y))
                + y * math.sqrt(1 + x * x) * math.atan(y / math.sqrt(1 + x * x))
                - x * math.atan(x)
                - y * math.atan(y)
            )
        )
        return (s * l + 2 * s * h - 4 * s * l * fte - 2 * s * h * fee) / ((2 * h + s) * l)

    def _waves(self):
        """Yovanovich, Muzychka, Culham 1999: source c x d at (X, Y) on a base a x b, mean over the source."""
        m = np.arange(1, 401)
        c, d = self.s["source_m"]
        x, y = self.s["source_at_m"]
        lam, delta = m * math.pi / self.w, m * math.pi / self.l
        cm = np.cos(lam * x) * np.sinc(lam * c / 2 / math.pi)
        cn = np.cos(delta * y) * np.sinc(delta * d / 2 / math.pi)
        beta = np.hypot(lam[:, None], delta[None, :])
        self._terms = (
            (lam, 2 * cm**2, np.zeros(1)),
            (delta, 2 * cn**2, delta),
            (beta, 4 * np.outer(cm**2, cn**2), delta[None, :]),
        )

    def wave_film(self, face, delta):
        """Film over conductivity of the fins' side for a wave cos(delta*y): the fin obeys T'' = (2h/kt + delta^2) T down its height."""
        share, pitch = self.n * self.t / self.w, self.w / self.n
        mu = np.sqrt(2 * face / self.t + delta**2)
        root = share * mu * np.tanh(mu * self.h)
        gather = pitch / math.pi * math.log(1 / math.sin(math.pi * share / 2))
        return (1 - share) * face + 1 / (1 / root + gather)

    def base_k_per_w(self, film):
        even, total = film / self.k, self.base
        face = brentq(lambda x: float(self.wave_film(x, 0.0)) - even, 1e-9, even / (1 - self.n * self.t / self.w) * 2, xtol=1e-14)
        for z, weight, along in self._terms:
            h = np.where(along > 0, self.wave_film(face, along), even)
            tanh = np.tanh(z * self.base)
            total += np.sum(weight * (z + h * tanh) / (z * tanh + h) / z)
        return total / (self.k * self.w * self.l)


def duct_pa(u, area, wetted, length, sigma, air, aspect):
    """Shah and London's exact series, Muzychka and Yovanovich for the developing flow, ends with a flat profile."""
    dh = 4 * area / wetted
    re = u * dh / air.nu
    odd = np.arange(1, 60, 2)
    tanh = np.sum(np.tanh(odd * math.pi / (2 * aspect)) / odd**5)
    fre = 24 / ((1 + aspect) ** 2 * (1 - 192 * aspect / math.pi**5 * tanh))
    fapp = math.hypot(3.44 / math.sqrt(length / (dh * re)), fre) / re
    return (0.42 * (1 - sigma**2) + (1 - sigma) ** 2 + 4 * fapp * length / dh) * air.rho * u * u / 2


def open_ratio(o):
    """Open share of a field of round holes, rows set off by half a pitch, as many whole holes as fit; counted one by one."""
    (w, h), pitch, dia = o["within_m"], o["pitch_m"], o["hole_m"]
    full = int((w - dia) / pitch + 1e-9) + 1
    between = full if (full - 0.5) * pitch + dia <= w + 1e-9 else full - 1
    rows = int((h - dia) / (pitch * math.sqrt(3) / 2) + 1e-9) + 1
    return sum(between if r % 2 else full for r in range(rows)) * math.pi / 4 * dia * dia / (w * h)


# ---- the whole ------------------------------------------------------------------------------------------------------


def rest_point(g, emitter, sink, returned, ambient, closed, guess, sheet, told):
    """One switch position; sheet under the sink takes so many watts for each kelvin of the base, and the chain's air is so warm."""
    p, drv, ch = sink.p, g["driver"], g["chain"]
    marked = [float(m.replace("R", ".")) for m in drv["marks"]]
    ohms = [1 / sum(1 / m for m in marked)] + ch["ohms"]
    threshold = ohms[0] * drv["measured_a"]
    tim = g["interface"]["thickness_m"] / g["interface"]["conductivity"] / np.prod(sink.s["source_m"])
    own = (ch["zero_at_k"] - ch["full_to_k"]) / ch["rating_w"]
    lead20 = 2 * ch["lead_length_m"] * ch["lead_ohm_per_m"]
    contact = ch["contact_ohm"]
    cool = Air(ambient, p)

    def electric(x):
        i, air, hot = x[0], ambient + x[4], x[6:]
        warm = [r * (1 + ch["tempco_per_k"] * (ambient + t - 298.15)) for r, t in zip(ohms, hot)]
        path = [r * contact / (r + contact) if c else r for r, c in zip(warm[1:], closed)]
        total = warm[0] + sum(path) + lead20 * (230 + air - 273.15) / 250
        watts = [i * i * warm[0]] + [(i * q) ** 2 / r for r, q in zip(warm[1:], path)]
        return total, watts

    def equations(x):
        i, junction, rise, flow, air, beside = x[0], ambient + x[1], x[2], x[3] / 3600, x[4], x[5]
        total, watts = electric(x)
        power = i * emitter.volts(i, junction)
        heat = power - emitter.lumens(i, junction) / g["emitter"]["radiation_lm_per_w"] * (1 - returned)
        inner = g["emitter"]["junction_to_case_k_per_w"] + tim
        inner += sink.base_k_per_w((heat - sheet * rise) / (rise * sink.w * sink.l))
        inner_pa = sink.channels_pa(flow * (1 - beside), cool, Air(ambient + rise / 2, p))
        return [
            i * total / threshold - 1,
            rise + heat * inner - x[1],
            sink.heat_w(rise, ambient, flow * (1 - beside)) + sheet * rise - heat,
            sink.fan_pa(flow, cool.rho) - sink.openings_pa(flow, cool) - inner_pa,
            sink.beside_pa(flow * beside, cool) - inner_pa,
            air - told,
        ] + [air + own * w - t for w, t in zip(watts, x[6:])]

    x, info, ok, why = fsolve(equations, guess, full_output=True, xtol=1e-11)
    residual = float(np.max(np.abs(info["fvec"])))
    if residual > 1e-6:
        raise RuntimeError(f"no rest point at {closed}: {why} (residual {residual})")
    volts = emitter.volts(x[0], ambient + x[1])
    lumens = emitter.lumens(x[0], ambient + x[1])
    power = x[0] * volts
    heat = power - lumens / g["emitter"]["radiation_lm_per_w"] * (1 - returned)
    return x, dict(
        switches="".join("1" if c else "0" for c in closed),
        resistance_ohm=float(electric(x)[0]),
        current_a=float(x[0]),
        voltage_v=float(volts),
        flux_lm=float(lumens),
        heat_w=float(heat),
        junction_rise_k=float(x[1]),
        base_rise_k=float(x[2]),
        flow_m3_per_h=float(x[3]),
        beside=float(x[5]),
        residual=residual,
    )


def main():
    g = json.load(sys.stdin)
    pressure = pressure_at(g["place"]["altitude_m"])
    emitter = Emitter(g["emitter"])
    sink = Sink(g["sink"], g["fan"], g["openings"], pressure)
    shares, _ = light_shares(g["optics"])
    switches = len(g["chain"]["ohms"])
    scenes = {}
    for name, ambient in g["place"]["scenes_k"].items():
        points, guess = [], [1.4, 25, 12, 14, 30, 0.3] + [40] * (switches + 1)
        for index in range(2**switches):
            closed = [not (index >> (switches - 1 - k)) & 1 for k in range(switches)]
            guess, point = rest_point(g, emitter, sink, shares["base"], ambient, closed, list(guess), g["sheet_w_per_k"][name][index], g["air_rise_k"][name][index])
            points.append(point)
        scenes[name] = points
    json.dump(dict(shares=shares, scenes=scenes), sys.stdout)


if __name__ == "__main__":
    main()
