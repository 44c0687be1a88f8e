//! How many pieces there are: of the whole recipe, and of each part of a divided dough.

use num_traits::ToPrimitive;

use crate::dough::cutting::Refusal;
use crate::formula::Flow;
use crate::formula::parts::PartRef;
use crate::measure::{Exact, Mass, exact};
use crate::model::{Divide, Portion, Recipe, Step};

use super::CutWork;

/// A cut by the number of its step, or why it cannot be made.
type Cuts<'a> = &'a [(usize, Result<CutWork, Refusal>)];

fn whole(count: u64, factor: &Exact) -> Option<u64> {
    let pieces = Exact::from_integer(count.into()) * factor;
    pieces.round().to_integer().to_u64().map(|pieces| pieces.max(1))
}

/// Pieces that are alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lot {
    /// The part of the dough that they are of.
    pub part: PartRef,
    /// How many.
    pub pieces: u64,
}

/// The pieces of one recipe at one scale.
pub(super) struct Pieces<'a> {
    pub(super) recipe: &'a Recipe,
    pub(super) flow: &'a Flow,
    pub(super) cuts: Cuts<'a>,
    /// As many as are asked for; `None` for a base dough.
    pub(super) promised: Option<u64>,
    /// How many times the recipe as written, and in how many equal doughs.
    pub(super) scale: (&'a Exact, u64),
}

/// What there is to count.
pub(super) struct Counts {
    /// All pieces; `None` for a base dough.
    pub(super) pieces: Option<u64>,
    /// The pieces that each step has in hand.
    pub(super) in_hand: Vec<Option<u64>>,
    /// The same by lots that are alike.
    pub(super) lots: Vec<Vec<Lot>>,
    /// What the parts of a divided dough give together.
    pub(super) in_parts: Option<u64>,
    /// The weight of a piece, less the loss.
    pub(super) piece: Option<Mass>,
}

impl Pieces<'_> {
    /// All of it. At another scale than the one written, what the parts of a divided dough
    /// give is what there is, whatever was asked for.
    pub(super) fn counts(self, dough: &Mass, as_written: bool) -> Counts {
        let in_parts = self.of_all_parts();
        let promised = in_parts.filter(|_| !as_written).or(self.promised);
        let all = Self { promised, ..self };
        Counts {
            pieces: promised,
            in_hand: all.in_hand(),
            lots: all.lots(),
            in_parts,
            piece: all.weight(dough),
        }
    }

    /// The pieces that each step has in hand; `None` where they are not known.
    fn in_hand(&self) -> Vec<Option<u64>> {
        let steps = 0..self.recipe.steps().count();
        let of = |step| match self.flow.parts.of(step) {
            0 => self.promised,
            part => self.of_part(part),
        };
        steps.map(of).collect()
    }

    /// The lots of pieces that each step has in hand: the parts that come together there from
    /// cuts and shapings of their own, else all that it works on as one; none where their
    /// number is not known.
    fn lots(&self) -> Vec<Vec<Lot>> {
        let in_hand = self.in_hand();
        let of = |(step, pieces): (usize, Option<u64>)| {
            let apart = self.lots_at(step);
            let part = self.flow.parts.of(step);
            let together = || pieces.map(|pieces| Lot { part, pieces });
            if apart.len() > 1 { apart } else { together().into_iter().collect() }
        };
        in_hand.into_iter().enumerate().map(of).collect()
    }

    fn lots_at(&self, step: usize) -> Vec<Lot> {
        let parts = &self.flow.parts;
        let own = parts.of(step);
        let is_last = |part: usize| {
            (0..parts.len()).all(|other| parts.part(other).parent != Some(part))
        };
        let ended = (0..parts.len()).filter(|part| {
            let within = *part != own && parts.is_within(*part, own);
            within && is_last(*part) && parts.part(*part).from < step
        });
        let lot = |part| Some(Lot { part, pieces: self.of_part(part)? });
        ended.map(lot).collect::<Option<Vec<Lot>>>().unwrap_or_default()
    }

    /// The pieces of a part: of its own last cut or division, or of the parts that it is
    /// divided into; else as many as it was divided off as.
    fn of_part(&self, part: usize) -> Option<u64> {
        self.made(part).or_else(|| self.within(part)).or_else(|| self.portioned(part))
    }

    /// The pieces of a part's own last cut, or else its division into pieces.
    fn made(&self, part: usize) -> Option<u64> {
        let own = |at: usize| self.flow.parts.of(at) == part;
        let cuts = self.cuts.iter().filter(|(at, _)| own(*at));
        let cut = cuts.filter_map(|(_, cut)| cut.as_ref().ok()).next_back();
        let cut = cut.map(|cut| cut.layout.pieces.len() as u64 * self.scale.1);
        let steps = self.recipe.steps().enumerate().filter(|(at, _)| own(*at));
        let divided = || {
            let mut divides = steps.filter_map(|(_, step)| step.divide.as_ref());
            divides.find_map(|divide| match &divide.value {
                Divide::Count(count) => whole(*count, self.scale.0),
                Divide::Pieces(_) | Divide::Parts(_) => None,
            })
        };
        cut.or_else(divided)
    }

    /// The pieces of the parts that a part is divided into.
    fn within(&self, part: usize) -> Option<u64> {
        let parts = &self.flow.parts;
        let own =
            (part + 1..parts.len()).filter(|at| parts.part(*at).parent == Some(part));
        own.map(|part| self.of_part(part))
            .reduce(|one, other| Some(one? + other?))
            .flatten()
    }

    /// As many pieces as the division asked for.
    fn portioned(&self, part: usize) -> Option<u64> {
        let own = self.flow.parts.part(part);
        let step: &Step = self.recipe.steps().nth(own.from)?;
        let Divide::Parts(portions) = &step.divide.as_ref()?.value else { return None };
        let mut named = portions
            .iter()
            .filter(|it| Some(it.name.value.as_str()) == own.name.as_deref());
        match named.next()?.portion {
            Portion::Pieces(count, _) => whole(count, self.scale.0),
            Portion::Share(_) | Portion::Weight(_) | Portion::Rest => None,
        }
    }

    /// All pieces that are cut from one batch, where the dough is divided and each part that
    /// is not divided further is cut.
    fn of_all_parts(&self) -> Option<u64> {
        self.flow.parts.are_several().then(|| self.within(0)).flatten()
    }

    /// The weight of the piece that the recipe promises, less the loss: of the last cut that
    /// gives as many, or an even share of `dough`; of a divided dough, of all its cuts where
    /// they are alike.
    pub(super) fn weight(&self, dough: &Mass) -> Option<Mass> {
        let promised = self.promised?;
        let kept = exact(1, 1) - &self.recipe.loss;
        let made = || self.cuts.iter().filter_map(|(_, cut)| cut.as_ref().ok());
        if self.flow.parts.are_several() {
            let first = made().next()?;
            let alike = made().all(|cut| cut.piece == first.piece);
            return alike.then(|| &first.piece * &kept).filter(Mass::is_positive);
        }
        let enough =
            |cut: &&CutWork| cut.layout.pieces.len() as u64 * self.scale.1 >= promised;
        let cut = made().rev().find(enough).map(|cut| &cut.piece * &kept);
        let cut = cut.filter(Mass::is_positive);
        let share = self.scale.0 * &kept / Exact::from_integer(promised.into());
        cut.or_else(|| Some(dough * &share)).filter(Mass::is_positive)
    }
}
