//! What steps are to reach: values that the trade knows, where they can be reached, and as the
//! head has them.

use crate::fault::{Fault, Placed};
use crate::measure::{Duration, Exact, Temperature, exact};
use crate::model::{Goal, GoalKind, Speed, Step, Wait};
use crate::said;
use crate::statement::{Amount, Statement};
use crate::work::mixing_step;

use super::Case;

/// No dough is sourer or less sour: ripe rye sours come to 3.4, wheat doughs leave the mixer at
/// 5.5 to 6. Common practice, no source.
const PH: [i64; 2] = [3, 8];
/// Doughs leave the mixer between these, °C. Common practice, no source.
const DOUGH: [i64; 2] = [5, 40];
/// What a bake takes, in percent: 6 to 8 from a loaf in a tin, 12 to 20 from small crusty pieces,
/// 30 from rusks. Common practice, no source.
const LOSS: [i64; 2] = [1, 45];
/// How much a dough grows, in percent: stiff rye by a quarter, a soft sponge to four times its
/// size. Common practice, no source.
const GROWTH: [i64; 2] = [10, 400];
/// Minutes that a dough is mixed at most, in all and on a fast speed. Common practice, no source.
const MIXED: [u64; 2] = [45, 20];

/// Goals that nothing comes to, and mixing without end.
pub(super) fn ranges(case: Case) -> Vec<Fault> {
    let steps = case.work.recipe.steps();
    steps
        .flat_map(|step| {
            let goals = step.goals.iter().filter_map(range);
            goals.chain(mixing(step)).collect::<Vec<Fault>>()
        })
        .collect()
}

fn range(goal: &Placed<Goal>) -> Option<Fault> {
    let hundredths = exact(1, 100);
    let one = exact(1, 1);
    let (can, usual, unit) = match goal.value.kind {
        GoalKind::Ph => ([0, 14], PH, &one),
        GoalKind::Dough => ([-5, 100], DOUGH, &one),
        GoalKind::WeightLoss => ([0, 100], LOSS, &hundredths),
        GoalKind::Growth => ([0, 1000], GROWTH, &hundredths),
    };
    let outside = |[least, most]: [i64; 2]| {
        let ends = [exact(least, 1) * unit, exact(most, 1) * unit];
        let values = [&goal.value.least, &goal.value.usual, &goal.value.most];
        values.into_iter().find(|it| **it < ends[0] || **it > ends[1]).cloned()
    };
    if let Some(value) = outside(can) {
        let message = said!("goal-impossible", value = shown(goal.value.kind, &value));
        return Some(Fault::error("impossible-value", &goal.place, message));
    }
    let value = shown(goal.value.kind, &outside(usual)?);
    let message = said!("goal-unlikely", value);
    Some(
        Fault::caution("unlikely-goal", &goal.place, message)
            .help(said!("goal-unlikely-help")),
    )
}

/// A value with its unit.
fn shown(kind: GoalKind, value: &Exact) -> Statement {
    match kind {
        GoalKind::Ph => said!("goal-ph", value = Amount::Number(value.clone(), 1)),
        GoalKind::Dough => {
            let heat = Temperature::celsius(value.clone());
            let (metric, us) = (Amount::Celsius(heat.clone()), Amount::Fahrenheit(heat));
            said!("both-units", metric, us)
        }
        GoalKind::WeightLoss | GoalKind::Growth => {
            let percent = Amount::Number(value * exact(100, 1), 0);
            said!("goal-percent", percent)
        }
    }
}

/// A mixing that is longer than the trade's, or than its step.
fn mixing(step: &Step) -> Option<Fault> {
    let mixing = step.mixing.as_ref()?;
    let all = Wait::sum(mixing.value.iter().map(|phase| &phase.time)).usual;
    let fast = mixing.value.iter().filter(|phase| match phase.speed {
        Speed::Third | Speed::High => true,
        Speed::First | Speed::Second | Speed::Low | Speed::Medium => false,
    });
    let long = all.whole_minutes() > MIXED[0]
        || fast.into_iter().any(|phase| phase.time.usual.whole_minutes() > MIXED[1]);
    let time = Amount::Minutes(all.whole_minutes());
    if long {
        let message = said!("unlikely-mixing", time);
        return Some(
            Fault::caution("unlikely-time", &mixing.place, message)
                .help(said!("unlikely-time-help")),
        );
    }
    let hands = step.hands.as_ref()?;
    let wait = step.wait.as_ref();
    let none = Duration::zero();
    let room = hands.value.most.clone() + wait.map_or(&none, |it| &it.value.most).clone();
    let grows = hands.value.pace.is_some();
    (all > room && !grows).then(|| {
        let own = Amount::Minutes(room.whole_minutes());
        let message = said!("mixing-beyond-step", time, own);
        Fault::caution("mixing-beyond-step", &mixing.place, message)
            .help(said!("mixing-beyond-step-help"))
    })
}

