# What building for the browser needs: found where it is, installed where it is not.
#
# Sourced by the commands of this repository, with the root of the repository as working directory.
# `web_toolchain` leaves one folder, target/web/bin, with a link to each program the build calls, and
# puts it first on PATH: what else a machine holds can't get in the way, and nothing is installed
# into the repository.

TRUNK_VERSION=0.21.14
BINARYEN_VERSION=132.0.0
WASM_TARGET=wasm32-unknown-unknown
RUST_MINOR=$(sed -n 's/^rust-version = "1\.\([0-9]*\).*/\1/p' Cargo.toml)
TOOL_CACHE=${XDG_CACHE_HOME:-$HOME/.cache}/duskpot
CARGO_BIN=${CARGO_HOME:-$HOME/.cargo}/bin
TOOLBOX=$PWD/target/web/bin

# rustup must not fetch a whole toolchain behind our back.
RUSTUP_AUTO_INSTALL=0
export RUSTUP_AUTO_INSTALL

say() { printf '== %s\n' "$*" >&2; }

fail() {
    printf '== %s\n' "$@" >&2
    exit 1
}

have() { command -v "$1" >/dev/null 2>&1; }

# Debian packages are the one thing that needs an administrator. None of the machine's is removed.
as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    elif have sudo; then
        sudo "$@"
    else
        return 1
    fi
}

apt_install() {
    as_root apt-get update -qq </dev/null >&2 || say 'apt-get could not refresh its lists; trying with the old ones'
    as_root env DEBIAN_FRONTEND=noninteractive \
        apt-get install -y -qq --no-install-recommends --no-remove "$@" </dev/null >&2
}

# A closed network may swallow packets instead of refusing them.
at_most() {
    seconds=$1
    shift
    if have timeout; then timeout "$seconds" "$@"; else "$@"; fi
}

# Puts program $1 into the toolbox as $2; it may have been found there.
link() {
    [ "$1" = "$TOOLBOX/$2" ] || ln -sf "$1" "$TOOLBOX/$2"
}

# --- The compiler ---------------------------------------------------------------------------------

new_enough() {
    minor=$("$1" --version 2>/dev/null | sed -n 's/^rustc 1\.\([0-9]*\).*/\1/p')
    [ "${minor:-0}" -ge "$RUST_MINOR" ]
}

has_target() {
    libdir=$("$1" --print target-libdir --target "$WASM_TARGET" 2>/dev/null) || return 1
    set -- "$libdir"/libstd-*.rlib
    [ -e "$1" ]
}

# The first of: what the machine has, what rustup can add, what Debian has.
compiler() {
    if [ "$(command -v rustc)" != /usr/bin/rustc ] && has_target rustc && new_enough rustc; then
        link_compiler "$(command -v cargo)" "$(command -v rustc)"
    elif debian_is_ready; then
        link_compiler /usr/bin/cargo /usr/bin/rustc
    elif have rustup && new_enough rustc && rustup_target; then
        link_compiler "$(command -v cargo)" "$(command -v rustc)"
    elif have apt-get; then
        say "using Debian's rustc-web to compile for the browser"
        debian_compiler
        link_compiler /usr/bin/cargo /usr/bin/rustc
    else
        fail "no Rust 1.$RUST_MINOR or later that can compile for $WASM_TARGET was found, and no apt-get to install one." \
            "Install rustup (https://rustup.rs), then run: rustup target add $WASM_TARGET"
    fi
}

rustup_target() {
    say "rustup target add $WASM_TARGET"
    if at_most 300 rustup -q target add "$WASM_TARGET" >/dev/null 2>&1 && has_target rustc; then
        return
    fi
    say 'rustup can add no target here'
    return 1
}

link_compiler() {
    link "$1" cargo
    link "$2" rustc
}

