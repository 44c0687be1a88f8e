//! Amount lines: `225 g (1 cup) butter, cold`.

use crate::fault::{Fault, Place, Placed};
use crate::measure::{Exact, Temperature, Unit, exact};
use crate::model::{Amount, AmountLine, Ingredient, Quantity, Share};

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
    if number(body, comma).is_none() {
        return free(text, body, note);
    }
    let (quantity, rest) = quantity(body, comma).ok_or_else(|| unreadable(text))?;
    let quantity_place = text.place.part(0, body.len() - rest.len());
    let (also, rest) = second(rest, text, comma)?;
    let rest = rest.trim_start();
    let rest = rest.strip_prefix("of ").unwrap_or(rest);
    let (name, at) = own_temperature(rest.trim());
    let start = offset(whole, name);
    Ok(AmountLine {
        amount: Amount::Of(Placed::new(quantity, quantity_place)),
        also,
        ingredient: Placed::new(
            ingredient(name, text)?,
            text.place.part(start, start + name.len()),
        ),
        note: note.map(str::to_owned),
        at,
        purpose: purpose::of_note(note),
        place: text.place.clone(),
    })
}

/// A number and unit at the start of `text`, and what follows.
pub(crate) fn quantity(text: &str, comma: bool) -> Option<(Quantity, &str)> {
    let (value, rest) = number(text, comma)?;
    let rest = rest.trim_start();
    for words in [2, 1] {
        let end = end_of_words(rest, words);
        if let Some(unit) = Unit::parse(&rest[..end]) {
            return Some((Quantity::Unit(value, unit), &rest[end..]));
        }
    }
    let end = end_of_words(rest, 1);
    if matches!(&rest[..end], "batch" | "batches") {
        return Some((Quantity::Batches(value), &rest[end..]));
    }
    Some((Quantity::Pieces(value, String::new()), rest))
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

fn part(words: &str) -> Option<Exact> {
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

/// A line without a weight: `fine salt, to taste`, `flour for dusting`.
fn free(
    text: &Placed<String>,
    body: &str,
    note: Option<&str>,
) -> Result<AmountLine, Fault> {
    let (name, words) = match note {
        Some(note) if is_free(note) => (body, note),
        _ => ["for dusting", "to taste", "for "]
            .iter()
            .find_map(|words| body.find(&format!(" {words}")))
            .map(|at| (&body[..at], body[at..].trim()))
            .ok_or_else(|| unreadable(text))?,
    };
    Ok(AmountLine {
        amount: Amount::Free(words.to_owned()),
        also: None,
        ingredient: Placed::new(
            ingredient(name.trim(), text)?,
            text.place.part(0, name.len()),
        ),
        note: None,
        at: None,
        purpose: purpose::of_free(words),
        place: text.place.clone(),
    })
}

fn is_free(note: &str) -> bool {
    note == "to taste" || note.starts_with("for ") || note.starts_with("as needed")
}

type Second<'a> = (Option<Placed<Quantity>>, &'a str);

/// A second amount in brackets.
fn second<'a>(
    rest: &'a str,
    line: &Placed<String>,
    comma: bool,
) -> Result<Second<'a>, Fault> {
    let trimmed = rest.trim_start();
    let Some((inner, after)) =
        trimmed.strip_prefix('(').and_then(|inner| inner.split_once(')'))
    else {
        return Ok((None, rest));
    };
    let start = offset(&line.value, inner);
    let place = line.place.part(start, start + inner.len());
    match quantity(inner, comma) {
        Some((quantity, left)) if left.trim().is_empty() => {
            Ok((Some(Placed::new(quantity, place)), after))
        }
        _ => Err(Fault::error(
            "bad-amount",
            &place,
            format!("`{inner}` in brackets is not a second amount"),
        )
        .help("Write it like `225 g (1 cup) butter`; other remarks go after a comma.")),
    }
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
            return Err(unreadable(line));
        }
        return Ok(Ingredient::Pantry(name.to_owned()));
    };
    let parts = link.split_once("](").and_then(|(title, rest)| {
        let file = rest.strip_suffix(')')?.strip_suffix(".md")?;
        let plain = !file.is_empty() && !file.contains(['/', '\\', '.']);
        plain.then(|| (title.to_owned(), file.to_owned()))
    });
    let (title, recipe) = parts.ok_or_else(|| {
        Fault::error("bad-link", &line.place, "this link does not lead to a recipe").help(
            "Link to a file beside this one: `900 g [layered dough](layered-dough.md)`.",
        )
    })?;
    Ok(Ingredient::Recipe { title, recipe })
}

/// The fault of a line whose amount cannot be read to its end.
pub(crate) fn bad_amount(place: &Place) -> Fault {
    Fault::error("bad-amount", place, "no amount can be read here").help(
        "Write `AMOUNT UNIT INGREDIENT, NOTE`, such as `250 g butter, cold`, `2 large eggs` \
         or `fine salt, to taste`.",
    )
}

fn unreadable(line: &Placed<String>) -> Fault {
    bad_amount(&line.place)
}

/// Whether what should be a name goes on with an amount: a number, a sign or a unit.
pub(crate) fn is_amount(name: &str) -> bool {
    let first = name.split_whitespace().next().unwrap_or_default();
    !name.starts_with(char::is_alphabetic) || Unit::parse(first).is_some()
}

fn end_of_words(text: &str, words: usize) -> usize {
    let is_end = |c: char| c.is_whitespace() || c == '(';
    let mut end = 0;
    for _ in 0..words {
        let rest = &text[end..];
        let skip = rest.len() - rest.trim_start().len();
        end += skip;
        end += text[end..].find(is_end).unwrap_or(text.len() - end);
    }
    end
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
        for text in
            ["butter", "some butter", "500 g", "5 g [x](../x.md)", "225 g (soft) butter"]
        {
            assert!(read(text).is_err(), "{text}");
        }
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
