"""Test runs of two cookers, fitted by a general-purpose library.

Needs Python 3.11 or later and scipy 1.17.1:

    python3 -m venv venv && venv/bin/pip install scipy==1.17.1
    venv/bin/python fit_cases.py ../data/fit.json

The runs are made by scipy.integrate.solve_ivp from true values, with noise of 1 K and a few readings far
off, and fitted by scipy.optimize.least_squares with loss="soft_l1". Nothing is shared with the Rust model
but the equations of the network and the tables of pot, media and evaporation named below.
"""

import json
import math
import sys

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import least_squares

CP_WATER = 4186.0
H_FG = 2256.5e3
AIR_C = 18.0
F_SCALE_K = 2.0
JACKET_IN_STORE = 0.13

# A thin aluminium pot of 2.5 L: 0.18 m by 0.098 m, 1.2 mm of 2700 kg/m3 and 925 J/kgK, sunk in the cooker
# with 1.45 W/m2K, its lid on, which lets a tenth of the open evaporation through.
BASE_M2 = np.pi / 4 * 0.18**2
SIDE_M2 = np.pi * 0.18 * 0.098
POT_J_K = (2 * BASE_M2 + SIDE_M2) * 0.0012 * 2700 * 925
POT_W_K = (2 * BASE_M2 + SIDE_M2) * 1.45
FILM_W_M2K = 900.0
EVAPORATES_W_PA = 0.089 * 1.25 * 0.10 * BASE_M2


def vapour_pa(t):
    return 610.8 * math.exp(17.27 * t / (t + 237.3))


ALUMINIUM = {"a": 903.0, "b": 0.41}
# As in the model's table of media: J/kgK, J/kgK2, J/kg, degC.
TABLES = {
    "sodium_potassium_nitrate": {"a": 1200.0, "b": 1.2, "latent": 110e3, "liquid": 1495.0, "melting_c": 230.0, "melting_range_k": 16.0},
    "mild_steel": {"a": 443.8, "b": 0.4121},
}


def table(cooker, p):
    """Temperatures and the heat of the whole store at each, J: straight between them, 0.05 K apart."""
    melting = (p["melting_c"], p["melting_range_k"]) if "melting_c" in p else (1e4, 1.0)
    low, high = melting[0] - melting[1] / 2, melting[0] + melting[1] / 2
    t = np.unique(np.concatenate([np.arange(-20.0, 600.0, 0.05), [low, high]]))
    heat = np.zeros_like(t)
    for m in cooker["media"]:
        solid = lambda x: m["a"] * x + m["b"] * x * x / 2
        if "latent" in m:
            molten = np.clip((t - low) / (high - low), 0.0, 1.0)
            heat += m["mass_kg"] * (solid(np.minimum(t, low)) + m["latent"] * molten + m["liquid"] * np.maximum(t - high, 0.0))
        else:
            heat += m["mass_kg"] * solid(t)
    # A share of the jacket's capacity gets hot with the store.
    return t, p["store_capacity"] * heat + JACKET_IN_STORE * p["jacket_j_k"] * t


def simulate(cooker, run, p, start):
    """Store and pot at the run's times."""
    store_c, jacket_c, pot_c = start
    at_c, at_j = table(cooker, p)
    half = 2 * p["loss_w_k"]
    boil = run["water_kg"] is not None

    def seat_w_k(pot):
        # The film inside the pot by the free convection of water, 580 to 1160 W/m2K from 25 to 95 degC.
        film = FILM_W_M2K * (580 + (pot - 25) * 580 / 70) / (580 + 55 * 580 / 70)
        return BASE_M2 / (1 / p["contact_w_m2k"] + 1 / film)

    def rates(_, y):
        heat, jacket, pot, water = y
        store = np.interp(heat, at_j, at_c)
        loss = half * (store - jacket)
        into = seat_w_k(pot) * (store - pot) if boil else 0.0
        d_store = run["heater_w"] - loss - into
        d_jacket = (loss - half * (jacket - AIR_C)) / ((1 - 2 * JACKET_IN_STORE) * p["jacket_j_k"])
        if not boil:
            return [d_store, d_jacket, 0.0, 0.0]
        evaporates = EVAPORATES_W_PA * max(vapour_pa(pot) - 0.5 * vapour_pa(AIR_C), 0.0)
        d_water = -evaporates / H_FG
        # Heat leaves with the vapour as it had it: only the latent part cools what stays.
        d_pot = (into - POT_W_K * p["pot_loss"] * (pot - AIR_C) - evaporates) / (POT_J_K + CP_WATER * water)
        return [d_store, d_jacket, d_pot, d_water]

    y0 = [float(np.interp(store_c, at_c, at_j)), jacket_c, pot_c, run["water_kg"] or 0.0]
    out = solve_ivp(rates, (0.0, run["times_s"][-1]), y0, method="LSODA", rtol=1e-8, atol=[1.0, 1e-5, 1e-5, 1e-8], t_eval=run["times_s"], max_step=900.0)
    assert out.success
    return np.interp(out.y[0], at_j, at_c), out.y[2]


def times(hours, step_s):
    return [float(t) for t in np.arange(0.0, hours * 3600 + 1, step_s)]


