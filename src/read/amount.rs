//! Amount lines: `225 g (1 cup) butter, cold`.

use crate::fault::{Fault, Place, Placed, clip};
use crate::measure::{Exact, Temperature, Unit, exact};
use crate::model::{Amount, AmountLine, Ingredient, Purpose, Quantity, Share};
use crate::said;

use super::lexicon::{Lexicon, strip_word};
use super::measured::{Measured, Unmeasured, measured};
use super::purpose;
use super::quantity::{number, temperature};

/// Reads one amount line.
///
/// # Errors
/// `bad-amount` where no amount can be read, `bad-link` where the link is not to a recipe
/// in this folder.
pub(crate) fn line(text: &Placed<String>, comma: bool) -> Result<AmountLine, Fault> {
    let whole = text.value.trim();
    let (body, note) = split_note(whole);
    let reader = Reader { text, whole, comma };
    if let Some((words, rest)) = vague(body) {
        return reader.weightless(words, after_of(rest), note);
    }
    match measured(body, comma) {
        // `A piece of butter, 1½ oz` has its amount behind.
        Ok(_) if piece_of(body).len() < body.len() => reader.turned(body, note),
        Ok(found) => reader.measured(found, body, note),
        Err(Unmeasured::Nothing) => reader.turned(body, note),
        Err(Unmeasured::Heaped) => Err(heaped(&text.place)),
        Err(Unmeasured::Vessel) => Err(vessel(&text.place)),
    }
}

