//! One recipe in the ways in which it is taught: values worked out by hand, recipes and ways at
//! random, and printed recipes with their alternatives as they stand.
#![allow(clippy::disallowed_methods, reason = "the printed recipes are read")]

#[path = "common/english.rs"]
mod english;

use std::collections::BTreeSet;
use std::path::Path;

use english::told;

use tourier::edition::Edition;
use tourier::fault::Severity;
use tourier::formula::{Scaling, allergens, expand, in_ways, ways, weigh};
use tourier::measure::{Exact, exact};
use tourier::model::Recipe;
use tourier::plan::Effort;
use tourier::read::{Source, words_in};
use tourier::sheet::Sheet;
use tourier::theme::Theme;

const PANTRY: &str = "oat drink:\n  like: oat milk\n  density: 1.03 g/ml\n  pack: 1 kg\n  price: 2.00\n\
    whole milk:\n  pack: 1 kg\n  price: 1.20\nbutter:\n  pack: 250 g\n  price: 2.50\n\
    sunflower oil:\n  pack: 500 g\n  price: 3.00\nbread flour:\n  pack: 1 kg\n  price: 1.00\n\
    fine salt:\n  pack: 1 kg\n  price: 1.00\nwalnut:\n  pack: 100 g\n  price: 2.00\n\
    mystery malt:\n  density: 1 g/ml\n";

const LOAF: &str = "---\ntitle: Loaf\nsummary: s\nmakes: 2 loaves\nformula:\n  dough:\n    - 500 g bread flour\n    \
    - 300 g whole milk\n    - 40 g butter\n    - 10 g fine salt\n    - 60 g walnuts, if you like\n  tin:\n    - butter, for greasing\n\
    swaps:\n  oat drink:\n    - 310 g oat drink for whole milk\n    - 30 g sunflower oil for butter in dough\n    \
    - sunflower oil, for greasing for butter in tin\n    - 5 g water in dough\n  lean:\n    - 300 g water for whole milk\n    - without butter\n  \
    malted:\n    - 300 g mystery malt for whole milk\n---\n\n\
    ## Mix\n~~~ticket\nuses: dough\nhands: 10 min\n~~~\nWarm the {whole milk} and the {butter}; add the {walnuts}.\n\n\
    ## Tin\n~~~ticket\nuses: tin\nhands: 5 min\n~~~\nGrease the tin.\n\n## Bake\n~~~ticket\nbake: 200 °C, 35 min\n~~~\n";

fn file(path: &str, text: &str) -> Source {
    Source { path: path.into(), text: text.into() }
}

fn edition(recipe: &str, more: &[Source]) -> Edition {
    let mut files = vec![
        file("course.yaml", "title: c\nsummary: s\ncurrency: EUR\n"),
        file("pantry.yaml", PANTRY),
        file("recipes/loaf.md", recipe),
    ];
    files.extend(more.iter().cloned());
    Edition::new(&files, Vec::new(), Vec::new())
}

fn sound(edition: &Edition) {
    let errors = edition.faults.iter().filter(|it| it.severity == Severity::Error);
    let errors: Vec<_> = errors.map(|it| (it.name, told(it).message)).collect();
    assert!(errors.is_empty(), "{errors:?}");
}

fn sheet(edition: &mut Edition, ways: &[&str]) -> Sheet {
    let name = edition.in_ways("loaf", ways).expect("it is offered so");
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let recipe = edition.content.recipe(&name).expect("it is there");
    let one = Scaling::Batches(exact(1, 1));
    edition.sheet(recipe, &one, &words).expect("it scales")
}

fn notes(sheet: &Sheet) -> String {
    let all = sheet.notes.iter().map(|note| note.text.metric.as_str());
    all.collect::<Vec<_>>().join(" ")
}

/// What a law calls what is in it.
fn listed<'a>(allergens: &'a tourier::sheet::Allergens, law: &str) -> Vec<&'a str> {
    allergens.by(law).iter().map(|it| it.name.as_str()).collect()
}

