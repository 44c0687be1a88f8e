//! Lines whose amount stands behind the name, or that have none.

use crate::fault::{Fault, Placed};
use crate::model::{Amount, AmountLine, Ingredient, Purpose, Quantity};

use super::super::behind;
use super::super::lexicon::{Lexicon, Locale, strip_word};
use super::super::measured::measured;
use super::super::purpose;
use super::refused::{bad_amount, unreadable};
use super::{Reader, after_of, is_measure, offset, piece_of};

impl<'a> Reader<'a> {
    /// A line whose amount stands behind the name, or that has none: `whites of 2 eggs`,
    /// `butter, 1 tbsp`, `fine salt, to taste`, `water to mix`.
    pub(super) fn turned(
        self,
        body: &'a str,
        note: Option<&'a str>,
    ) -> Result<AmountLine, Fault> {
        if let Some(line) = self.part_of(body, note) {
            return if names_two(body, self.locale) {
                Err(bad_amount(&self.text.place))
            } else {
                Ok(line)
            };
        }
        let behind =
            note.and_then(|note| Some((note, measured(note, self.locale).ok()?)));
        if let Some((note, found)) = behind.filter(|(_, found)| is_measure(found)) {
            let start = offset(self.whole, note);
            let end = offset(self.whole, found.rest);
            let left = found.rest.trim();
            return Ok(AmountLine {
                amount: Amount::Of(Placed::new(
                    found.quantity,
                    self.text.place.part(start, end),
                )),
                range: found.range,
                hedge: found.hedge,
                note: (!left.is_empty()).then(|| left.to_owned()),
                ..self.bare(piece_of(body, self.locale.words))?
            });
        }
        let (name, words) = free(body, note, self.locale.words)
            .ok_or_else(|| unreadable(self.text, body))?;
        self.weightless(words, name, None)
    }

    /// A line of a language that says the name first.
    pub(super) fn ended(
        self,
        line: &behind::Ended<'a>,
        note: Option<&'a str>,
    ) -> Result<AmountLine, Fault> {
        let notes = line.note.into_iter().chain(note).collect::<Vec<_>>();
        let note = (!notes.is_empty()).then(|| notes.join(", "));
        let words = self.locale.words;
        let (amount, range, hedge, purpose) = match &line.amount {
            behind::Amount::Free(said) => {
                let amount = Amount::Free((*said).to_owned());
                (amount, None, None, purpose::of_free(said, words))
            }
            behind::Amount::Of(found, written) => {
                let start = offset(self.whole, written);
                let place = self.text.place.part(start, start + written.len());
                let amount = Amount::Of(Placed::new(found.quantity.clone(), place));
                let purpose = purpose::of_note(note.as_deref(), words);
                (amount, found.range.clone(), found.hedge.clone(), purpose)
            }
        };
        Ok(AmountLine { amount, range, hedge, note, purpose, ..self.bare(line.name)? })
    }

    /// A part of something counted, under the pantry's name: `the juice of one orange`.
    fn part_of(self, body: &str, note: Option<&str>) -> Option<AmountLine> {
        let words = self.locale.words;
        let mut parts = words.parts.iter();
        let (rest, pattern) =
            parts.find_map(|(word, pattern)| Some((strip_word(body, word)?, pattern)))?;
        let found = measured(after_of(rest, words), self.locale).ok()?;
        let Quantity::Pieces(count, _) = &found.quantity else { return None };
        let (thing, states) = words.thing(found.rest.trim());
        let name = pattern.replace("{}", &singular(&thing.to_lowercase()));
        let start = offset(self.whole, found.rest.trim_start());
        let place = self.text.place.part(start, self.whole.len());
        let count = Quantity::Pieces(count.clone(), String::new());
        let notes =
            [Some(states), note].into_iter().flatten().filter(|note| !note.is_empty());
        let note = notes.collect::<Vec<_>>().join(", ");
        Some(AmountLine {
            amount: Amount::Of(Placed::new(count, self.text.place.part(0, start))),
            range: found.range,
            hedge: found.hedge,
            also: None,
            ingredient: Placed::new(Ingredient::Pantry(name), place),
            note: (!note.is_empty()).then_some(note),
            at: None,
            purpose: Purpose::default(),
            optional: words.is_optional(self.whole),
            stands_for: Vec::new(),
            place: self.text.place.clone(),
        })
    }
}

/// `The yolks of three eggs and one whole egg`: a second amount behind a word that adds.
fn names_two(body: &str, locale: Locale) -> bool {
    let mut sums = locale.words.sum.iter();
    sums.any(|word| {
        let second = body.split_once(&format!(" {word} "));
        second.is_some_and(|(_, second)| measured(second, locale).is_ok())
    })
}

/// A thing's name in the singular: `eggs`, `cherries`.
fn singular(name: &str) -> String {
    if let Some(stem) = name.strip_suffix("ies") {
        return format!("{stem}y");
    }
    name.strip_suffix('s').unwrap_or(name).to_owned()
}

/// The name and the words of a line without a weight: `fine salt, to taste`, `flour for
/// dusting`, `water to mix`.
fn free<'a>(
    body: &'a str,
    note: Option<&'a str>,
    words: &Lexicon,
) -> Option<(&'a str, &'a str)> {
    let words = &words.free;
    let begins = |text: &str| words.iter().any(|word| strip_word(text, word).is_some());
    if let Some(note) = note.filter(|note| begins(note)) {
        return Some((body.trim(), note));
    }
    let mut starts = body.match_indices(' ').map(|(at, _)| at + 1);
    let at = starts.find(|at| begins(&body[*at..]))?;
    Some((body[..at].trim(), body[at..].trim()))
}
