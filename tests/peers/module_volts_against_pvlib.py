"""A module's voltages by linear coefficients against pvlib's single-diode models (BSD-3), cold and hot: writes golden values for the
plain tests.

    tests/peers/.venv/bin/pip install pvlib==0.16.1
    tests/peers/.venv/bin/python tests/peers/module_volts_against_pvlib.py tests/data/module-volts-golden.json

Five crystalline modules, drawn by chance from the CEC module table that comes with pvlib (California Energy Commission, as in NREL's
SAM), known here by their numbers alone. For each, two single-diode models at 1,000 W/m²:

- De Soto, Klein and Beckman (2006), fitted by pvlib to the datasheet numbers (fit_desoto): it takes the coefficient of the open-circuit
  voltage as stated, so that what is left between it and a straight line is the line's own error.
- CEC (Dobos, 2012), with the table's own parameters: it bends the stated coefficients of current and voltage by "Adjust", so that the
  power comes out as stated. What is between it and a straight line is mostly that.

Cell temperatures by pvlib's SAPM model (King and others, 2004): by night those of the air, in full sun on a roof those of a close mount.
The same for 200 more modules gives the spread. The seed is in the script.
"""

import json
import random
import re
import sys
import warnings

import pvlib

SEED = 20261128
CELLS = (-22.0, 25.0, 77.0)
PARAMETERS = ("alpha_sc", "a_ref", "I_L_ref", "I_o_ref", "R_sh_ref", "R_s")

# Where the fit begins: at the table's own parameters.
STARTS = {"IL": "I_L_ref", "Io": "I_o_ref", "Rs": "R_s", "Rsh": "R_sh_ref", "a": "a_ref"}


def points(model, parameters, celsius):
    diode = model(1000.0, celsius, *parameters)
    found = pvlib.pvsystem.singlediode(*diode)
    return [round(float(found["v_oc"]), 4), round(float(found["v_mp"]), 4)]


def slopes(model, parameters):
    """The model's own coefficients of both voltages at standard conditions, in per cent per kelvin."""
    cool, standard, warm = (points(model, parameters, celsius) for celsius in (20.0, 25.0, 30.0))
    return [round((warm[which] - cool[which]) / 10 / standard[which] * 100, 4) for which in (0, 1)]


def module(row):
    """Datasheet numbers and both models' voltages, or None where the fit has no answer."""
    number = {name: float(row[name]) for name in row.index if name not in ("Technology", "Version", "Date", "Bifacial", "BIPV", "Length", "Width")}
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            fit, _ = pvlib.ivtools.sdm.fit_desoto(
                v_mp=number["V_mp_ref"], i_mp=number["I_mp_ref"], v_oc=number["V_oc_ref"], i_sc=number["I_sc_ref"],
                alpha_sc=number["alpha_sc"], beta_voc=number["beta_oc"], cells_in_series=int(number["N_s"]),
                init_guess={f"{short}_0": number[name] for short, name in STARTS.items()},
            )
    except RuntimeError:
        return None
    if fit["R_s"] <= 0 or fit["R_sh_ref"] <= 0:
        return None
    de_soto = [fit[name] for name in PARAMETERS]
    cec = [number[name] for name in PARAMETERS] + [number["Adjust"]]
    return {
        "cells": int(number["N_s"]),
        "voc": number["V_oc_ref"],
        "isc": number["I_sc_ref"],
        "vmp": number["V_mp_ref"],
        "imp": number["I_mp_ref"],
        "voc_percent_per_kelvin": round(number["beta_oc"] / number["V_oc_ref"] * 100, 5),
        "power_percent_per_kelvin": number["gamma_r"],
        "ideality_volts": round(fit["a_ref"], 5),
        "adjust_percent": round(number["Adjust"], 3),
        "de_soto_percent_per_kelvin": slopes(pvlib.pvsystem.calcparams_desoto, de_soto),
        "cec_percent_per_kelvin": slopes(pvlib.pvsystem.calcparams_cec, cec),
        "de_soto": [points(pvlib.pvsystem.calcparams_desoto, de_soto, celsius) for celsius in CELLS],
        "cec": [points(pvlib.pvsystem.calcparams_cec, cec, celsius) for celsius in CELLS],
    }


