//! A formula in grams: every line looked up and weighed.

use std::sync::Arc;

use crate::fault::{Fault, Place, Placed};
use crate::measure::{Exact, Mass, Unit, exact};
use crate::model::{Amount, AmountLine, Ingredient, Purpose, Quantity, Recipe};
use crate::pantry::{Item, Kind, Role, yaml_key};
use crate::read::{bad_amount, is_amount, is_part};
use crate::said;
use crate::statement::Lines;

use super::expand::{batch, expand, flour};
use super::{Book, beside, ways};

/// A formula, weighed as written.
#[derive(Clone, Debug)]
pub struct Formula<'a> {
    /// Every line, section by section.
    pub lines: Vec<Weighed<'a>>,
    /// What is wrong with the lines that are left out or carry no weight.
    pub faults: Vec<Fault>,
}

/// One line, weighed.
#[derive(Clone, Debug)]
pub struct Weighed<'a> {
    /// The section it stands in.
    pub section: &'a str,
    /// The line.
    pub line: &'a AmountLine,
    /// What it is for: as the words say, and roll-in fat where a section of nothing but fat
    /// stands in a recipe that locks fat in.
    pub purpose: Purpose,
    /// What it is.
    pub source: MadeOf<'a>,
    /// The formula of the recipe that it is; `None` for an ingredient.
    pub inner: Option<Arc<Formula<'a>>>,
    /// Its weight; `None` where it carries none.
    pub mass: Option<Mass>,
    /// The word for its pieces and how many grams one weighs, for counted lines.
    pub piece: Option<(String, Exact)>,
    /// What may be taken instead, whose allergens count too: `butter or margarine`. The first
    /// line has what the swaps of its recipe bring in.
    pub instead: Vec<&'a Item>,
    /// What its words name beside it, whose allergens count too: `with chopped walnuts`.
    pub named: Vec<&'a Item>,
}

