//! Why a class does not fit: only what is proven. And what would make it fit: only what was
//! tried and works, the smallest of each kind that is within what a school can do; else what
//! to leave out.

use std::cell::Cell;

use jiff::civil::DateTime;

use crate::formula::Book;
use crate::model::{Class, Each, KitKind, Location, Session};
use crate::plan::question::class::{ClassDraft, draft};
use crate::plan::search::solve::{Answer, Effort, Watch, fits, fits_soon, stopped};

use super::changed::{
    longer, next_day, room_for, with_bakers, with_hold, with_kit, without,
    without_beside, without_kit,
};

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
        /// Which.
        kit: KitKind,
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
        ready: DateTime,
    },
    /// At home: the steps do not follow each other within their waits, whatever the hours.
    Waits,
}

/// Something that was tried, and with which it fits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remedy {
    /// What is changed.
    pub change: Amendment,
    /// When the plan then ends; at home nothing, since it ends when it shall.
    pub end: Option<DateTime>,
}

/// A change to a class, or to a bake at home.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Amendment {
    /// So many more of a kind of kit.
    More(KitKind, u32),
    /// So many bakers working together.
    Together(u32),
    /// Without the instructor's own batch.
    NoDemonstration,
    /// Without something that it has beside its recipes.
    Less(Beside),
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
    Stop(Vec<crate::plan::Who>),
    /// A recipe is not made.
    Without(String),
    /// Several changes at once.
    All(Vec<Amendment>),
    /// Ready at another time.
    Ready(DateTime),
    /// Getting up at this minute of the day.
    Up(i32),
    /// Staying up until this minute of the day.
    StayUp(i32),
}

/// What a class has beside its recipes and can do without.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Beside {
    /// What is told.
    Talks,
    /// The breaks.
    Breaks,
    /// The tasting.
    Tasting,
    /// What stays free at the end of a session.
    Slack,
}

impl Beside {
    /// All of them, what is missed least first.
    const ALL: [Self; 4] = [Self::Slack, Self::Tasting, Self::Talks, Self::Breaks];
}

/// Explains why `class` does not fit, or was not found to (`answer`). Where `watch` ends it
/// before its time, what was proven and tried until then is what it says.
pub fn explain(
    class: &Class,
    answer: &Answer,
    book: Book,
    watch: Option<&dyn Watch>,
) -> Explanation {
    let trial = Trial { class, book, watch, left: Cell::new(TRIALS) };
    let reasons = if *answer == Answer::Never { trial.reasons() } else { Vec::new() };
    trial.left.set(TRIALS);
    Explanation { reasons, remedies: trial.remedies() }
}

struct Trial<'a> {
    class: &'a Class,
    book: Book<'a>,
    /// Who may end it before its time.
    watch: Option<&'a dyn Watch>,
    /// Tasks of the trials that may still be made.
    left: Cell<u64>,
}

