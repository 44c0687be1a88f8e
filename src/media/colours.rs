//! The colours of a picture as the web and paper take them: those of sRGB.
//!
//! Phones and cameras say with an ICC profile what their numbers mean, mostly the wider
//! colours of Display P3 or Adobe RGB. What is made of a picture carries no profile, so its
//! numbers are turned into those of sRGB, which is what is meant where nothing is said. A
//! picture whose profile cannot be read, or speaks of other inks than the picture has, is
//! taken for sRGB, as viewers do.
//!
//! Sources: ICC.1:2022 (profile version 4.4), IEC 61966-2-1 (sRGB).

use std::sync::Arc;

use image::{DynamicImage, Pixel};
use moxcms::{
    ColorProfile, DataColorSpace, Layout, TransformF64Executor, TransformOptions,
};

/// The highest number of a colour in eight bits.
const MOST: f64 = 255.0;

/// What the numbers of one picture mean.
pub(super) struct Colours(Option<Turning>);

/// How numbers of a profile become those of sRGB. It is computed in numbers of double width:
/// only that way has no short cuts of one processor, so every machine makes the same bytes.
struct Turning {
    grey: bool,
    to_srgb: Arc<TransformF64Executor>,
}

impl Colours {
    /// As the profile within the picture's file says, if it has one.
    pub(super) fn read(profile: Option<&[u8]>) -> Self {
        Self(profile.and_then(Turning::read))
    }

    /// The picture with the numbers of sRGB. Where nothing is to be turned it stays as it is.
    pub(super) fn to_srgb(&self, picture: DynamicImage) -> DynamicImage {
        let Some(turning) = &self.0 else { return picture };
        if turning.grey && picture.color().has_color() {
            return picture;
        }
        let turned = if picture.color().has_alpha() {
            let mut picture = picture.to_rgba8();
            turning.turn(picture.pixels_mut()).map(|()| picture.into())
        } else {
            let mut picture = picture.to_rgb8();
            turning.turn(picture.pixels_mut()).map(|()| picture.into())
        };
        turned.unwrap_or(picture)
    }
}

impl Turning {
    fn read(profile: &[u8]) -> Option<Self> {
        let profile = ColorProfile::new_from_slice(profile).ok()?;
        let grey = profile.color_space == DataColorSpace::Gray;
        if !grey && profile.color_space != DataColorSpace::Rgb {
            return None;
        }
        let from = if grey { Layout::Gray } else { Layout::Rgb };
        let to = ColorProfile::new_srgb();
        let options = TransformOptions::default();
        let to_srgb =
            profile.create_transform_f64(from, &to, Layout::Rgb, options).ok()?;
        Some(Self { grey, to_srgb })
    }

