# The same distribution with numpy, all combinations, percentiles by partition: tolerance.py FILE -> milliseconds and percentiles.
import json, sys, time
import numpy as np

p = json.load(open(sys.argv[1]))
n, k = int(p["samples"]), len(p["r"]) - 1
start = time.perf_counter()
g = np.random.Generator(np.random.SFC64(1))
u = lambda *shape: g.random(shape) * 2 - 1
v = p["v_sense"] * (1 + p["v_tol"] * u(n))
dt = p["dt_max"] * g.random(n)
r = [x * (1 + p["r_tol"] * u(n)) * (1 + p["tempco_ppm"] * 1e-6 * u(n) * dt) for x in p["r"]]
contact = [p["contact_median"] * np.exp(p["contact_sigma"] * g.standard_normal(n)) for _ in range(k)]
base = r[0] + p["lead_ohm"] * (1 + p["lead_tol"] * u(n))
closed = [a * c / (a + c) for a, c in zip(r[1:], contact)]
# Each further switch doubles the combinations; all closed comes first and the first switch is the highest bit.
totals = [base]
for i in range(k):
    totals = [t + x for t in totals for x in (closed[i], r[i + 1])]
found = [np.percentile(v / t, p["percentiles"]).tolist() for t in totals]
print(json.dumps({"ms": (time.perf_counter() - start) * 1000, "percentiles": found}))
