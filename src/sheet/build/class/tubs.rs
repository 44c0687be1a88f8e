//! The weigh-out: what goes into the tubs of one batch, in the order of use.

use crate::formula::{Book, Scaling, Source};
use crate::measure::{Mass, exact, show};
use crate::model::{Each, Making, Recipe};
use crate::words::Words;
use crate::work::{Work, taken};

use super::super::super::class::{ForWhom, Tub, TubLine};

/// Levels of included recipes that are weighed out.
const DEEPEST: usize = 16;

/// The tubs of every kind of batch in a class. A dough that goes into several recipes of the
/// same makers is made once and has tubs of its own.
pub(super) fn tubs(
    works: &[(&Making, Work, u64)],
    book: Book,
    words: &Words,
) -> Vec<Tub> {
    let mut tubs = Vec::new();
    for each in [Each::Group, Each::Baker, Each::Demonstration] {
        let own = works.iter().filter(|(making, ..)| making.each == each);
        let shared = shared(own.clone().map(|(_, work, _)| work));
        let sets = own.clone().map(|(.., sets)| *sets).next().unwrap_or(0);
        let apart: Vec<&str> = shared.iter().map(|(it, _)| it.name.as_str()).collect();
        let whole = Walk { book, words, depth: 0, apart: &[] };
        for (recipe, mass) in &shared {
            if let Ok(work) =
                crate::work::work(recipe, &Scaling::Total(mass.clone()), book)
            {
                tubs.push(whole.tub(&work, each, sets));
            }
        }
        let rest = Walk { apart: &apart, ..whole };
        tubs.extend(own.map(|(_, work, sets)| rest.tub(work, each, *sets)));
    }
    tubs
}

/// The recipes that several of these take in, with what all of them take.
fn shared<'w, 'b: 'w>(
    works: impl Iterator<Item = &'w Work<'b>>,
) -> Vec<(&'b Recipe, Mass)> {
    let mut found: Vec<(&Recipe, Mass, usize)> = Vec::new();
    for (recipe, mass) in works.flat_map(taken) {
        match found.iter_mut().find(|(known, ..)| known.name == recipe.name) {
            Some((_, sum, count)) => (*sum, *count) = (sum.clone() + mass, *count + 1),
            None => found.push((recipe, mass, 1)),
        }
    }
    let twice = found.into_iter().filter(|(.., count)| *count > 1);
    twice.map(|(recipe, mass, _)| (recipe, mass)).collect()
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
    /// Included recipes that have tubs of their own.
    apart: &'a [&'a str],
}

impl Walk<'_> {
    fn tub(self, work: &Work, each: Each, sets: u64) -> Tub {
        let mut lines = Vec::new();
        self.add(work, &mut lines);
        Tub {
            recipe: work.recipe.name.clone(),
            title: work.recipe.title.value.clone(),
            each: for_whom(each),
            sets,
            lines,
        }
    }

    /// Adds what a batch uses, step by step; included doughs come where they are used.
    fn add(self, work: &Work, lines: &mut Vec<TubLine>) {
        let deeper = Self { depth: self.depth + 1, ..self };
        for (at, step) in work.recipe.steps().enumerate() {
            for (number, share) in &work.flow.uses[at] {
                let line = &work.formula.lines[*number];
                let mass = &(&line.mass() * share) * &work.factor;
                let item = match line.source {
                    Source::Item(item) => item,
                    Source::Recipe(inner) if self.apart.contains(&&*inner.name) => {
                        continue;
                    }
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
                    ingredient: item.title().to_owned(),
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
