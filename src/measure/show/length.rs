//! Lengths as a ruler reads them: to 1 mm and ⅛ in, sheets, pieces and marks alike, so that
//! all that is said of one sheet agrees; thickness to ½ mm and 1/16 in.

use crate::measure::{Exact, Label, Length, Size, exact, round_to};

use super::number::nearest_part;
use super::{Notation, Sign, number};

/// A length: `28 cm`, `11 in`.
pub fn length(length: &Length, notation: &dyn Notation) -> Label {
    Label::new(
        notation.of(&centimetres(length, notation), Sign::Centimetre),
        notation.of(&inches(length), Sign::Inch),
    )
}

/// A rectangle, in the order of its sides: `60 × 25 cm`, `23⅝ × 9⅞ in`.
pub fn size(size: &Size, notation: &dyn Notation) -> Label {
    let (length, width) = (&size.length, &size.width);
    Label::new(
        sides(
            &[length, width].map(|side| centimetres(side, notation)),
            Sign::Centimetre,
            notation,
        ),
        sides(&[length, width].map(inches), Sign::Inch, notation),
    )
}

/// The sides of a tin as it is sold: one of 9 in is 23 cm, one of 20 cm is 8 in. A side that
/// is a plain figure in its unit stays as it is; another one goes to the roundest step within
/// 2 %.
pub fn tin(tin: &[&Length], notation: &dyn Notation) -> Label {
    let metric = tin.iter().map(|side| sold(side.amount(), &[(1, 1), (1, 2), (1, 10)]));
    let metric = metric.map(|side| number(&side, 1, notation)).collect::<Vec<_>>();
    let us = tin.iter().map(|side| sold(&side.in_inches(), &[(1, 2), (1, 4), (1, 8)]));
    let us = us.map(|side| nearest_part(&side, 8)).collect::<Vec<_>>();
    Label::new(
        sides(&metric, Sign::Centimetre, notation),
        sides(&us, Sign::Inch, notation),
    )
}

fn sides(sides: &[String], sign: Sign, notation: &dyn Notation) -> String {
    notation.of(&sides.join(" × "), sign)
}

fn sold(side: &Exact, steps: &[(i64, i64); 3]) -> Exact {
    let to = |(over, under): (i64, i64)| round_to(side, &exact(over, under));
    let finest = to(steps[2]);
    if finest == *side {
        return finest;
    }
    let near = |shown: &Exact| (shown - side).abs() <= side * exact(2, 100);
    steps.iter().map(|step| to(*step)).find(near).unwrap_or(finest)
}

/// A thickness: `4.5 mm`, `3/16 in`. Never nought: below half a step it is shown to
/// 0.1 mm and as `under 1/16 in`.
pub fn thickness(thickness: &Length, notation: &dyn Notation) -> Label {
    let millimetres = thickness.in_millimetres();
    let half = round_to(&millimetres, &exact(1, 2));
    let metric = if half.is_zero() {
        number(&millimetres, 1, notation)
    } else {
        number(&half, 1, notation)
    };
    let us = if round_to(&thickness.in_inches(), &exact(1, 16)).is_zero() {
        notation.under(&notation.of("1/16", Sign::Inch))
    } else {
        notation.of(&nearest_part(&thickness.in_inches(), 16), Sign::Inch)
    };
    Label::new(notation.of(&metric, Sign::Millimetre), us)
}

/// A length in centimetres, without its unit: `28`.
pub fn centimetres(length: &Length, notation: &dyn Notation) -> String {
    number(&round_to(length.amount(), &exact(1, 10)), 1, notation)
}

/// A length in inches, without its unit: `11`.
pub fn inches(length: &Length) -> String {
    nearest_part(&length.in_inches(), 8)
}

#[cfg(test)]
mod tests {
    use super::super::International;
    use super::*;

    /// The sizes in which tins are sold on both sides: common practice, no source.
    #[test]
    fn tins_read_as_they_are_sold() {
        let inch = |n| Length::inches(&exact(n, 1));
        let cm = |n| Length::centimetres(exact(n, 1));
        assert_eq!(tin(&[&inch(9)], &International), Label::new("23 cm", "9 in"));
        assert_eq!(tin(&[&inch(8)], &International), Label::new("20 cm", "8 in"));
        let loaf = [&cm(23), &cm(13), &cm(7)];
        assert_eq!(
            tin(&loaf, &International),
            Label::new("23 × 13 × 7 cm", "9 × 5⅛ × 2¾ in")
        );
    }

    /// A drawing has figures to the micrometre, a page the exact length: both say the same of
    /// every part of a centimetre and of an inch that a fold or a cut can leave.
    #[test]
    fn what_is_drawn_reads_as_what_is_exact() {
        let parts = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 24, 32, 48];
        let all = parts.iter().flat_map(|of| (0..1500).map(move |n| exact(n, *of)));
        for side in all {
            for exact in [Length::centimetres(side.clone()), Length::inches(&side)] {
                let figure = round_to(exact.amount(), &super::exact(1, 10_000));
                let drawn = Length::drawn(crate::measure::float(&figure));
                assert_eq!(
                    length(&drawn, &International),
                    length(&exact, &International)
                );
            }
        }
    }

    #[test]
    fn lengths_read_as_on_a_ruler() {
        let cm = |n, d| Length::centimetres(exact(n, d));
        let sheet = Size::new(cm(60, 1), cm(25, 1));
        assert_eq!(size(&sheet, &International), Label::new("60 × 25 cm", "23⅝ × 9⅞ in"));
        assert_eq!(length(&cm(5, 1), &International), Label::new("5 cm", "2 in"));
        assert_eq!(length(&cm(508, 10), &International), Label::new("50.8 cm", "20 in"));
        // Three strips of 4 in: 10.16 cm each.
        let marks = [1, 2]
            .map(|strip| length(&Length::inches(&exact(4 * strip, 1)), &International));
        assert_eq!(marks, [Label::new("10.2 cm", "4 in"), Label::new("20.3 cm", "8 in")]);
        assert_eq!(length(&cm(9, 1), &International), Label::new("9 cm", "3½ in"));
        assert_eq!(length(&cm(18, 1), &International), Label::new("18 cm", "7⅛ in"));
        assert_eq!(
            thickness(&cm(9, 20), &International),
            Label::new("4.5 mm", "3/16 in")
        );
        assert_eq!(
            thickness(&cm(1, 50), &International),
            Label::new("0.2 mm", "< 1/16 in")
        );
    }
}
