"""Random classes: every plan checked from its JSON alone, and held against OR-tools.

The checker knows nothing of the planner: it reads sessions, windows, lags, pools, ovens and
shelves and looks for a violation. The comparison builds the same question for CP-SAT
(PyPI ortools, Apache-2.0) with one worker and asks for its verdict and the earliest end: no
class is refused that fits, none fits that cannot, and no bound is above a plan. More kit and
more time must keep a plan; every remedy is followed and must work; every reason that names a
kit must go with that much of it and not with one less. With LEVELS the rival also makes the
moments few and then the waiting little, on the plan's own grid.

    python3 classes.py TOURIER [PLANS [COMPARED [LEVELS]]]
"""

import json
import math
import random
import statistics
import subprocess
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from tally import Tally

COURSE = "title: Random\nsummary: s\ntime zone: Europe/Dublin\nkit: { trays per oven: 2 }\n"
RECIPE = """---
title: {title}
summary: s
makes: 12 buns
formula:
  dough:
    - 600 g bread flour
    - 300 g water
---

{steps}"""


def step(title, *lines):
    """A step with its ticket."""
    return f"## {title}\n~~~ticket\n" + "\n".join(lines) + "\n~~~\nDo it.\n\n"


def recipe(rng, title):
    """A recipe of random steps: some wait, some are held, some run side by side."""
    steps = [step("Mix", "uses: dough", "kit: 1 mixer", f"hands: {rng.randint(5, 15)} min")]
    for number in range(rng.randint(1, 3)):
        usual = rng.randint(15, 50)
        lines = [f"wait: {usual} min ({usual - rng.randint(0, 10)} min to {usual + rng.randint(5, 60)} min)"]
        lines.append(f"where: {rng.choice(['fridge', 'proofer', 'bench'])}")
        if rng.random() < 0.5:
            lines.append("hold: up to 30 h")
        steps.append(step(f"Rest {number}", *lines))
        if number == 0 and rng.random() < 0.4:
            steps.append(step("Fill", "after: mix", f"hands: {rng.randint(3, 10)} min"))
            steps.append(step("Turn 0", "after: [rest-0, fill]", f"hands: {rng.randint(4, 9)} min"))
        else:
            steps.append(step(f"Turn {number}", f"hands: {rng.randint(4, 9)} min"))
    heat = rng.choice([180, 200, 220])
    falls = f"; then {heat - 30} °C, {rng.randint(5, 15)} min" if rng.random() < 0.3 else ""
    steps.append(step("Bake", f"bake: {heat} °C, {rng.randint(12, 25)} min{falls}", f"per tray: {rng.choice([6, 12])}"))
    if rng.random() < 0.6:
        steps.append(step("Cool", "wait: 15 min (10 min to 1 h)", "where: rack"))
    return RECIPE.format(title=title, steps="".join(steps))


def a_class(rng, recipes):
    """A class of random size; about a third do not fit."""
    first = rng.randint(120, 300)
    sessions = [(2, 18 * 60, 18 * 60 + first)]
    if rng.random() < 0.6:
        sessions.append((rng.choice([2, 3]), 23 * 60 - 60, 23 * 60 + rng.randint(-20, 50)) if rng.random() < 0.2
                        else (3, 17 * 60, 17 * 60 + rng.randint(120, 300)))
    sessions = [one for one in sessions if one[1] < one[2]]
    if len(sessions) == 2 and sessions[1][0] == 2 and sessions[1][1] <= sessions[0][2]:
        sessions.pop()
    clock = lambda minute: f"{minute // 60:02}:{minute % 60:02}"
    lines = ["title: Class", "sessions:"]
    lines += [f"  - 2027-03-{day:02} {clock(start)} to {clock(end)}" for day, start, end in sessions]
    made = rng.sample(recipes, rng.randint(1, min(2, len(recipes))))
    lines += [f"bakers: {rng.randint(2, 9)}", "work in: pairs", "makes:"]
    for name in made:
        each = "baker" if rng.random() < 0.1 else "pair"
        lines += [f"  - recipe: {name}", f"    each: {each}", f"    pieces: {rng.choice([6, 12, 24])}"]
    if rng.random() < 0.5:
        lines += [f"  - recipe: {made[0]}", "    each: demonstration", "    pieces: 12"]
    lines.append(
        f"kit: {{ mixer: {rng.randint(1, 3)}, oven: {rng.randint(1, 2)}, tray per oven: {rng.randint(1, 3)},"
        f" fridge tray: {rng.randint(2, 8)}, proofer tray: {rng.randint(2, 8)}, instructor: 1 }}"
    )
    if rng.random() < 0.5:
        lines.append("demonstrate: [turn-0]")
    lines.append(f"changeover: {rng.choice([0, 5])} min")
    # Drawn from lots of their own, so that the rest of a class stays as it was.
    return "\n".join(lines + beside(random.Random(rng.random()), sessions)) + "\n"


