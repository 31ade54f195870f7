//go:build cgo && linux

package main

/*
#include <stdlib.h>

// plainLocale turns C.UTF-8 into C before anything else in the program runs. The
// toolkit parses the locale while it is loaded, takes C for no locale at all but
// "C.UTF-8" for a misspelt one, and complains of it on every start, even of a
// command that opens no window.
__attribute__((constructor)) static void plainLocale(void) {
	static const char *const names[] = {"LC_ALL", "LC_MESSAGES", "LANG"};
	for (int i = 0; i < 3; i++) {
		char *value = getenv(names[i]);
		if (value && value[0] == 'C' && value[1] == '.') value[1] = 0;
	}
}
*/
import "C"
