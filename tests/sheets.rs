//! Random schedules of turns and cuts at ten scales: what hands need to stay true of the
//! sheets stays true of the facts. Held by geometry alone; the trade's rules behind it (a
//! quarter turn after a fold, sheets of one thickness and one proportion) are common practice,
//! no source.

use proptest::prelude::*;
use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::read::{Source, words_in};
use tourier::sheet::{Lamination, Sheet};
use tourier::theme::Theme;

/// The bench, cm.
const BENCH: [f64; 2] = [120.0, 70.0];

/// Half, 0.64, three quarters, as written, one and a half … five batches.
const SCALES: [(i64, i64); 10] =
    [(1, 2), (16, 25), (3, 4), (1, 1), (3, 2), (2, 1), (5, 2), (3, 1), (4, 1), (5, 1)];

/// A schedule: the turns with their sheets in half centimetres, and a last sheet with its cut.
#[derive(Clone, Debug)]
struct Schedule {
    turns: Vec<(u32, u32, u32)>,
    cut: (String, u32, u32),
}

fn schedule() -> impl Strategy<Value = Schedule> {
    let turn = (2_u32..=5, 60_u32..150, 30_u32..80);
    let cut = (0_u32..4, 70_u32..120, 50_u32..70, 1_u32..4, 1_u32..6);
    (prop::collection::vec(turn, 1..5), cut).prop_map(|(turns, cut)| {
        let (kind, length, width, strips, across) = cut;
        let plan = match kind {
            0 => format!("grid, {strips} strips, {across} across, each on the diagonal"),
            1 => format!("squares {} cm", 5 + across),
            2 => "triangles, base 9 cm, height 22 cm".to_owned(),
            _ => format!("rectangles {} x {} cm", 6 + across, 5 + strips),
        };
        Schedule { turns, cut: (plan, length, width) }
    })
}

fn half(halves: u32) -> f64 {
    f64::from(halves) / 2.0
}

impl Schedule {
    fn edition(&self) -> Edition {
        let mut text = String::from(
            "---\ntitle: t\nsummary: s\nmakes: 100 pieces\nloss: 0 %\nformula:\n  dough:\n    - 1 kg bread flour\n    - 560 g water\n    - 14 g instant yeast\n  roll-in:\n    - 450 g butter, cold\n---\n## Mix\n~~~ticket\nuses: dough\n~~~\n## Block\n~~~ticket\nuses: roll-in\nsheet: 22 x 22 cm\n~~~\n## Lock in\n~~~ticket\nlock-in: envelope\nsheet: 34 x 34 cm\n~~~\n",
        );
        for (index, (parts, length, width)) in self.turns.iter().enumerate() {
            let (length, width) = (half(*length), half(*width));
            text.push_str(&format!(
                "## Turn {index}\n~~~ticket\nsheet: {length} x {width} cm\nturn: {parts}\n~~~\n"
            ));
        }
        let (plan, length, width) = &self.cut;
        let (length, width) = (half(*length), half(*width));
        text.push_str(&format!(
            "## Roll out\n~~~ticket\nsheet: {length} x {width} cm\n~~~\n## Cut\n~~~ticket\nsheet: {length} x {width} cm\ncut: {plan}\n~~~\n"
        ));
        let course = format!("title: c\nkit:\n  bench: {} x {} cm\n", BENCH[0], BENCH[1]);
        let files = [
            Source { path: "course.yaml".into(), text: course },
            Source { path: "recipes/t.md".into(), text },
        ];
        Edition::new(&files, Vec::new(), Vec::new())
    }
}

fn at(edition: &Edition, (over, under): (i64, i64)) -> Sheet {
    // 100 pieces are written, so that every scale asks for whole ones.
    let pieces = (100 * over / under) as u64;
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let recipe = edition.content.recipe("t").expect("the recipe is read");
    let sheet = edition.sheet(recipe, &Scaling::Pieces(pieces), &words);
    sheet.expect("pieces always scale")
}

fn near(one: f64, other: f64, by: f64) -> bool {
    (one - other).abs() <= by
}

/// A way as the facts say it.
fn way(direction: impl serde::Serialize) -> String {
    serde_json::to_value(direction)
        .ok()
        .and_then(|it| it.as_str().map(str::to_owned))
        .unwrap_or_default()
}

