//! A timetable by the clock: what starts when, groups that do the same together.

use serde::Serialize;

use super::timetable::{Activity, Timetable};

/// One line of a plan by the clock.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Row {
    /// First minute.
    pub start_min: i32,
    /// The minute after the last.
    pub end_min: i32,
    /// From, as a local time: `2027-03-02T18:00`.
    pub start: String,
    /// To, as a local time.
    pub end: String,
    /// `hands`, `bake`, `demonstration`, `into`, `out`, `move`, `rest` or `finish`.
    pub kind: &'static str,
    /// Who does it.
    pub who: Vec<String>,
    /// Who watches.
    pub watching: Vec<String>,
    /// The recipe.
    pub recipe: String,
    /// What.
    pub title: String,
    /// Heat, and ovens with their trays: `190 °C: oven 1 with 4 trays`.
    pub oven: Option<String>,
    /// Where it rests.
    pub place: Option<String>,
}

impl Timetable {
    /// Everything that someone does, by the clock.
    pub fn rows(&self) -> Vec<Row> {
        let mut rows: Vec<Row> = Vec::new();
        for activity in &self.activities {
            let Some((start_min, end_min)) = activity.start_min.zip(activity.end_min)
            else {
                continue;
            };
            if matches!(activity.kind, "moment") {
                continue;
            }
            let shown = activity.kind == "hands" && !activity.watching.is_empty();
            let row = Row {
                start_min,
                end_min,
                start: activity.start.clone().unwrap_or_default(),
                end: activity.end.clone().unwrap_or_default(),
                kind: if shown { "demonstration" } else { activity.kind },
                who: vec![activity.group.clone()],
                watching: activity.watching.clone(),
                recipe: activity.recipe.clone(),
                title: title(activity),
                oven: activity.heat.clone(),
                place: None,
            };
            join(&mut rows, row);
        }
        for row in rows.iter_mut().filter(|row| row.kind == "bake") {
            row.oven = self.oven_words(row);
        }
        rows.sort_by_cached_key(order);
        rows
    }

    /// What rests or proofs, from when to when.
    pub fn rests(&self) -> Vec<Row> {
        let mut rows: Vec<Row> = Vec::new();
        for wait in &self.waits {
            let Some((start_min, end_min)) = wait.start_min.zip(wait.end_min) else {
                continue;
            };
            let row = Row {
                start_min,
                end_min,
                start: wait.start.clone().unwrap_or_default(),
                end: wait.end.clone().unwrap_or_default(),
                kind: "rest",
                who: vec![wait.group.clone()],
                watching: Vec::new(),
                recipe: wait.recipe.clone(),
                title: wait.title.clone(),
                oven: None,
                place: wait.place.clone(),
            };
            join(&mut rows, row);
        }
        rows.sort_by_cached_key(order);
        rows
    }

    /// What stands where when a session closes: place, who, what, trays.
    pub fn overnight(&self, session: usize) -> Vec<(String, String, String, i32)> {
        let Some(close) = self.sessions.get(session).map(|span| span.to_min) else {
            return Vec::new();
        };
        let over = self.waits.iter().filter(|wait| {
            let span = wait.start_min.zip(wait.end_min);
            span.is_some_and(|(start, end)| start <= close && end > close)
        });
        over.map(|wait| {
            let place = wait.place.clone().unwrap_or_default();
            (place, wait.group.clone(), wait.title.clone(), wait.trays)
        })
        .collect()
    }

    fn oven_words(&self, row: &Row) -> Option<String> {
        let heat = row.oven.clone().unwrap_or_default();
        let mut trays: Vec<(usize, i32)> = Vec::new();
        let inside = self.activities.iter().filter(|of| {
            of.kind == "bake"
                && of.start_min == Some(row.start_min)
                && of.title == row.title
                && of.recipe == row.recipe
                && row.who.contains(&of.group)
        });
        for activity in inside {
            let Some(oven) = activity.oven else { continue };
            let load = activity.uses.get("oven tray").copied().unwrap_or(1);
            match trays.iter_mut().find(|(known, _)| *known == oven) {
                Some((_, sum)) => *sum += load,
                None => trays.push((oven, load)),
            }
        }
        trays.sort_unstable();
        let each = trays.iter().map(|(oven, trays)| {
            let plural = if *trays == 1 { "" } else { "s" };
            format!("oven {oven} with {trays} tray{plural}")
        });
        let ovens: Vec<String> = each.collect();
        let parts = [heat, ovens.join(", ")].into_iter().filter(|part| !part.is_empty());
        Some(parts.collect::<Vec<_>>().join(": "))
    }
}

/// What is done, in words.
fn title(activity: &Activity) -> String {
    let title = &activity.title;
    match (activity.kind, &activity.place) {
        ("finish", _) => "Done".into(),
        ("into" | "move", Some(place)) => format!("{title}: move to the {place}"),
        ("out", Some(place)) => format!("{title}: take from the {place}"),
        _ => title.clone(),
    }
}

fn order(row: &Row) -> (i32, i32, bool, String) {
    (row.start_min, row.end_min, row.kind != "demonstration", row.title.clone())
}

/// Adds a row, or its people to one that says the same.
fn join(rows: &mut Vec<Row>, row: Row) {
    let same = |other: &&mut Row| {
        (other.start_min, other.end_min, other.kind, &other.title, &other.recipe)
            == (row.start_min, row.end_min, row.kind, &row.title, &row.recipe)
            && other.oven == row.oven
    };
    match rows.iter_mut().find(same) {
        Some(other) => {
            let new: Vec<String> =
                row.who.into_iter().filter(|who| !other.who.contains(who)).collect();
            other.who.extend(new);
        }
        None => rows.push(row),
    }
}

/// `pairs 1–3, 5`: names that differ by their last number, drawn together.
pub fn together(who: &[String]) -> String {
    let mut parts: Vec<String> = Vec::new();
    let mut at = 0;
    while at < who.len() {
        let Some((word, number)) = numbered(&who[at]) else {
            parts.push(who[at].clone());
            at += 1;
            continue;
        };
        let mut numbers = vec![number];
        while let Some((next, number)) =
            who.get(at + numbers.len()).and_then(|who| numbered(who))
        {
            if next != word {
                break;
            }
            numbers.push(number);
        }
        at += numbers.len();
        let plural = if numbers.len() > 1 { "s" } else { "" };
        parts.push(format!("{word}{plural} {}", runs(&mut numbers)));
    }
    parts.join(", ")
}

fn numbered(name: &str) -> Option<(&str, u32)> {
    let (word, number) = name.split_once(' ')?;
    Some((word, number.parse().ok()?))
}

/// `1–3, 5`.
fn runs(numbers: &mut [u32]) -> String {
    numbers.sort_unstable();
    let mut parts: Vec<(u32, u32)> = Vec::new();
    for number in numbers.iter().copied() {
        match parts.last_mut() {
            Some(last) if last.1 + 1 == number => last.1 = number,
            _ => parts.push((number, number)),
        }
    }
    let words = parts.iter().map(|(from, to)| match to - from {
        0 => from.to_string(),
        1 => format!("{from}, {to}"),
        _ => format!("{from}–{to}"),
    });
    words.collect::<Vec<_>>().join(", ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_drawn_together() {
        let who =
            ["pair 1", "pair 2", "pair 3", "pair 5", "instructor"].map(String::from);
        assert_eq!(together(&who), "pairs 1–3, 5, instructor");
        assert_eq!(together(&["pair 2".into()]), "pair 2");
        assert_eq!(together(&["you".into()]), "you");
    }
}
