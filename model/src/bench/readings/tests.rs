//! Texts as people and loggers write them.

use super::*;
use proptest::prelude::*;

fn read_plain(text: &str) -> Readings {
    read(text, &Hints::default()).unwrap()
}

fn kinds(readings: &Readings) -> Vec<What> {
    readings.remarks.iter().map(|remark| remark.what).collect()
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-6
}

#[test]
fn a_paste_without_a_header_passes_midnight() {
    let got = read_plain("23:58 201,5 19,0\n23:59 201,0 19,0\n0:00 200,6 18,9\n00:01 200,1 18,9\n");
    assert_eq!(got.form.delimiter, Delimiter::Blanks);
    assert!(got.form.decimal_comma && !got.form.header);
    let times: Vec<f64> = got.rows.iter().map(|row| row.time_s).collect();
    assert_eq!(times, [0.0, 60.0, 120.0, 180.0]);
    assert!(near(got.rows[2].store_c.unwrap(), 200.6));
    // A column that stays as warm as a kitchen is the air.
    assert!(near(got.rows[2].air_c.unwrap(), 18.9));
    assert_eq!(got.start.unwrap().second_of_day(), 23 * 3600 + 58 * 60);
}

#[test]
fn a_logger_with_header_iso_times_and_fahrenheit() {
    let text = "\u{feff}Timestamp,Block (\u{b0}F),Water (\u{b0}F),Ambient (\u{b0}F),Power (W),Battery\n\
        2026-11-25T21:59:30+03:00,482,68.0,59,0,3.9\n\
        2026-11-25T22:00:00+03:00,481.1,71.6,59,0,3.9\n\
        2026-11-25T19:01:00Z,480.2,75.2,59,0,3.9\n";
    let got = read_plain(text);
    assert_eq!(got.rows.len(), 3);
    assert!(near(got.rows[0].store_c.unwrap(), 250.0));
    assert!(near(got.rows[1].pot_c.unwrap(), 22.0));
    assert!(near(got.rows[2].time_s, 90.0));
    assert!(near(got.rows[2].heater_w.unwrap(), 0.0));
    assert_eq!(kinds(&got), [What::ColumnUnused { place: 6 }]);
    let start = got.start.unwrap();
    assert_eq!(
        (start.day().ymd(), start.second_of_day()),
        ((2026, 11, 25), 79_170)
    );
}

#[test]
fn dates_and_clock_times_in_two_columns_under_two_lines_of_header() {
    let text = "date;time;store;pot\n;;\u{b0}C;\u{b0}C\n25.11.2026;23:59:50;120,5;20\n26.11.2026;00:00:10;120,1;21\n";
    let got = read_plain(text);
    assert_eq!(got.rows[1].line, 4);
    assert!(near(got.rows[1].time_s, 20.0));
    assert!(got.form.header && got.remarks.is_empty());
    assert_eq!(
        got.form.columns,
        [Column::Date, Column::Time, Column::Store, Column::Pot]
    );
}

#[test]
fn quoted_cells_with_decimal_commas() {
    let got = read_plain("\"time\",\"store\"\n\"0\",\"250,5\"\n\"60\",\"249,0\"\n");
    assert!(near(got.rows[0].store_c.unwrap(), 250.5));
    assert_eq!(kinds(&got), [What::SecondsGuessed]);
}

#[test]
fn elapsed_minutes_by_the_header_or_by_a_hint() {
    let got = read_plain("time (min)\tstore\n0\t250\n1.5\t249\n");
    assert!(near(got.rows[1].time_s, 90.0) && got.remarks.is_empty());
    let hints = Hints {
        elapsed: Some(ElapsedUnit::Hours),
        ..Hints::default()
    };
    let got = read("0 250\n0.5 249\n", &hints).unwrap();
    assert!(near(got.rows[1].time_s, 1800.0) && got.remarks.is_empty());
}

#[test]
fn twelve_hour_clocks_and_slashed_dates() {
    let got = read_plain("11:59 pm,100\n12:00 am,99\n12:01 AM,98\n");
    assert!(near(got.rows[2].time_s, 120.0));
    let got = read_plain("11/25/2026 18:00,100\n11/25/2026 18:01,99\n");
    assert!(near(got.rows[1].time_s, 60.0) && got.remarks.is_empty());
    assert_eq!(got.start.unwrap().day().ymd(), (2026, 11, 25));
    let got = read_plain("4/5/2026 18:00,100\n4/5/2026 18:01,99\n");
    assert_eq!(kinds(&got), [What::DayFirstGuessed]);
    assert_eq!(got.start.unwrap().day().ymd(), (2026, 5, 4));
}