/// By hand. As written: 500 + 300 + 40 + 10 + 60 = 910 g; hydration 300/500 = 60 %; cost by weight
/// 0.50 + 0.36 + 0.40 + 0.01 + 1.20 = 2.47. With oat drink: 500 + 310 + 30 + 10 + 60 + 5 = 915 g;
/// (310 + 5)/500 = 63 %; 0.50 + 0.62 + 0.18 + 0.01 + 1.20 = 2.51, water free of charge. Lean:
/// 500 + 300 + 10 + 60 = 870 g; 60 %.
#[test]
fn values_by_hand() {
    let mut all = edition(LOAF, &[]);
    sound(&all);
    for (ways, grams, hydration, cost) in [
        (&[][..], 910.0, Some(60.0), Some(247)),
        (&["oat drink"], 915.0, Some(63.0), None),
        (&["lean"], 870.0, Some(60.0), None),
        (&["without walnuts"], 850.0, Some(60.0), Some(127)),
        (&["lean", "without walnuts"], 810.0, Some(60.0), None),
    ] {
        let sheet = sheet(&mut all, ways);
        assert_eq!(sheet.totals.grams, grams, "{ways:?}");
        assert_eq!(sheet.totals.hydration_percent, hydration, "{ways:?}");
        if let Some(cost) = cost {
            assert_eq!(sheet.cost.map(|it| it.total_minor), Some(cost), "{ways:?}");
        }
    }
    let oat = sheet(&mut all, &["oat drink"]);
    let percent = |name: &str| {
        let mut lines = oat.formula.iter().filter(|line| line.ingredient == name);
        lines.find_map(|line| line.percent)
    };
    assert_eq!(percent("oat drink"), Some(62.0));
    assert_eq!(percent("sunflower oil"), Some(6.0));
    assert_eq!(percent("water"), Some(1.0));
    assert!(oat.formula.iter().all(|line| line.ingredient != "butter"));
    assert_eq!((&*oat.recipe, &*oat.title), ("loaf-with-oat-drink", "Loaf (oat drink)"));
}

/// The recipe as written counts every way; a way what is in it; what it is made without is said,
/// with what may be in it all the same, and no claim.
#[test]
fn allergens_of_every_way() {
    let mut all = edition(LOAF, &[]);
    let written = sheet(&mut all, &[]);
    assert_eq!(listed(&written.allergens, "us"), ["milk", "tree nuts", "wheat"]);
    assert_eq!(written.allergens.unknown, ["mystery malt"], "it may be taken");
    let oats =
        written.allergens.by("eu").iter().any(|it| it.kinds.contains(&"oats".into()));
    assert!(oats, "{:?}", written.allergens.by("eu"));
    assert!(
        notes(&written).contains("310 g oat drink for whole milk"),
        "{}",
        notes(&written)
    );
    let oat = sheet(&mut all, &["oat drink"]);
    assert_eq!(listed(&oat.allergens, "us"), ["tree nuts", "wheat"]);
    let way = oat.way.as_ref().expect("it is a way");
    for law in ["us", "eu"] {
        assert_eq!(way.without.lists[law], ["milk"]);
    }
    let said = notes(&oat);
    assert!(said.contains("Made without milk."), "{said}");
    assert!(said.contains("traces of it can be in here"), "{said}");
    let lower = said.to_lowercase();
    for claim in ["free of", "-free", "free from", "vegan", "vegetarian"] {
        assert!(!lower.contains(claim), "{claim}: {said}");
    }
    let without = sheet(&mut all, &["without walnuts", "oat drink"]);
    assert_eq!(listed(&without.allergens, "us"), ["wheat"]);
    assert!(notes(&without).contains("Made without milk, nuts"), "{}", notes(&without));
}

/// What is not known is in a way may be anything: nothing is said to be left out.
#[test]
fn the_unknown_keeps_the_statement_off() {
    let mut all = edition(LOAF, &[]);
    let malted = sheet(&mut all, &["malted"]);
    assert_eq!(malted.allergens.unknown, ["mystery malt"]);
    assert!(!notes(&malted).contains("Made without"), "{}", notes(&malted));
    let written = sheet(&mut all, &[]);
    let offer =
        written.ways.iter().find(|way| way.name == "malted").expect("it is offered");
    assert!(offer.without.lists.values().all(Vec::is_empty));
}

