//! From exact amounts to the sheet: every number rounded and put into words, once.

mod alternatives;
mod bakes;
mod class;
mod content;
mod course;
mod dough;
mod goals;
mod handwork;
mod kit;
mod lines;
mod notes;
mod nutrition;
mod proofs;
mod prose;
mod steps;
mod technique;
mod time;
mod ways;
mod written;

pub use class::{
    class, grams, lasting, order, order_at_home, plan_sheet, shared_dough, shared_fact,
    weights, who,
};
pub use course::{bench_notes, course};
pub use prose::cue;
pub use technique::technique;

use crate::formula::{Book, MadeOf, Weighed};
use crate::measure::show::{self, Notation};
use crate::measure::{Exact, Label, Length, exact, float, round_to};
use crate::model::{Makes, Recipe, Tin};
use crate::pantry::Kind;
use crate::read::Lexicon;
use crate::words::Words;
use crate::work::Work;

use super::{Outline, Picture, Scale, Sheet, UntoldFact};

/// What the sheet is put into words with.
#[derive(Clone, Copy)]
pub struct Context<'a> {
    /// Recipes and pantry.
    pub book: Book<'a>,
    /// The words of the course's language.
    pub words: &'a Words,
}

impl Context<'_> {
    /// An ingredient as the student reads it: in a second language by the name that it has
    /// there.
    fn ingredient(&self, weighed: &Weighed) -> String {
        let written = weighed.title();
        if self.words.phrases.is_none() {
            return written.to_owned();
        }
        let named = match weighed.source {
            MadeOf::Item(item) => item.shown.as_deref().unwrap_or(written),
            MadeOf::Recipe(recipe) => &recipe.title.value,
        };
        self.words.phrase(written).unwrap_or(named).to_owned()
    }

    /// Whether the course has a scale that shows 0.1 g.
    fn fine(&self) -> bool {
        self.book.content.course.as_ref().is_none_or(|course| course.fine_scale)
    }
}

/// A recipe by its name and steps alone: nothing of it is worked out.
pub fn outline(recipe: &Recipe) -> Outline {
    let step = |step: &crate::model::Step| [step.name.clone(), step.title.value.clone()];
    Outline {
        recipe: recipe.name.clone(),
        title: recipe.title.value.clone(),
        steps: recipe.steps().map(step).collect(),
    }
}

/// What of it stands in the first language, in an edition in another one.
fn untold(recipe: &Recipe) -> Option<UntoldFact> {
    let untold = recipe.untold.as_ref()?;
    let parts = recipe.parts.iter().enumerate();
    let parts = parts.filter(|(_, part)| untold.parts.contains(part.name()));
    Some(UntoldFact {
        language: untold.language.clone(),
        head: untold.head,
        parts: parts.map(|(at, _)| at).collect(),
    })
}

/// The sheet of a recipe worked out. `faults` are the names of the faults found in it.
pub fn recipe(work: &Work, faults: &[&str], context: Context) -> Sheet {
    let recipe = work.recipe;
    let contents = content::contents(work);
    let cautions = content::cautions(work, &contents);
    let (formula, totals) = lines::table(work, context);
    Sheet {
        facts: 1,
        recipe: recipe.name.clone(),
        title: recipe.title.value.clone(),
        summary: recipe.summary.clone(),
        untold: untold(recipe).map(Box::new),
        family: recipe.family.as_ref().map(|family| context.words.author(family)),
        picture: recipe.picture.as_ref().map(|shown| {
            let shown = steps::picture(shown, context.words);
            Box::new(Picture { printed: recipe.printed, ..shown })
        }),
        printed: recipe.printed,
        scale: scale(work, context),
        formula,
        totals,
        preferments: lines::preferments(work, context),
        lamination: dough::lamination(work, context.words),
        cuts: dough::cuts(work, context),
        handwork: handwork::handwork(work, context),
        time: time::time(work, context.words),
        bakes: bakes::bakes(work, context),
        proofs: proofs::proofs(work, context),
        mixing: goals::mixing(work),
        goals: goals::goals(work),
        notes: notes::notes(work, context),
        water: content::water(work, context),
        allergens: content::allergens(&contents, context),
        nutrition: nutrition::nutrition(work, &contents, context),
        cost: content::cost(work, &contents, context),
        caution_texts: content::caution_texts(&cautions, context),
        cautions,
        faults: faults.iter().map(|name| (*name).to_owned()).collect(),
        opening: prose::blocks(&recipe.opening, None, work, context),
        parts: steps::parts(work, context),
        videos: recipe
            .videos
            .iter()
            .map(|it| steps::video_sheet(it, context.words))
            .collect(),
        way: ways::of(work, context).map(Box::new),
        ways: ways::ways(work, context),
        since: None,
    }
}

