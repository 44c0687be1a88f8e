//! Bakes and proofs in phases: what they add up to, how the page, the facts, the plans and linked data have
//! them. Values worked out by hand.

use tourier::edition::Edition;
use tourier::fault::Severity;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::plan::Effort;
use tourier::read::{Source, words_in};
use tourier::sheet::{BakeAct, ClassSheet, Part, Sheet, StepSheet, Ticked};
use tourier::theme::Theme;

fn recipe(bake: &str) -> String {
    format!(
        "---\ntitle: Pie\nsummary: s\nmakes: 1 pie\nformula:\n  paste:\n    - 250 g all-purpose flour\n    - 125 g lard\n    - 60 g water\n---\n\n\
         ## Mix\n~~~ticket\nuses: paste\nhands: 10 min\n~~~\n\n## Bake\n~~~ticket\nbake: {bake}\n~~~\n"
    )
}

fn edition(bake: &str, more: &[Source]) -> Edition {
    let file = |path: &str, text: &str| Source { path: path.into(), text: text.into() };
    let mut files = vec![
        file("course.yaml", "title: c\nsummary: s\n"),
        file("recipes/pie.md", &recipe(bake)),
    ];
    files.extend(more.iter().cloned());
    Edition::new(&files, Vec::new(), Vec::new())
}

fn sheet(bake: &str) -> Sheet {
    let edition = edition(bake, &[]);
    let errors = edition.faults.iter().filter(|it| it.severity == Severity::Error);
    assert_eq!(errors.count(), 0, "{bake}: {:?}", edition.faults);
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let recipe = edition.content.recipe("pie").expect("it is there");
    edition.sheet(recipe, &Scaling::Batches(exact(1, 1)), &words).expect("it scales")
}

fn row(sheet: &Sheet, key: Ticked) -> [String; 2] {
    let step = |part: &Part| match part {
        Part::Step(step) => Some(step.clone()),
        Part::Prose { .. } => None,
    };
    let steps: Vec<StepSheet> = sheet.parts.iter().filter_map(step).collect();
    let rows = steps.iter().flat_map(|step| &step.ticket);
    let found = rows.filter(|row| row.key == key).map(|row| row.value.clone()).next();
    found.map(|value| [value.metric, value.us]).expect("the row is there")
}

/// As many printed pies: a hot oven first, then a moderate one. 230 °C is 446 °F, so 450 °F; 180 °C
/// is 356 °F, which is more than 5 °F from 350 °F, so 355 °F. 10 + 35 min are 45, 50 with what its looks may want.
#[test]
fn two_heats_by_hand() {
    let pie = "230 °C, 10 min, steam; then 180 °C, 35 min, turn the tray, 5 min more if the crust is pale";
    let sheet = sheet(pie);
    assert_eq!(row(&sheet, Ticked::Oven), ["230 °C, then 180 °C", "450 °F, then 355 °F"]);
    assert_eq!(row(&sheet, Ticked::Fan)[0], "210 °C, then 160 °C");
    let told =
        "10 min, with steam, then 35 min, turn the tray, 5 min more if the crust is pale";
    assert_eq!(row(&sheet, Ticked::Bake)[0], told);
    let bake = &sheet.bakes[0];
    assert_eq!((bake.oven_c, bake.fan_c, bake.phases.len()), (230.0, 210.0, 2));
    let second = &bake.phases[1];
    assert_eq!(
        (second.oven_c, second.fan_c, second.minutes),
        (180.0, 160.0, [35, 35, 35])
    );
    assert_eq!(
        (second.does.as_slice(), second.more_min),
        (&[BakeAct::TurnTray][..], Some(5))
    );
    let step = sheet.time.steps.iter().find(|step| step.bake).expect("a bake");
    assert_eq!(step.wait_min, [45, 45, 50]);
}

/// A bake of one phase in which nothing is done stands as it always did.
#[test]
fn a_plain_bake_is_plain() {
    let sheet = sheet("190 °C, 22 min (20 min to 25 min)");
    assert!(sheet.bakes[0].phases.is_empty());
    assert_eq!(row(&sheet, Ticked::Oven)[0], "190 °C");
    assert_eq!(row(&sheet, Ticked::Bake)[0], "22 min (20–25 min)");
}

