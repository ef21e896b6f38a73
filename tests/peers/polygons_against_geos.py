"""Polygon area, difference, intersection and inward offset of chalkcourse-geometry against GEOS (Python package shapely).

Run from the top of the checkout, see tests/peers/README.md:
    tests/peers/.venv/bin/python tests/peers/polygons_against_geos.py
"""

import json
import math
import random
import subprocess
import sys

from shapely.geometry import Polygon


def star(rng, centre):
    corners = rng.randint(3, 14)
    turn = rng.random() * 6
    radii = [rng.uniform(1, 8) for _ in range(corners)]
    return [
        [centre[0] + r * math.cos(turn + i * math.tau / corners), centre[1] + r * math.sin(turn + i * math.tau / corners)]
        for i, r in enumerate(radii)
    ]


def main():
    rng = random.Random(20260301)
    cases = []
    for _ in range(2000):
        centre = (rng.uniform(-20, 20), rng.uniform(-20, 20))
        near = (centre[0] + rng.uniform(-6, 6), centre[1] + rng.uniform(-6, 6))
        a, b = star(rng, centre), star(rng, near)
        if rng.random() < 0.1:  # a bow tie: must be told by both
            a[0], a[1] = a[1], a[0]
        cases.append({"a": {"outer": a}, "b": {"outer": b}, "offset": round(rng.uniform(0.05, 0.8), 3)})
    usable = [c for c in cases if Polygon(c["b"]["outer"]).is_valid]
    run = subprocess.run(
        ["cargo", "run", "--quiet", "--package", "chalkcourse-geometry", "--example", "shapes_json"],
        input=json.dumps(usable), capture_output=True, text=True, check=True,
    )
    answers = json.loads(run.stdout)
    worst = {"area": 0.0, "difference": 0.0, "intersection": 0.0, "inset": 0.0}
    wrong = []
    sound = 0
    for index, (case, answer) in enumerate(zip(usable, answers)):
        a, b = Polygon(case["a"]["outer"]), Polygon(case["b"]["outer"])
        if a.is_valid != answer["sound"]:
            wrong.append((index, "sound", a.is_valid, answer["sound"]))
        if not a.is_valid:
            continue
        sound += 1
        expected = {
            "area": a.area,
            "difference": a.difference(b).area,
            "intersection": a.intersection(b).area,
            "inset": a.buffer(-case["offset"], join_style="mitre", mitre_limit=40.0).area,
        }
        for name, value in expected.items():
            away = abs(value - answer[name])
            worst[name] = max(worst[name], away)
            # Both round to a grid of their own in overlays; an offset may cut a mitre a hair apart.
            if away > (2e-5 if name == "inset" else 1e-6):
                wrong.append((index, name, value, answer[name]))
    print(f"{len(usable)} cases, {sound} sound; greatest difference in m2: {worst}; {len(wrong)} apart")
    for row in wrong[:20]:
        print("  apart:", row)
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