# What a straight line is drawn of, and by which coefficient: the open-circuit voltage by the stated one, the voltage at most power by that
# of power, as where a maker states no other, and both by the model's own.
LINES = {"voc": (0, "voc", "voc_percent_per_kelvin"), "vmp": (1, "vmp", "power_percent_per_kelvin"), "voc_own": (0, "voc", None), "vmp_own": (1, "vmp", None)}


def off(found, model, line, cell):
    """What the straight line says more than the model, in per cent."""
    which, standard, percent = LINES[line]
    slope = found[percent] if percent else found[f"{model}_percent_per_kelvin"][which]
    return (found[standard] * (1 + slope / 100 * (CELLS[cell] - 25)) / found[model][cell][which] - 1) * 100


def spread(many):
    rows = {}
    for model in ("de_soto", "cec"):
        for line in LINES:
            for cell, where in ((0, "cold"), (2, "hot")):
                values = sorted(off(found, model, line, cell) for found in many)
                shares = [values[int(len(values) * share)] for share in (0, 0.05, 0.5, 0.95)] + [values[-1]]
                rows[f"{model}_{line}_{where}"] = [round(value, 2) for value in shares]
    return rows


def cell_temperatures():
    mount = pvlib.temperature.TEMPERATURE_MODEL_PARAMETERS["sapm"]["close_mount_glass_glass"]
    cases = [(-22.0, 0.0, 1.0), (20.0, 1000.0, 1.0), (34.0, 1000.0, 1.0), (34.0, 800.0, 1.0), (34.0, 1000.0, 4.0)]
    return [[air, sun, wind, round(float(pvlib.temperature.sapm_cell(sun, air, wind, **mount)), 2)] for air, sun, wind in cases]


def main(path):
    table = pvlib.pvsystem.retrieve_sam("CECMod").T
    crystalline = table[table["Technology"].isin(["Mono-c-Si", "Multi-c-Si"]) & (table["STC"].astype(float) >= 330)]
    rng = random.Random(SEED)
    drawn = iter(rng.sample(range(len(crystalline)), 1500))
    found = []
    tried = 0
    while len(found) < 205:
        tried += 1
        answer = module(crystalline.iloc[next(drawn)])
        if answer:
            found.append(answer)
    golden = {
        "made_by": f"tests/peers/module_volts_against_pvlib.py, pvlib {pvlib.__version__}, its CEC module table, seed {SEED}",
        "models": "de_soto and cec: [Voc, Vmp] at cells of -22, 25 and 77 celsius, 1,000 W/m2; their own coefficients between 20 and 30",
        "modules": [{"name": f"statistical module {number}", **one} for number, one in enumerate(found[:5], 1)],
        "spread_is": "of 200 more modules, line over model in per cent: least, 5 %, half, 95 %, most",
        "spread": spread(found[5:]),
        "cell_is": "air celsius, W/m2, wind m/s, cell celsius by SAPM, close mount",
        "cell": cell_temperatures(),
    }
    text = re.sub(r"\[\s*([-0-9., \n]+?)\s*\]", lambda row: "[" + re.sub(r"\s+", " ", row[1]) + "]", json.dumps(golden, indent=1))
    with open(path, "w", encoding="utf-8") as file:
        file.write(text + "\n")
    print(f"{tried} modules drawn for {len(found)} that fit")
    for one in golden["modules"]:
        told = {row: values[0] for row, values in spread([one]).items()}
        print(one["name"], told)
    print(golden["spread"], golden["cell"])


if __name__ == "__main__":
    main(sys.argv[1])
