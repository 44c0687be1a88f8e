//! What is told, as steps: one for each time that is waited for, with its heading, its ticket,
//! and prose in which temperatures and sizes are live.

mod doing;

use crate::measure::{Exact, exact};
use crate::said;
use crate::statement::Statement;

use super::lines::Section;
use super::sentence::{sentences, sizes, title};
use super::times::{self, Degrees, Time};
use super::uses;
use super::written::{Told, Written};

use doing::{Doing, doing, units};

/// The method of a draft.
#[derive(Debug, Default)]
pub(super) struct Plan {
    /// The steps in order.
    pub(super) steps: Vec<Step>,
    /// What is not sure about them.
    pub(super) doubts: Vec<Statement>,
}

/// One step.
#[derive(Debug)]
pub(super) struct Step {
    /// Its heading.
    pub(super) title: String,
    /// The part of the recipe it belongs to, as told.
    pub(super) group: Option<String>,
    /// The lines of its ticket, in order.
    pub(super) rows: Vec<(&'static str, String)>,
    /// What it uses: sections and ingredients.
    pub(super) uses: Vec<String>,
    /// What is told.
    pub(super) text: String,
    /// The stretches of `text` that are live, in order, and what stands in their braces.
    pub(super) live: Vec<((usize, usize), String)>,
}

/// The steps of what was written.
pub(super) fn plan(written: &Written, formula: &[Section]) -> Plan {
    let mut planner = Planner { written, plan: Plan::default(), oven: None };
    planner.oven =
        written.oven.as_deref().and_then(|oven| oven_of(&times::temperatures(oven).0));
    for told in &written.steps {
        planner.told(told);
    }
    let mut plan = planner.plan;
    if plan.steps.is_empty() {
        plan.doubts.push(said!("draft-no-method"));
        plan.steps.push(Step::new("Make it".into(), None, String::new()));
    }
    name_apart(&mut plan.steps);
    uses::share_out(formula, &mut plan);
    plan
}

impl Step {
    fn new(title: String, group: Option<String>, text: String) -> Self {
        Self { title, group, rows: Vec::new(), uses: Vec::new(), text, live: Vec::new() }
    }
}

struct Planner<'a> {
    written: &'a Written,
    plan: Plan,
    /// The oven as last said, with the fan's own setting.
    oven: Option<(String, Option<String>)>,
}

impl Planner<'_> {
    fn told(&mut self, told: &Told) {
        let mut heading = told.heading.clone();
        for unit in units(&told.text) {
            let title = heading.take().unwrap_or_else(|| title(&unit));
            let step = Step::new(title, told.group.clone(), unit);
            self.step(step);
        }
    }

    fn step(&mut self, mut step: Step) {
        let text = step.text.clone();
        let (degrees, unsure) = times::temperatures(&text);
        self.live(&mut step, &degrees);
        for words in unsure {
            self.doubt(&step, said!("draft-degrees", words));
        }
        let lower = text.to_lowercase();
        let core = ["internal temperature", "core", "in the centre", "in the center"]
            .iter()
            .any(|word| lower.contains(word));
        if core {
            step.rows.extend(degrees.last().map(|found| ("core", found.text.clone())));
        } else if lower.contains("oven")
            || lower.contains("bake")
            || lower.contains("preheat")
        {
            self.oven = oven_of(&degrees).or(self.oven.take());
        }
        for sentence in sentences(&text) {
            self.times(sentence, &mut step);
        }
        self.plan.steps.push(step);
    }

    fn live(&mut self, step: &mut Step, degrees: &[Degrees]) {
        step.live.extend(degrees.iter().map(|found| (found.range, found.text.clone())));
        step.live.extend(sizes(&step.text));
        step.live.sort();
    }

    fn times(&mut self, sentence: &str, step: &mut Step) {
        let found = times::times(sentence);
        let doing = doing(sentence);
        let lower = sentence.to_lowercase();
        if lower.contains("overnight") && found.is_empty() {
            self.doubt(step, said!("draft-overnight"));
        }
        let rises = ["let rise", "to rise", "rise until", "rise again"];
        let waits = matches!(doing, Some(Doing::Wait(_))) && !found.is_empty();
        if rises.iter().any(|words| lower.contains(words)) && !waits {
            self.doubt(step, said!("draft-rise", sentence));
        }
        match (found.first(), doing) {
            (Some(time), Some(Doing::Bake)) => self.bake(time, sentence, step),
            (None, Some(Doing::Bake)) => self.bake_untimed(sentence, step),
            (Some(time), Some(Doing::Wait(place))) => {
                self.row(step, "wait", time.ticket());
                if let Some(place) = place {
                    self.row(step, "where", place.into());
                }
            }
            (Some(time), Some(Doing::Hands)) => self.row(step, "hands", time.ticket()),
            (Some(time), None) => self.unsaid(time, sentence, step),
            (None, _) => {}
        }
        if found.len() > 1 {
            let time = found[0].ticket();
            self.doubt(step, said!("draft-times", time, sentence));
        }
    }

    /// A time of which the words do not say whether it is work or a wait: more than half an hour
    /// is a wait.
    fn unsaid(&mut self, time: &Time, sentence: &str, step: &mut Step) {
        let (key, other) = match time.most > exact(30, 1) {
            true => ("wait", "hands"),
            false => ("hands", "wait"),
        };
        self.row(step, key, time.ticket());
        let time = time.ticket();
        self.doubt(step, said!("draft-work-or-wait", key, time, other, sentence));
    }

    fn bake(&mut self, time: &Time, sentence: &str, step: &mut Step) {
        let Some((oven, fan)) = self.oven.clone() else {
            self.row(step, "wait", time.ticket());
            self.row(step, "where", "oven".into());
            let time = time.ticket();
            self.doubt(step, said!("draft-no-oven", time, sentence));
            return;
        };
        self.row(step, "bake", format!("{oven}, {}", time.ticket()));
        if let Some(fan) = fan {
            self.row(step, "fan", fan);
        }
    }

    fn bake_untimed(&mut self, sentence: &str, step: &mut Step) {
        let is_done = step.rows.iter().any(|(key, _)| *key == "bake");
        let only_heated = sentence.to_lowercase().contains("heat");
        if is_done || only_heated {
            return;
        }
        match (&self.written.baking, self.oven.is_some()) {
            (Some(minutes), true) => {
                let time = Time { least: Exact::clone(minutes), most: minutes.clone() };
                self.bake(&time, sentence, step);
                self.doubt(step, said!("draft-cook-time", sentence));
            }
            _ => self.doubt(step, said!("draft-no-bake-time", sentence)),
        }
    }

    /// One line of the ticket; a second one of a kind is left to the author.
    fn row(&mut self, step: &mut Step, key: &'static str, value: String) {
        let there = step
            .rows
            .iter()
            .find(|(known, _)| *known == key)
            .map(|(_, value)| value.clone());
        match there {
            Some(there) if there == value => {}
            Some(_) => self.doubt(step, said!("draft-second", key, value)),
            None => step.rows.push((key, value)),
        }
    }

    fn doubt(&mut self, step: &Step, doubt: Statement) {
        self.plan.doubts.push(said!("draft-of-step", title = step.title, doubt));
    }
}

