//! What to buy for a class: every formula, times those who make it, plus the spare, less
//! the shelf, in whole packs. Money in the currency's smallest unit.

use std::collections::BTreeMap;

use num_traits::ToPrimitive;
use serde::Serialize;

use crate::formula::{Book, Scaling, expand};
use crate::measure::{Exact, Mass, ceil, exact, float, show};
use crate::model::{Class, Each, Making, Much};
use crate::pantry::Item;
use crate::work::{Work, work};

use super::table::number;
use super::tubs::{Tub, tubs};

/// Ingredients that come from the tap.
const FREE: [&str; 2] = ["water", "ice"];

/// The order list of a class.
#[derive(Clone, Debug, Serialize)]
pub struct Order {
    /// Version of this form.
    pub order: u32,
    /// The class's file name.
    pub class: String,
    /// Its title.
    pub title: String,
    /// Bakers.
    pub bakers: u32,
    /// Pieces made in all.
    pub pieces: u64,
    /// The spare, in percent.
    pub spare_percent: f64,
    /// What to buy, by name.
    pub lines: Vec<OrderLine>,
    /// ISO 4217 code.
    pub currency: String,
    /// The packs to buy, all together; without those of unknown price; `null` where no price
    /// is known.
    pub total_minor: Option<i64>,
    /// The total over the bakers, rounded; `null` where no price is known.
    pub per_student_minor: Option<i64>,
    /// The total over the pieces, rounded; `null` where nothing is made in pieces.
    pub per_piece_minor: Option<i64>,
    /// What has no price or pack.
    pub unpriced: Vec<String>,
    /// The weigh-out: one tub list for each kind of batch.
    pub tubs: Vec<Tub>,
}

/// One ingredient of the order.
#[derive(Clone, Debug, Serialize)]
pub struct OrderLine {
    /// The ingredient.
    pub ingredient: String,
    /// Needed in all, with the spare, in grams.
    pub need_g: f64,
    /// The same in words.
    pub need: String,
    /// Of that on the shelf, in grams.
    pub shelf_g: f64,
    /// One pack, in grams.
    pub pack_g: Option<f64>,
    /// Packs to buy; `null` where no pack is known.
    pub packs: Option<u64>,
    /// Left over afterwards, in grams.
    pub left_g: Option<f64>,
    /// The packs' price.
    pub cost_minor: Option<i64>,
    /// Whether it is only for dusting or to taste, so that no weight is known.
    pub as_needed: bool,
    /// The weights in US units.
    pub us: UsWeights,
}

/// The weights of one line in US units, in words.
#[derive(Clone, Debug, Default, Serialize)]
pub struct UsWeights {
    /// Needed in all; empty where no weight is known.
    pub need: String,
    /// One pack.
    pub pack: Option<String>,
    /// Left over afterwards.
    pub left: Option<String>,
}

/// Works out the order.
///
/// # Errors
/// The reason, where a recipe is missing or cannot be scaled so.
pub fn order(class: &Class, book: Book) -> Result<Order, &'static str> {
    let mut needs: BTreeMap<&str, (&Item, Mass)> = BTreeMap::new();
    let mut pieces = 0;
    let spare = exact(1, 1) + &class.spare;
    let mut works = Vec::new();
    for making in &class.makes {
        let work = scaled(making, book)?;
        let count = makers(class, making);
        pieces += work.pieces.unwrap_or(0) * count;
        let factor = &work.factor * Exact::from_integer(count.into()) * &spare;
        for (name, (item, mass)) in expand(&work.formula, &factor, book) {
            let entry = needs.entry(name).or_insert((item, Mass::zero()));
            entry.1 = entry.1.clone() + mass;
        }
        works.push((making, work, count));
    }
    let lines: Vec<OrderLine> =
        needs.values().map(|(item, need)| line(item, &whole(need), class)).collect();
    let costs: Vec<i64> = lines.iter().filter_map(|line| line.cost_minor).collect();
    let total = (!costs.is_empty()).then(|| costs.iter().sum::<i64>());
    let course = book.content.course.as_ref();
    Ok(Order {
        order: 1,
        class: class.name.clone(),
        title: class.title.value.clone(),
        bakers: class.bakers.value,
        pieces,
        spare_percent: float(&(&class.spare * exact(100, 1))),
        currency: course.map_or_else(|| "EUR".into(), |course| course.currency.clone()),
        total_minor: total,
        per_student_minor: total.and_then(|sum| share(sum, class.bakers.value.into())),
        per_piece_minor: total.and_then(|sum| share(sum, pieces)),
        unpriced: unpriced(&lines),
        tubs: tubs(&works, book),
        lines,
    })
}

