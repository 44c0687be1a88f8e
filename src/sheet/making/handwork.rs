//! Rolling, shaping and traying in words and centimetres.

use crate::dough::shaping::{
    Form, Frame, Piece, Shaped, Sizes, best_lie, filled, lie_in_rows, places,
    places_in_rows, rows,
};
use crate::dough::{self, Direction, Laminated, Rolled};
use crate::formula::parts::PartRef;
use crate::measure::{Exact, Label, Length, Size, float, show};
use crate::model::{OwnShape, ShapedBy, Shaping, Step, Tin};
use crate::words::Words;
use crate::work::{Lot, Work, is_leavened, kit, own_shape, piece_in_hand, set_down};

use super::super::{GrowthFact, Handwork, RollFact, ShapeFact, Slab, TrayFact};
use super::{Context, round, steps};

/// The handwork of a recipe.
pub(super) fn handwork(work: &Work, context: Context) -> Handwork {
    let steps = work.steps();
    let shape = |(at, step): (usize, &&Step)| shape(work, (at, step), context);
    let shapes: Vec<ShapeFact> = steps.iter().enumerate().filter_map(shape).collect();
    let trays = |(at, step): (usize, &&Step)| trays(work, at, step, context);
    Handwork {
        rolls: rolls(work, context),
        trays: steps.iter().enumerate().flat_map(trays).collect(),
        shapes,
        growth: growth(&work.layering.laminated),
    }
}

/// How the layers grow; `None` without a lock-in or turns.
pub(super) fn growth(laminated: &Laminated) -> Option<GrowthFact> {
    let (first, last) = (laminated.folds.first()?, laminated.folds.last()?);
    let inverted = laminated.lock_in.as_ref()?.inverted;
    let after = laminated.folds.iter().map(|fold| fold.fat_after);
    Some(GrowthFact {
        step: last.step.clone(),
        inverted,
        fat_layers: std::iter::once(first.fat_before).chain(after).collect(),
        parts: laminated.folds.iter().map(|fold| fold.turn.parts).collect(),
    })
}

/// A block rolled out to a sheet `thick`, for a demonstration.
pub(super) fn rolled(
    [block, sheet]: [&Size; 2],
    thick: &Length,
    context: Context,
) -> RollFact {
    let volume = sheet.area().amount() * thick.amount();
    let area = block.area();
    let from = area.is_positive().then(|| Length::centimetres(volume / area.amount()));
    let bench = kit(context.book).bench;
    RollFact {
        step: String::new(),
        way: Direction::Any,
        from: from.map(|from| slab(block, &from, context.words)),
        to: slab(sheet, thick, context.words),
        bench_cm: bench.as_ref().map(|bench| cm(&bench.length)),
        bench: bench.map(|bench| show::length(&bench.length, context.words)),
    }
}

/// The sheets that are rolled, not folded or cut in the same step.
fn rolls(work: &Work, context: Context) -> Vec<RollFact> {
    let laminated = &work.layering.laminated;
    let only_rolled = |step: &Step| !step.laminates() && step.cut.is_none();
    let is_rolled = |rolled: &Rolled| {
        work.recipe.steps().any(|step| step.name == rolled.step && only_rolled(step))
    };
    let sheets = laminated.sheets.iter();
    sheets
        .filter(|rolled| is_rolled(rolled))
        .map(|rolled| RollFact {
            step: rolled.step.clone(),
            way: rolled.way,
            from: beneath(rolled, context.words),
            to: slab(&rolled.sheet, &rolled.thickness, context.words),
            bench_cm: kit(context.book).bench.map(|bench| cm(&bench.length)),
            bench: kit(context.book)
                .bench
                .map(|bench| show::length(&bench.length, context.words)),
        })
        .collect()
}

/// What lies beneath the pin, its first side the one that becomes the sheet's first.
fn beneath(rolled: &Rolled, words: &Words) -> Option<Slab> {
    let (block, thickness) = (rolled.block.as_ref()?, rolled.block_thickness.as_ref()?);
    Some(slab(block, thickness, words))
}

fn slab(size: &Size, thickness: &Length, words: &Words) -> Slab {
    Slab {
        length_cm: cm(&size.length),
        width_cm: cm(&size.width),
        thickness_mm: mm(thickness),
        size: show::size(size, words),
        thickness: show::thickness(thickness, words),
    }
}

/// What a step shapes: the tin, or the piece of the last cut or division before it.
fn shape(work: &Work, (at, step): (usize, &Step), context: Context) -> Option<ShapeFact> {
    let shaping = &step.shape.as_ref()?.value;
    let piece = || piece_in_hand(work, at);
    let fact = match shaping.shaped_by() {
        ShapedBy::Tin => {
            let Tin::Square(length, width, depth) = work.tin.as_ref()? else {
                return None;
            };
            in_tin(length, width, depth.as_ref(), context.words)
        }
        ShapedBy::Author(name) => {
            own(own_shape(name, context.book.content)?, &piece()?, context.words)
        }
        ShapedBy::Geometry => shaped(shaping, &piece()?, context.words)?,
    };
    Some(ShapeFact { step: step.name.clone(), ..fact })
}

