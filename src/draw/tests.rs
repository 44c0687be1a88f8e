//! The drawings as a whole.

use std::path::{Path, PathBuf};

use crate::formula::{Book, Scaling};
use crate::measure::exact;
use crate::pantry::Pantry;
use crate::read::Source;
use crate::sheet::making::{self, Context};
use crate::sheet::{LockIn, Sheet};
use crate::theme::Theme;
use crate::work::work;

use super::sample;

/// Writes every kind of drawing into a folder named in the environment, to be looked at.
#[test]
#[ignore = "writes pictures to look at, into the folder that DRAWINGS names"]
#[allow(clippy::disallowed_methods, reason = "a hand-run test that writes pictures")]
fn gallery() -> Result<(), Box<dyn std::error::Error>> {
    let folder = PathBuf::from(std::env::var("DRAWINGS")?);
    let theme = Theme::built_in();
    let course = course_sheets();
    for (name, svg) in sample_documents()
        .into_iter()
        .chain(technique_documents())
        .chain(documents(&course))
    {
        if std::env::var("ONLY").is_ok_and(|only| !name.contains(&only)) {
            continue;
        }
        std::fs::write(folder.join(format!("{name}.svg")), &svg)?;
        std::fs::write(
            folder.join(format!("{name}.png")),
            super::png(&svg, &theme, 640).map_err(|error| format!("{error:?}"))?,
        )?;
    }
    Ok(())
}

fn sample_documents() -> Vec<(String, String)> {
    documents(&sample_sheets())
}

fn documents(sheets: &[Sheet]) -> Vec<(String, String)> {
    let words = sample::words();
    let mut all = Vec::new();
    for (index, sheet) in sheets.iter().enumerate() {
        let stem = format!("{index}-{}", sheet.recipe);
        for figure in super::figures(sheet, &words) {
            all.extend(at_all_sizes(&stem, figure));
        }
        let svg = super::social(sheet, &crate::sheet::sample::course(), &words);
        all.push((format!("{stem}-social"), svg));
    }
    all
}

/// A figure in every form, in both unit systems.
fn at_all_sizes(stem: &str, figure: super::Figure) -> Vec<(String, String)> {
    let paper = figure.paper.into_iter().flat_map(|paper| {
        [("column", paper.column), ("large", paper.large), ("card", paper.card)]
    });
    let wide = figure.wide.map(|wide| ("wide", wide));
    let stem = format!("{stem}-{}", figure.name);
    let forms = std::iter::once(("page", figure.upright)).chain(paper).chain(wide);
    forms
        .flat_map(|(form, drawn)| {
            let [metric, us] = ["metric", "us"].map(|of| format!("{stem}-{form}-{of}"));
            [(metric, drawn.metric.svg()), (us, drawn.us.svg())]
        })
        .collect()
}

/// Every drawing of the technique pages.
fn technique_documents() -> Vec<(String, String)> {
    let sources = course_sources(Path::new(env!("CARGO_MANIFEST_DIR")));
    let (content, _, _) = crate::read::content(&sources);
    let (pantry, _) = Pantry::of(&content);
    let words = sample::words();
    let context =
        Context { book: Book { content: &content, pantry: &pantry }, words: &words };
    let mut all = Vec::new();
    for technique in &content.techniques {
        let sheet = making::technique(technique, context);
        for (at, demo) in sheet.demonstrations.iter().enumerate() {
            let figure = super::demo(demo, at + 1, &words);
            all.extend(at_all_sizes(&format!("t-{}", technique.name), figure));
        }
    }
    all
}

/// The sheets of the demonstration course, at one and a half batches and as written.
pub(super) fn course_sheets() -> Vec<Sheet> {
    let sources = course_sources(Path::new(env!("CARGO_MANIFEST_DIR")));
    let (content, _, _) = crate::read::content(&sources);
    let (pantry, _) = Pantry::of(&content);
    let book = Book { content: &content, pantry: &pantry };
    let words = sample::words();
    let context = Context { book, words: &words };
    let scales = [exact(1, 1), exact(3, 2)].map(Scaling::Batches);
    let mut sheets = Vec::new();
    for (recipe, scale) in
        content.recipes.iter().flat_map(|r| scales.iter().map(move |s| (r, s)))
    {
        let work = work(recipe, scale, book).expect("batches always scale");
        sheets.push(making::recipe(&work, &[], context));
    }
    sheets
}

