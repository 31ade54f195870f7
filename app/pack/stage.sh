# Sourced by what makes a package: builds the program and lays out the files that a Unix desktop wants of it.

cd "$(dirname "$0")/../.."
. app/packages.sh

id=org.tipline.Tipline
out=build/packages

# The day of the last commit, so that the same tree gives the same bytes; today where there is no history.
SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(git log -1 --format=%ct 2>/dev/null || date +%s)}
export SOURCE_DATE_EPOCH

# Nothing of this machine goes into the program: no paths, no build number.
build_flags="-trimpath -buildvcs=false"
link_flags="-s -w -buildid="

# version prints the program's version from its one place.
version() { sed -n 's/^const Version = "\(.*\)"$/\1/p' app/command/version.go; }

# build makes the program with its window: build GOFLAGS... FILE
build() { go build $build_flags -tags gles,migrated_fynedo -ldflags "$link_flags" -o "$1" ./app; }

# licences prints the licence of every module that is in the program.
licences() {
	go list -deps -tags gles,migrated_fynedo -f '{{with .Module}}{{if not .Main}}{{.Path}} {{.Version}} {{.Dir}}{{end}}{{end}}' ./app |
		sort -u | while read -r path version folder; do
		printf '\n== %s %s\n\n' "$path" "$version"
		find "$folder" -maxdepth 1 -type f \( -iname 'licen[sc]e*' -o -iname 'copying*' -o -iname 'notice*' \) | sort | xargs -r cat
	done
}

# stage lays out the program and its papers under a prefix: stage FOLDER
stage() {
	install -d "$1/bin" "$1/share/doc/tipline"
	build "$1/bin/tipline"
	install -D -m 644 "app/pack/$id.desktop" "$1/share/applications/$id.desktop"
	install -D -m 644 "app/pack/$id.mime.xml" "$1/share/mime/packages/$id.xml"
	install -D -m 644 "app/pack/$id.metainfo.xml" "$1/share/metainfo/$id.metainfo.xml"
	install -D -m 644 app/pack/tipline.bash "$1/share/bash-completion/completions/tipline"
	install -d "$1/share/man/man1"
	gzip -9 -n <app/pack/tipline.1 >"$1/share/man/man1/tipline.1.gz"
	install -D -m 644 assets/icon/tipline.svg "$1/share/icons/hicolor/scalable/apps/$id.svg"
	for size in 16 24 32 48 64 128 256 512; do
		install -d "$1/share/icons/hicolor/${size}x$size/apps"
		rsvg-convert -w $size -h $size assets/icon/tipline.svg -o "$1/share/icons/hicolor/${size}x$size/apps/$id.png"
	done
	{
		cat LICENSE
		cat assets/fonts/LICENSE-*.txt
		licences
	} >"$1/share/doc/tipline/copyright"
	chmod 644 "$1/share/doc/tipline/copyright"
}
