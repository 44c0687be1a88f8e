//! The names that may stand somewhere: of what the text itself holds, of other texts, and of
//! what the program knows.

use std::ops::Range;

use crate::model::{self, KitKind, KitUse, Recipe, Shaping, Standing};
use crate::pantry::ALLERGENS;
use crate::read::{amount_line, part_name};
use crate::said;
use crate::theme::Theme;

use super::holds::Holds;
use super::offer::{Offer, OfferKind, fits};
use super::yaml::{beneath, items_beneath};
use super::{Here, amount};

/// The names for what a value holds that fit what is typed of them.
pub(super) fn offers(here: Here, holds: Holds, place: Range<usize>) -> Vec<Offer> {
    let all = all(here, holds, &place);
    let typed = here.typed(&place).trim_start_matches(['"', '\'']);
    let meant = |offer: &Offer| fits(typed, &offer.label) || fits(typed, &offer.text);
    let mut found: Vec<Offer> = Vec::new();
    for offer in all.into_iter().filter(meant) {
        if !found.iter().any(|known| known.text == offer.text) {
            found.push(offer);
        }
    }
    found
}

fn all(here: Here, holds: Holds, place: &Range<usize>) -> Vec<Offer> {
    let plain = |kind: OfferKind, names: Vec<String>| {
        names.iter().map(|name| Offer::whole(kind, name, place.clone())).collect()
    };
    match holds {
        Holds::AmountLine => amount::offers(here, place),
        Holds::Ingredient => amount::ingredients(here, place),
        Holds::Recipe => recipes(here, place),
        Holds::Technique => techniques(here, place),
        Holds::RecipeOrTechnique => {
            let mut all = recipes(here, place);
            all.extend(techniques(here, place));
            all
        }
        Holds::Step => steps(here, place),
        Holds::ClassStep => class_steps(here, place),
        Holds::SectionOrIngredient => {
            let mut all: Vec<Offer> = plain(OfferKind::Section, sections(here));
            all.extend(plain(OfferKind::Ingredient, written(here)));
            all
        }
        Holds::Section => plain(OfferKind::Section, sections(here)),
        Holds::Swap => plain(OfferKind::Way, swaps(here)),
        Holds::Way => plain(OfferKind::Way, ways(here)),
        Holds::Part => plain(OfferKind::Part, parts(here)),
        Holds::Shape => plain(OfferKind::Shape, shapes(here)),
        Holds::Place => plain(OfferKind::Place, places(here)),
        Holds::Kit => plain(OfferKind::Kit, kit(here)),
        Holds::Video => plain(OfferKind::Video, videos(here)),
        Holds::Family => plain(OfferKind::Value, families(here)),
        Holds::Language => plain(OfferKind::Language, Theme::built_in().languages()),
        Holds::Allergen => {
            let words = ["none"].iter().chain(&ALLERGENS).map(|it| (*it).to_owned());
            plain(OfferKind::Allergen, words.collect())
        }
        Holds::Fault => {
            let names = crate::check::ACCEPTABLE.map(str::to_owned);
            plain(OfferKind::Fault, names.to_vec())
        }
        Holds::Picture => pictures(here, place),
        Holds::Original => originals(here, place),
        Holds::Mark => plain(OfferKind::Mark, marks(here)),
    }
}

/// The recipes as written, by the names of their files.
pub(super) fn recipes(here: Here, place: &Range<usize>) -> Vec<Offer> {
    let all = here.edition.content.recipes.iter().filter(|recipe| recipe.way.is_none());
    let offer = |recipe: &Recipe| {
        Offer::whole(OfferKind::Recipe, &recipe.name, place.clone())
            .about(&recipe.title.value)
    };
    all.map(offer).collect()
}

/// The techniques, by the names of their files.
pub(super) fn techniques(here: Here, place: &Range<usize>) -> Vec<Offer> {
    let all = here.edition.content.techniques.iter();
    all.map(|it| {
        Offer::whole(OfferKind::Technique, &it.name, place.clone()).about(&it.title.value)
    })
    .collect()
}

