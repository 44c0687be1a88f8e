//! The method as it is printed: steps with their tickets and drawings, and the prose
//! before and after them.

use std::ops::Range;

use serde::Serialize;

use crate::draw::{Figure, FigureKind, Forms, OnPaper};
use crate::measure::Label;
use crate::sheet::{
    Block, Fold, HandoutKind, Ingredients, Inline, OtherSheet, Part, Picture, Sheet,
    SinceMark, StepSheet, Ticked, TicketRow,
};

use super::code::{self, Code};
use super::setting::bind;
use super::{Job, photograph};

/// The method in reading order.
#[derive(Serialize)]
pub(super) struct Method {
    /// Prose before the first step.
    before: Vec<Chapter>,
    /// From the first step to the last one, with what stands between.
    steps: Vec<Chapter>,
    /// Prose after the last step.
    after: Vec<Chapter>,
}

/// What stands under one heading.
#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
enum Chapter {
    Step(Box<Step>),
    Prose {
        title: String,
        /// Its language, where it is not the sheet's.
        title_in: Option<String>,
        content: Vec<Block<String>>,
    },
}

/// What goes in at a step: `1 large` `egg`, with its weight and each piece's share.
#[derive(Serialize)]
struct Use {
    amount: String,
    name: String,
    weight: Option<String>,
    each: Option<String>,
}

#[derive(Serialize)]
struct Step {
    number: usize,
    title: String,
    /// Its language, where it is not the sheet's.
    title_in: Option<String>,
    /// Which row, its term, its value.
    ticket: Vec<[String; 3]>,
    uses: Vec<Use>,
    /// On a card, the first words of a step that would be its title alone.
    say: Option<String>,
    until: Option<String>,
    /// The code of the video that shows it.
    watch: Option<Code>,
    prose: Vec<Block<String>>,
    /// The other ways to do it, told beside.
    others: Vec<Other>,
    drawings: Vec<Drawing>,
    /// What to look at beside the words.
    pictures: Vec<Picture>,
    /// The number of the earlier step whose drawing shows this step's fold too.
    as_drawn: Option<usize>,
    /// The rows of the ticket that differ from the edition before, `until` for the cue;
    /// `title` where all of the step does.
    changed: Vec<String>,
}

/// Another way to do a step: its name, its rows as a step has them, how to tell that it is done,
/// its own words.
#[derive(Serialize)]
struct Other {
    name: String,
    ticket: Vec<[String; 3]>,
    until: Option<String>,
    prose: Vec<Block<String>>,
}

/// A drawing in the chosen units.
#[derive(Serialize)]
pub(super) struct Drawing {
    kind: FigureKind,
    title: String,
    alt: String,
    svg: String,
    /// Height over width.
    ratio: f64,
    /// How wide it must at least be for its smallest label to be as large as it may be on this
    /// handout, mm.
    least: f64,
    /// Whether it is said in words, because it is too tall for the page.
    in_words: bool,
    /// Whether it needs the whole width of the page: its panels stand side by side.
    wide: bool,
}

/// Whether paper goes without a kind of drawing: the ticket beside it and the table of layers
/// say the same in less room.
fn is_for_pages_alone(kind: FigureKind) -> bool {
    match kind {
        FigureKind::Roll | FigureKind::Tray | FigureKind::Layers => true,
        FigureKind::LockIn
        | FigureKind::Turn
        | FigureKind::Cut
        | FigureKind::Shape
        | FigureKind::Timeline => false,
    }
}

/// Every step of a sheet in order.
pub(super) fn steps(sheet: &Sheet) -> impl Iterator<Item = &StepSheet> {
    sheet.parts.iter().filter_map(|part| match part {
        Part::Step(step) => Some(step),
        Part::Prose { .. } => None,
    })
}

