"""Every link and reference of the site, read with PyPI `html5lib`.

    python3 links.py SITE

Each leads to a file of the site and its anchor to something there; nothing is loaded from
outside; no link depends on where the site stands; no name is given twice on a page; every
page is reached from the first one. Source: HTML Standard (WHATWG), URLs and `id`.
"""

import re
import sys
from collections import Counter
from pathlib import Path
from urllib.parse import unquote, urlsplit

import html5lib

from tally import Tally

NAMED = ("for", "aria-labelledby", "aria-describedby", "aria-controls", "headers")
# What a browser loads by itself; a plain link may lead outside.
LOADED = {"img", "script", "link", "source", "iframe", "object", "use", "image", "style"}
XLINK = "{http://www.w3.org/1999/xlink}href"
# Words about the page for others to read: never loaded, and whole addresses by their nature.
ABOUT = {"canonical", "alternate"}


class Page:
    """A page's names, and its references as (element, address)."""

    def __init__(self, file):
        tree = html5lib.parse(file.read_bytes(), namespaceHTMLElements=False)
        elements = [e for e in tree.iter() if isinstance(e.tag, str)]
        self.names = Counter(e.attrib["id"] for e in elements if "id" in e.attrib)
        self.references = [pair for e in elements for pair in references(e)]


def references(element):
    tag, given = element.tag.split("}")[-1], element.attrib
    if given.get("rel") in ABOUT:
        tag = "a"
    for name in ("href", "src", "data", "poster", XLINK):
        if name in given:
            yield tag, given[name]
    for part in given.get("srcset", "").split(","):
        if part.strip():
            yield tag, part.split()[0]
    for name in NAMED:
        for one in given.get(name, "").split():
            yield tag, f"#{one}"


def fault(site, pages, file, tag, address):
    """What is wrong with one reference, or nothing."""
    parts = urlsplit(address)
    if parts.scheme in ("mailto", "tel", "data"):
        return ""
    if parts.scheme or parts.netloc:
        return "is loaded from outside" if tag in LOADED else ""
    if parts.path.startswith("/"):
        return "depends on where the site stands"
    if not address:
        return "is empty"
    to = (file.parent / unquote(parts.path)).resolve() if parts.path else file
    to = to / "index.html" if to.is_dir() else to
    if not to.is_relative_to(site) or not to.is_file():
        return "leads nowhere"
    anchor = unquote(parts.fragment)
    if anchor and to in pages and anchor not in pages[to].names:
        return "has no such place on its page"
    return ""


def reached(site, pages):
    """Every page to which links lead from the first one."""
    first = site / "index.html"
    seen, todo = {first}, [first]
    while todo:
        file = todo.pop()
        for tag, address in pages[file].references if file in pages else []:
            parts = urlsplit(address)
            if tag == "a" and not parts.scheme and parts.path:
                to = (file.parent / unquote(parts.path)).resolve()
                to = to / "index.html" if to.is_dir() else to
                if to not in seen:
                    seen.add(to)
                    todo.append(to)
    return seen


def main(folder):
    site, tally = Path(folder).resolve(), Tally()
    pages = {file: Page(file) for file in sorted(site.rglob("*.html"))}
    for file, page in pages.items():
        where = file.relative_to(site)
        for name, times in page.names.items():
            tally.check(times == 1, f"{where}: `{name}` is named {times} times")
        for tag, address in page.references:
            found = fault(site, pages, file, tag, address)
            tally.check(not found, f"{where}: <{tag}> {address} {found}")
    for file in sorted(site.rglob("*.css")):
        for address in re.findall(r"url\(\s*[\"']?([^\"')]+)", file.read_text(encoding="utf-8")):
            found = fault(site, pages, file, "style", address)
            tally.check(not found, f"{file.relative_to(site)}: {address} {found}")
    there = reached(site, pages) if pages else set()
    # The page for addresses that do not exist is the server's to show.
    for file in [*pages, *site.rglob("*.pdf")]:
        where = file.relative_to(site)
        linked = file in there or where.name == "404.html"
        tally.check(linked, f"{where}: no way leads to it")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
