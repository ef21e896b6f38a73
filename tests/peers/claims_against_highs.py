"""Claims of fills against HiGHS: the most modules on a face as a mixed-integer program, and what the fill claims.

    cargo build -p chalkcourse-cli
    cargo run -p chalkcourse-tests --example claims -- --usual 1-60 --write FOLDER
    tests/peers/.venv/bin/python tests/peers/claims_against_highs.py FOLDER/*.chalk.json

The program: a module may begin at places of a grid, and belongs to a block by the height of that block's foot. Modules of a block
lie in its rows a reveal apart; above the lowest row the book's share of the lower edge hooks into the row below; two blocks are
as far apart as the kit asks; where the book asks for a pathway, one of some corridors is free: a strip straight up to the ridge,
or the way along a hip. Geometry (edges by kind, in plan) comes from `plan --format json`, every limit from the numbers of the
job's rule book and kit, worked out here. An answer counts when `check` passes the job with it in place; it must not have more
modules than the claim says at most. The grid has the ends of the room in each row, whole modules from there and half hooks, so
that a most is the most on that grid. Ends with 1 when a claim is beaten.
"""

import argparse
import json
import math
import os
import re
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import highspy
import numpy as np

TOP = Path(__file__).resolve().parents[2]
CLI = Path(os.environ.get("CARGO_TARGET_DIR", TOP / "target")) / "debug/chalkcourse-cli"
MET = 0.9e-4  # a limit is met within a tenth of a millimetre
UNITS = {"mm": 1e-3, "m": 1.0, "in": 0.0254, "ft": 0.3048}
# Only things that make nobody walk around them are minor to a pathway.
SOLID = {"chimney", "skylight", "escape-window"}


def length(text):
    if isinstance(text, (int, float)):
        return float(text)
    number, unit = re.fullmatch(r"\s*([-\d./ ]+?)\s*([a-z]+)", text).groups()
    whole = sum(float(a) / float(b or 1) for a, _, b in re.findall(r"(-?[\d.]+)(/([\d.]+))?", number))
    return whole * UNITS[unit]


def cli(*words):
    done = subprocess.run([CLI, *map(str, words)], capture_output=True, text=True)
    if done.returncode == 2:
        raise RuntimeError(done.stderr)
    return json.loads(done.stdout)


class Face:
    """A face in its own frame: u along the eave, v up the slope from the datum, metres."""

    def __init__(self, job, report, drawn):
        self.name, self.id = report["name"], report["id"]
        turn = math.radians(report["downslope_degrees"])
        self.down = (math.sin(turn), math.cos(turn))
        self.along = (-self.down[1], self.down[0])
        self.factor = math.hypot(1.0, report["rise_in_12"] / 12.0)
        self.datum = drawn["datum"]
        self.exposure = length(drawn.get("courses", {}).get("exposure", "5 in"))
        self.edges = [(e["kind"], *map(self.frame, e["plan"])) for e in report["edges"]]

    def frame(self, p):
        x, y = p[0] - self.datum[0], p[1] - self.datum[1]
        return (x * self.along[0] + y * self.along[1], -(x * self.down[0] + y * self.down[1]) * self.factor)

    def inside(self, p):
        crossed = 0
        for _, a, b in self.edges:
            if (a[1] > p[1]) != (b[1] > p[1]):
                crossed += a[0] + (b[0] - a[0]) * (p[1] - a[1]) / (b[1] - a[1]) > p[0]
        return crossed % 2 == 1


def to_segment(rect, a, b):
    """Distance of a rectangle (u, v, u2, v2) from a segment; 0 where they meet."""
    t0, t1 = 0.0, 1.0
    for s, d, lo, hi in ((a[0], b[0] - a[0], rect[0], rect[2]), (a[1], b[1] - a[1], rect[1], rect[3])):
        if d == 0.0:
            if s < lo or s > hi:
                t0, t1 = 1.0, 0.0
            continue
        n, f = sorted(((lo - s) / d, (hi - s) / d))
        t0, t1 = max(t0, n), min(t1, f)
    if t0 <= t1:
        return 0.0
    best = min(math.hypot(max(rect[0] - p[0], 0, p[0] - rect[2]), max(rect[1] - p[1], 0, p[1] - rect[3])) for p in (a, b))
    for c in ((rect[0], rect[1]), (rect[2], rect[1]), (rect[2], rect[3]), (rect[0], rect[3])):
        best = min(best, point_to_segment(c, a, b))
    return best


