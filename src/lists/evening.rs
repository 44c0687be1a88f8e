//! The rest of an evening for a terminal: what is new, what comes next, what comes later.

use crate::sheet::{LineSheet, NowFact, PlanSheet};
use crate::words::Words;

use super::text::{capital, said, timetable_row};

/// The rest of a day under way.
pub(super) fn evening_text(plan: &PlanSheet, now: &NowFact, words: &Words) -> String {
    let values = [("title", &*plan.title), ("time", &*now.time), ("day", &*now.day)];
    let head = words.fill("evening-head", &values);
    let mut text = format!("{head}\n{}\n{}", capital(&plan.standing), said(plan, words));
    text += &changed(now, words);
    let day = plan.rows.first().map_or("", |row| &row.date);
    let soon = |row: &&LineSheet| row.from_min < now.next_min;
    let (next, later): (Vec<_>, Vec<_>) = plan.rows.iter().partition(soon);
    text += &format!("\n{}\n", words.get("evening-next"));
    if next.is_empty() {
        text += &format!("  {}\n", words.get("evening-nothing"));
    }
    for row in next {
        text += &timetable_row(row, words);
    }
    if !later.is_empty() {
        text += &format!("\n{}\n", words.get("evening-later"));
    }
    let mut last = day;
    for row in later {
        if row.date != last {
            last = &row.date;
            text += &format!("\n{last}\n");
        }
        text += &timetable_row(row, words);
    }
    text
}

fn changed(now: &NowFact, words: &Words) -> String {
    if now.changed.is_empty() {
        return format!("{}\n", words.get("evening-unchanged"));
    }
    let mut text = format!("\n{}\n", words.get("evening-changed"));
    for it in &now.changed {
        let values = [
            ("who", &*it.who),
            ("what", &*it.what),
            ("from", &*it.from),
            ("to", &*it.to),
            ("why", &*it.why),
        ];
        text += &format!("  {}\n", words.fill("evening-shift", &values));
    }
    text
}
