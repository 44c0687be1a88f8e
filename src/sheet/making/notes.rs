//! Remarks on the numbers: what a baker must know of them that no column says.

use crate::formula::{Filling, MadeOf, Weighed, boiling, filling, yeast_instead};
use crate::measure::show::{self, Notation, Sign};
use crate::measure::{Exact, Label, Length, Mass, Temperature, exact};
use crate::model::Purpose;
use crate::pantry::{Item, Kind};
use crate::words::Words;
use crate::work::Work;

use super::super::Note;
use super::{Context, lines, ways};

/// Below this the boiling point is as on the sea: half a Celsius degree is nothing on a
/// kitchen thermometer. In metres.
const LOW: i64 = 150;

/// Every remark that applies.
pub(super) fn notes(work: &Work, context: Context) -> Vec<Note> {
    let mut notes = yeast(work, context);
    notes.extend(fat_firm(work, context));
    notes.extend(open(work, context));
    notes.extend(boils(work, context));
    notes.extend(tin_depth(work, context));
    notes.extend(whole_rows(work, context));
    notes.extend(fewer(work, context));
    notes.extend(too_small(work, context));
    notes.extend(half_pieces(work, context));
    notes.extend(reroll(work, context));
    notes.extend(left_over(work, context));
    notes.extend(ranges(work, context));
    notes.extend(ways::remarks(work, context));
    notes
}

fn note(name: &str, text: Label) -> Note {
    Note { name: name.to_owned(), text }
}

/// A sentence from the words, with labels filled in for each unit system.
pub(super) fn fill(key: &str, values: &[(&str, &Label)], context: Context) -> Label {
    let with = |of: &dyn Fn(&Label) -> String| {
        let values: Vec<(&str, String)> =
            values.iter().map(|(name, label)| (*name, of(label))).collect();
        let values: Vec<(&str, &str)> =
            values.iter().map(|(name, value)| (*name, value.as_str())).collect();
        context.words.fill(key, &values)
    };
    Label::new(with(&|label| label.metric.clone()), with(&|label| label.us.clone()))
}

/// Each yeast of the formula with what would do its work.
fn yeast(work: &Work, context: Context) -> Vec<Note> {
    let mut weights: Vec<(&str, Mass)> = Vec::new();
    for line in work.formula.lines.iter().filter(|line| line.is(Kind::Leavener)) {
        let mass = &line.mass() * &work.factor;
        match weights.iter_mut().find(|(name, _)| *name == line.known_as()) {
            Some((_, sum)) => *sum = sum.clone() + mass,
            None => weights.push((line.known_as(), mass)),
        }
    }
    let notes = weights.iter().filter_map(|(name, mass)| {
        let [(one, of_one), (two, of_two)] = yeast_instead(name, mass).try_into().ok()?;
        let weight = |mass: &Mass| lines::weight(mass, Kind::Leavener, context);
        let title = |name| context.book.pantry.find(name).map_or(name, Item::title);
        let same = |name| Label::same(title(name));
        let values = [
            ("name", &same(name)),
            ("weight", &weight(mass)),
            ("one", &same(one)),
            ("of-one", &weight(&of_one)),
            ("two", &same(two)),
            ("of-two", &weight(&of_two)),
        ];
        Some(note("yeast", fill("note-yeast", &values, context)))
    });
    notes.collect()
}

/// How warm butter is when it is folded in: pounded until it is pliable, at about 60 °F or 15 °C.
/// H. McGee, *On Food and Cooking* (2004), "Laminated Pastries". Of other fats no figure was
/// found that could be read.
fn fat_firm(work: &Work, context: Context) -> Option<Note> {
    work.layering.laminated.lock_in.as_ref()?;
    let is_butter = |line: &Weighed| {
        line.purpose == Purpose::RollIn
            && line.title().ends_with("butter")
            && matches!(line.source, MadeOf::Item(item) if item.kind == Kind::Fat)
    };
    let all = work.formula.lines.iter().any(is_butter);
    let at = show::degrees(&exact(15, 1), &exact(60, 1), context.words);
    all.then(|| note("fat-firm", fill("note-fat-firm", &[("at", &at)], context)))
}

/// What is mixed in without a weight, and what is left out for it.
fn open(work: &Work, context: Context) -> Option<Note> {
    let mut names: Vec<String> = Vec::new();
    for line in work.body.open(&work.formula) {
        let name = context.ingredient(line);
        if !names.contains(&name) {
            names.push(name);
        }
    }
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let key = if work.body.flour_is_open(&work.formula) {
        "note-open-flour"
    } else {
        "note-open-weight"
    };
    let text = || context.words.fill(key, &[("names", &context.words.names(&names))]);
    (!names.is_empty()).then(|| note("open-weight", Label::same(text())))
}

/// Where water boils, for custards and syrups in a high classroom.
fn boils(work: &Work, context: Context) -> Option<Note> {
    let altitude = context.book.content.course.as_ref()?.altitude.as_ref()?;
    let boiled = |section| filling(section, &work.formula, &work.flow);
    let sorts: Vec<Filling> =
        work.formula.lines.iter().filter_map(|line| boiled(line.section)).collect();
    let applies = sorts.iter().any(|sort| *sort != Filling::Cream);
    if !applies || *altitude < Length::centimetres(exact(100 * LOW, 1)) {
        return None;
    }
    let boils = boiling(altitude);
    let step = &Temperature::celsius(exact(100, 1)) - &boils;
    let (celsius, fahrenheit) = (step.in_celsius(), step.in_celsius() * exact(9, 5));
    let drop = show::degrees(celsius, &fahrenheit, context.words);
    let values = [
        ("height", &height(altitude, context.words)),
        ("boils", &show::temperature(&boils, context.words)),
        ("drop", &drop),
    ];
    Some(note("boiling", fill("note-boiling", &values, context)))
}