impl Trial<'_> {
    /// When a changed class ends, if a plan is found soon; nothing once it was ended.
    fn end(&self, class: &Class, book: Book) -> Option<DateTime> {
        if stopped(self.watch) {
            return None;
        }
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
        let effort = Effort { watch: self.watch, ..Effort::TRIAL };
        !stopped(self.watch)
            && draft(class, self.book)
                .is_ok_and(|draft| fits(&draft.problem, effort) == Answer::Never)
    }

    fn reasons(&self) -> Vec<Reason> {
        let bare = without_kit(self.class);
        if self.never(&bare) {
            let least = self.least_longer(&bare, LONGEST).map(|(short, _)| short);
            let proven = least.filter(|short| {
                self.never(&longer(&bare, short.session, short.minutes - STEP))
            });
            return vec![proven.map_or(Reason::Apart, Reason::Chain)];
        }
        let names = self.class.kit.iter().map(|(name, have)| (&name.value, *have));
        let short: Vec<Reason> =
            names.filter_map(|(kit, have)| self.shortage(kit, have)).collect();
        // Only who has looked at each kind of kit may say that it is none alone.
        let together = short.is_empty() && !stopped(self.watch);
        if together { vec![Reason::Together] } else { short }
    }

    /// The kit is a reason where with more of it the class fits, and with one less than that
    /// it is proven not to.
    fn shortage(&self, kit: &KitKind, have: u32) -> Option<Reason> {
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
        Some(Reason::Kit { kit: kit.clone(), have, need: many, steps })
    }

    /// The session that needs the fewest minutes more, how many, and when it then ends.
    fn least_longer(&self, class: &Class, most: i32) -> Option<(Short, DateTime)> {
        let mut best: Option<(Short, DateTime)> = None;
        for session in 0..class.sessions.len() {
            let most = best.map_or(most, |(short, _)| short.minutes - STEP);
            let end =
                |minutes: i32| self.end(&longer(class, session, minutes), self.book);
            if let Some((minutes, end)) = least(most, &end) {
                let minutes = minutes.min(room_for(class, session));
                best = Some((Short { session, minutes }, end));
            }
        }
        best
    }

    /// A session made longer, as little as does.
    fn longer_by(&self, most: i32) -> Option<Remedy> {
        let (short, end) = self.least_longer(self.class, most)?;
        Some(Remedy { change: Amendment::Longer(short), end: Some(end) })
    }

    fn remedies(&self) -> Vec<Remedy> {
        let mut found: Vec<Remedy> = self.small();
        if found.is_empty() {
            found.extend(self.left_out());
            found.extend(self.large());
        }
        found
    }

    fn tried(&self, change: Amendment, class: &Class) -> Option<Remedy> {
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
        found.extend(self.longer_by(AN_HOUR));
        if class.makes.iter().any(|making| making.each == Each::Demonstration) {
            let mut change = class.clone();
            change.makes.retain(|making| making.each != Each::Demonstration);
            found.extend(self.tried(Amendment::NoDemonstration, &change));
        }
        for what in Beside::ALL {
            let Some(change) = without_beside(class, what) else { continue };
            found.extend(self.tried(Amendment::Less(what), &change));
        }
        let shared = class.makes.iter().any(|making| making.each == Each::Group);
        if shared && class.together < 5 && class.groups() > 1 {
            let together = class.together + 1;
            let change = Class { together, ..class.clone() };
            found.extend(self.tried(Amendment::Together(together), &change));
        }
        found.extend(self.holds());
        if found.is_empty()
            && let Some((change, session)) = next_day(class)
        {
            found.extend(self.tried(Amendment::Session(session), &change));
        }
        found
    }

    fn more_of(&self, kit: &KitKind, have: u32) -> Option<Remedy> {
        let most = most_more(kit)?;
        let with = |more: u32| {
            let change = with_kit(self.class, kit, have + more);
            self.tried(Amendment::More(kit.clone(), more), &change)
        };
        let enough = with(most)?;
        Some((1..most).find_map(with).unwrap_or(enough))
    }

    /// Several changes at once: all that a school can do, then with fewer bakers, with a
    /// recipe less, with long days; less what is not needed.
    fn large(&self) -> Option<Remedy> {
        let kit = self.class.kit.iter().filter_map(|(kit, _)| {
            Some(Amendment::More(kit.value.clone(), most_more(&kit.value)?))
        });
        let kit: Vec<Amendment> = kit.collect();
        let sessions = self.class.sessions.len();
        let days = |minutes: i32| {
            (0..sessions)
                .map(move |session| Amendment::Longer(Short { session, minutes }))
        };
        let with = |more: &[Amendment], minutes: i32| -> Vec<Amendment> {
            more.iter().chain(&kit).cloned().chain(days(minutes)).collect()
        };
        let one = Amendment::Bakers(self.class.together.max(1));
        let less: Vec<Amendment> = without(self.class)
            .into_iter()
            .map(|(recipe, _)| Amendment::Without(recipe))
            .collect();
        let mut all = vec![with(&[], AN_HOUR)];
        all.extend(less.iter().map(|less| with(std::slice::from_ref(less), AN_HOUR)));
        all.push(with(std::slice::from_ref(&one), AN_HOUR));
        all.push(with(std::slice::from_ref(&one), LONGEST));
        all.extend(less.iter().map(|less| with(&[one.clone(), less.clone()], LONGEST)));
        all.into_iter().find_map(|all| self.pared(all))
    }

    /// Changes with which it fits, less those without which it does too.
    fn pared(&self, mut all: Vec<Amendment>) -> Option<Remedy> {
        let ends = |all: &[Amendment]| self.end(&self.with(all), self.book);
        let mut end = ends(&all)?;
        for at in (0..all.len()).rev() {
            let mut fewer = all.clone();
            fewer.remove(at);
            if let Some(sooner) = ends(&fewer) {
                (all, end) = (fewer, sooner);
            }
        }
        for at in 0..all.len() {
            if let Some((least, with_it)) = self.least_of(&all, at) {
                (all[at], end) = (least, with_it);
            }
        }
        Some(Remedy { change: Amendment::All(all), end: Some(end) })
    }

    /// The least of one change that does beside the others, and when it then ends; `None`
    /// where it cannot be less.
    fn least_of(&self, all: &[Amendment], at: usize) -> Option<(Amendment, DateTime)> {
        let tried = |one: Amendment| {
            let mut all = all.to_vec();
            all[at] = one.clone();
            self.end(&self.with(&all), self.book).map(|end| (one, end))
        };
        match &all[at] {
            Amendment::More(kit, most) => {
                (1..*most).find_map(|more| tried(Amendment::More(kit.clone(), more)))
            }
            Amendment::Longer(Short { session, minutes: most }) => {
                let one =
                    |minutes| Amendment::Longer(Short { session: *session, minutes });
                let room = room_for(self.class, *session);
                let end = |minutes| tried(one(minutes)).map(|(_, end)| end);
                least(*most, &end).map(|(minutes, end)| (one(minutes.min(room)), end))
            }
            Amendment::Bakers(fewest) => {
                let group = self.class.together.max(1);
                let more = (fewest / group..self.class.groups()).rev();
                more.into_iter()
                    .find_map(|groups| tried(Amendment::Bakers(groups * group)))
            }
            Amendment::Together(_)
            | Amendment::NoDemonstration
            | Amendment::Less(_)
            | Amendment::Hold { .. }
            | Amendment::Session(_)
            | Amendment::Stop(_)
            | Amendment::Without(_)
            | Amendment::All(_)
            | Amendment::Ready(_)
            | Amendment::Up(_)
            | Amendment::StayUp(_) => None,
        }
    }

    /// The class with changes of kit and time.
    fn with(&self, changes: &[Amendment]) -> Class {
        changes.iter().fold(self.class.clone(), |class, change| match change {
            Amendment::More(kit, more) => {
                let have = class.count(kit).unwrap_or(0);
                with_kit(&class, kit, have + more)
            }
            Amendment::Longer(Short { session, minutes }) => {
                longer(&class, *session, *minutes)
            }
            Amendment::Bakers(count) => with_bakers(&class, *count),
            Amendment::Without(recipe) => {
                let known = without(&class).into_iter().find(|(name, _)| name == recipe);
                known.map_or(class, |(_, class)| class)
            }
            Amendment::Less(what) => without_beside(&class, *what).unwrap_or(class),
            Amendment::Together(_)
            | Amendment::NoDemonstration
            | Amendment::Hold { .. }
            | Amendment::Session(_)
            | Amendment::Stop(_)
            | Amendment::All(_)
            | Amendment::Ready(_)
            | Amendment::Up(_)
            | Amendment::StayUp(_) => class,
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
            match self.tried(Amendment::Bakers(middle * group), &bakers(middle)) {
                Some(remedy) => (few, found) = (middle, vec![remedy]),
                None => many = middle,
            }
        }
        for (recipe, change) in without(self.class) {
            found.extend(self.tried(Amendment::Without(recipe), &change));
        }
        if found.is_empty() {
            found.extend(self.longer_by(LONGEST));
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
            let change = Amendment::Hold { recipe, title };
            found.extend(end.map(|end| Remedy { change, end: Some(end) }));
        }
        found
    }

    /// Steps that wait in a fridge or freezer and have no hold: recipe, step, heading.
    /// Elsewhere nothing stays over night by our advice.
    fn unheld(&self) -> Vec<(String, String, String)> {
        let Ok(draft) = draft(self.class, self.book) else { return Vec::new() };
        let mut found = Vec::new();
        for step in draft.units.iter().flat_map(|unit| &unit.batch.steps) {
            let name = (step.recipe.clone(), step.step.clone(), step.title.clone());
            let cold = step.place.as_ref().is_some_and(Location::is_cold);
            if step.waits && cold && !step.lag.crosses && !found.contains(&name) {
                found.push(name);
            }
        }
        found
    }
}

