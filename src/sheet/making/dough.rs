//! Lamination and cutting in words and centimetres.

use crate::dough::cutting::{Layout, Point, Polygon};
use crate::dough::{
    Edges, Folded, LockedIn, Rolled, ends_meet, fold_lines, lock_in_edges, turn_edges,
};
use crate::measure::{Exact, Label, Length, Mass, Size, float, show};
use crate::model::Step;
use crate::pantry::Kind;
use crate::words::Words;
use crate::work::{CutWork, Work};

use super::super::{Cut, EdgesFact, Fold, Lamination, LockInFact, Mark, SheetFact};
use super::{Context, lines, round};

/// The lamination; `None` for a dough that is neither folded over fat nor turned.
pub(super) fn lamination(work: &Work, words: &Words) -> Option<Lamination> {
    let layering = &work.layering;
    let layers = layering.layers.as_ref()?;
    let title = |name: &str| title(work, name);
    Some(Lamination {
        lock_in: layering.laminated.lock_in.as_ref().map(|it| lock_in(it, words)),
        inverted: layers.inverted,
        turns: layers.turns.iter().map(|turn| turn.folding()).collect(),
        folds: layering
            .laminated
            .folds
            .iter()
            .map(|it| fold(it, title(&it.step), words))
            .collect(),
        fat_layers: layers.fat(),
        layers_merged: layers.merged(),
        layers_unmerged: layers.unmerged(),
        fat_percent_of_dough: layers
            .lock_in
            .map(|_| round(&layering.batch.fat_percent_of_dough(), 2)),
        sheets: layering
            .laminated
            .sheets
            .iter()
            .map(|it| sheet(it, title(&it.step), words))
            .collect(),
    })
}

fn title(work: &Work, name: &str) -> String {
    let found = work.recipe.steps().find(|step| step.name == name);
    found.map_or_else(String::new, |step| step.title.value.clone())
}

/// The lock-in in words.
pub(super) fn lock_in(locked: &LockedIn, words: &Words) -> LockInFact {
    LockInFact {
        step: locked.step.clone(),
        kind: locked.kind,
        inverted: locked.inverted,
        length_cm: cm(&locked.sheet.length),
        width_cm: cm(&locked.sheet.width),
        block_length_cm: cm(&locked.block.length),
        block_width_cm: cm(&locked.block.width),
        closed_length_cm: cm(&locked.closed.length),
        closed_width_cm: cm(&locked.closed.width),
        thickness_mm: mm(&locked.thickness),
        block_thickness_mm: mm(&locked.block_thickness),
        size: show::size(&locked.sheet, words),
        block: show::size(&locked.block, words),
        closed: show::size(&locked.closed, words),
        thickness: show::thickness(&locked.thickness, words),
        block_thickness: show::thickness(&locked.block_thickness, words),
        edges: lock_in_edges(locked.kind).map(edges),
        next: locked.next,
    }
}

fn edges(edges: Edges) -> EdgesFact {
    EdgesFact { opposite_folds: edges.opposite.folds, opposite_ends: edges.opposite.ends }
}

/// A turn in words.
pub(super) fn fold(folded: &Folded, title: String, words: &Words) -> Fold {
    let part = &folded.sheet.length
        * &Exact::new(1.into(), i64::from(folded.turn.parts.max(1)).into());
    let at = |share: &Exact| mark(&(&folded.sheet.length * share), words);
    Fold {
        step: folded.step.clone(),
        title,
        turn: folded.turn.folding(),
        parts: folded.turn.parts,
        length_cm: cm(&folded.sheet.length),
        width_cm: cm(&folded.sheet.width),
        thickness_mm: mm(&folded.thickness),
        folded_length_cm: cm(&folded.folded.length),
        folded_width_cm: cm(&folded.folded.width),
        folded_thickness_mm: mm(&folded.folded_thickness),
        fat_layers_before: folded.fat_before,
        fat_layers_after: folded.fat_after,
        plies_before: folded.plies_before,
        plies_after: folded.plies_after,
        folds: fold_lines(folded.turn).iter().map(at).collect(),
        meet: ends_meet(folded.turn).as_ref().map(at),
        edges: edges(turn_edges(folded.turn)),
        next: folded.next,
        size: show::size(&folded.sheet, words),
        folded: show::size(&folded.folded, words),
        part: show::length(&part, words),
    }
}

