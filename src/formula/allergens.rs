//! Allergens: the union over everything that touches the product, dusting too. What is
//! not known is said to be not known.

use std::collections::BTreeSet;

use crate::pantry::{Item, Law, laws};

use super::expand::{Contents, expand_lines};
use super::weigh::{MadeOf, Weighed};

/// The allergens of a product.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AllergenSum {
    /// By every law that is known, in the order of `laws`.
    pub lists: Vec<Listed>,
    /// Ingredients whose allergens are not known.
    pub unknown: Vec<String>,
    /// Ingredients whose allergens stand on the instructor's word.
    pub read_on_pack: Vec<String>,
}

/// What one law wants declared of a product.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// The law's key: `eu`.
    pub law: &'static str,
    /// What is in it, in the order of the law.
    pub found: Vec<Declared>,
}

/// One allergen that is in the product.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Declared {
    /// Its name in the law.
    pub name: String,
    /// Its kinds, where the law wants them named.
    pub kinds: Vec<String>,
    /// The ingredients that bring it.
    pub from: Vec<String>,
}

impl AllergenSum {
    /// What a law wants declared, by its key.
    pub fn by(&self, law: &str) -> &[Declared] {
        let list = self.lists.iter().find(|list| list.law == law);
        list.map_or(&[], |list| &list.found)
    }

    /// What any law wants declared.
    pub fn all(&self) -> impl Iterator<Item = &Declared> {
        self.lists.iter().flat_map(|list| &list.found)
    }

    /// Whether the other sum has an allergen, a kind of one or a doubt that this one lacks.
    pub fn lacks(&self, other: &Self) -> bool {
        let lacks = |list: &Listed| {
            list.found.iter().any(|found| {
                let own = self.by(list.law).iter().find(|own| own.name == found.name);
                own.is_none_or(|own| own.kinds.len() < found.kinds.len())
            })
        };
        other.lists.iter().any(lacks) || self.unknown.len() < other.unknown.len()
    }
}

/// Sums the allergens of everything in `contents`.
pub fn allergens(contents: &Contents) -> AllergenSum {
    let items: Vec<&Item> = contents.values().map(|(item, _)| *item).collect();
    let unknown = items.iter().filter(|item| item.allergens.is_none());
    let read = items.iter().filter(|item| item.read_on_pack);
    AllergenSum {
        lists: laws()
            .iter()
            .map(|law| Listed { law: &law.key, found: found(law, &items) })
            .collect(),
        unknown: unknown.map(|item| item.name.clone()).collect(),
        read_on_pack: read.map(|item| item.name.clone()).collect(),
    }
}

/// Whether any of some lines brings an allergen of one law or the other, or may: it includes
/// a recipe, or its allergens are not known.
pub fn brings_allergens(lines: &[&Weighed]) -> bool {
    let includes = lines.iter().any(|line| matches!(line.source, MadeOf::Recipe(_)));
    let contents = expand_lines(lines.iter().copied());
    includes || !contents.values().all(|(item, _)| item.is_free_of_allergens())
}

fn found(law: &Law, items: &[&Item]) -> Vec<Declared> {
    let one = |name: &str| {
        let mut found =
            Declared { name: name.into(), kinds: Vec::new(), from: Vec::new() };
        let mut kinds = BTreeSet::new();
        for item in items {
            let listed = item.listed(law).unwrap_or_default().into_iter();
            let here: Vec<_> = listed.filter(|said| said.name == name).collect();
            if !here.is_empty() {
                found.from.push(item.name.clone());
            }
            kinds.extend(here.iter().filter_map(|said| said.kind.clone()));
        }
        found.kinds = kinds.into_iter().collect();
        (!found.from.is_empty()).then_some(found)
    };
    law.names().into_iter().filter_map(one).collect()
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
            let names = |found: &[Declared]| -> Vec<String> {
                found.iter().map(|found| found.name.clone()).collect()
            };
            assert_eq!(names(sum.by("us")), ["milk", "tree nuts"]);
            assert_eq!(
                names(sum.by("eu")),
                ["cereals containing gluten", "milk", "nuts"]
            );
            assert_eq!(sum.by("us")[1].kinds, ["hazelnut"]);
            assert_eq!(sum.by("eu")[0].from, ["dark rye flour"]);
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
                    |found: &[Declared]| found.first().map(|found| found.name.clone());
                assert_eq!(only(sum.by("us")).as_deref(), us, "{what}, US");
                assert_eq!(only(sum.by("eu")).as_deref(), eu, "{what}, EU");
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