def beside(rng, sessions):
    """What some classes have beside their recipes."""
    if rng.random() < 0.5:
        return []
    _, opens, closes = sessions[0]
    half = (opens + closes) // 2
    clock = lambda minute: f"{minute // 60:02}:{minute % 60:02}"
    lines = [
        f"arrival: {rng.choice([5, 10])} min",
        f"talk: [{rng.choice([5, 10])} min]",
        "talk: [5 min before turn-0]",
        f"break: 10 min between {clock(half - 20)} and {clock(half + 30)}",
        "break: 10 min",
        "tasting: 10 min",
        "washing up: 10 min",
        "preheat: 30 min",
        f"change of heat: {rng.choice([10, 20])} min",
        f"pace: {rng.choice(['1.25', '1.5', '{ mix: 1.5 }'])}",
        "helpers: 1",
        f"slack: {rng.choice([5, 10])} min",
        "late: { pair 1: 15 min }",
    ]
    chosen = rng.sample(lines, rng.randint(1, 5))
    kept = {}
    for line in chosen:
        kept.setdefault(line.split(":")[0], line)
    return list(kept.values())


def contents(folder, rng, classes):
    """A content folder with so many classes; their names."""
    for part in ("recipes", "classes"):
        Path(folder, part).mkdir()
    Path(folder, "course.yaml").write_text(COURSE, encoding="utf-8")
    recipes = ["one", "two", "three"]
    for name in recipes:
        Path(folder, "recipes", f"{name}.md").write_text(recipe(rng, name), encoding="utf-8")
    names = [f"c{number}" for number in range(classes)]
    for name in names:
        Path(folder, "classes", f"{name}.yaml").write_text(a_class(rng, recipes), encoding="utf-8")
    return names


TIMES = []
# What a class may have more of.
KIT = ["mixer", "oven", "tray per oven", "fridge tray", "proofer tray", "instructor"]
# What everybody does together.
TOGETHER = ("arrival", "talk", "break", "tasting", "washing")


def session_of(plan, minute):
    """The number of the session that holds a minute, or that came last before it."""
    found = 0
    for number, span in enumerate(plan["sessions"]):
        if span["from_min"] <= minute:
            found = number
    return found


def pauses(plan):
    """All time between sessions before each session."""
    total, before = [0], 0
    for one, later in zip(plan["sessions"], plan["sessions"][1:]):
        before += later["from_min"] - one["to_min"]
        total.append(before)
    return total


def peak(loads):
    """The most taken at once by (from, to, amount)."""
    return max((sum(a for f, t, a in loads if f <= at < t) for at, _, _ in loads), default=0)


