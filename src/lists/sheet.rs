//! A class as it is painted: the plan by the clock, what stands where in between, a card
//! for each group, the order and the weigh-out. Nothing is left to decide.

use serde::Serialize;

use crate::draw::{PlanChart, plan_chart, plan_chart_wide};
use crate::formula::Book;
use crate::measure::show;
use crate::model::{Class, Step};
use crate::plan::{self, Answer, Effort, Row, Timetable, group_word, together};
use crate::sheet::{Units, build};

use super::order::order;
use super::priced::{OrderSheet, priced};
use super::tubs::Tub;

/// Everything that a class's page and its papers show.
#[derive(Clone, Debug, Serialize)]
pub struct ClassSheet {
    /// The class's file name.
    pub class: String,
    /// Its title.
    pub title: String,
    /// How good the plan is known to be.
    pub standing: String,
    /// Whether there is a plan.
    pub fits: bool,
    /// Why there is none.
    pub reasons: Vec<String>,
    /// What would make it fit.
    pub remedies: Vec<String>,
    /// Bakers and groups: number and word.
    pub bakers: u32,
    /// The groups in words: `7 pairs`.
    pub groups: String,
    /// One of them: `pair`.
    pub group: &'static str,
    /// The units of every amount and heat: the course's first.
    pub units: Units,
    /// Session by session.
    pub sessions: Vec<SessionSheet>,
    /// Group by group.
    pub cards: Vec<Card>,
    /// The order; `null` where it cannot be worked out.
    pub order: Option<OrderSheet>,
    /// The weigh-out.
    pub tubs: Vec<Tub>,
    /// The chart of the plan, as SVG.
    pub chart: Option<String>,
    /// The same for a page of paper turned on its side.
    pub wide: Option<PlanChart>,
    /// The plan's calendar file.
    pub calendar: Option<String>,
    /// The order as a table for a spreadsheet.
    pub table: Option<String>,
}

/// One session by the clock.
#[derive(Clone, Debug, Serialize)]
pub struct SessionSheet {
    /// The day: `Tuesday 2 March 2027`.
    pub day: String,
    /// From and to: `18:00`, `21:00`.
    pub from: String,
    /// To.
    pub to: String,
    /// What happens.
    pub rows: Vec<LineSheet>,
    /// What stands where when it closes: place, who, what and trays, those of the same
    /// place and step together.
    pub left: Vec<[String; 4]>,
}

/// One line of a session.
#[derive(Clone, Debug, Serialize)]
pub struct LineSheet {
    /// From: `18:00`.
    pub from: String,
    /// To.
    pub to: String,
    /// Who.
    pub who: String,
    /// What.
    pub what: String,
    /// Heat and ovens.
    pub oven: Option<String>,
    /// `hands`, `bake`, `demonstration` or `finish`.
    pub kind: &'static str,
    /// Who watches.
    pub watching: Option<String>,
    /// What to look for, on the first line of a step.
    pub check: Option<String>,
}

/// What one group does when.
#[derive(Clone, Debug, Serialize)]
pub struct Card {
    /// Whose it is.
    pub who: String,
    /// Day, from, to, what: a wait has its place behind it.
    pub lines: Vec<[String; 4]>,
}

/// Works out everything about a class.
///
/// # Errors
/// The reason, where sessions, recipes or steps are not clear.
pub fn class_sheet(class: &Class, book: Book) -> Result<ClassSheet, &'static str> {
    let draft = plan::draft(class, book)?;
    let answer = plan::solve(&draft.problem, Effort::USUAL);
    let mut timetable = draft.timetable(class, &answer);
    if !matches!(answer, Answer::Fits(_)) {
        let why = plan::explain(class, book);
        (timetable.reasons, timetable.remedies) = (why.reasons, why.remedies);
    }
    let order = order(class, book).ok();
    let units = first_units(book);
    let room = Room { book, units };
    Ok(ClassSheet {
        class: class.name.clone(),
        title: class.title.value.clone(),
        standing: timetable.standing.clone(),
        fits: timetable.verdict == "fits",
        reasons: timetable.reasons.clone(),
        remedies: timetable.remedies.clone(),
        bakers: class.bakers.value,
        groups: groups(class),
        group: group_word(class),
        units,
        sessions: sessions(&timetable, room),
        cards: cards(&timetable, room),
        tubs: order.as_ref().map(|order| order.tubs.clone()).unwrap_or_default(),
        table: order.as_ref().map(super::order_csv),
        order: order.as_ref().map(|order| priced(order, units)),
        chart: plan_chart(&timetable),
        wide: plan_chart_wide(&timetable),
        calendar: super::calendar(&timetable),
    })
}

/// The course's first units; metric where there is no course.
pub fn first_units(book: Book) -> Units {
    let us = book.content.course.as_ref().is_some_and(|course| !course.metric_first);
    if us { Units::Us } else { Units::Metric }
}

/// What puts a plan's rows into words.
#[derive(Clone, Copy)]
struct Room<'a> {
    book: Book<'a>,
    units: Units,
}

