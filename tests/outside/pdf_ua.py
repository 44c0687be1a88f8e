"""Every handout through two checkers of PDF/UA-1: PyPI `outloud` and `pdfua`.

    python3 pdf_ua.py FOLDER...

`outloud` follows the Matterhorn Protocol (PDF Association) of ISO 14289-1; of its rules
the conformance layer counts. `pdfua` checks a part of the same standard on its own. What
`outloud` only wants a person to look at (it takes the same first line on several pages
for a running header) is printed and not counted.
"""

import re
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from tally import Tally, fold

TOOLS = Path(__file__).parent / ".tools" / "python" / "bin"
OUTLOUD = [TOOLS / "outloud", "--layer", "conformance", "--no-info"]
PDFUA = [TOOLS / "pdfua", "check", "--min-severity", "error"]


def told(*command):
    """What a checker says. Both are started once for all files: starting takes longest."""
    answer = subprocess.run([sys.executable, *command], capture_output=True, text=True)
    return answer.stdout + answer.stderr


def main(*folders):
    tally = Tally()
    files = sorted(file for folder in folders for file in Path(folder).rglob("*.pdf"))
    if not files:
        return tally.end()
    with ThreadPoolExecutor() as pool:
        outloud, pdfua = pool.submit(told, *OUTLOUD, "--quiet", *files), pool.submit(told, *PDFUA, *files)
    verdicts = re.findall(r"^(\w+) +(\S+): ", outloud.result(), re.M)
    # Papers of different classes have the same names: the verdict is on all of one name.
    verdict = {}
    for word, name in verdicts:
        verdict.setdefault(name, set()).add(word)
    for file in files:
        said = verdict.get(file.name, {"no verdict"})
        holds = said <= {"PASS", "REVIEW"}
        tally.check(holds, holds or f"{file.name}, outloud: {fold(told(*OUTLOUD, file))[:300]}")
    look = sorted(name for name, word in verdict.items() if "REVIEW" in word)
    if look:
        print(f"  to look at, not counted: {', '.join(look)}", file=sys.stderr)
    # Each file's name stands on a line of its own, its result below.
    parts = re.split(r"^(\S+\.pdf)$", pdfua.result(), flags=re.M)
    results = dict(zip(parts[1::2], parts[2::2]))
    for file in files:
        said = results.get(str(file), "no answer")
        tally.check("result: PASS" in said, f"{file.name}, pdfua: {fold(said)[:300]}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
