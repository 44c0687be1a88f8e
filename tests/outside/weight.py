"""What a recipe page weighs on its way to a phone: page, style sheet and script, packed.

    python3 weight.py SITE

The bound is the project's own: 60 kB with every batch and both unit systems. Packed with
gzip (RFC 1952) at its best, as servers do.
"""

import gzip
import sys
from pathlib import Path

from tally import Tally

MOST = 60_000
SHARED = ("assets/tourier.css", "assets/tourier.js")


def packed(file):
    return len(gzip.compress(file.read_bytes(), 9))


def main(folder):
    site, tally = Path(folder), Tally()
    shared = sum(packed(site / name) for name in SHARED)
    for page in sorted(site.glob("recipes/*/index.html")):
        weight = packed(page) + shared
        tally.check(weight <= MOST, f"{page.parent.name}: {weight} bytes, {MOST} at most")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
