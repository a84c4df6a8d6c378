#!/bin/sh
# Prints what a first visit downloads, compressed as a web host does it. Over the limit it says so,
# and fails where SIZE_LIMIT=strict is set.
#
#     sh app/size.sh [folder]
set -eu
folder=${1:-dist}
limit_kb=300

first_load() { find "$folder" -type f \( -name '*.wasm' -o -name '*.js' -o -name '*.css' -o -name '*.html' \); }

# Adds up the size of each file behind the command given.
compressed() {
    total=0
    for file in $(first_load); do
        total=$((total + $("$@" <"$file" | wc -c)))
    done
    echo "$total"
}

kb() { awk -v bytes="$1" 'BEGIN { printf "%.1f kB", bytes / 1000 }'; }

[ -n "$(first_load)" ] || { echo "== nothing is built in $folder" >&2; exit 1; }
bytes=$(compressed gzip -9 -c)
line="first load: $(kb "$bytes") with gzip"
how=gzip
# Browsers and web hosts know brotli; where neither program is here to say, gzip counts instead.
if command -v brotli >/dev/null 2>&1; then
    bytes=$(compressed brotli -q 11 -c)
    how=brotli
elif command -v node >/dev/null 2>&1; then
    bytes=$(compressed node -e 'process.stdout.write(require("zlib").brotliCompressSync(require("fs").readFileSync(0)))')
    how=brotli
fi
[ "$how" = gzip ] || line="$line, $(kb "$bytes") with brotli"
echo "== $line (limit $limit_kb kB with brotli)" >&2
if [ "$bytes" -gt $((limit_kb * 1000)) ]; then
    echo "== that is over the limit: on a slow phone line the first visit takes too long" >&2
    [ "${SIZE_LIMIT:-}" != strict ] || exit 1
fi
