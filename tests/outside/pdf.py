"""Every handout and every paper of a class as a PDF, with `qpdf`, `poppler-utils` and PyPI
`pikepdf`; the sets and labels of WORK/room, which are printed and not published, too.

    python3 pdf.py SITE WORK CLASSES

Sources: ISO 32000-1 (fonts, page sizes, structure, outline), ISO 14289-1 (PDF/UA-1:
language, title shown, tagged, tab order, alternative texts), ISO 19005-2 (PDF/A-2: what it
claims to be, its output intent), ISO 216 (A4), ANSI/ASME Y14.1 (Letter). The margins are the theme's own promise.
"""

import re
import subprocess
import sys
from pathlib import Path

import pikepdf

from tally import Tally, facts, fold

# Points, from 210 x 297 mm and 8.5 x 11 in.
PAPERS = {"a4": (595.28, 841.89), "letter": (612.0, 792.0)}
# The least white at the sides of each kind of handout, and above and below all, mm.
SIDES = {"student": 15, "bench": 14, "large-print": 18, "run": 20, "lists": 20, "set": 14, "labels": 5}
ABOVE, BELOW = 7, 6
# Labels cover the paper to its edge; few printers reach its last 5 mm.
EDGE = 4.9
NAME = re.compile(r"(.+)-(student|bench|large-print)-(metric|us)-(a4|letter)")
CLASS = re.compile(r"(run|lists)-(a4|letter)")
ROOM = re.compile(r"(.+)-(set|labels)-(metric|us)-(a4|letter)")


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
    upright = [(float(w), float(h)) for w, h in sizes]
    # The plan's chart lies on its side.
    if kind == "run":
        upright = [(min(pair), max(pair)) for pair in upright]
    named = all(abs(w - width) < 1 and abs(h - height) < 1 for w, h in upright)
    tally.check(sizes and named, f"{where}: pages of {sizes} pt are not {paper}")
    tally.check("Tagged:          yes" in info, f"{where}: pdfinfo finds no tags")
    most = {"bench": 1}.get(kind)
    tally.check(most is None or len(sizes) <= most, f"{where}: {len(sizes)} pages")


def check_fonts(where, file, tally):
    rows = told("pdffonts", file)[0].splitlines()[2:]
    tally.check(rows, f"{where}: no typeface")
    for row in rows:
        # The last columns: embedded, subset, with a map to Unicode, object, generation.
        embedded, subset, unicode = row.split()[-5:-2]
        whole = embedded == subset == unicode == "yes"
        tally.check(whole, f"{where}: typeface {row.split()[0]} is not whole")


def check_structure(where, file, title, tally, one=True):
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
            archive = about.get("pdfaid:part"), about.get("pdfaid:conformance")
            tally.check(archive == ("2", "A"), f"{where}: does not claim PDF/A-2a but {archive}")
        tally.check(len(root.get("/OutputIntents", [])) > 0, f"{where}: no output intent")
        if one:
            check_bookmarks(where, pdf, title, tally)
        tagged = list(elements(root.StructTreeRoot)) if "/StructTreeRoot" in root else []
        kinds = [str(element.S) for element in tagged]
        tally.check("/H1" in kinds or not one, f"{where}: no heading")
        for table in (element for element in tagged if element.S == "/Table"):
            heads = any(element.S == "/TH" for element in elements(table.K))
            tally.check(heads, f"{where}: a table without heads")
        for element in tagged:
            if element.S == "/Figure":
                tally.check(str(element.get("/Alt", "")).strip(), f"{where}: a figure without words")
        for page in pdf.pages:
            if "/Annots" in page:
                tally.check(page.get("/Tabs") == "/S", f"{where}: tab order")
        tally.check("/JavaScript" not in root.get("/Names", {}), f"{where}: holds a script")


def check_bookmarks(where, pdf, title, tally):
    with pdf.open_outline() as outline:
        first = outline.root[0].title if outline.root else ""
        tally.check(first == title, f"{where}: the first bookmark is {first!r}")
        tally.check(len(outline.root) == 1 and outline.root[0].children, f"{where}: one bookmark")


def check_margins(where, file, kind, tally):
    """Every word's box, as its glyphs make it, lies between the margins."""
    boxes = told("pdftotext", "-bbox", file, "-")[0]
    size, least = None, 72 / 25.4
    side = SIDES[kind] * least - 1
    for line in boxes.splitlines():
        found = re.search(r'<page width="([\d.]+)" height="([\d.]+)"', line)
        size = tuple(map(float, found.groups())) if found else size
        word = re.search(r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)<', line)
        if not word:
            continue
        left, top, right, bottom = map(float, word.groups()[:4])
        inside = left >= side and right <= size[0] - side
        above, below = (EDGE, EDGE) if kind == "labels" else (ABOVE, BELOW)
        inside = inside and top >= above * least and bottom <= size[1] - below * least
        tally.check(inside, f"{where}: {word[5]} stands in the margin")


