package desk

import (
	"tipline/assets/words"
)

// Languages lists the languages that can be chosen, each as it calls itself, after that of
// the surroundings.
func (d *Desk) Languages() []Choice {
	all := []Choice{{"", d.words.Say("menu.language.surroundings")}}
	for _, code := range words.Languages() {
		if w, err := words.Load(code); err == nil {
			all = append(all, Choice{code, w.Name()})
		}
	}
	return all
}

// Speak makes the desk speak a language, "" for that of the surroundings, and keeps the
// choice. Where it cannot be kept the desk speaks it all the same.
func (d *Desk) Speak(code string) error {
	err := d.Language.Keep(code)
	w, unknown := words.Load(code)
	if unknown != nil {
		w = d.Language.Spoken()
	}
	d.leave()
	d.words, d.last, d.told, d.packet.laid, d.staged = w, map[place]drawn{}, told{}, nil, nil
	d.Changed()
	return err
}
