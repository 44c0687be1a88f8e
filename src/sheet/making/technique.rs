//! A technique in words, with what to draw.

use crate::dough::cutting::{Orientation, cut};
use crate::dough::shaping::{Form, Piece, fits};
use crate::dough::{Action, Batch, Folded, laminate};
use crate::measure::{Exact, Length, Mass, Size, exact};
use crate::model::{
    Content, Demonstration, Inline, OwnShape, Recipe, ShapedBy, Shaping, Technique, Turn,
};
use crate::words::Words;

use super::super::{Demo, Fold, GrowthFact, TechniqueSheet, UsedIn};
use super::{Context, dough, handwork, prose};

/// Thickness of the dough that a demonstration is drawn with, cm: a technique has no
/// formula of its own. Common practice, no source.
const DEMONSTRATION_THICKNESS: (i64, i64) = (8, 10);

/// Thickness of a piece that is shaped in a demonstration, cm. Common practice, no source.
const PIECE_THICKNESS: (i64, i64) = (4, 10);

/// The sheet of a technique.
pub fn technique(technique: &Technique, context: Context) -> TechniqueSheet {
    TechniqueSheet {
        technique: technique.name.clone(),
        title: technique.title.value.clone(),
        summary: technique.summary.clone(),
        title_in: technique.title_in.clone(),
        demonstrations: technique
            .drawings
            .iter()
            .flat_map(|d| demos(d, context))
            .chain(technique.shapes.iter().map(|shape| own(shape, context.words)))
            .collect(),
        content: prose::plain_blocks(&technique.content, context.words),
        used_in: used_in(&technique.name, context.book.content),
    }
}

/// An author's own shaping, of the piece that it is drawn on.
fn own(shape: &OwnShape, words: &Words) -> Demo {
    let piece = Piece {
        form: Form::Rectangle,
        base: shape.piece.length.clone(),
        height: shape.piece.width.clone(),
        thickness: None,
        volume: None,
    };
    Demo::Shape(Box::new(handwork::own(shape, &piece, words)))
}

/// The recipes whose prose links to the technique.
fn used_in(name: &str, content: &Content) -> Vec<UsedIn> {
    let file = format!("techniques/{name}.md");
    let links = |recipe: &Recipe| {
        let mut found = false;
        for block in recipe.blocks() {
            block.visit(&mut |inline| {
                found |= matches!(inline, Inline::Link { to, .. } if to.ends_with(&file));
            });
        }
        found
    };
    let linking = content.recipes.iter().filter(|recipe| links(recipe));
    let used = |recipe: &Recipe| UsedIn {
        recipe: recipe.name.clone(),
        title: recipe.title.value.clone(),
        title_in: recipe.title_in().map(str::to_owned),
    };
    linking.map(used).collect()
}

fn demos(drawing: &Demonstration, context: Context) -> Vec<Demo> {
    let sheet = &drawing.sheet.value;
    let action = Action {
        step: String::new(),
        sheet: Some(sheet.clone()),
        lock_in: drawing.lock_in.as_ref().map(|(kind, _)| *kind),
        turn: drawing.turn,
        same_way: false,
        of_fat: drawing.inverted,
        inverted: drawing.inverted,
        part: None,
    };
    let block = drawing.lock_in.as_ref().map(|(_, block)| block);
    let laminated = laminate(&sample(drawing), block, &[action]);
    let lock_in = laminated
        .lock_in
        .as_ref()
        .map(|l| Demo::LockIn(Box::new(dough::lock_in(l, context.words))));
    let folds = laminated
        .folds
        .iter()
        .map(|fold| Demo::Fold(Box::new(demo_fold(fold, context.words))));
    let cut = drawing
        .cut
        .as_ref()
        .and_then(|plan| cut(plan, sheet, Orientation::Best).ok())
        .map(|layout| {
            let area = layout.piece_area.amount() * exact(4, 10) * exact(11, 10);
            Demo::Cut(Box::new(dough::layout(&layout, &Mass::grams(area), context)))
        });
    lock_in
        .into_iter()
        .chain(folds)
        .chain(cut)
        .chain(handwork(drawing, context))
        .collect()
}

