//! An amount line: its unit, and what it is of.

use std::collections::BTreeSet;
use std::ops::Range;

use crate::measure::{CupSet, Unit};
use crate::model::Ingredient;
use crate::pantry::{Item, Portion};
use crate::read::{Locale, amount_line, behind_amount};
use crate::said;

use super::Here;
use super::offer::{Offer, OfferKind, fits};

/// No more ingredients than this are offered: whoever types on gets others.
const MOST: usize = 60;

/// How the course writes amounts.
pub(super) fn locale(here: Here) -> Locale {
    let course = here.edition.content.course.as_ref();
    course.map_or_else(Locale::english, |it| Locale::of(&it.language))
}

/// What may be written in an amount line: behind its number a unit, behind that an ingredient
/// or a recipe.
pub(super) fn offers(here: Here, line: &Range<usize>) -> Vec<Offer> {
    let typed = here.typed(line);
    if typed.contains([',', '(', '[']) {
        return Vec::new();
    }
    let digits = typed.trim_end_matches(|sign: char| !sign.is_ascii_digit()).len();
    let behind = behind_amount(typed, locale(here));
    let in_unit =
        digits > 0 && behind.is_none_or(|(at, unit)| !unit || at == typed.len());
    let mut found = Vec::new();
    if in_unit && !typed[digits..].trim_start().contains(' ') {
        let lead = typed[digits..].len() - typed[digits..].trim_start().len();
        found.extend(units(here, line, line.start + digits + lead));
    }
    let name = behind.map_or(0, |(at, _)| at);
    let blank = typed[..name].ends_with(' ') || name == 0 || name < typed.len();
    if blank && (name == 0) == behind.is_none() {
        let lead = typed[name..].len() - typed[name..].trim_start().len();
        let start = line.start + name + lead;
        let rest = here.words(&(start..line.end));
        let end = start + rest.find([',', '(', '[']).unwrap_or(rest.len());
        let place =
            start..(start + here.words(&(start..end)).trim_end().len()).max(here.spot.at);
        found.extend(recipes(here, &place));
        found.extend(ingredients(here, &place));
    }
    found
}

/// The units that the line's ingredient knows; every one where it names none.
fn units(here: Here, line: &Range<usize>, start: usize) -> Vec<Offer> {
    let rest = here.words(&(start..line.end));
    let end = start + rest.find(' ').unwrap_or(rest.len());
    let place = start..end.max(here.spot.at);
    let typed = here.typed(&place);
    let item = named(here, line, end);
    let mut words: Vec<String> = Vec::new();
    for unit in ORDER {
        if item.is_none_or(|item| knows(item, unit)) {
            words.extend(spelt(here, unit));
        }
    }
    let pieces = item.into_iter().flat_map(|item| &item.portions);
    words.extend(pieces.filter_map(|portion| match portion {
        Portion::Piece(name, _) => Some(name.clone()),
        Portion::Volume(..) => None,
    }));
    let fit = words.iter().filter(|word| fits(typed, word));
    fit.map(|word| Offer::whole(OfferKind::Unit, word, place.clone())).collect()
}

/// The units that a line may have, the commonest first.
const ORDER: [Unit; 12] = [
    Unit::Gram,
    Unit::Kilogram,
    Unit::Percent,
    Unit::Millilitre,
    Unit::Litre,
    Unit::Ounce,
    Unit::Pound,
    Unit::Teaspoon,
    Unit::Tablespoon,
    Unit::Cup,
    Unit::FluidOunce,
    Unit::Pint,
];

/// A unit in the words of the course's language, where it has some, and as all share it.
fn spelt(here: Here, unit: Unit) -> Vec<String> {
    let own = here.edition.pantry.lexicon().unit_name(unit);
    own.into_iter().chain([unit.word()]).map(str::to_owned).collect()
}

/// Whether so much of an ingredient can be weighed.
fn knows(item: &Item, unit: Unit) -> bool {
    let is_volume = unit.millilitres(CupSet::Us).is_some();
    !is_volume || item.volume(unit, CupSet::Us).is_some()
}

/// The ingredient that a line names, as it stands or behind its unit.
fn named<'a>(here: Here<'a>, line: &Range<usize>, end: usize) -> Option<&'a Item> {
    let pantry = &here.edition.pantry;
    let whole = amount_line(here.words(line), locale(here));
    let of = |name: &str| pantry.find_pieces(name).map(|(item, _)| item);
    let read = whole.and_then(|line| match &line.ingredient.value {
        Ingredient::Pantry(name) => of(name),
        Ingredient::Recipe { .. } => None,
    });
    let rest = here.words(&(end..line.end));
    read.or_else(|| of(rest.split([',', '(']).next().unwrap_or("").trim()))
}

/// Recipes to be included: `[layered dough](layered-dough.md)`.
fn recipes(here: Here, place: &Range<usize>) -> Vec<Offer> {
    let typed = here.typed(place);
    let own = |file: &str| *file == *here.spot.file;
    let all = here.edition.content.recipes.iter().filter(|it| it.way.is_none());
    let others = all.filter(|it| !own(&it.place.file) && !typed.is_empty());
    others
        .filter(|it| fits(typed, &it.title.value) || fits(typed, &it.name))
        .map(|it| {
            let title = it.title.value.to_lowercase();
            let link = format!("[{title}]({}.md)", it.name);
            Offer::whole(OfferKind::Recipe, &it.title.value, place.clone())
                .written(link)
                .about(&it.summary)
        })
        .collect()
}

/// Ingredients by all their names: those that the course uses first. Without a letter typed
/// those alone.
pub(super) fn ingredients(here: Here, place: &Range<usize>) -> Vec<Offer> {
    let typed = here.typed(place);
    let pantry = &here.edition.pantry;
    let used = used(here);
    let offer = |name: &str, item: &Item| {
        let offer = Offer::whole(OfferKind::Ingredient, name, place.clone());
        let of = item.title();
        let about = (of != name).then(|| said!("here-also", of));
        Offer { about, ..offer }
    };
    let titles = pantry.items().map(|item| (item.title(), item));
    let (own, others): (Vec<_>, Vec<_>) = titles
        .filter(|(name, _)| fits(typed, name))
        .partition(|(_, it)| used.contains(&*it.name));
    let mut found: Vec<Offer> =
        own.iter().map(|(name, item)| offer(name, item)).collect();
    if !typed.is_empty() {
        found.extend(others.iter().map(|(name, item)| offer(name, item)));
        let titled = |name: &str, item: &Item| item.title() == name;
        let also = pantry
            .names()
            .filter(|(name, item)| fits(typed, name) && !titled(name, item));
        found.extend(also.map(|(name, item)| offer(name, item)));
    }
    let starts =
        |offer: &Offer| offer.label.to_lowercase().starts_with(&typed.to_lowercase());
    found.sort_by_key(|offer| !starts(offer));
    found.truncate(MOST);
    found
}

/// The names of the ingredients that the course's recipes use.
fn used(here: Here) -> BTreeSet<String> {
    let sections = here.edition.content.recipes.iter().flat_map(|recipe| &recipe.formula);
    let lines = sections.flat_map(|section| &section.lines);
    let named = lines.filter_map(|line| match &line.ingredient.value {
        Ingredient::Pantry(name) => here.edition.pantry.find_pieces(name),
        Ingredient::Recipe { .. } => None,
    });
    named.map(|(item, _)| item.name.clone()).collect()
}
