//! An invented recipe for the tests: a layered dough with everything a handout can carry.

use crate::dough::Direction;
use crate::draw::Figure;
use crate::measure::Label;
use crate::model::{Block, Inline};
use crate::sheet::{
    Allergen, AllergenList, Allergens, CourseSheet, EdgesFact, Fold, Folding,
    HandoutKind, Ingredients, Lamination, Line, LockIn, LockInFact, OverallLine, Paper,
    Part, Preferment, Scale, SectionTotal, Sheet, SheetFact, StepSheet, StepTime, Ticked,
    TicketRow, Time, Totals, Units, Watch, Water,
};
use crate::theme::Theme;
use crate::words::Words;

use super::Job;

/// A sheet, its course and its drawings, for as many jobs as a test wants.
pub(super) struct Fixture {
    pub(super) sheet: Sheet,
    pub(super) course: CourseSheet,
    pub(super) figures: Vec<Figure>,
    pub(super) words: Words,
}

impl Fixture {
    /// Three layered steps, a proof and a bake.
    pub(super) fn new() -> Self {
        let words = crate::read::words_in(&Theme::built_in(), "en").expect("the words");
        let sheet = sheet();
        let figures = crate::draw::figures(&sheet, &words);
        Self { sheet, course: course(), figures, words }
    }

    /// A job on this fixture.
    pub(super) fn job(&self, kind: HandoutKind, units: Units, paper: Paper) -> Job<'_> {
        let (sheet, course) = (&self.sheet, &self.course);
        let (figures, words, batch_key) = (&self.figures, &self.words, "x1");
        Job {
            sheet,
            course,
            figures,
            included: &[],
            media: &[],
            words,
            kind,
            units,
            paper,
            batch_key,
            levels: &[],
            whose: None,
            makers: 1,
        }
    }
}

fn course() -> CourseSheet {
    CourseSheet { language: "en-GB".into(), ..crate::sheet::sample::course() }
}

fn sheet() -> Sheet {
    Sheet {
        way: None,
        ways: Vec::new(),
        since: None,
        untold: None,
        proofs: Vec::new(),
        mixing: Vec::new(),
        goals: Vec::new(),
        bakes: Vec::new(),
        notes: Vec::new(),
        facts: 1,
        recipe: "evening-crescents".into(),
        title: "Evening crescents".into(),
        summary: "A lean, cool dough with butter locked inside.".into(),
        family: Some("layered yeast dough".into()),
        picture: None,
        printed: true,
        scale: scale(),
        formula: formula(),
        totals: totals(),
        preferments: vec![preferment()],
        lamination: Some(lamination()),
        cuts: Vec::new(),
        handwork: crate::sheet::Handwork::default(),
        time: time(),
        water: Some(Water {
            desired_c: 23.0,
            water_c: 6.0,
            ice_g: 20.0,
            desired: Label::new("23 °C", "73 °F"),
            water: Label::new("6 °C", "43 °F"),
            ice: Some(Label::new("20 g", "¾ oz")),
        }),
        allergens: allergens(),
        nutrition: None,
        cost: None,
        cautions: vec!["raw-egg".into()],
        caution_texts: vec![
            "Do not taste raw dough or raw egg wash. Wash your hands and the bench."
                .into(),
            "Trays stay hot long after they look cool. Use two dry cloths.".into(),
        ],
        faults: Vec::new(),
        opening: vec![paragraph("Two things make the layers: equal firmness and rest.")],
        parts: parts(),
        videos: vec![watch()],
    }
}

fn scale() -> Scale {
    Scale {
        factor: 1.0,
        pieces: Some(12),
        piece_g: Some(90.0),
        piece: Some(Label::new("90 g", "3¼ oz")),
        doughs: 1,
        makes: Label::same("12 crescents"),
        batch: "1 batch".into(),
    }
}

fn time() -> Time {
    Time {
        hands_min: 85,
        wait_min: 300,
        elapsed_min: 385,
        hands: "1 h 25 min".into(),
        wait: "5 h".into(),
        elapsed: "6 h 25 min".into(),
        critical_path: Vec::new(),
        ready: Vec::new(),
        steps: vec![
            step_time("lock-in-the-butter", 0, [6, 30]),
            step_time("first-turn", 40, [8, 40]),
            step_time("second-turn", 90, [8, 60]),
            step_time("bake", 160, [0, 20]),
        ],
    }
}

/// When a step happens: start, attended and waiting minutes.
fn step_time(step: &str, start_min: u64, [hands_min, wait]: [u64; 2]) -> StepTime {
    StepTime {
        step: step.into(),
        title: heading(step),
        recipe: "evening-crescents".into(),
        day: None,
        thaw_min: None,
        start_min,
        hands_min,
        wait_min: [wait; 3],
        hold_min: 0,
        after: Vec::new(),
        bake: step == "bake",
        place: None,
        critical: true,
    }
}

