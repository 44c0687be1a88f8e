//! The dough as it lies on the bench, taken from step to step.

use crate::measure::{Exact, Length, Size, Volume, exact};
use crate::model::{LockIn, Turn};

use super::layers::fat_after;
use super::{
    Action, Batch, Folded, Laminated, LockedIn, Rolled, closed_size, long_first, turned,
    usual_block,
};

/// The dough as it lies between two steps.
pub(super) struct Bench<'a> {
    batch: &'a Batch,
    block: Option<&'a Size>,
    /// Whether the fat is in the dough.
    pub(super) fat_in: bool,
    /// Whether the fat is outside.
    pub(super) inverted: bool,
    /// As it lies now, long side first.
    lying: Option<Size>,
    /// The last folded block, folded side first, until it is rolled out.
    folded: Option<Size>,
    quarter_turned: bool,
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
        let (lying, folded) = (None, None);
        let inverted = false;
        Self { batch, block, fat_in, inverted, lying, folded, quarter_turned: true, made }
    }

    /// Does one step: rolls, then encloses, then folds.
    pub(super) fn take(&mut self, action: &Action) {
        if let Some(sheet) = &action.sheet {
            self.roll(&action.step, long_first(sheet), action.of_fat);
        }
        if let Some(kind) = action.lock_in {
            self.inverted |= action.inverted && self.made.fat_layers == 0;
            self.enclose(&action.step, kind);
        }
        if let Some(turn) = action.turn {
            self.fold(&action.step, turn);
        }
    }

    fn roll(&mut self, step: &str, sheet: Size, of_fat: bool) {
        if let Some(block) = self.folded.take() {
            self.quarter_turned = quarter_turned(&block, &sheet);
        }
        let thickness = if of_fat && !self.fat_in {
            lie(&self.batch.fat_volume(), &sheet)
        } else {
            self.thickness(&sheet)
        };
        let (fat_layer, dough_layer) = self.layers_of(&thickness);
        self.made.sheets.push(Rolled {
            step: step.into(),
            sheet: sheet.clone(),
            thickness,
            fat_layer,
            dough_layer,
            fat_layers: self.made.fat_layers,
            quarter_turned: self.quarter_turned,
        });
        self.lying = Some(sheet);
    }

    fn enclose(&mut self, step: &str, kind: LockIn) {
        if self.made.fat_layers > 0 {
            return;
        }
        let locked = self.lying.take().map(|sheet| self.locked(step, kind, sheet));
        self.fat_in = true;
        self.made.fat_layers = kind.fat_layers() + u64::from(self.inverted);
        self.quarter_turned = true;
        self.lying = locked.as_ref().map(|locked| long_first(&locked.closed));
        // Four flaps folded to the middle give an envelope no direction to turn from.
        let directed = locked.as_ref().filter(|_| kind != LockIn::Envelope);
        self.folded = directed.map(|locked| locked.closed.clone());
        self.made.lock_in = locked;
    }

    fn locked(&self, step: &str, kind: LockIn, sheet: Size) -> LockedIn {
        let block = self.block.cloned().unwrap_or_else(|| usual_block(kind, &sheet));
        let (dough, fat) = (self.batch.dough_volume(), self.batch.fat_volume());
        let (outer, inner) = if self.inverted { (fat, dough) } else { (dough, fat) };
        LockedIn {
            step: step.into(),
            kind,
            closed: closed_size(kind, &sheet, &block),
            inverted: self.inverted,
            thickness: lie(&outer, &sheet),
            block_thickness: lie(&inner, &block),
            sheet,
            block,
        }
    }

    fn fold(&mut self, step: &str, turn: Turn) {
        let fat_before = self.made.fat_layers;
        let fat_after = fat_after(fat_before, turn, self.inverted);
        self.made.fat_layers = fat_after;
        let Some(sheet) = self.lying.take() else { return };
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
            quarter_turned: self.quarter_turned,
        });
        self.lying = Some(long_first(&folded));
        self.folded = Some(folded);
    }

    fn thickness(&self, sheet: &Size) -> Length {
        let batch = self.batch;
        let volume = if self.fat_in { batch.volume() } else { batch.dough_volume() };
        lie(&volume, sheet)
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

/// Whether `sheet` was rolled at right angles to the folding of `block` (folded side
/// first). See [`Rolled::quarter_turned`].
pub(super) fn quarter_turned(block: &Size, sheet: &Size) -> bool {
    let shrinks = |block: &Size| sheet.length < block.length || sheet.width < block.width;
    !shrinks(&turned(block)) || shrinks(block)
}
