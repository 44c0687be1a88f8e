"""The book of the course: every page number of its contents and its index, and its EPUB.

    python3 book.py TOURIER WORK

Contents and index are held against the pages themselves, read with `poppler-utils`. The EPUB
is checked by Debian's `epubcheck` (W3C; EPUB 3.2), and for what EPUB Accessibility 1.1 (W3C
Recommendation, 2023) wants a publication to say of access; every picture has words.
"""

import re
import subprocess
import sys
import zipfile
from pathlib import Path
from xml.etree import ElementTree

from tally import Tally, fold

OPF = "{http://www.idpf.org/2007/opf}"
XHTML = "{http://www.w3.org/1999/xhtml}"
WANTED = {"accessMode", "accessModeSufficient", "accessibilityFeature", "accessibilityHazard", "accessibilitySummary"}
LINE = re.compile(r"^(.+?)\s*(?:\. ?){3,}\s*(\d+)$")
ENTRY = re.compile(r"^(.+?) (\d+(?:, \d+)*)$")


def pages(pdf):
    """The text of every page."""
    said = subprocess.run(["pdftotext", "-raw", pdf, "-"], capture_output=True, text=True).stdout
    return said.split("\f")[:-1]


def bare(text):
    """Text without the spaces and line ends that type may put in or leave out."""
    return fold(text).replace(" ", "").lower()


def check_contents(text, tally):
    found = 0
    for line in text[1].split("\n"):
        match = LINE.match(line.strip())
        if not match:
            continue
        title, number = match[1].strip(), int(match[2])
        if title == "Techniques":
            # The first of them begins there, under a title of its own.
            continue
        found += 1
        there = number <= len(text) and bare(title) in bare(text[number - 1])
        tally.check(there, f"contents: {title} is not on page {number}")
    tally.check(found > 5, f"contents: {found} lines")


def check_index(text, tally):
    at = max(number for number, page in enumerate(text) if page.startswith("Index"))
    found = 0
    for line in "\n".join(text[at:]).split("\n"):
        match = ENTRY.match(line.strip())
        if not match:
            continue
        found += 1
        for number in map(int, match[2].split(", ")):
            there = number <= len(text) and bare(match[1]) in bare(text[number - 1])
            tally.check(there, f"index: {match[1]} is not on page {number}")
    tally.check(found > 20, f"index: {found} entries")


def check_epub(file, tally):
    where = subprocess.run(["sh", "-c", "command -v epubcheck"], capture_output=True, text=True).stdout.strip()
    said = subprocess.run(["java", "-jar", where, file], capture_output=True, text=True)
    clean = said.returncode == 0 and "WARNING" not in said.stdout + said.stderr
    tally.check(clean, f"epubcheck: {fold(said.stdout + said.stderr)[:600]}")
    with zipfile.ZipFile(file) as book:
        package = ElementTree.fromstring(book.read("book/package.opf"))
        named = {meta.get("property", "").removeprefix("schema:") for meta in package.iter(f"{OPF}meta")}
        tally.check(WANTED <= named, f"EPUB: nothing is said of {WANTED - named}")
        for name in [name for name in book.namelist() if name.endswith(".xhtml")]:
            page = ElementTree.fromstring(book.read(name))
            for image in page.iter(f"{XHTML}img"):
                tally.check(image.get("alt"), f"{name}: {image.get('src')} has no words")


def main(tourier, work):
    tally, out = Tally(), Path(work, "book")
    run = subprocess.run([tourier, "handout", "all", "--to", str(out)], capture_output=True, text=True)
    tally.check(run.returncode == 0, f"the book: {run.stderr}")
    pdf, epub = next(out.glob("*.pdf")), next(out.glob("*.epub"))
    tally.check(subprocess.run(["qpdf", "--check", pdf], capture_output=True).returncode == 0, "qpdf finds faults")
    text = pages(pdf)
    check_contents(text, tally)
    check_index(text, tally)
    check_epub(epub, tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
