#!/bin/sh
# Makes a Debian package: sh app/pack/deb.sh
set -eu
. "$(dirname "$0")/stage.sh"

need_go
# shellcheck disable=SC2086 # one word a package
need $BUILD_PACKAGES dpkg-dev librsvg2-bin

root=$(mktemp -d)
trap 'rm -rf "$root"' EXIT
chmod 755 "$root"
stage "$root/usr"

# What the program is linked to, as Debian names it, and what its window looks for while it runs.
mkdir "$root/debian" && echo "Source: tipline" >"$root/debian/control"
linked=$(cd "$root" && dpkg-shlibdeps -O usr/bin/tipline | sed 's/^shlibs:Depends=//')
rm -r "$root/debian"

arch=$(dpkg --print-architecture)
mkdir "$root/DEBIAN"
cat >"$root/DEBIAN/control" <<CONTROL
Package: tipline
Version: $(version)
Architecture: $arch
Maintainer: The Tipline authors <authors@tipline.invalid>
Installed-Size: $(du -sk "$root/usr" | cut -f1)
Depends: $linked, libegl1, libgles2, libxcursor1, libxi6, libxinerama1, libxrandr2, libxxf86vm1
Recommends: xdg-utils, libgl1-mesa-dri
Suggests: cups-client
Section: graphics
Priority: optional
Description: full-scale templates and settings for clock wheels
 Type a plan's numbers once and print the whole shop packet: crossing
 templates to glue on brass, grinding templates for the cutter, dividing,
 setting and depth cards, with a warning wherever the job would go wrong.
CONTROL
(cd "$root" && find usr -type f | LC_ALL=C sort | xargs md5sum) >"$root/DEBIAN/md5sums"
find "$root" -exec touch -h -d "@$SOURCE_DATE_EPOCH" {} +

mkdir -p "$out"
deb=$out/tipline_$(version)_$arch.deb
dpkg-deb --build --root-owner-group "$root" "$deb" >/dev/null
echo "$deb"
