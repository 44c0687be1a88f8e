"""What living with a large course costs, as ratios measured in one run.

    python3 tests/courses.py target/release/tourier FOLDER [RECIPES ...]

Makes courses of so many recipes (10, 100, 1000 where none is named; 5000 takes ten minutes
and 11 GB) from
the demonstration course's, each with its own title, summary and words, in FOLDER. Handouts
are set with a template of one line, so that typesetting, which has its own figures
(`typesetting.rs`), does not hide the rest. For each course:

  clean     a first publish, on the clock, and the most memory held
  walk      walking content and site and hashing every file (SHA-256), on the clock
  again     a publish with nothing to do, over `walk`
  edit      a publish after one word was changed in one recipe, over `clean`

and from each course to the next: how many times the recipes, the time, the memory. Median of
three but for `clean`. Run it on a quiet machine. No source but the promises.
"""

import hashlib
import os
import re
import shutil
import statistics
import sys
import time
from pathlib import Path

PROJECT = Path(__file__).resolve().parent.parent
DEMO = PROJECT / "content"
PLAIN = '#set document(title: "a")\n#set text(font: "Asap")\n#read("data.json").len()\n'


def copy(text, number, names):
    """A recipe's text as recipe `number`, its links to the recipes of the same round."""
    text = re.sub(r"^title: (.*)$", rf"title: \1 {number}", text, count=1, flags=re.M)
    text = re.sub(r"^summary: (.*)$", rf"summary: \1 Number {number}.", text, count=1, flags=re.M)
    for name in names:
        text = text.replace(f"{name}.md", f"{name}-{number}.md")
    return text


def make(folder, count):
    """A course of `count` recipes in `folder`."""
    content = folder / "content"
    shutil.rmtree(folder, ignore_errors=True)
    # In one language: what is translated is named by its recipes.
    ignored = shutil.ignore_patterns("classes", "recipes", "in")
    shutil.copytree(DEMO, content, ignore=ignored)
    (content / "recipes").mkdir()
    originals = {file.stem: file.read_text() for file in sorted((DEMO / "recipes").glob("*.md"))}
    # Included doughs before what includes them, so that a round cut short is still whole.
    order = sorted(originals, key=lambda name: originals[name].count(".md)\n"))
    made = []
    for number in range(1, count // len(order) + 2):
        for name in order[: count - len(made)]:
            text = copy(originals[name], number, originals)
            (content / "recipes" / f"{name}-{number}.md").write_text(text)
            made.append(f"{name}-{number}")
    for file in (content / "techniques").glob("*.md"):
        file.write_text(re.sub(r"recipes/([a-z-]+)\.md", r"recipes/\1-1.md", file.read_text()))
    course = (content / "course.yaml").read_text()
    course = course[: course.index("lessons:")].split("news:")[0]
    course = re.sub(r"^also in: .*\n", "", course, flags=re.M)
    lessons = [made[at : at + len(order)] for at in range(0, len(made), len(order))]
    course += "lessons:\n" + "".join(
        f"  - title: Lesson {at}\n    recipes: [{', '.join(names)}]\n"
        for at, names in enumerate(lessons, 1)
    )
    (content / "course.yaml").write_text(course)
    theme = folder / "theme" / "paper"
    theme.mkdir(parents=True)
    (theme / "main.typ").write_text(PLAIN)


def publish(tourier, folder):
    """Seconds on the clock, and the most memory held in MB."""
    command = [tourier, "publish", "--quiet", "--content", folder / "content"]
    command += ["--theme", folder / "theme", "--to", folder / "site"]
    begun = time.monotonic()
    child = os.posix_spawn(command[0], [str(part) for part in command], os.environ)
    _, status, used = os.wait4(child, 0)
    if status != 0:
        sys.exit(f"publishing {folder} failed")
    return time.monotonic() - begun, used.ru_maxrss * 1024 / 1e6


def walk(folder):
    """Seconds to read and hash every file of content and site."""
    begun = time.monotonic()
    for below in ("content", "site"):
        for at, _, files in os.walk(folder / below):
            for file in files:
                with open(os.path.join(at, file), "rb") as bytes:
                    hashlib.sha256(bytes.read()).digest()
    return time.monotonic() - begun


def edited(tourier, folder):
    """Seconds to publish one changed word."""
    recipe = folder / "content" / "recipes" / "tin-loaf-1.md"
    times = []
    for word in ("first", "second", "third"):
        text = re.sub(r"Number 1\.( Changed a \w+ time\.)?", f"Number 1. Changed a {word} time.", recipe.read_text())
        recipe.write_text(text)
        times.append(publish(tourier, folder)[0])
    return statistics.median(times)


def main(tourier, folder, *counts):
    counts = [int(count) for count in counts] or [10, 100, 1000]
    last = None
    for count in counts:
        at = Path(folder) / str(count)
        make(at, count)
        clean, memory = publish(tourier, at)
        walked = statistics.median(walk(at) for _ in range(3))
        again = statistics.median(publish(tourier, at)[0] for _ in range(3))
        edit = edited(tourier, at)
        print(
            f"{count:5} recipes: clean {clean:.2f} s, {memory:.0f} MB; "
            f"again {again / walked:.2f} of walking and hashing ({walked:.2f} s); "
            f"one edit {100 * edit / clean:.1f} % of clean",
            flush=True,
        )
        if last:
            fewer, time_of, memory_of = last
            print(
                f"      {count / fewer:.1f} times the recipes: "
                f"{clean / time_of:.2f} times the time, {memory / memory_of:.2f} times the memory",
                flush=True,
            )
        last = count, clean, memory
        shutil.rmtree(at)
    return 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
