//! A class changed in one thing, to be tried.

use crate::fault::Placed;
use crate::measure::{Duration, exact};
use crate::model::{Class, Content, Each, Hold, KitKind, Part, Session};

use super::reason::Beside;

/// With so many of a kind of kit.
pub(in crate::plan) fn with_kit(class: &Class, kit: &KitKind, count: u32) -> Class {
    let mut class = class.clone();
    for (name, have) in &mut class.kit {
        if name.value == *kit {
            *have = count;
        }
    }
    class
}

/// With kit without end; who teaches and what goes into an oven stays.
pub(in crate::plan) fn without_kit(class: &Class) -> Class {
    let mut class = class.clone();
    class.kit.retain(|(kind, _)| match kind.value {
        KitKind::Instructor | KitKind::TrayPerOven => true,
        KitKind::BenchPlace
        | KitKind::Mixer
        | KitKind::Oven
        | KitKind::Trays(_)
        | KitKind::Own(..) => false,
    });
    class
}

/// With one session so many minutes longer; it does not run into the next one.
pub(in crate::plan) fn longer(class: &Class, session: usize, minutes: i32) -> Class {
    let mut class = class.clone();
    let next = class.sessions.get(session + 1).map(|next| next.value.from);
    if let Some(at) = class.sessions.get_mut(session) {
        let later = jiff::Span::new().minutes(minutes);
        let to = at.value.to.checked_add(later).unwrap_or(at.value.to);
        at.value = Session { to: next.map_or(to, |next| to.min(next)), ..at.value };
    }
    class
}

/// Without one thing that it has beside its recipes; `None` where it has none of the kind.
pub(in crate::plan) fn without_beside(class: &Class, what: Beside) -> Option<Class> {
    let mut class = class.clone();
    let besides = &mut class.besides;
    let had = match what {
        Beside::Talks => !std::mem::take(&mut besides.talks).is_empty(),
        Beside::Breaks => !std::mem::take(&mut besides.breaks).is_empty(),
        Beside::Tasting => besides.tasting.take().is_some(),
        Beside::Slack => besides.slack.take().is_some(),
    };
    had.then_some(class)
}

/// By how many minutes a session can be longer before the next one opens.
pub(in crate::plan) fn room_for(class: &Class, session: usize) -> i32 {
    let (own, next) = (class.sessions.get(session), class.sessions.get(session + 1));
    let gap = own
        .zip(next)
        .map(|(own, next)| next.value.from.duration_since(own.value.to).as_mins());
    gap.map_or(i32::MAX, |gap| i32::try_from(gap).unwrap_or(i32::MAX))
}

/// With one more session, like the last, the day after.
pub(in crate::plan) fn next_day(class: &Class) -> Option<(Class, Session)> {
    let last = class.sessions.last()?;
    let day = jiff::Span::new().days(1);
    let session = Session {
        from: last.value.from.checked_add(day).ok()?,
        to: last.value.to.checked_add(day).ok()?,
    };
    let mut class = class.clone();
    class.sessions.push(Placed::new(session, last.place.clone()));
    Some((class, session))
}

/// With so many bakers.
pub(in crate::plan) fn with_bakers(class: &Class, bakers: u32) -> Class {
    let bakers = Placed::new(bakers, class.bakers.place.clone());
    Class { bakers, ..class.clone() }
}

/// Without each of its recipes, where others are left to be made.
pub(in crate::plan) fn without(class: &Class) -> Vec<(String, Class)> {
    let mut names: Vec<&str> =
        class.makes.iter().map(|making| making.recipe.value.as_str()).collect();
    names.sort_unstable();
    names.dedup();
    let less = names.into_iter().map(|name| {
        let mut class = class.clone();
        class.makes.retain(|making| making.recipe.value != name);
        (name.to_owned(), class)
    });
    let taught = |class: &Class| {
        class.makes.iter().any(|making| making.each != Each::Demonstration)
    };
    less.filter(|(_, class)| taught(class)).collect()
}

/// The course with a hold over night at one step.
pub(in crate::plan) fn with_hold(content: &Content, recipe: &str, step: &str) -> Content {
    let mut content = content.clone();
    let recipes = content.recipes.iter_mut().filter(|found| found.name == recipe);
    for part in recipes.flat_map(|found| &mut found.parts) {
        if let Part::Step(own) = part
            && own.name == step
        {
            let up_to = Duration::minutes(exact(24 * 60, 1));
            let hold = Hold { up_to, at_place: None, thaw: None };
            own.hold = Some(Box::new(Placed::new(hold, own.place.clone())));
        }
    }
    content
}
