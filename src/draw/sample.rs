//! Sheets for the tests of the drawings, made from plain numbers.

use crate::dough::{Direction, lock_in_edges, turn_edges};
use crate::measure::{self, Label, Length, exact};
use crate::model::{LockIn, Turn};
use crate::sheet::{
    Allergens, Cut, EdgesFact, Fold, Form, Lamination, LockInFact, Mark, Scale, Sheet,
    StepTime, Time, Totals,
};
use crate::words::Words;

/// The words of the default theme.
pub(super) fn words() -> Words {
    let theme = crate::theme::Theme::built_in();
    crate::read::words_in(&theme, "en").expect("the theme's words are sound")
}

fn long(tenths: i64) -> Length {
    Length::centimetres(exact(tenths, 10))
}

fn cm(tenths: i64) -> f64 {
    long(tenths).float()
}

fn size(first: i64, second: i64) -> Label {
    measure::show::size(
        &measure::Size::new(long(first), long(second)),
        &measure::show::International,
    )
}

/// A turn of a sheet in tenths of a centimetre.
pub(super) fn fold(parts: u32, length: i64, width: i64, before: u64) -> Fold {
    let part = Length::centimetres(exact(length, 10 * i64::from(parts)));
    let folded = measure::Size::new(part.clone(), long(width));
    let folds: Vec<f64> =
        (1..parts).map(|fold| f64::from(fold) / f64::from(parts)).collect();
    let mark = |share: f64| marks(&[cm(length) * share]).remove(0);
    Fold {
        step: format!("turn-{parts}"),
        title: format!("Turn in {parts}"),
        turn: Turn::in_parts(parts).folding(),
        parts,
        length_cm: cm(length),
        width_cm: cm(width),
        thickness_mm: 9.0,
        folded_length_cm: part.float(),
        folded_width_cm: cm(width),
        folded_thickness_mm: 9.0 * f64::from(parts),
        fat_layers_before: before,
        fat_layers_after: before * u64::from(parts),
        plies_before: if before == 0 { 1 } else { 3 * before },
        plies_after: if before == 0 { 1 } else { 3 * before } * u64::from(parts),
        folds: folds.iter().map(|share| mark(*share)).collect(),
        meet: (parts == 4).then(|| mark(0.5)),
        edges: edges(turn_edges(Turn::in_parts(parts))),
        next: Direction::QuarterTurn,
        size: size(length, width),
        folded: measure::show::size(&folded, &measure::show::International),
        part: measure::show::length(&part, &measure::show::International),
    }
}

/// A lock-in: sheet, block and closed parcel in tenths of a centimetre.
pub(super) fn lock_in(
    kind: LockIn,
    sheet: [i64; 2],
    block: [i64; 2],
    closed: [i64; 2],
) -> LockInFact {
    LockInFact {
        inverted: false,
        step: format!("lock-in-{}", kind.word()),
        kind,
        length_cm: cm(sheet[0]),
        width_cm: cm(sheet[1]),
        block_length_cm: cm(block[0]),
        block_width_cm: cm(block[1]),
        closed_length_cm: cm(closed[0]),
        closed_width_cm: cm(closed[1]),
        thickness_mm: 9.0,
        block_thickness_mm: 7.5,
        size: size(sheet[0], sheet[1]),
        block: size(block[0], block[1]),
        closed: size(closed[0], closed[1]),
        thickness: Label::new("9 mm", "3/8 in"),
        block_thickness: Label::new("7.5 mm", "5/16 in"),
        edges: lock_in_edges(kind).map(edges),
        next: if kind == LockIn::Envelope {
            Direction::Any
        } else {
            Direction::QuarterTurn
        },
    }
}

fn edges(edges: crate::dough::Edges) -> EdgesFact {
    let opposite = edges.opposite;
    EdgesFact { opposite_folds: opposite.folds, opposite_ends: opposite.ends }
}

fn marks(places: &[f64]) -> Vec<Mark> {
    let mark = |at: &f64| Mark {
        at_cm: *at,
        at: measure::show::length(
            &Length::centimetres(exact((at * 1e6).round() as i64, 1_000_000)),
            &measure::show::International,
        ),
    };
    places.iter().map(mark).collect()
}

/// A plan without pieces yet.
fn plan(length: f64, width: f64) -> Cut {
    let tenths = |side: f64| (side * 10.0).round() as i64;
    Cut {
        halves_cm: Vec::new(),
        reroll_pieces: 0,
        reroll: None,
        step: "cut".into(),
        shape: Form::Rectangle,
        pieces: 0,
        pieces_per_sheet: 0,
        sheet_length_cm: length,
        sheet_width_cm: width,
        base_cm: 0.0,
        height_cm: 0.0,
        piece_g: 58.0,
        scrap_percent: 0.0,
        polygons_cm: Vec::new(),
        lines_cm: Vec::new(),
        marks_near: Vec::new(),
        marks_far: Vec::new(),
        marks_left: Vec::new(),
        marks_right: Vec::new(),
        strokes: Vec::new(),
        size: size(tenths(length), tenths(width)),
        piece: Label::default(),
        piece_weight: Label::new("58 g", "2 oz"),
    }
}

