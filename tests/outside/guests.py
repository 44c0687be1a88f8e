"""Others at work in the output folder while publishes run: nothing of theirs is lost.

    python3 guests.py TOURIER [TIMES] [SEED]

While the tiny course is published, writers make files, replace, rename and take away, in
folders of their own and in those of the site and of the instructor's folder beside it, and
others commit to git repositories in both, which come and go. Each round is one of three:

  kill       the publish is killed at a random moment, and another one puts things right
  storm      several publishes at once, with handouts printed into the folder
  placement  the first publish into a folder that others fill already (--among-others)

A file is lost where its writer was told success and it is nowhere: not in its place, and
not among what was kept beside the site. A repository is damaged where `git fsck` complains
or a commit that succeeded is gone. Sources: the promise itself; git. 500 times for a
campaign; a few in `tests/run`.
"""

import os
import random
import shutil
import subprocess
import sys
import tempfile
import threading
import time
from pathlib import Path

from editions import Course, beside, edition, instructor
from tally import Tally

PLACES = ["", "recipes", "recipes/small-crescents", "classes", "classes/evening", "mine", "mine/deep", "x/y/z"]
NAMES = {"HOME": "/nonexistent", "GIT_CONFIG_NOSYSTEM": "1", "GIT_CEILING_DIRECTORIES": "/"}
WHO = ["-c", "user.name=Guest", "-c", "user.email=guest@saltmarsh.example", "-c", "gc.auto=0"]


class Guest(threading.Thread):
    """Works until it is told to stop."""

    def __init__(self, site, seed):
        super().__init__()
        self.site, self.chance, self.over = Path(site), random.Random(seed), threading.Event()
        self.count, self.missed = 0, 0

    def run(self):
        while not self.over.is_set():
            try:
                self.work()
            except OSError:
                # What the system refuses is not lost.
                self.missed += 1
            time.sleep(self.chance.uniform(0, 0.004))

    def leave(self):
        self.over.set()
        self.join()


class Writer(Guest):
    """Makes, replaces, renames and takes away files."""

    def __init__(self, site, seed):
        super().__init__(site, seed)
        self.told, self.unsure = {}, set()

    def work(self):
        act = self.chance.choice([self.new, self.new, self.new, self.replace, self.rename, self.drop])
        act()

    def path(self):
        self.count += 1
        return self.site / self.chance.choice(PLACES) / f"guest-{self.ident}-{self.count}.txt"

    def put(self, path, text):
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)

    def new(self):
        path = self.path()
        path.parent.mkdir(parents=True, exist_ok=True)
        self.put(path, str(self.count))
        self.told[path] = str(self.count)

    def any(self):
        return self.chance.choice(list(self.told)) if self.told else None

    def replace(self):
        path = self.any()
        if path:
            self.count += 1
            part = path.with_suffix(".part")
            self.put(part, str(self.count))
            os.rename(part, path)
            self.told[path] = str(self.count)

    def rename(self):
        path, to = self.any(), self.path()
        if path:
            os.rename(path, to)
            self.told[to] = self.told.pop(path)

    def drop(self):
        path = self.any()
        if path and self.chance.random() < 0.3:
            os.remove(path)
            del self.told[path]

    def lost(self):
        """What is nowhere."""
        found, kept = [], kept_beside(self.site)
        for path, text in self.told.items():
            inside = path.relative_to(self.site)
            others = [kept / inside, *(kept / inside.parent).glob(f"{inside.name}.*")]
            if not any(read(it) == text for it in [path, *others]):
                found.append(f"{inside}: {read(path)!r} instead of {text!r}")
        return found


def kept_beside(folder):
    """Where that goes which could not stay in a folder."""
    return folder.parent / f".{folder.name}.tourier-kept"


def read(path):
    try:
        return Path(path).read_text(encoding="utf-8")
    except OSError:
        return None


class Committer(Guest):
    """Commits to repositories below the site, which come and go."""

    def __init__(self, site, seed):
        super().__init__(site, seed)
        self.commits = {}

    def git(self, folder, *command):
        """A git command; its answer where it succeeded."""
        # Named outright: git must never find a repository further up.
        place = ["--git-dir", str(folder / ".git"), "--work-tree", str(folder)]
        run = subprocess.run(
            ["git", *place, *WHO, *command], capture_output=True, text=True, env={**os.environ, **NAMES}
        )
        return run.stdout.strip() if run.returncode == 0 else None

    def work(self):
        if not self.commits or (self.chance.random() < 0.1 and len(self.commits) < 3):
            self.begin()
        else:
            self.commit(self.chance.choice(list(self.commits)))

    def begin(self):
        self.count += 1
        place = self.chance.choice(["", "repository-{}", "recipes/repository-{}"])
        folder = self.site / place.format(self.count)
        if folder in self.commits:
            return
        folder.mkdir(parents=True, exist_ok=True)
        if self.git(folder, "init", "-q") is None:
            self.missed += 1
        else:
            self.commits[folder] = []

    def commit(self, folder):
        self.count += 1
        for lock in ("index.lock", "HEAD.lock", "refs/heads/master.lock"):
            (folder / ".git" / lock).unlink(missing_ok=True)
        note = folder / "note.txt"
        note.write_text(str(self.count), encoding="utf-8")
        self.git(folder, "add", "note.txt")
        done = self.git(folder, "commit", "-q", "--allow-empty", "-m", str(self.count))
        if done is None:
            self.missed += 1
        else:
            self.commits[folder].append(str(self.count))

    def lost(self):
        found = []
        for folder, commits in self.commits.items():
            if self.git(folder, "fsck", "--full", "--strict") is None:
                found.append(f"the repository in {folder} is damaged")
            said = (self.git(folder, "log", "--format=%s", "--all") or "").split("\n")
            found.extend(f"commit {it} in {folder}" for it in commits if it not in said)
        return found


