//! How a picture looks from a copier that knows no colour.

use super::resize::upright;
use super::{Medium, Unshown};

/// Pixels across at which a picture is looked at: finer grain is no contrast that helps.
const ACROSS: u32 = 480;

/// The part at either end that is left out: a glint and a speck say nothing of the rest.
const OUTERMOST: f64 = 0.02;

/// How far the greys of a picture lie apart, from its darkest part to its lightest, in steps
/// of lightness from 0, one grey all over, to 100, from black to white. Lightness is L* of
/// CIE 15 (ISO/CIE 11664-4), of greys as sRGB has them (IEC 61966-2-1).
///
/// # Errors
/// The reason, where it cannot be decoded to its end.
pub fn spread(medium: &Medium) -> Result<f64, Unshown> {
    let (picture, colours) = upright(medium)?;
    let grey = colours.to_srgb(picture.thumbnail(ACROSS, ACROSS)).to_luma8();
    let mut counts = [0_u32; 256];
    for pixel in grey.pixels() {
        counts[usize::from(pixel.0[0])] += 1;
    }
    let out = f64::from(grey.width() * grey.height()) * OUTERMOST;
    let (dark, light) = (end(0..=255, &counts, out), end((0..=255).rev(), &counts, out));
    Ok(lightness(light) - lightness(dark))
}

/// The first grey in an order with which more than `out` dots are passed.
fn end(mut greys: impl Iterator<Item = u8>, counts: &[u32; 256], out: f64) -> u8 {
    let mut seen = 0.0;
    let found = greys.find(|grey| {
        seen += f64::from(counts[usize::from(*grey)]);
        seen > out
    });
    found.unwrap_or_default()
}

/// L* of a grey of sRGB.
fn lightness(grey: u8) -> f64 {
    let share = f64::from(grey) / 255.0;
    let light = if share <= 0.040_45 {
        share / 12.92
    } else {
        ((share + 0.055) / 1.055).powf(2.4)
    };
    if light > 0.008_856 { 116.0 * light.cbrt() - 16.0 } else { 903.3 * light }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Cursor;

    fn medium(of: impl Fn(u32) -> [u8; 3]) -> Medium {
        let picture = image::RgbImage::from_fn(600, 400, |x, _| image::Rgb(of(x)));
        let mut bytes = Cursor::new(Vec::new());
        picture.write_to(&mut bytes, image::ImageFormat::Png).expect("a PNG is written");
        Medium::read("a.png", bytes.into_inner()).expect("a picture")
    }

    /// L* of sRGB greys as PyPI `colorspacious` has them: 119 is 50.03.
    #[test]
    fn lightness_is_as_the_standard_has_it() {
        assert!((lightness(119) - 50.03).abs() < 0.02, "{}", lightness(119));
        assert!(lightness(0).abs() < 1e-9 && (lightness(255) - 100.0).abs() < 1e-3);
    }

    #[test]
    fn red_and_green_of_one_lightness_are_one_grey() {
        let both = |x| if x < 300 { [200, 60, 60] } else { [40, 112, 40] };
        assert!(spread(&medium(both)).is_ok_and(|spread| spread < 5.0));
        let half = |x| if x < 300 { [0, 0, 0] } else { [255, 255, 255] };
        assert!(spread(&medium(half)).is_ok_and(|spread| spread > 99.0));
    }
}