/// A grid of strips, each cut across, each piece then from corner to corner.
pub(super) fn grid(
    length: f64,
    width: f64,
    (strips, across): (u32, u32),
    diagonal: bool,
) -> Cut {
    let (run, rise) = (length / f64::from(across), width / f64::from(strips));
    let mut cut = plan(length, width);
    let inner = |count: u32, step: f64| -> Vec<f64> {
        (1..count).map(|index| f64::from(index) * step).collect()
    };
    let (columns, rows) = (inner(across, run), inner(strips, rise));
    cut.lines_cm.extend(rows.iter().map(|y| [[0.0, *y], [length, *y]]));
    cut.lines_cm.extend(columns.iter().map(|x| [[*x, 0.0], [*x, width]]));
    for row in 0..strips {
        for column in 0..across {
            let (x, y) = (f64::from(column) * run, f64::from(row) * rise);
            let (right, top) = (x + run, y + rise);
            if diagonal {
                cut.lines_cm.push([[x, y], [right, top]]);
                cut.polygons_cm.push(vec![[x, y], [right, y], [right, top]]);
                cut.polygons_cm.push(vec![[x, y], [right, top], [x, top]]);
            } else {
                cut.polygons_cm.push(vec![[x, y], [right, y], [right, top], [x, top]]);
            }
        }
    }
    cut.marks_near = marks(&columns);
    cut.marks_far = marks(&columns);
    cut.marks_left = marks(&rows);
    cut.marks_right = marks(&rows);
    cut.piece = size((run * 10.0).round() as i64, (rise * 10.0).round() as i64);
    finish(cut)
}

/// Strips of triangles, nested head to tail.
pub(super) fn triangles(length: f64, width: f64, base: f64, strips: u32) -> Cut {
    let height = width / f64::from(strips);
    let count = (2.0 * length / base).floor() as u32 - 1;
    let mut cut = plan(length, width);
    cut.shape = Form::Triangle;
    for strip in 0..strips {
        let (near, far) = (f64::from(strip) * height, f64::from(strip + 1) * height);
        if strip > 0 {
            cut.lines_cm.push([[0.0, near], [length, near]]);
        }
        for index in 0..=count {
            let x = f64::from(index) * base / 2.0;
            let (from, to) = if index % 2 == 0 { (near, far) } else { (far, near) };
            cut.lines_cm.push([[x, from], [x + base / 2.0, to]]);
            if index < count {
                cut.polygons_cm.push(vec![
                    [x, from],
                    [x + base, from],
                    [x + base / 2.0, to],
                ]);
            }
        }
    }
    let every = |first: f64| -> Vec<f64> {
        (0..).map(|n| first + f64::from(n) * base).take_while(|x| *x <= length).collect()
    };
    cut.marks_near = marks(&every(base));
    cut.marks_far = marks(&every(base / 2.0));
    cut.marks_left =
        marks(&(1..strips).map(|n| f64::from(n) * height).collect::<Vec<_>>());
    cut.marks_right = cut.marks_left.clone();
    cut.piece = size((base * 10.0).round() as i64, (height * 10.0).round() as i64);
    finish(cut)
}

/// Rounds side by side.
pub(super) fn rounds(length: f64, width: f64, across: f64) -> Cut {
    let mut cut = plan(length, width);
    let (columns, rows) =
        ((length / across).floor() as u32, (width / across).floor() as u32);
    for index in 0..columns * rows {
        let corner = [f64::from(index % columns), f64::from(index / columns)];
        let point = |turn: u32| {
            let (sin, cos) = (f64::from(turn) * std::f64::consts::TAU / 48.0).sin_cos();
            [
                across * (corner[0] + 0.5 + cos / 2.0),
                across * (corner[1] + 0.5 + sin / 2.0),
            ]
        };
        cut.polygons_cm.push((0..48).map(point).collect());
    }
    cut.piece = size((across * 10.0).round() as i64, (across * 10.0).round() as i64);
    finish(cut)
}

/// Counts pieces and scrap.
fn finish(mut cut: Cut) -> Cut {
    cut.pieces = cut.polygons_cm.len() as u64;
    cut.pieces_per_sheet = cut.pieces;
    let area: f64 = cut.polygons_cm.iter().map(|polygon| area(polygon)).sum();
    let whole = cut.sheet_length_cm * cut.sheet_width_cm;
    cut.scrap_percent = (100.0 * (1.0 - area / whole)).max(0.0);
    cut
}

fn area(polygon: &[[f64; 2]]) -> f64 {
    let next = polygon.iter().cycle().skip(1);
    let sum: f64 = polygon.iter().zip(next).map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum();
    sum.abs() / 2.0
}

/// One step of a timeline: title, start, hands, wait, hold.
pub(super) fn step(
    title: &str,
    times: [u64; 4],
    recipe: &str,
    after: &[&str],
) -> StepTime {
    StepTime {
        step: slug(title),
        title: title.into(),
        recipe: recipe.into(),
        day: None,
        thaw_min: None,
        start_min: times[0],
        hands_min: times[1],
        wait_min: [times[2]; 3],
        hold_min: times[3],
        after: after.iter().map(|title| slug(title)).collect(),
        bake: title == "Bake",
        place: None,
        critical: true,
    }
}

