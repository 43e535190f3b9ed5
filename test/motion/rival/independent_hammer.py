"""The hammer once more, written apart from the program: same physics, other formulae, another solver.

    /usr/bin/python3 test/motion/rival/independent_hammer.py cases.json > reference-rows.json

Linkage by angles (law of cosines) and the ram's force by differentiating the closure of the links, where the program
intersects circles; crank and rod by the rod's angle, where the program uses square roots; events by the solver's own
root finding. SciPy's DOP853 at a relative tolerance of 1e-11.
"""
import json
import math
import sys

from scipy.integrate import solve_ivp

G = 9.80665
TURN = 2 * math.pi


def smooth_sign(x):
    return x / math.sqrt(1 + x * x)


class Hammer:
    def __init__(self, s):
        self.s = s
        self.sus = s["suspension"]
        self.stuck = False
        u = self.sus
        self.d = u["link"] + u["lowerLimb"] * math.sin(u["armAngle"])
        self.level = u["lowerLimb"] * math.cos(u["armAngle"])
        self.height = s["frameHeight"] + s["stackLoss"]
        self.surface = max(s["workThickness"], s["stackLoss"] - s["ledgeClearance"])

    def linkage(self, q):
        u = self.sus
        p, ell = u["lowerLimb"], u["link"]
        down = self.level + q
        far = math.hypot(self.d, down)
        bearing = math.atan2(self.d, down)  # of the ram pin, from straight down
        inner = math.acos((p * p + far * far - ell * ell) / (2 * p * far))
        arm = bearing - inner
        # closure: (d - p sin a)^2 + (D - p cos a)^2 = l^2
        ex, ey = self.d - p * math.sin(arm), down - p * math.cos(arm)
        turn = -ey / (-ex * p * math.cos(arm) + ey * p * math.sin(arm))
        a0, eps = u["armAngle"], u["crankOffset"]
        squeeze = 2 * u["upperLimb"] * (math.sin(arm + eps) - math.sin(a0 + eps))
        rise = 2 * u["upperLimb"] * math.cos(arm + eps) * turn
        x0 = u["preCompression"] - u["sag"]
        to_solid = u["travel"] - u["sag"] - x0
        pull = u["rate"] * (x0 + squeeze) + u["solidRate"] * max(0.0, squeeze - to_solid)
        return pull * rise

    def crank(self, psi):
        r, rod = self.s["throw"], self.s["rodLength"]
        beta = math.asin(r / rod * math.sin(psi))
        carrier = r * math.cos(psi) - rod * math.cos(beta)
        # beta' = r cos psi / (L cos beta); carrier' = -r sin psi + L sin beta beta'
        b1 = r * math.cos(psi) / (rod * math.cos(beta))
        b2 = (-r * math.sin(psi) + rod * math.sin(beta) * b1 * b1) / (rod * math.cos(beta))
        c1 = -r * math.sin(psi) + rod * math.sin(beta) * b1
        c2 = -r * math.cos(psi) + rod * (math.cos(beta) * b1 * b1 + math.sin(beta) * b2)
        return beta, carrier, c1, c2

    def q(self, y):
        return self.height + self.crank(y[2])[1] - y[0]

    def forces(self, y):
        s = self.s
        beta, carrier, c1, c2 = self.crank(y[2])
        q = self.height + carrier - y[0]
        qdot = c1 * y[3] - y[1]
        half = 0.5 * s["lostMotion"]
        slack = math.copysign(max(0.0, abs(q) - half), q)
        slack = min(max(slack, -(s["upperStop"] + 0.008)), s["jointStop"] + 0.008)
        spring = self.linkage(slack)
        force = spring + s["pinFriction"] * abs(spring) * smooth_sign(qdot / 0.02)
        if q > s["jointStop"]:
            force += max(0.0, s["stopStiffness"] * (q - s["jointStop"]) * (1 + s["stopDamping"] * qdot))
        elif q < -s["upperStop"]:
            force -= max(0.0, s["stopStiffness"] * (-s["upperStop"] - q) * (1 - s["stopDamping"] * qdot))
        return force, beta, c1, c2

    def __call__(self, t, y):
        s = self.s
        force, beta, c1, c2 = self.forces(y)
        m, mc = s["ramMass"], s["carrierMass"]
        _, v, _, w, drive = y
        clutch = s["clutchTorque"] * s["treadle"] * smooth_sign((drive - w) / 0.3)
        slip = 1 - drive / s["driveSpeed"]
        motor = 2 * s["pullOutTorque"] * slip * s["pullOutSlip"] / (slip**2 + s["pullOutSlip"] ** 2)
        # kinetic energy of crank and carrier is (J + mc c1^2) w^2 / 2: Lagrange's equation in psi
        inertia = s["crankInertia"] + mc * c1 * c1
        load = -(force + mc * G) * c1
        faster = (clutch - s["bearingFriction"] * smooth_sign(10 * w) + load - mc * c1 * c2 * w * w) / inertia
        if self.stuck:
            up = 0.0
        else:
            rub = s["guideFriction"] + s["sideFriction"] * abs(force * math.tan(beta))
            up = (force - m * G - rub * smooth_sign(v / 0.02) - s["viscous"] * v) / m
        return [0.0 if self.stuck else v, up, w, faster, (motor - clutch) / s["motorInertia"]]


