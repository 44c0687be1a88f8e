//! Strips of dough folded by hand, as layers with positions, held against what the program
//! says and draws: where the spine lies, what is opposite, which ends are open, and which
//! way the block is rolled next. The strip knows nothing of the program's own reckoning; the
//! moves are those that a hand makes.
//!
//! That a fold is followed by a quarter turn, and the schedule of 36 × 8, 36 × 8, 30 × 8 and
//! 20 × 12 in: common practice, no source.

#[path = "common/english.rs"]
mod english;

use tourier::draw::{Figure, figures};
use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::read::{Source, words_in};
use tourier::sheet::{Lamination, Sheet};
use tourier::theme::Theme;

/// A flat piece of the strip: where its two ends lie, and which places of the strip they are.
#[derive(Clone, Copy, Debug)]
struct Ply {
    at: [f64; 2],
    strip: [f64; 2],
}

/// A strip of length 1, its plies from the bottom up.
struct Strip(Vec<Ply>);

/// A move of the hands: everything to one side of a line goes over to the other.
#[derive(Clone, Copy, Debug)]
enum Move {
    LeftOver(f64),
    RightOver(f64),
}

impl Strip {
    fn flat() -> Self {
        Self(vec![Ply { at: [0.0, 1.0], strip: [0.0, 1.0] }])
    }

    fn folded(moves: &[Move]) -> Self {
        let mut strip = Self::flat();
        moves.iter().for_each(|step| strip.fold(*step));
        strip
    }

    fn fold(&mut self, step: Move) {
        let (line, keeps_right) = match step {
            Move::LeftOver(line) => (line, true),
            Move::RightOver(line) => (line, false),
        };
        let (mut stays, mut goes) = (Vec::new(), Vec::new());
        for ply in &self.0 {
            for part in ply.cut(line) {
                let right = f64::midpoint(part.at[0], part.at[1]) > line;
                if right == keeps_right { stays.push(part) } else { goes.push(part) }
            }
        }
        // What goes over lands upside down: its topmost ply first.
        stays.extend(goes.into_iter().rev().map(|ply| ply.mirrored(line)));
        self.0 = stays;
    }

    fn span(&self) -> [f64; 2] {
        let all = || self.0.iter().flat_map(|ply| ply.at);
        [all().fold(f64::INFINITY, f64::min), all().fold(f64::NEG_INFINITY, f64::max)]
    }

    /// The folds and the loose ends at one side, each fold with the plies that it joins.
    fn side(&self, x: f64) -> Side {
        let near = |one: f64, other: f64| (one - other).abs() < 1e-9;
        let mut side = Side::default();
        for (index, ply) in self.0.iter().enumerate() {
            for end in [0, 1].into_iter().filter(|end| near(ply.at[*end], x)) {
                let place = ply.strip[end];
                if near(place, 0.0) || near(place, 1.0) {
                    side.ends.push(index);
                    continue;
                }
                let others = self.0.iter().enumerate().skip(index + 1);
                let joined = others.filter(|(_, other)| {
                    (0..2).any(|e| near(other.at[e], x) && near(other.strip[e], place))
                });
                side.folds.extend(joined.map(|(other, _)| [index, other]));
            }
        }
        side
    }
}

#[derive(Debug, Default)]
struct Side {
    folds: Vec<[usize; 2]>,
    ends: Vec<usize>,
}

impl Side {
    /// Folds that no other fold of this side lies round.
    fn visible(&self) -> Side {
        let within = |inner: [usize; 2], outer: &[usize; 2]| {
            outer[0] <= inner[0] && inner[1] <= outer[1] && *outer != inner
        };
        let shut =
            |inner: [usize; 2]| self.folds.iter().any(|outer| within(inner, outer));
        Side {
            folds: self.folds.iter().copied().filter(|fold| !shut(*fold)).collect(),
            ends: self.ends.iter().copied().filter(|end| !shut([*end, *end])).collect(),
        }
    }
}

impl Ply {
    fn cut(self, line: f64) -> Vec<Self> {
        let [a, b] = self.at;
        if (line - a) * (line - b) >= -1e-12 {
            return vec![self];
        }
        let share = (line - a) / (b - a);
        let place = self.strip[0] + share * (self.strip[1] - self.strip[0]);
        vec![
            Self { at: [a, line], strip: [self.strip[0], place] },
            Self { at: [line, b], strip: [place, self.strip[1]] },
        ]
    }

