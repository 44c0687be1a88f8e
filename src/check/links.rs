//! Links between the texts lead somewhere, and only to pages or the open web.

use crate::fault::{Fault, Placed, nearest};
use crate::model::Content;
use crate::said;

/// Where a text stands below the content folder, or in a translation as if it did.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Folder {
    /// At its top.
    Top,
    /// Among the recipes.
    Recipes,
    /// Among the techniques.
    Techniques,
}

impl Folder {
    fn name(self) -> &'static str {
        match self {
            Self::Top => "",
            Self::Recipes => "recipes",
            Self::Techniques => "techniques",
        }
    }

    fn named(name: &str) -> Option<Self> {
        let below = [Self::Recipes, Self::Techniques];
        below.into_iter().find(|folder| folder.name() == name)
    }
}

/// Links to files that do not exist, and links of kinds that are not let through.
pub(super) fn links(content: &Content) -> Vec<Fault> {
    let recipes = content.recipes.iter().map(|recipe| (Folder::Recipes, &recipe.links));
    let techniques =
        content.techniques.iter().map(|one| (Folder::Techniques, &one.links));
    let news = content.course.iter().flat_map(|course| &course.news);
    let news = news.map(|news| (Folder::Top, &news.links));
    let words = content.glossary.iter().map(|entry| (Folder::Top, &entry.links));
    // A translation names other files as if the originals stood beside it.
    let texts = content.translations.iter().flat_map(|it| {
        let recipes = it.recipes.iter().map(|one| (Folder::Recipes, &one.links));
        let techniques = it.techniques.iter().map(|one| (Folder::Techniques, &one.links));
        recipes
            .chain(techniques)
            .chain(it.glossary.iter().map(|one| (Folder::Top, &one.links)))
    });
    let all = recipes.chain(techniques).chain(news).chain(words).chain(texts);
    let all = all.flat_map(|(folder, links)| links.iter().map(move |to| (folder, to)));
    all.filter(|(folder, to)| !leads_somewhere(&to.value, *folder, content))
        .map(|(folder, to)| fault(to, folder, content))
        .collect()
}

fn fault(to: &Placed<String>, folder: Folder, content: &Content) -> Fault {
    let message = said!("bad-link", link = to.value);
    let near = near(&to.value, folder, content);
    Fault::error("bad-link", &to.place, message)
        .meant(&to.value, near.as_deref(), || said!("bad-link-help"))
}

/// The nearest way to a file here.
fn near(to: &str, folder: Folder, content: &Content) -> Option<String> {
    let recipes = content.recipes.iter().map(|recipe| (Folder::Recipes, &recipe.name));
    let techniques = content.techniques.iter().map(|one| (Folder::Techniques, &one.name));
    let ways = recipes.chain(techniques).map(|(of, name)| match folder {
        Folder::Top => format!("{}/{name}.md", of.name()),
        Folder::Recipes | Folder::Techniques if folder == of => format!("{name}.md"),
        Folder::Recipes | Folder::Techniques => format!("../{}/{name}.md", of.name()),
    });
    let ways: Vec<String> = ways.collect();
    nearest(to, ways.iter().map(String::as_str)).map(str::to_owned)
}

fn leads_somewhere(to: &str, folder: Folder, content: &Content) -> bool {
    if ["https://", "http://", "mailto:"].iter().any(|scheme| to.starts_with(scheme)) {
        return true;
    }
    let Some(path) = to.strip_suffix(".md") else { return false };
    let path = path.trim_start_matches("./");
    // Files at the top of the folder name the others from there.
    let from_top = match folder {
        Folder::Top => Some(path),
        Folder::Recipes | Folder::Techniques => path.strip_prefix("../"),
    };
    let (target, name) = match from_top.and_then(|path| path.split_once('/')) {
        Some((named, name)) => (Folder::named(named), name),
        None => (Some(folder), path),
    };
    if content.is_unread(name) {
        return true;
    }
    match target {
        Some(Folder::Recipes) => content.recipes.iter().any(|recipe| recipe.name == name),
        Some(Folder::Techniques) => content.techniques.iter().any(|it| it.name == name),
        Some(Folder::Top) | None => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_known_ways_lead_somewhere() {
        let content = Content::default();
        assert!(leads_somewhere("https://example.org", Folder::Recipes, &content));
        for to in
            ["javascript:x", "../techniques/none.md", "/etc/passwd", "data:x", "a.md"]
        {
            assert!(!leads_somewhere(to, Folder::Recipes, &content), "{to}");
        }
    }
}
