"""Classes of two to twelve groups: how long a plan takes and how many are decided, beside
OR-tools with one worker in the same run; bakes at home; and a class of 24 pairs with two
recipes.

Both are asked the same question: the rival for its verdict alone, and for the levels of the
plan too (fewest moments, then least waiting, on the plan's own grid). Ours always makes the
whole plan, starting the program and reading the course included.

    python3 groups.py TOURIER [CLASSES [CONTENT]]
"""

import json
import random
import re
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from classes import COURSE, a_class, ask, levels, recipe, rival
from tally import Tally


def timed(work, *given):
    """What it gives, and the seconds that it took."""
    since = time.monotonic()
    return work(*given), time.monotonic() - since


def course(folder, rng):
    """A course of three random recipes."""
    for part in ("recipes", "classes"):
        Path(folder, part).mkdir()
    Path(folder, "course.yaml").write_text(COURSE, encoding="utf-8")
    for name in ("one", "two", "three"):
        Path(folder, "recipes", f"{name}.md").write_text(recipe(rng, name), encoding="utf-8")


def with_groups(text, groups):
    """The class with so many pairs, and kit that grows with them."""
    text = re.sub(r"bakers: \d+", f"bakers: {2 * groups}", text)
    for kit in ("mixer", "oven", "fridge tray", "proofer tray"):
        grown = lambda found: f"{kit}: {max(int(found[1]), int(found[1]) * groups // 4)}"
        text = re.sub(rf"(?<=[ ,{{]){kit}: (\d+)", grown, text, count=1)
    return text


def by_groups(tally, tourier, classes):
    """A line for each number of groups."""
    print("  groups   ours: s, decided   verdict alone: s, decided   level by level: s, found")
    for groups in range(2, 13):
        rng = random.Random(groups)
        own, rivals, wholes, decided = [], [], [], [0, 0, 0]
        for _ in range(classes):
            with tempfile.TemporaryDirectory() as folder:
                course(folder, rng)
                text = with_groups(a_class(rng, ["one", "two", "three"]), groups)
                Path(folder, "classes", "c.yaml").write_text(text, encoding="utf-8")
                plan, took = timed(ask, tourier, folder, "c")
                if isinstance(plan, str):
                    tally.check(False, plan[:300])
                    continue
                own.append(took)
                decided[0] += plan["verdict"] != "unknown"
                (verdict, _, _), took = timed(rival, plan)
                rivals.append(took)
                decided[1] += verdict is not None
                if plan["verdict"] == "fits" and "as usual" in plan["standing"]:
                    found, took = timed(levels, plan)
                    wholes.append(took)
                    decided[2] += found is not None
        whole = f"{statistics.median(wholes):10.2f} {decided[2]:4} of {len(wholes)}" if wholes else ""
        print(f"  {groups:6} {statistics.median(own):10.2f} {decided[0]:6} {statistics.median(rivals):16.2f} {decided[1]:8} {whole}")
        tally.check(decided[0] >= decided[1], f"{groups} groups: {decided[0]} decided, the rival {decided[1]}")


def at_home(tourier, content):
    """Seconds for each recipe of a course at home."""
    print("  at home, ready at 09:00 on a Sunday")
    for file in sorted(Path(content, "recipes").glob("*.md")):
        words = [tourier, "--content", content, "timetable", file.stem, "--ready", "2027-03-07 09:00"]
        answer, took = timed(lambda: subprocess.run(words, capture_output=True, text=True, check=False))
        print(f"  {took:6.2f} s  {file.stem} ({answer.returncode})")


LARGE = """title: Large
sessions:
  - 2027-03-02 09:00 to 13:00
  - 2027-03-02 14:00 to 20:00
bakers: 48
work in: pairs
makes:
  - recipe: one
    each: pair
    pieces: 12
  - recipe: two
    each: pair
    pieces: 12
kit: { mixer: 12, oven: 8, tray per oven: 4, fridge tray: 60, proofer tray: 60, instructor: 2 }
demonstrate: [turn-0]
changeover: 5 min
"""


def large(tally, tourier):
    """24 pairs with two recipes."""
    with tempfile.TemporaryDirectory() as folder:
        course(folder, random.Random(7))
        Path(folder, "classes", "c.yaml").write_text(LARGE, encoding="utf-8")
        plan, took = timed(ask, tourier, folder, "c")
    if isinstance(plan, str):
        tally.check(False, plan[:300])
        return
    said = {one["name"]: (one["value"], one["bound"]) for one in plan["objective"]}
    print(f"  24 pairs, two recipes: {took:.1f} s, {plan['verdict']}, {len(plan['activities'])} activities, {json.dumps(said)}")
    tally.check(plan["verdict"] == "fits", f"24 pairs: {plan['verdict']}")


def main():
    """The three tables."""
    tourier = sys.argv[1]
    classes = int(sys.argv[2]) if len(sys.argv) > 2 else 10
    tally = Tally()
    at_home(tourier, sys.argv[3] if len(sys.argv) > 3 else "content")
    large(tally, tourier)
    by_groups(tally, tourier, classes)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main())