/// What steps tell follows: the new name where one is taken, a word where nothing is.
#[test]
fn steps_tell_of_what_is_taken() {
    let mut all = edition(LOAF, &[]);
    let told =
        |sheet: &Sheet| serde_json::to_string(&sheet.parts).expect("it is written");
    let oat = told(&sheet(&mut all, &["oat drink"]));
    assert!(
        oat.contains("oat drink (310 g)") && oat.contains("sunflower oil (30 g)"),
        "{oat}"
    );
    assert!(!oat.contains("milk"), "{oat}");
    let without = told(&sheet(&mut all, &["without walnuts"]));
    assert!(without.contains("walnuts (left out)"), "{without}");
    let lean = told(&sheet(&mut all, &["lean"]));
    assert!(
        lean.contains("water (300 g)") && lean.contains("butter (left out)"),
        "{lean}"
    );
}

/// A step that may be left out goes with what goes in only there, and what waited for it waits
/// for what it waited for.
#[test]
fn steps_that_may_be_left_out() {
    let recipe = LOAF
        .replace("  tin:\n", "  crust:\n    - 20 g honey\n  tin:\n")
        .replace("## Bake", "## Glaze it\n~~~ticket\nuses: crust\nhands: 5 min\noptional: yes\n~~~\n\n## Bake");
    let mut all = edition(&recipe, &[]);
    sound(&all);
    let plain = sheet(&mut all, &["without Glaze it"]);
    assert_eq!(plain.recipe, "loaf-without-glaze-it");
    assert!(plain.formula.iter().all(|line| line.ingredient != "honey"));
    let steps: Vec<&str> =
        plain.time.steps.iter().map(|step| step.step.as_str()).collect();
    assert_eq!(steps, ["mix", "tin", "bake"]);
    assert_eq!(sheet(&mut all, &[]).time.steps.len(), 4);
}

/// A way that is made by a choice is called as the course's language says it, and may be asked
/// for by that and as the format has it.
#[test]
fn what_is_left_out_is_called_in_the_language() {
    for (language, called) in [("fr", "sans walnuts"), ("de", "ohne walnuts")] {
        let course =
            format!("title: T\nsummary: S\nlanguage: {language}\nunits: metric\n");
        let pantry = file("pantry.yaml", PANTRY);
        let all = [file("course.yaml", &course), pantry, file("recipes/loaf.md", LOAF)];
        let mut edition = Edition::new(&all, Vec::new(), Vec::new());
        for asked in ["without walnuts", called] {
            let name = edition.in_ways("loaf", &[asked]).expect("it is offered so");
            assert_eq!(name, "loaf-without-walnuts");
            let title = &edition.content.recipe(&name).expect("it is there").title.value;
            assert!(title.ends_with(&format!("({called})")), "{title}");
        }
    }
}

/// A class that makes it in a way: plan, order and weigh-out are of that way. By hand, two pairs:
/// 2 × 310 g of oat drink is one pack of 1 kg; no milk is bought.
#[test]
fn a_class_makes_it_in_a_way() {
    let class = |with: &str| {
        file(
            "classes/evening.yaml",
            &format!(
                "title: e\nsessions:\n  - 2027-03-02 18:00 to 21:00\nbakers: 4\nmakes:\n  - recipe: loaf\n{with}    each: pair\n    batches: 1\nkit: {{ oven: 2, tray per oven: 4 }}\n"
            ),
        )
    };
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let names = |with: &str| -> BTreeSet<String> {
        let edition = edition(LOAF, &[class(with)]);
        sound(&edition);
        let class = &edition.content.classes[0];
        let sheet = edition.class(class, Effort::USUAL, &words).expect("it is planned");
        assert!(sheet.fits);
        let bought = sheet.bought.expect("an order");
        bought.lines.iter().map(|line| line.ingredient.clone()).collect()
    };
    assert!(names("").contains("whole milk"));
    let oat = names("    with: oat drink\n");
    assert!(oat.contains("oat drink") && !oat.contains("whole milk"), "{oat:?}");
    let both = names("    with: [oat drink, without walnuts]\n");
    assert!(!both.iter().any(|name| name.contains("walnut")), "{both:?}");
    let edition = edition(LOAF, &[class("    with: spelt\n")]);
    assert!(edition.faults.iter().any(|fault| fault.name == "unknown-way"));
}

