//! Scan codes: ISO/IEC 18004, error correction level M, drawn as SVG with the quiet zone
//! of four modules that the standard asks for.

use std::fmt::Write;

use qrcode::{Color, EcLevel, QrCode};
use serde::Serialize;

use crate::sheet::{CourseSheet, HandoutKind, Units, Watch};
use crate::words::Words;

use super::Job;
use super::chapter::steps;

/// The longest address that goes into a code of level M, in bytes: version 40 holds no more
/// (ISO/IEC 18004, table 7).
const LONGEST: usize = 2331;

/// Modules of white around the code (ISO/IEC 18004, 6.3.8).
const QUIET: usize = 4;

/// A scan code with its printed address.
#[derive(Serialize)]
pub(super) struct Code {
    title: String,
    /// The whole address, for linking.
    address: String,
    /// The address as printed beneath, in parts after which a line may break.
    short: Vec<String>,
    alt: String,
    /// What the code says. It is drawn only where the handout is made: most publishes make
    /// few of them.
    scan: String,
}

/// The code of the recipe's page; `None` where the course has no address, and on a bench
/// card, which has no room for one.
pub(super) fn page(job: &Job) -> Option<Code> {
    let address = page_address(job).filter(|_| job.kind != HandoutKind::Bench)?;
    code(job.words, job.words.get("handout-code-page").to_owned(), address)
}

/// The code of a class's page; `None` where the course has no address.
pub(super) fn class(class: &str, course: &CourseSheet, words: &Words) -> Option<Code> {
    let address = format!("{}classes/{class}/", course.address.as_deref()?);
    code(words, words.get("handout-code-class").to_owned(), address)
}

/// The code of a video.
pub(super) fn video(job: &Job, video: &Watch) -> Option<Code> {
    if job.kind == HandoutKind::Bench {
        return None;
    }
    let name = video.name.replace('-', " ");
    let title = job.words.fill("handout-code-video", &[("name", &name)]);
    let title = match &video.from {
        None => title,
        Some(from) => job.words.list(&[title, from.clone()]),
    };
    code(job.words, title, video.address.clone())
}

/// The codes of the videos that no step shows.
pub(super) fn other_videos(job: &Job) -> Vec<Code> {
    let shown = |it: &&Watch| !steps(job.sheet).any(|s| s.watch.as_ref() == Some(*it));
    let videos = job.sheet.videos.iter().filter(shown);
    videos.filter_map(|it| video(job, it)).collect()
}

/// The address of the recipe's page in the handout's units and batch.
fn page_address(job: &Job) -> Option<String> {
    let site = job.course.address.as_deref()?;
    let batch = match job.batch_key {
        "" | "x1" => String::new(),
        key => format!(",{key}"),
    };
    let units = match job.units {
        Units::Metric => "metric",
        Units::Us => "us",
    };
    let written =
        job.sheet.way.as_ref().filter(|way| !way.has_page).map(|way| &way.recipe);
    let recipe = written.unwrap_or(&job.sheet.recipe);
    Some(format!("{site}recipes/{recipe}/#{units}{batch}"))
}

/// A code; `None` where the address is too long for one.
fn code(words: &Words, title: String, address: String) -> Option<Code> {
    let short = short(&address);
    let alt = words.fill("handout-code-alt", &[("address", &short.concat())]);
    let scan = address.clone();
    (scan.len() <= LONGEST).then_some(Code { title, address, short, alt, scan })
}

/// The code that says `text`; nothing where it is too long. Remembered as the typesetter
/// remembers: a recipe's handouts on both papers show the same codes, one after the other.
#[comemo::memoize]
pub(super) fn drawn(text: &str) -> String {
    let code = QrCode::with_error_correction_level(text, EcLevel::M);
    code.map(|code| svg(&code)).unwrap_or_default()
}

/// The address as a person would type it, in parts after which a line may break.
fn short(address: &str) -> Vec<String> {
    let bare = address.split_once("://").map_or(address, |(_, rest)| rest);
    bare.split_inclusive(['/', '.', '-']).map(str::to_owned).collect()
}

/// One path, a unit square for each dark module, runs joined so that no hairline shows
/// between neighbours.
fn svg(code: &QrCode) -> String {
    let width = code.width();
    let colors = code.to_colors();
    let mut path = String::new();
    for (y, row) in colors.chunks(width).enumerate() {
        let mut x = 0;
        for run in row.chunk_by(|a, b| a == b) {
            if run[0] == Color::Dark {
                let (left, top, long) = (x + QUIET, y + QUIET, run.len());
                // Writing to a String cannot fail.
                let _ = write!(path, "M{left} {top}h{long}v1h-{long}z");
            }
            x += run.len();
        }
    }
    let side = width + 2 * QUIET;
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {side} {side}\">\
         <rect width=\"{side}\" height=\"{side}\" fill=\"#ffffff\"/>\
         <path fill=\"#000000\" shape-rendering=\"crispEdges\" d=\"{path}\"/></svg>"
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::paper::fixture::Fixture;
    use crate::sheet::Paper;

    #[test]
    fn the_quiet_zone_is_four_modules_wide() -> Result<(), qrcode::types::QrError> {
        let code = QrCode::with_error_correction_level("https://a.example/", EcLevel::M)?;
        let drawn = svg(&code);
        // A finder pattern begins at the first module: seven dark ones in a row.
        assert!(drawn.contains("d=\"M4 4h7v1h-7z"), "{drawn}");
        assert!(drawn.contains(&format!("0 0 {0} {0}", code.width() + 8)), "{drawn}");
        Ok(())
    }

    #[test]
    fn the_longest_address_still_goes_into_a_code() {
        // In capitals or figures alone more would fit; addresses have small letters too.
        let longest = format!("https://a.example/{}", "a".repeat(LONGEST - 18));
        assert!(!drawn(&longest).is_empty());
        assert!(drawn(&format!("{longest}a")).is_empty());
    }

    #[test]
    fn a_page_is_opened_in_the_units_and_batch_of_its_sheet() {
        let fixture = Fixture::new();
        let job = fixture.job(HandoutKind::Student, Units::Us, Paper::Letter);
        let page = "https://layers.saltmarsh.example/recipes/evening-crescents/#us";
        assert_eq!(page_address(&job).as_deref(), Some(page));
        let double = Job { batch_key: "x2", ..job };
        assert_eq!(page_address(&double), Some(format!("{page},x2")));
    }

    #[test]
    fn a_printed_address_leaves_out_what_nobody_types() {
        assert_eq!(short("https://a.example/b/#us").concat(), "a.example/b/#us");
    }
}
