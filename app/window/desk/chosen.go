package desk

import (
	"maps"
	"slices"

	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/geometry"
)

// WhatField is the field of how much of the packet is printed.
const WhatField geometry.Quantity = "printing.what"

// How much is printed.
const (
	everything = "everything"
	thisPart   = "part"
	someSheets = "chosen"
)

// chosen is what of the packet is printed. What was left out is remembered while all is
// printed.
type chosen struct {
	what  string            // empty for everything
	parts map[string]bool   // left out, by id
	sorts map[string]bool   // left out
	off   map[leafName]bool // single sheets that are left out
}

// sortsOf are the sorts of sheet that are chosen together, with their kinds.
var sortsOf = map[string]func(packet.Kind) bool{
	"templates": func(k packet.Kind) bool { return !k.IsCard() },
	"cards":     func(k packet.Kind) bool { return k.IsCard() && !slices.Contains(ofNoPart, k) },
	"front":     func(k packet.Kind) bool { return slices.Contains(ofNoPart, k) },
}

// sortOrder is the order they are offered in.
var sortOrder = []string{"templates", "cards", "front"}

// ofNoPart are the kinds of sheet that are of no part.
var ofNoPart = []packet.Kind{packet.Cover, packet.Stock, packet.Cautions}

// none is a kind, and the id of a part, that no packet has.
const none = "none of them"

// kinds are the kinds of sheet that are printed, none for all.
func (c chosen) kinds() []packet.Kind {
	if c.what != someSheets || len(c.sorts) == 0 {
		return nil
	}
	kinds := []packet.Kind{none}
	for _, k := range append(packet.Kinds(), ofNoPart...) {
		for name, has := range sortsOf {
			if has(k) && !c.sorts[name] {
				kinds = append(kinds, k)
			}
		}
	}
	return kinds
}

// chosenParts are the ids of the parts that are printed, none for all.
func (d *Desk) chosenParts() []string {
	c := d.packet.chosen
	switch {
	case c.what == thisPart && d.part != "":
		return []string{d.part}
	case c.what != someSheets || !slices.ContainsFunc(d.result.Parts(), func(p solve.Part) bool { return c.parts[p.ID()] }):
		return nil
	}
	parts := []string{none}
	for _, p := range d.result.Parts() {
		if !c.parts[p.ID()] {
			parts = append(parts, p.ID())
		}
	}
	return parts
}

func (d *Desk) chosenField() Field {
	choices := d.labelled(WhatField, everything, thisPart, someSheets)
	if d.part != "" {
		choices[1].Label = d.words.Say("choice.printing.what.part-named", "name", d.Name(d.part))
	}
	return Field{Path: WhatField, Label: d.words.Say("field.printing.what"), Text: usual(d.packet.chosen.what, everything), Choices: choices}
}

// Tick is something that is printed or left out.
type Tick struct {
	ID, Label string
	On        bool
}

// Ticks returns the sorts of sheet and the parts that may be left out, none unless sheets
// are chosen.
func (d *Desk) Ticks() (sorts, parts []Tick) {
	c := d.packet.chosen
	if c.what != someSheets || d.at() != Paper {
		return nil, nil
	}
	for _, name := range sortOrder {
		sorts = append(sorts, Tick{name, d.words.Say("printing.sort." + name), !c.sorts[name]})
	}
	for _, p := range d.result.Parts() {
		parts = append(parts, Tick{p.ID(), p.Name(), !c.parts[p.ID()]})
	}
	return sorts, parts
}

// TickSort prints a sort of sheet or leaves it out.
func (d *Desk) TickSort(name string, on bool) {
	c := &d.packet.chosen
	c.sorts = ticked(c.sorts, name, on)
	d.chose()
}

// TickPart prints a part's sheets or leaves them out.
func (d *Desk) TickPart(id string, on bool) {
	c := &d.packet.chosen
	c.parts = ticked(c.parts, id, on)
	d.chose()
}

// TickParts prints every part's sheets or leaves them all out.
func (d *Desk) TickParts(on bool) {
	c := &d.packet.chosen
	c.parts = nil
	for _, p := range d.result.Parts() {
		c.parts = ticked(c.parts, p.ID(), on)
	}
	d.chose()
}

func (d *Desk) chose() {
	d.packet.laid = nil
	d.Changed()
}

// TickPage prints a page of the packet or leaves it out.
func (d *Desk) TickPage(page int, on bool) {
	p := &d.packet
	p.chosen.off = ticked(p.chosen.off, p.leaves[page].name, on)
	d.Changed()
}

// ticked returns what is left out once one thing is printed or not.
func ticked[T comparable](off map[T]bool, one T, on bool) map[T]bool {
	next := maps.Clone(off)
	switch {
	case on:
		delete(next, one)
	case next == nil:
		next = map[T]bool{one: true}
	default:
		next[one] = true
	}
	return next
}

// Printing returns how many pages are printed.
func (d *Desk) Printing() int {
	d.layOut()
	n := 0
	for _, l := range d.packet.leaves {
		if !d.packet.chosen.off[l.name] {
			n++
		}
	}
	return n
}