# Debian's Rust for web browsers is recent and comes with the sources of the standard library, but
# without the library built for the browser.
debian_compiler() {
    if ! { [ -x /usr/bin/cargo ] && new_enough /usr/bin/rustc && [ -e /usr/bin/rust-lld ] && [ -d /usr/lib/rustlib/src ]; }; then
        say 'installing rustc-web and what belongs to it with apt-get (needs an administrator)'
        apt_install rustc-web cargo-web rust-web-src rust-web-llvm ||
            fail "apt-get could not install rustc-web, which can't stand beside Debian's own rustc or rustup." \
                "Install rustup (https://rustup.rs), then run: rustup target add $WASM_TARGET"
        # rust-lld is a link to a linker that no package above depends on.
        if [ ! -e /usr/bin/rust-lld ]; then
            apt_install "$(basename "$(readlink /usr/bin/rust-lld)")" || fail 'apt-get could not install the linker lld.'
        fi
        new_enough /usr/bin/rustc || fail "Debian's rustc here is older than 1.$RUST_MINOR; install rustup (https://rustup.rs)."
    fi
    debian_is_ready || debian_standard_library
}

DEBIAN_RUSTLIB=/usr/lib/rustlib/$WASM_TARGET/lib

# The library is told from one that an older compiler left behind by the text in `built-by`.
debian_is_ready() {
    [ -f "$DEBIAN_RUSTLIB/built-by" ] && [ -x /usr/bin/cargo ] && new_enough /usr/bin/rustc &&
        /usr/bin/rustc -vV | cmp -s - "$DEBIAN_RUSTLIB/built-by"
}

