#!/bin/sh
# Every check there is: sh app/test.sh [-full]. With -full the random cases run in their large counts.
set -eu
cd "$(dirname "$0")/.."
. app/packages.sh

case "${1:-}" in
"") timeout=10m ;;
-full | --full)
	timeout=180m
	export TIPLINE_FULL=1
	;;
*) stop "test.sh knows only -full, not $1." ;;
esac

need_go
# shellcheck disable=SC2086 # one word a package
need $BUILD_PACKAGES $TEST_PACKAGES

tags=gles,migrated_fynedo,geos,outside

echo "== gofmt"
unformatted=$(gofmt -l app assets geometry render)
[ -z "$unformatted" ] || stop "gofmt would change: $unformatted"

echo "== go vet"
go vet -tags "$tags,measure" ./...

if [ "${TIPLINE_FULL:-}" = 1 ]; then
	sh app/care.sh
fi

echo "== the commands alone build without a C compiler"
CGO_ENABLED=0 go build -o build/tipline-commands ./app

echo "== tests"
xvfb-run -a go test -tags "$tags" -timeout "$timeout" ./...

# Fyne warns of calls from a wrong thread only where code has not promised to make none.
echo "== the window's tests without the thread promise"
log=$(mktemp)
trap 'rm -f "$log"' EXIT
xvfb-run -a go test -v -tags gles -timeout "$timeout" ./app/window/... >"$log" 2>&1 || {
	cat "$log"
	exit 1
}
if grep -A 4 'Error in Fyne call thread' "$log"; then
	stop "The window calls Fyne from a wrong thread, as shown above."
fi
tail -n 1 "$log"

echo "== all passed"
