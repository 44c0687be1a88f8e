//! Why a file to publish cannot be made.

use crate::draw::Unpainted;
use crate::media::Unshown;
use crate::paper::PaperFault;
use crate::plan::Unclear;
use crate::site::{Lacking, TemplateFault, Unpacked};
use crate::statement::Statement;

/// Why a file cannot be made: what the room says that makes it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unmade {
    /// A page.
    Page(TemplateFault),
    /// A handout.
    Handout(PaperFault),
    /// A drawing as a picture.
    Drawing(Unpainted),
    /// A picture that the instructor took.
    Picture(Unshown),
    /// What is made from other files.
    File(Lacking),
    /// The package for learning platforms.
    Package(Unpacked),
    /// What is made of a class's plan.
    Class(Unclear),
}

impl Unmade {
    /// It as a statement.
    pub fn said(&self) -> Statement {
        match self {
            Self::Page(why) => why.said(),
            Self::Handout(why) => why.said(),
            Self::Drawing(why) => why.said(),
            Self::Picture(why) => why.said(),
            Self::File(why) => why.said(),
            Self::Package(why) => why.said(),
            Self::Class(why) => why.said(),
        }
    }
}
