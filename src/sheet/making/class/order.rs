//! What to buy for a class: every formula, times those who make it, plus the spare, less
//! the shelf, in whole packs. Money in the currency's smallest unit.

use std::collections::BTreeMap;

use num_traits::ToPrimitive;

use crate::fault::Placed;
use crate::formula::{Book, Formula, MadeOf, expand};
use crate::measure::show::{self, Notation, Sign};
use crate::measure::{Exact, Mass, ceil, exact, float};
use crate::model::{Class, Each, Making, Purpose};
use crate::pantry::{Item, Kind, Portion};
use crate::plan::{Unclear, scaled};
use crate::words::Words;
use crate::work::Work;

use super::super::super::Units;
use super::super::super::class::{ForWhom, Order, OrderLine, OrderSheet, UsWeights};
use super::tubs::{for_whom, tubs};

/// Grams of what is strewn without a weight that are bought for a batch of the written size,
/// or a smaller one: common practice, no source.
const DUSTING: i64 = 30;
/// Ingredients that come from the tap.
const FREE: [&str; 2] = ["water", "ice"];

/// One recipe of an order, at the size that each of its makers makes.
pub(super) struct Ordered<'a> {
    /// Who makes it.
    pub(super) each: ForWhom,
    /// The recipe, worked out at that size.
    pub(super) work: Work<'a>,
    /// How many make it.
    pub(super) makers: u64,
}

/// For whom is ordered.
struct Buyer<'a> {
    /// The class's file name, or those of the recipes.
    name: String,
    title: String,
    /// The bakers of a class.
    bakers: Option<u32>,
    /// What is bought beyond the need, as a share of it.
    spare: Exact,
    /// What is there already.
    shelf: &'a [(Placed<String>, Mass)],
}

/// Works out the order of a class.
///
/// # Errors
/// The reason, where a recipe is missing or cannot be scaled so.
pub fn order(class: &Class, book: Book, words: &Words) -> Result<Order, Unclear> {
    let ordered = |making: &Making| {
        let (each, makers) = (for_whom(making.each), makers(class, making));
        Ok(Ordered { each, work: scaled(making, book)?, makers })
    };
    let all = class.makes.iter().map(ordered).collect::<Result<Vec<_>, Unclear>>()?;
    let buyer = Buyer {
        name: class.name.clone(),
        title: class.title.value.clone(),
        bakers: Some(class.bakers.value),
        spare: class.spare.clone(),
        shelf: &class.shelf,
    };
    Ok(order_of(&all, buyer, book, words))
}

/// Works out what is bought and weighed out for recipes that one person makes together, a
/// dough that they share once: nothing is spare, and nothing on a shelf.
pub fn order_at_home(works: Vec<Work>, book: Book, words: &Words) -> Order {
    let ordered = |work| Ordered { each: ForWhom::Home, work, makers: 1 };
    let all: Vec<Ordered> = works.into_iter().map(ordered).collect();
    let recipes = || all.iter().map(|it| it.work.recipe);
    let names: Vec<&str> = recipes().map(|recipe| recipe.name.as_str()).collect();
    let titles: Vec<String> = recipes().map(|it| it.title.value.clone()).collect();
    let buyer = Buyer {
        name: names.join(","),
        title: words.list(&titles),
        bakers: None,
        spare: Exact::zero(),
        shelf: &[],
    };
    order_of(&all, buyer, book, words)
}

fn order_of(all: &[Ordered], buyer: Buyer, book: Book, words: &Words) -> Order {
    let spare = exact(1, 1) + &buyer.spare;
    let needs = needs(all, &spare);
    let lines: Vec<OrderLine> = needs
        .values()
        .map(|(item, need)| line(item, &whole(need), buyer.shelf, book, words))
        .collect();
    let pieces = all.iter().map(|it| it.work.pieces.unwrap_or(0) * it.makers).sum();
    let costs: Vec<i64> = lines.iter().filter_map(|line| line.cost_minor).collect();
    let total = (!costs.is_empty()).then(|| costs.iter().sum::<i64>());
    let course = book.content.course.as_ref();
    let each_student = buyer.bakers.zip(total);
    Order {
        order: 1,
        class: buyer.name,
        title: buyer.title,
        bakers: buyer.bakers,
        pieces,
        spare_percent: float(&(buyer.spare * exact(100, 1))),
        currency: course.map_or_else(|| "EUR".into(), |course| course.currency.clone()),
        total_minor: total,
        per_student_minor: each_student.and_then(|(of, sum)| share(sum, of.into())),
        per_piece_minor: total.and_then(|sum| share(sum, pieces)),
        unpriced: unpriced(needs.values().map(|(item, _)| *item), &lines),
        tubs: tubs(all, &spare, book, words),
        lines,
    }
}

