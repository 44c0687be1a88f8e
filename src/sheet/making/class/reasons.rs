//! How good a plan is, why there is none, and what would help, in words.

use jiff::civil::DateTime;

use crate::measure::{Label, Mass, exact, show};
use crate::model::Session;
use crate::plan::{
    Amendment, Beside, Caveat, Optimality, Reason, Remedy, SharedDough, Short, Timetable,
};
use crate::words::Words;

use super::super::super::Units;
use super::super::kit::kit_words;
use super::lasting;
use super::names::Names;
use super::plan::Voice;

/// How good a plan is known to be.
pub(super) fn standing(plan: &Timetable, words: &Words) -> String {
    match plan.standing {
        Optimality::Best => words.get("standing-best").to_owned(),
        Optimality::Nearest => words.get("standing-nearest").to_owned(),
        Optimality::Nearer(by) => {
            words.fill("standing-nearer", &[("minutes", &by.to_string())])
        }
        Optimality::Sound { short, off_grid, moments, waiting, end } => {
            let rests = match short {
                0 => words.get("standing-rests").to_owned(),
                by => words.fill("standing-rests-short", &[("minutes", &by.to_string())]),
            };
            let grid = if off_grid { words.get("standing-off-grid") } else { "" };
            let (own, fewest) = (moments.0.to_string(), moments.1.to_string());
            let values = [
                ("rests", &*rests),
                ("grid", grid),
                ("moments", &own),
                ("fewest", &fewest),
                ("waiting", &lasting(waiting.0, words)),
                ("least", &lasting(waiting.1, words)),
                ("end", &moment(&plan.clock.local(end), words)),
            ];
            words.fill("standing-sound", &values)
        }
        Optimality::Never => words.get("standing-never").to_owned(),
        Optimality::Unknown => words.get("standing-unknown").to_owned(),
    }
}

/// Why there is no plan.
pub(super) fn reason(reason: &Reason, words: &Words) -> String {
    match reason {
        Reason::Chain(short) => with_short("reason-chain", "", *short, words),
        Reason::Apart => words.get("reason-apart").to_owned(),
        Reason::Kit { kit, have, need, steps } => {
            let (have, need) = (have.to_string(), need.to_string());
            let steps: Vec<String> = steps
                .iter()
                .map(|title| words.fill("reason-step", &[("title", title)]))
                .collect();
            let steps = words.list(&steps);
            let kit = kit_words(kit, words);
            let values =
                [("kit", &*kit), ("have", &*have), ("need", &*need), ("steps", &*steps)];
            words.fill("reason-kit", &values)
        }
        Reason::Over(short) => with_short("reason-over", "", *short, words),
        Reason::Together => words.get("reason-together").to_owned(),
        Reason::Hours { awake: (from, to), ready } => {
            let [from, to] = [*from, *to].map(|minute| clock(minute, words));
            let ready = words.clock(ready.hour(), ready.minute());
            let values = [("from", &*from), ("to", &*to), ("ready", &*ready)];
            words.fill("reason-hours", &values)
        }
        Reason::Waits => words.get("reason-waits").to_owned(),
    }
}

/// What would make it fit.
pub(super) fn remedy(remedy: &Remedy, names: &Names, words: &Words) -> String {
    let change = change(&remedy.change, names, words);
    match remedy.end {
        None => words.fill("remedy-fits", &[("change", &change)]),
        Some(end) => {
            let end = words.fill(
                "remedy-end",
                &[("time", &moment(&end, words)), ("day", &words.day(end.date()))],
            );
            words.fill("remedy-fits-by", &[("change", &change), ("end", &end)])
        }
    }
}

