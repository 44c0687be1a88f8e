//! What one dough consists of.

use crate::measure::{Exact, Mass, Volume, exact};

/// One dough and the fat rolled into it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Batch {
    /// The dough without its roll-in fat.
    pub dough: Mass,
    /// The roll-in fat.
    pub fat: Mass,
    /// Density of the dough, g/ml.
    pub dough_density: Exact,
    /// Density of the fat, g/ml.
    pub fat_density: Exact,
}

impl Batch {
    /// The dough's volume without fat; nothing where the density is not above nought.
    pub fn dough_volume(&self) -> Volume {
        volume(&self.dough, &self.dough_density)
    }

    /// The roll-in fat's volume; nothing where the density is not above nought.
    pub fn fat_volume(&self) -> Volume {
        volume(&self.fat, &self.fat_density)
    }

    /// The volume of dough and fat together.
    pub fn volume(&self) -> Volume {
        self.dough_volume() + self.fat_volume()
    }

    /// The fat's part of the whole volume, 0 to 1.
    pub fn fat_share(&self) -> Exact {
        self.fat_volume().over(&self.volume()).unwrap_or_else(|| exact(0, 1))
    }

    /// Roll-in fat over dough without it, by weight, in percent.
    pub fn fat_percent_of_dough(&self) -> Exact {
        let share = self.fat.over(&self.dough).unwrap_or_else(|| exact(0, 1));
        share * exact(100, 1)
    }
}

fn volume(mass: &Mass, density: &Exact) -> Volume {
    if density <= &exact(0, 1) {
        return Volume::zero();
    }
    Volume::millilitres(mass.amount() / density)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn batch() -> Batch {
        Batch {
            dough: Mass::grams(exact(880, 1)),
            fat: Mass::grams(exact(228, 1)),
            dough_density: exact(11, 10),
            fat_density: exact(95, 100),
        }
    }

    #[test]
    fn knows_its_volumes() {
        let batch = batch();
        assert_eq!(batch.volume(), Volume::millilitres(exact(1040, 1)));
        assert_eq!(batch.fat_share(), exact(240, 1040));
        assert_eq!(batch.fat_percent_of_dough(), exact(22_800, 880));
        let none = Batch { dough_density: exact(0, 1), dough: Mass::zero(), ..batch };
        assert_eq!(none.dough_volume(), Volume::zero());
        assert_eq!(none.fat_percent_of_dough(), exact(0, 1));
    }
}
