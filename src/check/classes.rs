//! Classes name recipes and steps that exist, and sessions that can be held.

use crate::fault::{Fault, Place, Placed, Severity, nearest};
use crate::formula::Book;
use crate::model::{
    Class, Content, Each, KitKind, Location, Makes, Much, Recipe, Standing, Step,
    included,
};
use crate::said;

use super::besides;

/// A session longer than this is long; one of more than the second number is a slip of the
/// pen, as `21:00 to 18:00` is.
const LONG_HOURS: (i64, i64) = (14, 18);
/// Places whose trays a class may count whatever its recipes say.
const SHELVES: [Standing; 4] =
    [Standing::Fridge, Standing::Freezer, Standing::Proofer, Standing::Rack];
/// Other words for kit that the plan knows by a name of its own.
const BY_NAMES: [(&str, &str); 5] = [
    ("teacher", "instructor"),
    ("tutor", "instructor"),
    ("trainer", "instructor"),
    ("tray in oven", "tray per oven"),
    ("oven tray", "tray per oven"),
];

/// Every rule about every class.
pub(super) fn classes(content: &Content) -> Vec<Fault> {
    let rules: [fn(&Class, &Content) -> Vec<Fault>; 9] = [
        empty,
        recipes,
        sessions,
        demonstrations,
        kit,
        ovens,
        instructors,
        names,
        besides::besides,
    ];
    content
        .classes
        .iter()
        .flat_map(|class| rules.iter().flat_map(move |rule| rule(class, content)))
        .collect()
}

/// What stands on the shelf is something that the pantry knows, and that is bought.
pub(super) fn shelves(book: Book) -> Vec<Fault> {
    let classes = book.content.classes.iter();
    let names = classes.flat_map(|class| &class.shelf).map(|(name, _)| name);
    let unknown = names.filter(|name| book.pantry.find(&name.value).is_none());
    unknown.map(|name| book.pantry.unknown(name)).collect()
}

/// A class makes something, some time.
fn empty(class: &Class, _: &Content) -> Vec<Fault> {
    let place = &class.title.place;
    let mut faults = Vec::new();
    if class.makes.is_empty() {
        let fault = Fault::error("class-empty", place, said!("class-makes-nothing"));
        faults.push(fault.help(said!("class-makes-nothing-help")));
    }
    if class.sessions.is_empty() {
        let fault = Fault::error("class-empty", place, said!("class-never-held"));
        let example = said!("class-never-held-help");
        faults.push(fault.help(example));
    }
    faults
}

/// Recipes that are there, made in a way that they can be.
fn recipes(class: &Class, content: &Content) -> Vec<Fault> {
    let known: Vec<&str> =
        content.recipes.iter().map(|recipe| recipe.name.as_str()).collect();
    let mut faults = Vec::new();
    for making in &class.makes {
        let name = &making.recipe.value;
        let Some(recipe) = content.recipe(name) else {
            if content.is_unread(name) {
                continue;
            }
            let file = format!("recipes/{name}.md");
            let message = said!("missing-file", file);
            let fault = Fault::error("missing-file", &making.recipe.place, message);
            faults.push(fault.one_of(name, &known, said!("names-recipes")));
            continue;
        };
        let by_weight = matches!(
            recipe.makes.as_ref().map(|makes| &makes.value),
            Some(Makes::Weight(_))
        );
        if by_weight && matches!(making.much, Much::Pieces(_)) {
            let message = said!("class-pieces", name);
            let fault = Fault::error("class-pieces", &making.recipe.place, message);
            faults.push(fault.help(said!("class-pieces-help")));
        }
    }
    faults
}

