"""Late evenings: a class is taught as its plan says, but everything takes longer than planned,
an oven breaks and a pair goes home. Every quarter of an hour the teacher says what happened,
and each plan of the rest is held against what really happened and against the class's rules.

The evening is carried out minute by minute from the plan's JSON alone: who is free, what is
in which oven, what has rested long enough. Nothing of the planner is used. The times by which
steps are late (5 to 40 in a hundred) are this script's own.

    python3 evenings.py TOURIER [EVENINGS [SEED]]
"""

import json
import math
import random
import subprocess
import sys
import tempfile
from pathlib import Path

from classes import TOGETHER, contents, peak, session_of
from tally import Tally

# What is said of what everybody does together.
NAMES = {"washing": "washing up"}
# Minutes from one report to the next.
REPORT = 15


def run(tourier, folder, *words):
    """The program's answer as JSON, or what it says."""
    told = subprocess.run([tourier, "--content", str(folder), *words], capture_output=True, text=True, check=False)
    if told.returncode not in (0, 1) or not told.stdout.startswith("{"):
        return f"exit {told.returncode}: {told.stderr.strip()[:300]}"
    return json.loads(told.stdout)


class Evening:
    """What really happens: when each activity began and ended, and where."""

    def __init__(self, plan, rng):
        self.plan, self.rng = plan, rng
        self.acts = plan["activities"]
        self.begun, self.ended, self.oven = {}, {}, {}
        self.lasts = {act["id"]: math.ceil(act["minutes"] * rng.uniform(1.05, 1.4)) for act in self.acts}
        for act in self.acts:
            # An oven keeps its time; hands do not.
            if act["kind"] == "bake":
                self.lasts[act["id"]] = act["minutes"]
        self.announced = {act["id"]: act["start_min"] for act in self.acts}
        self.gone, self.lost = set(), None
        self.into = {}
        for link in plan["links"]:
            self.into.setdefault(link["to"], []).append(link)

    def runs(self, at, now):
        return at in self.begun and self.begun[at] <= now < self.ended[at]

    def ready(self, at, now):
        """Whether an activity can begin at this minute."""
        act = self.acts[at]
        if now < self.announced[at] or act["group"] in self.gone:
            return False
        spans = self.plan["sessions"]
        if act["minutes"] and not any(s["from_min"] <= now < s["to_min"] + 180 for s in spans):
            return False
        for link in self.into.get(at, []):
            before = link["from"]
            if self.acts[before]["group"] in self.gone:
                continue
            if before not in self.ended or now < self.ended[before] + link["least_min"]:
                return False
        for pool in self.plan["pools"]:
            own = sum(n for t, n, _ in pool["uses"] if t == at)
            if own and own + sum(n for t, n, after in pool["uses"] if t in self.begun
                                 and self.begun[t] <= now < self.ended[t] + after) > pool["capacity"]:
                return False
        return self.room(at, now) is not None

    def room(self, at, now):
        """The oven for a bake: the announced one if it has room; 0 for what needs none."""
        ovens = self.plan["ovens"]
        own = [(n, (heat, phases)) for t, n, heat, phases in ovens["bakes"] if t == at]
        if not own:
            return 0
        trays, heat = own[0]
        for oven in range(1, ovens["count"] + 1):
            if oven == self.lost:
                continue
            inside = [(n, (h, p) if p is None or self.begun[t] == now else None)
                      for t, n, h, p in ovens["bakes"] if self.oven.get(t) == oven
                      and self.begun[t] <= now < self.ended[t] + ovens["after_min"]]
            if sum(n for n, _ in inside) + trays <= ovens["trays"] and all(h == heat for _, h in inside):
                return oven
        return None

    def minute(self, now):
        """Lets begin what can."""
        order = sorted((act["id"] for act in self.acts if act["id"] not in self.begun), key=lambda at: (self.announced[at], at))
        for at in order:
            if self.ready(at, now):
                self.begun[at], self.oven[at] = now, self.room(at, now)
                self.ended[at] = now + self.lasts[at]

    def said(self, now, since, clock):
        """What the teacher says: of each group what is done and what is under way."""
        words = []
        groups = {}
        for act in self.acts:
            if act["kind"] in TOGETHER:
                continue
            if act["step"] and act["kind"] != "moment":
                groups.setdefault(act["group"], []).append(act["id"])
        for group, own in groups.items():
            if group in self.gone:
                continue
            done = sorted((self.ended[at], at) for at in own if at in self.ended and self.ended[at] <= now)
            name = {at: f"{self.acts[at]['recipe']}/{self.acts[at]['step']}" for at in own}
            parts = []
            late = [at for at in own if self.announced[at] <= now and at not in self.begun]
            for end, at in done:
                last = not any(self.acts[other]["step"] == self.acts[at]["step"] and self.acts[other]["recipe"]
                               == self.acts[at]["recipe"] and (other not in self.ended or self.ended[other] > now) for other in own)
                if last and (end > since or late):
                    parts.append((end, f"{group}: {name[at]} at {clock(end)}"))
            for at in own:
                if self.runs(at, now):
                    parts.append((self.begun[at] + 10**6, f"{group}: {name[at]} from {clock(self.begun[at])}"))
            if not done and not any(self.runs(at, now) for at in own):
                parts.append((0, f"{group}: nothing yet"))
            # Each time is said once, the earlier first: what follows on it is not begun.
            words += [text for _, text in sorted(set(parts))]
        for at in sorted(self.begun, key=lambda at: self.begun[at]):
            kind = self.acts[at]["kind"]
            if kind in TOGETHER and since < self.begun[at] <= now:
                words.append(f"all: {NAMES.get(kind, kind)} from {clock(self.begun[at])}")
            if kind in TOGETHER and since < self.ended[at] <= now:
                words.append(f"all: {NAMES.get(kind, kind)} at {clock(self.ended[at])}")
        return "; ".join(words)


