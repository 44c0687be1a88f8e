//! The formula's lines and sums in words.

use crate::formula::{
    Contents, Counting, Formula, LineRef, MadeOf, Weighed, expand, of_kind,
};
use crate::measure::show::{self, Notation, Shown, Spoons};
use crate::measure::{CupSet, Exact, Label, Mass, Unit, exact, float};
use crate::model::{Amount, Quantity};
use crate::pantry::{Item, Kind};
use crate::words::Words;
use crate::work::Work;

use super::super::{EachDough, Line, OverallLine, Preferment, SectionTotal, Totals};
use super::{Context, round, written};

/// Every line, scaled, and the sums beneath: in the column of US weights all ounces are in
/// decimals where those of one line are.
pub(super) fn table(work: &Work, context: Context) -> (Vec<Line>, Totals) {
    let scaled = |weighed: &Weighed| {
        let mass = weighed.mass.as_ref()? * &work.factor;
        Some(amounts(&mass, weighed, context))
    };
    let scaled: Vec<_> = work.formula.lines.iter().map(scaled).collect();
    let decimals = scaled.iter().flatten().any(|all| all.us.is_decimal_ounces());
    let lines = scaled.into_iter().enumerate().map(|(at, amounts)| {
        let us_column = amounts.as_ref().map(|all| column(&all.us, decimals));
        let line = line(work, at, amounts, context);
        let us_column = us_column.map(|us| us.words(context.words));
        Line { us_column: us_column.unwrap_or_else(|| line.us_weight.clone()), ..line }
    });
    (lines.collect(), totals(work, decimals, context))
}

/// A line; in the column of US weights it stands as it would by itself.
fn line(work: &Work, at: LineRef, amounts: Option<Amounts>, context: Context) -> Line {
    let weighed = &work.formula.lines[at];
    let mass = weighed.mass.as_ref().map(|mass| mass * &work.factor);
    let percent = work.percentages.lines[at].as_ref();
    let words = context.words.author(&free_words(weighed));
    let shown = |of: fn(&Amounts) -> &Shown| {
        amounts.as_ref().map_or_else(|| words.clone(), |all| of(all).words(context.words))
    };
    let error = |of: &dyn Fn(&Amounts) -> Exact| {
        amounts.as_ref().map_or(0.0, |all| round(&of(all), 4))
    };
    let exact_mass = mass.clone().unwrap_or_else(Mass::zero);
    Line {
        section: context.words.author(weighed.section),
        ingredient: context.ingredient(weighed),
        key: weighed.known_as().to_owned(),
        is_recipe: matches!(weighed.source, MadeOf::Recipe(_)),
        note: weighed.line.note.as_ref().map(|note| context.words.author(note)),
        at: own_temperature(weighed, context),
        grams: mass.as_ref().map(|mass| round(mass.amount(), 3)),
        percent: percent.map(|percent| round(percent, 3)),
        percent_label: percent.map(|percent| percent_words(percent, context.words)),
        metric: shown(|all| &all.metric),
        us_weight: shown(|all| &all.us),
        us_column: shown(|all| &all.us),
        us_measure: amounts
            .as_ref()
            .and_then(|all| Some(all.measure.as_ref()?.words(context.words))),
        count: mass.as_ref().and_then(|mass| count(mass, weighed, context)),
        us_error: error(&|all| {
            all.measure.as_ref().unwrap_or(&all.us).error(&exact_mass)
        }),
        metric_error: error(&|all| all.metric.error(&exact_mass)),
        each_dough: each_dough(work, at, context),
    }
}

/// A US weight in the manner of its column.
fn column(us: &Shown, decimals: bool) -> Shown {
    if decimals { us.in_decimal_ounces() } else { us.clone() }
}

/// `at 43 °C`, where a line has a temperature of its own.
pub(super) fn own_temperature(weighed: &Weighed, context: Context) -> Option<Label> {
    let said = |at: &str| context.words.fill("at-temperature", &[("temperature", at)]);
    weighed.line.at.as_ref().map(|at| show::temperature(at, context.words).map(said))
}

