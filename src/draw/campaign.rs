//! Random recipes, from text to drawings: no label lies over another or leaves its drawing,
//! whatever a recipe says. And what drawing costs beside typesetting.
//!
//! The long campaign: `cargo test --release --lib two_thousand -- --ignored`.

use std::fmt::Write;
use std::sync::OnceLock;

use proptest::prelude::*;

use super::plate::{Anchor, Frame, Text};
use super::tests::course_sources;
use super::{Figure, FigureKind, sample};
use crate::formula::{Book, Scaling};
use crate::measure::exact;
use crate::pantry::Pantry;
use crate::read::Source;
use crate::sheet::Sheet;
use crate::sheet::build::{self, Context};
use crate::words::Words;
use crate::work::work;

/// Numbers to make a recipe from; nought where they run out.
struct Dice<'a>(std::slice::Iter<'a, u32>);

impl Dice<'_> {
    /// A number from `least` to below `most`.
    fn number(&mut self, least: u32, most: u32) -> u32 {
        least + self.0.next().copied().unwrap_or(0) % (most - least)
    }

    fn pick<'t>(&mut self, all: &[&'t str]) -> &'t str {
        all[self.number(0, all.len() as u32) as usize]
    }

    /// A size in centimetres or inches.
    fn size(&mut self, [least, most]: [u32; 2]) -> String {
        let (one, other) = (self.number(least, most), self.number(least, most));
        let (long, short) = (one.max(other), one.min(other));
        let inches = self.number(0, 4) == 0;
        if inches {
            format!("{} x {} in", long.div_ceil(2), short.div_ceil(2))
        } else {
            format!("{long}.{} x {short} cm", self.number(0, 10))
        }
    }

    fn title(&mut self) -> String {
        let words = ["Fold", "Chill", "Roll it out", "with the pin", "Rest", "once more"];
        let count = self.number(1, 6);
        (0..count).map(|_| self.pick(&words)).collect::<Vec<_>>().join(" ")
    }

    fn cut(&mut self) -> String {
        let (one, two) = (self.number(3, 14), self.number(4, 26));
        let (strips, across) = (self.number(1, 8), self.number(1, 16));
        match self.number(0, 6) {
            0 => format!("triangles, base {one} cm, height {two} cm"),
            1 => format!("squares {one} cm"),
            2 => format!("rectangles {two} x {one} cm"),
            3 => format!("rounds {one} cm"),
            4 => format!("strips {one} cm"),
            _ => format!("grid, {strips} strips, {across} across, each on the diagonal"),
        }
    }
}

/// A layered recipe of its own.
fn recipe(numbers: &[u32]) -> String {
    let mut dice = Dice(numbers.iter());
    let (flour, fat) = (dice.number(200, 2000), dice.number(50, 900));
    let mut text = format!(
        "---\ntitle: Test\nsummary: A test.\nmakes: {} pieces\nfamily: layered yeast dough\n\
         formula:\n  dough:\n    - {flour} g bread flour\n    - {} g water\n\
         \x20 roll-in:\n    - {fat} g butter, cold\n---\n\nText.\n",
        dice.number(1, 60),
        flour / 2,
    );
    let mut step = |title: String, ticket: String| {
        let _ = write!(text, "\n## {title}\n~~~ticket\n{ticket}~~~\nDo it.\n");
    };
    step("Mix".into(), "uses: dough\nhands: 10 min\n".into());
    step(
        "Block".into(),
        format!("uses: roll-in\nhands: 5 min\nsheet: {}\n", dice.size([8, 30])),
    );
    let kind = dice.pick(&["envelope", "letter", "book"]);
    let lock_in =
        format!("hands: 6 min\nlock-in: {kind}\nsheet: {}\n", dice.size([12, 60]));
    step("Lock in".into(), lock_in);
    for index in 0..dice.number(0, 5) {
        let turn = dice.pick(&["book", "letter", "half", "5", "7", "12"]);
        let (hands, sheet) = (dice.number(1, 40), dice.size([15, 90]));
        step(
            format!("{} {index}", dice.title()),
            format!("hands: {hands} min\nturn: {turn}\nsheet: {sheet}\n"),
        );
        let (wait, hold) = (dice.number(5, 600), dice.number(1, 30));
        step(
            format!("Rest {index}"),
            format!("wait: {wait} min\nwhere: fridge\nhold: up to {hold} h\n"),
        );
    }
    let sheet = dice.size([20, 140]);
    step(format!("{} out", dice.title()), format!("hands: 9 min\nsheet: {sheet}\n"));
    let cut = dice.cut();
    step("Cut".into(), format!("hands: 9 min\nsheet: {sheet}\ncut: {cut}\n"));
    let shape = dice.pick(&["rolled", "folded", "pinwheel", "baton"]);
    step("Shape".into(), format!("hands: 20 s per piece\nshape: {shape}\n"));
    let (minutes, per_tray) = (dice.number(8, 60), dice.number(1, 40));
    step("Bake".into(), format!("bake: 190 °C, {minutes} min\nper tray: {per_tray}\n"));
    text
}

/// The words of the default theme, read once.
fn words() -> &'static Words {
    static WORDS: OnceLock<Words> = OnceLock::new();
    WORDS.get_or_init(sample::words)
}

