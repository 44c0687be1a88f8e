//! The words of the languages: plural forms against CLDR, and nothing missing.
#![allow(clippy::disallowed_methods, reason = "the table is read")]

use std::fs;

use tourier::read::words_in;
use tourier::theme::Theme;
use tourier::words::Words;

/// The table is made by PyPI babel from CLDR; `outside/words.py` holds it against babel anew.
#[test]
fn numbers_take_the_forms_that_cldr_gives_them() {
    let table = fs::read_to_string("tests/golden/plurals.csv").expect("the table");
    let mut rows = 0;
    for row in table.lines() {
        let [language, number, category] = row.split(',').collect::<Vec<_>>()[..] else {
            panic!("{row}");
        };
        let own = Words::new(language).plural(number);
        assert_eq!(own, Some(category), "{language}: {number}");
        rows += 1;
    }
    assert!(rows > 1000, "{rows}");
}

/// A theme may say again what it wants otherwise, and a region only what differs.
#[test]
fn a_region_says_only_what_differs() {
    let mut theme = Theme::built_in();
    let own = "page-fibre = Fiber\ncrews-pair = { $count ->\n  [one] a pair\n *[other] pairs\n }\n";
    theme.files.insert("words/en-US/all.ftl".into(), own.as_bytes().into());
    let words = words_in(&theme, "en-US").expect("the words");
    assert_eq!(words.get("page-fibre"), "Fiber");
    assert_eq!(words.get("page-fat"), "Fat");
    assert_eq!(words.fill("crews-pair", &[("count", "1")]), "a pair");
    assert!(theme.speaks("en-US") && theme.speaks("en-GB") && !theme.speaks("pl"));
    assert!(["fr", "de-AT", "es", "ja"].iter().all(|tag| theme.speaks(tag)));
}
