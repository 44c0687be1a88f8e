//! When ovens are switched on and set to another heat, and what comes out of them while
//! nobody works: read off a plan.

use crate::measure::Temperature;
use crate::plan::question::class::Who;
use crate::plan::question::kind::Kind;

use super::rows::{Row, row};
use super::timetable::{Activity, Deed, Timetable};

impl Timetable {
    /// A row for each oven that is switched on or set to another heat, those of one minute
    /// and heat together; none where the class does not say how long that takes.
    pub(in crate::plan) fn heated(&self) -> Vec<Row> {
        let mut rows: Vec<Row> = Vec::new();
        let ovens = self.activities.iter().filter_map(|of| of.oven).max().unwrap_or(0);
        for oven in 1..=ovens {
            for (kind, span, heat) in self.settings(oven) {
                let same = |row: &&mut Row| {
                    (row.kind, row.from, row.to) == (kind, span.0, span.1)
                        && row.heat.as_ref() == Some(heat)
                };
                if let Some(known) = rows.iter_mut().find(same) {
                    known.ovens.push((oven, 0));
                    continue;
                }
                let helped = self.heating.helped;
                let who = if helped { Who::Helper } else { Who::Instructor };
                let deed = Deed { who, recipe: String::new(), step: None };
                let row = row(span, kind, &deed);
                rows.push(Row {
                    heat: Some(heat.clone()),
                    ovens: vec![(oven, 0)],
                    ..row
                });
            }
        }
        rows
    }

    /// What one oven is set to, from when on, and when it must be hot.
    fn settings(&self, oven: usize) -> Vec<(Kind, (i32, i32), &Temperature)> {
        let own = |of: &&Activity| of.oven == Some(oven) && of.kind == Kind::Bake;
        let bakes = self.activities.iter().filter(own);
        let mut bakes: Vec<((i32, i32), &Temperature)> =
            bakes.filter_map(|of| Some((of.span?, of.heat.as_ref()?))).collect();
        bakes.sort_by_key(|(span, _)| *span);
        let day = |minute: i32| self.clock.local(minute).date();
        let mut found = Vec::new();
        let mut before: Option<(i32, &Temperature)> = None;
        for ((from, to), heat) in bakes {
            match before.filter(|(end, _)| day(*end) == day(from)) {
                None => found.extend(
                    self.heating.on.map(|on| (Kind::OvenOn, (from - on, from), heat)),
                ),
                Some((end, other)) if other.dial() != heat.dial() => {
                    let turn = self.heating.turn.map(|turn| (from - turn).max(end));
                    found.extend(turn.map(|at| (Kind::OvenTo, (at, from), heat)));
                }
                Some(_) => {}
            }
            let end = before.map_or(to, |(end, _)| end.max(to));
            before = Some((end, heat));
        }
        found
    }

    /// The minutes within breaks at which something must come out of an oven.
    pub(in crate::plan) fn baked_in_breaks(&self) -> Vec<i32> {
        let spans = |kind: Kind| {
            let own = self.activities.iter().filter(move |of| of.kind == kind);
            own.filter_map(|of| of.span)
        };
        let inside =
            |end: &i32| spans(Kind::Break).any(|(from, to)| from < *end && *end < to);
        let mut ends: Vec<i32> =
            spans(Kind::Bake).map(|span| span.1).filter(inside).collect();
        ends.sort_unstable();
        ends.dedup();
        ends
    }
}