def violations(plan):
    """Everything wrong with a plan that is said to fit."""
    found = []
    acts = plan["activities"]
    start = [act["start_min"] for act in acts]
    end = [act["end_min"] for act in acts]
    for act in acts:
        at = act["id"]
        if end[at] - start[at] != act["minutes"]:
            found.append(f"{at}: does not last as long as it should")
        if not any(a <= start[at] <= b for a, b in act["windows"]):
            found.append(f"{at}: outside its windows")
        if not any(s["from_min"] <= start[at] and end[at] <= s["to_min"] for s in plan["sessions"]):
            found.append(f"{at}: not inside one session")
    for link in plan["links"]:
        gap = start[link["to"]] - end[link["from"]]
        if gap < link["least_min"] or (link["most_min"] is not None and gap > link["most_min"]):
            found.append(f"{link}: gap {gap}")
        if not link["crosses"] and session_of(plan, start[link["from"]]) != session_of(plan, start[link["to"]]):
            found.append(f"{link}: crosses sessions without a hold")
    for pool in plan["pools"]:
        if peak([(start[t], end[t] + after, n) for t, n, after in pool["uses"]]) > pool["capacity"]:
            found.append(f"{pool['name']}: over its capacity")
    for store in plan["stores"]:
        stays = [(end[plan["links"][at]["from"]], start[plan["links"][at]["to"]], n) for at, n in store["stays"]]
        if peak(stays) > store["capacity"]:
            found.append(f"{store['place']}: too full")
    ovens = plan["ovens"]
    baked = [(acts[t]["oven"], start[t], end[t] + ovens["after_min"], n, heat, phases) for t, n, heat, phases in ovens["bakes"]]
    for number in range(1, ovens["count"] + 1):
        inside = [one[1:] for one in baked if one[0] == number]
        if peak([one[:3] for one in inside]) > ovens["trays"]:
            found.append(f"oven {number}: too many trays")
        apart = max(ovens["turn_min"] - ovens["after_min"], 0)
        if any(a[3] != b[3] and a[0] < b[1] + apart and b[0] < a[1] + apart for a in inside for b in inside):
            found.append(f"oven {number}: two heats")
        meet = [(a, b) for at, a in enumerate(inside) for b in inside[:at] if a[0] < b[1] and b[0] < a[1]]
        if any(a[4] != b[4] or (a[4] is not None and a[0] != b[0]) for a, b in meet):
            found.append(f"oven {number}: its heat changes while something else is in it")
    if any(not 1 <= one[0] <= ovens["count"] for one in baked):
        found.append("a bake without an oven")
    return found + people(plan, acts, start, end) + values(plan, start, end)


def people(plan, acts, start, end):
    """A group does one thing at a time, sees what is shown, and sees it first."""
    found = []
    busy = {}
    for act in acts:
        if act["kind"] in ("hands", "demonstration", *TOGETHER) and act["minutes"]:
            for who in [act["group"], *act["watching"]]:
                span = (start[act["id"]], end[act["id"]], 1)
                busy.setdefault(who, []).append(span)
                # Who watches with a pair watches as each of its bakers.
                for other in {one["group"] for one in acts if one["group"].startswith(who + ",")}:
                    busy.setdefault(other, []).append(span)
    found += [f"{who} does two things at once" for who, loads in busy.items() if peak(loads) > 1]
    for shown in acts:
        for act in acts:
            same = (act["recipe"], act["step"]) == (shown["recipe"], shown["step"])
            if same and act["group"].split(",")[0] in shown["watching"] and act["kind"] == "hands":
                if start[act["id"]] < end[shown["id"]]:
                    found.append(f"{act['group']} does {act['step']} before it is shown")
    for wait in plan["waits"]:
        least, _, most = wait["range_min"]
        lasts = wait["end_min"] - wait["start_min"]
        if lasts < least or (most is not None and lasts > most):
            found.append(f"{wait['group']}: {wait['step']} lasts {lasts} min")
    return found


def minutes_of(text, key):
    """The minutes that a class file has for a key; 0 where it has none."""
    import re
    found = re.search(rf"^{key}: (\d+) min$", text, re.M)
    return int(found[1]) if found else 0