/// The method of a job. A bench card carries no prose but the parts of a step to tick.
pub(super) fn method(job: &Job) -> Method {
    let parts = &job.sheet.parts;
    let is_step = |part: &Part| matches!(part, Part::Step(_));
    let first = parts.iter().position(is_step).unwrap_or(parts.len());
    let last = parts.iter().rposition(is_step).map_or(first, |last| last + 1);
    let chapters =
        |these: Range<usize>| these.map(|at| chapter(job, at, &parts[at])).collect();
    Method {
        before: chapters(0..first),
        steps: chapters(first..last),
        after: chapters(last..parts.len()),
    }
}

/// The drawings that belong to no step: the timeline first of all.
pub(super) fn general_drawings(job: &Job) -> Vec<Drawing> {
    let general = job.figures.iter().filter(|figure| figure.step.is_none());
    general.map(|figure| drawing(job, figure)).collect()
}

fn chapter(job: &Job, at: usize, part: &Part) -> Chapter {
    let title_in = job.sheet.part_in(at).map(str::to_owned);
    match part {
        Part::Step(found) => {
            Chapter::Step(Box::new(Step { title_in, ..step(job, found) }))
        }
        Part::Prose { title, content } => Chapter::Prose {
            title: title.clone(),
            title_in,
            content: prose(job, content),
        },
    }
}

fn step(job: &Job, step: &StepSheet) -> Step {
    let chosen = |label: &Label| bind(job.units.of(label));
    let uses = |used: &Ingredients| Use {
        amount: chosen(&used.amount),
        name: used.ingredient.clone(),
        weight: used.weight.as_ref().map(chosen),
        each: used.each.as_ref().map(|each| {
            job.words.fill("handout-each-piece", &[("amount", &chosen(each))])
        }),
    };
    let as_drawn = same_fold(job.sheet, &step.step);
    let belongs = |figure: &&Figure| {
        as_drawn.is_none()
            && figure.step.as_ref() == Some(&step.step)
            && !is_for_pages_alone(figure.kind)
    };
    let needed = needed(job, step);
    let bare = job.kind == HandoutKind::Bench && needed.is_empty() && is_bare(step);
    Step {
        number: step.number,
        title: step.title.clone(),
        title_in: None,
        ticket: rows(job, &step.ticket),
        others: others(job, step),
        uses: needed.iter().copied().map(uses).collect(),
        say: bare.then(|| first_sentence(job, &step.prose)).flatten(),
        until: step.until.as_deref().map(chosen),
        watch: step.watch.as_ref().and_then(|watch| code::video(job, watch)),
        prose: prose(job, &step.prose),
        pictures: step.pictures.iter().filter_map(|it| shown_on(job, it)).collect(),
        as_drawn,
        changed: changed(job.sheet, &step.step),
        drawings: job
            .figures
            .iter()
            .filter(belongs)
            .map(|figure| drawing(job, figure))
            .collect(),
    }
}

/// The other ways to do a step, beside it; none on a card. What goes for several steps alike is
/// told at the first of them.
fn others(job: &Job, step: &StepSheet) -> Vec<Other> {
    let same = |it: &OtherSheet, other: &OtherSheet| {
        (&it.name, &it.ticket, &it.until) == (&other.name, &other.ticket, &other.until)
    };
    let one = |other: &OtherSheet| {
        // Without words of its own it is told where the rows stand first, whatever is said there.
        let told_by = |it: &OtherSheet| {
            same(it, other) && (other.prose.is_empty() || it.prose == other.prose)
        };
        let as_well = |it: &OtherSheet| {
            same(it, other) && (it.prose.is_empty() || it.prose == other.prose)
        };
        let mut all = steps(job.sheet);
        let first = all.find(|of| of.others.iter().any(told_by)).map(|of| of.number);
        let all = steps(job.sheet).filter(|of| of.others.iter().any(as_well));
        let numbers: Vec<usize> = all.map(|of| of.number).collect();
        let first = first == Some(step.number);
        let more = numbers.iter().filter(|number| **number != step.number);
        let more: Vec<String> = more.map(usize::to_string).collect();
        first.then(|| Other {
            name: match more.as_slice() {
                [] => other.name.clone(),
                more => {
                    let (name, steps) = (other.name.as_str(), job.words.list(more));
                    let count = more.len().to_string();
                    let values = [("name", name), ("steps", &*steps), ("count", &*count)];
                    job.words.fill("other-also", &values)
                }
            },
            ticket: rows(job, &other.ticket),
            until: other.until.as_deref().map(|it| bind(job.units.of(it))),
            prose: prose(job, &other.prose),
        })
    };
    let told = step.others.iter().filter(|_| job.kind != HandoutKind::Bench);
    told.filter_map(one).collect()
}