/// A piece shaped in words; `None` where it cannot be shaped so.
pub(super) fn shaped(
    shaping: &Shaping,
    piece: &Piece,
    words: &Words,
) -> Option<ShapeFact> {
    let shaped = dough::shaping::shape(shaping, piece)?;
    Some(fact(shaping.word(), piece, shaped, words))
}

fn fact(word: &str, piece: &Piece, shaped: Shaped, words: &Words) -> ShapeFact {
    let Shaped { frames, sizes } = shaped;
    let size = Size::new(piece.base.clone(), piece.height.clone());
    let label =
        |length: Option<&Length>| length.map(|length| show::length(length, words));
    let named = match piece.form {
        Form::Lump => Label::default(),
        Form::Round | Form::Square => show::length(&piece.base, words),
        Form::Triangle | Form::RightTriangle | Form::Rectangle | Form::Strip => {
            show::size(&size, words)
        }
    };
    ShapeFact {
        step: String::new(),
        shape: word.to_owned(),
        in_tin: false,
        frames,
        own_words: Vec::new(),
        pictures: Vec::new(),
        base_cm: cm(&piece.base),
        height_cm: cm(&piece.height),
        depth_cm: None,
        thickness_mm: piece.thickness.as_ref().map(mm),
        wraps: sizes.wraps.as_ref().map(|wraps| round(wraps, 2)),
        roll_cm: sizes.roll.as_ref().map(cm),
        notch: label(sizes.notch.as_ref()),
        stretched: label(sizes.stretched.as_ref()),
        roll: label(sizes.roll.as_ref()),
        strand: label(sizes.strand.as_ref()),
        piece: named,
        base: show::length(&piece.base, words),
        height: show::length(&piece.height, words),
        depth: None,
        thickness: piece
            .thickness
            .as_ref()
            .map(|thickness| show::thickness(thickness, words)),
    }
}

/// A loaf in its tin.
pub(super) fn in_tin(
    length: &Length,
    width: &Length,
    depth: Option<&Length>,
    words: &Words,
) -> ShapeFact {
    let tin = Piece {
        form: Form::Rectangle,
        base: length.clone(),
        height: width.clone(),
        thickness: None,
        volume: None,
    };
    let frames = dough::shaping::in_tin(length, width, depth);
    let shaped = Shaped { frames, sizes: Sizes::default() };
    ShapeFact {
        in_tin: true,
        depth_cm: depth.map(cm),
        depth: depth.map(|depth| show::length(depth, words)),
        ..fact(Shaping::Tin.word(), &tin, shaped, words)
    }
}

/// An author's own shaping.
pub(super) fn own(shape: &OwnShape, piece: &Piece, words: &Words) -> ShapeFact {
    let frames = dough::shaping::own(shape, piece);
    let shaped = Shaped { frames, sizes: Sizes::default() };
    let pictures = shape.frames.iter().filter_map(|frame| frame.picture.as_ref());
    ShapeFact {
        own_words: shape.frames.iter().map(|frame| words.author(&frame.does)).collect(),
        pictures: pictures.map(|shown| steps::picture(shown, words)).collect(),
        ..fact(&shape.name.value, piece, shaped, words)
    }
}

/// The trays of a bake, one for each lot of pieces that are alike; none where the tray or the
/// pieces on it are not known.
fn trays(work: &Work, at: usize, step: &Step, context: Context) -> Vec<TrayFact> {
    let kit = kit(context.book);
    let (Some(size), Some(per_tray), true) =
        (kit.tray.as_ref(), step.per_tray.as_ref(), step.bake.is_some())
    else {
        return Vec::new();
    };
    let (size, per_tray) = (crate::dough::long_first(size), per_tray.value.max(1));
    let leavened = is_leavened(work);
    let oven = kit.trays_per_oven.map(u64::from);
    let one = |part: PartRef, pieces: Option<u64>| {
        let frame = set_down(work, part, at, context.book);
        let on_one = per_tray.min(pieces.unwrap_or(per_tray));
        let tray = Laying { size: &size, rows: &step.tray_rows, leavened };
        let fact = laid(&tray, frame.as_ref(), on_one, context.words);
        let trays = pieces.map_or(1, |pieces| pieces.div_ceil(per_tray)).max(1);
        let loads = oven.map_or(trays, |oven| trays.div_ceil(oven.max(1)));
        let step = step.name.clone();
        TrayFact { step, per_tray, trays, trays_per_oven: oven, loads, ..fact }
    };
    let part_of = |lot: &Lot| work.flow.parts.part(lot.part).name.clone();
    match work.lots[at].as_slice() {
        [] => vec![one(work.flow.parts.of(at), None)],
        [lot] => vec![one(lot.part, Some(lot.pieces))],
        // What goes into the oven together stands at the step.
        lots => lots
            .iter()
            .map(|lot| TrayFact {
                part: part_of(lot),
                loads: 1,
                trays_per_oven: None,
                ..one(lot.part, Some(lot.pieces))
            })
            .collect(),
    }
}

