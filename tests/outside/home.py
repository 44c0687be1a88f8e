"""Random bakes at home: every plan held against its recipe, minute by minute.

The checker knows nothing of the planner. It made each recipe, so it knows the waits, their
ranges and holds; from the plan it takes only what starts when. Every wait must be within its
range, or within its hold at the place that the recipe names; everything that somebody does,
moves into a hold and out of it too, must lie in the hours in which the baker is up, one thing
at a time; and the end must be the wanted minute. Where the steps stand in one row, the plan
nearest to the recipe's own times is found again by going through every minute (dynamic
programming over minutes, Bellman 1957), and so is whether there is a plan at all.

    python3 home.py TOURIER [PLANS]
"""

import json
import random
import subprocess
import sys
import tempfile
from datetime import datetime, timedelta
from pathlib import Path

import numpy

from tally import Tally

MOVE = 2
DAY = 24 * 60
HEAD = "---\ntitle: {title}\nsummary: s\nmakes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n---\n\n"


class Step:
    """One step of a recipe; minutes throughout."""

    def __init__(self, name, hands=0, bake=0, wait=None, place=None, hold=None, hold_place=None, after=None):
        self.name, self.hands, self.bake, self.wait, self.place = name, hands, bake, wait, place
        self.hold, self.hold_place, self.after = hold, hold_place, after

    @property
    def elsewhere(self):
        return self.hold is not None and self.hold_place is not None and self.hold_place != self.place

    def text(self):
        lines = []
        if self.name == "mix":
            lines.append("uses: dough")
        if self.after:
            lines.append(f"after: [{', '.join(self.after)}]")
        if self.hands:
            lines.append(f"hands: {self.hands} min")
        if self.bake:
            lines.append(f"bake: 200 °C, {self.bake} min")
        if self.wait:
            least, usual, most = self.wait
            lines.append(f"wait: {usual} min ({least} min to {most} min)")
        if self.place:
            lines.append(f"where: {self.place}")
        if self.hold is not None:
            lines.append(f"hold: up to {self.hold} min" + (f" in the {self.hold_place}" if self.hold_place else ""))
        return f"## {self.name.capitalize()}\n~~~ticket\n" + "\n".join(lines) + "\n~~~\nDo it.\n\n"


