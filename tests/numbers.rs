//! Whole recipes at their scales: what a teacher asks of the numbers, from text to sheet.

use tourier::dough::Direction;
use tourier::edition::Edition;
use tourier::formula::Scaling;
use tourier::measure::{Length, exact};
use tourier::model::Tin;
use tourier::read::{Source, words_in};
use tourier::sheet::Sheet;
use tourier::theme::Theme;

const COURSE: &str = "title: c\nsummary: s\nfine scale: yes\nkit: {mixer: 2 kg, bench: 120 x 60 cm, trays per oven: 2}\n";

fn edition(course: &str, head: &str, body: &str) -> Edition {
    let source = |path: &str, text: String| Source { path: path.into(), text };
    let recipe = format!("---\ntitle: T\nsummary: s\n{head}---\n{body}");
    let files = [
        source("course.yaml", format!("{COURSE}{course}")),
        source("recipes/t.md", recipe),
    ];
    Edition::new(&files, Vec::new(), Vec::new())
}

/// The sheet of a recipe; a fault that stops publishing fails the test.
fn sheet(course: &str, head: &str, body: &str, scaling: &Scaling) -> Sheet {
    let edition = edition(course, head, body);
    assert!(!edition.stops(), "{:?}", edition.faults);
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let recipe = edition.content.recipe("t").expect("the recipe is read");
    edition.sheet(recipe, scaling, &words).expect("it can be scaled")
}

fn once() -> Scaling {
    Scaling::Batches(exact(1, 1))
}

fn note<'a>(sheet: &'a Sheet, name: &str) -> Option<&'a str> {
    let found = sheet.notes.iter().find(|note| note.name == name)?;
    Some(&found.text.metric)
}

fn ticket<'a>(sheet: &'a Sheet, key: &str) -> Vec<&'a str> {
    let steps = sheet.parts.iter().filter_map(|part| match part {
        tourier::sheet::Part::Step(step) => Some(step),
        tourier::sheet::Part::Prose { .. } => None,
    });
    let rows = steps.flat_map(|step| &step.ticket).filter(|row| row.key.word() == key);
    rows.map(|row| row.value.metric.as_str()).collect()
}

const BUNS: &str = "makes: 12 buns\nformula:\n  dough:\n    - 600 g bread flour\n    - 360 g water\n    - 3 eggs\n    - 10 g fine salt\n    - 6 g instant yeast\n  wash:\n    - 1 egg\n";

const MIX_AND_BAKE: &str = "## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nhands: 10 min\n~~~\n## Bake\n~~~ticket\nuses: wash\nbake: fan 180 °C, 15 min\nper tray: 8\n~~~\n";

/// A mixer of 2 kg and 1126 g of dough: two batches are two doughs of 1126 g each, with the
/// formula for one; the wash is not divided. By arithmetic.
#[test]
fn several_equal_doughs_have_the_formula_for_one() {
    let two = sheet("", BUNS, MIX_AND_BAKE, &Scaling::Batches(exact(2, 1)));
    assert_eq!(two.scale.doughs, 2);
    let each: Vec<Option<f64>> = two
        .formula
        .iter()
        .map(|line| line.each_dough.as_ref().map(|each| each.grams))
        .collect();
    let dough = [600.0, 360.0, 150.0, 10.0, 6.0].map(Some);
    assert_eq!(each, [dough.as_slice(), &[None]].concat());
    let label = two.totals.each_dough.as_ref().map(|each| each.metric.as_str());
    assert_eq!(label, Some("1125 g"));
    let one = sheet("", BUNS, MIX_AND_BAKE, &once());
    assert!(one.formula.iter().all(|line| line.each_dough.is_none()));
}

