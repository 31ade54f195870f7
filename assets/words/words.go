// Package words is the catalogue of visible text: every word the window, the
// pages and the commands show. Texts are kept in one folder a language, a file
// for each place they are shown, as lines "key = text". A text may hold places
// such as {value}, which Say fills.
package words

import (
	"embed"
	"fmt"
	"io/fs"
	"sort"
	"strings"
)

//go:embed en
var files embed.FS

// Words is the catalogue in one language.
type Words struct {
	lang  string
	texts map[string]string
}

// Load returns the catalogue of a language, such as "en".
func Load(lang string) (Words, error) {
	names, err := fs.Glob(files, lang+"/*.txt")
	if err != nil || len(names) == 0 || strings.ContainsAny(lang, "/.*?[") {
		return Words{}, fmt.Errorf("no words for language %q; there are: %s", lang, strings.Join(Languages(), ", "))
	}
	w := Words{lang, map[string]string{}}
	for _, name := range names {
		if err := w.read(name); err != nil {
			return Words{}, err
		}
	}
	return w, nil
}

// English returns the English catalogue.
func English() Words {
	w, err := Load("en")
	if err != nil {
		panic(err) // the English texts are built in; a test loads them
	}
	return w
}

// Languages lists the languages there are words for.
func Languages() []string {
	entries, _ := files.ReadDir(".")
	var langs []string
	for _, e := range entries {
		langs = append(langs, e.Name())
	}
	return langs
}

// Language returns the code of the catalogue's language.
func (w Words) Language() string { return w.lang }

// Has reports whether there is a text for key.
func (w Words) Has(key string) bool { _, ok := w.texts[key]; return ok }

// Keys lists every key in order.
func (w Words) Keys() []string {
	keys := make([]string, 0, len(w.texts))
	for k := range w.texts {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}

// Say returns the text for key. args are pairs of a place's name and what stands
// there: Say("finding.hub", "value", "30 mm"). A key without a text is returned
// itself, in angle brackets; a test finds such keys.
func (w Words) Say(key string, args ...any) string {
	text, ok := w.texts[key]
	if !ok {
		return "‹" + key + "›"
	}
	for i := 0; i+1 < len(args); i += 2 {
		text = strings.ReplaceAll(text, "{"+fmt.Sprint(args[i])+"}", fmt.Sprint(args[i+1]))
	}
	return text
}

func (w Words) read(name string) error {
	data, err := files.ReadFile(name)
	if err != nil {
		return err
	}
	for n, line := range strings.Split(string(data), "\n") {
		line = strings.TrimSpace(line)
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		key, text, ok := strings.Cut(line, "=")
		key, text = strings.TrimSpace(key), strings.TrimSpace(text)
		if !ok || key == "" || text == "" {
			return fmt.Errorf("%s:%d: not a line \"key = text\"", name, n+1)
		}
		if _, twice := w.texts[key]; twice {
			return fmt.Errorf("%s:%d: %s is there twice", name, n+1, key)
		}
		w.texts[key] = strings.ReplaceAll(text, `\n`, "\n")
	}
	return nil
}