def kill(course, site, chance, whole):
    """A publish that is killed; others go on for a moment before things are put right."""
    run = course.start(site)
    early = chance.random() < 0.4
    time.sleep(whole * (chance.uniform(0, 1) if early else chance.uniform(0.75, 1.15)))
    run.kill()
    run.wait()
    time.sleep(chance.uniform(0, 0.02))


def storm(course, site, chance, tally):
    """Publishes and handouts at once; where the handouts are said to be."""
    runs = [course.start(site) for _ in range(3)]
    to = site / chance.choice(["", "print", "recipes"])
    command = [course.tourier, "--content", str(course.folder), "handout", "small-block"]
    printed = subprocess.run([*command, "--to", str(to)], capture_output=True, text=True)
    tally.check(printed.returncode == 0, f"a handout: {printed.stderr}")
    codes = [run.wait() for run in runs]
    tally.check(0 in codes and set(codes) <= {0, 3}, f"publishes at once ended with {codes}")
    return [Path(printed.stdout.strip())] if printed.returncode == 0 else []


def placement(course, site, work, number):
    """A folder that others fill before anything was published to it."""
    for folder in (site, instructor(site)):
        if folder.exists():
            folder.rename(Path(work, f"away-{number}-{folder.name}"))
        folder.mkdir(parents=True)


def settle(course, site):
    """A publish to the end."""
    command = [*course.command(site), "--among-others"]
    return subprocess.run(command, capture_output=True, text=True)


def once(course, site, work, chance, number, whole, tally):
    """One round; how much was written, and what was lost."""
    apart, state = instructor(site), number % 2
    way = chance.choice(["kill", "kill", "storm", "placement"])
    if way == "placement":
        placement(course, site, work, number)
    course.turn(state)
    guests = [Writer(site, number), Writer(site, -number), Committer(site, number), Writer(apart, number + 1000), Committer(apart, -number)]
    for guest in guests:
        guest.start()
    time.sleep(chance.uniform(0, 0.1))
    handouts = []
    if way == "kill":
        kill(course, site, chance, whole)
    elif way == "storm":
        handouts = storm(course, site, chance, tally)
    else:
        settle(course, site)
    for guest in guests:
        guest.leave()
    answer = settle(course, site)
    tally.check(answer.returncode == 0, f"{number} {way}: publishing after it: {answer.stderr}")
    lost = [it for guest in guests for it in guest.lost()]
    lost += [f"the handout {it}" for it in handouts if not it.is_file()]
    tally.check(not lost, f"{number} {way}: lost {lost[:3]}")
    left = [name for name in beside(site) if not name.endswith("-kept")]
    tally.check(not left, f"{number} {way}: {left} is left beside the site")
    for folder in (site, apart):
        shutil.rmtree(kept_beside(folder), ignore_errors=True)
        clear(folder, guests)
    return sum(guest.count for guest in guests), sum(guest.missed for guest in guests), len(lost)


def clear(site, guests):
    """The guests take away what is theirs."""
    for guest in guests:
        if isinstance(guest, Committer):
            for folder in guest.commits:
                shutil.rmtree(folder / ".git", ignore_errors=True)
                (folder / "note.txt").unlink(missing_ok=True)
    for path in list(site.rglob("guest-*.*")):
        path.unlink(missing_ok=True)
    for folder in ("mine", "x"):
        shutil.rmtree(site / folder, ignore_errors=True)


def main(tourier, times="12", seed="1"):
    tally, chance = Tally(), random.Random(int(seed))
    done, missed, lost = 0, 0, 0
    with tempfile.TemporaryDirectory() as out:
        # The site's folder has a name of its own; what lies in `work` is not beside it.
        course, work, site = Course(tourier, Path(out, "content")), Path(out, "work"), Path(out, "out/site")
        work.mkdir()
        ignored(site, tally)
        clean = []
        for state in (0, 1):
            course.turn(state)
            begun = time.monotonic()
            course.publish(site)
            whole = time.monotonic() - begun
            clean.append({it for it in edition(site)})
        for number in range(1, int(times) + 1):
            counts = once(course, site, work, chance, number, whole, tally)
            done, missed, lost = done + counts[0], missed + counts[1], lost + counts[2]
            here = set(edition(site))
            tally.check(clean[number % 2] <= here, f"{number}: the site lacks {clean[number % 2] - here}")
    print(f"  {done} pieces of work by others in {times} rounds, {missed} refused by the system, {lost} lost")
    tally.check(done > int(times), "the others did nothing")
    return tally.end()


def ignored(site, tally):
    """Git ignores what a publish may leave beside a folder of any name."""
    project = Path(__file__).resolve().parents[2]
    run = subprocess.run(["git", "check-ignore", "-q", "--no-index", "output-instructor/index.html"], cwd=project)
    tally.check(run.returncode == 0, "output-instructor is not ignored")
    for name in ("output", "site", "my site", "2027-spring"):
        for what in ("next", "old", "lock", "kept/a.txt"):
            command = ["git", "check-ignore", "-q", "--no-index", f".{name}.tourier-{what}"]
            run = subprocess.run(command, cwd=project)
            tally.check(run.returncode == 0, f".{name}.tourier-{what} is not ignored")


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