def point_to_segment(p, a, b):
    d = (b[0] - a[0], b[1] - a[1])
    n = d[0] ** 2 + d[1] ** 2
    t = 0.0 if n == 0 else max(0.0, min(1.0, ((p[0] - a[0]) * d[0] + (p[1] - a[1]) * d[1]) / n))
    return math.hypot(p[0] - a[0] - t * d[0], p[1] - a[1] - t * d[1])


class Limits:
    """Where one module may stand, from the numbers of the book and the kit."""

    def __init__(self, job, face, ridge):
        book, kit = job["rule_book"], job["kit"]
        value = lambda limit: length(limit["value"]) if limit else 0.0
        off = set(book.get("off", []))
        roofing, fire = book.get("roofing") or {}, book.get("fire_access")
        self.face, self.slope, self.plan, self.below, self.strips, self.shapes = face, [], [], [], [], []
        side = length(kit["flashing"]["side"])
        for kind, a, b in face.edges:
            reach = value(book["setbacks"].get(kind))
            clear = roofing.get({"valley": "valley_clear", "hip": "hip_clear"}.get(kind))
            if clear:
                reach = max(reach, value(clear) + side)
            self.slope.append((a, b, reach - MET if reach > 0 else 0.0))
            if kind == "ridge":
                if fire and "fire-ridge" not in off:
                    self.plan.append((a, b, ridge - MET))
                room = length(kit["flashing"]["head"]) + book["courses_to_ridge"]["value"] * face.exposure
                self.below.append((a, b, room - MET))
        for thing in job["penetrations"]:
            at = face.frame(thing["at"])
            if not face.inside(at):
                continue
            shape = thing["shape"]
            if shape["is"] == "circle":
                # Drawn with 24 corners and the area of the circle: the corners stand out a little.
                half = (length(shape["diameter"]) / 2 * 1.0058,) * 2
                corner = None
            elif shape["is"] == "rectangle":
                half = (length(shape["along"]) / 2, length(shape["up"]) / 2)
                corner = half
            else:
                raise NotImplementedError("a shape of many corners")
            kind = thing["kind"]
            around = length(thing["clearance"]) if thing.get("clearance") else value(book["clearances"].get(kind))
            self.shapes.append((at, half, corner is None, around - MET))
            if thing.get("clearance"):
                continue
            for limits, up in (("clearances_above", True), ("clearances_below", False)):
                more = value((book.get(limits) or {}).get(kind))
                if more > around:
                    v = (at[1] + half[1], at[1] + half[1] + more) if up else (at[1] - half[1] - more, at[1] - half[1])
                    self.strips.append((at[0] - half[0], v[0], at[0] + half[0], v[1]))

    def stands(self, rect):
        if not self.face.inside(((rect[0] + rect[2]) / 2, (rect[1] + rect[3]) / 2)):
            return False
        for a, b, reach in self.slope:
            if to_segment(rect, a, b) < max(reach, 1e-9):
                return False
        f = self.face.factor
        flat = (rect[0], rect[1] / f, rect[2], rect[3] / f)
        for a, b, reach in self.plan:
            if to_segment(flat, (a[0], a[1] / f), (b[0], b[1] / f)) < reach:
                return False
        for a, b, room in self.below:
            left, right = sorted((a, b))
            lo, hi = max(left[0], rect[0]), min(right[0], rect[2])
            if hi - lo > MET:
                low = min(left[1] + (right[1] - left[1]) * (u - left[0]) / (right[0] - left[0]) for u in (lo, hi))
                if rect[1] < low < rect[3] + room:
                    return False
        for at, half, is_round, reach in self.shapes:
            if is_round:
                d = math.hypot(max(rect[0] - at[0], 0, at[0] - rect[2]), max(rect[1] - at[1], 0, at[1] - rect[3])) - half[0]
            else:
                gap = [max(rect[i] - at[i] - half[i], 0, at[i] - half[i] - rect[i + 2]) for i in (0, 1)]
                d = math.hypot(*gap)
            if d < reach:
                return False
        return not any(
            min(rect[2], s[2]) - max(rect[0], s[0]) > MET and min(rect[3], s[3]) - max(rect[1], s[1]) > MET
            for s in self.strips
        )

    def room(self, v, size, step=0.05):
        """The stretches along the eave in which a module may begin at a height."""
        us = [p[0] for _, a, b in self.face.edges for p in (a, b)]
        ok = lambda u: self.stands((u, v, u + size[0], v + size[1]))
        out, u, start = [], min(us), None
        while u <= max(us):
            now = ok(u)
            if now and start is None:
                start = self.edge(ok, u - step, u)
            if not now and start is not None:
                out.append((start, self.edge(ok, u, u - step)))
                start = None
            u += step
        return out

    @staticmethod
    def edge(ok, out, into):
        for _ in range(30):
            middle = (out + into) / 2
            out, into = (out, middle) if ok(middle) else (middle, into)
        return into


