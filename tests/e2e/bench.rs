//! The bench: readings come in, and what is found goes into the cooker.

use std::fmt::Write as _;

use model::presets::Preset;
use thirtyfour::By;

use crate::page::Page;
use crate::site::root;
use crate::story::{Outcome, story};

type Answer<T> = Result<T, Box<dyn std::error::Error>>;

/// A household of a person's own, at the page where readings are brought in.
async fn at_import(page: &Page) -> Outcome {
    page.open("").await?;
    tap(page, "start-set-up").await?;
    for _ in 0..8 {
        if page.has_test("verdict").await? {
            break;
        }
        tap(page, "start-next").await?;
    }
    page.open("#/bench").await?;
    tap(page, "to-import").await?;
    page.test("import-paste").await?;
    Ok(())
}

async fn tap(page: &Page, test: &str) -> Outcome {
    page.test(test).await?;
    page.evaluate(&format!(
        "document.querySelector('[data-test=\"{test}\"]').click()"
    ))
    .await?;
    Ok(())
}

/// Sets the text of a field at once, as a paste does.
async fn paste(page: &Page, test: &str, text: &str) -> Outcome {
    page.test(test).await?;
    let text = serde_json::to_string(text)?;
    page.evaluate(&format!(
        "{{ const field = document.querySelector('[data-test=\"{test}\"]');
            field.value = {text};
            field.dispatchEvent(new Event('input', {{ bubbles: true }})); }}"
    ))
    .await?;
    Ok(())
}

async fn said(page: &Page, test: &str) -> Answer<String> {
    Ok(page.test(test).await?.text().await?.replace('\u{A0}', " "))
}

/// Waits until the sheet of the worker says this.
async fn sheet_says(page: &Page, text: &str) -> Outcome {
    let says = serde_json::to_string(text)?;
    page.until(
        &format!("the sheet says {text}"),
        &format!(
            "return [...document.querySelectorAll('[data-test=sheet]')].some(sheet =>
                sheet.textContent.replaceAll('\\u00a0', ' ').includes({says}))"
        ),
    )
    .await
}

/// A night of cooling of the usual cooker, by the law of one lump.
fn cool_down() -> String {
    let mut text = "elapsed (min);store;air\n".to_owned();
    for tick in 0..=60 {
        let minutes = 10.0 * f64::from(tick);
        let store_c = 18.0 + 190.0 * (-minutes / 900.0).exp();
        let _ = writeln!(text, "{minutes};{store_c:.1};18");
    }
    text
}

/// A litre on the usual cooker, store and pot as one lump each; the seat as it conducts. \[W/K\]
fn boil(seat_w_k: f64) -> String {
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 0.0);
    let store_kg: f64 = cooker
        .store
        .charges
        .iter()
        .map(|charge| charge.mass_kg)
        .sum();
    // Aluminium near 150 °C, and a litre with its pot of half a kilogram. \[J/K\]
    let (store_j_k, pot_j_k) = (960.0 * store_kg, 4186.0 + 450.0);
    // Out of the jacket, off the pot. \[W/K\]
    let (loss_w_k, pot_loss_w_k) = (0.3, 0.5);
    let (mut store_c, mut pot_c, air_c) = (230.0, 18.0, 18.0);
    let mut text = "time;store;pot\n".to_owned();
    for minute in 0..=45 {
        let _ = writeln!(text, "17:{minute:02};{store_c:.1};{pot_c:.1}");
        for _ in 0..60 {
            let across_w = seat_w_k * (store_c - pot_c);
            store_c -= (across_w + loss_w_k * (store_c - air_c)) / store_j_k;
            pot_c += (across_w - pot_loss_w_k * (pot_c - air_c)) / pot_j_k;
            pot_c = f64::min(pot_c, 94.0);
        }
    }
    text
}

#[test]
fn a_cool_down_is_pasted_and_its_loss_is_used() {
    story(async |page| {
        at_import(page).await?;
        paste(page, "import-paste", &cool_down()).await?;
        tap(page, "import-read").await?;
        sheet_says(page, "61 rows over 10 h.").await?;
        sheet_says(page, "Nothing in it looks wrong.").await?;
        tap(page, "import-keep").await?;
        sheet_says(page, "Loss through the jacket").await?;
        assert!(page.hash().await?.ends_with("/fit"));
        tap(page, "fit-use").await?;
        // What changes is told first, with its unit.
        page.see("What changes in").await?;
        assert!(said(page, "fit-changes").await?.contains("W/K"));
        page.screenshot("fit-changes").await?;
        tap(page, "fit-use-now").await?;
        page.until(
            "the figures are used",
            "return document.querySelector('[data-test=fit-use]').disabled",
        )
        .await?;
        // The cooker's jacket is a measured one from now on.
        page.open("#/cooker").await?;
        page.see("the jacket was measured, not described").await?;
        page.is_kept().await?;
        // What is kept is there after a reload, rows and all, also of the file.
        page.open("#/bench").await?;
        assert!(said(page, "runs").await?.contains("61 readings in 10 h"));
        page.reload().await?;
        tap(page, "run-line").await?;
        tap(page, "run-to-fit").await?;
        sheet_says(page, "Loss through the jacket").await
    });
}