/// What all need of each ingredient, `spare` times, with what is strewn without a weight.
fn needs<'a>(all: &[Ordered<'a>], spare: &Exact) -> BTreeMap<&'a str, (&'a Item, Mass)> {
    let mut needs: BTreeMap<&str, (&Item, Mass)> = BTreeMap::new();
    for Ordered { work, makers, .. } in all {
        let count = Exact::from_integer((*makers).into());
        let factor = &work.factor * &count * spare;
        for (name, (item, mass)) in expand(&work.formula, &factor) {
            let entry = needs.entry(name).or_insert((item, Mass::zero()));
            entry.1 = entry.1.clone() + mass;
        }
        let least = exact(1, 1);
        let size = if work.factor > least { work.factor.clone() } else { least };
        let batches = size * count;
        for item in dusted(&work.formula) {
            let entry = needs.entry(&item.name).or_insert((item, Mass::zero()));
            entry.1 = entry.1.clone() + &Mass::grams(exact(DUSTING, 1)) * &batches;
        }
    }
    needs
}

/// What is strewn without a weight, of a recipe and of what it includes; an item once for each
/// line.
fn dusted<'a>(formula: &Formula<'a>) -> Vec<&'a Item> {
    let mut found = Vec::new();
    for line in &formula.lines {
        if let Some((_, inner)) = line.included() {
            found.extend(dusted(inner));
        }
        if let (Purpose::Dusting, None, MadeOf::Item(item)) =
            (line.purpose, &line.mass, line.source)
        {
            found.push(item);
        }
    }
    found
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

fn line(
    item: &Item,
    need: &Mass,
    shelf: &[(Placed<String>, Mass)],
    book: Book,
    words: &Words,
) -> OrderLine {
    let own = |name: &str| book.pantry.find(name).is_some_and(|of| of.name == item.name);
    let there = shelf.iter().filter(|(name, _)| own(&name.value));
    let shelf: Mass = there.map(|(_, mass)| mass.clone()).sum();
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
        ingredient: item.title().to_owned(),
        need_g: need.float(),
        need: if as_needed { String::new() } else { grams(need.float(), words) },
        count: whole_eggs(item, need).filter(|_| !as_needed),
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
            need: if as_needed { String::new() } else { ounces(need, words) },
            pack: pack.map(|pack| ounces(pack, words)),
            left: left.as_ref().map(|left| ounces(left, words)),
        },
    }
}

/// Eggs are bought whole: the fewest that hold so much.
fn whole_eggs(item: &Item, need: &Mass) -> Option<u64> {
    eggs(item, need).map(|count| ceil(&count))
}

/// How many eggs of the usual size weigh so much. No other kind is cracked.
pub(super) fn eggs(item: &Item, need: &Mass) -> Option<Exact> {
    let piece = |name: &str| {
        item.portions.iter().find_map(|portion| match portion {
            Portion::Piece(own, grams) if own == name => Some(grams),
            Portion::Piece(..) | Portion::Volume(..) => None,
        })
    };
    let grams = piece("large").or_else(|| piece("each"))?;
    (item.kind == Kind::Egg).then(|| need.amount() / grams)
}

/// Grams in words, as in the table: to a tenth, without one that is nought.
pub fn grams(grams: f64, words: &Words) -> String {
    words.of(&show::marked(&show::tenths(grams), words), Sign::GRAM)
}

fn ounces(mass: &Mass, words: &Words) -> String {
    show::us_weight(mass, &exact(1, 100)).words(words)
}