def wrong(real, plan, now):
    """Everything wrong with a plan of the rest, given what really happened."""
    found = []
    base, acts = real.plan, plan["activities"][:len(real.acts)]
    start = [act["start_min"] for act in acts]
    end = [act["end_min"] for act in acts]
    left = {act["id"] for act in real.acts if act["group"] in real.gone and act["id"] not in real.begun}
    opened = [at for at in range(len(acts)) if at not in real.begun and at not in left]
    for at in opened:
        act = real.acts[at]
        if start[at] < now:
            found.append(f"{act['group']} {act['step']} begins at {start[at]}, in the past")
        if end[at] - start[at] != act["minutes"]:
            found.append(f"{act['group']} {act['step']} does not last as long as it should")
    for at in real.begun:
        if real.acts[at]["minutes"] and not real.runs(at, now) and end[at] != real.ended[at] and real.acts[at]["step"]:
            found.append(f"{real.acts[at]['group']} {real.acts[at]['step']} ended at {real.ended[at]}, not at {end[at]}")
    for link in base["links"]:
        a, b = link["from"], link["to"]
        if b not in opened or a in left:
            continue
        ended = real.ended[a] if a in real.ended and real.ended[a] <= now else end[a]
        gap = start[b] - ended
        if gap < link["least_min"]:
            found.append(f"{real.acts[b]['group']} {real.acts[b]['step']}: {gap} min after {real.acts[a]['step']}, {link['least_min']} wanted")
        most = link["most_min"]
        if most is not None and gap > most and not (a in real.ended and now - ended > most):
            found.append(f"{real.acts[b]['group']} {real.acts[b]['step']}: {gap} min after {real.acts[a]['step']}, {most} allowed")
        if not link["crosses"] and a in opened and session_of(base, start[a]) != session_of(base, start[b]):
            found.append(f"{real.acts[b]['group']} {real.acts[b]['step']} crosses sessions without a hold")
    busy = [at for at in range(len(acts)) if at in opened or real.runs(at, now)]
    for pool in base["pools"]:
        loads = [(start[t], end[t] + after, n) for t, n, after in pool["uses"] if t in opened or end[t] + after > now and t not in left]
        if peak([one for one in loads if one[1] > now and one[0] < one[1]]) > pool["capacity"]:
            found.append(f"{pool['name']}: over its capacity")
    for store in base["stores"]:
        stays = [(max(end[base["links"][at]["from"]], now), start[base["links"][at]["to"]], n) for at, n in store["stays"]
                 if base["links"][at]["to"] in opened and base["links"][at]["from"] not in left]
        # What is begun will stand there, room or no room.
        stand = sum(n for at, n in store["stays"] if base["links"][at]["to"] in opened and base["links"][at]["from"] in real.begun)
        if peak(stays) > max(store["capacity"], stand):
            found.append(f"{store['place']}: too full")
    return found + baked(real, plan, now, opened, busy)


