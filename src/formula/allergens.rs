//! Allergens: the union over everything that touches the product, dusting too. What is
//! not known is said to be not known.

use std::collections::BTreeSet;

use crate::pantry::{Allergen, Item};

use super::Book;
use super::expand::{Contents, expand_lines};
use super::weigh::{Source, Weighed};

/// The US nine: 21 USC 321(qq) as amended by the FASTER Act of 2021.
const US: [&str; 9] = [
    "milk",
    "egg",
    "fish",
    "crustacean shellfish",
    "tree nuts",
    "wheat",
    "peanuts",
    "soybeans",
    "sesame",
];

/// The EU fourteen: Regulation (EU) 1169/2011 Annex II.
const EU: [&str; 14] = [
    "cereals containing gluten",
    "crustaceans",
    "eggs",
    "fish",
    "peanuts",
    "soybeans",
    "milk",
    "nuts",
    "celery",
    "mustard",
    "sesame seeds",
    "sulphur dioxide and sulphites",
    "lupin",
    "molluscs",
];

/// The allergens of a product.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AllergenSum {
    /// Of the US nine, in the order of the law.
    pub us: Vec<Found>,
    /// Of the EU fourteen, in the order of the annex.
    pub eu: Vec<Found>,
    /// Ingredients whose allergens are not known in one list or the other.
    pub unknown: Vec<String>,
    /// Ingredients whose allergens stand on the instructor's word.
    pub read_on_pack: Vec<String>,
}

/// One allergen that is in the product.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// Its name in the law.
    pub name: String,
    /// Its kinds, where the law wants them named.
    pub kinds: Vec<String>,
    /// The ingredients that bring it.
    pub from: Vec<String>,
}

impl AllergenSum {
    /// Whether the other sum has an allergen, a kind of one or a doubt that this one lacks.
    pub fn lacks(&self, other: &Self) -> bool {
        let lacks = |own: &[Found], other: &[Found]| {
            other.iter().any(|found| {
                let own = own.iter().find(|own| own.name == found.name);
                own.is_none_or(|own| own.kinds.len() < found.kinds.len())
            })
        };
        lacks(&self.us, &other.us)
            || lacks(&self.eu, &other.eu)
            || self.unknown.len() < other.unknown.len()
    }
}

/// Sums the allergens of everything in `contents`.
pub fn allergens(contents: &Contents) -> AllergenSum {
    let items: Vec<&Item> = contents.values().map(|(item, _)| *item).collect();
    let unknown = items.iter().filter(|item| item.us.is_none() || item.eu.is_none());
    let read = items.iter().filter(|item| item.read_on_pack);
    AllergenSum {
        us: found(&US, &items, |item| item.us.as_deref()),
        eu: found(&EU, &items, |item| item.eu.as_deref()),
        unknown: unknown.map(|item| item.name.clone()).collect(),
        read_on_pack: read.map(|item| item.name.clone()).collect(),
    }
}

/// Whether any of some lines brings an allergen of one law or the other, or may: it includes
/// a recipe, or its allergens are not known.
pub fn brings_allergens(lines: &[&Weighed], book: Book) -> bool {
    let includes = lines.iter().any(|line| matches!(line.source, Source::Recipe(_)));
    let contents = expand_lines(lines.iter().copied(), book);
    includes || !contents.values().all(|(item, _)| item.is_free_of_allergens())
}

fn found(
    law: &[&str],
    items: &[&Item],
    said: impl Fn(&Item) -> Option<&[Allergen]>,
) -> Vec<Found> {
    let one = |name: &str| {
        let mut found = Found { name: name.into(), kinds: Vec::new(), from: Vec::new() };
        let mut kinds = BTreeSet::new();
        for item in items {
            let here: Vec<_> = said(item)
                .into_iter()
                .flatten()
                .filter(|said| said.name == name)
                .collect();
            if !here.is_empty() {
                found.from.push(item.name.clone());
            }
            kinds.extend(here.iter().filter_map(|said| said.kind.clone()));
        }
        found.kinds = kinds.into_iter().collect();
        (!found.from.is_empty()).then_some(found)
    };
    law.iter().filter_map(|name| one(name)).collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing;
    use super::*;

    /// Rye is a cereal containing gluten in the EU and no US major allergen; coconut is in
    /// neither list; hazelnut in both, named: 21 USC 321(qq), FDA Q&A on Food Allergens
    /// (Edition 5) Table 1, Regulation (EU) 1169/2011 Annex II.
    #[test]
    fn each_law_has_its_own_list() {
        let text = "formula:\n  - 100 g dark rye flour\n  - 20 g hazelnut\n  - 10 g sugar\n  - butter, for greasing\n";
        testing::with_contents(text, |contents| {
            let sum = allergens(contents);
            let names = |found: &[Found]| -> Vec<String> {
                found.iter().map(|found| found.name.clone()).collect()
            };
            assert_eq!(names(&sum.us), ["milk", "tree nuts"]);
            assert_eq!(names(&sum.eu), ["cereals containing gluten", "milk", "nuts"]);
            assert_eq!(sum.us[1].kinds, ["hazelnut"]);
            assert_eq!(sum.eu[0].from, ["dark rye flour"]);
            assert!(sum.unknown.is_empty());
        });
    }

    /// As above: chestnut is in neither list, pine nut in the US one alone; spelt is wheat in
    /// both; barley, oats and mustard are in the EU's alone.
    #[test]
    fn vectors_between_the_lists() {
        let text = |what: &str| format!("formula:\n  - 10 g {what}\n");
        for (what, us, eu) in [
            ("chestnut", None, None),
            ("fresh coconut", None, None),
            ("desiccated coconut", None, Some("sulphur dioxide and sulphites")),
            ("pine nut", Some("tree nuts"), None),
            ("spelt flour", Some("wheat"), Some("cereals containing gluten")),
            ("malted barley flour", None, Some("cereals containing gluten")),
            ("rolled oats", None, Some("cereals containing gluten")),
            ("mustard powder", None, Some("mustard")),
            ("sesame seed", Some("sesame"), Some("sesame seeds")),
            ("walnut", Some("tree nuts"), Some("nuts")),
        ] {
            testing::with_contents(&text(what), |contents| {
                let sum = allergens(contents);
                let only =
                    |found: &[Found]| found.first().map(|found| found.name.clone());
                assert_eq!(only(&sum.us).as_deref(), us, "{what}, US");
                assert_eq!(only(&sum.eu).as_deref(), eu, "{what}, EU");
            });
        }
    }

    #[test]
    fn the_unknown_stays_unknown() {
        testing::with_contents("formula:\n  - 10 g baking powder\n", |contents| {
            assert_eq!(allergens(contents).unknown, ["baking powder"]);
        });
    }
}
