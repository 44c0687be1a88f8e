"""What every check shares: counting, findings and the closing figure."""

import json
import sys
from pathlib import Path


class Tally:
    """Counts what holds; prints what does not, at most `most` findings of it."""

    def __init__(self, most=40):
        self.passed = self.failed = 0
        self.most = most

    def check(self, holds, finding):
        """Counts one claim. `finding` says what is wrong where it does not hold."""
        if holds:
            self.passed += 1
            return
        self.failed += 1
        if self.failed <= self.most:
            print(f"  {finding}", file=sys.stderr)

    def end(self):
        """Prints the figure. A check that compared nothing has failed."""
        if self.passed == 0 and self.failed == 0:
            self.check(False, "nothing was there to check")
        print(f"{self.passed} passed, {self.failed} failed")
        return 1 if self.failed else 0


def facts(work):
    """The facts of every recipe, by file name, as `tests/run` wrote them down."""
    files = sorted(Path(work, "facts").glob("*.json"))
    return {file.stem: json.loads(file.read_text(encoding="utf-8")) for file in files}


def fold(text):
    """Text with every run of white space, no-break spaces too, as one space."""
    return " ".join(text.split())