/// One line of the formula: section, ingredient, grams, US weight, measure.
pub(super) fn line(parts: [&str; 3], grams: f64, us: [&str; 2]) -> Line {
    let [section, ingredient, note] = parts;
    Line {
        each_dough: None,
        section: section.into(),
        ingredient: ingredient.into(),
        key: ingredient.into(),
        is_recipe: false,
        at: None,
        note: (!note.is_empty()).then(|| note.into()),
        grams: Some(grams),
        percent: Some(grams / 5.0),
        percent_label: Some(format!("{:.0} %", grams / 5.0)),
        metric: format!("{grams} g"),
        us_weight: us[0].into(),
        us_column: us[0].into(),
        us_measure: (!us[1].is_empty()).then(|| us[1].into()),
        count: None,
        us_error: 0.0,
        metric_error: 0.0,
    }
}

fn formula() -> Vec<Line> {
    let dusting = Line {
        grams: None,
        percent: None,
        percent_label: None,
        metric: "for dusting".into(),
        us_weight: "for dusting".into(),
        us_column: "for dusting".into(),
        ..line(["bench", "bread flour", ""], 0.0, ["", ""])
    };
    vec![
        line(["sponge", "bread flour", ""], 100.0, ["3½ oz", "¾ cup + 1 tbsp"]),
        line(["sponge", "water", ""], 100.0, ["3½ oz", "½ cup"]),
        line(["dough", "bread flour", ""], 400.0, ["14⅛ oz", "3¼ cups"]),
        line(["dough", "whole milk", "cold"], 150.0, ["5¼ oz", "⅔ cup"]),
        line(["dough", "sugar", ""], 50.0, ["1¾ oz", "¼ cup"]),
        line(["dough", "fine salt", ""], 10.0, ["⅜ oz", "1¾ tsp"]),
        line(["roll-in", "butter", "cold"], 250.0, ["8¾ oz", "17½ tbsp"]),
        dusting,
    ]
}

fn totals() -> Totals {
    let section = |name: &str, grams: f64, us: &str| SectionTotal {
        section: name.into(),
        grams,
        weight: Label::new(format!("{grams} g"), us),
    };
    Totals {
        true_hydration: false,
        each_dough: None,
        grams: 1060.0,
        flour_g: 500.0,
        hydration_percent: Some(46.6),
        weight: Label::new("1060 g", "2 lb 5⅜ oz"),
        flour: Label::new("500 g", "1 lb 1⅝ oz"),
        sections: vec![
            section("sponge", 200.0, "7 oz"),
            section("dough", 610.0, "1 lb 5½ oz"),
            section("roll-in", 250.0, "8¾ oz"),
        ],
    }
}

fn preferment() -> Preferment {
    let line = |ingredient: &str, first: f64, then: f64| OverallLine {
        ingredient: ingredient.into(),
        preferment_g: first,
        dough_g: then,
        percent: 20.0,
        preferment: Label::new(format!("{first} g"), "3½ oz"),
        dough: if then > 0.0 {
            Label::new(format!("{then} g"), "14⅛ oz")
        } else {
            Label::default()
        },
        percent_label: "20 %".into(),
    };
    Preferment {
        section: "sponge".into(),
        flour_percent: 20.0,
        hydration_percent: 100.0,
        overall: vec![line("bread flour", 100.0, 400.0), line("water", 100.0, 0.0)],
    }
}

fn allergens() -> Allergens {
    let one = |name: &str, kinds: &[&str], from: &[&str]| Allergen {
        name: name.into(),
        kinds: kinds.iter().map(|kind| (*kind).to_owned()).collect(),
        from: from.iter().map(|from| (*from).to_owned()).collect(),
    };
    let milk = one("milk", &[], &["butter", "whole milk"]);
    let us = vec![milk.clone(), one("wheat", &[], &["bread flour"])];
    let cereals = one("cereals containing gluten", &["wheat"], &["bread flour"]);
    let eu = vec![cereals, milk];
    let list = |law: &str, found| AllergenList { law: law.into(), found };
    Allergens {
        lists: vec![list("us", us), list("eu", eu)],
        unknown: vec!["chocolate batons".into()],
        read_on_pack: Vec::new(),
    }
}

fn lamination() -> Lamination {
    let size = || Label::new("60 × 20 cm", "23½ × 7¾ in");
    let thickness = || Label::new("4.5 mm", "3/16 in");
    let sheet = |step: &str, fat_layers| SheetFact {
        step: step.into(),
        title: heading(step),
        length_cm: 60.0,
        width_cm: 20.0,
        way: Direction::QuarterTurn,
        block_cm: None,
        thickness_mm: 4.5,
        fat_layer_mm: 1.0,
        dough_layer_mm: 1.5,
        fat_layers,
        size: size(),
        thickness: thickness(),
    };
    Lamination {
        inverted: false,
        lock_in: Some(lock_in()),
        turns: vec![Folding::Book, Folding::Letter],
        folds: vec![fold("first-turn", 4, 1), fold("second-turn", 3, 4)],
        fat_layers: Some(12),
        layers_merged: Some(25),
        layers_unmerged: 36,
        fat_percent_of_dough: Some(30.9),
        sheets: vec![sheet("first-turn", 1), sheet("second-turn", 4)],
    }
}