/// Three pies that need a tray each, in one oven, from 18:00 to 20:15: at one heat, and where it
/// changes in the same way for all, they bake together on three trays; on two, one of them after
/// the others, for which there is no time.
#[test]
fn what_begins_together_shares_an_oven_whose_heat_changes() {
    for bake in ["200 °C, 90 min", "230 °C, 30 min; then 180 °C, 60 min"] {
        for (trays, fits) in [(3, true), (2, false)] {
            let plan = evening(&[("pie", bake)], 6, trays);
            assert_eq!(plan.fits, fits, "{bake}, {trays}");
        }
    }
}

/// Nothing goes into an oven while its heat changes: a flan that bakes as the pie begins, and as
/// long, bakes before or after it; one with the pie's own phases with it.
#[test]
fn an_oven_whose_heat_changes_holds_nothing_else() {
    let changing = "230 °C, 30 min; then 180 °C, 60 min";
    for (flan, fits) in [("230 °C, 90 min", false), (changing, true)] {
        let plan = evening(&[("pie", changing), ("flan", flan)], 2, 2);
        assert_eq!(plan.fits, fits, "{flan}");
    }
}

/// A class of pairs that each make these recipes, with one oven of so many trays.
fn evening(recipes: &[(&str, &str)], bakers: u32, trays: u32) -> ClassSheet {
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let makes = |(name, _): &(&str, &str)| {
        format!("  - recipe: {name}\n    each: pair\n    batches: 1\n")
    };
    let makes: String = recipes.iter().map(makes).collect();
    let class = format!(
        "title: e\nsessions:\n  - 2027-03-02 18:00 to 20:15\nbakers: {bakers}\nmakes:\n{makes}kit: {{ oven: 1, tray per oven: {trays} }}\n"
    );
    let file = |path: String, text: String| Source { path, text };
    let mut files = vec![
        file("course.yaml".into(), "title: c\nsummary: s\n".into()),
        file("classes/evening.yaml".into(), class),
    ];
    files.extend(
        recipes
            .iter()
            .map(|(name, bake)| file(format!("recipes/{name}.md"), recipe(bake))),
    );
    let edition = Edition::new(&files, Vec::new(), Vec::new());
    let sheet = edition.class(&edition.content.classes[0], Effort::USUAL, &words);
    sheet.expect("it is decided")
}

#[test]
fn a_phase_that_no_oven_has_is_pointed_out() {
    for (bake, name) in [
        ("230 °C, 10 min; then 700 °C, 35 min", "impossible-value"),
        ("230 °C, 10 min; then 35 min, singing", "bad-value"),
        ("230 °C, 10 min; then 180 °C", "bad-value"),
    ] {
        let edition = edition(bake, &[]);
        let names: Vec<_> = edition.faults.iter().map(|fault| fault.name).collect();
        assert!(names.contains(&name), "{bake}: {names:?}");
    }
}

fn proved(proof: &str, more: &[Source]) -> Edition {
    let text = recipe("200 °C, 30 min")
        .replace("## Bake", &format!("## Proof\n~~~ticket\n{proof}\n~~~\n\n## Bake"));
    let text = text.replace("125 g lard", "3 g instant yeast");
    let file = |path: &str, text: &str| Source { path: path.into(), text: text.into() };
    let mut files = vec![
        file("course.yaml", "title: c\nsummary: s\n"),
        file("recipes/pie.md", &text),
    ];
    files.extend(more.iter().cloned());
    Edition::new(&files, Vec::new(), Vec::new())
}

const PROOF: &str =
    "proof: 5 °C, 12 h (8 h to 18 h) in the fridge; then 26 °C, 90 min in the proofer";

