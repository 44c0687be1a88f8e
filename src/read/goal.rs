//! What a step is to reach: `pH: 4.0 (3.8 to 4.2)`, `dough temperature: 24 °C (23 to 25 °C)`,
//! `weight loss: 12 %`, `growth: by half`.

use crate::measure::{Exact, exact};
use crate::model::{Goal, GoalKind};

use super::quantity::{number, temperature};

/// How much something has grown, in words.
const GROWN: [(&str, [i64; 2]); 10] = [
    ("by a quarter", [1, 4]),
    ("by a third", [1, 3]),
    ("by half", [1, 2]),
    ("by two thirds", [2, 3]),
    ("by three quarters", [3, 4]),
    ("double", [1, 1]),
    ("to double", [1, 1]),
    ("doubled", [1, 1]),
    ("to triple", [2, 1]),
    ("tripled", [2, 1]),
];

/// A value with its range, or a range alone, whose middle is then aimed at.
pub(super) fn goal(kind: GoalKind, text: &str) -> Option<Goal> {
    let Some((usual, allowed)) = text.split_once('(') else {
        let (least, most) = range(kind, text)?;
        let usual = (&least + &most) / exact(2, 1);
        return Some(Goal { kind, usual, least, most });
    };
    let usual = value(kind, usual)?;
    let (least, most) = range(kind, allowed.trim().strip_suffix(')')?)?;
    let goal = Goal { kind, usual, least, most };
    goal.holds(&goal.usual).then_some(goal)
}

/// `24 °C`, `23 to 25 °C`, `10–14 %`.
fn range(kind: GoalKind, text: &str) -> Option<(Exact, Exact)> {
    if let Some(value) = value(kind, text) {
        return Some((value.clone(), value));
    }
    let (low, high) = text.split_once(" to ").or_else(|| text.split_once(['–', '-']))?;
    let most = value(kind, high)?;
    let figure = |sign: char| sign.is_ascii_digit() || " .,".contains(sign);
    let unit = high.trim_start_matches(figure);
    let least = value(kind, low).or_else(|| value(kind, &format!("{low} {unit}")))?;
    (least <= most).then_some((least, most))
}

fn value(kind: GoalKind, text: &str) -> Option<Exact> {
    let text = text.trim();
    match kind {
        GoalKind::Ph => bare(text.strip_prefix("pH").unwrap_or(text)),
        GoalKind::Dough => temperature(text).map(|heat| heat.in_celsius().clone()),
        GoalKind::WeightLoss => percent(text),
        GoalKind::Growth => {
            let known = GROWN.iter().find(|(words, _)| *words == text);
            known
                .map(|(_, [over, under])| exact(*over, *under))
                .or_else(|| percent(text.strip_prefix("by ").unwrap_or(text)))
                .or_else(|| times(text.strip_prefix("to ").unwrap_or(text)))
        }
    }
}

/// `4.1`, with a comma too.
fn bare(text: &str) -> Option<Exact> {
    let read = |comma| number(text, comma).filter(|(_, rest)| rest.trim().is_empty());
    read(false).or_else(|| read(true)).map(|(value, _)| value)
}

fn percent(text: &str) -> Option<Exact> {
    let (value, sign) = number(text, false)?;
    (sign.trim() == "%").then(|| value / exact(100, 1))
}

/// `2.5 times`: of its size before.
fn times(text: &str) -> Option<Exact> {
    let (value, unit) = number(text, false)?;
    (unit.trim() == "times").then(|| value - exact(1, 1))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(kind: GoalKind, text: &str) -> Option<[Exact; 3]> {
        goal(kind, text).map(|goal| [goal.usual, goal.least, goal.most])
    }

    #[test]
    fn goals_have_a_value_and_a_range() {
        let tenths = |all: [i64; 3]| Some(all.map(|one| exact(one, 10)));
        assert_eq!(read(GoalKind::Ph, "4.0 (3.8 to 4.2)"), tenths([40, 38, 42]));
        assert_eq!(read(GoalKind::Ph, "pH 4,1"), tenths([41, 41, 41]));
        let dough = |text| read(GoalKind::Dough, text);
        assert_eq!(dough("24 °C (23 to 25 °C)"), tenths([240, 230, 250]));
        assert_eq!(dough("23–25 °C"), tenths([240, 230, 250]));
        assert_eq!(dough("77 °F"), tenths([250, 250, 250]));
        let percent = |all: [i64; 3]| Some(all.map(|one| exact(one, 100)));
        let loss = |text| read(GoalKind::WeightLoss, text);
        assert_eq!(loss("12 % (10 to 14 %)"), percent([12, 10, 14]));
        let growth = |text| read(GoalKind::Growth, text);
        assert_eq!(growth("by half"), percent([50, 50, 50]));
        assert_eq!(growth("by half (40 % to 60 %)"), percent([50, 40, 60]));
        assert_eq!(growth("by half to double"), percent([75, 50, 100]));
        assert_eq!(growth("to double"), percent([100, 100, 100]));
        assert_eq!(growth("to 2.5 times"), percent([150, 150, 150]));
        for text in ["", "sour", "4 °C", "24 °C (25 to 26 °C)", "6 to 4"] {
            assert!(read(GoalKind::Ph, text).is_none(), "{text}");
        }
        assert!(dough("24").is_none() && loss("12").is_none() && growth("2").is_none());
    }
}
