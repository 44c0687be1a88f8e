//! Plans and orders as text for a terminal.

use crate::plan::{Timetable, together};

use crate::sheet::Units;

use super::order::Order;
use super::priced::words;
use super::table::money;

/// A plan by the clock, session by session.
pub fn timetable_text(plan: &Timetable) -> String {
    let mut text = format!("{}\n{}\n", plan.title, capital(&plan.standing));
    for objective in &plan.objective {
        let name = match objective.name {
            "waiting" => "waiting beyond the recipes' own times",
            "away" => "away from the recipe's own times, all waits together",
            "end" => "from the first opening to the end",
            _ => "from the first step until it is ready",
        };
        text.push_str(&format!("{name}: {}\n", hours(objective.minutes)));
    }
    for (title, lines) in [
        ("why", &plan.reasons),
        ("what would help", &plan.remedies),
        ("note", &plan.notes),
    ] {
        for line in lines {
            text.push_str(&format!("{title}: {line}\n"));
        }
    }
    let mut day = String::new();
    let mut rows = plan.rows();
    rows.extend(plan.rests().into_iter().filter(|_| plan.home));
    rows.sort_by_key(|row| (row.start_min, row.end_min));
    for row in rows {
        let (date, from) = row.start.split_once('T').unwrap_or(("", &row.start));
        if date != day {
            day = date.to_owned();
            text.push_str(&format!("\n{date}\n"));
        }
        let to = row.end.split_once('T').map_or("", |(_, to)| to);
        let place =
            row.place.as_deref().map(|place| format!(", {place}")).unwrap_or_default();
        let oven =
            row.oven.as_deref().map(|oven| format!(", {oven}")).unwrap_or_default();
        let shown = if row.kind == "demonstration" { " (all watch)" } else { "" };
        let who = together(&row.who);
        let span = if from == to { from.to_owned() } else { format!("{from}–{to}") };
        text.push_str(&format!(
            "  {span:<11}  {who:<18}  {}{shown}{oven}{place}\n",
            row.title
        ));
    }
    for (at, span) in plan.sessions.iter().enumerate() {
        let over = plan.overnight(at);
        if over.is_empty() || plan.home {
            continue;
        }
        text.push_str(&format!(
            "\nwhen the session closes at {}\n",
            span.to.replace('T', " ")
        ));
        for (place, who, what, trays) in over {
            text.push_str(&format!("  {place:<10}  {who:<18}  {what} ({trays})\n"));
        }
    }
    text
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

fn hours(minutes: i32) -> String {
    crate::measure::show::minutes(u64::try_from(minutes).unwrap_or(0))
}

/// The order and the weigh-out, with every weight in `units`.
pub fn order_text(order: &Order, units: Units) -> String {
    let mut text = format!(
        "{}: {} bakers, {} pieces, {} % spare\n\nto buy\n",
        order.title, order.bakers, order.pieces, order.spare_percent
    );
    for line in &order.lines {
        let [name, need, packs, left, cost] = words(line, units);
        let left = if left.is_empty() { left } else { format!("{left} left") };
        let row = format!("  {need:>12}  {name:<20}  {packs:>16}  {cost:>8}  {left}");
        text.push_str(row.trim_end());
        text.push('\n');
    }
    text.push_str(&total(order));
    if !order.unpriced.is_empty() {
        text.push_str(&format!("without a price: {}\n", order.unpriced.join(", ")));
    }
    for tub in &order.tubs {
        text.push_str(&format!(
            "\nweigh out, {} × {} ({})\n",
            tub.sets, tub.title, tub.each
        ));
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

/// What it costs in all, a student and a piece; nothing but a line's end where nothing has a
/// price.
fn total(order: &Order) -> String {
    let Some(total) = order.total_minor else { return "\n".into() };
    let mut text = format!("\ntotal {} {}", money(total), order.currency);
    let shares = [(order.per_student_minor, "student"), (order.per_piece_minor, "piece")];
    for (share, of) in shares {
        text.push_str(
            &share.map_or_else(String::new, |sum| format!(", {} a {of}", money(sum))),
        );
    }
    text + "\n"
}
