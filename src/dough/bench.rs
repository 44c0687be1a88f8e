//! The dough as it lies on the bench, taken from step to step.

use crate::measure::{Exact, Length, Size, Volume, exact};
use crate::model::{LockIn, Turn};

use super::direction::{LeftBy, Lying};
use super::fit::as_it_fits;
use super::layers::{after_turn, fat_after, plies};
use super::{
    Action, Batch, Direction, Folded, Laminated, LockedIn, Rolled, closed_size,
    usual_block,
};

/// The dough as it lies between two steps.
#[derive(Clone)]
pub(super) struct Bench<'a> {
    batch: &'a Batch,
    block: Option<&'a Size>,
    /// Whether the fat is in the dough.
    pub(super) fat_in: bool,
    /// Whether the fat is outside.
    pub(super) inverted: bool,
    /// Plies lying on one another, every one counted.
    pub(super) plies: u64,
    /// As it lies now; not known before its first sheet.
    lying: Option<Lying>,
    /// How a dough whose sizes are not known was left, where it comes along folded.
    pub(super) left_by: Option<LeftBy>,
    /// The part of the whole dough that is in hand, 0 to 1.
    share: Exact,
    /// What has been made so far.
    pub(super) made: Laminated,
}

impl<'a> Bench<'a> {
    /// An empty bench; the fat is in from the start where no action locks it in.
    pub(super) fn new(
        batch: &'a Batch,
        block: Option<&'a Size>,
        actions: &[Action],
    ) -> Self {
        let fat_in = actions.iter().all(|action| action.lock_in.is_none());
        let made = Laminated::default();
        let (lying, left_by, inverted) = (None, None, false);
        let (share, plies) = (exact(1, 1), 1);
        Self { batch, block, fat_in, inverted, plies, lying, left_by, share, made }
    }

    /// Does one step: rolls, then encloses, then folds.
    pub(super) fn take(&mut self, action: &Action) {
        if let Some(part) = &action.part {
            self.divide(&part.share);
        }
        if let Some(sheet) = &action.sheet {
            self.roll(action, sheet.clone());
        }
        if let Some(kind) = action.lock_in {
            self.inverted |= action.inverted && self.made.fat_layers == 0;
            self.enclose(&action.step, kind);
        }
        if let Some(turn) = action.turn {
            self.fold(&action.step, turn);
        }
    }

    /// Takes a part in hand: what lies there is cut across its longer side.
    fn divide(&mut self, share: &Exact) {
        if self.share <= exact(0, 1) {
            return;
        }
        let kept = share / &self.share;
        self.share = share.clone();
        if let Some(Lying { size, .. }) = &mut self.lying {
            let longer =
                if size.length < size.width { &mut size.width } else { &mut size.length };
            *longer = &*longer * &kept;
        }
    }

    fn roll(&mut self, action: &Action, sheet: Size) {
        let left_by = self.lying.as_ref().map(|lying| lying.left_by).or(self.left_by);
        let way = left_by.map_or(Direction::Any, |left_by| left_by.next(action.same_way));
        let block = self.lying.as_ref().map(|lying| lying.beneath(way, &sheet));
        if left_by != Some(LeftBy::Pin) {
            self.say_next(way);
        }
        let thickness = if action.of_fat && !self.fat_in {
            lie(&self.of_part(&self.batch.fat_volume()), &sheet)
        } else {
            self.thickness(&sheet)
        };
        let (fat_layer, dough_layer) = self.layers_of(&thickness);
        self.made.sheets.push(Rolled {
            step: action.step.clone(),
            sheet: sheet.clone(),
            thickness,
            fat_layer,
            dough_layer,
            fat_layers: self.made.fat_layers,
            way,
            block_thickness: block.as_ref().map(|block| self.thickness(block)),
            block,
        });
        self.lying = Some(Lying { size: sheet, left_by: LeftBy::Pin });
    }

