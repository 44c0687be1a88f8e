//! Rolling, shaping and traying in words and centimetres.

use crate::dough::shaping::{
    At, Does, Form, Frame, Mark, Piece, Shaped, Sizes, places, room, rows,
};
use crate::dough::{self, Direction, Laminated, Rolled};
use crate::measure::{Exact, Label, Length, Size, exact, float, show};
use crate::model::{Content, Line, OwnShape, Shaping, Step, Tin};
use crate::work::{Work, kit, piece_in_hand, trays};

use super::super::{GrowthFact, Handwork, RollFact, ShapeFact, Slab, TrayFact};
use super::{Context, round};

/// The handwork of a recipe.
pub(super) fn handwork(work: &Work, context: Context) -> Handwork {
    let steps = work.steps();
    let shape = |(at, step): (usize, &&Step)| shape(work, (at, step), context);
    let shapes: Vec<ShapeFact> = steps.iter().enumerate().filter_map(shape).collect();
    let tray = |(at, step): (usize, &&Step)| tray(work, (at, step, &shapes), context);
    Handwork {
        rolls: rolls(work, context),
        trays: steps.iter().enumerate().filter_map(tray).collect(),
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
        from: from.map(|from| slab(block, &from)),
        to: slab(sheet, thick),
        bench_cm: bench.as_ref().map(|bench| cm(&bench.length)),
        bench: bench.map(|bench| show::length(&bench.length)),
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
            from: beneath(rolled),
            to: slab(&rolled.sheet, &rolled.thickness),
            bench_cm: kit(context.book).bench.map(|bench| cm(&bench.length)),
            bench: kit(context.book).bench.map(|bench| show::length(&bench.length)),
        })
        .collect()
}

/// What lies beneath the pin, its first side the one that becomes the sheet's first.
fn beneath(rolled: &Rolled) -> Option<Slab> {
    let (block, thickness) = (rolled.block.as_ref()?, rolled.block_thickness.as_ref()?);
    Some(slab(block, thickness))
}

fn slab(size: &Size, thickness: &Length) -> Slab {
    Slab {
        length_cm: cm(&size.length),
        width_cm: cm(&size.width),
        thickness_mm: mm(thickness),
        size: show::size(size),
        thickness: show::thickness(thickness),
    }
}

/// What a step shapes: the tin, or the piece of the last cut or division before it.
fn shape(work: &Work, (at, step): (usize, &Step), context: Context) -> Option<ShapeFact> {
    let shaping = &step.shape.as_ref()?.value;
    let fact = match shaping {
        Shaping::Tin => {
            let Tin::Square(length, width, depth) = &work.recipe.tin.as_ref()?.value
            else {
                return None;
            };
            in_tin(length, width, depth.as_ref())
        }
        Shaping::Own(name) => own(
            own_shape(name, context.book.content)?,
            &piece_in_hand(work, at, context.book)?,
        ),
        _ => shaped(shaping, &piece_in_hand(work, at, context.book)?)?,
    };
    Some(ShapeFact { step: step.name.clone(), ..fact })
}

/// The author's shaping of this name.
fn own_shape<'a>(name: &str, content: &'a Content) -> Option<&'a OwnShape> {
    let mut all = content.techniques.iter().flat_map(|technique| &technique.shapes);
    all.find(|shape| shape.name.value == name)
}

/// A piece shaped in words; `None` where it cannot be shaped so.
pub(super) fn shaped(shaping: &Shaping, piece: &Piece) -> Option<ShapeFact> {
    let shaped = dough::shaping::shape(shaping, piece)?;
    Some(fact(shaping.word(), piece, shaped))
}

fn fact(word: &str, piece: &Piece, shaped: Shaped) -> ShapeFact {
    let Shaped { frames, sizes } = shaped;
    let size = Size::new(piece.base.clone(), piece.height.clone());
    let label = |length: Option<&Length>| length.map(show::length);
    let named = match piece.form {
        Form::Lump => Label::default(),
        Form::Round | Form::Square => show::length(&piece.base),
        Form::Triangle | Form::RightTriangle | Form::Rectangle | Form::Strip => {
            show::size(&size)
        }
    };
    ShapeFact {
        step: String::new(),
        shape: word.to_owned(),
        in_tin: false,
        frames,
        own_words: Vec::new(),
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
        base: show::length(&piece.base),
        height: show::length(&piece.height),
        depth: None,
        thickness: piece.thickness.as_ref().map(show::thickness),
    }
}

/// A loaf in its tin.
pub(super) fn in_tin(
    length: &Length,
    width: &Length,
    depth: Option<&Length>,
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
        depth: depth.map(show::length),
        ..fact(Shaping::Tin.word(), &tin, shaped)
    }
}

/// An author's own shaping, its points moved with the piece's sides.
pub(super) fn own(shape: &OwnShape, piece: &Piece) -> ShapeFact {
    let ways = [(&piece.base, &shape.piece.length), (&piece.height, &shape.piece.width)];
    let grown = ways.map(|(real, drawn)| {
        let real = Some(real).filter(|real| real.is_positive());
        real.and_then(|real| real.over(drawn)).unwrap_or_else(|| exact(1, 1))
    });
    let at = |[x, y]: &[Length; 2]| [cm(&(x * &grown[0])), cm(&(y * &grown[1]))];
    let frames = shape.frames.iter().map(|frame| {
        let lines = frame.lines.iter();
        let marks = lines.flat_map(|(line, points)| {
            let points: Vec<At> = points.iter().map(at).collect();
            marks(*line, points)
        });
        Frame::new(Does::Own, marks.collect())
    });
    let shaped = Shaped { frames: frames.collect(), sizes: Sizes::default() };
    ShapeFact {
        own_words: shape.frames.iter().map(|frame| frame.does.clone()).collect(),
        ..fact(&shape.name.value, piece, shaped)
    }
}

