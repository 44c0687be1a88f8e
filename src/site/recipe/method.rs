//! The method: steps with their tickets, ingredients and drawings, and prose between.

use serde::Serialize;

use crate::draw::FigureKind;
use crate::measure::{Label, show};
use crate::sheet::{self, Block, OtherSheet, Sheet, StepSheet, Ticked, TicketRow, Watch};
use crate::words::Words;

use crate::site::figure::Drawing;
use crate::site::html::Html;
use crate::site::picture::{pictures, stages};
use crate::site::prose::Writer;
use crate::site::vary::Batches;

/// What stands under one heading.
#[derive(Serialize)]
pub(super) struct Chapter<'a> {
    title: &'a str,
    /// Its language, where it is not the page's.
    title_in: Option<&'a str>,
    prose: Html,
    /// Its place among the parts, from 1: what its heading is known by.
    place: usize,
    step: Option<Step<'a>>,
}

/// The step after another one.
#[derive(Serialize)]
struct Next<'a> {
    name: &'a str,
    title: &'a str,
    /// The title's language, where it is not the page's.
    title_in: Option<&'a str>,
}

/// What a step has besides its heading and its prose.
#[derive(Serialize)]
struct Step<'a> {
    name: &'a str,
    number: usize,
    next: Option<Next<'a>>,
    ticket: Vec<TicketLine<'a>>,
    ingredients: Vec<Ingredient<'a>>,
    watch: Option<&'a Watch>,
    /// How to tell that it is done; empty where nothing is said.
    until: Html,
    /// The pictures to look at; empty where there are none.
    pictures: Html,
    /// The pictures of a shaping's stages; empty where there are none.
    stages: Html,
    /// The waits to set a clock for: one for each length that some batch has.
    clocks: Vec<Clock>,
    drawings: Vec<Drawing>,
    /// Other ways to do it, folded away.
    others: Vec<Other<'a>>,
}

/// Another way to do a step.
#[derive(Serialize)]
struct Other<'a> {
    name: &'a str,
    ticket: Vec<TicketLine<'a>>,
    /// How to tell that it is done; empty where that is as in the step.
    until: Html,
    prose: Html,
}

/// A wait to set a clock for.
#[derive(Serialize)]
struct Clock {
    minutes: u64,
    /// The same in words.
    words: String,
    /// The batches that wait so long, as classes; empty for all.
    classes: String,
}

/// One row of a ticket.
#[derive(Serialize)]
struct TicketLine<'a> {
    key: &'a str,
    term: &'a str,
    value: Html,
    /// The batches that have it, as classes; empty for all.
    classes: String,
}

/// An ingredient of this step.
#[derive(Serialize)]
struct Ingredient<'a> {
    amount: Html,
    /// What a count weighs; empty where the amount is no count.
    weight: Html,
    /// What goes on or into each piece; empty where nothing does.
    each: Html,
    name: &'a str,
}

/// The method up to its last step, and the prose after it. Prose under a heading is
/// written by `writer`, whose level is the one below a step's heading.
pub(super) fn parts<'a>(
    batches: &Batches<'a>,
    writer: &Writer,
    drawings: &[Drawing],
) -> (Vec<Chapter<'a>>, Vec<Chapter<'a>>) {
    let Some(first) = batches.sheets.first() else { return (Vec::new(), Vec::new()) };
    let part = |(index, one): (usize, &'a sheet::Part)| {
        let step = match one {
            sheet::Part::Step(own) => {
                let sights =
                    pictures((writer.media, writer.words), &own.pictures, writer.root);
                let shapes = first.handwork.shapes.iter();
                let shape = shapes.filter(|shape| shape.step == own.step);
                let pictures: Vec<_> = shape.flat_map(|it| it.pictures.clone()).collect();
                let stages = stages(writer.media, &pictures, writer.root);
                Some(Step {
                    pictures: sights,
                    stages,
                    others: others(index, own, batches, writer),
                    ..step(index, own, batches, drawings, writer.words)
                })
            }
            sheet::Part::Prose { .. } => None,
        };
        let texts: Vec<_> = batches.sheets.iter().map(|at| prose(at, index)).collect();
        Chapter {
            title: title(one),
            title_in: first.part_in(index),
            prose: writer.of_step(named(one), &texts),
            place: index + 1,
            step,
        }
    };
    let mut parts: Vec<Chapter> = first.parts.iter().enumerate().map(part).collect();
    let mut next = None;
    for part in parts.iter_mut().rev() {
        if let Some(step) = &mut part.step {
            let own =
                Next { name: step.name, title: part.title, title_in: part.title_in };
            step.next = next.replace(own);
        }
    }
    let last = parts.iter().rposition(|part| part.step.is_some());
    let notes = parts.split_off(last.map_or(0, |last| last + 1));
    (parts, notes)
}

/// The name of a step.
fn named(part: &sheet::Part) -> Option<&str> {
    match part {
        sheet::Part::Step(step) => Some(&step.step),
        sheet::Part::Prose { .. } => None,
    }
}

fn title(part: &sheet::Part) -> &str {
    match part {
        sheet::Part::Step(step) => &step.title,
        sheet::Part::Prose { title, .. } => title,
    }
}

fn prose(sheet: &Sheet, index: usize) -> &[Block<Label>] {
    match sheet.parts.get(index) {
        Some(sheet::Part::Step(step)) => &step.prose,
        Some(sheet::Part::Prose { content, .. }) => content,
        None => &[],
    }
}

