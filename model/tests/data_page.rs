//! The page of figures says what the code says.

#[path = "../examples/tables/render/mod.rs"]
mod render;

const PAGE: &str = include_str!("../DATA.md");

#[test]
fn page_holds_the_tables_as_printed() {
    assert!(
        PAGE.contains(&render::tables()),
        "model/DATA.md is behind the code: replace its tables by what \
         `cargo run -p model --example tables` prints"
    );
}

/// Each source is named by a figure, and each key beside a figure is a source.
#[test]
fn no_source_is_idle() {
    let (figures, list) = PAGE
        .split_once("## Sources")
        .expect("the page lists its sources");
    for source in model::provenance::Source::ALL {
        let key = source.key();
        assert!(list.contains(&format!("| {key} |")), "{key} is not listed");
        assert!(
            figures.contains(&format!("[{key}]")),
            "{key} stands beside no figure"
        );
    }
}
