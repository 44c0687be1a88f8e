//! A plan as a calendar file (RFC 5545): one event for everything that someone does, an
//! alarm at each attended step, and the zone's own clock changes within the time of it.

use jiff::tz::TimeZone;
use jiff::{Timestamp, ZonedDateTime};

use crate::plan::{Clock, Row, Span, Timetable, together};

/// A line may have so many bytes (RFC 5545, 3.1).
const MOST_BYTES: usize = 75;
/// Minutes before an attended step at which its alarm sounds.
const ALARM: i32 = 5;

/// The calendar of a plan; without a plan, of its sessions.
pub fn calendar(plan: &Timetable) -> Option<String> {
    let start: jiff::civil::DateTime = plan.start.parse().ok()?;
    let clock = Clock::new(start, plan.zone.as_deref())?;
    let mut rows: Vec<Row> = plan.rows();
    rows.retain(|row| row.kind != "finish");
    if rows.is_empty() {
        rows = plan.sessions.iter().map(|span| session(span, plan)).collect();
    }
    let (first, last) =
        (rows.first()?.start_min, rows.iter().map(|row| row.end_min).max()?);
    let mut lines = Lines::default();
    for line in
        ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//tourier//class and home plans//EN"]
    {
        lines.put(line);
    }
    if clock.zone().is_some() {
        zone(&mut lines, &clock.moment(first), &clock.moment(last));
    }
    for (at, row) in rows.iter().enumerate() {
        event(&mut lines, (at, row), plan, &clock);
    }
    lines.put("END:VCALENDAR");
    Some(lines.text)
}

/// A session as one event.
fn session(span: &Span, plan: &Timetable) -> Row {
    Row {
        start_min: span.from_min,
        end_min: span.to_min,
        start: span.from.clone(),
        end: span.to.clone(),
        kind: "hands",
        who: vec!["you".into()],
        watching: Vec::new(),
        recipe: String::new(),
        title: plan.title.clone(),
        oven: None,
        place: None,
    }
}

fn event(lines: &mut Lines, (at, row): (usize, &Row), plan: &Timetable, clock: &Clock) {
    let stamp = clock.moment(0).timestamp().strftime("%Y%m%dT%H%M%SZ").to_string();
    lines.put("BEGIN:VEVENT");
    lines.put(&format!(
        "UID:{}-{at}-{}@tourier",
        plan.name,
        clock.stamp(0).replace([':', '-'], "")
    ));
    lines.put(&format!("DTSTAMP:{stamp}"));
    lines.put(&format!("DTSTART{}", time(clock, row.start_min)));
    lines.put(&format!("DTEND{}", time(clock, row.end_min.max(row.start_min + 1))));
    let who = together(&row.who);
    let title =
        if who == "you" { row.title.clone() } else { format!("{who}: {}", row.title) };
    lines.put(&format!("SUMMARY:{}", escaped(&title)));
    let oven = row.oven.as_deref().map(|oven| format!(" ({oven})")).unwrap_or_default();
    lines.put(&format!("DESCRIPTION:{}", escaped(&format!("{}{oven}", plan.title))));
    if row.kind != "bake" || who == "you" {
        lines.put("BEGIN:VALARM");
        lines.put("ACTION:DISPLAY");
        lines.put(&format!("TRIGGER:-PT{ALARM}M"));
        lines.put(&format!("DESCRIPTION:{}", escaped(&row.title)));
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