fn scale(work: &Work, context: Context) -> Scale {
    Scale {
        factor: float(&work.factor),
        pieces: work.pieces,
        piece_g: work.piece.as_ref().map(|mass| round(mass.amount(), 2)),
        piece: portion(work, context)
            .map(|shown| shown.map(|one| one.words(context.words)))
            .map(|[metric, us]| Label::new(metric, us)),
        doughs: work.doughs,
        makes: makes(work, context),
        batch: batch(&work.factor, context.words),
    }
}

/// What one piece is scaled to, in metric and US units: never more than the batch has for
/// each. A piece that is cut is not scaled: its weight is to the nearest.
pub(super) fn portion(work: &Work, context: Context) -> Option<[show::Shown; 2]> {
    let tolerance = exact(3, 100);
    let mass = work.piece.as_ref()?;
    let pieces = work.pieces.filter(|_| !is_cut(work)).unwrap_or(1);
    Some([
        show::metric_portion(mass, pieces, &tolerance, context.fine()),
        show::us_portion(mass, pieces, &tolerance),
    ])
}

/// Whether the pieces are cut from a sheet, by a cut that can be made.
pub(super) fn is_cut(work: &Work) -> bool {
    work.cuts.iter().any(|(_, cut)| cut.is_ok())
}

/// `22 crescents`, `13 rolls (12–14)`, `2 tins, 23 cm round`, `1150 g`.
fn makes(work: &Work, context: Context) -> Label {
    match work.recipe.makes.as_ref().map(|makes| &makes.value) {
        Some(Makes::Pieces { word, count, range }) => {
            let pieces = work.pieces.unwrap_or(*count);
            let word = Lexicon::of(&context.words.language).inflect(
                &context.words.author(word),
                *count == 1,
                pieces == 1,
            );
            let number = pieces.to_string();
            let words = [("count", &*number), ("name", &*word)];
            let words = context.words.fill("so-many", &words);
            let written = work.factor == exact(1, 1) && pieces == *count;
            Label::same(match range.filter(|_| written) {
                None => words,
                Some(ends) => {
                    let [low, high] = ends.map(|end| end.to_string());
                    let range = context.words.range(&low, &high);
                    let values = [("pieces", &*words), ("range", &range)];
                    context.words.fill("pieces-range", &values)
                }
            })
        }
        Some(Makes::Tins { count, tin: written }) => {
            let tins = work.pieces.unwrap_or(*count);
            let tin = tin(work.tin.as_ref().unwrap_or(written), context);
            let number = Label::same(tins.to_string());
            let values = [("number", &number), ("count", &number), ("tin", &tin)];
            notes::fill("tins", &values, context)
        }
        Some(Makes::Weight(mass)) => {
            lines::weight(&(mass * &work.factor), Kind::Other, context)
        }
        None => {
            lines::weight(&(&work.formula.total() * &work.factor), Kind::Other, context)
        }
    }
}

/// A tin by its sizes: `23 cm round`, `23 × 13 × 7 cm`, `24 × 9 cm ring, hole 8 cm`.
fn tin(tin: &Tin, context: Context) -> Label {
    let (key, sides, depth, hole) = match tin {
        Tin::Round(across, depth) => ("tin-round", vec![across], depth, None),
        Tin::Square(length, width, depth) => {
            ("tin-square", vec![length, width], depth, None)
        }
        Tin::Ring(across, hole, depth) => ("tin-ring", vec![across], depth, Some(hole)),
    };
    let sides: Vec<&Length> = sides.into_iter().chain(depth).collect();
    let hole = hole.map(|hole| show::tin(&[hole], context.words)).unwrap_or_default();
    notes::fill(
        key,
        &[("size", &show::tin(&sides, context.words)), ("hole", &hole)],
        context,
    )
}

/// `1 batch`, `½ batch`, `2 batches`.
fn batch(factor: &Exact, words: &Words) -> String {
    let number = show::vulgar(factor).unwrap_or_else(|| show::number(factor, 2, words));
    // What is shown as one is one, and what is no vulgar fraction is none at all.
    let hundredth = round_to(factor, &exact(1, 100));
    let least = || words.under(&show::number(&exact(1, 100), 2, words));
    let number = if hundredth.is_zero() { least() } else { number };
    let count =
        if hundredth > exact(1, 1) { show::plain(&hundredth) } else { "1".to_owned() };
    words.fill("batch", &[("number", &number), ("count", &count)])
}

/// A float of `places` decimals, for JSON that people read.
pub(super) fn round(value: &Exact, places: u32) -> f64 {
    float(&round_to(value, &exact(1, 10_i64.pow(places))))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_rounded_to_the_nearest_float() {
        let overs = [0, 1, -1, 7, 95, -123_456_789, 999_999_999_999, i64::MAX, i64::MIN];
        for over in overs {
            for under in [1, 2, 3, 8, 254, 1_000_003, i64::MAX] {
                for places in [0, 1, 2, 4] {
                    let value = exact(over, under);
                    let scale = exact(10_i64.pow(places), 1);
                    let fraction = (&value * &scale).round() / scale;
                    assert_eq!(round(&value, places), float(&fraction), "{value}");
                }
            }
        }
    }
}