/// A fold shown on its own is of dough with one layer of fat in it, as an envelope gives.
fn demo_fold(folded: &Folded, words: &Words) -> Fold {
    let mut fold = dough::fold(folded, String::new(), words);
    if fold.fat_layers_before == 0 {
        fold.fat_layers_before = 1;
        fold.fat_layers_after = u64::from(fold.parts);
    }
    fold
}

/// Rolling, shaping, trays and the growth of layers.
fn handwork(drawing: &Demonstration, context: Context) -> Vec<Demo> {
    let sheet = &drawing.sheet.value;
    let centimetres = |(n, d): (i64, i64)| Length::centimetres(exact(n, d));
    let roll = drawing.roll.as_ref().map(|block| {
        let thick = centimetres(DEMONSTRATION_THICKNESS);
        Demo::Roll(Box::new(handwork::rolled([block, sheet], &thick, context)))
    });
    let shape = drawing.shape.as_ref().and_then(|shaping| match shaping.shaped_by() {
        ShapedBy::Tin => {
            let depth = drawing.depth.as_ref();
            Some(handwork::in_tin(&sheet.length, &sheet.width, depth, context.words))
        }
        ShapedBy::Author(_) | ShapedBy::Geometry => {
            handwork::shaped(shaping, &piece(shaping, drawing), context.words)
        }
    });
    let set_down = shape.as_ref().and_then(|fact| fact.frames.last());
    let tray = drawing.tray();
    let tray = tray.map(|(size, count)| {
        let tray = handwork::Laying { size, rows: &[], leavened: true };
        handwork::laid(&tray, set_down, count, context.words)
    });
    let growth = Some(grown(&drawing.turns)).filter(|_| !drawing.turns.is_empty());
    roll.into_iter()
        .chain(shape.map(|fact| Demo::Shape(Box::new(fact))))
        .chain(tray.map(|fact| Demo::Tray(Box::new(fact))))
        .chain(growth.map(|fact| Demo::Growth(Box::new(fact))))
        .collect()
}

/// The piece that a demonstration shapes: what its cut gives, else the sheet itself, in the
/// form that the shaping is of.
fn piece(shaping: &Shaping, drawing: &Demonstration) -> Piece {
    let sheet = &drawing.sheet.value;
    let thickness = Length::centimetres(exact(PIECE_THICKNESS.0, PIECE_THICKNESS.1));
    let layout = drawing.cut.as_ref();
    let layout = layout.and_then(|plan| cut(plan, sheet, Orientation::Best).ok());
    if let Some(layout) = layout {
        return Piece::cut(&layout, Some(&thickness));
    }
    let square = sheet.length == sheet.width;
    let sheet_form = if square { Form::Square } else { Form::Rectangle };
    let fitting = [sheet_form, Form::Triangle].into_iter().find(|it| fits(shaping, *it));
    let form = fitting.unwrap_or(sheet_form);
    Piece {
        form,
        base: sheet.length.clone(),
        height: sheet.width.clone(),
        thickness: Some(thickness),
        volume: None,
    }
}

/// One fat layer through these turns.
fn grown(turns: &[Turn]) -> GrowthFact {
    let mut fat_layers = vec![1];
    for turn in turns {
        let last = fat_layers.last().copied().unwrap_or(1);
        fat_layers.push(u64::saturating_mul(last, turn.parts.into()));
    }
    let parts = turns.iter().map(|turn| turn.parts).collect();
    GrowthFact { step: String::new(), inverted: false, fat_layers, parts }
}

/// As much dough and fat as lie on the demonstration's sheet and block.
fn sample(drawing: &Demonstration) -> Batch {
    let thick: Exact = exact(DEMONSTRATION_THICKNESS.0, DEMONSTRATION_THICKNESS.1);
    let mass = |size: &Size| Mass::grams(size.area().amount() * &thick);
    let sheet = mass(&drawing.sheet.value);
    let block =
        drawing.lock_in.as_ref().map_or_else(Mass::zero, |(_, block)| mass(block));
    let (dough, fat) = if drawing.inverted { (block, sheet) } else { (sheet, block) };
    Batch { dough, fat, dough_density: exact(1, 1), fat_density: exact(1, 1) }
}
