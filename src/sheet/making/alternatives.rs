//! The other ways to do a step, each in its own ticket: the rows that differ from the step's.

use crate::formula::{Scaling, in_ways};
use crate::measure::Label;
use crate::model::{Alternative, Step};
use crate::work::{Work, work};

use super::super::{OtherSheet, Ticked, TicketRow};
use super::{Context, content, prose, steps};

/// Every other way to do the step at a place, of which `ticket` is the one that stands.
pub(super) fn others(
    (at, step): (usize, &Step),
    ticket: &[TicketRow],
    work: &Work,
    context: Context,
) -> Vec<OtherSheet> {
    let others = step.others.iter();
    others.filter_map(|other| one(other, (at, step), ticket, (work, context))).collect()
}

fn one(
    other: &Alternative,
    (at, step): (usize, &Step),
    ticket: &[TicketRow],
    (written, context): (&Work, Context),
) -> Option<OtherSheet> {
    let name = other.name.value.as_str();
    let made = in_ways(written.recipe, &[name], context.book).ok()?;
    let scaling = Scaling::Batches(written.factor.clone());
    let made = work(&made, &scaling, context.book).ok()?;
    let own = *made.steps().get(at)?;
    let rows = steps::rows(own, at, &made, context);
    let mut rows: Vec<TicketRow> =
        rows.into_iter().filter(|row| !ticket.contains(row)).collect();
    rows.extend(water(at, [written, &made], context));
    let cue = |step: &Step| step.until.as_deref().map(|it| prose::cue(it, context.words));
    let until = cue(own).filter(|until| cue(step).as_ref() != Some(until));
    let prose = prose::blocks(&other.step.prose, Some(at), &made, context);
    Some(OtherSheet {
        name: context.words.author(name),
        ticket: rows,
        until: until.map(Box::new),
        prose,
    })
}

/// The water, where the other way warms the dough more or less.
fn water(at: usize, works: [&Work; 2], context: Context) -> Option<TicketRow> {
    let [before, after] = works.map(|work| {
        let mixed = crate::work::mixing_step(work) == Some(at);
        mixed.then(|| content::water(work, context)).flatten().map(|it| it.water)
    });
    let value: Label = after.filter(|after| before.as_ref() != Some(after))?;
    let term = context.words.get(Ticked::Water.word()).to_owned();
    Some(TicketRow { key: Ticked::Water, term, value })
}
