//! Links between the texts lead somewhere, and only to pages or the open web.

use crate::fault::{Fault, Place};
use crate::model::{Block, Brace, Content, Inline};

/// Links to files that do not exist, and links of kinds that are not let through.
pub(super) fn links(content: &Content) -> Vec<Fault> {
    let mut faults = Vec::new();
    for recipe in &content.recipes {
        for block in recipe.blocks() {
            check(block, "recipes", &recipe.place, content, &mut faults);
        }
    }
    for technique in &content.techniques {
        for block in &technique.content {
            check(block, "techniques", &technique.place, content, &mut faults);
        }
    }
    faults
}

fn check(
    block: &Block<Brace>,
    folder: &str,
    file: &Place,
    content: &Content,
    faults: &mut Vec<Fault>,
) {
    block.visit(&mut |inline| {
        if let Inline::Link { to, .. } = inline
            && !leads_somewhere(to, folder, content)
        {
            let message = format!("the link to `{to}` leads nowhere");
            faults.push(Fault::error("bad-link", &file.part(0, 0), message).help(
                "Link to a file here (`../techniques/letter-turn.md`) or to an address \
                 beginning with https:, http: or mailto:.",
            ));
        }
    });
}

fn leads_somewhere(to: &str, folder: &str, content: &Content) -> bool {
    if ["https://", "http://", "mailto:"].iter().any(|scheme| to.starts_with(scheme)) {
        return true;
    }
    let Some(path) = to.strip_suffix(".md") else { return false };
    let (target, name) =
        match path.strip_prefix("../").and_then(|path| path.split_once('/')) {
            Some((target, name)) => (target, name),
            None => (folder, path.trim_start_matches("./")),
        };
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
