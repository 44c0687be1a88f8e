//! Nutrients in figures and in words.

use crate::formula::{self, Contents, declare};
use crate::measure::show::{self, Notation, Sign};
use crate::measure::{Exact, Mass, Unit, exact};
use crate::work::Work;

use super::super::{NutrientWords, Nutrients, Nutrition};
use super::{Context, round};

/// Nutrients per piece and per 100 g. The loss before scaling takes its nutrients along;
/// the bake drives off weight alone.
pub(super) fn nutrition(
    work: &Work,
    contents: &Contents,
    context: Context,
) -> Option<Nutrition> {
    let sums = formula::nutrients(contents)?;
    let total: Mass = contents.values().map(|(_, mass)| mass.clone()).sum();
    let one = exact(1, 1);
    let piece = work
        .pieces
        .map(|pieces| (&one - &work.recipe.loss) / Exact::from_integer(pieces.into()))
        .map(|share| scaled(&sums, &share));
    let bake_loss = work.recipe.bake_loss.as_ref();
    let baked = &total * &(bake_loss.map_or_else(|| one.clone(), |loss| &one - loss));
    let hundred = Mass::grams(exact(100, 1)).over(&baked)?;
    Some(Nutrition {
        per_piece: piece.as_deref().map(figures),
        per_piece_rounded: piece.as_deref().and_then(|piece| words(piece, context)),
        per_100_g: figures(&scaled(&sums, &hundred)),
        bake_loss_percent: bake_loss.map(|loss| round(&(loss * exact(100, 1)), 2)),
        estimate: true,
    })
}

fn scaled(sums: &[Exact], share: &Exact) -> Vec<Exact> {
    sums.iter().map(|sum| sum * share).collect()
}

fn figures(amounts: &[Exact]) -> Nutrients {
    let of = |at: usize| amounts.get(at).map_or(0.0, |amount| round(amount, 2));
    Nutrients {
        energy_kcal: of(0),
        protein_g: of(1),
        fat_g: of(2),
        saturated_g: of(3),
        carbohydrate_g: of(4),
        sugars_g: of(5),
        fibre_g: of(6),
        sodium_mg: of(7),
        salt_g: amounts.get(7).map_or(0.0, |mg| round(&declare::salt(mg), 2)),
    }
}

fn words(amounts: &[Exact], context: Context) -> Option<NutrientWords> {
    let [kcal, protein, fat, saturated, carbohydrate, sugars, fibre, sodium] = amounts
    else {
        return None;
    };
    let with =
        |digits: &str, sign| context.words.of(&show::marked(digits, context.words), sign);
    let fat_words = |grams: &Exact| with(&declare::fat(grams), Sign::GRAM);
    let other = |grams: &Exact| {
        declare::other(grams).map_or_else(
            || context.words.under(&with("1", Sign::GRAM)),
            |grams| with(&grams, Sign::GRAM),
        )
    };
    Some(NutrientWords {
        energy: with(&declare::energy(kcal), Sign::Kilocalorie),
        protein: other(protein),
        fat: fat_words(fat),
        saturated: fat_words(saturated),
        carbohydrate: other(carbohydrate),
        sugars: other(sugars),
        fibre: other(fibre),
        sodium: with(&declare::sodium(sodium), Sign::Amount(Unit::Milligram)),
    })
}
