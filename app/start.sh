#!/bin/sh
# Builds Tipline and opens the sample job in a window; where there is no screen, writes the sample's packet instead.
set -eu
cd "$(dirname "$0")/.."
. app/packages.sh

need_go
# shellcheck disable=SC2086 # one word a package
need $BUILD_PACKAGES
mkdir -p build
echo "Building build/tipline; the first time takes some minutes." >&2
go build -tags gles,migrated_fynedo -o build/tipline ./app

job=build/signal-cabin.tipline
[ -e "$job" ] || build/tipline sample signal-cabin >"$job"

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
	exec build/tipline "$job"
fi
build/tipline packet "$job" -out build/signal-cabin.pdf || [ $? -eq 1 ]
echo "There is no screen here, so the sample's packet was written instead: $(pwd)/build/signal-cabin.pdf"