/// A recipe at the size that one group makes.
pub(super) fn scaled<'a>(
    making: &'a Making,
    book: Book<'a>,
) -> Result<Work<'a>, &'static str> {
    let recipe =
        book.content.recipe(&making.recipe.value).ok_or("a recipe is missing")?;
    work(recipe, &scaling(making), book)
}

/// How much of its recipe each maker makes.
pub(super) fn scaling(making: &Making) -> Scaling {
    match &making.much {
        Much::Pieces(pieces) => Scaling::Pieces(*pieces),
        Much::Batches(batches) => Scaling::Batches(batches.clone()),
    }
}

/// How many make it.
fn makers(class: &Class, making: &Making) -> u64 {
    match making.each {
        Each::Group => class.groups().into(),
        Each::Baker => class.bakers.value.into(),
        Each::Demonstration => 1,
    }
}

/// What a scale at the shop can weigh, never less than needed: whole grams, tenths below
/// ten. Everything said of a line is worked out from this, so that its sums are sums.
fn whole(need: &Mass) -> Mass {
    let step = if *need < Mass::grams(exact(10, 1)) { 10 } else { 1 };
    let count = ceil(&(need.amount() * exact(step, 1)));
    Mass::grams(Exact::from_integer(count.into()) / exact(step, 1))
}

fn line(item: &Item, need: &Mass, class: &Class) -> OrderLine {
    let known =
        |(name, _): &&(crate::fault::Placed<String>, Mass)| name.value == item.name;
    let shelf =
        class.shelf.iter().find(known).map_or_else(Mass::zero, |(_, mass)| mass.clone());
    let bought = need.clone() - shelf.clone();
    let free = FREE.contains(&item.name.as_str());
    let pack = item.pack.as_ref().filter(|_| !free);
    let packs = pack
        .and_then(|pack| bought.over(pack))
        .map(|packs| if packs > Exact::zero() { ceil(&packs) } else { 0 });
    let left = pack.zip(packs).map(|(pack, packs)| {
        pack * &Exact::from_integer(packs.into()) + shelf.clone() - need.clone()
    });
    let as_needed = need.amount().is_zero();
    let left = left.filter(|_| !as_needed);
    OrderLine {
        ingredient: item.name.clone(),
        need_g: need.float(),
        need: if as_needed { String::new() } else { grams(need.float()) },
        shelf_g: shelf.float(),
        pack_g: pack.map(Mass::float),
        packs: packs.filter(|_| !as_needed),
        left_g: left.as_ref().map(Mass::float),
        cost_minor: item
            .price_minor
            .zip(packs)
            .filter(|_| !as_needed)
            .and_then(|(price, packs)| price.checked_mul(i64::try_from(packs).ok()?)),
        as_needed,
        us: UsWeights {
            need: if as_needed { String::new() } else { ounces(need) },
            pack: pack.map(ounces),
            left: left.as_ref().map(ounces),
        },
    }
}

/// Grams in words, as in the table: to a tenth, without one that is nought.
pub(super) fn grams(grams: f64) -> String {
    format!("{} g", number(grams))
}

fn ounces(mass: &Mass) -> String {
    show::us_weight(mass, &exact(1, 100)).words
}

/// What must be bought and has no price.
fn unpriced(lines: &[OrderLine]) -> Vec<String> {
    let open = lines.iter().filter(|line| {
        let free = FREE.contains(&line.ingredient.as_str());
        line.cost_minor.is_none() && !line.as_needed && !free
    });
    open.map(|line| line.ingredient.clone()).collect()
}

/// A sum over a number, to the nearest whole; `None` over nought.
fn share(total: i64, over: u64) -> Option<i64> {
    (over > 0)
        .then(|| Exact::new(total.into(), over.into()).round().to_integer().to_i64())?
}
