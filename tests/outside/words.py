"""The words of each language against CLDR, by PyPI babel (BSD-3-Clause), the files read by
PyPI fluent.syntax (Apache-2.0): weekdays, months, dates, times, plural categories, and that every choice by a number
has the forms that the plural rules of the language ask for. A language says all that English says.

    python3 words.py [--write]

`--write` makes `tests/golden/plurals.csv` anew.
"""

import datetime
import re
import sys
from decimal import Decimal
from pathlib import Path

from babel import Locale, dates
from fluent.syntax import ast, parse

from tally import Tally

ROOT = Path(__file__).resolve().parents[2]
WORDS = ROOT / "themes" / "default" / "words"
#: The languages' own folders, and the locale of CLDR whose ways they take: what is written
#: as `en` here is what Ireland writes.
LOCALES = {"en": "en_IE"}
#: Plural categories by language and number, which `tests/words.rs` holds the program against.
PLURALS = ROOT / "tests" / "golden" / "plurals.csv"
CATEGORIES = {"zero", "one", "two", "few", "many", "other"}


def plain(pattern, values=()):
    """A pattern with `{name}` where a value goes; of a choice, the form for its value."""
    parts = []
    for element in pattern.elements:
        if isinstance(element, ast.Placeable) and isinstance(element.expression, ast.SelectExpression):
            chosen = dict(values).get(element.expression.selector.id.name)
            for variant in element.expression.variants:
                name = getattr(variant.key, "name", None) or variant.key.value
                if name == chosen or (chosen is None and variant.default):
                    parts.append(plain(variant.value, values))
            continue
        if isinstance(element, ast.TextElement):
            parts.append(element.value)
        elif isinstance(element.expression, ast.VariableReference):
            parts.append("{" + element.expression.id.name + "}")
        elif isinstance(element.expression, ast.Literal):
            parts.append(element.expression.parse()["value"])
    return "".join(parts)


def messages(folder):
    """Key to pattern of every file of a language; a file that does not read raises."""
    found = {}
    for file in sorted(folder.glob("*.ftl")):
        found.update(read(file))
    return found


def read(file):
    """Key to pattern of one file."""
    found = {}
    for entry in parse(file.read_text(encoding="utf-8")).body:
        if isinstance(entry, ast.Junk):
            raise ValueError(f"{file}: {entry.content[:60]!r}")
        if isinstance(entry, ast.Message):
            found[entry.id.name] = entry.value
    return found


def choices(pattern):
    """Every choice in a pattern: the variable, and its variants' names."""
    for element in pattern.elements:
        if isinstance(element, ast.Placeable) and isinstance(element.expression, ast.SelectExpression):
            names = [getattr(one.key, "name", None) or one.key.value for one in element.expression.variants]
            default = next(
                getattr(one.key, "name", None) or one.key.value
                for one in element.expression.variants if one.default
            )
            yield element.expression.selector.id.name, names, default


def dated(tally, own_patterns, locale, language):
    """Names of days and months, and dates and times put together from the patterns."""
    said = {key: plain(pattern) for key, pattern in own_patterns.items()}
    weekdays = dates.get_day_names("wide", "format", locale)
    months = dates.get_month_names("wide", "format", locale)
    for at in range(7):
        own = said[f"weekday-{at + 1}"]
        tally.check(own == weekdays[at], f"{language}: weekday {at + 1} is {own}, CLDR has {weekdays[at]}")
    for at in range(1, 13):
        own = said[f"month-{at}"]
        tally.check(own == months[at], f"{language}: month {at} is {own}, CLDR has {months[at]}")
    for day in range(0, 365, 11):
        date = datetime.date(2027, 1, 1) + datetime.timedelta(days=day)
        values = {
            "weekday": said[f"weekday-{date.weekday() + 1}"],
            "day": str(date.day),
            "month": said[f"month-{date.month}"],
            "year": str(date.year),
        }
        for key, form in (("date", "long"), ("date-weekday", "full")):
            own = re.sub(r"\{(\w+)\}", lambda gap: values[gap[1]], said[key])
            wanted = dates.format_date(date, form, locale)
            tally.check(own == wanted, f"{language}: {key} is {own}, CLDR has {wanted}")
    for hour, minute in ((0, 5), (9, 0), (12, 30), (18, 5), (23, 59)):
        values = {
            "hour": f"{hour:02}", "plain-hour": str(hour), "hour-12": str((hour + 11) % 12 + 1),
            "half": "am" if hour < 12 else "pm", "minute": f"{minute:02}",
        }
        own = re.sub(r"\{([\w-]+)\}", lambda gap: values[gap[1]], plain(own_patterns["clock"], values.items()))
        # CLDR parts the halves of the day by a narrow space, which few typefaces have.
        wanted = dates.format_time(datetime.time(hour, minute), "short", locale=locale).replace("\u202f", " ")
        tally.check(own == wanted, f"{language}: {own}, CLDR has {wanted}")


