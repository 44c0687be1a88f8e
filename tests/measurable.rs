//! Random recipes at random scales: no sheet prints an amount of nothing, an amount that no
//! kitchen scale or spoon can measure, or two numbers of pieces.
//!
//! What a scale shows: 0.01 g on one for small weights, 0.01 oz, 0.1 kg from 100 kg; spoons
//! go down to an eighth of a teaspoon. Common practice, no source.

use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::{Mass, exact};
use tourier::read::{Source, words_in};
use tourier::sheet::Sheet;
use tourier::theme::Theme;

/// Numbers that look random and are the same every time (SplitMix64).
struct Numbers(u64);

impl Numbers {
    fn below(&mut self, most: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        usize::try_from(z ^ (z >> 31)).unwrap_or(0) % most
    }

    fn one<'a>(&mut self, of: &[&'a str]) -> &'a str {
        of[self.below(of.len())]
    }
}

const SECTIONS: [&str; 10] = [
    "dough", "dry", "wet", "levain", "soaker", "eggs", "filling", "wash", "topping",
    "bench",
];

const LINES: [&str; 16] = [
    "{} g bread flour",
    "{} g dark rye flour",
    "{} oz all-purpose flour",
    "{} g water",
    "{} g water at 40 °C",
    "{} g whole milk",
    "{} eggs",
    "{} g butter",
    "{} g sugar",
    "{} tsp fine salt",
    "0.{} g instant yeast",
    "{} % fine salt",
    "bread flour, for dusting",
    "fine salt, to taste",
    "water, as needed",
    "{} tbsp honey",
];

const WORK: [&str; 8] = [
    "hands: 5 min",
    "hands: 20 s per piece",
    "wait: 60 min",
    "hands: 3 min\nsheet: 40 x 30 cm\ncut: squares 10 cm",
    "bake: 190 °C, 20 min\nper tray: 8",
    "bake: 210 °C, 30 min",
    "wait: 1 h\nwhere: fridge",
    "hands: 2 min\nkit: 1 mixer",
];

/// A recipe of up to four sections, each used by a step, with other steps between.
fn recipe(numbers: &mut Numbers) -> String {
    let (mut head, mut body) = (String::from("formula:\n"), String::new());
    let mut used: Vec<&str> = vec!["dough"];
    (0..numbers.below(4)).for_each(|_| used.push(numbers.one(&SECTIONS)));
    used.dedup();
    used.sort_unstable();
    used.dedup();
    for (at, section) in used.iter().enumerate() {
        head.push_str(&format!("  {section}:\n"));
        if *section == "dough" {
            head.push_str("    - 500 g bread flour\n");
        }
        for _ in 0..=numbers.below(4) {
            let amount = [1, 2, 3, 7, 30, 250, 1999][numbers.below(7)];
            let line = numbers.one(&LINES).replace("{}", &amount.to_string());
            head.push_str(&format!("    - {line}\n"));
        }
        let work = numbers.one(&["hands: 4 min", "hands: 9 min\nkit: 1 mixer"]);
        body.push_str(&format!(
            "## Mix {at}\n~~~ticket\nuses: {section}\n{work}\n~~~\nTake {{{section}}}.\n"
        ));
        if numbers.below(2) == 0 {
            let work = numbers.one(&WORK);
            body.push_str(&format!("## Then {at}\n~~~ticket\n{work}\n~~~\n"));
        }
    }
    body.push_str(
        "## Bake\n~~~ticket\nbake: 200 °C, 20 min\nper tray: 9\n~~~\nHave {pieces}.\n",
    );
    let makes = ["12 rolls", "1 loaf", "2 cakes", "7 buns", "900 g"][numbers.below(5)];
    format!("---\ntitle: T\nsummary: s\nmakes: {makes}\n{head}---\n{body}")
}

/// Every text in the facts but what the author wrote.
fn texts(value: &serde_json::Value, found: &mut Vec<String>) {
    match value {
        serde_json::Value::String(text) => found.push(text.clone()),
        serde_json::Value::Array(all) => all.iter().for_each(|one| texts(one, found)),
        serde_json::Value::Object(all) => all.values().for_each(|one| texts(one, found)),
        serde_json::Value::Null
        | serde_json::Value::Bool(_)
        | serde_json::Value::Number(_) => {}
    }
}

/// Each amount with its unit in a text: `1.25 kg` in `take 1.25 kg of it`.
fn amounts(text: &str) -> Vec<(&str, &str)> {
    let text: Vec<&str> = text.split([' ', '\u{a0}', ',', '(', ')', ';']).collect();
    let pairs = text.windows(2).map(|pair| (pair[0], pair[1].trim_end_matches('.')));
    pairs.filter(|(number, _)| number.starts_with(|c: char| c.is_ascii_digit())).collect()
}

fn is_measurable(number: &str, unit: &str) -> bool {
    let places = number.split_once('.').map_or(0, |(_, part)| part.len());
    let value: f64 = number.parse().unwrap_or(1.0);
    let most = match unit {
        "g" if value >= 10.0 => 1,
        "g" | "oz" => 2,
        "kg" if value >= 100.0 => 1,
        "kg" => 3,
        "cup" | "cups" | "tbsp" | "tsp" | "lb" => 0,
        _ => return true,
    };
    value > 0.0 && places <= most
}

