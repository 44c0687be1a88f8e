//! How much: `1 lb 4 oz`, `1-1/2 cups`, `two or three`, `half a dozen`, `a quarter of a
//! pound`, `about 500 g`.

use crate::measure::{Exact, Unit, exact};
use crate::model::Quantity;

use super::lexicon::{Lexicon, Locale, is_unspaced, strip_word};
use super::quantity::number;

/// An amount at the start of a text.
#[derive(Clone, Debug)]
pub(super) struct Measured<'a> {
    /// The amount; the middle of a range.
    pub(super) quantity: Quantity,
    /// The ends of a range, as multiples of its middle.
    pub(super) range: Option<(Exact, Exact)>,
    /// Words that say not to take it too exactly: `about`.
    pub(super) hedge: Option<String>,
    /// What follows.
    pub(super) rest: &'a str,
}

/// Why there is no amount where one is expected.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Unmeasured {
    /// None is written.
    Nothing,
    /// A heaped spoon: how high is not known.
    Heaped,
    /// A vessel of no known size: `breakfast-cup`.
    Vessel,
    /// A measure that was another one at other times and places: `Lot`, `livre`.
    Old,
}

/// The amount at the start of `text`.
pub(super) fn measured(text: &str, locale: Locale) -> Result<Measured<'_>, Unmeasured> {
    let words = locale.words;
    let mut hedges: Vec<&str> = Vec::new();
    let text = hedged(text.trim_start(), &mut hedges, &words.hedge);
    // `大さじ2`: the unit stands before its number.
    let lead = words
        .leading
        .iter()
        .find_map(|(word, worth)| Some((worth.clone(), strip_word(text, word)?)));
    if let Some(((worth, unit), rest)) = lead {
        let count = count(rest, locale).ok_or(Unmeasured::Nothing)?;
        let rest = counted(count.rest, words);
        let (half, rest) = and_a_half(rest, words);
        let middle = (count.middle + half) * worth;
        let quantity = Quantity::Unit(middle, unit);
        let hedge = (!hedges.is_empty()).then(|| hedges.join(" "));
        return Ok(Measured { quantity, range: count.range, hedge, rest });
    }
    let count = count(text, locale).ok_or(Unmeasured::Nothing)?;
    let before = hedges.len();
    let rest = hedged(count.rest.trim_start(), &mut hedges, &words.hedge);
    if words.heaped.iter().any(|word| strip_word(rest, word).is_some()) {
        return Err(Unmeasured::Heaped);
    }
    if words.vessels.iter().any(|word| strip_word(rest, word).is_some()) {
        return Err(Unmeasured::Vessel);
    }
    if words.old.iter().any(|word| strip_word(rest, word).is_some()) {
        return Err(Unmeasured::Old);
    }
    // What hedges no unit belongs to the name: `2 large eggs`.
    let (rest, unit) = match unit_after(rest, words) {
        Some((unit, after)) => (after, Some(unit)),
        None => {
            hedges.truncate(before);
            (count.rest.trim_start(), None)
        }
    };
    let rest = match unit {
        // `1 cuillère à soupe rase`: words that hedge a unit from behind.
        Some(_) if words.heaped_behind(rest) => return Err(Unmeasured::Heaped),
        Some(_) => hedged_behind(rest.trim_start(), &mut hedges, words),
        None => rest,
    };
    let hedge = (!hedges.is_empty()).then(|| hedges.join(" "));
    let Some((worth, unit)) = unit else {
        let (quantity, rest) = pieces(count.middle, rest, locale);
        return Ok(Measured { quantity, range: count.range, hedge, rest });
    };
    let (half, rest) = and_a_half(rest, words);
    let first = ((count.middle + half) * worth, unit);
    if count.range.is_some() {
        let quantity = Quantity::Unit(first.0, unit);
        return Ok(Measured { quantity, range: count.range, hedge, rest });
    }
    let (quantity, rest) = summed(first, rest, locale);
    Ok(Measured { quantity, range: None, hedge, rest })
}

/// What follows a word that only counts: `個`.
fn counted<'a>(text: &'a str, words: &Lexicon) -> &'a str {
    let text = text.trim_start();
    let half = |rest: &str| {
        let mut halves = words.halves.iter();
        halves.any(|half| strip_word(rest, half).is_some_and(ends))
    };
    let mut all = words.counters.iter();
    let rest = all
        .find_map(|word| strip_word(text, word).filter(|rest| ends(rest) || half(rest)));
    rest.unwrap_or(text)
}

