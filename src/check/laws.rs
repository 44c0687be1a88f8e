//! The laws by which a course declares allergens.

use crate::fault::{Fault, nearest};
use crate::model::Content;
use crate::pantry::{law, laws};
use crate::said;

/// Laws that are asked for and not known.
pub(super) fn unknown(content: &Content) -> Vec<Fault> {
    let asked = content.course.iter().flat_map(|course| &course.laws);
    let known = || laws().iter().map(|law| law.key.as_str());
    asked
        .filter(|asked| law(&asked.value).is_none())
        .map(|asked| {
            let message = said!("unknown-law", law = asked.value);
            let near = nearest(&asked.value, known());
            Fault::error("unknown-law", &asked.place, message).meant(
                &asked.value,
                near,
                || said!("unknown-law-help", known = known().collect::<Vec<_>>()),
            )
        })
        .collect()
}
