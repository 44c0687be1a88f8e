//! The weigh-out: what goes into the tubs of one batch, in the order of use.

use crate::formula::{Book, Scaling, Source};
use crate::measure::{Mass, exact, show};
use crate::model::{Each, Making};
use crate::words::Words;
use crate::work::Work;

use super::super::super::class::{ForWhom, Tub, TubLine};

/// Levels of included recipes that are weighed out.
const DEEPEST: usize = 16;

/// The tubs of every kind of batch in a class.
pub(super) fn tubs(
    works: &[(&Making, Work, u64)],
    book: Book,
    words: &Words,
) -> Vec<Tub> {
    let kinds = works.iter().map(|(making, work, sets)| {
        let mut lines = Vec::new();
        Walk { book, words, depth: 0 }.add(work, &mut lines);
        Tub {
            recipe: work.recipe.name.clone(),
            title: work.recipe.title.value.clone(),
            each: for_whom(making.each),
            sets: *sets,
            lines,
        }
    });
    kinds.collect()
}

/// Who makes it.
pub(super) fn for_whom(each: Each) -> ForWhom {
    match each {
        Each::Group => ForWhom::Group,
        Each::Baker => ForWhom::Baker,
        Each::Demonstration => ForWhom::Demonstration,
    }
}

/// What a batch is looked up in and put into words with, and how deep it lies in another.
#[derive(Clone, Copy)]
struct Walk<'a> {
    book: Book<'a>,
    words: &'a Words,
    depth: usize,
}

impl Walk<'_> {
    /// Adds what a batch uses, step by step; included doughs come where they are used.
    fn add(self, work: &Work, lines: &mut Vec<TubLine>) {
        let deeper = Self { depth: self.depth + 1, ..self };
        for (at, step) in work.recipe.steps().enumerate() {
            for (number, share) in &work.flow.uses[at] {
                let line = &work.formula.lines[*number];
                let mass = &(&line.mass() * share) * &work.factor;
                let item = match line.source {
                    Source::Item(item) => item,
                    Source::Recipe(inner) => {
                        let size = Scaling::Total(mass);
                        if let Ok(inner) = crate::work::work(inner, &size, self.book)
                            && self.depth < DEEPEST
                        {
                            deeper.add(&inner, lines);
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
                    metric: self
                        .weight(&mass, |mass| show::metric(mass, &exact(1, 100), true)),
                    us: self.weight(&mass, |mass| show::us_weight(mass, &exact(1, 100))),
                });
            }
        }
    }

    fn weight(self, mass: &Mass, shown: impl Fn(&Mass) -> show::Shown) -> String {
        if mass.amount().is_zero() {
            self.words.get("as-needed").to_owned()
        } else {
            shown(mass).words(self.words)
        }
    }
}