/// Whether a word of a script without spaces ends where this follows: in `強力粉` the first
/// letter is no word.
fn ends(rest: &str) -> bool {
    !rest.starts_with(is_unspaced)
}

/// Takes the words off that hedge a unit from behind.
fn hedged_behind<'a>(
    text: &'a str,
    found: &mut Vec<&'a str>,
    words: &Lexicon,
) -> &'a str {
    let mut all = words.hedge_behind.iter();
    let rest = all.find_map(|word| {
        let rest = strip_word(text, word)?;
        (ends(rest) || !word.ends_with(is_unspaced)).then_some(rest)
    });
    let Some(rest) = rest else { return text };
    found.push(text[..text.len() - rest.len()].trim_end());
    rest
}

/// A half behind what is counted: `五杯半`.
fn and_a_half<'a>(text: &'a str, words: &Lexicon) -> (Exact, &'a str) {
    let mut all = words.halves.iter();
    let rest = all
        .find_map(|word| strip_word(text.trim_start(), word).filter(|rest| ends(rest)));
    rest.map_or((exact(0, 1), text), |rest| (exact(1, 2), rest))
}

/// Takes the words off that hedge an amount.
fn hedged<'a>(mut text: &'a str, found: &mut Vec<&'a str>, words: &[String]) -> &'a str {
    while let Some(rest) = words.iter().find_map(|word| strip_word(text, word)) {
        found.push(text[..text.len() - rest.len()].trim_end());
        text = rest;
    }
    text
}

/// A number, or a range of them.
struct Count<'a> {
    middle: Exact,
    range: Option<(Exact, Exact)>,
    rest: &'a str,
}

fn count(text: &str, locale: Locale) -> Option<Count<'_>> {
    let words = locale.words;
    let (low, rest) = one(text, locale)?;
    let plain = Count { middle: low.clone(), range: None, rest };
    let trimmed = rest.trim_start();
    let Some(after) = words.range.iter().find_map(|word| strip_word(trimmed, word))
    else {
        return Some(plain);
    };
    let Some((high, rest)) = one(after, locale) else { return Some(plain) };
    // `1-1/2` is one and a half.
    if trimmed.starts_with('-') && high < exact(1, 1) && low.is_integer() {
        return Some(Count { middle: low + high, range: None, rest });
    }
    if high <= low {
        return None;
    }
    let middle = (&low + &high) / exact(2, 1);
    let range = Some((&low / &middle, &high / &middle));
    Some(Count { middle, range, rest })
}

/// One number in figures or in words, with its dozens: `1½`, `one and a half`, `half a`,
/// `two dozen`.
fn one(text: &str, locale: Locale) -> Option<(Exact, &str)> {
    let (comma, words) = (locale.comma, locale.words);
    let text = text.trim_start();
    let (mut value, mut rest) = number(text, comma).or_else(|| in_words(text, words))?;
    let joined = words.sum.iter().find_map(|word| strip_word(rest.trim_start(), word));
    let part =
        joined.and_then(|after| in_words(after, words).or_else(|| number(after, comma)));
    let part = part.filter(|(part, _)| *part < exact(1, 1) && value.is_integer());
    if let Some((part, after)) = part {
        (value, rest) = (value + part, after);
    }
    let after = rest.trim_start();
    for (word, worth) in &words.dozens {
        if let Some(after) = strip_word(article(after, words), word) {
            return Some((value * worth, after));
        }
    }
    // `half a pound`, `¼ of an oz`: the article stands before a unit.
    let measured = article(after, words);
    if measured.len() < after.len() && unit_after(measured, words).is_some() {
        rest = measured;
    }
    Some((value, rest))
}

/// What follows `a`, `an`, `of a` and `of an`.
fn article<'a>(text: &'a str, words: &Lexicon) -> &'a str {
    let found = words.articles.iter().find_map(|word| strip_word(text, word));
    found.unwrap_or(text)
}

