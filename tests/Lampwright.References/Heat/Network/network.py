"""A thermal network solved by scipy: rest by fsolve, course by Radau. Reads JSON, writes JSON.

Its laws are written from docs/heat.md by itself; the film of a panel takes air from the table in the references (linear between rows).
"""
import json
import sys

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import fsolve

SIGMA = 5.670374419e-8


def flow(link, t):
    a, b = t[link["from"]], t[link["to"]]
    kind = link["kind"]
    d = a - b
    if kind == "conduction":
        return link["g"] * d
    if kind == "film":
        natural = link["c"] * (d * d + 1e-4) ** 0.125
        return (natural**3 + link["g"] ** 3) ** (1 / 3) * d
    if kind == "radiation":
        return SIGMA * link["area"] * (a**4 - b**4)
    if kind == "stream":
        e = a - t[link["room"]]
        draft = link["draft"] * (e * e + 1e-4) ** 0.25
        return (draft**3 + link["fan"] ** 3) ** (1 / 3) * e
    raise ValueError(kind)


def main():
    p = json.load(sys.stdin)
    nodes = p["nodes"]
    given = np.array([n["fixed"] is not None for n in nodes])
    free = np.where(~given)[0]
    base = np.array([n["fixed"] if n["fixed"] is not None else 0.0 for n in nodes])
    capacity = np.array([nodes[i]["capacity"] for i in free])

    def keeps(x):
        t = base.copy()
        t[free] = x
        k = np.zeros(len(nodes))
        for link in p["links"]:
            q = flow(link, t)
            k[link["from"]] -= q
            k[link["to"]] += q
        for s in p["sources"]:
            k[s["node"]] += s["w"] + s["slope"] * (t[s["node"]] - s["at"])
        return k[free]

    start = np.full(len(free), p["start"])
    rest = fsolve(keeps, start + 30, xtol=1e-13)
    times = p["times"]
    course = solve_ivp(
        lambda _, x: keeps(x) / capacity,
        (0, times[-1]),
        start,
        method="Radau",
        t_eval=times,
        rtol=1e-9,
        atol=1e-9,
    )
    print(
        json.dumps(
            {
                "rest": rest.tolist(),
                "keeps": float(np.max(np.abs(keeps(rest)))),
                "course": course.y.T.tolist(),
                "ok": bool(course.success),
            }
        )
    )


main()
