"""City models as read by this project, against their own polygons worked out with numpy and shapely (GEOS), and PROJ for EPSG:3857.

    cargo build -p chalkcourse-exchange --example houses_json
    python tests/peers/city_models.py FILE.jsonl …            # compares; ends with 1 when something is apart
    python tests/peers/city_models.py --trim FILE OUT IDS …   # cuts buildings out of a file, LoD 0 and 2 alone
    python tests/peers/city_models.py --golden FILE OUT       # writes this script's own numbers for the plain tests
"""

import json
import math
import os
import pathlib
import subprocess
import sys

import numpy as np
import pyproj
from shapely.geometry import Polygon

TOP = pathlib.Path(__file__).parents[2]
PROGRAM = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", TOP / "target")) / "debug/examples/houses_json"
CREDIT = "© 3D BAG by tudelft3d and 3DGI, CC BY 4.0, cut down to a few buildings of one tile"


def texts(path):
    return [json.loads(line) for line in open(path, encoding="utf-8") if line.strip()]


def surfaces_of(geometry):
    """Pairs of a polygon (rings of vertex numbers) and its semantic type."""
    depth = {"MultiSurface": 0, "CompositeSurface": 0, "Solid": 1, "MultiSolid": 2}.get(geometry["type"])
    if depth is None or "semantics" not in geometry:
        return []
    boundaries, values = geometry["boundaries"], geometry["semantics"]["values"]
    for _ in range(depth):
        boundaries, values = sum(boundaries, []), sum(values, [])
    kinds = [surface["type"] for surface in geometry["semantics"]["surfaces"]]
    return [(rings, None if v is None else kinds[v]) for rings, v in zip(boundaries, values)]


def measure(rings):
    """Pitch, azimuth, slope and plan area of a polygon in space: the plane of least squares by singular values, GEOS for areas."""
    outer = rings[0]
    middle = outer.mean(axis=0)
    _, _, axes = np.linalg.svd(outer - middle)
    normal = axes[2] * (1 if axes[2][2] >= 0 else -1)
    off = max(np.abs((ring - middle) @ normal).max() for ring in rings)
    flat = [np.column_stack(((ring - middle) @ axes[0], (ring - middle) @ axes[1])) for ring in rings]
    slope_area = Polygon(flat[0], flat[1:]).area
    plan_area = Polygon(rings[0][:, :2], [ring[:, :2] for ring in rings[1:]]).area
    tilt = math.degrees(math.acos(min(1.0, abs(normal[2]))))
    azimuth = math.degrees(math.atan2(normal[0], normal[1])) % 360
    return {"slope_area": slope_area, "plan_area": plan_area, "pitch": tilt, "azimuth": azimuth, "off": off}


def peer(path):
    """Each building's roof surfaces by this script's own reading."""
    header, *features = texts(path)
    scale, translate = (np.array(header["transform"][k]) for k in ("scale", "translate"))
    system = header.get("metadata", {}).get("referenceSystem", "")
    buildings = {}
    for feature in features:
        vertices = np.array(feature["vertices"]) * scale + translate
        if system.endswith("3857"):
            # true metres: an equidistant plan around the feature's own middle
            geographic = pyproj.Transformer.from_crs(3857, 4326, always_xy=True)
            x, y = vertices[:, 0].mean(), vertices[:, 1].mean()
            east, north = geographic.transform(x, y)
            local = pyproj.Transformer.from_crs(3857, f"+proj=aeqd +lon_0={east} +lat_0={north} +ellps=WGS84", always_xy=True)
            vertices = np.column_stack((*local.transform(vertices[:, 0], vertices[:, 1]), vertices[:, 2]))
        objects = feature["CityObjects"]
        for key in sorted(objects):
            root = key
            while objects[root].get("parents") and objects[root]["parents"][0] in objects:
                root = objects[root]["parents"][0]
            finest = None
            for geometry in objects[key].get("geometry") or []:
                roof = [rings for rings, kind in surfaces_of(geometry) if kind == "RoofSurface"]
                if roof and (finest is None or float(geometry["lod"]) > finest[0]):
                    finest = (float(geometry["lod"]), roof)
            if finest:
                for rings in finest[1]:
                    buildings.setdefault(root, []).append(measure([vertices[ring] for ring in rings]))
    return buildings


