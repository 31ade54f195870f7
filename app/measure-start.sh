#!/bin/sh
# How long the window takes from its start to its first picture, and how much memory it has then: the sample job,
# the same widgets with a blank drawing, and an empty window. sh app/measure-start.sh [STARTS]; medians of 15 unless said.
# The sample should take at most 1.15 times what the blank drawing takes.
set -eu
cd "$(dirname "$0")/.."
. app/packages.sh

starts=${1:-15}
need_go
# shellcheck disable=SC2086 # one word a package
need $BUILD_PACKAGES $TEST_PACKAGES

if [ -z "${DISPLAY:-}" ]; then
	exec xvfb-run -a -s '-screen 0 1440x900x24' sh app/measure-start.sh "$starts"
fi

folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
go test -c -tags gles,migrated_fynedo,measure -o "$folder/window" ./app/window

# The windows take turns, so that what else the machine does falls on all of them; the first turn warms up.
turn=0
while [ "$turn" -le "$starts" ]; do
	for which in sample blank empty; do
		line=$(HOME=$folder/home.$turn.$which LC_ALL=en_GB.UTF-8 TIPLINE_MEASURED=$which TIPLINE_BEGUN=$(date +%s%N) "$folder/window")
		[ "$turn" -eq 0 ] || echo "$line" >>"$folder/$which"
	done
	turn=$((turn + 1))
done

# median prints the median of a column of a window's lines.
median() {
	cut -d ' ' -f "$2" "$folder/$1" | sort -n | sed -n "$(((starts + 1) / 2))p"
}

for which in sample blank empty; do
	echo "$(median $which 1) $(median $which 2) $(median blank 1) $(median blank 2)" |
		awk -v which=$which '{ printf "%-7s %6.0f ms %6.1f MB   %.2f and %.2f of the blank drawing\n", which, $1, $2, $1 / $3, $2 / $4 }'
done
