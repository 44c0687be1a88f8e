//! A tray: where every piece stands, how far apart, and which trays go into the oven
//! together.

use crate::draw::system::dimension::{Side, Tick};
use crate::draw::system::ink;
use crate::draw::system::lettering::{LABEL, RISE};
use crate::draw::system::plate::{Format, MARGIN, Plate, Point, Text};
use crate::draw::system::voice::Voice;
use crate::sheet::TrayFact;

use super::shape::{OnPlate, lying};

/// The tallest that a tray is drawn, and what stands beside it.
const TALLEST: f64 = 330.0;
const BESIDE: f64 = 170.0;
/// The most oven loads that are drawn.
const MOST_LOADS: u64 = 6;
/// The most trays that are drawn in one oven.
const MOST_TRAYS: u64 = 8;

/// The drawing of the trays of one bake.
pub(in crate::draw) fn tray(fact: &TrayFact, form: Format, voice: Voice<'_>) -> Plate {
    let mut plate = Plate::new(form.width());
    let size = [fact.length_cm.max(0.1), fact.width_cm.max(0.1)];
    let scale = ((plate.width - BESIDE) / size[0]).min(TALLEST * form.height() / size[1]);
    let (left, top) = (MARGIN + 46.0, 40.0);
    let (right, bottom) = (left + size[0] * scale, top + size[1] * scale);
    plate.dimension_across([left, right], 18.0, &voice.length(size[0]));
    plate.rectangle([left, top], [right, bottom], ink::TRAY);
    let at = |[x, y]: [f64; 2]| [left + x * scale, bottom - y * scale];
    pieces(&mut plate, fact, scale, &at);
    plate.dimension_up(right + 16.0, [top, bottom], &voice.length(size[1]));
    let depth = rulers(&mut plate, fact, &at, voice);
    let mut foot = bottom + depth + 14.0;
    if fact.part.is_none() && (fact.trays > 1 || fact.loads > 1) {
        foot = oven(&mut plate, fact, foot + 8.0, voice);
    }
    plate.height = crate::draw::layers::roll::lines(
        &mut plate,
        &captions(fact, voice),
        [MARGIN, foot],
    );
    plate
}

/// The pieces as they are set down, else a place for each.
fn pieces(
    plate: &mut Plate,
    fact: &TrayFact,
    scale: f64,
    at: &dyn Fn([f64; 2]) -> Point,
) {
    let Some(shape) = &fact.shape else {
        let radius = fact.along_cm.min(fact.across_cm) * scale * 0.28;
        for place in &fact.places_cm {
            plate.circle(at(*place), radius, ink::DOUGH);
        }
        return;
    };
    let round = shape.turned().turned();
    for (index, place) in fact.places_cm.iter().enumerate() {
        let shape = if fact.in_pairs && index % 2 == 1 { &round } else { shape };
        lying(plate, shape, &OnPlate::centred(shape, at(*place), scale));
    }
}

/// Where the middles of the pieces, or of pairs of them, lie, from the near left corner; gives
/// the depth that the lower ruler takes.
fn rulers(
    plate: &mut Plate,
    fact: &TrayFact,
    at: &dyn Fn([f64; 2]) -> Point,
    voice: Voice<'_>,
) -> f64 {
    let of_each = if fact.in_pairs { 2 } else { 1 };
    let middle = |those: &[[f64; 2]]| {
        [0, 1].map(|axis| {
            those.iter().map(|place| place[axis]).sum::<f64>() / those.len() as f64
        })
    };
    let places: Vec<[f64; 2]> = fact.places_cm.chunks(of_each).map(middle).collect();
    let first = places.first().map_or(0.0, |place| place[1]);
    let in_first = places.iter().filter(|place| (place[1] - first).abs() < 0.01);
    let along: Vec<Tick> = in_first
        .map(|place| Tick { at: at(*place)[0], text: voice.bare_length(place[0]) })
        .collect();
    let mut across: Vec<Tick> = Vec::new();
    for place in &places {
        let tick = Tick { at: at(*place)[1], text: voice.bare_length(place[1]) };
        if across.last().is_none_or(|last| (last.at - tick.at).abs() > 0.01) {
            across.push(tick);
        }
    }
    let corner = at([0.0, 0.0]);
    plate.side_ruler(&across, corner[0]);
    let depth = plate.ruler(&along, corner[1], Side::Below);
    let text = Text::new(
        voice.unit_alone(),
        [corner[0] - 14.0, corner[1] + 12.0 + LABEL * RISE],
    );
    plate.text(text.end());
    depth
}