/// A ticket's rows: which, its term, its value.
fn rows(job: &Job, rows: &[TicketRow]) -> Vec<[String; 3]> {
    let row = |row: &TicketRow| {
        let value = bind(job.units.of(&row.value));
        [row.key.word().to_owned(), row.term.clone(), value]
    };
    rows.iter().map(row).collect()
}

/// Whether a step's ticket says when and where alone: then its title is all that it has.
fn is_bare(step: &StepSheet) -> bool {
    let little = |key: Ticked| match key {
        Ticked::Day
        | Ticked::Hands
        | Ticked::Wait
        | Ticked::Where
        | Ticked::Hold
        | Ticked::Kit
        | Ticked::Thickness
        | Ticked::Trays => true,
        Ticked::At
        | Ticked::Part
        | Ticked::Sheet
        | Ticked::Roll
        | Ticked::LockIn
        | Ticked::Turn
        | Ticked::Layers
        | Ticked::Plies
        | Ticked::Cut
        | Ticked::Divide
        | Ticked::Oven
        | Ticked::Fan
        | Ticked::Bake
        | Ticked::Core
        | Ticked::Mix
        | Ticked::Water
        | Ticked::Sheeter
        | Ticked::Ph
        | Ticked::DoughTemperature
        | Ticked::WeightLoss
        | Ticked::Growth
        | Ticked::Cool => false,
    };
    step.until.is_none() && step.ticket.iter().all(|row| little(row.key))
}

/// On a card, so many ingredients stand at a step that would be its title alone; more of
/// them are the whole list that stands beside it.
const FEW: usize = 3;

/// What a sheet says of what goes in at a step. A card has the amounts beside the method
/// already: there it says what each piece gets, and what a bare step is about.
fn needed<'s>(job: &Job, step: &'s StepSheet) -> Vec<&'s Ingredients> {
    let all = step.ingredients.iter();
    match job.kind {
        HandoutKind::Student | HandoutKind::LargePrint => all.collect(),
        HandoutKind::Bench if is_bare(step) && step.ingredients.len() <= FEW => {
            all.collect()
        }
        HandoutKind::Bench => all.filter(|used| used.each.is_some()).collect(),
    }
}

/// The first sentence of the first paragraph, without its form.
fn first_sentence(job: &Job, blocks: &[Block<Label>]) -> Option<String> {
    let mut text = String::new();
    let first = blocks.iter().find(|block| matches!(block, Block::Paragraph { .. }))?;
    first.visit(&mut |inline| match inline {
        Inline::Text { text: own } | Inline::Code { text: own } => text.push_str(own),
        Inline::Live { value } => text.push_str(&bind(job.units.of(value))),
        Inline::Break => text.push(' '),
        Inline::Emphasis { .. }
        | Inline::Strong { .. }
        | Inline::Link { .. }
        | Inline::Picture { .. } => {}
    });
    let end = text.find(". ").map_or(text.len(), |end| end + 1);
    let first = text[..end].trim().to_owned();
    (!first.is_empty()).then_some(first)
}

/// What of a step differs from the edition before.
fn changed(sheet: &Sheet, step: &str) -> Vec<String> {
    let marks = sheet.since.iter().flat_map(|since| &since.marks);
    let rows = marks.filter_map(|mark| match mark {
        SinceMark::Step { step: of, row } if of == step => {
            Some(row.clone().unwrap_or_else(|| "title".to_owned()))
        }
        SinceMark::Step { .. } | SinceMark::Line { .. } => None,
    });
    rows.collect()
}

