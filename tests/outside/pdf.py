"""Every handout as a PDF, with `qpdf`, `poppler-utils` and PyPI `pikepdf`.

    python3 pdf.py SITE WORK

Sources: ISO 32000-1 (fonts, page sizes, structure), ISO 14289-1 (PDF/UA-1: language, title
shown, tagged, tab order, alternative texts), ISO 216 (A4), ANSI/ASME Y14.1 (Letter).
"""

import re
import subprocess
import sys
from pathlib import Path

import pikepdf

from tally import Tally, facts, fold

# Points, from 210 x 297 mm and 8.5 x 11 in.
PAPERS = {"a4": (595.28, 841.89), "letter": (612.0, 792.0)}
NAME = re.compile(r"(.+)-(student|bench|large-print)-(metric|us)-(a4|letter)")


def told(*command):
    """What a command answers, and whether it was content."""
    answer = subprocess.run(command, capture_output=True, text=True, errors="replace")
    return answer.stdout, answer.returncode == 0


def elements(node):
    """Every element of the structure tree, in order."""
    if isinstance(node, pikepdf.Array):
        for part in node:
            yield from elements(part)
    elif isinstance(node, pikepdf.Dictionary):
        if "/S" in node:
            yield node
        if "/K" in node:
            yield from elements(node.K)


def check_pages(where, file, kind, paper, tally):
    info, _ = told("pdfinfo", "-l", "-1", file)
    sizes = re.findall(r"Page +\d+ size: +([\d.]+) x ([\d.]+) pts", info)
    width, height = PAPERS[paper]
    named = all(abs(float(w) - width) < 1 and abs(float(h) - height) < 1 for w, h in sizes)
    tally.check(sizes and named, f"{where}: pages of {sizes} pt are not {paper}")
    tally.check("Tagged:          yes" in info, f"{where}: pdfinfo finds no tags")
    most = {"bench": 1, "student": 4}.get(kind)
    tally.check(most is None or len(sizes) <= most, f"{where}: {len(sizes)} pages")


def check_fonts(where, file, tally):
    rows = told("pdffonts", file)[0].splitlines()[2:]
    tally.check(rows, f"{where}: no typeface")
    for row in rows:
        # The last columns: embedded, subset, with a map to Unicode, object, generation.
        embedded, subset, unicode = row.split()[-5:-2]
        whole = embedded == subset == unicode == "yes"
        tally.check(whole, f"{where}: typeface {row.split()[0]} is not whole")


def check_structure(where, file, title, tally):
    with pikepdf.open(file) as pdf:
        root = pdf.Root
        language = str(root.get("/Lang", ""))
        tally.check(re.fullmatch(r"[a-z]{2,3}(-\w+)*", language), f"{where}: language {language}")
        marked = root.get("/MarkInfo", {}).get("/Marked", False)
        tally.check(bool(marked), f"{where}: not marked")
        shown = root.get("/ViewerPreferences", {}).get("/DisplayDocTitle", False)
        tally.check(bool(shown), f"{where}: the title is not shown")
        with pdf.open_metadata() as about:
            tally.check(title in about.get("dc:title", ""), f"{where}: {about.get('dc:title')}")
            tally.check(about.get("pdfuaid:part") == "1", f"{where}: does not claim PDF/UA-1")
        tagged = list(elements(root.StructTreeRoot)) if "/StructTreeRoot" in root else []
        kinds = [str(element.S) for element in tagged]
        tally.check("/H1" in kinds, f"{where}: no heading")
        for element in tagged:
            if element.S == "/Figure":
                tally.check(str(element.get("/Alt", "")).strip(), f"{where}: a figure without words")
        for page in pdf.pages:
            if "/Annots" in page:
                tally.check(page.get("/Tabs") == "/S", f"{where}: tab order")
        tally.check("/JavaScript" not in root.get("/Names", {}), f"{where}: holds a script")


def check_text(where, file, sheet, tally):
    text = fold(told("pdftotext", file, "-")[0])
    tally.check(sheet["title"] in text, f"{where}: the title is not in the text")
    tally.check("\ufffd" not in text, f"{where}: letters that cannot be read out")


def main(site, work):
    tally, sheets, seen = Tally(), facts(work), set()
    for file in sorted(Path(site).rglob("*.pdf")):
        match = NAME.fullmatch(file.stem)
        tally.check(match and match[1] in sheets, f"{file.stem} is no handout's name")
        if not match:
            continue
        recipe, kind, units, paper = match.groups()
        seen.add((recipe, kind, units, paper))
        tally.check(told("qpdf", "--check", file)[1], f"{file.stem}: qpdf finds faults")
        check_pages(file.stem, file, kind, paper, tally)
        check_fonts(file.stem, file, tally)
        check_structure(file.stem, file, sheets[recipe]["title"], tally)
        check_text(file.stem, file, sheets[recipe], tally)
    for recipe in sheets:
        wanted = {(recipe, k, u, p) for k in ("student", "bench", "large-print")
                  for u in ("metric", "us") for p in PAPERS}  # fmt: skip
        tally.check(wanted <= seen, f"{recipe}: missing {sorted(wanted - seen)}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