/// What is wrong with a swap is said of it, in its place.
#[test]
fn swaps_are_judged_as_recipes() {
    for (from, to, name) in [
        ("310 g oat drink for", "?? oat drink for", "bad-amount"),
        ("310 g oat drink for", "310 g zorbo for", "unknown-ingredient"),
        ("for butter in dough", "for butter", "swap-of-several"),
        ("for whole milk\n    - 30", "for cream\n    - 30", "swap-of-nothing"),
        ("5 g water in dough", "5 g water in bowl", "swap-of-nothing"),
        ("5 g water in dough", "50 g fine salt in dough", "unlikely-share"),
    ] {
        assert!(LOAF.contains(from), "{from}");
        let all = edition(&LOAF.replace(from, to), &[]);
        let names: Vec<_> = all.faults.iter().map(|fault| fault.name).collect();
        assert!(names.contains(&name), "{to}: {names:?}");
    }
    let page = LOAF.replace("swaps:", "own page: oat drink\nswaps:");
    let all = edition(&page, &[]);
    sound(&all);
    assert!(all.content.recipes.iter().any(|it| it.name == "loaf-with-oat-drink"));
}

/// Small numbers that look like chance and are the same each time.
struct Dice(u64);

impl Dice {
    fn roll(&mut self, sides: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).expect("small") % sides
    }
}

const THINGS: [&str; 16] = [
    "bread flour",
    "dark rye flour",
    "whole milk",
    "water",
    "oat drink",
    "butter",
    "lard",
    "egg yolk",
    "almond flour",
    "hazelnut",
    "sesame seed",
    "raisins",
    "mustard powder",
    "soy milk",
    "mystery malt",
    "granulated sugar",
];

/// The allergens of things by themselves, each in a recipe of its own.
fn own(things: &[&str]) -> BTreeSet<String> {
    let lines: String = things.iter().map(|it| format!("    - 1 g {it}\n")).collect();
    let all = edition(
        &format!(
            "---\ntitle: t\nsummary: s\nmakes: 10 g\nformula:\n  dough:\n{lines}---\n"
        ),
        &[],
    );
    names(&all.content.recipes[0], &all)
}

fn names(recipe: &Recipe, all: &Edition) -> BTreeSet<String> {
    let book = all.book();
    let sum = allergens(&expand(&weigh(recipe, book), &exact(1, 1)));
    let law = |law: &'static str, found: Vec<tourier::formula::Declared>| {
        found.into_iter().flat_map(move |one| {
            let kinds =
                one.kinds.clone().into_iter().map(move |kind| format!("{law} {kind}"));
            kinds.chain([format!("{law} {}", one.name)]).collect::<Vec<_>>()
        })
    };
    let known: Vec<String> = law("us", sum.by("us").to_vec())
        .chain(law("eu", sum.by("eu").to_vec()))
        .collect();
    known
        .into_iter()
        .chain(sum.unknown.into_iter().map(|it| format!("unknown {it}")))
        .collect()
}

fn total(recipe: &Recipe, all: &Edition) -> Exact {
    weigh(recipe, all.book()).total().amount().clone()
}

