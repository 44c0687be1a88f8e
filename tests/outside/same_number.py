"""The same number everywhere: each amount of the facts on page, paper and terminal.

    python3 same_number.py SITE WORK

For every line of every formula, the metric weight, the US weight and the US measure of
`tourier facts` stand beside the ingredient in the recipe's page, in the metric and the US
student sheet on both papers, and in what `tourier scale` prints. No source but the program
itself: a number is worked out once.
"""

import re
import subprocess
import sys
from pathlib import Path

import html5lib

from tally import Tally, facts, fold

ROWS = ("tr", "li")


def rows_of_page(file):
    """The text of every table row and list item of a page."""
    tree = html5lib.parse(file.read_bytes(), namespaceHTMLElements=False)
    return [fold(" ".join(row.itertext())) for tag in ROWS for row in tree.iter(tag)]


def text_of_paper(file):
    command = ["pdftotext", file, "-"]
    answer = subprocess.run(command, capture_output=True, text=True)
    return [fold(answer.stdout)]


def rows_of_terminal(file):
    return [fold(line) for line in file.read_text(encoding="utf-8").splitlines()]


def holds(text, words):
    """Whether the words stand in a text whole: `50 g` is not in `650 g`.

    Poppler joins a lone figure to the unit after it (`2g`), whatever space is between.
    """
    words = re.escape(fold(words)).replace(r"\ ", " ?")
    return re.search(rf"(?<![\w.,]){words}(?!\w)", text) is not None


def check_line(where, line, amounts, texts, tally):
    """Each amount in one text with the ingredient: its row where there are rows."""
    own = [text for text in texts if holds(text, line["ingredient"])]
    for amount in amounts:
        found = any(holds(text, amount) for text in own)
        tally.check(found, f"{where}: {line['ingredient']} has no {amount}")


def check_recipe(name, formula, site, work, tally):
    page, terminal = site / "recipes" / name / "index.html", work / "scale" / f"{name}.txt"
    places = {"page": rows_of_page(page), "scale": rows_of_terminal(terminal)}
    for units in ("metric", "us"):
        for paper in ("a4", "letter"):
            sheet = f"{name}-student-{units}-{paper}.pdf"
            places[sheet] = text_of_paper(page.parent / sheet)
    for line in formula:
        metric, us = line["metric"], line["us_measure"] or line["us_column"]
        for place, texts in places.items():
            amounts = {metric, us}
            if place in ("page", "scale"):
                amounts.add(line["us_column"])
            check_line(f"{name}, {place}", line, sorted(amounts), texts, tally)


def main(site, work):
    tally = Tally()
    for name, sheet in facts(work).items():
        check_recipe(name, sheet["formula"], Path(site), Path(work), tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
