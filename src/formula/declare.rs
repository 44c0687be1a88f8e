//! Nutrients rounded as US labels round them: 21 CFR 101.9(c), as tabulated in the FDA's
//! *Food Labeling Guide*, Appendix H (October 2009). The table says nothing of halves: they
//! go up.
//!
//! This is still an estimate and no label: it has neither daily values nor a serving set by
//! law.

use crate::measure::{Exact, exact, round_to, show};

/// Energy: 0 below 5 kcal; to 5 up to 50; to 10 above.
pub fn energy(kcal: &Exact) -> String {
    let step = match kcal {
        kcal if *kcal < exact(5, 1) => return "0".into(),
        kcal if *kcal <= exact(50, 1) => 5,
        _ => 10,
    };
    number(kcal, &exact(step, 1))
}

/// Fat and saturated fat: 0 below ½ g; to ½ g below 5 g; to the gram above.
pub fn fat(grams: &Exact) -> String {
    if *grams < exact(1, 2) {
        return "0".into();
    }
    number(grams, &if *grams < exact(5, 1) { exact(1, 2) } else { exact(1, 1) })
}

/// Carbohydrate, sugars, fibre and protein: 0 below ½ g; "under 1" below 1 g (`None`); to
/// the gram above.
pub fn other(grams: &Exact) -> Option<String> {
    match grams {
        grams if *grams < exact(1, 2) => Some("0".into()),
        grams if *grams < exact(1, 1) => None,
        _ => Some(number(grams, &exact(1, 1))),
    }
}

/// Sodium: 0 below 5 mg; to 5 mg up to 140; to 10 mg above.
pub fn sodium(milligrams: &Exact) -> String {
    let step = match milligrams {
        mg if *mg < exact(5, 1) => return "0".into(),
        mg if *mg <= exact(140, 1) => 5,
        _ => 10,
    };
    number(milligrams, &exact(step, 1))
}

/// Salt in grams from sodium in milligrams: sodium × 2.5, Regulation (EU) 1169/2011
/// Annex I (as the European Commission's Joint Research Centre gives it, *Salt*).
pub fn salt(sodium_mg: &Exact) -> Exact {
    sodium_mg * exact(25, 10_000)
}

fn number(amount: &Exact, step: &Exact) -> String {
    show::decimal(&round_to(amount, step), 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// FDA, *Food Labeling Guide*, Appendix H; the amounts chosen about its bounds.
    #[test]
    fn amounts_about_the_bounds_of_the_table() {
        let hundredths = |n: i64| exact(n, 100);
        for (kcal, shown) in [
            (490, "0"),
            (500, "5"),
            (4700, "45"),
            (4800, "50"),
            (5000, "50"),
            (5300, "50"),
            (5500, "60"),
            (12_700, "130"),
        ] {
            assert_eq!(energy(&hundredths(kcal)), shown, "{kcal}");
        }
        for (grams, shown) in
            [(49, "0"), (50, "0.5"), (474, "4.5"), (475, "5"), (540, "5"), (7873, "79")]
        {
            assert_eq!(fat(&hundredths(grams)), shown, "{grams}");
        }
        for (grams, shown) in [(40, Some("0")), (70, None), (2125, Some("21"))] {
            assert_eq!(other(&hundredths(grams)).as_deref(), shown, "{grams}");
        }
        for (mg, shown) in [
            (400, "0"),
            (6600, "65"),
            (13_800, "140"),
            (14_400, "140"),
            (14_500, "150"),
            (232_550, "2330"),
        ] {
            assert_eq!(sodium(&hundredths(mg)), shown, "{mg}");
        }
    }

    /// 400 mg of sodium are 1 g of salt: Regulation (EU) 1169/2011 Annex I.
    #[test]
    fn salt_is_two_and_a_half_times_sodium() {
        assert_eq!(salt(&exact(400, 1)), exact(1, 1));
    }
}