    fn mirrored(self, line: f64) -> Self {
        Self { at: self.at.map(|x| 2.0 * line - x), ..self }
    }
}

/// What hands do for a turn in so many parts.
fn moves(parts: u32) -> Vec<Move> {
    match parts {
        3 => vec![Move::RightOver(2.0 / 3.0), Move::LeftOver(1.0 / 3.0)],
        4 => book(0.5),
        _ => {
            (1..parts).map(|k| Move::LeftOver(f64::from(k) / f64::from(parts))).collect()
        }
    }
}

/// Both ends to a place, then what is left, half the length, closed in its middle.
fn book(meet: f64) -> Vec<Move> {
    let (left, right) = (meet / 2.0, f64::midpoint(1.0, meet));
    let middle = f64::midpoint(left, right);
    vec![Move::LeftOver(left), Move::RightOver(right), Move::LeftOver(middle)]
}

/// A layered dough with these steps after its lock-in.
fn course(lock_in: &str, steps: &[(&str, &str)]) -> Edition {
    let dough = "600 g bread flour, 310 g water, 12 g fine salt, 8 g instant yeast";
    made_of([dough, "270 g butter"], lock_in, steps)
}

/// The same of this dough and this fat.
fn made_of([dough, fat]: [&str; 2], lock_in: &str, steps: &[(&str, &str)]) -> Edition {
    let lines = |all: &str| {
        all.split(", ").map(|line| format!("    - {line}\n")).collect::<String>()
    };
    let mut text = String::from(
        "---\ntitle: Folds\nsummary: s\nmakes: 1 block\nformula:\n  dough:\n",
    );
    text.push_str(&lines(dough));
    text.push_str(&format!("  roll-in:\n{}", lines(fat)));
    text.push_str(
        "---\n## Mix\n~~~ticket\nuses: dough\n~~~\n## Block\n~~~ticket\nuses: roll-in\n",
    );
    text.push_str(lock_in);
    for (index, (sheet, rest)) in steps.iter().enumerate() {
        text.push_str(&format!(
            "## Step {index}\n~~~ticket\nsheet: {sheet}\n{rest}~~~\n"
        ));
    }
    let files = [
        Source { path: "course.yaml".into(), text: "title: c\nunits: us\n".into() },
        Source { path: "recipes/t.md".into(), text },
    ];
    Edition::new(&files, Vec::new(), Vec::new())
}

const ENVELOPE: &str = "sheet: 7 x 7 in\n~~~\n## Lock in\n~~~ticket\nlock-in: envelope\nsheet: 11 x 11 in\n~~~\n";
const LETTER: &str = "sheet: 27 x 18 cm\n~~~\n## Lock in\n~~~ticket\nlock-in: letter\nsheet: 42 x 20 cm\n~~~\n";
const BOOK: &str = "sheet: 20 x 18 cm\n~~~\n## Lock in\n~~~ticket\nlock-in: book\nsheet: 44 x 20 cm\n~~~\n";

fn worked(edition: &Edition) -> (Sheet, Vec<Figure>) {
    assert!(!edition.stops(), "{:?}", edition.faults);
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let recipe = edition.content.recipe("t").expect("the recipe is read");
    let sheet = edition.sheet(recipe, &Scaling::Batches(exact(1, 1)), &words);
    let sheet = sheet.expect("it can be worked out");
    let figures = figures(&sheet, &words);
    (sheet, figures)
}

fn lamination(sheet: &Sheet) -> &Lamination {
    sheet.lamination.as_ref().expect("a layered dough")
}

/// The figure of a step.
fn figure<'a>(figures: &'a [Figure], step: &str) -> &'a Figure {
    figures.iter().find(|it| it.step.as_deref() == Some(step)).expect("a figure")
}

/// Every straight stroke of a class, from end to end: outlines of curves are left out.
fn strokes(svg: &str, class: &str) -> Vec<[[f64; 2]; 2]> {
    let opening = format!("<path class=\"{class}\"");
    let bodies = svg.split(&opening).skip(1);
    let paths = bodies.filter_map(|body| body.split(" d=\"").nth(1)?.split('"').next());
    paths.flat_map(path_strokes).collect()
}

