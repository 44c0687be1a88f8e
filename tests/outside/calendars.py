"""Calendar files of classes and of bakes at home, with PyPI `icalendar`.

    python3 calendars.py TOURIER SITE

Sources: RFC 5545 (events, time zones, alarms); the IANA time-zone database, as Python's own
`zoneinfo` reads it, for the instants. A plan's JSON gives local times; the calendar must
name the same instants, also across a change of clocks.
"""

import json
import re
import subprocess
import sys
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from icalendar import Calendar

from tally import Tally

# Bakes at home, ready on the mornings when the clocks go forward and back in Europe/Dublin
# (28 March and 31 October 2027), and on a plain day.
HOME = ["2027-03-28 10:00", "2027-10-31 10:00", "2027-05-09 12:30"]
RECIPES = ["crescents", "evening-buns", "rye-loaf"]


def told(tourier, *words):
    command = [tourier, "timetable", *words]
    return subprocess.run(command, capture_output=True, text=True, encoding="utf-8").stdout


def moments(plan, who):
    """When one, or anyone, does anything or watches: (from, to, attended) as instants, without
    the finish."""
    zone = ZoneInfo(plan["zone"])
    found = set()
    for act in plan["activities"]:
        if act["kind"] == "finish" or not act["minutes"]:
            continue
        if who and who not in [act["group"].split(",")[0], *act["watching"]]:
            continue
        span = [datetime.fromisoformat(act[key]).replace(tzinfo=zone) for key in ("start", "end")]
        found.add((*[moment.timestamp() for moment in span], act["kind"] != "bake"))
    return found


def check_calendar(where, text, plan, tally, who=None):
    calendar = Calendar.from_ical(text)
    lines = text.split("\r\n")
    tally.check(all(len(line.encode()) <= 75 for line in lines), f"{where}: a line over 75 bytes")
    tally.check(text.endswith("\r\n") and "\n" not in text.replace("\r\n", ""), f"{where}: line ends")
    tally.check(calendar.get("version") == "2.0" and calendar.get("prodid"), f"{where}: head")
    events = calendar.walk("VEVENT")
    names = [str(event["UID"]) for event in events]
    tally.check(len(set(names)) == len(names) > 0, f"{where}: {len(names)} events, names twice")
    check_zone(where, calendar, events, plan["zone"], tally)
    spans = {}
    for event in events:
        span = tuple(event[key].dt.timestamp() for key in ("DTSTART", "DTEND"))
        spans.setdefault(span, []).append(event)
    wanted = moments(plan, who)
    tally.check(set(spans) == {one[:2] for one in wanted}, f"{where}: {set(spans) ^ {o[:2] for o in wanted}}")
    for begin, end, attended in wanted:
        alarms = [alarm for event in spans.get((begin, end), []) for alarm in event.walk("VALARM")]
        before = any(alarm["TRIGGER"].dt < timedelta(0) for alarm in alarms)
        tally.check(before or not attended, f"{where}: no alarm at {datetime.fromtimestamp(begin)}")


def check_zone(where, calendar, events, name, tally):
    """The file's own time zone, taken alone, gives the instants of the database."""
    zones = calendar.walk("VTIMEZONE")
    tally.check([str(zone["TZID"]) for zone in zones] == [name], f"{where}: zones {zones}")
    for zone in zones:
        own = zone.to_tz(lookup_tzid=False)
        for event in events:
            tally.check(event["DTSTART"].params.get("TZID") == name, f"{where}: an event without its zone")
            plain = event["DTSTART"].dt.replace(tzinfo=None)
            offsets = {plain.replace(tzinfo=by).utcoffset() for by in (own, ZoneInfo(name))}
            tally.check(len(offsets) == 1, f"{where}: {plain} is {offsets} from UTC")


def main(tourier, site):
    tally = Tally()
    for folder in sorted(Path(f"{site}-instructor").glob("classes/*")):
        plan = json.loads(told(tourier, folder.name, "--as", "json"))
        names = {act["group"].split(",")[0] for act in plan["activities"]}
        files = sorted(folder.glob("plan*.ics"))
        tally.check(len(files) == len(names), f"{folder.name}: {len(files)} calendars for {names}")
        for file in files:
            number = file.stem.removeprefix("plan").lstrip("-")
            who = next((name for name in names if re.search(r"\d+$", name or "") and re.search(r"\d+$", name)[0] == number), "instructor")
            check_calendar(f"{folder.name} {who}", file.read_bytes().decode(), plan, tally, who)
    for recipe in RECIPES:
        for ready in HOME:
            plan = json.loads(told(tourier, recipe, "--ready", ready, "--as", "json"))
            text = subprocess.run([tourier, "timetable", recipe, "--ready", ready, "--as", "ics"],
                                  capture_output=True).stdout.decode()
            check_calendar(f"{recipe} {ready}", text, plan, tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
