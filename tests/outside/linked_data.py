"""Linked data of the pages: well-formed, of the right types, and the program's own numbers.

    python3 linked_data.py SITE WORK

Sources: JSON-LD 1.1 (W3C); the vocabulary `Recipe`, `HowToSection`,
`HowToStep`, `NutritionInformation`, `BreadcrumbList` and `Course` of schema.org; durations and dates of ISO 8601, read with PyPI `isodate`.
"""

import json
import re
import sys
from datetime import timedelta
from pathlib import Path

import html5lib
import isodate

from tally import Tally, facts

TIMES = ("prepTime", "cookTime", "totalTime")
NUTRIENT = re.compile(r"\d+(\.\d+)? (kcal|g|mg)")


def once(pairs):
    """An object in which no key stands twice."""
    names = [name for name, _ in pairs]
    if len(set(names)) != len(names):
        raise ValueError(f"a key stands twice: {names}")
    return dict(pairs)


def blocks(file):
    tree = html5lib.parse(file.read_bytes(), namespaceHTMLElements=False)
    scripts = tree.iter("script")
    return [s.text or "" for s in scripts if s.attrib.get("type") == "application/ld+json"]


def read(file, tally):
    """The page's one block of linked data; nothing where it is none."""
    texts = blocks(file)
    where = file.parent.name
    tally.check(len(texts) == 1, f"{where}: {len(texts)} blocks of linked data")
    try:
        data = json.loads(texts[0], object_pairs_hook=once)
    except (ValueError, IndexError) as error:
        tally.check(False, f"{where}: {error}")
        return {}
    about = data.get("@context") in ("https://schema.org", "https://schema.org/")
    tally.check(about, f"{where}: context {data.get('@context')}")
    return data


def is_date(text):
    try:
        isodate.parse_date(text)
        return True
    except (isodate.ISO8601Error, TypeError):
        return False


def minutes(text):
    """An ISO 8601 duration in minutes; None where it is none."""
    try:
        span = isodate.parse_duration(text)
    except (isodate.ISO8601Error, TypeError):
        return None
    return span / timedelta(minutes=1) if isinstance(span, timedelta) else None


def own_steps(instructions, title, name, tally):
    """The recipe's own steps: in the last of several sections, where others come first."""
    if not any(part.get("@type") == "HowToSection" for part in instructions):
        return instructions
    for part in instructions:
        whole = part.get("@type") == "HowToSection" and part.get("itemListElement")
        tally.check(whole and part.get("name"), f"{name}: section {part.get('name')} is not whole")
    tally.check(instructions[-1].get("name") == title, f"{name}: its own steps are not the last")
    return instructions[-1]["itemListElement"]


def check_way(name, page, tally):
    """The way from the course to the page: places counted from 1, all but the last led to."""
    way = page.get("breadcrumb", {})
    stops = way.get("itemListElement", [])
    tally.check(way.get("@type") == "BreadcrumbList" and len(stops) > 1, f"{name}: no way to it")
    counted = [stop.get("position") for stop in stops] == list(range(1, len(stops) + 1))
    tally.check(counted, f"{name}: the way is not counted through")
    named = all(stop.get("name") for stop in stops)
    led = all(stop.get("item", "").startswith("http") for stop in stops[:-1])
    tally.check(named and led, f"{name}: a stop of the way is not whole")


def check_recipe(name, data, sheet, tally):
    tally.check(data.get("@type") == "Recipe", f"{name}: type {data.get('@type')}")
    tally.check(data.get("name") == sheet["title"], f"{name}: name {data.get('name')}")
    tally.check(is_date(data.get("datePublished")), f"{name}: date {data.get('datePublished')}")
    for key in TIMES:
        if key in data:
            tally.check(minutes(data[key]) is not None, f"{name}: {key} {data[key]}")
    total = minutes(data.get("totalTime"))
    tally.check(total == sheet["time"]["elapsed_min"], f"{name}: total time {total}")
    lines, formula = data.get("recipeIngredient", []), sheet["formula"]
    tally.check(len(lines) == len(formula), f"{name}: {len(lines)} ingredients")
    for text, line in zip(lines, formula):
        holds = line["metric"] in text and line["ingredient"] in text
        tally.check(holds, f"{name}: `{text}` is not {line['metric']} {line['ingredient']}")
    steps = own_steps(data.get("recipeInstructions", []), sheet["title"], name, tally)
    own = [part["title"] for part in sheet["parts"] if part["kind"] == "step"]
    tally.check([s.get("name") for s in steps] == own, f"{name}: the steps differ")
    for step in steps:
        whole = step.get("@type") == "HowToStep" and step.get("text")
        tally.check(whole, f"{name}: step {step.get('name')} is not whole")
    for key, value in data.get("nutrition", {}).items():
        if key.endswith("Content") or key == "calories":
            tally.check(NUTRIENT.fullmatch(value), f"{name}: {key} {value}")


def main(folder, work):
    site, tally = Path(folder), Tally()
    for name, sheet in facts(work).items():
        data = read(site / "recipes" / name / "index.html", tally)
        check_recipe(name, data, sheet, tally)
        check_way(name, data.get("mainEntityOfPage", {}), tally)
    course = read(site / "index.html", tally)
    tally.check(course.get("@type") == "Course", f"course: type {course.get('@type')}")
    for key in ("name", "description", "provider"):
        tally.check(course.get(key), f"course: no {key}")
    # The first page of each language is where its ways begin.
    starts = [site, *(folder.parent for folder in site.glob("*/recipes"))]
    for page in site.rglob("*.html"):
        if blocks(page) and page.parent.parent.name != "recipes" and page.parent not in starts:
            data = read(page, tally)
            tally.check("@type" in data, f"{page}: no type")
            check_way(page.parent.name, data, tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
