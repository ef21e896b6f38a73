"""The sun's place and its rises against pvlib's SPA (BSD-3): writes golden values for the plain tests.

    tests/peers/.venv/bin/pip install pvlib==0.16.1
    tests/peers/.venv/bin/python tests/peers/sun_against_pvlib.py tests/data/sun-golden.json
"""

import json
import random
import sys

import pandas as pd
import pvlib
from pvlib.atmosphere import alt2pres

SEED = 20260311


def main(path):
    rng = random.Random(SEED)
    positions, days = [], []
    for _ in range(200):
        latitude, longitude = round(rng.uniform(-85, 85), 4), round(rng.uniform(-180, 180), 4)
        height = round(rng.choice([0, rng.uniform(0, 3000)]), 1)
        date = pd.Timestamp(year=rng.randint(1990, 2050), month=1, day=1) + pd.Timedelta(days=rng.randrange(365))
        hour = round(rng.uniform(0, 24), 4)
        time = pd.DatetimeIndex([date + pd.Timedelta(hours=hour)]).tz_localize("UTC")
        pressure, celsius = round(alt2pres(height) / 100, 3), round(rng.uniform(-20, 35), 1)
        sun = pvlib.solarposition.spa_python(
            time, latitude, longitude, altitude=height, pressure=pressure * 100, temperature=celsius, delta_t=None
        ).iloc[0]
        positions.append(
            [latitude, longitude, height, date.year, date.month, date.day, hour, pressure, celsius,
             round(float(sun["azimuth"]), 7), round(float(sun["apparent_elevation"]), 7)]
        )
    while len(days) < 60:
        latitude, longitude = round(rng.uniform(-64, 64), 4), round(rng.uniform(-80, 80), 4)
        date = pd.Timestamp(year=rng.randint(2000, 2040), month=1, day=1) + pd.Timedelta(days=rng.randrange(365))
        times = pd.DatetimeIndex([date]).tz_localize("UTC")
        rises = pvlib.solarposition.sun_rise_set_transit_spa(times, latitude, longitude, delta_t=None).iloc[0]
        hours = [(rises[name] - times[0]).total_seconds() / 3600 for name in ("sunrise", "transit", "sunset")]
        if not 0 < hours[0] < hours[1] < hours[2] < 24:
            continue  # beyond midnight it takes the declination of another day
        days.append([latitude, longitude, date.year, date.month, date.day] + [round(h, 5) for h in hours])
    golden = {
        "made_by": f"tests/peers/sun_against_pvlib.py, pvlib {pvlib.__version__}, seed {SEED}",
        "positions": positions,
        "days": days,
    }
    rows = {name: ",\n  ".join(json.dumps(row) for row in golden[name]) for name in ("positions", "days")}
    with open(path, "w", encoding="utf-8") as file:
        file.write(f'{{"made_by": {json.dumps(golden["made_by"])},\n')
        file.write(' "position_is": "latitude, longitude, height m, year, month, day, hour UTC, hPa, celsius, azimuth, elevation",\n')
        file.write(' "day_is": "latitude, longitude, year, month, day, sunrise, noon, sunset in hours UTC",\n')
        file.write(f' "positions": [\n  {rows["positions"]}],\n "days": [\n  {rows["days"]}]}}\n')
    print(f"{len(positions)} positions and {len(days)} days written to {path}")


if __name__ == "__main__":
    main(sys.argv[1])