def baked(real, plan, now, opened, busy):
    """Ovens hold what goes in, at one heat; what is in one stays there; a broken one is empty."""
    found, base, acts = [], real.plan, plan["activities"]
    ovens = base["ovens"]
    inside = []
    for t, n, heat, phases in ovens["bakes"]:
        if t not in busy:
            continue
        oven = acts[t]["oven"]
        if real.runs(t, now) and oven != real.oven[t]:
            # The teacher does not say into which oven it went: only the plan's own counts.
            oven = None
        if t in opened and oven == real.lost:
            found.append(f"{acts[t]['group']} bakes in the broken oven")
        if t in opened and oven is None:
            found.append(f"{acts[t]['group']} bakes in no oven")
        inside.append((oven, acts[t]["start_min"], acts[t]["end_min"] + ovens["after_min"], n, heat, phases))
    for number in range(1, ovens["count"] + 1):
        own = [one[1:] for one in inside if one[0] == number]
        if peak([one[:3] for one in own]) > ovens["trays"]:
            found.append(f"oven {number}: too many trays")
        apart = max(ovens["turn_min"] - ovens["after_min"], 0)
        if any(a[3] != b[3] and a[0] < b[1] + apart and b[0] < a[1] + apart for a in own for b in own):
            found.append(f"oven {number}: two heats")
        meet = [(a, b) for at, a in enumerate(own) for b in own[:at] if a[0] < b[1] and b[0] < a[1]]
        if any(a[4] != b[4] or (a[4] is not None and a[0] != b[0]) for a, b in meet):
            found.append(f"oven {number}: its heat changes while something else is in it")
    return found


def evening(tally, tourier, folder, name, rng):
    """One class through its sessions; how many replannings."""
    plan = run(tourier, folder, "timetable", name, "--as", "json")
    if isinstance(plan, str) or plan["verdict"] != "fits":
        return 0
    real = Evening(plan, rng)
    day, hour = plan["start"].split("T")
    zero = int(hour[:2]) * 60 + int(hour[3:])
    clock = lambda minute: f"{(zero + minute) // 60 % 24:02}:{(zero + minute) % 60:02}"
    date = lambda minute: f"{day[:8]}{int(day[8:]) + (zero + minute) // 1440:02} {clock(minute)}"
    groups = sorted({act["group"] for act in plan["activities"]} - {"instructor"})
    first, last = plan["sessions"][0]["from_min"], plan["sessions"][-1]["to_min"]
    breaks = rng.randint(first + 20, max(first + 21, last - 30)) if plan["ovens"]["count"] > 1 else None
    leaves = rng.randint(first + 20, max(first + 21, last - 30)) if len(groups) > 2 else None
    plannings, since, since_said = 0, first - 1, first - 1
    for span in plan["sessions"]:
        for now in range(span["from_min"], span["to_min"] + 1):
            real.minute(now)
            more = []
            if breaks is not None and now >= breaks:
                empty = [n for n in range(1, plan["ovens"]["count"] + 1) if not any(real.oven.get(t) == n and real.runs(t, now) for t in real.begun)]
                if empty:
                    real.lost, breaks = empty[-1], None
                    more.append(f"oven {real.lost} out")
            if leaves is not None and now >= leaves:
                pair, leaves = rng.choice(groups), None
                if not any(real.runs(at, now) for at in real.begun if real.acts[at]["group"] == pair):
                    real.gone.add(pair)
                    more.append(f"{pair} gone")
            if not more and (now - span["from_min"]) % REPORT:
                continue
            said = "; ".join(part for part in [real.said(now, since_said, clock), *more] if part)
            answer = run(tourier, folder, "today", name, said or "all late 0", "--now", date(now), "--as", "json")
            since_said, plannings = now, plannings + 1
            where = f"{name} at {date(now)}"
            if isinstance(answer, str):
                tally.check(False, f"{where}: {said[:200]}: {answer}")
                return plannings
            if answer["verdict"] != "fits":
                tally.check(bool(answer["reasons"] or answer["remedies"]) or answer["verdict"] == "unknown",
                            f"{where}: it does not fit, and nothing says why")
            if all(act["start_min"] is not None for act in answer["activities"]):
                bad = wrong(real, answer, now)
                tally.check(not bad, f"{where}: {bad[:4]} after {said[-300:]}")
                for act in answer["activities"][:len(real.acts)]:
                    if act["id"] not in real.begun:
                        real.announced[act["id"]] = act["start_min"]
        since = span["to_min"]
    kept = Path(folder, "classes", f"{name}.day.txt").read_text(encoding="utf-8").splitlines()
    tally.check(len(kept) == plannings, f"{name}: {len(kept)} lines kept of {plannings}")
    return plannings


def main():
    """Random classes, evening by evening."""
    tourier, evenings = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 3
    seed = int(sys.argv[3]) if len(sys.argv) > 3 else 1
    tally, done, plannings = Tally(), 0, 0
    for number in range(seed, seed + 40 * evenings):
        rng = random.Random(number)
        with tempfile.TemporaryDirectory() as folder:
            (name,) = contents(folder, rng, 1)
            count = evening(tally, tourier, folder, name, rng)
        if count:
            done, plannings = done + 1, plannings + count
        if done == evenings:
            break
    print(f"  {done} evenings, {plannings} replannings")
    tally.check(done == evenings, f"only {done} evenings")
    return tally.end()


if __name__ == "__main__":
    sys.exit(main())