/// 24 buns, 8 on a tray, 2 trays in the oven: 3 trays in 2 loads, so the bake lasts twice
/// as long. An oven of 180 °C with its fan is 200 °C without: New South Wales Government
/// conversion chart.
#[test]
fn trays_loads_and_both_ovens() {
    let two = sheet("", BUNS, MIX_AND_BAKE, &Scaling::Pieces(24));
    let bake = &two.bakes[0];
    assert_eq!((bake.trays, bake.loads, bake.per_tray), (3, 2, Some(8)));
    assert_eq!((bake.oven_c, bake.fan_c), (200.0, 180.0));
    assert_eq!(ticket(&two, "trays"), ["3, in 2 oven loads"]);
    assert_eq!(ticket(&two, "fan"), ["180 °C"]);
    let baking = two.time.steps.iter().find(|step| step.bake).map(|step| step.wait_min);
    assert_eq!(baking, Some([30, 30, 30]));
}

/// Half of 3 eggs of 50 g (USDA SR28 NDB 01123) are one egg and 25 g.
#[test]
fn a_part_of_an_egg_is_beaten_egg() {
    let half = sheet("", BUNS, MIX_AND_BAKE, &Scaling::Batches(exact(1, 2)));
    let counts: Vec<&str> =
        half.formula.iter().filter_map(|line| line.count.as_deref()).collect();
    assert_eq!(counts, ["1 and 25 g of beaten egg", "25 g of beaten egg"]);
}

/// EU medium eggs are 51 g without the shell, US large ones 50 g: see the pantry.
#[test]
fn eggs_have_the_sizes_of_the_course() {
    let grams =
        |course: &str| sheet(course, BUNS, MIX_AND_BAKE, &once()).formula[2].grams;
    assert_eq!(grams(""), Some(150.0));
    assert_eq!(grams("eggs: eu\n"), Some(153.0));
}

/// Plain: 360 / 600 = 60 %. True: (360 × 0.999 + 150 × 0.7615) / 600 = 78.98 %; USDA SR28
/// NDB 14411, 01123.
#[test]
fn hydration_is_plain_unless_asked_for() {
    let of = |course: &str, more: &str| {
        let head = format!("{BUNS}{more}");
        let totals = sheet(course, &head, MIX_AND_BAKE, &once()).totals;
        (totals.hydration_percent, totals.true_hydration)
    };
    assert_eq!(of("", ""), (Some(60.0), false));
    assert_eq!(of("", "true hydration: yes\n"), (Some(78.98), true));
    assert_eq!(of("true hydration: yes\n", ""), (Some(78.98), true));
    assert_eq!(of("true hydration: yes\n", "true hydration: no\n"), (Some(60.0), false));
}

/// Instant for fresh and active dry, 33 : 100 : 40 by weight: from memory.
#[test]
fn one_yeast_for_another() {
    let sheet = sheet("", BUNS, MIX_AND_BAKE, &once());
    let said = note(&sheet, "yeast").unwrap_or_default();
    assert_eq!(
        said,
        "In place of 6 g of instant yeast: 18 g of fresh yeast, or 7.3 g of active dry yeast."
    );
}

const TART: &str = "makes: 1 tart\ntin: 24 cm round\nformula:\n  custard:\n    - 400 g whole milk\n    - 4 egg yolks\n    - 80 g sugar\n";

const CUSTARD: &str = "## Fill\n~~~ticket\nuses: custard\nbake: 140 °C, 40 min\ncore: 76 °C\n~~~\n## Cool\n~~~ticket\nwait: 5 h\nwhere: fridge\ncool: custard\n~~~\n";

/// 203 °F at 5,000 ft: Colorado State University Extension, *High Altitude Food
/// Preparation*, Table 1.
#[test]
fn a_high_classroom_is_told_where_water_boils() {
    let at = |course: &str, head: &str, body: &str| {
        let sheet = sheet(course, head, body, &once());
        sheet.notes.iter().find(|note| note.name == "boiling").map(|n| n.text.clone())
    };
    let high = at("altitude: 5000 ft\n", TART, CUSTARD).expect("a remark");
    assert!(high.us.starts_with("At 5000 ft water boils at 203 °F. Take 9 °F off"));
    assert!(high.metric.starts_with("At 1520 m water boils at 95 °C. Take 5 °C off"));
    assert_eq!(at("", TART, CUSTARD), None);
    assert_eq!(at("altitude: 100 m\n", TART, CUSTARD), None);
    assert_eq!(at("altitude: 5000 ft\n", BUNS, MIX_AND_BAKE), None);
}

