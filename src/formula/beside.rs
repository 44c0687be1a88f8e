//! What a line names beside its ingredient: what may be taken instead, and what its note
//! names. It weighs nothing, and its allergens count.

use crate::model::{Amount, AmountLine, Ingredient, Recipe};
use crate::pantry::{Item, Kind};
use crate::read::parted;

use super::Book;

/// `butter or lard`, `candied orange or lemon peel`, `almond or vanilla`: the first of those
/// between which a baker chooses, and the others.
pub(super) fn either(name: &str, book: Book) -> (String, Vec<String>) {
    let words = book.pantry.lexicon();
    let Some((first, mut rest)) = parted(name, words) else {
        return (name.to_owned(), Vec::new());
    };
    let mut others: Vec<&str> = Vec::new();
    while let Some((other, more)) = parted(rest, words) {
        others.push(other);
        rest = more;
    }
    others.push(rest);
    let head = shared(first, rest, book);
    let whole = |part: &str| {
        let shared = head.as_ref().map(|head| format!("{part} {head}"));
        let shared = shared.filter(|shared| book.pantry.find(shared).is_some());
        shared.unwrap_or_else(|| part.to_owned())
    };
    let first = whole(first);
    (first, others.into_iter().filter(|other| !other.is_empty()).map(whole).collect())
}

/// The word that ends the last of several and belongs to all: the `peel` of orange or lemon
/// peel, the `extract` of almond or vanilla. None where the first is whole by itself: what is
/// known and of the kind of the last (`sugar or golden syrup`).
fn shared(first: &str, last: &str, book: Book) -> Option<String> {
    let item = book.pantry.find(last);
    let (_, own) = last.rsplit_once([' ', '-']).unwrap_or(("", ""));
    let of_item = || item?.name.strip_suffix("extract").map(|_| "extract");
    let head = if own.is_empty() { of_item()? } else { own };
    let taken = book.pantry.find(&format!("{first} {head}"))?;
    let same = |kind: Kind| item.is_some_and(|item| item.kind == kind);
    let whole = book.pantry.find(first).is_some_and(|first| {
        first.kind != Kind::Other && same(first.kind) || !same(taken.kind)
    });
    (!whole).then(|| head.to_owned())
}

/// What a note leaves the choice of.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct Noted {
    /// What may be taken in place of the line's ingredient.
    pub(super) others: Vec<String>,
    /// What else the note says.
    pub(super) rest: Option<String>,
}

/// What a note names in place of the ingredient `first` that it stands behind: `or clarified
/// dripping`; the rest of a list, `ginger, or nutmeg` behind cinnamon, as far as all of it is
/// known: `chopped, or not` is none.
pub(super) fn noted(first: &str, note: &str, book: Book) -> Noted {
    let words = book.pantry.lexicon();
    let parts: Vec<&str> = note.split([',', '、', '，']).map(str::trim).collect();
    let mut others: Vec<&str> = Vec::new();
    let mut rest: Vec<&str> = Vec::new();
    for (at, part) in parts.iter().enumerate() {
        let ends = part.find([';', '(']).unwrap_or(part.len());
        let (choice, after) = part.split_at(ends);
        let found = parted(choice, words).map(|(before, other)| (before, other.trim()));
        match found.filter(|(_, other)| !other.is_empty()) {
            // Not knowing what is offered at once is a fault of the line.
            Some((before, other)) if at == 0 && before.is_empty() => others.push(other),
            Some((before, other)) if is_choice(first, other, book) => {
                let is_known = |part: &&str| is_choice(first, part, book);
                if !before.is_empty() && !is_known(&before) {
                    rest.push(part);
                    continue;
                }
                // What stands before it in the list.
                let listed = rest.iter().rev().take_while(|part| is_known(part)).count();
                others.extend(rest.drain(rest.len() - listed..));
                others.extend(Some(before).filter(|it| !it.is_empty()));
                others.push(other);
            }
            Some(_) | None => {
                rest.push(part);
                continue;
            }
        }
        let after = after.trim_matches([';', ' ']);
        rest.extend(Some(after).filter(|it| !it.is_empty()));
    }
    let others = others.into_iter().map(str::to_owned).collect();
    Noted { others, rest: (!rest.is_empty()).then(|| rest.join(", ")) }
}

/// Whether a word of a list stands for an ingredient that may be taken in place of `first`,
/// rather than for a sort of it: `oil, olive or walnut`.
fn is_choice(first: &str, part: &str, book: Book) -> bool {
    let find = |name: &str| book.pantry.find(name);
    let head = first.rsplit([' ', '-']).next().unwrap_or(first);
    if find(&format!("{part} {head}")).is_some() {
        return false;
    }
    find(part).is_some_and(|part| {
        part.kind != Kind::Other || find(first).is_none_or(|it| it.kind == Kind::Other)
    })
}

