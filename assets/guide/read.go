package guide

import (
	"regexp"
	"strings"
)

// The pictures stand beside the pages of the first language, from where those of the others
// show them as they stand in the repository.
const (
	beside   = "](pictures/"
	borrowed = "](../" + First + "/pictures/"
)

// read reads a page. Lines that follow each other are one block, unless each is an item.
func read(name, text string) Page {
	text = strings.ReplaceAll(text, borrowed, beside)
	p := Page{Name: name, written: text}
	var open *Block
	var said string
	end := func() {
		if open != nil {
			open.Runs = runs(said)
			p.Blocks = append(p.Blocks, *open)
		}
		open, said = nil, ""
	}
	for _, line := range strings.Split(text, "\n") {
		line = strings.TrimSpace(line)
		if line == "" {
			end()
			continue
		}
		if b, rest, begins := begun(line); begins {
			end()
			open, said = &b, rest
			continue
		}
		if open == nil {
			open = &Block{}
		}
		said = strings.TrimSpace(said + " " + line)
	}
	end()
	return p.titled()
}

// titled takes the title from among the blocks, and the field from each heading.
func (p Page) titled() Page {
	var rest []Block
	for _, b := range p.Blocks {
		if b.Kind == Heading && b.Level == 1 {
			p.Title = b.Text()
			continue
		}
		if last := len(b.Runs) - 1; b.Kind == Heading && last > 0 && b.Runs[last].Style == Typed {
			b.Field = b.Runs[last].Text
			b.Runs = b.Runs[:last]
			b.Runs[last-1].Text = strings.TrimSpace(b.Runs[last-1].Text)
		}
		rest = append(rest, b)
	}
	p.Blocks = rest
	return p
}

var (
	heading = regexp.MustCompile(`^(#{1,3}) (.*)$`)
	bullet  = regexp.MustCompile(`^- (.*)$`)
	counted = regexp.MustCompile(`^(\d+\.) (.*)$`)
	picture = regexp.MustCompile(`^!\[(.*)\]\(pictures/([a-z0-9-]+)\.svg\)$`)
)

// begun reads a line that begins a block, other than a paragraph.
func begun(line string) (b Block, rest string, ok bool) {
	switch {
	case heading.MatchString(line):
		m := heading.FindStringSubmatch(line)
		return Block{Kind: Heading, Level: len(m[1])}, m[2], true
	case bullet.MatchString(line):
		return Block{Kind: Item, Mark: "•"}, bullet.FindStringSubmatch(line)[1], true
	case counted.MatchString(line):
		m := counted.FindStringSubmatch(line)
		return Block{Kind: Item, Mark: m[1]}, m[2], true
	case picture.MatchString(line):
		m := picture.FindStringSubmatch(line)
		return Block{Kind: Picture, Picture: m[2]}, m[1], true
	}
	return Block{}, "", false
}

// mark finds a link, or what is strong, typed or slanted.
var mark = regexp.MustCompile("\\[([^\\]]+)\\]\\(([a-z0-9-]+)\\.md\\)|\\*\\*([^*]+)\\*\\*|`([^`]+)`|\\*([^*]+)\\*")

// runs breaks a text into its runs.
func runs(text string) []Run {
	var all []Run
	at := 0
	for _, m := range mark.FindAllStringSubmatchIndex(text, -1) {
		if m[0] > at {
			all = append(all, Run{Text: text[at:m[0]]})
		}
		of := func(group int) string {
			if m[2*group] < 0 {
				return ""
			}
			return text[m[2*group]:m[2*group+1]]
		}
		switch {
		case of(1) != "":
			all = append(all, Run{Text: of(1), To: of(2)})
		case of(3) != "":
			all = append(all, Run{Text: of(3), Style: Strong})
		case of(4) != "":
			all = append(all, Run{Text: of(4), Style: Typed})
		default:
			all = append(all, Run{Text: of(5), Style: Slanted})
		}
		at = m[1]
	}
	if at < len(text) {
		all = append(all, Run{Text: text[at:]})
	}
	return all
}