/// What a line is made of.
#[derive(Clone, Copy, Debug)]
pub enum MadeOf<'a> {
    /// An ingredient of the pantry.
    Item(&'a Item),
    /// Another recipe.
    Recipe(&'a Recipe),
}

/// A line by its number in the formula.
pub type LineRef = usize;

impl<'a> Formula<'a> {
    /// A part of a sound formula.
    pub fn of(lines: Vec<Weighed<'a>>) -> Self {
        Self { lines, faults: Vec::new() }
    }

    /// Whether every line of `recipe`, and of what it includes, has its weight.
    pub fn is_whole(&self, recipe: &Recipe) -> bool {
        let written: usize =
            recipe.formula.iter().map(|section| section.lines.len()).sum();
        self.faults.is_empty()
            && recipe.unread.lines.is_empty()
            && self.lines.len() == written
            && self.included().all(|(inner, formula)| formula.is_whole(inner))
    }

    /// The recipes that its lines name, with their formulas.
    pub fn included(&self) -> impl Iterator<Item = (&'a Recipe, &Self)> {
        self.lines.iter().filter_map(Weighed::included)
    }

    /// The weight of all lines.
    pub fn total(&self) -> Mass {
        self.lines.iter().filter_map(|line| line.mass.clone()).sum()
    }
}

impl<'a> Weighed<'a> {
    /// The recipe that it is, with its formula.
    pub fn included(&self) -> Option<(&'a Recipe, &Formula<'a>)> {
        match self.source {
            MadeOf::Recipe(recipe) => Some((recipe, self.inner.as_deref()?)),
            MadeOf::Item(_) => None,
        }
    }

    /// The weight, nought where the line carries none.
    pub fn mass(&self) -> Mass {
        self.mass.clone().unwrap_or_else(Mass::zero)
    }

    /// Whether it is an ingredient of this kind.
    pub fn is(&self, kind: Kind) -> bool {
        matches!(self.source, MadeOf::Item(item) if item.kind == kind)
    }

    /// Whether it is an ingredient of this role.
    pub fn plays(&self, role: Role) -> bool {
        matches!(self.source, MadeOf::Item(item) if item.role == Some(role))
    }

    /// The name by which the pantry or the course knows it, in whatever language it is
    /// written.
    pub fn known_as(&self) -> &str {
        match self.source {
            MadeOf::Item(item) => &item.name,
            MadeOf::Recipe(recipe) => &recipe.name,
        }
    }

    /// The ingredient as the student reads it, without the word for its pieces.
    pub fn title(&self) -> &str {
        match self.source {
            MadeOf::Item(item) if self.piece.is_some() => item.title(),
            MadeOf::Item(_) | MadeOf::Recipe(_) => self.line.ingredient.value.title(),
        }
    }
}

/// Looks up and weighs every line of `recipe`, and of what it includes. Lines that cannot be
/// weighed are left out and named by a fault.
pub fn weigh<'a>(recipe: &'a Recipe, book: Book<'a>) -> Formula<'a> {
    let mut faults = Vec::new();
    let mut lines = Vec::new();
    for section in &recipe.formula {
        for line in &section.lines {
            match look_up(line, book) {
                Ok((source, piece, instead)) => {
                    let section = section.name.value.as_str();
                    let purpose = line.purpose;
                    let named = beside::named(line, recipe, book);
                    let inner = match source {
                        MadeOf::Recipe(inner) => Some(Arc::new(weigh(inner, book))),
                        MadeOf::Item(_) => None,
                    };
                    lines.push(Weighed {
                        section,
                        line,
                        purpose,
                        source,
                        inner,
                        mass: None,
                        piece,
                        instead,
                        named,
                    });
                }
                Err(fault) => faults.extend(fault),
            }
        }
    }
    let found = |line| look_up(line, book).map(|(source, _, instead)| (source, instead));
    let (offered, unknown) = ways::offered(recipe, book, &found);
    if let Some(line) = lines.first_mut() {
        line.instead.extend(offered);
    }
    faults.extend(unknown);
    for line in &mut lines {
        match weigh_line(line, book) {
            Ok(mass) => line.mass = mass,
            Err(fault) => faults.push(fault),
        }
    }
    faults.extend(weigh_shares(&mut lines, recipe));
    find_roll_in(&mut lines, recipe);
    Formula { lines, faults }
}

/// Sections that hold nothing but fat, in a recipe that locks fat in, are what it locks in.
fn find_roll_in(lines: &mut [Weighed], recipe: &Recipe) {
    if recipe.steps().all(|step| step.lock_in.is_none()) {
        return;
    }
    for at in 0..lines.len() {
        let section = lines[at].section;
        let mut own = lines.iter().filter(|line| line.section == section);
        let all_fat = own.all(|line| line.mass.is_some() && line.is(Kind::Fat));
        if all_fat && lines[at].purpose == Purpose::Mixed {
            lines[at].purpose = Purpose::RollIn;
        }
    }
}

type LookedUp<'a> = (MadeOf<'a>, Option<(String, Exact)>, Vec<&'a Item>);

/// What a line is made of; the fault where it is nothing known, none where it is a recipe
/// whose own file is at fault.
fn look_up<'a>(
    line: &'a AmountLine,
    book: Book<'a>,
) -> Result<LookedUp<'a>, Option<Fault>> {
    let name = match &line.ingredient.value {
        Ingredient::Pantry(name) => name,
        Ingredient::Recipe { recipe, .. } => {
            let found = book.content.recipe(recipe);
            let source = found.map(|recipe| (MadeOf::Recipe(recipe), None, Vec::new()));
            // What never ends has a fault of its own.
            if book.content.endless.contains_key(recipe) {
                return Err(None);
            }
            let unread = book.content.is_unread(recipe);
            let unknown = || unknown_recipe(recipe, &line.ingredient.place, book);
            return source.ok_or_else(|| (!unread).then(unknown));
        }
    };
    let known =
        book.pantry.find(name).is_some() || book.pantry.find_pieces(name).is_some();
    let (name, mut others) =
        if known { (name.clone(), Vec::new()) } else { beside::either(name, book) };
    if let Some(note) = &line.note {
        others.extend(beside::noted(&name, note, book).others);
    }
    let mut instead = Vec::new();
    for other in &others {
        instead.extend(alternative(other, line, book)?);
    }
    let unknown = || Some(unknown_name(&name, line, book));
    let noted = line.note.as_deref().and_then(|note| book.pantry.find_noted(&name, note));
    if !is_counted(line) {
        let found = noted.or_else(|| book.pantry.find(&name));
        return found.map(|item| (MadeOf::Item(item), None, instead)).ok_or_else(unknown);
    }
    let found = book.pantry.find_pieces(&name);
    let piece = found.as_ref().and_then(|(_, piece)| piece.clone());
    let item = noted.or(found.map(|(item, _)| item)).ok_or_else(unknown)?;
    let word = piece.filter(|piece| item.piece(piece).is_some());
    let word = word.unwrap_or_else(|| "each".into());
    let grams = item.piece(&word).ok_or_else(|| Some(uncounted(item, &line.place)))?;
    Ok((MadeOf::Item(item), Some((word, grams.clone())), instead))
}

/// What may be taken instead. Not knowing it is a fault: its allergens would be left out.
fn alternative<'a>(
    name: &str,
    line: &AmountLine,
    book: Book<'a>,
) -> Result<Option<&'a Item>, Option<Fault>> {
    let found = book.pantry.find(name).or(book.pantry.find_pieces(name).map(|it| it.0));
    if found.is_some() || is_part(name, book.pantry.lexicon()) {
        return Ok(found);
    }
    Err(Some(unknown_name(name, line, book)))
}

fn is_counted(line: &AmountLine) -> bool {
    matches!(&line.amount, Amount::Of(of) if matches!(of.value, Quantity::Pieces(..)))
}

/// The fault of a name that is not known: where it begins with a number, a sign or a unit,
/// the amount before it was not read to its end.
fn unknown_name(name: &str, line: &AmountLine, book: Book) -> Fault {
    if is_amount(name) {
        return bad_amount(&line.place);
    }
    book.pantry.unknown(&Placed::new(name.to_owned(), line.ingredient.place.clone()))
}

