// Package pdf writes a document as a PDF that a printer puts out at full scale.
//
// It is written here, not by a library: what a template needs is a small part of
// the format, and each library to be had falls short of it somewhere: curves of
// too few pieces, a page size of two decimals, the clock in the file, no layers,
// or no way to ask the viewer not to scale except by mending the file afterwards.
// The one hard part, the subset of the font, is the font library's, and that
// font is read once in a run of the program.
package pdf

import (
	"errors"
	"fmt"
	"io"
	"iter"
	"math"

	"tipline/geometry/measure"
	"tipline/render"
)

// pointsPerMM is the length of a millimetre in PDF's points of 1/72 in.
const pointsPerMM = 72 / measure.MMPerInch

// Write writes the document. The same document always gives the same bytes:
// there is no date in it. It asks the viewer not to scale, carries title,
// subject, author and language, and each layer of the drawings as a layer that
// the viewer can switch off. Text stays text. A document without pages, a page
// without size and a coordinate that is no number are refused, perhaps after
// part has been written.
func Write(w io.Writer, doc render.Document) error {
	return WriteEach(w, doc, func(yield func(render.Page, error) bool) {
		for _, page := range doc.Pages {
			if !yield(page, nil) {
				return
			}
		}
	})
}

// WriteEach writes a document whose pages come one at a time: what Write does, but
// a page is asked for when those before it are written, and of those it keeps
// nothing but where they stand in the file and which letters they used. The pages
// that doc itself holds are not looked at. An error that comes instead of a page
// ends the writing and is returned.
func WriteEach(w io.Writer, doc render.Document, pages iter.Seq2[render.Page, error]) error {
	b := &book{file: newFile(w), layers: map[render.Layer]object{}}
	if err := b.write(doc, pages); err != nil {
		return fmt.Errorf("pdf: %w", err)
	}
	return nil
}

// book is a document being written: its file, and what the pages share.
type book struct {
	file                     *file
	catalog, tree, resources object
	faces                    [2]*face // regular, bold; nil until used
	layers                   map[render.Layer]object
	strange                  []render.Layer // those that render.Layers does not list, as they are met
	marks                    []byte         // room for a page's content, used page after page
	written                  []object       // the pages
}

func (b *book) write(doc render.Document, pages iter.Seq2[render.Page, error]) error {
	b.catalog, b.tree, b.resources = b.file.reserve(), b.file.reserve(), b.file.reserve()
	if err := b.writePages(pages); err != nil {
		return err
	}
	if err := b.writeFaces(); err != nil {
		return err
	}
	b.writeResources()
	b.writeLayers()
	b.writeCatalog(doc, b.writeBookmarks(doc.Bookmarks))
	return b.file.finish(b.catalog, b.writeInformation(doc))
}

// writePages writes the pages as they come, and the tree that lists them.
func (b *book) writePages(pages iter.Seq2[render.Page, error]) error {
	for page, err := range pages {
		if err != nil {
			return err
		}
		object, err := b.page(page)
		if err != nil {
			return fmt.Errorf("page %d: %w", len(b.written)+1, err)
		}
		b.written = append(b.written, object)
	}
	if len(b.written) == 0 {
		return errors.New("the document has no pages")
	}
	b.file.begin(b.tree)
	b.file.printf("<</Type/Pages/Count %d/Kids%s>>", len(b.written), references(b.written))
	b.file.end()
	return nil
}

// page writes one page and its content.
func (b *book) page(page render.Page) (object, error) {
	if !(page.Width > 0) || !(page.Height > 0) || math.IsInf(page.Width+page.Height, 1) {
		return 0, fmt.Errorf("a sheet cannot measure %g × %g mm", page.Width, page.Height)
	}
	c := &content{book: b, out: b.marks[:0]}
	if err := c.draw(page.Drawing, page.Stretch); err != nil {
		return 0, err
	}
	b.marks = c.out
	stream := b.file.reserve()
	b.file.begin(stream)
	b.file.stream("", c.out)
	b.file.end()
	sheet := b.file.reserve()
	b.file.begin(sheet)
	b.file.printf("<</Type/Page/Parent %d 0 R/Resources %d 0 R/Contents %d 0 R/MediaBox[0 0 %s %s]>>",
		b.tree, b.resources, stream, number(page.Width*pointsPerMM), number(page.Height*pointsPerMM))
	b.file.end()
	return sheet, nil
}
