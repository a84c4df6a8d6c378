"""Cases of store, jacket and pot, solved by a general-purpose library.

Needs Python 3.11 or later, scipy 1.17.1 and iapws 1.5.5:

    python3 -m venv venv && venv/bin/pip install scipy==1.17.1 iapws==1.5.5
    venv/bin/python network_cases.py ../data/variants.json

The equations are those of the network; the solver is scipy.integrate.solve_ivp, LSODA, rtol 1e-9, with a
terminal event at every switch. The state is the store's enthalpy, whose temperature is found by Newton's
method on the forward curve: nothing is shared with the Rust model but the equations.
"""

import json
import random
import sys

import numpy as np
from iapws import IAPWS97
from scipy.integrate import solve_ivp

CP_WATER = 4186.0
HYSTERESIS_K = 5.0
DIGITS = 10
NUDGE_S = 1e-3


def specific_enthalpy(m, t):
    a, b = m["cp_a"], m["cp_b"]
    solid = lambda x: a * x + b * x * x / 2
    if "t_solidus" not in m or t < m["t_solidus"]:
        return solid(t)
    start, end, latent = m["t_solidus"], m["t_liquidus"], m["latent_j_kg"]
    if t < end:
        return solid(start) + latent * (t - start) / (end - start)
    return solid(start) + latent + m["cp_liquid"] * (t - end)


class Store:
    """Enthalpy to temperature: exact at the break points, by Newton between them."""

    def __init__(self, media):
        self.media = media
        self.marks = []
        for t in sorted({m[k] for m in media if "t_solidus" in m for k in ("t_solidus", "t_liquidus")}):
            low = self.below(t)
            high = self.enthalpy(t)
            self.marks += [(low, t), (high, t)] if high > low + 1e-6 else [(low, t)]
        self.stretches = list(self.stretches_of())

    def enthalpy(self, t):
        """At a melting point: all molten."""
        return sum(m["mass_kg"] * specific_enthalpy(m, t) for m in self.media)

    def below(self, t):
        """At a melting point: all solid."""
        plateau = sum(
            m["mass_kg"] * m["latent_j_kg"]
            for m in self.media
            if "t_solidus" in m and m["t_solidus"] == t == m["t_liquidus"]
        )
        solid = [m for m in self.media if "t_solidus" in m and m["t_solidus"] == t == m["t_liquidus"]]
        rest = [m for m in self.media if m not in solid]
        sensible = sum(m["mass_kg"] * (m["cp_a"] * t + m["cp_b"] * t * t / 2) for m in solid)
        return sensible + sum(m["mass_kg"] * specific_enthalpy(m, t) for m in rest)

    def stretches_of(self):
        """Per stretch: its enthalpies, and the middle, value there, slope and half curvature of h(t)."""
        ends = [(-np.inf, -100.0)] + self.marks + [(np.inf, 1500.0)]
        for (h_low, low), (h_high, high) in zip(ends, ends[1:]):
            if low == high:
                yield h_low, h_high, low, None, None, None
                continue
            # Each stretch is quadratic in t: three points give it exactly.
            middle, half = (low + high) / 2, (high - low) / 2
            at_low, at_middle, at_high = self.enthalpy(low), self.enthalpy(middle), self.below(high)
            c2 = (at_high - 2 * at_middle + at_low) / (2 * half * half)
            yield h_low, h_high, middle, at_middle, (at_high - at_low) / (2 * half), c2

    def temperature(self, h):
        for h_low, h_high, middle, at_middle, c1, c2 in self.stretches:
            if h <= h_high:
                break
        if c1 is None:
            return middle
        x = (h - at_middle) / c1
        for _ in range(30):
            step = (at_middle + x * (c1 + x * c2) - h) / (c1 + 2 * x * c2)
            x -= step
            if abs(step) < 1e-11:
                break
        return middle + x

    def solid_fraction(self, index, h):
        m = self.media[index]
        if "t_solidus" not in m:
            return 1.0
        start, end = m["t_solidus"], m["t_liquidus"]
        if start == end:
            low, high = self.below(start), self.enthalpy(start)
            return min(1.0, max(0.0, (high - h) / (high - low)))
        return min(1.0, max(0.0, (end - self.temperature(h)) / (end - start)))


