#!/bin/sh
# How fast Tipline is beside what it can be measured against, in one run on this machine: writes build/speed.md, a table,
# and build/speed.svg, a plot of it. sh app/speed.sh [TURNS]; each comparison is taken 15 times unless said.
set -eu
cd "$(dirname "$0")/.."
. app/packages.sh

turns=${1:-15}
need_go
# shellcheck disable=SC2086 # one word a package
need $BUILD_PACKAGES $TEST_PACKAGES

mkdir -p build
go build -tags gles,migrated_fynedo -o build/tipline ./app
go build -tags geos -o build/speed ./app/speed
sh app/measure-start.sh "$turns" >build/starts.txt
build/speed -out build -program build/tipline -starts build/starts.txt -turns "$turns" \
	-commit "$(git describe --always --dirty 2>/dev/null || echo unknown)"
echo "Written: $(pwd)/build/speed.md and $(pwd)/build/speed.svg"
