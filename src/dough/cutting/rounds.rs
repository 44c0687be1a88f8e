//! Rounds, side by side or set in the gaps of the row before.

use crate::measure::{Area, Exact, Length, Size, exact};

use super::count::{along, pieces, times};
use super::{Form, Layout, Point, Polygon, Refusal, scrap};
use crate::dough::turned;

/// √3/2 = 0.866 025 4…, a little above, so that rounds set in gaps never overlap.
const GAP_ROW: (i64, i64) = (866_026, 1_000_000);

/// π to less than one part in ten million (355/113).
const PI: (i64, i64) = (355, 113);

/// tan(θ/2) in hundred-thousandths for θ = 0°, 7.5° … 45°. The point
/// ((1 − t²)/(1 + t²), 2t/(1 + t²)) lies exactly on the round of radius 1 for any t, so a
/// rounded t shifts a corner along the round (by under 0.000 02 of the radius) and never
/// off it.
const HALF_ANGLES: [i64; 7] = [0, 6554, 13_165, 19_891, 26_795, 33_945, 41_421];

/// Centres of rounds on a sheet lying one way.
struct Rows {
    diameter: Length,
    rows: u64,
    /// Rounds in even rows, in odd rows.
    each: [u64; 2],
    /// From one row to the next, cm.
    apart: Exact,
    /// How far odd rows are shifted, cm.
    shift: Exact,
}

/// As many rounds as the best pattern gives: side by side, or set in the gaps of rows
/// along either side. The simplest stands where others give as many.
pub(super) fn pack(diameter: &Length, sheet: &Size) -> Result<Layout, Refusal> {
    if !diameter.is_positive() {
        return Err(Refusal::NoSize);
    }
    let other = turned(sheet);
    let mut best = (Rows::beside(diameter, sheet), false);
    let rest = [
        (Rows::in_gaps(diameter, sheet), false),
        (Rows::in_gaps(diameter, &other), true),
    ];
    for pattern in rest {
        if pattern.0.count() > best.0.count() {
            best = pattern;
        }
    }
    let (rows, flipped) = best;
    let layout = rows.layout(if flipped { other } else { sheet.clone() })?;
    Ok(if flipped { layout.flipped() } else { layout })
}

impl Rows {
    fn beside(diameter: &Length, sheet: &Size) -> Self {
        let each = times(&sheet.length, diameter);
        Self {
            diameter: diameter.clone(),
            rows: times(&sheet.width, diameter),
            each: [each; 2],
            apart: diameter.amount().clone(),
            shift: exact(0, 1),
        }
    }

    fn in_gaps(diameter: &Length, sheet: &Size) -> Self {
        let apart = diameter * &exact(GAP_ROW.0, GAP_ROW.1);
        let shift = diameter * &exact(1, 2);
        let fits = |side: &Length| side >= diameter;
        let spare = sheet.width.clone() - diameter.clone();
        let rows = if fits(&sheet.width) { 1 + times(&spare, &apart) } else { 0 };
        let odd = times(&(sheet.length.clone() - shift.clone()), diameter);
        Self {
            diameter: diameter.clone(),
            rows,
            each: [times(&sheet.length, diameter), odd],
            apart: apart.amount().clone(),
            shift: shift.amount().clone(),
        }
    }

    fn count(&self) -> u64 {
        let odd = self.rows / 2;
        let even = self.rows - odd;
        even.saturating_mul(self.each[0]).saturating_add(odd.saturating_mul(self.each[1]))
    }

    fn layout(self, sheet: Size) -> Result<Layout, Refusal> {
        pieces(self.count())?;
        let radius = &self.diameter * &exact(1, 2);
        let piece_area = area(&radius);
        let outline = outline(radius.amount());
        let pieces: Vec<_> =
            self.centres().map(|(x, y)| place(&outline, &x, &y)).collect();
        Ok(Layout {
            form: Form::Round,
            scrap_share: scrap(&sheet, pieces.len(), &piece_area),
            sheet,
            pieces,
            halves: Vec::new(),
            lines: Vec::new(),
            near: Vec::new(),
            far: Vec::new(),
            left: Vec::new(),
            right: Vec::new(),
            piece_area,
            base: self.diameter.clone(),
            height: self.diameter,
        })
    }

    fn centres(&self) -> impl Iterator<Item = (Exact, Exact)> + '_ {
        let radius = self.diameter.amount() * exact(1, 2);
        (0..self.rows).flat_map(move |row| {
            let odd = row % 2 == 1;
            let shift = if odd { self.shift.clone() } else { exact(0, 1) };
            let start = &radius + shift;
            let y = &radius + &self.apart * Exact::from_integer(row.into());
            (0..self.each[usize::from(odd)])
                .map(move |column| (&start + along(&self.diameter, column), y.clone()))
        })
    }
}

/// π r².
fn area(radius: &Length) -> Area {
    Area::square_centimetres(radius.amount() * radius.amount() * exact(PI.0, PI.1))
}

/// 48 points on a round about nought, anticlockwise.
fn outline(radius: &Exact) -> Vec<[Exact; 2]> {
    let eighth: Vec<_> = HALF_ANGLES.iter().map(|&t| on_round(t)).collect();
    let mirrored = eighth.iter().rev().map(|[x, y]| [y.clone(), x.clone()]);
    // The points at 0° and 45° belong to one eighth each.
    let quarter: Vec<_> = eighth.iter().cloned().chain(mirrored.skip(1)).collect();
    let quarter = &quarter[..quarter.len() - 1];
    let mut all = Vec::with_capacity(4 * quarter.len());
    let mut now: Vec<_> = quarter.iter().map(|[x, y]| [x * radius, y * radius]).collect();
    for _ in 0..4 {
        all.extend(now.iter().cloned());
        now = now.into_iter().map(|[x, y]| [-y, x]).collect();
    }
    all
}

fn on_round(half_angle: i64) -> [Exact; 2] {
    let t = exact(half_angle, 100_000);
    let square = &t * &t;
    let under = exact(1, 1) + &square;
    [(exact(1, 1) - square) / &under, t * exact(2, 1) / under]
}

fn place(outline: &[[Exact; 2]], x: &Exact, y: &Exact) -> Polygon {
    Polygon::new(outline.iter().map(|[dx, dy]| Point::new(x + dx, y + dy)).collect())
}