/// The step that is part `index` of a sheet.
fn at(sheet: &Sheet, index: usize) -> Option<&StepSheet> {
    match sheet.parts.get(index)? {
        sheet::Part::Step(step) => Some(step),
        sheet::Part::Prose { .. } => None,
    }
}

fn step<'a>(
    index: usize,
    step: &'a StepSheet,
    batches: &Batches<'a>,
    drawings: &[Drawing],
    words: &Words,
) -> Step<'a> {
    let own = |drawing: &&Drawing| {
        drawing.step.as_deref() == Some(&step.step)
            && drawing.kind != FigureKind::Timeline
    };
    Step {
        name: &step.step,
        number: step.number,
        next: None,
        ticket: ticket(index, batches),
        ingredients: ingredients(index, step, batches),
        watch: step.watch.as_ref(),
        until: batches.label(|sheet| at(sheet, index)?.until.as_deref()),
        pictures: Html::default(),
        stages: Html::default(),
        clocks: clocks(&step.step, batches, words),
        drawings: drawings.iter().filter(own).cloned().collect(),
        others: Vec::new(),
    }
}

/// The other ways to do a step, at all sizes.
fn others<'a>(
    index: usize,
    step: &'a StepSheet,
    batches: &Batches<'a>,
    writer: &Writer,
) -> Vec<Other<'a>> {
    fn find(sheet: &Sheet, [index, way]: [usize; 2]) -> Option<&OtherSheet> {
        at(sheet, index)?.others.get(way)
    }
    fn own(sheet: &Sheet, place: [usize; 2], key: Ticked) -> Option<&TicketRow> {
        find(sheet, place)?.ticket.iter().find(|own| own.key == key)
    }
    let other = |(way, other): (usize, &'a OtherSheet)| {
        let place = [index, way];
        let row = |row: &'a TicketRow| TicketLine {
            key: row.key.word(),
            term: &row.term,
            value: batches.label(|sheet| own(sheet, place, row.key).map(|it| &it.value)),
            classes: batches.classes(|sheet| own(sheet, place, row.key).is_some()),
        };
        let prose = |sheet: &&'a Sheet| -> &'a [Block<Label>] {
            find(sheet, place).map_or(&[][..], |other| &other.prose)
        };
        let texts: Vec<_> = batches.sheets.iter().map(prose).collect();
        Other {
            name: &other.name,
            ticket: other.ticket.iter().map(row).collect(),
            until: batches.label(|sheet| find(sheet, place)?.until.as_deref()),
            prose: writer.write(&texts),
        }
    };
    step.others.iter().enumerate().map(other).collect()
}

/// How long the step is left alone at each size, each length once.
fn clocks(step: &str, batches: &Batches, words: &Words) -> Vec<Clock> {
    // In places one after the other it stands so long in each.
    let waits = |sheet: &Sheet| -> Vec<u64> {
        let own = |one: &&sheet::StepTime| one.step == step && one.recipe == sheet.recipe;
        sheet.time.steps.iter().filter(own).map(|own| own.wait_min[0]).collect()
    };
    let mut all: Vec<u64> = Vec::new();
    for minutes in batches.sheets.iter().flat_map(|sheet| waits(sheet)) {
        if !all.contains(&minutes) {
            all.push(minutes);
        }
    }
    let clock = |minutes: u64| Clock {
        minutes,
        words: show::minutes(minutes, words),
        classes: batches.classes(|sheet| waits(sheet).contains(&minutes)),
    };
    all.into_iter().filter(|minutes| *minutes > 0).map(clock).collect()
}

/// The rows of a step's ticket at all sizes. A row that only some sizes have (trays, say)
/// stands where the first of them has it.
fn ticket<'a>(index: usize, batches: &Batches<'a>) -> Vec<TicketLine<'a>> {
    let mut rows: Vec<&TicketRow> = Vec::new();
    for sheet in &batches.sheets {
        let own = at(sheet, index).map_or(&[][..], |step| &step.ticket);
        for (place, row) in own.iter().enumerate() {
            if !rows.iter().any(|known| known.key == row.key) {
                rows.insert(place.min(rows.len()), row);
            }
        }
    }
    rows.into_iter().map(|row| self::row(index, row, batches)).collect()
}

fn row<'a>(index: usize, row: &'a TicketRow, batches: &Batches) -> TicketLine<'a> {
    fn find(sheet: &Sheet, index: usize, key: Ticked) -> Option<&TicketRow> {
        at(sheet, index)?.ticket.iter().find(|own| own.key == key)
    }
    TicketLine {
        key: row.key.word(),
        term: &row.term,
        value: batches.label(|sheet| find(sheet, index, row.key).map(|own| &own.value)),
        classes: batches.classes(|sheet| find(sheet, index, row.key).is_some()),
    }
}

fn ingredients<'a>(
    index: usize,
    step: &'a StepSheet,
    batches: &Batches,
) -> Vec<Ingredient<'a>> {
    fn of(sheet: &Sheet, index: usize, place: usize) -> Option<&sheet::Ingredients> {
        at(sheet, index)?.ingredients.get(place)
    }
    let all = step.ingredients.iter().enumerate();
    let one = |(place, own): (usize, &'a sheet::Ingredients)| Ingredient {
        amount: batches.label(|sheet| Some(&of(sheet, index, place)?.amount)),
        weight: batches.label(|sheet| of(sheet, index, place)?.weight.as_ref()),
        each: batches.label(|sheet| of(sheet, index, place)?.each.as_ref()),
        name: &own.ingredient,
    };
    all.map(one).collect()
}