fn hold(sheet: &Sheet, text: &str) {
    let mut facts = serde_json::to_value(sheet).expect("facts are JSON");
    // Nutrients are rounded as labels round them: no fat is `0 g` of fat.
    facts["nutrition"].take();
    let mut all = Vec::new();
    texts(&facts, &mut all);
    for said in &all {
        for (number, unit) in amounts(said) {
            assert!(is_measurable(number, unit), "`{said}` of\n{text}");
        }
    }
    let Some(pieces) = sheet.scale.pieces else { return };
    let number = sheet.scale.makes.metric.split(' ').next();
    assert_eq!(number, Some(pieces.to_string().as_str()), "{text}");
    let word = sheet.scale.makes.metric.split(' ').nth(1).unwrap_or_default();
    for said in &all {
        for (number, _) in amounts(said).into_iter().filter(|(_, unit)| *unit == word) {
            assert_eq!(number, pieces.to_string(), "`{said}` of\n{text}");
        }
    }
    if let (Some(grams), true) = (sheet.scale.piece_g, sheet.cuts.is_empty()) {
        let shown = sheet.scale.piece.as_ref().map(|piece| piece.metric.as_str());
        let [(number, unit)] = amounts(shown.unwrap_or_default())[..] else { return };
        let value: f64 = number.parse().expect("a number");
        let shown = if unit == "kg" { value * 1000.0 } else { value };
        assert!(pieces < 2 || shown <= grams + 0.01, "{shown} of {grams}:\n{text}");
    }
    for bake in &sheet.bakes {
        let trays = bake.per_tray.map(|on_one| pieces.div_ceil(on_one));
        assert!(trays.is_none_or(|trays| trays == bake.trays), "{text}");
    }
}

#[test]
fn sheets_of_random_recipes_can_be_weighed() {
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let mut numbers = Numbers(14);
    let mut held = 0;
    for _ in 0..150 {
        let text = recipe(&mut numbers);
        let source =
            |path: &str, text: &str| Source { path: path.into(), text: text.into() };
        let course = "title: c\nsummary: s\nkit: {mixer: 2 kg}\n\
                      room: {temperature: 21 °C, tap: 14 °C, friction: 12 °C}\n";
        let files = [source("course.yaml", course), source("recipes/t.md", &text)];
        let edition = Edition::new(&files, Vec::new(), Vec::new());
        let recipe = edition.content.recipe("t").expect("it is read");
        if tourier::formula::weigh(recipe, edition.book()).faults.iter().any(|_| true) {
            continue;
        }
        let ounces = |n: i64| Mass::ounces(&exact(n, 1));
        for scaling in [
            Scaling::Batches(exact(1, 1)),
            Scaling::Batches(exact(1, 7)),
            Scaling::Batches(exact(41, 3)),
            Scaling::Batches(exact(900, 1)),
            Scaling::Pieces(13),
            Scaling::PieceWeight { pieces: None, weight: ounces(2) },
            Scaling::PieceWeight { pieces: Some(50), weight: ounces(17) },
        ] {
            if let Ok(sheet) = edition.sheet(recipe, &scaling, &words) {
                hold(&sheet, &text);
                held += 1;
            }
        }
    }
    assert!(held > 450, "{held}");
}

/// Pieces cut from a sheet, so many, each of a weight, or both: the head, the cut, the trays and
/// the prose have one number, and never fewer than were asked for.
#[test]
fn cut_sheets_have_one_number_of_pieces() {
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let mut numbers = Numbers(15);
    for (makes, cut) in [
        ("12 buns", "squares 10 cm"),
        ("20 buns", "rectangles 10 x 6 cm"),
        ("12 buns", "rounds 10 cm"),
        ("7 buns", "strips 4 cm"),
    ] {
        let text = format!(
            "---\ntitle: T\nsummary: s\nmakes: {makes}\nformula:\n  dough:\n    - 500 g bread \
             flour\n    - 300 g water\n---\n## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n\
             ## Cut\n~~~ticket\nhands: 20 s per piece\nsheet: 40 x 30 cm\ncut: {cut}\n~~~\n\
             Have {{pieces}}.\n## Bake\n~~~ticket\nbake: 200 °C, 20 min\nper tray: 9\n~~~\n"
        );
        let source =
            |path: &str, text: &str| Source { path: path.into(), text: text.into() };
        let course = "title: c\nsummary: s\n";
        let files = [source("course.yaml", course), source("recipes/t.md", &text)];
        let edition = Edition::new(&files, Vec::new(), Vec::new());
        let recipe = edition.content.recipe("t").expect("it is read");
        for _ in 0..25 {
            let asked = 1 + numbers.below(60) as u64;
            let grams = |n: usize| Mass::grams(exact(i64::try_from(n).unwrap_or(1), 1));
            let weight = grams(30 + numbers.below(200));
            let (scaling, least) = match numbers.below(3) {
                0 => (Scaling::Pieces(asked), asked),
                1 => (Scaling::PieceWeight { pieces: None, weight }, 1),
                _ => (Scaling::PieceWeight { pieces: Some(asked), weight }, asked),
            };
            let sheet =
                edition.sheet(recipe, &scaling, &words).expect("it can be scaled");
            hold(&sheet, &text);
            let pieces = sheet.scale.pieces.expect("it is made in pieces");
            let [cut] = &sheet.cuts[..] else { panic!("one cut: {text}") };
            assert!(pieces >= least, "{pieces} of {least}: {text}");
            assert_eq!(cut.pieces, pieces, "{scaling:?}: {text}");
        }
    }
}