/// Sessions that do not overlap and are not endless.
fn sessions(class: &Class, _: &Content) -> Vec<Fault> {
    let mut faults = Vec::new();
    for (one, next) in class.sessions.iter().zip(class.sessions.iter().skip(1)) {
        if next.value.from < one.value.to {
            let message = said!("session-overlap");
            let fault = Fault::error("session-overlap", &next.place, message);
            faults.push(fault.help(said!("session-overlap-help")));
        }
    }
    for session in &class.sessions {
        let lasts = session.value.to.duration_since(session.value.from).as_hours();
        let (long, slip) = LONG_HOURS;
        if lasts > long {
            let message = said!("long-session", hours = lasts);
            let place = &session.place;
            let severity = if lasts > slip { Severity::Error } else { Severity::Caution };
            let fault = Fault::new("long-session", severity, place, message);
            faults.push(fault.help(said!("long-session-help")));
        }
    }
    faults
}

/// The recipes of a class and all that they include; `None` where not all of them, or not
/// all of the class itself, could be read.
fn all_recipes<'a>(class: &Class, content: &'a Content) -> Option<Vec<&'a Recipe>> {
    let mut found: Vec<&Recipe> = Vec::new();
    let mut open: Vec<&str> =
        class.makes.iter().map(|making| making.recipe.value.as_str()).collect();
    while let Some(name) = open.pop() {
        let recipe = content.recipe(name).filter(|recipe| !recipe.unread.method)?;
        if !found.iter().any(|known| known.name == recipe.name) {
            found.push(recipe);
            open.extend(included(recipe).map(|(name, _)| name));
        }
    }
    (!class.unread).then_some(found)
}

/// All steps of a class; none where they are not all known.
pub(super) fn steps<'a>(class: &Class, content: &'a Content) -> Vec<&'a Step> {
    let recipes = all_recipes(class, content).unwrap_or_default();
    recipes.into_iter().flat_map(Recipe::steps).collect()
}

/// Steps that are shown are steps of what is made.
fn demonstrations(class: &Class, content: &Content) -> Vec<Fault> {
    let steps = steps(class, content);
    let mut faults = Vec::new();
    for name in &class.demonstrate {
        faults.extend(step_fault(name, &steps));
    }
    faults
}

/// What is wrong with a step's name in a class; nothing where its steps are not all known.
pub(super) fn step_fault(name: &Placed<String>, steps: &[&Step]) -> Option<Fault> {
    if steps.is_empty() {
        return None;
    }
    let mut own = steps.iter().filter(|step| step.name == name.value).peekable();
    if own.peek().is_some() {
        let idle = own.all(|step| step.hands.is_none());
        let message = said!("step-without-hands", step = name.value);
        let fault = Fault::error("unknown-step", &name.place, message);
        return idle.then(|| fault.help(said!("step-without-hands-help")));
    }
    let message = said!("unknown-class-step", step = name.value);
    let near = nearest(&name.value, steps.iter().map(|step| step.name.as_str()));
    let fault = Fault::error("unknown-step", &name.place, message);
    Some(fault.meant(&name.value, near, || said!("unknown-class-step-help")))
}

/// What a class's recipes need of its kit, and the most at once.
fn needed<'a>(class: &Class, content: &'a Content) -> Vec<(&'a KitKind, u32)> {
    let mut needed: Vec<(&KitKind, u32)> = Vec::new();
    for used in steps(class, content).into_iter().flat_map(|step| &step.kit) {
        match needed.iter_mut().find(|(known, _)| **known == used.kind) {
            Some((_, most)) => *most = (*most).max(used.count),
            None => needed.push((&used.kind, used.count)),
        }
    }
    needed
}

