//! Starts the bench's worker, which the page asks to read files and to fit cookers.

use app::bench::work::work;
use app::shell::locale::locale_format;

fn main() {
    console_error_panic_hook::set_once();
    work(locale_format);
}
