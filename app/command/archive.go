package command

import (
	"archive/zip"
	"context"
	"fmt"
	"io"
	"path/filepath"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"tipline/app/keep"
	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/render"
	"tipline/render/dxf"
	"tipline/render/pdf"
	"tipline/render/sheet"
	"tipline/render/svg"
	"tipline/render/template"
)

// archive writes the packet and every template by itself, as SVG and DXF, into a folder
// of one zip. Its files bear no time, so that the same job gives the same bytes.
func archive(ctx context.Context, w io.Writer, folder string, r *solve.Result, o packet.Options, doc render.Document, run *sheet.Run) error {
	z := zip.NewWriter(w)
	if err := entry(z, folder+"/packet.pdf", func(w io.Writer) error { return pdf.WriteEach(w, doc, run.Pages(ctx)) }); err != nil {
		return err
	}
	for _, p := range o.Printed(r) {
		if err := ctx.Err(); err != nil {
			return err
		}
		if err := archiveTemplates(z, folder, r, p, o); err != nil {
			return err
		}
	}
	return z.Close()
}

// folder returns what the folder in a zip is called: what the job is, else its file.
func (c *call) folder(title string) string {
	file := filepath.Base(c.name)
	for _, name := range []string{title, strings.TrimSuffix(file, filepath.Ext(file))} {
		if name = keep.Name(name); name != "" && name != "-" {
			return name
		}
	}
	return "packet"
}

// archiveTemplates puts a part's templates into its folder, and its dividing card with
// the tables it goes on in; other cards stand in the packet.
func archiveTemplates(z *zip.Writer, folder string, r *solve.Result, p solve.Part, o packet.Options) error {
	for _, k := range packet.Kinds() {
		if k.IsCard() && k != packet.Dividing || !k.Needs(p) || !o.Takes(k) {
			continue
		}
		d, err := drawnAlone(r, p, k, 1, o.Style)
		if err != nil {
			return err
		}
		drawings := []*render.Drawing{d}
		if made, ok := p.(solve.Made); ok && k == packet.Dividing {
			for _, more := range template.DividingTable(made.Template(), o.Style) {
				drawings = append(drawings, more.Centred())
			}
		}
		if err := archiveDrawings(z, folder+"/"+fileName(p.ID())+"/"+string(k), drawings); err != nil {
			return err
		}
	}
	return nil
}

// archiveDrawings writes drawings as SVG and DXF, those after the first with their
// number behind the name.
func archiveDrawings(z *zip.Writer, name string, drawings []*render.Drawing) error {
	for i, d := range drawings {
		numbered := name
		if i > 0 {
			numbered = fmt.Sprintf("%s-%d", name, i+1)
		}
		if err := entry(z, numbered+".svg", func(w io.Writer) error { return svg.Write(w, d) }); err != nil {
			return err
		}
		if err := entry(z, numbered+".dxf", func(w io.Writer) error { return dxf.Write(w, d) }); err != nil {
			return err
		}
	}
	return nil
}

// firstDay is the first day that a zip can bear (APPNOTE.TXT 4.4.6, from memory). A packet
// bears no time, so that the same job makes the same file.
var firstDay = time.Date(1980, time.January, 1, 0, 0, 0, 0, time.UTC)

func entry(z *zip.Writer, name string, write func(io.Writer) error) error {
	w, err := z.CreateHeader(&zip.FileHeader{Name: name, Method: zip.Deflate, Modified: firstDay})
	if err != nil {
		return err
	}
	return write(w)
}

// fileName returns an id as every file system takes it: letters and digits, and "_"
// with the number of whatever else there is, so that no two ids share a name.
func fileName(id string) string {
	var b strings.Builder
	for _, r := range id {
		if r == '-' || r < utf8.RuneSelf && (unicode.IsLetter(r) || unicode.IsDigit(r)) {
			b.WriteRune(r)
			continue
		}
		fmt.Fprintf(&b, "_%x_", r)
	}
	return b.String()
}
