//! Pictures that the instructor took: what is known of each from its head, and the sizes
//! in which a page offers it.
//!
//! Only what cameras and phones write is read. A picture is decoded within a bound on its
//! size, its colours become those of sRGB, and what the camera noted about place and time is
//! left behind.

mod colours;
mod entropy;
mod grey;
mod resize;
mod unshown;
mod whole;

pub use grey::spread;
pub use resize::resized;
pub use unshown::Unshown;

use std::io::Cursor;
use std::sync::Arc;

use image::{ImageDecoder, ImageFormat, ImageReader};
use sha2::{Digest, Sha256};

use crate::encode::hex;
use crate::fault::{Fault, Place};
use crate::said;

/// The widths that pages offer, in pixels: a phone, a sharp phone, a wide page.
const WIDTHS: [u32; 3] = [480, 960, 1600];
/// A picture of more pixels than this is refused.
const MOST_PIXELS: u64 = 60_000_000;

/// A picture of the media folder.
#[derive(Clone, Debug)]
pub struct Medium {
    /// The file's name.
    pub name: String,
    /// Width in pixels, as it is looked at.
    pub width: u32,
    /// Height in pixels, as it is looked at.
    pub height: u32,
    /// Stands for the bytes.
    pub hash: String,
    /// The file.
    pub bytes: Arc<[u8]>,
}

impl Medium {
    /// Reads the head of the picture `name`.
    ///
    /// # Errors
    /// The fault where it is no picture that can be shown.
    pub fn read(name: &str, bytes: Vec<u8>) -> Result<Self, Fault> {
        let (width, height) = size(&bytes).ok_or_else(|| unreadable(name))?;
        if u64::from(width) * u64::from(height) > MOST_PIXELS {
            return Err(too_large(name));
        }
        if !format(&bytes).is_some_and(|format| whole::is_whole(&bytes, format)) {
            return Err(broken(name));
        }
        let hash = hex(&Sha256::digest(&bytes));
        Ok(Self { name: name.to_owned(), width, height, hash, bytes: bytes.into() })
    }

    /// The widths in which it is offered, smallest first: never wider than it is.
    pub fn widths(&self) -> Vec<u32> {
        let mut widths: Vec<u32> =
            WIDTHS.into_iter().filter(|width| *width < self.width).collect();
        if widths.len() < WIDTHS.len() {
            widths.push(self.width);
        }
        widths
    }

    /// The height that belongs to a width, rounded, at least 1.
    pub fn height_at(&self, width: u32) -> u32 {
        let (own, wide) = (u64::from(self.width.max(1)), u64::from(width));
        let height = (u64::from(self.height) * wide + own / 2) / own;
        u32::try_from(height.max(1)).unwrap_or(u32::MAX)
    }

    /// Where it stands in the site at a width, from its root.
    pub fn address(&self, width: u32) -> String {
        let (stem, ending) = self.name.rsplit_once('.').unwrap_or((&self.name, ""));
        format!("media/{stem}-{width}.{ending}")
    }
}

/// Whether a name is one that a picture may have: a plain file name with a known ending,
/// so that it leads nowhere but into the media folder.
pub fn is_name(name: &str) -> bool {
    let plain = |sign: char| sign.is_ascii_alphanumeric() || "-_.".contains(sign);
    let ending = name.rsplit_once('.').map(|(_, ending)| ending.to_lowercase());
    let known = matches!(ending.as_deref(), Some("jpg" | "jpeg" | "png"));
    known && !name.starts_with('.') && name.chars().all(plain)
}

/// Which of the two kinds the bytes are, whatever the file's name says.
fn format(bytes: &[u8]) -> Option<ImageFormat> {
    let format = image::guess_format(bytes).ok()?;
    matches!(format, ImageFormat::Jpeg | ImageFormat::Png).then_some(format)
}

fn decoder(bytes: &[u8]) -> Option<impl ImageDecoder + '_> {
    ImageReader::with_format(Cursor::new(bytes), format(bytes)?).into_decoder().ok()
}

/// Width and height as a viewer turns the picture.
fn size(bytes: &[u8]) -> Option<(u32, u32)> {
    use image::metadata::Orientation::{
        Rotate90, Rotate90FlipH, Rotate270, Rotate270FlipH,
    };
    let mut decoder = decoder(bytes)?;
    let (width, height) = decoder.dimensions();
    let lies = matches!(
        decoder.orientation(),
        Ok(Rotate90 | Rotate270 | Rotate90FlipH | Rotate270FlipH)
    );
    (width > 0 && height > 0).then_some(if lies {
        (height, width)
    } else {
        (width, height)
    })
}

fn unreadable(name: &str) -> Fault {
    let message = said!("unreadable-picture");
    Fault::error("unreadable-picture", &Place::file(&format!("media/{name}")), message)
        .help(said!("unreadable-picture-help"))
}

fn broken(name: &str) -> Fault {
    let message = said!("broken-picture");
    Fault::error("unreadable-picture", &Place::file(&format!("media/{name}")), message)
        .help(said!("broken-picture-help"))
}

fn too_large(name: &str) -> Fault {
    let message = said!("picture-too-large");
    Fault::error("unreadable-picture", &Place::file(&format!("media/{name}")), message)
        .help(said!("picture-smaller-help"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A picture of one colour as a PNG file.
    fn png(width: u32, height: u32) -> Vec<u8> {
        let mut bytes = Cursor::new(Vec::new());
        let picture =
            image::RgbImage::from_pixel(width, height, image::Rgb([200, 120, 40]));
        picture.write_to(&mut bytes, ImageFormat::Png).expect("a PNG is written");
        bytes.into_inner()
    }

    #[test]
    fn a_picture_is_offered_no_wider_than_it_is() {
        let medium = Medium::read("loaf.png", png(1000, 500)).expect("a picture");
        assert_eq!((medium.width, medium.height), (1000, 500));
        assert_eq!(medium.widths(), [480, 960, 1000]);
        assert_eq!(medium.height_at(480), 240);
        assert_eq!(medium.address(480), "media/loaf-480.png");
        let small = Medium::read("a.png", png(20, 10)).expect("a picture");
        assert_eq!(small.widths(), [20]);
        let wide = Medium::read("b.png", png(2000, 10)).expect("a picture");
        assert_eq!(wide.widths(), [480, 960, 1600]);
    }

    #[test]
    fn a_resized_picture_has_the_size_it_was_asked_for() {
        let medium = Medium::read("loaf.png", png(1000, 500)).expect("a picture");
        let bytes = resized(&medium, 480).expect("resized");
        assert_eq!(size(&bytes), Some((480, 240)));
        assert_eq!(bytes, resized(&medium, 480).expect("the same again"));
    }

    #[test]
    fn what_is_no_picture_is_refused() {
        for bytes in [&b""[..], b"\xff\xd8\xff", b"<svg/>", b"GIF89a", &png(9, 9)[..30]] {
            assert!(Medium::read("a.png", bytes.to_vec()).is_err(), "{bytes:?}");
        }
    }

    #[test]
    fn names_lead_into_the_media_folder_only() {
        assert!(is_name("roll-up.jpg") && is_name("A_1.PNG"));
        for name in
            ["../a.jpg", "a/b.png", "a.svg", ".a.jpg", "a b.jpg", "", "jpg", "a\\.jpg"]
        {
            assert!(!is_name(name), "{name}");
        }
    }
}
