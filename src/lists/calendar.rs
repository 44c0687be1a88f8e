//! A plan as calendar files (RFC 5545), one for each who takes part: an event for everything
//! that they do, an alarm at each attended step, and the zone's own clock changes within the
//! time of it.

use jiff::tz::TimeZone;
use jiff::{Timestamp, ZonedDateTime};

use crate::sheet::{Clock, Kind, LineSheet, PlanSheet, Who};
use crate::words::Words;

/// A line may have so many bytes (RFC 5545, 3.1).
const MOST_BYTES: usize = 75;
/// Minutes before an attended step at which its alarm sounds.
const ALARM: i32 = 5;

/// One event.
struct Event<'a> {
    /// First minute, and the minute after the last.
    span: (i32, i32),
    /// What it is called.
    summary: String,
    /// What is said of it.
    about: String,
    /// What its alarm says; `None` where none sounds.
    alarm: Option<&'a str>,
}

/// The calendar of one who takes part in a plan; without a plan, of its sessions. What the
/// instructor's helper does is the instructor's to see to.
pub fn calendar(plan: &PlanSheet, who: Who, words: &Words) -> Option<String> {
    let own = |one: &Who| match one {
        Who::Helper => who == Who::Instructor,
        Who::Baker(group, _) => *one == who || who == Who::Group(*group),
        Who::Instructor | Who::Group(_) | Who::Home => *one == who,
    };
    let rows = plan.rows.iter().filter(|row| row.kind != Kind::Finish);
    let rows = rows.filter(|row| row.people.iter().any(own));
    let events: Vec<Event> = rows.map(|row| row_event(row, plan, words)).collect();
    let name = match who {
        Who::Group(group) => format!("{}-{}", plan.name, group + 1),
        Who::Baker(group, baker) => format!("{}-{}-{}", plan.name, group + 1, baker + 1),
        Who::Instructor | Who::Helper | Who::Home => plan.name.clone(),
    };
    if events.is_empty() { sessions(plan) } else { told(plan, &name, &events) }
}

/// The calendar of a class's sessions, with nothing of what is done in them.
pub fn sessions(plan: &PlanSheet) -> Option<String> {
    let session = |span: &crate::sheet::Span| Event {
        span: (span.from_min, span.to_min),
        summary: plan.title.clone(),
        about: plan.title.clone(),
        alarm: Some(&plan.title),
    };
    let events: Vec<Event> = plan.sessions.iter().map(session).collect();
    told(plan, &format!("{}-session", plan.name), &events)
}

/// Events as a calendar; `name` begins what they are known by.
fn told(plan: &PlanSheet, name: &str, events: &[Event]) -> Option<String> {
    let first = events.first()?.span.0;
    let last = events.iter().map(|event| event.span.1).max()?;
    let clock = &plan.clock;
    let mut lines = Lines::default();
    for line in
        ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//tourier//class and home plans//EN"]
    {
        lines.put(line);
    }
    if clock.zone().is_some() {
        zone(&mut lines, &clock.moment(first), &clock.moment(last));
    }
    for (at, one) in events.iter().enumerate() {
        event(&mut lines, (at, one), name, clock);
    }
    lines.put("END:VCALENDAR");
    Some(lines.text)
}

/// What someone does as an event. Whose it is needs no word where there is only one; an
/// oven load sounds no alarm but for the one who is alone with it.
fn row_event<'a>(row: &'a LineSheet, plan: &PlanSheet, words: &Words) -> Event<'a> {
    let summary = if plan.home {
        row.what.clone()
    } else {
        words.fill("plan-summary", &[("who", &row.who), ("what", &row.what)])
    };
    let about = row.oven.as_deref().map_or_else(
        || plan.title.clone(),
        |oven| words.fill("plan-about", &[("title", &plan.title), ("oven", oven)]),
    );
    let alarm = (row.kind != Kind::Bake || plan.home).then_some(row.what.as_str());
    Event { span: (row.from_min, row.to_min), summary, about, alarm }
}

