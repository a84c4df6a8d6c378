#!/bin/sh
# Builds the app and serves it on this machine alone.
#
#     sh app/serve.sh [port]
#
# Installs first what is missing (see toolchain.sh); the first run takes some minutes, the next ones
# seconds. Stop it with Ctrl-C.
set -eu
cd "$(dirname "$0")/.."
. app/toolchain.sh

port=${1:-8080}
case $port in
    '' | *[!0-9]*) fail "the port must be a number, not '$port'" ;;
esac

sh app/build.sh

# The server is built with what has just built the site.
PATH=$TOOLBOX:$PATH CARGO_TARGET_DIR=target/web cargo build --quiet --locked --package host
exec target/web/debug/host dist "$port"