/// What of a line goes into each of several doughs.
fn each_dough(work: &Work, at: LineRef, context: Context) -> Option<EachDough> {
    let weighed = &work.formula.lines[at];
    if work.doughs < 2 || !work.body.holds(at) {
        return None;
    }
    let mass = weighed.mass.as_ref()? * &(work.each() * work.body.share(at));
    let amounts = amounts(&mass, weighed, context);
    Some(EachDough {
        grams: round(mass.amount(), 3),
        metric: amounts.metric.words(context.words),
        us_weight: amounts.us.words(context.words),
        us_measure: amounts.measure.map(|measure| measure.words(context.words)),
        count: count(&mass, weighed, context),
    })
}

/// One of several doughs in all.
fn one_dough(work: &Work, context: Context) -> Option<Label> {
    let mass = &work.body.mass(&work.formula) * &work.each();
    (work.doughs > 1).then(|| weight(&mass, Kind::Other, context))
}

/// An amount in all its forms.
pub(super) struct Amounts {
    /// In grams.
    pub(super) metric: Shown,
    /// In ounces.
    pub(super) us: Shown,
    /// In cups and spoons.
    pub(super) measure: Option<Shown>,
}

/// An amount with both ends of a range and the words that hedge it.
fn amounts(mass: &Mass, weighed: &Weighed, context: Context) -> Amounts {
    let mut middle = plain(mass, weighed, context);
    if let Some((low, high)) = &weighed.line.range {
        let ends = [low, high].map(|end| plain(&(mass * end), weighed, context));
        middle = ranged(middle, &ends);
    } else if weighed.mass.as_ref() == Some(mass) {
        written::own(&mut middle, weighed, context);
    }
    if let Some(hedge) = &weighed.line.hedge {
        let forms =
            [Some(&mut middle.metric), Some(&mut middle.us), middle.measure.as_mut()];
        for shown in forms.into_iter().flatten() {
            shown.hedge = Some(context.words.author(hedge));
        }
    }
    middle
}

/// The middle of a range with the words of its ends.
fn ranged(middle: Amounts, [low, high]: &[Amounts; 2]) -> Amounts {
    let measure = match (middle.measure, &low.measure, &high.measure) {
        (Some(middle), Some(low), Some(high)) => Some(middle.between(low, high)),
        _ => None,
    };
    Amounts {
        metric: middle.metric.between(&low.metric, &high.metric),
        us: middle.us.between(&low.us, &high.us),
        measure,
    }
}

fn plain(mass: &Mass, weighed: &Weighed, context: Context) -> Amounts {
    let tolerance = tolerance(weighed);
    let item = match weighed.source {
        MadeOf::Item(item) => Some(item),
        MadeOf::Recipe(_) => None,
    };
    let measure = item
        .filter(|_| weighed.piece.is_none())
        .and_then(|item| spoons(item, context))
        .and_then(|spoons| show::household(mass, &spoons, &tolerance));
    Amounts {
        metric: show::metric(mass, &tolerance, context.fine()),
        us: show::us_weight(mass, &tolerance),
        measure,
    }
}

fn tolerance(weighed: &Weighed) -> Exact {
    match weighed.source {
        MadeOf::Item(item) => item.tolerance(),
        MadeOf::Recipe(_) => exact(3, 100),
    }
}

