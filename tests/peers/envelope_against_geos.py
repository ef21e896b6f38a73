"""Upper envelopes of random parts of a house, face by face against polygon overlays with GEOS.

Needs shapely. The peer gets the faces of each part before any is hidden, and works out what is seen of each in another
way: from a face it takes away, for every face of another part, the ground of that face where its plane is higher (cut out
by a large half plane). What is left is compared in area and by its symmetric difference. See README.md here.
"""

import argparse
import json
import math
import os
import random
import subprocess
import sys

from shapely import make_valid, unary_union
from shapely.geometry import Polygon

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
FAR = 1e3


def rectangle(x, y, wide, deep, turn):
    c, s = math.cos(turn), math.sin(turn)
    corners = [(x, y), (x + wide, y), (x + wide, y + deep), (x, y + deep)]
    return [[a * c - b * s, a * s + b * c] for a, b in corners]


def part(ring, rises, eave, overhang):
    def side(rise):
        if rise is None:
            return {"treatment": "gable"}
        return {"treatment": {"slope": f"{rise / 12!r} rise/run"}, "eave_height": eave, "overhang": overhang}
    return {"outline": {"outer": ring}, "sides": [[side(rise) for rise in rises]]}


def house(rng):
    """An L with dormers, an ell and a porch, in the proportions of houses; every second one on a grid of 0.5 m."""
    q = (lambda v: round(v * 2) / 2) if rng.random() < 0.5 else (lambda v: v)
    wide, deep = q(rng.uniform(10, 18)), q(rng.uniform(7, 11))
    turn = rng.choice([0.0, 0.0, rng.uniform(0, math.tau)])
    rise = rng.choice([4, 6, 8, 9, 12])
    hip = rng.random() < 0.5
    end = rise if hip else None
    over = rng.choice([0.0, 0.3, 0.5])
    parts = [part(rectangle(0, 0, wide, deep, turn), [rise, end, rise, end], 3.0, over)]
    for _ in range(rng.randrange(1, 4)):
        w, d = q(rng.uniform(1.5, 3)), q(rng.uniform(2, deep / 2))
        x, y = q(rng.uniform(0.5, wide - 3.5)), q(rng.uniform(0.3, 1.5))
        own = rng.choice([3, 6, 8])
        front = rng.choice([None, own])
        rises = [own, None, None, None] if rng.random() < 0.3 else [front, own, None, own]
        eave = 3.0 + y * rise / 12 + rng.uniform(0.4, 1.5)
        parts.append(part(rectangle(x, y, w, d, turn), rises, eave, rng.choice([0.0, 0.2])))
    if rng.random() < 0.6:
        w, d = q(rng.uniform(4, 8)), q(rng.uniform(4, 12))
        skew = turn + rng.choice([0.0, 0.0, rng.uniform(-0.3, 0.3)])
        parts.append(part(rectangle(q(rng.uniform(0, wide - 4)), -q(d / 2), w, d, skew), [None, rise, None, rise],
                          rng.choice([3.0, 2.5, 3.7]), 0.0))
    if rng.random() < 0.5:
        parts.append(part(rectangle(q(rng.uniform(0, wide - 5)), -2.4, 4.0, 2.4, turn), [3, None, None, None], 2.0, 0.0))
    return parts


def higher(one, two):
    """The half plane in which `two` is above `one`, as a large polygon; None for nowhere, True for everywhere."""
    gx, gy = (two["gradient"][i] - one["gradient"][i] for i in range(2))
    rise = two["at_origin"] - one["at_origin"]
    steep = math.hypot(gx, gy)
    if steep < 1e-9:
        return True if rise > 1e-6 else None
    nx, ny = gx / steep, gy / steep
    fx, fy = -nx * rise / steep, -ny * rise / steep
    corners = [(-FAR, 0), (FAR, 0), (FAR, FAR), (-FAR, FAR)]
    return Polygon([(fx - ny * u + nx * v, fy + nx * u + ny * v) for u, v in corners])


def shape(rings):
    return Polygon(rings[0], rings[1:])


def expected(surfaces):
    left = []
    for i, one in enumerate(surfaces):
        ground = shape(one["rings"])
        hidden = []
        for j, two in enumerate(surfaces):
            if two["part"] == one["part"] or not ground.intersects(shape(two["rings"])):
                continue
            where = higher(one, two)
            same = where is None and abs(two["at_origin"] - one["at_origin"]) <= 1e-6
            if where is True or (same and j < i):
                hidden.append(shape(two["rings"]))
            elif where is not None:
                hidden.append(shape(two["rings"]).intersection(where))
        left.append(make_valid(ground).difference(unary_union(hidden)) if hidden else ground)
    return left


def program():
    target = os.environ.get("CARGO_TARGET_DIR", os.path.join(ROOT, "target"))
    for kind in ("release", "debug"):
        path = os.path.join(target, kind, "examples", "envelope_json")
        if os.path.exists(path):
            return path
    sys.exit("build it first: cargo build -p chalkcourse-geometry --example envelope_json")


def answers(cases):
    lines = "".join(json.dumps(case) + "\n" for case in cases)
    done = subprocess.run([program()], input=lines, capture_output=True, text=True, check=True)
    return [json.loads(line) for line in done.stdout.splitlines()]


def judge(cases):
    worst, apart, refused, golden = 0.0, [], [], []
    for number, (case, answer) in enumerate(zip(cases, answers(cases))):
        if "error" in answer:
            refused.append((number, answer["error"]))
            continue
        theirs = expected(answer["surfaces"])
        difference = 0.0
        areas = {}
        for piece in answer["pieces"]:
            mine = shape(piece["rings"])
            areas.setdefault(piece["surface"], 0.0)
            areas[piece["surface"]] += mine.area
            peer = unary_union([theirs[i] for i in piece["surfaces"]])
            difference = max(difference, mine.difference(peer.buffer(1e-4)).area)
        total, sought = sum(areas.values()), sum(face.area for face in theirs)
        difference = max(difference, abs(total - sought))
        worst = max(worst, difference)
        if difference > 1e-3:
            apart.append((number, difference))
        else:
            golden.append({"parts": case, "areas": [[i, round(theirs[i].area, 6)] for i in sorted(areas)],
                           "total": round(sought, 6)})
    print(len(cases), "houses,", len(apart), "apart,", len(refused), "refused, greatest difference", worst, "m²")
    for odd in apart + refused:
        print(*odd)
    return apart, golden


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--count", type=int, default=1000)
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--golden", metavar="FILE", help="write the first 40 houses with GEOS's areas")
    chosen = options.parse_args()
    rng = random.Random(chosen.seed)
    apart, golden = judge([house(rng) for _ in range(chosen.count)])
    if chosen.golden:
        how = ("By tests/peers/envelope_against_geos.py --golden: random parts of a house; for each face that is seen, by its "
               "index among the faces of all parts, the plan area that GEOS (shapely) leaves of it, and the total, in m².")
        with open(chosen.golden, "w", encoding="utf-8") as file:
            file.write('{"how": ' + json.dumps(how, ensure_ascii=False) + ', "houses": [\n')
            file.write(",\n".join(json.dumps(one) for one in golden[:40]) + "\n]}\n")
    sys.exit(1 if apart else 0)


if __name__ == "__main__":
    main()
