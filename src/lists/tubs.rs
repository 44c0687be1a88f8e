//! The weigh-out: what goes into the tubs of one batch, in the order of use.

use serde::Serialize;

use crate::formula::{Book, Scaling, Source};
use crate::measure::{Mass, exact, show};
use crate::model::{Each, Making};
use crate::work::Work;

/// Levels of included recipes that are weighed out.
const DEEPEST: usize = 16;

/// The tubs of one kind of batch.
#[derive(Clone, Debug, Serialize)]
pub struct Tub {
    /// The recipe.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// Who gets one: `group`, `baker` or `demonstration`.
    pub each: &'static str,
    /// How many such sets are weighed out.
    pub sets: u64,
    /// What goes in, in the order of use.
    pub lines: Vec<TubLine>,
}

/// One weighing.
#[derive(Clone, Debug, Serialize)]
pub struct TubLine {
    /// The recipe it goes into: another one's for included doughs.
    pub recipe: String,
    /// The step that uses it first.
    pub step: String,
    /// The step's heading.
    pub title: String,
    /// The ingredient.
    pub ingredient: String,
    /// Grams; `null` where no weight is known.
    pub grams: Option<f64>,
    /// The weight in words.
    pub metric: String,
    /// The same in US units.
    pub us: String,
}

/// The tubs of every kind of batch in a class.
pub(super) fn tubs(works: &[(&Making, Work, u64)], book: Book) -> Vec<Tub> {
    let kinds = works.iter().map(|(making, work, sets)| {
        let mut lines = Vec::new();
        add(work, book, 0, &mut lines);
        Tub {
            recipe: work.recipe.name.clone(),
            title: work.recipe.title.value.clone(),
            each: match making.each {
                Each::Group => "group",
                Each::Baker => "baker",
                Each::Demonstration => "demonstration",
            },
            sets: *sets,
            lines,
        }
    });
    kinds.collect()
}

/// Adds what a batch uses, step by step; included doughs come where they are used.
fn add(work: &Work, book: Book, depth: usize, lines: &mut Vec<TubLine>) {
    for (at, step) in work.recipe.steps().enumerate() {
        for (number, share) in &work.flow.uses[at] {
            let line = &work.formula.lines[*number];
            let mass = &(&line.mass() * share) * &work.factor;
            let item = match line.source {
                Source::Item(item) => item,
                Source::Recipe(inner) => {
                    if let Ok(inner) =
                        crate::work::work(inner, &Scaling::Total(mass), book)
                        && depth < DEEPEST
                    {
                        add(&inner, book, depth + 1, lines);
                    }
                    continue;
                }
            };
            lines.push(TubLine {
                recipe: work.recipe.name.clone(),
                step: step.name.clone(),
                title: step.title.value.clone(),
                ingredient: item.name.clone(),
                grams: (!mass.amount().is_zero()).then(|| mass.float()),
                metric: words(&mass, |mass| show::metric(mass, &exact(1, 100), true)),
                us: words(&mass, |mass| show::us_weight(mass, &exact(1, 100))),
            });
        }
    }
}

fn words(mass: &Mass, shown: impl Fn(&Mass) -> show::Shown) -> String {
    if mass.amount().is_zero() { "as needed".into() } else { shown(mass).words }
}
