"""Hold 500 random cutting plans against PyPI `shapely`.

    python3 layouts.py TOURIER

Sheets of 15 to 75 cm, cut into triangles, rectangles, squares, rounds, strips and grids of
random sizes, the same ones every time. Whatever the program answers: no two pieces (nor
half pieces) share an area, none leaves the sheet, pieces and scrap make up the sheet, there
are never more pieces than the areas allow and never fewer than plain rows and columns give.
"""

import json
import random
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from math import floor, pi
from pathlib import Path

from shapely import STRtree
from shapely.geometry import Polygon, box
from shapely.ops import unary_union

from tally import Tally

PLANS = 500
# Square centimetres by which areas may differ: corners are printed to a micrometre.
HAIR = 0.02
COURSE = "title: c\nsummary: s\n"
HEAD = """---
title: T
summary: s
makes: 1 {word}
formula:
  dough:
    - 2 kg bread flour
    - 1 kg water
---
## Cut
~~~ticket
uses: dough
sheet: {length} x {width} cm
cut: {cut}
~~~
"""


def tenths(chance, least, most):
    """A random length in tenths of a centimetre."""
    return chance.randint(10 * least, 10 * most) / 10


def plan(chance):
    """A random sheet, a cut, the area of a piece and what rows and columns would give."""
    length, width = sorted((tenths(chance, 15, 75), tenths(chance, 15, 60)))[::-1]
    shape = chance.choice(["triangles", "rectangles", "squares", "rounds", "strips", "grid"])
    a, b = tenths(chance, 5, 14), tenths(chance, 5, 14)
    rows = lambda x, y: fit(length, x) * fit(width, y)
    if shape == "triangles":
        cut, area, least = f"triangles, base {a} cm, height {b} cm", a * b / 2, rows(a, b)
    elif shape == "rectangles":
        cut, area = f"rectangles {a} x {b} cm", a * b
        least = max(rows(a, b), rows(b, a))
    elif shape == "squares":
        cut, area, least = f"squares {a} cm", a * a, rows(a, a)
    elif shape == "rounds":
        cut, area, least = f"rounds {a} cm", pi * a * a / 4, rows(a, a)
    elif shape == "strips":
        cut, area, least = f"strips {a} cm", length * a, fit(width, a)
    else:
        strips, across = chance.randint(1, 6), chance.randint(1, 6)
        diagonal = chance.random() < 0.5
        cut = f"grid, {strips} strips, {across} across"
        cut += ", each on the diagonal" if diagonal else ""
        least = strips * across * (2 if diagonal else 1)
        area = length * width / least
    return length, width, cut, area, least


def fit(side, piece):
    """How often a piece goes into a side; tenths, so that 3 × 0.1 is 0.3."""
    return round(10 * side) // round(10 * piece)


def answer(program, folder, number, wanted):
    """The cut that the program answers; `None` where it refuses, with what it says."""
    length, width, cut, _, _ = wanted
    course = folder / str(number)
    (course / "recipes").mkdir(parents=True)
    (course / "course.yaml").write_text(COURSE, encoding="utf-8")
    text = HEAD.format(word="piece", length=length, width=width, cut=cut)
    (course / "recipes/t.md").write_text(text, encoding="utf-8")
    run = subprocess.run(
        [program, "--content", course, "facts", "t"],
        capture_output=True, text=True, check=False,
    )
    if run.returncode:
        return None, run.stderr
    return json.loads(run.stdout)["cuts"][0], ""


def check(number, wanted, cut, tally):
    length, width, written, area, least = wanted
    where = f"plan {number}, {written} from {length} x {width} cm"
    sheet = box(0, 0, cut["sheet_length_cm"], cut["sheet_width_cm"])
    pieces = [Polygon(corners) for corners in cut["polygons_cm"]]
    parts = pieces + [Polygon(corners) for corners in cut["halves_cm"]]
    tally.check(all(part.is_valid for part in parts), f"{where}: no proper polygon")
    outside = unary_union(parts).difference(sheet.buffer(0.001)).area
    tally.check(outside <= HAIR, f"{where}: {outside:.3f} cm² lie off the sheet")
    tree = STRtree(parts)
    left, right = tree.query(parts, predicate="intersects")
    shared = max(
        (parts[n].intersection(parts[m]).area for n, m in zip(left, right) if n < m),
        default=0,
    )
    tally.check(shared <= HAIR, f"{where}: two pieces share {shared:.3f} cm²")
    scrap = 100 * (1 - sum(piece.area for piece in pieces) / sheet.area)
    # A round is handed over as a polygon of 48 corners, 0.3 % smaller than its circle.
    near = 0.5 if cut["shape"] == "round" else 0.05
    said = cut["scrap_percent"]
    tally.check(abs(scrap - said) <= near, f"{where}: scrap {said} %, shapely {scrap:.2f} %")
    most = floor(sheet.area / area + 1e-6)
    count = len(pieces)
    tally.check(least <= count <= most, f"{where}: {count}, not from {least} to {most}")
    told = cut["pieces_per_sheet"]
    tally.check(told == count, f"{where}: says {told} and draws {count}")


def main(program):
    tally = Tally()
    chance = random.Random(20270302)
    plans = [plan(chance) for _ in range(PLANS)]
    with tempfile.TemporaryDirectory() as folder, ThreadPoolExecutor(2) as pool:
        ask = lambda it: answer(program, Path(folder), *it)
        for (number, wanted), (cut, said) in zip(
            enumerate(plans), pool.map(ask, enumerate(plans))
        ):
            if cut is not None:
                check(number, wanted, cut, tally)
                continue
            refused = wanted[4] == 0 and "not one piece fits" in said
            tally.check(refused, f"plan {number}, {wanted[2]}: {said.splitlines()[:1]}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