def solve(case):
    store = Store(case["store"])
    pressure = 101325 * (1 - 2.25577e-5 * case["altitude_m"]) ** 5.25588
    vapour, liquid = IAPWS97(P=pressure / 1e6, x=1), IAPWS97(P=pressure / 1e6, x=0)
    boiling, h_fg = vapour.T - 273.15, (vapour.h - liquid.h) * 1e3
    air = case["t_air_c"]
    half = 2 * case["g_loss_w_k"]
    layer = case["seat"].get("layer")
    cutout = case["cutout_c"]

    def seat_w(h, t_store, t_pot):
        resistance = 1 / case["seat"]["g_contact_w_k"]
        if layer:
            depth = store.solid_fraction(layer["medium"], h) * layer["depth_m"]
            resistance += depth / (layer["k_solid_w_mk"] * layer["area_m2"])
        return (t_store - t_pot) / resistance

    # Places: store enthalpy, jacket, pot temperature, water, then heat to pot, jacket to air, pot to air, steam.
    y = np.array([store.enthalpy(case["t_store_c"]), case["t_jacket_c"], case["t_pot_c"], case["water_kg"], 0, 0, 0, 0.0])
    scale = np.array([1e3, 1, 1, 1e-3, 1e3, 1e3, 1e3, 1e3])
    phase, heater_on, heater_j, boiled_at = "none", True, 0.0, None
    samples = []
    wanted = list(case["sample_s"])

    def sample(t, y):
        samples.append(
            {
                "t_s": t,
                "t_store_c": store.temperature(y[0]),
                "t_jacket_c": y[1],
                "t_pot_c": None if phase == "none" else y[2],
                "water_kg": y[3],
            }
        )

    edges = {0.0, case["end_s"]}
    for begin, end, _ in case["power_w"]:
        edges |= {begin, end}
    for key in ("pot_in_s", "pot_out_s"):
        if case[key] is not None:
            edges.add(case[key])
    edges = sorted(e for e in edges if e <= case["end_s"])

    for begin, end in zip(edges, edges[1:]):
        if case["pot_in_s"] == begin:
            phase = "simple" if case["water_kg"] > 0 else "dry"
        if case["pot_out_s"] == begin:
            phase = "none"
        watt = next((w for a, b, w in case["power_w"] if a <= begin < b), 0.0)
        if begin == 0.0:
            while wanted and wanted[0] <= 0.0:
                sample(wanted.pop(0), y)
        now = begin
        while now < end:
            t_store = store.temperature(y[0])
            if heater_on and t_store >= cutout:
                heater_on = False
            elif not heater_on and t_store <= cutout - HYSTERESIS_K:
                heater_on = True
            power = watt if heater_on else 0.0

            def rates(_, y):
                t = store.temperature(y[0])
                d = np.zeros(8)
                loss = half * (t - y[1])
                d[5] = half * (y[1] - air)
                d[0] = power - loss
                d[1] = (loss - d[5]) / case["c_jacket_j_k"]
                if phase != "none":
                    d[4] = seat_w(y[0], t, y[2])
                    d[6] = case["g_pot_w_k"] * (y[2] - air)
                    d[0] -= d[4]
                    if phase == "boiling":
                        d[7] = d[4] - d[6]
                        d[3] = -d[7] / h_fg
                    else:
                        d[2] = (d[4] - d[6]) / (case["c_dry_j_k"] + CP_WATER * y[3])
                return d

            def event(function, direction):
                function.terminal = True
                function.direction = direction
                return function

            events, names = [], []
            if heater_on:
                limit = store.below(cutout)
                events.append(event(lambda _, y, limit=limit: y[0] - limit, 1))
                names.append("cut")
            else:
                limit = store.enthalpy(cutout - HYSTERESIS_K)
                events.append(event(lambda _, y, limit=limit: y[0] - limit, -1))
                names.append("let")
            if phase == "simple":
                events.append(event(lambda _, y: y[2] - boiling, 1))
                names.append("boil")
            if phase == "boiling":
                events.append(
                    event(
                        lambda _, y: seat_w(y[0], store.temperature(y[0]), boiling)
                        - case["g_pot_w_k"] * (boiling - air),
                        -1,
                    )
                )
                names.append("simple")
                events.append(event(lambda _, y: y[3], -1))
                names.append("dry")
            # The kinks of the enthalpy curve end a stretch too.
            for mark, _ in store.marks:
                events.append(event(lambda _, y, mark=mark: (y[0] - mark) * 1e-3, 0))
                names.append("mark")
            out = solve_ivp(
                rates, (now, end), y, method="LSODA", rtol=1e-9, atol=1e-8 * scale,
                dense_output=True, events=events, max_step=1800.0,
            )
            assert out.success, out.message
            reached = out.t[-1]
            while wanted and wanted[0] <= reached:
                t = wanted.pop(0)
                sample(t, out.sol(t))
            y = out.y[:, -1].copy()
            heater_j += power * (reached - now)
            hit = [n for n, times in zip(names, out.t_events) if len(times) and times[-1] >= reached - 1e-9]
            for name in hit:
                if name == "cut":
                    heater_on = False
                elif name == "let":
                    heater_on = True
                elif name == "boil":
                    phase = "boiling"
                    y[2] = boiling
                    boiled_at = reached if boiled_at is None else boiled_at
                elif name == "simple":
                    phase = "simple"
                    y[2] = boiling - 1e-9
                elif name == "dry":
                    phase = "dry"
                    y[3] = 0.0
            if hit and reached + NUDGE_S < end:
                # A stretch that begins on a switching point must leave it.
                power = watt if heater_on else 0.0
                y = y + rates(reached, y) * NUDGE_S
                heater_j += power * NUDGE_S
                reached += NUDGE_S
            now = reached
    round_off = lambda v: None if v is None else float(f"{v:.{DIGITS}g}")
    return {
        "name": case["name"],
        "boiling_point_c": round_off(boiling),
        "t_boil_s": round_off(boiled_at),
        "water_boiled_away_kg": round_off(case["water_kg"] - y[3]),
        "energy": {
            "heater_j": round_off(heater_j),
            "pot_j": round_off(y[4]),
            "air_jacket_j": round_off(y[5]),
            "air_pot_j": round_off(y[6]),
            "steam_j": round_off(y[7]),
        },
        "samples": [{k: round_off(v) for k, v in s.items()} for s in samples],
    }


