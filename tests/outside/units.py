"""Hold units and shown amounts against PyPI `pint`.

    python3 units.py TOURIER WORK

`pint` defines pound, ounce and the US measures as NIST Handbook 44 Appendix C does, and
temperatures as NIST SP 811. Every pair of weight units and every pair of volume units is
converted by `tourier convert`; every temperature and every US weight in the facts is
converted back. The steps that amounts are shown in are the program's own rule (its
tolerance: ovens to 5 degrees C, and to 25 degrees F where that is within 5).
"""

import re
import subprocess
import sys
from fractions import Fraction
from itertools import permutations

import pint

from tally import Tally, facts

UNITS = pint.UnitRegistry()
WEIGHTS = {"mg": "mg", "g": "g", "kg": "kg", "oz": "oz", "lb": "lb"}
VOLUMES = {
    "ml": "ml", "cl": "cl", "dl": "dl", "l": "l", "tsp": "teaspoon", "tbsp": "tablespoon",
    "fl oz": "fluid_ounce", "cup": "cup", "pint": "pint", "quart": "quart",
    "gallon": "gallon",
}  # fmt: skip
VULGAR = dict(zip("½⅓⅔¼¾⅛⅜⅝⅞", "1/2 1/3 2/3 1/4 3/4 1/8 3/8 5/8 7/8".split()))


def converted(tourier, amount, unit, wanted):
    """What `tourier convert` answers, with the built-in pantry and the US cup."""
    command = [tourier, "--content", "/nowhere", "convert", f"{amount} {unit}", wanted]
    answer = subprocess.run(command, capture_output=True, text=True).stdout
    found = re.search(r"= ([\d.]+) ", answer)
    return float(found[1]) if found else None


def check_pair(tourier, one, other, names, tally):
    """Enough of the unit is converted for five figures or more in the answer."""
    each = UNITS.Quantity(1, names[one]).to(names[other]).magnitude
    amount = 1
    while amount * each < 10_000:
        amount *= 10
    got, want = converted(tourier, amount, one, other), amount * each
    holds = got is not None and abs(got - want) <= 0.0501 + want * 1e-9
    tally.check(holds, f"{amount} {one} = {got} {other}, pint says {want:.4f}")


def labels(value):
    """Every pair of a metric and a US label within a value."""
    if isinstance(value, dict):
        if {"metric", "us"} == set(value):
            yield value["metric"], value["us"]
        for part in value.values():
            yield from labels(part)
    elif isinstance(value, list):
        for part in value:
            yield from labels(part)


def check_temperatures(name, sheet, tally):
    for metric, us in labels(sheet):
        celsius = re.findall(r"(-?\d+)\s°C", metric)
        fahrenheit = re.findall(r"(-?\d+)\s°F", us)
        for c, f in zip(celsius, fahrenheit, strict=True):
            exact = UNITS.Quantity(int(c), "degC").to("degF").magnitude
            # Both are rounded: an oven to 5 degrees C and within 5 degrees F of the exact
            # figure, anything else to the degree.
            near = 5 + 2.5 * 1.8 if int(c) >= 100 else 0.5 + 0.5 * 1.8
            holds = abs(exact - int(f)) <= near
            tally.check(holds, f"{name}: {metric} shown as {us}, pint says {exact:.1f}")


def number(text):
    """`8¾` and `0.53` as numbers."""
    whole = re.sub(r"[½⅓⅔¼¾⅛⅜⅝⅞]", lambda part: " " + VULGAR[part[0]], text)
    return float(sum(Fraction(part) for part in whole.split()))


def grams(label):
    """A weight label in grams; None where it is none."""
    parts = re.findall(r"([\d.,½⅓⅔¼¾⅛⅜⅝⅞]+)\s(kg|g|lb|oz)\b", label)
    if not parts:
        return None
    return sum(UNITS.Quantity(number(n), unit).to("g").magnitude for n, unit in parts)


def check_line(name, line, tally):
    """The weights shown for a line are as far off as the line says, and no further."""
    exact = line["grams"]
    for label, claimed in (("metric", "metric_error"), ("us_weight", "us_error")):
        shown = grams(line[label])
        where = f"{name}, {line['ingredient']}: {line[label]} for {exact} g"
        if not exact or shown is None:
            continue
        # No scale shows less than 0.01 g, so half of that is let go.
        near = abs(shown / exact - 1) <= 0.03 or abs(shown - exact) <= 0.005
        tally.check(near, f"{where} is more than 3 % off")
        if label == "metric" or line["us_measure"] is None:
            off = abs(shown / exact - 1)
            # The facts give grams to 0.001 g or so and the error to four places.
            tally.check(abs(off - abs(line[claimed])) <= 0.0002, f"{where}: {claimed}")


def main(tourier, work):
    tally = Tally()
    for names in (WEIGHTS, VOLUMES):
        for one, other in permutations(names, 2):
            check_pair(tourier, one, other, names, tally)
    for name, sheet in facts(work).items():
        check_temperatures(name, sheet, tally)
        for line in sheet["formula"]:
            check_line(name, line, tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