/// A number in words.
fn in_words<'a>(text: &'a str, words: &Lexicon) -> Option<(Exact, &'a str)> {
    let mut numbers = words.numbers.iter();
    numbers.find_map(|(word, worth)| {
        let rest = strip_word(text, word)?;
        // In a script without spaces a number may begin a name: `三温糖` is a sugar.
        let counts = !word.ends_with(is_unspaced) || words.is_counted(rest);
        counts.then(|| (worth.clone(), rest))
    })
}

/// The unit at the start of a text, and how much of it is meant: a word of the language, or
/// one or two words that all languages share.
fn unit_after<'a>(text: &'a str, words: &Lexicon) -> Option<((Exact, Unit), &'a str)> {
    let text = text.trim_start();
    let own = words
        .units
        .iter()
        .find_map(|(word, worth)| Some((worth.clone(), strip_word(text, word)?)));
    own.or_else(|| {
        [2, 1].into_iter().find_map(|count| {
            let end = end_of_words(text, count);
            let unit = Unit::parse(&text[..end])?;
            Some(((exact(1, 1), unit), &text[end..]))
        })
    })
}

fn is_batch(text: &str) -> Option<&str> {
    ["batches", "batch"].iter().find_map(|word| strip_word(text, word))
}

/// What is counted: batches, containers of a size that is said, or pieces.
fn pieces(count: Exact, rest: &str, locale: Locale) -> (Quantity, &str) {
    if let Some(after) = is_batch(rest.trim_start()) {
        return (Quantity::Batches(count), after);
    }
    match contained(&count, rest, locale) {
        Some(found) => found,
        None => {
            let after = counted(rest, locale.words);
            let rest = if after.len() < rest.trim_start().len() { after } else { rest };
            (Quantity::Pieces(count, String::new()), rest)
        }
    }
}

/// `(8-ounce) package`, `8-oz package`: so many times that size.
fn contained<'a>(
    count: &Exact,
    rest: &'a str,
    locale: Locale,
) -> Option<(Quantity, &'a str)> {
    let rest = rest.trim_start();
    let (size, after) = match rest.strip_prefix('(') {
        Some(inner) => inner.split_once(')')?,
        None => {
            let end = end_of_words(rest, 1);
            (&rest[..end], &rest[end..])
        }
    };
    let Locale { comma, words } = locale;
    let after = after.trim_start();
    let after = words.containers.iter().find_map(|word| strip_word(after, word))?;
    let (value, unit) = number(size, comma)?;
    let unit = Unit::parse(unit.trim_start_matches(['-', ' ']))?;
    Some((Quantity::Unit(count * value, unit), after))
}

/// Further terms of the same dimension: `1 lb 4 oz`, `3/4 cup plus 2 tbsp`.
fn summed(first: (Exact, Unit), rest: &str, locale: Locale) -> (Quantity, &str) {
    let mut terms = vec![first];
    let mut rest = rest;
    while let Some((value, unit, after)) = term(rest, locale) {
        let last = terms.last().map(|(_, unit)| *unit);
        if !last.is_some_and(|last| last != unit && are_alike(last, unit)) {
            break;
        }
        terms.push((value, unit));
        rest = after;
    }
    match <[_; 1]>::try_from(terms) {
        Ok([(value, unit)]) => (Quantity::Unit(value, unit), rest),
        Err(terms) => (Quantity::Sum(terms), rest),
    }
}

fn term(text: &str, locale: Locale) -> Option<(Exact, Unit, &str)> {
    let Locale { comma, words } = locale;
    let text = text.trim_start();
    let after = words.sum.iter().find_map(|word| strip_word(text, word)).unwrap_or(text);
    let (value, rest) = number(after, comma).or_else(|| in_words(after, words))?;
    let ((worth, unit), rest) = unit_after(rest, words)?;
    Some((value * worth, unit, rest))
}

/// Whether two units are both of weight or both of volume.
fn are_alike(one: Unit, other: Unit) -> bool {
    let share = |unit| unit == Unit::Percent;
    one.grams().is_some() == other.grams().is_some() && !share(one) && !share(other)
}