/// A tray, and how pieces are to lie on it.
pub(super) struct Laying<'a> {
    /// The tray.
    pub(super) size: &'a Size,
    /// How many lie in each row along it; none where the author does not say.
    pub(super) rows: &'a [u64],
    /// Whether they double there.
    pub(super) leavened: bool,
}

/// How far to the right the first of a pair lies of the middle of both, in cm: the one with
/// its right angle at the right lies to the right.
fn aside((pair, one): (&Size, &Size), piece: Option<&Frame>) -> f64 {
    let apart = cm(&(pair.length.clone() - one.length.clone())) / 2.0;
    let right_angle = piece.and_then(Frame::right_angle);
    let middle = piece.map_or(0.0, |piece| piece.bounds()[0][0] + piece.size()[0] / 2.0);
    if right_angle.is_some_and(|at| at[0] < middle) { -apart } else { apart }
}

/// `count` pieces on a tray, each as `piece` lies: in the author's rows, else the way that
/// leaves the most room.
pub(super) fn laid(
    tray: &Laying,
    piece: Option<&Frame>,
    count: u64,
    words: &Words,
) -> TrayFact {
    let Laying { size, rows: own, leavened } = *tray;
    let piece = piece.map(Frame::lying);
    let lie = piece.as_ref().and_then(Frame::footprint);
    let lie = lie.map(|footprint| match own {
        [] => best_lie(size, &footprint, leavened),
        own => lie_in_rows(size, &footprint, (own, leavened)),
    });
    let turned = lie.as_ref().is_some_and(|lie| lie.turned);
    let piece = piece.filter(|_| lie.is_some());
    let piece = if turned { piece.as_ref().map(Frame::turned) } else { piece };
    let boxed = piece.as_ref().and_then(Frame::footprint).map(|it| it.size);
    let square = Size::new(size.width.clone(), size.width.clone());
    let pair = lie.as_ref().and_then(|lie| lie.pair.clone());
    let cell = pair.as_ref().or(boxed.as_ref()).unwrap_or(&square);
    let cells = if pair.is_some() { count.div_ceil(2) } else { count };
    let filled = filled(own, count);
    let form = match filled.iter().max() {
        Some(most) => [*most, filled.len() as u64],
        None => rows(size, cell, cells),
    };
    let share = |side: &Length, of: u64| side * &Exact::new(1.into(), of.max(1).into());
    let (along, across) = (share(&size.length, form[0]), share(&size.width, form[1]));
    let place = |[x, y]: [Exact; 2]| [round(&x, 4), round(&y, 4)];
    let cells = match filled.as_slice() {
        [] => places(size, form, cells),
        filled => places_in_rows(size, filled),
    };
    let cells = cells.into_iter().map(place);
    let apart = pair.as_ref().zip(boxed.as_ref());
    let apart = apart.map_or(0.0, |both| aside(both, piece.as_ref()));
    let places_cm: Vec<[f64; 2]> = cells
        .flat_map(|[x, y]| [[x + apart, y], [x - apart, y]])
        .step_by(if pair.is_some() { 1 } else { 2 })
        .take(usize::try_from(count).unwrap_or(usize::MAX))
        .collect();
    TrayFact {
        step: String::new(),
        part: None,
        leavened,
        length_cm: cm(&size.length),
        width_cm: cm(&size.width),
        per_tray: count,
        trays: 1,
        trays_per_oven: None,
        loads: 1,
        places_cm,
        in_pairs: pair.is_some(),
        along_cm: cm(&along),
        across_cm: cm(&across),
        piece_cm: boxed.as_ref().map(|piece| [cm(&piece.length), cm(&piece.width)]),
        shape: piece,
        fits: lie.as_ref().map(|lie| lie.fits),
        gap: lie.map(|lie| lie.gap.map(|gap| show::length(&gap, words))),
        tray: show::size(size, words),
        along: show::length(&along, words),
        across: show::length(&across, words),
    }
}

/// Centimetres to the micrometre.
fn cm(length: &Length) -> f64 {
    round(length.amount(), 4)
}

fn mm(length: &Length) -> f64 {
    float(&(length.in_millimetres() * Exact::from_integer(1000.into())).round()) / 1000.0
}
