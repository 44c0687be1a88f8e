"""Change every whole number in the rooms of units and turns, one at a time, and expect a
test to notice.

    python3 tests/mutate.py [--list] [FILE ...]

Units: src/measure/{unit,length,mass,temperature}.rs. Turns: src/dough/layers.rs, the
lock-ins and turns of src/model/step.rs, their words in src/read/cut.rs. Each number n
becomes n + 1 in a copy; the copy holds only the rooms whose own tests must notice, so that
it builds in seconds. A change that no test notices is printed, and the exit code is 1.

Slow (some minutes), so no part of `tests/run`: run it after a change to units or turns.
No source but the program itself. The last line is `N passed, N failed`.
"""

import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
UNITS = ("fault", "measure")
TURNS = ("fault", "measure", "model", "dough")
WORDS = ("fault", "measure", "words", "model", "read")
# Each file, where in it to begin, and the rooms whose tests must notice.
FILES = {
    "src/measure/unit.rs": ("", UNITS),
    "src/measure/length.rs": ("", UNITS),
    "src/measure/mass.rs": ("", UNITS),
    "src/measure/temperature.rs": ("", UNITS),
    "src/dough/layers.rs": ("", TURNS),
    "src/model/step.rs": ("", TURNS),
    "src/read/cut.rs": ("fn turn(", WORDS),
}
# These hold thousands of random cases and say nothing of units or turns.
SLOW = ("shown_is_near", "pieces_lie_apart", "areas_and_scrap")
NUMBER = re.compile(r"(?<![\w.])\d[\d_]*(?![\w.])")
# A nought stays one whatever it is divided by.
SAME = re.compile(r"exact\(0, (\d+)\)")


def code(path, only):
    """The stretches of a file that are code and no test, as (start, end)."""
    text = path.read_text(encoding="utf-8")
    end = text.find("#[cfg(test)]")
    end = len(text) if end < 0 else end
    start = 0
    if only:
        start = text.index(only)
        end = text.index("\n}\n", start)
    return text, start, end


def numbers(path, only):
    """Every number to change: its place and what stands there."""
    text, start, end = code(path, only)
    same = {match.start(1) for match in SAME.finditer(text)}
    for match in NUMBER.finditer(text, start, end):
        line = text[text.rfind("\n", 0, match.start()) + 1 : match.start()]
        within = line.count('"') % 2
        if "//" not in line and not within and match.start() not in same:
            yield match


def copy(to, rooms):
    """The rooms as a program of their own."""
    (to / "src").mkdir(parents=True)
    for room in rooms:
        for source in (ROOT / "src" / room, ROOT / "src" / f"{room}.rs"):
            if source.is_dir():
                shutil.copytree(source, to / "src" / room)
            elif source.is_file():
                shutil.copy(source, to / "src" / source.name)
    (to / "src/lib.rs").write_text("".join(f"pub mod {room};\n" for room in rooms))
    manifest = (ROOT / "Cargo.toml").read_text(encoding="utf-8")
    wanted = (
        "pulldown-cmark serde_yaml serde strsim num-rational num-bigint num-traits jiff"
        " schemars"
    ).split()
    lines = [
        line
        for line in manifest.splitlines()
        if line.split(" ")[0] in wanted and "=" in line
    ]
    (to / "Cargo.toml").write_text(
        '[package]\nname = "rooms"\nversion = "0.0.0"\nedition = "2024"\n'
        "[dependencies]\n" + "\n".join(lines) + '\n[dev-dependencies]\nproptest = "1.12"\n'
        "[profile.dev]\ndebug = false\n"
    )
    shutil.copy(ROOT / "Cargo.lock", to / "Cargo.lock")


def tests(folder):
    """Whether the tests pass; what does not build is noticed too."""
    skipped = [word for name in SLOW for word in ("--skip", name)]
    run = subprocess.run(
        ["cargo", "test", "--lib", "--quiet", "--", *skipped],
        cwd=folder,
        env={**os.environ, "CARGO_TARGET_DIR": str(folder.parent / "target")},
        capture_output=True,
        text=True,
        check=False,
        timeout=1800,
    )
    return run.returncode == 0, run.stdout + run.stderr


def change(folder, name, match):
    """Whether nothing notices that a number of a file is one more."""
    text = (ROOT / name).read_text(encoding="utf-8")
    changed = str(int(match.group().replace("_", "")) + 1)
    (folder / name).write_text(
        text[: match.start()] + changed + text[match.end() :], encoding="utf-8"
    )
    unnoticed, _ = tests(folder)
    (folder / name).write_text(text, encoding="utf-8")
    if unnoticed:
        line = text.count("\n", 0, match.start()) + 1
        print(f"  {name}:{line}: {match.group()} → {changed} goes unnoticed", flush=True)
    return not unnoticed


def run(found):
    """Changes every number found; the counts of what was noticed and what was not."""
    noticed = unnoticed = 0
    with tempfile.TemporaryDirectory() as folder:
        for rooms in (UNITS, TURNS, WORDS):
            mine = [(name, match) for name, match in found if FILES[name][1] == rooms]
            if not mine:
                continue
            program = Path(folder) / rooms[-1]
            copy(program, rooms)
            sound, said = tests(program)
            if not sound:
                print("the tests fail before anything is changed:\n" + said[-2000:])
                return noticed, unnoticed + len(mine)
            for name, match in mine:
                if change(program, name, match):
                    noticed += 1
                else:
                    unnoticed += 1
    return noticed, unnoticed


def main(arguments):
    chosen = [name for name in arguments if not name.startswith("--")] or list(FILES)
    found = [
        (name, match) for name in chosen for match in numbers(ROOT / name, FILES[name][0])
    ]
    if "--list" in arguments:
        for name, match in found:
            text = (ROOT / name).read_text(encoding="utf-8")
            print(f"{name}:{text.count(chr(10), 0, match.start()) + 1}: {match.group()}")
        return 0
    passed, failed = run(found)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
