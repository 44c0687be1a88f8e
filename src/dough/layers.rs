//! How many layers a lock-in and its turns make, counted in the three usual ways.

use crate::model::{LockIn, Turn};

/// A lock-in and the turns after it.
///
/// With the fat outside (`inverted`) dough and fat change places: an inverted book is fat,
/// dough, fat. Each turn then lays fat on fat, which merges as dough on dough does, so
/// there is one fat layer more than of dough.
///
/// The order of the turns changes no count. Trimmed or overlapping edges are not
/// modelled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layers {
    /// How the fat was enclosed.
    pub lock_in: LockIn,
    /// Whether the fat is outside.
    pub inverted: bool,
    /// The turns, in order.
    pub turns: Vec<Turn>,
}

impl Layers {
    /// Layers of what was enclosed: those of the lock-in times the parts of every turn.
    /// Stays at the largest number there is where a text asks for more.
    fn enclosed(&self) -> u64 {
        fold_all(self.lock_in.fat_layers(), &self.turns)
    }

    /// Fat layers: the enclosed ones, and one more where the fat is outside.
    pub fn fat(&self) -> u64 {
        self.enclosed().saturating_add(u64::from(self.inverted))
    }

    /// All layers where dough that touches dough, or fat that touches fat, has merged:
    /// 2 × enclosed + 1.
    pub fn merged(&self) -> u64 {
        self.enclosed().saturating_mul(2).saturating_add(1)
    }

    /// Every ply counted: the plies of the lock-in (2 × its fat + 1) times the parts of
    /// every turn.
    pub fn unmerged(&self) -> u64 {
        fold_all(2 * self.lock_in.fat_layers() + 1, &self.turns)
    }
}

fn fold_all(layers: u64, turns: &[Turn]) -> u64 {
    turns.iter().fold(layers, |count, turn| after_turn(count, *turn))
}

/// Layers after one turn of that many before it.
fn after_turn(layers: u64, turn: Turn) -> u64 {
    layers.saturating_mul(u64::from(turn.parts))
}

/// Fat layers after one turn of that many before it. With the fat outside, of every two
/// that meet one is left.
pub(super) fn fat_after(layers: u64, turn: Turn, inverted: bool) -> u64 {
    let outside = u64::from(inverted);
    after_turn(layers.saturating_sub(outside), turn).saturating_add(outside)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn layers(lock_in: LockIn, parts: &[u32]) -> Layers {
        let turns = parts.iter().map(|&parts| Turn::in_parts(parts)).collect();
        Layers { lock_in, turns, inverted: false }
    }

    fn counts(lock_in: LockIn, parts: &[u32]) -> [u64; 3] {
        let layers = layers(lock_in, parts);
        [layers.fat(), layers.merged(), layers.unmerged()]
    }

    #[test]
    fn counts_as_published() {
        use LockIn::{Envelope, Letter};
        let cases: [(LockIn, &[u32], [u64; 3]); 13] = [
            // Griffin, "Understanding the Lamination Layer Calculation Process", Pastry
            // Arts Magazine: 3 × 3 = 9, less 2 touching points.
            (Envelope, &[3], [3, 7, 9]),
            // 27 every ply: common practice, no source.
            (Envelope, &[3, 3], [9, 19, 27]),
            // Fat layers 3ⁿ: EP 0 445 850 A1, [0001]–[0002]. 81 every ply: common
            // practice, no source.
            (Envelope, &[3, 3, 3], [27, 55, 81]),
            // By arithmetic from the formulas above, no source needed.
            (Envelope, &[4, 3], [12, 25, 36]),
            (Envelope, &[4, 4], [16, 33, 48]),
            // 36 fat layers: common practice, no source.
            (Envelope, &[4, 3, 3], [36, 73, 108]),
            // 48, 97, 144 for two book turns and a letter: common practice, no source.
            (Envelope, &[4, 4, 3], [48, 97, 144]),
            // 144 and 256 fat layers: common practice, no source.
            (Envelope, &[4, 3, 4, 3], [144, 289, 432]),
            (Envelope, &[4, 4, 4, 4], [256, 513, 768]),
            // 729 every ply: common practice, no source.
            (Envelope, &[3, 3, 3, 3, 3], [243, 487, 729]),
            // 730 dough layers, 2187 every ply: common practice, no source.
            (Envelope, &[3, 3, 3, 3, 3, 3], [729, 1459, 2187]),
            // 135 every ply: common practice, no source.
            (Letter, &[3, 3, 3], [54, 109, 135]),
            // By arithmetic; 289 dough layers here, all layers in the envelope row above.
            (Letter, &[4, 3, 4, 3], [288, 577, 720]),
        ];
        for (lock_in, parts, expected) in cases {
            assert_eq!(counts(lock_in, parts), expected, "{lock_in:?} {parts:?}");
        }
    }

    /// By arithmetic: fat, dough, fat; three letter turns make 27 layers of dough, and
    /// between and around them 28 of fat.
    #[test]
    fn with_the_fat_outside() {
        let inverted = Layers { inverted: true, ..layers(LockIn::Book, &[3, 3, 3]) };
        let counts = [inverted.fat(), inverted.merged(), inverted.unmerged()];
        assert_eq!(counts, [28, 55, 81]);
        let step_by_step =
            inverted.turns.iter().fold(2, |fat, turn| fat_after(fat, *turn, true));
        assert_eq!(step_by_step, 28);
    }

    /// Griffin (as above): each turn of n parts takes all layers T to n·T − (n − 1).
    #[test]
    fn agrees_with_the_published_recurrence() {
        let parts = [4, 3, 2, 5];
        let merged = parts.iter().fold(3, |all, n| n * all - (n - 1));
        assert_eq!(layers(LockIn::Book, &[4, 3, 2, 5]).merged(), merged);
    }

    #[test]
    fn stays_whole_on_absurd_input() {
        let counts = counts(LockIn::Letter, &[12; 40]);
        assert_eq!(counts, [u64::MAX; 3]);
    }
}
