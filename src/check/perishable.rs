//! Fillings that spoil and raw egg, over the graph of steps: cooled in time, kept cold,
//! cooked through.
//!
//! Limits: FDA Food Code 3-501.14(A) (57 to 21 °C within 2 h, to 5 °C within 6 h in all),
//! 3-501.16 (cold at 5 °C), 3-401.11(A)(2) (raw egg not for immediate service: 68 °C). They
//! point out and never replace local rules.

use crate::fault::Fault;
use crate::formula::{Filling, MadeOf, filling};
use crate::measure::{Duration, Temperature, exact};
use crate::model::{Location, Step};
use crate::pantry::Kind;
use crate::said;

use super::Case;

/// The first stage of cooling, and both, in minutes: FDA Food Code 3-501.14(A).
const STAGES: [i64; 2] = [2 * 60, 6 * 60];

/// Raw egg that is not eaten at once is cooked to this, °C: FDA Food Code 3-401.11(A)(2).
const COOKED: i64 = 68;

/// A custard that no later step cools by the rule.
pub(super) fn cooling(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let custards = uses(case, &|sort| sort == Filling::Custard);
    let warm = custards.into_iter().filter(|at| {
        let later = case.work.flow.from(*at);
        later.into_iter().all(|at| steps[at].cool.is_none())
    });
    warm.map(|at| {
        let message = said!("cooling-missing");
        Fault::caution("cooling-missing", &steps[at].title.place, message)
            .help(said!("cooling-missing-help"))
    })
    .collect()
}

/// Steps that cool for longer than the rule allows: two hours outside the fridge, six in
/// all.
pub(super) fn cooling_times(case: Case) -> Vec<Fault> {
    let cooling = case.work.recipe.steps().filter(|step| step.cool.is_some());
    let (mut warm, mut all) = (Duration::zero(), Duration::zero());
    let [first, both] = STAGES.map(|minutes| Duration::minutes(exact(minutes, 1)));
    for step in cooling {
        let longest = longest(step);
        all = all + longest.clone();
        if !is_cold(place(step)) {
            warm = warm + longest;
        }
        if warm > first || all > both {
            let place = step.cool.as_ref().map_or(&step.title.place, |cool| &cool.place);
            let message = if warm > first {
                said!("cooling-slow-warm")
            } else {
                said!("cooling-slow-all")
            };
            return vec![
                Fault::caution("cooling-too-slow", place, message)
                    .help(said!("cooling-slow-help")),
            ];
        }
    }
    Vec::new()
}

fn longest(step: &Step) -> Duration {
    step.wait.as_ref().map_or_else(Duration::zero, |wait| wait.value.most.clone())
}

/// A filled product that may stand outside the fridge.
pub(super) fn held_warm(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let flow = &case.work.flow;
    let mut filled: Vec<usize> =
        uses(case, &Filling::spoils).into_iter().flat_map(|at| flow.from(at)).collect();
    filled.sort_unstable();
    filled.dedup();
    let warm = filled.into_iter().filter_map(|at| {
        let step = steps[at];
        let here = place(step);
        let held = step.hold.as_ref().filter(|hold| {
            hold.value.up_to.is_positive()
                && !is_cold(hold.value.at_place.as_ref().or(here))
        });
        let baked_later = flow.from(at).iter().any(|later| is_cooked(steps[*later]));
        let limit = Duration::minutes(exact(STAGES[0], 1));
        let stands = step.stands();
        let mut warm = stands.iter().filter(|stand| !is_cold(stand.place.as_ref()));
        let waits = step
            .wait
            .as_ref()
            .filter(|_| !baked_later && warm.any(|stand| stand.time.most > limit));
        held.map(|hold| &hold.place).or_else(|| waits.map(|wait| &wait.place))
    });
    warm.map(|place| {
        let message = said!("held-warm");
        Fault::caution("held-warm", place, message).help(said!("held-warm-help"))
    })
    .collect()
}

/// Raw egg that no later step cooks.
pub(super) fn raw_egg(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let work = case.work;
    let raw = (0..steps.len()).filter_map(|at| {
        let (line, _) =
            work.flow.uses[at].iter().find(|(line, _)| is_raw_egg(*line, case))?;
        let cooked = work.flow.from(at).iter().any(|later| is_cooked(steps[*later]));
        (!cooked).then_some(&work.formula.lines[*line])
    });
    raw.map(|line| {
        let message = said!("raw-egg-eaten", name = line.title());
        Fault::caution("raw-egg-eaten", &line.line.ingredient.place, message)
            .help(said!("raw-egg-eaten-help"))
    })
    .collect()
}

