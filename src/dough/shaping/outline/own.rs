//! An author's own shaping: its points, moved with the sides of the piece that was cut.

use crate::dough::shaping::{Form, Piece};
use crate::measure::{Length, exact};
use crate::model::{OwnLine, OwnShape};

use super::{At, Does, Frame, Mark};

/// The stages of an author's own shaping of a piece: none where they are pictures.
pub fn own(shape: &OwnShape, piece: &Piece) -> Vec<Frame> {
    let ways = [(&piece.base, &shape.piece.length), (&piece.height, &shape.piece.width)];
    let grown = ways.map(|(real, drawn)| {
        let real = Some(real).filter(|real| real.is_positive());
        real.and_then(|real| real.over(drawn)).unwrap_or_else(|| exact(1, 1))
    });
    let at = |[x, y]: &[Length; 2]| [(x * &grown[0]).float(), (y * &grown[1]).float()];
    let drawn = shape.frames.iter().filter(|frame| !frame.lines.is_empty());
    let frames = drawn.map(|frame| {
        let lines = frame.lines.iter();
        let marks = lines
            .flat_map(|(line, points)| marks(*line, points.iter().map(at).collect()));
        Frame::new(Does::Own, marks.collect())
    });
    frames.collect()
}

fn marks(line: OwnLine, points: Vec<At>) -> Vec<Mark> {
    match line {
        OwnLine::Dough => vec![Mark::Dough(points)],
        OwnLine::Flap => vec![Mark::Flap(points)],
        OwnLine::Fold => vec![Mark::Fold(points)],
        OwnLine::Cut => vec![Mark::Cut(points)],
        OwnLine::Seam => vec![Mark::Seam(points)],
        OwnLine::Filling => vec![Mark::Filling(points)],
        OwnLine::Arrow => {
            points.chunks_exact(2).map(|pair| Mark::Arrow(pair[0], pair[1])).collect()
        }
    }
}

/// A piece as it was cut; `None` for a lump, which has no outline.
pub fn as_cut(piece: &Piece) -> Option<Frame> {
    let (base, height) = (piece.base.float(), piece.height.float());
    let outline = match piece.form {
        Form::Lump => return None,
        Form::Round => super::disc([base / 2.0; 2], base / 2.0),
        Form::Triangle => vec![[0.0, 0.0], [base, 0.0], [base / 2.0, height]],
        Form::RightTriangle => vec![[0.0, 0.0], [base, 0.0], [0.0, height]],
        Form::Rectangle | Form::Square | Form::Strip => {
            vec![[0.0, 0.0], [base, 0.0], [base, height], [0.0, height]]
        }
    };
    Some(Frame::new(Does::Own, vec![Mark::Dough(outline)]))
}