/// The pictures of the media folder.
pub(super) fn pictures(here: Here, place: &Range<usize>) -> Vec<Offer> {
    let content = &here.edition.content;
    let drawn = content.drawings.keys().filter_map(|path| path.strip_prefix("media/"));
    let names = content.media.iter().map(|medium| medium.name.as_str()).chain(drawn);
    names.map(|name| Offer::whole(OfferKind::Picture, name, place.clone())).collect()
}

/// The other steps of the text.
fn steps(here: Here, place: &Range<usize>) -> Vec<Offer> {
    let own = here.outline.part(here.spot.at).map(|part| part.range.start);
    let others = here.outline.parts.iter().filter(|part| {
        part.ticket.is_some() && !part.title.is_empty() && Some(part.range.start) != own
    });
    others
        .map(|part| {
            let name = part_name(part.title);
            Offer::whole(OfferKind::Step, &name, place.clone()).about(part.title)
        })
        .collect()
}

/// The steps of what a class makes, and of what goes into that.
fn class_steps(here: Here, place: &Range<usize>) -> Vec<Offer> {
    let content = &here.edition.content;
    let made = beneath(here.spot.text, "makes").into_iter();
    let named = made.filter(|(key, _)| *key == "recipe").map(|(_, name)| name.to_owned());
    let (mut open, mut seen): (Vec<String>, Vec<String>) = (named.collect(), Vec::new());
    let mut found = Vec::new();
    while let Some(name) = open.pop() {
        let Some(recipe) = content.recipe(&name).filter(|_| !seen.contains(&name)) else {
            continue;
        };
        seen.push(name);
        open.extend(model::included(recipe).map(|(name, _)| name.to_owned()));
        found.extend(recipe.steps().map(|step| {
            let offer = Offer::whole(OfferKind::Step, &step.name, place.clone());
            let title = &step.title.value;
            Offer {
                about: Some(said!("here-step-of", title, recipe = recipe.title.value)),
                ..offer
            }
        }));
    }
    found
}

/// The head of the text.
fn head<'a>(here: Here<'a>) -> &'a str {
    here.words(&here.outline.head)
}

/// The recipe of this text, as it was read last.
pub(super) fn known<'a>(here: Here<'a>) -> Option<&'a Recipe> {
    let mut all = here.edition.content.recipes.iter();
    all.find(|recipe| *recipe.place.file == *here.spot.file)
}

/// The sections of the formula: as they stand in the text, else as they were read last.
pub(super) fn sections(here: Here) -> Vec<String> {
    let own = beneath(head(here), "formula");
    let mut names: Vec<String> = own.iter().map(|(name, _)| (*name).to_owned()).collect();
    let last = known(here).into_iter().flat_map(|recipe| &recipe.formula);
    names.extend(
        last.map(|section| section.name.value.clone()).filter(|_| own.is_empty()),
    );
    names
}

/// What the lines of the formula name, as it is written there.
pub(super) fn written(here: Here) -> Vec<String> {
    let locale = amount::locale(here);
    let lines = items_beneath(head(here), "formula");
    let read = lines.into_iter().filter_map(|line| amount_line(line, locale));
    read.map(|line| line.ingredient.value.title().to_owned()).collect()
}

fn swaps(here: Here) -> Vec<String> {
    let own = beneath(head(here), "swaps");
    own.into_iter().map(|(name, _)| name.to_owned()).collect()
}

fn videos(here: Here) -> Vec<String> {
    let own = beneath(head(here), "watch");
    let named = own.into_iter().filter(|(_, value)| value.starts_with("http"));
    named.map(|(name, _)| name.to_owned()).collect()
}

/// The swaps of the recipes that a class makes.
fn ways(here: Here) -> Vec<String> {
    let made = beneath(here.spot.text, "makes").into_iter();
    let recipes = made.filter_map(|(_, name)| here.edition.content.recipe(name));
    recipes.flat_map(|recipe| &recipe.swaps).map(|swap| swap.name.value.clone()).collect()
}

