//! The sides of a handout as pictures, to stand beside the text that it is made from.

use hayro_svg::hayro_interpret::InterpreterSettings;
use hayro_svg::hayro_syntax::Pdf;
use hayro_svg::hayro_syntax::page::Page;
use hayro_svg::{RenderCache, SvgRenderSettings, convert};
use hyper::StatusCode;

use crate::encode::escape;

use super::super::answer::Answer;
use super::super::served::Served;

/// What follows the path of a handout where its sides are asked for.
const SIDES: &str = ".pdf/";
/// Paper is white, whatever colours the desk has.
const WHITE: [u8; 4] = [255; 4];

/// All sides of a handout as a page, or one of them as a picture; `None` where the path asks
/// for neither.
pub(super) fn read(served: &Served, path: &str) -> Option<Answer> {
    let (stem, side) = path.split_once(SIDES)?;
    let bytes = served.order(&format!("{stem}.pdf")).ok()??;
    let pdf = Pdf::new(bytes).ok()?;
    if side.is_empty() {
        return Some(Answer::page(StatusCode::OK, page(&pdf, served)));
    }
    let number: usize = side.strip_suffix(".svg")?.parse().ok()?;
    let picture = picture(&pdf, number.checked_sub(1)?)?;
    Some(Answer::file(".svg", picture.into_bytes()))
}

/// The sides with their sizes. Each picture takes time: the desk has those made first that are
/// seen (`view.js`).
fn page(pdf: &Pdf, served: &Served) -> String {
    let language = escape(&served.words.language);
    let title = escape(served.words.get("desk-printed"));
    let side = |(at, side): (usize, &Page)| {
        let (number, (width, height)) = (at + 1, side.render_dimensions());
        format!(
            "<img data-side=\"{number}.svg\" width=\"{width:.0}\" height=\"{height:.0}\" alt=\"{title} {number}\">\n"
        )
    };
    let sides: String = pdf.pages().iter().enumerate().map(side).collect();
    format!(
        "<!DOCTYPE html>\n<html lang=\"{language}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <title>{title}</title>\n<link rel=\"icon\" href=\"data:,\">\n\
         <link rel=\"stylesheet\" href=\"/.preview/desk/desk.css\">\n</head>\n\
         <body class=\"sheets\"><main>\n<h1>{title}</h1>\n{sides}</main></body>\n</html>\n"
    )
}

fn picture(pdf: &Pdf, at: usize) -> Option<String> {
    let side = pdf.pages().get(at)?;
    let settings = SvgRenderSettings { bg_color: WHITE };
    let interpreted = InterpreterSettings::default();
    Some(convert(side, &RenderCache::new(), &interpreted, &settings))
}
