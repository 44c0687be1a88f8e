//! One dough for several bakes at home: it is made once, and weighs what its bakes need, with what
//! is lost. Values worked out by hand, and bakes at random.

use jiff::civil::DateTime;
use proptest::prelude::*;
use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::plan::{Caveat, Effort, SharedDough, Timetable, Verdict, home};
use tourier::read::Source;
use tourier::work::work;

/// A dough of 1000 g of which so many percent are lost, and bakes that take so many grams of it.
fn edition(loss: i64, bakes: &[(i64, i64)]) -> Edition {
    let file = |path: String, text: String| Source { path, text };
    let base = format!(
        "---\ntitle: Base\nsummary: s\nmakes: {} g\nloss: {loss} %\nformula:\n  dough:\n    - 600 g bread flour\n    - 400 g water\n---\n\n## Mix\n~~~ticket\nuses: dough\nhands: 10 min\n~~~\n\n## Chill\n~~~ticket\nwait: 1 h (30 min to 8 h)\nwhere: fridge\n~~~\n",
        1000 - 10 * loss
    );
    let mut files = vec![
        file(
            "course.yaml".into(),
            "title: c\nsummary: s\nawake: 06:00 to 22:00\n".into(),
        ),
        file("recipes/base.md".into(), base),
    ];
    for (at, (grams, minutes)) in bakes.iter().enumerate() {
        let text = format!(
            "---\ntitle: Bake {at}\nsummary: s\nmakes: 8 rolls\nformula:\n  dough:\n    - {grams} g [base](base.md)\n---\n\n## Shape\n~~~ticket\nuses: dough\nhands: 15 min\n~~~\n\n## Proof\n~~~ticket\nwait: {minutes} min ({minutes} min to 3 h)\n~~~\n\n## Bake\n~~~ticket\nbake: 200 °C, 20 min\nper tray: 8\n~~~\n\n## Cool\n~~~ticket\nwait: 20 min\nwhere: rack\nhold: up to 4 h\n~~~\n"
        );
        files.push(file(format!("recipes/bake-{at}.md"), text));
    }
    Edition::new(&files, Vec::new(), Vec::new())
}

fn planned(edition: &Edition, bakes: usize) -> Timetable {
    let one = Scaling::Batches(exact(1, 1));
    let recipe =
        |at: usize| edition.content.recipe(&format!("bake-{at}")).expect("it is there");
    let works: Vec<_> = (0..bakes)
        .map(|at| work(recipe(at), &one, edition.book()).expect("it scales"))
        .collect();
    let works: Vec<_> = works.iter().collect();
    let ready: DateTime = "2027-03-07T17:00".parse().expect("a time");
    home(&works, ready, edition.book(), Effort::USUAL).expect("it is laid out")
}

fn mixings(plan: &Timetable) -> usize {
    let steps = plan.activities.iter().filter_map(|it| it.deed.step.as_ref());
    steps.filter(|step| step.name == "mix").count()
}

fn doughs(plan: &Timetable) -> Vec<&SharedDough> {
    fn dough(note: &Caveat) -> Option<&SharedDough> {
        let Caveat::Shared(dough) = note else { return None };
        Some(dough)
    }
    plan.notes.iter().filter_map(dough).collect()
}

/// 620 g and 500 g are 1120 g; with 2 % lost 1120 ÷ 0.98 = 1142.86 g are mixed.
#[test]
fn by_hand() {
    let edition = edition(2, &[(620, 60), (500, 45)]);
    let plan = planned(&edition, 2);
    assert_eq!(plan.verdict, Verdict::Fits, "{:?}", plan.reasons);
    assert_eq!(mixings(&plan), 1);
    let all = doughs(&plan);
    let [dough] = all.as_slice() else { panic!("{all:?}") };
    assert_eq!(dough.taken.amount(), &exact(1120, 1));
    assert_eq!(dough.mixed.amount(), &exact(112_000, 98));
    let parts: Vec<_> =
        dough.parts.iter().map(|(title, mass)| (title.as_str(), mass.amount())).collect();
    assert_eq!(parts, [("Bake 0", &exact(620, 1)), ("Bake 1", &exact(500, 1))]);
    // Alone each has its own.
    let alone = planned(&edition, 1);
    assert!(doughs(&alone).is_empty() && mixings(&alone) == 1);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// The dough weighs what its bakes need, with what is lost, and is mixed once.
    #[test]
    fn at_random(
        loss in 0_i64..12,
        bakes in prop::collection::vec((50_i64..2000, 20_i64..90), 2..4),
    ) {
        let edition = edition(loss, &bakes);
        let plan = planned(&edition, bakes.len());
        prop_assert!(plan.verdict == Verdict::Fits, "{:?}", plan.reasons);
        prop_assert_eq!(mixings(&plan), 1);
        let all = doughs(&plan);
        prop_assert_eq!(all.len(), 1);
        let need: i64 = bakes.iter().map(|(grams, _)| grams).sum();
        prop_assert_eq!(all[0].taken.amount(), &exact(need, 1));
        prop_assert_eq!(all[0].mixed.amount(), &exact(need * 100, 100 - loss));
        prop_assert_eq!(all[0].parts.len(), bakes.len());
    }
}