/// The fault of counting what has no known pieces.
fn uncounted(item: &Item, place: &Place) -> Fault {
    let name = &item.name;
    let message = said!("not-counted", name);
    let entry = yaml_key(name) + ":\n  density: 1 each =";
    Fault::error("no-unit", place, message)
        .help(said!("not-counted-help", entry = Lines(&entry)))
}

/// The fault of naming a recipe that is not there.
fn unknown_recipe(name: &str, place: &Place, book: Book) -> Fault {
    let known: Vec<&str> =
        book.content.recipes.iter().map(|recipe| recipe.name.as_str()).collect();
    let file = format!("recipes/{name}.md");
    let fault = Fault::error("missing-file", place, said!("missing-file", file));
    fault.one_of(name, &known, said!("names-recipes"))
}

/// The weight of a line that does not depend on other lines.
fn weigh_line(line: &Weighed, book: Book) -> Result<Option<Mass>, Fault> {
    let Amount::Of(quantity) = &line.line.amount else { return Ok(None) };
    match (&quantity.value, line.source) {
        (Quantity::Unit(_, Unit::Percent), _) => Ok(None),
        (Quantity::Unit(count, unit), source) => weigh_unit(count, *unit, source, book)
            .map(Some)
            .ok_or_else(|| no_density(line.title(), *unit, &quantity.place)),
        (Quantity::Sum(terms), source) => {
            let weigh = |(count, unit): &(Exact, Unit)| {
                weigh_unit(count, *unit, source, book)
                    .ok_or_else(|| no_density(line.title(), *unit, &quantity.place))
            };
            terms.iter().map(weigh).sum::<Result<Mass, Fault>>().map(Some)
        }
        (Quantity::Pieces(count, _), _) => {
            Ok(line.piece.as_ref().map(|(_, grams)| Mass::grams(count * grams)))
        }
        (Quantity::Batches(count), MadeOf::Recipe(_)) => {
            let batch = line.included().map(|(recipe, formula)| batch(formula, recipe));
            Ok(batch.map(|batch| &batch * count))
        }
        (Quantity::Batches(_), MadeOf::Item(item)) => Err(Fault::error(
            "bad-amount",
            &quantity.place,
            said!("no-batches", name = item.name),
        )
        .help(said!("no-batches-help"))),
    }
}

/// Grams in `count` units of something; `None` where its density is not known.
pub fn weigh_unit(count: &Exact, unit: Unit, source: MadeOf, book: Book) -> Option<Mass> {
    if let Some(grams) = unit.grams() {
        return Some(Mass::grams(count * grams));
    }
    match source {
        MadeOf::Item(item) => {
            item.volume(unit, book.cups()).map(|grams| Mass::grams(count * grams))
        }
        MadeOf::Recipe(_) => None,
    }
}

fn no_density(title: &str, unit: Unit, place: &Place) -> Fault {
    let unit = unit.word();
    let message = said!("no-density", unit, title);
    let entry = [&yaml_key(title), ":\n  density: 1 ", unit, " ="].concat();
    Fault::error("no-density", place, message).help(said!(
        "no-density-help",
        unit,
        entry = Lines(&entry)
    ))
}

/// Lines in percent of the flour, with the flour of what is included, and without flour that
/// is put on later. It is known where something with flour has a weight; flours in percent,
/// and the flour of recipes in percent, make up the rest to 100.
fn weigh_shares(lines: &mut [Weighed], recipe: &Recipe) -> Option<Fault> {
    let percent = |line: &Weighed| match &line.line.amount {
        Amount::Of(quantity) => quantity.value.percent().cloned(),
        Amount::Free(_) => None,
    };
    let first = lines.iter().find(|line| percent(line).is_some())?;
    let place = first.line.place.clone();
    let mixed = |line: &&Weighed| !line.purpose.is_put_on();
    let floury: Vec<(&Weighed, Exact)> = lines
        .iter()
        .filter(mixed)
        .filter_map(|line| Some((line, flour_share(line)?)))
        .collect();
    let weighed: Mass = floury.iter().map(|(line, share)| &line.mass() * share).sum();
    let shares: Exact =
        floury.iter().filter_map(|(line, share)| Some(percent(line)? * share)).sum();
    let rest = exact(100, 1) - shares;
    if weighed.amount().is_zero() || rest <= exact(0, 1) {
        let message = said!("no-anchor");
        return Some(
            Fault::error("no-anchor", &place, message)
                .help(said!("no-anchor-help", recipe = recipe.name)),
        );
    }
    let one_percent = &weighed * &(exact(1, 1) / rest);
    for line in lines {
        if let Some(share) = percent(line) {
            line.mass = Some(&one_percent * &share);
        }
    }
    None
}

/// The part of a line that is flour; `None` where it is neither flour nor a recipe with
/// flour.
fn flour_share(line: &Weighed) -> Option<Exact> {
    match line.source {
        MadeOf::Item(item) => (item.kind == Kind::Flour).then(|| exact(1, 1)),
        MadeOf::Recipe(_) => {
            let (recipe, formula) = line.included()?;
            let flour = flour(&expand(formula, &exact(1, 1)));
            flour.over(&batch(formula, recipe)).filter(Exact::is_positive)
        }
    }
}
