# Sourced by start.sh and test.sh: what the build and the tests need of the system.

# What the window is compiled against, and a C compiler to do it with.
BUILD_PACKAGES="gcc libc6-dev libgl-dev libgles-dev libegl-dev libx11-dev libxcursor-dev libxrandr-dev
	libxinerama-dev libxi-dev libxxf86vm-dev"

# A screen that is not there and what draws on it, the programs that files are checked with, and the geometry
# library that outlines are checked against.
TEST_PACKAGES="xvfb xauth libgl1-mesa-dri libgles2 libegl1 poppler-utils mupdf-tools librsvg2-bin qpdf
	pkg-config libgeos-dev"

# stop says why and ends with exit code 2.
stop() {
	echo "$1" >&2
	exit 2
}

# as_root runs a command as root, or fails where it cannot without a password.
as_root() {
	if [ "$(id -u)" -eq 0 ]; then
		"$@"
	else
		sudo -n "$@"
	fi
}

# need makes sure that Debian packages are installed.
need() {
	if ! command -v dpkg-query >/dev/null 2>&1; then
		echo "This is no Debian system; what is needed here is called there: $(echo "$@")" >&2
		return 0
	fi
	missing=
	for package in "$@"; do
		dpkg-query -W -f='${db:Status-Abbrev}\n' "$package" 2>/dev/null | grep -q '^.i' || missing="$missing $package"
	done
	[ -z "$missing" ] && return 0
	echo "Installing:$missing" >&2
	# shellcheck disable=SC2086 # one word a package
	if as_root apt-get update -q >/dev/null 2>&1 &&
		as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends $missing >&2; then
		return 0
	fi
	stop "These packages are missing and could not be installed from here; install them first: sudo apt-get install$missing"
}

# need_go makes sure that there is a Go to build with.
need_go() {
	if ! command -v go >/dev/null 2>&1 && [ -x /usr/local/go/bin/go ]; then
		PATH=$PATH:/usr/local/go/bin
	fi
	command -v go >/dev/null 2>&1 ||
		stop "There is no Go here; install $(sed -n 's/^go /Go /p' go.mod) or newer from https://go.dev/dl and put it on the PATH."
}
