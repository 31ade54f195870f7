#!/bin/sh
# Makes the Windows program, cross-built with mingw-w64: sh app/pack/windows.sh
set -eu
. "$(dirname "$0")/stage.sh"

need_go
need mingw-w64 librsvg2-bin icoutils zip

version=$(version)
work=$(mktemp -d)
resource=app/resource_windows_amd64.syso
trap 'rm -rf "$work" "$resource"' EXIT

# The icon and the version that Windows shows of a program are linked in from a resource.
for size in 16 24 32 48 64 128 256; do
	rsvg-convert -w $size -h $size assets/icon/tipline.svg -o "$work/$size.png"
done
icotool -c -o "$work/tipline.ico" "$work"/*.png
numbers=$(echo "$version" | tr . ,),0
cat >"$work/tipline.rc" <<RESOURCE
1 ICON "$work/tipline.ico"
1 VERSIONINFO
FILEVERSION $numbers
PRODUCTVERSION $numbers
BEGIN
  BLOCK "StringFileInfo"
  BEGIN
    BLOCK "040904b0"
    BEGIN
      VALUE "FileDescription", "Tipline"
      VALUE "FileVersion", "$version"
      VALUE "ProductName", "Tipline"
      VALUE "ProductVersion", "$version"
      VALUE "OriginalFilename", "tipline.exe"
      VALUE "LegalCopyright", "MIT License"
    END
  END
  BLOCK "VarFileInfo"
  BEGIN
    VALUE "Translation", 0x409, 1200
  END
END
RESOURCE
x86_64-w64-mingw32-windres -O coff -o "$resource" "$work/tipline.rc"

name=tipline-$version-windows-amd64
folder=$work/$name
mkdir "$folder"
GOOS=windows GOARCH=amd64 CGO_ENABLED=1 CC=x86_64-w64-mingw32-gcc CXX=x86_64-w64-mingw32-g++ \
	go build $build_flags -tags migrated_fynedo -ldflags "$link_flags -H windowsgui" -o "$folder/tipline.exe" ./app
# A program without a console prints nothing, so the commands have one of their own.
GOOS=windows GOARCH=amd64 CGO_ENABLED=0 \
	go build $build_flags -ldflags "$link_flags" -o "$folder/tipline-commands.exe" ./app
{
	cat LICENSE
	cat assets/fonts/LICENSE-*.txt
	licences
} >"$folder/LICENCES.txt"
find "$folder" -exec touch -d "@$SOURCE_DATE_EPOCH" {} +

mkdir -p "$out"
rm -f "$out/$name.zip"
(cd "$work" && find "$name" -type f | LC_ALL=C sort | TZ=UTC zip -q -X "$name.zip" -@)
mv "$work/$name.zip" "$out/"
echo "$out/$name.zip"