/// Rings and rounds by volume; where a depth is missing, that is said. A ring of 10 in with
/// a hole of 6 in has the base of a round of 8 in: by arithmetic.
#[test]
fn tins_by_volume_and_without_a_depth() {
    let inches = |n| Length::inches(&exact(n, 1));
    let cm = |n| Length::centimetres(exact(n, 1));
    let head = |tin: &str| TART.replace("24 cm round", tin);
    let ring = Scaling::Tin(Tin::Ring(inches(10), inches(6), Some(inches(4))));
    let deep = sheet("", &head("8 x 2 in round"), CUSTARD, &ring);
    assert_eq!(deep.scale.factor, 2.0);
    assert_eq!(note(&deep, "tin-depth"), None);
    let round = Scaling::Tin(Tin::Round(cm(12), Some(cm(4))));
    let flat = sheet("", TART, CUSTARD, &round);
    assert_eq!(flat.scale.factor, 0.25);
    assert!(note(&flat, "tin-depth").is_some_and(|said| said.contains("equally deep")));
    let loaf = Scaling::Tin(Tin::Square(cm(20), cm(10), Some(cm(6))));
    let bigger = sheet("", &head("20 x 10 x 5 cm loaf"), CUSTARD, &loaf);
    assert_eq!(bigger.scale.factor, 1.2);
}

/// 12 % bake loss: 100 g baked came from 100 / 0.88 g. 1 g of salt is 387.58 mg of sodium
/// (USDA SR28 NDB 02047), × 2.5 = 0.97 g; the rest is the EU's factor. Rounded by 21 CFR
/// 101.9(c).
#[test]
fn nutrients_per_piece_and_as_baked() {
    let head = "makes: 10 rolls\nloss: 2 %\nbake loss: 12 %\nformula:\n  dough:\n    - 880 g all-purpose flour\n    - 20 g fine salt\n    - 100 g water\n";
    let body = "## Mix\n~~~ticket\nuses: dough\n~~~\n## Bake\n~~~ticket\nbake: 200 °C, 15 min\n~~~\n";
    let sheet = sheet("", head, body, &once());
    let all = sheet.nutrition.expect("all nutrients are known");
    // 880 g × 364 kcal / 100 / 880 g baked × 100 g.
    assert_eq!(all.per_100_g.energy_kcal, 364.0);
    assert_eq!(all.bake_loss_percent, Some(12.0));
    let piece = all.per_piece.expect("it is made in pieces");
    // 3203.2 kcal × 0.98 / 10.
    assert_eq!(piece.energy_kcal, 313.91);
    // (880 × 2 + 20 × 38,758 + 100 × 4) mg / 100 × 0.98 / 10; × 2.5 / 1000.
    assert_eq!((piece.sodium_mg, piece.salt_g), (761.77, 1.9));
    let words = all.per_piece_rounded.expect("words");
    assert_eq!([words.energy, words.sodium, words.fat], ["310 kcal", "760 mg", "1 g"]);
}

