//! The weigh-out: what goes into the tubs of one batch, in the order of use, with the class's
//! spare in it. Whole eggs are told by their number, and have no spare.

use crate::formula::{Book, MadeOf, Scaling};
use crate::measure::{Exact, Mass, exact, show};
use crate::model::{Each, Recipe};
use crate::words::Words;
use crate::work::{Work, taken};

use super::super::super::class::{ForWhom, Tub, TubLine};
use super::order::{Ordered, eggs};

/// The tubs of every kind of batch in a class. A dough that goes into several recipes of the
/// same makers is made once and has tubs of its own.
pub(super) fn tubs(
    all: &[Ordered],
    spare: &Exact,
    book: Book,
    words: &Words,
) -> Vec<Tub> {
    let mut tubs = Vec::new();
    for each in ForWhom::ALL {
        let own = all.iter().filter(|ordered| ordered.each == each);
        let shared = shared(own.clone().map(|ordered| &ordered.work));
        let sets = own.clone().map(|ordered| ordered.makers).next().unwrap_or(0);
        let apart: Vec<&str> = shared.iter().map(|(it, _)| it.name.as_str()).collect();
        let whole = Walk { spare, book, words, apart: &[] };
        for (recipe, mass) in &shared {
            if let Ok(work) =
                crate::work::work(recipe, &Scaling::Total(mass.clone()), book)
            {
                tubs.push(whole.tub(&work, each, sets));
            }
        }
        let rest = Walk { apart: &apart, ..whole };
        tubs.extend(own.map(|it| rest.tub(&it.work, each, it.makers)));
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

/// Who makes it, in a class.
pub(super) fn for_whom(each: Each) -> ForWhom {
    match each {
        Each::Group => ForWhom::Group,
        Each::Baker => ForWhom::Baker,
        Each::Demonstration => ForWhom::Demonstration,
    }
}

/// What a batch is looked up in and put into words with.
#[derive(Clone, Copy)]
struct Walk<'a> {
    book: Book<'a>,
    words: &'a Words,
    /// How much of everything is weighed out for 1 that is needed.
    spare: &'a Exact,
    /// Included recipes that have tubs of their own.
    apart: &'a [&'a str],
}

impl Walk<'_> {
    fn tub(self, work: &Work, each: ForWhom, sets: u64) -> Tub {
        let mut lines = Vec::new();
        self.add(work, &mut lines);
        Tub {
            recipe: work.recipe.name.clone(),
            title: work.recipe.title.value.clone(),
            each,
            sets,
            lines,
        }
    }

    /// Adds what a batch uses, step by step; included doughs come where they are used.
    fn add(self, work: &Work, lines: &mut Vec<TubLine>) {
        for (at, step) in work.recipe.steps().enumerate() {
            for (number, share) in &work.flow.uses[at] {
                let line = &work.formula.lines[*number];
                let mass = &(&line.mass() * share) * &work.factor;
                let item = match line.source {
                    MadeOf::Item(item) => item,
                    MadeOf::Recipe(inner) if self.apart.contains(&&*inner.name) => {
                        continue;
                    }
                    MadeOf::Recipe(inner) => {
                        let size = Scaling::Total(mass);
                        if let Ok(inner) = crate::work::work(inner, &size, self.book) {
                            self.add(&inner, lines);
                        }
                        continue;
                    }
                };
                let metric = |mass: &Mass| show::metric(mass, &exact(1, 100), true);
                let us = |mass: &Mass| show::us_weight(mass, &exact(1, 100));
                let whole = eggs(item, &mass).filter(Exact::is_integer);
                let mass = if whole.is_some() { mass } else { &mass * self.spare };
                lines.push(TubLine {
                    recipe: work.recipe.name.clone(),
                    step: step.name.clone(),
                    title: step.title.value.clone(),
                    ingredient: item.title().to_owned(),
                    grams: (!mass.amount().is_zero()).then(|| mass.float()),
                    metric: self.weight(&mass, whole.as_ref(), metric),
                    us: self.weight(&mass, whole.as_ref(), us),
                });
            }
        }
    }

    /// A weight in words, of whole eggs their number before it.
    fn weight(
        self,
        mass: &Mass,
        eggs: Option<&Exact>,
        shown: impl Fn(&Mass) -> show::Shown,
    ) -> String {
        if mass.amount().is_zero() {
            return self.words.get("as-needed").to_owned();
        }
        let weight = shown(mass).words(self.words);
        let Some(count) = eggs else { return weight };
        let values = [("count", &*count.to_string()), ("weight", &*weight)];
        self.words.fill("order-count", &values)
    }
}
