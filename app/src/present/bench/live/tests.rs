use model::presets::Preset;

use super::*;
use crate::i18n::Language;
use crate::present::cooker::tests::household_site;
use crate::present::tests::speaking;
use crate::state::bench::RunReadings;
use crate::state::sample::{at, test_run};

fn rig() -> Rig {
    Rig::new(
        &household_site(),
        &Preset::AluminiumInPerlite.cooker(200.0, 11.0),
    )
    .unwrap()
}

fn with_voice<T>(language: Language, now: LocalTime, work: impl FnOnce(&Voice<'_>) -> T) -> T {
    let (strings, formats) = speaking(language);
    work(&Voice {
        strings,
        formats: &formats,
        now,
    })
}

/// A cool-down that began at 16:00 with 250 °C and was read each ten minutes.
fn cool_down(readings: i64) -> TestRun {
    let mut run = test_run();
    run.about.kind = RunKind::CoolDown;
    (run.pots, run.ended, run.fit) = (Vec::new(), None, None);
    let typed = (0..readings).map(|n| Reading {
        store_c: Some(250.0 - 4.0 * n as f64),
        ..Reading::none(at(16, 0).plus_s(600 * n))
    });
    run.readings = RunReadings::Typed(typed.collect());
    run
}

fn plain(text: &str) -> String {
    text.replace('\u{A0}', " ")
}

#[test]
fn the_clock_runs_from_the_last_reading() {
    let (rig, run) = (rig(), cool_down(3));
    let foreseen = foreseen(&rig, &run).unwrap();
    let every_s = every_s(&run, Some(&foreseen));
    assert!((300.0..=1800.0).contains(&every_s), "{every_s}");
    let soon = timer(&run, Some(&foreseen), at(16, 21));
    assert_eq!(soon.due, at(16, 20).plus_s(every_s as i64));
    assert!(!soon.is_due());
    // Nothing is kept of the clock itself: an hour with the screen locked changes nothing.
    let later = timer(&run, Some(&foreseen), at(17, 20));
    assert_eq!(later.due, soon.due);
    assert_eq!(later.n_due, 3600 / every_s as i64);
}

#[test]
fn what_was_missed_is_said() {
    let (rig, run) = (rig(), cool_down(3));
    let foreseen = foreseen(&rig, &run);
    with_voice(Language::English, at(17, 20), |voice| {
        let timer = timer(&run, foreseen.as_ref(), voice.now);
        let clock = clock(
            voice,
            &run,
            foreseen.as_ref(),
            &timer,
            (Some(at(16, 21)), false),
        );
        assert!(clock.is_due && clock.large == "Read now", "{clock:?}");
        assert!(
            clock
                .lines
                .iter()
                .any(|line| line.contains("While the screen was off")),
            "{clock:?}"
        );
    });
    with_voice(Language::English, at(16, 21), |voice| {
        let timer = timer(&run, foreseen.as_ref(), voice.now);
        let clock = clock(voice, &run, foreseen.as_ref(), &timer, (None, false));
        assert_eq!(clock.before, "in");
        assert!(clock.large.ends_with(":00"), "{clock:?}");
    });
}

#[test]
fn nothing_is_late_in_what_lies_in_the_past() {
    let (rig, run) = (rig(), cool_down(3));
    let foreseen = foreseen(&rig, &run);
    let told = |language, now: LocalTime, is_told_later| {
        with_voice(language, now, |voice| {
            let timer = timer(&run, foreseen.as_ref(), now);
            let away = (Some(at(16, 21)), is_told_later);
            clock(voice, &run, foreseen.as_ref(), &timer, away)
        })
    };
    for language in Language::ALL {
        // The morning after, and while the paper is being copied.
        for (now, later) in [(at(16, 0).plus_s(57_600), false), (at(17, 20), true)] {
            let clock = told(language, now, later);
            assert!(!clock.is_due && clock.before.is_empty(), "{clock:?}");
            assert_eq!(clock.lines.len(), 1, "{clock:?}");
            assert!(!clock.lines[0].contains("late") && !clock.lines[0].contains("retraso"));
        }
    }
    assert!(told(Language::English, at(17, 20), false).is_due);
}

#[test]
fn a_pot_that_has_just_gone_in_is_read_soon() {
    let rig = rig();
    let mut run = cool_down(3);
    run.about.kind = RunKind::Free;
    run.pots = test_run().pots;
    run.pots[0].in_s = 1500.0;
    run.pots[0].out_s = None;
    let foreseen = foreseen(&rig, &run).unwrap();
    let timer = timer(&run, Some(&foreseen), at(16, 26));
    assert!(timer.every_s <= 300, "{timer:?}");
    assert_eq!(timer.due, at(16, 25).plus_s(timer.every_s));
}

#[test]
fn readings_are_told_latest_first_and_drawn_beside_what_was_foreseen() {
    let (rig, run) = (rig(), cool_down(4));
    let foreseen = foreseen(&rig, &run);
    for language in Language::ALL {
        with_voice(language, at(16, 35), |voice| {
            let rows = rows(voice, &run);
            assert_eq!(rows.len(), 4);
            assert_eq!(rows[0].0, at(16, 30));
            assert!(
                plain(&rows[0].1.title).ends_with("238 °C"),
                "{:?}",
                rows[0].1
            );
            let plot = plot(voice, &run, foreseen.as_ref(), Some(95.0)).unwrap();
            assert_eq!(plot.series.len(), 2);
            assert_eq!(plot.series[0].style, LineStyle::Measured);
            assert_eq!(plot.series[0].points.len(), 4);
            assert!(
                plain(&plot.sentence).contains("238 °C"),
                "{}",
                plot.sentence
            );
            assert_eq!(plot.table.1.rows.len(), 4);
            assert!(3 <= plot.x_ticks.len() && plot.x_ticks.len() <= 6);
        });
    }
}

#[test]
fn pots_are_told_with_what_was_left() {
    with_voice(Language::English, at(17, 0), |voice| {
        let said = pots(voice, &test_run());
        assert_eq!(
            plain(&said[0].1),
            "1.0 L of water, lid on, in from 16:05 to 16:25, 950 g left"
        );
    });
}

#[test]
fn without_readings_there_is_no_plot_and_the_clock_still_runs() {
    let run = cool_down(0);
    assert!(foreseen(&rig(), &run).is_none());
    with_voice(Language::English, at(16, 5), |voice| {
        assert!(plot(voice, &run, None, None).is_none());
        assert_eq!(timer(&run, None, voice.now).due, at(16, 10));
    });
}

#[test]
fn too_few_readings_have_told_nothing() {
    let rig = rig();
    let said = |readings| {
        let mut run = cool_down(readings);
        // Long after all that could be foreseen.
        run.started = at(16, 0).plus_s(-400_000);
        let foreseen = foreseen(&rig, &run).unwrap();
        with_voice(Language::English, at(20, 0).plus_s(400_000), |voice| {
            let timer = timer(&run, Some(&foreseen), voice.now);
            clock(voice, &run, Some(&foreseen), &timer, (None, false)).ends
        })
    };
    assert_eq!(said(1), "");
    assert!(said(5).contains("long enough"), "{}", said(5));
}
