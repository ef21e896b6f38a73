"""Roofs raised from footprints, face by face against CGAL's weighted straight skeleton.

Needs PySFCGAL (GPL, so it is only ever run beside the project, never linked); for the real footprints also pyogrio and
shapely. See README.md here for how to set it up and run it.

Both get the same outlines with the same pitches. What is compared, for every plane of the roof: plan area, the centre
of that area, and over all the highest point. Sides in one plane are taken together, because this project joins
their faces and CGAL does not.
"""

import argparse
import glob
import json
import math
import multiprocessing
import os
import random
import statistics
import subprocess
import sys
import time

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
PITCHES = [4, 6, 8, 12]


# ---- outlines -------------------------------------------------------------------------------------------------

def signed_area(ring):
    x0, y0 = ring[0]
    return sum(
        (a[0] - x0) * (b[1] - y0) - (b[0] - x0) * (a[1] - y0) for a, b in zip(ring, ring[1:] + ring[:1])
    ) / 2


def oriented(rings):
    """Outline counter-clockwise, holes clockwise: SFCGAL answers None to anything else."""
    return [r if (signed_area(r) > 0) == (i == 0) else r[::-1] for i, r in enumerate(rings)]


def blob(rng, cells, even):
    """Cells of a grid grown together, holes and all; None where two meet at a corner alone."""
    filled = {(0, 0)}
    order = [(0, 0)]
    while len(filled) < cells:
        x, y = order[rng.randrange(len(order))]
        dx, dy = rng.choice([(1, 0), (0, 1), (-1, 0), (0, -1)])
        if (x + dx, y + dy) not in filled:
            filled.add((x + dx, y + dy))
            order.append((x + dx, y + dy))
    follow = {}
    for x, y in filled:
        for cell, a, b in [
            ((x, y - 1), (x, y), (x + 1, y)),
            ((x + 1, y), (x + 1, y), (x + 1, y + 1)),
            ((x, y + 1), (x + 1, y + 1), (x, y + 1)),
            ((x - 1, y), (x, y + 1), (x, y)),
        ]:
            if cell not in filled:
                if a in follow:
                    return None
                follow[a] = b
    steps = lambda: [2.0 if even else round(rng.uniform(1, 4), 3) for _ in range(2 * cells + 1)]
    xs, ys = [0.0], [0.0]
    for sx, sy in zip(steps(), steps()):
        xs.append(xs[-1] + sx)
        ys.append(ys[-1] + sy)
    rings = []
    while follow:
        at = min(follow)
        ring = []
        while at in follow:
            ring.append(at)
            at = follow.pop(at)
        n = len(ring)
        kept = [
            ring[i]
            for i in range(n)
            if (ring[i][0] - ring[i - 1][0]) * (ring[(i + 1) % n][1] - ring[i][1])
            != (ring[i][1] - ring[i - 1][1]) * (ring[(i + 1) % n][0] - ring[i][0])
        ]
        rings.append([[xs[x + cells], ys[y + cells]] for x, y in kept])
    rings.sort(key=lambda r: signed_area(r) < 0)
    return rings


def crosses(a, b, c, d):
    side = lambda p, q, r: (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
    return side(a, b, c) * side(a, b, d) <= 0 and side(c, d, a) * side(c, d, b) <= 0


def far_enough(p, a, b, least):
    dx, dy = b[0] - a[0], b[1] - a[1]
    t = max(0, min(1, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy)))
    return math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy) > least


def scrawl(rng, corners):
    """A simple polygon without a pattern: points anywhere, each put into a side where it crosses nothing."""
    ring = [[0.0, 0.0], [30.0, 0.0], [12.0, 25.0]]
    least = 0.05 if corners < 60 else 0.01
    for _ in range(corners * 60):
        if len(ring) >= corners:
            break
        p = [round(rng.uniform(-5, 35), 3), round(rng.uniform(-5, 35), 3)]
        # the nearest of a few sides keeps the shape from choking on its own spikes
        i = min(rng.sample(range(len(ring)), min(len(ring), 12)),
                key=lambda i: math.dist(p, ring[i]) + math.dist(p, ring[(i + 1) % len(ring)]))
        a, b = ring[i], ring[(i + 1) % len(ring)]
        fine = True
        for j in range(len(ring)):
            c, d = ring[j], ring[(j + 1) % len(ring)]
            if j == i:
                continue
            if not far_enough(p, c, d, least):
                fine = False
            if j != (i - 1) % len(ring) and (crosses(a, p, c, d) or not far_enough(c, a, p, least)):
                fine = False
            if j != (i + 1) % len(ring) and (crosses(p, b, c, d) or not far_enough(d, p, b, least)):
                fine = False
            if not fine:
                break
        if fine and far_enough(a, p, b, least) and far_enough(b, a, p, least):
            ring.insert(i + 1, p)
    return [ring]


