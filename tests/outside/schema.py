"""Hold the facts against their own schema with PyPI `jsonschema` (JSON Schema 2020-12).

    python3 schema.py WORK
"""

import json
import sys
from pathlib import Path

from jsonschema import Draft202012Validator, SchemaError

from tally import Tally, facts


def main(work):
    tally = Tally()
    schema = json.loads(Path(work, "schema.json").read_text(encoding="utf-8"))
    try:
        Draft202012Validator.check_schema(schema)
        tally.check(True, "")
    except SchemaError as error:
        tally.check(False, f"the schema itself: {error.message}")
        return tally.end()
    validator = Draft202012Validator(schema)
    for name, recipe in facts(work).items():
        errors = [f"{name}{e.json_path[1:]}: {e.message}" for e in validator.iter_errors(recipe)]
        tally.check(not errors, "; ".join(errors[:5]))
        # The schema must not be so loose that it takes anything.
        broken = {**recipe, "formula": "none"}
        tally.check(not validator.is_valid(broken), f"{name}: a broken formula is valid")
        named = set(recipe) <= set(schema["properties"])
        tally.check(named, f"{name}: facts that the schema does not name")
    together, schema = (json.loads(Path(work, it).read_text(encoding="utf-8"))
                        for it in ("together.json", "schema-together.json"))
    errors = [f"{e.json_path}: {e.message}" for e in Draft202012Validator(schema).iter_errors(together)]
    tally.check(not errors, "; ".join(errors[:5]))
    made = [it["recipe"] for it in together["recipes"]]
    tally.check(made == ["layered-dough", "crescents", "chocolate-batons"], f"made together are {made}")
    taken = sum(grams for _, grams in together["doughs"][0]["parts"])
    tally.check(taken == together["doughs"][0]["taken_g"], "what each takes is not what all take")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
