//! Recipes that take more than one day: their order, what the sheet and the facts say, what the plans
//! keep to. Values worked out by hand.

use tourier::edition::Edition;
use tourier::fault::Severity;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::plan::{Effort, home};
use tourier::read::{Source, words_in};
use tourier::sheet::{Part, Sheet, Ticked};
use tourier::theme::Theme;

/// A tart whose custard is written where it goes in, and cooked the day before.
const TART: &str = "---\ntitle: Tart\nsummary: s\nmakes: 1 tart\nformula:\n  paste:\n    - 250 g all-purpose flour\n    - 125 g butter\n    - 60 g water\n  custard:\n    - 300 g whole milk\n    - 4 egg yolks\n    - 60 g granulated sugar\n---\n\n\
    ## Line the tin\n~~~ticket\nday: 2\nuses: paste\nhands: 10 min\n~~~\n\n\
    ## Cook the custard\n~~~ticket\nday: 1\nuses: custard\nhands: 12 min\ncore: 80 °C\n~~~\n\n\
    ## Cool the custard\n~~~ticket\nwait: 2 h (90 min to 4 h)\nwhere: fridge\ncool: custard\nhold: up to 24 h\n~~~\n\n\
    ## Fill and bake\n~~~ticket\nday: 2\nhands: 5 min\nbake: 200 °C, 25 min\n~~~\n\n\
    ## What can go wrong\nNothing.\n";

/// A dough that is left frozen, and thaws.
const ROLLS: &str = "---\ntitle: Rolls\nsummary: s\nmakes: 12 rolls\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n    - 9 g fine salt\n    - 5 g instant yeast\n---\n\n\
    ## Mix and round\n~~~ticket\nuses: dough\nhands: 20 min\nhold: up to 2 weeks in the freezer, thaw 9 h to 12 h in the fridge\n~~~\n\n\
    ## Proof\n~~~ticket\nday: 5\nwait: 90 min\n~~~\n\n\
    ## Bake\n~~~ticket\nbake: 220 °C, 18 min\n~~~\n";

fn edition(recipe: &str, more: &[Source]) -> Edition {
    let file = |path: &str, text: &str| Source { path: path.into(), text: text.into() };
    let mut files = vec![
        file("course.yaml", "title: c\nsummary: s\nawake: 07:00 to 22:00\n"),
        file("recipes/it.md", recipe),
    ];
    files.extend(more.iter().cloned());
    let edition = Edition::new(&files, Vec::new(), Vec::new());
    let errors = edition.faults.iter().filter(|it| it.severity == Severity::Error);
    assert_eq!(errors.count(), 0, "{:?}", edition.faults);
    edition
}

fn sheet(edition: &Edition) -> Sheet {
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let recipe = edition.content.recipe("it").expect("it is there");
    edition.sheet(recipe, &Scaling::Batches(exact(1, 1)), &words).expect("it scales")
}

fn day(part: &Part) -> (String, Option<String>) {
    match part {
        Part::Step(step) => {
            let row = step.ticket.iter().find(|row| row.key == Ticked::Day);
            (step.step.clone(), row.map(|row| row.value.metric.clone()))
        }
        Part::Prose { title, .. } => (title.clone(), None),
    }
}

/// The custard stands first; the tin follows nothing, the filling both the tin and the custard.
#[test]
fn what_is_made_the_day_before_stands_before() {
    let edition = edition(TART, &[]);
    let sheet = sheet(&edition);
    let days: Vec<_> = sheet.parts.iter().map(day).collect();
    let named = |name: &str, day: Option<&str>| (name.to_owned(), day.map(str::to_owned));
    assert_eq!(
        days,
        [
            named("cook-the-custard", Some("1 of 2")),
            named("cool-the-custard", None),
            named("line-the-tin", Some("2 of 2")),
            named("fill-and-bake", None),
            named("What can go wrong", None),
        ]
    );
    let steps = &sheet.time.steps;
    let after: Vec<_> = steps.iter().map(|step| step.after.join(" ")).collect();
    assert_eq!(after, ["", "cook-the-custard", "", "cool-the-custard line-the-tin"]);
    let days: Vec<_> = steps.iter().map(|step| step.day).collect();
    assert_eq!(days, [Some(1), Some(1), Some(2), Some(2)]);
    assert!(edition.faults.is_empty(), "{:?}", edition.faults);
}

/// Without a second day nothing is said of days, and the steps follow as they are written.
#[test]
fn one_day_is_none() {
    let text = TART.replace("day: 2\n", "").replace("day: 1\n", "");
    let plain = sheet(&edition(&text, &[]));
    let same = sheet(&edition(&TART.replace("day: 2", "day: 1"), &[]));
    for sheet in [plain, same] {
        assert!(sheet.time.steps.iter().all(|step| step.day.is_none()));
        assert_eq!(sheet.time.steps[1].after, ["line-the-tin"]);
    }
}

