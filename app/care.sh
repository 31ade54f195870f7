#!/bin/sh
# The checks that fetch their tools, at versions that stay: sh app/care.sh
set -eu
cd "$(dirname "$0")/.."

tags=gles,migrated_fynedo,geos,outside

echo "== staticcheck"
go run honnef.co/go/tools/cmd/staticcheck@v0.8.2 -tags "$tags" ./...

echo "== gofumpt"
unformatted=$(go run mvdan.cc/gofumpt@v0.12.0 -l app assets geometry render)
[ -z "$unformatted" ] || {
	echo "gofumpt would change: $unformatted"
	exit 1
}
