//! Starts the app in the page.

use app::reactive::{IntoView, mount};
use app::shell::App;

fn main() {
    mount(|| App().into_view());
}
