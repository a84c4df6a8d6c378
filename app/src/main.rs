//! Starts the app in the page.

use app::reactive::{IntoView, mount};
use app::shell::App;

fn main() {
    console_error_panic_hook::set_once();
    mount(|| App().into_view());
}
