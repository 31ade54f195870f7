package desk

import (
	"bytes"
	"image"
	"io"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"tipline/app/job"
	"tipline/app/keep"
	"tipline/app/solve"
	"tipline/geometry"
	"tipline/render"
)

const photographFile geometry.Quantity = "cutter.bit.photograph.file"

// PhotographFields lists the fields of the present part's photograph, none until
// there is one.
func (d *Desk) PhotographFields() []Field {
	if !d.HasPhotograph() {
		return nil
	}
	var fs []Field
	for _, path := range []geometry.Quantity{
		photographFile, "cutter.bit.photograph.points", "cutter.bit.photograph.distance",
		"cutter.bit.photograph.edge", "cutter.bit.photograph.origin",
	} {
		fs = append(fs, d.field(d.part, path))
	}
	return fs
}

// HasPhotograph reports whether the present part's bit has a photograph, on the
// step that shows it.
func (d *Desk) HasPhotograph() bool {
	c := d.cutterOf(d.part)
	return d.HasBit() && c != nil && c.Bit != nil && c.Bit.Photograph != nil
}

// photos are what became of the photographs that were read, by the file's whole name, and
// the one of them that was shown last: a job may have many, and each may be large.
type photos struct {
	faults map[string]error
	shown  string
	image  image.Image
}

// photo returns a photograph that lies beside the job, or why it cannot be shown.
func (d *Desk) photo(file string) (image.Image, error) {
	key := filepath.Join(d.photoFolder(), file)
	switch fault := d.photos.faults[key]; {
	case fault != nil:
		return nil, fault
	case d.photos.shown == key:
		return d.photos.image, nil
	}
	read, err := job.Picture(d.photoFolder(), file)
	if d.photos.faults == nil {
		d.photos.faults = map[string]error{}
	}
	d.photos.faults[key] = err
	if err == nil {
		d.photos.shown, d.photos.image = key, read
	}
	return read, err
}

// seen reports why a photograph cannot be shown, nil where it can.
func (d *Desk) seen(file string) error {
	err, known := d.photos.faults[filepath.Join(d.photoFolder(), file)]
	if !known {
		_, err = d.photo(file)
	}
	return err
}

// looked returns a result with what there is to say of the job's photographs.
func (d *Desk) looked(r *solve.Result) *solve.Result {
	d.unseen = solve.PhotographFindings(r.Job, d.seen)
	if len(d.unseen) == 0 {
		return r
	}
	whole := *r
	whole.Findings = slices.Concat(r.Findings, d.unseen)
	return &whole
}

// photoFolder is where photographs lie: beside the job, and among the program's
// own files until the job is saved.
func (d *Desk) photoFolder() string {
	if d.file != "" {
		return filepath.Dir(d.file)
	}
	return d.recent.photographs()
}

// photograph returns a part's photograph as it lies under the form, nil where
// there is none or it is not known how.
func (d *Desk) photograph(p solve.Part) *render.Picture {
	t := tooling(p)
	if t == nil || t.Photograph == nil {
		return nil
	}
	i, _ := d.photo(t.Photograph.File)
	if i == nil {
		return nil
	}
	return &render.Picture{Image: i, Transform: t.Photograph.Lies}
}

// UsePhotograph lays a picture of the bit under the form of the present part. It
// is copied to where photographs are kept, and refused if it is none.
func (d *Desk) UsePhotograph(name string) error {
	if _, err := job.Picture(filepath.Dir(name), filepath.Base(name)); err != nil {
		return err
	}
	file, err := bring(name, d.photoFolder())
	if err != nil {
		return err
	}
	d.photos = photos{}
	j := d.Job()
	for _, path := range []geometry.Quantity{"cutter.bit.photograph.points", "cutter.bit.photograph.edge", "cutter.bit.photograph.origin"} {
		j = d.with(j, path, "")
	}
	d.do(d.with(j, photographFile, file))
	return nil
}

// DropPhotograph takes the photograph of the present part away; the file stays.
func (d *Desk) DropPhotograph() {
	j := d.Job()
	for _, f := range d.PhotographFields() {
		j = d.with(j, f.Path, "")
	}
	d.picking = nil
	d.do(j)
}

// bring copies a file into a folder, unless it lies there, and returns the name
// that it has there: another where one of the name has other contents.
func bring(name, folder string) (string, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return "", err
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return "", err
	}
	base := filepath.Base(name)
	stem, ending := strings.TrimSuffix(base, filepath.Ext(base)), filepath.Ext(base)
	for n := 2; ; n++ {
		copied := filepath.Join(folder, base)
		switch _, err := os.Lstat(copied); {
		case os.IsNotExist(err):
			return base, keep.Write(copied, func(w io.Writer) error {
				_, err := w.Write(data)
				return err
			})
		case err != nil:
			return "", err
		}
		if there, err := os.ReadFile(copied); err == nil && bytes.Equal(there, data) {
			return base, nil
		}
		base = stem + "-" + strconv.Itoa(n) + ending
	}
}

// photographs are the files of the job's photographs, by the ids of their parts.
func (d *Desk) photographs() map[string]string {
	files := map[string]string{}
	for _, id := range d.order() {
		if c := d.cutterOf(id); c != nil && c.Bit != nil && c.Bit.Photograph != nil {
			files[id] = c.Bit.Photograph.File
		}
	}
	return files
}

// bringAll copies photographs from one folder into another and returns those that have
// another name there. What cannot be copied is left to be told of where it is missed.
func bringAll(photos map[string]string, from, to string) map[string]string {
	if from == to {
		return nil
	}
	fresh := map[string]string{}
	for _, id := range slices.Sorted(maps.Keys(photos)) {
		if _, err := job.Picture(from, photos[id]); err != nil {
			continue
		}
		if file, err := bring(filepath.Join(from, photos[id]), to); err == nil && file != photos[id] {
			fresh[id] = file
		}
	}
	return fresh
}

// rephotographed returns a job whose parts have photographs of other names.
func rephotographed(j *job.Job, names map[string]string) *job.Job {
	for _, id := range slices.Sorted(maps.Keys(names)) {
		if next, err := j.Set(id, photographFile, names[id]); err == nil {
			j = next
		}
	}
	return j
}

// unseenOf returns what there is to say of a part's photograph.
func (d *Desk) unseenOf(part string) []solve.Finding {
	return slices.DeleteFunc(slices.Clone(d.unseen), func(f solve.Finding) bool { return f.Part != part })
}
