//! Rolling, shaping and traying in words and centimetres.

use crate::dough::cutting::Layout;
use crate::dough::shaping::{places, roll_width, rows, wraps};
use crate::dough::{Direction, Laminated, Rolled};
use crate::measure::{Exact, Length, Size, float, show};
use crate::model::{Shaping, Step, Tin};
use crate::work::{Work, kit, trays};

use super::super::{GrowthFact, Handwork, RollFact, ShapeFact, Slab, TrayFact};
use super::{Context, round};

/// The handwork of a recipe.
pub(super) fn handwork(work: &Work, context: Context) -> Handwork {
    let steps = work.steps();
    let shape = |(at, step): (usize, &&Step)| shape(work, (at, step));
    let tray = |step: &&Step| tray(work, step, context);
    Handwork {
        rolls: rolls(work, context),
        shapes: steps.iter().enumerate().filter_map(shape).collect(),
        trays: steps.iter().filter_map(tray).collect(),
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

/// What a step shapes: the tin, or the piece of the last cut before it.
fn shape(work: &Work, (at, step): (usize, &Step)) -> Option<ShapeFact> {
    let shaping = step.shape.as_ref()?.value;
    let fact = if shaping == Shaping::Tin {
        let Tin::Square(length, width, depth) = &work.recipe.tin.as_ref()?.value else {
            return None;
        };
        in_tin(length, width, depth.as_ref())
    } else {
        let (cut_at, cut) = work.cuts.iter().rfind(|(cut, _)| *cut < at)?;
        let steps = work.steps();
        let name = &steps.get(*cut_at)?.name;
        let sheets = &work.layering.laminated.sheets;
        let sheet = sheets.iter().rfind(|sheet| sheet.step == *name);
        piece(shaping, &cut.as_ref().ok()?.layout, sheet.map(|sheet| &sheet.thickness))?
    };
    Some(ShapeFact { step: step.name.clone(), ..fact })
}

/// A piece of a layout shaped; `None` where the piece cannot be shaped so.
pub(super) fn piece(
    shaping: Shaping,
    layout: &Layout,
    thickness: Option<&Length>,
) -> Option<ShapeFact> {
    let fits = match shaping {
        Shaping::Rolled => layout.shape.ends_with("triangle"),
        Shaping::Folded | Shaping::Pinwheel => layout.shape == "square",
        Shaping::Baton => layout.shape == "rectangle",
        Shaping::Tin => false,
    };
    fits.then(|| shaped(shaping, [&layout.base, &layout.height], thickness))
}

/// A piece of these sides shaped.
pub(super) fn shaped(
    shaping: Shaping,
    [base, height]: [&Length; 2],
    thickness: Option<&Length>,
) -> ShapeFact {
    let rolls = matches!(shaping, Shaping::Rolled | Shaping::Baton);
    // A baton goes round along its long side.
    let long = if shaping == Shaping::Baton { base.max(height) } else { height };
    let rolled = thickness.filter(|_| rolls);
    ShapeFact {
        step: String::new(),
        shape: shaping.word().to_owned(),
        base_cm: cm(base),
        height_cm: cm(height),
        depth_cm: None,
        thickness_mm: thickness.map(mm),
        wraps: rolled.and_then(|thick| wraps(long, thick)).map(|times| round(&times, 2)),
        roll_cm: rolled.map(|thick| cm(&roll_width(long, thick))),
        piece: show::size(&Size::new(base.clone(), height.clone())),
        base: show::length(base),
        height: show::length(height),
        depth: None,
        thickness: thickness.map(show::thickness),
    }
}

/// A loaf in its tin.
pub(super) fn in_tin(
    length: &Length,
    width: &Length,
    depth: Option<&Length>,
) -> ShapeFact {
    ShapeFact {
        depth_cm: depth.map(cm),
        depth: depth.map(show::length),
        ..shaped(Shaping::Tin, [length, width], None)
    }
}

/// The trays of a bake; `None` where the tray or the pieces on it are not known.
fn tray(work: &Work, step: &Step, context: Context) -> Option<TrayFact> {
    step.bake.as_ref()?;
    let per_tray = step.per_tray.as_ref()?.value;
    let kit = kit(context.book);
    let size = crate::dough::long_first(kit.tray.as_ref()?);
    let footprint = footprint(work);
    let pieces = work.pieces_at(&step.name);
    let of = trays(step, work.recipe, pieces);
    let on_one = per_tray.min(pieces.unwrap_or(per_tray));
    let oven = kit.trays_per_oven.map(u64::from);
    let fact = laid(&size, footprint.as_ref(), on_one);
    Some(TrayFact {
        step: step.name.clone(),
        per_tray,
        trays: of,
        trays_per_oven: oven,
        loads: oven.map_or(of, |oven| of.div_ceil(oven.max(1))),
        ..fact
    })
}

/// `count` pieces on a tray of `size`.
pub(super) fn laid(size: &Size, piece: Option<&Size>, count: u64) -> TrayFact {
    let square = Size::new(size.width.clone(), size.width.clone());
    let form = rows(size, piece.unwrap_or(&square), count);
    let share = |side: &Length, of: u64| side * &Exact::new(1.into(), of.max(1).into());
    let (along, across) = (share(&size.length, form[0]), share(&size.width, form[1]));
    let place = |[x, y]: [Exact; 2]| [round(&x, 4), round(&y, 4)];
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
        piece_cm: piece.map(|piece| [cm(&piece.length), cm(&piece.width)]),
        tray: show::size(size),
        along: show::length(&along),
        across: show::length(&across),
    }
}

/// A piece as it is set down: what the last shaping leaves of it, else the piece as cut.
fn footprint(work: &Work) -> Option<Size> {
    let (cut_at, cut) = work.cuts.last()?;
    let layout = &cut.as_ref().ok()?.layout;
    let steps = work.steps();
    let shaping =
        steps.iter().rev().find_map(|step| step.shape.as_ref()).map(|it| it.value);
    let sheets = &work.layering.laminated.sheets;
    let sheet = sheets.iter().rfind(|sheet| steps[*cut_at].name == sheet.step);
    let roll = |length: &Length| sheet.map(|sheet| roll_width(length, &sheet.thickness));
    let (base, height) = (&layout.base, &layout.height);
    match shaping {
        // It lies across the tray as long as its base was.
        Some(Shaping::Rolled) => Some(Size::new(roll(height)?, base.clone())),
        Some(Shaping::Baton) => {
            Some(Size::new(roll(base.max(height))?, base.min(height).clone()))
        }
        _ => Some(Size::new(base.clone(), height.clone())),
    }
}

/// Centimetres to the micrometre.
fn cm(length: &Length) -> f64 {
    round(length.amount(), 4)
}

fn mm(length: &Length) -> f64 {
    float(&(length.in_millimetres() * Exact::from_integer(1000.into())).round()) / 1000.0
}
