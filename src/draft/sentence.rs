//! The sentences of a text, a heading made of one, and the sizes that stand in it.

use super::phrase;

/// Words that end with a stop without ending a sentence.
const SHORT: [&str; 18] = [
    "lb", "lbs", "oz", "ozs", "tsp", "tbsp", "min", "mins", "hr", "hrs", "approx", "no",
    "in", "deg", "e.g", "i.e", "qt", "pt",
];

/// The sentences of a text.
pub(super) fn sentences(text: &str) -> Vec<&str> {
    let (mut found, mut start) = (Vec::new(), 0);
    for (at, sign) in text.char_indices() {
        let end = at + sign.len_utf8();
        let rest = &text[end..];
        let next = rest.trim_start().chars().next();
        let begins = next.is_none_or(|next| next.is_uppercase() || next.is_ascii_digit());
        let before =
            text[start..at].rsplit([' ', '(']).next().unwrap_or("").to_lowercase();
        let ends = matches!(sign, '.' | '!' | '?')
            && begins
            && (rest.starts_with(' ') || rest.is_empty());
        if ends && !(sign == '.' && SHORT.contains(&before.as_str())) {
            found.push(text[start..end].trim());
            start = end;
        }
    }
    found.push(text[start..].trim());
    found.retain(|sentence| !sentence.is_empty());
    found
}

/// A heading of a step's first words: `Cream the butter and sugar`.
pub(super) fn title(text: &str) -> String {
    let first = text.split(['.', ',', ';', ':', '(', '!', '—']).next().unwrap_or(text);
    let stops = [
        "until", "for", "with", "into", "to", "in", "at", "on", "then", "from", "over",
        "till", "about",
    ];
    let words: Vec<&str> = first.split_whitespace().collect();
    let ends = |word: &&str| stops.contains(word) || phrase::is_figure(word);
    let end = words.iter().skip(1).position(ends).map_or(words.len(), |at| at + 1);
    let short = words[..end.min(6)].join(" ");
    let short =
        short.trim_end_matches(" and").trim_end_matches(" the").trim_end_matches(" a");
    let mut signs = short.chars();
    let title: String = signs
        .next()
        .into_iter()
        .flat_map(char::to_uppercase)
        .chain(signs)
        .take(60)
        .collect();
    if title.chars().any(char::is_alphanumeric) { title } else { "Step".into() }
}

/// Sizes in a text: `9 x 13 inches`, `20 by 20 cm`, `a 2-inch cutter`.
pub(super) fn sizes(text: &str) -> Vec<((usize, usize), String)> {
    let words = phrase::words(text);
    let (mut found, mut at) = (Vec::new(), 0);
    while at < words.len() {
        let is_number =
            |at: usize| words.get(at).is_some_and(|word| phrase::is_figure(word.text));
        let word = |at: usize| words.get(at).map_or("", |word| word.text);
        let times = |at: usize| matches!(word(at), "x" | "X" | "×" | "by");
        let mut end = at + 1;
        let mut sides = vec![word(at)];
        while is_number(at) && times(end) && is_number(end + 1) {
            sides.push(word(end + 1));
            end += 2;
        }
        let unit = end + usize::from(matches!(word(end), "-" | "–"));
        let name = match word(unit).to_lowercase().as_str() {
            "inch" | "inches" => Some("in"),
            "cm" | "centimetres" | "centimeters" => Some("cm"),
            "mm" => Some("mm"),
            _ => None,
        };
        let ranged = at > 1
            && is_number(at - 2)
            && matches!(word(at - 1), "-" | "–" | "to" | "or" | "x" | "by");
        if let Some(name) = name.filter(|_| is_number(at) && sides.len() < 3 && !ranged) {
            found.push((
                (words[at].start, words[unit].end),
                format!("{} {name}", sides.join(" x ")),
            ));
            at = unit;
        }
        at += 1;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_are_short() {
        assert_eq!(
            title("Cream the butter and sugar until light."),
            "Cream the butter and sugar"
        );
        assert_eq!(title("add milk, then stir"), "Add milk");
    }

    #[test]
    fn ends_of_sentences() {
        assert_eq!(
            sentences("Add 1 lb. Butter it. Bake."),
            ["Add 1 lb. Butter it.", "Bake."]
        );
    }
}
