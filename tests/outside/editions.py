"""What the campaigns on publishing share: a tiny course in two states, and editions of it."""

import hashlib
import os
import shutil
import subprocess
from pathlib import Path

COURSE = Path(__file__).resolve().parents[1] / "golden/course"
RECIPE = "recipes/small-crescents.md"
# A class, so that there is something in the folder beside the site too.
CLASS = """title: One evening
sessions: [2027-03-02 18:00 to 22:00]
bakers: 4
work in: pairs
makes:
  - recipe: small-crescents
    each: pair
    pieces: 10
kit: { oven: 2, tray per oven: 2, instructor: 1 }
"""
STATES = ("\nsummary: ", "\nsummary: Quite new. ")


class Course:
    """The tiny course in a folder of its own; `turn` puts it into state 0 or 1."""

    def __init__(self, tourier, folder):
        self.tourier, self.folder = str(Path(tourier).resolve()), Path(folder)
        shutil.copytree(COURSE, self.folder)
        (self.folder / "classes").mkdir()
        (self.folder / "classes/evening.yaml").write_text(CLASS, encoding="utf-8")

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


def instructor(site):
    """The folder beside the site with what is the instructor's alone."""
    return Path(site).with_name(f"{Path(site).name}-instructor")


def beside(site):
    """What lies beside the two folders of an edition."""
    own = {Path(site).name, instructor(site).name}
    return sorted(name for name in os.listdir(Path(site).parent) if name not in own)