ALUMINIUM = {"cp_a": 885.0, "cp_b": 0.48}
IRON = {"cp_a": 450.0, "cp_b": 0.3}
STONE = {"cp_a": 760.0, "cp_b": 0.6}
SUGAR = {"cp_a": 1300.0, "cp_b": 2.0, "t_solidus": 116.5, "t_liquidus": 118.5, "latent_j_kg": 330e3, "cp_liquid": 2760.0}
SALT = {"cp_a": 1430.0, "cp_b": 0.6, "t_solidus": 222.0, "t_liquidus": 238.0, "latent_j_kg": 105e3, "cp_liquid": 1520.0}
NITRATE = {"cp_a": 1100.0, "cp_b": 2.3, "t_solidus": 306.5, "t_liquidus": 306.5, "latent_j_kg": 178e3, "cp_liquid": 1660.0}
ACID = {"cp_a": 1500.0, "cp_b": 1.0, "t_solidus": 152.5, "t_liquidus": 152.5, "latent_j_kg": 248e3, "cp_liquid": 2500.0}


def base(name, store, t_store, **changes):
    case = {
        "name": name,
        "store": [{"mass_kg": kg, **medium} for kg, medium in store],
        "g_loss_w_k": 0.45,
        "c_jacket_j_k": 2500.0,
        "g_pot_w_k": 0.6,
        "seat": {"g_contact_w_k": 8.0},
        "c_dry_j_k": 300.0,
        "water_kg": 1.0,
        "altitude_m": 0.0,
        "t_air_c": 22.0,
        "t_store_c": t_store,
        "t_jacket_c": 22.0 + 0.5 * (t_store - 22.0),
        "t_pot_c": 22.0,
        "power_w": [],
        "cutout_c": 350.0,
        "pot_in_s": None,
        "pot_out_s": None,
        "end_s": 14400.0,
    }
    case.update(changes)
    case["sample_s"] = [case["end_s"] * i / 12 for i in range(13)]
    return case