def packed(room, apart):
    """How many modules the stretches hold."""
    count, last = 0, -math.inf
    for a, b in room:
        u = max(a, last + apart)
        while u <= b:
            count, last = count + 1, u
            u += apart
    return count


def corridors(job, face, report):
    """Tests whether a rectangle is in the way, one for each corridor."""
    fire = job["rule_book"]["fire_access"]
    wide = length(fire["path_width"]["value"])
    reach = wide / 2 * 1.01 + 0.002
    ends = lambda kind: sorted(u for k, a, b in face.edges if k == kind for u in (a[0], b[0]))
    ridge, eave = ends("ridge"), ends("eave")
    out = []
    if ridge and eave:
        lo, hi = max(ridge[0], eave[0]), min(ridge[-1], eave[-1])
        solid = []
        for thing in job["penetrations"]:
            at = face.frame(thing["at"])
            if thing["kind"] in SOLID and face.inside(at) and thing["shape"]["is"] == "rectangle":
                solid.append((at[0] - length(thing["shape"]["along"]) / 2, at[0] + length(thing["shape"]["along"]) / 2))
        starts = [lo, hi - wide] + [u for s in solid for u in (s[0] - wide, s[1])]
        starts += list(np.arange(lo, hi - wide, 0.3))
        for u in starts:
            if u >= lo - MET and u + wide <= hi + MET and not any(s[0] < u + wide - MET and u + MET < s[1] for s in solid):
                out.append(lambda r, u=u: r[0] < u + wide - MET and u < r[2])
    # Beside or over a hip that ends at the ridge: the middle of the way runs on the hip, or on the far side of it up to its top.
    f = face.factor
    tops = [p for k, a, b in face.edges if k == "ridge" for p in (a, b)]
    for kind, a, b in face.edges:
        if kind != "hip":
            continue
        low, top = (a, b) if a[1] < b[1] else (b, a)
        if not any(math.dist(top, p) < 0.02 for p in tops):
            continue
        flat = lambda p: (p[0], p[1] / f)
        low, top = flat(low), flat(top)
        run = math.dist(low, top)
        at = tuple(t + (l - t) * min(1.0, reach / run) for t, l in zip(top, low))
        plan = lambda r: (r[0], r[1] / f, r[2], r[3] / f)
        out.append(lambda r, low=low, at=at: to_segment(plan(r), low, at) < reach)
        out.append(lambda r, at=at: to_segment(plan(r), at, at) < reach + 0.01)
    return out