/// Fat outside: 250 g butter with 50 g flour around a dough. Three letter turns make 27
/// layers of dough and 28 of fat, 55 in all, 81 with every ply counted: by arithmetic.
#[test]
fn fat_outside() {
    let head = "makes: 1000 g\nformula:\n  dough:\n    - 400 g bread flour\n    - 220 g water\n    - 8 g fine salt\n  roll-in:\n    - 320 g butter\n    - 60 g bread flour\n";
    let body = "## Mix\n~~~ticket\nuses: dough\n~~~\n## Shape the dough\n~~~ticket\nsheet: 20 x 20 cm\n~~~\n## Shape the fat\n~~~ticket\nafter: mix\nuses: roll-in\nsheet: 36 x 22 cm\n~~~\n## Lock in\n~~~ticket\nafter: [shape-the-dough, shape-the-fat]\nlock-in: inverted book\nsheet: 42 x 22 cm\n~~~\n## One\n~~~ticket\nsheet: 60 x 21 cm\nturn: letter\n~~~\n## Two\n~~~ticket\nsheet: 60 x 21 cm\nturn: letter\n~~~\n## Three\n~~~ticket\nsheet: 60 x 21 cm\nturn: letter\n~~~\n";
    let sheet = sheet("", head, body, &once());
    assert_eq!(ticket(&sheet, "lock-in"), ["book, the fat outside"]);
    let it = sheet.lamination.expect("it is layered");
    assert!(it.inverted);
    let counts = (it.fat_layers, it.layers_merged, it.layers_unmerged);
    assert_eq!(counts, (Some(28), Some(55), 81));
    let lock_in = it.lock_in.expect("a lock-in");
    assert!(lock_in.inverted);
    assert_eq!((lock_in.length_cm, lock_in.block_length_cm), (42.0, 20.0));
    // 628 g of dough at 1.1 g/ml on 20 × 20 cm: 14.273 mm.
    assert_eq!(lock_in.block_thickness_mm, 14.273);
    let before: Vec<u64> = it.folds.iter().map(|fold| fold.fat_layers_before).collect();
    assert_eq!(before, [2, 4, 10]);
}

/// Rough puff: the fat in pieces in the dough, three letter turns. 27 plies, by arithmetic, and
/// no layers of fat; every turn is drawn and said with its sizes and directions, and a dough that
/// goes into another recipe is turned on.
#[test]
fn a_dough_is_turned_with_its_fat_mixed_in() {
    use tourier::draw::{FigureKind, figures};

    let head = "makes: 850 g\nformula:\n  dough:\n    - 400 g all-purpose flour\n    - 280 g butter, cold, in pieces\n    - 170 g water\n";
    let turn = "~~~ticket\nsheet: 45 x 15 cm\nturn: letter\n~~~\n";
    let body = format!(
        "## Mix\n~~~ticket\nuses: dough\n~~~\n## One\n{turn}## Two\n{turn}## Three\n{turn}"
    );
    let sheet = sheet("", head, &body, &once());
    assert_eq!(ticket(&sheet, "plies"), ["1 → 3", "3 → 9", "9 → 27"]);
    assert!(ticket(&sheet, "layers").is_empty());
    // A block 36 mm thick is no dough to be cut: 12 mm is usual between turns.
    assert!(!sheet.faults.contains(&"sheet-too-thick".to_owned()), "{:?}", sheet.faults);
    let it = sheet.lamination.as_ref().expect("it is turned");
    assert_eq!((it.fat_layers, it.layers_merged, it.layers_unmerged), (None, None, 27));
    assert!(it.lock_in.is_none() && it.fat_percent_of_dough.is_none());
    assert!(it.folds.iter().all(|fold| fold.next == Direction::QuarterTurn));
    assert_eq!(it.sheets[1].block_cm, Some([15.0, 15.0]));
    let words = words_in(&Theme::built_in(), "en").expect("the words read");
    let drawn = figures(&sheet, &words);
    let turns: Vec<_> = drawn.iter().filter(|it| it.kind == FigureKind::Turn).collect();
    assert_eq!(turns.len(), 3);
    for turn in turns {
        assert!(turn.alt.metric.contains("Layers of dough:"), "{}", turn.alt.metric);
        assert!(
            !turn.upright.metric.svg().contains("d-fat"),
            "no fat is drawn as a block"
        );
    }
}

