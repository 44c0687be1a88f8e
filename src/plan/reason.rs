//! Why a class does not fit, with numbers; and the smallest remedies, each really tried.

use crate::fault::Placed;
use crate::formula::Book;
use crate::measure::{Duration, exact};
use crate::model::{Class, Content, Each, Hold, Part, Session};

use super::class::{ClassDraft, draft};
use super::solve::{Answer, Effort, fits};

/// Steps of the search for each trial.
const TRIAL: Effort = Effort::TRIAL;
/// No session is tried longer than by this.
const LONGEST: i32 = 360;
/// Longer sessions are proposed in these steps of minutes.
const STEP: i32 = 5;
/// Holds over night that are proposed at most.
const MOST_HOLDS: usize = 2;

/// Reasons and remedies.
#[derive(Clone, Debug, Default)]
pub struct Explanation {
    /// Why it does not fit.
    pub reasons: Vec<String>,
    /// What would make it fit.
    pub remedies: Vec<String>,
}

/// Explains why `class` does not fit.
pub fn explain(class: &Class, book: Book) -> Explanation {
    let trial = Trial { class, book };
    Explanation { reasons: trial.reasons(), remedies: trial.remedies() }
}

struct Trial<'a> {
    class: &'a Class,
    book: Book<'a>,
}

impl Trial<'_> {
    /// When a changed class ends, if it fits.
    fn end(&self, class: &Class, book: Book) -> Option<String> {
        let draft = draft(class, book).ok()?;
        ends(&draft, &fits(&draft.problem, TRIAL))
    }

    fn fits(&self, class: &Class) -> bool {
        self.end(class, self.book).is_some()
    }

    fn reasons(&self) -> Vec<String> {
        let mut alone = self.class.clone();
        alone.kit.retain(|(name, _)| {
            matches!(name.value.as_str(), "instructor" | "tray per oven")
        });
        if !self.fits(&alone) {
            return vec![self.chain(&alone)];
        }
        let short: Vec<String> = self
            .class
            .kit
            .iter()
            .filter_map(|(name, _)| self.shortage(&name.value))
            .collect();
        if short.is_empty() {
            let by =
                self.least_longer(self.class).map_or_else(String::new, |(at, more)| {
                    format!(": session {} is {more} min short", at + 1)
                });
            return vec![format!(
                "no one piece of kit is the reason; several are short together{by}"
            )];
        }
        short
    }

    /// The steps alone take longer than the sessions have.
    fn chain(&self, alone: &Class) -> String {
        match self.least_longer(alone) {
            Some((session, minutes)) => format!(
                "the steps follow each other for longer than the sessions last, whatever the kit: \
                 session {} is {minutes} min short",
                session + 1
            ),
            None => "the steps, their waits and the demonstrations do not go into these sessions, \
                     however long each one of them is: a wait without a hold would have to last \
                     from one session to the next"
                .into(),
        }
    }

    /// The kit is a reason where with plenty of it the class would fit.
    fn shortage(&self, kit: &str) -> Option<String> {
        if matches!(kit, "instructor" | "tray per oven") {
            return None;
        }
        let plenty = with_kit(self.class, kit, 50);
        if !self.fits(&plenty) {
            return None;
        }
        Some(match self.least_longer(self.class) {
            Some((at, minutes)) => {
                format!("the {kit}s are {minutes} min short in session {}", at + 1)
            }
            None => format!("there are too few {kit}s, however long a session lasts"),
        })
    }

    /// The session that needs the fewest minutes more, and how many.
    fn least_longer(&self, class: &Class) -> Option<(usize, i32)> {
        let sessions = 0..class.sessions.len();
        let needs = |at: usize| {
            let fits = |minutes: i32| self.fits(&longer(class, at, minutes));
            least(&fits).map(|minutes| (at, minutes))
        };
        sessions.filter_map(needs).min_by_key(|(at, minutes)| (*minutes, *at))
    }

    fn remedies(&self) -> Vec<String> {
        let mut remedies = Vec::new();
        for (kit, count) in &self.class.kit {
            if kit.value == "instructor" || kit.value == "tray per oven" {
                continue;
            }
            let more = with_kit(self.class, &kit.value, count + 1);
            remedies.extend(self.says(&format!("with one more {}", kit.value), &more));
        }
        let bigger = Class { together: self.class.together + 1, ..self.class.clone() };
        let word = ["pairs", "threes", "fours", "fives"];
        if let Some(word) = word.get(self.class.together as usize - 1) {
            remedies.extend(self.says(&format!("working in {word}"), &bigger));
        }
        if self.class.makes.iter().any(|making| making.each == Each::Demonstration) {
            let mut without = self.class.clone();
            without.makes.retain(|making| making.each != Each::Demonstration);
            remedies.extend(self.says("without the instructor's own batch", &without));
        }
        remedies.extend(self.holds());
        if let Some((at, minutes)) = self.least_longer(self.class) {
            let longer = longer(self.class, at, minutes);
            remedies.extend(
                self.says(
                    &format!("with session {} {minutes} min longer", at + 1),
                    &longer,
                ),
            );
        }
        remedies
    }

    fn says(&self, change: &str, class: &Class) -> Option<String> {
        let end = self.end(class, self.book)?;
        Some(format!("{change} it fits, ending by {end}"))
    }

    /// A hold over night after each step that waits and has none.
    fn holds(&self) -> Vec<String> {
        let days = self.class.sessions.iter().map(|session| session.value.from.date());
        if days.collect::<std::collections::BTreeSet<_>>().len() < 2 {
            return Vec::new();
        }
        let mut found = Vec::new();
        for (recipe, step, title) in self.unheld() {
            if found.len() == MOST_HOLDS {
                break;
            }
            let content = with_hold(self.book.content, &recipe, &step);
            let book = Book { content: &content, pantry: self.book.pantry };
            let end = self.end(self.class, book);
            found.extend(end.map(|end| {
                format!("with a hold over night at “{title}” ({recipe}) it fits, ending by {end}")
            }));
        }
        found
    }

    /// Steps that wait and have no hold: recipe, step, heading.
    fn unheld(&self) -> Vec<(String, String, String)> {
        let Ok(draft) = draft(self.class, self.book) else { return Vec::new() };
        let mut found = Vec::new();
        for step in draft.units.iter().flat_map(|unit| &unit.strand.steps) {
            let name = (step.recipe.clone(), step.step.clone(), step.title.clone());
            if step.waits && !step.lag.crosses && !found.contains(&name) {
                found.push(name);
            }
        }
        found
    }
}