/// Core temperatures too low for the egg that is in there.
pub(super) fn cores(case: Case) -> Vec<Fault> {
    let steps = case.work.steps();
    let least = Temperature::celsius(exact(COOKED, 1));
    let low = steps.iter().enumerate().filter_map(|(at, step)| {
        let core = step.core.as_ref().filter(|core| core.value < least)?;
        let before = case.work.flow.before(at);
        let mut used = before.iter().flat_map(|at| &case.work.flow.uses[*at]);
        used.any(|(line, _)| is_raw_egg(*line, case)).then_some(core)
    });
    low.map(|core| {
        let message = said!("core-too-low");
        Fault::caution("core-too-low", &core.place, message)
            .help(said!("core-too-low-help"))
    })
    .collect()
}

/// The steps that use a section of these sorts.
fn uses(case: Case, wanted: &dyn Fn(Filling) -> bool) -> Vec<usize> {
    let formula = &case.work.formula;
    let is_wanted = |line: usize| {
        let section = formula.lines[line].section;
        filling(section, formula, &case.work.flow).is_some_and(wanted)
    };
    let uses = case.work.flow.uses.iter().enumerate();
    uses.filter(|(_, uses)| uses.iter().any(|(line, _)| is_wanted(*line)))
        .map(|(at, _)| at)
        .collect()
}

fn is_raw_egg(line: usize, case: Case) -> bool {
    match case.work.formula.lines[line].source {
        MadeOf::Item(item) => item.kind == Kind::Egg && !item.is_pasteurised(),
        MadeOf::Recipe(_) => false,
    }
}

/// Whether a step bakes, or cooks to a core that is hot enough.
fn is_cooked(step: &Step) -> bool {
    let least = Temperature::celsius(exact(COOKED, 1));
    step.bake.is_some() || step.core.as_ref().is_some_and(|core| core.value >= least)
}

/// Where a step waits.
fn place(step: &Step) -> Option<&Location> {
    step.at_place.as_ref().map(|place| &place.value)
}

