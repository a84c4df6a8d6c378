"""Makes ../data/more.json: sun and panel rows beyond those of solar.json.

python3 -m venv v && v/bin/pip install pvlib==0.16.1 scipy==1.17.1 numpy==2.4.6 pandas==3.1.1
v/bin/python more.py

The sheets are invented. A fit is taken only if scipy met all five of De Soto's equations with a
true shunt: for some sheets it stops early at its starting values, and reports success.
"""

import json
import math
import pathlib
import random

import numpy as np
import pandas as pd
from pvlib import clearsky, irradiance, ivtools, pvsystem, solarposition, temperature
from pvlib.ivtools.sdm import desoto as source
from scipy import constants

random.seed(20261125)
KELVIN_25 = 298.15
BOLTZMANN = constants.value("Boltzmann constant in eV/K")


def sheet(name):
    cells = random.choice([18, 32, 36, 40, 54, 60, 66, 72, 96])
    v_oc = cells * random.uniform(0.58, 0.74)
    i_sc = random.uniform(0.3, 18.0)
    return {
        "name": name,
        "v_mp": round(v_oc * random.uniform(0.78, 0.85), 2),
        "i_mp": round(i_sc * random.uniform(0.90, 0.955), 2),
        "v_oc": round(v_oc, 2),
        "i_sc": round(i_sc, 2),
        "alpha_sc": round(i_sc * random.uniform(2e-4, 7e-4), 5),
        "beta_voc": round(-v_oc * random.uniform(2.5e-3, 3.6e-3), 4),
        "n": cells,
    }


def fit(s):
    args = [s[k] for k in ("v_mp", "i_mp", "v_oc", "i_sc", "alpha_sc", "beta_voc", "n")]
    specs = (s["i_sc"], s["v_oc"], s["i_mp"], s["v_mp"], s["beta_voc"], s["alpha_sc"],
             1.121, -0.0002677, KELVIN_25, BOLTZMANN)
    for ideality in (1.0, 1.1, 1.2, 0.9, 1.3):
        a = ideality * BOLTZMANN * KELVIN_25 * s["n"]
        i_o = s["i_sc"] * math.exp(-s["v_oc"] / a)
        r_s = (a * math.log1p((s["i_sc"] - s["i_mp"]) / i_o) - s["v_mp"]) / s["i_mp"]
        guess = {"a_0": a, "Io_0": i_o, "Rs_0": max(r_s, 0.01)}
        try:
            p, _ = ivtools.sdm.fit_desoto(
                *args, init_guess=guess, root_kwargs={"options": {"maxiter": 20000}})
        except RuntimeError:
            continue
        params = (p["I_L_ref"], p["I_o_ref"], p["R_s"], p["R_sh_ref"], p["a_ref"])
        residual = np.abs(source._system_of_equations_desoto(params, specs)).max()
        if residual < 1e-8 * s["i_sc"] and p["R_s"] > 0 and p["R_sh_ref"] > 0:
            return {k: float(v) for k, v in p.items()}
    return None


def panel_rows(s, p):
    for _ in range(6):
        light = round(random.choice([random.uniform(2, 60), random.uniform(60, 1300)]), 1)
        cell = round(random.uniform(-10, 80), 1)
        load = round(s["v_mp"] / s["i_mp"] * 10 ** random.uniform(-0.5, 1.2), 3)
        i_l, i_o, r_s, r_sh, a = pvsystem.calcparams_desoto(
            light, cell, p["alpha_sc"], p["a_ref"], p["I_L_ref"], p["I_o_ref"],
            p["R_sh_ref"], p["R_s"])
        d = pvsystem.singlediode(i_l, i_o, r_s, r_sh, a)
        low, high = 0.0, float(d["v_oc"])
        for _ in range(80):
            v = 0.5 * (low + high)
            if float(pvsystem.i_from_v(v, i_l, i_o, r_s, r_sh, a)) > v / load:
                low = v
            else:
                high = v
        yield {
            "module": s["name"], "datasheet": s, "irradiance_w_m2": light, "cell_c": cell,
            "load_ohm": load, "p_mp_w": float(d["p_mp"]), "v_mp_v": float(d["v_mp"]),
            "v_oc_v": float(d["v_oc"]), "i_sc_a": float(d["i_sc"]), "p_load_w": low * low / load,
        }


def sun_row():
    time = pd.Timestamp(random.randint(-600_000_000, 4_100_000_000), unit="s", tz="UTC")
    latitude = round(random.uniform(-66, 66), 3)
    longitude = round(random.choice([random.uniform(-180, 180), 180.0, -180.0]), 3)
    index = pd.DatetimeIndex([time])
    position = solarposition.get_solarposition(index, latitude, longitude, method="nrel_numpy")
    zenith, azimuth = position.zenith, position.azimuth
    if zenith.iloc[0] > 100 or zenith.iloc[0] > 90 and random.random() < 0.8:
        return None
    tilt, facing = round(random.uniform(0, 90), 1), round(random.uniform(0, 360), 1)
    albedo = round(random.uniform(0.1, 0.6), 2)
    ghi = clearsky.haurwitz(zenith)["ghi"]
    split = irradiance.erbs(ghi, zenith, index)
    plane = irradiance.get_total_irradiance(
        tilt, facing, zenith, azimuth, split["dni"], ghi, split["dhi"], albedo=albedo,
        model="isotropic")["poa_global"]
    cell = temperature.faiman(plane, 25.0, 1.0)
    return {
        "latitude": latitude, "longitude": longitude, "altitude_m": 0.0,
        "time_utc": time.isoformat(), "tilt_deg": tilt, "surface_azimuth_deg": facing,
        "albedo": albedo, "zenith_deg": float(zenith.iloc[0]), "azimuth_deg": float(azimuth.iloc[0]),
        "extraterrestrial_normal_w_m2": float(irradiance.get_extra_radiation(index).iloc[0]),
        "haurwitz_ghi_w_m2": float(ghi.iloc[0]), "erbs_dhi_w_m2": float(split["dhi"].iloc[0]),
        "erbs_dni_w_m2": float(split["dni"].iloc[0]), "isotropic_poa_w_m2": float(plane.iloc[0]),
        "faiman_cell_c_at_25_c_1_m_s": float(cell.iloc[0]),
    }


def rounded(row):
    return {k: float(f"{v:.9g}") if isinstance(v, float) else v for k, v in row.items()}


sun = []
while len(sun) < 120:
    if row := sun_row():
        sun.append(rounded(row))
panel, n_sheets = [], 0
while n_sheets < 30:
    s = sheet(f"invented {n_sheets + 1}")
    if p := fit(s):
        panel += [rounded(row) for row in panel_rows(s, p)]
        n_sheets += 1
body = {"sun": sun, "panel": panel}
text = ",\n".join(
    f'"{key}": [\n' + ",\n".join(json.dumps(row) for row in rows) + "\n]"
    for key, rows in body.items())
path = pathlib.Path(__file__).parent.parent / "data" / "more.json"
path.write_text("{\n" + text + "\n}\n")
