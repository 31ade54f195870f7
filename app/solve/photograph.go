package solve

import (
	"math"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/render"
)

// Photograph is a picture of the bit and how it lies under the form, in the tool
// frame. The picture itself is job.Picture's to read.
type Photograph struct {
	File string
	Lies render.Similarity
}

// solvePhotograph places the photograph by its picked points: their distance gives
// the scale, the picked edge runs up the infeed.
func (t *Tooling) solvePhotograph(r *reader, b *job.Bit) {
	if b == nil || b.Photograph == nil || b.Photograph.File == "" {
		return
	}
	p := b.Photograph
	if !job.BareName(p.File) {
		r.find(Error, "cutter.bit.photograph.file", "picture.not-bare", text("value", p.File))
		return
	}
	scale, ok := r.scale(p)
	edge, line := p.Edge.Points()
	if !ok || !line || len(edge) > 0 && len(edge) != 2 {
		return
	}
	lies := render.Similarity{Scale: scale}
	if len(edge) == 2 {
		up := edge[1].Sub(edge[0])
		if up.Norm() == 0 {
			r.find(Error, "cutter.bit.photograph.edge", "photograph.points-coincide")
			return
		}
		lies.Turn, lies.Pixel = (geometry.FullTurn/4 - geometry.Angle(math.Atan2(-up.Y, up.X))).Normal(), edge[0]
	} else {
		r.find(Note, "cutter.bit.photograph.edge", "photograph.no-edge")
	}
	if origin, known := p.Origin.Points(); known && len(origin) > 0 {
		lies.Pixel = origin[0]
	}
	t.Photograph = &Photograph{File: p.File, Lies: lies}
}

// scale returns millimetres to a pixel, and false where the picked points do not
// tell.
func (r *reader) scale(p *job.Photograph) (float64, bool) {
	points, known := p.Points.Points()
	if !known {
		return 0, false
	}
	if len(points) != 2 || p.Distance.Empty() {
		r.find(Note, "cutter.bit.photograph.points", "photograph.no-scale")
		return 0, false
	}
	mark := len(r.findings)
	distance, pixels := r.length("cutter.bit.photograph.distance", p.Distance, 0), points[0].Dist(points[1])
	if pixels == 0 {
		r.find(Error, "cutter.bit.photograph.points", "photograph.points-coincide")
	}
	return distance / pixels, r.sound(mark)
}

// PhotographFindings says which photographs of bits cannot be shown: those whose files
// check refuses, each asked for once. What is read from a disk is not solve's to know.
func PhotographFindings(j *job.Job, check func(file string) error) []Finding {
	var fs []Finding
	known := map[string]error{}
	look := func(id string, c *job.Cutter) {
		if c == nil || c.Bit == nil || c.Bit.Photograph == nil || !job.BareName(c.Bit.Photograph.File) {
			return
		}
		file := c.Bit.Photograph.File
		err, seen := known[file]
		if !seen {
			err = check(file)
			known[file] = err
		}
		if err != nil {
			fs = append(fs, fromError(id, "cutter.bit.photograph.file", err))
		}
	}
	for _, w := range j.Wheels {
		look(w.ID, w.Cutter)
	}
	for _, p := range j.Pinions {
		look(p.ID, p.Cutter)
	}
	return fs
}