/// Whether a step says so much in cups and spoons: where the author wrote them, or where it
/// is no more than four cups.
fn is_measured(mass: &Mass, weighed: &Weighed, context: Context) -> bool {
    let in_cups = |quantity: &Quantity| match quantity {
        Quantity::Unit(_, unit) => unit.millilitres(CupSet::Us).is_some(),
        Quantity::Sum(terms) => terms.iter().all(|(_, unit)| unit.grams().is_none()),
        Quantity::Pieces(..) | Quantity::Batches(_) => false,
    };
    let first = match &weighed.line.amount {
        Amount::Of(quantity) => Some(&quantity.value),
        Amount::Free(_) => None,
    };
    let also = weighed.line.also.as_ref().map(|also| &also.value);
    let cup = match weighed.source {
        MadeOf::Item(item) => item.volume(Unit::Cup, context.book.cups()),
        MadeOf::Recipe(_) => None,
    };
    [first, also].into_iter().flatten().any(in_cups)
        || cup.is_none_or(|cup| *mass.amount() <= cup * exact(4, 1))
}

/// What the course's cup and spoons hold of an ingredient.
fn spoons(item: &Item, context: Context) -> Option<Spoons> {
    let cups = context.book.cups();
    Some(Spoons {
        cup: item.volume(Unit::Cup, cups)?,
        tablespoon: item.volume(Unit::Tablespoon, cups)?,
        teaspoon: item.volume(Unit::Teaspoon, cups)?,
    })
}

fn free_words(weighed: &Weighed) -> String {
    match &weighed.line.amount {
        Amount::Free(words) => words.clone(),
        Amount::Of(_) => String::new(),
    }
}

/// Percent of the flour: a tenth below 10 %, half a percent above, both to what matters.
fn percent_words(percent: &Exact, words: &Words) -> String {
    let places = if *percent < exact(10, 1) { 2 } else { 1 };
    show::percent(percent, places, words)
}

/// Pieces with both ends of a range: `2–3 large`.
fn count(mass: &Mass, weighed: &Weighed, context: Context) -> Option<String> {
    let (word, grams) = weighed.piece.as_ref()?;
    let counted = |mass: &Mass| {
        let pieces = mass.amount() / grams;
        let (whole, rest) = whole_and_rest(&pieces, grams, &tolerance(weighed));
        Pieces { whole, rest, exactly: pieces, of: weighed, word }
    };
    let Some((low, high)) = &weighed.line.range else {
        return Some(counted(mass).words(context));
    };
    let [low, high] = [low, high].map(|end| counted(&(mass * end)));
    Some(match (&low.rest, &high.rest) {
        (None, None) if low.whole == high.whole => high.words(context),
        (None, None) => {
            let ends = [&low, &high].map(|end| end.whole.to_integer().to_string());
            high.named(&context.words.range(&ends[0], &ends[1]), context)
        }
        _ => context.words.apart(&low.words(context), &high.words(context)),
    })
}

/// A number of pieces of an ingredient.
struct Pieces<'a> {
    whole: Exact,
    rest: Option<Mass>,
    exactly: Exact,
    of: &'a Weighed<'a>,
    word: &'a str,
}

impl Pieces<'_> {
    /// Whole pieces, and what is left in grams: `2 large`, `1 stick + 25 g`. A part of an egg
    /// is beaten egg by weight: `1 large and 25 g of beaten egg`.
    fn words(&self, context: Context) -> String {
        let count = self.named(&self.whole.to_integer().to_string(), context);
        let weigh = |rest| show::metric(rest, &exact(3, 100), true).words(context.words);
        let egg = self.of.is(Kind::Egg);
        let of_egg = |key: &str, rest: &str| {
            let name = context.ingredient(self.of);
            let values = [("pieces", &*count), ("weight", rest), ("name", &name)];
            context.words.fill(key, &values)
        };
        match (self.whole.is_positive(), self.rest.as_ref().map(weigh)) {
            (_, None) => count,
            (true, Some(rest)) if egg => of_egg("count-and-beaten", &rest),
            (true, Some(rest)) => context.words.plus(&count, &rest),
            (false, Some(rest)) if egg => of_egg("count-beaten", &rest),
            (false, Some(rest)) => match show::vulgar(&self.exactly) {
                Some(part) => self.named(&part, context),
                None => rest,
            },
        }
    }

    /// A number with the word for the pieces; the pantry's own where the language has none.
    fn named(&self, number: &str, context: Context) -> String {
        if self.word == "each" {
            return number.to_owned();
        }
        let key = format!("piece-{}", self.word.replace(' ', "-"));
        let one = self.whole <= exact(1, 1);
        let count =
            if one { "1".to_owned() } else { self.whole.to_integer().to_string() };
        let values = [("number", number), ("count", &*count), ("name", self.word)];
        let known = context.words.find(&key).is_some();
        context.words.fill(if known { &key } else { "so-many-pieces" }, &values)
    }
}

