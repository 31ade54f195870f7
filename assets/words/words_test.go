package words

import (
	"io/fs"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// lines returns every "key = text" line of a language with the file it is in.
func lines(t *testing.T, lang string) map[string][]string {
	names, err := fs.Glob(files, lang+"/*.txt")
	require.NoError(t, err)
	require.NotEmpty(t, names)
	found := map[string][]string{}
	for _, name := range names {
		data, err := files.ReadFile(name)
		require.NoError(t, err)
		for _, line := range strings.Split(string(data), "\n") {
			if key, _, ok := strings.Cut(line, "="); ok && !strings.HasPrefix(line, "#") {
				key = strings.TrimSpace(key)
				found[key] = append(found[key], name)
			}
		}
	}
	return found
}

func TestNoKeyIsThereTwice(t *testing.T) {
	for _, lang := range Languages() {
		for key, names := range lines(t, lang) {
			require.Len(t, names, 1, "%s is in %v", key, names)
		}
	}
}

func TestEveryEnglishTextLoads(t *testing.T) {
	var w Words
	require.NotPanics(t, func() { w = English() })
	require.Equal(t, "en", w.Language())
	require.Len(t, w.Keys(), len(lines(t, "en")))
	for _, key := range w.Keys() {
		require.True(t, w.Has(key))
		require.NotEmpty(t, w.Say(key))
	}
}

func TestKeysAndPlacesAreWellFormed(t *testing.T) {
	key := regexp.MustCompile(`^[a-z0-9]+([-_.][a-z0-9]+)*$`)
	place := regexp.MustCompile(`\{[a-z][a-z0-9_-]*(\|[^{}|]+\|[^{}|]+)?\}`)
	for _, lang := range Languages() {
		w, err := Load(lang)
		require.NoError(t, err)
		for _, k := range w.Keys() {
			require.Regexp(t, key, k)
			rest := place.ReplaceAllString(w.Say(k), "")
			require.NotContains(t, rest, "{", "%s has a place that cannot be filled", k)
			require.NotContains(t, rest, "}", "%s has a place that cannot be filled", k)
		}
	}
}

func TestLanguageThatIsNotThereIsRefused(t *testing.T) {
	for _, lang := range []string{"", "xx", "..", "e*", "en/", "?n", "[e]n"} {
		_, err := Load(lang)
		require.ErrorContains(t, err, "there are: "+strings.Join(Languages(), ", "), lang)
	}
}

func TestLocaleNamesItsLanguage(t *testing.T) {
	for locale, want := range map[string]string{
		"en": "en", "en_GB.UTF-8": "en", "EN-us": "en", "en.UTF-8": "en", "en@oed": "en",
		"": "", "C": "", "C.UTF-8": "", "POSIX": "", "english": "", "xx_XX": "", "_": "",
	} {
		lang, ok := ForLocale(locale)
		require.Equal(t, want != "", ok, locale)
		if ok {
			require.Equal(t, want, lang, locale)
		}
	}
}