def layer(medium, depth, k, area, contact=10.0):
    return {"g_contact_w_k": contact, "layer": {"medium": medium, "depth_m": depth, "k_solid_w_mk": k, "area_m2": area}}


def chosen():
    day = [[0.0, 7200.0, 120.0], [7200.0, 21600.0, 260.0], [21600.0, 25200.0, 90.0]]
    return [
        base("the pot is in before the sun comes", [(5, ALUMINIUM)], 22.0, pot_in_s=0.0, power_w=[[7200.0, 21600.0, 250.0]], end_s=28800.0),
        base("the thermostat cuts out with a pot in", [(3, ALUMINIUM)], 150.0, pot_in_s=600.0, power_w=[[0.0, 10800.0, 400.0]], cutout_c=160.0, g_pot_w_k=0.3),
        base("the thermostat works all day", [(4, ALUMINIUM)], 40.0, power_w=day, cutout_c=150.0, end_s=43200.0),
        base("starts above the cut-out", [(4, ALUMINIUM)], 240.0, power_w=[[0.0, 20000.0, 150.0]], cutout_c=200.0, end_s=28800.0),
        base("boils nearly dry", [(9, ALUMINIUM)], 330.0, water_kg=0.5, pot_in_s=0.0, g_loss_w_k=0.3),
        base("boils dry and heats on", [(9, ALUMINIUM)], 330.0, water_kg=0.25, pot_in_s=0.0, g_loss_w_k=0.3),
        base("two media melt one after the other", [(3, SALT), (2, SUGAR), (1, ALUMINIUM)], 260.0, seat=layer(0, 0.02, 0.7, 0.05), pot_in_s=1800.0, pot_out_s=9000.0, end_s=86400.0),
        base("a plateau freezes on the seat", [(4, ACID), (1, ALUMINIUM)], 165.0, seat=layer(0, 0.025, 0.28, 0.05, 12.0), pot_in_s=900.0, water_kg=1.5, end_s=21600.0),
        base("a plateau is charged and discharged", [(4, NITRATE), (1, IRON)], 290.0, seat=layer(0, 0.02, 0.6, 0.05), power_w=[[0.0, 5400.0, 300.0]], pot_in_s=5400.0, water_kg=2.0, end_s=28800.0),
        base("the thermostat sits at a melting point", [(3, ACID), (1, ALUMINIUM)], 100.0, power_w=[[0.0, 30000.0, 150.0]], cutout_c=152.5, end_s=43200.0),
        base("the lower switching point is a melting point", [(3, ACID), (1, ALUMINIUM)], 100.0, power_w=[[0.0, 40000.0, 250.0]], cutout_c=157.5, end_s=86400.0),
        base("starts half molten", [(4, SUGAR)], 117.4, seat=layer(0, 0.03, 0.73, 0.045), pot_in_s=0.0, power_w=[[0.0, 7200.0, 200.0]]),
        base("the store is colder than the pot", [(6, ALUMINIUM)], 15.0, t_pot_c=85.0, pot_in_s=0.0, t_jacket_c=22.0),
        base("power while it boils", [(5, ALUMINIUM)], 180.0, pot_in_s=1200.0, power_w=[[0.0, 3000.0, 100.0], [3000.0, 9000.0, 350.0]]),
        base("boils, rests, and boils again", [(2, ALUMINIUM)], 240.0, pot_in_s=0.0, water_kg=0.5, power_w=[[9000.0, 18000.0, 250.0]], end_s=21600.0),
        base("at five thousand metres", [(5, ALUMINIUM)], 220.0, altitude_m=5000.0, pot_in_s=600.0, t_air_c=5.0, t_pot_c=5.0),
        base("a long hot week", [(20, STONE)], 300.0, end_s=604800.0, g_loss_w_k=0.2, pot_in_s=86400.0, pot_out_s=100800.0, water_kg=4.0),
        base("a jacket that weighs nothing", [(5, ALUMINIUM)], 200.0, c_jacket_j_k=50.0, pot_in_s=600.0),
        base("a heavy jacket, a bad one", [(3, IRON)], 250.0, c_jacket_j_k=20000.0, g_loss_w_k=2.5, pot_in_s=600.0),
        base("a seat that hardly touches", [(6, ALUMINIUM)], 280.0, seat={"g_contact_w_k": 0.8}, pot_in_s=0.0, g_pot_w_k=0.2, end_s=43200.0),
        base("a seat like a weld", [(6, ALUMINIUM)], 220.0, seat={"g_contact_w_k": 60.0}, pot_in_s=300.0),
        base("only just boils", [(2.9, ALUMINIUM)], 250.0, pot_in_s=0.0, g_pot_w_k=0.4, seat={"g_contact_w_k": 12.0}),
    ]


