//! Braces in prose mean something.

use crate::fault::{Fault, clip, nearest};
use crate::model::{Inline, Live};
use crate::said;
use crate::statement::Statement;

use super::Case;
use super::materials::{is_known, names, suggest};

/// Braces that are no temperature, size, length, `pieces`, section or ingredient.
pub(super) fn braces(case: Case) -> Vec<Fault> {
    let mut faults = Vec::new();
    // What a ticket uses and nothing here is, is said there.
    let used = |name: &str| {
        case.work
            .recipe
            .steps()
            .any(|step| step.uses.iter().any(|used| used.value.name == name))
    };
    for block in case.work.recipe.blocks() {
        block.visit(&mut |inline| {
            if let Inline::Live { value } = inline
                && let Live::Named { name, .. } = &value.value
                && !is_known(name, case)
                && !used(name)
            {
                let name = &clip(name);
                let message = said!("unknown-brace", name);
                let fault = Fault::error("unknown-brace", &value.place, message);
                let fault = fault.help(help(name, case));
                faults.push(match meant(name, case) {
                    Some(near) => {
                        fault.mended(value.place.clone(), format!("{{{near}}}"))
                    }
                    None => fault,
                });
            }
        });
    }
    faults
}

/// What a name in braces was meant to be: a section, an ingredient or a temperature.
fn meant(name: &str, case: Case) -> Option<String> {
    let degrees = name.strip_suffix(['C', 'F']).map(str::trim_end);
    let digits =
        degrees.filter(|it| !it.is_empty() && it.bytes().all(|one| one.is_ascii_digit()));
    match digits {
        Some(digits) => Some(format!("{digits} °{}", &name[name.len() - 1..])),
        None => nearest(name, names(case)).map(str::to_owned),
    }
}

/// A slip in a temperature or size is answered as such.
fn help(name: &str, case: Case) -> Statement {
    let digits: String = name.chars().take_while(char::is_ascii_digit).collect();
    if digits.is_empty() {
        let suggested = suggest(name, case);
        return said!("unknown-brace-help", suggested, name);
    }
    if name.ends_with(['C', 'F']) && !name.contains('°') {
        let scale = &name[name.len() - 1..];
        return said!("brace-temperature-help", digits, scale);
    }
    said!("brace-number-help")
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, faults};

    const HEAD: &str = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n";

    fn body(prose: &str) -> String {
        format!("## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n{prose}\n")
    }

    #[test]
    fn slips_are_named_where_they_stand() {
        assert_fault(HEAD, &body("Bake at {190 C}."), "unknown-brace", "{190 C}");
        assert_fault(HEAD, &body("Take the {flower}."), "unknown-brace", "{flower}");
        let sound = body(
            "Bake {dough} at {190 °C} on {20 x 20 cm}, {half of the flour}, {pieces}.",
        );
        assert!(faults(HEAD, &sound).is_empty(), "{:?}", faults(HEAD, &sound));
    }
}