/// Whole pieces and the weight left over; none where the nearest whole number is within the
/// tolerance.
fn whole_and_rest(
    pieces: &Exact,
    grams: &Exact,
    tolerance: &Exact,
) -> (Exact, Option<Mass>) {
    let near = pieces.round();
    if near.is_positive() && (&near - pieces).abs() <= pieces * tolerance {
        return (near, None);
    }
    let whole = pieces.trunc();
    let rest = Mass::grams((pieces - &whole) * grams);
    (whole, Some(rest))
}

/// A weight in both systems; empty where there is none.
pub(super) fn weight(mass: &Mass, kind: Kind, context: Context) -> Label {
    let item = Item { kind, ..Item::default() };
    weight_to(mass, &item.tolerance(), false, context)
}

/// A sum in the column of US weights.
fn weight_in(mass: &Mass, decimals: bool, context: Context) -> Label {
    weight_to(mass, &Item::default().tolerance(), decimals, context)
}

fn weight_to(mass: &Mass, tolerance: &Exact, decimals: bool, context: Context) -> Label {
    if !mass.is_positive() {
        return Label::default();
    }
    Label::new(
        show::metric(mass, tolerance, context.fine()).words(context.words),
        column(&show::us_weight(mass, tolerance), decimals).words(context.words),
    )
}

/// What a live value says of `share` of a line: as [`portion_of`], in one.
pub(super) fn share_of(
    weighed: &Weighed,
    share: &Exact,
    context: Context,
) -> Option<Label> {
    let (label, count) = portion_of(weighed, share, context)?;
    Some(match count {
        // A part of one says its weight itself: "2.8 g of beaten egg".
        Some(count) if count.contains(&label.metric) => Label::new(&*count, &*count),
        Some(count) => label.map(|amount| context.words.names(&[&count, amount])),
        None => label,
    })
}

/// What a step takes of a line: the weight, and in US units the measure where there is one;
/// and the pieces of counted things.
pub(super) fn portion_of(
    weighed: &Weighed,
    share: &Exact,
    context: Context,
) -> Option<(Label, Option<String>)> {
    let mass = weighed.mass.as_ref()? * share;
    let amounts = amounts(&mass, weighed, context);
    let measure = amounts.measure.filter(|_| is_measured(&mass, weighed, context));
    let us = measure.unwrap_or(amounts.us).words(context.words);
    let label = Label::new(amounts.metric.words(context.words), us);
    Some((label, count(&mass, weighed, context)))
}

/// The sums.
fn totals(work: &Work, decimals: bool, context: Context) -> Totals {
    let total = &work.formula.total() * &work.factor;
    let flour = match work.body.flour_is_open(&work.formula) {
        true => Mass::zero(),
        false => &work.percentages.flour * &work.factor,
    };
    let mut sections: Vec<SectionTotal> = Vec::new();
    for line in &work.formula.lines {
        let name = context.words.author(line.section);
        if sections.iter().all(|section| section.section != name) {
            let mass = &section_mass(line.section, &work.formula) * &work.factor;
            if !mass.is_positive() {
                continue;
            }
            sections.push(SectionTotal {
                section: name,
                grams: round(mass.amount(), 3),
                weight: weight_in(&mass, decimals, context),
            });
        }
    }
    Totals {
        grams: round(total.amount(), 3),
        flour_g: round(flour.amount(), 3),
        hydration_percent: work.hydration.as_ref().map(|percent| round(percent, 2)),
        true_hydration: work.counting == Counting::Water,
        each_dough: one_dough(work, context),
        weight: weight_in(&total, decimals, context),
        flour: weight(&flour, Kind::Other, context),
        sections,
    }
}