def turned(rings, angle):
    c, s = math.cos(angle), math.sin(angle)
    return [[[x * c - y * s, x * s + y * c] for x, y in ring] for ring in rings]


def generated(count, seed):
    rng = random.Random(seed)
    made = 0
    while made < count:
        kind = made % 4
        if kind == 3:
            rings, name = scrawl(rng, rng.choice([3, 5, 8, 12, 20, 30, 60, 100, 200])), "general"
        else:
            rings = blob(rng, rng.choice([1, 2, 3, 5, 8, 13, 20, 40, 80, 140]), kind == 0)
            if rings is None or sum(map(len, rings)) > 200:
                continue
            name = ["even grid", "uneven grid", "turned grid"][kind]
            if kind == 2:
                rings = turned(rings, rng.uniform(0, math.tau))
        rings = oriented(rings)
        style = rng.choice(["one pitch", "mixed", "mixed, gables"])
        yield {"name": f"{name} {made}", "kind": name, "style": style, "rings": rings,
               "rises": dressed(rng, rings, style)}
        made += 1


def dressed(rng, rings, style):
    """A rise in 12 for each side; None is a gable."""
    def side():
        if style == "one pitch":
            return 6
        if style == "mixed, gables" and rng.random() < 0.12:
            return None
        return rng.choice(PITCHES)
    return [[side() for _ in ring] for ring in rings]


def real(folder, seed):
    """Footprints out of the packages that README.md names; two for each: one pitch, and mixed with gables."""
    rng = random.Random(seed)
    for source, rings in real_rings(folder):
        x0 = sum(p[0] for p in rings[0]) / len(rings[0])
        y0 = sum(p[1] for p in rings[0]) / len(rings[0])
        clean = []
        for ring in rings:
            points = [[round(p[0] - x0, 4), round(p[1] - y0, 4)] for p in ring]
            points = [p for i, p in enumerate(points) if math.dist(p, points[i - 1]) > 2e-4]
            if len(points) > 2 and abs(signed_area(points)) > 0.5:
                clean.append(points)
        if not clean:
            continue
        rings = oriented(clean)
        for style in ["one pitch", "mixed, gables"]:
            yield {"name": source, "kind": source.split()[0], "style": style, "rings": rings,
                   "rises": dressed(rng, rings, style)}


def real_rings(folder):
    import pyogrio
    import pyogrio.raw
    import shapely

    for path in sorted(glob.glob(folder + "/**/*.gpkg", recursive=True)):
        if "multi_geom" in path:  # the same outlines once more
            continue
        for layer, _ in pyogrio.list_layers(path):
            if "momepy" in path and layer != "buildings":
                continue
            _, _, shapes, _ = pyogrio.raw.read(path, layer=layer, columns=[])
            for i, wkb in enumerate(shapes):
                geometry = shapely.from_wkb(wkb)
                parts = geometry.geoms if geometry.geom_type.startswith("Multi") else [geometry]
                for part in parts:
                    if part.geom_type == "Polygon" and part.is_valid and max(map(abs, part.bounds)) > 360:
                        rings = [list(r.coords)[:-1] for r in [part.exterior, *part.interiors]]
                        yield f"{os.path.basename(path)} {layer} {i}", [[list(p[:2]) for p in r] for r in rings]
    for path in sorted(glob.glob(folder + "/**/*.jsonl", recursive=True)):
        if "large" in path or "modified" in path:  # lengths stretched by its projection; a copy of another
            continue
        transform = None
        with open(path, encoding="utf-8") as lines:
            for number, line in enumerate(lines):
                try:
                    value = json.loads(line)
                except json.JSONDecodeError:
                    continue
                transform = value.get("transform", transform)
                if value.get("type") != "CityJSONFeature" or transform is None:
                    continue
                yield from level_zero(value, transform, f"{os.path.basename(path)} {number}")


def level_zero(feature, transform, name):
    scale, shift = transform["scale"], transform["translate"]
    points = [[v[i] * scale[i] + shift[i] for i in range(2)] for v in feature["vertices"]]
    for thing in feature["CityObjects"].values():
        for geometry in thing.get("geometry", []):
            if str(geometry.get("lod")).startswith("0") and geometry["type"] == "MultiSurface":
                for surface in geometry["boundaries"]:
                    yield name, [[points[i] for i in ring] for ring in surface]


