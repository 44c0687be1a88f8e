//! What the laws want declared: `laws.csv`, a row for each plain word of an allergen that a
//! law has on its list, by the law's own name, in the order of the law, with its source. A
//! further law is further rows and their words.

use std::sync::OnceLock;

const LAWS: &[u8] = include_bytes!("laws.csv");

/// The allergens by the plain words an instructor writes.
pub const WORDS: [&str; 27] = [
    "milk",
    "egg",
    "fish",
    "crustacean shellfish",
    "wheat",
    "spelt",
    "khorasan wheat",
    "rye",
    "barley",
    "oat",
    "peanut",
    "soybean",
    "sesame",
    "almond",
    "hazelnut",
    "walnut",
    "cashew",
    "pecan",
    "brazil nut",
    "pistachio",
    "macadamia",
    "pine nut",
    "celery",
    "mustard",
    "sulphites",
    "lupin",
    "molluscs",
];

/// The list of one law.
#[derive(Debug)]
pub struct Law {
    /// Its key: `eu`.
    pub key: String,
    entries: Vec<ListedAllergen>,
}

#[derive(Debug)]
struct ListedAllergen {
    allergen: Allergen,
    word: &'static str,
}

/// An allergen, and its kind where the law wants it named.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Allergen {
    /// Its name in the law: `tree nuts`.
    pub name: String,
    /// Its kind: `almond`.
    pub kind: Option<String>,
}

impl Allergen {
    /// Reads `tree nuts:almond` or `milk`.
    pub fn parse(text: &str) -> Self {
        match text.split_once(':') {
            Some((name, kind)) => {
                Self { name: name.trim().into(), kind: Some(kind.trim().into()) }
            }
            None => Self { name: text.trim().into(), kind: None },
        }
    }

    /// Whether this one says the other: the same of the law's names, and the same kind, be
    /// it `pecans` or `pecan nuts`.
    fn covers(&self, other: &Self) -> bool {
        let stem = |kind: &Option<String>| {
            let word = kind.as_ref().and_then(|kind| kind.split(' ').next());
            word.map(|word| word.trim_end_matches('s').to_lowercase())
        };
        self.name == other.name && stem(&self.kind) == stem(&other.kind)
    }
}

impl Law {
    /// The names on its list, in order.
    pub fn names(&self) -> Vec<&str> {
        let mut names: Vec<&str> = Vec::new();
        for entry in &self.entries {
            if !names.contains(&entry.allergen.name.as_str()) {
                names.push(&entry.allergen.name);
            }
        }
        names
    }

    /// What it calls the allergens of some plain words, in its order.
    pub fn allergens<'a>(
        &'a self,
        words: &'a [&'static str],
    ) -> impl Iterator<Item = &'a Allergen> {
        let held = self.entries.iter().filter(|entry| words.contains(&entry.word));
        held.map(|entry| &entry.allergen)
    }

    /// Whether it has a plain word on its list.
    pub(super) fn has(&self, word: &str) -> bool {
        self.entries.iter().any(|entry| entry.word == word)
    }

    /// Whether what it says of a product says this plain word, or it has no name for it.
    pub(super) fn says(&self, said: &[Allergen], word: &str) -> bool {
        let mut wanted = self.entries.iter().filter(|entry| entry.word == word);
        wanted.all(|wanted| said.iter().any(|said| said.covers(&wanted.allergen)))
    }
}

/// Every law of which the list is known, in the order of the file.
pub fn laws() -> &'static [Law] {
    static ALL: OnceLock<Vec<Law>> = OnceLock::new();
    ALL.get_or_init(|| {
        let mut laws: Vec<Law> = Vec::new();
        for row in csv::Reader::from_reader(LAWS).records().flatten() {
            let field = |at: usize| row.get(at).unwrap_or("").trim();
            let Some(word) = WORDS.iter().find(|word| **word == field(3)) else {
                continue;
            };
            let kind = Some(field(2).to_owned()).filter(|kind| !kind.is_empty());
            let allergen = Allergen { name: field(1).to_owned(), kind };
            let entry = ListedAllergen { allergen, word };
            match laws.iter_mut().find(|law| law.key == field(0)) {
                Some(law) => law.entries.push(entry),
                None => laws.push(Law { key: field(0).to_owned(), entries: vec![entry] }),
            }
        }
        laws
    })
}

/// The law of this key.
pub fn law(key: &str) -> Option<&'static Law> {
    laws().iter().find(|law| law.key == key)
}

/// The allergen of a plain word, singular or plural.
pub(super) fn allergen(word: &str) -> Option<&'static str> {
    let word = word.trim().to_lowercase();
    WORDS.into_iter().find(|name| *name == word || format!("{name}s") == word)
}

/// Whether a law calls it a nut.
pub(super) fn is_nut(word: &str) -> bool {
    /// What the laws call nuts of any kind.
    const NUTS: [&str; 3] = ["tree nuts", "nuts", "peanuts"];
    let words = |law: &'static Law| law.entries.iter().filter(|it| it.word == word);
    laws().iter().flat_map(words).any(|it| NUTS.contains(&it.allergen.name.as_str()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(key: &str) -> Vec<&'static str> {
        law(key).expect("the law is there").names()
    }

    /// The US nine: 21 USC 321(qq) as amended by the FASTER Act of 2021. The EU fourteen:
    /// Regulation (EU) 1169/2011 Annex II.
    #[test]
    fn the_lists_are_those_of_the_laws() {
        let us = [
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
        let eu = [
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
        assert_eq!(names("us"), us);
        assert_eq!(names("eu"), eu);
    }

    /// Australia New Zealand Food Standards Code, Standard 1.2.3 and Schedule 9, S9—3, as
    /// amended by Proposal P1044 (Federal Register of Legislation F2021C00195): each tree nut
    /// by its own name, wheat and gluten apart; neither celery nor mustard.
    #[test]
    fn a_third_law_is_rows() {
        let all = names("au-nz");
        let nuts = [
            "almond",
            "Brazil nut",
            "cashew",
            "hazelnut",
            "macadamia",
            "pecan",
            "pine nut",
            "pistachio",
            "walnut",
        ];
        assert!(nuts.iter().all(|nut| all.contains(nut)), "{all:?}");
        assert_eq!(all.len(), 12 + nuts.len());
        let law = law("au-nz").expect("it is there");
        let said = |words: &[&'static str]| -> Vec<String> {
            law.allergens(words).map(|it| it.name.clone()).collect()
        };
        assert_eq!(said(&["rye"]), ["gluten"]);
        assert_eq!(said(&["spelt"]), ["wheat", "gluten"]);
        assert!(said(&["celery", "mustard"]).is_empty());
    }

    /// Every row names a plain word and its source, every word stands in a law, and what a law
    /// lists is among what the pantry's own columns know of.
    #[test]
    fn every_row_is_read() {
        let mut reader = csv::Reader::from_reader(LAWS);
        let rows: Vec<_> = reader.records().collect::<Result<_, _>>().expect("sound CSV");
        let read: usize = laws().iter().map(|law| law.entries.len()).sum();
        assert_eq!(rows.len(), read);
        assert!(rows.iter().all(|row| !row[4].is_empty()), "a row has no source");
        for word in WORDS {
            assert!(laws().iter().any(|law| law.has(word)), "{word} is in no law");
            let known = ["us", "eu"].into_iter().filter_map(law);
            assert!(known.clone().any(|law| law.has(word)), "{word}: not in the pantry");
        }
    }
}
