"""The feed of changes and the list of pages, read with PyPI `feedparser` and by their rules.

    python3 feed.py SITE ADDRESS

Sources: RFC 4287 (Atom), 4.1.1 and 4.1.2: what a feed and an entry must hold; sitemaps.org
0.9.
"""

import sys
from pathlib import Path
from urllib.parse import urlsplit
from xml.etree import ElementTree

import feedparser

from tally import Tally

ATOM = "{http://www.w3.org/2005/Atom}"
MAP = "{http://www.sitemaps.org/schemas/sitemap/0.9}"


def check_feed(file, address, tally):
    text = file.read_bytes()
    read = feedparser.parse(text)
    tally.check(not read.bozo, f"feedparser: {read.get('bozo_exception')}")
    tally.check(read.version == "atom10", f"version {read.version}")
    tree = ElementTree.fromstring(text)
    for part in [tree, *tree.findall(f"{ATOM}entry")]:
        for name in ("id", "title", "updated"):
            found = part.findall(f"{ATOM}{name}")
            tally.check(len(found) == 1 and found[0].text, f"{len(found)} times {name}")
    tally.check(tree.find(f"{ATOM}author/{ATOM}name") is not None, "no author")
    own = [link.get("href") for link in tree.findall(f"{ATOM}link") if link.get("rel") == "self"]
    tally.check(own == [f"{address}{file.name}"], f"the feed says it stands at {own}")
    ids = [entry.id for entry in read.entries]
    tally.check(ids and len(set(ids)) == len(ids), "an entry's id is given twice")
    days = [entry.updated_parsed for entry in read.entries]
    tally.check(all(days) and days == sorted(days, reverse=True), "the entries are not newest first")
    tally.check(read.feed.updated_parsed == days[0], "the feed is not as new as its newest entry")


def check_map(site, address, tally):
    """Every page that anyone looks for is listed, once."""
    tree = ElementTree.parse(site / "sitemap.xml").getroot()
    listed = [loc.text for loc in tree.iter(f"{MAP}loc")]
    tally.check(len(set(listed)) == len(listed), "a page is listed twice")
    # The site of another language, in a folder of this one, has a list of its own.
    others = {inner.parent for inner in site.glob("*/sitemap.xml")}
    pages = {page.relative_to(site).as_posix() for page in site.rglob("*.html")
             if not others & set(page.parents)} - {"404.html"}
    wanted = {address + page.removesuffix("index.html") for page in pages}
    tally.check(set(listed) == wanted, f"listed or there, not both: {set(listed) ^ wanted}")
    tally.check(all(urlsplit(one).scheme for one in listed), "an address is not whole")


def main(folder, address):
    site, tally = Path(folder), Tally()
    address = address.rstrip("/") + "/"
    for own in [site, *sorted(inner.parent for inner in site.glob("*/sitemap.xml"))]:
        there = address if own == site else f"{address}{own.name}/"
        check_feed(own / "news.xml", there, tally)
        check_map(own, there, tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
