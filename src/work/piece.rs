//! The piece that a step has in hand before it is shaped, and as it is set down.

use crate::dough::shaping::{Frame, Piece, Shaped, Sizes, as_cut, in_tin, own, shape};
use crate::formula::parts::PartRef;
use crate::formula::{Book, expand, of_kind};
use crate::measure::{Exact, Volume, exact};
use crate::model::{Content, Divide, OwnShape, ShapedBy, Step, Tin};
use crate::pantry::Kind;

use super::Work;

/// The piece that a step has in hand: of the last cut, or of the last division into pieces,
/// of its dough or of the part of it that the step works on.
pub fn piece_in_hand(work: &Work, at: usize) -> Option<Piece> {
    let parts = &work.flow.parts;
    let own =
        |before: usize| before <= at && parts.is_within(parts.of(at), parts.of(before));
    let cut = work.cuts.iter().rfind(|(cut, _)| own(*cut));
    let steps = work.steps();
    let divided = (0..steps.len())
        .rev()
        .find(|before| own(*before) && gives_pieces(steps[*before]));
    let weighed = || {
        let pieces = work.in_hand.get(at).copied().flatten()?;
        let (dough, fat) = work.flow.on_bench(at, &work.formula);
        let one = exact(1, 1) / Exact::from_integer(pieces.max(1).into());
        let mass = &(&(dough + fat) * &work.factor) * &one;
        let density = &work.layering.batch.dough_density;
        let volume = (*density > exact(0, 1)).then(|| mass.amount() / density)?;
        Some(Piece::of_volume(Volume::millilitres(volume)))
    };
    match (cut, divided) {
        (Some((cut_at, cut)), divided) if divided.is_none_or(|it| it < *cut_at) => {
            let name = &steps.get(*cut_at)?.name;
            let sheets = &work.layering.laminated.sheets;
            let sheet = sheets.iter().rfind(|sheet| sheet.step == *name);
            let thickness = sheet.map(|sheet| &sheet.thickness);
            Some(Piece::cut(&cut.as_ref().ok()?.layout, thickness))
        }
        _ => weighed(),
    }
}

/// What becomes of the piece at a step that shapes it; `None` where nothing is shaped, or
/// where it cannot be shaped so.
pub fn shaped_at(work: &Work, at: usize, book: Book) -> Option<Shaped> {
    let steps = work.steps();
    let piece = || piece_in_hand(work, at);
    let without_sizes = |frames| Shaped { frames, sizes: Sizes::default() };
    let shaping = &steps.get(at)?.shape.as_ref()?.value;
    match shaping.shaped_by() {
        ShapedBy::Tin => match &work.recipe.tin.as_ref()?.value {
            Tin::Square(length, width, depth) => {
                Some(without_sizes(in_tin(length, width, depth.as_ref())))
            }
            Tin::Round(..) | Tin::Ring(..) => None,
        },
        ShapedBy::Author(name) => {
            Some(without_sizes(own(own_shape(name, book.content)?, &piece()?)))
        }
        ShapedBy::Geometry => shape(shaping, &piece()?),
    }
}

/// The author's shaping of this name.
pub fn own_shape<'a>(name: &str, content: &'a Content) -> Option<&'a OwnShape> {
    let mut all = content.techniques.iter().flat_map(|technique| &technique.shapes);
    all.find(|shape| shape.name.value == name)
}

/// A piece of a part as it is set down before a step: as the last shaping leaves it, else as
/// it was cut; `None` where that is not known, and in a tin.
pub fn set_down(work: &Work, part: PartRef, at: usize, book: Book) -> Option<Frame> {
    let parts = &work.flow.parts;
    let steps = work.steps();
    let own = |before: &usize| {
        let of = parts.of(*before);
        parts.is_within(of, part) || parts.is_within(part, of)
    };
    let before = (0..at).rev().filter(own);
    let shaping = before.clone().find(|step| steps[*step].shape.is_some());
    let Some(shaping) = shaping else {
        let last = before.into_iter().find(|step| parts.of(*step) == part).unwrap_or(at);
        return as_cut(&piece_in_hand(work, last)?);
    };
    let is_tin = steps[shaping].shape.as_ref()?.value.shaped_by() == ShapedBy::Tin;
    shaped_at(work, shaping, book).filter(|_| !is_tin)?.frames.pop()
}

/// Whether the dough has yeast or another leavener in it, so that its pieces grow on the
/// tray.
pub fn is_leavened(work: &Work) -> bool {
    let contents = expand(&work.formula, &exact(1, 1));
    of_kind(&contents, Kind::Leavener).is_positive()
}

/// Whether a step divides a dough into pieces.
pub fn gives_pieces(step: &Step) -> bool {
    step.divide.as_ref().is_some_and(|divide| match &divide.value {
        Divide::Count(_) | Divide::Pieces(_) => true,
        Divide::Parts(_) => false,
    })
}
