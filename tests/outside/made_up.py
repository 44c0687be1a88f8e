"""A course in a made-up language, published: every word of a message is put in brackets ‹…›, every word of the author holds
`xq`. No other word may stand on a page, in a drawing or its spoken words, a list, a calendar or a PDF, but names
of the pantry and signs of units. Messages are read by PyPI fluent.syntax (Apache-2.0), PDFs by poppler's pdftotext.

    python3 made_up.py PROGRAM WORK
"""

import html
import re
import shutil
import subprocess
import sys
from html.parser import HTMLParser
from pathlib import Path

from fluent.syntax import ast, parse, serialize

from tally import Tally

ROOT = Path(__file__).resolve().parents[2]
ENGLISH = ROOT / "themes" / "default" / "words" / "en"
#: A tag for private use (RFC 5646, 2.2.7): no language has it.
LANGUAGE = "qaa"
#: Attributes that somebody reads or hears.
READ = {"alt", "title", "aria-label", "content", "placeholder", "label"}
#: Signs of units and names: nobody translates them. PDF and the sizes of paper are names.
SIGNS = set("""g kg mg ml cl l cm mm m in ft lb oz C F min h s kcal tsp tbsp cup x PDF A EUR
    width device initial scale light dark noindex default src self base uri none form action object""".split())
#: Names of the built-in pantry, of its allergens and of where things wait, as the course below has them.
NAMES = set("""bread flour fine salt instant fresh active dry yeast butter water egg eggs whole milk large cereals
    containing gluten wheat fridge bench dough tray mixer""".split()) | {"recipes", "metric", "us"}  # parts of printed addresses
COURSE = """title: Xqcourse
summary: Xqabout xqthis.
language: qaa
units: metric
paper: a4
offline: yes
address: https://xq.example/
kit: { mixer: 2.5 kg, bench: 120 x 60 cm, tray: 60 x 40 cm, trays per oven: 3 }
room: { temperature: 21 °C, flour: 20 °C, tap: 14 °C, friction: 12 °C }
dough density: 1.1 g/ml
"""
RECIPE = """---
title: Xqhorns
summary: Xqlayers, xqrolled.
makes: 22 xqhorns
formula:
  xqdough:
    - 500 g bread flour
    - 250 g whole milk
    - 60 g butter
    - 10 g fine salt
    - 6 g instant yeast
  xqfat:
    - 250 g butter, xqcold
  xqwash:
    - 1 large egg
dough temperature: 24 °C
loss: 2 %
---

Xqopening xqwords.

## Xqmix
~~~ticket
uses: xqdough
hands: 10 min
kit: 1 mixer
until: xqsmooth
~~~
Xqwork {xqdough} xqwell.

## Xqrest
~~~ticket
wait: 60 min (45 min to 2 h)
where: fridge
at: 4 °C
hold: up to 12 h in the fridge
~~~

## Xqblock
~~~ticket
uses: xqfat
hands: 5 min
sheet: 20 x 20 cm
~~~

## Xqlock
~~~ticket
hands: 6 min
sheet: 29 x 29 cm
lock-in: envelope
~~~

## Xqfirst
~~~ticket
hands: 8 min
sheet: 60 x 20 cm
turn: letter
~~~

## Xqsecond
~~~ticket
hands: 8 min
sheet: 60 x 20 cm
turn: book
~~~

## Xqchill
~~~ticket
wait: 60 min
where: fridge
~~~

## Xqcut
~~~ticket
hands: 12 min
sheet: 110 x 24 cm
cut: triangles, base 9 cm, height 24 cm
~~~

## Xqshape
~~~ticket
hands: 20 min
shape: crescent, notch 1 cm
~~~

## Xqproof
~~~ticket
wait: 2 h (100 min to 150 min)
at: 26 °C
~~~

## Xqbake
~~~ticket
uses: xqwash
bake: 190 °C, 20 min
per tray: 8
core: 96 °C
~~~
Xqbrush xqlightly. Xqbake xqat {190 °C}.
"""
CLASS = """title: Xqclass
sessions:
  - 2027-03-02 15:00 to 23:30
bakers: 6
work in: pairs
makes:
  - recipe: xqhorns
    each: pair
  - recipe: xqhorns
    each: demonstration
kit: { mixer: 3, oven: 2, fridge tray: 30 }
demonstrate: [xqlock]
"""