/// What the words around a line's ingredient name: its note, words in place of a weight, and
/// what stands before and behind a pantry's name.
pub(super) fn named<'a>(
    line: &AmountLine,
    recipe: &Recipe,
    book: Book<'a>,
) -> Vec<&'a Item> {
    let lines = recipe.formula.iter().flat_map(|section| &section.lines);
    let others: Vec<String> = lines
        .filter(|other| !std::ptr::eq(*other, line))
        .map(|other| other.ingredient.value.title().to_lowercase())
        .collect();
    let here = |head: &str| {
        others.iter().any(|other| {
            let last = other.rsplit(' ').next().unwrap_or_default();
            last == head || last.strip_suffix('s') == Some(head)
        })
    };
    let around = match &line.ingredient.value {
        Ingredient::Pantry(name) => book.pantry.around(name),
        Ingredient::Recipe { .. } => Vec::new(),
    };
    let free = match &line.amount {
        Amount::Free(words) => Some(words.clone()),
        Amount::Of(_) => None,
    };
    let texts = around.into_iter().chain(free).chain(line.note.clone());
    texts.flat_map(|text| book.pantry.mentioned(&text, &here)).collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing;
    use super::*;

    /// Almond or vanilla in a teaspoon is the extract; a peel, a juice and a milk are shared
    /// too, a sugar and a syrup are two things: common practice, no source.
    #[test]
    fn one_of_several_shares_their_last_word() {
        testing::with_recipe("formula:\n  - 1 g water\n", |_, book| {
            for (name, first, others) in [
                ("butter or lard", "butter", &["lard"][..]),
                ("candied orange or lemon peel", "candied orange peel", &["lemon peel"]),
                ("almond or vanilla", "almond extract", &["vanilla extract"]),
                ("almond or vanilla extract", "almond extract", &["vanilla extract"]),
                ("almond or oat milk", "almond milk", &["oat milk"]),
                ("sugar or golden syrup", "sugar", &["golden syrup"]),
                ("butter or coconut oil", "butter", &["coconut oil"]),
                ("apple or orange juice", "apple juice", &["orange juice"]),
                ("lard or butter or margarine", "lard", &["butter", "margarine"]),
            ] {
                let (found, rest) = either(name, book);
                assert_eq!(
                    (found.as_str(), &rest[..]),
                    (
                        first,
                        &others.iter().map(|it| (*it).to_owned()).collect::<Vec<_>>()[..]
                    ),
                    "{name}"
                );
            }
        });
    }

    /// A list goes on behind a comma; a remark is no choice, a sort of a thing neither: the
    /// forms of the printed books in tests/SOURCES.md, and common practice, no source.
    #[test]
    fn a_note_goes_on_with_what_may_be_taken() {
        testing::with_recipe("formula:\n  - 1 g water\n", |_, book| {
            for (first, note, others, rest) in [
                ("lard", "or butter", &["butter"][..], None),
                ("lard", "or clarified dripping", &["clarified dripping"], None),
                ("lard", "or butter; softened", &["butter"], Some("softened")),
                ("cinnamon", "ginger, or nutmeg", &["ginger", "nutmeg"], None),
                ("cinnamon", "ginger or nutmeg", &["ginger", "nutmeg"], None),
                ("milk", "water, or cream", &["water", "cream"], None),
                ("lard", "softened, or butter", &["butter"], Some("softened")),
                (
                    "butter",
                    "cold, or at room temperature",
                    &[],
                    Some("cold, or at room temperature"),
                ),
                ("raisins", "chopped or whole", &[], Some("chopped or whole")),
                ("oil", "olive or walnut", &[], Some("olive or walnut")),
                ("flour", "sifted", &[], Some("sifted")),
            ] {
                let others = others.iter().map(|it| (*it).to_owned()).collect();
                let rest = rest.map(str::to_owned);
                assert_eq!(noted(first, note, book), Noted { others, rest }, "{note}");
            }
        });
    }

    /// Whatever the words of a line name counts: each law's own names.
    #[test]
    fn what_the_words_name_is_declared() {
        for (line, allergen) in [
            ("100 g butter, with chopped walnuts", "tree nuts"),
            ("100 g butter mixed with walnuts", "tree nuts"),
            ("100 g sugar, mixed to a few pine-seeds", "tree nuts"),
            ("100 g lard, butter or margarine", "milk"),
            ("100 g lard, softened, or butter", "milk"),
            ("1 tbsp lard or butter or margarine", "milk"),
            ("water, to brush with egg", "egg"),
            ("100 g water (with a little beer)", "cereals containing gluten"),
        ] {
            testing::with_contents(&format!("formula:\n  - {line}\n"), |contents| {
                let sum = super::super::allergens(contents);
                let all = sum.all();
                let names: Vec<_> = all.map(|found| found.name.as_str()).collect();
                assert!(names.contains(&allergen), "{line}: {names:?}");
            });
        }
        let plain = "formula:\n  - 50 g sugar, the size of a walnut\n  - 1 g oat milk, mixed with the milk\n  - 5 g almond milk\n";
        testing::with_contents(plain, |contents| {
            let names: Vec<_> = contents.keys().copied().collect();
            assert_eq!(names, ["almond milk", "granulated sugar", "oat milk"]);
        });
    }
}
