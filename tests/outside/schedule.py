"""Hold times and the critical path against PyPI `networkx`.

    python3 schedule.py WORK

A step lasts its hands-on time and its usual wait. The longest way through the graph of
steps is the time from first to last; a step is critical if no time is spare around it.
"""

import sys

import networkx

from tally import Tally, facts


def apart(steps, path):
    """Names of their own for the phases of one step (a proof in several places): each comes
    after the one before it, and what comes after the step after its last."""
    count = {}
    for step in steps:
        count[step["step"]] = count.get(step["step"], 0) + 1
    phase, seen = (lambda name, at: f"{name}/{at}" if count[name] > 1 else name), {}
    named = []
    for step in steps:
        name = step["step"]
        at = seen[name] = seen.get(name, 0) + 1
        after = [phase(b, at - 1) if b == name else phase(b, count[b]) for b in step["after"]]
        named.append({**step, "step": phase(name, at), "after": after})
    gone, way = {}, []
    for name in path:
        gone[name] = gone.get(name, 0) + 1
        way.append(phase(name, gone[name]))
    return named, way


def graph(steps):
    """A node a step; an arc carries how long the step before it lasts."""
    net = networkx.DiGraph()
    last = {step["step"]: step["hands_min"] + step["wait_min"][0] for step in steps}
    for step in steps:
        net.add_edge(step["step"], "the end", minutes=last[step["step"]])
        for before in step["after"]:
            net.add_edge(before, step["step"], minutes=last[before])
    return net, last


def longest(net):
    """Per node, the longest way that leads to it in minutes."""
    way = {}
    for node in networkx.topological_sort(net):
        arcs = net.in_edges(node, data="minutes")
        way[node] = max((way[a] + m for a, _, m in arcs), default=0)
    return way


def check(name, time, tally):
    steps, path = apart(time["steps"], time["critical_path"])
    net, last = graph(steps)
    if not networkx.is_directed_acyclic_graph(net):
        tally.check(False, f"{name}: the steps go round in a ring")
        return
    start, elapsed = longest(net), networkx.dag_longest_path_length(net, "minutes")
    said = time["elapsed_min"]
    tally.check(said == elapsed, f"{name}: {said} min, networkx {elapsed}")
    # From the other end: how long it takes from a step's start to the end of all.
    back = longest(net.reverse())
    for step in steps:
        key = step["step"]
        early = step["start_min"] == start[key]
        tally.check(early, f"{name}: {key} at {step['start_min']}, networkx {start[key]}")
        spare = elapsed - start[key] - back[key]
        critical = step["critical"] == (spare == 0)
        tally.check(critical, f"{name}: {key} critical {step['critical']}, spare {spare}")
    joined = all(net.has_edge(a, b) for a, b in zip(path, path[1:]))
    tally.check(joined, f"{name}: the critical path is broken: {path}")
    length = sum(last[step] for step in path)
    tally.check(length == elapsed, f"{name}: the critical path lasts {length} min")
    hands = sum(step["hands_min"] for step in time["steps"])
    tally.check(hands == time["hands_min"], f"{name}: hands-on {hands} min in all")
    wait = sum(s["wait_min"][0] for s in steps if s["step"] in path)
    tally.check(wait == time["wait_min"], f"{name}: {wait} min of waiting on the path")


def main(work):
    tally = Tally()
    for name, recipe in facts(work).items():
        check(name, recipe["time"], tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
