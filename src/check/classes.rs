//! Classes name recipes and steps that exist, and sessions that can be held.

use crate::fault::{Fault, instead, nearest};
use crate::formula::included;
use crate::model::{Class, Content, Makes, Much, Recipe, Step};

/// A session longer than this is a slip of the pen.
const LONGEST_HOURS: i64 = 14;

/// Every rule about every class.
pub(super) fn classes(content: &Content) -> Vec<Fault> {
    let rules: [fn(&Class, &Content) -> Vec<Fault>; 5] =
        [recipes, sessions, demonstrations, kit, ovens];
    content
        .classes
        .iter()
        .flat_map(|class| rules.iter().flat_map(move |rule| rule(class, content)))
        .collect()
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
            let message = format!("there is no file `recipes/{name}.md`");
            let help = instead(name, &known, "Recipes here");
            faults.push(
                Fault::error("missing-file", &making.recipe.place, message).help(help),
            );
            continue;
        };
        let by_weight = matches!(
            recipe.makes.as_ref().map(|makes| &makes.value),
            Some(Makes::Weight(_))
        );
        if by_weight && matches!(making.much, Much::Pieces(_)) {
            let message = format!("`{name}` is made by weight, not in pieces");
            let fault = Fault::error("class-pieces", &making.recipe.place, message);
            faults.push(fault.help("Write `batches: 1` instead of `pieces`."));
        }
    }
    faults
}

/// Sessions that do not overlap and are not endless.
fn sessions(class: &Class, _: &Content) -> Vec<Fault> {
    let mut faults = Vec::new();
    for (one, next) in class.sessions.iter().zip(class.sessions.iter().skip(1)) {
        if next.value.from < one.value.to {
            let message = "this session begins before the one before it is over";
            let fault = Fault::error("session-overlap", &next.place, message);
            faults.push(fault.help("Give the sessions times of their own."));
        }
    }
    for session in &class.sessions {
        let lasts = session.value.to.duration_since(session.value.from).as_hours();
        if lasts > LONGEST_HOURS {
            let message = format!("this session lasts {lasts} hours");
            let fault = Fault::caution("long-session", &session.place, message);
            faults.push(
                fault.help("Write the time at which it ends, as in `18:00 to 21:00`."),
            );
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
fn steps<'a>(class: &Class, content: &'a Content) -> Vec<&'a Step> {
    let recipes = all_recipes(class, content).unwrap_or_default();
    recipes.into_iter().flat_map(Recipe::steps).collect()
}

/// Steps that are shown are steps of what is made.
fn demonstrations(class: &Class, content: &Content) -> Vec<Fault> {
    let steps = steps(class, content);
    let unknown = class.demonstrate.iter().filter(|name| {
        !steps.is_empty() && steps.iter().all(|step| step.name != name.value)
    });
    unknown
        .map(|name| {
            let message = format!("no recipe of this class has a step `{}`", name.value);
            let near = nearest(&name.value, steps.iter().map(|step| step.name.as_str()));
            let help = near.map_or_else(
                || {
                    "A step's name is its heading in small letters with dashes."
                        .to_owned()
                },
                |near| format!("Did you mean `{near}`?"),
            );
            Fault::error("unknown-step", &name.place, message).help(help)
        })
        .collect()
}

/// Kit on tickets that the class does not have.
fn kit(class: &Class, content: &Content) -> Vec<Fault> {
    let mut faults = Vec::new();
    let mut named: Vec<&str> = Vec::new();
    for (count, name) in steps(class, content).iter().flat_map(|step| &step.kit) {
        let single = name.strip_suffix('s').unwrap_or(name);
        let have = class.count(name).or_else(|| class.count(single));
        if named.contains(&single) || have.is_some_and(|have| have >= *count) {
            continue;
        }
        named.push(single);
        let place = &class.title.place;
        faults.push(match have {
            None => {
                let message =
                    format!("the recipes need a {single}, and the kit lists none");
                Fault::caution("class-kit", place, message).help(format!(
                    "Add `{single}: …` to `kit`, so that the plan can share them out."
                ))
            }
            Some(have) => {
                let message =
                    format!("a step needs {count} of {single}, and the kit has {have}");
                Fault::error("class-kit", place, message)
                    .help("Change the ticket or the kit: no plan could fit.")
            }
        });
    }
    faults
}

/// Bakes need ovens.
fn ovens(class: &Class, content: &Content) -> Vec<Fault> {
    let bakes = steps(class, content).iter().any(|step| step.bake.is_some());
    if !bakes || class.count("oven").is_some() {
        return Vec::new();
    }
    let message = "the recipes bake, and the kit lists no oven";
    vec![
        Fault::caution("class-kit", &class.title.place, message)
            .help("Add `oven: 2, tray per oven: 4` to `kit`."),
    ]
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
