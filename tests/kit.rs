//! Steps done with other kit: by hand, in a sheeter, in another oven. Values worked out by hand.

use tourier::edition::Edition;
use tourier::fault::Severity;
use tourier::formula::{Scaling, in_ways};
use tourier::measure::exact;
use tourier::read::{Source, words_in};
use tourier::sheet::{OtherSheet, Part, Sheet, StepSheet, Ticked, TicketRow};
use tourier::theme::Theme;

const RECIPE: &str = "---\ntitle: Block\nsummary: s\nmakes: 10 squares\nformula:\n  dough:\n    - 500 g bread flour\n    - 250 g water\n  roll-in:\n    - 250 g butter\ndough temperature: 24 °C\n---\n\n\
## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nhands: 10 min\nuntil: it is smooth\n~~~\nMix {dough}.\n\n> Caution: Keep your hands out of the bowl.\n\n\
~~~ticket by hand\nhands: 18 min\nfriction: 2 °C\n~~~\nKnead {dough}.\n\n\
## Lock in\n~~~ticket\nuses: roll-in\nlock-in: book\nsheet: 40 x 20 cm\n~~~\n\n\
## Turn\n~~~ticket\nhands: 10 min\nsheet: 60 x 20 cm\nturn: letter\n~~~\nRoll it.\n\n\
~~~ticket sheeter\nhands: 4 min\nsheeter: yes\n~~~\n\n\
## Bake\n~~~ticket\nbake: 220 °C, 20 min\nfan: 195 °C\n~~~\nBake it.\n\n~~~ticket deck oven\nbake: 240 °C, 18 min\n~~~\n";

fn edition(more: &[Source]) -> Edition {
    let file = |path: &str, text: &str| Source { path: path.into(), text: text.into() };
    let course = "title: c\nsummary: s\nroom: {temperature: 21 °C, flour: 20 °C, friction: 12 °C}\n";
    let mut files = vec![file("course.yaml", course), file("recipes/block.md", RECIPE)];
    files.extend(more.iter().cloned());
    let edition = Edition::new(&files, Vec::new(), Vec::new());
    let errors = edition.faults.iter().filter(|it| it.severity == Severity::Error);
    assert_eq!(errors.count(), 0, "{:?}", edition.faults);
    edition
}

fn sheet(ways: &[&str]) -> Sheet {
    let mut edition = edition(&[]);
    let name = edition.in_ways("block", ways).expect("it is offered so");
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let recipe = edition.content.recipe(&name).expect("it is there");
    edition.sheet(recipe, &Scaling::Batches(exact(1, 1)), &words).expect("it scales")
}

fn step(sheet: &Sheet, name: &str) -> StepSheet {
    let found = sheet.parts.iter().find_map(|part| match part {
        Part::Step(step) if step.step == name => Some(step.clone()),
        Part::Step(_) | Part::Prose { .. } => None,
    });
    found.expect("the step is there")
}

fn row(rows: &[TicketRow], key: Ticked) -> Option<String> {
    rows.iter().find(|row| row.key == key).map(|row| row.value.metric.clone())
}

fn other(sheet: &Sheet, name: &str) -> OtherSheet {
    step(sheet, name).others.first().cloned().expect("another way")
}

