//! Tables that open right in a spreadsheet: UTF-8 with a mark, lines that end as the
//! standard (RFC 4180) has them, and no cell that a spreadsheet would take for a formula.

use super::order::{Order, OrderLine};
use super::tubs::TubLine;

/// Tells a spreadsheet that the file is UTF-8.
const MARK: &str = "\u{feff}";

/// The order list as a table, with what each group weighs out below it.
pub fn order_csv(order: &Order) -> String {
    let mut text = String::from(MARK);
    let head = [
        "ingredient",
        "need (g)",
        "on the shelf (g)",
        "pack (g)",
        "packs",
        "left over (g)",
        "cost",
        "currency",
    ];
    row(&mut text, &head.map(String::from));
    for line in &order.lines {
        row(&mut text, &bought(line, &order.currency));
    }
    if let Some(sum) = order.total_minor {
        let mut total = head.map(|_| String::new());
        total[0] = "total".into();
        total[6] = money(sum);
        total[7].clone_from(&order.currency);
        row(&mut text, &total);
    }
    for tub in &order.tubs {
        row(&mut text, &[]);
        let head =
            format!("weigh-out: {} for each {} ({} sets)", tub.title, tub.each, tub.sets);
        row(&mut text, &[head]);
        let columns = ["step", "recipe", "ingredient", "grams", "in words"];
        row(&mut text, &columns.map(String::from));
        for line in &tub.lines {
            row(&mut text, &weighed(line));
        }
    }
    text
}

fn bought(line: &OrderLine, currency: &str) -> [String; 8] {
    [
        line.ingredient.clone(),
        if line.as_needed { "as needed".into() } else { number(line.need_g) },
        number(line.shelf_g),
        line.pack_g.map(number).unwrap_or_default(),
        line.packs.map(|packs| packs.to_string()).unwrap_or_default(),
        line.left_g.map(number).unwrap_or_default(),
        line.cost_minor.map(money).unwrap_or_default(),
        line.cost_minor.map(|_| currency.to_owned()).unwrap_or_default(),
    ]
}

fn weighed(line: &TubLine) -> [String; 5] {
    [
        line.title.clone(),
        line.recipe.clone(),
        line.ingredient.clone(),
        line.grams.map(number).unwrap_or_default(),
        line.metric.clone(),
    ]
}

/// Grams to a tenth.
pub(super) fn number(grams: f64) -> String {
    let tenths = (grams * 10.0).round() / 10.0;
    // No "-0".
    format!("{}", tenths + 0.0)
}

/// Money with two places.
pub(super) fn money(minor: i64) -> String {
    let sign = if minor < 0 { "-" } else { "" };
    format!("{sign}{}.{:02}", minor.abs() / 100, minor.abs() % 100)
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