/// What must be bought and has no price.
fn unpriced<'i>(
    items: impl Iterator<Item = &'i Item>,
    lines: &[OrderLine],
) -> Vec<String> {
    let open = items.zip(lines).filter(|(item, line)| {
        let free = FREE.contains(&item.name.as_str());
        line.cost_minor.is_none() && !line.as_needed && !free
    });
    open.map(|(_, line)| line.ingredient.clone()).collect()
}

/// A sum over a number, to the nearest whole; `None` over nought.
fn share(total: i64, over: u64) -> Option<i64> {
    (over > 0)
        .then(|| Exact::new(total.into(), over.into()).round().to_integer().to_i64())?
}

/// The order with every weight in `units`.
pub(super) fn in_units(order: &Order, units: Units, words: &Words) -> OrderSheet {
    let with = |minor: i64| {
        let sum = show::marked(&show::money(minor), words);
        words.fill("money", &[("sum", &sum), ("currency", &order.currency)])
    };
    let other = match units {
        Units::Metric => Units::Us,
        Units::Us => Units::Metric,
    };
    let needs = |line: &OrderLine| match line.as_needed {
        true => String::new(),
        false => need(line, other),
    };
    OrderSheet {
        lines: order.lines.iter().map(|line| weights(line, units, words)).collect(),
        others: order.lines.iter().map(needs).collect(),
        total: order.total_minor.map(with),
        per_student: order.per_student_minor.map(with),
        per_piece: order.per_piece_minor.map(with),
        unpriced: order.unpriced.clone(),
    }
}

/// Ingredient, need, packs, left over and cost of a line.
pub fn weights(line: &OrderLine, units: Units, words: &Words) -> [String; 5] {
    let (pack, left) = match units {
        Units::Metric => {
            [line.pack_g, line.left_g].map(|it| it.map(|it| grams(it, words))).into()
        }
        Units::Us => (line.us.pack.clone(), line.us.left.clone()),
    };
    let packs = line.packs.zip(pack).map(|(packs, pack)| format!("{packs} × {pack}"));
    let as_needed = || words.get("as-needed").to_owned();
    let need = match (line.as_needed, line.count) {
        (true, _) => as_needed(),
        (false, None) => need(line, units),
        (false, Some(count)) => {
            let (count, weight) = (count.to_string(), need(line, units));
            words.fill("order-count", &[("count", &count), ("weight", &weight)])
        }
    };
    let cost = line.cost_minor.map(|cost| show::marked(&show::money(cost), words));
    let cost = cost.unwrap_or_default();
    let [packs, left] = [packs, left].map(Option::unwrap_or_default);
    [line.ingredient.clone(), need, packs, left, cost]
}

fn need(line: &OrderLine, units: Units) -> String {
    match units {
        Units::Metric => line.need.clone(),
        Units::Us => line.us.need.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn english() -> Words {
        let theme = crate::theme::Theme::built_in();
        crate::read::words_in(&theme, "en").expect("the words")
    }

    fn flour() -> OrderLine {
        OrderLine {
            ingredient: "bread flour".into(),
            need_g: 2675.0,
            need: "2675 g".into(),
            count: None,
            shelf_g: 0.0,
            pack_g: Some(1500.0),
            packs: Some(2),
            left_g: Some(325.0),
            cost_minor: Some(390),
            as_needed: false,
            us: UsWeights {
                need: "5 lb 14¼ oz".into(),
                pack: Some("3 lb 5 oz".into()),
                left: Some("11½ oz".into()),
            },
        }
    }

    #[test]
    fn a_line_reads_in_either_units() {
        let metric = weights(&flour(), Units::Metric, &english());
        assert_eq!(metric, ["bread flour", "2675 g", "2 × 1500 g", "325 g", "3.90"]);
        let us = weights(&flour(), Units::Us, &english());
        let weights = ["5 lb 14¼ oz", "2 × 3 lb 5 oz", "11½ oz"];
        assert_eq!(us[1..4], weights);
    }

    #[test]
    fn what_has_no_weight_is_bought_as_needed() {
        let us = UsWeights::default();
        let line =
            OrderLine { as_needed: true, packs: None, left_g: None, us, ..flour() };
        assert_eq!(weights(&line, Units::Us, &english())[1..4], ["as needed", "", ""]);
    }
}
