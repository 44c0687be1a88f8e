//! Reading with no connection: the worker that keeps the site on a phone, and the page's
//! card for its home screen. Only where the course asks for it.

use std::collections::BTreeMap;

use serde_json::json;
use sha2::{Digest, Sha256};

use crate::encode::hex;

use super::{EditionFiles, Input, Lacking, Page};

/// The worker; at the root, since it may only keep what stands beside and below it.
pub const WORKER: &str = "offline.js";
/// The card for the home screen.
pub(super) const CARD: &str = "assets/course.webmanifest";
/// Sizes of the icon in pixels, as home screens want them.
pub const ICONS: [u32; 2] = [192, 512];

/// Whether a file of the site is kept before anybody asks for it: every page and asset.
pub(super) fn is_kept(path: &str) -> bool {
    path != CARD && !path.ends_with(".xml")
}

/// The worker for exactly these pages and assets: the hash of each, then the theme's
/// script. Pictures are kept when they are first seen, known by the picture that they are
/// made from.
///
/// # Errors
/// The reason, where one of the files is not there.
pub(super) fn worker(
    input: &Input,
    paths: &[String],
    files: &dyn EditionFiles,
) -> Result<Vec<u8>, Lacking> {
    let mut hashes: BTreeMap<&str, String> = BTreeMap::new();
    for path in paths {
        hashes.insert(path, hash(&files.file(path)?));
    }
    let seen: BTreeMap<String, &str> = input
        .media
        .iter()
        .flat_map(|one| {
            one.widths().into_iter().map(|width| (one.address(width), &*one.hash))
        })
        .collect();
    let edition = hash(json!([hashes, seen]).to_string().as_bytes());
    let script = input.theme.text("site/offline.js");
    let (files, seen) = (json!(hashes), json!(seen));
    let head = format!(
        "const edition = \"{edition}\";\nconst files = {files};\nconst seen = {seen};\n"
    );
    Ok((head + script).into_bytes())
}

/// The card for a home screen.
pub(super) fn card(input: &Input) -> Page {
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
    hex(&Sha256::digest(bytes))
}
