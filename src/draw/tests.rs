//! The drawings as a whole.

use super::sample;

/// Writes every kind of drawing into a folder named in the environment, to be looked at.
#[test]
#[ignore = "writes pictures to look at, into the folder that DRAWINGS names"]
#[allow(clippy::disallowed_methods, reason = "a hand-run test that writes pictures")]
fn gallery() -> Result<(), Box<dyn std::error::Error>> {
    let folder = std::path::PathBuf::from(std::env::var("DRAWINGS")?);
    let theme = crate::theme::Theme::built_in();
    for (name, svg) in sample_documents() {
        std::fs::write(folder.join(format!("{name}.svg")), &svg)?;
        std::fs::write(
            folder.join(format!("{name}.png")),
            super::png(&svg, &theme, 640)?,
        )?;
    }
    Ok(())
}

fn sample_documents() -> Vec<(String, String)> {
    let words = sample::words();
    let mut all = Vec::new();
    for figure in sample_sheets().iter().flat_map(|sheet| super::figures(sheet, &words)) {
        all.push((format!("{}-metric", figure.name), figure.svg.metric));
        all.push((format!("{}-us", figure.name), figure.svg.us));
    }
    for (index, sheet) in sample_sheets().iter().enumerate() {
        let svg = super::social(sheet, &sample::course(), &words);
        all.push((format!("social-{index}"), svg));
    }
    all
}

fn sample_sheets() -> Vec<crate::sheet::Sheet> {
    let envelope = sample::lock_in("envelope", [280, 280], [190, 190], [190, 190]);
    let letter = sample::lock_in("letter", [480, 260], [300, 240], [160, 260]);
    let book = sample::lock_in("book", [480, 260], [220, 240], [240, 260]);
    let folds = vec![
        sample::fold(4, 600, 200, 1),
        sample::fold(3, 600, 200, 16),
        sample::fold(2, 400, 300, 2),
        sample::fold(6, 720, 200, 3),
    ];
    let inches = |x: f64| x * 2.54;
    let mut wide = sample::triangles(54.0, 48.0, 9.0, 2);
    wide.step = "triangles".into();
    let mut squares = sample::grid(50.0, 30.0, (3, 5), false);
    squares.step = "squares".into();
    let grid = sample::grid(inches(20.0), inches(12.0), (3, 2), true);
    vec![
        sample::sheet(
            Some(sample::lamination(Some(envelope), folds)),
            vec![grid, wide, squares],
            sample::evening(),
        ),
        sample::sheet(
            Some(sample::lamination(Some(letter), vec![sample::fold(4, 600, 200, 2)])),
            Vec::new(),
            sample::time(Vec::new()),
        ),
        sample::sheet(
            Some(sample::lamination(Some(book), Vec::new())),
            vec![sample::grid(60.0, 24.0, (1, 20), false)],
            sample::time(Vec::new()),
        ),
    ]
}
