package window

import (
	"strings"

	"fyne.io/fyne/v2"
)

// keyStroke is a key, or several that do the same, and what it does. The page that lists the
// keys is made from the same tables that they work by.
type keyStroke struct {
	says     string         // what it does, in the catalogue
	names    []fyne.KeyName // each of which does it
	runes    string         // letters and signs, each of which does it
	shortcut fyne.Shortcut  // that does it, nil for none
	when     func() bool    // nil for always
	do       func()
}

// keyTable is those of one thing that can have the keyboard.
type keyTable []keyStroke

func named(says string, do func(), names ...fyne.KeyName) keyStroke {
	return keyStroke{says: says, names: names, do: do}
}

func signed(says string, do func(), runes string) keyStroke {
	return keyStroke{says: says, runes: runes, do: do}
}

// pressing returns the keys of what can be pressed.
func pressing(do func()) keyTable {
	return keyTable{named("keys.press", do, fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter)}
}

// press does what a key does; false where it is none of these.
func (ks keyTable) press(name fyne.KeyName) bool {
	return ks.first(func(k keyStroke) bool {
		for _, n := range k.names {
			if n == name {
				return true
			}
		}
		return false
	})
}

// sign does what a letter or sign does; false where it is none of these.
func (ks keyTable) sign(r rune) bool {
	return ks.first(func(k keyStroke) bool { return strings.ContainsRune(k.runes, r) })
}

// cut does what a shortcut does; false where it is none of these.
func (ks keyTable) cut(s fyne.Shortcut) bool {
	return ks.first(func(k keyStroke) bool {
		return k.shortcut != nil && k.shortcut.ShortcutName() == s.ShortcutName()
	})
}

func (ks keyTable) first(is func(keyStroke) bool) bool {
	for _, k := range ks {
		if is(k) && (k.when == nil || k.when()) {
			k.do()
			return true
		}
	}
	return false
}
