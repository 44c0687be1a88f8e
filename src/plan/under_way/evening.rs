//! An evening from its plan through everything that is said of it: each replanning builds on
//! the one before.

use crate::formula::Book;
use crate::model::{Class, Said, What};
use crate::plan::answer::changed::{longer, room_for, without_beside};
use crate::plan::answer::reason::{Amendment, Beside, Reason, Remedy, Short};
use crate::plan::answer::timetable::{Caveat, Now, Optimality, Timetable, Verdict};
use crate::plan::question::class::{ClassBatch, ClassDraft, Unclear, Who, draft};
use crate::plan::question::clock::Clock;
use crate::plan::question::problem::Layout;
use crate::plan::search::solve::{Answer, Effort, Watch, solve, still_fits, stopped};

use super::lost::{lacking, leave};
use super::shift::shifts;
use super::spot::Unheard;
use super::today::{Adjusted, Held, adjust};

/// By so many minutes a session may run over.
const OVER: [i32; 12] = [5, 10, 15, 20, 25, 30, 40, 50, 60, 90, 120, 180];

/// A class on its evenings.
pub struct Evening<'a> {
    /// The class without slack: that is for the evening itself.
    class: Class,
    book: Book<'a>,
    effort: Effort<'a>,
    base: ClassDraft,
    held: Held,
}

/// What an evening has come to, to be gone on with later.
#[derive(Clone, Debug)]
pub struct Progress {
    class: Class,
    base: ClassDraft,
    held: Held,
}

/// Why an evening cannot be planned on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unready {
    /// The class is not clear.
    Unclear(Unclear),
    /// It has no plan to begin with.
    NoPlan,
}

impl<'a> Evening<'a> {
    /// Begins with the plan of the class.
    ///
    /// # Errors
    /// Where the class is not clear, or has no plan.
    pub fn new(
        class: &Class,
        book: Book<'a>,
        effort: Effort<'a>,
    ) -> Result<Self, Unready> {
        let begun = draft(class, book).map_err(Unready::Unclear)?;
        let answer = solve(&begun.problem, effort);
        let planned = answer.plan().ok_or(Unready::NoPlan)?;
        let held = Held::new(&begun, &begun.tidied(&planned.layout));
        let class = without_beside(class, Beside::Slack).unwrap_or_else(|| class.clone());
        let base = draft(&class, book).map_err(Unready::Unclear)?;
        Ok(Self { class, book, effort, base, held })
    }

    /// Goes on with what an evening had come to, of the same class in the same edition.
    pub fn resumed(progress: Progress, book: Book<'a>, effort: Effort<'a>) -> Self {
        let Progress { class, base, held } = progress;
        Self { class, book, effort, base, held }
    }

    /// What it has come to.
    pub fn progress(&self) -> Progress {
        let (class, base) = (self.class.clone(), self.base.clone());
        Progress { class, base, held: self.held.clone() }
    }

    /// Minutes and local times.
    pub fn clock(&self) -> &Clock {
        &self.base.clock
    }

    /// Whether what is said at a minute can be taken in.
    ///
    /// # Errors
    /// What cannot.
    pub fn hears(&self, now: i32, said: &[Said]) -> Result<(), Unheard> {
        adjust(&self.base, &self.held, now, false, said).map(drop)
    }

    /// Takes in what is said at a minute, and plans the rest anew.
    ///
    /// # Errors
    /// What cannot be taken in.
    pub fn hear(&mut self, now: i32, said: &[Said]) -> Result<Timetable, Unheard> {
        let (mut adjusted, mut answer) = self.asked(now, said, false)?;
        if answer.plan().is_none() {
            let crowded = self.asked(now, said, true)?;
            if crowded.1.plan().is_some() {
                (adjusted, answer) = crowded;
                adjusted.notes.push(Caveat::Crowded);
            }
        }
        let over = if answer.plan().is_none() { self.over(now, said) } else { None };
        let unfit = match answer {
            Answer::Fits(_) => None,
            Answer::Never => Some((Verdict::Never, Optimality::Never)),
            Answer::Unknown => Some((Verdict::Unknown, Optimality::Unknown)),
        };
        let (reasons, remedies) = match unfit.is_none() || stopped(self.effort.watch) {
            true => (Vec::new(), Vec::new()),
            false => {
                self.effort.watch.iter().for_each(|watch| watch.explains());
                let over = over.as_ref().map(|(_, _, short)| *short);
                let back = self.kit_back(now, said, &adjusted);
                why(&adjusted, over, back, self.effort.watch)
            }
        };
        let notes = adjusted.notes.clone();
        let (adjusted, answer, over) = match over {
            Some((adjusted, answer, over)) => (adjusted, answer, Some(over)),
            None => (adjusted, answer, None),
        };
        let mut plan = adjusted.draft.timetable(&self.class, &answer);
        if let Some((verdict, standing)) = unfit {
            (plan.verdict, plan.standing) = (verdict, standing);
        }
        plan.notes.extend(notes);
        (plan.reasons, plan.remedies) = (reasons, remedies);
        let shifts = match answer.plan() {
            Some(_) => shifts(&adjusted.draft, &plan, now),
            None => Vec::new(),
        };
        let over = over.map(|short| (short.session, short.minutes));
        plan.now = Some(Now { minute: now, shifts, over });
        self.held = adjusted.held;
        if let Some(found) = answer.plan() {
            self.held.announce(&adjusted.draft, &found.layout);
        }
        Ok(plan)
    }

    fn asked(
        &self,
        now: i32,
        said: &[Said],
        crowded: bool,
    ) -> Result<(Adjusted, Answer), Unheard> {
        let adjusted = adjust(&self.base, &self.held, now, crowded, said)?;
        let answer = solve(&adjusted.draft.problem, self.effort);
        Ok((adjusted, answer))
    }