def terminal(function, direction):
    function.terminal = True
    function.direction = direction
    return function


def run(case, rtol=1e-11):
    hammer = Hammer(case["spec"])
    s = case["spec"]
    t, y = 0.0, list(case["start"])
    hit_at = -1.0
    region = 0
    beats, tops = [], []
    while t < case["seconds"]:
        # The die starts on the surface after a blow: it counts as above until it has had time to leave.
        def gap(tt, yy):
            return 1e-30 if tt - hit_at < 1e-9 else yy[0] - hammer.surface

        def top(tt, yy):
            return yy[2] - TURN

        def lift(tt, yy):
            return s["ramMass"] * G - hammer.forces(yy)[0]

        def joint(tt, yy):
            return hammer.q(yy) - s["jointStop"]

        def upper(tt, yy):
            return hammer.q(yy) + s["upperStop"]

        events, names = [terminal(top, 1)], ["top"]
        events.append(terminal(lift, -1) if hammer.stuck else terminal(gap, -1))
        names.append("lift" if hammer.stuck else "die")
        if region >= 0:
            events.append(terminal(joint, 1 if region == 0 else -1))
            names.append("joint")
        if region <= 0:
            events.append(terminal(upper, -1 if region == 0 else 1))
            names.append("upper")
        sol = solve_ivp(hammer, (t, case["seconds"]), y, method="DOP853", rtol=rtol, atol=[1e-13, 1e-12, 1e-13, 1e-11, 1e-11],
                        events=events, max_step=1e-3)
        t, y = float(sol.t[-1]), [float(v) for v in sol.y[:, -1]]
        for name, times in zip(names, sol.t_events):
            if len(times) == 0:
                continue
            if name == "top":
                tops.append(t)
                y[2] -= TURN
            elif name == "lift":
                hammer.stuck = False
            elif name == "die":
                speed = -y[1]
                contact = s["contact"]
                if contact["kind"] == "fixed":
                    e = contact["restitution"]
                else:
                    give = contact["flowStress"] * contact["area"] / math.sqrt(contact["structureStiffness"] * s["ramMass"])
                    e = min(contact["cap"], give / speed)
                if speed > 0.02:
                    beats.append([t, 0, speed])
                y[0], y[1] = hammer.surface, e * speed
                hit_at = t
                if e * speed < 0.004 and hammer.forces(y)[0] < s["ramMass"] * G:
                    y[1] = 0.0
                    hammer.stuck = True
            else:
                code = 1 if name == "joint" else 2
                if region == 0:
                    qdot = hammer.crank(y[2])[2] * y[3] - y[1]
                    if abs(qdot) > 0.02:
                        beats.append([t, code, abs(qdot)])
                    region = 1 if name == "joint" else -1
                else:
                    region = 0
    return {"name": case["name"], "beats": beats, "tops": tops, "end": y}


if __name__ == "__main__":
    cases = json.load(open(sys.argv[1]))
    chosen = [int(v) for v in sys.argv[2].split(",")] if len(sys.argv) > 2 else range(len(cases))
    seconds = float(sys.argv[3]) if len(sys.argv) > 3 else None
    out = []
    for i in chosen:
        case = dict(cases[i])
        if seconds is not None:
            case["seconds"] = seconds
        out.append(run(case))
    print(json.dumps(out))
