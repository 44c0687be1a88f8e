"""`tourier editor` as an editor uses it, through a client that is not ours.

    python3 editor.py TOURIER [--places N] [--seed N]

PyPI `pygls`, whose messages are those of the Language Server Protocol 3.17, types into a copy of
the demonstration course, and checks every answer against the protocol's types:

- faults while typing, each at the words that are at fault, gone when they are mended;
- completion, what a word is, where it is defined, and the change that mends a fault;
- places by UTF-16, with accents, Japanese and signs of two units in front of them;
- open texts count, not those on disk; what was typed last counts;
- every file opened, changed at random places, asked at each: always an answer, never an end.

How long the answers took is printed, as a figure; nothing rests on it.
"""

import argparse
import asyncio
import random
import shutil
import statistics
import sys
import tempfile
import time
from pathlib import Path

from lsprotocol import types as lsp
from pygls.lsp.client import LanguageClient

from tally import Tally

PROJECT = Path(__file__).resolve().parents[2]
BITS = ["é", "卵", "🥐", "\n", ":", "- ", "{", "}", "[", "~~~ticket\n", "500 g ", "---\n", "a", "  "]


class Editor:
    """One editor with the course open in it."""

    def __init__(self, client, folder):
        self.client, self.folder = client, folder
        self.faults, self.news, self.version = {}, asyncio.Event(), {}
        self.texts = {}

        @client.feature(lsp.TEXT_DOCUMENT_PUBLISH_DIAGNOSTICS)
        def published(params: lsp.PublishDiagnosticsParams):
            self.faults[params.uri] = params
            self.news.set()

    def uri(self, file):
        return (self.folder / file).as_uri()

    def open(self, file, text=None):
        text = (self.folder / file).read_text(encoding="utf-8") if text is None else text
        self.texts[file], self.version[file] = text, 1
        item = lsp.TextDocumentItem(self.uri(file), "markdown", 1, text)
        self.client.text_document_did_open(lsp.DidOpenTextDocumentParams(item))

    def change(self, file, start, end, new):
        """Replaces the letters from `start` up to `end`."""
        text = self.texts[file]
        stretch = lsp.Range(position(text, start), position(text, end))
        self.texts[file] = text[:start] + new + text[end:]
        self.version[file] += 1
        name = lsp.VersionedTextDocumentIdentifier(self.version[file], self.uri(file))
        part = lsp.TextDocumentContentChangePartial(stretch, new)
        self.client.text_document_did_change(lsp.DidChangeTextDocumentParams(name, [part]))

    def write(self, file, text):
        """Replaces all of a text."""
        self.change(file, 0, len(self.texts[file]), text)

    def at(self, file, place):
        name = lsp.TextDocumentIdentifier(self.uri(file))
        return {"text_document": name, "position": position(self.texts[file], place)}

    async def checked(self, file):
        """The faults of a text as it is now."""
        for _ in range(600):
            found = self.faults.get(self.uri(file))
            if found and found.version == self.version[file]:
                return found.diagnostics
            self.news.clear()
            try:
                await asyncio.wait_for(self.news.wait(), 0.1)
            except asyncio.TimeoutError:
                pass
        raise RuntimeError(f"no word of {file} as it is now")

    async def offered(self, file, place):
        params = lsp.CompletionParams(**self.at(file, place))
        found = await self.client.text_document_completion_async(params)
        return found.items if found else []

    async def hover(self, file, place):
        return await self.client.text_document_hover_async(lsp.HoverParams(**self.at(file, place)))

    async def defined(self, file, place):
        params = lsp.DefinitionParams(**self.at(file, place))
        return await self.client.text_document_definition_async(params)

    async def mendings(self, file, fault):
        name = lsp.TextDocumentIdentifier(self.uri(file))
        context = lsp.CodeActionContext([fault])
        params = lsp.CodeActionParams(name, fault.range, context)
        return await self.client.text_document_code_action_async(params) or []


def position(text, place):
    """A place as the protocol counts it."""
    line = text.rfind("\n", 0, place) + 1
    units = len(text[line:place].encode("utf-16-le")) // 2
    return lsp.Position(text.count("\n", 0, place), units)


def place(text, position):
    """The letter at a place as the protocol counts it."""
    lines = text.split("\n")
    before = sum(len(line) + 1 for line in lines[: position.line])
    line = lines[position.line].encode("utf-16-le")[: 2 * position.character]
    return before + len(line.decode("utf-16-le"))