/// The parts that tickets of this text divide the dough into.
fn parts(here: Here) -> Vec<String> {
    let tickets = here.outline.parts.iter().filter_map(|part| part.ticket.as_ref());
    let lines = tickets.flat_map(|ticket| here.words(ticket).lines());
    let divided = lines.filter_map(|line| line.trim().strip_prefix("divide:"));
    let named = divided.flat_map(|parts| parts.split(','));
    let names =
        named.filter_map(|part| Some(part.split_once(" for ")?.1.trim().to_owned()));
    names.collect()
}

fn shapes(here: Here) -> Vec<String> {
    let known = Shaping::all().into_iter().map(|shaping| shaping.word().to_owned());
    let own = here.edition.content.techniques.iter().flat_map(|it| &it.shapes);
    known.chain(own.map(|shape| shape.name.value.clone())).collect()
}

/// The places that the program knows, in the course's language first, and the author's own.
fn places(here: Here) -> Vec<String> {
    let words = here.edition.pantry.lexicon();
    let mut names: Vec<String> = words.place_names().map(str::to_owned).collect();
    names.extend(Standing::KNOWN.iter().map(|known| known.name().to_owned()));
    let steps = here.edition.content.recipes.iter().flat_map(Recipe::steps);
    let written =
        steps.filter_map(|step| Some(step.at_place.as_ref()?.value.word().to_owned()));
    names.extend(written);
    names
}

/// Kit that the program knows, what a class may count, and what tickets name.
fn kit(here: Here) -> Vec<String> {
    let words = here.edition.pantry.lexicon();
    let known = KitKind::COUNTED.into_iter().chain([KitKind::Mixer]);
    let mut names: Vec<String> = words.kit_names().map(str::to_owned).collect();
    names.extend(known.map(|kit| kit.name()));
    names.extend(Standing::KNOWN.iter().map(|place| format!("{} tray", place.name())));
    let steps = here.edition.content.recipes.iter().flat_map(Recipe::steps);
    names.extend(steps.flat_map(|step| &step.kit).map(KitUse::word));
    names
}

fn families(here: Here) -> Vec<String> {
    here.edition
        .content
        .recipes
        .iter()
        .filter_map(|recipe| recipe.family.clone())
        .collect()
}

/// The recipe or technique that a text translates, by the name of its file.
fn original<'a>(here: Here<'a>) -> &'a str {
    let name = here.spot.file.rsplit('/').next().unwrap_or("");
    name.trim_end_matches(".md")
}

/// The steps and headings of the original that have no part here yet.
fn originals(here: Here, place: &Range<usize>) -> Vec<Offer> {
    let Some(recipe) = here.edition.content.recipe(original(here)) else {
        return Vec::new();
    };
    let done = |name: &str| {
        here.spot.text.lines().any(|line| {
            line.strip_prefix("translates:").is_some_and(|it| it.trim() == name)
        })
    };
    let parts = recipe.parts.iter().map(|part| match part {
        model::Part::Step(step) => (&step.name, &step.title.value),
        model::Part::Prose { name, title, .. } => (name, &title.value),
    });
    let open = parts.filter(|(name, _)| !done(name));
    open.map(|(name, title)| {
        Offer::whole(OfferKind::Step, name, place.clone()).about(title)
    })
    .collect()
}

/// The mark of the part of the original that this part stands for.
fn marks(here: Here) -> Vec<String> {
    let content = &here.edition.content;
    let part = here.outline.part(here.spot.at).filter(|part| {
        part.ticket.as_ref().is_some_and(|ticket| ticket.start <= here.spot.at)
    });
    let ticket =
        part.and_then(|part| part.ticket.clone()).map(|ticket| here.words(&ticket));
    let named = ticket
        .and_then(|text| text.lines().find_map(|it| it.strip_prefix("translates:")));
    if let Some(recipe) = content.recipe(original(here)) {
        return recipe
            .marks
            .get(named.unwrap_or("").trim())
            .cloned()
            .into_iter()
            .collect();
    }
    let technique = content.techniques.iter().find(|it| it.name == original(here));
    technique.map(|technique| technique.mark.clone()).into_iter().collect()
}
