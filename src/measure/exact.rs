//! Exact fractions: how an amount is kept from the text to the moment it is shown.

use dashu_int::IBig;
use num_traits::ToPrimitive;

use super::Exact;

/// More digits than this in one number are refused: no kitchen needs them.
const MOST_DIGITS: usize = 12;

/// The fraction `over / under`. `under` must not be nought; callers pass constants.
pub fn exact(over: i64, under: i64) -> Exact {
    Exact::new(over.into(), under.into())
}

/// The nearest float, for showing and drawing only.
pub fn float(value: &Exact) -> f64 {
    value.to_f64()
}

/// `value` to the nearest multiple of `step` (which must be above nought), halves away
/// from nought, as people round.
pub fn round_to(value: &Exact, step: &Exact) -> Exact {
    if step.is_zero() {
        return value.clone();
    }
    if let Some(rounded) = value.to_step(step) {
        return rounded;
    }
    let over = value.numer() * step.denom() * 2;
    let under = value.denom() * step.numer();
    let half = if value.is_negative() { -&under } else { under.clone() };
    let steps: IBig = (over + half) / (under * 2);
    Exact::new(steps * step.numer(), step.denom())
}

/// The smallest whole number not below `value`, at least nought.
pub fn ceil(value: &Exact) -> u64 {
    value.ceil().to_integer().to_u64().unwrap_or(0)
}

/// Reads an amount as a baker writes it: `500`, `1.5`, `1,5` (where `comma` says so),
/// `1/2`, `1 1/2`, `½`, `1½`. `None` for anything else, for a fraction over nought and
/// for more than twelve digits.
pub fn parse(text: &str, comma: bool) -> Option<Exact> {
    let text = text.trim();
    if let Some((whole, over, under)) = vulgar(text) {
        return Some(parse_whole(whole)? + exact(over, under));
    }
    if let Some((left, under)) = text.split_once(['/', '⁄']) {
        let (whole, over) = left.trim().rsplit_once(' ').unwrap_or(("", left));
        let under = digits(under.trim())?;
        let part = (under != IBig::ZERO)
            .then(|| Exact::new(digits(over).unwrap_or_default(), under));
        digits(over.trim())?;
        return Some(parse_whole(whole)? + part?);
    }
    parse_decimal(text, comma)
}

fn vulgar(text: &str) -> Option<(&str, i64, i64)> {
    const SIGNS: [(char, i64, i64); 9] = [
        ('½', 1, 2),
        ('⅓', 1, 3),
        ('⅔', 2, 3),
        ('¼', 1, 4),
        ('¾', 3, 4),
        ('⅛', 1, 8),
        ('⅜', 3, 8),
        ('⅝', 5, 8),
        ('⅞', 7, 8),
    ];
    let last = text.chars().last()?;
    let (sign, over, under) = SIGNS.iter().find(|(sign, ..)| *sign == last)?;
    Some((text.strip_suffix(*sign)?.trim(), *over, *under))
}

fn parse_whole(text: &str) -> Option<Exact> {
    let text = text.trim();
    if text.is_empty() {
        Some(exact(0, 1))
    } else {
        digits(text).map(Exact::from_integer)
    }
}

fn parse_decimal(text: &str, comma: bool) -> Option<Exact> {
    let point = if comma && text.contains(',') { ',' } else { '.' };
    let (whole, part) = text.split_once(point).unwrap_or((text, ""));
    if whole.len() + part.len() > MOST_DIGITS || text.ends_with(point) {
        return None;
    }
    let under = IBig::from(10).pow(part.len());
    Some(Exact::new(digits(&format!("{whole}{part}"))?, under))
}

fn digits(text: &str) -> Option<IBig> {
    let plain = !text.is_empty()
        && text.len() <= MOST_DIGITS
        && text.bytes().all(|b| b.is_ascii_digit());
    if plain { text.parse().ok() } else { None }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_what_bakers_write() {
        let cases = [
            ("500", (500, 1)),
            ("1.5", (3, 2)),
            ("1/2", (1, 2)),
            ("1 1/2", (3, 2)),
            ("½", (1, 2)),
            ("1½", (3, 2)),
            ("1 ½", (3, 2)),
            ("0.05", (1, 20)),
        ];
        for (text, (over, under)) in cases {
            assert_eq!(parse(text, false), Some(exact(over, under)), "{text}");
        }
        assert_eq!(parse("1,5", true), Some(exact(3, 2)));
        assert_eq!(parse("1,5", false), None);
    }

    #[test]
    fn refuses_what_is_no_amount() {
        for text in
            ["", "1/0", "a", "1.2.3", "-1", "1e9", "5.", "1234567890123", "1/ 2/3"]
        {
            assert_eq!(parse(text, false), None, "{text}");
        }
    }

    #[test]
    fn rounds_halves_up() {
        assert_eq!(round_to(&exact(1, 4), &exact(1, 2)), exact(1, 2));
        assert_eq!(round_to(&exact(7, 3), &exact(1, 2)), exact(5, 2));
        assert_eq!(round_to(&exact(-1, 4), &exact(1, 2)), exact(-1, 2));
    }

    #[test]
    fn rounding_in_one_division_is_the_same_as_in_fractions() {
        let values = [0, 1, -1, 7, 95, 12_345, -999_999_999_999, i64::MAX, i64::MIN];
        let unders = [1, 3, 8, 254, 1_000_000, i64::MAX];
        let steps = [(1, 2), (1, 16), (5, 1), (254, 100), (i64::MAX, 7)];
        let all = values.iter().flat_map(|over| unders.iter().map(move |it| (over, it)));
        for (over, under) in all {
            for (a, b) in steps {
                let (value, step) = (exact(*over, *under), exact(a, b));
                let whole = (&value / &step).round() * &step;
                assert_eq!(round_to(&value, &step), whole, "{value} to {step}");
            }
        }
    }
}
