//! How the layers grow: the dough cut through after the lock-in and after every turn. Every
//! fat layer is drawn as long as an eye can tell them apart; from then on the band is
//! toned, and its number says the rest.

use crate::sheet::GrowthFact;

use crate::draw::system::hatch::Slant;
use crate::draw::system::ink;
use crate::draw::system::lettering::{self, HEADING, LABEL, RISE};
use crate::draw::system::plate::{Format, MARGIN, Plate, Text, corners};
use crate::draw::system::voice::Voice;

/// The height of a section.
const HIGH: f64 = 132.0;
/// The most sections in a row on a page.
const IN_A_ROW: usize = 7;
/// The space between two sections, for the arrow and the number of parts.
const GAP: f64 = 42.0;
/// The thinnest layer that an eye can tell from its neighbours: 1.2 px on a phone.
const THINNEST: f64 = 2.4;

/// The drawing of how layers grow.
pub(in crate::draw) fn growth(
    fact: &GrowthFact,
    form: Format,
    voice: Voice<'_>,
) -> Plate {
    let mut plate = Plate::new(form.width());
    plate.heading(&voice.word("growth-title"), 6.0);
    let in_a_row = match form {
        Format::Page => IN_A_ROW,
        Format::Column | Format::Large => IN_A_ROW - 1,
        Format::Card => IN_A_ROW - 3,
    };
    let columns = fact.fat_layers.len().clamp(2, in_a_row) as f64;
    let wide = (plate.width - 2.0 * MARGIN - (columns - 1.0) * GAP) / columns;
    let mut top = 46.0;
    for (row, counts) in fact.fat_layers.chunks(in_a_row).enumerate() {
        for (at, count) in counts.iter().enumerate() {
            let left = MARGIN + at as f64 * (wide + GAP);
            section(&mut plate, *count, fact.inverted, [left, top], wide);
            let parts = fact.parts.get(row * in_a_row + at);
            if let Some(parts) = parts.filter(|_| at + 1 < in_a_row) {
                step(&mut plate, *parts, [left + wide, top]);
            } else if let Some(parts) = parts {
                // The next section begins the next row.
                let text = Text::new(format!("×{parts}"), [left + wide, top - 6.0]);
                plate.text(text.end().bold().ink(ink::LEAD));
            }
        }
        top += HIGH + 62.0;
    }
    let note = voice.word("growth-note");
    plate.height = super::roll::lines(&mut plate, &[note], [MARGIN, top - 14.0]) + 4.0;
    plate
}

/// The arrow to the next section, with the parts that are folded on one another.
fn step(plate: &mut Plate, parts: u32, [left, top]: [f64; 2]) {
    let y = top + HIGH / 2.0;
    plate.arrow([left + 6.0, y], [left + GAP - 6.0, y]);
    let at = [left + GAP / 2.0, y - 14.0];
    plate.text(Text::new(format!("×{parts}"), at).bold().middle().ink(ink::LEAD));
}

/// The dough cut through, and how many fat layers are in it.
fn section(
    plate: &mut Plate,
    count: u64,
    inverted: bool,
    [left, top]: [f64; 2],
    wide: f64,
) {
    let right = left + wide;
    plate.rectangle([left, top], [right, top + HIGH], ink::DOUGH);
    // Dough on both sides of every fat layer, or fat on both sides of the dough.
    let (layers, first) = if inverted { (-1.0, 0.0) } else { (1.0, 1.0) };
    let thick = HIGH / (2.0 * count as f64 + layers).max(1.0);
    if thick >= THINNEST {
        let layer = |index: u32| {
            let from = top + (2.0 * f64::from(index) + first) * thick;
            corners([left, from], [right, from + thick])
        };
        let fat: Vec<_> = (0..count as u32).map(layer).collect();
        plate.polygons(&fat, ink::FAT_SEAM);
    } else {
        let inner = corners([left, top + 3.0], [right, top + HIGH - 3.0]);
        plate.polygon(&inner, ink::FAT_SEAM);
        plate.hatch(&inner, Slant::degrees(0.0), THINNEST, ink::TONE);
    }
    let text = count.to_string();
    let fits = wide + GAP - 8.0;
    let size = (HEADING * fits / lettering::width(&text, HEADING, true)).min(HEADING);
    let at = [f64::midpoint(left, right), top + HIGH + 10.0 + HEADING * RISE];
    plate.text(Text::new(text, at).size(size.max(LABEL)).bold().middle());
}