/// The end of the first so many words.
pub(super) fn end_of_words(text: &str, words: usize) -> usize {
    let is_end = |c: char| c.is_whitespace() || c == '(';
    let mut end = 0;
    for _ in 0..words {
        let rest = &text[end..];
        let skip = rest.len() - rest.trim_start().len();
        end += skip;
        end += text[end..].find(is_end).unwrap_or(text.len() - end);
    }
    // A comma ends a unit and is none of it.
    end - (text[..end].len() - text[..end].trim_end_matches(',').len())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn unit(over: i64, under: i64, unit: Unit) -> Quantity {
        Quantity::Unit(exact(over, under), unit)
    }

    #[test]
    fn amounts_as_a_hundred_years_have_printed_them() {
        let cases = [
            ("1-1/2 cups", unit(3, 2, Unit::Cup)),
            ("1 ½ qts.", unit(3, 2, Unit::Quart)),
            ("2 ozs.", unit(2, 1, Unit::Ounce)),
            ("3 lbs.", unit(3, 1, Unit::Pound)),
            ("1 c.", unit(1, 1, Unit::Cup)),
            ("2 Tb.", unit(2, 1, Unit::Tablespoon)),
            ("2 T", unit(2, 1, Unit::Tablespoon)),
            ("2 t", unit(2, 1, Unit::Teaspoon)),
            ("1,000 g", unit(1000, 1, Unit::Gram)),
            ("one gill", unit(1, 1, Unit::Gill)),
            ("three-quarters of a pound", unit(3, 4, Unit::Pound)),
            ("half a pint", unit(1, 2, Unit::Pint)),
            ("¼ of an oz.", unit(1, 4, Unit::Ounce)),
            ("two and one-fourth cupfuls", unit(9, 4, Unit::Cup)),
            ("one and a half ounces", unit(3, 2, Unit::Ounce)),
            ("2 (8-ounce) packages", unit(16, 1, Unit::Ounce)),
            ("half a dozen", Quantity::Pieces(exact(6, 1), String::new())),
            ("2 dozen", Quantity::Pieces(exact(24, 1), String::new())),
            (
                "1 lb. 4 oz.",
                Quantity::Sum(vec![
                    (exact(1, 1), Unit::Pound),
                    (exact(4, 1), Unit::Ounce),
                ]),
            ),
            (
                "3/4 cup plus 2 tbsp",
                Quantity::Sum(vec![
                    (exact(3, 4), Unit::Cup),
                    (exact(2, 1), Unit::Tablespoon),
                ]),
            ),
        ];
        for (text, quantity) in cases {
            let found = measured(text, Locale::english())
                .map(|found| (found.quantity, found.rest));
            assert_eq!(found, Ok((quantity, "")), "{text}");
        }
    }

    #[test]
    fn ranges_count_as_their_middle() {
        for (text, middle, low) in [
            ("3 to 5 g", exact(4, 1), exact(3, 1)),
            ("2–3", exact(5, 2), exact(2, 1)),
            ("10-12 ozs", exact(11, 1), exact(10, 1)),
            ("four or five", exact(9, 2), exact(4, 1)),
            ("1/2-3/4 cup", exact(5, 8), exact(1, 2)),
        ] {
            let found = measured(text, Locale::english()).expect("an amount");
            let value = match found.quantity {
                Quantity::Unit(value, _) | Quantity::Pieces(value, _) => value,
                other => panic!("{other:?}"),
            };
            let range = found.range.expect("a range");
            assert_eq!((&value, &value * range.0), (&middle, low), "{text}");
        }
        assert!(measured("5 to 3 g", Locale::english()).is_err());
    }

    #[test]
    fn words_that_hedge_are_kept() {
        let found = measured("about 500 g", Locale::english()).expect("an amount");
        assert_eq!(found.hedge.as_deref(), Some("about"));
        let found = measured("2 level teaspoons", Locale::english()).expect("an amount");
        assert_eq!(found.hedge.as_deref(), Some("level"));
        let found = measured("2 large eggs", Locale::english()).expect("an amount");
        assert_eq!((found.hedge.as_deref(), found.rest.trim()), (None, "large eggs"));
        assert_eq!(
            measured("1 heaped teaspoon", Locale::english()).err(),
            Some(Unmeasured::Heaped)
        );
        assert_eq!(
            measured("2 breakfast-cupfuls", Locale::english()).err(),
            Some(Unmeasured::Vessel)
        );
        assert_eq!(measured("some", Locale::english()).err(), Some(Unmeasured::Nothing));
    }
}