def check_order(where, file, kind, sheet, tally):
    """What is read out comes in the order of the recipe: title, then the steps in turn."""
    steps = [part["title"] for part in sheet["parts"] if part.get("kind") == "step"]
    text, at = fold(told("pdftotext", "-raw", file, "-")[0]), 0
    if kind != "bench":
        at = text.rfind("Method ")
    for title in steps:
        found = text.find(fold(title), at)
        tally.check(found >= 0, f"{where}: {title} is not read in its turn")
        at = max(found, at)


def check_text(where, file, sheet, tally):
    text = fold(told("pdftotext", file, "-")[0])
    tally.check(sheet["title"] in text, f"{where}: the title is not in the text")
    tally.check("\ufffd" not in text, f"{where}: letters that cannot be read out")


def within_figures(pdf):
    """The marks of the content that belongs to a figure: page and number."""
    found = set()

    def walk(node, page, inside):
        if isinstance(node, pikepdf.Array):
            for part in node:
                walk(part, page, inside)
        elif isinstance(node, pikepdf.Dictionary):
            page = node.get("/Pg", page)
            inside = inside or node.get("/S") == "/Figure"
            if "/MCID" in node and inside:
                found.add((page.objgen, int(node.MCID)))
            if "/K" in node:
                walk(node.K, page, inside)
        elif inside:
            # A bare number: pikepdf gives it as a Python one.
            found.add((page.objgen, int(node)))

    if "/StructTreeRoot" in pdf.Root:
        walk(pdf.Root.StructTreeRoot.get("/K", pikepdf.Array()), None, False)
    return found


def product(first, then):
    """Two matrices of ISO 32000-1, 8.3.4, one after the other."""
    a, b, c, d, e, f = first
    g, h, i, j, k, m = then
    return (a*g + b*i, a*h + b*j, c*g + d*i, c*h + d*j, e*g + f*i + k, e*h + f*j + m)


def lettering(page, objgen, figures):
    """The size in points of every piece of text in the page's figures."""
    sizes, one = [], (1, 0, 0, 1, 0, 0)

    def read(stream, resources, matrix, inside):
        kept, text, size, marks = [], one, 0, [inside]
        for operands, operator in pikepdf.parse_content_stream(stream):
            operator = str(operator)
            if operator == "q":
                kept.append((matrix, size))
            elif operator == "Q" and kept:
                matrix, size = kept.pop()
            elif operator == "cm":
                matrix = product(tuple(map(float, operands)), matrix)
            elif operator == "Tf":
                size = float(operands[1])
            elif operator == "BT":
                text = one
            elif operator == "Tm":
                text = tuple(map(float, operands))
            elif operator in ("BDC", "BMC"):
                told = operands[1] if len(operands) > 1 else None
                number = told.get("/MCID") if isinstance(told, pikepdf.Dictionary) else None
                own = number is not None and (objgen, int(number)) in figures
                marks.append(marks[-1] or own)
            elif operator == "EMC" and len(marks) > 1:
                marks.pop()
            elif operator in ("Tj", "TJ", "'", '"') and marks[-1]:
                a, b, c, d, _, _ = product(text, matrix)
                sizes.append(size * abs(a * d - b * c) ** 0.5)
            elif operator == "Do":
                inner = resources.get("/XObject", {}).get(str(operands[0]))
                if inner is not None and inner.get("/Subtype") == "/Form":
                    own = tuple(map(float, inner.get("/Matrix", one)))
                    read(inner, inner.get("/Resources", resources), product(own, matrix), marks[-1])

    read(page, page.get("/Resources", {}), one, False)
    return sizes


# The smallest lettering of a drawing, pt. What can be read at these distances is the house's
# own promise; 18 pt for large print is common practice, no source.
SMALLEST = {"student": 8, "bench": 12, "large-print": 18}


def check_lettering(where, file, kind, tally):
    with pikepdf.open(file) as pdf:
        figures = within_figures(pdf)
        sizes = [size for page in pdf.pages for size in lettering(page.obj, page.objgen, figures)]
    least = min(sizes, default=SMALLEST[kind])
    tally.check(least > SMALLEST[kind] - 0.05, f"{where}: a drawing has letters of {least:.1f} pt")


def spread(picture):
    """Between which greys nine tenths of a picture's dots lie, of 255."""
    dots, seen, ends = picture.convert("L").histogram(), 0, []
    for grey, count in enumerate(dots):
        seen += count
        ends += [grey] * (len(ends) == 0 and seen >= 0.05 * sum(dots))
        ends += [grey] * (len(ends) == 1 and seen >= 0.95 * sum(dots))
    return ends[1] - ends[0]