#[test]
fn every_fault_is_told_with_its_line() {
    let text = "# water_kg: 1.0\ntime,store,pot\n18:00,250,20\n18:01,oops,21\n18:01,249,21\n\
        later,248,22\n18:03,247\n18:04,-127,24\n18:05,245,25,9\n";
    let got = read_plain(text);
    let told: Vec<(usize, What)> = got
        .remarks
        .iter()
        .map(|remark| (remark.line, remark.what))
        .collect();
    let store = Column::Store;
    assert_eq!(
        told,
        [
            (4, What::NotANumber { column: store }),
            (5, What::NotLater),
            (6, What::NoTime),
            (
                7,
                What::FieldCount {
                    found: 2,
                    wanted: 3
                }
            ),
            (
                8,
                What::NotSensible {
                    column: store,
                    value: -127.0
                }
            ),
            (
                9,
                What::FieldCount {
                    found: 4,
                    wanted: 3
                }
            ),
        ]
    );
    assert_eq!(got.rows.len(), 5);
    assert_eq!(got.rows[1].store_c, None);
    assert!(near(got.rows[1].pot_c.unwrap(), 21.0));
    assert_eq!(got.notes[0].key, "water_kg");
    assert_eq!((got.notes[0].line, got.notes[0].value.as_str()), (1, "1.0"));
}

/// A store that cools and a pot that warms, a row a minute.
fn evening() -> Vec<(f64, f64, f64)> {
    (0..120)
        .map(|n| {
            let t = f64::from(n);
            (60.0 * t, 250.0 - 0.8 * t, 95.0 - 75.0 * (-t / 40.0).exp())
        })
        .collect()
}

fn written(rows: &[(f64, f64, f64)]) -> String {
    let line = |(t, store, pot): &(f64, f64, f64)| format!("{t},{store:.2},{pot:.2}\n");
    let lines: String = rows.iter().map(line).collect();
    format!("time (s),store,pot\n{lines}")
}

#[test]
fn a_clean_evening_has_no_remarks() {
    let got = read_plain(&written(&evening()));
    assert!(got.remarks.is_empty(), "{:?}", got.remarks);
}

#[test]
fn gaps_and_spikes_are_told_and_kept() {
    let mut rows = evening();
    rows[40].1 = 300.0;
    rows[60].2 = 20.0;
    for row in &mut rows[80..] {
        row.0 += 1800.0;
    }
    let got = read_plain(&written(&rows));
    assert_eq!(got.rows.len(), 120);
    let lines: Vec<usize> = got.remarks.iter().map(|remark| remark.line).collect();
    assert_eq!(lines, [42, 62, 82], "{:?}", got.remarks);
    assert!(matches!(
        got.remarks[0].what,
        What::Spike {
            column: Column::Store,
            ..
        }
    ));
    assert!(matches!(
        got.remarks[1].what,
        What::Spike {
            column: Column::Pot,
            ..
        }
    ));
    assert!(matches!(got.remarks[2].what, What::Gap { gap_s } if near(gap_s, 1860.0)));
}

#[test]
fn a_pot_that_is_changed_is_no_spike() {
    let mut rows = evening();
    for row in &mut rows[60..] {
        row.2 -= 60.0;
    }
    let got = read_plain(&written(&rows));
    assert!(got.remarks.is_empty(), "{:?}", got.remarks);
}

#[test]
fn columns_that_changed_places() {
    let mut rows = evening();
    for row in &mut rows[30..50] {
        *row = (row.0, row.2, row.1);
    }
    let got = read_plain(&written(&rows));
    let swap = got
        .remarks
        .iter()
        .find(|remark| matches!(remark.what, What::Swapped { .. }))
        .unwrap();
    assert_eq!((swap.line, swap.through), (32, 51));

    let all: Vec<_> = evening().iter().map(|row| (row.0, row.2, row.1)).collect();
    let got = read_plain(&written(&all));
    let whole = |what: &What| matches!(what, What::Swapped { .. });
    assert!(kinds(&got).iter().any(whole), "{:?}", got.remarks);
}

#[test]
fn fahrenheit_without_a_unit_is_suspected_not_converted() {
    let text: String = (0..30)
        .map(|n| format!("{n} 480 {}\n", 70 + 5 * n))
        .collect();
    let hints = Hints {
        elapsed: Some(ElapsedUnit::Minutes),
        ..Hints::default()
    };
    let got = read(&text, &hints).unwrap();
    assert_eq!(
        kinds(&got),
        [What::LooksFahrenheit {
            column: Column::Pot
        }]
    );
    assert!(near(got.rows[0].pot_c.unwrap(), 70.0));
    let hints = Hints {
        degrees: Some(Degrees::Fahrenheit),
        ..hints
    };
    let got = read(&text, &hints).unwrap();
    assert!(got.remarks.is_empty() && near(got.rows[0].store_c.unwrap(), 248.888_888_9));
}

