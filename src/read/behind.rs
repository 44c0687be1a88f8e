//! Amount lines of languages that say the name first, without a space or a comma before the
//! amount: `牛乳 200ml`, `卵1個`, `塩少々`, `砂糖 大さじ2`.

use super::lexicon::{Locale, is_unspaced, strip_word};
use super::measured::{Measured, measured};
use crate::model;

/// Signs that part a name from its amount.
const PARTING: [char; 9] = [' ', '\u{3000}', '\t', '…', '‥', '・', ':', '：', '－'];

/// A line taken apart.
pub(super) struct Ended<'a> {
    /// The ingredient's name.
    pub(super) name: &'a str,
    /// What stands in brackets behind the name, or in front of it and says what it is for.
    pub(super) note: Option<&'a str>,
    /// Its amount.
    pub(super) amount: Amount<'a>,
}

/// What stands at the end of a line.
pub(super) enum Amount<'a> {
    /// An amount, and the words that say it.
    Of(Box<Measured<'a>>, &'a str),
    /// Words in place of one.
    Free(&'a str),
}

/// A line whose name stands first; `None` in languages that say the amount first, and where
/// no amount stands at the end.
pub(super) fn ended(body: &str, locale: Locale) -> Option<Ended<'_>> {
    // An English line stays one: `bread flour for dusting`.
    let is_own = locale.words.says_the_name_first() && body.contains(is_unspaced);
    if !is_own || body.starts_with('[') {
        return None;
    }
    body.char_indices().skip(1).find_map(|(at, _)| {
        let (before, rest) = body.split_at(at);
        // A number is not begun in its middle, nor is the end of a name: `T55`.
        let last = before.chars().next_back()?;
        if last.is_ascii_alphanumeric() || "./⁄０１２３４５６７８９".contains(last)
        {
            return None;
        }
        let name = before.trim_end_matches(PARTING);
        let rest = rest.trim_start_matches(PARTING);
        let (name, note) = noted(name, locale)?;
        Some(Ended { name, note, amount: amount(rest, locale)? })
    })
}

/// An amount, or words in place of one, to the end of the text.
fn amount(text: &str, locale: Locale) -> Option<Amount<'_>> {
    let words = locale.words;
    let whole = |rest: &str| rest.trim().is_empty();
    if let Ok(found) = measured(text, locale)
        && whole(found.rest)
    {
        return Some(Amount::Of(Box::new(found), text.trim_end()));
    }
    let bare = text.trim_matches(['（', '）', '(', ')']).trim();
    let free = words.free.iter().chain(&words.vague);
    let is_free = free.filter_map(|word| strip_word(bare, word)).any(whole);
    // `打ち粉用` stands for no amount.
    let is_for = words.is_purpose(bare);
    (is_free || is_for).then_some(Amount::Free(bare))
}

/// A name without what stands in brackets behind it, or in front of it and says what it is
/// for: `バター（室温）`, `打ち粉用強力粉`.
fn noted(name: &str, locale: Locale) -> Option<(&str, Option<&str>)> {
    let inside =
        name.strip_suffix(['）', ')']).and_then(|it| it.rsplit_once(['（', '(']));
    let (name, note) = match inside {
        Some((before, note)) => (before.trim_end_matches(PARTING), Some(note.trim())),
        None => (name, None),
    };
    let mut ends = locale.words.purpose_behind.iter().flat_map(|word| {
        name.match_indices(word.as_str()).map(|(at, word)| at + word.len())
    });
    let purpose = ends.find(|end| {
        let said = locale.words.purpose_in(&name[..*end]);
        said.is_some_and(|it| it != model::Purpose::Mixed) && *end < name.len()
    });
    let (name, note) = match purpose {
        Some(end) => {
            (name[end..].trim_start_matches(['の', ' ', '\u{3000}']), Some(&name[..end]))
        }
        None => (name, note),
    };
    (!name.is_empty()).then_some((name, note))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Exact, Unit, exact};
    use crate::model::Quantity;

    /// How Japanese recipes write their lines: common practice, no source. The lines with 合
    /// and 杯 are from an old recipe for a custard, read in a stored copy.
    #[test]
    fn the_name_may_stand_first() {
        let unit = |worth: Exact, unit| Some(Quantity::Unit(worth, unit));
        let pieces = |count| Some(Quantity::Pieces(exact(count, 1), String::new()));
        for (text, name, quantity) in [
            ("牛乳 200ml", "牛乳", unit(exact(200, 1), Unit::Millilitre)),
            ("薄力粉100g", "薄力粉", unit(exact(100, 1), Unit::Gram)),
            ("砂糖 大さじ2", "砂糖", unit(exact(2, 1), Unit::Tablespoon)),
            ("塩　小さじ１／２", "塩", unit(exact(1, 2), Unit::Teaspoon)),
            ("バター…大さじ1と1/2", "バター", unit(exact(3, 2), Unit::Tablespoon)),
            ("水 1/2カップ", "水", unit(exact(1, 2), Unit::Cup)),
            ("水 カップ1/2", "水", unit(exact(1, 2), Unit::Cup)),
            ("卵 2個", "卵", pieces(2)),
            ("卵1個", "卵", pieces(1)),
            ("玉子一個", "玉子", pieces(1)),
            ("牛乳一合", "牛乳", unit(exact(180, 1), Unit::Millilitre)),
            ("メリケン粉大匙五杯半", "メリケン粉", unit(exact(11, 2), Unit::Tablespoon)),
            ("砂糖大匙二杯", "砂糖", unit(exact(2, 1), Unit::Tablespoon)),
            ("三温糖 60g", "三温糖", unit(exact(60, 1), Unit::Gram)),
            ("タイプ550小麦粉 500g", "タイプ550小麦粉", unit(exact(500, 1), Unit::Gram)),
            ("フランス粉T55 1/2カップ", "フランス粉T55", unit(exact(1, 2), Unit::Cup)),
            ("塩 ひとつまみ", "塩", None),
            ("レモン汁少々", "レモン汁", None),
            ("強力粉（打ち粉用）", "強力粉", None),
        ] {
            let line = ended(text, Locale::of("ja")).expect(text);
            let found = match line.amount {
                Amount::Of(found, _) => Some(found.quantity),
                Amount::Free(_) => None,
            };
            assert_eq!((line.name, found), (name, quantity), "{text}");
        }
        let line = ended("打ち粉用強力粉 適量", Locale::of("ja")).expect("a line");
        assert_eq!((line.name, line.note), ("強力粉", Some("打ち粉用")));
        let line = ended("バター（室温） 50g", Locale::of("ja")).expect("a line");
        assert_eq!((line.name, line.note), ("バター", Some("室温")));
        assert!(ended("強力粉", Locale::of("ja")).is_none());
        assert!(ended("500 g 強力粉", Locale::of("ja")).is_none());
        assert!(ended("bread flour 500 g", Locale::english()).is_none());
        assert!(ended("bread flour for dusting", Locale::of("ja")).is_none());
    }
}
