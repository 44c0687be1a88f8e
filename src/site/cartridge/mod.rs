//! The course as a package for learning platforms, in the open IMS Common Cartridge
//! format, version 1.3: the pages themselves, whole without any server, in the order of
//! the lessons; and a link to each recipe's handouts where the site's address is known.
//!
//! The format's parts are named as 1EdTech publishes them: `imsmanifest.xml` at the root,
//! `webcontent` resources, `imswl_xmlv1p3` for links.

mod manifest;

use std::io::Write;

use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipArchive, ZipWriter};

use crate::media::Medium;

use super::{Card, EditionFiles, Input, Page, Unpacked, Written, feed, offline, shell};

/// Where the package stands, from the site's root.
pub const PACKAGE: &str = "print/course.imscc";

/// What stands between these in a page means nothing away from the site: what a phone keeps,
/// the way to handouts, which are many and large, and to classes, which have dates.
const APART: [&str; 2] = ["<!--site-->", "<!--/site-->"];

/// What goes into the package, before it is packed.
pub struct Cartridge {
    /// The table of contents, and the links.
    own: Vec<Page>,
    /// Files of the site.
    paths: Vec<String>,
    media: Vec<Medium>,
}

impl Cartridge {
    /// Gathers the package of a course whose site has these files, in order.
    pub(super) fn new(input: &Input, cards: &[Card], paths: &[&str]) -> Self {
        let paths = paths.iter().filter(|path| !is_apart(path));
        let paths: Vec<String> = paths.map(|path| (*path).to_owned()).collect();
        let own = manifest::Manifest::new(input, cards, &paths).files();
        Self { own, paths, media: input.media.to_vec() }
    }

    /// The files of the site that are in it.
    pub fn paths(&self) -> &[String] {
        &self.paths
    }

    /// Stands for its bytes, but for those of [`Cartridge::paths`].
    pub fn inputs(&self) -> Vec<&[u8]> {
        let own = self.own.iter().flat_map(|file| [file.path.as_bytes(), &file.bytes]);
        let media = self.media.iter();
        let media =
            media.flat_map(|medium| [medium.name.as_bytes(), medium.hash.as_bytes()]);
        own.chain(media).collect()
    }

    /// Packs it, file by file. The same content gives the same bytes. What stands as it was
    /// is taken over from the package before, packed as it is.
    ///
    /// # Errors
    /// The reason, where a file is not there or a picture cannot be read to its end.
    pub fn pack(
        &self,
        files: &dyn EditionFiles,
        to: &mut dyn Written,
    ) -> Result<(), Unpacked> {
        let before = files.before(PACKAGE);
        let mut before = before.and_then(|file| ZipArchive::new(file).ok());
        let mut zip = ZipWriter::new(to);
        for file in &self.own {
            add(&mut zip, &file.path, &file.bytes)?;
        }
        for path in &self.paths {
            let stands = files.stands(path);
            let kept = before.as_mut().filter(|_| stands);
            if let Some(kept) = kept.and_then(|before| before.by_name(path).ok()) {
                zip.raw_copy_file(kept).map_err(Unpacked::archive)?;
            } else {
                let file = files.file(path).map_err(Unpacked::File)?;
                add(&mut zip, path, &packed(path, file))?;
            }
        }
        for medium in &self.media {
            for width in medium.widths() {
                let path = medium.address(width);
                let picture = files.file(&path).map_err(Unpacked::File)?;
                add(&mut zip, &path, &picture)?;
            }
        }
        zip.finish().map_err(Unpacked::archive)?;
        Ok(())
    }
}

/// A file as it is in the package: a page without what means nothing there.
fn packed(path: &str, bytes: Vec<u8>) -> Vec<u8> {
    match String::from_utf8(bytes) {
        Ok(text) if path.ends_with(".html") => without(&text).into_bytes(),
        Ok(text) => text.into_bytes(),
        Err(bytes) => bytes.into_bytes(),
    }
}

/// A page without what stands [`APART`].
fn without(page: &str) -> String {
    let mut parts = page.split(APART[0]);
    let first = parts.next().unwrap_or_default();
    let rest = parts.map(|part| part.split_once(APART[1]).map_or("", |(_, rest)| rest));
    std::iter::once(first).chain(rest).collect()
}

fn add(
    zip: &mut ZipWriter<&mut dyn Written>,
    path: &str,
    bytes: &[u8],
) -> Result<(), Unpacked> {
    // The clock is no part of the package.
    let options = SimpleFileOptions::default()
        .compression_method(CompressionMethod::Deflated)
        .last_modified_time(DateTime::DEFAULT)
        .unix_permissions(0o644);
    zip.start_file(path, options).map_err(Unpacked::archive)?;
    zip.write_all(bytes).map_err(Unpacked::archive)
}

/// Files that mean nothing away from the site.
fn is_apart(path: &str) -> bool {
    let apart = [shell::MISSING, feed::PATH, "sitemap.xml", "print/index.html"];
    apart.contains(&path) || path == offline::CARD
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_stands_apart_is_left_out() {
        let page = "<p>a</p><!--site--><p>b</p><!--/site-->c<!--site-->d<!--/site-->";
        assert_eq!(without(page), "<p>a</p>c");
        assert_eq!(without("a<!--site-->b"), "a");
        assert_eq!(packed("a.css", page.into()), page.as_bytes());
    }
}