    /// Turns the colours of these dots; what shines through them stays as it is.
    fn turn<'p, P: Pixel<Subpixel = u8> + 'p>(
        &self,
        dots: impl Iterator<Item = &'p mut P>,
    ) -> Option<()> {
        let mut dots = dots.peekable();
        let mut turned = Vec::new();
        // As many at a time as fit a processor's nearest memory.
        while dots.peek().is_some() {
            let mut some: Vec<_> = dots.by_ref().take(512).collect();
            let taken = if self.grey { 1 } else { 3 };
            let numbers = some.iter().flat_map(|dot| &dot.channels()[..taken]);
            let numbers: Vec<f64> = numbers.map(|it| f64::from(*it) / MOST).collect();
            turned.clear();
            turned.resize(some.len() * 3, 0.0);
            self.to_srgb.transform(&numbers, &mut turned).ok()?;
            for (dot, turned) in some.iter_mut().zip(turned.chunks_exact(3)) {
                for (own, number) in dot.channels_mut().iter_mut().zip(turned) {
                    *own = (number.clamp(0.0, 1.0) * MOST).round() as u8;
                }
            }
        }
        Some(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::media::{Medium, resized};
    use image::codecs::png::PngEncoder;
    use image::{ImageEncoder, RgbImage, Rgba, RgbaImage};

    /// Red, green and blue of Display P3 (SMPTE EG 432-1) and of sRGB (IEC 61966-2-1), as
    /// x and y; both are white as D65 is.
    const P3: [[f64; 2]; 3] = [[0.680, 0.320], [0.265, 0.690], [0.150, 0.060]];
    const SRGB: [[f64; 2]; 3] = [[0.640, 0.330], [0.300, 0.600], [0.150, 0.060]];
    const D65: [f64; 2] = [0.3127, 0.3290];

    type Matrix = [[f64; 3]; 3];

    fn xyz([x, y]: [f64; 2]) -> [f64; 3] {
        [x / y, 1.0, (1.0 - x - y) / y]
    }

    fn times(matrix: &Matrix, by: [f64; 3]) -> [f64; 3] {
        matrix.map(|row| (0..3).map(|at| row[at] * by[at]).sum())
    }

    /// What `matrix` makes into `wanted` (Cramer's rule).
    fn solved(matrix: &Matrix, wanted: [f64; 3]) -> [f64; 3] {
        let volume = |m: &Matrix| {
            let part = |a: usize, b: usize| m[1][a] * m[2][b] - m[1][b] * m[2][a];
            m[0][0] * part(1, 2) - m[0][1] * part(0, 2) + m[0][2] * part(0, 1)
        };
        [0, 1, 2].map(|column| {
            let mut other = *matrix;
            for (row, wanted) in other.iter_mut().zip(wanted) {
                row[column] = wanted;
            }
            volume(&other) / volume(matrix)
        })
    }

    /// From numbers in proportion to light to the eye's measures, for these primaries.
    fn seen(primaries: [[f64; 2]; 3]) -> Matrix {
        let [r, g, b] = primaries.map(xyz);
        let columns = [0, 1, 2].map(|row| [r[row], g[row], b[row]]);
        let share = solved(&columns, xyz(D65));
        columns.map(|row| [row[0] * share[0], row[1] * share[1], row[2] * share[2]])
    }

    fn light(number: u8) -> f64 {
        let number = f64::from(number) / 255.0;
        if number <= 0.040_45 {
            number / 12.92
        } else {
            ((number + 0.055) / 1.055).powf(2.4)
        }
    }

    fn number(light: f64) -> f64 {
        let light = light.clamp(0.0, 1.0);
        let shown = 1.055 * light.powf(1.0 / 2.4) - 0.055;
        255.0 * if light <= 0.003_130_8 { light * 12.92 } else { shown }
    }

    fn png(picture: &DynamicImage, profile: Option<Vec<u8>>) -> Medium {
        let mut bytes = Vec::new();
        let mut encoder = PngEncoder::new(&mut bytes);
        if let Some(profile) = profile {
            encoder.set_icc_profile(profile).expect("a PNG holds a profile");
        }
        picture.write_with_encoder(encoder).expect("a PNG is written");
        Medium::read("a.png", bytes).expect("a picture")
    }

    fn p3() -> Vec<u8> {
        ColorProfile::new_display_p3().encode().expect("a profile is written")
    }

    /// Every fifteenth number of each colour.
    fn all_colours() -> DynamicImage {
        let dot = |x: u32, y: u32| [x % 18 * 15, y * 15, x / 18 * 15].map(|it| it as u8);
        RgbImage::from_fn(18 * 18, 18, |x, y| image::Rgb(dot(x, y))).into()
    }

    fn shown(medium: &Medium) -> DynamicImage {
        let bytes = resized(medium, medium.width).expect("made");
        image::load_from_memory(&bytes).expect("a picture")
    }

    #[test]
    fn display_p3_becomes_what_its_published_primaries_say() {
        let picture = all_colours();
        let turned = shown(&png(&picture, Some(p3()))).to_rgb8();
        let (from, to) = (seen(P3), seen(SRGB));
        let mut moved = 0;
        for (was, is) in picture.to_rgb8().pixels().zip(turned.pixels()) {
            let wanted = solved(&to, times(&from, was.0.map(light))).map(number);
            for (is, wanted) in is.0.iter().zip(wanted) {
                assert!((f64::from(*is) - wanted).abs() <= 1.0, "{was:?}: {is} {wanted}");
            }
            moved += usize::from(was != is);
        }
        assert!(moved > 5000, "{moved}: nearly every colour is another number");
    }

    #[test]
    fn without_a_profile_and_with_one_that_does_not_fit_numbers_stay() {
        let picture = all_colours();
        let grey = ColorProfile::new_gray_with_gamma(2.2).encode().expect("a profile");
        for profile in [None, Some(b"no profile".to_vec()), Some(grey)] {
            assert_eq!(shown(&png(&picture, profile)).to_rgb8(), picture.to_rgb8());
        }
    }

    #[test]
    fn a_grey_picture_is_turned_by_a_profile_of_greys() {
        let grey = image::GrayImage::from_fn(256, 1, |x, _| image::Luma([x as u8]));
        let profile = ColorProfile::new_gray_with_gamma(1.8).encode().expect("a profile");
        let turned = shown(&png(&grey.into(), Some(profile))).to_rgb8();
        for (was, is) in (0_u8..).zip(turned.pixels()) {
            let wanted = number((f64::from(was) / 255.0).powf(1.8));
            for is in is.0 {
                assert!((f64::from(is) - wanted).abs() <= 1.0, "{was}: {is} {wanted}");
            }
        }
    }

    #[test]
    fn what_shines_through_stays_as_it_is() {
        let dot = |x: u32, _| Rgba([200, 40, 60, x as u8]);
        let picture = DynamicImage::from(RgbaImage::from_fn(256, 1, dot));
        let turned = shown(&png(&picture, Some(p3()))).to_rgba8();
        for (x, dot) in (0_u8..).zip(turned.pixels()) {
            assert_eq!(dot.0[3], x);
            assert!(dot.0[0] > 205, "{dot:?}");
        }
    }

    #[test]
    fn no_profile_brings_it_down() {
        let profile = p3();
        let picture = DynamicImage::from(RgbImage::from_pixel(9, 9, image::Rgb([9; 3])));
        for at in (0..profile.len()).step_by(5) {
            let mut other = profile.clone();
            other[at] ^= 0xff;
            for profile in [&other[..], &profile[..at]] {
                let turned = Colours::read(Some(profile)).to_srgb(picture.clone());
                assert_eq!((turned.width(), turned.height()), (9, 9));
            }
        }
    }
}
