//! Small matters of setting: spaces that must not break, dates in words.

/// A space at which a line must not break.
const BOUND: char = '\u{A0}';

/// `text` with the spaces inside amounts made non-breaking: between a figure and its
/// unit, before a fraction, and on both sides of `×`.
pub(super) fn bind(text: &str) -> String {
    let signs: Vec<char> = text.chars().collect();
    let bound = |at: usize| {
        let before = at.checked_sub(1).and_then(|at| signs.get(at));
        let after = signs.get(at + 1);
        signs[at] == ' ' && before.zip(after).is_some_and(|(a, b)| joins(*a, *b))
    };
    (0..signs.len()).map(|at| if bound(at) { BOUND } else { signs[at] }).collect()
}

fn joins(before: char, after: char) -> bool {
    let figure = is_figure(before);
    before == '×' || after == '×' || figure && (after.is_alphanumeric() || is_unit(after))
}

fn is_figure(sign: char) -> bool {
    sign.is_ascii_digit() || "½⅓⅔¼¾⅛⅜⅝⅞".contains(sign)
}

fn is_unit(sign: char) -> bool {
    matches!(sign, '°' | '%' | '€' | '£')
}

/// Year, month and day of an ISO 8601 date; `None` where it is none.
pub(super) fn date(text: &str) -> Option<[i16; 3]> {
    let date = text.parse::<jiff::civil::Date>().ok().filter(|date| date.year() > 0)?;
    Some([date.year(), date.month().into(), date.day().into()])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn amounts_do_not_break() {
        assert_eq!(bind("500 g of it"), "500\u{A0}g of it");
        assert_eq!(bind("60 × 25 cm long"), "60\u{A0}×\u{A0}25\u{A0}cm long");
        assert_eq!(bind("1 lb 1½ oz"), "1\u{A0}lb 1½\u{A0}oz");
        assert_eq!(bind("190 °C, 20 min"), "190\u{A0}°C, 20\u{A0}min");
        assert_eq!(bind("no 1"), "no 1");
    }

    #[test]
    fn only_a_real_date_is_one() {
        assert_eq!(date("2027-02-15"), Some([2027, 2, 15]));
        assert_eq!(date("spring"), None);
        assert_eq!(date("2027-02-30"), None);
    }
}
