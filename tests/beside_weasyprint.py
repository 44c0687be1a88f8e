"""How much longer WeasyPrint takes for the content of a student sheet.

    pip install weasyprint==70.0
    target/release/tourier publish --to SITE; target/release/tourier facts NAME > NAME.json
    python3 tests/beside_weasyprint.py SITE NAME.json...

Each recipe becomes one HTML page of the same title, table, steps and drawings, in the same
typefaces on A4, with a plain style sheet of one column (WeasyPrint's good case). After one
page to warm up, every page is typeset three times in this process; the median is printed
beside that of `one_sheet` in tests/typesetting.rs, measured just before and just after. Layouts
are alike, not the same: take the ratio for its size, not for its digits.
"""

import json
import re
import statistics
import subprocess
import sys
import time
from html import escape
from pathlib import Path

from weasyprint import HTML
from weasyprint.text.fonts import FontConfiguration

STYLE = """
@page { size: A4; margin: 20mm; @bottom-right { content: counter(page) " of " counter(pages) } }
body { font: 10.5pt/1.45 Vollkorn; hyphens: auto }
table, small, h3 { font-family: Asap } td, th { padding: 2pt 6pt; text-align: left }
h1, h2, h3 { break-after: avoid } svg { width: 170mm; display: block }
"""


def faces():
    fonts = Path("themes/default/fonts").resolve()
    rule = "@font-face {{ font-family: {0}; src: url({1}); font-weight: {2}; font-style: {3} }}"
    for name in ("Vollkorn-Regular", "Vollkorn-Bold", "Vollkorn-Italic", "Asap-Regular", "Asap-Bold"):
        weight = "bold" if "Bold" in name else "normal"
        slant = "italic" if "Italic" in name else "normal"
        file = (fonts / f"{name}.ttf").as_uri()
        yield rule.format(name.split("-")[0], file, weight, slant)


def prose(node):
    """Every text below a node of prose, amounts in metric."""
    if isinstance(node, list):
        return "".join(map(prose, node))
    if not isinstance(node, dict):
        return ""
    if node.get("kind") == "live":
        return f"<b>{escape(node['value']['metric'])}</b>"
    inner = escape(node.get("text", "")) + prose(node.get("content", [])) + prose(node.get("items", []))
    return f"<p>{inner}</p>" if node.get("kind") == "paragraph" else inner


def drawing(site, recipe, name):
    file = Path(site, "drawings", recipe, f"{name}-metric.svg")
    return file.read_text() if file.is_file() else ""


def page(site, facts):
    rows = "".join(
        f"<tr><td>{escape(line['ingredient'])}<td>{line['metric']}<td>{line['us_weight']}"
        f"<td>{line['us_measure'] or ''}<td>{line['percent_label'] or ''}"
        for line in facts["formula"]
    )
    steps = "".join(
        f"<h3>{part['number']} {escape(part['title'])}</h3><small>"
        + " ".join(f"{row['term']} <b>{escape(row['value']['metric'])}</b>" for row in part["ticket"])
        + f"</small>{prose(part['prose'])}<p><i>{escape(part['until'] or '')}</i></p>"
        + drawing(site, facts["recipe"], part["step"])
        for part in facts["parts"] if part.get("kind") == "step"
    )
    return (
        f"<html lang=en><title>{escape(facts['title'])}</title><style>{''.join(faces())}{STYLE}</style>"
        f"<h1>{escape(facts['title'])}</h1><p>{escape(facts['summary'])}</p><h2>Ingredients</h2>"
        f"<table>{rows}</table>{drawing(site, facts['recipe'], 'timeline')}<h2>Method</h2>{steps}"
    )


def ours():
    command = "cargo test --release --test typesetting -- --ignored --nocapture --exact one_sheet"
    said = subprocess.run(command.split(), capture_output=True, text=True, check=True).stdout
    return float(re.search(r"sheet: ([\d.]+) ms", said)[1])


def theirs(pages):
    fonts, times = FontConfiguration(), []
    HTML(string=pages[0]).write_pdf(font_config=fonts)
    for text in pages * 3:
        start = time.perf_counter()
        HTML(string=text).write_pdf(font_config=fonts)
        times.append(1000 * (time.perf_counter() - start))
    return statistics.median(times)


def main(site, *files):
    pages = [page(site, json.loads(Path(file).read_text())) for file in files]
    before, other, after = ours(), theirs(pages), ours()
    own = (before + after) / 2
    print(f"WeasyPrint {other:.0f} ms, ours {before:.1f} and {after:.1f} ms: {other / own:.1f} times")


if __name__ == "__main__":
    main(*sys.argv[1:])
