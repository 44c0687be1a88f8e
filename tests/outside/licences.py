#!/usr/bin/env python3
"""Everything that is built into the program comes under a licence that lets it be given on.

    python3 licences.py           the check
    python3 licences.py --list    the list: package, version, licence, where it comes from

Source: the packages' own statements, as cargo reports them, in the terms of the SPDX
licence list (https://spdx.org/licenses/); SPDX 2.3, annex D, for expressions.
"""

import json
import re
import subprocess
import sys

# Licences that let a program be given on with a notice and ask nothing of our own code.
# MPL-2.0 asks that changes to its own files be published, and there are none.
FREE = {
    "0BSD", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "BSL-1.0", "CC0-1.0", "ISC",
    "MIT", "MIT-0", "MPL-2.0", "NCSA", "OFL-1.1", "Unicode-3.0", "Unicode-DFS-2016", "Unlicense",
    "Zlib", "Apache-2.0 WITH LLVM-exception", "CDLA-Permissive-2.0",
}


def packages():
    """What the program is built from, on this kind of machine."""
    said = subprocess.run(["cargo", "metadata", "--format-version", "1", "--locked"],
                          capture_output=True, text=True, check=True)
    data = json.loads(said.stdout)
    nodes = {node["id"]: node for node in data["resolve"]["nodes"]}
    known = {package["id"]: package for package in data["packages"]}
    seen, ahead = set(), [data["resolve"]["root"]]
    while ahead:
        here = ahead.pop()
        if here in seen:
            continue
        seen.add(here)
        ahead.extend(way["pkg"] for way in nodes[here]["deps"]
                     if any(kind["kind"] is None for kind in way["dep_kinds"]))
    seen.discard(data["resolve"]["root"])
    return sorted((known[one] for one in seen), key=lambda one: (one["name"], one["version"]))


def allowed(terms):
    """Whether an expression holds with the licences allowed: an `OR` needs one, an `AND` all."""
    terms = terms.replace("/", " OR ")
    inner = re.search(r"\(([^()]*)\)", terms)
    if inner:
        word = "MIT" if allowed(inner[1]) else "none"
        return allowed(terms[:inner.start()] + word + terms[inner.end():])
    return any(all(one.strip() in FREE for one in way.split(" AND ")) for way in terms.split(" OR "))


def main():
    """Checks or lists."""
    found = packages()
    if "--list" in sys.argv:
        for one in found:
            print(one["name"], one["version"], one["license"] or "-", one["repository"] or "-", sep="\t")
        return 0
    assert allowed("MIT OR GPL-3.0") and not allowed("MIT AND GPL-3.0")
    assert allowed("(MIT OR GPL-3.0) AND ISC") and not allowed("")
    bad = [one for one in found if not allowed(one["license"] or "")]
    for one in bad:
        print(f"  {one['name']} {one['version']}: {one['license']}")
    print(f"{len(found) - len(bad)} passed, {len(bad)} failed")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