/// A round of 32 cm from a sheet of 33 × 33 cm: at half a batch there is no dough for it, and
/// what is said of it says so; what the sheet can be, and a round that there is dough for, are
/// said as they are. By arithmetic.
#[test]
fn a_cut_that_cannot_be_had_is_said_to_be_of_a_whole_batch() {
    let head = format!("makes: 1 tart\n{PASTRY}");
    let body = "## Cut\n~~~ticket\nuses: dough\nsheet: 33 x 33 cm\ncut: rounds 32 cm\n~~~\nRoll to {33 x 33 cm}, {3 mm} thick, and cut a round of {32 cm}.\n";
    let said = |batches| {
        let sheet = sheet("", &head, body, &Scaling::Batches(batches));
        serde_json::to_string(&sheet.parts).expect("JSON")
    };
    let (whole, half) = (said(exact(1, 1)), said(exact(1, 2)));
    assert!(whole.contains("\"32 cm\"") && !whole.contains("whole batch"), "{whole}");
    assert!(half.contains("\"32 cm (with a whole batch)\""), "{half}");
    assert!(half.contains("12⅝ in (with a whole batch)"), "{half}");
    assert!(half.contains("\"3 mm\""), "{half}");
    assert_eq!(half.matches("whole batch").count(), 2, "{half}");
}

const PASTRY: &str = "formula:\n  dough:\n    - 500 g all-purpose flour\n    - 250 g butter\n    - 100 g water\n";

fn cut(makes: &str, sheet_size: &str, cut: &str) -> Sheet {
    let body =
        format!("## Cut\n~~~ticket\nuses: dough\nsheet: {sheet_size}\ncut: {cut}\n~~~\n");
    sheet("", &format!("makes: {makes}\n{PASTRY}"), &body, &once())
}

/// Rounds of 10 cm from 30 × 21 cm: six, and one more from the scrap. Strips of 3 cm from
/// 30 × 21 cm: seven. Triangles from 54 × 48 cm: 22 and 4 halves. By arithmetic.
#[test]
fn rounds_strips_and_half_triangles() {
    let rounds = cut("7 rounds", "30 x 21 cm", "rounds 10 cm");
    let plan = &rounds.cuts[0];
    assert_eq!((plan.pieces, plan.reroll_pieces), (6, 1));
    assert!(note(&rounds, "reroll").is_some_and(|said| said.contains("one more")));
    assert!(!rounds.faults.contains(&"cut-count".to_owned()));
    let strips = cut("7 strips", "30 x 21 cm", "strips 3 cm");
    assert_eq!((strips.cuts[0].shape.word(), strips.cuts[0].pieces), ("strip", 7));
    let marks: Vec<&str> =
        strips.cuts[0].marks_left.iter().map(|mark| mark.at.metric.as_str()).collect();
    assert_eq!(marks, ["3 cm", "6 cm", "9 cm", "12 cm", "15 cm", "18 cm"]);
    let triangles =
        cut("22 triangles", "54 x 48 cm", "triangles, base 9 cm, height 24 cm");
    let plan = &triangles.cuts[0];
    assert_eq!((plan.pieces, plan.halves_cm.len()), (22, 4));
    assert!(note(&triangles, "half-pieces").is_some_and(|said| said.contains("make 2")));
    let one = cut("1 round", "11 x 11 cm", "rounds 10 cm");
    assert_eq!(ticket(&one, "cut"), ["1 round, 10 cm"]);
}

/// A sheet written in inches keeps its marks where a ruler has them: 10 in are 25.4 cm, and
/// strips of 4 in lie at 10.2 and 20.3 cm.
#[test]
fn marks_of_a_sheet_in_inches() {
    let grid = cut(
        "12 triangles",
        "20 x 12 in",
        "grid, 3 strips, 2 across, each on the diagonal",
    );
    let plan = &grid.cuts[0];
    let words = |marks: &[tourier::sheet::Mark]| -> Vec<String> {
        marks.iter().map(|m| format!("{} / {}", m.at.metric, m.at.us)).collect()
    };
    assert_eq!(words(&plan.marks_near), ["25.4 cm / 10 in"]);
    assert_eq!(words(&plan.marks_left), ["10.2 cm / 4 in", "20.3 cm / 8 in"]);
}

