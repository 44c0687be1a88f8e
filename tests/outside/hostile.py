"""Marks of HTML, Typst, templates, tables and calendars typed into every field of a course.

    python3 hostile.py TOURIER

The same small course is published twice: once with marks in every text, once with the bare
letters and digits of the same texts. Each mark must be read back as it was typed, and no
file may hold an element, an attribute, a calendar line or a table cell that the plain
edition has not. Pages are read with html5lib (HTML Standard), drawings, feed and package
with Python's XML reader (SVG 2, RFC 4287, IMS Common Cartridge 1.3), linked data as JSON,
the table as RFC 4180 has it and by the rule that a cell must not begin a formula (OWASP,
CSV Injection), the calendar by RFC 5545, handouts with pdftotext and pdfinfo (poppler).
"""

import csv
import io
import json
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree
import zipfile
from pathlib import Path

import html5lib

from tally import Tally

MARKS = "<script>f(1)</script>\"'><img src=x onerror=f()>#f()$m$@r{{ v }}{% t %}]]>&amp;\\ end"
# In prose a brace is live and a quote is set as a curved one; all else is as in a field.
# The sign behind &#1; may stand in no page and no feed: another stands in for it, on paper □.
PROSE = "&#1;<script>f(1)</script> <img src=x onerror=f()> #f() $m$ @r \\{\\{ v }} \\{% t %} ]]> &lt;b> end"
READ = "<script>f(1)</script> <img src=x onerror=f()> #f() $m$ @r {{ v }} {% t %} ]]> <b> end"
# An ingredient's name holds no comma and no brackets; a table must not take it for a formula.
NAME = "=2+3<b>salt</b>;'\"{{ v }}$m$@r]]>&amp;\\ end"

FIELDS = """course-title school instructor summary edition lesson lesson-summary house-caution
word technique technique-summary title recipe-summary note step until kit video alt makes
section""".split()
TEXTS = "news meaning technique-prose opening heading step-prose caution".split()
# What a handout of the recipe or a paper of the class shows.
ON_PAPER = """course-title school instructor edition title recipe-summary note step until kit
section opening heading step-prose caution""".split()


def bare(text):
    """The letters and digits of a text, as a step's name is made from its title."""
    return re.sub(r"[^a-z0-9]+", " ", re.sub(r"['’]", "", text)).strip()


class Texts:
    """The texts of one edition, each with its field's name in front."""

    def __init__(self, hostile):
        self.hostile = hostile

    def pick(self, text):
        return text if self.hostile else bare(text)

    def field(self, name):
        return self.pick(f"{name} {MARKS}")

    def yaml(self, name):
        return json.dumps(self.field(name))

    def prose(self, name):
        return f"{name} {PROSE}" if self.hostile else f"{name} {bare(PROSE)}"

    def ingredient(self):
        return self.pick(NAME)


def course(texts):
    """The files of the course."""
    yaml, prose, salt = texts.yaml, texts.prose, texts.ingredient()
    section, line = texts.field("section"), json.dumps
    return {
        "course.yaml": f"""
title: {yaml("course-title")}
school: {yaml("school")}
instructor: {yaml("instructor")}
summary: {yaml("summary")}
edition: {yaml("edition")}
date: 2027-01-10
address: https://hostile.saltmarsh.example/
offline: yes
news:
  - 2027-01-09: {line(prose("news"))}
lessons:
  - title: {yaml("lesson")}
    summary: {yaml("lesson-summary")}
    recipes: [loaf]
    techniques: [turning]
cautions:
  - {yaml("house-caution")}
""",
        "pantry.yaml": f"{line(salt)}:\n  allergens: none\n  pack: 1 kg\n  price: 1.10\n",
        "glossary.yaml": f"{yaml('word')}: {line(prose('meaning'))}\n",
        "techniques/turning.md": f"""---
title: {yaml("technique")}
summary: {yaml("technique-summary")}
drawing:
  - turn: book
    sheet: 60 x 20 cm
---

{prose("technique-prose")}
""",
        "recipes/loaf.md": f"""---
title: {yaml("title")}
summary: {yaml("recipe-summary")}
makes: {line("12 " + texts.field("makes"))}
formula:
  dough:
    - 500 g bread flour
    - {line("300 g water, " + texts.field("note"))}
  {line(section)}:
    - 250 g butter
    - {line("10 g " + salt)}
watch:
  - {yaml("video")}: https://media.example.org/a
---

{prose("opening")}

## {texts.field("step") if not texts.hostile else markdown(texts.field("step"))}
~~~ticket
uses: dough, {section}
hands: 10 min
kit: 1 {texts.field("kit")}
until: {cue(texts)}
~~~
{prose("step-prose")}

![{texts.field("alt") if not texts.hostile else markdown(texts.field("alt"))}](../media/loaf.png)

> Caution: {prose("caution")}

## Bake
~~~ticket
bake: 190 °C, 20 min
~~~

## {prose("heading")}

Some words.
""",
        "classes/evening.yaml": f"""
title: {yaml("class")}
sessions:
  - 2027-03-02 10:00 to 20:00
bakers: 2
work in: pairs
makes:
  - recipe: loaf
    each: pair
    pieces: 12
kit: {{ oven: 1, tray per oven: 4, instructor: 1 }}
""",
    }


def markdown(text):
    """A text with every sign that Markdown reads behind a backslash."""
    return re.sub(r"([\\`*_{}\[\]()#+.!|<>&\"'-])", r"\\\1", text)