def solve(job, face, limits, paths, options):
    kit, book = job["kit"], job["rule_book"]
    size = (length(kit["module"]["length"]), length(kit["module"]["width"]))
    reveal = length(kit["reveal"]["least"])
    apart, rise = size[0] + reveal, size[1] + reveal
    between = length(kit["clearances"]["between_blocks"])
    share = book["hooked_share"]["value"]
    vs = [p[1] for _, a, b in face.edges for p in (a, b)]
    top = max(vs) - size[1]
    levels = list(np.arange(min(vs), top, 0.04))
    most = {v: packed(limits.room(v, size), apart) for v in levels}
    # Feet: those of the best single stacks, and others between them.
    value = lambda v: sum(most[min(levels, key=lambda w: abs(w - x))] for x in np.arange(v, top, rise)) if most[v] else 0
    ranked = sorted((v for v in levels if most[v]), key=lambda v: (-value(v), v))
    feet = []
    for v in ranked:
        if all(abs(v - f) > 0.06 for f in feet) and len(feet) < options.feet:
            feet.append(v)
    if not feet:
        return 0, 0, []
    rows = {(f, k): limits.room(f + k * rise, size) for f in feet for k in range(int((top - f) / rise) + 1)}
    half = (1 - share) * size[0] + 0.5e-4
    cells = []  # foot, row, u
    for f in feet:
        # Whole modules from each end of the room of each row, and half a hook aside of that.
        ends = {u + j * half for (g, _), room in rows.items() if g == f for s in room for u in s for j in (-1, 0, 1)}
        for (g, k), room in rows.items():
            if g != f:
                continue
            us = set()
            for u in ends:
                for a, b in room:
                    n = math.ceil((a - u) / apart - 1e-9)
                    while u + n * apart <= b + 1e-9:
                        us.add(round(min(max(u + n * apart, a), b), 7))
                        n += 1
            cells += [(f, k, u) for u in sorted(us)]
    if len(cells) > options.most_places:
        return None
    rect = lambda c: (c[2], c[0] + c[1] * rise, c[2] + size[0], c[0] + c[1] * rise + size[1])
    rects = [rect(c) for c in cells]
    at_row = {}
    for i, (f, k, _) in enumerate(cells):
        at_row.setdefault((f, k), []).append(i)
    n = len(cells)
    lines = []  # indices, values, low, high
    for row in at_row.values():
        for i, first in enumerate(row):
            clique = [j for j in row[i:] if cells[j][2] < cells[first][2] + apart - 1e-6]
            if len(clique) > 1:
                lines.append((clique, [1.0] * len(clique), -math.inf, 1.0))
            for p, path in enumerate(paths):
                hit = [j for j in clique if path(rects[j])]
                if hit and (hit[0] == first):
                    lines.append((hit + [n + p], [1.0] * (len(hit) + 1), -math.inf, 1.0))
    for i, (f, k, u) in enumerate(cells):
        if k and share > 0:
            below = [(j, min(u, cells[j][2]) + size[0] - max(u, cells[j][2])) for j in at_row.get((f, k - 1), [])]
            below = [(j, c) for j, c in below if c > 0]
            lines.append(([i] + [j for j, _ in below], [-(share - 0.9e-4) * size[0]] + [c for _, c in below], 0.0, math.inf))
    # Two blocks keep apart: a module against the places of another block's row that are too near, a module's width at a time.
    rowlist = sorted(at_row)
    for i, c in enumerate(cells):
        for other in rowlist:
            if other[0] <= c[0]:
                continue
            near = [j for j in at_row[other] if gap(rects[i], rects[j]) < between - MET]
            while near:
                until = cells[near[0]][2] + apart - 1e-6
                clique = [j for j in near if cells[j][2] < until]
                lines.append(([i] + clique, [1.0] * (1 + len(clique)), -math.inf, 1.0))
                near = near[len(clique):]
    if paths:
        lines.append((list(range(n, n + len(paths))), [1.0] * len(paths), 1.0, math.inf))
    if options.verbose:
        print(f"  {n} places, {len(lines)} lines", flush=True)
    return run(n, len(paths), lines, cells, options)


def gap(a, b):
    return math.hypot(max(a[0] - b[2], b[0] - a[2], 0.0), max(a[1] - b[3], b[1] - a[3], 0.0))


def run(n, paths, lines, cells, options):
    lp = highspy.HighsLp()
    lp.num_col_, lp.num_row_ = n + paths, len(lines)
    lp.col_cost_ = np.array([-1.0] * n + [0.0] * paths)
    lp.col_lower_, lp.col_upper_ = np.zeros(n + paths), np.ones(n + paths)
    lp.row_lower_ = np.array([line[2] for line in lines])
    lp.row_upper_ = np.array([line[3] for line in lines])
    lp.a_matrix_.format_ = highspy.MatrixFormat.kRowwise
    lp.a_matrix_.start_ = np.array([0, *np.cumsum([len(line[0]) for line in lines])])
    lp.a_matrix_.index_ = np.array([i for line in lines for i in line[0]])
    lp.a_matrix_.value_ = np.array([x for line in lines for x in line[1]])
    lp.integrality_ = [highspy.HighsVarType.kInteger] * (n + paths)
    h = highspy.Highs()
    h.setOptionValue("output_flag", False)
    h.setOptionValue("time_limit", options.seconds)
    h.setOptionValue("mip_abs_gap", 0.99)
    h.passModel(lp)
    h.run()
    values = h.getSolution().col_value
    # Without a layout or a bound in time there is nothing to compare.
    if len(values) < n or not math.isfinite(h.getInfo().mip_dual_bound):
        return None
    chosen = [cells[i] for i in range(n) if values[i] > 0.5]
    bound = math.floor(-h.getInfo().mip_dual_bound + 1e-6)
    return len(chosen), bound, chosen