# ---- CGAL -----------------------------------------------------------------------------------------------------

def degrees(rise):
    # Upright counts as a gable. SFCGAL's angle for a vertical side is 90.
    return 90.0 if rise is None else math.degrees(math.atan(rise / 12))


def cgal(case):
    """Roof faces as rings of x, y, z, and the seconds that CGAL took."""
    from pysfcgal.geometry import Polygon as SfPolygon

    rings = case["rings"]
    polygon = SfPolygon([tuple(p) for p in rings[0] + rings[0][:1]],
                        [[tuple(p) for p in r + r[:1]] for r in rings[1:]])
    # Angle i belongs to the side that ends in corner i.
    angles = [[degrees(r[i - 1]) for i in range(len(r))] for r in case["rises"]]
    if case.get("plain"):
        start = time.perf_counter()
        polygon.straight_skeleton()
        return [], time.perf_counter() - start
    start = time.perf_counter()
    solid = polygon.extrude_straight_skeleton_with_angles(1e4, angles)
    seconds = time.perf_counter() - start
    if solid is None:
        return None, seconds
    faces = []
    for face in solid.to_coordinates():
        ring = [tuple(map(float, p)) for p in face[0][:-1]]
        if max(p[2] for p in ring) > 1e-9:
            faces.append([[tuple(map(float, p)) for p in r[:-1]] for r in face])
    return faces, seconds


def cgal_worker(pipe):
    while True:
        case = pipe.recv()
        try:
            pipe.send(("fine", cgal(case)))
        except Exception as error:  # the library's own words are the finding
            pipe.send(("error", f"{type(error).__name__}: {error}"))


class Cgal:
    """CGAL in a process of its own: it may crash or run on."""

    def __init__(self, patience):
        self.patience = patience
        self.start()

    def start(self):
        self.pipe, theirs = multiprocessing.Pipe()
        self.process = multiprocessing.Process(target=cgal_worker, args=(theirs,), daemon=True)
        self.process.start()
        theirs.close()

    def run(self, case):
        self.pipe.send(case)
        try:
            if self.pipe.poll(self.patience):
                return self.pipe.recv()
            answer = "error", f"no answer in {self.patience} s"
        except EOFError:
            answer = "error", "crashed"
        self.process.kill()
        self.process.join()
        self.start()
        return answer


# ---- comparing ------------------------------------------------------------------------------------------------

def footprint(case):
    def side(rise):
        treatment = "gable" if rise is None else {"slope": f"{rise / 12!r} rise/run"}
        return {"treatment": treatment}
    outline = {"outer": case["rings"][0], "holes": case["rings"][1:]}
    return {"outline": outline, "sides": [[side(r) for r in ring] for ring in case["rises"]]}


def planes(case):
    """For each plane of the roof: gradient and height at the origin."""
    found = []
    for ring, rises in zip(case["rings"], case["rises"]):
        for i, rise in enumerate(rises):
            if rise is None:
                continue
            (ax, ay), (bx, by) = ring[i], ring[(i + 1) % len(ring)]
            length = math.hypot(bx - ax, by - ay)
            nx, ny = -(by - ay) / length, (bx - ax) / length
            slope = rise / 12
            plane = (slope * nx, slope * ny, -slope * (nx * ax + ny * ay))
            if not any(max(abs(p - q) for p, q in zip(plane, other)) < 1e-6 for other in found):
                found.append(plane)
    return found


def moments(rings):
    """Plan area and its first moments, signed."""
    area = mx = my = 0.0
    for ring in rings:
        for (ax, ay, _), (bx, by, _) in zip(ring, ring[1:] + ring[:1]):
            cross = ax * by - bx * ay
            area += cross / 2
            mx += (ax + bx) * cross / 6
            my += (ay + by) * cross / 6
    return area, mx, my


def by_plane(faces, all_planes):
    """Area and moments that the faces have on each plane, and what lies on none."""
    sums = [[0.0, 0.0, 0.0] for _ in all_planes]
    astray = 0.0
    for rings in faces:
        area, mx, my = moments(rings)
        if abs(area) < 1e-9:
            continue
        sign = 1 if area > 0 else -1
        off = lambda plane: max(abs(plane[0] * x + plane[1] * y + plane[2] - z) for x, y, z in rings[0])
        best = min(range(len(all_planes)), key=lambda i: off(all_planes[i]))
        if off(all_planes[best]) > 1e-5:
            astray += abs(area)
            continue
        for k, value in enumerate((area, mx, my)):
            sums[best][k] += sign * value
    return sums, astray


