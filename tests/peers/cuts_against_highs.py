"""Cut lists against HiGHS: random orders as a mixed-integer program over arc flows, and by this project.

    cargo build --release -p chalkcourse-takeoff --example cut_json
    tests/peers/.venv/bin/python tests/peers/cuts_against_highs.py                   # 200 random orders
    tests/peers/.venv/bin/python tests/peers/cuts_against_highs.py --count 1000 --golden tests/data/cuts-golden.json
    tests/peers/.venv/bin/python tests/peers/cuts_against_highs.py --time            # both at 60 pieces, in one run

The program: a stick is a path from 0; an arc of a piece goes from one length of the path to a longer one, pieces in
falling order of length (Valério de Carvalho, 1999); a path that ends at a length takes the shortest stock that holds it.
Lengths are quarter inches: sticks of 8, 10 and 12 ft, pieces of 6 in and up, a kerf of 0 or a quarter inch. The seed is in
the script. Ends with 1 when an answer differs.
"""

import argparse
import json
import random
import statistics
import subprocess
import sys
import time
from pathlib import Path

import highspy

TOP = Path(__file__).resolve().parents[2]
SEED = 20260406
STOCKS = [[384], [480], [384, 480], [384, 576], [384, 480, 576]]


def order(rng, pieces):
    stocks = rng.choice(STOCKS)
    kerf = rng.choice([0, 1])
    longest = rng.choice([max(stocks), max(stocks) // 2, max(stocks) * 3 // 4])
    # Half of the orders have few lengths, as a roof with equal blocks has; half have many.
    lengths = [rng.randint(24, longest) for _ in range(rng.choice([max(1, pieces // 3), pieces]))]
    count = {}
    for _ in range(pieces):
        length = rng.choice(lengths)
        count[length] = count.get(length, 0) + 1
    return {"pieces": sorted(count.items(), reverse=True), "stocks": stocks, "kerf": kerf}


def by_highs(problem, limit):
    """The least length bought, or None where HiGHS does not prove it in time."""
    kerf = problem["kerf"]
    stocks = sorted(problem["stocks"])
    room = stocks[-1] + kerf
    size = [length + kerf for length, _ in problem["pieces"]]
    demand = [count for _, count in problem["pieces"]]
    # Lengths that paths of the longer pieces reach, with how many of the last piece.
    reached = {0}
    arcs = []
    for i, (w, d) in enumerate(zip(size, demand)):
        layer = {node: 0 for node in reached}
        for node in sorted(reached):
            at = node
            for _ in range(d):
                if at + w > room:
                    break
                arcs.append((at, at + w, i))
                at += w
                layer[at] = 1
        arcs = list(dict.fromkeys(arcs))
        reached |= set(layer)
    h = highspy.Highs()
    h.setOptionValue("output_flag", False)
    h.setOptionValue("time_limit", float(limit))
    h.setOptionValue("mip_rel_gap", 0.0)
    h.setOptionValue("mip_abs_gap", 0.5)
    inf = highspy.kHighsInf
    integer = highspy.HighsVarType.kInteger
    nodes = sorted(reached - {0})
    cost = {v: next(s for s in stocks if s + kerf >= v) for v in nodes}
    columns = len(arcs) + len(nodes)
    h.addVars(columns, [0.0] * columns, [float(max(demand) * 4 + 1000)] * columns)
    into, out, of = {}, {}, {}
    for column, (u, v, i) in enumerate(arcs):
        into.setdefault(v, []).append(column)
        out.setdefault(u, []).append(column)
        of.setdefault(i, []).append(column)
    for at, v in enumerate(nodes):
        h.changeColCost(len(arcs) + at, float(cost[v]))
    for column in range(columns):
        h.changeColIntegrality(column, integer)
    for at, v in enumerate(nodes):
        index = into.get(v, []) + out.get(v, []) + [len(arcs) + at]
        value = [1.0] * len(into.get(v, [])) + [-1.0] * len(out.get(v, [])) + [-1.0]
        h.addRow(0.0, 0.0, len(index), index, value)
    for i, d in enumerate(demand):
        index = of[i]
        h.addRow(float(d), inf, len(index), index, [1.0] * len(index))
    h.run()
    if h.getModelStatus() != highspy.HighsModelStatus.kOptimal:
        return None
    return round(h.getInfo().objective_function_value)


def by_ours(problems):
    program = TOP / "target/release/examples/cut_json"
    import os

    if "CARGO_TARGET_DIR" in os.environ:
        program = Path(os.environ["CARGO_TARGET_DIR"]) / "release/examples/cut_json"
    done = subprocess.run([program], input=json.dumps(problems), capture_output=True, text=True, check=True)
    return json.loads(done.stdout)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--count", type=int, default=200)
    parser.add_argument("--golden")
    parser.add_argument("--time", action="store_true")
    parser.add_argument("--limit", type=float, default=120.0, help="seconds that HiGHS may take for one order")
    options = parser.parse_args()
    rng = random.Random(SEED)
    if options.time:
        problems = [order(rng, 60) for _ in range(15)]
        ours = by_ours(problems)
        theirs = []
        for problem, answer in zip(problems, ours):
            start = time.perf_counter()
            least = by_highs(problem, options.limit)
            theirs.append(time.perf_counter() - start)
            same = "same" if least == answer["bought"] else "no answer in time" if least is None else "DIFFERS"
            ratio = theirs[-1] / answer["seconds"]
            print(f"{len(problem['pieces'])} lengths: ours {answer['seconds'] * 1e3:.2f} ms, HiGHS {theirs[-1]:.2f} s, "
                  f"{ratio:.0f} times, {same}", flush=True)
        ratios = [t / a["seconds"] for t, a in zip(theirs, ours)]
        print(f"median {statistics.median(ratios):.0f} times, least {min(ratios):.0f} times")
        return 0
    problems = [order(rng, rng.randint(2, 24)) for _ in range(options.count)]
    ours = by_ours(problems)
    golden, wrong, unknown = [], 0, 0
    for number, (problem, answer) in enumerate(zip(problems, ours)):
        least = by_highs(problem, options.limit)
        if least is None:
            unknown += 1
            continue
        if least != answer["bought"] or answer["least"] != answer["bought"]:
            wrong += 1
            print(f"order {number} differs: HiGHS {least}, ours {answer}: {problem}", flush=True)
        golden.append({**problem, "least": least})
    print(f"{len(golden)} orders, {wrong} differ, {unknown} that HiGHS did not settle in time")
    if options.golden:
        rows = ",\n".join(json.dumps(row, separators=(",", ":")) for row in golden)
        Path(options.golden).write_text(f"[\n{rows}\n]\n")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