def run(name, hours, step_s, heater_w, start, water_kg=None):
    return {"name": name, "times_s": times(hours, step_s), "heater_w": heater_w, "start": start, "water_kg": water_kg}


COOKERS = [
    {
        "name": "a block of aluminium",
        "media": [{"medium": "aluminium", "mass_kg": 5.0, **ALUMINIUM}],
        "described": {"loss_w_k": 0.3, "jacket_j_k": 2000.0, "store_capacity": 1.0, "contact_w_m2k": 800.0, "pot_loss": 1.0},
        "true": {"loss_w_k": 0.41, "jacket_j_k": 2700.0, "store_capacity": 0.94, "contact_w_m2k": 310.0, "pot_loss": 1.3},
        "runs": [
            run("heat up", 4.0, 120.0, 140.0, (19.0, 18.5, 18.0)),
            run("cool down", 10.0, 240.0, 0.0, (262.0, 131.0, 18.0)),
            run("nearly boil", 1.5, 60.0, 0.0, (195.0, 100.0, 19.0), 2.2),
        ],
        "seed": 11,
    },
    {
        "name": "salt between fins",
        "media": [
            {"medium": "sodium_potassium_nitrate", "mass_kg": 6.0, "a": None},
            {"medium": "mild_steel", "mass_kg": 3.0, "a": None},
        ],
        "described": {"loss_w_k": 0.4, "jacket_j_k": 3000.0, "store_capacity": 1.0, "melting_c": None, "melting_range_k": None},
        "true": {"loss_w_k": 0.36, "jacket_j_k": 3900.0, "store_capacity": 1.07, "melting_c": 233.0, "melting_range_k": 14.0},
        "runs": [
            run("heat up", 6.0, 180.0, 220.0, (60.0, 40.0, 18.0)),
            run("cool down", 14.0, 360.0, 0.0, (295.0, 150.0, 18.0)),
        ],
        "seed": 12,
    },
]


def fill(cooker):
    for medium in cooker["media"]:
        if medium["a"] is None:
            medium.update(TABLES[medium["medium"]])
    melting = next((m for m in cooker["media"] if "latent" in m), None)
    if melting:
        cooker["described"]["melting_c"] = melting["melting_c"]
        cooker["described"]["melting_range_k"] = melting["melting_range_k"]


def fit(cooker):
    rng = np.random.default_rng(cooker["seed"])
    runs = cooker["runs"]
    for r in runs:
        store, pot = simulate(cooker, r, cooker["true"], r["start"])
        noisy = lambda values: values + rng.normal(0, 1.0, len(values))
        store, pot = noisy(store), noisy(pot)
        # Two in a hundred readings are far off.
        for values in (store, pot):
            for place in rng.choice(len(values), max(1, len(values) // 50), replace=False):
                values[place] += rng.choice([-1, 1]) * rng.uniform(15, 60)
        r["store_c"] = [round(float(v), 2) for v in store]
        r["pot_c"] = [round(float(v), 2) for v in pot] if r["water_kg"] else None

    keys = list(cooker["described"])

    def unpack(x):
        p = {}
        for k, v in zip(keys, x):
            # Each begins at 1, since scipy's steps are shares of the value.
            p[k] = cooker["described"][k] * (v if k == "melting_c" else math.exp(v - 1.0))
        return p

    def residuals(x):
        p = unpack(x)
        rest = list(x[len(keys):])
        out = []
        for r in runs:
            store, jacket = rest.pop(0), rest.pop(0)
            pot = rest.pop(0) if r["water_kg"] else 18.0
            got_store, got_pot = simulate(cooker, r, p, (store, jacket, pot))
            out.append(got_store - np.array(r["store_c"]))
            if r["water_kg"]:
                # The first reading of the pot is its start.
                out.append((got_pot - np.array(r["pot_c"]))[1:])
        return np.concatenate(out)

    x0 = [1.0] * len(keys)
    for r in runs:
        first = float(np.median(r["store_c"][:5]))
        x0 += [first, AIR_C + 0.5 * (first - AIR_C)]
        if r["water_kg"]:
            x0.append(r["pot_c"][0])
    found = least_squares(residuals, x0, loss="soft_l1", f_scale=F_SCALE_K, x_scale="jac", xtol=1e-8, ftol=1e-9, diff_step=1e-3, verbose=0)
    assert found.success
    return {k: float(f"{v:.8g}") for k, v in unpack(found.x).items()}


def main():
    out = []
    for cooker in COOKERS:
        fill(cooker)
        expected = fit(cooker)
        print(cooker["name"], expected, cooker["true"], file=sys.stderr, flush=True)
        out.append(
            {
                "name": cooker["name"],
                "media": [{"medium": m["medium"], "mass_kg": m["mass_kg"]} for m in cooker["media"]],
                "described": {k: cooker["described"][k] for k in ("loss_w_k", "jacket_j_k")},
                "runs": [
                    {k: r[k] for k in ("name", "times_s", "heater_w", "water_kg", "store_c", "pot_c")} for r in cooker["runs"]
                ],
                "expected": expected,
            }
        )
    with open(sys.argv[1], "w") as file:
        json.dump({"source": "scipy 1.17.1 optimize.least_squares, loss soft_l1, f_scale 2 K", "cookers": out}, file, separators=(",", ":"))
        file.write("\n")


main()
