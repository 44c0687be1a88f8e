//! Prose with its live values put into words.

use crate::formula::{LineRef, lines_of};
use crate::measure::{Label, Length, Mass, Size, Temperature, exact, show};
use crate::model::{Block, Brace, CutPlan, Inline, Live, Shape, Share};
use crate::pantry::Kind;
use crate::words::Words;
use crate::work::Work;

use super::{Context, lines};

/// Ovens are this hot at least, °C: from here on a temperature is rounded as a dial is.
const OVEN_FROM: i64 = 100;

/// The prose of a recipe; `step` is the number of the step it stands in.
pub(super) fn blocks(
    blocks: &[Block<Brace>],
    step: Option<usize>,
    work: &Work,
    context: Context,
) -> Vec<Block<Label>> {
    let mut value = |live: &Live| Some(label(live, step, work, context));
    blocks
        .iter()
        .map(|block| block.map(&mut |inline| change(inline, &mut value)))
        .collect()
}

/// Prose outside a recipe: only what needs no formula is live there.
pub(super) fn plain_blocks(blocks: &[Block<Brace>], words: &Words) -> Vec<Block<Label>> {
    let mut value = |live: &Live| Some(measure(live, words).unwrap_or_default());
    blocks
        .iter()
        .map(|block| block.map(&mut |inline| change(inline, &mut value)))
        .collect()
}

/// What tells that a step is done: words with temperatures, lengths and sizes.
pub fn cue(line: &[Inline<Brace>], words: &Words) -> Label {
    let mut cue = Label::default();
    for inline in line {
        let part = match inline {
            Inline::Text { text } => Label::same(text),
            Inline::Live { value } => measure(&value.value, words).unwrap_or_default(),
            Inline::Emphasis { .. }
            | Inline::Strong { .. }
            | Inline::Code { .. }
            | Inline::Link { .. }
            | Inline::Picture { .. }
            | Inline::Break => Label::default(),
        };
        cue.metric += &part.metric;
        cue.us += &part.us;
    }
    cue
}

fn change(
    inline: &Inline<Brace>,
    value: &mut dyn FnMut(&Live) -> Option<Label>,
) -> Option<Inline<Label>> {
    match inline {
        Inline::Live { value: live } => {
            value(&live.value).map(|value| Inline::Live { value })
        }
        Inline::Link { to, .. } => {
            Some(Inline::Link { to: page(to), content: Vec::new() })
        }
        Inline::Text { .. }
        | Inline::Emphasis { .. }
        | Inline::Strong { .. }
        | Inline::Code { .. }
        | Inline::Picture { .. }
        | Inline::Break => None,
    }
}

/// A link to another file of the folder becomes the name of its page:
/// `../techniques/letter-turn.md` → `techniques/letter-turn`.
fn page(to: &str) -> String {
    let Some(path) = to.strip_suffix(".md") else { return to.to_owned() };
    let path = path.trim_start_matches("../").trim_start_matches("./");
    if path.contains('/') { path.to_owned() } else { format!("recipes/{path}") }
}

fn label(live: &Live, step: Option<usize>, work: &Work, context: Context) -> Label {
    match live {
        Live::Pieces => super::makes(work, context),
        Live::Size(size) => {
            let shown = show::size(&scaled(size, work), context.words);
            of_whole_batch(shown, &|plan| is_piece(plan, size), work, context.words)
        }
        Live::Named { share, name, article } => {
            named(share, name, *article, Spot { step, work, context })
        }
        Live::LeftOut(name) => {
            Label::same(context.words.fill("left-out", &[("name", name)]))
        }
        Live::Length(length) if is_cut(work, &|plan| sides(plan).contains(&length)) => {
            let shown = show::length(&(length * &work.growth.side), context.words);
            let is_side = |plan: &CutPlan| sides(plan).contains(&length);
            of_whole_batch(shown, &is_side, work, context.words)
        }
        Live::Temperature(_) | Live::Length(_) => {
            measure(live, context.words).unwrap_or_default()
        }
    }
}

/// Whether a cut of the recipe is so.
fn is_cut(work: &Work, is_so: &dyn Fn(&CutPlan) -> bool) -> bool {
    let steps = work.steps();
    steps.iter().filter_map(|step| step.cut.as_ref()).any(|plan| is_so(&plan.value))
}

/// A measure of a piece that so small a batch has no dough for, with the word that it is one
/// of a whole batch; any other as it is.
fn of_whole_batch(
    shown: Label,
    is_so: &dyn Fn(&CutPlan) -> bool,
    work: &Work,
    words: &Words,
) -> Label {
    let steps = work.steps();
    let plan = |at: &usize| steps.get(*at)?.cut.as_ref().map(|plan| &plan.value);
    let of_cut = |made: bool| {
        let cuts = work.cuts.iter().filter(move |(_, cut)| cut.is_ok() == made);
        cuts.filter_map(|(at, _)| plan(at)).any(is_so)
    };
    // A measure that another cut has too can be had.
    if work.factor >= exact(1, 1) || of_cut(true) || !of_cut(false) {
        return shown;
    }
    shown.map(|value| words.fill("of-whole-batch", &[("value", value)]))
}

/// The sides of a piece that a plan names one by one.
fn sides(plan: &CutPlan) -> Vec<&Length> {
    match plan {
        CutPlan::Shape(Shape::Triangles { base, height }) => vec![base, height],
        CutPlan::Shape(Shape::Rectangles(size)) => vec![&size.length, &size.width],
        CutPlan::Shape(Shape::Squares(side) | Shape::Rounds(side))
        | CutPlan::Strips(side) => vec![side],
        CutPlan::Grid { .. } => Vec::new(),
    }
}