def cue(texts):
    """What is written behind `until`, where only braces need a backslash."""
    return re.sub(r"([{}])", r"\\\1", texts.field("until"))


def publish(tourier, work, hostile):
    """Writes and publishes one edition; what the program said where it did not."""
    name = "hostile" if hostile else "plain"
    content, site = Path(work, name), Path(work, f"{name}-site")
    for path, text in course(Texts(hostile)).items():
        file = content / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")
    (content / "media").mkdir()
    picture(content / "media/loaf.png")
    command = [tourier, "--content", str(content), "publish", "--to", str(site)]
    answer = subprocess.run(command, capture_output=True, text=True)
    return site, answer.stderr if answer.returncode else None


def picture(path):
    from PIL import Image

    Image.new("RGB", (20, 10), (200, 120, 40)).save(path)


def shape(element):
    """An element's name and the names of its attributes."""
    return (element.tag, tuple(sorted(element.attrib)))


def words(root):
    """Everything that a document says: its text and its attributes."""
    said = [" ".join(root.itertext())]
    for element in root.iter():
        said.extend(element.attrib.values())
    return "\n".join(said)


class Document:
    """The shapes and the words of one file of an edition."""

    def __init__(self, name, data):
        self.name, self.shapes, self.said = name, set(), ""
        kind = name.rsplit(".", 1)[-1]
        reader = getattr(self, f"read_{kind}", None)
        self.known = reader is not None
        if reader:
            reader(data)

    def take(self, root):
        elements = [one for one in root.iter() if isinstance(one.tag, str)]
        self.shapes |= {shape(one) for one in elements}
        self.said += words(root)

    def read_html(self, data):
        root = html5lib.parse(data.decode(), namespaceHTMLElements=False)
        self.take(root)
        for script in root.iter("script"):
            if script.get("type") == "application/ld+json":
                self.said += json.dumps(json.loads(script.text), ensure_ascii=False)

    def read_svg(self, data):
        self.take(tree.fromstring(data))

    read_xml = read_svg

    def read_webmanifest(self, data):
        self.said = json.dumps(json.loads(data), ensure_ascii=False)

    def read_ics(self, data):
        for line in data.decode().replace("\r\n ", "").split("\r\n"):
            head, _, value = line.partition(":")
            self.shapes.add(head if head in ("BEGIN", "END") else head.split(";")[0])
            self.said += re.sub(r"\\(.)", lambda m: "\n" if m[1] == "n" else m[1], value) + "\n"

    def read_csv(self, data):
        for row in csv.reader(io.StringIO(data.decode("utf-8-sig"))):
            self.shapes |= {len(row)} | {"formula" for cell in row if cell[:1] in "=+-@" and cell}
            self.said += "\n".join(row) + "\n"


def folders(site):
    """The site, and what is the instructor's alone beside it."""
    return [site, site.with_name(f"{site.name}-instructor")]


def documents(site):
    """Every file of an edition that can be read back, those in the package too."""
    own, beside = ({str(f.relative_to(at)): f for f in sorted(at.rglob("*")) if f.is_file()}
                   for at in folders(site))
    files = own | {f"instructor/{name}": file for name, file in beside.items()}
    for name, file in files.items():
        if name.endswith(".imscc") or name.endswith(".zip"):
            with zipfile.ZipFile(file) as package:
                for inner in package.namelist():
                    yield Document(f"{name}/{inner}", package.read(inner))
        else:
            yield Document(name, file.read_bytes())


def squeezed(text):
    return re.sub(r"[\s\ufffd\u25a1]+", "", text)


def printed(site):
    """The text of every handout and what it says about itself, without white space."""
    said = ""
    for file in (file for at in folders(site) for file in sorted(at.rglob("*.pdf"))):
        for command in (["pdftotext", "-raw", str(file), "-"], ["pdfinfo", str(file)]):
            said += subprocess.run(command, capture_output=True, text=True).stdout
    return squeezed(said)


def typed(tally, site):
    """Everything that was typed is read back as it was typed."""
    texts = Texts(True)
    said = squeezed("\n".join(one.said for one in documents(site)))
    paper = printed(site)
    expected = {name: texts.field(name) for name in FIELDS + ["class"]}
    expected |= {name: f"{name} {READ}" for name in TEXTS}
    expected["ingredient"] = texts.ingredient()
    for name, text in expected.items():
        tally.check(squeezed(text) in said, f"{name} is not in the site as it was typed")
        if name in ON_PAPER + ["ingredient", "class"]:
            # A heading of the table begins with a capital.
            tally.check(squeezed(text).lower() in paper.lower(), f"{name} is not on paper as it was typed")


def main(tourier):
    tally = Tally()
    with tempfile.TemporaryDirectory() as work:
        plain, said = publish(tourier, work, False)
        tally.check(said is None, f"the plain course: {said}")
        hostile, refused = publish(tourier, work, True)
        tally.check(refused is None, f"the hostile course: {refused}")
        if said or refused:
            return tally.end()
        known = {one.name: one for one in documents(plain)}
        for one in documents(hostile):
            tally.check(one.name in known, f"{one.name} is in the hostile edition only")
            if one.known and one.name in known:
                new = one.shapes - known[one.name].shapes
                tally.check(not new, f"{one.name} holds what was never meant: {new}")
        typed(tally, hostile)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