/// 24 × 3 − 20 − 21 − 12 = 19 °C with the mixer, and 24 × 3 − 20 − 21 − 2 = 29 °C by hand.
#[test]
fn the_water_follows_the_kit() {
    let written = sheet(&[]);
    let water = |sheet: &Sheet| sheet.water.as_ref().map(|water| water.water_c);
    assert_eq!(water(&written), Some(19.0));
    let beside = other(&written, "mix");
    assert_eq!(beside.name, "by hand");
    assert_eq!(row(&beside.ticket, Ticked::Hands).as_deref(), Some("18 min"));
    assert_eq!(row(&beside.ticket, Ticked::Water).as_deref(), Some("29 °C"));
    assert!(beside.until.is_none(), "it is as in the step");
    let by_hand = sheet(&["by hand"]);
    assert_eq!(water(&by_hand), Some(29.0));
    assert_eq!(
        (&*by_hand.recipe, &*by_hand.title),
        ("block-with-by-hand", "Block (by hand)")
    );
    let mix = step(&by_hand, "mix");
    assert_eq!(row(&mix.ticket, Ticked::Kit), None);
    assert!(mix.others.is_empty() && mix.until.is_some());
    let told = serde_json::to_string(&mix.prose).expect("it writes");
    assert!(told.contains("Knead") && !told.contains("Mix "), "{told}");
    assert!(told.contains("hands out of the bowl"), "cautions stay: {told}");
    assert_eq!(by_hand.totals.grams, written.totals.grams);
    assert_eq!(by_hand.time.hands_min, written.time.hands_min + 8);
}

/// 1000 g closed as a book to 20 × 20 cm, then rolled to 60 × 20 cm, a third as thick: from 23.7 to
/// 7.9 mm. Backwards: 7.9 × 4/3 = 10.5, so 10 on a dial of whole millimetres; × 3/2 = 15; 22.5, so
/// 22; 33 is more than 23.7.
#[test]
fn a_sheeter_has_its_openings() {
    let written = sheet(&[]);
    let beside = other(&written, "turn");
    let told = row(&beside.ticket, Ticked::Sheeter).expect("openings");
    let openings: Vec<f64> = told
        .trim_end_matches(" mm")
        .split(" → ")
        .map(|it| it.parse().expect("a number"))
        .collect();
    let sheets = &written.lamination.as_ref().expect("it is layered").sheets;
    let last = sheets.last().expect("a sheet").thickness_mm;
    assert!((openings.last().expect("one") - last).abs() < 0.06, "{openings:?}, {last}");
    let mut before = last * 3.0;
    for opening in &openings {
        assert!(*opening < before && *opening > before * 0.66, "{openings:?}");
        before = *opening;
    }
    assert_eq!(openings, [22.0, 15.0, 10.0, 7.9]);
    assert!(row(&step(&written, "turn").ticket, Ticked::Sheeter).is_none());
}

/// Another oven has its own heat and time, and not the fan's setting of the first.
#[test]
fn another_oven() {
    let beside = other(&sheet(&[]), "bake");
    assert_eq!(row(&beside.ticket, Ticked::Oven).as_deref(), Some("240 °C"));
    assert_eq!(row(&beside.ticket, Ticked::Fan).as_deref(), Some("220 °C"));
    let deck = sheet(&["deck oven", "sheeter"]);
    assert_eq!((deck.bakes[0].oven_c, deck.bakes[0].fan_c), (240.0, 220.0));
    assert!(row(&step(&deck, "turn").ticket, Ticked::Sheeter).is_some());
}

/// A class that works by hand needs no mixer.
#[test]
fn a_class_takes_other_kit() {
    let mixes = |with: &str| {
        let text = format!(
            "title: e\nsessions:\n  - 2027-03-02 18:00 to 21:00\nbakers: 4\nmakes:\n  - recipe: block\n{with}    each: pair\n    batches: 1\nkit: {{ mixer: 1, oven: 2, tray per oven: 4 }}\n"
        );
        let edition = edition(&[Source { path: "classes/evening.yaml".into(), text }]);
        let class = &edition.content.classes[0];
        let recipe = edition.content.recipe(&class.makes[0].recipe.value).expect("it is");
        recipe.steps().any(|step| step.needs_mixer())
    };
    assert!(mixes(""));
    assert!(!mixes("    with: by hand\n"));
}

#[test]
fn what_is_not_offered_is_refused() {
    let edition = edition(&[]);
    let recipe = edition.content.recipe("block").expect("it is there");
    assert!(in_ways(recipe, &["by foot"], edition.book()).is_err());
    assert!(in_ways(recipe, &["by hand", "BY HAND"], edition.book()).is_err());
}
