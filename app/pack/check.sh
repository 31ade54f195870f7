#!/bin/sh
# Makes every package, installs it, opens a job by its file as a double click does, and takes it away again. Installing
# the Debian package needs root. sh app/pack/check.sh [deb|tarball|windows]
set -eu
. "$(dirname "$0")/stage.sh"

need desktop-file-utils appstream shared-mime-info xdg-utils libfile-mimeinfo-perl xvfb xdotool man-db bash-completion binutils-mingw-w64-x86-64 unzip

home=$(mktemp -d)
screen=
trap 'kill $screen 2>/dev/null || true; rm -rf "$home"' EXIT
export HOME="$home" XDG_CONFIG_HOME="$home/config" XDG_STATE_HOME="$home/state" XDG_DATA_HOME="$home/.local/share"
job=$home/cabin.tipline

# on_screen starts a screen that is not there.
on_screen() {
	Xvfb -displayfd 3 -screen 0 1440x900x24 3>"$home/display" 2>/dev/null &
	screen=$!
	while [ ! -s "$home/display" ]; do sleep 0.1; done
	DISPLAY=:$(cat "$home/display")
	export DISPLAY
}

# opens waits until a window of the program is there, and closes it.
opens() {
	window=$(xdotool search --sync --onlyvisible --name "$1" | head -n 1)
	[ -n "$window" ] || stop "No window of $1."
	echo "opened: $(xdotool getwindowname "$window")"
	pkill -f "tipline .*$(basename "$job")" || true
}

# refused runs a command that must end with exit code 2 and one sentence.
refused() {
	code=0
	said=$("$@" 2>&1) || code=$?
	[ "$code" -eq 2 ] && [ "$(echo "$said" | wc -l)" -eq 1 ] || stop "$* ended with $code: $said"
	echo "refused: $said"
}

# behaves tries a program that is installed.
behaves() {
	"$1" version
	"$1" sample signal-cabin >"$job"
	"$1" figures "$job" >/dev/null
	echo "no job" >"$home/none.tipline"
	refused "$1" "$home/none.tipline"
	refused env -u DISPLAY -u WAYLAND_DISPLAY "$1" "$job"
	on_screen
	[ "$(xdg-mime query filetype "$job")" = application/x-tipline ] || stop "A job's type is not known."
	[ "$(xdg-mime query default application/x-tipline)" = org.tipline.Tipline.desktop ] || stop "Jobs are not opened by Tipline."
	xdg-open "$job" &
	opens "Signal-cabin"
	kill "$screen"
	wait "$screen" 2>/dev/null || true
	screen=
}

desktop_papers() {
	desktop-file-validate "app/pack/$id.desktop"
	appstreamcli validate --no-net "app/pack/$id.metainfo.xml"
	man --warnings -l app/pack/tipline.1 2>&1 >/dev/null | grep . && stop "The man page has faults." || true
	bash -n app/pack/tipline.bash
}

check_deb() {
	deb=$(sh app/pack/deb.sh | tail -n 1)
	sum=$(sha256sum <"$deb")
	[ "$sum" = "$(sha256sum <"$(sh app/pack/deb.sh | tail -n 1)")" ] || stop "The Debian package is not the same twice."
	dpkg-deb -c "$deb" | awk '$6 !~ /\/$/ {print substr($6, 2)}' >"$home/files"
	as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "./$deb" >/dev/null
	as_root dpkg -i "$deb" >/dev/null # once more, over itself
	behaves /usr/bin/tipline
	man -w tipline >/dev/null
	as_root dpkg -r tipline >/dev/null
	while read -r file; do
		[ ! -e "$file" ] || stop "$file is left behind."
	done <"$home/files"
	echo "deb: installed, opened, taken away"
}

check_tarball() {
	tarball=$(sh app/pack/tarball.sh | tail -n 1)
	sum=$(sha256sum <"$tarball")
	[ "$sum" = "$(sha256sum <"$(sh app/pack/tarball.sh | tail -n 1)")" ] || stop "The tarball is not the same twice."
	tar -C "$home" -xzf "$tarball"
	sh "$home"/tipline-*/install.sh
	sh "$home"/tipline-*/install.sh >/dev/null # once more, over itself
	behaves "$home/.local/bin/tipline"
	sh "$home"/tipline-*/install.sh uninstall
	left=$(find "$home/.local" -type f -iname '*tipline*')
	[ -z "$left" ] || stop "Left behind: $left"
	echo "tarball: installed, opened, taken away"
}

# Windows cannot be run here: what the program is linked to is looked at.
check_windows() {
	package=$(sh app/pack/windows.sh | tail -n 1)
	unzip -q -d "$home" "$package"
	for program in "$home"/tipline-*-windows-amd64/*.exe; do
		for library in $(x86_64-w64-mingw32-objdump -p "$program" | sed -n 's/.*DLL Name: //p' | tr '[:upper:]' '[:lower:]' | sort -u); do
			case $library in
			advapi32.dll | bcrypt.dll | dwmapi.dll | gdi32.dll | imm32.dll | kernel32.dll | msvcrt.dll | ntdll.dll | ole32.dll | \
				opengl32.dll | shell32.dll | shlwapi.dll | user32.dll | uxtheme.dll | version.dll | winmm.dll | ws2_32.dll | api-ms-win-*) ;;
			*) stop "$(basename "$program") needs $library, which is no part of Windows." ;;
			esac
		done
	done
	echo "windows: links to the system's libraries alone"
}

desktop_papers
for package in ${1:-deb tarball windows}; do
	"check_$package"
done
