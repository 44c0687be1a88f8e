"""Nothing that was saved is lost: the writing desk against other hands, kills and full disks.

    python3 desk_saves.py TOURIER [TIMES] [SEED]

TIMES is a measure of the whole: so many kills, ten times as many races, and rounds of pages
that save in turns. 12 in `tests/run`; 150 and more for a campaign. Everything goes by the calls
that the desk's own page makes. What is promised, and compared here with nothing else:

- races: while the desk saves, somebody else writes, exchanges, makes or removes the same
  file at a random moment. Both texts stand on the disk or among the earlier saves; a save
  that was refused changed nothing.
- kills: the program is killed at a random moment of a save. The file is whole, each text
  that was said to be saved is there, and with the next save nothing half written is left.
- disk: on a small disk in memory a save that fails says that the disk is full, the old text
  is whole, nothing half written stays, and the same save is done once there is room. Where
  no small disk may be mounted, the check says so and compares nothing of it (as `disk.py`).
- pages: two programs with two pages each save one text as fast as they can. A save over what
  the page has not read is refused: no two saves were made over the same text.
"""

import http.client
import json
import os
import random
import re
import subprocess
import sys
import tempfile
import threading
import time
from contextlib import contextmanager
from pathlib import Path

from disk import mount, used
from editions import RECIPE, Course
from tally import Tally

BEGUN = re.compile(r"\.tourier-save-\d+$")
LOSSES = []


class Desk:
    """A running desk, called as its own page calls it."""

    running = []

    def __init__(self, tourier, content):
        command = [tourier, "--quiet", "--content", str(content), "preview", "--desk", "--no-browser"]
        self.run = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
        self.running.append(self)
        said = self.run.stdout.readline()
        self.host, self.key = re.search(r"http://([\d.:]+)/\S*#(\S+)", said).groups()

    def call(self, name, /, **data):
        """The status and what is answered; status 0 where nobody answers any more."""
        head = {"X-Desk-Key": self.key, "Origin": f"http://{self.host}"}
        line = http.client.HTTPConnection(self.host, timeout=60)
        try:
            line.request("POST", f"/.preview/desk/do/{name}", json.dumps(data), head)
            answer = line.getresponse()
            return answer.status, json.loads(answer.read())
        except (OSError, http.client.HTTPException, ValueError):
            return 0, {}
        finally:
            line.close()

    def open(self, path):
        return self.call("open", path=path)[1]

    def save(self, path, text, mark):
        return self.call("save", path=path, text=text, mark=mark)

    def earlier(self, path, most=60):
        """The texts that are kept, the newest first."""
        kept = self.call("earlier", path=path)[1].get("earlier", [])
        return [self.call("back", path=path, name=one["name"])[1].get("text") for one in kept[:most]]

    def end(self):
        self.running.remove(self)
        self.run.kill()
        self.run.wait()
        self.run.stdout.close()


@contextmanager
def ended():
    """Whatever breaks, no desk stays running."""
    try:
        yield
    finally:
        for desk in list(Desk.running):
            desk.end()


def lost(tally, holds, finding):
    """A claim about a text that must still be there."""
    tally.check(holds, finding)
    if not holds:
        LOSSES.append(finding)


def half_written(content):
    """Whatever a save began and did not end, in the content and among the saves."""
    folders = [content, content.with_name(f".{content.name}.tourier-saves")]
    names = (name for folder in folders for _, _, files in os.walk(folder) for name in files)
    return sorted(name for name in names if BEGUN.search(name))


def on_disk(file):
    return file.read_text(encoding="utf-8") if file.exists() else None


def text(base, who, number, lines=1):
    """A text that is written only once."""
    return base + "".join(f"\nLine {at} of {who} {number}.\n" for at in range(lines))


def other_hand(file, base, way, number):
    """What somebody else does to the file, by one of the ways of editors; the text, if any."""
    theirs = text(base, "theirs", number, 1 + number % 40)
    if way == "remove":
        file.unlink(missing_ok=True)
        return None
    if way == "write":
        file.write_text(theirs, encoding="utf-8")
    else:
        beside = file.with_name(f"beside-{number}")
        beside.write_text(theirs, encoding="utf-8")
        beside.replace(file)
    return theirs


def race(desk, file, base, chance, number, usual):
    """One save against another hand; what is to be said of it, and how long it took."""
    path = f"{file.parent.name}/{file.name}"
    stood = desk.open(path)
    mine = text(base, "mine", number, 1 + number % 30)
    answer, took = [], []

    def save():
        begun = time.monotonic()
        answer.extend(desk.save(path, mine, stood["mark"]))
        took.append(time.monotonic() - begun)

    saving = threading.Thread(target=save)
    saving.start()
    time.sleep(max(0.0, chance.uniform(-0.2, 1.3) * usual))
    way = chance.choice(["write", "exchange", "exchange", "remove"])
    theirs = other_hand(file, base, way, number)
    saving.join()
    return stood, mine, theirs, way, answer, took[0]


