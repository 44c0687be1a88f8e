//! The course as a package for learning platforms, in the open IMS Common Cartridge
//! format, version 1.3: the pages themselves, whole without any server, in the order of
//! the lessons; and a link to each recipe's handouts where the site's address is known.
//!
//! The format's parts are named as 1EdTech publishes them: `imsmanifest.xml` at the root,
//! `webcontent` resources, `imswl_xmlv1p3` for links.

mod manifest;

use std::io::{Cursor, Write};

use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipWriter};

use crate::media::{Medium, resized};
use crate::sheet::CourseSheet;

use super::{Input, Page, TemplateFault, feed, pages, shell};

/// Where the package stands, from the site's root.
pub(super) const PACKAGE: &str = "print/course.imscc";

/// What goes into the package, before it is packed.
pub struct Cartridge {
    files: Vec<Page>,
    media: Vec<Medium>,
}

impl Cartridge {
    /// Gathers the package of a course.
    ///
    /// # Errors
    /// The first page template that cannot be filled in.
    pub fn new(input: &Input) -> Result<Self, TemplateFault> {
        // A page that a platform shows is kept there, not on a phone; handouts are many
        // and large, and classes have dates: both stay on the site.
        let course =
            CourseSheet { offline: false, classes: Vec::new(), ..input.course.clone() };
        let own = Input { course: &course, handouts: &[], ..*input };
        let mut files = pages(&own)?;
        files.retain(|page| !is_apart(&page.path));
        let manifest = manifest::Manifest::new(input, &files);
        files.splice(0..0, manifest.files());
        Ok(Self { files, media: input.media.to_vec() })
    }

    /// Where it stands, from the site's root.
    pub fn path(&self) -> &'static str {
        PACKAGE
    }

    /// Stands for its bytes.
    pub fn inputs(&self) -> Vec<&[u8]> {
        let files =
            self.files.iter().flat_map(|file| [file.path.as_bytes(), &file.bytes]);
        let media = self.media.iter();
        let media =
            media.flat_map(|medium| [medium.name.as_bytes(), medium.hash.as_bytes()]);
        files.chain(media).collect()
    }

    /// Packs it. The same content gives the same bytes.
    ///
    /// # Errors
    /// The reason, where a picture cannot be read to its end.
    pub fn pack(&self) -> Result<Vec<u8>, String> {
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        for file in &self.files {
            add(&mut zip, &file.path, &file.bytes)?;
        }
        for medium in &self.media {
            for width in medium.widths() {
                add(&mut zip, &medium.address(width), &resized(medium, width)?)?;
            }
        }
        let packed = zip.finish().map_err(|error| error.to_string())?;
        Ok(packed.into_inner())
    }
}

fn add(
    zip: &mut ZipWriter<Cursor<Vec<u8>>>,
    path: &str,
    bytes: &[u8],
) -> Result<(), String> {
    // The clock is no part of the package.
    let options = SimpleFileOptions::default()
        .compression_method(CompressionMethod::Deflated)
        .last_modified_time(DateTime::DEFAULT)
        .unix_permissions(0o644);
    zip.start_file(path, options).map_err(|error| error.to_string())?;
    zip.write_all(bytes).map_err(|error| error.to_string())
}

/// Files that mean nothing away from the site.
fn is_apart(path: &str) -> bool {
    [shell::MISSING, feed::PATH, "sitemap.xml", "print/index.html"].contains(&path)
}