def besides(plan, text, hands):
    """What a class has beside its recipes, read from its file alone: `hands` has the minutes of
    each step of each recipe."""
    import re
    found = []
    acts = plan["activities"]
    work = [act for act in acts if act["kind"] == "hands" and act["minutes"]]
    spans = [(span["from_min"], span["to_min"], span["from"][:10]) for span in plan["sessions"]]
    mornings = [span for at, span in enumerate(spans) if at == 0 or spans[at - 1][2] != span[2]]
    arrival = minutes_of(text, "arrival")
    for opens, _, _ in mornings:
        if any(opens <= act["start_min"] < opens + arrival for act in work):
            found.append(f"work within {arrival} min of the opening")
    late = re.search(r"^late: \{ pair 1: (\d+) min \}", text, re.M)
    for opens, closes, _ in mornings if late else []:
        if any(opens <= act["start_min"] < min(opens + int(late[1]), closes) and act["group"].split(",")[0] == "pair 1" for act in work):
            found.append("pair 1 works before it is there")
    slack = minutes_of(text, "slack")
    for opens, closes, _ in spans:
        if any(opens <= act["start_min"] and closes - slack < act["end_min"] <= closes for act in acts if act["minutes"]):
            found.append(f"something in the last {slack} min")
    by_kind = {kind: [act for act in acts if act["kind"] == kind] for kind in TOGETHER}
    groups = {act["group"].split(",")[0] for act in work} - {"instructor"}
    for kind in ("break", "tasting", "washing"):
        for act in by_kind[kind]:
            if set(act["watching"]) != groups:
                found.append(f"{kind} without {groups - set(act['watching'])}")
            if any(one["start_min"] < act["end_min"] and act["start_min"] < one["end_min"] for one in work):
                found.append(f"work in the {kind}")
    if minutes_of(text, "tasting"):
        ready = max(act["end_min"] for act in acts if act["kind"] == "finish")
        if [act["start_min"] >= ready for act in by_kind["tasting"]] != [True]:
            found.append("the tasting is not after the last is done")
    if minutes_of(text, "washing up"):
        for opens, closes, _ in spans:
            own = [act for act in by_kind["washing"] if opens <= act["start_min"] and act["end_min"] <= closes]
            if len(own) != 1 or any(opens <= act["start_min"] < closes and act["start_min"] > own[0]["start_min"] for act in work):
                found.append("washing up is not the last work of its session")
    between = re.search(r"^break: (\d+) min between (\S+) and (\S+)$", text, re.M)
    if between:
        zero = int(plan["start"][11:13]) * 60
        first, last = (int(at[:2]) * 60 + int(at[3:]) - zero for at in between.groups()[1:])
        inside = [act for act in by_kind["break"] if first <= act["start_min"] % 1440 and act["end_min"] % 1440 <= last]
        if not by_kind["break"] or len(inside) < len(by_kind["break"]):
            found.append("a break is not in its time")
    turn = minutes_of(text, "change of heat")
    baked = [(act["oven"], act["start_min"], act["end_min"], act["heat"]) for act in acts if act["kind"] == "bake"]
    if any(a[0] == b[0] and a[3] != b[3] and a[1] < b[2] + turn and b[1] < a[2] + turn for a in baked for b in baked):
        found.append("an oven has another heat too soon")
    pace = re.search(r"^pace: (?:\{ mix: (\S+) \}|(\S+))$", text, re.M)
    for act in work:
        times = 1.0 if not pace or act["group"] == "instructor" else float(pace[2] or (pace[1] if act["step"] == "mix" else 1))
        wanted = math.ceil(hands[act["recipe"], act["step"]] * times - 1e-9)
        if act["minutes"] != wanted:
            found.append(f"{act['group']} has {act['minutes']} min for {act['step']}, not {wanted}")
    return found


def hands_of(folder):
    """The minutes of attended work of each step of each recipe."""
    import re
    found = {}
    for file in Path(folder, "recipes").glob("*.md"):
        for title, ticket in re.findall(r"^## ([^\n]+)\n~~~ticket\n(.*?)~~~", file.read_text(encoding="utf-8"), re.M | re.S):
            minutes = re.search(r"^hands: (\d+) min$", ticket, re.M)
            if minutes:
                found[file.stem, title.lower().replace(" ", "-")] = int(minutes[1])
    return found


def values(plan, start, end):
    """The objective is what the plan has."""
    before = pauses(plan)
    ready = {}
    for link in plan["links"]:
        if link["usual_min"] is not None:
            source = link["from"]
            clock = end[source] - before[session_of(plan, start[source])] + link["usual_min"]
            ready[link["to"]] = max(ready.get(link["to"], clock), clock)
    late = sum(max(0, start[to] - before[session_of(plan, start[to])] - at) for to, at in ready.items())
    short = sum(max(0, link["usual_min"] - start[link["to"]] + end[link["from"]])
                for link in plan["links"] if link["usual_min"] is not None)
    moments = len({start[act["id"]] for act in plan["activities"] if act["minutes"]})
    has = {"short": short, "moments": moments, "waiting": late, "end": max(end)}
    said = {one["name"]: one for one in plan["objective"]}
    found = [f"says {name} {said[name]['value']}, has {value}"
             for name, value in has.items() if said[name]["value"] != value]
    if any(one["bound"] > one["value"] for one in plan["objective"]):
        found.append("a bound above its value")
    return found + off_grid(plan, start)