/// How many more of a kind of kit a school may get hold of; `None` for what an oven takes.
fn most_more(kit: &KitKind) -> Option<u32> {
    match kit {
        KitKind::TrayPerOven => None,
        KitKind::Oven | KitKind::Instructor => Some(1),
        KitKind::BenchPlace | KitKind::Mixer | KitKind::Trays(_) | KitKind::Own(..) => {
            Some(FEW)
        }
    }
}

impl ClassDraft {
    /// The headings of the steps that a kind of kit is needed for.
    fn users(&self, kit: &KitKind) -> Vec<String> {
        let place = kit.place();
        let mut found: Vec<String> = Vec::new();
        for step in self.units.iter().flat_map(|unit| &unit.batch.steps) {
            let names = step.kit.iter().any(|used| used.kind == *kit);
            let stands = place.is_some()
                && (step.place.as_ref() == place || step.hold_place.as_ref() == place);
            let bakes = [KitKind::Oven, KitKind::TrayPerOven].contains(kit);
            let bakes = bakes && !step.bakes.is_empty();
            if (names || stands || bakes) && !found.contains(&step.title) {
                found.push(step.title.clone());
            }
        }
        found
    }
}

/// The fewest minutes up to `most` with which it fits, to five, and when it then `ends`.
fn least(most: i32, ends: &impl Fn(i32) -> Option<DateTime>) -> Option<(i32, DateTime)> {
    let most = most / STEP;
    let mut found = (most > 0).then(|| ends(most * STEP))??;
    let (mut short, mut long) = (0, most);
    while long - short > 1 {
        let middle = i32::midpoint(short, long);
        match ends(middle * STEP) {
            Some(end) => (long, found) = (middle, end),
            None => short = middle,
        }
    }
    Some((long * STEP, found))
}
