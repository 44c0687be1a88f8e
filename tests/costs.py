"""What publishing costs, held against what it cost: ratios only, each of runs in turn.

    python3 tests/costs.py TOURIER [--note]

Two courses are made as `courses.py` makes them, of 12 and of 48 recipes, and published in
turn three times, so that what else the machine does falls on both. Four ratios come of it,
medians of the three: the time and the most memory of the large course over the small one, a
publish after one edit over a clean one, and a publish with nothing to do over walking and hashing
content and site. `costs.json` beside this file has what they were and how far each may drift;
more than that is a fault. `--note` writes down what was found, keeping the drift: after a
change that is meant to cost or to save, on a quiet machine. Under three minutes on two
cores. No source but the promises; time on a busy machine tells little, so drifts are wide.
"""

import json
import shutil
import statistics
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE / "outside"))

import courses  # noqa: E402
from tally import Tally  # noqa: E402

SMALL, LARGE = 12, 48
ROUNDS = 3
NOTED = HERE / "costs.json"


def clean(tourier, course):
    """Seconds and memory of a first publish."""
    for site in ("site", "site-instructor"):
        shutil.rmtree(course / site, ignore_errors=True)
    return courses.publish(tourier, course)


def edited(tourier, course, word):
    """Seconds of a publish after one word was changed."""
    recipe = course / "content/recipes/tin-loaf-1.md"
    text = recipe.read_text(encoding="utf-8")
    recipe.write_text(text.replace("\nsummary: ", f"\nsummary: {word} ", 1), encoding="utf-8")
    return courses.publish(tourier, course)[0]


def measured(tourier, work):
    """The ratios, by name."""
    small, large = (Path(work, str(count)) for count in (SMALL, LARGE))
    courses.make(small, SMALL)
    courses.make(large, LARGE)
    found = {"time": [], "memory": [], "edit": [], "nothing": []}
    for at in range(ROUNDS):
        (time_of, memory_of), (time, memory) = clean(tourier, small), clean(tourier, large)
        found["time"].append(time / time_of)
        found["memory"].append(memory / memory_of)
        found["edit"].append(edited(tourier, large, f"Changed{at}") / time)
        walked = courses.walk(large)
        found["nothing"].append(courses.publish(tourier, large)[0] / walked)
    return {name: round(statistics.median(all_of), 3) for name, all_of in found.items()}


def main(tourier, *options):
    tally, noted = Tally(), json.loads(NOTED.read_text(encoding="utf-8"))
    with tempfile.TemporaryDirectory() as work:
        found = measured(str(Path(tourier).resolve()), work)
    tally.check(found.keys() == noted.keys(), f"noted are {sorted(noted)}, found {sorted(found)}")
    for name, now in found.items():
        was, drift = noted[name]["found"], noted[name]["drift"]
        print(f"  {name}: {now}, was {was}, up to {was * drift:.3f}")
        tally.check(now <= was * drift, f"{name}: {now} is more than {drift} times {was}")
        noted[name]["found"] = now
    if "--note" in options:
        NOTED.write_text(json.dumps(noted, indent=2) + "\n", encoding="utf-8")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
