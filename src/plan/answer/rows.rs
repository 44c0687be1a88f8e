//! A timetable by the clock: what starts when, groups that do the same together.

use crate::measure::Temperature;
use crate::model::Location;
use crate::plan::question::class::Who;
use crate::plan::question::kind::Kind;

use super::timetable::{Activity, Deed, Pause, StepName, Timetable};

/// One line of a plan by the clock.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// First minute.
    pub from: i32,
    /// The minute after the last.
    pub to: i32,
    /// What of it.
    pub kind: Kind,
    /// Who does it.
    pub who: Vec<Who>,
    /// Who watches.
    pub watching: Vec<Who>,
    /// The recipe.
    pub recipe: String,
    /// The step; `None` for the finish.
    pub step: Option<StepName>,
    /// The oven's heat.
    pub heat: Option<Temperature>,
    /// The ovens, from 1, each with its trays.
    pub ovens: Vec<(usize, i32)>,
    /// Where it rests, or is moved to or from.
    pub place: Option<Location>,
}

/// What stands somewhere when a session closes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Left {
    /// Where; `None` where the recipe does not say.
    pub place: Option<Location>,
    /// Whose it is.
    pub who: Who,
    /// The recipe.
    pub recipe: String,
    /// The step that it waits in.
    pub step: Option<StepName>,
    /// How many trays of it.
    pub trays: i32,
}

impl Timetable {
    /// Everything that someone does, by the clock.
    pub fn rows(&self) -> Vec<Row> {
        let mut rows: Vec<Row> = Vec::new();
        for activity in &self.activities {
            let Some((from, to)) = activity.span else { continue };
            let shown = activity.kind == Kind::Hands && !activity.watching.is_empty();
            let kind = if shown { Kind::Demonstration } else { activity.kind };
            if kind == Kind::Moment {
                continue;
            }
            let mut row = Row {
                watching: activity.watching.clone(),
                heat: activity.heat.clone(),
                place: activity.place.clone(),
                ..row((from, to), kind, &activity.deed)
            };
            if kind.is_gathering() {
                // All of them do it; none of them watches.
                let groups = std::mem::take(&mut row.watching);
                row.who = groups.into_iter().chain(row.who).collect();
            }
            join(&mut rows, row);
        }
        rows.extend(self.heated());
        for row in rows.iter_mut().filter(|row| row.kind == Kind::Bake) {
            row.ovens = self.ovens(row);
        }
        rows.sort_by_cached_key(order);
        rows
    }

    /// What rests or proofs, from when to when.
    pub fn rests(&self) -> Vec<Row> {
        let mut rows: Vec<Row> = Vec::new();
        for wait in &self.waits {
            let Some(span) = wait.span else { continue };
            let place = wait.place.clone();
            join(&mut rows, Row { place, ..row(span, Kind::Rest, &wait.deed) });
        }
        rows.sort_by_cached_key(order);
        rows
    }

    /// What stands where when a session closes.
    pub fn overnight(&self, session: usize) -> Vec<Left> {
        let Some((_, close)) = self.problem.sessions.get(session) else {
            return Vec::new();
        };
        let over = |wait: &&Pause| {
            wait.span.is_some_and(|(start, end)| start <= *close && end > *close)
        };
        let left = |wait: &Pause| Left {
            place: wait.place.clone(),
            who: wait.deed.who,
            recipe: wait.deed.recipe.clone(),
            step: wait.deed.step.clone(),
            trays: wait.trays,
        };
        self.waits.iter().filter(over).map(left).collect()
    }

    /// One's own part of a row: their own ovens and trays.
    pub fn own(&self, row: &Row, who: Who) -> Row {
        let mut own = Row { who: vec![who], ..row.clone() };
        if row.kind == Kind::Bake {
            own.ovens = self.ovens(&own);
        }
        own
    }

    /// The ovens of a bake's row, each with its trays.
    fn ovens(&self, row: &Row) -> Vec<(usize, i32)> {
        let mut ovens: Vec<(usize, i32)> = Vec::new();
        let inside = |of: &&Activity| {
            of.kind == Kind::Bake
                && of.span.is_some_and(|span| span.0 == row.from)
                && of.deed.recipe == row.recipe
                && of.deed.step == row.step
                && row.who.contains(&of.deed.who)
        };
        for activity in self.activities.iter().filter(inside) {
            let Some(oven) = activity.oven else { continue };
            match ovens.iter_mut().find(|(known, _)| *known == oven) {
                Some((_, sum)) => *sum += activity.trays,
                None => ovens.push((oven, activity.trays)),
            }
        }
        ovens.sort_unstable();
        ovens
    }
}

pub(in crate::plan) fn row((from, to): (i32, i32), kind: Kind, deed: &Deed) -> Row {
    Row {
        from,
        to,
        kind,
        who: vec![deed.who],
        watching: Vec::new(),
        recipe: deed.recipe.clone(),
        step: deed.step.clone(),
        heat: None,
        ovens: Vec::new(),
        place: None,
    }
}

pub(in crate::plan) fn order(row: &Row) -> (i32, i32, bool, Option<String>) {
    let title = row.step.as_ref().map(|step| step.title.clone());
    (row.from, row.to, row.kind != Kind::Demonstration, title)
}

/// Adds a row, or its people to one that says the same.
fn join(rows: &mut Vec<Row>, row: Row) {
    let same = |other: &&mut Row| {
        (other.from, other.to, other.kind, &other.step, &other.recipe)
            == (row.from, row.to, row.kind, &row.step, &row.recipe)
            && (&other.heat, &other.place) == (&row.heat, &row.place)
    };
    match rows.iter_mut().find(same) {
        Some(other) => {
            let new: Vec<Who> =
                row.who.into_iter().filter(|who| !other.who.contains(who)).collect();
            other.who.extend(new);
        }
        None => rows.push(row),
    }
}