#[allow(
    clippy::disallowed_methods,
    reason = "a test that reads the demonstration course"
)]
pub(super) fn course_sources(root: &Path) -> Vec<Source> {
    let mut sources = Vec::new();
    for folder in ["content", "content/recipes", "content/techniques"] {
        let entries = std::fs::read_dir(root.join(folder)).expect("the content is there");
        let mut paths: Vec<PathBuf> =
            entries.flatten().map(|entry| entry.path()).collect();
        paths.sort();
        for path in paths.iter().filter(|path| path.is_file()) {
            let inside = path.strip_prefix(root.join("content")).unwrap_or(path);
            let text = std::fs::read_to_string(path).expect("text");
            sources
                .push(Source { path: inside.to_string_lossy().replace('\\', "/"), text });
        }
    }
    sources
}

pub(super) fn sample_sheets() -> Vec<Sheet> {
    let envelope = sample::lock_in(LockIn::Envelope, [280, 280], [190, 190], [190, 190]);
    let letter = sample::lock_in(LockIn::Letter, [480, 260], [300, 240], [160, 260]);
    let book = sample::lock_in(LockIn::Book, [480, 260], [220, 240], [240, 260]);
    let folds = vec![
        sample::fold(4, 600, 200, 1),
        sample::fold(3, 600, 200, 16),
        sample::fold(2, 400, 300, 2),
        sample::fold(6, 720, 200, 3),
    ];
    let inches = |x: f64| x * 2.54;
    let mut wide = sample::triangles(54.0, 48.0, 9.0, 2);
    wide.step = "triangles".into();
    let mut squares = sample::grid(50.0, 30.0, (3, 5), false);
    squares.step = "squares".into();
    let grid = sample::grid(inches(20.0), inches(12.0), (3, 2), true);
    vec![
        sample::sheet(
            Some(sample::lamination(Some(envelope), folds)),
            vec![grid, wide, squares],
            sample::evening(),
        ),
        sample::sheet(
            Some(sample::lamination(Some(letter), vec![sample::fold(4, 600, 200, 2)])),
            Vec::new(),
            sample::time(Vec::new()),
        ),
        sample::sheet(
            Some(sample::lamination(Some(book), Vec::new())),
            vec![
                sample::grid(60.0, 24.0, (1, 20), false),
                sample::rounds(40.0, 30.0, 8.0),
            ],
            sample::time(Vec::new()),
        ),
        // The fat mixed in, then turns.
        sample::sheet(
            Some(sample::lamination(
                None,
                vec![sample::fold(3, 450, 150, 0), sample::fold(4, 450, 150, 0)],
            )),
            Vec::new(),
            sample::time(Vec::new()),
        ),
    ]
}

