package desk

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/adrg/xdg"
	"github.com/ledongthuc/pdf"
	"github.com/stretchr/testify/require"

	"tipline/app/press"
)

// pagesOf returns how many pages a PDF has.
func pagesOf(t *testing.T, name string) int {
	f, r, err := pdf.Open(name)
	require.NoError(t, err)
	defer func() { require.NoError(t, f.Close()) }()
	return r.NumPage()
}

// exported writes what is chosen of the packet into a file.
func exported(d *Desk, name string) (pages int, err error) {
	d.Export(d.Packet(), name, func(int, int) {}, func(n int, failed error) { pages, err = n, failed })
	return pages, err
}

// titled are the pages that are listed.
func titled(d *Desk) (titles []string) {
	count, _ := d.Pages()
	for i := range count {
		titles = append(titles, d.Leaf(i).Title)
	}
	return titles
}

// listed are the titles of pages as one text: a page that parts share has several.
func listed(titles []string) string { return strings.Join(titles, "\n") }

// What is chosen is what is listed and what is written: all, one part, or some parts and
// sorts of sheet without the pages that are left out.
func TestTheChoiceIsWhatIsWritten(t *testing.T) {
	d, _ := opened(t)
	d.Go(Paper)
	all := titled(d)
	require.Contains(t, all, "Great wheel: setting and depth · Great wheel: depth", "each of what shares a page is told apart")
	d.Type("", WhatField, "part")
	one := titled(d)
	require.Less(t, len(one), len(all)/4)
	require.Contains(t, listed(one), "Great wheel")
	d.Choose("escape")
	require.Contains(t, listed(titled(d)), "Escape wheel")
	require.NotContains(t, listed(titled(d)), "Great wheel")

	d.Type("", WhatField, "chosen")
	require.Equal(t, all, titled(d))
	sorts, parts := d.Ticks()
	require.Len(t, sorts, 3)
	require.Len(t, parts, len(d.Result().Parts()))
	for _, sort := range []string{"cards", "front"} {
		d.TickSort(sort, false)
	}
	d.TickParts(false)
	require.Empty(t, titled(d))
	require.Zero(t, d.Printing())
	require.NotEmpty(t, d.Missing())
	name := filepath.Join(t.TempDir(), "packet.pdf")
	_, err := written(d, name)
	require.ErrorContains(t, err, "printing.nothing")
	require.NoFileExists(t, name)

	d.TickPart("great", true)
	require.Equal(t, []string{"Great wheel: cutter", "Great wheel: cutter, square to the clearance face", "Great wheel", "Great wheel: screws", "Great wheel: screwing to the collet"}, titled(d))
	d.TickPage(1, false)
	require.Equal(t, 4, d.Printing())
	require.False(t, d.Leaf(1).Printed)
	n, err := written(d, name)
	require.NoError(t, err)
	require.Equal(t, 4, n)
	require.Equal(t, 4, pagesOf(t, name))
	d.TickParts(true)
	d.TickSort("cards", true)
	d.TickSort("front", true)
	require.Equal(t, all, titled(d))
	require.Equal(t, len(all)-1, d.Printing(), "a page stays left out when others come")
	require.Contains(t, d.Summary(), "of")
	d.TickPage(slices.Index(all, "Great wheel: cutter, square to the clearance face"), true)
	require.Equal(t, len(all), d.Printing())
	d.Type("", WhatField, "everything")
	sorts, parts = d.Ticks()
	require.Empty(t, append(sorts, parts...))
	require.False(t, d.CanUndo())
}

// A stopped export leaves the old file whole and nothing beside it, whenever it is
// stopped.
func TestAStoppedExportLeavesTheOldFile(t *testing.T) {
	d, _ := opened(t)
	folder := t.TempDir()
	name := filepath.Join(folder, "packet.pdf")
	require.NoError(t, os.WriteFile(name, []byte("the old one"), 0o600))
	count, _ := func() (int, int) { d.Go(Paper); return d.Pages() }()
	var b bench
	d.Aside = b.aside
	for _, after := range []int{0, 1, count / 2, count} {
		var stop func()
		var failed error
		told := func(done, total int) {
			require.Equal(t, count, total)
			if done == after {
				stop()
			}
		}
		stop = d.Export(d.Packet(), name, told, func(_ int, err error) { failed = err })
		if after == 0 {
			stop()
		}
		b.next()
		require.ErrorIs(t, failed, context.Canceled)
		data, err := os.ReadFile(name)
		require.NoError(t, err)
		require.Equal(t, "the old one", string(data))
		entries, err := os.ReadDir(folder)
		require.NoError(t, err)
		require.Len(t, entries, 1)
	}
}

