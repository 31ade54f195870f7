package pdf

import (
	"fmt"
	"slices"
	"strings"

	"tipline/render"
)

// layer returns the object of a layer, in the file from now on.
func (b *book) layer(layer render.Layer) object {
	o, ok := b.layers[layer]
	if !ok {
		o = b.file.reserve()
		b.layers[layer] = o
		if !slices.Contains(render.Layers(), layer) {
			b.strange = append(b.strange, layer)
		}
	}
	return o
}

// order returns the layers that were used as the viewer lists them: in the order
// they are drawn.
func (b *book) order() []render.Layer {
	var used []render.Layer
	for _, layer := range render.Layers() {
		if _, ok := b.layers[layer]; ok {
			used = append(used, layer)
		}
	}
	return append(used, b.strange...)
}

// resourceName is what a page calls a font or a layer.
func resourceName(o object) string { return fmt.Sprintf("R%d", o) }

// writeResources writes the names that all pages share.
func (b *book) writeResources() {
	var fonts, layers strings.Builder
	for _, f := range b.faces {
		if f != nil {
			fmt.Fprintf(&fonts, "/%s %d 0 R", resourceName(f.object), f.object)
		}
	}
	for _, layer := range b.order() {
		o := b.layers[layer]
		fmt.Fprintf(&layers, "/%s %d 0 R", resourceName(o), o)
	}
	b.file.begin(b.resources)
	b.file.printf("<</Font<<%s>>/Properties<<%s>>>>", fonts.String(), layers.String())
	b.file.end()
}

func (b *book) writeLayers() {
	for _, layer := range b.order() {
		b.file.begin(b.layers[layer])
		b.file.printf("<</Type/OCG/Name%s>>", text(string(layer)))
		b.file.end()
	}
}

// writeCatalog writes the root of the document: PrintScaling None asks the viewer
// to print at full size. Where there are bookmarks it asks for them to be shown.
func (b *book) writeCatalog(doc render.Document, bookmarks object) {
	language := doc.Language
	if language == "" {
		language = "en"
	}
	var layers []object
	for _, layer := range b.order() {
		layers = append(layers, b.layers[layer])
	}
	all := references(layers)
	beside := ""
	if bookmarks > 0 {
		beside = fmt.Sprintf("/Outlines %d 0 R/PageMode/UseOutlines", bookmarks)
	}
	b.file.begin(b.catalog)
	b.file.printf("<</Type/Catalog/Pages %d 0 R/Lang%s/ViewerPreferences<</PrintScaling/None/DisplayDocTitle true>>"+
		"/OCProperties<</OCGs%s/D<</Order%s/ON%s>>>>%s>>", b.tree, text(language), all, all, all, beside)
	b.file.end()
}

func (b *book) writeInformation(doc render.Document) object {
	o := b.file.reserve()
	b.file.begin(o)
	b.file.printf("<<")
	entries := []struct{ key, value string }{
		{"Title", doc.Title}, {"Subject", doc.Subject}, {"Author", doc.Author}, {"Creator", "Tipline"}, {"Producer", "Tipline"},
	}
	for _, entry := range entries {
		if entry.value != "" {
			b.file.printf("/%s%s", entry.key, text(entry.value))
		}
	}
	b.file.printf(">>")
	b.file.end()
	return o
}
