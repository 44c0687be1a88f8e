//! What a class has beside its recipes goes into its sessions and belongs to its groups and
//! steps.

use jiff::civil::DateTime;

use crate::fault::Fault;
use crate::measure::Duration;
use crate::model::{Break, Class, Content, Session, When};
use crate::said;

use super::classes::{step_fault, steps};

/// Every rule about what a class has beside its recipes.
pub(super) fn besides(class: &Class, content: &Content) -> Vec<Fault> {
    let steps = steps(class, content);
    let paced = class.besides.pace.steps.iter().map(|(name, _)| name);
    let told = class.besides.talks.iter().filter_map(|talk| talk.before.as_ref());
    let mut faults: Vec<Fault> =
        paced.chain(told).filter_map(|name| step_fault(name, &steps)).collect();
    if class.unread {
        return faults;
    }
    faults.extend(late(class));
    faults.extend(class.besides.breaks.iter().filter_map(|one| outside(class, one)));
    faults.extend(too_long(class));
    faults
}

fn minutes(session: &Session) -> i64 {
    session.to.duration_since(session.from).as_mins()
}

/// Who comes late is one of the class, and comes before the day is over.
fn late(class: &Class) -> Vec<Fault> {
    let longest = class.sessions.iter().map(|one| minutes(&one.value)).max();
    let mut faults = Vec::new();
    for late in &class.besides.late {
        if late.groups.1 >= class.groups() {
            let message = said!("late-nobody", groups = class.groups());
            let fault = Fault::error("class-besides", &late.place, message);
            faults.push(fault.help(said!("late-nobody-help")));
        }
        let by = i64::try_from(late.by.whole_minutes()).unwrap_or(i64::MAX);
        if longest.is_some_and(|longest| by >= longest) {
            let fault = Fault::error("class-besides", &late.place, said!("late-never"));
            faults.push(fault.help(said!("late-never-help")));
        }
    }
    faults
}

/// A break that lies in none of the sessions.
fn outside(class: &Class, one: &Break) -> Option<Fault> {
    let lasts = i64::try_from(one.lasts.whole_minutes()).unwrap_or(i64::MAX);
    let inside = |session: &Session| {
        let days = [session.from, session.to].map(DateTime::date);
        let at = |(hour, minute): (i8, i8)| days.map(|day| day.at(hour, minute, 0, 0));
        let holds = |(from, to): (DateTime, DateTime)| {
            let (from, to) = (from.max(session.from), to.min(session.to));
            to.duration_since(from).as_mins() >= lasts
        };
        match one.when {
            When::Middle => minutes(session) / 2 >= lasts,
            When::At(hour, minute) => at((hour, minute)).into_iter().any(|from| {
                let to = from.checked_add(jiff::SignedDuration::from_mins(lasts));
                from >= session.from && to.is_ok_and(|to| to <= session.to)
            }),
            When::Between(from, to) => at(from).into_iter().zip(at(to)).any(holds),
        }
    };
    if class.sessions.is_empty() || class.sessions.iter().any(|own| inside(&own.value)) {
        return None;
    }
    let fault = Fault::error("class-besides", &one.place, said!("break-outside"));
    let longest = class.sessions.iter().max_by_key(|own| minutes(&own.value))?.value;
    let lasts = lasts.min(minutes(&longest) / 2).max(1);
    let middle = longest.from + jiff::SignedDuration::from_mins(minutes(&longest) / 2);
    let clock = |time: DateTime| format!("{:02}:{:02}", time.hour(), time.minute());
    let at = format!("{lasts} min at {}", clock(middle));
    let between =
        format!("{lasts} min between {} and {}", clock(longest.from), clock(longest.to));
    Some(fault.help(said!("break-outside-help", at, between, lasts)))
}

/// More beside the recipes than a session has time.
fn too_long(class: &Class) -> Option<Fault> {
    let besides = &class.besides;
    let told = besides.talks.iter().map(|talk| &talk.lasts);
    let slack = besides.slack.as_ref().map(|slack| &slack.value);
    let opening = besides.arrival.iter().chain(told);
    let all: Duration =
        opening.chain(&besides.washing).chain(slack).cloned().sum::<Duration>();
    let all = i64::try_from(all.whole_minutes()).unwrap_or(i64::MAX);
    let short = class.sessions.iter().find(|own| minutes(&own.value) <= all)?;
    let message = said!("besides-too-long", minutes = all);
    let fault = Fault::error("class-besides", &short.place, message);
    Some(fault.help(said!("besides-too-long-help")))
}

#[cfg(test)]
mod tests {
    use crate::read::{Source, content};

    const CLASS: &str = "title: C\nsessions:\n  - 2027-03-02 18:00 to 21:00\nbakers: 4\nwork in: pairs\nmakes:\n  - recipe: t\n    each: pair\n    pieces: 12\nkit: { mixer: 1, oven: 1 }\n";

    fn names(more: &str) -> Vec<&'static str> {
        const RECIPE: &str = "---\ntitle: T\nsummary: s\nmakes: 12 buns\nformula:\n  dough:\n    - 600 g bread flour\n---\n## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nhands: 5 min\n~~~\n## Bake\n~~~ticket\nbake: 190 °C, 20 min\n~~~\n";
        let class = format!("{CLASS}{more}\n");
        let source =
            |path: &str, text: &str| Source { path: path.into(), text: text.into() };
        let files = [
            source("course.yaml", "title: c\n"),
            source("recipes/t.md", RECIPE),
            source("classes/c.yaml", &class),
        ];
        let (read, _, faults) = content(&files);
        assert_eq!(faults, [], "{more}");
        let faults = read.classes.iter().flat_map(|class| super::besides(class, &read));
        faults.map(|fault| fault.name).collect()
    }

    #[test]
    fn what_goes_into_the_sessions_is_no_fault() {
        for sound in [
            "arrival: 10 min\nlate: { pair 2: 20 min }\ntalk: [5 min, 5 min before mix]",
            "break: 15 min between 19:00 and 20:00\ntasting: 10 min\nslack: 10 min",
            "break: [10 min, 10 min at 20:00]\nwashing up: 15 min\npace: { mix: 1.5 }",
        ] {
            assert_eq!(names(sound), [""; 0], "{sound}");
        }
    }

    #[test]
    fn what_does_not_is_named() {
        for (wrong, name) in [
            ("late: { pair 3: 20 min }", "class-besides"),
            ("late: { pair 1: 4 h }", "class-besides"),
            ("break: 15 min at 22:00", "class-besides"),
            ("break: 30 min between 20:45 and 22:00", "class-besides"),
            ("arrival: 2 h\nwashing up: 1 h", "class-besides"),
            ("pace: { mixx: 2 }", "unknown-step"),
            ("pace: { bake: 2 }", "unknown-step"),
            ("talk: 5 min before mixx", "unknown-step"),
        ] {
            assert_eq!(names(wrong), [name], "{wrong}");
        }
    }
}