#[test]
fn a_boil_says_what_limited_it_and_what_is_missing_is_asked_for() {
    story(async |page| {
        at_import(page).await?;
        paste(page, "import-paste", &boil(6.0)).await?;
        tap(page, "import-read").await?;
        sheet_says(page, "46 rows over 45 min.").await?;
        tap(page, "import-keep").await?;
        page.until(
            "the air is asked for",
            "return document.querySelector('[data-test=import-air]').getAttribute('aria-invalid') === 'true'",
        )
        .await?;
        paste(page, "import-air", "18").await?;
        paste(page, "import-water", "1").await?;
        tap(page, "import-keep").await?;
        sheet_says(page, "What limited the pot").await?;
        sheet_says(page, "Where the heat went while the pot was in").await?;
        sheet_says(page, "Time to boil, as read").await
    });
}

#[test]
fn columns_are_corrected_by_hand() {
    story(async |page| {
        at_import(page).await?;
        paste(
            page,
            "import-paste",
            "Zeit;A;B\n0;20;250\n60;25;248\n120;30;246\n",
        )
        .await?;
        tap(page, "import-read").await?;
        sheet_says(page, "No names of columns were understood.").await?;
        page.evaluate(
            "{ const [, second, third] = document.querySelectorAll('[data-test=import-column]');
               second.value = '7';
               second.dispatchEvent(new Event('change', { bubbles: true })); }",
        )
        .await?;
        page.until(
            "the second column is not used",
            "return document.querySelector('[data-test=import-trouble]') !== null",
        )
        .await?;
        page.evaluate(
            "{ const third = document.querySelectorAll('[data-test=import-column]')[2];
               third.value = '2';
               third.dispatchEvent(new Event('change', { bubbles: true })); }",
        )
        .await?;
        sheet_says(page, "The store went between 246 °C and 250 °C.").await
    });
}

/// Rows of a logger's long file.
const ROWS: usize = 200_000;

/// A reading a second of store, pot and air, as a logger writes them.
fn long_file() -> String {
    let mut text = "elapsed (s);store;pot;air\n".to_owned();
    for row in 0..ROWS {
        let s = row as f64;
        let (store_c, pot_c) = (
            40.0 + 200.0 * (-s / 9e4).exp() + 0.3 * s.sin(),
            20.0 + s / 9e3,
        );
        let _ = writeln!(text, "{row};{store_c:.2};{pot_c:.2};18.5");
    }
    text
}

/// How many programs want each processor: on a busy machine the browser gets its share of the time.
fn rivals() -> f64 {
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    let load = load.split(' ').next().and_then(|load| load.parse().ok());
    let processors = std::thread::available_parallelism().map_or(1, usize::from);
    (load.unwrap_or(0.0) / processors as f64).max(1.0)
}

#[test]
fn a_long_file_opens_within_a_second_and_the_page_stays_live() {
    story(async |page| {
        at_import(page).await?;
        // The worker is there from the first text on.
        paste(page, "import-paste", "time (s);store\n0;200\n60;199\n").await?;
        tap(page, "import-read").await?;
        sheet_says(page, "2 rows over 1 min.").await?;
        // Timed by the page itself, from the picking of the file on.
        page.evaluate(
            "window.longest = 0;
             window.taps = 0;
             window.opened = null;
             document.querySelector('[data-test=import-file]').addEventListener('change', () => {
               const begin = performance.now();
               let last = begin;
               // A tap every few milliseconds; the page answers it or keeps it waiting.
               const look = () => {
                 const now = performance.now();
                 window.longest = Math.max(window.longest, now - last);
                 window.taps += 1;
                 document.querySelector('[data-test=import-paste]').click();
                 last = performance.now();
                 const sheet = document.querySelector('[data-test=sheet]');
                 if (sheet && /200.000 rows/.test(sheet.textContent)) {
                   window.opened = now - begin;
                 } else {
                   setTimeout(look, 4);
                 }
               };
               setTimeout(look, 4);
             }, { capture: true })",
        )
        .await?;
        let file = root().join(format!("target/e2e/logger-{}.csv", std::process::id()));
        std::fs::write(&file, long_file())?;
        page.test("import-file")
            .await?
            .send_keys(file.to_string_lossy())
            .await?;
        page.until("the file is open", "return window.opened !== null")
            .await?;
        let number = async |name: &str| -> Answer<f64> {
            let value = page.evaluate(&format!("return window.{name}")).await?;
            value.as_f64().ok_or_else(|| format!("no {name}").into())
        };
        let (opened_ms, longest_ms, taps) = (
            number("opened").await?,
            number("longest").await?,
            number("taps").await?,
        );
        std::fs::remove_file(&file)?;
        let rivals = rivals();
        println!(
            "{ROWS} rows: open after {opened_ms:.0} ms; {taps:.0} taps answered meanwhile, the slowest \
             after {longest_ms:.0} ms; {rivals:.1} programs a processor"
        );
        assert!(opened_ms < 1000.0 * rivals, "{opened_ms} ms");
        assert!(longest_ms < 100.0 * rivals && 3.0 < taps, "{longest_ms} ms");
        Ok(())
    });
}

