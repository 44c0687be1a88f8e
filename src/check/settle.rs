//! A draft says what its author has yet to settle.

use crate::fault::Fault;
use crate::said;

use super::Case;

/// Every line that still stands under `to settle`.
pub(super) fn unsettled(case: Case) -> Vec<Fault> {
    let lines = case.work.recipe.unsettled.iter();
    lines
        .map(|line| {
            let message = said!("to-settle", line = line.value);
            Fault::caution("to-settle", &line.place, message)
                .help(said!("to-settle-help"))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n";
    const BODY: &str = "## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n";

    #[test]
    fn what_is_left_to_settle_is_said() {
        let head = format!("{HEAD}to settle:\n  - the oven\n");
        assert_fault(&head, BODY, "to-settle", "the oven");
        assert_no_fault(HEAD, BODY, "to-settle");
    }
}
