#!/bin/sh
# Runs every check of the project: form, lint, documentation, the build and its size, and all tests.
#
#     sh tests/run.sh                 everything
#     sh tests/run.sh --no-browser    without the build and the stories in a browser: the quick part
#
# Installs first what is missing, so that no test has to: the tools of the build (see
# app/toolchain.sh), Chromium and its driver. Ends with the closing lines of `cargo test`.
set -eu
cd "$(dirname "$0")/.."
. app/toolchain.sh

browser=yes
case ${1:-} in
    '') ;;
    --no-browser) browser=no ;;
    *) fail "unknown option '$1'; there is one: --no-browser" ;;
esac

# Where there is no other Rust, the one that builds for the browser does both.
native_rust() {
    if ! { have cargo && new_enough rustc; }; then
        mkdir -p "$TOOLBOX"
        compiler
        PATH=$TOOLBOX:$PATH
        export PATH
    fi
    if ! cargo fmt --version >/dev/null 2>&1 || ! cargo clippy --version >/dev/null 2>&1; then
        say 'installing rustfmt and clippy'
        if have rustup; then
            rustup component add rustfmt clippy >&2 || :
        elif have apt-get; then
            apt_install rustfmt-web rust-web-clippy || :
        fi
        cargo fmt --version >/dev/null 2>&1 && cargo clippy --version >/dev/null 2>&1 ||
            fail 'rustfmt and clippy are missing; install them for the Rust that cargo uses.'
    fi
}

chromium() {
    have chromedriver && { have chromium || have google-chrome || have chromium-browser; }
}

test_browser() {
    chromium && return
    say 'installing Chromium and its driver with apt-get (needs an administrator)'
    if have apt-get; then apt_install chromium chromium-driver || :; fi
    chromium || fail 'the stories need Chromium and chromedriver of the same version on PATH.' \
        'Install both by hand, or run the rest: sh tests/run.sh --no-browser'
}

# What only the browser compiles is linted too, where clippy knows that target.
lint_for_browser() {
    (
        web_toolchain
        if ! cargo clippy --version >/dev/null 2>&1 || ! has_target clippy-driver; then
            say "no clippy for $WASM_TARGET here: the app is linted for this machine only"
            return
        fi
        cargo clippy --quiet --locked --package app --target "$WASM_TARGET" -- -D warnings
    )
}

native_rust
features=
if [ "$browser" = yes ]; then
    test_browser
    features='--features checks/browser'
fi

say 'form, lint and documentation'
cargo fmt --all --check
# The variable holds one option and its value, or nothing.
# shellcheck disable=SC2086
cargo clippy --quiet --locked --workspace --all-targets $features -- -D warnings
# Units in brackets, "[s]", look like links to rustdoc, and are none.
RUSTDOCFLAGS='-D warnings -A rustdoc::broken_intra_doc_links' cargo doc --quiet --locked --workspace --no-deps --document-private-items

if [ "$browser" = yes ]; then
    say 'the site, for the stories in the browser'
    lint_for_browser
    sh app/build.sh
fi

say 'tests'
# shellcheck disable=SC2086
exec cargo test --locked --workspace $features
