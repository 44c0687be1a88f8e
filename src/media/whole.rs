//! Whether a picture's file is whole: it has all its parts up to the one that ends it.
//! No picture is made, so that a folder of photographs is looked through in a moment.
//!
//! Damage in the middle of a PNG shows in its sums; that of a JPEG in its coded lines, which
//! are followed to their end ([`Lines`]).
//!
//! Sources: PNG (W3C, third edition), 5.3, chunk layout, and Annex D, CRC; JPEG (ITU-T
//! T.81), B.1.1, markers, and B.2, the order of segments.

use image::ImageFormat;

use super::entropy::Lines;

/// The eight bytes that a PNG begins with.
const SIGNATURE: usize = 8;

/// Whether the file is whole.
pub(super) fn is_whole(bytes: &[u8], format: ImageFormat) -> bool {
    if format == ImageFormat::Png { png(bytes) } else { jpeg(bytes) == Some(()) }
}

/// Every chunk of a PNG has the sum that it says, and the last one ends the picture.
fn png(bytes: &[u8]) -> bool {
    let mut rest = bytes.get(SIGNATURE..).unwrap_or_default();
    while let Some((body, after)) = chunk(rest) {
        if body.starts_with(b"IEND") {
            return true;
        }
        rest = after;
    }
    false
}

/// The first chunk's kind and bytes, where they have their sum, and what follows it.
fn chunk(bytes: &[u8]) -> Option<(&[u8], &[u8])> {
    let (length, rest) = bytes.split_first_chunk::<4>()?;
    let length = usize::try_from(u32::from_be_bytes(*length)).ok()?.checked_add(4)?;
    let (body, rest) = rest.split_at_checked(length)?;
    let (sum, rest) = rest.split_first_chunk::<4>()?;
    (crc32fast::hash(body).to_be_bytes() == *sum).then_some((body, rest))
}

/// Follows the segments of a JPEG to its end; `None` where they lead nowhere.
fn jpeg(bytes: &[u8]) -> Option<()> {
    let mut rest = bytes.strip_prefix(b"\xff\xd8")?;
    let mut scanned = false;
    let mut lines = Lines::default();
    loop {
        let (marker, after) = marker(rest)?;
        match marker {
            0xd9 => return scanned.then_some(()),
            0xd0..=0xd7 | 0x01 => rest = after,
            // Two ends of nothing, or a second beginning.
            0x00 | 0xd8 => return None,
            _ => {
                let length = usize::from(u16::from_be_bytes(*after.first_chunk::<2>()?));
                let (segment, next) = after.split_at_checked(length.max(2))?;
                rest = next;
                if marker == 0xda {
                    scanned = true;
                    rest = scan(next)?;
                    let coded = &next[..next.len() - rest.len()];
                    lines.come_out(&segment[2..], coded).then_some(())?;
                } else {
                    lines.take(marker, &segment[2..])?;
                }
            }
        }
    }
}

/// The marker that comes next, and what follows it.
fn marker(bytes: &[u8]) -> Option<(u8, &[u8])> {
    let rest = bytes.strip_prefix(b"\xff")?;
    let filled = rest.iter().position(|byte| *byte != 0xff)?;
    Some((*rest.get(filled)?, rest.get(filled + 1..)?))
}

/// What follows the picture's lines: the next marker that is not one within them.
fn scan(bytes: &[u8]) -> Option<&[u8]> {
    let ends =
        |pair: &[u8]| pair[0] == 0xff && !matches!(pair[1], 0x00 | 0xd0..=0xd7 | 0xff);
    bytes.get(bytes.windows(2).position(ends)?..)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A picture with some detail, so that its lines are long.
    fn picture(format: ImageFormat) -> Vec<u8> {
        let paint =
            |x: u32, y: u32| image::Rgb([(x * 7) as u8, (y * 13) as u8, (x * y) as u8]);
        let picture = image::RgbImage::from_fn(160, 90, paint);
        let mut bytes = std::io::Cursor::new(Vec::new());
        picture.write_to(&mut bytes, format).expect("a picture is written");
        bytes.into_inner()
    }

    #[test]
    fn a_picture_that_is_cut_anywhere_is_not_whole() {
        for format in [ImageFormat::Png, ImageFormat::Jpeg] {
            let bytes = picture(format);
            assert!(is_whole(&bytes, format));
            // Phones put more behind the end.
            assert!(is_whole(&[&bytes[..], b"and more"].concat(), format));
            for length in (0..bytes.len()).step_by(bytes.len() / 300) {
                assert!(
                    !is_whole(&bytes[..length], format),
                    "{format:?} cut to {length}"
                );
            }
        }
    }

    #[test]
    fn a_png_with_one_byte_changed_is_not_whole() {
        let bytes = picture(ImageFormat::Png);
        for at in (SIGNATURE..bytes.len()).step_by(7) {
            let mut bytes = bytes.clone();
            bytes[at] ^= 1;
            assert!(!is_whole(&bytes, ImageFormat::Png), "{at}");
        }
    }

    #[test]
    fn a_thumbnail_within_does_not_end_a_photograph() {
        let (bytes, small) = (picture(ImageFormat::Jpeg), picture(ImageFormat::Jpeg));
        let length = u16::try_from(small.len() + 2).expect("a small one").to_be_bytes();
        let head = [&b"\xff\xd8\xff\xe1"[..], &length[..], &small[..]].concat();
        let whole = [&head[..], &bytes[2..]].concat();
        assert!(is_whole(&whole, ImageFormat::Jpeg));
        assert!(!is_whole(&whole[..head.len() + 400], ImageFormat::Jpeg));
    }

    /// How often it is seen that a disk lost 512 bytes in the middle: nothing in their place,
    /// and zeros.
    fn seen(bytes: &[u8]) -> [usize; 2] {
        let from = bytes.len() / 5;
        let places: Vec<_> =
            (0..97).map(|place| from + place * (bytes.len() - from - 520) / 97).collect();
        [&[][..], &[0; 512][..]].map(|filling| {
            let lost = |at: &&usize| {
                let damaged = [&bytes[..**at], filling, &bytes[**at + 512..]].concat();
                !is_whole(&damaged, ImageFormat::Jpeg)
            };
            places.iter().filter(lost).count()
        })
    }

    #[test]
    fn a_photograph_damaged_in_its_middle_is_not_whole() {
        let found = seen(&picture(ImageFormat::Jpeg));
        assert_eq!(found, [97, 97]);
    }
}
