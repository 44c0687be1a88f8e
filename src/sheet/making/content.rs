//! What is in the product and what it calls for: water, allergens, nutrients, cost,
//! cautions.

use num_traits::ToPrimitive;

use crate::formula::{self, Contents, Declared, Listed, expand};
use crate::measure::{Exact, Label, Mass, Temperature, exact, show};
use crate::pantry::Kind;
use crate::work::{Work, mixed_water, wanted_water};

use super::super::{Allergen, AllergenList, Allergens, Cost, Water};
use super::{Context, lines, round};

/// Below this water asks for ice, °C.
const COLDEST_TAP: i64 = 2;

/// Everything that goes in, expanded.
pub(super) fn contents<'a>(work: &Work<'a>) -> Contents<'a> {
    expand(&work.formula, &work.factor)
}

/// The water calculation, where the recipe names its dough temperature and the course its
/// room.
pub(super) fn water(work: &Work, context: Context) -> Option<Water> {
    let desired = &work.recipe.dough_temperature.as_ref()?.value;
    let room = &context.book.content.course.as_ref()?.room;
    let wanted = wanted_water(work, room)?;
    let coldest = Temperature::celsius(exact(COLDEST_TAP, 1));
    let ice = room
        .tap
        .as_ref()
        .filter(|_| wanted < coldest)
        .map(|tap| formula::ice(&mixed_water(work), tap, &wanted))
        .filter(Mass::is_positive);
    Some(Water {
        desired_c: desired.float(),
        water_c: round(wanted.in_celsius(), 2),
        ice_g: ice.as_ref().map_or(0.0, |ice| round(ice.amount(), 1)),
        desired: show::temperature(desired, context.words),
        water: show::temperature(&wanted, context.words),
        ice: ice.map(|ice| lines::weight(&ice, Kind::Liquid, context)),
    })
}

/// Allergens in words.
pub(super) fn allergens(contents: &Contents, context: Context) -> Allergens {
    let sum = formula::allergens(contents);
    let law = |name: &String| law(name, context);
    let titles = |names: Vec<String>| -> Vec<String> {
        let title = |name: String| {
            let item = contents.get(name.as_str());
            item.map_or(name.clone(), |(item, _)| item.title().to_owned())
        };
        names.into_iter().map(title).collect()
    };
    let detail = |f: Declared| Allergen {
        name: law(&f.name),
        kinds: f.kinds.iter().map(law).collect(),
        from: titles(f.from),
    };
    let lists = sum.lists.into_iter().filter(|it| is_listed(it.law, context));
    let list = |it: Listed| AllergenList {
        law: it.law.to_owned(),
        found: it.found.into_iter().map(detail).collect(),
    };
    Allergens {
        lists: lists.map(list).collect(),
        unknown: titles(sum.unknown),
        read_on_pack: titles(sum.read_on_pack),
    }
}

/// An allergen or a kind of one, as the law calls it in the course's language.
pub(super) fn law(name: &str, context: Context) -> String {
    let key = format!("allergen-{}", name.to_lowercase().replace(' ', "-"));
    context.words.find(&key).unwrap_or(name).to_owned()
}

/// Whether the list of a law is told: facts always have some, and a course asks for others.
pub(super) fn is_listed(law: &str, context: Context) -> bool {
    let mut asked = context.book.content.course.iter().flat_map(|course| &course.laws);
    FACTS.contains(&law) || asked.any(|asked| asked.value == law)
}

/// The laws whose lists facts always have.
const FACTS: [&str; 2] = ["us", "eu"];

/// Cost in all and per piece.
pub(super) fn cost(work: &Work, contents: &Contents, context: Context) -> Option<Cost> {
    let total = formula::cost(contents)?;
    let per_piece = work.pieces.and_then(|pieces| {
        Exact::new(total.into(), pieces.into()).round().to_integer().to_i64()
    });
    let currency = context.book.content.course.as_ref()?.currency.clone();
    Some(Cost { currency, total_minor: total, per_piece_minor: per_piece })
}

/// The cautions that apply, by name.
pub(super) fn cautions(work: &Work, contents: &Contents) -> Vec<String> {
    let has = |kind: Kind| contents.values().any(|(item, _)| item.kind == kind);
    let any = |test: &dyn Fn(&crate::model::Step) -> bool| work.recipe.steps().any(test);
    let raw_egg = contents
        .values()
        .any(|(item, _)| item.kind == Kind::Egg && !item.is_pasteurised());
    let unknown = contents.values().any(|(item, _)| item.allergens.is_none());
    let rules = [
        ("allergens-unknown", unknown),
        ("raw-egg", raw_egg),
        ("raw-flour", has(Kind::Flour)),
        (
            "thawing",
            any(&|step| step.hold.as_ref().is_some_and(|it| it.value.thaw.is_some())),
        ),
        ("cooling", any(&|step| step.cool.is_some())),
        ("core", any(&|step| step.core.is_some())),
        ("heat", any(&|step| step.bake.is_some())),
        ("blades", any(&|step| step.cut.is_some())),
    ];
    rules
        .iter()
        .filter(|(_, applies)| *applies)
        .map(|(name, _)| (*name).to_owned())
        .collect()
}

/// The cautions in full, then the deference to local rules.
pub(super) fn caution_texts(cautions: &[String], context: Context) -> Vec<String> {
    let words = context.words;
    let mut texts: Vec<String> = cautions
        .iter()
        .map(|name| words.get(&format!("caution-{name}")).to_owned())
        .collect();
    texts.push(words.get("caution-local-rules").to_owned());
    texts
}

/// The same label twice where a value has no units.
pub(super) fn plain(text: impl Into<String>) -> Label {
    Label::same(text)
}
