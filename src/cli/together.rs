//! What a command is about that takes names: a class, a recipe, or several recipes that are
//! made together, a dough that they share once.

use crate::edition::Edition;
use crate::formula::Scaling;
use crate::measure::exact;
use crate::model::{Class, Recipe};
use crate::plan::{SharedDough, SizedRecipe, shared, together};
use crate::said;
use crate::sheet::Sheet;
use crate::words::Words;
use crate::work::{Work, work};

use super::args::ScalingArgs;
use super::{Call, Done, Stop, in_ways, nowhere, recipe, scaled, stem};

/// The names in a list such as `crescents,chocolate-batons`, in the ways that were asked for.
pub(super) fn names(
    call: &Call,
    edition: &mut Edition,
    list: &str,
    ways: &[String],
) -> Result<Vec<String>, Stop> {
    let in_ways = |name| in_ways(call, edition, name, ways);
    let named: Result<Vec<String>, Stop> =
        list.split(',').map(str::trim).map(in_ways).collect();
    Ok(named?.iter().map(|name| stem(name).to_owned()).collect())
}

/// The class of this name; nothing where there are recipes of these names.
pub(super) fn class_of<'e>(
    edition: &'e Edition,
    names: &[String],
) -> Result<Option<&'e Class>, Stop> {
    let content = &edition.content;
    if let [name] = names
        && let Some(class) = content.class(name)
    {
        return Ok(Some(class));
    }
    match names.iter().find(|name| content.recipe(name).is_none()) {
        None => Ok(None),
        Some(name) => Err(unknown(edition, name, names.len() > 1)),
    }
}

/// That a class is not asked for in another size than its own.
pub(super) fn own_size(scaling: &ScalingArgs) -> Done {
    if scaling.scaling()? == Scaling::Batches(exact(1, 1)) {
        return Ok(());
    }
    Err(Stop::Use(said!("class-own-size")))
}

/// That there is no class and no recipe of a name; where several are asked for, no recipe.
fn unknown(edition: &Edition, name: &str, several: bool) -> Stop {
    let content = &edition.content;
    let recipes = content.recipes.iter().map(|recipe| recipe.name.as_str());
    if several {
        return nowhere(said!("kind-recipe"), name, &recipes.collect::<Vec<_>>());
    }
    let classes = content.classes.iter().map(|class| class.name.as_str());
    let known: Vec<&str> = classes.chain(recipes).collect();
    nowhere(said!("kind-class-or-recipe"), name, &known)
}

/// Recipes by name, each in the same size.
pub(super) struct Recipes<'e> {
    edition: &'e Edition,
    named: Vec<&'e Recipe>,
    scaling: Scaling,
}

impl<'e> Recipes<'e> {
    pub(super) fn new(
        call: &Call,
        edition: &'e Edition,
        names: &[String],
        scaling: &ScalingArgs,
    ) -> Result<Self, Stop> {
        let found = names.iter().map(|name| recipe(call, edition, name));
        let named = found.collect::<Result<_, _>>()?;
        Ok(Self { edition, named, scaling: scaling.scaling()? })
    }

    /// The recipes that were named, worked out.
    pub(super) fn works(&self) -> Result<Vec<Work<'e>>, Stop> {
        let book = self.edition.book();
        let work = |recipe: &&'e Recipe| {
            work(recipe, &self.scaling, book).map_err(|reason| {
                let name = &recipe.name;
                Stop::Use(said!("scale-cannot", name, reason = reason.said()))
            })
        };
        self.named.iter().map(work).collect()
    }

    /// The doughs that several of them take.
    pub(super) fn shared(&self) -> Result<Vec<SharedDough>, Stop> {
        let works = self.works()?;
        Ok(shared(&works.iter().collect::<Vec<_>>(), self.edition.book()))
    }

    /// Everything that is made, each at its size: of one recipe that alone, of several what
    /// goes into them before them.
    pub(super) fn sized(&self) -> Result<Vec<(&'e Recipe, Scaling)>, Stop> {
        if let [alone] = self.named[..] {
            return Ok(vec![(alone, self.scaling.clone())]);
        }
        let works = self.works()?.into_iter().map(|work| (work, self.scaling.clone()));
        let all = together(&works.collect::<Vec<_>>(), self.edition.book());
        let found =
            all.into_iter().filter_map(|SizedRecipe { recipe, scaling, .. }| {
                Some((self.edition.content.recipe(&recipe)?, scaling))
            });
        Ok(found.collect())
    }

    /// Their sheets.
    pub(super) fn sheets(&self, words: &Words) -> Result<Vec<Sheet>, Stop> {
        let sheet = |(recipe, scaling): &(&Recipe, Scaling)| {
            scaled(self.edition, recipe, scaling, words)
        };
        self.sized()?.iter().map(sheet).collect()
    }
}