def words(text, stretch):
    return text[place(text, stretch.start) : place(text, stretch.end)]


def taken(text, edit):
    start, end = place(text, edit.range.start), place(text, edit.range.end)
    return text[:start] + edit.new_text + text[end:]


async def begin(tourier, folder):
    client = LanguageClient("tourier-test", "1")
    editor = Editor(client, folder)
    await client.start_io(tourier, "--content", str(folder), "editor")
    params = lsp.InitializeParams(lsp.ClientCapabilities(), root_uri=folder.as_uri())
    answer = await client.initialize_async(params)
    client.initialized(lsp.InitializedParams())
    return editor, answer


async def end(editor, tally):
    await editor.client.shutdown_async(None)
    editor.client.exit(None)
    server = editor.client._server
    try:
        code = await asyncio.wait_for(server.wait(), 10)
    except asyncio.TimeoutError:
        code = "none"
    tally.check(code == 0, f"the program ended with {code}")


LOAF = "recipes/tin-loaf.md"


async def writes(editor, tally):
    """Faults come and go with the words at fault, and a mending makes its fault go away."""
    editor.open(LOAF)
    text = editor.texts[LOAF]
    tally.check(not [it for it in await editor.checked(LOAF) if it.severity == 1], "sound, and faulty")
    slips = [
        ("bread flour\n", "bread flower\n", "unknown-ingredient", "bread flower"),
        ("\nsummary:", "\nsumary:", "unknown-key", "sumary"),
        ("\nhands:", "\nhnads:", "unknown-key", "hnads"),
        ("\nuses: dough", "\nuses: dogh", "unknown-use", "dogh"),
        ("~~~ticket\n", "~~ticket\n", "ticket-fence", "~~ticket"),
        ("\n~~~\n", "\n", "ticket-fence", "~~~ticket"),
        ("{dough}", "{dogh}", "unknown-brace", "{dogh}"),
        ("\ntitle: ", "\ntitle:", "bad-yaml", None),
    ]
    for sound, slip, name, at_fault in slips:
        if sound not in text:
            continue
        editor.write(LOAF, text.replace(sound, slip, 1))
        found = [it for it in await editor.checked(LOAF) if it.code == name]
        tally.check(found, f"{slip!r}: no {name}")
        if not found:
            continue
        shown = words(editor.texts[LOAF], found[0].range)
        tally.check(at_fault in (None, shown), f"{slip!r}: {name} stands at {shown!r}")
        mendings = await editor.mendings(LOAF, found[0])
        tally.check(mendings, f"{slip!r}: nothing mends {name}")
        for mending in mendings[:1]:
            edit = mending.edit.changes[editor.uri(LOAF)][0]
            editor.write(LOAF, taken(editor.texts[LOAF], edit))
            left = [it.code for it in await editor.checked(LOAF)]
            tally.check(name not in left, f"{slip!r}: {mending.title!r} leaves {left}")
    editor.write(LOAF, text)
    tally.check(not [it for it in await editor.checked(LOAF) if it.severity == 1], "mended, and faulty")


async def counts(editor, tally):
    """Places behind signs of one, two and three bytes, and of two units."""
    text = editor.texts[LOAF]
    for signs in ["é", "卵", "🥐", "é卵🥐é"]:
        editor.write(LOAF, text.rstrip("\n") + f"\n\n{signs} Bake at 190 °C.\n")
        found = [it for it in await editor.checked(LOAF) if it.code == "plain-amount"]
        shown = [words(editor.texts[LOAF], it.range) for it in found]
        tally.check("190 °C" in shown, f"behind {signs}: {shown}")
        editor.write(LOAF, text.rstrip("\n") + f"\n\n{signs} Take {{dou")
        items = await editor.offered(LOAF, len(editor.texts[LOAF]))
        item = next((it for it in items if it.label == "dough"), None)
        became = taken(editor.texts[LOAF], item.text_edit) if item else ""
        tally.check(became.endswith(f"{signs} Take {{dough}}"), f"behind {signs}: {became[-20:]!r}")
    editor.write(LOAF, text)