/// Goals at steps in which nothing comes to them: what grows waits, what loses weight bakes or
/// waits.
pub(super) fn out_of_place(case: Case) -> Vec<Fault> {
    let misplaced = |step: &Step, goal: &Placed<Goal>| {
        let waits = step.wait.is_some();
        let lacks = match goal.value.kind {
            GoalKind::Growth if !waits => said!("growth-without-wait"),
            GoalKind::WeightLoss if !waits && step.bake.is_none() => {
                said!("loss-without-bake")
            }
            GoalKind::Growth | GoalKind::WeightLoss => return None,
            GoalKind::Ph | GoalKind::Dough => return None,
        };
        let key = goal.value.kind.key();
        Some(
            Fault::caution("goal-out-of-place", &goal.place, lacks)
                .help(said!("goal-out-of-place-help", key)),
        )
    };
    let steps = case.work.recipe.steps();
    steps
        .flat_map(|step| step.goals.iter().filter_map(move |goal| misplaced(step, goal)))
        .collect()
}

/// Goals that the head's own figures lie outside: the dough's temperature where the dough is
/// mixed, and what the bake takes.
pub(super) fn at_odds(case: Case) -> Vec<Fault> {
    let recipe = case.work.recipe;
    let head = |step: &Step, at: usize, goal: &Goal| match goal.kind {
        GoalKind::Dough if mixing_step(case.work) == Some(at) => {
            let wanted = recipe.dough_temperature.as_ref()?;
            Some(("dough temperature", wanted.value.in_celsius().clone()))
        }
        GoalKind::WeightLoss if step.bake.is_some() => {
            Some(("bake loss", recipe.bake_loss.clone()?))
        }
        GoalKind::Dough | GoalKind::WeightLoss | GoalKind::Ph | GoalKind::Growth => None,
    };
    let mut faults = Vec::new();
    for (at, step) in recipe.steps().enumerate() {
        for goal in &step.goals {
            let found = head(step, at, &goal.value);
            let Some((key, own)) = found.filter(|(_, own)| !goal.value.holds(own)) else {
                continue;
            };
            let value = shown(goal.value.kind, &own);
            faults.push(
                Fault::caution(
                    "goals-at-odds",
                    &goal.place,
                    said!("goals-at-odds", value),
                )
                .help(said!("goals-at-odds-help", key)),
            );
        }
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 300 g water\n    - 5 g instant yeast\ndough temperature: 25 °C\nbake loss: 12 %\n";

    fn body(mix: &str, rise: &str, bake: &str) -> String {
        format!(
            "## Mix\n~~~ticket\nuses: dough\n{mix}\n~~~\n## Rise\n~~~ticket\nwait: 1 h\n{rise}\n~~~\n## Bake\n~~~ticket\nbake: 220 °C, 30 min\n{bake}\n~~~\n"
        )
    }

    #[test]
    fn values_that_the_trade_knows() {
        let sound = body(
            "hands: 10 min\nmix: first speed, 4 min; second speed, 6 min\ndough temperature: 24–26 °C",
            "growth: to double\npH: 5.2",
            "weight loss: 10 to 13 %",
        );
        for name in
            ["unlikely-goal", "impossible-value", "goals-at-odds", "goal-out-of-place"]
        {
            assert_no_fault(HEAD, &sound, name);
        }
        assert_no_fault(HEAD, &sound, "mixing-beyond-step");
        let rise = |line: &str| body("hands: 10 min", line, "");
        for (line, name, words) in [
            ("pH: 2.1", "unlikely-goal", "2.1"),
            ("pH: 41", "impossible-value", "41"),
            ("growth: to 9 times", "unlikely-goal", "to 9 times"),
            ("growth: to 0.5 times", "impossible-value", "to 0.5 times"),
            ("dough temperature: 78 °C", "unlikely-goal", "78 °C"),
        ] {
            assert_fault(HEAD, &rise(line), name, words);
        }
        let bake = |line: &str| body("hands: 10 min", "", line);
        assert_fault(HEAD, &bake("weight loss: 60 %"), "unlikely-goal", "60 %");
        assert_fault(HEAD, &bake("weight loss: 5 %"), "goals-at-odds", "5 %");
        assert_fault(HEAD, &bake("growth: by half"), "goal-out-of-place", "by half");
        let mix = |line: &str| body(line, "", "");
        let cold = "hands: 10 min\ndough temperature: 20 °C";
        assert_fault(HEAD, &mix(cold), "goals-at-odds", "20 °C");
        // What is measured later is no matter of the head.
        assert_no_fault(HEAD, &rise("dough temperature: 20 °C"), "goals-at-odds");
    }

    #[test]
    fn mixing_has_its_time() {
        let mix = |line: &str| body(line, "", "");
        let long = "hands: 5 min\nmix: first speed, 4 min; second speed, 6 min";
        let words = "first speed, 4 min; second speed, 6 min";
        assert_fault(HEAD, &mix(long), "mixing-beyond-step", words);
        assert_no_fault(HEAD, &mix(&format!("mix: {words}")), "mixing-beyond-step");
        let fast = "mix: high, 25 min";
        assert_fault(HEAD, &mix(fast), "unlikely-time", "high, 25 min");
    }
}
