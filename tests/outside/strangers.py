"""Strangers' recipes through the layout of our sheets, with `poppler-utils`.

    python3 strangers.py TOURIER WORK

Thirteen recipes out of the public domain (`tests/drafts`, `tests/strangers`: the sources are
named there), bread, cakes, choux, pie, custard, a savoury, long and short, become drafts and
are printed as they are. The bounds are those of our own sheets (`sheets.py`): one leaf, full
columns, no white band, no small type; and no column of words narrower than a few letters.
"""

import re
import subprocess
import sys
from pathlib import Path

from sheets import BAND, FILLED, LABEL, RUNNING, columns, sides, type_sizes
from tally import Tally

PROJECT = Path(__file__).resolve().parents[2]
COURSE = "title: Old books\nsummary: Recipes out of old books.\nlanguage: en\nunits: us\npaper: a4\n"


def told(folder, *command):
    return subprocess.run([*map(str, command)], cwd=folder, capture_output=True, text=True)


def drafts(tourier, course, tally):
    """A draft of each recipe; their names."""
    (course / "content/recipes").mkdir(parents=True)
    (course / "content/course.yaml").write_text(COURSE, encoding="utf-8")
    texts = [*PROJECT.glob("tests/drafts/*.txt"), *PROJECT.glob("tests/drafts/*.html"), *PROJECT.glob("tests/strangers/*.txt")]
    for text in sorted(texts):
        said = told(course, tourier, "draft", text)
        tally.check(said.returncode == 0, f"{text.name}: {said.stderr[:200]}")
    return sorted(file.stem for file in (course / "content/recipes").glob("*.md"))


def narrow(pdf):
    """Lines of one short word right below one another, four or more: a column without room."""
    text = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True).stdout
    lines = [line.strip() for line in text.split("\n")]
    run = most = 0
    for line in lines:
        run = run + 1 if re.fullmatch(r"[a-z]{2,10}", line) else 0
        most = max(most, run)
    return most


def main(tourier, work):
    tally, course = Tally(), Path(work, "strangers")
    tourier = Path(tourier).resolve()
    names = drafts(tourier, course, tally)
    tally.check(len(names) >= 12, f"{len(names)} recipes")
    for name in names:
        said = told(course, tourier, "handout", name, "--to", "out")
        file = course / "out" / f"{name}-student-us-a4.pdf"
        tally.check(file.is_file(), f"{name}: {said.stderr[:200]}")
        if not file.is_file():
            continue
        found = [columns(side) for side in sides(file)]
        tally.check(len(found) <= 2, f"{name}: {len(found)} sides")
        for at, side in enumerate(found[:-1], 1):
            for fill, band in side:
                tally.check(fill >= FILLED and band <= BAND, f"{name}: side {at} is filled {fill:.0%}, a band of {band:.0%}")
        running, label = type_sizes(file)
        tally.check(running >= RUNNING and label >= LABEL, f"{name}: type of {running:.1f} and {label:.1f} pt")
        tally.check(narrow(file) < 4, f"{name}: {narrow(file)} words one below another")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
