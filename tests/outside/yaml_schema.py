"""The YAML files and heads under their schemas, as an editor would check them.

    python3 yaml_schema.py TOURIER

Every text of the courses here fits; with a key misspelt it does not. The schemas themselves
are sound. Held against JSON Schema 2020-12 with PyPI `jsonschema` and `pyyaml`.
"""

import json
import subprocess
import sys
from pathlib import Path

import yaml
from jsonschema import Draft202012Validator

from tally import Tally

PROJECT = Path(__file__).resolve().parents[2]
COURSES = ["content", "tests/golden/course", "tests/faults"]
FOLDERS = {"classes": "class", "recipes": "recipe", "techniques": "technique"}


def texts(course):
    """Every YAML text of a course: kind, file, text."""
    for file in sorted(course.rglob("*")):
        text = file.read_text(encoding="utf-8") if file.suffix in (".yaml", ".md") else ""
        if file.suffix == ".yaml" and file.parent == course:
            yield file.stem, file, text
        elif file.parent.name in FOLDERS and text:
            head = text.split("---\n")[1] if file.suffix == ".md" else text
            further = file.relative_to(course).parts[0] == "in"
            yield "translation" if further else FOLDERS[file.parent.name], file, head


def misspelt(value):
    """The same with one more letter in its first key."""
    key = next(iter(value))
    return {("x" + key if name == key else name): inner for name, inner in value.items()}


def main(tourier):
    tally, validators = Tally(), {}
    for kind in ["course", "pantry", "glossary", "translation", *FOLDERS.values()]:
        command = [tourier, "facts", f"--schema={kind}"]
        schema = json.loads(subprocess.run(command, capture_output=True, text=True).stdout)
        Draft202012Validator.check_schema(schema)
        validators[kind] = Draft202012Validator(schema)
    for course in COURSES:
        for kind, file, text in texts(PROJECT / course):
            # Values that are no numbers stay text, as the readers take them.
            value = yaml.load(text, yaml.BaseLoader)
            errors = [error.message for error in validators[kind].iter_errors(value)]
            tally.check(not errors, f"{file}: {errors[:2]}")
            if kind in ("pantry", "glossary"):
                value = {name: {"no-key": "1"} for name in value}
                tally.check(not validators[kind].is_valid(value), f"{file}: any key fits")
                continue
            fits = validators[kind].is_valid(misspelt(value))
            tally.check(not fits, f"{file}: any key fits")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
