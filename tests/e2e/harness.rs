//! The stories are only as good as what they look with: this one plays on a page of its own.

use crate::story::story;

const FORM: &str = r##"<!doctype html><html lang="en"><title>Form</title>
<link rel="icon" href="data:,">
<h1>Beans</h1>
<label>Litres of water <input type="number" value="1"></label>
<label for="pot">Pot</label><select id="pot"><option>Small</option><option>Large</option></select>
<button onclick="document.querySelector('output').textContent = document.querySelector('input').value + ' L'">
  <svg aria-hidden="true"></svg>Put it in
</button>
<button aria-label="More water">+</button><button hidden>Put it in</button>
<output aria-label="Answer"></output>"##;

#[test]
fn things_are_found_by_role_and_name() {
    story(async |page| {
        page.site.add("form.html", FORM)?;
        page.open("form.html").await?;
        page.role("heading", "Beans").await?;
        page.fill("Litres of water", "2.5").await?;
        page.press("Put it in").await?;
        page.see("2.5 L").await?;
        assert_eq!(page.role("status", "Answer").await?.text().await?, "2.5 L");
        assert_eq!(page.field("Pot").await?.tag_name().await?, "select");
        assert_eq!(page.role("button", "More water").await?.text().await?, "+");
        Ok(())
    });
}