fn at_home(recipe: &str, ready: &str) -> Vec<(String, String, String)> {
    let edition = edition(recipe, &[]);
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let book = edition.book();
    let recipe = edition.content.recipe("it").expect("it is there");
    let work = tourier::work::work(recipe, &Scaling::Batches(exact(1, 1)), book);
    let work = work.expect("it scales");
    let ready = ready.parse().expect("a time");
    let plan = home(&[&work], ready, book, Effort::USUAL).expect("it is laid out");
    let sheet =
        tourier::sheet::making::plan_sheet(&plan, &words, tourier::sheet::Units::Metric);
    let rows = sheet.rows.iter().chain(&sheet.rests);
    let mut rows: Vec<_> = rows
        .map(|row| {
            (
                format!("{}T{}", row.date, row.from),
                row.what.clone(),
                row.place.clone().unwrap_or_default(),
            )
        })
        .collect();
    rows.extend(
        sheet.notes.iter().map(|note| (String::new(), note.clone(), String::new())),
    );
    rows
}

/// The custard could be cooked in the same morning, two hours and a half before: its day is kept.
#[test]
fn a_bake_at_home_keeps_to_the_days() {
    let starts = |recipe: &str| {
        let rows = at_home(recipe, "2027-03-07T16:00");
        let cook = rows.iter().find(|row| row.1.starts_with("Cook the custard"));
        cook.map(|row| row.0[..10].to_owned()).expect("it is cooked")
    };
    assert_eq!(starts(TART), "2027-03-06");
    assert_eq!(
        starts(&TART.replace("day: 2\n", "").replace("day: 1\n", "")),
        "2027-03-07"
    );
}

/// Where no plan keeps to the days, one on others is given, and said: up at seven there is no time
/// before 07:30 for what is of the second day.
#[test]
fn days_that_do_not_fit_are_left_and_said() {
    let rows = at_home(TART, "2027-03-07T07:30");
    assert!(rows.iter().any(|row| row.1.contains("on other days")), "{rows:?}");
}

/// Frozen on the first day, out of the freezer nine to twelve hours before the proof on the fifth.
#[test]
fn what_was_frozen_thaws() {
    let rows = at_home(ROLLS, "2027-03-07T12:00");
    let start = |of: &dyn Fn(&(String, String, String)) -> bool| {
        let row = rows.iter().find(|row| of(row)).unwrap_or_else(|| panic!("{rows:?}"));
        row.0.parse::<jiff::civil::DateTime>().expect("a time")
    };
    let thaws = start(&|row| row.2 == "fridge");
    let proof = start(&|row| row.1.starts_with("Proof"));
    let mixed = start(&|row| row.1.starts_with("Mix and round"));
    let minutes = thaws.until(proof).expect("it follows").total(jiff::Unit::Minute);
    let minutes = minutes.expect("minutes");
    assert!((540.0..=722.0).contains(&minutes), "{minutes}");
    assert_eq!(mixed.date().to_string(), "2027-03-03");
    assert_eq!(sheet(&edition(ROLLS, &[])).time.steps[0].thaw_min, Some([540, 540, 720]));
    let cautions = sheet(&edition(ROLLS, &[])).cautions;
    assert!(cautions.iter().any(|name| name == "thawing"), "{cautions:?}");
}

/// Two evenings: the custard is cooked on the first, the tin is lined on the second, though all of
/// it would go into the first. One long day is one day for everything.
#[test]
fn a_class_keeps_to_the_days() {
    let words = words_in(&Theme::built_in(), "en").expect("they read");
    let class = |sessions: &str| Source {
        path: "classes/evening.yaml".into(),
        text: format!(
            "title: e\nsessions:\n{sessions}bakers: 4\nmakes:\n  - recipe: it\n    each: pair\n    batches: 1\nkit: {{ oven: 1, tray per oven: 2 }}\n"
        ),
    };
    let two = "  - 2027-03-02 14:00 to 20:00\n  - 2027-03-03 14:00 to 20:00\n";
    for (sessions, dates) in [
        (two, ["2027-03-02", "2027-03-03"]),
        ("  - 2027-03-02 14:00 to 20:00\n", ["2027-03-02", "2027-03-02"]),
    ] {
        let edition = edition(TART, std::slice::from_ref(&class(sessions)));
        let sheet = edition.class(&edition.content.classes[0], Effort::USUAL, &words);
        let sheet = sheet.expect("it is decided");
        assert!(sheet.fits, "{sessions}");
        let on = |what: &str| {
            let row = sheet.plan.rows.iter().find(|row| row.what.starts_with(what));
            row.map(|row| row.date.clone()).expect("it is done")
        };
        assert_eq!([on("Cook the custard"), on("Line the tin")], dates);
    }
}