    /// Notes on the last fold which way its block is rolled.
    fn say_next(&mut self, way: Direction) {
        let made = &mut self.made;
        let lock_in = made.lock_in.as_mut().map(|locked| &mut locked.next);
        if let Some(next) = made.folds.last_mut().map(|fold| &mut fold.next).or(lock_in) {
            *next = way;
        }
    }

    fn enclose(&mut self, step: &str, kind: LockIn) {
        if self.made.fat_layers > 0 {
            return;
        }
        let locked = self.lying.take().map(|lying| self.locked(step, kind, lying.size));
        self.fat_in = true;
        self.made.fat_layers = kind.fat_layers() + u64::from(self.inverted);
        self.plies = plies(kind);
        let left_by = match kind {
            LockIn::Envelope => LeftBy::Envelope,
            LockIn::Letter | LockIn::Book => LeftBy::Fold,
        };
        self.left_by = Some(left_by);
        let size = locked.as_ref().map(|locked| locked.closed.clone());
        self.lying = size.map(|size| Lying { size, left_by });
        self.made.lock_in = locked;
    }

    fn locked(&self, step: &str, kind: LockIn, sheet: Size) -> LockedIn {
        let block = match self.block {
            Some(block) => as_it_fits(kind, &sheet, block),
            None => usual_block(kind, &sheet),
        };
        let (dough, fat) = (self.batch.dough_volume(), self.batch.fat_volume());
        let (outer, inner) = if self.inverted { (fat, dough) } else { (dough, fat) };
        LockedIn {
            step: step.into(),
            kind,
            closed: closed_size(kind, &sheet, &block),
            inverted: self.inverted,
            thickness: lie(&self.of_part(&outer), &sheet),
            block_thickness: lie(&self.of_part(&inner), &block),
            next: match kind {
                LockIn::Envelope => Direction::Any,
                LockIn::Letter | LockIn::Book => Direction::QuarterTurn,
            },
            sheet,
            block,
        }
    }

    fn fold(&mut self, step: &str, turn: Turn) {
        let fat_before = self.made.fat_layers;
        let fat_after = fat_after(fat_before, turn, self.inverted);
        self.made.fat_layers = fat_after;
        let plies_before = self.plies;
        let plies_after = after_turn(plies_before, turn);
        self.plies = plies_after;
        self.left_by = Some(LeftBy::Fold);
        let Some(sheet) = self.lying.take().map(|lying| lying.as_sheet()) else { return };
        let part = exact(1, i64::from(turn.parts.max(1)));
        let folded = Size::new(&sheet.length * &part, sheet.width.clone());
        self.made.folds.push(Folded {
            step: step.into(),
            turn,
            folded: folded.clone(),
            folded_thickness: self.thickness(&folded),
            thickness: self.thickness(&sheet),
            sheet,
            fat_before,
            fat_after,
            plies_before,
            plies_after,
            next: Direction::QuarterTurn,
        });
        self.lying = Some(Lying { size: folded, left_by: LeftBy::Fold });
    }

    fn thickness(&self, sheet: &Size) -> Length {
        let batch = self.batch;
        let volume = if self.fat_in { batch.volume() } else { batch.dough_volume() };
        lie(&self.of_part(&volume), sheet)
    }

    /// As much of a volume as is in the part in hand.
    fn of_part(&self, volume: &Volume) -> Volume {
        volume * &self.share
    }

    /// Mean fat and dough layer of a sheet of this thickness.
    fn layers_of(&self, thickness: &Length) -> (Length, Length) {
        let fat_layers = Exact::from_integer(self.made.fat_layers.into());
        if self.made.fat_layers == 0 {
            return (Length::zero(), thickness.clone());
        }
        let fat = self.batch.fat_share();
        let dough = exact(1, 1) - &fat;
        let more = if self.inverted { exact(-1, 1) } else { exact(1, 1) };
        let dough_layers = &fat_layers + more;
        (thickness * &(fat / fat_layers), thickness * &(dough / dough_layers))
    }
}

/// How thick a volume lies on a sheet; nought on no area.
fn lie(volume: &Volume, sheet: &Size) -> Length {
    sheet.thickness(volume).unwrap_or_else(Length::zero)
}