def tied(plan, usual):
    """Activities that follow at once on another, or have a fixed time: no grid can be theirs."""
    grid = max(plan["grid_min"], 1)
    found = {act["id"] for act in plan["activities"] if all(a == b for a, b in act["windows"])}
    for link in plan["links"]:
        if link["most_min"] is None:
            continue
        least = link["least_min"]
        if usual and link["usual_min"] is not None:
            least = max(least, min(link["usual_min"], link["most_min"]))
        if link["most_min"] - least < grid:
            found.add(link["to"])
    return found


def off_grid(plan, start):
    """Whatever has room begins on the grid, unless the plan says that it gave way."""
    if "single minutes" in plan["standing"]:
        return []
    loose = tied(plan, True)
    return [f"{act['id']}: starts at {start[act['id']]}, off the grid" for act in plan["activities"]
            if act["minutes"] and act["id"] not in loose and start[act["id"]] % max(plan["grid_min"], 1)]


def question(model, plan, cp_model):
    """The plan's question for CP-SAT: starts, ends, and lateness of each activity."""
    acts = plan["activities"]
    horizon = max(span["to_min"] for span in plan["sessions"])
    start = [model.new_int_var_from_domain(cp_model.Domain.from_intervals(act["windows"]), "") for act in acts]
    end = [s + act["minutes"] for s, act in zip(start, acts)]
    opened = [[None] + [model.new_bool_var("") for _ in plan["sessions"][1:]] for _ in acts]
    for at, flags in enumerate(opened):
        for flag, span in list(zip(flags, plan["sessions"]))[1:]:
            model.add(start[at] >= span["from_min"]).only_enforce_if(flag)
            model.add(start[at] < span["from_min"]).only_enforce_if(~flag)
    steps = [b - a for a, b in zip(pauses(plan), pauses(plan)[1:])]
    clock = [start[at] - sum(f * p for f, p in zip(opened[at][1:], steps)) for at in range(len(acts))]
    for link in plan["links"]:
        a, b = link["from"], link["to"]
        model.add(start[b] >= end[a] + link["least_min"])
        if link["most_min"] is not None:
            model.add(start[b] <= end[a] + link["most_min"])
        if not link["crosses"]:
            for one, other in list(zip(opened[a], opened[b]))[1:]:
                model.add(one == other)
    for pool in plan["pools"]:
        uses = [(model.new_fixed_size_interval_var(start[t], acts[t]["minutes"] + after, ""), n)
                for t, n, after in pool["uses"] if acts[t]["minutes"] + after > 0]
        model.add_cumulative([u for u, _ in uses], [n for _, n in uses], pool["capacity"])
    for store in plan["stores"]:
        stays = []
        for at, n in store["stays"]:
            link = plan["links"][at]
            size = model.new_int_var(0, horizon, "")
            stays.append((model.new_interval_var(end[link["from"]], size, start[link["to"]], ""), n))
        model.add_cumulative([s for s, _ in stays], [n for _, n in stays], store["capacity"])
    oven_rival(model, plan, start, acts)
    late = []
    counted = {}
    for link in plan["links"]:
        if link["usual_min"] is not None:
            a = link["from"]
            counted.setdefault(link["to"], []).append(clock[a] + acts[a]["minutes"] + link["usual_min"])
    for to, ready in counted.items():
        last = model.new_int_var(-10**6, 10**6, "")
        model.add_max_equality(last, ready)
        late.append(model.new_int_var(0, 10**6, ""))
        model.add(late[-1] >= clock[to] - last)
    return start, end, late


def rival(plan, limit=20):
    """CP-SAT's verdict, least waiting and earliest end; `None` for what it cannot prove."""
    from ortools.sat.python import cp_model

    if any(not act["windows"] for act in plan["activities"]):
        return "never", None, None
    model = cp_model.CpModel()
    start, end, late = question(model, plan, cp_model)
    last = model.new_int_var(0, max(span["to_min"] for span in plan["sessions"]), "")
    for one in end:
        model.add(last >= one)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = limit
    status = solver.status_name(solver.solve(model))
    TIMES.append(solver.wall_time)
    if status == "INFEASIBLE":
        return "never", None, None
    if status == "UNKNOWN":
        return None, None, None
    model.minimize(last)
    status = solver.status_name(solver.solve(model))
    ends = round(solver.objective_value) if status == "OPTIMAL" else None
    # Any plan's waiting will do to hold a bound against: the least that is found soon.
    solver.parameters.max_time_in_seconds = 5
    model.minimize(sum(late))
    status = solver.status_name(solver.solve(model))
    waiting = round(solver.objective_value) if status in ("OPTIMAL", "FEASIBLE") else None
    return "fits", waiting, ends


