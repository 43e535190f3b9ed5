"""Reference rows for the integrator, from another one.

    /usr/bin/python3 test/convergence/rival/standard_problems.py > test/convergence/rival/standard-rows.json

`ends`: SciPy's DOP853 at a relative tolerance of 1e-13, end states of problems that have no closed solution.
`steps`: one step of SciPy's own Dormand-Prince 5(4) (RK45), new state and error estimate, from the same start.
"""
import json

import numpy as np
from scipy.integrate import RK45, solve_ivp
from scipy.integrate._ivp.rk import rk_step

PROBLEMS = {
    "van-der-pol": (lambda t, y: [y[1], 2 * (1 - y[0] ** 2) * y[1] - y[0]], [2.0, 0.0], 10.0, 0.1),
    "predator-prey": (lambda t, y: [1.5 * y[0] - y[0] * y[1], -3 * y[1] + y[0] * y[1]], [10.0, 5.0], 5.0, 0.02),
    "lorenz": (lambda t, y: [10 * (y[1] - y[0]), y[0] * (28 - y[2]) - y[1], y[0] * y[1] - 8 / 3 * y[2]], [1.0, 1.0, 1.0], 5.0, 0.02),
    "rigid-body": (lambda t, y: [y[1] * y[2], -y[0] * y[2], -0.51 * y[0] * y[1]], [0.0, 1.0, 1.0], 20.0, 0.2),
    "forced": (lambda t, y: [y[1], -0.2 * y[1] - y[0] ** 3 + 0.3 * np.cos(1.2 * t)], [1.0, 0.0], 15.0, 0.1),
}

out = {}
for name, (f, y0, end, h) in PROBLEMS.items():
    sol = solve_ivp(f, (0, end), y0, method="DOP853", rtol=1e-13, atol=1e-14)
    fun = lambda t, y: np.asarray(f(t, y), dtype=float)
    y = np.array(y0)
    k = np.empty((RK45.n_stages + 1, len(y0)))
    new, _ = rk_step(fun, 0.0, y, fun(0.0, y), h, RK45.A, RK45.B, RK45.C, k)
    error = np.dot(k.T, RK45.E) * h
    out[name] = {"end": [float(v) for v in sol.y[:, -1]], "step": [float(v) for v in new], "error": [float(v) for v in error]}
print(json.dumps(out, indent=1))