def races(tourier, work, times, chance, tally):
    course = Course(tourier, Path(work, "races/content"))
    base = (course.folder / RECIPE).read_text(encoding="utf-8")
    desk = Desk(tourier, course.folder)
    seen, usual = {200: 0, 409: 0}, 0.03
    for number in range(times):
        # Now and then the text is new to both.
        file = course.folder / (f"recipes/new-{number}.md" if number % 5 == 4 else RECIPE)
        if number % 5 == 3 and not file.exists():
            file.write_text(text(base, "again", number), encoding="utf-8")
        stood, mine, theirs, way, (status, said), took = race(desk, file, base, chance, number, usual)
        usual = 0.8 * usual + 0.2 * took
        what = f"race {number}, {way}, answered {status}"
        tally.check(status in seen, f"{what}: {said}")
        seen[status] = seen.get(status, 0) + 1
        now, kept = on_disk(file), desk.earlier(f"recipes/{file.name}", 6)
        there = [now, *kept]
        if theirs is not None:
            lost(tally, theirs in there, f"{what}: what was written elsewhere is lost")
        if status == 200:
            lost(tally, mine in there, f"{what}: the save is lost")
            if stood["text"] is not None:
                lost(tally, stood["text"] in there, f"{what}: what stood before is lost")
        elif status == 409:
            tally.check(now != mine and mine not in kept, f"{what}: refused, and yet written")
        tally.check(not half_written(course.folder), f"{what}: {half_written(course.folder)} is left")
        if file.name.startswith("new-"):
            file.unlink(missing_ok=True)
    desk.end()
    print(f"  {times} races: {seen[200]} saved, {seen[409]} refused")
    tally.check(seen[200] > 0 and (seen[409] > 0 or times < 40), f"not both came about: {seen}")


def kills(tourier, work, times, chance, tally):
    course = Course(tourier, Path(work, "kills/content"))
    file = course.folder / RECIPE
    base = file.read_text(encoding="utf-8")
    left = while_saving = saves = 0
    for number in range(times):
        desk = Desk(tourier, course.folder)
        stands = desk.open(RECIPE)
        tally.check(stands["text"] == on_disk(file), f"kill {number}: another text is read")
        done, sent = [stands["text"]], [stands["text"]]

        def work_on(desk=desk, number=number, mark=stands["mark"], done=done, sent=sent):
            for count in range(10_000):
                one = text(base, f"kill {number} text", count, chance_lines[count % 8])
                sent.append(one)
                status, said = desk.save(RECIPE, one, mark)
                if status != 200:
                    return
                mark = said["mark"]
                done.append(one)

        chance_lines = [chance.choice([1, 100, 4000]) for _ in range(8)]
        working = threading.Thread(target=work_on)
        working.start()
        time.sleep(chance.uniform(0.0, 0.4))
        desk.end()
        working.join()
        now, what = on_disk(file), f"kill {number}"
        while_saving += len(sent) > len(done)
        left += bool(half_written(course.folder))
        saves += len(done) - 1
        # The last that was said to be saved, or the one that was under way.
        lost(tally, now in (done[-1], sent[-1]), f"{what}: neither the old nor the new text")
        again = Desk(tourier, course.folder)
        kept = again.earlier(RECIPE)
        for one in done[-20:]:
            lost(tally, one in kept or one == now, f"{what}: a text that was saved is lost")
        tally.check(all(one in sent or one == now or f"kill {number} " not in (one or "") for one in kept), f"{what}: a save is not whole")
        # Another text is saved, and all the same nothing half written stays.
        other = again.open("course.yaml")
        status, said = again.save("course.yaml", f"{other['text'].rstrip()}\n# {number}\n", other["mark"])
        tally.check(status == 200, f"{what}: saving after it: {said}")
        tally.check(not half_written(course.folder), f"{what}: {half_written(course.folder)} is left")
        again.end()
    print(f"  {times} kills, {while_saving} while saving, {left} left something to clear; {saves} saves before them")
    tally.check(while_saving > 0, "no save was killed")