fn path_strokes(path: &str) -> Vec<[[f64; 2]; 2]> {
    let (mut found, mut at) = (Vec::new(), [0.0, 0.0]);
    let verbs: Vec<(usize, char)> =
        path.char_indices().filter(|(_, sign)| sign.is_alphabetic()).collect();
    for (index, (from, verb)) in verbs.iter().enumerate() {
        let to = verbs.get(index + 1).map_or(path.len(), |next| next.0);
        let spaced = path[from + 1..to].replace('-', " -");
        let by: Vec<f64> =
            spaced.split_whitespace().filter_map(|number| number.parse().ok()).collect();
        let end = match verb {
            'M' => [by[0], by[1]],
            'm' | 'l' => [at[0] + by[0], at[1] + by[1]],
            'h' => [at[0] + by[0], at[1]],
            'v' => [at[0], at[1] + by[0]],
            'c' => [at[0] + by[4], at[1] + by[5]],
            _ => at,
        };
        if matches!(verb, 'l' | 'h' | 'v') {
            found.push([at, end]);
        }
        at = end;
    }
    found
}

/// What a drawing shows of a block: the spine's place, the other folded edge's, the dotted
/// lines, and the arrow that is drawn on the block.
struct Drawn {
    spine: [[f64; 2]; 2],
    folded: Option<[[f64; 2]; 2]>,
    dotted: Vec<[[f64; 2]; 2]>,
    arrow: Option<[[f64; 2]; 2]>,
}

impl Drawn {
    fn of(svg: &str) -> Self {
        let spine = strokes(svg, "d-line d-spine")[0];
        let on_block = |stroke: &[[f64; 2]; 2]| {
            stroke.iter().all(|[x, y]| {
                *x > spine[0][0] && *y > spine[0][1] - 1.0 && *y < spine[1][1] + 1.0
            })
        };
        Self {
            spine,
            folded: strokes(svg, "d-line d-folded").first().copied(),
            dotted: strokes(svg, "d-line d-seam"),
            arrow: strokes(svg, "d-arrow").into_iter().find(on_block),
        }
    }

    fn is_upright(stroke: &[[f64; 2]; 2]) -> bool {
        (stroke[0][0] - stroke[1][0]).abs() < 0.2
    }
}

/// Every turn, with the ends of books meeting here and there, folded as a strip.
#[test]
fn a_strip_of_dough_shows_what_is_said_and_drawn() {
    let cases: Vec<(String, Vec<Move>)> = (2..=12)
        .map(|parts| (format!("turn: {parts}\n"), moves(parts)))
        .chain([
            ("turn: book, ends meet at 1/3\n".into(), book(1.0 / 3.0)),
            ("turn: book, ends meet at 5/8\n".into(), book(5.0 / 8.0)),
        ])
        .collect();
    for (ticket, moves) in cases {
        let edition = course(ENVELOPE, &[("72 x 8 in", &ticket)]);
        let (sheet, figures) = worked(&edition);
        let fold = &lamination(&sheet).folds[0];
        let strip = Strip::folded(&moves);
        // As many layers, over as much length.
        let plies = |x: f64| {
            strip.0.iter().filter(|ply| (ply.at[0] - x) * (ply.at[1] - x) < 0.0).count()
        };
        let [left, right] = strip.span();
        for share in [0.11, 0.37, 0.59, 0.93] {
            assert_eq!(
                plies(left + share * (right - left)) as u32,
                fold.parts,
                "{ticket}"
            );
        }
        let length = (right - left) * fold.length_cm;
        assert!((length - fold.folded_length_cm).abs() < 1e-3, "{ticket}: {length}");
        // One fold closes the left side round everything; what the right side shows is said.
        let (spine, opposite) = (strip.side(left).visible(), strip.side(right).visible());
        assert_eq!(spine.folds, [[0, strip.0.len() - 1]], "{ticket}: {spine:?}");
        assert!(spine.ends.is_empty(), "{ticket}: {spine:?}");
        let shown = [opposite.folds.len() as u32, opposite.ends.len() as u32];
        let said = [fold.edges.opposite_folds, fold.edges.opposite_ends];
        assert_eq!(shown, said, "{ticket}: {opposite:?}");
        drawn_as_said(&figures, "step-0", said, &ticket);
    }
}

