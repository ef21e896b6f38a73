"""Writes crates/exchange/src/grids.txt: which coordinate reference systems of the EPSG dataset tell true lengths, and in which unit.

Needs pyproj (PROJ, MIT; its database is made from the EPSG Geodetic Parameter Dataset of IOGP). For each projected system the scale
along meridians and parallels is sampled over its area of use. Codes whose lengths are off by more than 0.2 % somewhere in it are
"stretched". Runs of codes with one answer are one line; codes that do not exist inside a run are harmless.

    python tests/peers/grids.py [--check]
"""

import math
import pathlib
import sys

import pyproj
from pyproj.database import query_crs_info
from pyproj.enums import PJType

OUT = pathlib.Path(__file__).parents[2] / "crates/exchange/src/grids.txt"
MOST = 0.002
# These are turned back to true lengths exactly: spherical Mercator formulas on WGS 84.
WEB_MERCATOR = {3857, 3785}


def unit_word(factor):
    for word, metres in (("m", 1.0), ("ft", 0.3048), ("us-ft", 1200 / 3937)):
        if abs(factor / metres - 1) < 1e-9:
            return word
    return "other"


def stretch(crs):
    """The greatest departure of a length from the truth over the area of use; None where it can't be told."""
    area = crs.area_of_use
    if area is None:
        return None
    west, south, east, north = area.bounds
    east = east + 360 if east < west else east
    projection = pyproj.Proj(crs)
    worst = 0.0
    for i in range(9):
        for j in range(9):
            longitude = west + (east - west) * (i + 0.5) / 9
            latitude = max(-84.0, min(84.0, south + (north - south) * (j + 0.5) / 9))
            f = projection.get_factors((longitude + 180) % 360 - 180, latitude)
            for scale in (f.meridional_scale, f.parallel_scale, f.tissot_semimajor, f.tissot_semiminor):
                if not math.isfinite(scale):
                    return None
                worst = max(worst, abs(scale - 1))
    return worst


def answer(crs):
    if crs.is_compound:
        crs = crs.sub_crs_list[0]
    if crs.is_bound:
        crs = crs.source_crs
    if crs.is_geographic:
        return "degrees"
    if crs.is_geocentric:
        return "geocentric"
    if not crs.is_projected:
        return None
    if (crs.to_authority() or ("", ""))[1] in {str(code) for code in WEB_MERCATOR}:
        return "web-mercator"
    units = {unit_word(axis.unit_conversion_factor) for axis in crs.axis_info[:2]}
    if len(units) != 1 or "other" in units:
        return "other"
    try:
        worst = stretch(crs)
    except Exception:
        worst = None
    if worst is None or worst > MOST:
        return "stretched"
    return units.pop()


def main():
    kinds = [PJType.PROJECTED_CRS, PJType.COMPOUND_CRS, PJType.GEOGRAPHIC_2D_CRS, PJType.GEOGRAPHIC_3D_CRS, PJType.GEOCENTRIC_CRS]
    answers = {}
    for kind in kinds:
        for info in query_crs_info("EPSG", kind, allow_deprecated=True):
            said = answer(pyproj.CRS.from_epsg(int(info.code)))
            if said:
                answers[int(info.code)] = said
    lines = [
        "# Made by tests/peers/grids.py from the EPSG dataset in PROJ "
        f"{pyproj.proj_version_str}: first code, last code, what its coordinates are.",
    ]
    run = None
    for code in sorted(answers):
        said = answers[code]
        if run and run[2] == said:
            run[1] = code
        else:
            if run:
                lines.append(" ".join(map(str, run)))
            run = [code, code, said]
    lines.append(" ".join(map(str, run)))
    text = "\n".join(lines) + "\n"
    counts = {said: sum(1 for a in answers.values() if a == said) for said in sorted(set(answers.values()))}
    print(len(answers), "codes,", len(lines) - 1, "lines,", counts)
    if "--check" in sys.argv:
        sys.exit(0 if OUT.read_text() == text else 1)
    OUT.parent.mkdir(parents=True, exist_ok=True)
    OUT.write_text(text)


main()