/// A picture as the typesetter names it; `None` where its author keeps it from paper.
pub(super) fn shown_on(job: &Job, shown: &Picture) -> Option<Picture> {
    shown.printed.then(|| Picture {
        file: photograph::name(job.media, &shown.file, job.kind),
        ..shown.clone()
    })
}

/// The number of the first step with the very same fold, if it is an earlier one: six
/// equal turns need one drawing, not six.
fn same_fold(sheet: &Sheet, step: &str) -> Option<usize> {
    let folds = &sheet.lamination.as_ref()?.folds;
    let mine = folds.iter().find(|fold| fold.step == step)?;
    let same = |fold: &&Fold| fold.turn == mine.turn && fold.size == mine.size;
    let first = folds.iter().find(same).filter(|first| first.step != step)?;
    steps(sheet).find(|it| it.step == first.step).map(|it| it.number)
}

/// An upright timeline taller than this for its width would have labels of less than 9 pt on
/// a page.
const TALLEST_TIMELINE: f64 = 2.2;

pub(super) fn drawing(job: &Job, figure: &Figure) -> Drawing {
    let form: (fn(&OnPaper) -> &Forms, f64) = match job.kind {
        HandoutKind::Student => (|paper| &paper.column, 8.0),
        HandoutKind::LargePrint => (|paper| &paper.large, 18.0),
        HandoutKind::Bench => (|paper| &paper.card, 12.0),
    };
    let (form, smallest) = form;
    // What was drawn for pages alone stands on paper as it does there.
    let upright = figure.paper.as_ref().map_or(&figure.upright, form);
    // A column has no room for three panels in a row. Only a timeline of so many steps that
    // it would be taller than a column lies across the page.
    let across = figure.kind == FigureKind::Timeline
        && job.kind == HandoutKind::Student
        && upright.of(job.units).ratio().unwrap_or(1.0) > TALLEST_TIMELINE;
    let wide = figure.wide.as_ref().filter(|_| across);
    let form = wide.unwrap_or(upright).of(job.units);
    let ratio = form.ratio().unwrap_or(1.0);
    let least = form.width() / LETTERING * smallest * POINT;
    Drawing {
        kind: figure.kind,
        title: figure.title.clone(),
        alt: job.units.of(&figure.alt).to_owned(),
        svg: form.svg(),
        ratio,
        least,
        in_words: job.kind == HandoutKind::LargePrint && least * ratio > TALLEST_PAGE,
        wide: wide.is_some(),
    }
}

/// The tallest that stands on a page of large print, mm: what is taller is said in words, for
/// smaller its letters could not be read.
const TALLEST_PAGE: f64 = 225.0;

/// The height of the lettering of a drawing, in its units.
const LETTERING: f64 = 20.0;
/// A point of the printers', mm.
const POINT: f64 = 25.4 / 72.0;

/// Prose in the chosen units, with addresses in place of page names.
pub(super) fn prose(job: &Job, blocks: &[Block<Label>]) -> Vec<Block<String>> {
    let settle = &mut |inline: &Inline<Label>| match inline {
        Inline::Live { value } => Some(Inline::Live { value: bind(job.units.of(value)) }),
        Inline::Picture { .. } if !job.sheet.printed => {
            Some(Inline::Text { text: String::new() })
        }
        Inline::Picture { file, alt } => Some(Inline::Picture {
            file: photograph::name(job.media, file, job.kind),
            alt: alt.clone(),
        }),
        Inline::Link { to, .. } => {
            Some(Inline::Link { to: address(job, to), content: Vec::new() })
        }
        Inline::Text { .. }
        | Inline::Emphasis { .. }
        | Inline::Strong { .. }
        | Inline::Code { .. }
        | Inline::Break => None,
    };
    // A card has the parts of a step to tick, and no other words.
    let told = |block: &&Block<Label>| {
        job.kind != HandoutKind::Bench || matches!(block, Block::List { ticks: true, .. })
    };
    let blocks = Block::for_levels(blocks, job.levels);
    let set = blocks.iter().filter(told).map(|block| block.map(settle));
    set.filter(|block| !is_empty(block)).collect()
}

