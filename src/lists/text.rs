//! Plans and orders as text for a terminal.

use crate::measure::show;
use crate::sheet::making::{lasting, weights};
use crate::sheet::{Counted, Kind, LineSheet, Order, PlanSheet, Units};
use crate::words::Words;

use super::evening::evening_text;
use super::table::weigh_out;

/// A plan by the clock, session by session.
pub fn timetable_text(plan: &PlanSheet, words: &Words) -> String {
    if let Some(now) = &plan.now {
        return evening_text(plan, now, words);
    }
    let mut text = format!("{}\n{}\n", plan.title, capital(&plan.standing));
    for objective in &plan.objective {
        let what = words.get(match objective.name {
            Counted::Short => "plan-by-short",
            Counted::Moments => "plan-by-moments",
            Counted::Waiting => "plan-by-waiting",
            Counted::Away => "plan-by-away",
            Counted::End => "plan-by-end",
            Counted::Lead => "plan-by-lead",
        });
        let open = plan.sessions.first().map_or(0, |session| session.from_min);
        let time = match objective.name {
            Counted::Moments => objective.value.to_string(),
            Counted::End => lasting(objective.value - open, words),
            Counted::Short | Counted::Waiting | Counted::Away | Counted::Lead => {
                lasting(objective.value, words)
            }
        };
        text += &words.fill("plan-measured", &[("what", what), ("time", &time)]);
        text.push('\n');
    }
    text += &said(plan, words);
    let mut day = "";
    let rests = plan.rests.iter().filter(|_| plan.home);
    let mut rows: Vec<&LineSheet> = plan.rows.iter().chain(rests).collect();
    rows.sort_by_key(|row| (row.from_min, row.to_min));
    for row in rows {
        if row.date != day {
            day = &row.date;
            text += &format!("\n{day}\n");
        }
        text += &timetable_row(row, words);
    }
    for (span, left) in plan.sessions.iter().zip(&plan.left) {
        if left.is_empty() || plan.home {
            continue;
        }
        let (date, time) = span.to.split_once('T').unwrap_or((&span.to, ""));
        let head = words.fill("plan-closes", &[("date", date), ("time", time)]);
        text += &format!("\n{head}\n");
        for [place, who, what, trays] in left {
            let what = words.fill("plan-left", &[("what", what), ("count", trays)]);
            text += &format!("  {place:<10}  {who:<18}  {what}\n");
        }
    }
    text
}

/// Why there is no plan, what would help, and what else must be known.
pub(super) fn said(plan: &PlanSheet, words: &Words) -> String {
    let mut text = String::new();
    for (key, name, lines) in [
        ("plan-why", "reason", &plan.reasons),
        ("plan-help", "remedy", &plan.remedies),
        ("plan-note", "note", &plan.notes),
    ] {
        for line in lines {
            text += &words.fill(key, &[(name, line)]);
            text.push('\n');
        }
    }
    text
}

pub(super) fn timetable_row(row: &LineSheet, words: &Words) -> String {
    let what = if row.kind == Kind::Demonstration {
        words.fill("plan-all-watch", &[("what", &row.what)])
    } else {
        row.what.clone()
    };
    let parts: Vec<String> =
        std::iter::once(what).chain(row.oven.clone()).chain(row.place.clone()).collect();
    let span = if row.from == row.to {
        row.from.clone()
    } else {
        words.range(&row.from, &row.to)
    };
    format!("  {span:<11}  {:<18}  {}\n", row.who, words.list(&parts))
}

pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

/// The order and the weigh-out, with every weight in `units`.
pub fn order_text(order: &Order, units: Units, words: &Words) -> String {
    let head = order_head(order, words);
    let mut text = format!("{head}\n\n{}\n", words.get("order-to-buy"));
    for line in &order.lines {
        let [name, need, packs, left, cost] = weights(line, units, words);
        let left = if left.is_empty() {
            left
        } else {
            words.fill("order-left", &[("weight", &left)])
        };
        let row = format!("  {need:>12}  {name:<20}  {packs:>16}  {cost:>8}  {left}");
        text.push_str(row.trim_end());
        text.push('\n');
    }
    text.push_str(&total(order, words));
    if !order.unpriced.is_empty() {
        let names = words.list(&order.unpriced);
        text += &words.fill("order-unpriced", &[("names", &names)]);
        text.push('\n');
    }
    for tub in &order.tubs {
        text += &format!("\n{}\n", weigh_out(tub, "order-weigh", words));
        let mut step = "";
        for line in &tub.lines {
            if line.title != step {
                step = &line.title;
                text.push_str(&format!("  {step}\n"));
            }
            let weight = match units {
                Units::Metric => &line.metric,
                Units::Us => &line.us,
            };
            text.push_str(&format!("    {weight:>12}  {}\n", line.ingredient));
        }
    }
    text
}

/// What is ordered, for how many.
fn order_head(order: &Order, words: &Words) -> String {
    let pieces = order.pieces.to_string();
    let Some(bakers) = order.bakers else {
        let values = [("title", &*order.title), ("pieces", &*pieces)];
        return words.fill("order-head-home", &values);
    };
    let (bakers, spare) = (bakers.to_string(), order.spare_percent.to_string());
    let values = [
        ("title", &*order.title),
        ("bakers", &*bakers),
        ("pieces", &*pieces),
        ("spare", &*spare),
    ];
    words.fill("order-head", &values)
}

/// What it costs in all, a student and a piece; nothing but a line's end where nothing has a
/// price.
fn total(order: &Order, words: &Words) -> String {
    let money = |sum| show::marked(&show::money(sum), words);
    let Some(total) = order.total_minor else { return "\n".into() };
    let values = [("sum", &*money(total)), ("currency", &*order.currency)];
    let sum = words.fill("money", &values);
    let mut parts = vec![words.fill("order-total", &[("sum", &sum)])];
    let shares = [
        (order.per_student_minor, "order-a-student"),
        (order.per_piece_minor, "order-a-piece"),
    ];
    for (share, key) in shares {
        parts.extend(share.map(|sum| words.fill(key, &[("sum", &money(sum))])));
    }
    format!("\n{}\n", words.list(&parts))
}
