#!/bin/sh
# Installs Tipline for this user alone, or takes it away again:
#   sh install.sh [install|uninstall] [PREFIX]      PREFIX is ~/.local unless said
set -eu
cd "$(dirname "$0")"
prefix=${2:-$HOME/.local}

# refresh tells the desktop what has changed, as far as it has the programs to be told with.
refresh() {
	command -v update-desktop-database >/dev/null && update-desktop-database -q "$prefix/share/applications" || true
	command -v update-mime-database >/dev/null && update-mime-database "$prefix/share/mime" || true
	command -v gtk-update-icon-cache >/dev/null && gtk-update-icon-cache -q -t "$prefix/share/icons/hicolor" 2>/dev/null || true
}

case "${1:-install}" in
install)
	while read -r file; do
		mode=644
		[ "$file" = bin/tipline ] && mode=755
		install -D -m "$mode" "$file" "$prefix/$file"
	done <files
	# A desktop that does not look into this prefix for programs still finds this one. Not every opener reads quotes.
	program=$prefix/bin/tipline
	case "$program" in *" "*) program="\"$program\"" ;; esac
	sed -i "s|^Exec=tipline|Exec=$program|" "$prefix/share/applications/org.tipline.Tipline.desktop"
	refresh
	echo "Tipline is installed: $prefix/bin/tipline"
	case ":$PATH:" in *":$prefix/bin:"*) ;; *) echo "Add $prefix/bin to your PATH to start it by name." ;; esac
	;;
uninstall)
	while read -r file; do
		rm -f "$prefix/$file"
	done <files
	rmdir "$prefix/share/doc/tipline" 2>/dev/null || true
	refresh
	echo "Tipline is gone from $prefix. Your jobs and settings are untouched."
	;;
*)
	echo "install.sh knows install and uninstall, not $1." >&2
	exit 2
	;;
esac