/// The oven among temperatures, and its setting with a fan.
fn oven_of(degrees: &[Degrees]) -> Option<(String, Option<String>)> {
    let found = degrees.first()?;
    if found.fan {
        return Some((format!("fan {}", found.text), None));
    }
    Some((found.text.clone(), found.with_fan.clone()))
}

/// Steps of one heading are numbered: `after` could not tell them apart.
fn name_apart(steps: &mut [Step]) {
    let key = |title: &str| -> String {
        title
            .chars()
            .filter(|sign| sign.is_alphanumeric())
            .flat_map(char::to_lowercase)
            .collect()
    };
    let mut seen: Vec<String> = Vec::new();
    for step in steps {
        let base = step.title.clone();
        let mut count = 2;
        while seen.contains(&key(&step.title)) {
            step.title = format!("{base} ({count})");
            count += 1;
        }
        seen.push(key(&step.title));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn steps(text: &str) -> Plan {
        let told = Told { text: text.into(), ..Told::default() };
        plan(&Written { steps: vec![told], ..Written::default() }, &[])
    }

    #[test]
    fn tickets_from_what_is_told() {
        let plan = steps(
            "Preheat the oven to 350°F. Knead for 10 minutes. Let rise 1 hour. Roll out to 9 x 13 inches. Bake 25 to 30 min until brown.",
        );
        let rows: Vec<_> = plan.steps.iter().map(|step| step.rows.clone()).collect();
        assert_eq!(rows[0], [("hands", "10 min".to_owned()), ("wait", "1 h".to_owned())]);
        assert_eq!(rows[1], [("bake", "350 °F, 25 min to 30 min".to_owned())]);
        assert_eq!(plan.steps[1].live[0].1, "9 x 13 in");
        assert!(plan.doubts.is_empty(), "{:?}", plan.doubts);
    }

    #[test]
    fn what_is_not_told_is_a_doubt() {
        let plan = steps("Bake in a moderate oven for half an hour.");
        assert_eq!(
            plan.steps[0].rows,
            [("wait", "30 min".to_owned()), ("where", "oven".to_owned())]
        );
        let words = crate::read::words_in(&crate::theme::Theme::built_in(), "en");
        let words = words.expect("the words");
        let first = |plan: &Plan| words.tell(&plan.doubts[0]);
        assert!(first(&plan).contains("no oven temperature"), "{}", first(&plan));
        assert!(first(&steps("Chill overnight.")).contains("overnight"));
        assert!(first(&steps("Bake at 350 degrees.")).contains("350 degrees"));
    }

    #[test]
    fn headings_are_told_apart() {
        let plan = steps("Let rise 1 hour. Let rise 30 minutes.");
        assert_eq!(plan.steps[1].title, "Let rise (2)");
    }
}
