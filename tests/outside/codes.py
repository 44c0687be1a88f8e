"""Scan codes, read from paper as a phone reads them: with `zbar` from a grey picture.

    python3 codes.py SITE WORK ADDRESS

Every page of every handout is rendered at 200 dots an inch in grey (`poppler-utils`) and
its QR codes (ISO/IEC 18004) are decoded. A student sheet and a large print lead to the
recipe's page at ADDRESS in their own units and their own language, and to each of the
recipe's videos; a bench card has no code. A paper of a class leads to the class's page.
"""

import os
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from pdf import CLASS, NAME
from tally import Tally, facts


def decoded(file):
    """What the codes on all pages of a file say, as a set."""
    with tempfile.TemporaryDirectory() as folder:
        page = Path(folder, "page")
        subprocess.run(["pdftoppm", "-r", "200", "-gray", file, page], check=True)
        pages = sorted(Path(folder).iterdir())
        command = ["zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", *pages]
        answer = subprocess.run(command, capture_output=True, text=True)
        return set(answer.stdout.split())


def along(recipe, sheets):
    """The addresses of the videos that steps of its included recipes show."""
    # Its author may want them named only. A way of a recipe is written in that recipe's file.
    way = sheets[recipe].get("way")
    file = way["recipe"] if way else recipe
    written = Path("content", "recipes", f"{file}.md").read_text(encoding="utf-8")
    if "\nincluded: by name only\n" in written:
        return set()
    inner = {line["key"] for line in sheets[recipe]["formula"] if line["is_recipe"]}
    out = set()
    for name in inner & set(sheets):
        shown = [part["watch"] for part in sheets[name]["parts"] if part.get("watch")]
        out |= {watch["address"] for watch in shown} | along(name, sheets)
    return out


def main(site, work, address):
    tally, sheets = Tally(), facts(work)
    # A bundle has the codes of all its sheets; they are looked at there.
    papers = [file for file in Path(f"{site}-instructor").rglob("*.pdf") if file.stem != "bundle"]
    files = sorted([*Path(site).rglob("*.pdf"), *papers])
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        codes = list(pool.map(decoded, files))
    for file, found in zip(files, codes):
        if CLASS.fullmatch(file.stem):
            wanted = {f"{address}classes/{file.parent.name}/"}
            tally.check(found == wanted, f"{file.parent.name}/{file.stem}: codes say {found}")
            continue
        match = NAME.fullmatch(file.stem)
        if not match or match[1] not in sheets:
            tally.check(False, f"{file.stem} is no handout's name")
            continue
        recipe, kind, units, _ = match.groups()
        videos = {video["address"] for video in sheets[recipe]["videos"]} | along(recipe, sheets)
        # A further language's handouts lie in its folder, and lead to its pages.
        language = file.relative_to(site).parts[0]
        below = "" if language == "recipes" else f"{language}/"
        page = f"{address}{below}recipes/{recipe}/#{units}"
        wanted = set() if kind == "bench" else {page} | videos
        tally.check(found == wanted, f"{file.stem}: codes say {found}, not {wanted}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
