//! The figures of builds and runs as rows, and as a file that any spreadsheet reads.

use crate::present::bench::figure::Figure;

/// One figure of a build, or of a run of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// The cooker's name.
    pub build: String,
    /// The run's name; empty for what is told of several together.
    pub run: String,
    /// The figure, which tells its unit.
    pub figure: Figure,
    /// In that unit.
    pub value: f64,
    /// One standard deviation, where it is known.
    pub sd: Option<f64>,
    /// How it came about, in a word or two.
    pub method: &'static str,
}

/// Heads of the columns.
const HEADS: &str = "build,run,figure,value,unit,sd,low,high,method";

/// The rows as comma-separated text (RFC 4180): a decimal point in every language, so that two
/// groups can put their files together.
pub fn csv(rows: &[Row]) -> String {
    let mut text = format!("{HEADS}\r\n");
    for row in rows {
        let band = row.sd.map(|sd| row.figure.band(row.value, sd));
        let number = |value: Option<f64>| value.map(significant).unwrap_or_default();
        let cells = [
            cell(&row.build),
            cell(&row.run),
            cell(row.figure.key()),
            significant(row.value),
            cell(row.figure.unit()),
            number(row.sd),
            number(band.map(|band| band.0)),
            number(band.map(|band| band.1)),
            cell(row.method),
        ];
        text.push_str(&cells.join(","));
        text.push_str("\r\n");
    }
    text
}

/// A text as a cell: quoted where it has to be, and never taken for a formula. An apostrophe in
/// front has spreadsheets show the rest as it stands (OWASP, CSV injection).
fn cell(text: &str) -> String {
    let is_formula =
        text.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
    let text = if is_formula {
        format!("'{text}")
    } else {
        text.to_owned()
    };
    if text.contains(['"', ',', '\r', '\n', ';']) || text.starts_with(' ') || text.ends_with(' ') {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text
    }
}

/// Four digits that count: more than any of these figures is known to.
fn significant(value: f64) -> String {
    if value.abs() < 1e-12 || !value.is_finite() {
        return if value.is_finite() {
            "0".to_owned()
        } else {
            String::new()
        };
    }
    let magnitude = value.abs().log10().floor();
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "held between 0 and 15"
    )]
    let decimals = (3.0 - magnitude).clamp(0.0, 15.0) as usize;
    let text = format!("{value:.decimals$}");
    match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.').to_owned(),
        false => text,
    }
}

#[cfg(test)]
mod tests {
    use model::bench::Parameter;
    use proptest::prelude::*;

    use super::*;

    fn row(build: &str, run: &str, value: f64, sd: Option<f64>) -> Row {
        Row {
            build: build.to_owned(),
            run: run.to_owned(),
            figure: Figure::Of(Parameter::Loss),
            value,
            sd,
            method: "fit",
        }
    }

    #[test]
    fn a_row_a_figure_with_its_band() {
        // 0.41234 over and times exp(1.2816 x 0.02 / 0.41234).
        let text = csv(&[row("Clay", "Cool-down, 3 May", 0.41234, Some(0.02))]);
        assert_eq!(
            text,
            "build,run,figure,value,unit,sd,low,high,method\r\n\
             Clay,\"Cool-down, 3 May\",loss_w_k,0.4123,W/K,0.02,0.3875,0.4388,fit\r\n"
        );
        let text = csv(&[row("Clay", "", 41_236.0, None)]);
        assert!(
            text.ends_with("Clay,,loss_w_k,41236,W/K,,,,fit\r\n"),
            "{text}"
        );
    }

    /// RFC 4180, 2, rules 5 to 7; and OWASP's list of what begins a formula.
    #[test]
    fn cells_are_quoted_and_never_formulas() {
        assert_eq!(cell("a \"b\" c"), "\"a \"\"b\"\" c\"");
        assert_eq!(cell("two\r\nlines"), "\"two\r\nlines\"");
        assert_eq!(cell("=1+1"), "'=1+1");
        assert_eq!(cell("@SUM(A1)"), "'@SUM(A1)");
        assert_eq!(cell("-2"), "'-2");
        assert_eq!(
            cell("=HYPERLINK(\"x\",\"y\")"),
            "\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\""
        );
        assert_eq!(cell("plain"), "plain");
    }

    /// A reader of RFC 4180: the cells of the second line.
    fn read_back(text: &str) -> Vec<String> {
        let (_, text) = text.split_once("\r\n").unwrap();
        let mut cells = vec![String::new()];
        let mut quoted = false;
        let mut chars = text.chars().peekable();
        while let Some(c) = chars.next() {
            match c {
                '"' if quoted && chars.peek() == Some(&'"') => {
                    chars.next();
                    cells.last_mut().unwrap().push('"');
                }
                '"' => quoted = !quoted,
                ',' if !quoted => cells.push(String::new()),
                '\r' if !quoted => break,
                other => cells.last_mut().unwrap().push(other),
            }
        }
        cells
    }

    proptest! {
        #[test]
        fn any_names_can_be_read_back(build in ".{0,20}", run in "[=+@,;\"\r\n a-z-]{0,20}", value in -1e6..1e6_f64) {
            let cells = read_back(&csv(&[row(&build, &run, value, Some(1.0))]));
            prop_assert_eq!(cells.len(), 9);
            let read = |cell: &str, text: &str| cell.strip_prefix('\'').unwrap_or(cell) == text;
            prop_assert!(cells[0] == build || read(&cells[0], &build));
            prop_assert!(cells[1] == run || read(&cells[1], &run));
            let read: f64 = cells[3].parse().unwrap();
            prop_assert!((read - value).abs() <= 0.5 + value.abs() * 1e-3);
        }
    }
}
