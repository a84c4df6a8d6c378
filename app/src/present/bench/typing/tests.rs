use model::local_time::Day;

use super::*;
use crate::present::tests::english;
use crate::state::bench::RunReadings;
use crate::state::settings::Degrees;

fn at(hour: i64, minute: i64) -> LocalTime {
    Day(20_000).at_s(hour * 3600 + minute * 60)
}

/// A run that began then and goes on, with nothing read yet.
fn began(started: LocalTime) -> TestRun {
    TestRun {
        started,
        ended: None,
        pots: Vec::new(),
        readings: RunReadings::Typed(Vec::new()),
        ..crate::state::sample::test_run()
    }
}

fn typed(store: &str, time: &str) -> ReadingDraft {
    ReadingDraft {
        at: time.to_owned(),
        proposed: None,
        shows: [
            store.to_owned(),
            String::new(),
            String::new(),
            String::new(),
        ],
    }
}

#[test]
fn now_is_stamped_to_the_second() {
    let (_, formats) = english();
    let now = at(18, 5).plus_s(17);
    let reading = typed("182,5", "").read(&formats, &began(now), now).unwrap();
    assert_eq!((reading.at, reading.store_c), (now, Some(182.5)));
    assert_eq!((reading.pot_c, reading.air_c), (None, None));
}

#[test]
fn a_time_of_day_is_the_latest_that_has_been() {
    let (_, formats) = english();
    let read = |time: &str| {
        typed("180", time)
            .read(&formats, &began(at(-2, 0)), at(0, 20))
            .unwrap()
            .at
    };
    assert_eq!(read("00:10"), at(0, 10));
    assert_eq!(read("23:50"), at(23, 50).plus_s(-86_400));
}

#[test]
fn a_time_to_come_is_said_to_be_one() {
    let (_, formats) = english();
    let (started, now) = (at(17, 0), at(18, 0));
    let read = |time: &str| typed("180", time).read(&formats, &began(started), now);
    let to_come = Field::At.refuse(Wrong::InFuture);
    assert_eq!(read("18:30").unwrap_err(), to_come.into());
    // Before the run began: that is refused for what it is.
    assert_eq!(read("16:30").unwrap().at, at(16, 30));
    let run = began(started);
    let mut pot = PotDraft::new(crate::state::sample::pot(), &run, &formats);
    pot.at = "17:40".to_owned();
    let put_in = pot.read(&formats, &run, now).unwrap();
    assert!((put_in.in_s - 2400.0).abs() < 1e-9);
    pot.at = "19:00".to_owned();
    let to_come = Field::PutIn.refuse(Wrong::InFuture);
    assert_eq!(pot.read(&formats, &run, now).unwrap_err(), to_come.into());
    assert_eq!(out_at("17:55", &run, now), Ok(at(17, 55)));
    assert_eq!(out_at("", &run, now), Ok(now));
}

#[test]
fn a_changed_reading_keeps_its_second() {
    let (_, formats) = english();
    let former = Reading {
        store_c: Some(181.0),
        ..Reading::none(at(18, 5).plus_s(17))
    };
    let mut draft = ReadingDraft::of(&former, &formats);
    assert_eq!(
        (draft.at.as_str(), draft.shows[0].as_str()),
        ("18:05", "181")
    );
    draft.shows[0] = "183".to_owned();
    let reading = draft
        .changed(&formats, at(20, 0), (at(18, 0), &former))
        .unwrap();
    assert_eq!((reading.at, reading.store_c), (former.at, Some(183.0)));
    draft.at = "18:30".to_owned();
    let later = at(20, 0).plus_s(5 * 86_400);
    let moved = draft.changed(&formats, later, (at(18, 0), &former));
    assert_eq!(moved.unwrap().at, at(18, 30));
    draft.at = "20:30".to_owned();
    let to_come = draft.changed(&formats, at(20, 0), (at(18, 0), &former));
    assert_eq!(
        to_come.unwrap_err(),
        Field::At.refuse(Wrong::InFuture).into()
    );
}

#[test]
fn what_no_thermometer_shows_is_refused_in_its_field() {
    let (_, formats) = english();
    let wrong = |channel: Channel, text: &str| {
        let mut draft = typed("", "");
        draft.shows[channel.place()] = text.to_owned();
        draft
            .read(&formats, &began(at(17, 0)), at(18, 0))
            .unwrap_err()
            .field()
    };
    assert_eq!(wrong(Channel::Store, "9999"), Field::ReadingC);
    assert_eq!(wrong(Channel::Pot, "250"), Field::PotC);
    assert_eq!(wrong(Channel::Air, "-127"), Field::AirC);
    assert_eq!(wrong(Channel::Power, "-5"), Field::HeaterW);
    assert_eq!(wrong(Channel::Pot, "hot"), Field::PotC);
    assert!(
        typed("", "")
            .read(&formats, &began(at(17, 0)), at(18, 0))
            .unwrap_err()
            .is_empty_field()
    );
}

#[test]
fn fahrenheit_is_understood_as_it_is_shown() {
    let (_, mut formats) = english();
    formats.degrees = Degrees::Fahrenheit;
    let reading = typed("392", "")
        .read(&formats, &began(at(17, 0)), at(18, 0))
        .unwrap();
    assert!((reading.store_c.unwrap() - 200.0).abs() < 1e-9);
    assert_eq!(Channel::Store.unit(&formats), "°F");
}

#[test]
fn a_proposed_time_gives_way_to_what_a_person_wrote() {
    let mut draft = typed("", "");
    draft.propose(Some(at(18, 10)));
    assert_eq!(draft.at, "18:10");
    draft.propose(Some(at(18, 20)));
    assert_eq!(draft.at, "18:20");
    draft.at = "18:25".to_owned();
    draft.propose(Some(at(18, 30)));
    assert_eq!(
        (draft.at.as_str(), draft.proposed),
        ("18:25", Some(at(18, 20)))
    );
    // The evening before, though the clock has had that time today.
    let run = began(at(18, 0));
    assert_eq!(draft.when(&run, at(19, 0).plus_s(86_400)), Ok(at(18, 25)));
}

#[test]
fn a_pot_of_a_run_that_is_over_went_in_when_something_was_read() {
    let (_, formats) = english();
    let mut run = began(at(18, 0));
    run.ended = Some(at(20, 0));
    let reading = Reading {
        store_c: Some(200.0),
        ..Reading::none(at(18, 10))
    };
    run.readings = RunReadings::Typed(vec![reading]);
    let pot = PotDraft::new(crate::state::sample::pot(), &run, &formats);
    assert_eq!(pot.at, "18:10");
    let put_in = pot.read(&formats, &run, at(9, 0).plus_s(86_400)).unwrap();
    assert!((put_in.in_s - 600.0).abs() < 1e-9);
    assert_eq!(moved_at(&began(at(18, 0))), "");
}

#[test]
fn only_the_part_that_is_seen_is_written_down() {
    let (_, formats) = english();
    let now = at(18, 5);
    let mut draft = typed("182", "");
    draft.keep_only(Channel::Air);
    draft.shows[Channel::Air.place()] = "21".to_owned();
    let reading = draft.read(&formats, &began(now), now).unwrap();
    assert_eq!((reading.store_c, reading.air_c), (None, Some(21.0)));
}
