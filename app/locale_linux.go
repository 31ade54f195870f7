//go:build cgo

package main

/*
#include <string.h>

// The toolkit takes the locale C.UTF-8, which names no language, for a misspelt one and
// says so on stderr while it is being loaded, before any Go of ours runs. So the
// environment is put right before that: glibc hands it to constructors.
__attribute__((constructor)) static void name_no_language(int argc, char **argv, char **env) {
	static const char *const names[] = {"LC_ALL=", "LC_MESSAGES=", "LANG="};
	static char *const plain[] = {"LC_ALL=C", "LC_MESSAGES=C", "LANG=C"};
	for (; env && *env; env++)
		for (int i = 0; i < 3; i++) {
			size_t n = strlen(names[i]);
			if (!strncmp(*env, names[i], n) && !strncmp(*env + n, "C.", 2))
				*env = plain[i];
		}
}
*/
import "C"