/// The corners of every closed outline of class `class`.
pub(super) fn polygons(svg: &str, class: &str) -> Vec<Vec<[f64; 2]>> {
    let opening = format!(r#"<path class="{class}""#);
    let bodies = svg.split(&opening).skip(1);
    let paths = bodies.filter_map(|body| body.split(r#" d=""#).nth(1)?.split('"').next());
    // What is bent has no corners.
    paths.filter(|path| !path.contains(['a', 'c'])).flat_map(outlines).collect()
}

/// The corners of every closed outline of a path of straight lines.
fn outlines(path: &str) -> Vec<Vec<[f64; 2]>> {
    let (mut all, mut at, mut start) = (Vec::new(), [0.0, 0.0], [0.0, 0.0]);
    for outline in path.split_terminator('z') {
        let mut corners = Vec::new();
        let verbs = outline.char_indices().filter(|(_, sign)| sign.is_alphabetic());
        let verbs: Vec<(usize, char)> = verbs.collect();
        for (index, (from, verb)) in verbs.iter().enumerate() {
            let to = verbs.get(index + 1).map_or(outline.len(), |next| next.0);
            let steps = steps(&outline[from + 1..to]);
            let by = match verb {
                'h' => [steps[0], 0.0],
                'v' => [0.0, steps[0]],
                _ => [steps[0], steps[1]],
            };
            if matches!(verb, 'M' | 'm') {
                at = [start[0] + by[0], start[1] + by[1]];
                start = at;
            } else {
                at = [at[0] + by[0], at[1] + by[1]];
            }
            corners.push(at);
        }
        all.push(corners);
    }
    all
}

/// The numbers between two letters of a path.
fn steps(text: &str) -> Vec<f64> {
    let spaced = text.replace('-', " -");
    spaced.split_whitespace().filter_map(|number| number.parse().ok()).collect()
}

/// Every text that is printed in a drawing.
fn printed(svg: &str) -> Vec<String> {
    let texts = svg.split("<text ").skip(1);
    let inner = texts.filter_map(|text| text.split_once('>')?.1.split("</text>").next());
    inner.map(str::to_owned).collect()
}

fn number_of(text: &str) -> &str {
    text.split(' ').next().unwrap_or(text)
}

#[test]
fn pieces_are_drawn_to_the_scale_of_their_sheet() {
    let words = sample::words();
    for cut in
        [sample::triangles(54.0, 48.0, 9.0, 2), sample::grid(50.8, 30.48, (3, 2), true)]
    {
        let figure =
            super::cut_figure(&cut, "Cut".into(), super::Brief::for_paper(&words));
        for svg in [&figure.upright.metric.svg(), &figure.upright.us.svg()] {
            let sheet = &polygons(svg, "d-scrap")[0];
            let scale = (sheet[1][0] - sheet[0][0]) / cut.sheet_length_cm;
            let even = polygons(svg, "d-dough d-piece");
            let odd = polygons(svg, "d-dough d-piece d-other");
            assert_eq!(even.len() + odd.len(), cut.polygons_cm.len());
            for (at, planned) in cut.polygons_cm.iter().enumerate() {
                let piece = if at % 2 == 0 { &even[at / 2] } else { &odd[at / 2] };
                for ([x, y], [along, up]) in piece.iter().zip(planned) {
                    assert!((x - sheet[3][0] - along * scale).abs() < 0.11);
                    assert!((sheet[3][1] - y - up * scale).abs() < 0.11);
                }
            }
        }
    }
}

#[test]
fn printed_sizes_are_those_of_the_sheet() {
    let words = sample::words();
    for fold in [sample::fold(4, 600, 200, 1), sample::fold(3, 508, 305, 4)] {
        let figure = super::turn_figure(
            &fold,
            fold.title.clone(),
            super::Brief::for_paper(&words),
        );
        for (svg, size, folded, part) in [
            (
                &figure.upright.metric.svg(),
                &fold.size.metric,
                &fold.folded.metric,
                &fold.part.metric,
            ),
            (&figure.upright.us.svg(), &fold.size.us, &fold.folded.us, &fold.part.us),
        ] {
            let texts = printed(svg);
            let unit = size.rsplit(' ').next().unwrap_or("");
            for side in size.split(" × ").chain(folded.split(" × ")) {
                let label = format!("{} {unit}", number_of(side));
                assert!(texts.contains(&label), "{label} of {size} in {texts:?}");
            }
            assert!(texts.iter().any(|text| text == number_of(part)), "{part}");
        }
    }
}

#[test]
fn a_timeline_that_is_to_be_ready_shows_the_clock() {
    let sheet = sample::sheet(None, Vec::new(), sample::evening());
    let printed_at = |ready| {
        printed(&super::timeline(&sheet, ready, &sample::words()).upright.us.svg())
    };
    let elapsed = sheet.time.elapsed_min;
    // Ready so long after midnight that it begins at half past six.
    let texts = printed_at(Some(390 + elapsed));
    assert!(texts.iter().any(|text| text == "7:00"), "{texts:?}");
    assert!(!texts.iter().any(|text| text == "0:00"), "{texts:?}");
    assert!(printed_at(None).iter().any(|text| text == "0:00"));
}

#[test]
fn fat_outside_is_drawn_outside() {
    let fact = crate::sheet::LockInFact {
        inverted: true,
        ..sample::lock_in(LockIn::Book, [400, 200], [190, 190], [200, 200])
    };
    let figure = super::lock_in_figure(
        &fact,
        "Lock in".into(),
        super::Brief::for_paper(&sample::words()),
    );
    let (sheet, block) =
        (polygons(&figure.upright.metric.svg(), "d-fat"), fact.block_length_cm);
    let wide = |polygon: &Vec<[f64; 2]>| polygon[1][0] - polygon[0][0];
    let dough = polygons(&figure.upright.metric.svg(), "d-dough");
    let scale = wide(&sheet[0]) / fact.length_cm;
    assert!(dough.iter().any(|piece| (wide(piece) - block * scale).abs() < 0.3));
    assert!(
        figure.alt.metric.starts_with("A sheet of fat, 40 by 20 cm"),
        "{}",
        figure.alt.metric
    );
}

#[test]
fn handwork_is_printed_as_in_the_sheet() {
    let (sheets, words) = (course_sheets(), sample::words());
    let said = |figure: &super::Figure, label: &crate::measure::Label| {
        for (svg, text) in [
            (&figure.upright.metric.svg(), &label.metric),
            (&figure.upright.us.svg(), &label.us),
        ] {
            let all = printed(svg).join(" ");
            assert!(all.contains(text.as_str()), "{text} in {all}");
        }
    };
    let (mut rolls, mut shapes, mut trays) = (0, 0, 0);
    for work in sheets.iter().map(|sheet| &sheet.handwork) {
        for fact in &work.rolls {
            let figure =
                super::roll_figure(fact, String::new(), super::Brief::for_paper(&words));
            let from = fact.from.iter().flat_map(|slab| [&slab.size, &slab.thickness]);
            from.chain([&fact.to.size, &fact.to.thickness])
                .for_each(|it| said(&figure, it));
            rolls += 1;
        }
        for fact in &work.shapes {
            let figure =
                super::shape_figure(fact, String::new(), super::Brief::for_paper(&words));
            [&fact.base, &fact.height].into_iter().for_each(|it| said(&figure, it));
            shapes += 1;
        }
        for fact in &work.trays {
            let figure =
                super::tray_figure(fact, String::new(), super::Brief::for_paper(&words));
            said(&figure, &fact.tray);
            // Pieces in pairs have no one distance from the next.
            Some(&fact.along).filter(|_| !fact.in_pairs).into_iter().for_each(|it| {
                said(&figure, it);
            });
            trays += 1;
        }
    }
    assert!(rolls >= 6 && shapes >= 6 && trays >= 6, "{rolls} {shapes} {trays}");
}

/// 20 units of a plate are 8 pt in a column of 84 mm, 18 pt on a line of 174 mm, 12 pt in a
/// column of 86 mm, where the plates are 590, 545 and 404 units wide: by arithmetic.
#[test]
fn no_letter_is_smaller_than_its_paper_wants() {
    let millimetres = |units: f64, points: f64| units / 20.0 * points * 25.4 / 72.0;
    assert!(millimetres(590.0, 8.0) < 84.0 && millimetres(545.0, 18.0) < 174.0);
    assert!(millimetres(404.0, 12.0) < 86.0 && millimetres(1180.0, 8.0) < 170.0);
    let words = sample::words();
    let mut seen = 0;
    for figure in course_sheets().iter().flat_map(|sheet| super::figures(sheet, &words)) {
        let paper = figure.paper.as_ref().expect("drawn for paper");
        let forms = [(&paper.column, 590), (&paper.large, 545), (&paper.card, 404)];
        let wide = figure.wide.iter().map(|wide| (wide, 1180));
        for (form, width) in forms.into_iter().chain(wide) {
            let form = form.metric.svg();
            assert!(form.contains(&format!("viewBox=\"0 0 {width} ")));
            for size in form.split("font-size=\"").skip(1) {
                let size: f64 =
                    size.split('"').next().and_then(|it| it.parse().ok()).unwrap_or(0.0);
                assert!(size >= 20.0, "{} has letters of {size}", figure.name);
                seen += 1;
            }
        }
    }
    assert!(seen > 500, "{seen}");
}

#[test]
fn trays_are_drawn_to_scale() {
    for sheet in course_sheets() {
        for fact in sheet.handwork.trays.iter().filter(|fact| fact.piece_cm.is_some()) {
            let figure = super::tray_figure(
                fact,
                String::new(),
                super::Brief::for_paper(&sample::words()),
            );
            let tray = &polygons(&figure.upright.metric.svg(), "d-paper d-tray")[0];
            let scale = (tray[1][0] - tray[0][0]) / fact.length_cm;
            let dough = polygons(&figure.upright.metric.svg(), "d-dough");
            let each = dough.len() / fact.places_cm.len();
            assert!(each > 0 && dough.len() == each * fact.places_cm.len());
            for (piece, [x, y]) in dough.chunks(each).zip(&fact.places_cm) {
                let middle = [0, 1].map(|axis| {
                    let way = || piece.iter().flatten().map(|at| at[axis]);
                    f64::midpoint(
                        way().fold(f64::INFINITY, f64::min),
                        way().fold(f64::NEG_INFINITY, f64::max),
                    )
                });
                assert!((middle[0] - tray[3][0] - x * scale).abs() < 0.3);
                assert!((tray[3][1] - middle[1] - y * scale).abs() < 0.3);
            }
        }
    }
}

#[test]
fn marks_are_printed_as_in_the_sheet() {
    let cut = sample::triangles(54.0, 48.0, 9.0, 2);
    let figure =
        super::cut_figure(&cut, "Cut".into(), super::Brief::for_paper(&sample::words()));
    for (svg, us) in
        [(&figure.upright.metric.svg(), false), (&figure.upright.us.svg(), true)]
    {
        let texts = printed(svg);
        for mark in cut.marks_near.iter().chain(&cut.marks_far).chain(&cut.marks_left) {
            let label = if us { &mark.at.us } else { &mark.at.metric };
            assert!(texts.iter().any(|text| text == number_of(label)), "{label}");
        }
    }
}

#[test]
fn the_written_turn_is_enough_to_fold_by() {
    let fold = sample::fold(4, 600, 250, 1);
    let figure = super::turn_figure(
        &fold,
        fold.title.clone(),
        super::Brief::for_paper(&sample::words()),
    );
    assert_eq!(
        figure.alt.metric,
        "The sheet, 60 by 25 cm: its side of 60 cm lies from left to right. Fold the left and \
         the right end in until they meet in the middle: each fold lies 15 cm from its end. \
         Then close it like a book, the left half over the right: four parts, a block of 15 by \
         25 cm, the spine to your left. Opposite the spine, to your right: two folds. Near and \
         far are the open ends, where the layers show. Fat layers: 1 before, 4 after. Next, \
         give it a quarter turn, so that the open ends lie to your left and right, and roll \
         towards them: the side of 25 cm is stretched.",
    );
    assert!(figure.alt.us.contains("23⅝ by 9⅞ in"));
}

#[test]
fn every_recipe_of_the_course_has_its_figures() {
    let sheets = course_sheets();
    assert!(sheets.len() >= 16, "{}", sheets.len());
    for sheet in &sheets {
        let figures = super::figures(sheet, &sample::words());
        let folds =
            sheet.lamination.as_ref().map_or(0, |lamination| lamination.folds.len());
        assert!(figures.len() > folds + sheet.cuts.len(), "{}", sheet.recipe);
        let mut names: Vec<&str> =
            figures.iter().map(|figure| figure.name.as_str()).collect();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), figures.len(), "{}", sheet.recipe);
    }
}

#[test]
fn no_word_is_missing_and_no_gap_unfilled() {
    for (name, svg) in sample_documents() {
        assert!(!svg.contains("drawing-") && !svg.contains('{'), "{name}");
    }
}

#[test]
fn drawings_are_the_same_every_time_and_carry_no_identifiers() {
    let first = sample_documents();
    assert_eq!(first, sample_documents());
    for (name, svg) in first {
        assert!(!svg.contains(" id=") && !svg.contains("style"), "{name}");
        assert!(svg.starts_with("<svg ") && svg.contains("<title>"), "{name}");
    }
}

#[test]
fn a_technique_s_drawing_has_its_kind_for_a_title() {
    let fold =
        crate::sheet::Fold { title: String::new(), ..sample::fold(3, 600, 200, 1) };
    let demo = crate::sheet::Demo::Fold(Box::new(fold));
    let figure = super::demo(&demo, 2, &sample::words());
    assert_eq!((figure.name.as_str(), figure.title.as_str()), ("turn-2", "Turn"));
    assert!(figure.upright.us.svg().contains("<title>Turn</title>"));
}

#[test]
fn hostile_titles_are_printed_as_typed() {
    let mut fold = sample::fold(3, 600, 200, 1);
    fold.title = "</title><script>x</script>".into();
    let mut time = sample::evening();
    time.steps[0].title = "<b>&\u{0}\"".into();
    let folds = vec![fold.clone(), fold];
    let sheet = sample::sheet(Some(sample::lamination(None, folds)), Vec::new(), time);
    let figures = super::figures(&sheet, &sample::words());
    assert!(
        figures.iter().all(|figure| !figure.upright.metric.svg().contains("<script"))
    );
    assert!(figures[2].upright.us.svg().contains("&lt;b&gt;&amp;&quot;"));
    let names: Vec<&str> = figures.iter().map(|figure| figure.name.as_str()).collect();
    assert_eq!(names, ["turn-3", "turn-3-turn", "timeline"]);
}

#[test]
fn impossible_numbers_end_in_some_drawing() {
    for wrong in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e300] {
        let mut fold = sample::fold(3, 600, 200, u64::MAX);
        (fold.length_cm, fold.folded_width_cm, fold.parts) = (wrong, wrong, 0);
        let mut lock_in =
            sample::lock_in(LockIn::Letter, [480, 260], [300, 240], [160, 260]);
        (lock_in.width_cm, lock_in.block_length_cm) = (wrong, wrong);
        let mut cut = sample::grid(50.0, 30.0, (3, 5), true);
        (cut.sheet_width_cm, cut.lines_cm[0][0][0], cut.polygons_cm[0][0][1]) =
            (wrong, wrong, wrong);
        cut.marks_near[0].at_cm = wrong;
        let time = crate::sheet::Time {
            elapsed_min: u64::MAX,
            ..sample::time(vec![sample::step(
                "A",
                [u64::MAX - 1, 1, 0, u64::MAX],
                "b",
                &[],
            )])
        };
        let lamination = sample::lamination(Some(lock_in), vec![fold]);
        let sheet = sample::sheet(Some(lamination), vec![cut], time);
        let figures = super::figures(&sheet, &sample::words());
        assert_eq!(figures.len(), 4);
        let bad = |svg: &str| svg.contains("NaN") || svg.contains("inf");
        assert!(figures.iter().all(|figure| !bad(&figure.upright.metric.svg())));
    }
}

