//! What steps are to reach, the speeds of the mixer, the parts of a step that are ticked and the
//! rows on a tray: how the facts, the ticket, the page and the sheet have them. Values worked
//! out by hand.

use tourier::edition::Edition;
use tourier::fault::Severity;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::read::{Source, words_in};
use tourier::sheet::{Block, Measured, Part, Sheet, Speed, StepSheet, Ticked};
use tourier::theme::Theme;

const RECIPE: &str = "---\ntitle: Rolls\nsummary: s\nmakes: 10 rolls\nformula:\n  dough:\n    - 600 g bread flour\n    - 387 g water\n    - 13 g fine salt\ndough temperature: 24 °C\n---\n\n\
## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nmix: first speed, 4 min; then second speed, 6 min (5 min to 8 min)\ndough temperature: 24 °C (23 to 25 °C)\n~~~\n- [ ] Weigh {dough}.\n- [ ] Mix it.\n\n\
## Rise\n~~~ticket\nwait: 1 h\ngrowth: by half (40 to 60 %)\npH: 4.0 (3.8 to 4.2)\n~~~\n- Plain.\n\n\
## Bake\n~~~ticket\nbake: 220 °C, 20 min\nper tray: 10, rows of 3, 4, 3\nweight loss: 12 % (10 to 14 %)\n~~~\n";

fn sheet() -> Sheet {
    let file = |path: &str, text: &str| Source { path: path.into(), text: text.into() };
    let course = "title: c\nsummary: s\nkit: {tray: 60 x 40 cm}\n";
    let files = [file("course.yaml", course), file("recipes/rolls.md", RECIPE)];
    let edition = Edition::new(&files, Vec::new(), Vec::new());
    let errors = edition.faults.iter().filter(|it| it.severity == Severity::Error);
    assert_eq!(errors.count(), 0, "{:?}", edition.faults);
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let recipe = edition.content.recipe("rolls").expect("it is there");
    edition.sheet(recipe, &Scaling::Batches(exact(1, 1)), &words).expect("it scales")
}

fn step(sheet: &Sheet, name: &str) -> StepSheet {
    let found = sheet.parts.iter().find_map(|part| match part {
        Part::Step(step) if step.step == name => Some(step.clone()),
        Part::Step(_) | Part::Prose { .. } => None,
    });
    found.expect("the step is there")
}

fn row(step: &StepSheet, key: Ticked) -> [String; 2] {
    let found = step.ticket.iter().find(|row| row.key == key);
    found.map(|row| [row.value.metric.clone(), row.value.us.clone()]).expect("a row")
}

/// 4 + 6 min are 10, 9 to 12 with the range. A roll of 100 g that loses 12 % weighs 88 g, which
/// is 3.1 oz, shown as 3⅛. 23, 24 and 25 °C are 73.4, 75.2 and 77 °F.
#[test]
fn goals_by_hand() {
    let sheet = sheet();
    let mix = step(&sheet, "mix");
    let speeds = "first speed 4 min, then second speed 6 min (5–8 min)";
    assert_eq!(row(&mix, Ticked::Mix)[0], speeds);
    assert_eq!(row(&mix, Ticked::Hands)[0], "9–12 min");
    let dough = row(&mix, Ticked::DoughTemperature);
    assert_eq!(dough, ["24 °C (23 °C–25 °C)", "75 °F (73 °F–77 °F)"]);
    let rise = step(&sheet, "rise");
    assert_eq!(row(&rise, Ticked::Growth)[0], "by half (40 %–60 %)");
    assert_eq!(row(&rise, Ticked::Ph)[0], "4 (3.8–4.2)");
    let bake = row(&step(&sheet, "bake"), Ticked::WeightLoss);
    let loses =
        ["12 % (10 %–14 %), to 88 g a piece", "12 % (10 %–14 %), to 3⅛ oz a piece"];
    assert_eq!(bake, loses);
    let facts: Vec<_> =
        sheet.goals.iter().map(|it| (it.what, [it.usual, it.least, it.most])).collect();
    let by_hand = [
        (Measured::DoughTemperature, [24.0, 23.0, 25.0]),
        (Measured::Growth, [50.0, 40.0, 60.0]),
        (Measured::Ph, [4.0, 3.8, 4.2]),
        (Measured::WeightLoss, [12.0, 10.0, 14.0]),
    ];
    assert_eq!(facts, by_hand);
    assert_eq!(sheet.goals[3].piece_g, Some(88.0));
    let phases = &sheet.mixing[0].phases;
    let phases: Vec<_> = phases.iter().map(|it| (it.speed, it.minutes)).collect();
    assert_eq!(phases, [(Speed::First, [4, 4, 4]), (Speed::Second, [6, 5, 8])]);
}

/// Rows of 3, 4 and 3 on 60 × 40 cm: the middles of the first lie at 10, 30 and 50 cm, of the
/// second at 7.5, 22.5, 37.5 and 52.5 cm, the rows at 40/6, 20 and 200/6 cm.
#[test]
fn rows_on_a_tray_by_hand() {
    let sheet = sheet();
    let trays = row(&step(&sheet, "bake"), Ticked::Trays);
    assert_eq!(trays[0], "1, in rows of 3, 4, 3");
    let places = &sheet.handwork.trays[0].places_cm;
    let along: Vec<f64> = places.iter().map(|place| place[0]).collect();
    let all = [10.0, 30.0, 50.0, 7.5, 22.5, 37.5, 52.5, 10.0, 30.0, 50.0];
    assert_eq!(along, all);
    assert_eq!([places[0][1], places[3][1], places[9][1]], [6.6667, 20.0, 33.3333]);
}

#[test]
fn parts_are_ticked() {
    let sheet = sheet();
    let ticks = |name: &str| {
        let prose = &step(&sheet, name).prose;
        let Block::List { ticks, items, .. } = &prose[0] else { panic!("{prose:?}") };
        (*ticks, items.len())
    };
    assert_eq!((ticks("mix"), ticks("rise")), ((true, 2), (false, 1)));
    let json = serde_json::to_string(&step(&sheet, "rise").prose).expect("it writes");
    assert!(!json.contains("ticks"), "{json}");
}