/// The drawing has the spine at the left of the block, and opposite it what was found.
fn drawn_as_said(figures: &[Figure], step: &str, [folds, ends]: [u32; 2], what: &str) {
    for svg in [
        &figure(figures, step).upright.us.svg(),
        &figure(figures, step).upright.metric.svg(),
    ] {
        let drawn = Drawn::of(svg);
        assert!(Drawn::is_upright(&drawn.spine), "{what}");
        let dotted = drawn.dotted.iter().filter(|stroke| Drawn::is_upright(stroke));
        let right =
            dotted.filter(|stroke| stroke[0][0] > drawn.spine[0][0] + 5.0).count();
        assert_eq!(drawn.folded.is_some(), folds > 0, "{what}");
        assert_eq!(right > 0, ends > 0, "{what}");
        // Near and far lie open: two dotted lines along the folded side.
        let level = drawn.dotted.iter().filter(|stroke| !Drawn::is_upright(stroke));
        assert_eq!(level.count(), 2, "{what}");
    }
}

/// A letter lock-in is a letter of the sheet; a book lock-in has both ends folded in, and
/// they meet in the middle of its top.
#[test]
fn a_strip_locked_in_shows_what_is_said() {
    let (sheet, figures) = worked(&course(LETTER, &[]));
    let fact = lamination(&sheet).lock_in.as_ref().expect("a lock-in").clone();
    let strip = Strip::folded(&moves(3));
    let [left, right] = strip.span();
    assert!(strip.side(left).visible().ends.is_empty());
    let opposite = strip.side(right).visible();
    let edges = fact.edges.expect("it is folded along the sheet");
    assert_eq!([opposite.folds.len(), opposite.ends.len()], [1, 1]);
    assert_eq!([edges.opposite_folds, edges.opposite_ends], [1, 1]);
    drawn_as_said(&figures, "lock-in", [1, 1], "letter lock-in");

    let (sheet, figures) = worked(&course(BOOK, &[]));
    let fact = lamination(&sheet).lock_in.as_ref().expect("a lock-in").clone();
    let strip = Strip::folded(&[Move::LeftOver(0.25), Move::RightOver(0.75)]);
    let [left, right] = strip.span();
    for side in [strip.side(left), strip.side(right)] {
        assert_eq!((side.folds.len(), side.ends.len()), (1, 0));
    }
    let meets: Vec<f64> = strip
        .0
        .iter()
        .flat_map(|ply| {
            let ends = (0..2).filter(|end| [0.0, 1.0].contains(&ply.strip[*end]));
            ends.map(|end| ply.at[end]).collect::<Vec<_>>()
        })
        .collect();
    assert_eq!(meets, [0.5, 0.5]);
    let edges = fact.edges.expect("it is folded along the sheet");
    assert_eq!([edges.opposite_folds, edges.opposite_ends], [1, 0]);
    let seam = Drawn::of(&figure(&figures, "lock-in").upright.us.svg());
    let folded = seam.folded.expect("the other folded edge")[0][0];
    let middle = f64::midpoint(seam.spine[0][0], folded);
    let upright = seam.dotted.iter().filter(|stroke| Drawn::is_upright(stroke));
    let places: Vec<f64> = upright.map(|stroke| stroke[0][0]).collect();
    assert!(places.len() == 1 && (places[0] - middle).abs() < 0.2, "{places:?} {middle}");
}

const EIGHT: [(&str, &str); 4] = [
    ("36 x 8 in", "turn: book\n"),
    ("36 x 8 in", "turn: book\n"),
    ("30 x 8 in", "turn: letter\n"),
    ("20 x 12 in", "cut: grid, 3 strips, 2 across, each on the diagonal\n"),
];

