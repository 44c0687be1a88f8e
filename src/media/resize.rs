//! A picture at another size.

use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::{CompressionType, FilterType as PngFilter, PngEncoder};
use image::imageops::FilterType;
use image::{DynamicImage, ImageDecoder, ImageFormat};

use super::colours::Colours;
use super::{Medium, Unshown, decoder, format};

/// How true a JPEG is kept, of 100: where the eye sees no difference at arm's length.
const QUALITY: u8 = 80;

/// The picture `width` pixels wide, turned upright, in the colours of sRGB, as a file of its
/// own kind.
///
/// # Errors
/// The reason, where it cannot be decoded to its end.
pub fn resized(medium: &Medium, width: u32) -> Result<Vec<u8>, Unshown> {
    let (picture, colours) = upright(medium)?;
    let height = medium.height_at(width);
    let small = if picture.width() == width {
        picture
    } else {
        picture.resize_exact(width, height, FilterType::Lanczos3)
    };
    let small = colours.to_srgb(small);
    encoded(&small, format(&medium.bytes) == Some(ImageFormat::Png))
}

/// The picture as a viewer turns it, and what its numbers mean: of a picture made small there
/// is less to turn into other colours.
pub(super) fn upright(medium: &Medium) -> Result<(DynamicImage, Colours), Unshown> {
    let mut decoder = decoder(&medium.bytes).ok_or(Unshown::NoPicture)?;
    let turned = decoder.orientation();
    let profile = decoder.icc_profile().ok().flatten();
    let mut picture = DynamicImage::from_decoder(decoder)?;
    if let Ok(turned) = turned {
        picture.apply_orientation(turned);
    }
    Ok((picture, Colours::read(profile.as_deref())))
}

fn encoded(picture: &DynamicImage, png: bool) -> Result<Vec<u8>, Unshown> {
    let mut bytes = Vec::new();
    let written = if png {
        let best = (CompressionType::Best, PngFilter::Adaptive);
        let encoder = PngEncoder::new_with_quality(&mut bytes, best.0, best.1);
        let opaque = !picture.color().has_alpha();
        let plain = if opaque {
            picture.to_rgb8().into()
        } else {
            DynamicImage::from(picture.to_rgba8())
        };
        plain.write_with_encoder(encoder)
    } else {
        JpegEncoder::new_with_quality(&mut bytes, QUALITY)
            .encode_image(&picture.to_rgb8())
    };
    written?;
    Ok(bytes)
}
