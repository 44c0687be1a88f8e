//! Bakes: `190 °C, 22 min`, and in phases, `240 °C, 10 min, steam; then 210 °C, 25 min, turn the
//! tray`.

use crate::measure::{Duration, Temperature};
use crate::model::{Bake, BakeDoes, BakePhase, Wait};

use super::quantity::{duration, temperature, wait};

/// More phases than this are no bake.
const MOST: usize = 8;

/// What is done in a phase, by its words.
const DOES: [(&str, BakeDoes); 10] = [
    ("steam", BakeDoes::Steam),
    ("with steam", BakeDoes::Steam),
    ("door ajar", BakeDoes::Door),
    ("door open", BakeDoes::Door),
    ("with the door ajar", BakeDoes::Door),
    ("with the door open", BakeDoes::Door),
    ("turn the tray", BakeDoes::Turn),
    ("turn the trays", BakeDoes::Turn),
    ("turn the tin", BakeDoes::Turn),
    ("turn it", BakeDoes::Turn),
];

/// A bake in its phases, with the fan's own setting where its first heat is written with a fan:
/// `fan 170 °C, 22 min`. A phase that says no heat keeps that of the one before.
pub(super) fn bake(text: &str) -> Option<(Bake, Option<Temperature>)> {
    let mut phases: Vec<BakePhase> = Vec::new();
    for part in text.split(';') {
        let part = part.trim();
        let part = part.strip_prefix("then ").unwrap_or(part);
        let before = phases.last().map(|phase| (phase.oven.clone(), phase.fan.clone()));
        phases.push(phase(part, before)?);
    }
    let first = phases.first().filter(|_| phases.len() <= MOST)?;
    let (oven, fan) = (first.oven.clone(), first.fan.clone());
    let sum = |of: &dyn Fn(&BakePhase) -> Duration| {
        phases.iter().map(of).fold(Duration::zero(), |sum, one| sum + one)
    };
    let longer = |phase: &BakePhase| {
        let more = phase.more.as_ref().map_or_else(Duration::zero, |more| more.0.clone());
        phase.time.most.clone() + more
    };
    let time = Wait {
        usual: sum(&|phase| phase.time.usual.clone()),
        least: sum(&|phase| phase.time.least.clone()),
        most: sum(&longer),
    };
    Some((Bake { oven, time, phases }, fan))
}

/// `210 °C, 25 min, turn the tray, 5 min more if it is pale`.
fn phase(
    text: &str,
    before: Option<(Temperature, Option<Temperature>)>,
) -> Option<BakePhase> {
    let (mut heat, mut time) = (None, None);
    let (mut does, mut more) = (Vec::new(), None);
    for part in text.split(',').map(str::trim) {
        if let Some((_, one)) = DOES.iter().find(|(words, _)| *words == part) {
            does.push(*one);
        } else if let Some((longer, words)) = part.split_once(" more if ") {
            more = Some((duration(longer)?, words.trim().to_owned()));
        } else if let Some(found) = oven(part) {
            if heat.replace(found).is_some() {
                return None;
            }
        } else if time.replace(wait(part)?).is_some() {
            return None;
        }
    }
    let (oven, fan) = heat.or(before)?;
    Some(BakePhase { oven, fan, time: time?, does, more })
}

/// `190 °C`, or `fan 170 °C`.
fn oven(text: &str) -> Option<(Temperature, Option<Temperature>)> {
    match text.strip_prefix("fan ") {
        Some(fan) => {
            let fan = temperature(fan)?;
            Some((fan.without_fan(), Some(fan)))
        }
        None => Some((temperature(text)?, None)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::exact;

    fn minutes(number: i64) -> Duration {
        Duration::minutes(exact(number, 1))
    }

    #[test]
    fn phases_add_up() {
        let text = "240 °C with steam, 10 min";
        assert!(bake(text).is_none(), "steam is a part of its own");
        let text = "240 °C, 10 min, steam; then 210 °C, 25 min (20 min to 30 min), turn the tray; then 5 min, door ajar, 4 min more if the sides are pale";
        let (found, fan) = bake(text).expect("a bake");
        assert_eq!(fan, None);
        assert_eq!(
            (found.time.usual.clone(), found.time.least.clone(), found.time.most.clone()),
            (minutes(40), minutes(35), minutes(49))
        );
        let heats: Vec<_> = found.phases.iter().map(|phase| phase.oven.float()).collect();
        assert_eq!(heats, [240.0, 210.0, 210.0]);
        let does: Vec<_> = found.phases.iter().flat_map(|phase| &phase.does).collect();
        assert_eq!(does, [&BakeDoes::Steam, &BakeDoes::Turn, &BakeDoes::Door]);
        assert_eq!(
            found.phases[2].more,
            Some((minutes(4), "the sides are pale".to_owned()))
        );
        assert!(found.changes_heat());
        let (plain, fan) = bake("fan 170 °C, 22 min").expect("a bake");
        assert_eq!((plain.oven.float(), plain.phases.len()), (190.0, 1));
        assert_eq!(fan, Some(Temperature::celsius(exact(170, 1))));
        assert!(!plain.changes_heat());
        let (range, _) = bake("190 °C, 20–25 min").expect("a bake");
        assert_eq!(range.time.most, minutes(25));
        for text in [
            "190 °C",
            "22 min",
            "190 °C, 20 min, 5 min",
            "190 °C, 20 min; then 170 °C",
            "190 °C, 20 min, singing",
            "190 °C, 180 °C, 20 min",
            "",
        ] {
            assert!(bake(text).is_none(), "{text}");
        }
    }
}
