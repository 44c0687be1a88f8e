//! How many layers a lock-in and its turns make, counted in the three usual ways; and how many
//! plies of a dough that is turned with its fat mixed in.

use crate::model::{LockIn, Turn};

/// A lock-in and the turns after it, or turns alone.
///
/// Where the fat is mixed into the dough, in pieces or rubbed in, there is no lock-in and
/// there are no layers of fat to count: only how many plies of dough lie on one another.
///
/// With the fat outside (`inverted`) dough and fat change places: an inverted book is fat,
/// dough, fat. Each turn then lays fat on fat, which merges as dough on dough does, so
/// there is one fat layer more than of dough.
///
/// The order of the turns changes no count. Trimmed or overlapping edges are not
/// modelled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layers {
    /// How the fat was enclosed; `None` where it was mixed in.
    pub lock_in: Option<LockIn>,
    /// Whether the fat is outside.
    pub inverted: bool,
    /// The turns, in order.
    pub turns: Vec<Turn>,
}

impl Layers {
    /// Layers of what was enclosed: those of the lock-in times the parts of every turn.
    /// Stays at the largest number there is where a text asks for more.
    fn enclosed(&self) -> Option<u64> {
        self.lock_in.map(|lock_in| fold_all(lock_in.fat_layers(), &self.turns))
    }

    /// Fat layers: the enclosed ones, and one more where the fat is outside.
    pub fn fat(&self) -> Option<u64> {
        Some(self.enclosed()?.saturating_add(u64::from(self.inverted)))
    }

    /// All layers where dough that touches dough, or fat that touches fat, has merged:
    /// 2 × enclosed + 1.
    pub fn merged(&self) -> Option<u64> {
        Some(self.enclosed()?.saturating_mul(2).saturating_add(1))
    }

    /// Every ply counted: the plies of the lock-in times the parts of every turn.
    pub fn unmerged(&self) -> u64 {
        fold_all(self.lock_in.map_or(1, plies), &self.turns)
    }
}

/// The plies of a lock-in, of dough and of fat: 2 × its enclosed + 1.
pub(super) fn plies(lock_in: LockIn) -> u64 {
    2 * lock_in.fat_layers() + 1
}

fn fold_all(layers: u64, turns: &[Turn]) -> u64 {
    turns.iter().fold(layers, |count, turn| after_turn(count, *turn))
}

/// Layers after one turn of that many before it.
pub(super) fn after_turn(layers: u64, turn: Turn) -> u64 {
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
        Layers { lock_in: Some(lock_in), turns, inverted: false }
    }

    fn count(layers: &Layers) -> [u64; 3] {
        let known = |count: Option<u64>| count.expect("a lock-in has layers of fat");
        [known(layers.fat()), known(layers.merged()), layers.unmerged()]
    }

    fn counts(lock_in: LockIn, parts: &[u32]) -> [u64; 3] {
        count(&layers(lock_in, parts))
    }

    /// Three letter turns of a dough with its fat mixed in: 27 plies, and no layers of fat.
    #[test]
    fn fat_that_is_mixed_in_lies_in_no_layers() {
        let mixed = Layers { lock_in: None, ..layers(LockIn::Envelope, &[3, 3, 3]) };
        assert_eq!((mixed.fat(), mixed.merged(), mixed.unmerged()), (None, None, 27));
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
        assert_eq!(count(&inverted), [28, 55, 81]);
        let step_by_step =
            inverted.turns.iter().fold(2, |fat, turn| fat_after(fat, *turn, true));
        assert_eq!(step_by_step, 28);
    }

    /// Griffin (as above): each turn of n parts takes all layers T to n·T − (n − 1).
    #[test]
    fn agrees_with_the_published_recurrence() {
        let parts = [4, 3, 2, 5];
        let merged = parts.iter().fold(3, |all, n| n * all - (n - 1));
        assert_eq!(layers(LockIn::Book, &[4, 3, 2, 5]).merged(), Some(merged));
    }

    #[test]
    fn stays_whole_on_absurd_input() {
        let counts = counts(LockIn::Letter, &[12; 40]);
        assert_eq!(counts, [u64::MAX; 3]);
    }
}
