"""Hold every cutting plan against PyPI `shapely`.

    python3 geometry.py WORK

For each cut of the facts: every piece is a proper polygon inside its sheet, no two share
an area, pieces and scrap make up the sheet, and for straight cuts the cuts and the
sheet's own edges free every piece.
"""

import sys
from itertools import combinations

from shapely.geometry import LineString, Polygon, box
from shapely.ops import unary_union

from tally import Tally, facts

# Square centimetres by which areas may differ: coordinates are printed to 0.001 cm or so.
HAIR = 0.05
AREAS = {"triangle": 0.5, "right triangle": 0.5, "rectangle": 1, "square": 1, "strip": 1}


def check_pieces(where, cut, pieces, sheet, tally):
    for number, piece in enumerate(pieces, 1):
        whole = piece.is_valid and piece.area > 0
        tally.check(whole, f"{where}: piece {number} is no proper polygon")
        outside = piece.difference(sheet).area
        tally.check(outside <= HAIR, f"{where}: piece {number} leaves the sheet")
        if cut["shape"] in AREAS:
            area = AREAS[cut["shape"]] * cut["base_cm"] * cut["height_cm"]
            same = abs(piece.area - area) <= HAIR
            tally.check(same, f"{where}: piece {number} has {piece.area:.3f}, not {area:.3f}")
    for (n, one), (m, other) in combinations(enumerate(pieces, 1), 2):
        shared = one.intersection(other).area
        tally.check(shared <= HAIR, f"{where}: pieces {n} and {m} share {shared:.3f} cm²")


def check_scrap(where, cut, pieces, sheet, tally):
    left = 100 * (1 - unary_union(pieces).area / sheet.area)
    said = cut["scrap_percent"]
    # A round is handed over as a polygon, a little smaller than its circle.
    near = 0.5 if cut["shape"] == "round" else 0.02
    tally.check(abs(left - said) <= near, f"{where}: scrap {said} %, shapely {left:.3f} %")


def check_cuts(where, cut, pieces, sheet, tally):
    lines = [LineString(line) for line in cut["lines_cm"]]
    ways = unary_union([*lines, sheet.exterior]).buffer(0.01)
    for number, piece in enumerate(pieces, 1):
        free = ways.covers(piece.exterior)
        tally.check(free, f"{where}: the cuts do not free piece {number}")
    for line in lines:
        inside = sheet.buffer(0.01).covers(line)
        tally.check(inside, f"{where}: a cut leaves the sheet: {line.wkt}")


def main(work):
    tally = Tally()
    for name, recipe in facts(work).items():
        for cut in recipe["cuts"]:
            where = f"{name}, {cut['step']}"
            sheet = box(0, 0, cut["sheet_length_cm"], cut["sheet_width_cm"])
            pieces = [Polygon(corners) for corners in cut["polygons_cm"]]
            told = len(pieces) == cut["pieces_per_sheet"]
            tally.check(told, f"{where}: {len(pieces)} polygons a sheet")
            doughs = recipe["scale"]["doughs"]
            many = cut["pieces"] == doughs * cut["pieces_per_sheet"]
            tally.check(many, f"{where}: {cut['pieces']} pieces from {doughs} doughs")
            check_pieces(where, cut, pieces, sheet, tally)
            check_scrap(where, cut, pieces, sheet, tally)
            if cut["shape"] != "round":
                check_cuts(where, cut, pieces, sheet, tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