def compare(case, ours, theirs):
    """The greatest difference: of areas (m²), of a face's centre (m), of the height (m), and what is on no plane."""
    all_planes = planes(case)
    one, astray_one = by_plane([f["rings"] for f in ours["faces"]], all_planes)
    two, astray_two = by_plane(theirs, all_planes)
    area = max(abs(a[0] - b[0]) for a, b in zip(one, two))
    centre = max(
        (math.hypot(a[1] / a[0] - b[1] / b[0], a[2] / a[0] - b[2] / b[0])
         for a, b in zip(one, two) if min(a[0], b[0]) > 0.01), default=0.0)
    top = lambda faces: max(p[2] for rings in faces for ring in rings for p in ring)
    height = abs(top([f["rings"] for f in ours["faces"]]) - top(theirs))
    ground = sum(map(signed_area, case["rings"]))
    return {"area": area, "centre": centre, "height": height, "astray": astray_one + astray_two,
            "cgal_covers": sum(s[0] for s in two) + astray_two - ground}


def program():
    target = os.environ.get("CARGO_TARGET_DIR", os.path.join(ROOT, "target"))
    path = os.path.join(target, "release", "examples", "raise_json")
    if not os.path.exists(path):
        sys.exit("build it first: cargo build --release -p chalkcourse-geometry --example raise_json")
    return path


def raise_all(cases, runs):
    lines = "".join(json.dumps(footprint(case)) + "\n" for case in cases)
    done = subprocess.run([program(), str(runs)], input=lines, capture_output=True, text=True, check=True)
    return [json.loads(line) for line in done.stdout.splitlines()]


def nudged(case, seed):
    """The same with every corner off by up to 0.1 mm or 1 mm, so that no two sides are exactly parallel any more."""
    rng = random.Random(seed)
    size = 1e-4 if seed % 2 else 1e-3
    off = lambda: rng.uniform(-size, size)
    return {**case, "rings": [[[x + off(), y + off()] for x, y in ring] for ring in case["rings"]]}


def is_tie(case, peer):
    """Whether both agree as soon as the outline is not exactly regular: for at least three nudges of five.

    Where faces of different pitch come into one line further up, more than one roof is right: either may go on over
    the other's top. CGAL takes what stands first in its queue, this project the lower pitch. The nudge decides it;
    a small one may leave the lines so nearly parallel that it is still a toss-up for one of the two.
    """
    others = [nudged(case, seed) for seed in range(5)]
    same = 0
    for other, roof in zip(others, raise_all(others, 1)):
        word, answer = peer.run(other)
        if word == "fine" and answer[0] is not None and "error" not in roof:
            same += agrees(compare(other, roof, answer[0]))
    return same >= 3


def agrees(note):
    return note["area"] < 1e-5 and note["centre"] < 1e-4 and note["height"] < 1e-5


def upright_cover(case, faces):
    """How much of the ground CGAL covers with its gables, which are not quite upright."""
    return by_plane(faces, planes(case))[1]


def judge(cases, patience, report):
    roofs = raise_all(cases, 1)
    peer = Cgal(patience)
    tally = {}
    worst = {"area": 0.0, "centre": 0.0, "height": 0.0}
    odd = []
    for case, roof in zip(cases, roofs):
        word, answer = peer.run(case)
        no_face = word == "error" or answer[0] is None
        if "error" in roof:
            result = "neither" if no_face else "only CGAL"
            note = {"ours": roof["error"], "cgal": answer if word == "error" else None}
            if not no_face:
                note["on gables, m²"] = upright_cover(case, answer[0])
        elif no_face:
            result, note = "only ours", {"cgal": answer if word == "error" else "None"}
        else:
            note = compare(case, roof, answer[0])
            result = "same" if agrees(note) else "tie" if is_tie(case, peer) else "differs"
            if result == "same":
                for key in worst:
                    worst[key] = max(worst[key], note[key])
        row = tally.setdefault(f"{case['kind']}, {case['style']}", {})
        row[result] = row.get(result, 0) + 1
        if result not in ("same", "tie"):
            odd.append({"result": result, "note": note, **case})
    for kind, row in sorted(tally.items()):
        print(f"{kind:55} {row}")
    total = {}
    for row in tally.values():
        for result, count in row.items():
            total[result] = total.get(result, 0) + count
    print("all", total, "worst among the same:", worst)
    for case in odd:
        print(case["result"], case["name"], case["style"], sum(map(len, case["rings"])), "corners", case["note"])
    if report:
        with open(report, "w", encoding="utf-8") as file:
            json.dump(odd, file)
    return 1 if any(case["result"] == "differs" for case in odd) else 0


# ---- timing ---------------------------------------------------------------------------------------------------

