#!/bin/sh
# Prints what a first visit downloads before there is something to see, and all that it downloads,
# compressed as a web host does it. Where the first is over the limit it says so, and fails where
# SIZE_LIMIT=strict is set. What the room Bench loads when it is first used is counted apart.
#
#     sh app/size.sh [folder]
set -eu
folder=${1:-dist}
limit_kb=300

all() { find "$folder" -type f \( -name '*.wasm' -o -name '*.js' -o -name '*.css' -o -name '*.html' \); }

# The rest of the program is downloaded once the first screen stands.
first_load() { all | grep -v -e '_rest\.wasm$' -e '/bench[^/]*$'; }
bench() { all | grep '/bench[^/]*$'; }

# Adds up the size of each file that $1 names, behind the command that follows.
compressed() {
    files=$1
    shift
    total=0
    for file in $("$files"); do
        total=$((total + $("$@" <"$file" | wc -c)))
    done
    echo "$total"
}

kb() { awk -v bytes="$1" 'BEGIN { printf "%.1f kB", bytes / 1000 }'; }

[ -n "$(first_load)" ] || { echo "== nothing is built in $folder" >&2; exit 1; }
# Weighs each behind the command that is given.
weigh() {
    bytes=$(compressed first_load "$@")
    beside=$(compressed bench "$@")
    whole=$(compressed all "$@")
}

weigh gzip -9 -c
first="$(kb "$bytes") with gzip"
bench="$(kb "$beside") with gzip"
together="$(kb "$whole") with gzip"
how=gzip
# Browsers and web hosts know brotli; where neither program is here to say, gzip counts instead.
if command -v brotli >/dev/null 2>&1; then
    weigh brotli -q 11 -c
    how=brotli
elif command -v node >/dev/null 2>&1; then
    weigh node -e 'process.stdout.write(require("zlib").brotliCompressSync(require("fs").readFileSync(0)))'
    how=brotli
fi
if [ "$how" = brotli ]; then
    first="$first, $(kb "$bytes") with brotli"
    bench="$bench, $(kb "$beside") with brotli"
    together="$together, $(kb "$whole") with brotli"
fi
echo "== first load: $first (limit $limit_kb kB with brotli)" >&2
echo "== bench, when it is first used: $bench" >&2
echo "== all together: $together" >&2
if [ "$bytes" -gt $((limit_kb * 1000)) ]; then
    echo "== that is over the limit: on a slow phone line the first visit takes too long" >&2
    [ "${SIZE_LIMIT:-}" != strict ] || exit 1
fi