def oven_rival(model, plan, start, acts):
    """Each bake in one oven, each oven at one heat."""
    ovens = plan["ovens"]
    inside = [[] for _ in range(ovens["count"])]
    for task, trays, heat, phases in ovens["bakes"]:
        there = [model.new_bool_var("") for _ in inside]
        model.add_exactly_one(there)
        for number, flag in enumerate(there):
            size = acts[task]["minutes"] + ovens["after_min"]
            span = model.new_optional_fixed_size_interval_var(start[task], size, flag, "")
            turned = acts[task]["minutes"] + max(ovens["after_min"], ovens["turn_min"])
            apart = model.new_optional_fixed_size_interval_var(start[task], turned, flag, "")
            inside[number].append((span, trays, heat, apart, phases, task, flag))
    for loads in inside:
        model.add_cumulative([one[0] for one in loads], [one[1] for one in loads], ovens["trays"])
        for at, one in enumerate(loads):
            for other in loads[:at]:
                if one[2] != other[2]:
                    model.add_no_overlap([one[3], other[3]])
                elif one[4] != other[4]:
                    model.add_no_overlap([one[0], other[0]])
                elif one[4] is not None:
                    # Both in this oven: one after the other, or begun together.
                    first, second, both = (model.new_bool_var("") for _ in range(3))
                    model.add_bool_or([first, second, both, ~one[6], ~other[6]])
                    size = acts[one[5]]["minutes"] + ovens["after_min"]
                    model.add(start[one[5]] + size <= start[other[5]]).only_enforce_if(first)
                    model.add(start[other[5]] + size <= start[one[5]]).only_enforce_if(second)
                    model.add(start[one[5]] == start[other[5]]).only_enforce_if(both)


def ask(tourier, folder, name):
    """The plan of a class as the program prints it."""
    answer = subprocess.run(
        [tourier, "--content", str(folder), "timetable", name, "--as", "json"],
        capture_output=True, text=True, encoding="utf-8", check=False,
    )
    return json.loads(answer.stdout) if answer.stdout else answer.stderr


def main():
    tourier = sys.argv[1]
    wanted = int(sys.argv[2]) if len(sys.argv) > 2 else 500
    compared = int(sys.argv[3]) if len(sys.argv) > 3 else 100
    level = int(sys.argv[4]) if len(sys.argv) > 4 else 0
    rng = random.Random(20270302)
    tally = Tally()
    plans = fitting = decided = seen = 0
    table = []
    own = []
    with tempfile.TemporaryDirectory() as work, ThreadPoolExecutor(1) as crew:
        batch = 0
        while fitting < wanted and batch < 200:
            folder = Path(work, str(batch))
            folder.mkdir()
            names = contents(folder, rng, 25)
            for name in names:
                begin = time.monotonic()
                plan = ask(tourier, folder, name)
                own.append(time.monotonic() - begin)
                where = f"batch {batch} {name}"
                if isinstance(plan, str):
                    tally.check(False, f"{where}: {plan[:300]}")
                    continue
                plans += 1
                if plan["verdict"] == "fits":
                    fitting += 1
                    text = Path(folder, "classes", f"{name}.yaml").read_text(encoding="utf-8")
                    for wrong in violations(plan) + besides(plan, text, hands_of(folder)) or [None]:
                        tally.check(wrong is None, f"{where}: {wrong}")
                if seen < compared:
                    seen += 1
                    decided += compare(tally, where, plan)
                    if plan["verdict"] == "fits":
                        more(tally, tourier, folder, name, where, rng)
                        if len(table) < level and "single minutes" not in plan["standing"] and "as usual" in plan["standing"]:
                            said = {one["name"]: one["value"] for one in plan["objective"]}
                            table.append((said, levels(plan)))
                    else:
                        explained(tally, tourier, folder, name, plan, where)
            batch += 1
    print(f"  {plans} classes, {fitting} plans checked, {seen} compared, {decided} decided by both")
    if TIMES:
        print(f"  seconds at the median: {statistics.median(own):.2f} of ours for the whole plan, {statistics.median(TIMES):.2f} of the rival's for any")
    if table:
        known = [(said, found) for said, found in table if found]
        near = sum(said["moments"] <= found[0] + 1 for said, found in known)
        wait = sum(found[2] is None or said["waiting"] <= 1.1 * found[2] for said, found in known)
        print(f"  level by level in {len(known)}: moments at most one more in {near}, waiting at most 1.1 times in {wait}")
        for said, found in known:
            print(f"    moments {said['moments']} and {found[0]}{'' if found[1] else ' (not proven)'}, waiting {said['waiting']} and {found[2]}")
    return tally.end()


