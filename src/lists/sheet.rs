//! A class as it is painted: the plan by the clock, what stands where in between, a card
//! for each group, the order and the weigh-out. Nothing is left to decide.

use serde::Serialize;

use crate::draw::plan_chart;
use crate::formula::Book;
use crate::model::Class;
use crate::plan::{self, Answer, Effort, Row, Timetable, together};

use super::order::{Order, OrderLine, order};
use super::table::money;
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
    /// What stands where when it closes: place, who, what and trays.
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
}

/// What one group does when.
#[derive(Clone, Debug, Serialize)]
pub struct Card {
    /// Whose it is.
    pub who: String,
    /// Day, from, to, what: a wait has its place behind it.
    pub lines: Vec<[String; 4]>,
}

/// The order in words.
#[derive(Clone, Debug, Serialize)]
pub struct OrderSheet {
    /// Ingredient, need, packs, left over, cost.
    pub lines: Vec<[String; 5]>,
    /// The total.
    pub total: String,
    /// Each student's share.
    pub per_student: String,
    /// A piece's share.
    pub per_piece: Option<String>,
    /// What has no price.
    pub unpriced: Vec<String>,
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
    Ok(ClassSheet {
        class: class.name.clone(),
        title: class.title.value.clone(),
        standing: timetable.standing.clone(),
        fits: timetable.verdict == "fits",
        reasons: timetable.reasons.clone(),
        remedies: timetable.remedies.clone(),
        bakers: class.bakers.value,
        groups: groups(class),
        sessions: sessions(&timetable),
        cards: cards(&timetable),
        tubs: order.as_ref().map(|order| order.tubs.clone()).unwrap_or_default(),
        table: order.as_ref().map(super::order_csv),
        order: order.as_ref().map(in_words),
        chart: plan_chart(&timetable),
        calendar: super::calendar(&timetable),
    })
}

fn groups(class: &Class) -> String {
    let count = class.groups();
    let word = match class.together {
        1 => "baker",
        2 => "pair",
        3 => "three",
        4 => "four",
        _ => "group",
    };
    format!("{count} {word}{}", if count == 1 { "" } else { "s" })
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

fn sessions(plan: &Timetable) -> Vec<SessionSheet> {
    let rows = plan.rows();
    let sessions = plan.sessions.iter().enumerate();
    sessions
        .map(|(at, span)| SessionSheet {
            day: long_day(&span.from),
            from: split(&span.from).1,
            to: split(&span.to).1,
            rows: rows
                .iter()
                .filter(|row| {
                    row.start_min >= span.from_min && row.end_min <= span.to_min
                })
                .map(line)
                .collect(),
            left: plan
                .overnight(at)
                .into_iter()
                .map(|(place, who, what, trays)| [place, who, what, trays.to_string()])
                .collect(),
        })
        .collect()
}

fn line(row: &Row) -> LineSheet {
    LineSheet {
        from: split(&row.start).1,
        to: split(&row.end).1,
        who: together(&row.who),
        what: row.title.clone(),
        oven: row.oven.clone().filter(|_| row.kind == "bake"),
        kind: row.kind,
        watching: (!row.watching.is_empty()).then(|| together(&row.watching)),
    }
}

/// Lines of one group's card with the minute that each begins at.
type Timed = Vec<(i32, [String; 4])>;

fn cards(plan: &Timetable) -> Vec<Card> {
    let mut found: Vec<(String, Timed)> = Vec::new();
    let rows = plan.rows().into_iter().chain(plan.rests());
    for row in rows {
        let words = card_line(&row);
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

fn card_line(row: &Row) -> [String; 4] {
    let (day, from) = split(&row.start);
    let place = row.place.as_deref().map(|place| format!(", {place}"));
    let oven = row
        .oven
        .as_deref()
        .filter(|_| row.kind == "bake")
        .map(|oven| format!(", {oven}"));
    let more = place.or(oven).unwrap_or_default();
    [day, from, split(&row.end).1, format!("{}{more}", row.title)]
}

fn in_words(order: &Order) -> OrderSheet {
    let with = |minor: i64| format!("{} {}", money(minor), order.currency);
    OrderSheet {
        lines: order.lines.iter().map(order_line).collect(),
        total: with(order.total_minor),
        per_student: with(order.per_student_minor),
        per_piece: order.per_piece_minor.map(with),
        unpriced: order.unpriced.clone(),
    }
}

fn order_line(line: &OrderLine) -> [String; 5] {
    let packs = match (line.packs, line.pack_g) {
        (Some(packs), Some(pack)) => format!("{packs} × {pack} g"),
        _ => String::new(),
    };
    let need = if line.as_needed { "as needed".to_owned() } else { line.need.clone() };
    let left = line.left_g.map(|left| format!("{left:.0} g")).unwrap_or_default();
    let cost = line.cost_minor.map(money).unwrap_or_default();
    [line.ingredient.clone(), need, packs, left, cost]
}
