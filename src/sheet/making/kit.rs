//! Kit and places in words: by the author's word, or by the language's own.

use crate::model::{KitKind, KitUse, Location, Standing};
use crate::words::Words;

/// Where something stands.
pub(super) fn place_words(place: &Location, words: &Words) -> String {
    if let Some(written) = &place.written {
        return words.author(written);
    }
    let key = match &place.standing {
        Standing::Basket => "place-basket",
        Standing::Bench => "place-bench",
        Standing::ColdRoom => "place-cold-room",
        Standing::Counter => "place-counter",
        Standing::Freezer => "place-freezer",
        Standing::Fridge => "place-fridge",
        Standing::Oven => "place-oven",
        Standing::Proofer => "place-proofer",
        Standing::Rack => "place-rack",
        Standing::Own(name, _) => return words.author(name),
    };
    words.get(key).to_owned()
}

/// What a kind of kit is called.
pub(super) fn kit_words(kit: &KitKind, words: &Words) -> String {
    let key = match kit {
        KitKind::Instructor => "kit-instructor",
        KitKind::BenchPlace => "kit-bench-place",
        KitKind::Mixer => "kit-mixer",
        KitKind::Oven => "kit-oven",
        KitKind::TrayPerOven => "kit-tray-per-oven",
        KitKind::Trays(place) => {
            let place = place_words(place, words);
            return words.fill("kit-trays", &[("place", &place)]);
        }
        KitKind::Own(name, _) => return words.author(name),
    };
    words.get(key).to_owned()
}

/// How many of what a step occupies: `2 mixers`.
pub(super) fn used_words(used: &KitUse, words: &Words) -> String {
    let count = used.count.to_string();
    let so_many = |written: &str| {
        words.fill("so-many", &[("count", &count), ("name", &words.author(written))])
    };
    if let Some(written) = &used.written {
        return so_many(written);
    }
    let key = match &used.kind {
        KitKind::Instructor => "used-instructor",
        KitKind::BenchPlace => "used-bench-place",
        KitKind::Mixer => "used-mixer",
        KitKind::Oven => "used-oven",
        KitKind::TrayPerOven => "used-tray-per-oven",
        KitKind::Trays(place) => {
            let place = place_words(place, words);
            return words.fill("used-trays", &[("count", &count), ("place", &place)]);
        }
        KitKind::Own(name, _) => return so_many(name),
    };
    words.fill(key, &[("count", &count)])
}