mod room {
    //! No label lies over another or leaves the plate, whatever the numbers.

    use proptest::prelude::*;

    use crate::draw::layers::{lock_in, turn};
    use crate::draw::pieces::cut;
    use crate::draw::system::plate::{Format, Plate};
    use crate::draw::times::timeline;
    use crate::draw::{both, sample};
    use crate::words::Words;

    fn clear(plate: &Plate) -> Result<(), TestCaseError> {
        for (index, label) in plate.labels.iter().enumerate() {
            let inside = label.left >= -0.5
                && label.top >= -0.5
                && label.right <= plate.width + 0.5
                && label.bottom <= plate.height + 0.5;
            prop_assert!(inside, "outside {} × {}: {label:?}", plate.width, plate.height);
            for other in &plate.labels[..index] {
                prop_assert!(!label.overlaps(other), "{label:?} over {other:?}");
            }
        }
        Ok(())
    }

    fn all_clear(plates: [Plate; 2]) -> Result<(), TestCaseError> {
        plates.iter().try_for_each(clear)
    }

    fn words() -> Words {
        sample::words()
    }

    /// The forms that folds are shown in: a bench card has its fold bars instead.
    const UPRIGHT: [Format; 3] = [Format::Page, Format::Column, Format::Large];

    proptest! {
        #![proptest_config(ProptestConfig {
            cases: 96,
            failure_persistence: None,
            ..ProptestConfig::default()
        })]

        #[test]
        fn in_turns(parts in 2_u32..=12, length in 250_i64..1200, share in 20_i64..100, fat in 1_u64..20_000) {
            let fold = sample::fold(parts, length, length * share / 100, fat);
            for form in UPRIGHT {
                all_clear(both(&words(), |voice| turn::turn(&fold, form, voice)))?;
            }
        }

        #[test]
        fn in_lock_ins(length in 150_i64..700, share in 40_i64..100, kind in 0_usize..3) {
            let width = if kind == 0 { length } else { length * share / 100 };
            let fact = match kind {
                0 => sample::lock_in(crate::sheet::LockIn::Envelope, [length; 2], [length * 7 / 10 - 5; 2], [length * 7 / 10; 2]),
                1 => sample::lock_in(crate::sheet::LockIn::Letter, [length, width], [length * 2 / 3 - 10, width - 10], [length / 3, width]),
                _ => sample::lock_in(crate::sheet::LockIn::Book, [length, width], [length / 2 - 10, width - 10], [length / 2, width]),
            };
            for form in UPRIGHT {
                all_clear(both(&words(), |voice| lock_in::lock_in(&fact, form, voice)))?;
            }
        }

        #[test]
        fn in_grids(length in 20.0_f64..90.0, share in 0.25_f64..1.0, strips in 1_u32..9, across in 1_u32..30, diagonal: bool) {
            let plan = sample::grid(length, length * share, (strips, across), diagonal);
            for form in Format::ALL {
                all_clear(both(&words(), |voice| cut::cut(&plan, form, voice)))?;
            }
        }

        #[test]
        fn in_triangles(length in 30.0_f64..90.0, share in 0.25_f64..1.0, base in 3.0_f64..14.0, strips in 1_u32..4) {
            let plan = sample::triangles(length, length * share, base, strips);
            for form in Format::ALL {
                all_clear(both(&words(), |voice| cut::cut(&plan, form, voice)))?;
            }
        }

        #[test]
        fn in_timelines(steps in prop::collection::vec((0_u64..30, 0_u64..900, 0_u64..2000, 1_usize..60), 1..25)) {
            let mut start = 0;
            let mut all = Vec::new();
            for (index, (hands, wait, hold, letters)) in steps.into_iter().enumerate() {
                let title = format!("{index} {}", "Fold and chill it well ".repeat(3).chars().take(letters).collect::<String>());
                let recipe = if index % 7 < 4 { "dough" } else { "crescents" };
                all.push(sample::step(&title, [start, hands, wait, hold], recipe, &[]));
                start += if index % 3 == 0 { hands } else { hands + wait };
            }
            let time = sample::time(all);
            for (width, ready) in [(640.0, None), (640.0, Some(545)), (1180.0, None), (590.0, None), (545.0, None)] {
                all_clear(both(&words(), |voice| timeline::timeline(&time, ("crescents", width, ready), voice)))?;
            }
        }
    }
}