/// The line that is being read.
#[derive(Clone, Copy)]
struct Reader<'a> {
    text: &'a Placed<String>,
    whole: &'a str,
    comma: bool,
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
        if let (Quantity::Pieces(..), Some((_, name))) = (&found.quantity, vague(rest)) {
            let words = body[..offset(body, name)].trim();
            let of = Lexicon::english().of.iter();
            let bare = of.clone().find_map(|word| words.strip_suffix(word.as_str()));
            return self.weightless(bare.unwrap_or(words).trim(), after_of(name), note);
        }
        let end = offset(self.whole, found.rest);
        let place = self.text.place.part(0, end);
        let mut remarks: Vec<&str> = Vec::new();
        let (also, rest) = self.second(found.rest, &mut remarks);
        let (name, at) = own_temperature(after_of(rest.trim_start()).trim());
        let (more, name) = self.behind(name, &mut remarks);
        remarks.extend(note);
        Ok(AmountLine {
            amount: Amount::Of(Placed::new(found.quantity, place)),
            range: found.range,
            hedge: found.hedge,
            also: also.or(more),
            note: (!remarks.is_empty()).then(|| remarks.join(", ")),
            at,
            purpose: purpose::of_note(note),
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
            purpose: purpose::of_free(words),
            ..self.bare(name.trim())?
        })
    }

    /// A line whose amount stands behind the name, or that has none: `whites of 2 eggs`,
    /// `butter, 1 tbsp`, `fine salt, to taste`, `water to mix`.
    fn turned(self, body: &'a str, note: Option<&'a str>) -> Result<AmountLine, Fault> {
        if let Some(line) = self.part_of(body, note) {
            return if names_two(body, self.comma) {
                Err(bad_amount(&self.text.place))
            } else {
                Ok(line)
            };
        }
        let behind = note.and_then(|note| Some((note, measured(note, self.comma).ok()?)));
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
                ..self.bare(piece_of(body))?
            });
        }
        let (name, words) =
            free(body, note).ok_or_else(|| unreadable(self.text, body))?;
        self.weightless(words, name, None)
    }

    /// A part of something counted, under the pantry's name: `the juice of one orange`.
    fn part_of(self, body: &str, note: Option<&str>) -> Option<AmountLine> {
        let words = Lexicon::english();
        let mut parts = words.parts.iter();
        let (rest, pattern) =
            parts.find_map(|(word, pattern)| Some((strip_word(body, word)?, pattern)))?;
        let found = measured(after_of(rest), self.comma).ok()?;
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
            place: self.text.place.clone(),
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
        let joints = &Lexicon::english().joints;
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
        let found = measured(inner, self.comma).ok();
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

/// `The yolks of three eggs and one whole egg`: a second amount behind a word that adds.
fn names_two(body: &str, comma: bool) -> bool {
    let mut sums = Lexicon::english().sum.iter();
    sums.any(|word| {
        let second = body.split_once(&format!(" {word} "));
        second.is_some_and(|(_, second)| measured(second, comma).is_ok())
    })
}

/// Whether an amount is in units, rather than a number of pieces.
fn is_measure(found: &Measured) -> bool {
    matches!(found.quantity, Quantity::Unit(..) | Quantity::Sum(_))
}

/// Words for an amount without a weight at the start, and what follows: `a pinch`.
fn vague(text: &str) -> Option<(&str, &str)> {
    let words = Lexicon::english();
    if words.hedge.iter().any(|word| strip_word(text, word).is_some()) {
        return None;
    }
    let rest = words.vague.iter().find_map(|word| strip_word(text, word))?;
    let end = text.len() - rest.len();
    (!rest.is_empty()).then(|| (text[..end].trim(), rest))
}

/// A name without the word that joins it to its amount.
fn after_of(text: &str) -> &str {
    let text = text.trim_start();
    Lexicon::english().of.iter().find_map(|word| strip_word(text, word)).unwrap_or(text)
}

/// `A piece of butter` is butter.
fn piece_of(body: &str) -> &str {
    let words = Lexicon::english();
    words.piece.iter().find_map(|word| strip_word(body, word)).unwrap_or(body)
}

/// A thing's name in the singular: `eggs`, `cherries`.
fn singular(name: &str) -> String {
    if let Some(stem) = name.strip_suffix("ies") {
        return format!("{stem}y");
    }
    name.strip_suffix('s').unwrap_or(name).to_owned()
}

/// A number and unit at the start of `text`, and what follows.
pub(crate) fn quantity(text: &str, comma: bool) -> Option<(Quantity, &str)> {
    let found = measured(text, comma).ok().filter(|found| found.range.is_none())?;
    Some((found.quantity, found.rest))
}

/// A share in words at the start: `half of the butter`, `a third of the flour`; else all
/// of it. The rest is what it is a share of.
pub(crate) fn share(text: &str) -> (Share, &str) {
    let text = text.trim();
    let all = Share { part: exact(1, 1), words: String::new() };
    let Some((words, rest)) =
        text.split_once(" of the ").or_else(|| text.split_once(" of "))
    else {
        return (all, text.strip_prefix("the ").unwrap_or(text));
    };
    match part(words.trim()) {
        Some(part) => {
            let lead = text.len() - rest.len();
            (Share { part, words: text[..lead].trim().to_owned() }, rest.trim())
        }
        None => (all, text),
    }
}

/// A part of something in words or figures: `half`, `a quarter`, `1/3`, `30 %`.
pub(super) fn part(words: &str) -> Option<Exact> {
    Some(match words {
        "all" | "the rest" | "rest" => exact(1, 1),
        "half" => exact(1, 2),
        "a third" | "one third" => exact(1, 3),
        "two thirds" => exact(2, 3),
        "a quarter" | "one quarter" => exact(1, 4),
        "three quarters" => exact(3, 4),
        _ => {
            let (value, rest) = number(words, false)?;
            let value = if rest.trim() == "%" { value / exact(100, 1) } else { value };
            return (value > exact(0, 1) && value <= exact(1, 1)).then_some(value);
        }
    })
}

/// The note after the first comma that stands outside brackets.
fn split_note(text: &str) -> (&str, Option<&str>) {
    let mut depth = 0_usize;
    for (at, sign) in text.char_indices() {
        match sign {
            '(' | '[' => depth += 1,
            ')' | ']' => depth = depth.saturating_sub(1),
            ',' if depth == 0 && text[at + 1..].starts_with(' ') => {
                return (&text[..at], Some(text[at + 1..].trim()));
            }
            _ => {}
        }
    }
    (text, None)
}

/// The name and the words of a line without a weight: `fine salt, to taste`, `flour for
/// dusting`, `water to mix`.
fn free<'a>(body: &'a str, note: Option<&'a str>) -> Option<(&'a str, &'a str)> {
    let words = &Lexicon::english().free;
    let begins = |text: &str| words.iter().any(|word| strip_word(text, word).is_some());
    if let Some(note) = note.filter(|note| begins(note)) {
        return Some((body.trim(), note));
    }
    let mut starts = body.match_indices(' ').map(|(at, _)| at + 1);
    let at = starts.find(|at| begins(&body[*at..]))?;
    Some((body[..at].trim(), body[at..].trim()))
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

/// The fault of a line whose amount cannot be read to its end.
pub(crate) fn bad_amount(place: &Place) -> Fault {
    Fault::error("bad-amount", place, said!("amount-not-whole"))
        .help(said!("amount-not-whole-help"))
}

/// The fault of a line without an amount, with the line as it would read.
fn unreadable(line: &Placed<String>, name: &str) -> Fault {
    let name = clip(name.trim());
    let name = if name.is_empty() { "butter" } else { &name };
    Fault::error("bad-amount", &line.place, said!("no-amount"))
        .help(said!("no-amount-help", name))
}

fn heaped(place: &Place) -> Fault {
    let message = said!("heaped-spoon");
    Fault::error("bad-amount", place, message).help(said!("heaped-spoon-help"))
}

fn vessel(place: &Place) -> Fault {
    let message = said!("unknown-vessel");
    Fault::error("bad-amount", place, message).help(said!("unknown-vessel-help"))
}

/// A text parted at the word between two of which one is taken: `butter or lard`.
pub(crate) fn parted(text: &str) -> Option<(&str, &str)> {
    let text = text.trim();
    let mut starts =
        std::iter::once(0).chain(text.match_indices(' ').map(|(at, _)| at + 1));
    let words = &Lexicon::english().either;
    starts.find_map(|at| {
        let other = words.iter().find_map(|word| strip_word(&text[at..], word))?;
        Some((text[..at].trim(), other))
    })
}

/// Whether a text names a part of what is counted, as in `2 eggs, or the whites of 4`.
pub(crate) fn is_part(text: &str) -> bool {
    Lexicon::english().parts.iter().any(|(word, _)| strip_word(text, word).is_some())
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

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<AmountLine, Fault> {
        let place = Place::new(&"a.md".into(), 0, text.len());
        line(&Placed::new(text.to_owned(), place), true)
    }

    fn amount(text: &str) -> (Quantity, String) {
        let line = read(text).expect("a line");
        let Amount::Of(quantity) = line.amount else { panic!("an amount: {text}") };
        (quantity.value, line.ingredient.value.title().to_owned())
    }

    #[test]
    fn lines_as_a_baker_writes_them() {
        let unit = |over, under, unit| Quantity::Unit(exact(over, under), unit);
        let cases = [
            ("500 g bread flour", unit(500, 1, Unit::Gram), "bread flour"),
            ("500g bread flour", unit(500, 1, Unit::Gram), "bread flour"),
            ("1,5 kg bread flour", unit(3, 2, Unit::Kilogram), "bread flour"),
            ("1½ cups sugar", unit(3, 2, Unit::Cup), "sugar"),
            ("1 1/2 tsp fine salt", unit(3, 2, Unit::Teaspoon), "fine salt"),
            ("2 fl oz lemon juice", unit(2, 1, Unit::FluidOunce), "lemon juice"),
            ("2 % fine salt", unit(2, 1, Unit::Percent), "fine salt"),
            ("1 cup of sugar", unit(1, 1, Unit::Cup), "sugar"),
            ("3 egg yolks", Quantity::Pieces(exact(3, 1), String::new()), "egg yolks"),
            (
                "1 batch [layered dough](layered-dough.md)",
                Quantity::Batches(exact(1, 1)),
                "layered dough",
            ),
        ];
        for (text, quantity, name) in cases {
            assert_eq!(amount(text), (quantity, name.to_owned()), "{text}");
        }
    }

    #[test]
    fn notes_seconds_and_temperatures() {
        let line = read("225 g (1 cup) butter, cold, in cubes").expect("a line");
        assert_eq!(line.note.as_deref(), Some("cold, in cubes"));
        assert_eq!(
            line.also.map(|also| also.value),
            Some(Quantity::Unit(exact(1, 1), Unit::Cup))
        );
        assert_eq!(line.ingredient.place.start, 14);
        let line = read("300 g water at 27 °C").expect("a line");
        assert_eq!(line.at, Some(Temperature::celsius(exact(27, 1))));
        assert_eq!(line.ingredient.value.title(), "water");
    }

    #[test]
    fn lines_without_weight() {
        for text in
            ["bread flour, for dusting", "bread flour for dusting", "fine salt, to taste"]
        {
            let line = read(text).expect("a line");
            assert!(matches!(line.amount, Amount::Free(_)), "{text}");
        }
        for (text, words, name) in [
            ("a pinch of salt", "a pinch", "salt"),
            ("10 drops of lemon essence", "10 drops", "lemon essence"),
            ("a little salt", "a little", "salt"),
            ("water to mix", "to mix", "water"),
            (
                "sour milk to moisten (about 1½ cups)",
                "to moisten (about 1½ cups)",
                "sour milk",
            ),
        ] {
            let line = read(text).expect("a line");
            assert_eq!(line.ingredient.value.title(), name, "{text}");
            assert!(matches!(line.amount, Amount::Free(said) if said == words), "{text}");
        }
        for text in
            ["butter", "?? butter", "500 g", "5 g [x](../x.md)", "1 heaped tsp salt"]
        {
            assert!(read(text).is_err(), "{text}");
        }
    }

    #[test]
    fn amounts_may_stand_behind_or_count_a_part() {
        for (text, count, name) in [
            ("the whites of 5 eggs beaten stiff", 5, "egg white"),
            ("Yolks 2 eggs", 2, "egg yolk"),
            ("the juice of one orange", 1, "orange juice"),
            ("grated rind of 2 lemons", 2, "lemon zest"),
        ] {
            let pieces = Quantity::Pieces(exact(count, 1), String::new());
            assert_eq!(amount(text), (pieces, name.to_owned()), "{text}");
        }
        let ounces = Quantity::Unit(exact(3, 2), Unit::Ounce);
        let line = "A piece of butter, one and a half ounces";
        assert_eq!(amount(line), (ounces, "butter".to_owned()));
        let spoon = Quantity::Unit(exact(1, 1), Unit::Cup);
        assert_eq!(amount("Milk, 1 c. sc"), (spoon, "Milk".to_owned()));
    }

    #[test]
    fn remarks_in_brackets_are_notes() {
        let line = read("one cup of white flour (sifted), warm").expect("a line");
        assert_eq!(line.ingredient.value.title(), "white flour");
        assert_eq!(line.note.as_deref(), Some("sifted, warm"));
        let line = read("1 cup (2 sticks) butter").expect("a line");
        assert_eq!(line.note.as_deref(), Some("2 sticks"));
        let line = read("3 oz. (6 tbsp.) salt").expect("a line");
        assert!(line.also.is_some());
    }

    #[test]
    fn shares() {
        let (half, name) = share("half of the butter");
        assert_eq!((half.part, name), (exact(1, 2), "butter"));
        let (all, name) = share("cream of tartar");
        assert_eq!((all.part, name), (exact(1, 1), "cream of tartar"));
        assert_eq!(share("30 % of the flour").0.part, exact(3, 10));
    }
}