/// 36 × 8 in, a book; 36 × 8, a book; 30 × 8, a letter; 20 × 12 to be cut. Nothing is pointed
/// out; the side of 8 in is stretched each time, in the facts, the drawings and the words.
#[test]
fn the_eight_inch_side_is_stretched_each_time() {
    let edition = course(ENVELOPE, &EIGHT);
    let names: Vec<_> = edition.faults.iter().map(|fault| fault.name).collect();
    assert!(!names.contains(&"seams-not-turned"), "{names:?}");
    assert!(!names.contains(&"sheet-gets-narrower"), "{names:?}");
    let (sheet, figures) = worked(&edition);
    let made = lamination(&sheet);
    let inches = |cm: f64| (cm / 2.54 * 1000.0).round() / 1000.0;
    let beneath: Vec<[f64; 2]> = made
        .sheets
        .iter()
        .skip(2)
        .map(|sheet| sheet.block_cm.expect("its sizes are known").map(inches))
        .collect();
    assert_eq!(beneath, [[8.0, 9.0], [8.0, 9.0], [8.0, 10.0]]);
    for (index, fold) in made.folds.iter().enumerate() {
        assert_eq!(serde_json::json!(fold.next), "quarter_turn");
        let figure = figure(&figures, &format!("step-{index}"));
        assert!(
            figure.alt.us.ends_with("the side of 8 in is stretched."),
            "{}",
            figure.alt.us
        );
        assert!(figure.alt.us.contains("a quarter turn"), "{}", figure.alt.us);
        let forms = std::iter::once(&figure.upright).chain(&figure.wide);
        for svg in forms.map(|forms| forms.us.svg()) {
            let drawn = Drawn::of(&svg);
            let arrow = drawn.arrow.expect("an arrow on the block");
            assert!(Drawn::is_upright(&arrow), "along the spine: {arrow:?}");
            // The spine is the side of 8 in: to the scale of the sheet above it.
            let spine = (drawn.spine[1][1] - drawn.spine[0][1]).abs();
            let folded = drawn.folded.map_or(drawn.spine[0][0], |edge| edge[0][0]);
            if fold.parts == 4 {
                let ratio = (folded - drawn.spine[0][0]) / spine;
                assert!((ratio - 9.0 / 8.0).abs() < 0.01, "{ratio}");
            }
            assert!(svg.contains(">¼<"), "the sign of a quarter turn");
        }
    }
}

/// `roll: same way` is followed, drawn and pointed out; nothing else is.
#[test]
fn the_same_way_is_drawn_across_the_spine() {
    let steps = [
        ("60 x 20 cm", "turn: letter\n"),
        ("60 x 20 cm", "roll: same way\nturn: letter\n"),
    ];
    let edition = course(ENVELOPE, &steps);
    let names: Vec<_> = edition.faults.iter().map(|fault| fault.name).collect();
    assert!(names.contains(&"seams-not-turned"), "{names:?}");
    let (_, figures) = worked(&edition);
    let first = figure(&figures, "step-0");
    let arrow = Drawn::of(&first.upright.us.svg()).arrow.expect("an arrow");
    assert!(!Drawn::is_upright(&arrow), "across the spine: {arrow:?}");
    assert!(!first.upright.us.svg().contains(">¼<"));
    assert!(first.alt.us.contains("no quarter turn"), "{}", first.alt.us);
}