fn sheet(rolled: &Rolled, title: String, words: &Words) -> SheetFact {
    SheetFact {
        step: rolled.step.clone(),
        title,
        length_cm: cm(&rolled.sheet.length),
        width_cm: cm(&rolled.sheet.width),
        way: rolled.way,
        block_cm: rolled.block.as_ref().map(|it| [cm(&it.length), cm(&it.width)]),
        thickness_mm: mm(&rolled.thickness),
        fat_layer_mm: round(&rolled.fat_layer.in_millimetres(), 4),
        dough_layer_mm: round(&rolled.dough_layer.in_millimetres(), 4),
        fat_layers: rolled.fat_layers,
        size: show::size(&rolled.sheet, words),
        thickness: show::thickness(&rolled.thickness, words),
    }
}

/// The cuts that can be made.
pub(super) fn cuts(work: &Work, context: Context) -> Vec<Cut> {
    let steps = work.steps();
    let made = work
        .cuts
        .iter()
        .filter_map(|(at, cut)| Some((steps.get(*at)?, cut.as_ref().ok()?)));
    made.map(|(step, cut)| one_cut(step, cut, work, context)).collect()
}

fn one_cut(step: &Step, cut: &CutWork, work: &Work, context: Context) -> Cut {
    let kept = Exact::from_integer(1.into()) - &work.recipe.loss;
    let piece = &cut.piece * &kept;
    Cut {
        step: step.name.clone(),
        pieces: cut.layout.pieces.len() as u64 * work.doughs,
        reroll_pieces: cut.reroll.as_ref().map_or(0, |again| again.pieces.len() as u64)
            * work.doughs,
        reroll: cut.reroll.as_ref().map(|again| show::size(&again.sheet, context.words)),
        ..layout(&cut.layout, &piece, context)
    }
}

/// A layout with the weight of its pieces.
pub(super) fn layout(layout: &Layout, piece: &Mass, context: Context) -> Cut {
    let marks = |at: &[Length]| at.iter().map(|at| mark(at, context.words)).collect();
    let pieces = layout.pieces.len() as u64;
    Cut {
        step: String::new(),
        shape: layout.form,
        pieces,
        pieces_per_sheet: pieces,
        sheet_length_cm: cm(&layout.sheet.length),
        sheet_width_cm: cm(&layout.sheet.width),
        base_cm: cm(&layout.base),
        height_cm: cm(&layout.height),
        piece_g: round(piece.amount(), 2),
        scrap_percent: round(&(&layout.scrap_share * Exact::from_integer(100.into())), 2),
        polygons_cm: polygons(&layout.pieces),
        halves_cm: polygons(&layout.halves),
        reroll_pieces: 0,
        reroll: None,
        lines_cm: layout
            .lines
            .iter()
            .map(|line| [point(&line[0]), point(&line[1])])
            .collect(),
        marks_near: marks(&layout.near),
        marks_far: marks(&layout.far),
        marks_left: marks(&layout.left),
        marks_right: marks(&layout.right),
        strokes: layout.strokes(),
        size: show::size(&layout.sheet, context.words),
        piece: piece_size(layout, context.words),
        piece_weight: lines::weight(piece, Kind::Other, context),
    }
}

fn polygons(pieces: &[Polygon]) -> Vec<Vec<[f64; 2]>> {
    pieces.iter().map(|piece| piece.corners.iter().map(point).collect()).collect()
}

fn piece_size(layout: &Layout, words: &Words) -> Label {
    if layout.base == layout.height {
        return show::length(&layout.base, words);
    }
    show::size(&Size::new(layout.base.clone(), layout.height.clone()), words)
}

fn mark(at: &Length, words: &Words) -> Mark {
    Mark { at_cm: cm(at), at: show::length(at, words) }
}

fn point(point: &Point) -> [f64; 2] {
    [cm(&point.x), cm(&point.y)]
}

/// Centimetres to the micrometre.
fn cm(length: &Length) -> f64 {
    round(length.amount(), 4)
}

fn mm(length: &Length) -> f64 {
    float(&(length.in_millimetres() * Exact::from_integer(1000.into())).round()) / 1000.0
}