/// Whether nothing is left of a paragraph: a picture that is not printed stood there.
fn is_empty(block: &Block<String>) -> bool {
    let bare = |inline: &Inline<String>| match inline {
        Inline::Text { text } => text.is_empty(),
        Inline::Live { .. }
        | Inline::Emphasis { .. }
        | Inline::Strong { .. }
        | Inline::Code { .. }
        | Inline::Link { .. }
        | Inline::Picture { .. }
        | Inline::Break => false,
    };
    matches!(block, Block::Paragraph { content } if content.iter().all(bare))
}

/// Where a link leads; empty where the course has no address to lead to.
fn address(job: &Job, to: &str) -> String {
    let outward = ["https://", "http://", "mailto:"];
    if outward.iter().any(|scheme| to.starts_with(scheme)) {
        return to.to_owned();
    }
    let site = job.course.address.as_deref();
    let page = to.trim_end_matches(".md").trim_start_matches("../");
    site.map_or_else(String::new, |site| format!("{site}{page}/"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::draw::sized;
    use crate::paper::fixture::Fixture;

    #[test]
    fn a_timeline_of_many_steps_lies_across_the_page() {
        let fixture = Fixture::new();
        let form = |width: f64, height: f64| {
            let drawing = || sized([width, height]);
            Forms { metric: drawing(), us: drawing() }
        };
        let timeline = |height: f64| Figure {
            name: "timeline".into(),
            step: None,
            kind: FigureKind::Timeline,
            title: "Timeline".into(),
            alt: Label::same("words"),
            upright: form(640.0, height),
            wide: Some(form(1180.0, height / 2.0)),
            paper: Some(OnPaper {
                column: form(590.0, height),
                large: form(545.0, height),
                card: form(404.0, height),
            }),
        };
        let across = |kind, height| {
            let job = fixture.job(kind, crate::sheet::Units::Us, crate::sheet::Paper::A4);
            drawing(&job, &timeline(height)).wide
        };
        let student = HandoutKind::Student;
        assert!(!across(student, 640.0) && across(student, 1700.0));
        // Across the page its letters would be too small for these.
        for kind in [HandoutKind::LargePrint, HandoutKind::Bench] {
            assert!(!across(kind, 1700.0), "{kind:?}");
        }
    }

    #[test]
    fn equal_turns_share_the_first_ones_drawing() {
        let mut sheet = Fixture::new().sheet;
        assert_eq!(same_fold(&sheet, "second-turn"), None);
        let lamination = sheet.lamination.as_mut().expect("a layered dough");
        lamination.folds[1].turn = lamination.folds[0].turn;
        assert_eq!(same_fold(&sheet, "second-turn"), Some(2));
        assert_eq!(same_fold(&sheet, "first-turn"), None);
        assert_eq!(same_fold(&sheet, "bake"), None);
    }

    #[test]
    fn links_lead_to_the_course_site_or_nowhere() {
        let mut fixture = Fixture::new();
        let sent = |fixture: &Fixture, to: &str| {
            let job = fixture.job(
                HandoutKind::Student,
                crate::sheet::Units::Us,
                crate::sheet::Paper::Letter,
            );
            address(&job, to)
        };
        let page = "https://layers.saltmarsh.example/techniques/book-turn/";
        assert_eq!(sent(&fixture, "techniques/book-turn"), page);
        assert_eq!(sent(&fixture, "https://a.example/"), "https://a.example/");
        fixture.course.address = None;
        assert_eq!(sent(&fixture, "techniques/book-turn"), "");
    }
}