fn lock_in() -> LockInFact {
    LockInFact {
        inverted: false,
        step: "lock-in-the-butter".into(),
        kind: LockIn::Envelope,
        length_cm: 28.0,
        width_cm: 28.0,
        block_length_cm: 19.0,
        block_width_cm: 19.0,
        closed_length_cm: 19.0,
        closed_width_cm: 19.0,
        thickness_mm: 9.0,
        block_thickness_mm: 7.0,
        size: Label::new("28 × 28 cm", "11 × 11 in"),
        block: Label::new("19 × 19 cm", "7½ × 7½ in"),
        closed: Label::new("19 × 19 cm", "7½ × 7½ in"),
        thickness: Label::new("9 mm", "3/8 in"),
        block_thickness: Label::new("7 mm", "1/4 in"),
        edges: None,
        next: Direction::Any,
    }
}

pub(super) fn fold(step: &str, parts: u32, before: u64) -> Fold {
    Fold {
        step: step.into(),
        title: heading(step),
        turn: if parts == 4 { Folding::Book } else { Folding::Letter },
        parts,
        length_cm: 60.0,
        width_cm: 20.0,
        thickness_mm: 8.0,
        folded_length_cm: 60.0 / f64::from(parts),
        folded_width_cm: 20.0,
        folded_thickness_mm: 8.0 * f64::from(parts),
        fat_layers_before: before,
        fat_layers_after: before * u64::from(parts),
        plies_before: 3 * before,
        plies_after: 3 * before * u64::from(parts),
        folds: Vec::new(),
        meet: None,
        edges: EdgesFact { opposite_folds: 2, opposite_ends: 0 },
        next: Direction::QuarterTurn,
        size: Label::new("60 × 20 cm", "23½ × 7¾ in"),
        folded: Label::new("15 × 20 cm", "6 × 7¾ in"),
        part: Label::new("15 cm", "6 in"),
    }
}

fn heading(step: &str) -> String {
    let text = step.replace('-', " ");
    text[..1].to_uppercase() + &text[1..]
}

fn watch() -> Watch {
    Watch {
        from: None,
        length: None,
        still: None,
        name: "lock-in".into(),
        address: "https://media.saltmarsh.example/layers/lock-in".into(),
    }
}

/// A paragraph of plain text.
pub(super) fn paragraph(text: &str) -> Block<Label> {
    Block::Paragraph { content: vec![Inline::Text { text: text.into() }] }
}

/// A step with a ticket of one row and a paragraph.
pub(super) fn step(number: usize, name: &str, rows: &[(Ticked, [&str; 3])]) -> StepSheet {
    let row = |(key, [term, metric, us]): &(Ticked, [&str; 3])| TicketRow {
        key: *key,
        term: (*term).into(),
        value: Label::new(*metric, *us),
    };
    let live = Inline::Live { value: Label::new("60 × 20 cm", "23½ × 7¾ in") };
    let text = |text: &str| Inline::Text { text: text.into() };
    let content = vec![
        text("Roll in one direction only, to "),
        live,
        text(". Keep the corners square: a rounded end has no butter in it. Brush off "),
        text("the flour, then fold and "),
        Inline::Strong { content: vec![text("mark the turn")] },
        text(" with a finger. Rest it when it resists."),
    ];
    StepSheet {
        others: Vec::new(),
        step: name.into(),
        number,
        title: heading(name),
        ticket: rows.iter().map(row).collect(),
        ingredients: vec![Ingredients {
            amount: Label::new("250 g", "8¾ oz (17½ tbsp)"),
            ingredient: "butter".into(),
            weight: None,
            each: None,
        }],
        watch: None,
        pictures: Vec::new(),
        until: Some(Box::new(Label::same(
            "it bends over the edge of the bench without cracking",
        ))),
        prose: vec![Block::Paragraph { content }],
    }
}

fn parts() -> Vec<Part> {
    let hands = (Ticked::Hands, ["Hands on", "8 min", "8 min"]);
    let roll = (Ticked::Sheet, ["Roll to", "60 × 20 cm", "23½ × 7¾ in"]);
    let book = (Ticked::Turn, ["Turn", "book", "book"]);
    let caution = Block::Caution { content: vec![paragraph("Carry the tray level.")] };
    let mut lock_in = step(1, "lock-in-the-butter", &[hands]);
    lock_in.watch = Some(watch());
    let mut bake = step(
        4,
        "bake",
        &[
            (Ticked::Oven, ["Oven", "190 °C", "375 °F"]),
            (Ticked::Bake, ["Bake", "20 min", "20 min"]),
            (Ticked::Trays, ["Trays", "1 tray", "1 tray"]),
        ],
    );
    bake.prose.push(caution);
    let list = Block::List {
        start: None,
        ticks: false,
        items: vec![vec![paragraph("It was too cold.")], vec![paragraph("Or too warm.")]],
    };
    vec![
        Part::Step(lock_in),
        Part::Step(step(2, "first-turn", &[hands, roll, book])),
        Part::Step(step(3, "second-turn", &[hands, roll, book])),
        Part::Step(bake),
        Part::Prose { title: "What can go wrong".into(), content: vec![list] },
    ]
}