debian_standard_library() {
    say "building the standard library for $WASM_TARGET with Debian's rustc-web (half a minute)"
    scratch=$(mktemp -d)
    mkdir "$scratch/src"
    : >"$scratch/src/lib.rs"
    printf '[package]\nname = "empty"\nedition = "2021"\n[workspace]\n' >"$scratch/Cargo.toml"
    # A build with lto needs the bitcode; RUSTC_BOOTSTRAP lets a stable compiler take -Zbuild-std.
    (
        cd "$scratch" &&
            RUSTFLAGS=-Cembed-bitcode=yes RUSTC=/usr/bin/rustc RUSTC_BOOTSTRAP=1 CARGO_TARGET_DIR="$scratch/target" \
                /usr/bin/cargo build --quiet --release --target "$WASM_TARGET" \
                -Zbuild-std=std,panic_abort,panic_unwind,proc_macro,test >&2
    ) || fail 'the standard library for the browser could not be built; the lines above say why.'
    rm -f "$scratch/target/$WASM_TARGET/release/deps"/libempty-*
    as_root mkdir -p "$DEBIAN_RUSTLIB" &&
        as_root find "$DEBIAN_RUSTLIB" -name '*.rlib' -delete &&
        as_root cp "$scratch/target/$WASM_TARGET/release/deps"/*.rlib "$DEBIAN_RUSTLIB" &&
        /usr/bin/rustc -vV | as_root tee "$DEBIAN_RUSTLIB/built-by" >/dev/null ||
        fail "the standard library could not be copied to $DEBIAN_RUSTLIB."
    rm -rf "$scratch"
}

# --- The standard library for size ----------------------------------------------------------------

# With the sources of the standard library it is built with the app, for size and without what a
# program says of itself when it fails, which nobody reads in a browser. Sets STD_FLAGS, empty where
# there are no sources.
standard_library_for_size() {
    STD_FLAGS=
    sources=$(rustc --print sysroot)/lib/rustlib/src/rust/library/std/Cargo.toml
    if [ ! -f "$sources" ] && have rustup; then
        say 'rustup component add rust-src'
        at_most 300 rustup -q component add rust-src >/dev/null 2>&1 || :
    fi
    if [ ! -f "$sources" ]; then
        say 'no sources of the standard library here: the app is built all the same, a tenth larger'
        return
    fi
    CARGO_UNSTABLE_BUILD_STD=std,panic_abort
    CARGO_UNSTABLE_BUILD_STD_FEATURES=optimize_for_size
    export CARGO_UNSTABLE_BUILD_STD CARGO_UNSTABLE_BUILD_STD_FEATURES
    STD_FLAGS='-Zunstable-options -Cpanic=immediate-abort'
    # Compilers before 1.91 have a feature of the library in its place.
    # shellcheck disable=SC2086
    if ! RUSTC_BOOTSTRAP=1 rustc $STD_FLAGS --print cfg >/dev/null 2>&1; then
        STD_FLAGS=
        CARGO_UNSTABLE_BUILD_STD_FEATURES=optimize_for_size,panic_immediate_abort
    fi
}

# --- Programs from crates.io ----------------------------------------------------------------------

# Prints the path of program $1 at version $2.
find_tool() {
    for candidate in "$(command -v "$1" || :)" "$CARGO_BIN/$1" "$TOOL_CACHE/$1-$2/bin/$1"; do
        if [ -n "$candidate" ] && [ "$("$candidate" --version 2>/dev/null | awk '{ print $2; exit }')" = "$2" ]; then
            printf '%s\n' "$candidate"
            return
        fi
    done
    return 1
}

# cargo_tool <program> <crate> <version> [cargo install options]
cargo_tool() {
    program=$1 crate=$2 version=$3
    shift 3
    if ! find_tool "$program" "$version" >/dev/null; then
        # Another version that someone put into cargo's folder is left alone.
        if [ -e "$CARGO_BIN/$program" ]; then set -- "$@" --root "$TOOL_CACHE/$program-$version"; fi
        say "installing $crate $version (once; some minutes where it must be compiled)"
        install_crate "$crate" "$version" "$@" || fail "$crate $version could not be installed; the lines above say why."
    fi
    found=$(find_tool "$program" "$version") || fail "$program $version was installed, but is not where cargo puts programs."
    link "$found" "$program"
}

install_crate() {
    crate=$1 version=$2
    shift 2
    if have cargo-binstall; then
        cargo binstall --no-confirm "$@" "$crate@$version" >&2 </dev/null && return
    fi
    # The target folder of this repository is no place for the parts of a tool.
    (
        unset CARGO_TARGET_DIR
        PATH=$TOOLBOX:$PATH
        cargo install --quiet "$@" "$crate@$version" >&2 </dev/null
    )
}

# --- wasm-opt -------------------------------------------------------------------------------------

# Makes the download a fifth smaller. Sets WASM_OPT_VERSION, empty where there is none.
wasm_opt() {
    program=$(command -v wasm-opt || :)
    if [ -z "$program" ] && have npm; then
        folder=$TOOL_CACHE/binaryen-$BINARYEN_VERSION
        program=$folder/node_modules/.bin/wasm-opt
        if [ ! -x "$program" ]; then
            say "installing binaryen $BINARYEN_VERSION from npm into $folder"
            mkdir -p "$folder"
            at_most 300 npm install --silent --no-fund --no-audit --prefix "$folder" "binaryen@$BINARYEN_VERSION" >&2 </dev/null || :
        fi
    fi
    WASM_OPT_VERSION=
    if [ -n "$program" ]; then WASM_OPT_VERSION=$("$program" --version 2>/dev/null || :); fi
    if [ -n "$WASM_OPT_VERSION" ]; then
        link "$program" wasm-opt
        return
    fi
    say 'no wasm-opt and no npm to install it: the app is built all the same, a fifth larger'
    # Trunk looks for wasm-opt on PATH, and would else try to download it.
    rm -f "$TOOLBOX/wasm-opt"
    cat >"$TOOLBOX/wasm-opt" <<'END'
#!/bin/sh
# Stands in for wasm-opt where there is none: hands the file on as it is.
for argument; do
    case $argument in
        --version) echo 'wasm-opt version 0'; exit ;;
        --output=*) output=${argument#--output=} ;;
        -*) ;;
        *) input=$argument ;;
    esac
done
cp "$input" "$output"
END
    chmod +x "$TOOLBOX/wasm-opt"
}

# --- All of it ------------------------------------------------------------------------------------

web_toolchain() {
    mkdir -p "$TOOLBOX" "$TOOL_CACHE"
    compiler
    cargo_tool trunk trunk "$TRUNK_VERSION" --locked
    # The program and the crate must be of one version. Its own lock file can name crates that a
    # registry no longer has, so it is not used.
    bindgen_version=$(awk '/^name = "wasm-bindgen"$/ { getline; gsub(/"/, "", $3); print $3; exit }' Cargo.lock)
    cargo_tool wasm-bindgen wasm-bindgen-cli "$bindgen_version"
    wasm_opt
    PATH=$TOOLBOX:$PATH
    # The two compilers of a machine would each rebuild the work of the other in one folder.
    CARGO_TARGET_DIR=$PWD/target/web
    export PATH CARGO_TARGET_DIR
}