/// What must be true at one scale, beside the sheets as written.
fn holds(
    written: &Sheet,
    sheet: &Sheet,
    schedule: &Schedule,
) -> Result<(), TestCaseError> {
    let (first, made) = match (&written.lamination, &sheet.lamination) {
        (Some(first), Some(made)) => (first, made),
        _ => return Err(TestCaseError::fail("no lamination")),
    };
    let each = sheet.scale.factor / sheet.scale.doughs as f64;
    in_order(made, schedule)?;
    let volume = |length: f64, width: f64, mm: f64| length * width * mm / 10.0;
    let whole =
        made.folds.iter().map(|it| volume(it.length_cm, it.width_cm, it.thickness_mm));
    let whole: Vec<f64> = whole.collect();
    for (index, fold) in made.folds.iter().enumerate() {
        // The block is L/n by W, and the next sheet is rolled along its side W.
        prop_assert!(near(
            fold.folded_length_cm * f64::from(fold.parts),
            fold.length_cm,
            1e-3
        ));
        prop_assert!(near(fold.folded_width_cm, fold.width_cm, 1e-9));
        let next = made.sheets[index + 2].block_cm.unwrap_or_default();
        prop_assert_eq!(next, [fold.folded_width_cm, fold.folded_length_cm]);
        let block =
            volume(fold.folded_length_cm, fold.folded_width_cm, fold.folded_thickness_mm);
        for other in whole.iter().chain([&block]) {
            prop_assert!(
                near(*other, whole[0], whole[0] * 2e-3),
                "{} {}",
                other,
                whole[0]
            );
        }
        // Both sides with the root of the dough, to the nearest half centimetre.
        let before = &first.folds[index];
        for (from, to) in
            [(before.length_cm, fold.length_cm), (before.width_cm, fold.width_cm)]
        {
            prop_assert!(
                near(to, from * each.sqrt(), 0.256),
                "{} from {} at {}",
                to,
                from,
                each
            );
            prop_assert!(
                near((to * 2.0).round(), to * 2.0, 1e-6),
                "{} is on no ruler",
                to
            );
        }
        // As thick as written, but for the rounding of both sides.
        let step = 0.25 / fold.length_cm + 0.25 / fold.width_cm;
        prop_assert!(near(
            fold.thickness_mm / before.thickness_mm,
            1.0,
            1.2 * step + 1e-3
        ));
    }
    on_the_bench(first, made, each)
}

/// Every way from the order of the steps alone.
fn in_order(made: &Lamination, schedule: &Schedule) -> Result<(), TestCaseError> {
    // The order alone says the way: first any, then a quarter turn after each fold.
    let ways: Vec<String> = made.sheets.iter().map(|it| way(it.way)).collect();
    let mut expected = vec!["any".to_owned(), "any".to_owned()];
    expected.extend(schedule.turns.iter().map(|_| "quarter_turn".to_owned()));
    expected.push("onward".to_owned());
    prop_assert_eq!(ways, expected);
    Ok(())
}

/// No sheet is larger than the bench, and the fat still fits its sheet.
fn on_the_bench(
    first: &Lamination,
    made: &Lamination,
    each: f64,
) -> Result<(), TestCaseError> {
    for rolled in &made.sheets {
        let sides = [
            rolled.length_cm.max(rolled.width_cm),
            rolled.length_cm.min(rolled.width_cm),
        ];
        prop_assert!(
            sides[0] <= BENCH[0] && sides[1] <= BENCH[1],
            "{:?} at {}",
            sides,
            each
        );
    }
    // The fat still fits, and its block is never thinner than half or thicker than twice.
    let (fat, before) = (made.lock_in.as_ref(), first.lock_in.as_ref());
    if let (Some(fat), Some(before)) = (fat, before) {
        prop_assert!(
            fat.block_length_cm * std::f64::consts::SQRT_2 <= fat.length_cm + 1e-9
        );
        prop_assert!(near(fat.block_thickness_mm / before.block_thickness_mm, 1.0, 0.1));
    }
    Ok(())
}

/// The last sheet: whole pieces of the size, thickness and weight as written, at least as
/// many as asked for, and never a whole row too many.
fn whole_pieces(written: &Sheet, sheet: &Sheet, asked: f64) -> Result<(), TestCaseError> {
    let (Some(first), Some(cut)) = (written.cuts.first(), sheet.cuts.first()) else {
        return Ok(());
    };
    let near = |one: f64, other: f64| (one / other - 1.0).abs() < 2e-3;
    let mut sizes = [[first.base_cm, first.height_cm], [cut.base_cm, cut.height_cm]];
    sizes.iter_mut().for_each(|sides| sides.sort_by(f64::total_cmp));
    prop_assert_eq!(sizes[0], sizes[1]);
    prop_assert!(near(cut.piece_g, first.piece_g), "{} {}", cut.piece_g, first.piece_g);
    let wanted = asked * first.pieces as f64;
    prop_assert!(cut.pieces as f64 >= wanted - 1e-9, "{} for {}", cut.pieces, wanted);
    let thickness = |sheet: &Sheet| {
        let made = sheet.lamination.as_ref()?;
        made.sheets.last().map(|last| last.thickness_mm)
    };
    let (was, is) = (thickness(written).unwrap_or(1.0), thickness(sheet).unwrap_or(0.0));
    prop_assert!(near(is, was), "{} {}", is, was);
    let rolled = sheet.lamination.as_ref().map(|made| &made.sheets);
    if let Some([.., out, last]) = rolled.map(Vec::as_slice) {
        prop_assert_eq!((out.length_cm, out.width_cm), (last.length_cm, last.width_cm));
    }
    Ok(())
}

