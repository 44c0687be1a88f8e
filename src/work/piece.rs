//! The piece that a step has in hand before it is shaped.

use crate::dough::shaping::Piece;
use crate::formula::Book;
use crate::measure::{Exact, Volume, exact};
use crate::model::{Divide, Step};

use super::Work;

/// The piece that a step has in hand: of the last cut, or of the last division into pieces,
/// of its dough or of the part of it that the step works on.
pub fn piece_in_hand(work: &Work, at: usize, book: Book) -> Option<Piece> {
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
        let (dough, fat) = work.flow.on_bench(at, &work.formula, book);
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

/// Whether a step divides a dough into pieces.
fn gives_pieces(step: &Step) -> bool {
    step.divide.as_ref().is_some_and(|divide| match &divide.value {
        Divide::Count(_) | Divide::Pieces(_) => true,
        Divide::Parts(_) => false,
    })
}
