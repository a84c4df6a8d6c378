//! The bench: readings come in, and what is found goes into the cooker.

use std::fmt::Write as _;

use thirtyfour::By;

use crate::page::Page;
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

/// A litre that comes to the boil on the store.
fn boil() -> String {
    let mut text = "time;store;pot\n".to_owned();
    for minute in 0..=40 {
        let t = f64::from(minute);
        let store_c = 240.0 - 70.0 * (1.0 - (-t / 14.0).exp());
        let pot_c = (96.0 - 78.0 * (-t / 9.0).exp()).min(95.0);
        let _ = writeln!(text, "17:{minute:02};{store_c:.1};{pot_c:.1}");
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
        page.until(
            "the figures are used",
            "return document.querySelector('[data-test=fit-use]').disabled",
        )
        .await?;
        // The cooker's jacket is a measured one from now on.
        page.open("#/cooker").await?;
        page.see("measured").await?;
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
        paste(page, "import-paste", &boil()).await?;
        tap(page, "import-read").await?;
        sheet_says(page, "41 rows over 40 min.").await?;
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

#[test]
fn a_long_file_opens_within_a_second_and_the_page_stays_live() {
    story(async |page| {
        at_import(page).await?;
        // The worker is there from the first text on.
        paste(page, "import-paste", "time (s);store\n0;200\n60;199\n").await?;
        tap(page, "import-read").await?;
        sheet_says(page, "2 rows over 1 min.").await?;
        page.evaluate(&format!(
            "{{ let text = 'elapsed (s);store;pot;air\\n';
                for (let row = 0; row < {ROWS}; row++) {{
                  const store = 40 + 200 * Math.exp(-row / 90000) + Math.sin(row) * 0.3;
                  text += `${{row}};${{store.toFixed(2)}};${{(20 + row / 9000).toFixed(2)}};18.5\\n`;
                }}
                const file = new File([text], 'logger.csv', {{ type: 'text/csv' }});
                const files = new DataTransfer();
                files.items.add(file);
                const field = document.querySelector('[data-test=import-file]');
                field.files = files.files;
                // Each frame that comes is a moment at which a tap would be answered.
                window.longest = 0;
                window.opened = null;
                const begin = performance.now();
                let last = begin;
                const look = () => {{
                  const now = performance.now();
                  window.longest = Math.max(window.longest, now - last);
                  last = now;
                  if (document.body.textContent.includes('{rows} rows')) {{
                    window.opened = now - begin;
                  }} else {{
                    setTimeout(look, 4);
                  }}
                }};
                field.dispatchEvent(new Event('change', {{ bubbles: true }}));
                look(); }}",
            rows = "200\u{202F}000",
        ))
        .await?;
        page.until("the file is open", "return window.opened !== null")
            .await?;
        let opened_ms = page.evaluate("return window.opened").await?;
        let longest_ms = page.evaluate("return window.longest").await?;
        println!("{ROWS} rows: open after {opened_ms} ms, longest wait {longest_ms} ms");
        assert!(opened_ms.as_f64().is_some_and(|ms| ms < 1000.0));
        assert!(longest_ms.as_f64().is_some_and(|ms| ms < 200.0));
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