    /// The plan with a session that is as little longer as will do.
    fn over(&self, now: i32, said: &[Said]) -> Option<(Adjusted, Answer, Short)> {
        let session = self.session(now);
        OVER.iter().find_map(|minutes| {
            let class = longer(&self.class, session, *minutes);
            let base = draft(&class, self.book).ok()?;
            let adjusted = adjust(&base, &self.held, now, true, said).ok()?;
            still_fits(&adjusted.draft.problem)?;
            let answer = solve(&adjusted.draft.problem, self.effort);
            answer.plan()?;
            let minutes = (*minutes).min(room_for(&self.class, session));
            Some((adjusted, answer, Short { session, minutes }))
        })
    }

    /// The kit that is out of order, where a plan would fit with it.
    fn kit_back(
        &self,
        now: i32,
        said: &[Said],
        adjusted: &Adjusted,
    ) -> Option<Amendment> {
        let mut lost = lacking(&adjusted.held.outs, now);
        let of_kit = |one: &&Said| one.what == What::Out || one.what == What::Back;
        let said: Vec<Said> = said.iter().filter(|one| !of_kit(one)).cloned().collect();
        let held = Held { outs: Vec::new(), ..self.held.clone() };
        let with = adjust(&self.base, &held, now, true, &said).ok()?;
        let fits = !lost.is_empty() && still_fits(&with.draft.problem).is_some();
        if !fits {
            return None;
        }
        let mut more = |(kit, count)| Amendment::More(kit, count);
        let last = lost.pop().map(&mut more)?;
        let rest: Vec<Amendment> = lost.into_iter().map(more).collect();
        Some(if rest.is_empty() {
            last
        } else {
            Amendment::All([rest, vec![last]].concat())
        })
    }

    /// The session under way, or the next one.
    fn session(&self, now: i32) -> usize {
        let sessions = &self.base.problem.sessions;
        let found = sessions.iter().position(|(_, to)| now <= *to);
        found.unwrap_or(sessions.len().saturating_sub(1))
    }
}

/// Why the rest does not fit, as far as a trial shows it, and what would help, as far as was
/// tried until `watch` ended it: a longer session, or the kit that is out, were tried before.
fn why(
    adjusted: &Adjusted,
    over: Option<Short>,
    back: Option<Amendment>,
    watch: Option<&dyn Watch>,
) -> (Vec<Reason>, Vec<Remedy>) {
    let reasons = over.map(Reason::Over).into_iter().collect();
    let tried = over.map(Amendment::Longer).into_iter().chain(back);
    let mut remedies: Vec<Remedy> =
        tried.map(|change| Remedy { change, end: None }).collect();
    let mut without = |change: Amendment, of: &dyn Fn(&ClassBatch) -> bool| {
        let found = !stopped(watch) && fits_without(adjusted, of).is_some();
        if found {
            remedies.push(Remedy { change, end: None });
        }
        found
    };
    let units = &adjusted.draft.units;
    if units.iter().any(|unit| unit.who == Who::Instructor) {
        without(Amendment::NoDemonstration, &|unit| unit.who == Who::Instructor);
    }
    let mut recipes: Vec<&String> =
        units.iter().flat_map(|it| &it.batch.recipes).collect();
    recipes.sort_unstable();
    recipes.dedup();
    for recipe in recipes.iter().filter(|_| recipes.len() > 1) {
        let change = Amendment::Without((*recipe).clone());
        without(change, &|unit| unit.batch.recipes == [(*recipe).clone()]);
    }
    let groups = behind(adjusted);
    (1..=groups.len()).find(|count| {
        let stop: Vec<Who> = groups[..*count].to_vec();
        let own = |unit: &ClassBatch| {
            stop.iter().any(|who| of_group(unit.who) == of_group(*who))
        };
        let mut named = stop.clone();
        named.sort_unstable();
        without(Amendment::Stop(named), &own)
    });
    (reasons, remedies)
}

fn of_group(who: Who) -> Option<u32> {
    match who {
        Who::Group(group) | Who::Baker(group, _) => Some(group),
        Who::Instructor | Who::Helper | Who::Home => None,
    }
}

/// The groups with work left, those that would end last before the others.
fn behind(adjusted: &Adjusted) -> Vec<Who> {
    let problem = &adjusted.draft.problem;
    let mut groups: Vec<(i32, Who)> = Vec::new();
    for unit in &adjusted.draft.units {
        let Some(group) = of_group(unit.who) else { continue };
        let open = unit.batch.tasks.iter().filter(|task| adjusted.open.contains(task));
        let left: i32 = open.map(|task| problem.tasks[*task].minutes).sum();
        match groups.iter_mut().find(|(_, who)| of_group(*who) == Some(group)) {
            _ if left == 0 => {}
            Some((sum, _)) => *sum += left,
            None => groups.push((left, Who::Group(group))),
        }
    }
    groups.sort_by_key(|(left, who)| (std::cmp::Reverse(*left), std::cmp::Reverse(*who)));
    groups.into_iter().map(|(_, who)| who).collect()
}

/// A plan of the rest where some stop where they are.
fn fits_without(adjusted: &Adjusted, of: &dyn Fn(&ClassBatch) -> bool) -> Option<Layout> {
    let mut draft = adjusted.draft.clone();
    let units = draft.units.iter().filter(|unit| of(unit));
    let tasks = units.flat_map(|unit| unit.batch.tasks.clone());
    let stop: Vec<usize> = tasks.filter(|task| adjusted.open.contains(task)).collect();
    if stop.is_empty() {
        return None;
    }
    leave(&mut draft, &stop, adjusted.held.known);
    still_fits(&draft.problem)
}