async def offers(editor, tally):
    """What may be written comes at once, for what is typed this moment."""
    text = editor.texts[LOAF]
    for before, typed, wanted in [
        ("\nsummary:", "\ntrue h", "true hydration"),
        ("    - ", "    - 500 g bread fl", "bread flour"),
        ("~~~ticket\n", "~~~ticket\nwh", "where"),
        ("~~~ticket\n", "~~~ticket\nwhere: fr", "fridge"),
    ]:
        if before not in text:
            continue
        start = text.index(before)
        new = text[:start] + typed + "\n" + text[start + len(before) :]
        editor.write(LOAF, new)
        items = await editor.offered(LOAF, start + len(typed))
        labels = [item.label for item in items]
        tally.check(wanted in labels, f"{typed!r}: {wanted} is not among {labels[:5]}")
    editor.write(LOAF, text)


async def knows(editor, tally):
    """What a word is, and where it is defined."""
    file = "recipes/crescents.md"
    editor.open(file)
    text = editor.texts[file]
    await editor.checked(file)
    for at, says in [
        ("heavy cream\n", "20 g"),
        ("sheet: 57", "mm"),
        ("../techniques/cutting.md", "Cutting and rolling"),
        ("family:", "compared"),
    ]:
        found = await editor.hover(file, text.index(at) + 2)
        told = found.contents.value if found else ""
        tally.check(says in told, f"{at!r} is told as {told!r}")
    for at, leads in [
        ("layered-dough.md", "recipes/layered-dough.md"),
        ("dough, bench", file),
        ("../techniques/cutting.md", "techniques/cutting.md"),
        ("roll-up\nshape", file),
        ("heavy cream\n", "pantry.yaml"),
    ]:
        found = await editor.defined(file, text.index(at) + 3)
        uri = found.uri if found else None
        tally.check(uri == editor.uri(leads), f"{at!r} leads to {uri}")


async def wanders(editor, tally, places, seed):
    """Every file, changed at random places: there is always an answer."""
    files = sorted(str(it.relative_to(editor.folder)) for it in editor.folder.rglob("*")
                   if it.suffix in (".md", ".yaml"))
    for file in files:
        if file not in editor.texts:
            editor.open(file)
    rng, took = random.Random(seed), {"completion": [], "hover": [], "definition": []}
    asks = {"completion": editor.offered, "hover": editor.hover, "definition": editor.defined}
    for number in range(places):
        file = rng.choice(files)
        text = editor.texts[file]
        start = rng.randrange(len(text) + 1)
        new = rng.choice(BITS)
        editor.change(file, start, min(len(text), start + rng.choice([0, 0, 1, 5])), new)
        kind = ["completion", "completion", "hover", "definition"][number % 4]
        began = time.perf_counter()
        await asyncio.wait_for(asks[kind](file, start + len(new)), 60)
        took[kind].append(time.perf_counter() - began)
        tally.check(True, "")
        if number % 25 == 24:
            whole = (editor.folder / file).read_text(encoding="utf-8")
            for other in files:
                editor.write(other, (editor.folder / other).read_text(encoding="utf-8"))
            tally.check(editor.texts[file] == whole, f"{file} is not what was written")
    for file in files:
        editor.write(file, (editor.folder / file).read_text(encoding="utf-8"))
    for file in files:
        errors = [it.message for it in await editor.checked(file) if it.severity == 1]
        tally.check(not errors, f"{file} is as it was, and faulty: {errors[:1]}")
    for kind, times in took.items():
        if times:
            middle, worst = 1000 * statistics.median(times), 1000 * max(times)
            print(f"  {kind}: {len(times)} answers, median {middle:.0f} ms, longest {worst:.0f} ms")


async def run(options):
    tally = Tally()
    with tempfile.TemporaryDirectory() as work:
        folder = Path(work).resolve() / "content"
        shutil.copytree(PROJECT / "content", folder)
        editor, answer = await begin(options.tourier, folder)
        units = answer.capabilities.position_encoding
        tally.check(units == "utf-16", f"places are counted in {units}")
        for check in (writes, counts, offers, knows):
            await check(editor, tally)
        await wanders(editor, tally, options.places, options.seed)
        await end(editor, tally)
    return tally.end()


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("tourier")
    parser.add_argument("--places", type=int, default=120)
    parser.add_argument("--seed", type=int, default=21)
    return asyncio.run(run(parser.parse_args()))


if __name__ == "__main__":
    sys.exit(main())