impl Room<'_> {
    /// The step that a row is about.
    fn step(&self, row: &Row) -> Option<&Step> {
        let recipe = self.book.content.recipe(&row.recipe)?;
        recipe.steps().find(|step| step.title.value == row.title)
    }

    /// Heat and ovens of a bake: the plan has its heat in metric.
    fn oven(&self, row: &Row) -> Option<String> {
        let words = row.oven.clone().filter(|_| row.kind == "bake")?;
        let bake = self.step(row).and_then(|step| step.bake.as_ref());
        Some(bake.map_or(words.clone(), |bake| {
            let heat = show::oven(&bake.value.oven);
            words.replacen(&heat.metric, self.units.of(&heat), 1)
        }))
    }
}

fn groups(class: &Class) -> String {
    let count = class.groups();
    format!("{count} {}{}", group_word(class), if count == 1 { "" } else { "s" })
}

/// Day and time of a local time.
fn split(stamp: &str) -> (String, String) {
    let (day, time) = stamp.split_once('T').unwrap_or(("", stamp));
    (day.to_owned(), time.to_owned())
}

fn long_day(stamp: &str) -> String {
    let (day, _) = split(stamp);
    day.parse::<jiff::civil::Date>()
        .map_or(day, |day| day.strftime("%A %-d %B %Y").to_string())
}

fn sessions(plan: &Timetable, room: Room) -> Vec<SessionSheet> {
    let mut rows = plan.rows().iter().map(|row| line(row, room)).collect::<Vec<_>>();
    checks(&mut rows, &plan.rows(), room);
    let minutes: Vec<_> =
        plan.rows().iter().map(|row| (row.start_min, row.end_min)).collect();
    let sessions = plan.sessions.iter().enumerate();
    sessions
        .map(|(at, span)| SessionSheet {
            day: long_day(&span.from),
            from: split(&span.from).1,
            to: split(&span.to).1,
            rows: rows
                .iter()
                .zip(&minutes)
                .filter(|(_, (from, to))| *from >= span.from_min && *to <= span.to_min)
                .map(|(line, _)| line.clone())
                .collect(),
            left: left(plan, at),
        })
        .collect()
}

/// What stands where when a session closes, what is the same at the same place together.
fn left(plan: &Timetable, session: usize) -> Vec<[String; 4]> {
    let mut joined: Vec<(String, Vec<String>, String, i32)> = Vec::new();
    for (place, who, what, trays) in plan.overnight(session) {
        match joined.iter_mut().find(|it| it.0 == place && it.2 == what) {
            Some(same) => {
                same.1.push(who);
                same.3 += trays;
            }
            None => joined.push((place, vec![who], what, trays)),
        }
    }
    let words = |(place, who, what, trays): (String, Vec<String>, String, i32)| {
        [place, together(&who), what, trays.to_string()]
    };
    joined.into_iter().map(words).collect()
}

fn line(row: &Row, room: Room) -> LineSheet {
    LineSheet {
        from: split(&row.start).1,
        to: split(&row.end).1,
        who: together(&row.who),
        what: row.title.clone(),
        oven: room.oven(row),
        kind: row.kind,
        watching: (!row.watching.is_empty()).then(|| together(&row.watching)),
        check: None,
    }
}

/// What to look for, where a step is done for the first time.
fn checks(lines: &mut [LineSheet], rows: &[Row], room: Room) {
    let mut seen: Vec<(&str, &str)> = Vec::new();
    for (line, row) in lines.iter_mut().zip(rows) {
        let step = (row.recipe.as_str(), row.title.as_str());
        if !seen.contains(&step) {
            seen.push(step);
            let cue = room.step(row).and_then(|step| step.until.as_deref());
            line.check = cue.map(|cue| room.units.of(&build::cue(cue)).to_owned());
        }
    }
}

/// Lines of one group's card with the minute that each begins at.
type Timed = Vec<(i32, [String; 4])>;

fn cards(plan: &Timetable, room: Room) -> Vec<Card> {
    let mut found: Vec<(String, Timed)> = Vec::new();
    let rows = plan.rows().into_iter().chain(plan.rests());
    for row in rows {
        let words = card_line(&row, room);
        for who in row.who.iter().chain(&row.watching) {
            let watches = !row.who.contains(who);
            let mut words = words.clone();
            if watches {
                words[3] = format!("Watch: {}", words[3]);
            }
            match found.iter_mut().find(|(known, _)| known == who) {
                Some((_, lines)) => lines.push((row.start_min, words)),
                None => found.push((who.clone(), vec![(row.start_min, words)])),
            }
        }
    }
    let cards = found.into_iter().map(|(who, mut lines)| {
        lines.sort_by_key(|(start, _)| *start);
        Card { who, lines: lines.into_iter().map(|(_, words)| words).collect() }
    });
    let mut cards: Vec<Card> = cards.collect();
    cards.sort_by_key(|card| {
        let number =
            card.who.rsplit(' ').next().and_then(|word| word.parse::<u32>().ok());
        (number, card.who.clone())
    });
    cards
}

fn card_line(row: &Row, room: Room) -> [String; 4] {
    let place = row.place.as_deref().map(|place| format!(", {place}"));
    let oven = room.oven(row).map(|oven| format!(", {oven}"));
    let more = place.or(oven).unwrap_or_default();
    let (from, to) = (split(&row.start).1, split(&row.end).1);
    [long_day(&row.start), from, to, format!("{}{more}", row.title)]
}
