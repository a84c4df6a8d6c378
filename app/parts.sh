#!/bin/sh
# Cuts the program of a built site in two, so that a first visit sees the first screen before all is
# downloaded, and makes both parts small.
#
#     sh app/parts.sh <folder>
#
# Trunk runs this at the end of a build, by way of app/finish.sh. A program without names of functions,
# as every build but app/build.sh makes, stays whole.
set -eu
cd "${1:-$TRUNK_STAGING_DIR}"

# What of the code is not needed to welcome someone and ask the questions of the first start; behind
# a minus, what stays: the shell, and what it makes of the others' values when it starts. Where the
# name of a function speaks of several, the last one counts. The rest
# may call the first part as it likes; where the first part calls the rest, shell::rest says what is
# waited for.
ROOMS='
    model::odds model::tonight model::network model::bench
    -app::shell -Replay>::new
    app::screens::tonight app::screens::diary app::screens::cooker app::screens::bench
    app::screens::more
    app::present::tonight app::present::diary app::present::cooker app::present::bench app::present::names
    app::chart app::components::store_column app::components::sun_hours
    app::state::saved::reader app::state::saved::decode
    app::state::action::bench app::state::action::cookers app::state::action::entries
    -app::reactive::rw_signal -app::reactive::stored_value -app::reactive::memo::Memo
    -app::reactive::held -Default>::default
'

# The parts of WebAssembly that the compiler uses; browsers know them since 2022.
FEATURES='--enable-bulk-memory --enable-nontrapping-float-to-int --enable-sign-ext
    --enable-mutable-globals --enable-reference-types --enable-multivalue'

# For size, -Oz gains nothing more once the result is compressed, and is slower.
smaller() {
    # The variable holds one option after the other.
    # shellcheck disable=SC2086
    wasm-opt -Os $FEATURES --output="$1.small" "$1"
    mv "$1.small" "$1"
}

glue=$(echo app-*.js)
program=${glue%.js}
if [ -n "${SPLIT:-}" ]; then
    # One word each.
    # shellcheck disable=SC2086
    "$SPLIT" "$glue" $ROOMS
    smaller "${program}_rest.wasm"
    smaller "${program}_bg.wasm"
fi