def compare(tally, where, plan):
    """Holds a verdict and its bounds against the rival; whether both decide."""
    verdict, waiting, last = rival(plan)
    if verdict == "fits":
        tally.check(plan["verdict"] == "fits", f"{where}: {plan['verdict']}, the rival has a plan")
    elif verdict == "never":
        tally.check(plan["verdict"] != "fits", f"{where}: fits, the rival proves that none does")
    if plan["verdict"] == "fits":
        said = {one["name"]: one for one in plan["objective"]}
        if waiting is not None:
            tally.check(said["waiting"]["bound"] <= waiting, f"{where}: bound of {said['waiting']}, the rival has {waiting}")
        if last is not None:
            tally.check(said["end"]["bound"] <= last, f"{where}: bound of {said['end']}, the rival ends at {last}")
    return verdict is not None and plan["verdict"] != "unknown"


def levels(plan, limit=30):
    """On the plan's own grid, level by level: least short, fewest moments, least waiting; with
    whether each is proven. Rests are as usual where the plan has them so."""
    from ortools.sat.python import cp_model

    model = cp_model.CpModel()
    start, end, late = question(model, plan, cp_model)
    acts = plan["activities"]
    grid = max(plan["grid_min"], 1)
    loose = tied(plan, True)
    horizon = max(span["to_min"] for span in plan["sessions"])
    for act in acts:
        if act["minutes"] and act["id"] not in loose:
            model.add_modulo_equality(0, start[act["id"]], grid)
    for link in plan["links"]:
        if link["usual_min"] is not None:
            usual = link["usual_min"] if link["most_min"] is None else min(link["usual_min"], link["most_min"])
            model.add(start[link["to"]] >= end[link["from"]] + usual)
    used = {}
    for act in acts:
        if not act["minutes"]:
            continue
        at = act["id"]
        values = [m for a, b in act["windows"] for m in range(a, b + 1)
                  if at in loose or m % grid == 0]
        picks = {m: model.new_bool_var("") for m in values}
        model.add_exactly_one(picks.values())
        model.add(start[at] == sum(m * pick for m, pick in picks.items()))
        for m, pick in picks.items():
            used.setdefault(m, model.new_bool_var(""))
            model.add_implication(pick, used[m])
    for at, own in enumerate(plan["activities"]):
        model.add_hint(start[at], own["start_min"])
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = limit
    moments = sum(used.values())
    model.minimize(moments)
    status = solver.status_name(solver.solve(model))
    if status not in ("OPTIMAL", "FEASIBLE"):
        return None
    fewest, proven = round(solver.objective_value), status == "OPTIMAL"
    model.add(moments <= max(fewest, next(o["value"] for o in plan["objective"] if o["name"] == "moments")))
    model.minimize(sum(late))
    status = solver.status_name(solver.solve(model))
    least = round(solver.objective_value) if status in ("OPTIMAL", "FEASIBLE") else None
    return fewest, proven, least