/// The oven's loads, each with its trays in it; gives where they end.
fn oven(plate: &mut Plate, fact: &TrayFact, top: f64, voice: Voice<'_>) -> f64 {
    let held = fact.trays_per_oven.unwrap_or(1).clamp(1, MOST_TRAYS);
    let room = ((plate.width - 2.0 * MARGIN) / 100.0) as u64;
    let loads = fact.loads.clamp(1, MOST_LOADS.min(room.saturating_sub(1)).max(1));
    plate.heading(&voice.word("oven-loads"), top);
    let (wide, high) = (82.0, 18.0 + 15.0 * held as f64);
    let (top, mut left) = (top + 36.0, MARGIN);
    for load in 0..loads {
        plate.rectangle([left, top], [left + wide, top + high], ink::TRAY);
        let trays = fact.trays.saturating_sub(load * held).min(held);
        for tray in 0..trays {
            let y = top + high - 12.0 - 15.0 * tray as f64;
            plate.line(&[[left + 8.0, y], [left + wide - 8.0, y]], ink::SPINE);
        }
        let number = (load + 1).to_string();
        let at = [left + wide / 2.0, top + high + 6.0 + LABEL * RISE];
        plate.text(Text::new(number, at).bold().middle().ink(ink::LEAD));
        left += wide + 18.0;
    }
    if fact.loads > loads {
        plate.text(Text::new("…", [left, top + high / 2.0]));
    }
    top + high + 6.0 + LABEL * 1.4
}

/// What stands beneath: pieces, distances, trays and loads.
pub(in crate::draw) fn captions(fact: &TrayFact, voice: Voice<'_>) -> Vec<String> {
    let (pieces, trays) = (fact.places_cm.len().to_string(), fact.trays.to_string());
    let (loads, along) = (fact.loads.to_string(), voice.of(&fact.along));
    let values = [
        ("pieces", pieces.as_str()),
        ("tray", voice.of(&fact.tray)),
        ("along", along),
        ("across", voice.of(&fact.across)),
        ("trays", &trays),
        ("loads", &loads),
    ];
    let said = voice.fill("tray-pieces", &values);
    let mut texts = vec![match &fact.part {
        Some(part) => voice.fill("tray-part", &[("part", part), ("said", &said)]),
        None => said,
    }];
    if fact.places_cm.len() > 1 {
        let key = if fact.in_pairs { "tray-in-pairs" } else { "tray-apart" };
        texts.push(voice.fill(key, &values));
    }
    if let (Some([along, across]), Some(fits)) = (&fact.gap, fact.fits) {
        let (fits, gaps) = (fits.to_string(), [voice.of(along), voice.of(across)]);
        let values = [("along", gaps[0]), ("across", gaps[1]), ("fits", &fits)];
        let key = match (fact.leavened, gaps[0] == gaps[1]) {
            (true, true) => "tray-gap",
            (true, false) => "tray-gaps",
            (false, _) => "tray-gap-only",
        };
        texts.push(voice.fill(key, &values));
    }
    if fact.trays > 1 {
        let key = match (&fact.part, fact.loads > 1) {
            (Some(_), _) => "tray-alike",
            (None, true) => "tray-loads",
            (None, false) => "tray-one-load",
        };
        texts.push(voice.fill(key, &values));
    }
    texts
}
