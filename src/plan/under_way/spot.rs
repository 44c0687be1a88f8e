//! Which step of which batch is meant by what is said of an evening.

use std::collections::BTreeSet;

use crate::model::{Of, Said};
use crate::plan::question::batch_tasks::StepPlan;
use crate::plan::question::class::{ClassBatch, ClassDraft, Who};

/// Why something that was said cannot be taken in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unheard {
    /// No batch of those who are named has such a step; the steps that there are.
    NoStep(String, Vec<String>),
    /// Several have it: how they are told apart.
    Several(String, Vec<String>),
    /// The class has no such groups.
    NoGroup,
    /// The class does not count such kit, or has less of it.
    NoKit(String),
    /// It was said before what is kept already, or before the class opens.
    Early,
}

/// A batch and the place of one of its steps.
pub(in crate::plan) type Spot = (usize, usize);

/// What is made, whose step it is, and the step.
type Key = (String, String, String);

impl ClassBatch {
    /// Whether something said of somebody is said of this batch's maker.
    pub(super) fn is_of(&self, of: &Of) -> bool {
        match (of, self.who) {
            (Of::All, Who::Group(_) | Who::Baker(..)) => true,
            (Of::Instructor, Who::Instructor) => true,
            (Of::Groups(groups), Who::Group(own) | Who::Baker(own, _)) => {
                groups.contains(&own)
            }
            (Of::Baker(group, one), Who::Baker(own, baker)) => {
                (*group, *one) == (own, baker)
            }
            (
                Of::All | Of::Groups(_) | Of::Baker(..),
                Who::Instructor | Who::Helper | Who::Home,
            )
            | (Of::Baker(..), Who::Group(_))
            | (
                Of::Instructor,
                Who::Group(_) | Who::Baker(..) | Who::Helper | Who::Home,
            )
            | (Of::Kit(..), _) => false,
        }
    }
}

impl ClassDraft {
    /// The batches of which something is said, and where in each the step is.
    ///
    /// # Errors
    /// Where there is none, or where the words do not tell which.
    pub(in crate::plan) fn spots(
        &self,
        said: &Said,
        step: &str,
    ) -> Result<Vec<Spot>, Unheard> {
        let units: Vec<(usize, &ClassBatch)> = self
            .units
            .iter()
            .enumerate()
            .filter(|(_, unit)| unit.is_of(&said.of))
            .collect();
        if units.is_empty() {
            return Err(Unheard::NoGroup);
        }
        let found = [true, false].iter().map(|exact| named(&units, step, *exact));
        let found = found.into_iter().find(|found| !found.is_empty());
        let found = found.ok_or_else(|| {
            let steps = units.iter().flat_map(|(_, unit)| &unit.batch.steps);
            let mut seen = BTreeSet::new();
            let names = steps.map(|own| own.step.clone());
            let names = names.filter(|name| seen.insert(name.clone())).collect();
            Unheard::NoStep(step.to_owned(), names)
        })?;
        let keys: BTreeSet<&Key> = found.iter().map(|(_, key)| key).collect();
        if keys.len() > 1 {
            return Err(Unheard::Several(step.to_owned(), apart(&keys)));
        }
        Ok(found.into_iter().map(|(spot, _)| spot).collect())
    }
}

impl ClassDraft {
    /// The task of a demonstration that is no batch, by the name of its step or its
    /// beginning.
    pub(in crate::plan) fn show(&self, said: &str) -> Option<usize> {
        let (recipe, name) = match said.split_once('/') {
            Some((recipe, name)) => (Some(plain(recipe)), plain(name)),
            None => (None, plain(said)),
        };
        let meant = self.shows.iter().find(|show| {
            let of = plain(&show.recipe);
            recipe.as_ref().is_none_or(|recipe| of.starts_with(recipe))
                && [&show.step, &show.title].iter().any(|it| plain(it).starts_with(&name))
        });
        meant.map(|show| show.task)
    }
}

/// The steps whose name is, or begins like, what is said.
fn named(units: &[(usize, &ClassBatch)], said: &str, exact: bool) -> Vec<(Spot, Key)> {
    let (recipe, name) = match said.split_once('/') {
        Some((recipe, name)) => (Some(plain(recipe)), plain(name)),
        None => (None, plain(said)),
    };
    let same = |known: &str, said: &str| {
        let known = plain(known);
        if exact { known == said } else { known.starts_with(said) }
    };
    let meant = |unit: &ClassBatch, own: &StepPlan| {
        // A step of a dough goes by all that is made from it.
        let made = &unit.batch.recipes;
        let dough = made.iter().filter(|_| !made.contains(&own.recipe));
        let mut of = dough.chain([&own.recipe]);
        recipe.as_ref().is_none_or(|recipe| of.any(|of| same(of, recipe)))
            && [&own.step, &own.title].iter().any(|known| same(known, &name))
    };
    let mut found = Vec::new();
    for (at, unit) in units {
        for (place, own) in unit.batch.steps.iter().enumerate() {
            if meant(unit, own) {
                let own_product = unit.batch.recipes.contains(&own.recipe);
                let made = if own_product { &own.recipe } else { &unit.batch.recipes[0] };
                let made = made.clone();
                found.push(((*at, place), (made, own.recipe.clone(), own.step.clone())));
            }
        }
    }
    found
}

/// How steps are told apart: by what is made, or where that does not, by whose step it is.
fn apart(keys: &BTreeSet<&Key>) -> Vec<String> {
    let by = |name: &dyn Fn(&Key) -> String| -> BTreeSet<String> {
        keys.iter().map(|key| name(key)).collect()
    };
    let made = by(&|(made, _, step)| format!("{made}/{step}"));
    let own = by(&|(_, own, step)| format!("{own}/{step}"));
    if own.len() > made.len() { own } else { made }.into_iter().collect()
}

/// A name as it is compared: small, with dashes.
fn plain(name: &str) -> String {
    let words =
        name.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty());
    words.map(str::to_lowercase).collect::<Vec<_>>().join("-")
}
