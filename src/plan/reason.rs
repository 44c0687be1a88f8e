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
/// No more bakers than so many are proposed to work together.
const MOST_TOGETHER: u32 = 5;
/// Holds over night that are proposed at most.
const MOST_HOLDS: usize = 2;

/// Reasons and remedies.
#[derive(Clone, Debug, Default)]
pub struct Explanation {
    /// Why it does not fit.
    pub reasons: Vec<Reason>,
    /// What would make it fit.
    pub remedies: Vec<Remedy>,
}

/// So many minutes that a session, from 0, is too short by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Short {
    /// The session.
    pub session: usize,
    /// Minutes.
    pub minutes: i32,
}

/// Why there is no plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reason {
    /// The steps follow each other for longer than the sessions last, whatever the kit.
    Chain(Short),
    /// The steps, their waits and the demonstrations do not go into these sessions, however
    /// long each one of them is.
    Apart,
    /// There is too little of one kind of kit.
    Kit {
        /// Its name in the class file.
        kit: String,
        /// By how much a session would have to be longer; `None` where no length suffices.
        short: Option<Short>,
    },
    /// No one piece of kit is the reason: several are short together.
    Together(Option<Short>),
    /// At home: the hours leave no time until then.
    Hours {
        /// Up from, until: minutes of the day.
        awake: (i32, i32),
        /// When it shall be ready.
        ready: jiff::civil::DateTime,
    },
    /// At home: the steps do not follow each other within their waits, whatever the hours.
    Waits,
}

/// Something that was tried, and with which it fits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remedy {
    /// What is changed.
    pub change: Change,
    /// When the plan then ends; at home nothing, since it ends when it shall.
    pub end: Option<jiff::civil::DateTime>,
}

/// A change to a class, or to a bake at home.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Change {
    /// One more of a kind of kit, by its name in the class file.
    OneMore(String),
    /// So many bakers working together.
    Together(u32),
    /// Without the instructor's own batch.
    NoDemonstration,
    /// A hold over night.
    Hold {
        /// The recipe.
        recipe: String,
        /// The step's heading.
        title: String,
    },
    /// A session longer by so much.
    Longer(Short),
    /// Ready at another time.
    Ready(jiff::civil::DateTime),
    /// Getting up at this minute of the day.
    Up(i32),
    /// Staying up until this minute of the day.
    StayUp(i32),
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
    fn end(&self, class: &Class, book: Book) -> Option<jiff::civil::DateTime> {
        let draft = draft(class, book).ok()?;
        ends(&draft, &fits(&draft.problem, TRIAL))
    }

    fn fits(&self, class: &Class) -> bool {
        self.end(class, self.book).is_some()
    }

    fn reasons(&self) -> Vec<Reason> {
        let mut alone = self.class.clone();
        alone.kit.retain(|(name, _)| {
            matches!(name.value.as_str(), "instructor" | "tray per oven")
        });
        if !self.fits(&alone) {
            return vec![self.chain(&alone)];
        }
        let short: Vec<Reason> = self
            .class
            .kit
            .iter()
            .filter_map(|(name, _)| self.shortage(&name.value))
            .collect();
        if short.is_empty() {
            return vec![Reason::Together(self.least_longer(self.class))];
        }
        short
    }

    /// The steps alone take longer than the sessions have.
    fn chain(&self, alone: &Class) -> Reason {
        self.least_longer(alone).map_or(Reason::Apart, Reason::Chain)
    }

    /// The kit is a reason where with plenty of it the class would fit.
    fn shortage(&self, kit: &str) -> Option<Reason> {
        if matches!(kit, "instructor" | "tray per oven") {
            return None;
        }
        let plenty = with_kit(self.class, kit, 50);
        if !self.fits(&plenty) {
            return None;
        }
        Some(Reason::Kit { kit: kit.to_owned(), short: self.least_longer(self.class) })
    }

    /// The session that needs the fewest minutes more, and how many.
    fn least_longer(&self, class: &Class) -> Option<Short> {
        let sessions = 0..class.sessions.len();
        let needs = |at: usize| {
            let fits = |minutes: i32| self.fits(&longer(class, at, minutes));
            least(&fits).map(|minutes| Short { session: at, minutes })
        };
        sessions.filter_map(needs).min_by_key(|short| (short.minutes, short.session))
    }

    fn remedies(&self) -> Vec<Remedy> {
        let mut remedies = Vec::new();
        for (kit, count) in &self.class.kit {
            if kit.value == "instructor" || kit.value == "tray per oven" {
                continue;
            }
            let more = with_kit(self.class, &kit.value, count + 1);
            remedies.extend(self.tried(Change::OneMore(kit.value.clone()), &more));
        }
        let together = self.class.together + 1;
        if together <= MOST_TOGETHER {
            let bigger = Class { together, ..self.class.clone() };
            remedies.extend(self.tried(Change::Together(together), &bigger));
        }
        if self.class.makes.iter().any(|making| making.each == Each::Demonstration) {
            let mut without = self.class.clone();
            without.makes.retain(|making| making.each != Each::Demonstration);
            remedies.extend(self.tried(Change::NoDemonstration, &without));
        }
        remedies.extend(self.holds());
        if let Some(short) = self.least_longer(self.class) {
            let longer = longer(self.class, short.session, short.minutes);
            remedies.extend(self.tried(Change::Longer(short), &longer));
        }
        remedies
    }

    fn tried(&self, change: Change, class: &Class) -> Option<Remedy> {
        let end = self.end(class, self.book)?;
        Some(Remedy { change, end: Some(end) })
    }

    /// A hold over night after each step that waits and has none.
    fn holds(&self) -> Vec<Remedy> {
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
            let change = Change::Hold { recipe, title };
            found.extend(end.map(|end| Remedy { change, end: Some(end) }));
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
fn ends(draft: &ClassDraft, answer: &Answer) -> Option<jiff::civil::DateTime> {
    answer.plan().map(|plan| draft.clock.local(plan.second))
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
