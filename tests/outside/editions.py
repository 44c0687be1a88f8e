"""What the campaigns on publishing share: a tiny course in two states, and editions of it."""

import hashlib
import os
import shutil
import subprocess
from pathlib import Path

COURSE = Path(__file__).resolve().parents[1] / "golden/course"
RECIPE = "recipes/small-crescents.md"
STATES = ("\nsummary: ", "\nsummary: Quite new. ")


class Course:
    """The tiny course in a folder of its own; `turn` puts it into state 0 or 1."""

    def __init__(self, tourier, folder):
        self.tourier, self.folder = str(Path(tourier).resolve()), Path(folder)
        shutil.copytree(COURSE, self.folder)

    def turn(self, state):
        path = self.folder / RECIPE
        text = path.read_text(encoding="utf-8")
        text = text.replace(STATES[1], STATES[0], 1).replace(STATES[0], STATES[state], 1)
        path.write_text(text, encoding="utf-8")

    def command(self, site):
        return [self.tourier, "--quiet", "--content", str(self.folder), "publish", "--to", str(site)]

    def publish(self, site):
        return subprocess.run(self.command(site), capture_output=True, text=True)

    def start(self, site):
        return subprocess.Popen(
            self.command(site), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
        )


def edition(site):
    """Every path below a folder with a hash of what is there; `None` where no folder is."""
    if not os.path.isdir(site):
        return None
    found = {}
    for folder, _, files in os.walk(site):
        for name in files:
            path = os.path.join(folder, name)
            with open(path, "rb") as file:
                found[os.path.relpath(path, site)] = hashlib.sha256(file.read()).hexdigest()
    return found


def beside(site):
    """What lies beside the site."""
    return sorted(name for name in os.listdir(Path(site).parent) if name != Path(site).name)