/// A folded dough as it was printed: source, its dough and fat, the lock-in, the turns, the
/// fat layers in the end, and the block that lies beneath each rolling after a fold, in.
struct Printed {
    source: &'static str,
    formula: [&'static str; 2],
    lock_in: &'static str,
    turns: &'static [(&'static str, &'static str)],
    fat_layers: u64,
    beneath: [f64; 2],
}

/// Read in stored copies. Where a source gives a thickness or a proportion and no size, the
/// sheet has the size that follows; what it leaves open (some water) is from memory.
const PRINTED: &[Printed] = &[
    Printed {
        // Butter as large as a slice of bread, the paste a little wider and rather more than
        // twice as long, closed over it; then three times as long at the same width, exactly
        // in three, the folded edges right and left; six times.
        source: "Mrs Beeton's Book of Household Management, 1907, no. 1665",
        formula: ["1 lb bread flour, 189 g water, 1 tsp lemon juice", "1 lb butter"],
        lock_in: "sheet: 5 x 5 in\n~~~\n## Lock in\n~~~ticket\nlock-in: book\nsheet: 11 x 5 1/2 in\n~~~\n",
        turns: &[("16 1/2 x 5 1/2 in", "turn: letter\n"); 6],
        fat_layers: 729,
        beneath: [5.5, 5.5],
    },
    Printed {
        // Everything a quarter of an inch thick, the butter half an inch; three layers,
        // turned before each rolling, and after the fourth rolling four.
        source: "F. M. Farmer, The Boston Cooking-School Cook Book, 1896, p. 461",
        formula: ["1 lb pastry flour, 1 oz butter, 200 g water", "15 oz butter"],
        lock_in: "sheet: 8 x 8 in\n~~~\n## Lock in\n~~~ticket\nlock-in: envelope\nsheet: 12 x 12 in\n~~~\n",
        turns: &[
            ("27 x 9 in", "turn: letter\n"),
            ("27 x 9 in", "turn: letter\n"),
            ("27 x 9 in", "turn: letter\n"),
            ("27 x 9 in", "turn: book\n"),
        ],
        fat_layers: 108,
        beneath: [9.0, 9.0],
    },
    Printed {
        // The paste over the butter from all four sides; a strip three times longer than
        // broad, twice folded to three layers; turned before each; six to eight times.
        source: "M. Ronald, Luncheons, 1902: puff paste (its weights from memory)",
        formula: ["1 lb bread flour, 220 g water, 1 tsp fine salt", "1 lb butter"],
        lock_in: "sheet: 7 x 7 in\n~~~\n## Lock in\n~~~ticket\nlock-in: envelope\nsheet: 10 1/2 x 10 1/2 in\n~~~\n",
        turns: &[("18 x 6 in", "turn: letter\n"); 6],
        fat_layers: 729,
        beneath: [6.0, 6.0],
    },
    Printed {
        // Dough of 8 mm, about twice as large as a fat of 10 mm, closed as an envelope;
        // rolled to 10 mm, in three, turned by 90°; six times.
        source: "EP 0 445 850 A1, [0001]: the French method",
        formula: ["455 g bread flour, 250 g water, 9 g fine salt", "384 g butter"],
        lock_in: "sheet: 20 x 20 cm\n~~~\n## Lock in\n~~~ticket\nlock-in: envelope\nsheet: 29.5 x 29.5 cm\n~~~\n",
        turns: &[("54 x 19.5 cm", "turn: letter\n"); 6],
        fat_layers: 729,
        beneath: [19.5 / 2.54, 18.0 / 2.54],
    },
];

/// Nothing is pointed out in a schedule that bakers have used for a hundred years, and it is
/// drawn as they did it: a quarter turn after each fold, the arrow along the spine.
#[test]
fn printed_schedules_are_followed_without_a_word() {
    for printed in PRINTED {
        let source = printed.source;
        let edition = made_of(printed.formula, printed.lock_in, printed.turns);
        let other = ["unlikely-share"];
        let said: Vec<_> = edition
            .faults
            .iter()
            .filter(|fault| {
                fault.severity == tourier::fault::Severity::Error
                    || fault.place.file.ends_with("t.md") && !other.contains(&fault.name)
            })
            .map(|fault| format!("{}: {}", fault.name, english::told(fault).message))
            .collect();
        assert!(said.is_empty(), "{source}: {said:?}");
        let (sheet, figures) = worked(&edition);
        let made = lamination(&sheet);
        assert_eq!(made.fat_layers, Some(printed.fat_layers), "{source}");
        let folded =
            made.sheets.iter().filter(|it| serde_json::json!(it.way) == "quarter_turn");
        let mut after = 0;
        for rolled in folded {
            let block = rolled.block_cm.expect("its sizes are known").map(|cm| cm / 2.54);
            // The book lock-in is a fold too, of another block.
            after += usize::from(
                block
                    .iter()
                    .zip(printed.beneath)
                    .all(|(is, was)| (is - was).abs() < 0.01),
            );
        }
        assert!(after >= printed.turns.len() - 1, "{source}: {after}");
        for index in 0..printed.turns.len() {
            let svg = figure(&figures, &format!("step-{index}")).upright.us.svg();
            let drawn = Drawn::of(&svg);
            let arrow = drawn.arrow.unwrap_or_else(|| panic!("{source}: no arrow"));
            assert!(
                Drawn::is_upright(&drawn.spine) && Drawn::is_upright(&arrow),
                "{source}"
            );
            assert!(svg.contains(">¼<"), "{source}: the sign of a quarter turn");
        }
    }
}