/// The course as written, and the pantry.
fn classroom() -> (Source, Pantry) {
    let sources = course_sources(std::path::Path::new(env!("CARGO_MANIFEST_DIR")));
    let course = sources.into_iter().find(|source| source.path == "course.yaml");
    (course.expect("the course is there"), Pantry::built_in())
}

/// The sheet of a recipe in the demonstration course's classroom.
fn sheet(text: &str) -> Option<Sheet> {
    static COURSE: OnceLock<(Source, Pantry)> = OnceLock::new();
    let (course, pantry) = COURSE.get_or_init(classroom);
    let mut sources = vec![course.clone()];
    sources.push(Source { path: "recipes/test.md".into(), text: text.to_owned() });
    let (content, _, _) = crate::read::content(&sources);
    let book = Book { content: &content, pantry };
    let words = words();
    let work =
        work(content.recipes.first()?, &Scaling::Batches(exact(1, 1)), book).ok()?;
    Some(build::recipe(&work, &[], Context { book, words }))
}

/// Every document of a figure.
fn documents(figure: &Figure) -> Vec<String> {
    let paper = [&figure.paper.column, &figure.paper.large];
    // A bench card has its fold bars in the place of lock-ins and turns, and no timeline.
    let on_card = match figure.kind {
        FigureKind::LockIn | FigureKind::Turn | FigureKind::Timeline => false,
        FigureKind::Cut
        | FigureKind::Roll
        | FigureKind::Shape
        | FigureKind::Tray
        | FigureKind::Layers => true,
    };
    let card = Some(&figure.paper.card).filter(|_| on_card);
    let forms = std::iter::once(&figure.upright).chain(&figure.wide);
    forms
        .chain(paper)
        .chain(card)
        .flat_map(|forms| [forms.metric.svg(), forms.us.svg()])
        .collect()
}

/// The value of an attribute of a tag.
fn attribute<'t>(tag: &'t str, name: &str) -> Option<&'t str> {
    tag.split_once(&format!(" {name}=\""))?.1.split('"').next()
}

/// The frames of all texts of a document, measured on the typeface.
fn frames(svg: &str) -> Vec<(String, Frame)> {
    let texts = svg.split("<text").skip(1);
    texts
        .filter_map(|text| {
            let (tag, rest) = text.split_once('>')?;
            let number = |name| attribute(tag, name)?.parse::<f64>().ok();
            let words = rest.split("</text>").next()?.replace("&amp;", "&");
            let text = Text {
                size: number("font-size").unwrap_or(super::lettering::LABEL),
                bold: tag.contains("font-weight"),
                upright: tag.contains("rotate("),
                anchor: match attribute(tag, "text-anchor") {
                    Some("middle") => Anchor::Middle,
                    Some("end") => Anchor::End,
                    _ => Anchor::Start,
                },
                ..Text::new(words.clone(), [number("x")?, number("y")?])
            };
            Some((words, text.frame()))
        })
        .collect()
}

/// Whether every label of a document has a place of its own.
fn clear(name: &str, svg: &str) -> Result<(), TestCaseError> {
    let sides: Vec<f64> = attribute(svg, "viewBox")
        .map(|sides| sides.split(' ').filter_map(|side| side.parse().ok()).collect())
        .unwrap_or_default();
    let frames = frames(svg);
    for (index, (words, frame)) in frames.iter().enumerate() {
        let inside = frame.left >= -0.5
            && frame.top >= -0.5
            && frame.right <= sides[2] + 0.5
            && frame.bottom <= sides[3] + 0.5;
        prop_assert!(inside, "{name}: `{words}` leaves {sides:?}: {frame:?}");
        for (others, other) in &frames[..index] {
            // Places are written to a tenth of a unit.
            let apart = !frame.grown(-0.1).overlaps(&other.grown(-0.1));
            prop_assert!(apart, "{name}: `{words}` over `{others}`");
        }
    }
    Ok(())
}

fn every_label_is_clear(numbers: &[u32]) -> Result<(), TestCaseError> {
    let found = sheet(&recipe(numbers));
    prop_assume!(found.is_some());
    let Some(sheet) = found else { return Ok(()) };
    let words = words();
    let figures = super::figures(&sheet, words);
    prop_assert!(
        figures.iter().any(|figure| figure.kind == FigureKind::LockIn),
        "no lock-in"
    );
    for figure in &figures {
        for svg in documents(figure) {
            clear(&figure.name, &svg)?;
        }
    }
    prop_assert_eq!(figures, super::figures(&sheet, words));
    Ok(())
}

fn campaign(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() }
}

proptest! {
    #![proptest_config(campaign(12))]

    #[test]
    fn labels_of_random_recipes_are_clear(numbers in prop::collection::vec(any::<u32>(), 90)) {
        every_label_is_clear(&numbers)?;
    }
}

proptest! {
    #![proptest_config(campaign(2000))]

    #[test]
    #[ignore = "minutes: the long campaign"]
    fn labels_of_two_thousand_random_recipes_are_clear(
        numbers in prop::collection::vec(any::<u32>(), 90),
    ) {
        every_label_is_clear(&numbers)?;
    }
}