/// Whether a plan's piece has these two sides.
fn is_piece(plan: &CutPlan, size: &Size) -> bool {
    matches!(plan, CutPlan::Shape(Shape::Rectangles(piece)) if piece == size)
}

fn measure(live: &Live, words: &Words) -> Option<Label> {
    Some(match live {
        Live::Temperature(degrees) if is_oven(degrees) => show::oven(degrees, words),
        Live::Temperature(degrees) => show::temperature(degrees, words),
        Live::Length(length) if *length.amount() < exact(2, 1) => {
            show::thickness(length, words)
        }
        Live::Length(length) => show::length(length, words),
        Live::Size(size) => show::size(size, words),
        Live::Pieces | Live::Named { .. } | Live::LeftOut(_) => return None,
    })
}

fn is_oven(degrees: &Temperature) -> bool {
    *degrees.in_celsius() >= exact(OVEN_FROM, 1)
}

/// A size that is a sheet of the recipe follows the scale.
fn scaled(size: &Size, work: &Work) -> Size {
    let steps = work.steps();
    let step =
        steps.iter().find(|step| step.sheet.as_ref().is_some_and(|s| s.value == *size));
    let Some(step) = step else {
        let piece = is_cut(work, &|plan| is_piece(plan, size));
        return if piece { work.growth.sides(size) } else { size.clone() };
    };
    let layering = &work.layering.laminated;
    let rolled = layering.sheets.iter().find(|rolled| rolled.step == step.name);
    let block = layering
        .lock_in
        .as_ref()
        .filter(|_| work.layering.block.is_some_and(|at| steps[at].name == step.name));
    rolled
        .map(|rolled| rolled.sheet.clone())
        .or_else(|| block.map(|locked| locked.block.clone()))
        .unwrap_or_else(|| size.clone())
}

/// Where a live value stands.
#[derive(Clone, Copy)]
struct Spot<'a> {
    step: Option<usize>,
    work: &'a Work<'a>,
    context: Context<'a>,
}

/// `the dough (893 g)`, `butter (250 g)`, `half of the butter (125 g)`.
fn named(share: &Share, name: &str, article: bool, spot: Spot) -> Label {
    let found = preferred(lines_of(name, &spot.work.formula), spot.step, spot.work);
    let is_section = spot.work.formula.lines.iter().any(|line| line.section == name);
    let own =
        in_place_of(name, &found, spot).unwrap_or_else(|| spoken(name, &found, spot));
    let name = own.as_str();
    let words = if !share.words.is_empty() {
        let part = spot.context.words.author(&share.words);
        let values = [("share", &*part), ("name", name)];
        spot.context.words.fill("share-of", &values)
    } else if is_section && !article {
        spot.context.words.fill("the-section", &[("name", name)])
    } else {
        name.to_owned()
    };
    match amount(&found, share, spot.work, spot.context) {
        Some(amount) => amount.map(|amount| {
            let values = [("name", &*words), ("amount", amount)];
            spot.context.words.fill("with-amount", &values)
        }),
        None => Label::same(words),
    }
}

/// What is taken in place of a name, in one of a recipe's ways: its own name, or the names of
/// several; `None` where nothing is.
fn in_place_of(name: &str, found: &[LineRef], spot: Spot) -> Option<String> {
    let lines = &spot.work.formula.lines;
    let new = |line: &&LineRef| !lines[**line].line.stands_for.is_empty();
    let of_section = lines.iter().any(|line| line.section == name);
    if of_section || found.is_empty() || !found.iter().all(|line| new(&line)) {
        return None;
    }
    let titles: Vec<String> =
        found.iter().map(|line| spot.context.ingredient(&lines[*line])).collect();
    let titles: Vec<&str> = titles.iter().map(String::as_str).collect();
    Some(spot.context.words.names(&titles))
}

/// A name as it is read: in a second language by the one that it has there.
fn spoken(name: &str, found: &[LineRef], spot: Spot) -> String {
    let words = spot.context.words;
    let (Some(_), None) = (&words.phrases, words.phrase(name)) else {
        return words.author(name);
    };
    match found {
        [line] => spot.context.ingredient(&spot.work.formula.lines[*line]),
        _ => name.to_owned(),
    }
}

fn amount(
    found: &[LineRef],
    share: &Share,
    work: &Work,
    context: Context,
) -> Option<Label> {
    let factor = &share.part * &work.factor;
    match found {
        [] => None,
        [line] => lines::share_of(&work.formula.lines[*line], &factor, context),
        several => {
            let sum: Mass =
                several.iter().map(|line| work.formula.lines[*line].mass()).sum();
            let mass = &sum * &factor;
            mass.is_positive().then(|| lines::weight(&mass, Kind::Other, context))
        }
    }
}

/// Of lines in several sections that a name may mean, those that go in at this step, else
/// those that went in before it; else all.
fn preferred(found: Vec<LineRef>, step: Option<usize>, work: &Work) -> Vec<LineRef> {
    let sections: std::collections::BTreeSet<&str> =
        found.iter().map(|line| work.formula.lines[*line].section).collect();
    let Some(step) = step.filter(|_| sections.len() > 1) else { return found };
    let used = |at: usize| -> Vec<LineRef> {
        let here = &work.flow.uses[at];
        found
            .iter()
            .copied()
            .filter(|line| here.iter().any(|(used, _)| used == line))
            .collect()
    };
    let before = work.flow.before(step).into_iter().rev();
    before.map(used).find(|lines| !lines.is_empty()).unwrap_or(found)
}
