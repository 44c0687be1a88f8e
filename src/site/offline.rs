//! Reading with no connection: the worker that keeps the site on a phone, and the page's
//! card for its home screen. Only where the course asks for it.

use std::collections::BTreeMap;

use serde_json::json;
use sha2::{Digest, Sha256};

use super::{Input, Page};

/// The worker; at the root, since it may only keep what stands beside and below it.
pub(super) const WORKER: &str = "offline.js";
/// The card for the home screen.
pub(super) const CARD: &str = "assets/course.webmanifest";
/// Sizes of the icon in pixels, as home screens want them.
pub const ICONS: [u32; 2] = [192, 512];

/// The worker for exactly these pages, and the card; nothing where the course has not
/// asked for them.
pub(super) fn files(input: &Input, pages: &[Page]) -> Vec<Page> {
    if !input.course.offline {
        return Vec::new();
    }
    vec![worker(input, pages), card(input)]
}

/// The worker: the exact hash of every page and asset, then the theme's script. Pictures
/// are kept when they are first seen, known by the picture that they are made from.
fn worker(input: &Input, pages: &[Page]) -> Page {
    let kept = pages.iter().filter(|page| !page.path.ends_with(".xml"));
    let files: BTreeMap<&str, String> =
        kept.map(|page| (page.path.as_str(), hash(&page.bytes))).collect();
    let seen: BTreeMap<String, &str> = input
        .media
        .iter()
        .flat_map(|one| {
            one.widths().into_iter().map(|width| (one.address(width), &*one.hash))
        })
        .collect();
    let edition = hash(json!([files, seen]).to_string().as_bytes());
    let script = input.theme.text("site/offline.js");
    let (files, seen) = (json!(files), json!(seen));
    let head = format!(
        "const edition = \"{edition}\";\nconst files = {files};\nconst seen = {seen};\n"
    );
    Page::text(WORKER, head + script)
}

fn card(input: &Input) -> Page {
    let icon = |size: u32| {
        json!({
            "src": format!("icon-{size}.png"),
            "sizes": format!("{size}x{size}"),
            "type": "image/png",
        })
    };
    let course = input.course;
    let card = json!({
        "name": course.title,
        "short_name": course.title,
        "description": course.summary,
        "lang": course.language,
        "id": "../",
        "start_url": "../index.html",
        "scope": "../",
        "display": "standalone",
        "background_color": "#fbf8f1",
        "theme_color": "#2f6b62",
        "icons": ICONS.map(icon),
    });
    Page::text(CARD, format!("{card}\n"))
}

fn hash(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}