// The packet is laid out aside: the pages before stand meanwhile, and the newest choice
// wins.
func TestThePacketIsLaidOutAside(t *testing.T) {
	d, changes := opened(t)
	var b bench
	d.Aside = b.aside
	d.Go(Paper)
	count, _ := d.Pages()
	require.Zero(t, count)
	drawing, _ := d.Drawing()
	require.Nil(t, drawing)
	require.Equal(t, d.Words().Say("summary.laying"), d.Missing())
	require.Equal(t, d.Missing(), d.Summary())
	before := *changes
	b.next()
	require.Equal(t, before+1, *changes)
	all, _ := d.Pages()
	require.Greater(t, all, 10)
	d.Type("", WhatField, "part")
	stands, _ := d.Pages()
	require.Equal(t, all, stands)
	d.Type("", "printing.paper", "a3")
	d.Pages()
	require.Len(t, b.waiting, 2)
	b.next()
	stands, _ = d.Pages()
	require.Equal(t, all, stands, "what was overtaken is not shown")
	b.next()
	stands, _ = d.Pages()
	require.Less(t, stands, all)
	require.InDelta(t, 297*420, d.Page().Width()*d.Page().Height(), 1e-6)
	require.Empty(t, b.waiting)
}

// scripts makes a folder the only one that programs are looked for in.
func scripts(t *testing.T, named map[string]string) (folder string) {
	folder = t.TempDir()
	for name, script := range named {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte("#!/bin/sh\nHERE='"+folder+"'\n"+script+"\n"), 0o755))
	}
	t.Setenv("PATH", folder)
	t.Setenv("XDG_CACHE_HOME", filepath.Join(folder, "cache"))
	xdg.Reload()
	t.Cleanup(xdg.Reload)
	return folder
}

// sent has the packet printed.
func sent(d *Desk, queue string) (s Sent, err error) {
	d.Print(d.Packet(), queue, func(int, int) {}, func(done Sent, failed error) { s, err = done, failed })
	return s, err
}

func TestSheetsArePrintedThroughTheSystem(t *testing.T) {
	d, _ := opened(t)
	folder := scripts(t, map[string]string{
		"lp":     `for a in "$@"; do last=$a; done; /bin/cp "$last" "$HERE/printed.pdf"; echo "$@" > "$HERE/said"; echo request id is Shed-1`,
		"lpstat": "echo Shed; echo Office",
	})
	var queues []string
	d.Queues(func(list []string) { queues = list })
	require.Equal(t, []string{"Shed", "Office"}, queues)
	d.Go(Paper)
	d.Type("", WhatField, "part")
	s, err := sent(d, "Shed")
	require.NoError(t, err)
	require.Equal(t, Sent{d.Printing(), "request id is Shed-1", ""}, s)
	require.Equal(t, d.Printing(), pagesOf(t, filepath.Join(folder, "printed.pdf")))
	said, err := os.ReadFile(filepath.Join(folder, "said"))
	require.NoError(t, err)
	require.Contains(t, string(said), "-d Shed -t Signal-cabin timepiece -o print-scaling=none -o media=A4")
	require.Equal(t, "Shed", d.Queue())
	left, err := os.ReadDir(filepath.Join(folder, "cache", "tipline"))
	require.NoError(t, err)
	require.Empty(t, left, "the printed file is not kept")
}

func TestWithoutAPrintCommandTheViewerHasTheSheets(t *testing.T) {
	d, _ := opened(t)
	folder := scripts(t, map[string]string{"xdg-open": `echo "$1" > "$HERE/said"`})
	s, err := sent(d, "")
	require.NoError(t, err)
	said, err := os.ReadFile(filepath.Join(folder, "said"))
	require.NoError(t, err)
	require.Equal(t, s.File+"\n", string(said))
	require.Equal(t, s.Pages, pagesOf(t, s.File))

	folder = scripts(t, map[string]string{})
	_, err = sent(d, "")
	var refusal *press.Refusal
	require.ErrorAs(t, err, &refusal)
	require.Equal(t, "press.no-viewer", refusal.Code)
	left, err := os.ReadDir(filepath.Join(folder, "cache", "tipline"))
	require.NoError(t, err)
	require.Empty(t, left, "sheets that nothing shows are not kept")

	folder = scripts(t, map[string]string{"lp": "echo no paper >&2; exit 1"})
	_, err = sent(d, "")
	require.ErrorAs(t, err, &refusal)
	require.Equal(t, "no paper", refusal.Reason)

	require.NoError(t, os.RemoveAll(filepath.Join(folder, "cache")))
	require.NoError(t, os.WriteFile(filepath.Join(folder, "cache"), nil, 0o600))
	_, err = sent(d, "")
	var unwritten *Refusal
	require.ErrorAs(t, err, &unwritten)
}