/// Random recipes with random ways: a way has all allergens of what is in it and the recipe as
/// written those of every way; what a way weighs is what was written, less what is left out, with
/// what is taken, to the gram.
#[test]
fn random_recipes_in_random_ways() {
    let mut dice = Dice(7);
    for round in 0..80 {
        let mut things: Vec<&str> = Vec::new();
        while things.len() < 5 {
            let thing = THINGS[dice.roll(THINGS.len())];
            if !things.contains(&thing) {
                things.push(thing);
            }
        }
        let grams: Vec<usize> = things.iter().map(|_| 5 + dice.roll(400)).collect();
        let lines: String = things
            .iter()
            .zip(&grams)
            .map(|(it, grams)| format!("    - {grams} g {it}\n"))
            .collect();
        let mut sum: usize = grams.iter().sum();
        let (mut taken, mut swap) = (Vec::new(), String::new());
        let changes = 1 + dice.roll(3);
        for at in 0..changes {
            let (thing, own) = (things[at], grams[at]);
            let new = THINGS[dice.roll(THINGS.len())];
            let more = 1 + dice.roll(300);
            sum -= own;
            match dice.roll(3) {
                0 => swap += &format!("    - without {thing}\n"),
                1 => {
                    swap += &format!("    - {more} g {new} for {thing}\n");
                    taken.push(new);
                    sum += more;
                }
                _ => {
                    swap += &format!(
                        "    - without {thing}\n    - {more} g {new} in dough\n"
                    );
                    taken.push(new);
                    sum += more;
                }
            }
        }
        let left = [&things[changes..], &taken].concat();
        let text = format!(
            "---\ntitle: t\nsummary: s\nmakes: 10 g\nformula:\n  dough:\n{lines}swaps:\n  other:\n{swap}---\n"
        );
        let all = edition(&text, &[]);
        let recipe = &all.content.recipes[0];
        let way = in_ways(recipe, &["other"], all.book())
            .unwrap_or_else(|why| panic!("{round}: {why:?} {text}"));
        assert_eq!(total(&way, &all), Exact::from_integer(sum.into()), "{text}");
        let found = names(&way, &all);
        assert_eq!(found, own(&left), "{text}");
        let written = names(recipe, &all);
        assert!(found.is_subset(&written), "{found:?} {written:?} {text}");
        assert!(own(&things).is_subset(&written), "{text}");
    }
}

/// A random recipe with two lines that leave a choice, two of what may be left out, one with a swap;
/// what its lines name, and their grams.
fn with_choices(dice: &mut Dice) -> (String, Vec<&'static str>, Vec<usize>) {
    let mut things: Vec<&str> = Vec::new();
    while things.len() < 8 {
        let thing = THINGS[dice.roll(THINGS.len())];
        if !things.contains(&thing) {
            things.push(thing);
        }
    }
    let grams: Vec<usize> = (0..6).map(|_| 5 + dice.roll(400)).collect();
    let lines = [
        format!("{} g {} or {}", grams[0], things[0], things[1]),
        format!("{} g {} or {}", grams[1], things[2], things[3]),
        format!("{} g {}, if you like", grams[2], things[4]),
        format!("{} g {}, if you like", grams[3], things[5]),
        format!("{} g {}", grams[4], things[6]),
    ];
    let lines: String = lines.iter().map(|line| format!("    - {line}\n")).collect();
    let swap = format!("    - {} g {} for {}\n", grams[5], things[7], things[6]);
    let text = format!(
        "---\ntitle: t\nsummary: s\nmakes: 10 g\nformula:\n  dough:\n{lines}swaps:\n  other:\n{swap}---\n"
    );
    (text, things, grams)
}