/// When an answer's plan ends.
fn ends(draft: &ClassDraft, answer: &Answer) -> Option<String> {
    answer.plan().map(|plan| draft.clock.time(plan.second))
}

/// The fewest minutes for which `fits` holds, to five, or nothing.
fn least(fits: &impl Fn(i32) -> bool) -> Option<i32> {
    if !fits(LONGEST) {
        return None;
    }
    let (mut short, mut long) = (0, LONGEST / STEP);
    while long - short > 1 {
        let middle = i32::midpoint(short, long);
        if fits(middle * STEP) { long = middle } else { short = middle }
    }
    Some(long * STEP)
}

fn with_kit(class: &Class, kit: &str, count: u32) -> Class {
    let mut class = class.clone();
    for (name, have) in &mut class.kit {
        if name.value == kit {
            *have = count;
        }
    }
    class
}

fn longer(class: &Class, session: usize, minutes: i32) -> Class {
    let mut class = class.clone();
    let next = class.sessions.get(session + 1).map(|next| next.value.from);
    if let Some(at) = class.sessions.get_mut(session) {
        let later = jiff::Span::new().minutes(minutes);
        let to = at.value.to.checked_add(later).unwrap_or(at.value.to);
        // A session does not run into the next one.
        at.value = Session { to: next.map_or(to, |next| to.min(next)), ..at.value };
    }
    class
}

fn with_hold(content: &Content, recipe: &str, step: &str) -> Content {
    let mut content = content.clone();
    let recipes = content.recipes.iter_mut().filter(|found| found.name == recipe);
    for part in recipes.flat_map(|found| &mut found.parts) {
        if let Part::Step(own) = part
            && own.name == step
        {
            let up_to = Duration::minutes(exact(24 * 60, 1));
            own.hold =
                Some(Placed::new(Hold { up_to, at_place: None }, own.place.clone()));
        }
    }
    content
}