def check_pictures(where, file, tally):
    """Photographs have 150 to 300 dots an inch where they stand, and tell light from dark on
    a grey copier over a quarter of its range (both are common practice, no source)."""
    listed, _ = told("pdfimages", "-list", file)
    rows = [line.split() for line in listed.splitlines()[2:]]
    for row in (row for row in rows if row[2] == "image"):
        dots = [int(row[12]), int(row[13])]
        tally.check(all(148 <= d <= 303 for d in dots), f"{where}: a picture of {dots} dots an inch")
    with pikepdf.open(file) as pdf:
        pictures = {o.objgen: o for o in pdf.objects if isinstance(o, pikepdf.Stream) and o.get("/Subtype") == "/Image"}
        masks = {o["/SMask"].objgen for o in pictures.values() if "/SMask" in o}
        for _, stream in sorted(item for item in pictures.items() if item[0] not in masks):
            grey = spread(pikepdf.PdfImage(stream).as_pil_image())
            tally.check(grey >= 64, f"{where}: a picture of {grey} greys")


def titles(folder):
    """The title of every class, by its file name."""
    said = {file.stem: file.read_text(encoding="utf-8") for file in Path(folder).glob("*.yaml")}
    return {name: re.search(r"(?m)^title: *(.+)$", text)[1] for name, text in said.items()}


def whole(where, file, title, kind, paper, tally, one=True):
    """What holds for every paper of whatever kind."""
    tally.check(told("qpdf", "--check", file)[1], f"{where}: qpdf finds faults")
    check_pages(where, file, kind, paper, tally)
    check_fonts(where, file, tally)
    check_structure(where, file, title, tally, one)
    check_margins(where, file, kind, tally)
    text = fold(told("pdftotext", "-raw", file, "-")[0])
    tally.check("\ufffd" not in text, f"{where}: letters that cannot be read out")
    return text


def check_classes(site, named, tally):
    """The papers of each class: both kinds on both papers, groups in the order of numbers."""
    for name, title in named.items():
        for kind in ("run", "lists"):
            for paper in PAPERS:
                file = Path(f"{site}-instructor", "classes", name, f"{kind}-{paper}.pdf")
                where = f"{name}/{file.stem}"
                if not file.is_file():
                    tally.check(False, f"{where} is not there")
                    continue
                text = whole(where, file, title, kind, paper, tally)
                tally.check(text.count(title) >= 1, f"{where}: the title is not in the text")
                if kind == "run":
                    cards = text[text.rfind("Cards to cut out"):]
                    found = [int(n) for n in re.findall(r"Pair (\d+) Time", cards)]
                    ordered = found == list(range(1, len(found) + 1)) and found
                    tally.check(ordered, f"{where}: cards of pairs {found}")


def check_bundle(site, named, tally):
    """What is handed out on the evening is the set that `handout` prints."""
    for name, title in named.items():
        file = Path(f"{site}-instructor", "classes", name, "bundle.pdf")
        if not file.is_file():
            tally.check(False, f"{name}: there is no bundle")
            continue
        whole(f"{name}/bundle", file, title, "set", "a4", tally, one=False)


def check_room(folder, named, tally):
    """Sets and labels: each group's in the order of the groups."""
    for file in sorted(Path(folder).glob("*.pdf")):
        match = ROOM.fullmatch(file.stem)
        tally.check(match and match[1] in named, f"{file.stem} is nothing of the print room")
        if not match:
            continue
        name, kind, _, paper = match.groups()
        text = whole(file.stem, file, named[name], kind, paper, tally, one=False)
        found = [int(n) for n in re.findall(r"\bPair (\d+)\b", text)]
        ordered = found == sorted(found) and set(found) == set(range(1, max(found, default=0) + 1))
        tally.check(found and ordered, f"{file.stem}: cards of pairs {found}")


def main(site, work, classes):
    tally, sheets, seen, named = Tally(), facts(work), set(), titles(classes)
    check_classes(site, named, tally)
    check_bundle(site, named, tally)
    check_room(Path(work, "room"), named, tally)
    for file in sorted(Path(site).rglob("*.pdf")):
        if CLASS.fullmatch(file.stem):
            tally.check(False, f"{file.parent.name}/{file.stem} is the instructor's alone")
            continue
        match = NAME.fullmatch(file.stem)
        tally.check(match and match[1] in sheets, f"{file.stem} is no handout's name")
        if not match:
            continue
        recipe, kind, units, paper = match.groups()
        # What a handout in a further language says is compared by `tests/two_languages.rs`.
        first = file.relative_to(site).parts[0] == "recipes"
        if first:
            seen.add((recipe, kind, units, paper))
        tally.check(told("qpdf", "--check", file)[1], f"{file.stem}: qpdf finds faults")
        check_pages(file.stem, file, kind, paper, tally)
        check_fonts(file.stem, file, tally)
        check_margins(file.stem, file, kind, tally)
        check_lettering(file.stem, file, kind, tally)
        check_pictures(file.stem, file, tally)
        if first:
            check_structure(file.stem, file, sheets[recipe]["title"], tally)
            check_text(file.stem, file, sheets[recipe], tally)
            check_order(file.stem, file, kind, sheets[recipe], tally)
    for recipe in sheets:
        wanted = {(recipe, k, u, p) for k in ("student", "bench", "large-print")
                  for u in ("metric", "us") for p in PAPERS}  # fmt: skip
        tally.check(wanted <= seen, f"{recipe}: missing {sorted(wanted - seen)}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
