//! The inks of the drawings: a class name for a page's style sheet, and the same look as
//! presentation attributes for paper and pictures. No colour stands alone: fat is hatched,
//! and no other matter is; the recipes of a class have lines of their own; scrap is dotted, waiting hollow, baking has a core, neighbours differ
//! in tone, what moves is numbered.

/// How a shape is painted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::draw) struct Ink {
    /// Class names, all beginning `d-`.
    pub(in crate::draw) class: &'static str,
    /// Presentation attributes.
    pub(in crate::draw) paint: &'static str,
}

/// The colour of lettering that leads nowhere: the drawing's own.
pub(in crate::draw) const LETTERING: &str = "#2b2622";

impl Ink {
    /// Whether it paints lines alone, no surface.
    pub(in crate::draw) fn is_line(self) -> bool {
        self.paint.starts_with(r#"fill="none""#)
    }
}

/// Declares inks: name, class, attributes. The last class names are all different, and an
/// ink stands below those that have its other class names.
macro_rules! inks {
    ($($(#[$doc:meta])* $name:ident = $class:literal, $paint:literal;)*) => {
        $($(#[$doc])* pub(in crate::draw) const $name: Ink = Ink { class: $class, paint: $paint };)*
        /// Every ink.
        const ALL: &[Ink] = &[$($name),*];
    };
}

/// The looks of all inks as rules of a style sheet: with them a drawing may go bare.
pub fn style_rules() -> String {
    let mut rules = String::new();
    for ink in ALL.iter().filter(|ink| !ink.paint.is_empty()) {
        let name = ink.class.rsplit(' ').next().unwrap_or(ink.class);
        let paint = ink.paint.replace("=\"", ":").replace("\" ", ";").replace('"', "");
        rules.push_str(&format!(".{name}{{{paint}}}\n"));
    }
    rules
}

inks! {
    /// Lettering, in the colour that the whole drawing starts from.
    TEXT = "d-text", "";
    /// Lettering that leads: panel headings, numbers in rings.
    LEAD = "d-text d-lead", r##"fill="#2f6b62""##;
    /// Lettering on the band of a picture for link previews.
    ON_BAND = "d-on-band", r##"fill="#ffffff""##;
    /// A sheet or part of dough.
    DOUGH = "d-dough",
        r##"fill="#f3e3c3" stroke="#5a4a37" stroke-width="2""##;
    /// The surface of a strand, whose ends run on beneath others.
    STRAND = "d-dough d-strand", r##"fill="#f3e3c3" stroke="none""##;
    /// The hollow of a fold.
    HOLLOW = "d-paper d-hollow",
        r##"fill="#ffffff" stroke="#5a4a37" stroke-width="2""##;
    /// A piece in a cutting plan.
    PIECE = "d-dough d-piece",
        r##"fill="#f3e3c3" stroke="#2b2622" stroke-width="2""##;
    /// Every other piece: a darker tone tells it from its neighbours, in grey too.
    OTHER = "d-dough d-piece d-other",
        r##"fill="#dfc596" stroke="#2b2622" stroke-width="2""##;
    /// Fat.
    FAT = "d-fat",
        r##"fill="#f2c230" stroke="#6e4f00" stroke-width="2""##;
    /// A fat layer seen from the side, too thin to be hatched.
    FAT_SEAM = "d-fat d-fat-seam", r##"fill="#f2c230" stroke="#6e4f00" stroke-width="1""##;
    /// The hatching of fat.
    FAT_HATCH = "d-fat-line", r##"fill="none" stroke="#6e4f00" stroke-width="1.5""##;
    /// The sheet beneath a cutting plan: what no piece covers is scrap.
    SCRAP = "d-scrap", r##"fill="#ffffff" stroke="#2b2622" stroke-width="2.5""##;
    /// The dots of scrap, and of what lies over the bench's end.
    DOTS = "d-dots",
        r##"fill="none" stroke="#6a6058" stroke-width="2.5" stroke-dasharray="0.1 9" stroke-linecap="round""##;
    /// A cut.
    CUT = "d-line d-cut",
        r##"fill="none" stroke="#2b2622" stroke-width="2.5" stroke-linecap="round""##;
    /// A fold to be made.
    FOLD = "d-line d-fold",
        r##"fill="none" stroke="#2b2622" stroke-width="2" stroke-dasharray="12 7""##;
    /// A seam: edges that meet or lie loose.
    SEAM = "d-line d-seam",
        r##"fill="none" stroke="#2b2622" stroke-width="3.5" stroke-dasharray="0.1 8" stroke-linecap="round""##;
    /// The spine: the closed fold.
    SPINE = "d-line d-spine",
        r##"fill="none" stroke="#2b2622" stroke-width="8" stroke-linecap="round""##;
    /// A closed fold that is not the spine.
    FOLDED = "d-line d-folded",
        r##"fill="none" stroke="#2b2622" stroke-width="4.5" stroke-linecap="round""##;
    /// An edge of dough on dough.
    EDGE = "d-line d-edge", r##"fill="none" stroke="#5a4a37" stroke-width="2""##;
    /// Layers too fine to tell apart.
    TONE = "d-fat-line d-tone", r##"fill="none" stroke="#6e4f00" stroke-width="0.8""##;
    /// A stick of filling.
    STICK = "d-stick", r##"fill="#5b3a29" stroke="#2b2622" stroke-width="1.5""##;
    /// A tray, a tin, an oven: metal.
    TRAY = "d-paper d-tray", r##"fill="#ffffff" stroke="#2b2622" stroke-width="3""##;
    /// Where something was, or will lie.
    GHOST = "d-line d-ghost",
        r##"fill="none" stroke="#6a6058" stroke-width="1.5" stroke-dasharray="4 5""##;
    /// Dimension lines, ticks and leaders.
    DIM = "d-dim", r##"fill="none" stroke="#2b2622" stroke-width="1.25""##;
    /// The shaft of an arrow: a hand's movement.
    ARROW = "d-arrow",
        r##"fill="none" stroke="#2f6b62" stroke-width="4" stroke-linecap="round""##;
    /// The head of an arrow.
    HEAD = "d-arrow-head", r##"fill="#2f6b62" stroke="none""##;
    /// The ring round a number.
    RING = "d-paper d-ring", r##"fill="#ffffff" stroke="#2f6b62" stroke-width="2""##;
    /// The ground of a label that stands on a hatching.
    TAG = "d-paper d-tag", r##"fill="#ffffff" stroke="none""##;
    /// Attended time.
    HAND = "d-hand", r##"fill="#2f6b62" stroke="#1f4740" stroke-width="1.5""##;
    /// Attended time of the second recipe of a class.
    HAND_2 = "d-hand-2", r##"fill="#eebc62" stroke="#5c4210" stroke-width="1.5""##;
    /// The third.
    HAND_3 = "d-hand-3", r##"fill="#b9d3e8" stroke="#27475f" stroke-width="1.5""##;
    /// The fourth.
    HAND_4 = "d-hand-4", r##"fill="#e3a48c" stroke="#6b2f1b" stroke-width="1.5""##;
    /// The lines by which these are told apart in grey.
    HAND_LINES = "d-hand-lines", r##"fill="none" stroke="#3a3128" stroke-width="1.25""##;
    /// Time in which everybody does the same, beside the recipes.
    TOGETHER = "d-paper d-together",
        r##"fill="#ffffff" stroke="#2b2622" stroke-width="1.5" stroke-dasharray="3 3""##;
    /// Unattended time: a hollow bar.
    WAIT = "d-wait", r##"fill="#ffffff" stroke="#2f6b62" stroke-width="1.5""##;
    /// The core of a bar of baking.
    CORE = "d-line d-core", r##"fill="none" stroke="#2b2622" stroke-width="5""##;
    /// How much longer something may stay.
    HOLD = "d-hold",
        r##"fill="none" stroke="#2f6b62" stroke-width="2" stroke-dasharray="3 4""##;
    /// The hours of a timeline, and what waits for what.
    GRID = "d-grid", r##"fill="none" stroke="#d6ccbc" stroke-width="1""##;
    /// What waits for what.
    LINK = "d-link", r##"fill="none" stroke="#8a7d6c" stroke-width="1.25""##;
    /// The ground of a picture for link previews.
    GROUND = "d-ground", r##"fill="#fbf4e6" stroke="none""##;
    /// A band across that ground.
    BAND = "d-band", r##"fill="#2f6b62" stroke="none""##;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rule_speaks_of_one_ink_and_comes_after_those_it_builds_on() {
        let last = |ink: &Ink| ink.class.rsplit(' ').next().unwrap_or_default();
        for (at, ink) in ALL.iter().enumerate() {
            assert!(!ALL[..at].iter().any(|one| last(one) == last(ink)), "{}", ink.class);
            let builds =
                |one: &&Ink| one.class.split(' ').any(|class| class == last(ink));
            assert_eq!(ALL[..at].iter().filter(builds).count(), 0, "{}", ink.class);
        }
    }

    #[test]
    fn a_style_sheet_has_the_look_of_an_ink() {
        let rule =
            ".d-cut{fill:none;stroke:#2b2622;stroke-width:2.5;stroke-linecap:round}";
        assert!(style_rules().lines().any(|line| line == rule), "{}", style_rules());
    }
}
