//! Finds things on the page as a screen reader does: by role and name.

use std::error::Error;
use std::sync::atomic::{AtomicU32, Ordering};

use serde_json::{Value, json};
use thirtyfour::{By, WebDriver, WebElement};

/// Roles of what a person can fill in or set, as the browser names them.
pub(crate) const FIELDS: &[&str] = &[
    "checkbox",
    "combobox",
    "listbox",
    "radio",
    "searchbox",
    "slider",
    "spinbutton",
    "switch",
    "textbox",
    "Date",
    "DateTime",
    "InputTime",
];

/// Every element whose accessible name is `name` and whose role is one of `roles`.
pub(crate) async fn by_role(
    web: &WebDriver,
    roles: &[&str],
    name: &str,
) -> Result<Vec<WebElement>, Box<dyn Error>> {
    let cdp = web.cdp();
    let document = cdp
        .send_raw("DOM.getDocument", json!({ "depth": 0 }))
        .await?;
    let query = json!({ "nodeId": document["root"]["nodeId"], "accessibleName": name });
    let answer = cdp.send_raw("Accessibility.queryAXTree", query).await?;
    let mut elements = Vec::new();
    for node in answer["nodes"].as_array().into_iter().flatten() {
        let role = node["role"]["value"].as_str().unwrap_or_default();
        let is_ignored = node["ignored"].as_bool().unwrap_or_default();
        if !is_ignored && roles.contains(&role) {
            elements.push(element(web, &node["backendDOMNodeId"]).await?);
        }
    }
    Ok(elements)
}

/// From the browser's own number of an element to the driver's: it is marked for a moment.
async fn element(web: &WebDriver, node: &Value) -> Result<WebElement, Box<dyn Error>> {
    static MARKS: AtomicU32 = AtomicU32::new(0);
    let mark = format!("found-{}", MARKS.fetch_add(1, Ordering::Relaxed));
    let cdp = web.cdp();
    let resolved = cdp
        .send_raw("DOM.resolveNode", json!({ "backendNodeId": node }))
        .await?;
    let object = &resolved["object"]["objectId"];
    let call = |function: &str| json!({ "objectId": object, "functionDeclaration": function, "arguments": [{ "value": mark }] });
    let set = call("function (mark) { this.setAttribute(mark, '') }");
    cdp.send_raw("Runtime.callFunctionOn", set).await?;
    let element = web.find(By::Css(format!("[{mark}]"))).await;
    let unset = call("function (mark) { this.removeAttribute(mark) }");
    cdp.send_raw("Runtime.callFunctionOn", unset).await?;
    Ok(element?)
}