#[test]
fn a_decimal_comma_between_commas_is_suspected() {
    let got = read_plain("18:00,250,5,20,1\n18:01,249,7,20,9\n");
    assert!(kinds(&got).contains(&What::LooksDecimalComma));
}

#[test]
fn texts_that_cannot_be_read() {
    for (text, why) in [
        ("", ReadingsError::Empty),
        ("\n \n# kind: boil\n", ReadingsError::Empty),
        ("hello\nworld\n", ReadingsError::NoColumns),
        ("store,pot\n250,20\n", ReadingsError::NoTimes),
        ("time,battery\n18:00,3.9\n", ReadingsError::NoReadings),
    ] {
        assert_eq!(read(text, &Hints::default()), Err(why), "{text}");
    }
}

#[test]
fn a_quote_too_many_does_not_swallow_the_rest() {
    let got = read_plain("time,store\n0,250\n60,\"249\n120,248\n180,247\n");
    assert_eq!(got.rows.len(), 4);
    assert_eq!(got.rows[1].store_c, None);
}

#[derive(Debug, Clone, Copy)]
enum Times {
    Seconds,
    Clock,
    Iso,
}

/// A writer as loggers are.
#[derive(Debug, Clone)]
struct Style {
    delimiter: &'static str,
    comma: bool,
    header: bool,
    fahrenheit: bool,
    times: Times,
    line_end: &'static str,
}

impl Style {
    fn number(&self, value: f64) -> String {
        let text = format!("{value:.3}");
        let text = if self.comma {
            text.replace('.', ",")
        } else {
            text
        };
        if self.comma && self.delimiter == "," {
            format!("\"{text}\"")
        } else {
            text
        }
    }

    fn degrees(&self, value_c: f64) -> String {
        self.number(if self.fahrenheit {
            1.8 * value_c + 32.0
        } else {
            value_c
        })
    }

    fn write(&self, rows: &[(u32, f64, f64)], start_s: u32) -> String {
        let mut lines = Vec::new();
        if self.header {
            let unit = if self.fahrenheit { "degF" } else { "degC" };
            lines.push([
                "time".into(),
                format!("store_{unit}"),
                format!("pot_{unit}"),
            ]);
        }
        for (time_s, store_c, pot_c) in rows {
            let at = start_s + time_s;
            let (day, at) = (at / 86_400, at % 86_400);
            let clock = format!("{:02}:{:02}:{:02}", at / 3600, at / 60 % 60, at % 60);
            let time = match self.times {
                Times::Seconds => time_s.to_string(),
                Times::Clock => clock,
                Times::Iso => format!("2026-11-{:02}T{clock}", 25 + day),
            };
            lines.push([time, self.degrees(*store_c), self.degrees(*pot_c)]);
        }
        let joined: Vec<String> = lines
            .iter()
            .map(|cells| cells.join(self.delimiter))
            .collect();
        joined.join(self.line_end)
    }
}

fn styles() -> impl Strategy<Value = Style> {
    (
        prop::sample::select(vec![",", ";", "\t", " ", "   ", ", "]),
        any::<bool>(),
        any::<(bool, bool)>(),
        prop::sample::select(vec![Times::Seconds, Times::Clock, Times::Iso]),
        prop::sample::select(vec!["\n", "\r\n", "\r"]),
    )
        .prop_map(
            |(delimiter, comma, (header, fahrenheit), times, line_end)| Style {
                delimiter,
                comma: comma && delimiter != ", ",
                header,
                fahrenheit,
                times,
                line_end,
            },
        )
}

