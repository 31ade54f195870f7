// Package words is the catalogue of visible text: every word the window, the
// pages and the commands show. Texts are kept in one folder a language, a file
// for each place they are shown, as lines "key = text". A text may hold places,
// such as {value}, and forms that go by a count, such as {n|tooth|teeth}; Say fills
// both.
package words

import (
	"embed"
	"fmt"
	"io/fs"
	"sort"
	"strings"
)

//go:embed [a-z][a-z]/*.txt
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
		data, err := files.ReadFile(name)
		if err == nil {
			err = w.read(name, string(data))
		}
		if err != nil {
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

// Languages lists the codes of the languages there are words for.
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

// Name returns what the language calls itself.
func (w Words) Name() string { return w.texts["language.name"] }

// Comma reports whether numbers have a decimal comma in the language.
func (w Words) Comma() bool { return w.texts["language.decimal"] == "," }

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

// read takes the lines of one file.
func (w Words) read(name, data string) error {
	for n, line := range strings.Split(data, "\n") {
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