def said(pattern):
    """All text of a pattern, the forms of its choices too, with its variables as `{name}`."""
    parts = []
    for element in pattern.elements:
        if isinstance(element, ast.TextElement):
            parts.append(element.value)
        elif isinstance(element.expression, ast.SelectExpression):
            parts.append("{" + element.expression.selector.id.name + "}")
            parts.extend(said(variant.value) for variant in element.expression.variants)
        else:
            parts.append(plain(ast.Pattern([element])))
    return " ".join(parts)


def format_of(word):
    """A word of the format without what an author writes in the course's own language: the name
    on an amount line, and the word that begins a caution."""
    return re.sub(r"^`(> |\d+ g ).*`$", r"`\1…`", word)


def complete(tally, base, own, language):
    """A language says all that is words in English; signs and units may be as there. Of faults
    and of the terminal it keeps the variables, and the words of the format between backticks."""
    typed = {key for name in ("fault", "cli") for key in read(WORDS / "en" / f"{name}.ftl")}
    for key, pattern in base.items():
        english = said(pattern)
        if key not in own:
            words = re.search(r"[a-z]{2}", re.sub(r"\{.*?\}|`.*?`", "", english))
            tally.check(key.startswith("unit-") or not words, f"{language}: {key} is not said")
            continue
        statement = key in typed and not key.startswith("example-")
        for what, kept in (("variables", r"\{[a-z-]+\}"), ("words of the format", r"`[^`]*`")):
            ours, theirs = ({format_of(word) for word in re.findall(kept, text)} for text in (english, said(own[key])))
            tally.check(not statement or ours == theirs, f"{language}: {key}: other {what}: {ours ^ theirs}")



def plurals():
    """The table of `PLURALS` as babel has it."""
    numbers = [*range(0, 125), 1000000, Decimal("0.5"), Decimal("1.5"), Decimal("2.0")]
    lines = [
        f"{language},{number},{Locale.parse(language).plural_form(number)}"
        for language in ("en", "fr", "de", "es", "ja", "pl", "ar", "ru")
        for number in numbers
    ]
    return "\n".join(lines) + "\n"


def main():
    tally = Tally()
    if sys.argv[1:] == ["--write"]:
        PLURALS.write_text(plurals(), encoding="utf-8")
    kept = PLURALS.read_text(encoding="utf-8").splitlines()
    for own, wanted in zip(kept, plurals().splitlines(), strict=True):
        tally.check(own == wanted, f"{PLURALS.name} has {own}, CLDR has {wanted}")
    folders = sorted(folder for folder in WORDS.iterdir() if folder.is_dir())
    base = messages(WORDS / "en")
    for folder in folders:
        language = folder.name
        locale = LOCALES.get(language, language.replace("-", "_"))
        theirs = messages(folder)
        if "-" not in language:
            complete(tally, base, theirs, language)
        own = {**base, **theirs}
        dated(tally, own, locale, language)
        rule = Locale.parse(locale).plural_form
        wanted = {rule(number) for number in range(1000)}
        for key, pattern in own.items():
            for variable, names, default in choices(pattern):
                known = CATEGORIES & set(names)
                if not known:
                    continue
                tally.check(known <= wanted, f"{language}: {key} has a form for {known - wanted}, which no number takes")
                missing = wanted - set(names)
                tally.check(not missing or default == "other", f"{language}: {key} lacks {missing} of {variable}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main())