fn change(of: &Amendment, names: &Names, words: &Words) -> String {
    match of {
        Amendment::More(kit, more) => {
            let count = more.to_string();
            let kit = kit_words(kit, words);
            let values = [("kit", &*kit), ("count", &*count)];
            words.fill("remedy-more", &values)
        }
        Amendment::Session(Session { from, to }) => {
            let day = from.date().to_string();
            let values = [
                ("date", &*day),
                ("from", &*moment(from, words)),
                ("to", &*moment(to, words)),
            ];
            words.fill("remedy-session", &values)
        }
        Amendment::Bakers(count) => {
            words.fill("remedy-bakers", &[("count", &count.to_string())])
        }
        Amendment::Stop(who) => words.fill("remedy-stop", &[("who", &names.all(who))]),
        Amendment::Without(recipe) => words.fill("remedy-without", &[("recipe", recipe)]),
        Amendment::All(all) => {
            let all: Vec<String> =
                all.iter().map(|one| change(one, names, words)).collect();
            words.list(&all)
        }
        Amendment::Together(together) => {
            words.get(&format!("remedy-together-{together}")).to_owned()
        }
        Amendment::Less(Beside::Talks) => words.get("remedy-no-talk").to_owned(),
        Amendment::Less(Beside::Breaks) => words.get("remedy-no-break").to_owned(),
        Amendment::Less(Beside::Tasting) => words.get("remedy-no-tasting").to_owned(),
        Amendment::Less(Beside::Slack) => words.get("remedy-no-slack").to_owned(),
        Amendment::NoDemonstration => words.get("remedy-no-demonstration").to_owned(),
        Amendment::Hold { recipe, title } => {
            words.fill("remedy-hold", &[("title", title), ("recipe", recipe)])
        }
        Amendment::Longer(short) => with_short("remedy-longer", "", *short, words),
        Amendment::Ready(ready) => {
            let values =
                [("time", &*moment(ready, words)), ("day", &*words.day(ready.date()))];
            words.fill("remedy-ready", &values)
        }
        Amendment::Up(minute) => {
            words.fill("remedy-up", &[("time", &clock(*minute, words))])
        }
        Amendment::StayUp(minute) => {
            words.fill("remedy-stay-up", &[("time", &clock(*minute, words))])
        }
    }
}

/// `Layered dough is made once: 620 g for Crescents, 500 g for Batons. For these 1.12 kg, mix
/// 1.14 kg.`
pub fn shared_dough(dough: &SharedDough, units: Units, words: &Words) -> String {
    let weight = |mass: &Mass| {
        let tolerance = exact(1, 100);
        let metric = show::metric(mass, &tolerance, true).words(words);
        let us = show::us_weight(mass, &tolerance).words(words);
        units.of(&Label::new(metric, us)).to_owned()
    };
    let part = |(name, mass): &(String, Mass)| {
        words.fill("divide-part", &[("weight", &weight(mass)), ("name", name)])
    };
    let parts: Vec<String> = dough.parts.iter().map(part).collect();
    let values = [
        ("title", &*dough.title),
        ("parts", &*words.list(&parts)),
        ("taken", &*weight(&dough.taken)),
        ("mixed", &*weight(&dough.mixed)),
    ];
    words.fill("plan-note-shared", &values)
}

/// What else must be known.
pub(super) fn note(note: &Caveat, voice: &Voice) -> String {
    let (names, words) = (&voice.names, voice.words);
    match note {
        Caveat::OvenInBreak(minute) => {
            let time = voice.time(*minute);
            words.fill("plan-note-oven-in-break", &[("time", &time)])
        }
        Caveat::Shortened { title, lasts, usual } => {
            let [lasts, usual] = [*lasts, *usual]
                .map(|minutes| show::minutes(u64::try_from(minutes).unwrap_or(0), words));
            let values = [("title", &**title), ("lasts", &*lasts), ("usual", &*usual)];
            words.fill("plan-note-shortened", &values)
        }
        Caveat::TooLong { who, title } => {
            let who = names.one(*who);
            words.fill("plan-note-too-long", &[("who", &who), ("title", title)])
        }
        Caveat::Shared(dough) => shared_dough(dough, voice.units, words),
        Caveat::OtherDays => words.get("plan-note-other-days").to_owned(),
        Caveat::Crowded => words.get("plan-note-crowded").to_owned(),
        Caveat::Usual(short) => with_short("plan-note-usual", "", *short, words),
        Caveat::Uncounted(kit) => {
            words.fill("plan-note-uncounted", &[("kit", &kit_words(kit, words))])
        }
        Caveat::Unused(kit) => {
            words.fill("plan-note-unused", &[("kit", &kit_words(kit, words))])
        }
        Caveat::Stopped => words.get("plan-note-stopped").to_owned(),
    }
}

fn with_short(key: &str, kit: &str, short: Short, words: &Words) -> String {
    let (session, minutes) = ((short.session + 1).to_string(), short.minutes.to_string());
    words.fill(key, &[("kit", kit), ("session", &session), ("minutes", &minutes)])
}

/// A minute of the day.
fn clock(minute: i32, words: &Words) -> String {
    let part = |part: i32| i8::try_from(part).unwrap_or(0);
    words.clock(part(minute / 60), part(minute % 60))
}

fn moment(at: &DateTime, words: &Words) -> String {
    words.clock(at.hour(), at.minute())
}
