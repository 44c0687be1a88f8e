//! Random recipes, from text to drawings: no label lies over another or leaves its drawing,
//! whatever a recipe says. And what drawing costs beside typesetting.
//!
//! The long campaign: `cargo test --release --lib two_thousand -- --ignored`.

use std::fmt::Write;
use std::sync::OnceLock;

use proptest::prelude::*;

use crate::formula::{Book, Scaling};
use crate::measure::exact;
use crate::pantry::Pantry;
use crate::read::Source;
use crate::sheet::making::{self, Context};
use crate::sheet::{LockIn, Sheet};
use crate::words::Words;
use crate::work::work;

use super::system::plate::{Anchor, LabelBox, Text};
use super::tests::{course_sheets, course_sources, polygons, sample_sheets};
use super::{Figure, FigureKind, sample};

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
    Some(making::recipe(&work, &[], Context { book, words }))
}

/// Every document of a figure.
fn documents(figure: &Figure) -> Vec<String> {
    let paper = figure.paper.iter();
    let paper = paper.flat_map(|paper| [&paper.column, &paper.large]);
    // A bench card has its fold bars in the place of lock-ins and turns, and no timeline.
    let on_card = match figure.kind {
        FigureKind::LockIn | FigureKind::Turn | FigureKind::Timeline => false,
        FigureKind::Cut
        | FigureKind::Roll
        | FigureKind::Shape
        | FigureKind::Tray
        | FigureKind::Layers => true,
    };
    let card = figure.paper.iter().map(|paper| &paper.card).filter(|_| on_card);
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
fn frames(svg: &str) -> Vec<(String, LabelBox)> {
    let texts = svg.split("<text").skip(1);
    texts
        .filter_map(|text| {
            let (tag, rest) = text.split_once('>')?;
            let number = |name| attribute(tag, name)?.parse::<f64>().ok();
            let words = rest.split("</text>").next()?.replace("&amp;", "&");
            let text = Text {
                size: number("font-size").unwrap_or(super::system::lettering::LABEL),
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

/// Whether every label of a document has a place of its own, and none lies across an edge.
fn clear(name: &str, svg: &str) -> Result<(), TestCaseError> {
    apart(name, svg)?;
    beside_edges(name, svg)
}

/// Whether no label lies on another or leaves the drawing.
fn apart(name: &str, svg: &str) -> Result<(), TestCaseError> {
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

/// Whether no label lies across an edge of what it stands in or beside.
fn beside_edges(name: &str, svg: &str) -> Result<(), TestCaseError> {
    let frames = frames(svg);
    for outline in OUTLINES.into_iter().flat_map(|class| polygons(svg, class)) {
        for (words, frame) in &frames {
            // A ring stands on the line that it numbers.
            let ring = words.parse::<u32>().is_ok();
            let across = !ring && crosses(&outline, &frame.grown(-2.0));
            prop_assert!(!across, "{name}: `{words}` across the edge of what lies there");
        }
    }
    Ok(())
}

/// What a label stands in or beside, never half on: sheets, blocks, pieces, trays.
const OUTLINES: [&str; 5] =
    ["d-dough", "d-fat", "d-dough d-piece", "d-dough d-piece d-other", "d-paper d-tray"];

/// Whether an edge of an outline runs through a frame.
fn crosses(outline: &[[f64; 2]], frame: &LabelBox) -> bool {
    let next = outline.iter().cycle().skip(1);
    outline.iter().zip(next).any(|(from, to)| {
        // The part of the edge between the frame's left and right, then its top and bottom.
        let (mut begin, mut end) = (0.0_f64, 1.0_f64);
        let bounds = [(frame.left, frame.right), (frame.top, frame.bottom)];
        for (axis, (low, high)) in bounds.into_iter().enumerate() {
            let run = to[axis] - from[axis];
            if run.abs() < 1e-9 {
                if from[axis] <= low || from[axis] >= high {
                    return false;
                }
                continue;
            }
            let (one, other) = ((low - from[axis]) / run, (high - from[axis]) / run);
            begin = begin.max(one.min(other));
            end = end.min(one.max(other));
        }
        begin < end
    })
}

/// Every drawing of the gallery, at each of its sizes: each label clear, and in or beside what
/// it names.
#[test]
fn labels_of_the_gallery_stand_in_or_beside_what_they_name() {
    for sheet in course_sheets().iter().chain(&sample_sheets()) {
        for figure in super::figures(sheet, words()) {
            for svg in documents(&figure) {
                let name = format!("{} {}", sheet.recipe, figure.name);
                clear(&name, &svg).unwrap_or_else(|found| panic!("{found}"));
            }
        }
    }
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
            apart(&figure.name, &svg)?;
            // A block that reaches beyond its sheet, which proof refuses, may lie anywhere, and
            // so may pieces that have no room on their tray, which proof points out.
            let within = match figure.kind {
                FigureKind::LockIn => block_lies_within(&sheet),
                FigureKind::Tray => pieces_have_room(&sheet),
                FigureKind::Turn
                | FigureKind::Cut
                | FigureKind::Roll
                | FigureKind::Shape
                | FigureKind::Layers
                | FigureKind::Timeline => true,
            };
            if within {
                beside_edges(&figure.name, &svg)?;
            }
        }
    }
    prop_assert_eq!(figures, super::figures(&sheet, words));
    Ok(())
}

/// Whether the block of fat lies within its sheet of dough.
fn block_lies_within(sheet: &Sheet) -> bool {
    let lamination = sheet.lamination.as_ref();
    let fact = lamination.and_then(|it| it.lock_in.as_ref());
    fact.is_none_or(|fact| {
        let block = [fact.block_length_cm, fact.block_width_cm];
        // An envelope's block lies with its corners to the sides.
        let needs = match fact.kind {
            LockIn::Envelope => [(block[0] + block[1]) / 2.0_f64.sqrt(); 2],
            LockIn::Letter | LockIn::Book => block,
        };
        needs[0] <= fact.length_cm && needs[1] <= fact.width_cm
    })
}

/// Whether as many pieces as stand on each tray have room there.
fn pieces_have_room(sheet: &Sheet) -> bool {
    sheet.handwork.trays.iter().all(|tray| {
        let pieces = u64::try_from(tray.places_cm.len()).unwrap_or(u64::MAX);
        tray.fits.is_none_or(|fits| fits >= pieces)
    })
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
