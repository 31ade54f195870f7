package desk

import (
	"context"

	"tipline/app/packet"
	"tipline/app/solve"
)

// order is what a packet is laid out from, as far as it is not the printer's.
type order struct {
	result *solve.Result
	part   string // where it alone is printed
}

// laying is the packet being laid out beside the window.
type laying struct {
	cancel context.CancelFunc
	leaves []leaf
	err    error
}

// layOut has the packet laid out as it is now chosen, unless it is or the job is still
// being solved; until that is done
// the pages stand as they were laid out last. Without Aside it is done at once.
func (d *Desk) layOut() {
	p, now := &d.packet, order{result: d.result}
	if p.chosen.what == thisPart {
		now.part = d.part
	}
	if d.solving != nil || p.laid != nil && *p.laid == now {
		return
	}
	if p.laying != nil {
		p.laying.cancel()
	}
	ctx, cancel := context.WithCancel(context.Background())
	l := &laying{cancel: cancel}
	p.laid, p.laying = &now, l
	o := d.options()
	run := func() { l.leaves, l.err = laidOut(ctx, now.result, o) }
	if d.Aside == nil {
		run()
		d.laidOut(l)
		return
	}
	d.Aside(run, func() {
		if d.laidOut(l) {
			d.Changed()
		}
	})
}

// layingOut reports whether other pages are to come.
func (d *Desk) layingOut() bool { return d.packet.laying != nil || d.solving != nil }

// laidOut takes the pages that were laid out, unless others were asked for since.
func (d *Desk) laidOut(l *laying) bool {
	l.cancel()
	p := &d.packet
	if p.laying != l {
		return false
	}
	if p.laying, p.err = nil, l.err; l.err == nil {
		p.leaves = l.leaves
	}
	return true
}

func laidOut(ctx context.Context, r *solve.Result, o packet.Options) ([]leaf, error) {
	doc, err := packet.Build(ctx, r, o)
	if err != nil {
		return nil, err
	}
	var leaves []leaf
	names := naming{}
	for _, page := range doc.Pages {
		leaves = append(leaves, leaf{page, names.of(page)})
	}
	return leaves, nil
}