def blocks(job, face, chosen):
    """One block for each foot."""
    kit = job["kit"]
    reveal = length(kit["reveal"]["least"])
    apart = length(kit["module"]["length"]) + reveal
    out = []
    for number, foot in enumerate(sorted({c[0] for c in chosen})):
        mine = [c for c in chosen if c[0] == foot]
        left, count = min(c[2] for c in mine), max(c[1] for c in mine) + 1
        shifts, filled, columns = [], set(), 1
        for k in range(count):
            shifted = 0.0
            for column, u in enumerate(sorted(c[2] for c in mine if c[1] == k)):
                by = u - left - column * apart - shifted
                if abs(by) > 1e-9:
                    shifts.append({"row": k, "from": column, "by": f"{by * 1000:.7f} mm"})
                    shifted += by
                filled.add((k, column))
                columns = max(columns, column + 1)
        off = [{"row": k, "column": c} for k in range(count) for c in range(columns) if (k, c) not in filled]
        out.append({
            "id": job["next_id"] + number, "name": f"by HiGHS {number + 1}", "face": face.id, "at": [left, foot],
            "rows": count, "columns": columns, "orientation": "landscape", "reveal": kit["reveal"]["least"],
            "shifts": shifts, "off": off,
        })
    return out


def passes(file, face, chosen):
    """What `check` has against the job with the answer in place; the keys of stops and of blocks too near."""
    whole = json.loads(Path(file).read_text())
    job = whole["data"]
    job["blocks"] = blocks(job, face, chosen)
    job["next_id"] += len(job["blocks"])
    with tempfile.NamedTemporaryFile("w", suffix=".chalk.json") as out:
        json.dump(whole, out)
        out.flush()
        found = cli("check", out.name, "--format", "json")["findings"]
    against = [f for f in found if f["severity"] == "stop" or f.get("rule", f.get("code")) == "between-blocks"]
    return [str(f["key"]) for f in against if not f.get("waived")]


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("files", nargs="+")
    parser.add_argument("--seconds", type=float, default=20.0, help="that HiGHS may take for one face")
    parser.add_argument("--feet", type=int, default=3, help="heights that blocks may begin at")
    parser.add_argument("--most", type=int, default=30, help="larger claims are left out")
    parser.add_argument("--most-places", type=int, default=2500)
    parser.add_argument("--verbose", action="store_true")
    options = parser.parse_args()
    faces = beaten = closed = less = refused = skipped = 0
    for file in options.files:
        job = json.loads(Path(file).read_text())["data"]
        if job["kit"]["orientations"] != ["landscape"]:
            continue
        report = cli("plan", file, "--format", "json")
        drawn = {face["id"]: face for face in job["faces"]}
        steep = length_of_pitch(job["kit"]["least_pitch"])
        for told in report["faces"]:
            if told["rise_in_12"] < steep - 1e-9 or not told["sound"] or told["plan_area_m2"] < 4:
                continue
            claim = next(
                c for c in cli("fit", file, "--face", told["name"], "--brief", "--seconds", 5, "--format", "json")["faces"]
            )
            if not 1 <= claim["bound"] <= options.most:
                continue
            face = Face(job, told, drawn[told["id"]])
            fire = job["rule_book"].get("fire_access")
            ridge = length(fire["ridge"]["up_to_share"]["value"]) if fire else 0.0
            limits = Limits(job, face, ridge)
            start = time.perf_counter()
            answer = solve(job, face, limits, [], options)
            against = passes(file, face, answer[2]) if answer and answer[2] else []
            if answer and against and fire:
                answer = solve(job, face, limits, corridors(job, face, told), options)
                against = passes(file, face, answer[2]) if answer and answer[2] else []
            if answer is None:
                skipped += 1
                continue
            count, most, _ = answer
            faces += 1
            word = ""
            if against:
                refused += 1
                word = "check does not pass it: " + " ".join(against)
            elif count > claim["bound"]:
                beaten += 1
                word = "BEATEN"
            closed += count == most
            less += count < claim["modules"]
            print(
                f"{Path(file).stem}, {face.name}: HiGHS {count} (at most {most} on the grid, {time.perf_counter() - start:.1f} s), "
                f"claim {claim['modules']} of at most {claim['bound']} {word}",
                flush=True,
            )
    print(f"{faces} faces, {beaten} claims beaten, {closed} settled on the grid, {less} with fewer than the fill laid, "
          f"{refused} not passed by check, {skipped} with too many places, or without an answer in time")
    return 1 if beaten else 0


def length_of_pitch(text):
    return float(text.split(":")[0]) * 12.0 / float(text.split(":")[1])


if __name__ == "__main__":
    sys.exit(main())
