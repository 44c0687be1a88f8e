//! Why a class does not fit: only what is proven. And what would make it fit: only what was
//! tried and works, the smallest of each kind that is within what a school can do; else what
//! to leave out.

use std::cell::Cell;

use crate::formula::Book;
use crate::model::{Class, Each, Session};

use super::changed::{
    longer, next_day, with_bakers, with_hold, with_kit, without, without_kit,
};
use super::class::{ClassDraft, draft};
use super::solve::{Answer, Effort, fits, fits_soon};

/// The longest session that is thought of, in minutes.
const LONGEST: i32 = 720;
/// Minutes by which a school may let a session run on.
const AN_HOUR: i32 = 60;
/// Longer sessions are proposed in these steps of minutes.
const STEP: i32 = 5;
/// Pieces of kit that a school may borrow.
const FEW: u32 = 4;
/// As much kit as nobody ever needs.
const PLENTY: u32 = 400;
/// Holds over night that are proposed at most.
const MOST_HOLDS: usize = 2;

/// Tasks of all trials for the reasons, and as many for the remedies.
const TRIALS: u64 = 40_000;

/// Reasons and remedies.
#[derive(Clone, Debug, Default)]
pub struct Explanation {
    /// Why it does not fit, each proven; none where it is not decided whether it does.
    pub reasons: Vec<Reason>,
    /// What would make it fit, each tried.
    pub remedies: Vec<Remedy>,
}

/// So many minutes more for a session, from 0.
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
    /// The steps with their waits and demonstrations are too long, whatever the kit: with a
    /// session so much longer they fit, and with five minutes less they do not.
    Chain(Short),
    /// They do not go into these sessions, whatever the kit.
    Apart,
    /// There is too little of one kind of kit.
    Kit {
        /// Its name in the class file.
        kit: String,
        /// How many there are.
        have: u32,
        /// The smallest number with which it fits.
        need: u32,
        /// The headings of the steps that need it.
        steps: Vec<String>,
    },
    /// What is left of a day under way needs a session to be so much longer: with five
    /// minutes less no plan is found.
    Over(Short),
    /// No one piece of kit alone is the reason: several are short together.
    Together,
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
    /// So many more of a kind of kit, by its name in the class file.
    More(String, u32),
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
    /// One more session.
    Session(Session),
    /// No more than so many bakers.
    Bakers(u32),
    /// They stop where they are.
    Stop(Vec<super::Who>),
    /// A recipe is not made.
    Without(String),
    /// Several changes at once.
    All(Vec<Change>),
    /// Ready at another time.
    Ready(jiff::civil::DateTime),
    /// Getting up at this minute of the day.
    Up(i32),
    /// Staying up until this minute of the day.
    StayUp(i32),
}

/// Explains why `class` does not fit, or was not found to (`answer`).
pub fn explain(class: &Class, answer: &Answer, book: Book) -> Explanation {
    let trial = Trial { class, book, left: Cell::new(TRIALS) };
    let reasons = if *answer == Answer::Never { trial.reasons() } else { Vec::new() };
    trial.left.set(TRIALS);
    Explanation { reasons, remedies: trial.remedies() }
}

struct Trial<'a> {
    class: &'a Class,
    book: Book<'a>,
    /// Tasks of the trials that may still be made.
    left: Cell<u64>,
}