/// Of a smaller batch a baker shortens the side that leaves more pieces: 0.64 of 57 × 25 cm is
/// 36.5 × 25 with six triangles of 10 × 24, not 57 × 16 with four. Counted by hand.
#[test]
fn a_smaller_batch_is_rolled_for_its_pieces() {
    let text = "---\ntitle: t\nsummary: s\nmakes: 10 pieces\nloss: 0 %\nformula:\n  dough:\n    - 400 g bread flour\n    - 230 g water\n    - 6 g instant yeast\n---\n## Mix\n~~~ticket\nuses: dough\n~~~\n## Cut\n~~~ticket\nsheet: 57 x 25 cm\ncut: triangles, base 10 cm, height 24 cm\n~~~\n";
    let files = [
        Source { path: "course.yaml".into(), text: "title: c\n".into() },
        Source { path: "recipes/t.md".into(), text: text.into() },
    ];
    let edition = Edition::new(&files, Vec::new(), Vec::new());
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let recipe = edition.content.recipe("t").expect("the recipe is read");
    let at = |over, under| {
        let scaling = Scaling::Batches(tourier::measure::exact(over, under));
        edition.sheet(recipe, &scaling, &words).expect("batches always scale")
    };
    let cut = |sheet: &Sheet| {
        let cut = &sheet.cuts[0];
        let mut sides = [cut.sheet_length_cm, cut.sheet_width_cm];
        sides.sort_by(f64::total_cmp);
        (cut.pieces, sides)
    };
    assert_eq!(cut(&at(16, 25)), (6, [25.0, 36.5]));
    let half = at(1, 2);
    assert_eq!(cut(&half), (4, [25.0, 28.5]));
    // Its share would be five, and that is said.
    let said = half.notes.iter().find(|note| note.name == "fewer-pieces");
    let said = said.map(|note| note.text.metric.as_str()).unwrap_or_default();
    assert!(said.contains("gives 4") && said.contains("would be 5"), "{said}");
    // A tenth of it is too small for one.
    let names: Vec<_> = at(1, 10).notes.into_iter().map(|note| note.name).collect();
    assert!(names.iter().any(|name| name == "too-small-to-cut"), "{names:?}");
}

/// A dough divided in two, each part with its own sheet and cut.
fn divided(parts: [(u32, u32, u32); 2]) -> Edition {
    let mut text = String::from(
        "---\ntitle: t\nsummary: s\nmakes: 24 pieces\nloss: 0 %\nformula:\n  dough:\n    - 1 kg bread flour\n    - 560 g water\n    - 14 g instant yeast\n---\n## Mix\n~~~ticket\nuses: dough\n~~~\n## Divide\n~~~ticket\ndivide: half for moons, the rest for suns\n~~~\n",
    );
    for (name, (length, width, side)) in ["moons", "suns"].iter().zip(parts) {
        let (length, width) = (half(length), half(width));
        text.push_str(&format!(
            "## Cut {name}\n~~~ticket\npart: {name}\nsheet: {length} x {width} cm\ncut: squares {side} cm\n~~~\n"
        ));
    }
    let course = format!("title: c\nkit:\n  bench: {} x {} cm\n", BENCH[0], BENCH[1]);
    let files = [
        Source { path: "course.yaml".into(), text: course },
        Source { path: "recipes/t.md".into(), text },
    ];
    Edition::new(&files, Vec::new(), Vec::new())
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 24,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn sheets_at_ten_scales(schedule in schedule()) {
        let edition = schedule.edition();
        let written = at(&edition, (1, 1));
        prop_assume!(!written.cuts.is_empty());
        for (over, under) in SCALES {
            let sheet = at(&edition, (over, under));
            holds(&written, &sheet, &schedule)?;
            whole_pieces(&written, &sheet, over as f64 / under as f64)?;
        }
    }

    /// However many are asked for, there is one number of them: what all parts are cut into.
    #[test]
    fn parts_add_up(
        one in (60_u32..120, 40_u32..80, 6_u32..12),
        other in (60_u32..120, 40_u32..80, 6_u32..12),
        asked in 5_u64..90,
    ) {
        let edition = divided([one, other]);
        let words = words_in(&Theme::built_in(), "en").expect("the words read");
        let recipe = edition.content.recipe("t").expect("the recipe is read");
        let at = |scaling: Scaling| edition.sheet(recipe, &scaling, &words).expect("scales");
        let pieces = |sheet: &Sheet| sheet.cuts.iter().map(|cut| cut.pieces).sum::<u64>();
        let written = pieces(&at(Scaling::Pieces(24)));
        let sheet = at(Scaling::Pieces(asked));
        prop_assert_eq!(sheet.scale.pieces, Some(if asked == 24 { 24 } else { pieces(&sheet) }));
        // As many times as many as were asked for, of what the sheets as written give.
        prop_assert!(pieces(&sheet) * 24 >= asked * written);
        for rolled in sheet.lamination.iter().flat_map(|made| &made.sheets) {
            prop_assert!(rolled.length_cm.max(rolled.width_cm) <= BENCH[0]);
        }
    }
}
