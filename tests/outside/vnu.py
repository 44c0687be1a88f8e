"""Every page, style sheet and drawing through the Nu HTML checker (npm `vnu-jar`).

    python3 vnu.py VNU_JAR SITE

The checker follows the HTML Standard (WHATWG), CSS and SVG (W3C). A file counts as passed
if there is no error and no warning about it. Warnings about the Content Security Policy
are left out: to the checker a file on disk is not its own site, and it takes a block of
linked data for a script. `pages.js` proves the policy in a browser.
"""

import subprocess
import sys
from collections import defaultdict
from pathlib import Path

from tally import Tally


def findings(jar, site):
    """What the checker says, by file."""
    kinds = ["--also-check-css", "--also-check-svg", "--skip-non-html"]
    command = ["java", "-Xss4m", "-jar", jar, *kinds, "--format", "gnu", "--exit-zero-always"]
    answer = subprocess.run([*command, site], capture_output=True, text=True)
    found = defaultdict(list)
    for line in (answer.stdout + answer.stderr).splitlines():
        mark, _, rest = line.strip('"').partition('":')
        if "warning: " in rest and "violates Content Security Policy" in rest:
            continue
        found[mark.removeprefix("file:")].append(rest or line)
    return found


def main(jar, site):
    tally, found = Tally(), findings(jar, str(Path(site).resolve()))
    files = [f for end in ("html", "css", "svg") for f in Path(site).resolve().rglob(f"*.{end}")]
    for file in sorted(files):
        said = found.pop(str(file), [])
        tally.check(not said, f"{file.name} in {file.parent.name}: {'; '.join(said[:5])}")
    for where, said in found.items():
        tally.check(False, f"{where}: {'; '.join(said[:5])}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
