#!/bin/sh
# Builds the app as a static site in dist/, ready for any web host and any folder of it.
#
#     sh app/build.sh
#
# Installs first what is missing (see toolchain.sh). When nothing changed since the last build, it
# says so and leaves dist/ as it is.
set -eu
cd "$(dirname "$0")/.."
. app/toolchain.sh

web_toolchain
cargo build --quiet --locked --package split || fail 'the tool that cuts the program could not be built.'
standard_library_for_size

# Everything the site is made of, and what it is made with.
fingerprint() {
    {
        find app model public index.html .trunk.toml Cargo.toml Cargo.lock -type f | LC_ALL=C sort | xargs cksum
        rustc -vV
        printf '%s\n' "$TRUNK_VERSION" "$bindgen_version" "$WASM_OPT_VERSION" "${CARGO_UNSTABLE_BUILD_STD_FEATURES:-}"
    } | cksum
}

stamp=target/web/built
now=$(fingerprint)
if [ -f dist/index.html ] && [ "$(cat "$stamp" 2>/dev/null)" = "$now" ]; then
    say 'nothing changed since the last build'
    is_new=
else
    rm -f "$stamp"
    # All tools are there by now, so Trunk has nothing to look up. The tool that cuts the program
    # goes by the names of functions, which must be whole and each its own; wasm-opt drops the names,
    # and merges functions that are the same. Nobody reads in a browser where in
    # the code it stopped, or values as a programmer writes them; without both the app is
    # smaller. RUSTC_BOOTSTRAP lets a stable compiler take these options.
    SPLIT=$CARGO_TARGET_DIR/debug/split RUSTC_BOOTSTRAP=1 RUSTFLAGS="-Csymbol-mangling-version=v0 -Zmerge-functions=disabled -Zlocation-detail=none -Zfmt-debug=none $STD_FLAGS" \
        trunk --skip-version-check build --release --cargo-profile web --minify true --locked || fail 'the build failed; the lines above say why.'
    printf '%s\n' "$now" >"$stamp"
    is_new=yes
fi
# Weighing takes longer than all else where nothing is new.
[ -z "$is_new${SIZE_LIMIT:-}" ] || sh app/size.sh dist
say 'the site is in dist/'
