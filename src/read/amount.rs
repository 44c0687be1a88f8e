//! Amount lines: `225 g (1 cup) butter, cold`.

mod refused;
mod share;
#[cfg(test)]
mod tests;
mod turned;

use crate::fault::{Fault, Place, Placed};
use crate::measure::{Temperature, Unit};
use crate::model::{Amount, AmountLine, Ingredient, Purpose, Quantity};
use crate::said;

use super::behind;
use super::lexicon::{Lexicon, Locale, strip_word};
use super::measured::{Measured, Unmeasured, measured};
use super::purpose;
use super::quantity::temperature;

pub(crate) use refused::bad_amount;
use refused::{heaped, old, unreadable, vessel};
pub(super) use share::part;
pub(crate) use share::share;

/// Reads one amount line.
///
/// # Errors
/// `bad-amount` where no amount can be read, `bad-link` where the link is not to a recipe
/// in this folder.
pub(crate) fn line(text: &Placed<String>, locale: Locale) -> Result<AmountLine, Fault> {
    let whole = text.value.trim();
    let (body, note) = split_note(whole);
    let reader = Reader { text, whole, locale };
    if let Some(line) = behind::ended(body, locale) {
        return reader.ended(&line, note);
    }
    if let Some((words, rest)) = vague(body, locale.words) {
        return reader.weightless(words, after_of(rest, locale.words), note);
    }
    match measured(body, locale) {
        // `A piece of butter, 1½ oz` has its amount behind.
        Ok(_) if piece_of(body, locale.words).len() < body.len() => {
            reader.turned(body, note)
        }
        Ok(found) => reader.measured(found, body, note),
        Err(Unmeasured::Nothing) => reader.turned(body, note),
        Err(Unmeasured::Heaped) => Err(heaped(&text.place)),
        Err(Unmeasured::Vessel) => Err(vessel(&text.place)),
        Err(Unmeasured::Old) => Err(old(&text.place)),
    }
}

/// A line by its words alone; `None` where it does not read.
pub(crate) fn line_of(text: &str, locale: Locale) -> Option<AmountLine> {
    let place = Place::new(&"".into(), 0, text.len());
    line(&Placed::new(text.to_owned(), place), locale).ok()
}

/// Where the amount at the start of a text ends, and whether it has a unit.
pub(crate) fn behind_amount(text: &str, locale: Locale) -> Option<(usize, bool)> {
    let found = measured(text, locale).ok()?;
    let has_unit = match found.quantity {
        Quantity::Unit(..) | Quantity::Sum(_) => true,
        Quantity::Pieces(..) | Quantity::Batches(_) => false,
    };
    Some((text.len() - found.rest.len(), has_unit))
}

/// The line that is being read.
#[derive(Clone, Copy)]
struct Reader<'a> {
    text: &'a Placed<String>,
    whole: &'a str,
    locale: Locale,
}

impl<'a> Reader<'a> {
    /// A line that begins with its amount.
    fn measured(
        self,
        found: Measured<'a>,
        body: &'a str,
        note: Option<&'a str>,
    ) -> Result<AmountLine, Fault> {
        let rest = found.rest.trim_start();
        if let (Quantity::Pieces(..), Some((_, name))) =
            (&found.quantity, vague(rest, self.locale.words))
        {
            let words = body[..offset(body, name)].trim();
            let of = self.locale.words.of.iter();
            let bare = of.clone().find_map(|word| words.strip_suffix(word.as_str()));
            let name = after_of(name, self.locale.words);
            return self.weightless(bare.unwrap_or(words).trim(), name, note);
        }
        let end = offset(self.whole, found.rest);
        let place = self.text.place.part(0, end);
        let mut remarks: Vec<&str> = Vec::new();
        let (also, rest) = self.second(found.rest, &mut remarks);
        let (name, at) =
            own_temperature(after_of(rest.trim_start(), self.locale.words).trim());
        let (more, name) = self.behind(name, &mut remarks);
        remarks.extend(note);
        Ok(AmountLine {
            amount: Amount::Of(Placed::new(found.quantity, place)),
            range: found.range,
            hedge: found.hedge,
            also: also.or(more),
            note: (!remarks.is_empty()).then(|| remarks.join(", ")),
            at,
            purpose: purpose::of_note(note, self.locale.words),
            ..self.bare(name)?
        })
    }

