//! From a class's plan to its sheet: every row by the clock, every card, the order and the
//! weigh-out put into words, once.

mod chart;
mod evening;
mod names;
mod order;
mod plan;
mod reasons;
mod tubs;

pub use names::who;
pub use order::{grams, order, order_at_home, weights};
pub use plan::{plan_sheet, shared_fact};
pub use reasons::shared_dough;

use crate::measure::show;
use crate::model::{Class, Making, Step};
use crate::plan::{Kind, Row, Timetable, Verdict, Who, scaling};
use crate::words::Words;
use crate::work::work;

use super::super::Units;
use super::super::class::{Card, ClassSheet, LineSheet, MakingSheet, SessionSheet};
use super::{Context, prose};
use names::Names;
use plan::Voice;

/// The sheet of a class with its plan, every amount and heat in `units`.
pub fn class(
    class: &Class,
    plan: &Timetable,
    context: Context,
    units: Units,
) -> ClassSheet {
    let (book, words) = (context.book, context.words);
    let bought = order(class, book, words).ok();
    let names = Names::new(class.together, words);
    let sheet = plan_sheet(plan, words, units);
    let telling = Telling { voice: Voice::new(plan, words, units), context };
    ClassSheet {
        class: class.name.clone(),
        title: class.title.value.clone(),
        standing: sheet.standing.clone(),
        fits: plan.verdict == Verdict::Fits,
        reasons: sheet.reasons.clone(),
        remedies: sheet.remedies.clone(),
        bakers: class.bakers.value,
        groups: names.crews(class.groups()),
        group: names.crew(),
        crews: (0..class.groups()).map(|group| names.one(Who::Group(group))).collect(),
        units,
        makes: class.makes.iter().filter_map(|it| making(it, context)).collect(),
        bring: class.bring.clone(),
        sessions: telling.sessions(&sheet.left),
        cards: telling.cards(),
        tubs: bought.as_ref().map(|order| order.tubs.clone()).unwrap_or_default(),
        order: bought.as_ref().map(|order| order::in_units(order, units, words)),
        plan: sheet,
        bought,
    }
}

/// One recipe that is made, and how much of it; `None` where it cannot be worked out.
fn making(making: &Making, context: Context) -> Option<MakingSheet> {
    let recipe = context.book.content.recipe(&making.recipe.value)?;
    let work = work(recipe, &scaling(making), context.book).ok()?;
    // A way without a page of its own is told on that of the recipe as written.
    let recipes = &context.book.content.recipes;
    let has_page = recipes.iter().any(|known| known.name == recipe.name);
    let page = recipe.way.as_ref().filter(|_| !has_page).map(|way| &way.of);
    Some(MakingSheet {
        recipe: page.unwrap_or(&recipe.name).clone(),
        title: recipe.title.value.clone(),
        each: tubs::for_whom(making.each),
        makes: super::makes(&work, context),
    })
}

/// What tells a class by the clock.
struct Telling<'a> {
    voice: Voice<'a>,
    context: Context<'a>,
}

/// Lines of one card with the minute that each begins at.
type Timed = Vec<(i32, [String; 4])>;