#[test]
fn a_worker_that_cannot_start_is_said_in_words() {
    story(async |page| {
        page.site
            .add("bench-worker.js", "throw new Error('broken');")?;
        at_import(page).await?;
        paste(page, "import-paste", &cool_down()).await?;
        tap(page, "import-read").await?;
        let trouble = said(page, "import-trouble").await?;
        assert!(trouble.contains("can’t start"), "{trouble}");
        // The browser itself logs the error.
        page.console_errors().await?;
        let field = page.test("import-paste").await?;
        assert_eq!(field.tag_name().await?, "textarea");
        assert!(
            page.test("back")
                .await?
                .find_all(By::Tag("svg"))
                .await?
                .len()
                == 1
        );
        Ok(())
    });
}

/// Brings in a pasted run and waits for its figures.
async fn bring_in(page: &Page, text: &str) -> Outcome {
    page.open("#/bench").await?;
    tap(page, "to-import").await?;
    paste(page, "import-paste", text).await?;
    tap(page, "import-read").await?;
    sheet_says(page, "rows over").await?;
    tap(page, "import-keep").await?;
    sheet_says(page, "Loss through the jacket").await
}

#[test]
fn two_logged_nights_are_fitted_and_drawn_together_and_travel_with_a_copy() {
    story(async |page| {
        at_import(page).await?;
        bring_in(page, &cool_down()).await?;
        bring_in(page, &cool_down().replace("elapsed", "time")).await?;
        page.evaluate(
            "document.querySelectorAll('[data-test=fit-run]').forEach(run => {
               if (run.getAttribute('aria-checked') !== 'true' && !run.checked) run.click();
             })",
        )
        .await?;
        sheet_says(page, "From 2 runs together.").await?;
        sheet_says(page, "How the figures hang together").await?;
        let both_are_drawn = async || {
            page.open("#/bench/compare").await?;
            page.until(
                "both nights to be drawn",
                "return [...document.querySelectorAll('[data-test=compare-store] svg path')]
                   .filter(line => 40 < (line.getAttribute('d') || '').length).length >= 2",
            )
            .await
        };
        both_are_drawn().await?;
        page.is_kept().await?;
        page.open("#/more/copies").await?;
        tap(page, "copy-out").await?;
        let copy = page.downloaded("duskpot").await?;
        assert!(copy.contains("elapsed (min);store"), "no readings in it");
        // On a device that knows nothing.
        page.evaluate(
            "const asked = indexedDB.open('duskpot.readings');
             asked.onsuccess = () => {
               const shelves = [...asked.result.objectStoreNames];
               const work = asked.result.transaction(shelves, 'readwrite');
               shelves.forEach(shelf => work.objectStore(shelf).clear());
               work.oncomplete = () => { asked.result.close(); window.emptied = true; };
             };",
        )
        .await?;
        page.until("the shelf is empty", "return window.emptied === true")
            .await?;
        page.evaluate("localStorage.clear()").await?;
        page.open("#/more/copies").await?;
        page.reload().await?;
        let file = root().join(format!("target/e2e/copy-{}.json", std::process::id()));
        std::fs::write(&file, copy)?;
        page.test("copy-in")
            .await?
            .send_keys(file.to_string_lossy())
            .await?;
        tap(page, "copy-replace").await?;
        page.test("verdict").await?;
        std::fs::remove_file(&file)?;
        page.open("#/bench").await?;
        let runs = said(page, "runs").await?;
        assert_eq!(runs.matches("61 readings in 10 h").count(), 2, "{runs}");
        both_are_drawn().await
    });
}

#[test]
fn a_price_is_said_with_what_it_buys() {
    story(async |page| {
        at_import(page).await?;
        paste(page, "import-paste", &boil(0.8)).await?;
        tap(page, "import-read").await?;
        sheet_says(page, "46 rows over 45 min.").await?;
        paste(page, "import-air", "18").await?;
        paste(page, "import-water", "1").await?;
        tap(page, "import-keep").await?;
        sheet_says(page, "What would make it boil").await?;
        tap(page, "fit-prices").await?;
        page.evaluate(
            "document.querySelectorAll('[data-test=fit-price]').forEach(field => {
               field.value = '12';
               field.dispatchEvent(new Event('input', { bubbles: true }));
             })",
        )
        .await?;
        sheet_says(page, "costs 12").await
    });
}
