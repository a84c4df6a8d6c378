//! Starts the bench's worker, which the page asks to read files and to fit cookers.

use app::bench::work::work;
use app::shell::locale::locale_format;

fn main() {
    work(locale_format);
}