proptest! {
    /// What is written in any style is read back, whatever the style.
    #[test]
    fn what_is_written_is_read(
        style in styles(),
        start_s in 0_u32..86_400,
        steps in prop::collection::vec((1_u32..1200, 30.0..400.0_f64, 5.0..100.0_f64), 2..40),
    ) {
        let mut at = 0;
        let rows: Vec<(u32, f64, f64)> = steps
            .iter()
            .enumerate()
            .map(|(idx, (step, store, pot))| {
                at += if idx == 0 { 0 } else { *step };
                (at, *store, *pot)
            })
            .collect();
        let hints = Hints {
            degrees: (style.fahrenheit && !style.header).then_some(Degrees::Fahrenheit),
            elapsed: Some(ElapsedUnit::Seconds),
            ..Hints::default()
        };
        let text = style.write(&rows, start_s);
        let got = read(&text, &hints).unwrap();
        prop_assert_eq!(got.rows.len(), rows.len());
        for (row, (time_s, store_c, pot_c)) in got.rows.iter().zip(&rows) {
            prop_assert!((row.time_s - f64::from(*time_s)).abs() < 1e-6);
            prop_assert!((row.store_c.unwrap() - store_c).abs() < 1e-3);
            prop_assert!((row.pot_c.unwrap() - pot_c).abs() < 1e-3);
        }
        let lost = |what: &What| matches!(
            what,
            What::NoTime | What::NotLater | What::NotANumber { .. } | What::NotSensible { .. }
                | What::FieldCount { .. }
        );
        prop_assert!(!kinds(&got).iter().any(lost), "{:?}", got.remarks);
    }

    /// Whatever is pasted, nothing panics, and every row comes from a line of its own.
    #[test]
    fn no_text_is_too_strange(text in "[0-9:.,; \\t\\n\"#a-zT/-]{0,200}") {
        if let Ok(got) = read(&text, &Hints::default()) {
            for pair in got.rows.windows(2) {
                prop_assert!(pair[0].time_s < pair[1].time_s && pair[0].line < pair[1].line);
            }
        }
    }
}

/// A season of a logger that writes every ten seconds.
#[test]
fn a_large_file_is_read_whole() {
    let text: String = std::iter::once("time (s);store;pot;air\n".to_owned())
        .chain((0..200_000).map(|n| format!("{};{:.1};{:.1};20,0\n", 10 * n, 180.5, 60.5)))
        .map(|line| line.replace('.', ","))
        .collect();
    let got = read_plain(&text);
    assert_eq!(got.rows.len(), 200_000);
    assert!(got.remarks.is_empty());
}

/// Rows an hour of a store that cools by 5 K in each.
fn slow(values: &[f64]) -> String {
    let line = |(hour, value): (usize, &f64)| format!("{:02}:00 {value}\n", 10 + hour);
    values.iter().enumerate().map(line).collect()
}

#[test]
fn a_spike_at_an_end_or_among_few_is_told() {
    let lines = |values: &[f64]| -> Vec<usize> {
        let got = read_plain(&slow(values));
        assert_eq!(got.rows.len(), values.len());
        let is_spike = |remark: &&Remark| matches!(remark.what, What::Spike { .. });
        let spikes = got.remarks.iter().filter(is_spike);
        spikes.map(|remark| remark.line).collect()
    };
    let last = [250.0, 245.0, 240.0, 235.0, 230.0, 225.0, 220.0, 215.0, 70.0];
    assert_eq!(lines(&last), [9]);
    assert_eq!(lines(&last[..8]), [0_usize; 0]);
    assert_eq!(lines(&[25.0, 245.0, 240.0, 235.0, 230.0]), [1]);
    assert_eq!(lines(&[250.0, 245.0, 102.0, 235.0, 230.0]), [3]);
    assert_eq!(
        lines(&[250.0, 245.0, 240.0, 102.0, 230.0, 225.0, 220.0, 215.0]),
        [4]
    );
    assert_eq!(
        lines(&[250.0, 245.0, 240.0, 235.0, 230.0, 225.0, 82.0, 215.0]),
        [7]
    );
    // A pot that goes in takes a store down to stay.
    assert_eq!(
        lines(&[250.0, 249.0, 248.0, 190.0, 175.0, 170.0]),
        [0_usize; 0]
    );
    // And a heat-up is brisk throughout.
    assert_eq!(
        lines(&[20.0, 75.0, 130.0, 180.0, 225.0, 250.0]),
        [0_usize; 0]
    );
}

#[test]
fn a_second_column_without_a_name_is_the_air_where_it_stays_as_warm() {
    let got = read_plain("18:00 250 22\n19:00 245 21\n20:00 240 20\n");
    assert_eq!(got.form.columns, [Column::Time, Column::Store, Column::Air]);
    let got = read_plain("18:00 250 22\n18:10 235 51\n18:20 220 78\n");
    assert_eq!(got.form.columns, [Column::Time, Column::Store, Column::Pot]);
    let got = read_plain("18:00 250 22 21\n18:10 235 23 21\n18:20 220 24 21\n");
    let four = [Column::Time, Column::Store, Column::Pot, Column::Air];
    assert_eq!(got.form.columns, four);
}