fn marks(line: Line, points: Vec<At>) -> Vec<Mark> {
    match line {
        Line::Dough => vec![Mark::Dough(points)],
        Line::Flap => vec![Mark::Flap(points)],
        Line::Fold => vec![Mark::Fold(points)],
        Line::Cut => vec![Mark::Cut(points)],
        Line::Seam => vec![Mark::Seam(points)],
        Line::Filling => vec![Mark::Filling(points)],
        Line::Arrow => {
            points.chunks_exact(2).map(|pair| Mark::Arrow(pair[0], pair[1])).collect()
        }
    }
}

/// The trays of a bake; `None` where the tray or the pieces on it are not known.
fn tray(
    work: &Work,
    (at, step, shapes): (usize, &Step, &[ShapeFact]),
    context: Context,
) -> Option<TrayFact> {
    step.bake.as_ref()?;
    let per_tray = step.per_tray.as_ref()?.value;
    let kit = kit(context.book);
    let size = crate::dough::long_first(kit.tray.as_ref()?);
    let pieces = work.pieces_at(&step.name);
    let of = trays(step, work.recipe, pieces);
    let on_one = per_tray.min(pieces.unwrap_or(per_tray));
    let oven = kit.trays_per_oven.map(u64::from);
    let frame = set_down(work, at, shapes, context);
    let fact = laid(&size, frame.as_ref(), on_one);
    Some(TrayFact {
        step: step.name.clone(),
        per_tray,
        trays: of,
        trays_per_oven: oven,
        loads: oven.map_or(of, |oven| of.div_ceil(oven.max(1))),
        ..fact
    })
}

/// A piece as it is set down: what the last shaping before a step leaves of it, else the
/// piece as it is cut.
fn set_down(
    work: &Work,
    at: usize,
    shapes: &[ShapeFact],
    context: Context,
) -> Option<Frame> {
    let parts = &work.flow.parts;
    let steps = work.steps();
    let own = |before: &usize| parts.is_within(parts.of(*before), parts.of(at));
    let shaping = (0..at).rev().filter(own).find(|step| steps[*step].shape.is_some());
    if let Some(shaping) = shaping {
        let fact = shapes.iter().find(|fact| fact.step == steps[shaping].name)?;
        return fact.frames.last().filter(|_| !fact.in_tin).cloned();
    }
    let piece = piece_in_hand(work, at, context.book)?;
    let (base, height) = (cm(&piece.base), cm(&piece.height));
    let outline = match piece.form {
        Form::Lump => return None,
        Form::Round => dough::shaping::disc([base / 2.0; 2], base / 2.0),
        Form::Triangle => vec![[0.0, 0.0], [base, 0.0], [base / 2.0, height]],
        Form::RightTriangle => vec![[0.0, 0.0], [base, 0.0], [0.0, height]],
        Form::Rectangle | Form::Square | Form::Strip => {
            vec![[0.0, 0.0], [base, 0.0], [base, height], [0.0, height]]
        }
    };
    Some(Frame::new(Does::Own, vec![Mark::Dough(outline)]))
}

/// `count` pieces on a tray of `size`, each as `piece` lies: the way that leaves the most
/// room.
pub(super) fn laid(size: &Size, piece: Option<&Frame>, count: u64) -> TrayFact {
    let piece = piece.filter(|frame| frame.size().iter().all(|side| *side > 0.0));
    let turned = piece.map(Frame::turned);
    let boxed = |frame: &Frame| {
        let [length, width] =
            frame.size().map(|side| Length::centimetres(thousandths(side)));
        Size::new(length, width)
    };
    // As drawn, or a quarter turn from it: whichever way more fit.
    let fits = |frame: &Frame| room(size, &boxed(frame)).fits;
    let piece = match (piece, &turned) {
        (Some(one), Some(other)) if fits(other) > fits(one) => Some(other.clone()),
        (one, _) => one.cloned(),
    };
    let boxed = piece.as_ref().map(boxed);
    let square = Size::new(size.width.clone(), size.width.clone());
    let form = rows(size, boxed.as_ref().unwrap_or(&square), count);
    let share = |side: &Length, of: u64| side * &Exact::new(1.into(), of.max(1).into());
    let (along, across) = (share(&size.length, form[0]), share(&size.width, form[1]));
    let place = |[x, y]: [Exact; 2]| [round(&x, 4), round(&y, 4)];
    let room = boxed.as_ref().map(|piece| room(size, piece));
    TrayFact {
        step: String::new(),
        length_cm: cm(&size.length),
        width_cm: cm(&size.width),
        per_tray: count,
        trays: 1,
        trays_per_oven: None,
        loads: 1,
        places_cm: places(size, form, count).into_iter().map(place).collect(),
        along_cm: cm(&along),
        across_cm: cm(&across),
        piece_cm: boxed.as_ref().map(|piece| [cm(&piece.length), cm(&piece.width)]),
        shape: piece,
        fits: room.as_ref().map(|room| room.fits),
        gap: room.map(|room| room.gap.map(|gap| show::length(&gap))),
        tray: show::size(size),
        along: show::length(&along),
        across: show::length(&across),
    }
}

/// A length from a float, cm, to the hundredth of a millimetre.
fn thousandths(amount: f64) -> Exact {
    // In range by the clamp; not-a-number becomes nought.
    exact((amount.clamp(0.0, 1e6) * 1000.0).round() as i64, 1000)
}

/// Centimetres to the micrometre.
fn cm(length: &Length) -> f64 {
    round(length.amount(), 4)
}

fn mm(length: &Length) -> f64 {
    float(&(length.in_millimetres() * Exact::from_integer(1000.into())).round()) / 1000.0
}
