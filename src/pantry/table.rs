//! The built-in data file, row by row.

use std::sync::OnceLock;

use crate::measure::{Exact, parse};

use super::item::{Item, Kind, Nutrients, Portion, Role};
use super::law::{Allergen, WORDS, law};

/// One row an ingredient, with its source: USDA National Nutrient Database for Standard
/// Reference, Release 28 (SR28), where the row names it.
const DATA: &[u8] = include_bytes!("pantry.csv");
/// Names of the commonest ingredients in other languages.
const NAMES: &[u8] = include_bytes!("names.csv");

/// What an ingredient is called in a language.
pub(super) struct Named {
    pub(super) language: String,
    /// The ingredient's own name in the table.
    pub(super) item: String,
    /// How it is shown.
    pub(super) name: String,
    /// What else it is written as.
    pub(super) also: Vec<String>,
}

/// The names of ingredients in other languages, in the order of the file.
pub(super) fn names() -> impl Iterator<Item = &'static Named> {
    static ALL: OnceLock<Vec<Named>> = OnceLock::new();
    let all = ALL.get_or_init(|| {
        csv::Reader::from_reader(NAMES)
            .records()
            .flatten()
            .map(|row| named(&row))
            .collect()
    });
    all.iter()
}

fn named(row: &csv::StringRecord) -> Named {
    let field = |at: usize| row.get(at).unwrap_or("").to_owned();
    let also = field(3);
    let also = also.split(';').map(str::trim).filter(|name| !name.is_empty());
    let also = also.map(str::to_owned).collect();
    Named { language: field(0), item: field(1), name: field(2), also }
}

/// The columns that hold the list of a law, by its key.
const COLUMNS: [(&str, usize); 2] = [("us", 6), ("eu", 7)];

/// Every row, with its other names.
pub(super) fn items() -> Vec<(Item, Vec<String>)> {
    csv::Reader::from_reader(DATA).records().flatten().map(|row| item(&row)).collect()
}

fn item(row: &csv::StringRecord) -> (Item, Vec<String>) {
    let field = |at: usize| row.get(at).unwrap_or("").trim();
    let list =
        |at: usize| field(at).split(';').map(str::trim).filter(|word| !word.is_empty());
    let nutrients: Nutrients = std::array::from_fn(|n| number(field(8 + n)));
    let kind = Kind::parse(field(2)).unwrap_or_default();
    let item = Item {
        name: field(0).to_owned(),
        shown: None,
        kind,
        role: Role::of(field(0), kind),
        portions: list(3).filter_map(Portion::parse).collect(),
        density: number(field(4)),
        water: number(field(5)),
        allergens: words(COLUMNS.map(|(law, at)| (law, field(at)))),
        nutrients,
        pack: None,
        price_minor: None,
        read_on_pack: false,
    };
    (item, list(1).map(str::to_lowercase).collect())
}

fn number(field: &str) -> Option<Exact> {
    parse(field, false)
}

/// The plain words of what the laws' columns list. `none` is said; where a field is empty the
/// allergens are not known.
fn words(columns: [(&str, &str); 2]) -> Option<Vec<&'static str>> {
    let listed = |field: &str| match field {
        "" => None,
        "none" => Some(Vec::new()),
        names => Some(names.split(';').map(Allergen::parse).collect::<Vec<_>>()),
    };
    let lists = columns.map(|(key, field)| Some((law(key)?, listed(field)?)));
    let lists: Vec<_> = lists.into_iter().collect::<Option<_>>()?;
    let held = |word: &&str| {
        lists.iter().any(|(law, _)| law.has(word))
            && lists.iter().all(|(law, said)| law.says(said, word))
    };
    Some(WORDS.into_iter().filter(held).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_reads_whole() {
        let mut reader = csv::Reader::from_reader(DATA);
        let rows: Vec<_> = reader.records().collect::<Result<_, _>>().expect("sound CSV");
        assert!(rows.len() >= 450);
        for row in &rows {
            let (item, _) = item(row);
            let portions =
                row[3].split(';').filter(|text| !text.trim().is_empty()).count();
            assert_eq!(item.portions.len(), portions, "{}", item.name);
            assert!(Kind::parse(&row[2]).is_some(), "{}", item.name);
            assert!(!row[16].is_empty(), "{} has no source", item.name);
            for at in 8..16 {
                assert_eq!(
                    row[at].is_empty(),
                    number(&row[at]).is_none(),
                    "{} {at}",
                    item.name
                );
            }
        }
    }
}
