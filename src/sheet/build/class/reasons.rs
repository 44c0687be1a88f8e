//! How good a plan is, why there is none, and what would help, in words.

use jiff::civil::DateTime;

use crate::measure::show;
use crate::plan::{Change, Note, Reason, Remedy, Short, Standing};
use crate::words::Words;

use super::names::Names;

/// How good a plan is known to be.
pub(super) fn standing(standing: Standing, words: &Words) -> String {
    let (key, by) = match standing {
        Standing::Best => ("standing-best", 0),
        Standing::Nearest => ("standing-nearest", 0),
        Standing::Nearer(by) => ("standing-nearer", by),
        Standing::LessWaiting(by) => ("standing-less-waiting", by),
        Standing::Shorter(by) => ("standing-shorter", by),
        Standing::Never => ("standing-never", 0),
        Standing::Unknown => ("standing-unknown", 0),
    };
    words.fill(key, &[("minutes", &by.to_string())])
}

/// Why there is no plan.
pub(super) fn reason(reason: &Reason, words: &Words) -> String {
    match reason {
        Reason::Chain(short) => with_short("reason-chain", "", *short, words),
        Reason::Apart => words.get("reason-apart").to_owned(),
        Reason::Kit { kit, short: Some(short) } => {
            with_short("reason-kit", kit, *short, words)
        }
        Reason::Kit { kit, short: None } => {
            words.fill("reason-kit-whatever", &[("kit", kit)])
        }
        Reason::Together(Some(short)) => with_short("reason-together", "", *short, words),
        Reason::Together(None) => words.get("reason-together-whatever").to_owned(),
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
pub(super) fn remedy(remedy: &Remedy, words: &Words) -> String {
    let change = change(&remedy.change, words);
    match remedy.end {
        None => words.fill("remedy-fits", &[("change", &change)]),
        Some(end) => {
            let end = moment(&end, words);
            words.fill("remedy-fits-by", &[("change", &change), ("end", &end)])
        }
    }
}

fn change(change: &Change, words: &Words) -> String {
    match change {
        Change::OneMore(kit) => words.fill("remedy-one-more", &[("kit", kit)]),
        Change::Together(together) => {
            words.get(&format!("remedy-together-{together}")).to_owned()
        }
        Change::NoDemonstration => words.get("remedy-no-demonstration").to_owned(),
        Change::Hold { recipe, title } => {
            words.fill("remedy-hold", &[("title", title), ("recipe", recipe)])
        }
        Change::Longer(short) => with_short("remedy-longer", "", *short, words),
        Change::Ready(ready) => {
            words.fill("remedy-ready", &[("time", &moment(ready, words))])
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
                .map(|minutes| show::minutes(u64::try_from(minutes).unwrap_or(0)));
            let values = [("title", &**title), ("lasts", &*lasts), ("usual", &*usual)];
            words.fill("plan-note-shortened", &values)
        }
        Note::TooLong { who, title } => {
            let who = names.one(*who);
            words.fill("plan-note-too-long", &[("who", &who), ("title", title)])
        }
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
