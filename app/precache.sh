#!/bin/sh
# Writes into the service worker of a built site the list of all its files, each with its SHA-256.
#
#     sh app/precache.sh <folder>
#
# Trunk runs this at the end of every build. The list is what makes the app whole offline, and as it
# changes with every file, so does sw.js, which is how a browser notices a new version.
set -eu
cd "${1:-$TRUNK_STAGING_DIR}"

hash_of() {
    if command -v sha256sum >/dev/null 2>&1; then sha256sum "$1"; else shasum -a 256 "$1"; fi | cut -d ' ' -f 1
}

# A host answers for the page under the folder's own address; under its file name some redirect.
list=$(find . -type f ! -name sw.js ! -name '.*' | sed 's|^\./||' | LC_ALL=C sort | while IFS= read -r file; do
    case $file in
        index.html) address=./ ;;
        *) address=$file ;;
    esac
    printf '  ["%s", "%s"],\n' "$address" "$(hash_of "$file")"
done)

# Between its two marks the worker holds the list; a second run replaces it.
{
    sed '/^\/\/ files: begin/q' sw.js
    printf 'const FILES = [\n%s\n];\n' "$list"
    sed -n '/^\/\/ files: end/,$p' sw.js
} >sw.js.new
mv sw.js.new sw.js