    /// A line of this ingredient and nothing else.
    fn bare(self, name: &str) -> Result<AmountLine, Fault> {
        let start = offset(self.whole, name);
        let place = self.text.place.part(start, start + name.len());
        Ok(AmountLine {
            amount: Amount::Free(String::new()),
            range: None,
            hedge: None,
            also: None,
            ingredient: Placed::new(ingredient(name, self.text)?, place),
            note: None,
            at: None,
            purpose: Purpose::default(),
            optional: self.locale.words.is_optional(self.whole),
            stands_for: Vec::new(),
            place: self.text.place.clone(),
        })
    }

    /// A line that carries no weight.
    fn weightless(
        self,
        words: &str,
        name: &str,
        note: Option<&str>,
    ) -> Result<AmountLine, Fault> {
        let note = note.map(str::to_owned);
        Ok(AmountLine {
            amount: Amount::Free(words.to_owned()),
            note,
            purpose: purpose::of_free(words, self.locale.words),
            ..self.bare(name.trim())?
        })
    }

    /// A second amount in brackets before the name; another remark there is a note.
    fn second(
        self,
        rest: &'a str,
        remarks: &mut Vec<&'a str>,
    ) -> (Option<Placed<Quantity>>, &'a str) {
        let inside =
            rest.trim_start().strip_prefix('(').and_then(|it| it.split_once(')'));
        let Some((inner, after)) = inside else { return (None, rest) };
        (self.bracket(inner, remarks), after)
    }

    /// The same behind the name: `flour (sifted)`; and words that join it to the next line.
    fn behind(
        self,
        name: &'a str,
        remarks: &mut Vec<&'a str>,
    ) -> (Option<Placed<Quantity>>, &'a str) {
        if name.starts_with('[') {
            return (None, name);
        }
        let mut name = name;
        let mut also = None;
        let inside = name.strip_suffix(')').and_then(|it| it.rsplit_once('('));
        if let Some((before, inner)) = inside {
            name = before.trim_end();
            also = self.bracket(inner, remarks);
        }
        let joints = &self.locale.words.joints;
        while let Some((before, _)) = name
            .rsplit_once(' ')
            .filter(|(_, last)| joints.iter().any(|word| word == last))
        {
            name = before.trim_end();
        }
        (also, name)
    }

    /// What stands in brackets: a second amount, or a remark.
    fn bracket(
        self,
        inner: &'a str,
        remarks: &mut Vec<&'a str>,
    ) -> Option<Placed<Quantity>> {
        let found = measured(inner, self.locale).ok();
        let whole = found.filter(|found| {
            found.rest.trim().is_empty() && found.range.is_none() && is_measure(found)
        });
        if whole.is_none() {
            remarks.push(inner.trim());
        }
        let start = offset(self.whole, inner);
        let place = self.text.place.part(start, start + inner.len());
        whole.map(|found| Placed::new(found.quantity, place))
    }
}

/// Whether an amount is in units, rather than a number of pieces.
fn is_measure(found: &Measured) -> bool {
    matches!(found.quantity, Quantity::Unit(..) | Quantity::Sum(_))
}

/// Words for an amount without a weight at the start, and what follows: `a pinch`.
fn vague<'a>(text: &'a str, words: &Lexicon) -> Option<(&'a str, &'a str)> {
    if words.hedge.iter().any(|word| strip_word(text, word).is_some()) {
        return None;
    }
    let rest = words.vague.iter().find_map(|word| strip_word(text, word))?;
    let end = text.len() - rest.len();
    (!rest.is_empty()).then(|| (text[..end].trim(), rest))
}

/// A name without the word that joins it to its amount.
fn after_of<'a>(text: &'a str, words: &Lexicon) -> &'a str {
    let text = text.trim_start();
    words.of.iter().find_map(|word| strip_word(text, word)).unwrap_or(text)
}

