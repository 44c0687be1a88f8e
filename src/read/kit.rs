//! Words for kit and places to what they are.

use crate::model::{KitKind, KitUse, Location, Standing, one_of};

use super::lexicon::Lexicon;

/// Where something stands: a known place by one of its names, or the author's own.
pub(super) fn location(text: &str, words: &Lexicon) -> Location {
    let written = text.trim();
    let name = written.to_lowercase();
    let standing = words.place(&name).unwrap_or_else(|| {
        let keeps = words.keeps(&name);
        Standing::Own(name.clone(), keeps)
    });
    let is_ours = Standing::KNOWN.contains(&standing) && standing.name() == name;
    Location { standing, written: (!is_ours).then(|| written.to_owned()) }
}

/// Kit by its name, whether of one or of several: `mixers` and `trays per oven` are `mixer`
/// and `tray per oven`.
pub(super) fn kit_kind(text: &str, words: &Lexicon) -> KitKind {
    let name = one_of(text);
    let written = text.trim().to_lowercase();
    let known = words.kit(&name).or_else(|| words.kit(&written));
    known.unwrap_or_else(|| match name.strip_suffix(" tray") {
        Some(place) => KitKind::Trays(location(place, words)),
        None => {
            let mixes = words.mixes(&name);
            KitKind::Own(name, mixes)
        }
    })
}

/// `1 mixer, 2 trays`.
pub(super) fn kit(text: &str, words: &Lexicon) -> Option<Vec<KitUse>> {
    let used = text.split(',').map(|part| {
        let (count, name) = part.trim().split_once(' ')?;
        let kind = kit_kind(name, words);
        let is_own = match &kind {
            KitKind::Own(..) => true,
            KitKind::Instructor
            | KitKind::BenchPlace
            | KitKind::Mixer
            | KitKind::Oven
            | KitKind::TrayPerOven
            | KitKind::Trays(_) => kind.name() != one_of(name.trim()),
        };
        let written = is_own.then(|| name.trim().to_owned());
        Some(KitUse { count: count.parse().ok()?, kind, written })
    });
    used.collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Keeps;

    #[test]
    fn places_are_known_by_their_names() {
        let of = |text: &str, language: &str| location(text, Lexicon::of(language));
        for (text, language) in [
            ("fridge", "en"),
            ("Fridge", "en"),
            ("frigo", "fr"),
            ("fridge", "fr"),
            ("Kühlschrank", "de"),
            ("nevera", "es"),
            ("冷蔵庫", "ja"),
        ] {
            let place = of(text, language);
            assert_eq!(place.standing, Standing::Fridge, "{text}");
            assert_eq!(place.word().to_lowercase(), text.to_lowercase());
            assert_eq!(place.written.is_none(), text.eq_ignore_ascii_case("fridge"));
        }
        let own = of("Cave 2", "fr");
        assert_eq!(own.standing, Standing::Own("cave 2".into(), Keeps::Open));
        for (text, cold, frozen) in [
            ("walk-in fridge", true, false),
            ("fridge 2", true, false),
            ("retarder", true, false),
            ("chest freezer", true, true),
            ("window sill", false, false),
        ] {
            let place = of(text, "en");
            assert_eq!((place.is_cold(), place.is_frozen()), (cold, frozen), "{text}");
        }
        assert!(of("chambre froide", "fr").is_cold());
        assert!(!of("bol froissé", "fr").is_cold());
    }

    #[test]
    fn kit_is_one_by_one_and_by_several() {
        let of = |text: &str| kit_kind(text, Lexicon::english());
        assert_eq!(of("Mixers"), KitKind::Mixer);
        assert_eq!(of("trays per oven"), KitKind::TrayPerOven);
        assert_eq!(of("bench places"), KitKind::BenchPlace);
        assert_eq!(
            of("fridge trays").place(),
            Some(&location("fridge", Lexicon::english()))
        );
        assert_eq!(of("whisks").name(), "whisk");
        assert!(of("stand mixers").mixes() && of("stand mixers") != KitKind::Mixer);
        let french = kit_kind("pétrins", Lexicon::of("fr"));
        assert_eq!(french, KitKind::Mixer);
        assert_eq!(kit_kind("Rührmaschinen", Lexicon::of("de")), KitKind::Mixer);
        assert_eq!(kit_kind("ミキサー", Lexicon::of("ja")), KitKind::Mixer);
    }
}
