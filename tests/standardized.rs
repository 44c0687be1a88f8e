//! Standardized recipes of the US Department of Agriculture, printed for two yields: the
//! first, scaled, must come to the second. Works of the US Government, public domain; read
//! in the copies of the Institute of Child Nutrition's recipe box, theicn.org/cnrb.
//!
//! Printed amounts are rounded to what a kitchen measures, so weights may differ by half of
//! the printed ¼ oz, measures by half of the printed ⅛ tsp or ⅛ cup. All weights here come
//! out to the letter.

use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::read::{Source, words_in};
use tourier::theme::Theme;

/// One line: the amount for the first yield, the ingredient, and what is printed for the
/// second yield, as weight or as measure.
type Line = (&'static str, &'static str, &'static str);

/// A printed recipe: its name, its two yields, its lines.
type Printed = (&'static str, [u64; 2], &'static [Line]);

const RECIPES: [Printed; 3] = [
    (
        "Baking Powder Biscuits, USDA Recipe for Child Care Centers",
        [25, 50],
        &[
            // Printed 1 lb 15 oz.
            ("31 oz", "whole wheat flour", "3 lb 14 oz"),
            ("5 oz", "skimmed milk powder", "10 oz"),
            ("3/4 oz", "baking powder", "1½ oz"),
            ("3/4 tsp", "fine salt", "1½ tsp"),
            ("1 lb", "sour cream", "2 lb"),
            ("1 3/4 cups", "water", "3½ cups"),
        ],
    ),
    (
        "Pizza Crust, USDA Recipe for Schools",
        [50, 100],
        &[
            // Printed 1 lb 14 oz and 1 lb 12 oz.
            ("30 oz", "whole wheat flour", "3 lb 12 oz"),
            ("28 oz", "bread flour", "3 lb 8 oz"),
            ("10 oz", "skimmed milk powder", "1 lb 4 oz"),
            ("6 oz", "sugar", "12 oz"),
            ("2 tbsp", "rapeseed oil", "¼ cup"),
        ],
    ),
    (
        "Pizza Crust, USDA Recipe for Child Care Centers",
        [25, 50],
        &[
            // Printed 1 Tbsp ¾ tsp and 2 Tbsp 1½ tsp, which are 2½ tbsp.
            ("3 3/4 tsp", "active dry yeast", "2½ tbsp"),
            ("15 oz", "whole wheat flour", "1 lb 14 oz"),
            ("13 oz", "bread flour", "1 lb 10 oz"),
            // Printed 1 Tbsp ½ tsp and 2 Tbsp 1 tsp.
            ("3 1/2 tsp", "sugar", "2 tbsp + 1 tsp"),
            ("3/4 tsp", "fine salt", "1½ tsp"),
            // Printed 1 qt ¼ cup.
            ("2 1/8 cups", "water", "4¼ cups"),
        ],
    ),
];

/// The US weight and the US measure of every line at the second yield.
fn scaled(printed: &Printed) -> Vec<[String; 2]> {
    let (name, [first, second], lines) = printed;
    let formula: String = lines
        .iter()
        .map(|(amount, what, _)| format!("    - {amount} {what}\n"))
        .collect();
    let text = format!(
        "---\ntitle: {name}\nsummary: s\nmakes: {first} pieces\nformula:\n  dough:\n{formula}---\n## Mix\n~~~ticket\nuses: dough\n~~~\n"
    );
    let files = [
        Source { path: "course.yaml".into(), text: "title: c\nfine scale: yes\n".into() },
        Source { path: "recipes/t.md".into(), text },
    ];
    let edition = Edition::new(&files, Vec::new(), Vec::new());
    assert!(!edition.stops(), "{name}: {:?}", edition.faults);
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let recipe = edition.content.recipe("t").expect("the recipe is read");
    let sheet = edition.sheet(recipe, &Scaling::Pieces(*second), &words);
    let sheet = sheet.expect("it can be scaled");
    assert_eq!(sheet.scale.factor, 2.0);
    let forms = sheet.formula.into_iter();
    forms.map(|line| [line.us_weight, line.us_measure.unwrap_or_default()]).collect()
}

#[test]
fn the_first_printed_yield_comes_to_the_second() {
    for printed in &RECIPES {
        for ((amount, what, expected), forms) in printed.2.iter().zip(scaled(printed)) {
            assert!(
                forms.iter().any(|form| form == expected),
                "{}: {amount} {what} is printed as {expected}, and comes to {forms:?}",
                printed.0
            );
        }
    }
}

/// Exactly: twice the first amount is the second, for every printed pair of weights.
#[test]
fn weights_double_exactly() {
    let ounces = |text: &str| {
        let pounds = |text: &str| tourier::measure::parse(text, false);
        match text.split_once(" lb") {
            Some((whole, rest)) => {
                let rest = rest.trim().trim_end_matches("oz").trim();
                let rest = if rest.is_empty() { Some(exact(0, 1)) } else { pounds(rest) };
                Some(pounds(whole)? * exact(16, 1) + rest?)
            }
            None => pounds(text.strip_suffix(" oz")?),
        }
    };
    let lines = RECIPES.iter().flat_map(|printed| printed.2);
    let pairs: Vec<_> = lines
        .filter_map(|(first, _, second)| Some((ounces(first)?, ounces(second)?)))
        .collect();
    assert_eq!(pairs.len(), 10);
    assert!(pairs.into_iter().all(|(first, second)| first * exact(2, 1) == second));
}
