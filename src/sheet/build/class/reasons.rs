//! How good a plan is, why there is none, and what would help, in words.

use jiff::civil::DateTime;

use crate::measure::show;
use crate::model::Session;
use crate::plan::{Change, Note, Reason, Remedy, Short, Standing, Timetable};
use crate::words::Words;

use super::lasting;
use super::names::Names;

/// How good a plan is known to be.
pub(super) fn standing(plan: &Timetable, words: &Words) -> String {
    match plan.standing {
        Standing::Best => words.get("standing-best").to_owned(),
        Standing::Nearest => words.get("standing-nearest").to_owned(),
        Standing::Nearer(by) => {
            words.fill("standing-nearer", &[("minutes", &by.to_string())])
        }
        Standing::Sound { short, off_grid, moments, waiting, end } => {
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
                ("waiting", &lasting(waiting, words)),
                ("end", &moment(&plan.clock.local(end), words)),
            ];
            words.fill("standing-sound", &values)
        }
        Standing::Never => words.get("standing-never").to_owned(),
        Standing::Unknown => words.get("standing-unknown").to_owned(),
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
            let values =
                [("kit", &**kit), ("have", &*have), ("need", &*need), ("steps", &*steps)];
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

fn change(of: &Change, names: &Names, words: &Words) -> String {
    match of {
        Change::More(kit, more) => {
            let count = more.to_string();
            let values = [("kit", &**kit), ("count", &*count)];
            words.fill("remedy-more", &values)
        }
        Change::Session(Session { from, to }) => {
            let day = from.date().to_string();
            let values = [
                ("date", &*day),
                ("from", &*moment(from, words)),
                ("to", &*moment(to, words)),
            ];
            words.fill("remedy-session", &values)
        }
        Change::Bakers(count) => {
            words.fill("remedy-bakers", &[("count", &count.to_string())])
        }
        Change::Stop(who) => words.fill("remedy-stop", &[("who", &names.all(who))]),
        Change::Without(recipe) => words.fill("remedy-without", &[("recipe", recipe)]),
        Change::All(all) => {
            let all: Vec<String> =
                all.iter().map(|one| change(one, names, words)).collect();
            words.list(&all)
        }
        Change::Together(together) => {
            words.get(&format!("remedy-together-{together}")).to_owned()
        }
        Change::NoDemonstration => words.get("remedy-no-demonstration").to_owned(),
        Change::Hold { recipe, title } => {
            words.fill("remedy-hold", &[("title", title), ("recipe", recipe)])
        }
        Change::Longer(short) => with_short("remedy-longer", "", *short, words),
        Change::Ready(ready) => {
            let values =
                [("time", &*moment(ready, words)), ("day", &*words.day(ready.date()))];
            words.fill("remedy-ready", &values)
        }
        Change::Up(minute) => {
            words.fill("remedy-up", &[("time", &clock(*minute, words))])
        }
        Change::StayUp(minute) => {
            words.fill("remedy-stay-up", &[("time", &clock(*minute, words))])
        }
    }
}

/// What else must be known.
pub(super) fn note(note: &Note, names: &Names, words: &Words) -> String {
    match note {
        Note::Shortened { title, lasts, usual } => {
            let [lasts, usual] = [*lasts, *usual]
                .map(|minutes| show::minutes(u64::try_from(minutes).unwrap_or(0), words));
            let values = [("title", &**title), ("lasts", &*lasts), ("usual", &*usual)];
            words.fill("plan-note-shortened", &values)
        }
        Note::TooLong { who, title } => {
            let who = names.one(*who);
            words.fill("plan-note-too-long", &[("who", &who), ("title", title)])
        }
        Note::Crowded => words.get("plan-note-crowded").to_owned(),
        Note::Usual(short) => with_short("plan-note-usual", "", *short, words),
        Note::Uncounted(kit) => words.fill("plan-note-uncounted", &[("kit", kit)]),
        Note::Unused(kit) => words.fill("plan-note-unused", &[("kit", kit)]),
        Note::Stopped => words.get("plan-note-stopped").to_owned(),
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