pub(super) fn is_cold(place: Option<&Location>) -> bool {
    place.is_some_and(Location::is_cold)
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const HEAD: &str = "makes: 1 tart\nformula:\n  dough:\n    - 200 g bread flour\n    - 100 g butter\n  custard:\n    - 300 g whole milk\n    - 3 eggs\n    - 60 g sugar\n  glaze:\n    - 1 egg white\n    - 50 g icing sugar\n";

    /// The tart with these lines under its last three headings.
    fn body(bake: &str, cool: &str, last: &str) -> String {
        format!(
            "## Line\n~~~ticket\nuses: dough\n~~~\n## Fill\n~~~ticket\nuses: custard\n{bake}~~~\n## Cool\n~~~ticket\n{cool}~~~\n## Finish\n~~~ticket\n{last}~~~\n"
        )
    }

    const BAKE: &str = "bake: 140 °C, 40 min\ncore: 76 °C\n";
    const COOL: &str = "wait: 1 h\nwhere: rack\ncool: custard\n";
    const CHILL: &str = "wait: 4 h\nwhere: fridge\ncool: custard\nhold: up to 24 h\n";

    /// FDA Food Code 3-501.14(A), as adopted in 16 Del. Admin. Code 3-501.14.
    #[test]
    fn a_custard_is_cooled_in_time() {
        let sound = body(BAKE, COOL, CHILL);
        for name in ["cooling-missing", "cooling-too-slow", "held-warm", "core-too-low"] {
            assert_no_fault(HEAD, &sound, name);
        }
        let without = body(BAKE, "wait: 1 h\nwhere: fridge\n", "hands: 1 min\n");
        assert_fault(HEAD, &without, "cooling-missing", "Fill");
        let slow = COOL.replace("1 h", "2 h 1 min");
        assert_fault(HEAD, &body(BAKE, &slow, CHILL), "cooling-too-slow", "custard");
        let just = body(BAKE, &COOL.replace("1 h", "2 h"), CHILL);
        assert_no_fault(HEAD, &just, "cooling-too-slow");
        let long = CHILL.replace("4 h", "5 h 1 min");
        assert_fault(HEAD, &body(BAKE, COOL, &long), "cooling-too-slow", "custard");
    }

    /// FDA Food Code 3-501.16: cold holding at 5 °C.
    #[test]
    fn what_is_filled_is_held_cold() {
        let warm = CHILL.replace("up to 24 h", "up to 4 h on the rack");
        assert_fault(
            HEAD,
            &body(BAKE, COOL, &warm),
            "held-warm",
            "up to 4 h on the rack",
        );
        let wait = body(BAKE, COOL, "wait: 3 h\nwhere: rack\n");
        assert_fault(HEAD, &wait, "held-warm", "3 h");
    }

    /// FDA Food Code 3-401.11(A)(2): 68 °C for raw egg not for immediate service.
    #[test]
    fn raw_egg_is_cooked() {
        let glazed = format!("uses: glaze\n{CHILL}");
        let body = |last: &str| body(BAKE, COOL, last);
        assert_fault(HEAD, &body(&glazed), "raw-egg-eaten", "egg white");
        let baked = format!("{glazed}bake: 200 °C, 5 min\n");
        assert_no_fault(HEAD, &body(&baked), "raw-egg-eaten");
        let safe = HEAD.replace("1 egg white", "30 g pasteurised egg");
        assert_no_fault(&safe, &body(&glazed), "raw-egg-eaten");
        let low = body(CHILL).replace("76 °C", "60 °C");
        assert_fault(HEAD, &low, "core-too-low", "60 °C");
    }

    /// A head with these sections, and a step that uses each in turn, the last of which
    /// bakes.
    fn baked(sections: &[(&str, &str)], between: &str) -> [String; 2] {
        let (mut head, mut body) =
            ("makes: 1 of it\nformula:\n".to_owned(), String::new());
        for (name, lines) in sections {
            head.push_str(&format!("  {name}:\n"));
            lines.split(", ").for_each(|line| head.push_str(&format!("    - {line}\n")));
            body.push_str(&format!(
                "## Make {name}\n~~~ticket\nuses: {name}\nhands: 5 min\n~~~\n{between}"
            ));
        }
        body.push_str("## Bake\n~~~ticket\nbake: 170 °C, 40 min\n~~~\n");
        [head, body]
    }

    const LINE_THE_TIN: &str = "## Line\n~~~ticket\nhands: 5 min\n~~~\n";

    const PASTRY: &str = "200 g all-purpose flour, 100 g butter, 40 g water";
    const MILK_AND_EGG: &str = "400 g whole milk, 150 g egg";

    /// With a third of flour over milk, cream and egg a baked section is batter: common
    /// practice, no source. The proportions are those of the usual formulas, from memory.
    #[test]
    fn batters_are_no_custards() {
        let cake = "200 g all-purpose flour, 200 g sugar, 10 g baking powder";
        let wet = "200 g whole milk, 100 g egg, 100 g butter";
        let batters: [&[(&str, &str)]; 6] = [
            &[("dry", cake), ("wet", wet)],
            &[("wet", wet), ("dry", cake)],
            &[(
                "batter",
                "200 g all-purpose flour, 200 g whole milk, 200 g egg, 300 g sugar",
            )],
            &[("pancakes", "250 g all-purpose flour, 500 g whole milk, 150 g egg")],
            &[
                ("creamed", "200 g butter, 250 g sugar"),
                ("eggs", "200 g egg, 50 g heavy cream"),
                ("flour", "250 g all-purpose flour"),
            ],
            &[
                ("paste", "200 g whole milk, 80 g butter, 130 g bread flour"),
                ("eggs", "220 g egg"),
            ],
        ];
        for sections in batters {
            let [head, body] = baked(sections, "");
            assert_no_fault(&head, &body, "cooling-missing");
        }
    }

    /// With less flour than that the caution stays.
    #[test]
    fn custards_stay_custards() {
        for lines in [
            "500 g whole milk, 200 g egg, 100 g sugar",
            "80 g all-purpose flour, 300 g whole milk, 150 g egg, 100 g sugar",
            "100 g almonds, 30 g all-purpose flour, 100 g egg, 60 g heavy cream",
            "500 g whole milk, 100 g egg yolk, 50 g all-purpose flour, 100 g sugar",
        ] {
            let [head, body] = baked(&[("flan", lines)], "");
            assert_fault(&head, &body, "cooling-missing", "Make flan");
        }
        for (name, between) in
            [("filling", ""), ("milk and eggs", ""), ("milk and eggs", LINE_THE_TIN)]
        {
            let [head, body] =
                baked(&[("pastry", PASTRY), (name, MILK_AND_EGG)], between);
            assert_fault(&head, &body, "cooling-missing", &format!("Make {name}"));
        }
    }

    /// With flour between a quarter of all and a third of the wet, the bake decides.
    #[test]
    fn what_is_not_baked_is_no_batter() {
        let cream = "100 g all-purpose flour, 200 g whole milk, 90 g egg, 120 g sugar";
        let [head, body] = baked(&[("cream", cream)], "");
        assert_no_fault(&head, &body, "cooling-missing");
        let raw = body.replace("bake: 170 °C, 40 min\n", "hands: 1 min\n");
        assert_fault(&head, &raw, "cooling-missing", "Make cream");
    }

    /// Choux shells stand on the rack as bread does; a cream in them does not.
    #[test]
    fn eggs_beaten_into_a_paste_are_no_cream() {
        let paste = ("paste", "200 g water, 80 g butter, 130 g bread flour");
        let hold = "## Cool\n~~~ticket\nhold: up to 8 h on the rack\n~~~\n";
        let [head, body] = baked(&[paste, ("eggs", "220 g egg")], "");
        assert_no_fault(&head, &format!("{body}{hold}"), "held-warm");
        let [head, body] = baked(&[paste, ("eggs", "220 g egg")], LINE_THE_TIN);
        assert_fault(
            &head,
            &format!("{body}{hold}"),
            "held-warm",
            "up to 8 h on the rack",
        );
    }
}
