"""Scan codes, read from paper as a phone reads them: with `zbar` from a grey picture.

    python3 codes.py SITE WORK ADDRESS

Every page of every handout is rendered in grey (`poppler-utils`), at 110 dots an inch and
where that does not tell all, at 200, and its QR codes (ISO/IEC 18004) are decoded. A student sheet and a large print lead to the
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


def decoded(file, dots):
    """What the codes on all pages of a file say, as a set."""
    with tempfile.TemporaryDirectory() as folder:
        page = Path(folder, "page")
        subprocess.run(["pdftoppm", "-r", str(dots), "-gray", file, page], check=True)
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


def wanted(file, site, address, sheets):
    """What the codes of a file are to say; nothing where it is no handout of ours."""
    if CLASS.fullmatch(file.stem):
        return {f"{address}classes/{file.parent.name}/"}
    match = NAME.fullmatch(file.stem)
    if not match or match[1] not in sheets:
        return None
    recipe, kind, units, _ = match.groups()
    if kind == "bench":
        return set()
    # A further language's handouts lie in its folder, and lead to its pages.
    language = file.relative_to(site).parts[0]
    below = "" if language == "recipes" else f"{language}/"
    videos = {video["address"] for video in sheets[recipe]["videos"]} | along(recipe, sheets)
    return {f"{address}{below}recipes/{recipe}/#{units}"} | videos


def main(site, work, address):
    tally, sheets = Tally(), facts(work)
    # A bundle has the codes of all its sheets; they are looked at there.
    papers = [file for file in Path(f"{site}-instructor").rglob("*.pdf") if file.stem != "bundle"]
    files = sorted([*Path(site).rglob("*.pdf"), *papers])

    def read(file):
        due = wanted(file, site, address, sheets)
        found = decoded(file, 110)
        return due, found if found == due else decoded(file, 200)

    with ThreadPoolExecutor(os.cpu_count()) as pool:
        read_all = list(pool.map(read, files))
    for file, (due, found) in zip(files, read_all):
        name = f"{file.parent.name}/{file.stem}"
        tally.check(due is not None, f"{name} is no handout's name")
        tally.check(found == due, f"{name}: codes say {found}, not {due}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
