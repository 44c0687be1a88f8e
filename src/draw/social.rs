//! The picture for link previews, 1200 × 630: title and school, and the recipe's own
//! cutting plan or block.

use crate::sheet::{CourseSheet, Cut, Fold, Sheet};

use super::layers::section::{Layer, slabs_at};
use super::system::ink;
use super::system::lettering;
use super::system::plate::{Plate, Point, Text, corners};

/// The picture's size, as link previews expect it.
const SIZE: [f64; 2] = [1200.0, 630.0];
/// Where the lettering begins.
const LEFT: f64 = 70.0;
/// The width of the lettering.
const ROOM: f64 = 560.0;
/// The frame for the drawing: centre and size.
const FRAME: ([f64; 2], [f64; 2]) = ([905.0, 285.0], [450.0, 420.0]);

/// The picture of a recipe.
pub(super) fn social(sheet: &Sheet, course: &CourseSheet) -> Plate {
    let mut plate = Plate::new(SIZE[0]);
    plate.height = SIZE[1];
    plate.rectangle([0.0, 0.0], SIZE, ink::GROUND);
    plate.rectangle([0.0, 560.0], SIZE, ink::BAND);
    let fold = sheet.lamination.as_ref().and_then(|lamination| lamination.folds.last());
    match (sheet.cuts.first(), fold) {
        (Some(cut), _) => pieces(&mut plate, cut),
        (None, Some(fold)) => stack(&mut plate, fold),
        (None, None) => shares(&mut plate, sheet),
    }
    let bottom = title(&mut plate, &sheet.title);
    summary(&mut plate, &sheet.summary, bottom);
    let school = course.school.as_deref().unwrap_or("");
    let foot = if school.is_empty() {
        course.title.clone()
    } else {
        format!("{} · {school}", course.title)
    };
    let foot = lettering::shorten(&foot, 34.0, true, SIZE[0] - 2.0 * LEFT);
    plate.text(Text::new(foot, [LEFT, 607.0]).size(34.0).bold().ink(ink::ON_BAND));
    plate
}

/// The title, as large as it goes in three lines; gives where it ends.
fn title(plate: &mut Plate, title: &str) -> f64 {
    let fits = |size: &f64| {
        let lines = lettering::wrap(title, *size, true, ROOM);
        let wide = lines.iter().any(|line| lettering::width(line, *size, true) > ROOM);
        lines.len() <= 3 && !wide
    };
    let size = [92.0, 78.0, 64.0, 52.0, 44.0].into_iter().find(fits).unwrap_or(44.0);
    let mut y = 90.0 + size * 0.7;
    for line in lettering::wrap(title, size, true, ROOM).into_iter().take(3) {
        let line = lettering::shorten(&line, size, true, ROOM);
        plate.text(Text::new(line, [LEFT, y]).size(size).bold());
        y += size * 1.1;
    }
    y - size * 0.7
}

fn summary(plate: &mut Plate, summary: &str, top: f64) {
    let lines = lettering::wrap(summary, 34.0, false, ROOM);
    let many = lines.len();
    let mut y = top + 40.0;
    for (index, line) in lines.into_iter().enumerate().take(5) {
        if y > 530.0 {
            break;
        }
        let cut_off = index < many - 1 && (index == 4 || y + 44.0 > 530.0);
        let line = if cut_off { format!("{line}…") } else { line };
        let line = lettering::shorten(&line, 34.0, false, ROOM);
        plate.text(Text::new(line, [LEFT, y]).size(34.0));
        y += 44.0;
    }
}

/// The cutting plan.
fn pieces(plate: &mut Plate, cut: &Cut) {
    let (centre, room) = FRAME;
    let (length, width) = (cut.sheet_length_cm.max(0.1), cut.sheet_width_cm.max(0.1));
    let scale = (room[0] / length).min(room[1] / width);
    let left = centre[0] - length * scale / 2.0;
    let bottom = centre[1] + width * scale / 2.0;
    let at = |[x, y]: [f64; 2]| [left + x * scale, bottom - y * scale];
    let far = at([length, width]);
    plate.polygon(&corners([left, far[1]], [far[0], bottom]), ink::SCRAP);
    for (index, polygon) in cut.polygons_cm.iter().enumerate() {
        let outline: Vec<Point> = polygon.iter().map(|corner| at(*corner)).collect();
        plate.polygon(&outline, if index % 2 == 1 { ink::OTHER } else { ink::PIECE });
    }
}

/// The parts of the last turn, lying on one another.
fn stack(plate: &mut Plate, fold: &Fold) {
    let (centre, room) = FRAME;
    let parts = fold.parts.clamp(2, 12) as usize;
    let thick = (room[1] / parts as f64).min(76.0);
    let top = centre[1] - thick * parts as f64 / 2.0;
    let layers = vec![Layer::Layered(fold.fat_layers_before); parts];
    slabs_at(plate, [centre[0] - room[0] / 2.0, top], room[0], (&layers, thick));
}

/// The formula's weights as a stack of bands, for a recipe that is neither cut nor folded.
fn shares(plate: &mut Plate, sheet: &Sheet) {
    let (centre, room) = FRAME;
    let weights: Vec<f64> = sheet.formula.iter().filter_map(|line| line.grams).collect();
    let sum: f64 = weights.iter().sum::<f64>().max(0.001);
    let [left, mut top] = [centre[0] - room[0] / 2.0, centre[1] - room[1] / 2.0];
    for (index, weight) in weights.iter().enumerate() {
        let bottom = top + room[1] * weight / sum;
        let band = corners([left, top], [left + room[0], bottom]);
        plate.polygon(&band, if index % 2 == 1 { ink::OTHER } else { ink::DOUGH });
        top = bottom;
    }
}