fn slug(title: &str) -> String {
    title.to_lowercase().replace(' ', "-")
}

/// The times of a list of steps.
pub(super) fn time(steps: Vec<StepTime>) -> Time {
    let end = |step: &StepTime| step.start_min + step.hands_min + step.wait_min[0];
    let elapsed = steps.iter().map(end).max().unwrap_or(0);
    let hands = steps.iter().map(|step| step.hands_min).sum();
    Time {
        hands_min: hands,
        wait_min: elapsed.saturating_sub(hands),
        elapsed_min: elapsed,
        hands: measure::show::minutes(hands, &measure::show::International),
        wait: measure::show::minutes(
            elapsed.saturating_sub(hands),
            &measure::show::International,
        ),
        elapsed: measure::show::minutes(elapsed, &measure::show::International),
        critical_path: Vec::new(),
        ready: Vec::new(),
        steps,
    }
}

/// The layered dough and the crescents of an evening, as one plan.
pub(super) fn evening() -> Time {
    let dough = "layered-dough";
    let own = "crescents";
    time(vec![
        step("Mix the dough", [0, 10, 0, 0], dough, &[]),
        step("Rest it", [10, 0, 45, 960], dough, &["Mix the dough"]),
        step("Shape the butter block", [10, 8, 0, 0], dough, &["Mix the dough"]),
        step(
            "Lock in the butter",
            [55, 6, 0, 0],
            dough,
            &["Rest it", "Shape the butter block"],
        ),
        step("First turn", [61, 8, 0, 0], dough, &["Lock in the butter"]),
        step("Chill after the first turn", [69, 0, 40, 960], dough, &["First turn"]),
        step("Second turn", [109, 8, 0, 0], dough, &["Chill after the first turn"]),
        step("Chill after the second turn", [117, 0, 40, 960], dough, &["Second turn"]),
        step("Third turn", [157, 8, 0, 0], dough, &["Chill after the second turn"]),
        step("Last chill", [165, 0, 60, 1440], dough, &["Third turn"]),
        step("Roll out the sheet", [225, 10, 0, 0], own, &["Last chill"]),
        step("Relax the sheet", [235, 0, 15, 120], own, &["Roll out the sheet"]),
        step("Cut", [250, 8, 0, 0], own, &["Relax the sheet"]),
        step("Roll up", [258, 5, 0, 0], own, &["Cut"]),
        step("Proof", [263, 0, 120, 0], own, &["Roll up"]),
        step("Brush with egg", [383, 5, 0, 0], own, &["Proof"]),
        step("Bake", [388, 2, 20, 0], own, &["Brush with egg"]),
        step("Cool", [410, 0, 20, 480], own, &["Bake"]),
    ])
}

/// A whole sheet with these figures.
pub(super) fn sheet(lamination: Option<Lamination>, cuts: Vec<Cut>, time: Time) -> Sheet {
    Sheet {
        bakes: Vec::new(),
        proofs: Vec::new(),
        mixing: Vec::new(),
        goals: Vec::new(),
        way: None,
        ways: Vec::new(),
        since: None,
        untold: None,
        notes: Vec::new(),
        facts: 1,
        recipe: "crescents".into(),
        title: "Crescents".into(),
        summary:
            "Twelve plain crescents from one sheet of layered dough, cut on the diagonal."
                .into(),
        family: None,
        picture: None,
        printed: true,
        scale: Scale {
            factor: 1.0,
            pieces: Some(12),
            piece_g: Some(58.0),
            piece: None,
            doughs: 1,
            makes: Label::same("12 crescents"),
            batch: "1 batch".into(),
        },
        formula: Vec::new(),
        totals: Totals {
            true_hydration: false,
            each_dough: None,
            grams: 700.0,
            flour_g: 350.0,
            hydration_percent: None,
            weight: Label::default(),
            flour: Label::default(),
            sections: Vec::new(),
        },
        preferments: Vec::new(),
        lamination,
        cuts,
        handwork: crate::sheet::Handwork::default(),
        time,
        water: None,
        allergens: Allergens {
            lists: Vec::new(),
            unknown: Vec::new(),
            read_on_pack: Vec::new(),
        },
        nutrition: None,
        cost: None,
        cautions: Vec::new(),
        caution_texts: Vec::new(),
        faults: Vec::new(),
        opening: Vec::new(),
        parts: Vec::new(),
        videos: Vec::new(),
    }
}

/// A lamination of these steps.
pub(super) fn lamination(lock_in: Option<LockInFact>, folds: Vec<Fold>) -> Lamination {
    Lamination {
        inverted: false,
        lock_in,
        turns: folds.iter().map(|fold| fold.turn).collect(),
        fat_layers: Some(folds.last().map_or(1, |fold| fold.fat_layers_after)),
        layers_merged: Some(0),
        layers_unmerged: 0,
        fat_percent_of_dough: Some(28.5),
        sheets: Vec::new(),
        folds,
    }
}