def rest(rng, long):
    usual = rng.choice([20, 40, 60, 90, 120, 180])
    if long:
        usual = rng.choice([360, 480, 720])
    least = max(1, usual - rng.randint(0, usual // 2))
    return least, usual, usual + rng.randint(0, usual)


def recipe(rng):
    """Steps and whether they stand in one row."""
    steps = [Step("mix", hands=rng.randint(5, 20))]
    row = True
    for number in range(rng.randint(1, 4)):
        hands = rng.choice([0, 0, rng.randint(3, 12)])
        wait = rest(rng, rng.random() < 0.15)
        place = rng.choice(["bench", "fridge", "proofer"])
        hold = hold_place = None
        if rng.random() < 0.5:
            hold = rng.choice([60, 240, 600, 900, 1440])
            hold_place = rng.choice([None, "fridge", "cellar"])
        steps.append(Step(f"rest-{number}", hands=hands, wait=wait, place=place, hold=hold, hold_place=hold_place))
        if number == 0 and rng.random() < 0.3:
            row = False
            steps.append(Step("fill", hands=rng.randint(3, 15), after=["mix"]))
            steps.append(Step("join", hands=rng.randint(3, 10), after=["rest-0", "fill"]))
        elif rng.random() < 0.6:
            held = rng.random() < 0.2
            steps.append(Step(f"turn-{number}", hands=rng.randint(3, 12),
                              hold=600 if held else None, hold_place="fridge" if held else None))
    steps.append(Step("bake", bake=rng.randint(15, 50)))
    if rng.random() < 0.6:
        held = rng.random() < 0.5
        steps.append(Step("cool", wait=(20, 30, rng.choice([60, 300])), place="rack",
                          hold=600 if held else None, hold_place=rng.choice(["fridge", None]) if held else None))
    return steps, row


def before(steps, at):
    """The steps that one comes after."""
    if steps[at].after:
        return [n for n, step in enumerate(steps) if step.name in steps[at].after]
    return [at - 1] if at else []


def taker(steps, at):
    """The first written step that comes after one."""
    return next((n for n in range(len(steps)) if at in before(steps, n)), None)


class Found:
    """What a plan says of one step."""

    def __init__(self, plan, name):
        own = {a["kind"]: (a["start_min"], a["end_min"]) for a in plan["activities"] if a["step"] == name}
        self.into, self.out = own.get("into"), own.get("out")
        work = [own[kind] for kind in ("move", "hands", "bake") if kind in own]
        self.start = work[0][0] if work else None
        self.end = work[-1][1] if work else None
        self.sound = all(one[1] == two[0] for one, two in zip(work, work[1:]))
        self.spans = [span for kind, span in own.items() if kind in ("move", "hands", "into", "out")]
        self.all = list(own.values())


def broken(steps, plan, ready, awake):
    """What a plan breaks."""
    wrong = []
    found = [Found(plan, step.name) for step in steps]
    begin = datetime.fromisoformat(plan["start"])
    finish = next(a["start_min"] for a in plan["activities"] if a["kind"] == "finish")
    if begin + timedelta(minutes=finish) != ready:
        wrong.append("not ready when it should be")
    for at, own in enumerate(found):
        for start, end in own.all:
            a, b = begin + timedelta(minutes=start), begin + timedelta(minutes=end)
            opens = datetime.combine(a.date(), datetime.min.time()) + timedelta(minutes=awake[0])
            shuts = datetime.combine(a.date(), datetime.min.time()) + timedelta(minutes=awake[1])
            if a.date() == ready.date():
                shuts = ready
            if a < opens or b > shuts:
                wrong.append(f"{steps[at].name} from {a} to {b} in the night")
        if own.start is None:
            # Only a wait: it begins where what it comes after ends.
            own.start, own.end = found[before(steps, at)[0]].end, found[before(steps, at)[0]].end
        if not own.sound:
            wrong.append(f"{steps[at].name} is in pieces")
    spans = sorted(span for own in found for span in own.spans)
    wrong += [f"two things at once at {two[0]}" for one, two in zip(spans, spans[1:]) if two[0] < one[1]]
    for at, step in enumerate(steps):
        own, nxt = found[at], taker(steps, at)
        goes_on = finish if nxt is None else found[nxt].start
        least, _, most = step.wait or (0, 0, None)
        if own.into:
            gap = own.into[0] - own.end
            if not (least <= gap <= (most if most is not None else 0)):
                wrong.append(f"{step.name} waits {gap} min before its hold, not {least} to {most}")
            if not 0 <= own.out[0] - own.into[1] <= step.hold:
                wrong.append(f"{step.name} is held {own.out[0] - own.into[1]} min, at most {step.hold}")
            if own.out[1] != goes_on:
                wrong.append(f"{step.name} stands after its hold")
            if own.into[1] - own.into[0] != MOVE or own.out[1] - own.out[0] != MOVE:
                wrong.append(f"{step.name} is moved in no time")
            continue
        if own.out:
            wrong.append(f"{step.name} comes out of nothing")
        gap = goes_on - own.end
        if step.wait:
            longest = most if step.elsewhere or step.hold is None else most + step.hold
        else:
            longest = 0 if step.elsewhere else step.hold
        if gap < least or (longest is not None and gap > longest):
            wrong.append(f"{step.name} stands {gap} min, {least} to {longest} are allowed")
    for at in range(len(steps)):
        for other in before(steps, at):
            if found[at].start < found[other].end + (steps[other].wait or (0,))[0]:
                wrong.append(f"{steps[at].name} begins before {steps[other].name} is over")
    return wrong


def cost(steps, ready, awake, days=13):
    """The least of lead + 2 × minutes short over all plans of steps in one row, or None."""
    begin = datetime.combine(ready.date(), datetime.min.time()) - timedelta(days=days)
    end = int((ready - begin).total_seconds()) // 60
    size, big = end + 1, 10 ** 8
    up = numpy.zeros(size, bool)
    for day in range(days + 1):
        low, high = day * DAY + awake[0], day * DAY + awake[1]
        up[low:min(high, end) + 1 if day < days else end + 1] = True
    night = numpy.concatenate([[0], numpy.cumsum(~up)])

    def task(minutes, after):
        """Worth of beginning a task then, from the worth of its end."""
        worth = numpy.full(size, big)
        worth[:size - minutes] = after[minutes:]
        inside = numpy.zeros(size, bool)
        inside[:size - minutes] = night[minutes + 1:] - night[:size - minutes] == 0
        worth[~inside] = big
        return worth

    def gap(low, high, usual, after, day=False):
        worth = numpy.full(size, big)
        for minutes in range(low, min(high, size - 1) + 1):
            here = after[minutes:] + 2 * max(0, usual - minutes)
            if day:
                here = numpy.where(night[minutes + 1:] - night[:size - minutes] == 0, here, big)
            numpy.minimum(worth[:size - minutes], here, out=worth[:size - minutes])
        return worth

    worth, joined = numpy.full(size, big), False
    worth[end] = 0
    for at in range(len(steps) - 1, -1, -1):
        step = steps[at]
        least, usual, most = step.wait or (0, 0, 0)
        same = step.hold if step.hold is not None and not step.elsewhere else 0
        after = worth
        if step.wait or step.hold is not None:
            after = gap(least, most + same, usual, worth)
        elif at + 1 == len(steps):
            # What is done is done: it may have been so since the evening.
            after = numpy.minimum.accumulate(worth[::-1])[::-1]
        elif not joined:
            after = gap(0, DAY, 0, worth, day=True)
        if step.elsewhere:
            held = task(MOVE, gap(0, step.hold, 0, task(MOVE, worth)))
            after = numpy.minimum(after, gap(least, most, usual, held))
        if step.bake:
            after = task(step.bake, after)
        if step.hands:
            after = task(step.hands, after)
        # A step that only waits begins where the one before it ends, or with a move.
        joined = not step.hands and not step.bake and not steps[at - 1].wait and steps[at - 1].hold is None
        if not step.hands and not step.bake and not joined:
            after = task(MOVE, after)
        worth = after
    least = int((worth + end - numpy.arange(size)).min())
    return None if least >= big else least


def chain(steps):
    """What steps in one row take by their own times."""
    minutes = 0
    for at, step in enumerate(steps):
        minutes += step.hands + step.bake + (step.wait or (0, 0, 0))[1]
        alone = not step.hands and not step.bake
        if alone and (steps[at - 1].wait or steps[at - 1].hold is not None):
            minutes += MOVE
    return minutes


def compare(where, plan, steps, least, tally):
    """The plan is as near to the recipe as any, and is there where there is one."""
    if least is None:
        return tally.check(plan["verdict"] != "fits", f"{where}: a plan where there can be none")
    if plan["verdict"] != "fits":
        return tally.check(False, f"{where}: {plan['verdict']}, and there is a plan of {least - chain(steps)}")
    away, best = plan["objective"][0]["value"], least - chain(steps)
    tally.check(away >= best, f"{where}: {away} min away, nearer than any plan ({best})")
    tally.check(away == best or not plan["best"], f"{where}: {away} min away, and {best} is possible")
    tally.check(plan["objective"][0]["bound"] <= best, f"{where}: bound {plan['objective'][0]['bound']} over {best}")


def main(tourier, plans=60):
    tally, rng = Tally(), random.Random(16)
    fitted = compared = 0
    for batch in range(0, int(plans), 20):
        awake = rng.choice([(375, 1350), (420, 1380), (330, 1320)])
        with tempfile.TemporaryDirectory() as folder:
            content = Path(folder) / "content"
            (content / "recipes").mkdir(parents=True)
            clock = " to ".join(f"{m // 60:02}:{m % 60:02}" for m in awake)
            (content / "course.yaml").write_text(f"title: Random\nsummary: s\nlanguage: en\nawake: {clock}\n")
            made = [recipe(rng) for _ in range(min(20, int(plans) - batch))]
            for number, (steps, _) in enumerate(made):
                text = HEAD.format(title=f"R{number}") + "".join(step.text() for step in steps)
                (content / "recipes" / f"r{number}.md").write_text(text)
            for number, (steps, row) in enumerate(made):
                ready = datetime(2027, 3, 7) + timedelta(minutes=rng.randint(awake[0] // 5 + 6, awake[1] // 5) * 5)
                said = subprocess.run(
                    [tourier, "--content", str(content), "timetable", f"r{number}", "--ready",
                     ready.strftime("%Y-%m-%d %H:%M"), "--as", "json"], capture_output=True, text=True)
                where = f"course {batch // 20} recipe {number} ready {ready:%H:%M}"
                if said.returncode not in (0, 1) or not said.stdout:
                    tally.check(False, f"{where}: {said.stderr.strip()[:300]}")
                    continue
                plan = json.loads(said.stdout)
                if plan["verdict"] == "fits":
                    fitted += 1
                    wrong = broken(steps, plan, ready, awake)
                    tally.check(not wrong, f"{where}: {'; '.join(wrong[:3])}")
                if row:
                    compared += 1
                    compare(where, plan, steps, cost(steps, ready, awake), tally)
    print(f"{fitted} of {plans} have a plan; {compared} held against every minute")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
