//! Whole handouts.

use crate::sheet::{HandoutKind, Paper, Units};
use crate::theme::Theme;

use super::Press;
use super::fixture::Fixture;

#[test]
fn dump() {
    let press = Press::new(&Theme::built_in());
    let f = Fixture::new();
    for kind in HandoutKind::ALL {
        for (u, p) in [(Units::Metric, Paper::A4), (Units::Us, Paper::Letter)] {
            let d = press.data(&f.job(kind, u, p));
            std::fs::write(format!("/tmp/paper/{}-{}.json", kind.word(), u.word()), d).unwrap();
        }
    }
}
