"""Kill -9 at random moments of a publish: the old edition or the new one, whole, each time.

    python3 kill.py TOURIER [TIMES] [SEED]

The tiny course goes back and forth between two states, which differ in the site and in the
folder of the instructor beside it. Each time a publish is killed after a random while, both
are compared, file by file, with clean editions of both states: the site is exchanged first,
so the instructor's folder is never newer than it. Then it is published to the end, and both
must be the new state's edition with nothing left beside them.
Every tenth time there was no site before: then there is none, or a whole one. No source but
the promise. 200 times for a campaign; a few in `tests/run`.
"""

import random
import sys
import tempfile
import time
from pathlib import Path

from editions import Course, beside, edition, instructor
from tally import Tally


def both(site):
    """The edition of the site and that of the folder beside it."""
    return edition(site), edition(instructor(site))


def lengths(course, site, times=3):
    """How long a publish takes that makes one recipe again, at the most."""
    longest = 0.0
    for at in range(times):
        course.turn(at % 2)
        begun = time.monotonic()
        course.publish(site)
        longest = max(longest, time.monotonic() - begun)
    return longest


def moment(chance, whole):
    """A moment of the publish; half of them near its end, where the swap is."""
    early = chance.random() < 0.5
    return whole * (chance.uniform(0.0, 1.0) if early else chance.uniform(0.7, 1.1))


def once(course, site, state, after):
    """Kills one publish; true where it had not ended by itself."""
    course.turn(state)
    run = course.start(site)
    time.sleep(after)
    killed = run.poll() is None
    run.kill()
    run.wait()
    return killed


def main(tourier, times="20", seed="1"):
    tally, chance, seen = Tally(), random.Random(int(seed)), {"old": 0, "new": 0, "none": 0, "between": 0}
    with tempfile.TemporaryDirectory() as work:
        course, site = Course(tourier, Path(work, "content")), Path(work, "out/site")
        clean = []
        for state in (0, 1):
            course.turn(state)
            answer = course.publish(Path(work, f"clean-{state}"))
            tally.check(answer.returncode == 0, f"a clean publish: {answer.stderr}")
            clean.append(both(Path(work, f"clean-{state}")))
        for one, other in zip(*clean):
            tally.check(one != other, "the two states give the same edition")
        course.publish(site)
        whole, killed, left = lengths(course, site), 0, 0
        # The edition that stands is the last state's of the three.
        state = 0
        for at in range(int(times)):
            fresh = at % 10 == 9
            if fresh:
                site.rename(Path(work, f"away-{at}"))
                instructor(site).rename(Path(work, f"away-{at}-instructor"))
            old, state = ((None, None) if fresh else clean[state]), 1 - state
            killed += once(course, site, state, moment(chance, whole * (3 if fresh else 1)))
            now, new = both(site), clean[state]
            seen["none" if now[0] is None else "new" if now[0] == new[0] else "old"] += 1
            seen["between"] += now == (new[0], old[1])
            whole_ones = (old, new, (new[0], old[1]))
            tally.check(now in whole_ones, f"{at}: neither the old nor the new edition")
            left += bool(beside(site))
            answer = course.publish(site)
            tally.check(answer.returncode == 0, f"{at}: publishing after it: {answer.stderr}")
            tally.check(both(site) == clean[state], f"{at}: not whole after another publish")
            tally.check(not beside(site), f"{at}: {beside(site)} is left beside the site")
    print(f"  killed {killed} of {times}, {left} left something to clear; found {seen}")
    tally.check(killed > 0, "no publish was killed")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