impl Telling<'_> {
    /// The step that a row is about.
    fn step(&self, row: &Row) -> Option<&Step> {
        let recipe = self.context.book.content.recipe(&row.recipe)?;
        let name = &row.step.as_ref()?.name;
        recipe.steps().find(|step| step.name == *name)
    }

    fn sessions(&self, left: &[Vec<[String; 4]>]) -> Vec<SessionSheet> {
        let rows = self.lines();
        let spans = self.voice.plan.problem.sessions.iter().zip(left);
        let session = |((from, to), left): (&(i32, i32), &Vec<[String; 4]>)| {
            // An oven may be switched on before the session opens.
            let begins = |row: &LineSheet| {
                if row.kind.is_heating() { row.to_min } else { row.from_min }
            };
            let inside = |row: &&LineSheet| begins(row) >= *from && row.to_min <= *to;
            SessionSheet {
                day: self.voice.day(*from),
                from: self.voice.time(*from),
                to: self.voice.time(*to),
                rows: rows.iter().filter(inside).cloned().collect(),
                left: left.clone(),
            }
        };
        spans.map(session).collect()
    }

    /// The rows, with what to look for where a step is done for the first time.
    fn lines(&self) -> Vec<LineSheet> {
        let rows = self.voice.plan.rows();
        let mut seen: Vec<(&str, Option<&str>)> = Vec::new();
        let mut lines = Vec::new();
        for row in &rows {
            let mut line = self.voice.line(row);
            let step =
                (row.recipe.as_str(), row.step.as_ref().map(|step| step.name.as_str()));
            if !seen.contains(&step) {
                seen.push(step);
                let cue = self.step(row).and_then(|step| step.until.as_deref());
                let cue = cue.map(|cue| prose::cue(cue, self.voice.words));
                line.check = cue.map(|cue| self.voice.units.of(&cue).to_owned());
            }
            lines.push(line);
        }
        lines
    }

    fn cards(&self) -> Vec<Card> {
        let plan = self.voice.plan;
        let mut found: Vec<(Who, Timed)> = Vec::new();
        for row in plan.rows().into_iter().chain(plan.rests()) {
            let words = self.card_line(&row);
            let own = |who: &Who| (*who, self.card_line(&plan.own(&row, *who)));
            let doing = row.who.iter().map(own);
            let others = row.watching.iter().filter(|who| !row.who.contains(who));
            let watching = others.map(|who| (*who, self.watched(&words)));
            for (who, words) in doing.chain(watching) {
                match found.iter_mut().find(|(known, _)| *known == who) {
                    Some((_, lines)) => lines.push((row.from, words)),
                    None => found.push((who, vec![(row.from, words)])),
                }
            }
        }
        found.sort_by_key(|(who, _)| order_of(*who));
        let card = |(who, mut lines): (Who, Timed)| {
            lines.sort_by_key(|(start, _)| *start);
            let lines = lines.into_iter().map(|(_, words)| words).collect();
            Card { who: self.voice.names.one(who), lines }
        };
        found.into_iter().map(card).collect()
    }

    fn card_line(&self, row: &Row) -> [String; 4] {
        let LineSheet { day, from, to, what, place, oven, .. } = self.voice.line(row);
        let more = match row.kind {
            Kind::Rest => place,
            Kind::Hands
            | Kind::Bake
            | Kind::Moment
            | Kind::Demonstration
            | Kind::Finish
            | Kind::Into
            | Kind::Out
            | Kind::Move
            | Kind::Arrival
            | Kind::Talk
            | Kind::Break
            | Kind::Tasting
            | Kind::Washing
            | Kind::OvenOn
            | Kind::OvenTo => oven,
        };
        let parts: Vec<String> = std::iter::once(what).chain(more).collect();
        [day, from, to, self.voice.words.list(&parts)]
    }

    /// The line of someone who watches.
    fn watched(&self, [day, from, to, what]: &[String; 4]) -> [String; 4] {
        let what = self.voice.words.fill("plan-watch", &[("what", what)]);
        [day.clone(), from.clone(), to.clone(), what]
    }
}

/// Cards in the order of the benches, the instructor's first.
fn order_of(who: Who) -> (u8, u32, u32) {
    match who {
        Who::Instructor => (0, 0, 0),
        Who::Helper => (0, 1, 0),
        Who::Group(group) => (1, group, 0),
        Who::Baker(group, baker) => (1, group, baker + 1),
        Who::Home => (2, 0, 0),
    }
}

/// Minutes in words: `1 h 30 min`.
pub fn lasting(minutes: i32, words: &Words) -> String {
    show::minutes(u64::try_from(minutes).unwrap_or(0), words)
}
