//! A dough is divided into no more than there is, and every part that a step names is there.

use crate::fault::{Fault, Severity, nearest};
use crate::formula::parts::shares;
use crate::measure::{Exact, exact};
use crate::model::{Divide, Portion, Portioned};
use crate::said;
use crate::statement::{Amount, Statement};

use super::Case;

/// Less than this much of a dough is left over without a word. Common practice, no source.
const CRUMBS: (i64, i64) = (3, 100);

/// Parts that no step divides off.
pub(super) fn unknown(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let parts = || {
        steps.iter().filter_map(|step| match &step.divide.as_ref()?.value {
            Divide::Parts(parts) => Some(parts),
            Divide::Count(_) | Divide::Pieces(_) => None,
        })
    };
    let names: Vec<&str> =
        parts().flatten().map(|part| part.name.value.as_str()).collect();
    let asked = steps.iter().filter_map(|step| step.part.as_ref());
    asked
        .filter(|part| !names.contains(&part.value.as_str()))
        .map(|part| {
            let message = said!("unknown-part", part = part.value);
            let near = nearest(&part.value, names.iter().copied());
            Fault::error("unknown-part", &part.place, message).meant(
                &part.value,
                near,
                || said!("unknown-part-help"),
            )
        })
        .collect()
}

/// Parts that together are more than the dough, or leave some of it.
pub(super) fn sums(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let divided = steps.iter().enumerate().filter_map(|(at, step)| {
        let divide = step.divide.as_ref()?;
        match &divide.value {
            Divide::Parts(parts) => Some((at, &divide.place, parts)),
            Divide::Count(_) | Divide::Pieces(_) => None,
        }
    });
    divided
        .filter_map(|(at, place, parts)| {
            let (message, too_much) = off(at, parts, case)?;
            let severity = if too_much { Severity::Error } else { Severity::Caution };
            let fault = Fault::new("divided-off", severity, place, message);
            Some(fault.help(said!("divided-off-help")))
        })
        .collect()
}

/// What is wrong with a division, and whether it asks for too much.
fn off(at: usize, parts: &[Portioned], case: Case) -> Option<(Statement, bool)> {
    let (dough, fat) = case.work.flow.on_bench(at, &case.work.formula);
    let mass = dough + fat;
    let portions = || parts.iter().map(|part| &part.portion);
    let sum: Exact = shares(portions(), &mass).iter().sum();
    let whole = exact(1, 1);
    let weight = Amount::Weight { mass: mass.clone(), fine: false };
    let percent = |share: &Exact| Amount::Number(share * exact(100, 1), 0);
    if sum > whole {
        let over = percent(&(&sum - &whole));
        return Some((said!("divided-too-much", over, weight), true));
    }
    let rest = portions().any(|portion| *portion == Portion::Rest);
    let left = &whole - &sum;
    if rest && left <= exact(0, 1) && parts.len() > 1 && mass.is_positive() {
        let nothing = shares(portions(), &mass).contains(&exact(0, 1));
        return nothing.then(|| (said!("divided-no-rest", weight), true));
    }
    (left > exact(CRUMBS.0, CRUMBS.1)).then(|| {
        let left = percent(&left);
        (said!("divided-too-little", left, weight), false)
    })
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 20 rolls\nformula:\n  dough:\n    - 600 g bread flour\n    - 400 g water\n";

    fn body(divide: &str, part: &str) -> String {
        format!(
            "## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n## Divide\n~~~ticket\nhands: 5 min\ndivide: {divide}\n~~~\n## Shape\n~~~ticket\npart: {part}\nhands: 5 min\n~~~\n"
        )
    }

    #[test]
    fn parts_are_there_and_make_the_dough() {
        let good = body("600 g for rolls, the rest for knots", "rolls");
        assert_no_fault(HEAD, &good, "unknown-part");
        assert_no_fault(HEAD, &good, "divided-off");
        assert_fault(
            HEAD,
            &body("600 g for rolls, the rest for knots", "rols"),
            "unknown-part",
            "rols",
        );
        for text in [
            "600 g for rolls, 500 g for knots",
            "half for rolls, 1/4 for knots",
            "1000 g for rolls, the rest for knots",
            "half for rolls, 12 pieces of 60 g for knots",
        ] {
            assert_fault(HEAD, &body(text, "rolls"), "divided-off", text);
        }
    }
}