/// A layered dough whose steps after the last turn are `end`.
fn layered(makes: &str, end: &str) -> Sheet {
    let head = format!(
        "makes: {makes}\nformula:\n  dough:\n    - 500 g bread flour\n    - 280 g water\n  roll-in:\n    - 250 g butter\n"
    );
    let start = "## Mix\n~~~ticket\nuses: dough\n~~~\n## Block\n~~~ticket\nuses: roll-in\nsheet: 18 x 18 cm\n~~~\n## Lock in\n~~~ticket\nsheet: 27 x 27 cm\nlock-in: envelope\n~~~\n## Turn\n~~~ticket\nsheet: 54 x 22 cm\nturn: letter\n~~~\n";
    sheet("", &head, &format!("{start}{end}"), &once())
}

fn thickness(sheet: &Sheet) -> Vec<(String, f64)> {
    let lamination = sheet.lamination.as_ref().expect("layers");
    lamination.sheets.iter().map(|it| (it.step.clone(), it.thickness_mm)).collect()
}

/// 1030 g of dough and butter; half of it on 40 × 20 cm lies as thick as all of it on
/// 80 × 20 cm: thickness is volume over area. What was rolled before stays as it was.
#[test]
fn half_of_the_dough_changes_nothing_that_came_before_it() {
    let whole = layered("800 g", "## Roll\n~~~ticket\nsheet: 80 x 20 cm\n~~~\n");
    let halves = layered(
        "800 g",
        "## Roll\n~~~ticket\nuses: half of the dough\nsheet: 40 x 20 cm\n~~~\n## Roll again\n~~~ticket\nafter: turn\nuses: half of the dough\nsheet: 40 x 20 cm\n~~~\n",
    );
    let (whole, halves) = (thickness(&whole), thickness(&halves));
    assert_eq!(whole[..2], halves[..2]);
    assert_eq!(whole[2], halves[2]);
    assert_eq!((halves[3].0.as_str(), halves[3].1), ("roll-again", whole[2].1));
}

/// The same dough in parts by weight, by pieces and the rest: 515 g of 1030 g are half. Each
/// part has its own sheet, cut, weight and number of pieces; layers are those of the block,
/// and where a part alone is folded once more, its own. By arithmetic.
#[test]
fn each_part_goes_its_own_way() {
    let parts = layered(
        "16 pieces",
        "## Divide\n~~~ticket\ndivide: 515 g for squares, 4 pieces of 64.375 g for rounds, the rest for bars\n~~~\n\
         ## Squares\n~~~ticket\npart: squares\nsheet: 40 x 20 cm\ncut: squares 10 cm\nhands: 1 min per piece\n~~~\n\
         ## Rounds\n~~~ticket\npart: rounds\nhands: 1 min per piece\n~~~\n\
         ## Bars\n~~~ticket\npart: bars\nsheet: 30 x 20 cm\nturn: letter\n~~~\n\
         ## Cut bars\n~~~ticket\nsheet: 20 x 20 cm\ncut: rectangles 10 x 10 cm\n~~~\n",
    );
    assert!(parts.faults.is_empty(), "{:?}", parts.faults);
    assert_eq!(ticket(&parts, "divide").len(), 1);
    assert!(ticket(&parts, "divide")[0].starts_with("515 g for squares"));
    let made: Vec<(u64, f64)> =
        parts.cuts.iter().map(|cut| (cut.pieces, cut.piece_g)).collect();
    assert_eq!(made, [(8, 64.38), (4, 64.38)]);
    let lamination = parts.lamination.as_ref().expect("layers");
    let layers: Vec<(&str, u64)> = lamination
        .sheets
        .iter()
        .map(|it| (it.step.as_str(), it.fat_layers))
        .filter(|(step, _)| !["lock-in", "turn"].contains(step))
        .collect();
    assert_eq!(layers, [("squares", 3), ("bars", 3), ("cut-bars", 9)]);
    let thick = thickness(&parts);
    let of = |step: &str| thick.iter().find(|it| it.0 == step).map(|it| it.1);
    // A quarter on 400 cm² lies as thick as a half on 800 cm².
    assert_eq!(of("cut-bars"), of("squares"));
    assert!(ticket(&parts, "hands").contains(&"8 min"));
    assert!(ticket(&parts, "hands").contains(&"4 min"));
}
