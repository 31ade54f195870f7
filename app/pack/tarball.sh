#!/bin/sh
# Makes a tarball that a user installs for himself alone: sh app/pack/tarball.sh
set -eu
. "$(dirname "$0")/stage.sh"

need_go
# shellcheck disable=SC2086 # one word a package
need $BUILD_PACKAGES librsvg2-bin

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
name=tipline-$(version)-linux-$(go env GOARCH)
stage "$work/$name"
install -m 755 app/pack/install.sh "$work/$name/install.sh"
(cd "$work/$name" && find bin share -type f | LC_ALL=C sort) >"$work/files"
mv "$work/files" "$work/$name/files"

mkdir -p "$out"
tar --sort=name --owner=0 --group=0 --numeric-owner --mtime="@$SOURCE_DATE_EPOCH" --mode=go=rX,u+rw -C "$work" -cf - "$name" |
	gzip -9 -n >"$out/$name.tar.gz"
echo "$out/$name.tar.gz"