fn event(lines: &mut Lines, (at, event): (usize, &Event), name: &str, clock: &Clock) {
    let stamp = clock.moment(0).timestamp().strftime("%Y%m%dT%H%M%SZ").to_string();
    let (from, to) = event.span;
    lines.put("BEGIN:VEVENT");
    let begins = clock.stamp(0).replace([':', '-'], "");
    lines.put(&format!("UID:{name}-{at}-{begins}@tourier"));
    lines.put(&format!("DTSTAMP:{stamp}"));
    lines.put(&format!("DTSTART{}", time(clock, from)));
    lines.put(&format!("DTEND{}", time(clock, to.max(from + 1))));
    lines.put(&format!("SUMMARY:{}", escaped(&event.summary)));
    lines.put(&format!("DESCRIPTION:{}", escaped(&event.about)));
    if let Some(said) = event.alarm {
        lines.put("BEGIN:VALARM");
        lines.put("ACTION:DISPLAY");
        lines.put(&format!("TRIGGER:-PT{ALARM}M"));
        lines.put(&format!("DESCRIPTION:{}", escaped(said)));
        lines.put("END:VALARM");
    }
    lines.put("END:VEVENT");
}

/// `;TZID=Europe/Dublin:20270302T180000`, or a local time where no zone is known.
fn time(clock: &Clock, minute: i32) -> String {
    let local = clock.local(minute).strftime("%Y%m%dT%H%M%S").to_string();
    match clock.zone() {
        Some(zone) => format!(";TZID={zone}:{local}"),
        None => format!(":{local}"),
    }
}

/// The zone with each change of its clocks from the one before the plan to its end.
fn zone(lines: &mut Lines, first: &ZonedDateTime, last: &ZonedDateTime) {
    let zone = first.time_zone();
    lines.put("BEGIN:VTIMEZONE");
    lines.put(&format!("TZID:{}", zone.iana_name().unwrap_or("UTC")));
    let before: Vec<Timestamp> = zone
        .preceding(first.timestamp())
        .take(1)
        .map(|change| change.timestamp())
        .collect();
    let within = zone.following(first.timestamp()).map(|change| change.timestamp());
    let within = within.take_while(|at| *at <= last.timestamp());
    let mut changes: Vec<Timestamp> = before.into_iter().chain(within).collect();
    if changes.is_empty() {
        changes.push(Timestamp::UNIX_EPOCH);
    }
    changes.dedup();
    changes.iter().for_each(|at| change(lines, zone, *at));
    lines.put("END:VTIMEZONE");
}

/// One change: from which offset to which, and when on the old clock.
fn change(lines: &mut Lines, zone: &TimeZone, at: Timestamp) {
    let info = zone.to_offset_info(at);
    let to = info.offset();
    let just_before = Timestamp::from_second(at.as_second() - 1).unwrap_or(at);
    let from = zone.to_offset(just_before);
    // Ireland's summer time is its standard time by law; calendars want the later clock.
    let kind = if to.seconds() > from.seconds() { "DAYLIGHT" } else { "STANDARD" };
    lines.put(&format!("BEGIN:{kind}"));
    let local = from.to_datetime(at).strftime("%Y%m%dT%H%M%S").to_string();
    lines.put(&format!("DTSTART:{local}"));
    lines.put(&format!("TZOFFSETFROM:{}", offset(from.seconds())));
    lines.put(&format!("TZOFFSETTO:{}", offset(to.seconds())));
    lines.put(&format!("TZNAME:{}", info.abbreviation()));
    lines.put(&format!("END:{kind}"));
}

fn offset(seconds: i32) -> String {
    let sign = if seconds < 0 { '-' } else { '+' };
    let minutes = seconds.abs() / 60;
    format!("{sign}{:02}{:02}", minutes / 60, minutes % 60)
}

/// Backslash, semicolon, comma and line end (RFC 5545, 3.3.11).
fn escaped(text: &str) -> String {
    let slashed = text.replace('\\', "\\\\").replace(';', "\\;").replace(',', "\\,");
    slashed.replace("\r\n", "\\n").replace(['\n', '\r'], "\\n")
}

/// Lines folded as the standard wants them.
#[derive(Default)]
struct Lines {
    text: String,
}

impl Lines {
    fn put(&mut self, line: &str) {
        let mut used = 0;
        for letter in line.chars() {
            if used + letter.len_utf8() > MOST_BYTES {
                self.text.push_str("\r\n ");
                used = 1;
            }
            used += letter.len_utf8();
            self.text.push(letter);
        }
        self.text.push_str("\r\n");
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_lines_are_folded_between_letters() {
        let mut lines = Lines::default();
        lines.put(&"é".repeat(60));
        assert!(lines.text.split("\r\n").all(|line| line.len() <= MOST_BYTES));
        assert_eq!(lines.text.replace("\r\n ", "").trim_end(), "é".repeat(60));
    }

    #[test]
    fn text_is_escaped() {
        assert_eq!(escaped("a;b,c\\d\ne"), "a\\;b\\,c\\\\d\\ne");
    }
}
