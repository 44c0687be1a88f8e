//! Tables that open right in a spreadsheet: UTF-8 with a mark, lines that end as the
//! standard (RFC 4180) has them, and no cell that a spreadsheet would take for a formula.

use crate::measure::show::{money, tenths};
use crate::sheet::{ForWhom, Order, OrderLine, Tub, TubLine};
use crate::words::Words;

/// Tells a spreadsheet that the file is UTF-8.
const MARK: &str = "\u{feff}";

/// The order list as a table, with what each group weighs out below it.
pub fn order_csv(order: &Order, words: &Words) -> String {
    let mut text = String::from(MARK);
    let head = [
        "order-ingredient",
        "order-need",
        "order-shelf",
        "order-pack",
        "order-packs",
        "order-left-over",
        "order-cost",
        "order-currency",
    ];
    row(&mut text, &head.map(|key| words.get(key).to_owned()));
    for line in &order.lines {
        row(&mut text, &bought(line, &order.currency, words));
    }
    if let Some(sum) = order.total_minor {
        let mut total = head.map(|_| String::new());
        words.get("order-sum").clone_into(&mut total[0]);
        total[6] = money(sum);
        total[7].clone_from(&order.currency);
        row(&mut text, &total);
    }
    for tub in &order.tubs {
        row(&mut text, &[]);
        row(&mut text, &[weigh_out(tub, "order-weigh-table", words)]);
        let columns = [
            "order-step",
            "order-recipe",
            "order-ingredient",
            "order-grams",
            "order-in-words",
        ];
        row(&mut text, &columns.map(|key| words.get(key).to_owned()));
        for line in &tub.lines {
            row(&mut text, &weighed(line));
        }
    }
    text
}

/// What is weighed out for whom, by the message `key` where several make it.
pub(super) fn weigh_out(tub: &Tub, key: &str, words: &Words) -> String {
    let each = match tub.each {
        ForWhom::Group => "each-group",
        ForWhom::Baker => "each-baker",
        ForWhom::Demonstration => "each-demonstration",
        ForWhom::Home => return words.fill("order-weigh-home", &[("title", &tub.title)]),
    };
    let (sets, each) = (tub.sets.to_string(), words.get(each));
    words.fill(key, &[("title", &*tub.title), ("each", each), ("sets", &*sets)])
}

fn bought(line: &OrderLine, currency: &str, words: &Words) -> [String; 8] {
    let as_needed = || words.get("as-needed").to_owned();
    [
        line.ingredient.clone(),
        if line.as_needed { as_needed() } else { tenths(line.need_g) },
        tenths(line.shelf_g),
        line.pack_g.map(tenths).unwrap_or_default(),
        line.packs.map(|packs| packs.to_string()).unwrap_or_default(),
        line.left_g.map(tenths).unwrap_or_default(),
        line.cost_minor.map(money).unwrap_or_default(),
        line.cost_minor.map(|_| currency.to_owned()).unwrap_or_default(),
    ]
}

fn weighed(line: &TubLine) -> [String; 5] {
    [
        line.title.clone(),
        line.recipe.clone(),
        line.ingredient.clone(),
        line.grams.map(tenths).unwrap_or_default(),
        line.metric.clone(),
    ]
}

fn row(text: &mut String, cells: &[String]) {
    let cells: Vec<String> = cells.iter().map(|cell| quoted(cell)).collect();
    text.push_str(&cells.join(","));
    text.push_str("\r\n");
}

/// A cell that begins like a formula gets an apostrophe (OWASP, *CSV Injection*); commas,
/// quotes and line ends are quoted.
fn quoted(cell: &str) -> String {
    let formula = cell.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let plain = cell.parse::<f64>().is_ok();
    let cell = if formula && !plain { format!("'{cell}") } else { cell.to_owned() };
    if cell.contains([',', '"', '\n', '\r', ';']) {
        return format!("\"{}\"", cell.replace('"', "\"\""));
    }
    cell
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_cell_becomes_a_formula() {
        assert_eq!(quoted("=cmd|' /C calc'!A0"), "'=cmd|' /C calc'!A0");
        assert_eq!(quoted("@sum"), "'@sum");
        assert_eq!(quoted("-5"), "-5");
        assert_eq!(quoted("a, \"b\""), "\"a, \"\"b\"\"\"");
    }

    #[test]
    fn money_has_two_places() {
        assert_eq!(money(1205), "12.05");
        assert_eq!(money(-7), "-0.07");
    }
}