def compare(path):
    theirs = peer(path)
    ours = {house["id"]: house for house in json.loads(subprocess.check_output([PROGRAM, path]))}
    apart, seen, left = [], 0, []
    worst = dict.fromkeys(("slope", "plan", "pitch", "azimuth"), 0.0)
    for key, expected in theirs.items():
        house = ours[key]
        numbers = sorted([s["number"] for s in house["surfaces"]] + [s["number"] for s in house["left_out"]])
        if numbers != list(range(1, len(expected) + 1)):
            apart.append((key, "surfaces not accounted for", numbers, len(expected)))
            continue
        left += [(key, s["number"], s["reason"]) for s in house["left_out"]]
        for surface in house["surfaces"]:
            want = expected[surface["number"] - 1]
            seen += 1
            # a corner that is off the plane by d may move the fitted plane by about d over the surface's size
            slack = 3e-5 + 3 * want["off"] / math.sqrt(want["plan_area"])
            error = {
                "slope": abs(surface["slope_area"] / want["slope_area"] - 1),
                "plan": abs(surface["plan_area"] / want["plan_area"] - 1),
                "pitch": math.radians(abs(surface["pitch"] - want["pitch"])),
                "azimuth": 0.0
                if want["pitch"] < 1
                else math.radians(abs((surface["azimuth"] - want["azimuth"] + 180) % 360 - 180)) * math.tan(math.radians(want["pitch"])),
            }
            for name, value in error.items():
                worst[name] = max(worst[name], value)
                # width against length: a strip's plane is as good as its width
                if value > (slack if name != "plan" else 2e-5) and value * math.sqrt(want["plan_area"]) > 20 * want["off"] + 1e-4:
                    apart.append((key, surface["number"], name, value, want["off"], want["plan_area"]))
    print(f"{path}: {len(theirs)} buildings, {seen} faces compared, {len(left)} left out; greatest differences "
          + ", ".join(f"{name} {value:.2e}" for name, value in worst.items()))
    for key, number, reason in left:
        print(f"   left out: {key} {number}: {reason}")
    for row in apart:
        print("   APART", *row)
    return not apart


def trim(path, out, ids):
    header, *features = texts(path)
    kept = [feature for feature in features if any(key in ids for key in feature["CityObjects"])]
    metadata = {k: header["metadata"][k] for k in ("citymodelIdentifier", "referenceDate", "referenceSystem") if k in header["metadata"]}
    head = {k: header[k] for k in ("type", "version", "transform")}
    lines = [{**head, "CityObjects": {}, "vertices": [], "metadata": {**metadata, "title": CREDIT}}]
    for feature in kept:
        numbers, vertices = {}, []

        def renumber(item):
            if isinstance(item, list):
                return [renumber(i) for i in item]
            if item not in numbers:
                numbers[item] = len(vertices)
                vertices.append(feature["vertices"][item])
            return numbers[item]

        objects = {}
        for key, there in feature["CityObjects"].items():
            geometry = [
                {"type": g["type"], "lod": str(g["lod"]), "boundaries": renumber(g["boundaries"]),
                 **({"semantics": {"surfaces": [{"type": s["type"]} for s in g["semantics"]["surfaces"]], "values": g["semantics"]["values"]}} if "semantics" in g else {})}
                for g in there.get("geometry", [])
                if str(g["lod"]) in ("0", "2.2")
            ]
            objects[key] = {"type": there["type"], "geometry": geometry, **{k: there[k] for k in ("parents", "children") if k in there}}
        lines.append({"type": "CityJSONFeature", "id": feature["id"], "CityObjects": objects, "vertices": vertices})
    text = "".join(json.dumps(line, ensure_ascii=False, separators=(",", ":")) + "\n" for line in lines)
    pathlib.Path(out).write_text(text, encoding="utf-8")
    print(len(kept), "buildings,", len(text), "bytes")


def golden(path, out):
    rows = {key: [{k: round(v, 7) for k, v in surface.items()} for surface in surfaces] for key, surfaces in peer(path).items()}
    made = f"tests/peers/city_models.py --golden, numpy {np.__version__}"
    pathlib.Path(out).write_text(json.dumps({"made_with": made, "credit": CREDIT, "buildings": rows}, ensure_ascii=False, indent=1) + "\n")


if sys.argv[1] == "--trim":
    trim(sys.argv[2], sys.argv[3], sys.argv[4:])
elif sys.argv[1] == "--golden":
    golden(sys.argv[2], sys.argv[3])
else:
    sys.exit(0 if all([compare(path) for path in sys.argv[1:]]) else 1)
