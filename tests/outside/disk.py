"""A disk that fills up during a publish: said plainly, and the old edition stands.

    python3 disk.py TOURIER

The site lies on a small disk in memory (tmpfs) with room for part of what a publish
writes, more each time until it fits. Mounting one takes rights: those of the machine, else
a name space of our own (unshare). Where neither is given, the check says so and compares
nothing of it (`publishing.rs` still limits the size of files). Also several publishes at once:
some are refused, and the edition is whole. No source but the promise.
"""

import os
import subprocess
import sys
import tempfile
from pathlib import Path

from editions import Course, beside, edition
from tally import Tally

KIB = 1024
ROOM = [0, 4, 16, 64, 128, 256, 512, 1024, 4096, 65536]


def mount(disk, kib, again=False):
    options = f"size={kib}k" + (",remount" if again else "")
    command = ["mount", "-t", "tmpfs", "-o", options, "tmpfs", str(disk)]
    return subprocess.run(command, capture_output=True).returncode == 0


def used(disk):
    about = os.statvfs(disk)
    return (about.f_blocks - about.f_bfree) * about.f_frsize // KIB


def fill(course, disk, tally):
    """Publishes with more and more room until it fits; how often the disk was full."""
    site, full = disk / "site", 0
    course.turn(0)
    tally.check(course.publish(site).returncode == 0, "the first publish")
    old = edition(site)
    course.turn(1)
    for room in ROOM:
        mount(disk, used(disk) + room, again=True)
        answer = course.publish(site)
        if answer.returncode == 0:
            break
        full += 1
        tally.check(answer.returncode == 3, f"{room} KiB: it ended with {answer.returncode}")
        tally.check("the disk is full" in answer.stderr, f"{room} KiB: {answer.stderr}")
        tally.check(edition(site) == old, f"{room} KiB: the old edition is another one")
        tally.check(not beside(site), f"{room} KiB: {beside(site)} is left")
    tally.check(answer.returncode == 0, "it never fitted")
    tally.check(edition(site) not in (old, None), "the new edition is not there")
    return full


def at_once(course, site, tally):
    """Six publishes of one course at the same time."""
    course.turn(0)
    runs = [course.start(site) for _ in range(6)]
    codes = [run.wait() for run in runs]
    tally.check(0 in codes and set(codes) <= {0, 3}, f"publishes at once ended with {codes}")
    whole = edition(site)
    again = course.publish(site)
    tally.check(again.returncode == 0 and edition(site) == whole, "the edition is not whole")
    tally.check(not beside(site), f"{beside(site)} is left beside the site")


def main(tourier, alone=""):
    tally = Tally()
    with tempfile.TemporaryDirectory() as work:
        course, disk = Course(tourier, Path(work, "content")), Path(work, "disk")
        disk.mkdir()
        if mount(disk, 65536):
            try:
                full = fill(course, disk, tally)
                print(f"  the disk was full {full} times")
                tally.check(full > 0, "the disk was never full")
            finally:
                subprocess.run(["umount", str(disk)], capture_output=True)
        elif not alone:
            own = ["unshare", "-rm", sys.executable, __file__, tourier, "alone"]
            if subprocess.run(own[:2] + ["true"], capture_output=True).returncode == 0:
                return subprocess.run(own).returncode
            print("  no small disk may be mounted here: a full disk was not tried")
        else:
            print("  no small disk may be mounted here: a full disk was not tried")
        at_once(course, Path(work, "out/site"), tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
