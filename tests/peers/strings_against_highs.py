"""Automatic stringing against HiGHS: random arrays as integer programs over links, and by this project.

    cargo build --release -p chalkcourse-tests --example divide_json
    tests/peers/.venv/bin/python tests/peers/strings_against_highs.py                   # 60 random arrays
    tests/peers/.venv/bin/python tests/peers/strings_against_highs.py --count 300 --golden tests/data/strings-golden.json
    tests/peers/.venv/bin/python tests/peers/strings_against_highs.py --time            # both at 24 modules, in one run

The program: a link between two modules is there or not, a module has two links or ways home, as many ways home as twice the
circuits; first the fewest extension leads, then with that many the least length. A solution whose circuits are closed rings, too
long or too short is cut off (subtours by Dantzig, Fulkerson and Johnson, 1954; capacity by Laporte, Nobert and Desrochers, 1985)
and the program solved again. Arrays are rows of landscape modules with gaps and shifts. The seed is in the script. Ends with 1
when an answer differs.
"""

import argparse
import json
import math
import os
import random
import statistics
import subprocess
import sys
import time
from pathlib import Path

import highspy

TOP = Path(__file__).resolve().parents[2]
SEED = 20261128
REACH, EXTENSION = 18_500, 20_000


def array(rng, modules):
    columns = rng.randint(2, 7)
    shifted = rng.random() < 0.4
    places, row = [], 0
    while len(places) < modules:
        shift = rng.choice([0, 8_625, 4_000]) if shifted else 0
        for column in range(columns):
            if len(places) < modules and rng.random() < 0.85:
                places.append((column * 17_250 + shift, row * 11_370))
        row += 1
    most = rng.randint(max(3, modules // 3), max(4, modules))
    circuits = math.ceil(modules / most)
    least = rng.randint(1, max(1, modules // circuits))
    home = (rng.randint(0, 90_000), row * 11_370 + 3_000)
    return {"places": places, "reach": REACH, "extension": EXTENSION, "home": home, "least": least, "most": most}


def way(a, b):
    return abs(a[0] - b[0]) + abs(a[1] - b[1])


def circuits_of(n, links, homes):
    """Circuits as lists of modules, and rings that never come home."""
    beside = [[] for _ in range(n)]
    for i, j in links:
        beside[i].append(j)
        beside[j].append(i)
    seen, paths, rings = set(), [], []
    for start in [i for i in range(n) if homes[i] > 0] + list(range(n)):
        if start in seen:
            continue
        group, stack = [], [start]
        while stack:
            at = stack.pop()
            if at not in seen:
                seen.add(at)
                group.append(at)
                stack += beside[at]
        (paths if any(homes[i] for i in group) else rings).append(group)
    return paths, rings


def by_highs(problem, limit):
    """Extension leads and length of the best division, or None where HiGHS does not prove it in time."""
    places, home = problem["places"], problem["home"]
    n, least, most = len(places), problem["least"], problem["most"]
    count = math.ceil(n / most)
    pairs = [(i, j) for i in range(n) for j in range(i + 1, n)]
    length = [way(places[i], places[j]) for i, j in pairs] + [way(p, home) for p in places]
    leads = [math.ceil(max(0, way(places[i], places[j]) - REACH) / EXTENSION) for i, j in pairs] + [0] * n
    h = highspy.Highs()
    h.setOptionValue("output_flag", False)
    h.setOptionValue("mip_rel_gap", 0.0)
    h.setOptionValue("mip_abs_gap", 0.5)
    inf, integer = highspy.kHighsInf, highspy.HighsVarType.kInteger
    for column in range(len(pairs) + n):
        h.addVar(0.0, 1.0 if column < len(pairs) else 2.0)
        h.changeColIntegrality(column, integer)
    at = {pair: column for column, pair in enumerate(pairs)}
    for i in range(n):
        touching = [at[pair] for pair in pairs if i in pair] + [len(pairs) + i]
        h.addRow(2.0, 2.0, len(touching), touching, [1.0] * len(touching))
    ways_home = [len(pairs) + i for i in range(n)]
    h.addRow(2.0 * count, 2.0 * count, n, ways_home, [1.0] * n)
    end = time.monotonic() + limit
    found = []
    for costs in (leads, length):
        for column, cost in enumerate(costs):
            h.changeColCost(column, float(cost))
        while True:
            left = end - time.monotonic()
            if left <= 0:
                return None
            h.setOptionValue("time_limit", left + h.getRunTime())
            h.run()
            if h.getModelStatus() != highspy.HighsModelStatus.kOptimal:
                return None
            value = h.getSolution().col_value
            links = [pair for pair, column in at.items() if value[column] > 0.5]
            homes = [round(value[len(pairs) + i]) for i in range(n)]
            paths, rings = circuits_of(n, links, homes)
            cuts = 0
            for group in rings + [path for path in paths if len(path) > most]:
                # What leaves a group of modules: two ways for each circuit that it takes to hold them.
                inside = [at[(i, j)] for i, j in pairs if i in group and j in group]
                h.addRow(-inf, float(len(group) - math.ceil(len(group) / most)), len(inside), inside, [1.0] * len(inside))
                cuts += 1
            for group in [path for path in paths if len(path) < least]:
                # These modules are no circuit by themselves: fewer links among them, or fewer ways home.
                inside = [at[(i, j)] for i, j in pairs if i in group and j in group]
                own = [len(pairs) + i for i in group]
                h.addRow(-inf, float(len(group)), len(inside + own), inside + own, [1.0] * len(inside + own))
                cuts += 1
            if not cuts:
                break
        found.append(round(sum(cost * round(v) for cost, v in zip(costs, value))))
        if costs is leads:
            index = [column for column, cost in enumerate(leads) if cost]
            h.addRow(-inf, float(found[0]), len(index), index, [float(leads[column]) for column in index])
    return count, found[0], found[1]


def by_ours(problems, effort):
    target = Path(os.environ.get("CARGO_TARGET_DIR", TOP / "target"))
    program = target / "release/examples/divide_json"
    done = subprocess.run([program, effort], input=json.dumps(problems), capture_output=True, text=True, check=True)
    return json.loads(done.stdout)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--count", type=int, default=60)
    parser.add_argument("--golden")
    parser.add_argument("--time", action="store_true")
    parser.add_argument("--limit", type=float, default=60.0, help="seconds that HiGHS may take for one array")
    options = parser.parse_args()
    rng = random.Random(SEED)
    sizes = [24] * 15 if options.time else [rng.randint(3, 24) for _ in range(options.count)]
    problems = [array(rng, size) for size in sizes]
    ours = by_ours(problems, "whole")
    golden, wrong, unknown, unproved, ratios = [], 0, 0, 0, []
    for number, (problem, answer) in enumerate(zip(problems, ours)):
        start = time.perf_counter()
        best = by_highs(problem, options.limit)
        took = time.perf_counter() - start
        if best is None:
            unknown += 1
            continue
        told = (answer["paths"], answer["leads"], answer["length"])
        ratios.append(took / answer["seconds"])
        if told != best or answer["least_leads"] > best[1] or answer["least_length"] > best[2]:
            wrong += 1
            print(f"array {number} differs: HiGHS {best}, ours {answer}: {problem}", flush=True)
        unproved += (answer["least_leads"], answer["least_length"]) != best[1:]
        golden.append({**problem, "circuits": best[0], "leads": best[1], "length": best[2]})
    print(f"{len(golden)} arrays, {wrong} differ, {unknown} that HiGHS did not settle in time, {unproved} that we did not prove")
    print(f"HiGHS took {statistics.median(ratios):.0f} times as long in the median, at least {min(ratios):.1f} times")
    if options.golden:
        rows = ",\n".join(json.dumps(row, separators=(",", ":")) for row in golden)
        Path(options.golden).write_text(f"[\n{rows}\n]\n")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
