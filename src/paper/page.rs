//! A look at finished pages: how far down the last one is filled.

use typst::layout::{Abs, Frame, FrameItem, Point};
use typst_layout::PagedDocument;

/// A last page filled less far than this is not worth its paper.
const LEAST: f64 = 0.4;
/// Below this part of the page stands only its foot.
const FOOT: f64 = 0.9;

/// Whether the last of several pages holds next to nothing.
pub(super) fn straggles(document: &PagedDocument) -> bool {
    let Some([.., last]) = document.pages().get(1..) else { return false };
    let height = last.frame.size().y;
    let mut lowest = Abs::zero();
    lower(&last.frame, Point::zero(), height * FOOT, &mut lowest);
    lowest < height * LEAST
}

/// Lowers `lowest` to the lowest text or picture above `foot`.
fn lower(frame: &Frame, origin: Point, foot: Abs, lowest: &mut Abs) {
    for (at, item) in frame.items() {
        let at = origin + *at;
        let bottom = match item {
            FrameItem::Group(group) => {
                let shift = Point::new(group.transform.tx, group.transform.ty);
                lower(&group.frame, at + shift, foot, lowest);
                continue;
            }
            FrameItem::Text(_) => at.y,
            FrameItem::Image(_, size, _) => at.y + size.y,
            _ => continue,
        };
        if bottom < foot {
            *lowest = bottom.max(*lowest);
        }
    }
}