/// Kit on tickets that the class does not have.
fn kit(class: &Class, content: &Content) -> Vec<Fault> {
    let mut faults = Vec::new();
    let place = &class.title.place;
    for (kind, count) in needed(class, content) {
        if *kind == KitKind::Instructor {
            continue;
        }
        let name = kind.name();
        match class.count(kind) {
            Some(have) if have >= count => {}
            Some(have) => {
                let message = said!("class-kit-short", count, name, have);
                let place = entry(class, kind).unwrap_or(place);
                let fault = Fault::error("class-kit", place, message);
                faults.push(fault.help(said!("class-kit-short-help")));
            }
            None => {
                let message = said!("class-kit-none", name);
                faults.push(
                    Fault::caution("class-kit", place, message)
                        .help(said!("class-kit-none-help", name)),
                );
            }
        }
    }
    let waits = steps(class, content);
    for (name, count) in &class.kit {
        let Some(place) = name.value.place().filter(|_| *count == 0) else { continue };
        let stands = |step: &&Step| {
            step.stands().iter().any(|stand| stand.place.as_ref() == Some(place))
        };
        if waits.iter().any(stands) {
            let message = said!("class-kit-no-place", place = place.standing.name());
            let fault = Fault::error("class-kit", &name.place, message);
            faults.push(fault.help(said!("class-kit-no-place-help")));
        }
    }
    faults
}

/// Where the class says how many there are.
fn entry<'a>(class: &'a Class, kind: &KitKind) -> Option<&'a Place> {
    class.kit.iter().find(|(known, _)| known.value == *kind).map(|(name, _)| &name.place)
}

/// Bakes need ovens.
fn ovens(class: &Class, content: &Content) -> Vec<Fault> {
    if !steps(class, content).iter().any(|step| step.bake.is_some()) {
        return Vec::new();
    }
    let none = [KitKind::Oven, KitKind::TrayPerOven].into_iter();
    let mut none = none.filter(|kind| class.count(kind) == Some(0));
    if let Some(kind) = none.next() {
        let place = entry(class, &kind).unwrap_or(&class.title.place);
        let message = said!("class-kit-no-oven", name = kind.name());
        let fault = Fault::error("class-kit", place, message);
        return vec![fault.help(said!("class-kit-no-oven-help"))];
    }
    if class.count(&KitKind::Oven).is_some() {
        return Vec::new();
    }
    let message = said!("class-kit-oven-unlisted");
    vec![
        Fault::caution("class-kit", &class.title.place, message)
            .help(said!("class-kit-no-oven-help")),
    ]
}

/// What an instructor does needs one.
fn instructors(class: &Class, content: &Content) -> Vec<Fault> {
    let needed = needed(class, content);
    let on_tickets = needed.iter().find(|(kind, _)| **kind == KitKind::Instructor);
    let shows = !class.demonstrate.is_empty()
        || class.makes.iter().any(|making| making.each == Each::Demonstration);
    let least = on_tickets.map_or(0, |(_, count)| *count).max(u32::from(shows));
    let have = class.count(&KitKind::Instructor).unwrap_or(1);
    if have >= least {
        return Vec::new();
    }
    let place = entry(class, &KitKind::Instructor).unwrap_or(&class.title.place);
    let message = said!("class-kit-instructor", least, have);
    let fault = Fault::error("class-kit", place, message);
    vec![fault.help(said!("class-kit-instructor-help", least))]
}

/// Kit of which nobody knows what it is: the plan would share out nothing of it.
fn names(class: &Class, content: &Content) -> Vec<Fault> {
    // What a recipe that does not read would have needed is not known.
    if !content.unread.is_empty() {
        return Vec::new();
    }
    let all: Vec<&Step> = content.recipes.iter().flat_map(Recipe::steps).collect();
    let kit = all.iter().flat_map(|step| &step.kit);
    let mut known: Vec<KitKind> = kit.map(|used| used.kind.clone()).collect();
    let places = all.iter().flat_map(|step| {
        let hold = step.hold.as_ref().and_then(|hold| hold.value.at_place.clone());
        let thaw = step.hold.as_ref().and_then(|hold| hold.value.thaw.as_ref());
        let hold = hold.into_iter().chain(thaw.map(|thaw| thaw.place.clone()));
        let proof = step.proof.iter().filter_map(|phase| phase.place.clone());
        let place = step.at_place.iter().map(|place| place.value.clone());
        place.chain(proof).chain(hold)
    });
    known.extend(places.map(KitKind::Trays));
    known.extend(KitKind::COUNTED);
    let shelf = |standing: Standing| KitKind::Trays(Location { standing, written: None });
    known.extend(SHELVES.map(shelf));
    let words: Vec<String> = known.iter().map(KitKind::name).collect();
    let named = class.kit.iter().map(|(name, _)| name);
    let named = named.chain(class.changeover.kit.iter().map(|(name, _)| name));
    let unknown = named.filter(|name| !known.contains(&name.value));
    let fault = |name: &Placed<KitKind>| {
        let word = name.value.name();
        let message = said!("class-kit-unknown", name = word);
        let meant = BY_NAMES.iter().find(|(known, _)| *known == word);
        let near = meant
            .map(|(_, meant)| *meant)
            .or_else(|| nearest(&word, words.iter().map(String::as_str)));
        match near {
            Some(near) => Fault::error("class-kit", &name.place, message)
                .help(said!("did-you-mean", near)),
            None => Fault::caution("class-kit", &name.place, message)
                .help(said!("class-kit-unknown-help")),
        }
    };
    unknown.map(fault).collect()
}