/// `A piece of butter` is butter.
fn piece_of<'a>(body: &'a str, words: &Lexicon) -> &'a str {
    words.piece.iter().find_map(|word| strip_word(body, word)).unwrap_or(body)
}

/// A number and unit at the start of `text`, and what follows.
pub(crate) fn quantity(text: &str, comma: bool) -> Option<(Quantity, &str)> {
    quantity_in(text, Locale { comma, ..Locale::english() })
}

/// The same in a language.
pub(super) fn quantity_in(text: &str, locale: Locale) -> Option<(Quantity, &str)> {
    let found = measured(text, locale).ok().filter(|found| found.range.is_none())?;
    Some((found.quantity, found.rest))
}

/// The note after the first comma that stands outside brackets.
fn split_note(text: &str) -> (&str, Option<&str>) {
    let mut depth = 0_usize;
    for (at, sign) in text.char_indices() {
        match sign {
            '(' | '[' | '（' => depth += 1,
            ')' | ']' | '）' => depth = depth.saturating_sub(1),
            ',' if depth == 0 && text[at + 1..].starts_with(' ') => {
                return (&text[..at], Some(text[at + 1..].trim()));
            }
            '、' | '，' if depth == 0 => {
                return (&text[..at], Some(text[at + sign.len_utf8()..].trim()));
            }
            _ => {}
        }
    }
    (text, None)
}

/// `water at 27 °C`: the name and the ingredient's own temperature.
fn own_temperature(text: &str) -> (&str, Option<Temperature>) {
    match text.rsplit_once(" at ") {
        Some((name, degrees)) if temperature(degrees).is_some() => {
            (name.trim(), temperature(degrees))
        }
        _ => (text, None),
    }
}

/// A pantry ingredient, or a link to another recipe.
fn ingredient(name: &str, line: &Placed<String>) -> Result<Ingredient, Fault> {
    let Some(link) = name.strip_prefix('[') else {
        if name.is_empty() {
            return Err(unreadable(line, ""));
        }
        return Ok(Ingredient::Pantry(name.to_owned()));
    };
    let parts = link.split_once("](").and_then(|(title, rest)| {
        let file = rest.strip_suffix(')')?.strip_suffix(".md")?;
        let plain = !file.is_empty() && !file.contains(['/', '\\', '.']);
        plain.then(|| (title.to_owned(), file.to_owned()))
    });
    let (title, recipe) = parts.ok_or_else(|| {
        Fault::error("bad-link", &line.place, said!("link-no-recipe"))
            .help(said!("link-no-recipe-help"))
    })?;
    Ok(Ingredient::Recipe { title, recipe })
}

/// A text parted at the word between two of which one is taken: `butter or lard`.
pub(crate) fn parted<'a>(text: &'a str, words: &Lexicon) -> Option<(&'a str, &'a str)> {
    let text = text.trim();
    let mut starts =
        std::iter::once(0).chain(text.match_indices(' ').map(|(at, _)| at + 1));
    let words = &words.either;
    starts.find_map(|at| {
        let other = words.iter().find_map(|word| strip_word(&text[at..], word))?;
        Some((text[..at].trim(), other))
    })
}

/// Whether a text names a part of what is counted, as in `2 eggs, or the whites of 4`.
pub(crate) fn is_part(text: &str, words: &Lexicon) -> bool {
    words.parts.iter().any(|(word, _)| strip_word(text, word).is_some())
}

/// Whether a word is a unit: `cup`, `teaspoonful`.
pub(crate) fn is_unit(word: &str) -> bool {
    Unit::parse(word).is_some()
}

/// Whether what should be a name goes on with an amount: a number, a sign or a unit.
pub(crate) fn is_amount(name: &str) -> bool {
    let first = name.split_whitespace().next().unwrap_or_default();
    !name.starts_with(char::is_alphabetic) || Unit::parse(first).is_some()
}

/// How far `part`, a slice of `whole`, lies from its start.
fn offset(whole: &str, part: &str) -> usize {
    (part.as_ptr() as usize).saturating_sub(whole.as_ptr() as usize).min(whole.len())
}
