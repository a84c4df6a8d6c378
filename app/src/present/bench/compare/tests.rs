use model::bench::{Measured, Parameter};

use super::*;
use crate::bench::answer::CurveLines;
use crate::bench::sheet::Points;
use crate::i18n::Language;
use crate::present::bench::figure::Figure;
use crate::present::bench::results::csv;
use crate::present::bench::typing::Channel;
use crate::present::tests::speaking;
use crate::state::bench::Found;
use crate::state::sample::{at, full, kept_beside_description, kept_fit, kept_text, test_run};

/// A household with two boils of one cooker, fitted, and one whose readings are a file.
fn household() -> Document {
    let mut document = full();
    let cooker = document.cookers[0].id;
    let run = |id: u32, name: &str| {
        let mut run = test_run();
        (run.id, run.cooker) = (RunId(id), cooker);
        name.clone_into(&mut run.about.name);
        run.fit = Some(kept_fit(RunId(id)));
        run
    };
    let mut filed = run(903, "Logger");
    filed.readings = RunReadings::File(kept_text());
    filed.fit = None;
    document.bench.runs = vec![run(901, "First, dry"), run(902, "=Oiled"), filed];
    document
}

fn with_voice<T>(language: Language, work: impl FnOnce(&Voice<'_>) -> T) -> T {
    let (strings, formats) = speaking(language);
    work(&Voice {
        strings,
        formats: &formats,
        now: at(20, 0),
    })
}

const ALL: [RunId; 3] = [RunId(901), RunId(902), RunId(903)];

#[test]
fn curves_have_letters_and_are_told_in_words() {
    let document = household();
    let runs = chosen(&document, &ALL, &[]);
    for language in Language::ALL {
        with_voice(language, |voice| {
            let plot = plot(voice, &runs, Channel::Store, Aligned::Start).unwrap();
            assert_eq!(plot.series.len(), 2);
            assert_eq!(plot.series[1].style.letter(), Some('B'));
            assert!(plot.series[0].label.starts_with("A · "));
            assert!(plot.sentence.contains("160"), "{}", plot.sentence);
            assert!(not_drawn(voice, &runs).contains("Logger"));
            for row in &plot.table.1.rows {
                assert_eq!(row.len(), plot.table.1.heads.len());
            }
        });
    }
}

#[test]
fn a_file_is_drawn_once_it_was_looked_up() {
    let document = household();
    let text = kept_text();
    let not_yet = not_looked_up(&chosen(&document, &ALL, &[]));
    assert_eq!(not_yet, std::slice::from_ref(&text));
    let curve = |lines| {
        [Curve {
            text: text.clone(),
            lines,
        }]
    };
    let lines = CurveLines {
        store: Points(vec![(0.0, 240.0), (300.0, 200.0), (900.0, 180.0)]),
        pot: Points(Vec::new()),
    };
    with_voice(Language::English, |voice| {
        let drawn = chosen(&document, &ALL, &curve(Some(lines)));
        assert_eq!(not_looked_up(&drawn), []);
        let at_start = plot(voice, &drawn, Channel::Store, Aligned::Start).unwrap();
        assert_eq!(at_start.series.len(), 3);
        assert_eq!(at_start.series[2].points[0], (0.0, 240.0));
        assert_eq!(at_start.table.1.rows[0][3], "240");
        // Its pot goes in five minutes after its start.
        let at_pot = plot(voice, &drawn, Channel::Store, Aligned::Pot).unwrap();
        assert_eq!(at_pot.series[2].points[0], (0.0, 200.0));
        let pot = plot(voice, &drawn, Channel::Pot, Aligned::Start).unwrap();
        assert!(pot.sentence.contains("Logger has no readings of this"));
        let gone = chosen(&document, &ALL, &curve(None));
        let plot = plot(voice, &gone, Channel::Store, Aligned::Start).unwrap();
        assert_eq!(plot.series.len(), 2);
        assert!(not_drawn(voice, &gone).contains("can’t be read any more"));
        assert_eq!(not_drawn(voice, &drawn), "");
    });
}

#[test]
fn curves_begin_where_the_pot_goes_in() {
    let document = household();
    let runs = chosen(&document, &ALL[..1], &[]);
    with_voice(Language::English, |voice| {
        let at_pot = plot(voice, &runs, Channel::Pot, Aligned::Pot).unwrap();
        assert!((at_pot.series[0].points[0].0).abs() < 1e-9);
        let at_start = plot(voice, &runs, Channel::Pot, Aligned::Start).unwrap();
        assert!((at_start.series[0].points[0].0 - 300.0).abs() < 1e-9);
        assert!(plot(voice, &runs, Channel::Air, Aligned::Start).is_none());
    });
}

#[test]
fn one_table_holds_all_of_them() {
    let document = household();
    let runs = chosen(&document, &ALL, &[]);
    for language in Language::ALL {
        with_voice(language, |voice| {
            let table = measured(voice, &runs, true);
            assert_eq!(table.heads.len(), 4);
            // The contact, the worth, the scatter.
            assert_eq!(table.rows.len(), 3);
            assert!(
                table.rows[0][1].replace('\u{A0}', " ").contains("(370 "),
                "{table:?}"
            );
            assert_eq!(table.rows[0][3], voice.strings.runs.report.not_fitted);
            let table = figures(voice, (&runs, true), &Figure::STANDARD, "");
            assert_eq!(table.rows.len(), 9);
            let conditions = conditions(voice, &runs);
            assert_eq!(conditions.rows.len(), 3);
            assert_eq!(builds(voice, &runs).len(), 1);
        });
    }
}

#[test]
fn the_file_has_a_row_a_figure_and_no_formula() {
    let document = household();
    let text = csv(&results(&chosen(&document, &ALL, &[])));
    let lines: Vec<&str> = text.lines().collect();
    assert_eq!(lines[0], "build,run,figure,value,unit,sd,low,high,method");
    // Ten of each fitted run; the first of them holds for ever, the third was not fitted.
    assert_eq!(lines.len(), 1 + 2 * 9, "{text}");
    assert!(
        text.contains(",\"First, dry\",contact_w_m2k,412.5,W/(m² K),31,374.6,454.2,"),
        "{text}"
    );
    // 412.5 over and times exp(1.2816 x 31 / 412.5).
    assert!(text.contains(",'=Oiled,first_litre_s,900,s,45,"), "{text}");
    assert!(!text.contains("\n=") && !text.contains(",="));
}

#[test]
fn what_was_described_stands_beside_what_was_measured() {
    let mut document = household();
    document.bench.runs[0].fit = Some(kept_beside_description(RunId(901)));
    let runs = chosen(&document, &ALL[..2], &[]);
    assert!(has_description(&runs) && !has_description(&runs[1..]));
    for language in Language::ALL {
        with_voice(language, |voice| {
            let heads = |beside| measured(voice, &runs, beside).heads.len();
            assert_eq!((heads(true), heads(false)), (4, 3));
            let table = measured(voice, &runs, true);
            let described = (voice.strings.runs.report.as_described)("A");
            assert_eq!(table.heads[1], described);
            assert!(table.heads[2].starts_with("A · ") && table.heads[2] != described);
            // 825 over and times exp(1.2816 / 2) = 1.9.
            let cell = table.rows[0][1].replace('\u{A0}', " ");
            assert!(cell.starts_with("800 (400 "), "{cell}");
            assert!(cell.contains("1600") || cell.contains("1,600"), "{cell}");
            // Both for the same store; of the other run nobody kept it.
            let told_at: Vec<String> = table.rows[1]
                .iter()
                .skip(1)
                .map(|cell| cell.replace('\u{A0}', " "))
                .collect();
            assert_eq!(told_at, ["188 °C", "188 °C", NOTHING]);
            assert_eq!(table.rows[2][1], NOTHING, "{table:?}");
            let table = figures(voice, (&runs, true), &Figure::STANDARD, "");
            let of = |figure: Figure| {
                let rows = table.rows.iter();
                let mut rows = rows.filter(|row| row[0] == figure.name(voice.strings));
                rows.next().unwrap().clone()
            };
            // Minutes as described and as measured.
            assert!(of(Figure::BoilTime)[1].starts_with('8'));
            assert!(of(Figure::BoilTime)[2].starts_with("15"));
            assert_eq!(of(Figure::Efficiency)[1], NOTHING);
        });
    }
    let text = csv(&results(&runs));
    assert!(
        text.contains(",,contact_w_m2k,825,W/(m² K),412.5,434.7,1566,as described"),
        "{text}"
    );
    assert!(
        text.contains(
            ",\"First, dry\",time_to_boil_s,480,s,,,,heat network with the described values"
        ),
        "{text}"
    );
}

#[test]
fn one_description_of_several_runs_is_shown_once() {
    let mut document = household();
    for run in &mut document.bench.runs[..2] {
        run.fit = Some(kept_beside_description(run.id));
    }
    let runs = chosen(&document, &ALL[..2], &[]);
    with_voice(Language::English, |voice| {
        assert_eq!(measured(voice, &runs, true).heads.len(), 4);
    });
    // Another pot boils in another time as described.
    document.bench.runs[1]
        .fit
        .as_mut()
        .unwrap()
        .described_boil_s = Some(600.0);
    let runs = chosen(&document, &ALL[..2], &[]);
    with_voice(Language::English, |voice| {
        assert_eq!(measured(voice, &runs, true).heads.len(), 5);
    });
}

#[test]
fn a_fit_of_several_runs_is_told_once() {
    let mut document = household();
    for run in &mut document.bench.runs[..2] {
        let mut fit = kept_fit(RunId(901));
        fit.runs = vec![RunId(901), RunId(902)];
        fit.found.push(Found {
            parameter: Parameter::Loss,
            measured: Measured {
                value: 0.4,
                sd: 0.02,
            },
            told: false,
        });
        run.fit = Some(fit);
    }
    let rows = results(&chosen(&document, &ALL, &[]));
    let of = |figure: &str| rows.iter().filter(|row| row.figure.key() == figure).count();
    assert_eq!(of("contact_w_m2k"), 1);
    assert_eq!(of("time_to_boil_s"), 2);
    // What the runs did not tell is no result.
    assert_eq!(of("loss_w_k"), 0);
}

#[test]
fn what_is_compared_at_first_was_worked_out() {
    let document = household();
    assert_eq!(usual(&document), [RunId(902), RunId(901)]);
    assert_eq!(chosen(&document, &[RunId(7)], &[]), []);
    assert_eq!(
        file_name(at(20, 0)).len(),
        "duskpot-results-2026-05-03.csv".len()
    );
}
