"""Publishing twice: the same bytes into another folder, nothing into the same one.

    python3 twice.py TOURIER SITE OTHER

SITE is a published edition; OTHER is made here, on one core. No source but the promise:
two runs over the same content give the same bytes.
"""

import os
import subprocess
import sys
from pathlib import Path

from tally import Tally

PROJECT = Path(__file__).resolve().parents[2]


def files(folder):
    return {str(f.relative_to(folder)): f for f in sorted(folder.rglob("*")) if f.is_file()}


def publish(tourier, folder):
    """Publishes on the first of this machine's cores."""
    command = [tourier, "publish", "--to", folder]
    core = getattr(os, "sched_setaffinity", None)
    one = (lambda: core(0, {min(os.sched_getaffinity(0))})) if core else None
    return subprocess.run(command, cwd=PROJECT, capture_output=True, text=True, preexec_fn=one)


def stamps(folder):
    return {name: (f.stat().st_ino, f.stat().st_mtime_ns) for name, f in files(folder).items()}


def main(tourier, site, other):
    site, other, tally = Path(site), Path(other), Tally()
    beside = [folder.with_name(f"{folder.name}-instructor") for folder in (site, other)]
    tally.check(publish(tourier, other).returncode == 0, "the second publish stopped")
    one, two = files(site), files(other)
    for all_of, folder in zip((one, two), beside):
        all_of.update({f"instructor/{name}": file for name, file in files(folder).items()})
    tally.check(one.keys() == two.keys(), f"not in both: {one.keys() ^ two.keys()}")
    for name in one.keys() & two.keys():
        data = one[name].read_bytes()
        tally.check(data == two[name].read_bytes(), f"{name} differs between two folders")
        told = str(PROJECT).encode() in data or str(site).encode() in data
        tally.check(not told, f"{name} names a folder of this machine")
    before = stamps(site)
    again = publish(tourier, site)
    tally.check(again.returncode == 0, "publishing again stopped")
    tally.check("nothing made" in again.stdout, f"publishing again: {again.stdout.strip()}")
    touched = [name for name, stamp in stamps(site).items() if stamp != before.get(name)]
    tally.check(not touched, f"publishing again touched {touched[:5]}")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