/// A height to ten metres and fifty feet.
fn height(altitude: &Length, words: &Words) -> Label {
    let metres = altitude.amount() / exact(100, 1);
    let feet = altitude.in_inches() / exact(12, 1);
    let to = |value, step, sign| {
        let rounded = crate::measure::round_to(value, &exact(step, 1));
        words.of(&show::number(&rounded, 0, words), sign)
    };
    Label::new(to(&metres, 10, Sign::Metre), to(&feet, 50, Sign::Foot))
}

fn tin_depth(work: &Work, context: Context) -> Option<Note> {
    let text = || Label::same(context.words.get("note-tin-depth"));
    work.depth_assumed.then(|| note("tin-depth", text()))
}

/// More pieces than were asked for, because the last sheet is of whole rows.
fn whole_rows(work: &Work, context: Context) -> Option<Note> {
    let (asked, made) = (work.asked_pieces?, work.pieces?);
    let more = made.checked_sub(asked).filter(|more| *more > 0)?;
    // What was asked for by batches is as it was asked for, but for whole rows of a grid.
    (work.factor != work.asked).then_some(())?;
    let [asked, made, more] = [asked, made, more].map(|count| count.to_string());
    let values = [("asked", &*asked), ("made", &*made), ("more", &*more)];
    let text = context.words.fill("note-whole-rows", &values);
    Some(note("whole-rows", Label::same(text)))
}

/// Fewer pieces than the share of what the recipe makes, because its sheet gives no more.
fn fewer(work: &Work, context: Context) -> Option<Note> {
    let (share, made) = (work.asked_pieces?, work.pieces?);
    let is_fewer = made < share && work.factor == work.asked;
    let [share, made] = [share, made].map(|count| count.to_string());
    let values = [("share", &*share), ("made", &*made)];
    let text = || context.words.fill("note-fewer-pieces", &values);
    is_fewer.then(|| note("fewer-pieces", Label::same(text())))
}

/// That the sheet is too small for a single piece of its cut, at a scale other than written.
fn too_small(work: &Work, context: Context) -> Option<Note> {
    let refused = work.cuts.iter().any(|(_, cut)| cut.is_err());
    let text = || Label::same(context.words.get("note-too-small"));
    (refused && work.factor < exact(1, 1)).then(|| note("too-small-to-cut", text()))
}

/// The half triangles at the ends of the last cut's rows.
fn half_pieces(work: &Work, context: Context) -> Option<Note> {
    let (_, cut) = work.cuts.last()?;
    let halves = cut.as_ref().ok()?.layout.halves.len() as u64 * work.doughs;
    let whole = halves / 2;
    let values = [("halves", halves.to_string()), ("whole", whole.to_string())];
    let values = values.each_ref().map(|(name, value)| (*name, value.as_str()));
    (whole > 0).then(|| {
        let text = context.words.fill("note-half-pieces", &values);
        note("half-pieces", Label::same(text))
    })
}

/// That ranges count as their middle, once.
fn ranges(work: &Work, context: Context) -> Option<Note> {
    let has = work.formula.lines.iter().any(|line| line.line.range.is_some());
    has.then(|| note("ranges", Label::same(context.words.get("note-ranges"))))
}

/// What the scrap of the last cut still gives.
fn reroll(work: &Work, context: Context) -> Option<Note> {
    let (_, cut) = work.cuts.last()?;
    let again = cut.as_ref().ok()?.reroll.as_ref()?;
    let pieces = (again.pieces.len() as u64 * work.doughs).to_string();
    let values = [
        ("pieces", &Label::same(pieces.as_str())),
        ("size", &show::size(&again.sheet, context.words)),
    ];
    Some(note("reroll", fill("note-reroll", &values, context)))
}

/// What is left when every piece has been scaled to the weight shown. Pieces that are cut
/// from a sheet leave scrap instead.
fn left_over(work: &Work, context: Context) -> Option<Note> {
    let (piece, pieces) = (work.piece.as_ref()?, work.pieces.filter(|all| *all > 1)?);
    let shown = super::portion(work, context).filter(|_| !super::is_cut(work))?;
    let rests = shown.each_ref().map(|shown| {
        let rest = piece.clone() - shown.worth.clone();
        &rest * &Exact::from_integer(pieces.into())
    });
    // What no scale shows is nothing.
    let seen = |rest: &Mass| *rest >= Mass::grams(exact(1, 1));
    if !rests.iter().any(seen) {
        return None;
    }
    let none = Label::same(context.words.get("nothing"));
    let weigh = |rest: &Mass| {
        if seen(rest) { lines::weight(rest, Kind::Other, context) } else { none.clone() }
    };
    let [metric, us] = rests.each_ref().map(weigh);
    let [each, each_us] = shown.map(|shown| shown.words(context.words));
    let values = [
        ("pieces", &Label::same(pieces.to_string())),
        ("piece", &Label::new(each, each_us)),
        ("rest", &Label::new(metric.metric, us.us)),
    ];
    Some(note("left-over", fill("note-left-over", &values, context)))
}