#[cfg(test)]
mod tests {
    use crate::read::{Source, content};

    const RECIPE: &str = "---\ntitle: T\nsummary: s\nmakes: 12 buns\nformula:\n  dough:\n    - 600 g bread flour\n---\n## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\nhands: 5 min\n~~~\n## Bake\n~~~ticket\nbake: 190 °C, 20 min\n~~~\n";
    const CLASS: &str = "title: C\nsessions:\n  - 2027-03-02 18:00 to 21:00\n  - 2027-03-03 18:00 to 21:00\nbakers: 4\nmakes:\n  - recipe: t\n    each: pair\n    pieces: 12\nkit: { mixer: 1, oven: 1 }\ndemonstrate: [mix]\n";

    fn names(from: &str, to: &str) -> Vec<&'static str> {
        let source =
            |path: &str, text: &str| Source { path: path.into(), text: text.into() };
        let files = [
            source("course.yaml", "title: c\n"),
            source("recipes/t.md", RECIPE),
            source("classes/c.yaml", &CLASS.replace(from, to)),
        ];
        let (content, _, faults) = content(&files);
        assert_eq!(faults, []);
        super::classes(&content).iter().map(|fault| fault.name).collect()
    }

    #[test]
    fn each_rule_finds_its_fault() {
        assert!(names("", "").is_empty());
        assert_eq!(names("recipe: t", "recipe: u"), ["missing-file"]);
        assert_eq!(names("03 18:00", "02 20:00"), ["session-overlap"]);
        assert_eq!(names("[mix]", "[mixx]"), ["unknown-step"]);
        assert_eq!(names("mixer: 1, ", ""), ["class-kit"]);
        assert_eq!(names("mixer: 1", "mixer: 0"), ["class-kit"]);
        assert!(names("mixer: 1", "mixers: 1").is_empty());
        assert_eq!(names("mixer: 1", "mixer: 1, teacher: 2"), ["class-kit"]);
        assert_eq!(names("mixer: 1", "mixer: 1, instructor: 0"), ["class-kit"]);
        assert_eq!(names("oven: 1", "oven: 1, tray per oven: 0"), ["class-kit"]);
        assert_eq!(
            names("18:00 to 21:00\n  - 2027-03-03", "21:00 to 18:00\n  - 2027-03-04"),
            ["long-session"]
        );
        assert_eq!(names("[mix]", "[bake]"), ["unknown-step"]);
        assert_eq!(names(", oven: 1", ""), ["class-kit"]);
    }

    #[test]
    fn a_dough_by_weight_has_no_pieces() {
        let recipe = RECIPE.replace("makes: 12 buns", "makes: 900 g");
        let source =
            |path: &str, text: &str| Source { path: path.into(), text: text.into() };
        let files = [source("recipes/t.md", &recipe), source("classes/c.yaml", CLASS)];
        let faults = super::classes(&content(&files).0);
        assert_eq!(
            faults.iter().map(|fault| fault.name).collect::<Vec<_>>(),
            ["class-pieces"]
        );
    }
}