def bracketed(text):
    """A message file with each of its words in brackets."""
    resource = parse(text)
    for entry in resource.body:
        if isinstance(entry, ast.Message):
            enclose(entry.value)
    return serialize(resource)


def enclose(pattern):
    for element in pattern.elements:
        if isinstance(element, ast.TextElement):
            element.value = re.sub(r"\S*[^\W\d_]\S*", lambda word: f"‹{word[0]}›", element.value)
        elif isinstance(element.expression, ast.SelectExpression):
            for variant in element.expression.variants:
                enclose(variant.value)


class Said(HTMLParser):
    """What a page says and what is read aloud of it."""

    def __init__(self):
        super().__init__()
        self.said, self.within = [], []

    def handle_starttag(self, tag, attributes):
        if tag not in ("meta", "link", "input", "img", "br", "path"):
            self.within.append(tag)
        self.said += [value or "" for name, value in attributes if name in READ and tag != "meta"]

    def handle_endtag(self, tag):
        if tag in self.within:
            while self.within and self.within.pop() != tag:
                pass

    def handle_data(self, data):
        if not {"script", "style"} & set(self.within):
            self.said.append(data)


def strangers(text):
    """Words outside brackets that are neither the author's, the pantry's nor signs."""
    text = re.sub(r"xq\.example\S*", " ", text)
    words = re.findall(r"\w+", re.sub(r"‹[^‹›]*›", " ", text))
    words = {word for word in words if any(sign.isalpha() for sign in word) and not re.fullmatch(r"[\d¼½¾⅛⅜⅝⅞⅓⅔]+[a-z]{1,2}", word)}
    return {word for word in words if "xq" not in word.lower() and word not in SIGNS and word not in NAMES}


def text_of(path):
    """What there is to read in a published file; None where there is nothing."""
    if path.suffix == ".pdf":
        run = subprocess.run(["pdftotext", "-raw", path, "-"], capture_output=True, text=True, check=True)
        return run.stdout
    if path.suffix in (".html", ".svg"):
        said = Said()
        said.feed(path.read_text(encoding="utf-8"))
        return "\n".join(said.said)
    if path.suffix == ".csv":
        return path.read_text(encoding="utf-8-sig")
    if path.suffix == ".ics":
        lines = path.read_text(encoding="utf-8").replace("\r\n ", "").splitlines()
        return "\n".join(line.split(":", 1)[1] for line in lines if line.startswith(("SUMMARY:", "DESCRIPTION:")))
    return None


def main():
    tally = Tally()
    program, work = Path(sys.argv[1]).resolve(), Path(sys.argv[2])
    shutil.rmtree(work, ignore_errors=True)
    below = work / "theme" / "words" / LANGUAGE
    below.mkdir(parents=True)
    for file in ENGLISH.glob("*.ftl"):
        (below / file.name).write_text(bracketed(file.read_text(encoding="utf-8")), encoding="utf-8")
    for path, text in (("course.yaml", COURSE), ("recipes/xqhorns.md", RECIPE), ("classes/xqclass.yaml", CLASS)):
        to = work / "content" / path
        to.parent.mkdir(parents=True, exist_ok=True)
        to.write_text(text, encoding="utf-8")
    site = work / "site"
    run = subprocess.run(
        [program, "publish", "--theme", work / "theme", "--content", work / "content", "--to", site],
        capture_output=True, text=True, check=False,
    )
    if run.returncode:
        print(run.stdout[-2000:], run.stderr[-3000:])
        return 1
    beside = site.with_name("site-instructor")
    for path in sorted([*site.rglob("*"), *beside.rglob("*")]):
        text = text_of(path) if path.is_file() else None
        if text is None:
            continue
        strange = strangers(html.unescape(text))
        tally.check(not strange, f"{path.relative_to(work)}: {sorted(strange)}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main())