/// Random recipes with `or`, `if you like` and a swap at once, in several of these ways at once: the
/// way weighs what is taken, to the gram; it has the allergens of all that is in it, and of nothing
/// that its own lines no longer offer; the recipe as written has those of every way.
#[test]
fn random_choices_of_several_ways() {
    let mut dice = Dice(11);
    let mut tried = 0;
    for round in 0..60 {
        let (text, things, grams) = with_choices(&mut dice);
        let all = edition(&text, &[]);
        let recipe = &all.content.recipes[0];
        let offered: Vec<String> =
            ways(recipe, all.book()).into_iter().map(|way| way.name).collect();
        assert_eq!(offered.len(), 5, "{offered:?} {text}");
        // Swaps come first, then the choices in order of their lines, then what may go.
        let does: Vec<bool> = (0..5).map(|_| dice.roll(2) == 1).collect();
        let asked = offered.iter().zip(&does).filter(|(_, it)| **it);
        let asked: Vec<&str> = asked.map(|(way, _)| &**way).collect();
        let way = in_ways(recipe, &asked, all.book())
            .unwrap_or_else(|why| panic!("{round}: {why:?} {asked:?} {text}"));
        let either =
            |does: bool, [one, other]: [usize; 2]| if does { other } else { one };
        let mut taken = vec![
            things[either(does[1], [0, 1])],
            things[either(does[2], [2, 3])],
            things[either(does[0], [6, 7])],
        ];
        let mut sum = grams[0] + grams[1] + grams[either(does[0], [4, 5])];
        for at in [0, 1].into_iter().filter(|at| !does[3 + at]) {
            taken.push(things[4 + at]);
            sum += grams[2 + at];
        }
        assert_eq!(
            total(&way, &all),
            Exact::from_integer(sum.into()),
            "{asked:?} {text}"
        );
        let found = names(&way, &all);
        assert!(own(&taken).is_subset(&found), "{asked:?} {found:?} {text}");
        // A line that still leaves its choice has the allergens of both.
        let open = [(1, 1), (2, 3)].into_iter().filter(|(way, _)| !does[*way]);
        taken.extend(open.map(|(_, other)| things[other]));
        assert!(found.is_subset(&own(&taken)), "{asked:?} {found:?} {text}");
        let written = names(recipe, &all);
        assert!(found.is_subset(&written), "{asked:?} {found:?} {written:?} {text}");
        tried += usize::from(asked.len() > 1);
    }
    assert!(tried > 30, "{tried} rounds with two ways or more at once");
}

/// Whole printed recipes of the public domain (`tests/printed`, each with its source) in every way
/// that their lines leave: the other is taken in the same measure, everything else stays, and the
/// recipe as printed has the allergens of each.
#[test]
fn printed_recipes_with_their_alternatives() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/printed");
    let (mut recipes, mut taken) = (BTreeSet::new(), Vec::new());
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .expect("the folder")
        .flatten()
        .map(|it| it.path())
        .collect();
    files.sort();
    for path in files.iter().filter(|it| it.extension().is_some_and(|end| end == "txt")) {
        let text = std::fs::read_to_string(path).expect("a file of recipes");
        for printed in text.split("\n== ").skip(1) {
            let rows = printed
                .lines()
                .filter(|row| row.contains(" | ") && !row.contains(" | refused | "));
            let lines: String = rows
                .filter_map(|row| row.split(" | ").next())
                .map(|line| format!("    - '{}'\n", line.replace('\'', "''")))
                .collect();
            let all = edition(
                &format!(
                    "---\ntitle: t\nsummary: s\nmakes: 1 cake\nformula:\n  dough:\n{lines}---\n"
                ),
                &[],
            );
            let recipe = &all.content.recipes[0];
            for way in ways(recipe, all.book()) {
                let title = printed.lines().next().unwrap_or_default();
                let made = match in_ways(recipe, &[&way.name], all.book()) {
                    Ok(made) => made,
                    Err(why) => panic!("{title}: {}: {why:?}", way.name),
                };
                let (before, after) =
                    (weigh(recipe, all.book()), weigh(&made, all.book()));
                let differing = before.lines.iter().zip(&after.lines);
                let differing =
                    differing.filter(|(one, other)| one.known_as() != other.known_as());
                assert!(differing.count() <= 1, "{title}: {}", way.name);
                assert!(
                    names(&made, &all).is_subset(&names(recipe, &all)),
                    "{title}: {}",
                    way.name
                );
                recipes.insert(title.to_owned());
                taken.push(way.name);
            }
        }
    }
    assert!(recipes.len() >= 6, "{recipes:?}");
    for name in ["clarified dripping", "lard", "lemon-peel", "molasses", "bread flour"] {
        assert!(taken.iter().any(|it| it == name), "{name}: {taken:?}");
    }
}
