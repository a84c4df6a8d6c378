"""Pots on dry seats whose air follows its temperatures, solved by general-purpose libraries.

    python3 -m venv venv && venv/bin/pip install scipy==1.17.1 CoolProp==8.0.0
    venv/bin/python seat_cases.py ../data/seat.json

Air by CoolProp at one atmosphere; radiation between grey parallel plates exactly; a layer of 8 mm heated
from below by Hollands et al., J. Heat Transfer 98 (1976) 189. The temperatures of both faces are found
anew at every instant, so that face, gap and film carry the same heat: nothing is shared with the model but
the film in the pot (580 W/m2K at 25 degC and 1160 at 95, straight between) and the cases.
"""

import json
import math
import random
import sys

from CoolProp.CoolProp import PropsSI
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

random.seed(20261130)
SIGMA = 5.670374419e-8
G = 9.80665
JUMP_M = 0.5e-6
AREA_M2 = math.pi * 0.2**2 / 4
# Saturated water at 101325 Pa by IAPWS-IF97.
BOILING_C = 99.9743
CP_WATER = 4186.0
AIR_C = 22.0
# Name of the seat, its gap in m, emissivities, and whether its air can turn over.
SEATS = [
    ("machined_clamped", 0.023e-3, (0.3, 0.2), False),
    ("dry_flat", 0.07e-3, (0.3, 0.2), False),
    ("dry_ordinary", 0.18e-3, (0.3, 0.2), False),
    ("dry_warped", 0.46e-3, (0.3, 0.2), False),
    ("badly_warped", 0.95e-3, (0.3, 0.2), False),
    ("radiant_gap", 8e-3, (0.9, 0.9), True),
]


def air(quantity, t_c):
    return PropsSI(quantity, "T", t_c + 273.15, "P", 101325.0, "Air")


def flux(hot_c, cold_c, gap_m, emissivities, turns):
    """From face to face, W/m2."""
    mean_c = (hot_c + cold_c) / 2
    k = air("L", mean_c)
    if turns:
        density = air("D", mean_c)
        nu = air("V", mean_c) / density
        alpha = k / (density * air("C", mean_c))
        rayleigh = G * max(hot_c - cold_c, 0.0) * gap_m**3 / ((mean_c + 273.15) * nu * alpha)
        nusselt = 1.0
        if rayleigh > 1708.0:
            nusselt += 1.44 * (1 - 1708.0 / rayleigh)
            nusselt += max((rayleigh / 5830.0) ** (1 / 3) - 1, 0.0)
        conducted = nusselt * k / gap_m * (hot_c - cold_c)
    else:
        conducted = k / (gap_m + JUMP_M) * (hot_c - cold_c)
    warm, cool = emissivities
    radiated = SIGMA * ((hot_c + 273.15) ** 4 - (cold_c + 273.15) ** 4)
    return conducted + radiated / (1 / warm + 1 / cool - 1)


def into_pot_w(store_c, pot_c, case, seat):
    """The heat that passes face, gap and film alike."""
    _, gap_m, emissivities, turns = seat
    film = AREA_M2 * (580.0 + 580.0 * (pot_c - 25.0) / 70.0)
    if store_c - pot_c < 1e-6:
        return 0.0

    def left_over(heat_w):
        hot_c = store_c - heat_w * case["face_k_w"]
        cold_c = pot_c + heat_w / film
        return AREA_M2 * flux(hot_c, cold_c, gap_m, emissivities, turns) - heat_w

    most_w = (store_c - pot_c) / (case["face_k_w"] + 1 / film)
    return brentq(left_over, 0.0, most_w, xtol=1e-8, rtol=1e-12)


def solve(case, seat):
    mass = case["aluminium_kg"]
    pot_j_k = case["c_dry_j_k"] + CP_WATER * case["water_kg"]
    loss = case["g_loss_w_k"]

    def rates(_, y):
        store_c, jacket_c, pot_c = y
        heat_w = into_pot_w(store_c, pot_c, case, seat)
        in_w = 2 * loss * (store_c - jacket_c)
        return [
            -(heat_w + in_w) / (mass * (903.0 + 0.41 * store_c)),
            (in_w - 2 * loss * (jacket_c - AIR_C)) / case["c_jacket_j_k"],
            (heat_w - case["g_pot_w_k"] * (pot_c - AIR_C)) / pot_j_k,
        ]

    def boils(_, y):
        return y[2] - BOILING_C

    boils.terminal, boils.direction = True, 1
    start = [case["t_store_c"], (case["t_store_c"] + AIR_C) / 2, case["t_pot_c"]]
    found = solve_ivp(rates, (0, 6 * 3600), start, "LSODA", events=boils, rtol=1e-8, atol=1e-7)
    if not len(found.t_events[0]):
        return None
    store_c = found.y_events[0][0][0]
    return {"t_boil_s": round(float(found.t_events[0][0]), 3), "t_store_c": round(float(store_c), 4)}


def draw(seat):
    return {
        "seat": seat[0],
        "aluminium_kg": round(random.uniform(4, 12), 2),
        "t_store_c": round(random.uniform(200, 340), 1),
        "face_k_w": random.choice([0.0, round(random.uniform(0.005, 0.1), 4)]),
        "water_kg": round(random.uniform(0.5, 2.0), 2),
        "c_dry_j_k": round(random.uniform(200, 600), 0),
        "t_pot_c": round(random.uniform(10, 35), 1),
        "g_pot_w_k": round(random.uniform(0.1, 0.4), 3),
        "g_loss_w_k": round(random.uniform(0.1, 0.5), 3),
        "c_jacket_j_k": round(random.uniform(1000, 5000), 0),
    }


cases = []
for seat in SEATS:
    count = 0
    while count < 3:
        case = draw(seat)
        if expected := solve(case, seat):
            cases.append({**case, "expected": expected})
            count += 1
with open(sys.argv[1], "w") as out:
    out.write("[\n" + ",\n".join(json.dumps(case) for case in cases) + "\n]\n")
