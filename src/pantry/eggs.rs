//! Sizes of egg: what the words `small`, `medium` and `large` weigh without the shell.

use crate::measure::{Exact, exact};

use super::item::{Item, Portion};

/// EU class A eggs by the middle of their class in grams with the shell: small under 53,
/// medium 53 to 63, large 63 to 73, extra large from 73 (Delegated Regulation (EU)
/// 2023/2465). The open ends are taken as wide as the classes between. An egg without a
/// word is a medium one.
const EU: [(&str, i64); 5] =
    [("small", 48), ("medium", 58), ("large", 68), ("extra large", 78), ("each", 58)];

/// What is left of an egg without its shell: a US large egg weighs 24 oz a dozen with it
/// (US Standards for Shell Eggs, AMS 56) and 50 g without it (USDA SR28 NDB 01123).
fn edible() -> Exact {
    exact(50, 1) / (exact(2, 1) * exact(45_359_237, 1_600_000))
}

/// White over the whole egg: 33 g of 50 (USDA SR28 NDB 01124), yolk 17 of 50 (NDB 01125).
const PARTS: [(&str, (i64, i64)); 3] =
    [("egg", (50, 50)), ("egg white", (33, 50)), ("egg yolk", (17, 50))];

/// Gives egg, egg white and egg yolk the EU sizes, to the gram.
pub(super) fn eu(items: &mut [Item]) {
    for (name, (over, under)) in PARTS {
        let Some(item) = items.iter_mut().find(|item| item.name == name) else {
            continue;
        };
        item.portions.retain(|portion| matches!(portion, Portion::Volume(..)));
        item.portions.extend(EU.map(|(word, shell)| {
            let grams = (exact(shell, 1) * edible() * exact(over, under)).round();
            Portion::Piece(word.to_owned(), grams)
        }));
    }
}

#[cfg(test)]
mod tests {
    use super::super::Pantry;
    use super::*;
    use crate::model::EggClasses;

    /// USDA SR28 NDB 01123 to 01125: a US large egg is 50 g, its white 33 g, its yolk 17 g.
    /// A US large egg falls into the EU class M (AMS 56; Delegated Regulation (EU)
    /// 2023/2465), so the two differ by no more than their classes do.
    #[test]
    fn the_word_large_is_worth_what_the_course_says() {
        let grams = |eggs, name: &str, word: &str| {
            let mut pantry = Pantry::built_in();
            if eggs == EggClasses::Eu {
                eu(&mut pantry.items);
            }
            pantry.find(name).and_then(|item| item.piece(word).cloned())
        };
        for (name, us, medium, large) in
            [("egg", 50, 51, 60), ("egg white", 33, 34, 40), ("egg yolk", 17, 17, 20)]
        {
            assert_eq!(grams(EggClasses::Us, name, "large"), Some(exact(us, 1)));
            assert_eq!(grams(EggClasses::Eu, name, "medium"), Some(exact(medium, 1)));
            assert_eq!(grams(EggClasses::Eu, name, "large"), Some(exact(large, 1)));
        }
        assert_eq!(grams(EggClasses::Eu, "egg", "jumbo"), None);
        assert_eq!(grams(EggClasses::Eu, "egg", "each"), Some(exact(51, 1)));
        // USDA SR28 NDB 01123: the US classes.
        for (word, weight) in
            [("small", 38), ("medium", 44), ("extra large", 56), ("jumbo", 63)]
        {
            assert_eq!(grams(EggClasses::Us, "egg", word), Some(exact(weight, 1)));
        }
    }
}