impl Trial<'_> {
    /// When a changed class ends, if a plan is found soon.
    fn end(&self, class: &Class, book: Book) -> Option<jiff::civil::DateTime> {
        let draft = draft(class, book).ok()?;
        // Counted in tasks, not in seconds: the same class always has the same answer.
        let cost = u64::try_from(draft.problem.tasks.len()).unwrap_or(u64::MAX);
        self.left.set(self.left.get().checked_sub(cost)?);
        let answer = fits_soon(&draft.problem);
        answer.plan().map(|plan| draft.clock.local(plan.second))
    }

    fn fits(&self, class: &Class) -> bool {
        self.end(class, self.book).is_some()
    }

    /// Whether it is proven that a changed class does not fit.
    fn never(&self, class: &Class) -> bool {
        draft(class, self.book)
            .is_ok_and(|draft| fits(&draft.problem, Effort::TRIAL) == Answer::Never)
    }

    fn reasons(&self) -> Vec<Reason> {
        let bare = without_kit(self.class);
        if self.never(&bare) {
            let least = self.least_longer(&bare, LONGEST);
            let proven =
                least.filter(|(at, more)| self.never(&longer(&bare, *at, more - STEP)));
            let short = proven.map(|(session, minutes)| Short { session, minutes });
            return vec![short.map_or(Reason::Apart, Reason::Chain)];
        }
        let names = self.class.kit.iter().map(|(name, have)| (&name.value, *have));
        let short: Vec<Reason> =
            names.filter_map(|(kit, have)| self.shortage(kit, have)).collect();
        if short.is_empty() { vec![Reason::Together] } else { short }
    }

    /// The kit is a reason where with more of it the class fits, and with one less than that
    /// it is proven not to.
    fn shortage(&self, kit: &str, have: u32) -> Option<Reason> {
        if !self.fits(&with_kit(self.class, kit, PLENTY)) {
            return None;
        }
        let (mut few, mut many) = (have, PLENTY);
        while many - few > 1 {
            let middle = u32::midpoint(few, many);
            if self.fits(&with_kit(self.class, kit, middle)) {
                many = middle;
            } else {
                few = middle;
            }
        }
        if few > have && !self.never(&with_kit(self.class, kit, few)) {
            return None;
        }
        let steps = draft(self.class, self.book).ok()?.users(kit);
        Some(Reason::Kit { kit: kit.to_owned(), have, need: many, steps })
    }

    /// The session that needs the fewest minutes more, and how many.
    fn least_longer(&self, class: &Class, most: i32) -> Option<(usize, i32)> {
        let mut best: Option<(usize, i32)> = None;
        for at in 0..class.sessions.len() {
            let most = best.map_or(most, |(_, minutes)| minutes - STEP);
            let fits = |minutes: i32| self.fits(&longer(class, at, minutes));
            if let Some(minutes) = least(most, &fits) {
                best = Some((at, minutes));
            }
        }
        best
    }

    fn remedies(&self) -> Vec<Remedy> {
        let mut found: Vec<Remedy> = self.small();
        if found.is_empty() {
            found.extend(self.left_out());
            found.extend(self.large());
        }
        found
    }

    fn tried(&self, change: Change, class: &Class) -> Option<Remedy> {
        let end = self.end(class, self.book)?;
        Some(Remedy { change, end: Some(end) })
    }

    /// One change within what a school can do.
    fn small(&self) -> Vec<Remedy> {
        let class = self.class;
        let mut found = Vec::new();
        for (kit, have) in &class.kit {
            found.extend(self.more_of(&kit.value, *have));
        }
        if let Some((at, minutes)) = self.least_longer(class, AN_HOUR) {
            let change = longer(class, at, minutes);
            found.extend(
                self.tried(Change::Longer(Short { session: at, minutes }), &change),
            );
        }
        if class.makes.iter().any(|making| making.each == Each::Demonstration) {
            let mut change = class.clone();
            change.makes.retain(|making| making.each != Each::Demonstration);
            found.extend(self.tried(Change::NoDemonstration, &change));
        }
        let shared = class.makes.iter().any(|making| making.each == Each::Group);
        if shared && class.together < 5 && class.groups() > 1 {
            let together = class.together + 1;
            let change = Class { together, ..class.clone() };
            found.extend(self.tried(Change::Together(together), &change));
        }
        found.extend(self.holds());
        if found.is_empty()
            && let Some((change, session)) = next_day(class)
        {
            found.extend(self.tried(Change::Session(session), &change));
        }
        found
    }

    fn more_of(&self, kit: &str, have: u32) -> Option<Remedy> {
        let most = match kit {
            "tray per oven" => return None,
            "oven" | "instructor" => 1,
            _ => FEW,
        };
        self.end(&with_kit(self.class, kit, have + most), self.book)?;
        (1..=most).find_map(|more| {
            let change = with_kit(self.class, kit, have + more);
            self.tried(Change::More(kit.to_owned(), more), &change)
        })
    }

    /// Several changes at once: all that a school can do, then with fewer bakers, with a
    /// recipe less, with long days; less what is not needed.
    fn large(&self) -> Option<Remedy> {
        let kit = self.class.kit.iter().filter_map(|(kit, _)| match kit.value.as_str() {
            "tray per oven" => None,
            "oven" | "instructor" => Some(Change::More(kit.value.clone(), 1)),
            other => Some(Change::More(other.to_owned(), FEW)),
        });
        let kit: Vec<Change> = kit.collect();
        let sessions = self.class.sessions.len();
        let days = |minutes: i32| {
            (0..sessions).map(move |session| Change::Longer(Short { session, minutes }))
        };
        let with = |more: &[Change], minutes: i32| -> Vec<Change> {
            more.iter().chain(&kit).cloned().chain(days(minutes)).collect()
        };
        let one = Change::Bakers(self.class.together.max(1));
        let less: Vec<Change> = without(self.class)
            .into_iter()
            .map(|(recipe, _)| Change::Without(recipe))
            .collect();
        let mut all = vec![with(&[], AN_HOUR)];
        all.extend(less.iter().map(|less| with(std::slice::from_ref(less), AN_HOUR)));
        all.push(with(std::slice::from_ref(&one), AN_HOUR));
        all.push(with(std::slice::from_ref(&one), LONGEST));
        all.extend(less.iter().map(|less| with(&[one.clone(), less.clone()], LONGEST)));
        all.into_iter().find_map(|all| self.pared(all))
    }

    /// Changes with which it fits, less those without which it does too.
    fn pared(&self, mut all: Vec<Change>) -> Option<Remedy> {
        let end = |all: &[Change]| self.end(&self.with(all), self.book);
        end(&all)?;
        for at in (0..all.len()).rev() {
            let mut fewer = all.clone();
            fewer.remove(at);
            if end(&fewer).is_some() {
                all = fewer;
            }
        }
        for at in 0..all.len() {
            let least = self.least_of(&all, at);
            all[at] = least;
        }
        let end = end(&all)?;
        Some(Remedy { change: Change::All(all), end: Some(end) })
    }

    /// The least of one change that does beside the others.
    fn least_of(&self, all: &[Change], at: usize) -> Change {
        let fits = |one: &Change| {
            let mut all = all.to_vec();
            all[at] = one.clone();
            self.fits(&self.with(&all))
        };
        match &all[at] {
            Change::More(kit, most) => {
                let fewer = (1..*most).map(|more| Change::More(kit.clone(), more));
                fewer.into_iter().find(fits)
            }
            Change::Longer(Short { session, minutes: most }) => {
                let one = |minutes| Change::Longer(Short { session: *session, minutes });
                least(*most, &|minutes| fits(&one(minutes))).map(one)
            }
            Change::Bakers(fewest) => {
                let group = self.class.together.max(1);
                let more = (fewest / group..self.class.groups()).rev();
                more.map(|groups| Change::Bakers(groups * group)).find(fits)
            }
            _ => None,
        }
        .unwrap_or_else(|| all[at].clone())
    }

    /// The class with changes of kit and time.
    fn with(&self, changes: &[Change]) -> Class {
        changes.iter().fold(self.class.clone(), |class, change| match change {
            Change::More(kit, more) => {
                let have = class.count(kit).unwrap_or(0);
                with_kit(&class, kit, have + more)
            }
            Change::Longer(Short { session, minutes }) => {
                longer(&class, *session, *minutes)
            }
            Change::Bakers(count) => with_bakers(&class, *count),
            Change::Without(recipe) => {
                let known = without(&class).into_iter().find(|(name, _)| name == recipe);
                known.map_or(class, |(_, class)| class)
            }
            _ => class,
        })
    }

    /// What to leave out: bakers, or a recipe; else how long a session would have to be.
    fn left_out(&self) -> Vec<Remedy> {
        let mut found = Vec::new();
        let group = self.class.together.max(1);
        let bakers = |groups: u32| with_bakers(self.class, groups * group);
        let (mut few, mut many) = (0, self.class.groups());
        while many - few > 1 {
            let middle = u32::midpoint(few, many);
            if self.fits(&bakers(middle)) { few = middle } else { many = middle }
        }
        if few > 0 {
            found.extend(self.tried(Change::Bakers(few * group), &bakers(few)));
        }
        for (recipe, change) in without(self.class) {
            found.extend(self.tried(Change::Without(recipe), &change));
        }
        if found.is_empty()
            && let Some((at, minutes)) = self.least_longer(self.class, LONGEST)
        {
            let change = longer(self.class, at, minutes);
            found.extend(
                self.tried(Change::Longer(Short { session: at, minutes }), &change),
            );
        }
        found
    }

    /// A hold over night after each step that waits in the cold and has none.
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

    /// Steps that wait in a fridge or freezer and have no hold: recipe, step, heading.
    /// Elsewhere nothing stays over night by our advice.
    fn unheld(&self) -> Vec<(String, String, String)> {
        let Ok(draft) = draft(self.class, self.book) else { return Vec::new() };
        let mut found = Vec::new();
        for step in draft.units.iter().flat_map(|unit| &unit.strand.steps) {
            let name = (step.recipe.clone(), step.step.clone(), step.title.clone());
            let cold = matches!(step.place.as_deref(), Some("fridge" | "freezer"));
            if step.waits && cold && !step.lag.crosses && !found.contains(&name) {
                found.push(name);
            }
        }
        found
    }
}

impl ClassDraft {
    /// The headings of the steps that a kind of kit is needed for.
    fn users(&self, kit: &str) -> Vec<String> {
        let place = kit.strip_suffix(" tray");
        let mut found: Vec<String> = Vec::new();
        for step in self.units.iter().flat_map(|unit| &unit.strand.steps) {
            let names =
                step.kit.iter().any(|(_, name)| crate::model::one_of(name) == kit);
            let stands = place.is_some()
                && (step.place.as_deref() == place
                    || step.hold_place.as_deref() == place);
            let bakes = matches!(kit, "oven" | "tray per oven") && !step.bakes.is_empty();
            if (names || stands || bakes) && !found.contains(&step.title) {
                found.push(step.title.clone());
            }
        }
        found
    }
}

/// The fewest minutes up to `most` for which `fits` holds, to five, or nothing.
fn least(most: i32, fits: &impl Fn(i32) -> bool) -> Option<i32> {
    if most < STEP || !fits(most) {
        return None;
    }
    let (mut short, mut long) = (0, most / STEP);
    while long - short > 1 {
        let middle = i32::midpoint(short, long);
        if fits(middle * STEP) { long = middle } else { short = middle }
    }
    Some(long * STEP)
}