/// The weight of one section as written.
pub(super) fn section_mass(section: &str, formula: &Formula) -> Mass {
    formula.lines.iter().filter(|line| line.section == section).map(Weighed::mass).sum()
}

/// Each preferment both ways: with what it is made from, and what the dough adds.
pub(super) fn preferments(work: &Work, context: Context) -> Vec<Preferment> {
    let all = work.recipe.preferments.iter();
    all.filter_map(|it| preferment(&it.section.value, work, context)).collect()
}

fn preferment(name: &str, work: &Work, context: Context) -> Option<Preferment> {
    let inside = made_from(name, work);
    let of = |inside_it: bool| {
        let lines = work.formula.lines.iter();
        let lines = lines
            .filter(|line| inside.contains(&line.section) == inside_it)
            .filter(|line| inside_it || !line.purpose.is_put_on());
        Formula::of(lines.cloned().collect())
    };
    let own = expand(&of(true), &work.factor);
    let rest = expand(&of(false), &work.factor);
    let flour = &work.percentages.flour * &work.factor;
    let own_flour = of_kind(&own, Kind::Flour);
    let own_water = of_kind(&own, Kind::Liquid);
    let hundred = exact(100, 1);
    Some(Preferment {
        section: context.words.author(name),
        flour_percent: round(&(own_flour.over(&flour)? * &hundred), 2),
        hydration_percent: round(&(own_water.over(&own_flour)? * &hundred), 2),
        overall: overall(&own, &rest, &flour, context),
    })
}

/// A preferment's section, and those of the preferments that it is made from.
fn made_from<'w>(name: &str, work: &'w Work) -> Vec<&'w str> {
    let mut sections: Vec<&str> = Vec::new();
    let mut next = Some(name);
    while let Some(name) = next {
        let it = work.recipe.preferments.iter().find(|it| it.section.value == name);
        let Some(it) = it.filter(|it| !sections.contains(&it.section.value.as_str()))
        else {
            break;
        };
        sections.push(&it.section.value);
        next = it.from.as_ref().map(|from| from.value.as_str());
    }
    sections
}

fn overall(
    own: &Contents,
    rest: &Contents,
    flour: &Mass,
    context: Context,
) -> Vec<OverallLine> {
    let mut names: Vec<&str> = own.keys().copied().collect();
    names.extend(rest.keys().filter(|name| !own.contains_key(*name)));
    let mut lines: Vec<OverallLine> = names
        .iter()
        .filter_map(|name| overall_line(name, own, rest, flour, context))
        .collect();
    lines.sort_by(|a, b| b.percent.total_cmp(&a.percent));
    lines
}

fn overall_line(
    name: &str,
    own: &Contents,
    rest: &Contents,
    flour: &Mass,
    context: Context,
) -> Option<OverallLine> {
    let mass =
        |of: &Contents| of.get(name).map_or_else(Mass::zero, |(_, mass)| mass.clone());
    let (own, rest) = (mass(own), mass(rest));
    let percent = (own.clone() + rest.clone()).over(flour)? * exact(100, 1);
    let item = context.book.pantry.find(name);
    let kind = item.map_or(Kind::Other, |item| item.kind);
    // What a preferment has of yeast needs decimals: so its column has them.
    let tolerance = Item { kind, ..Item::default() }.tolerance();
    let label = |mass: &Mass| weight_to(mass, &tolerance, true, context);
    (percent > exact(0, 1)).then(|| OverallLine {
        ingredient: item.map_or(name, Item::title).to_owned(),
        preferment_g: float(own.amount()),
        dough_g: float(rest.amount()),
        percent: round(&percent, 3),
        preferment: label(&own),
        dough: label(&rest),
        percent_label: percent_words(&percent, context.words),
    })
}