def sized(corners, seed):
    """A long building with uneven wings on both sides: 8 corners for each pair of wings."""
    rng = random.Random(seed)
    south, north, x = [[0.0, 0.0]], [[0.0, 9.0]], 0.0
    for _ in range((corners - 4) // 8):
        x += rng.uniform(3, 5)
        width, depth = rng.uniform(4, 7), rng.uniform(3, 8)
        south += [[x, 0.0], [x, -depth], [x + width, -depth], [x + width, 0.0]]
        width, depth = rng.uniform(4, 7), rng.uniform(3, 8)
        north += [[x, 9.0], [x, 9 + depth], [x + width, 9 + depth], [x + width, 9.0]]
        x += 7
    rings = [south + [[x + 4, 0.0], [x + 4, 9.0]] + north[::-1]]
    return {"name": str(corners), "kind": "timing", "style": "mixed", "rings": rings,
            "rises": dressed(rng, rings, "mixed")}


def timing(patience):
    """Medians of 5 outlines, each the best of 5 runs (CGAL: one outline and one run from 500 corners on)."""
    peer = Cgal(patience)
    print("corners   ours ms   CGAL skeleton without pitches ms   CGAL with pitches ms   ratios")
    for corners in [20, 40, 100, 200, 500, 1000, 2000]:
        cases = [sized(corners, seed) for seed in range(5)]
        ours = statistics.median(roof["seconds"] * 1e3 for roof in raise_all(cases, 5))

        def median(plain):
            times = []
            for case in cases if corners < 500 else cases[:1]:
                runs = [peer.run({**case, "plain": plain}) for _ in range(5 if corners < 500 else 1)]
                times.append(min(run[1] * 1e3 if word == "fine" else math.inf for word, run in runs))
            return statistics.median(times)

        # With pitches it takes minutes from here on.
        plain, pitched = median(True), median(False) if corners <= 500 else math.nan
        print(f"{corners:7} {ours:9.3f} {plain:9.2f} {pitched:9.1f}   {plain / ours:.0f} {pitched / ours:.0f}", flush=True)


# ---- golden results -------------------------------------------------------------------------------------------

def golden(path, patience):
    """A sample that both agree on, with CGAL's numbers, for the plain tests."""
    cases = list(generated(60, 7))
    roofs = raise_all(cases, 1)
    peer = Cgal(patience)
    kept = []
    for case, roof in zip(cases, roofs):
        word, answer = peer.run(case)
        if sum(map(len, case["rings"])) > 60 or word == "error" or answer[0] is None or "error" in roof:
            continue
        note = compare(case, roof, answer[0])
        if agrees(note):
            sums, _ = by_plane(answer[0], planes(case))
            kept.append({
                "name": f"{case['name']}, {case['style']}",
                "footprint": footprint(case),
                "top": round(max(p[2] for f in answer[0] for r in f for p in r), 7),
                "planes": [
                    {"gradient": list(p[:2]), "at_origin": p[2], "plan_area": round(s[0], 7)}
                    for p, s in zip(planes(case), sums)
                ],
            })
    made = ("By tests/peers/raise_against_cgal.py --golden: CGAL's weighted straight skeleton through PySFCGAL 2.3.0. "
            "For each plane of the roof (height = gradient · (x, y) + at_origin) the plan area of CGAL's faces on it, in "
            "m²; top is its highest point, in m. Outlines are generated.")
    with open(path, "w", encoding="utf-8") as file:
        file.write('{"how": ' + json.dumps(made, ensure_ascii=False) + ', "roofs": [\n')
        file.write(",\n".join(json.dumps(roof) for roof in kept) + "\n]}\n")
    print(len(kept), "of", len(cases), "written to", path)


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--count", type=int, default=600, help="generated outlines (default 600)")
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--real", metavar="FOLDER", help="folder with the unpacked packages that README.md names")
    options.add_argument("--patience", type=float, default=60, help="seconds that CGAL gets for one outline")
    options.add_argument("--report", metavar="FILE", help="write what is not the same to this JSON file")
    options.add_argument("--timing", action="store_true", help="time both instead")
    options.add_argument("--golden", metavar="FILE", help="write a sample of golden results instead")
    chosen = options.parse_args()
    if chosen.timing:
        timing(chosen.patience)
    elif chosen.golden:
        golden(chosen.golden, chosen.patience)
    else:
        cases = list(generated(chosen.count, chosen.seed))
        if chosen.real:
            cases += list(real(chosen.real, chosen.seed))
        sys.exit(judge(cases, chosen.patience, chosen.report))


if __name__ == "__main__":
    main()
