//! Links between the texts lead somewhere, and only to pages or the open web.

use crate::fault::{Fault, Placed, nearest};
use crate::model::Content;
use crate::said;

/// Links to files that do not exist, and links of kinds that are not let through.
pub(super) fn links(content: &Content) -> Vec<Fault> {
    let recipes = content.recipes.iter().map(|recipe| ("recipes", &recipe.links));
    let techniques = content.techniques.iter().map(|one| ("techniques", &one.links));
    let news = content.course.iter().flat_map(|course| &course.news);
    let news = news.map(|news| ("", &news.links));
    let words = content.glossary.iter().map(|entry| ("", &entry.links));
    let all = recipes.chain(techniques).chain(news).chain(words);
    let all = all.flat_map(|(folder, links)| links.iter().map(move |to| (folder, to)));
    all.filter(|(folder, to)| !leads_somewhere(&to.value, folder, content))
        .map(|(folder, to)| fault(to, folder, content))
        .collect()
}

fn fault(to: &Placed<String>, folder: &str, content: &Content) -> Fault {
    let message = said!("bad-link", link = to.value);
    let help = near(&to.value, folder, content)
        .map_or_else(|| said!("bad-link-help"), |near| said!("did-you-mean", near));
    Fault::error("bad-link", &to.place, message).help(help)
}

/// The nearest way to a file here.
fn near(to: &str, folder: &str, content: &Content) -> Option<String> {
    let recipes = content.recipes.iter().map(|recipe| ("recipes", &recipe.name));
    let techniques = content.techniques.iter().map(|one| ("techniques", &one.name));
    let ways = recipes.chain(techniques).map(|(of, name)| match folder {
        "" => format!("{of}/{name}.md"),
        folder if folder == of => format!("{name}.md"),
        _ => format!("../{of}/{name}.md"),
    });
    let ways: Vec<String> = ways.collect();
    nearest(to, ways.iter().map(String::as_str)).map(str::to_owned)
}

fn leads_somewhere(to: &str, folder: &str, content: &Content) -> bool {
    if ["https://", "http://", "mailto:"].iter().any(|scheme| to.starts_with(scheme)) {
        return true;
    }
    let Some(path) = to.strip_suffix(".md") else { return false };
    let path = path.trim_start_matches("./");
    // Files at the top of the folder name the others from there.
    let from_top = if folder.is_empty() { Some(path) } else { path.strip_prefix("../") };
    let (target, name) =
        from_top.and_then(|path| path.split_once('/')).unwrap_or((folder, path));
    if content.is_unread(name) {
        return true;
    }
    match target {
        "recipes" => content.recipes.iter().any(|recipe| recipe.name == name),
        "techniques" => content.techniques.iter().any(|technique| technique.name == name),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_known_ways_lead_somewhere() {
        let content = Content::default();
        assert!(leads_somewhere("https://example.org", "recipes", &content));
        for to in
            ["javascript:x", "../techniques/none.md", "/etc/passwd", "data:x", "a.md"]
        {
            assert!(!leads_somewhere(to, "recipes", &content), "{to}");
        }
    }
}
