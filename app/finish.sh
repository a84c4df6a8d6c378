#!/bin/sh
# What Trunk calls when a site is built; in one script, since it runs several at the same time.
set -eu
cd "$(dirname "$0")/.."
sh app/parts.sh
sh app/precache.sh
