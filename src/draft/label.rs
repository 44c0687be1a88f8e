//! The lines of a pasted text that open a part of it, and the marks before a line.

/// What a line says of those that follow, or of itself.
pub(super) enum Label<'a> {
    Ingredients(&'a str),
    Method(&'a str),
    Makes,
    Oven(&'a str),
    Time,
    Besides,
}

/// The words that open a part of a recipe, in cookbooks and on pages.
const INGREDIENTS: [&str; 4] =
    ["ingredients", "you will need", "what you need", "you need"];
const METHOD: [&str; 8] = [
    "method",
    "directions",
    "instructions",
    "preparation",
    "mode",
    "steps",
    "procedure",
    "how to make it",
];
const MAKES: [&str; 9] = [
    "makes",
    "yields",
    "yield",
    "serves",
    "servings",
    "number of servings",
    "sufficient to make",
    "sufficient for",
    "portions",
];
const OVEN: [&str; 4] = ["oven temperature", "oven temp", "oven", "temperature"];
const TIME: [&str; 10] = [
    "prep time",
    "preparation time",
    "cook time",
    "cooking time",
    "baking time",
    "total time",
    "time",
    "average cost",
    "seasonable",
    "cost",
];
const BESIDES: [&str; 5] = ["notes", "note", "nutrition", "tips", "source"];

/// What a line opens: `Ingredients`, `METHOD:`, `Ingredients.—1 lb. of flour, …`.
pub(super) fn label(line: &str) -> Option<Label<'_>> {
    let line = line.trim_start_matches(['#', '*', '_', '=', ' ']);
    let rest = |words: &[&str]| words.iter().find_map(|word| after(line, word));
    if let Some(rest) = rest(&INGREDIENTS) {
        return Some(Label::Ingredients(rest));
    }
    if let Some(rest) = rest(&METHOD) {
        return Some(Label::Method(rest));
    }
    if MAKES.iter().any(|word| begun(line, word).is_some()) {
        return (line.len() < 120).then_some(Label::Makes);
    }
    if let Some(rest) = rest(&OVEN) {
        return Some(Label::Oven(rest));
    }
    if rest(&TIME).is_some() {
        return Some(Label::Time);
    }
    rest(&BESIDES).map(|_| Label::Besides)
}

/// What stands behind a word that is alone on its line, or has a colon, a dash or both.
fn after<'a>(line: &'a str, word: &str) -> Option<&'a str> {
    let rest = begun(line, word)?;
    let marks = [':', '.', '—', '–', '-', '*', '_', '#', '='];
    let tail = rest.trim_start_matches(marks).trim();
    (rest.is_empty() || rest.starts_with(marks)).then_some(tail)
}

/// What stands behind a word at the start, in any case.
fn begun<'a>(line: &'a str, word: &str) -> Option<&'a str> {
    let (head, rest) = line.split_at_checked(word.len())?;
    let whole = !rest.starts_with(char::is_alphanumeric);
    (head.eq_ignore_ascii_case(word) && whole).then(|| rest.trim())
}

/// The heading of a part: `For the filling:`, `FILLING`, `## Filling`.
pub(super) fn heading(line: &str) -> Option<String> {
    let plain = line.trim_matches(['#', '*', '_', '=', ' ']);
    let marked =
        line.starts_with("##") || (line.starts_with("**") && line.ends_with("**"));
    let colon = plain.ends_with(':');
    let long = plain.split_whitespace().count() > 6 || plain.len() > 60;
    let named = plain.to_lowercase().starts_with("for the ") && !plain.ends_with('.');
    let begins = plain.starts_with(|sign: char| sign.is_alphabetic());
    let some = begins && !long && (marked || colon || named || is_shouted(plain));
    let name = heading_words(plain);
    (some && !name.is_empty() && !name.contains(|sign: char| sign.is_ascii_digit()))
        .then_some(name)
}

/// The name within a heading: `For the filling:` is `filling`.
pub(super) fn heading_words(heading: &str) -> String {
    let name = heading.trim().trim_end_matches(':').trim().to_lowercase();
    let name = ["for the ", "to make the ", "make the ", "the "]
        .iter()
        .fold(name.as_str(), |name, lead| name.strip_prefix(lead).unwrap_or(name));
    name.trim().to_owned()
}

/// A line without the mark of a list: `- `, `• `, `3. `, `Step 2: `.
pub(super) fn unmarked(line: &str) -> &str {
    let line = line
        .trim()
        .trim_start_matches(['•', '·', '▢', '☐', '□', '◦', '–', '—', '*'])
        .trim_start();
    let line = line.strip_prefix("- ").unwrap_or(line).trim_start();
    let line = begun(line, "step")
        .filter(|rest| rest.starts_with(|sign: char| sign.is_ascii_digit()))
        .unwrap_or(line);
    let digits =
        line.len() - line.trim_start_matches(|sign: char| sign.is_ascii_digit()).len();
    let rest = &line[digits..];
    let point = rest
        .strip_prefix(['.', ')', ':'])
        .filter(|rest| rest.starts_with(' ') && (1..=2).contains(&digits));
    point.unwrap_or(line).trim()
}

pub(super) fn is_shouted(text: &str) -> bool {
    let letters = || text.chars().filter(|sign| sign.is_alphabetic());
    letters().count() > 3 && letters().all(char::is_uppercase)
}