def drawn(count, seed):
    r = random.Random(seed)
    cases = []
    for index in range(count):
        media = r.sample([ALUMINIUM, IRON, STONE, SUGAR, SALT, ACID], r.choice([1, 1, 2, 3]))
        store = [(round(r.uniform(1.0, 6.0), 2), m) for m in media]
        melting = [i for i, m in enumerate(media) if "t_solidus" in m]
        contact = round(r.uniform(2.0, 25.0), 2)
        seat = {"g_contact_w_k": contact}
        if melting and r.random() < 0.7:
            seat = layer(r.choice(melting), round(r.uniform(0.005, 0.04), 3), round(r.uniform(0.3, 0.8), 2), 0.045, contact)
        end = r.choice([10800.0, 21600.0, 43200.0])
        into = r.choice([0.0, 600.0, 3600.0])
        cases.append(
            base(
                f"drawn {index}", store, round(r.uniform(90.0, 320.0), 1), seat=seat, end_s=end,
                pot_in_s=into, pot_out_s=r.choice([None, None, into + 7000.0]),
                g_loss_w_k=round(r.uniform(0.1, 1.0), 3), g_pot_w_k=round(r.uniform(0.15, 1.5), 3),
                c_jacket_j_k=round(r.uniform(300.0, 6000.0)), water_kg=round(r.uniform(0.3, 4.0), 2),
                c_dry_j_k=round(r.uniform(100.0, 2000.0)), altitude_m=round(r.uniform(0.0, 5000.0)),
                t_air_c=round(r.uniform(-5.0, 38.0), 1), t_pot_c=round(r.uniform(5.0, 40.0), 1),
                power_w=r.choice([[], [[0.0, 5400.0, 180.0]], [[1800.0, 4000.0, 90.0], [4000.0, 9000.0, 320.0]]]),
                cutout_c=r.choice([350.0, 250.0, 180.0]),
            )
        )
    return cases


def main():
    cases = chosen() + drawn(int(sys.argv[2]) if len(sys.argv) > 2 else 18, int(sys.argv[3]) if len(sys.argv) > 3 else 20)
    expected = []
    for case in cases:
        print(case["name"], file=sys.stderr)
        expected.append(solve(case))
    with open(sys.argv[1], "w") as out:
        json.dump({"source": "scipy 1.17.1 solve_ivp LSODA rtol 1e-9; iapws 1.5.5", "cases": cases, "expected": expected}, out, separators=(",", ":"))
        out.write("\n")


main()
