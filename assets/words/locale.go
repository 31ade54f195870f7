package words

import (
	"slices"
	"strings"
)

// ForLocale returns the language that a locale such as "de_CH.UTF-8" or "fr" names, and
// false for one without words here.
func ForLocale(locale string) (lang string, ok bool) {
	if end := strings.IndexAny(locale, "_-.@"); end >= 0 {
		locale = locale[:end]
	}
	lang = strings.ToLower(locale)
	return lang, slices.Contains(Languages(), lang)
}