def fill(tourier, disk, tally):
    """Saves on a disk with more and more room until it fits; how often the disk was full."""
    course = Course(tourier, disk / "content")
    file = course.folder / RECIPE
    base = file.read_text(encoding="utf-8")
    desk, full = Desk(tourier, course.folder), 0
    room = 0
    for number in range(80):
        stands = desk.open(RECIPE)
        new = text(base, "disk", number, 1000)
        mount(disk, used(disk) + room, again=True)
        kept = desk.earlier(RECIPE)
        # Whoever sees that it failed tries again: that must not fill the disk any more.
        for _ in range(3):
            status, said = desk.save(RECIPE, new, stands["mark"])
            if status == 200:
                break
        what = f"{room} KiB"
        if status == 200:
            lost(tally, on_disk(file) == new, f"{what}: the save is lost")
            break
        full += 1
        tally.check(status == 500 and "the disk is full" in said.get("said", ""), f"{what}: {status} {said}")
        lost(tally, on_disk(file) == stands["text"], f"{what}: the old text is not whole")
        now = desk.earlier(RECIPE)
        lost(tally, now[-len(kept):] == kept if kept else True, f"{what}: an earlier save is lost")
        tally.check(new not in now, f"{what}: what failed is among the saves")
        tally.check(not half_written(course.folder), f"{what}: {half_written(course.folder)} is left")
        mount(disk, 65536, again=True)
        if number % 4 == 3:
            status, said = desk.save(RECIPE, new, stands["mark"])
            tally.check(status == 200, f"{what}: with room again: {said}")
            lost(tally, on_disk(file) == new, f"{what}: the save with room again is lost")
        room += 4
    tally.check(status == 200, f"it never fitted: {said}")
    mount(disk, 65536, again=True)
    for one in (desk.open(RECIPE)["text"], base):
        lost(tally, one in [on_disk(file), *desk.earlier(RECIPE)], "a text from before the disk was full is lost")
    desk.end()
    return full


def full_disk(tourier, work, tally):
    disk = Path(work, "disk")
    disk.mkdir()
    if not mount(disk, 65536):
        return False
    try:
        full = fill(tourier, disk, tally)
        print(f"  the disk was full {full} times")
        tally.check(full > 0, "the disk was never full")
    finally:
        subprocess.run(["umount", "--lazy", str(disk)], capture_output=True)
    return True


def pages(tourier, work, rounds, chance, tally):
    course = Course(tourier, Path(work, "pages/content"))
    base = (course.folder / RECIPE).read_text(encoding="utf-8")
    desks = [Desk(tourier, course.folder) for _ in range(2)]
    saved = refused = 0
    for number in range(rounds):
        path = f"recipes/round-{number}.md"
        chains, refusals = [], []

        def turns(desk, who, rest, path=path, number=number, chains=chains, refusals=refusals):
            mark = desk.open(path)["mark"]
            for count in range(10):
                time.sleep(rest.uniform(0.0, 0.01))
                mine = text(base, f"page {who} in round {number}", count)
                for _ in range(200):
                    status, said = desk.save(path, mine, mark)
                    if status == 200:
                        chains.append((mark, said["mark"], mine))
                        mark = said["mark"]
                        break
                    refusals.append((status, said.get("text"), mine))
                    mark = said.get("mark")

        writers = [
            threading.Thread(target=turns, args=(desks[who % 2], who, random.Random(chance.random())))
            for who in range(4)
        ]
        for one in writers:
            one.start()
        for one in writers:
            one.join()
        saved, refused = saved + len(chains), refused + len(refusals)
        there = [on_disk(course.folder / path), *desks[0].earlier(path)]
        tally.check(len(chains) == 40, f"round {number}: {len(chains)} of 40 saves were done")
        tally.check(all(status == 409 for status, _, _ in refusals), f"round {number}: refused with {refusals[:2]}")
        for _, _, mine in chains:
            lost(tally, mine in there, f"round {number}: a text that was saved is lost")
        over = [mark for mark, _, _ in chains]
        lost(tally, len(set(over)) == len(over), f"round {number}: two saves were made over the same text")
        last = {made for _, made, _ in chains} - set(over)
        tally.check(last == {desks[1].open(path)["mark"]}, f"round {number}: the last save does not stand")
        (course.folder / path).unlink()
    for desk in desks:
        desk.end()
    print(f"  {rounds} rounds of four pages in two programs: {saved} saved, {refused} refused")
    tally.check(refused > 0, "nothing was refused")


def main(tourier, times="12", seed="1", alone=""):
    tally, chance, times = Tally(), random.Random(int(seed)), int(times)
    tourier = str(Path(tourier).resolve())
    with tempfile.TemporaryDirectory() as work, ended():
        if not full_disk(tourier, work, tally):
            own = ["unshare", "-rm", sys.executable, __file__, tourier, str(times), seed, "alone"]
            if not alone and subprocess.run(own[:2] + ["true"], capture_output=True).returncode == 0:
                return subprocess.run(own).returncode
            print("  no small disk may be mounted here: a full disk was not tried")
        races(tourier, work, times * 10, chance, tally)
        kills(tourier, work, times, chance, tally)
        pages(tourier, work, max(2, times // 5), chance, tally)
    print(f"  {tally.passed + tally.failed} pieces of work, {len(LOSSES)} lost")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