def applied(text, remedy):
    """The class file with a remedy followed; nothing where it is about a recipe."""
    import re
    for part in re.split(r",? and |(?<=[a-z]), (?=with)", remedy.split(" it fits")[0]):
        part = part.strip().rstrip(",")
        if found := re.fullmatch(r"with (\d+) more (?:of this kit, )?([a-z ]+)", part):
            count, kit = int(found[1]), found[2]
            text, n = re.subn(rf"\b{kit}: (\d+)", lambda m: f"{kit}: {int(m[1]) + count}", text, count=1)
            assert n == 1, part
        elif found := re.fullmatch(r"with session (\d+) (\d+) min longer", part):
            lines = text.split("\n")
            at = lines.index("sessions:") + int(found[1])
            head, to = lines[at].rsplit(" to ", 1)
            hour, minute = map(int, to.split(":"))
            total = hour * 60 + minute + int(found[2])
            lines[at] = f"{head} to {total // 60 % 24:02}:{total % 60:02}"
            text = "\n".join(lines)
        elif found := re.fullmatch(r"without the (talks|breaks|tasting|slack)(?: at the end)?", part):
            key = {"talks": "talk", "breaks": "break"}.get(found[1], found[1])
            text = re.sub(rf"^{key}: .*\n", "", text, flags=re.M)
        elif part == "without the instructor's own batch":
            text = re.sub(r"  - recipe: \w+\n    each: demonstration\n    pieces: \d+\n", "", text)
        elif found := re.fullmatch(r"working in (\w+)", part):
            word = {"pairs": "pair", "threes": "three", "fours": "four", "fives": "five"}[found[1]]
            text = text.replace("work in: pairs", f"work in: {found[1]}").replace("each: pair", f"each: {word}")
        elif found := re.fullmatch(r"with no more than (\d+) bakers", part):
            text = re.sub(r"bakers: \d+", f"bakers: {found[1]}", text)
        elif found := re.fullmatch(r"without (\w+)", part):
            text = re.sub(rf"  - recipe: {found[1]}\n    each: \w+\n    pieces: \d+\n", "", text)
        elif found := re.fullmatch(r"with one more session, (\S+ \S+) to (\S+)", part):
            text = text.replace("bakers:", f"  - {found[1]} to {found[2]}\nbakers:", 1)
        else:
            return None
    return text


def explained(tally, tourier, folder, name, plan, where):
    """Every hopeless class gets a remedy; each remedy works; each reason goes with its cause."""
    import re
    text = Path(folder, "classes", f"{name}.yaml").read_text(encoding="utf-8")
    tally.check(bool(plan["remedies"]), f"{where}: {plan['verdict']}, and nothing would help")
    trials = [(remedy, applied(text, remedy), True) for remedy in plan["remedies"]]
    tally.check(plan["verdict"] == "never" or not plan["reasons"], f"{where}: reasons for what is not decided")
    for reason in plan["reasons"]:
        found = re.search(r": ([a-z ]+), of which there are (\d+); it fits with (\d+),", reason)
        if found:
            kit, need = found[1], int(found[3])
            for count, fits in ((need, True), (need - 1, False)):
                trials.append((f"{reason} ({count})", re.sub(rf"(?<=[ ,{{]){kit}: \d+", f"{kit}: {count}", text, count=1), fits))
    for number, (what, changed, fits) in enumerate(trials):
        if changed is None:
            continue
        trial = f"{name}x{number}"
        Path(folder, "classes", f"{trial}.yaml").write_text(changed, encoding="utf-8")
        answer = ask(tourier, folder, trial)
        Path(folder, "classes", f"{trial}.yaml").unlink()
        verdict = answer if isinstance(answer, str) else answer["verdict"]
        good = verdict == "fits" if fits else verdict != "fits"
        tally.check(good, f"{where}: {what}: {verdict[:200]}")


def more(tally, tourier, folder, name, where, rng):
    """More kit, more help or more time keeps a plan possible."""
    import re
    text = Path(folder, "classes", f"{name}.yaml").read_text(encoding="utf-8")
    changed = {}
    for kit in rng.sample(KIT, 2):
        grown = lambda found: f"{kit}: {int(found[1]) + rng.randint(1, 4)}"
        changed[kit] = re.sub(rf"(?<=[ ,{{]){kit}: (\d+)", grown, text, count=1)
    if "helpers:" not in text:
        changed["helpers"] = text + "helpers: 1\n"
    sessions = len(re.findall(r"^  - 2027", text, re.M))
    last = applied(text, f"with session {sessions} {rng.choice([5, 10, 25, 60])} min longer it fits")
    changed["time"] = last
    if sessions == 1:
        changed["a session"] = text.replace("bakers:", "  - 2027-03-05 17:00 to 21:00\nbakers:", 1)
    for number, (what, one) in enumerate(changed.items()):
        trial = f"{name}m{number}"
        Path(folder, "classes", f"{trial}.yaml").write_text(one, encoding="utf-8")
        answer = ask(tourier, folder, trial)
        Path(folder, "classes", f"{trial}.yaml").unlink()
        verdict = answer if isinstance(answer, str) else answer["verdict"]
        tally.check(verdict == "fits", f"{where}: with more ({what}) {verdict[:200]}")


if __name__ == "__main__":
    sys.exit(main())
