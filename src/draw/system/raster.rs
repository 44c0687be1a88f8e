//! A drawing as a PNG, for where SVG cannot go: the picture of a link preview.

use std::borrow::Cow;
use std::sync::Arc;

use resvg::{tiny_skia, usvg};

use crate::said;
use crate::statement::{Statement, machine};
use crate::theme::Theme;

/// The family of the drawings' lettering.
const FAMILY: &str = "Asap";
/// The widest picture that is made, in pixels.
const WIDEST: u32 = 8_000;

/// Why a drawing could not be made into a picture, in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unpainted(Statement);

impl Unpainted {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        let why = &self.0;
        said!("unpainted", why)
    }
}

/// The SVG document `svg` as an opaque PNG, `width` pixels wide, on white, with the fonts
/// of `theme`.
///
/// # Errors
/// If `svg` is no SVG document, the theme has no Asap, or the picture would be larger than
/// can be held.
pub fn png(svg: &str, theme: &Theme, width: u32) -> Result<Vec<u8>, Unpainted> {
    let options = options(theme)?;
    let tree = usvg::Tree::from_str(svg, &options).map_err(unpainted)?;
    let width = width.clamp(1, WIDEST);
    let scale = width as f32 / tree.size().width();
    let height = (tree.size().height() * scale).round().max(1.0);
    if height > WIDEST as f32 * 4.0 {
        return Err(Unpainted(said!("unpainted-tall")));
    }
    let pixmap = tiny_skia::Pixmap::new(width, height as u32);
    let mut pixmap = pixmap.ok_or_else(|| Unpainted(said!("unpainted-large")))?;
    pixmap.fill(tiny_skia::Color::WHITE);
    let scaled = tiny_skia::Transform::from_scale(scale, scale);
    resvg::render(&tree, scaled, &mut pixmap.as_mut());
    encode(&pixmap)
}

/// Reading options with the theme's fonts alone: what is on the machine must not matter.
fn options(theme: &Theme) -> Result<usvg::Options<'static>, Unpainted> {
    let mut options =
        usvg::Options { font_family: FAMILY.to_owned(), ..Default::default() };
    let fonts = options.fontdb_mut();
    for path in theme.below("fonts/").filter(|path| path.ends_with(".ttf")) {
        let Some(bytes) = theme.files.get(path).cloned() else { continue };
        fonts.load_font_source(usvg::fontdb::Source::Binary(shared(bytes)));
    }
    fonts.set_sans_serif_family(FAMILY);
    fonts.set_serif_family(FAMILY);
    let family = |face: &usvg::fontdb::FaceInfo| {
        face.families.iter().any(|(name, _)| name == FAMILY)
    };
    // Without its face a text is silently left out.
    let found = fonts.faces().any(family);
    if found { Ok(options) } else { Err(Unpainted(said!("unpainted-typeface"))) }
}

/// The font's bytes: those inside the program are not copied.
fn shared(bytes: Cow<'static, [u8]>) -> Arc<dyn AsRef<[u8]> + Sync + Send> {
    match bytes {
        Cow::Borrowed(bytes) => Arc::new(bytes),
        Cow::Owned(bytes) => Arc::new(bytes),
    }
}

/// Opaque RGB: the ground is white, so nothing is lost.
fn encode(pixmap: &tiny_skia::Pixmap) -> Result<Vec<u8>, Unpainted> {
    let colours: Vec<u8> = pixmap
        .pixels()
        .iter()
        .flat_map(|pixel| [pixel.red(), pixel.green(), pixel.blue()])
        .collect();
    let mut bytes = Vec::new();
    let mut encoder = png::Encoder::new(&mut bytes, pixmap.width(), pixmap.height());
    encoder.set_color(png::ColorType::Rgb);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.set_compression(png::Compression::Fast);
    let mut writer = encoder.write_header().map_err(unpainted)?;
    writer.write_image_data(&colours).map_err(unpainted)?;
    writer.finish().map_err(unpainted)?;
    Ok(bytes)
}

fn unpainted(why: impl std::fmt::Display) -> Unpainted {
    Unpainted(machine(&why))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::draw::system::plate::{Plate, Text};
    use crate::draw::system::svg::Drawing;

    fn pixels(bytes: &[u8]) -> Option<(png::OutputInfo, Vec<u8>)> {
        let mut reader =
            png::Decoder::new(std::io::Cursor::new(bytes)).read_info().ok()?;
        let mut buffer = vec![0; reader.output_buffer_size()?];
        let info = reader.next_frame(&mut buffer).ok()?;
        Some((info, buffer))
    }

    #[test]
    fn lettering_leaves_pixels() -> Result<(), Unpainted> {
        let mut plate = Plate::new(100.0);
        plate.height = 40.0;
        plate.text(Text::new("60 × 25 cm", [5.0, 25.0]));
        let svg = Drawing::new(&plate, "t", "d").svg();
        let bytes = png(&svg, &Theme::built_in(), 200)?;
        let (info, colours) = pixels(&bytes).ok_or_else(|| unpainted("unreadable"))?;
        assert_eq!((info.width, info.height), (200, 80));
        assert_eq!(info.color_type, png::ColorType::Rgb);
        assert!(colours.iter().filter(|value| **value < 128).count() > 300);
        Ok(())
    }

    #[test]
    fn a_theme_without_the_face_is_refused() {
        let mut theme = Theme::built_in();
        theme.files.retain(|path, _| !path.contains("Asap"));
        let plate = Plate { height: 10.0, ..Plate::new(10.0) };
        let plate = Drawing::new(&plate, "", "").svg();
        assert!(png(&plate, &theme, 10).is_err());
        assert!(png("no drawing", &Theme::built_in(), 10).is_err());
    }
}