/// 12 h and 90 min are 810 min, least 570, most 1170; 5 °C is 41 °F, 26 °C is 78.8 °F. On a
/// timeline it begins at 10 min in the fridge, at 730 min in the proofer; the bake at 820.
#[test]
fn a_proof_by_two_temperatures_by_hand() {
    let edition = proved(PROOF, &[]);
    let errors = edition.faults.iter().filter(|it| it.severity == Severity::Error);
    assert_eq!(errors.count(), 0, "{:?}", edition.faults);
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let recipe = edition.content.recipe("pie").expect("it is there");
    let sheet = edition.sheet(recipe, &Scaling::Batches(exact(1, 1)), &words);
    let sheet = sheet.expect("it scales");
    assert_eq!(row(&sheet, Ticked::Wait)[0], "12 h (8 h–18 h), then 1 h 30 min");
    assert_eq!(row(&sheet, Ticked::Where)[0], "fridge, then proofer");
    assert_eq!(row(&sheet, Ticked::At), ["5 °C, then 26 °C", "41 °F, then 79 °F"]);
    let phases = &sheet.proofs[0].phases;
    let facts: Vec<_> = phases.iter().map(|it| (it.at_c, it.minutes)).collect();
    assert_eq!(facts, [(5.0, [720, 480, 1080]), (26.0, [90, 90, 90])]);
    let steps: Vec<_> = sheet
        .time
        .steps
        .iter()
        .map(|step| (&*step.step, step.start_min, step.place.as_deref()))
        .collect();
    assert_eq!(
        steps,
        [
            ("mix", 0, None),
            ("proof", 10, Some("fridge")),
            ("proof", 730, Some("proofer")),
            ("bake", 820, None)
        ]
    );
    assert_eq!((sheet.time.wait_min, sheet.time.elapsed_min), (840, 850));
}

/// A class of two evenings leaves it in the fridge over night without a hold; a warm wait stays
/// where it is.
#[test]
fn a_class_leaves_it_over_night_where_it_is_cold() {
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let class = Source {
        path: "classes/evening.yaml".into(),
        text: "title: e\nsessions:\n  - 2027-03-02 18:00 to 21:00\n  - 2027-03-03 09:00 to 12:00\nbakers: 4\nmakes:\n  - recipe: pie\n    each: pair\n    batches: 1\nkit: { oven: 1, tray per oven: 2, fridge tray: 2, proofer tray: 2 }\n".into(),
    };
    for (proof, fits) in [
        (PROOF, true),
        (
            "proof: 16 °C, 12 h (8 h to 18 h) on the bench; then 26 °C, 90 min in the proofer",
            false,
        ),
        ("wait: 12 h (8 h to 18 h)\nwhere: fridge", false),
    ] {
        let edition = proved(proof, std::slice::from_ref(&class));
        let sheet = edition.class(&edition.content.classes[0], Effort::USUAL, &words);
        let sheet = sheet.expect("it is decided");
        assert_eq!(sheet.fits, fits, "{proof}");
        if fits {
            let places: Vec<_> =
                sheet.plan.rests.iter().filter_map(|rest| rest.place.clone()).collect();
            assert!(places.iter().any(|it| it == "fridge"), "{places:?}");
            assert!(places.iter().any(|it| it == "proofer"), "{places:?}");
        }
    }
}

#[test]
fn slips_in_proofs_are_pointed_out() {
    for (proof, name) in [
        ("proof: 5 °C, 12 h; then 126 °C, 90 min", "impossible-value"),
        ("proof: 5 °C, 12 h; then 60 °C, 90 min", "unlikely-heat"),
        ("proof: 5 °C, 12 h in the frige; then 26 °C, 90 min", "place-misspelt"),
        (
            "proof: 5 °C, 90 h in the fridge; then 26 °C, 90 min on the bench",
            "unlikely-time",
        ),
        ("proof: 5 °C; then 26 °C, 90 min", "bad-value"),
        ("proof: 5 °C, 12 h\nwait: 1 h", "bad-ticket"),
        ("proof: 5 °C, 12 h\nat: 5 °C", "bad-ticket"),
    ] {
        let edition = proved(proof, &[]);
        let names: Vec<_> = edition.faults.iter().map(|fault| fault.name).collect();
        assert!(names.contains(&name), "{proof}: {names:?}");
    }
}

/// *Manual for Army Bakers*, Washington 1916, pp. 82-83, Field bread: "Allow the chamber doors to
/// remain open for the last 15 minutes of baking. Bake for one hour and a half at 475° F, letting
/// fall to 450° F last half hour." 60 + 15 + 15 min; 475 °F is 246 1/9 °C, so 245 °C.
#[test]
fn field_bread_as_printed() {
    let sheet = sheet("475 °F, 60 min; then 450 °F, 15 min; then 15 min, door open");
    assert_eq!(row(&sheet, Ticked::Oven), ["245 °C, then 230 °C", "475 °F, then 450 °F"]);
    assert_eq!(row(&sheet, Ticked::Bake)[0], "1 h, then 15 min, then 15 min, door ajar");
    assert_eq!(sheet.time.steps[1].wait_min, [90, 90, 90]);
    assert_eq!(sheet.bakes[0].phases[2].does, [BakeAct::DoorAjar]);
}
