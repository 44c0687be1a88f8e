"""How student sheets use their paper: sides, how far each column is filled, white bands,
the smallest type; with `poppler-utils`.

    python3 sheets.py SITE WORK           holds every student sheet to the bounds
    python3 sheets.py SITE WORK --table   prints them as the rows of DEVELOPERS.md

The bounds are the project's own promise; 10 pt for running text is common practice for a
page held in the hand, no source.
"""

import re
import subprocess
import sys
import tempfile
from pathlib import Path

from tally import Tally, facts

NAME = re.compile(r"(.+)-student-(metric|us)-(a4|letter)")
# Dots an inch at which a page is looked at, and the darkness that counts as ink.
DOTS, INK = 36, 200
# The type area by the theme: 15 mm at the top and the sides, 17 mm below.
ABOVE, BELOW = 15, 17
FILLED, BAND = 0.85, 1 / 6
RUNNING, LABEL = 10, 7.4


def sides(pdf):
    """Each side as its width, height and rows of grey."""
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["pdftoppm", "-r", str(DOTS), "-gray", pdf, f"{folder}/p"], check=True, stderr=subprocess.DEVNULL)
        for name in sorted(Path(folder).iterdir()):
            _, size, _, raw = name.read_bytes().split(b"\n", 3)
            width, height = map(int, size.split())
            yield width, height, [raw[y * width:(y + 1) * width] for y in range(height)]


def columns(side):
    """How far down each column of a side is inked, and its largest white band above that; in
    parts of the height of the type area."""
    width, height, rows = side
    top, foot = round(ABOVE * DOTS / 25.4), height - round(BELOW * DOTS / 25.4)
    out = []
    for left, right in ((0, width // 2), (width // 2, width)):
        inked = [any(value < INK for value in row[left:right]) for row in rows[top:foot]]
        last = max((y for y, ink in enumerate(inked) if ink), default=0)
        band = most = 0
        for ink in inked[:last]:
            band = 0 if ink else band + 1
            most = max(most, band)
        out.append((last / (foot - top), most / (foot - top)))
    return out


def type_sizes(pdf):
    """The smallest type in points, of the running face and of the label face."""
    page = ["pdftohtml", "-xml", "-i", "-stdout", "-zoom", "3", pdf]
    said = subprocess.run(page, capture_output=True, text=True, check=True).stdout
    found = re.findall(r'<fontspec id="\d+" size="(\d+)" family="\w+\+(\w+)', said)
    of = {face: [int(size) / 3 for size, name in found if name.startswith(face)] for face in ("Vollkorn", "Asap")}
    return min(of["Vollkorn"], default=99), min(of["Asap"], default=99)


def most_sides(sheet, paper):
    """Two sides; one more where there are turns, and on the shorter paper one more again where
    they are those of a dough that comes along."""
    rows = [row["key"] for part in sheet["parts"] if part.get("kind") == "step" for row in part["ticket"]]
    if sheet["lamination"] is None:
        return 2
    return 3 if "turn" in rows or paper == "a4" else 4


def main(site, work, *said):
    tally, sheets, table = Tally(), facts(work), []
    # Those of the first language: another one takes as much room as it takes.
    for file in sorted((Path(site) / "recipes").rglob("*-student-*.pdf")):
        match = NAME.fullmatch(file.stem)
        if not match or match[1] not in sheets:
            continue
        found = [columns(side) for side in sides(file)]
        running, label = type_sizes(file)
        most = most_sides(sheets[match[1]], match[3])
        tally.check(len(found) <= most, f"{file.stem}: {len(found)} sides, not {most}")
        for at, side in enumerate(found[:-1], 1):
            for name, (fill, band) in zip(("left", "right"), side):
                tally.check(fill >= FILLED, f"{file.stem}: side {at}, {name} is filled {fill:.0%}")
                tally.check(band <= BAND, f"{file.stem}: side {at}, {name} has a white band of {band:.0%}")
        tally.check(running >= RUNNING, f"{file.stem}: running text of {running:.1f} pt")
        tally.check(label >= LABEL, f"{file.stem}: labels of {label:.1f} pt")
        fills = " · ".join("/".join(f"{fill:.0%}" for fill, _ in side) for side in found)
        table.append(f"| {match[1]}, {match[2]}, {match[3]} | {len(found)} | {fills} | {running:.1f} | {label:.1f} |")
    if "--table" in said:
        print("\n".join(table))
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
