//! Drawings laid over one another: what is the same in all of them is in the page once.
//!
//! The drawings of one fold at four batch sizes in two unit systems differ in a few
//! labels, seldom in a line. Where drawings have the same shapes in the same order, only
//! the shapes that differ are repeated, each with the classes of the batches and the unit
//! system that it serves.

use crate::draw::{Drawing, Element};

use super::vary::{batch_classes, class_list};

/// One drawing, and when it is shown.
#[derive(Clone, Copy)]
pub(super) struct Sheet<'a> {
    /// `m` or `u`.
    pub(super) unit: &'a str,
    /// The batch.
    pub(super) key: &'a str,
    /// The drawing.
    pub(super) drawing: &'a Drawing,
}

/// Drawings that have the same kinds of shapes in the same order.
type Pile<'a> = Vec<Sheet<'a>>;

/// The drawings as HTML, named `title`. `keys` are all the batches of the page.
pub(super) fn overlaid(title: &str, sheets: &[Sheet], keys: &[&str]) -> String {
    let mut piles: Vec<Pile> = Vec::new();
    for sheet in sheets {
        match piles.iter_mut().find(|pile| pile[0].drawing.is_like(sheet.drawing)) {
            Some(pile) => pile.push(*sheet),
            None => piles.push(vec![*sheet]),
        }
    }
    piles.iter().map(|pile| written(title, pile, keys)).collect()
}

/// A pile as one drawing; as one for each unit system where they differ in their batches.
fn written(title: &str, pile: &[Sheet], keys: &[&str]) -> String {
    let write = |(unit, at): &(&str, Vec<&str>)| {
        let own = |one: &&Sheet| unit.is_empty() || one.unit == *unit;
        let own: Pile = pile.iter().filter(own).copied().collect();
        let open = own.first().map_or(String::new(), |one| one.drawing.open(title));
        let count = own.first().map_or(0, |one| one.drawing.marks().len());
        let shapes: String =
            (0..count).map(|index| layered(&own, index, at.len())).collect();
        let classes = class_list(&["picture", unit, &batch_classes(at, keys.len())]);
        format!("<div class=\"{classes}\">{open}{shapes}</svg></div>")
    };
    times(pile).iter().map(write).collect()
}

/// The shape at `index` of every drawing of a pile that serves `of` batches: once where
/// they are equal.
fn layered(pile: &[Sheet], index: usize, of: usize) -> String {
    let both = pile.iter().any(|one| one.unit != pile[0].unit);
    let mut forms: Vec<(&Element, Pile)> = Vec::new();
    for sheet in pile {
        let mark = &sheet.drawing.marks()[index];
        match forms.iter_mut().find(|(form, _)| *form == mark) {
            Some((_, sheets)) => sheets.push(*sheet),
            None => forms.push((mark, vec![*sheet])),
        }
    }
    let form = |(mark, sheets): &(&Element, Pile)| -> String {
        let marked = |(unit, at): &(&str, Vec<&str>)| {
            let unit = if both { unit } else { "" };
            mark.on_page(&class_list(&[unit, &batch_classes(at, of)]))
        };
        times(sheets).iter().map(marked).collect()
    };
    forms.iter().map(form).collect()
}

/// When some drawings are shown: unit system and batches; one entry with no unit system
/// where both have the same batches.
fn times<'a>(sheets: &[Sheet<'a>]) -> Vec<(&'a str, Vec<&'a str>)> {
    let at = |unit: &str| -> Vec<&'a str> {
        sheets.iter().filter(|sheet| sheet.unit == unit).map(|sheet| sheet.key).collect()
    };
    let (metric, us) = (at("m"), at("u"));
    if metric == us {
        return vec![("", us)];
    }
    let all = [("m", metric), ("u", us)];
    all.into_iter().filter(|(_, at)| !at.is_empty()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::draw::labelled;

    fn laid(drawings: &[(&str, &str, Drawing)]) -> String {
        let sheets: Vec<Sheet> = drawings
            .iter()
            .map(|(unit, key, drawing)| Sheet { unit, key, drawing })
            .collect();
        overlaid("Cut", &sheets, &["x1", "x2"])
    }

    #[test]
    fn equal_drawings_carry_no_marks() {
        let one = labelled(9.0, "5");
        let all = [("m", "x1"), ("u", "x1"), ("m", "x2"), ("u", "x2")];
        let all = all.map(|(unit, key)| (unit, key, one.clone()));
        let html = laid(&all);
        assert!(html.starts_with("<div class=\"picture\"><svg "), "{html}");
        let plain = " aria-label=\"Cut\"><path class=\"d-line d-cut\" d=\"M0 0h9\"/>\
                     <text class=\"d-text\" x=\"0\" y=\"0\">5</text></svg></div>";
        assert!(html.ends_with(plain), "{html}");
    }

    #[test]
    fn only_what_differs_is_repeated() {
        let all = [
            ("m", "x1", labelled(9.0, "5 cm")),
            ("m", "x2", labelled(9.0, "9 cm")),
            ("u", "x1", labelled(9.0, "2 in")),
            ("u", "x2", labelled(9.0, "2 in")),
        ];
        let labels = "<path class=\"d-line d-cut\" d=\"M0 0h9\"/>\
                      <text class=\"m b b-x1 d-text\" x=\"0\" y=\"0\">5 cm</text>\
                      <text class=\"m b b-x2 d-text\" x=\"0\" y=\"0\">9 cm</text>\
                      <text class=\"u d-text\" x=\"0\" y=\"0\">2 in</text></svg></div>";
        let html = laid(&all);
        assert!(html.ends_with(labels), "{html}");
        assert_eq!(html.matches("<svg").count(), 1);
    }

    #[test]
    fn sheets_of_other_sizes_stand_apart() {
        let all = [
            ("m", "x1", labelled(9.0, "5")),
            ("m", "x2", labelled(8.0, "5")),
            ("u", "x1", labelled(9.0, "5")),
            ("u", "x2", labelled(7.0, "5")),
        ];
        let html = laid(&all);
        for classes in ["picture b b-x1", "picture m b b-x2", "picture u b b-x2"] {
            assert!(html.contains(&format!("<div class=\"{classes}\">")), "{html}");
        }
    }
}
