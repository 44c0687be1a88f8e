//! The built-in data file, row by row.

use crate::measure::{Exact, parse};

use super::item::{Allergen, Item, Kind, Nutrients, Portion};

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
pub(super) fn names() -> impl Iterator<Item = Named> {
    let rows = csv::Reader::from_reader(NAMES).into_records().flatten();
    rows.map(|row| {
        let field = |at: usize| row.get(at).unwrap_or("").to_owned();
        let also = field(3);
        let also = also.split(';').map(str::trim).filter(|name| !name.is_empty());
        let also = also.map(str::to_owned).collect();
        Named { language: field(0), item: field(1), name: field(2), also }
    })
}

/// The US nine and the EU fourteen by the plain words an instructor writes: word, US
/// name, EU name. 21 USC 321(qq); Regulation (EU) 1169/2011 Annex II.
const ALLERGENS: &[(&str, Option<&str>, Option<&str>)] = &[
    ("milk", Some("milk"), Some("milk")),
    ("egg", Some("egg"), Some("eggs")),
    ("fish", Some("fish"), Some("fish")),
    ("crustacean shellfish", Some("crustacean shellfish"), Some("crustaceans")),
    ("wheat", Some("wheat"), Some("cereals containing gluten:wheat")),
    ("spelt", Some("wheat"), Some("cereals containing gluten:spelt")),
    ("khorasan wheat", Some("wheat"), Some("cereals containing gluten:khorasan wheat")),
    ("rye", None, Some("cereals containing gluten:rye")),
    ("barley", None, Some("cereals containing gluten:barley")),
    ("oat", None, Some("cereals containing gluten:oats")),
    ("peanut", Some("peanuts"), Some("peanuts")),
    ("soybean", Some("soybeans"), Some("soybeans")),
    ("sesame", Some("sesame"), Some("sesame seeds")),
    ("almond", Some("tree nuts:almond"), Some("nuts:almonds")),
    ("hazelnut", Some("tree nuts:hazelnut"), Some("nuts:hazelnuts")),
    ("walnut", Some("tree nuts:walnut"), Some("nuts:walnuts")),
    ("cashew", Some("tree nuts:cashew"), Some("nuts:cashews")),
    ("pecan", Some("tree nuts:pecan"), Some("nuts:pecan nuts")),
    ("brazil nut", Some("tree nuts:Brazil nut"), Some("nuts:Brazil nuts")),
    ("pistachio", Some("tree nuts:pistachio"), Some("nuts:pistachio nuts")),
    ("macadamia", Some("tree nuts:macadamia"), Some("nuts:macadamia nuts")),
    ("pine nut", Some("tree nuts:pine nut"), None),
    ("celery", None, Some("celery")),
    ("mustard", None, Some("mustard")),
    ("sulphites", None, Some("sulphur dioxide and sulphites")),
    ("lupin", None, Some("lupin")),
    ("molluscs", None, Some("molluscs")),
];

/// The US and EU entries of an allergen by its plain word, singular or plural.
pub(super) fn allergen(word: &str) -> Option<(Option<Allergen>, Option<Allergen>)> {
    let word = word.trim().to_lowercase();
    let row = ALLERGENS
        .iter()
        .find(|(name, ..)| *name == word || format!("{name}s") == word)?;
    Some((row.1.map(Allergen::parse), row.2.map(Allergen::parse)))
}

/// The plain words for allergens.
pub(super) fn words() -> Vec<&'static str> {
    ALLERGENS.iter().map(|(word, ..)| *word).collect()
}

/// What an item's allergens are called in plain words.
pub(super) fn plain_words(item: &Item) -> Vec<&'static str> {
    let holds = |said: &Option<Vec<Allergen>>, word: Option<&str>| {
        word.is_none_or(|word| {
            let want = Allergen::parse(word);
            said.as_ref().is_some_and(|said| said.iter().any(|said| said.covers(&want)))
        })
    };
    let rows = ALLERGENS.iter();
    let rows = rows.filter(|(_, us, eu)| holds(&item.us, *us) && holds(&item.eu, *eu));
    rows.map(|(word, ..)| *word).collect()
}

/// Every row, with its other names.
pub(super) fn items() -> Vec<(Item, Vec<String>)> {
    csv::Reader::from_reader(DATA).records().flatten().map(|row| item(&row)).collect()
}

fn item(row: &csv::StringRecord) -> (Item, Vec<String>) {
    let field = |at: usize| row.get(at).unwrap_or("").trim();
    let list =
        |at: usize| field(at).split(';').map(str::trim).filter(|word| !word.is_empty());
    let nutrients: Nutrients = std::array::from_fn(|n| number(field(8 + n)));
    let item = Item {
        name: field(0).to_owned(),
        shown: None,
        kind: Kind::parse(field(2)).unwrap_or_default(),
        portions: list(3).filter_map(Portion::parse).collect(),
        density: number(field(4)),
        water: number(field(5)),
        us: allergens(field(6)),
        eu: allergens(field(7)),
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

/// `none` is said; an empty field is not known.
fn allergens(field: &str) -> Option<Vec<Allergen>> {
    match field {
        "" => None,
        "none" => Some(Vec::new()),
        names => Some(names.split(';').map(Allergen::parse).collect()),
    }
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
