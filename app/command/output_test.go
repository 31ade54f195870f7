package command

import (
	"bytes"
	"encoding/binary"
	"image/png"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/ledongthuc/pdf"
	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

func pagesOf(t *testing.T, name string) *pdf.Reader {
	f, r, err := pdf.Open(name)
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, f.Close()) })
	return r
}

// size is a page's width and height in millimetres.
func size(r *pdf.Reader, page int) (width, height float64) {
	box := r.Page(page).V.Key("MediaBox")
	return box.Index(2).Float64() * 25.4 / 72, box.Index(3).Float64() * 25.4 / 72
}

func TestPacketIsTheSameEachTime(t *testing.T) {
	job := sampleJob(t)
	one, two := filepath.Join(t.TempDir(), "one.pdf"), filepath.Join(t.TempDir(), "two.pdf")
	r := run("packet", job, "-out", one)
	require.Equal(t, Done, r.code, r.err)
	require.Equal(t, one+": "+strconv.Itoa(pagesOf(t, one).NumPage())+" pages.\n", r.out)
	require.Equal(t, Done, run("packet", job, "-out="+two).code)
	first, err := os.ReadFile(one)
	require.NoError(t, err)
	second, err := os.ReadFile(two)
	require.NoError(t, err)
	require.True(t, bytes.Equal(first, second))
}

func TestPaper(t *testing.T) {
	metric, inches := sampleJob(t), jobFile(t, `{"tipline": 1, "units": "in", "wheels": [{"id": "a",
		"teeth": {"form": "measured", "count": 60, "tip_diameter": 2, "root_diameter": 1.8}}]}`)
	for _, row := range []struct {
		name          string
		args          []string
		width, height float64 // ISO 216; ASME Y14.1 from memory
	}{
		{"millimetres are A4", []string{metric}, 210, 297},
		{"inches are Letter", []string{inches}, 215.9, 279.4},
		{"asked for", []string{inches, "-paper", "A3"}, 297, 420},
		{"of one's own", []string{inches, "-paper", "200x280mm"}, 200, 280},
	} {
		t.Run(row.name, func(t *testing.T) {
			out := filepath.Join(t.TempDir(), "out.pdf")
			r := run(append([]string{"packet", "-out", out}, row.args...)...)
			require.Equal(t, Done, r.code, r.err)
			width, height := size(pagesOf(t, out), 1)
			require.InDelta(t, row.width, min(width, height), 0.01)
			require.InDelta(t, row.height, max(width, height), 0.01)
		})
	}
}

func TestCopiesRepeatTemplatesOnlyAndOneWheelIsLess(t *testing.T) {
	job, out := sampleJob(t), filepath.Join(t.TempDir(), "out.pdf")
	count := func(args ...string) int {
		require.Equal(t, Done, run(append([]string{"packet", job, "-out", out}, args...)...).code)
		return pagesOf(t, out).NumPage()
	}
	one, two := count("-wheel", "escape", "-apart"), count("-wheel", "escape", "-apart", "-copies", "2")
	require.Equal(t, one+4, two, "a second of both grinding templates, crossing template and drilling template")
	require.Less(t, count("-wheel", "escape"), one, "what follows each other shares sheets")
	require.Less(t, one, count())
}

func TestPacketPrintsTheRest(t *testing.T) {
	out := filepath.Join(t.TempDir(), "out.pdf")
	r := run("packet", awkward+"absurd-values.tipline", "-out", out)
	require.Equal(t, Faulty, r.code)
	require.Empty(t, r.err)
	require.Greater(t, pagesOf(t, out).NumPage(), 2)

	r = run("packet", awkward+"absurd-values.tipline", "-out", out+"2", "-wheel", "two-teeth")
	require.Equal(t, ran{Nothing, "", "tipline: two-teeth cannot be drawn because of teeth.count: 2 is out of range: this takes from 3 to 2000.\n"}, r)
	require.NoFileExists(t, out+"2")
	require.Equal(t, Done, run("packet", awkward+"absurd-values.tipline", "-out", out, "-wheel", "sound").code)
}

func TestAFailureLeavesTheOldPacket(t *testing.T) {
	out := filepath.Join(t.TempDir(), "out.pdf")
	require.NoError(t, os.WriteFile(out, []byte("what was there"), 0o644))
	for _, args := range [][]string{
		{"packet", awkward + "truncated.tipline", "-out", out},
		{"packet", sampleJob(t), "-out", out, "-wheel", "nobody"},
		{"template", awkward + "absurd-values.tipline", "-out", out, "-wheel", "sound", "-kind", "grinding"},
	} {
		require.Equal(t, Nothing, run(args...).code, args)
		data, err := os.ReadFile(out)
		require.NoError(t, err)
		require.Equal(t, "what was there", string(data))
	}
}

func TestTemplates(t *testing.T) {
	job, folder := movement(t), t.TempDir()
	marks := map[string]string{"pdf": "%PDF-", "svg": "<svg", "dxf": "$ACADVER", "png": "\x89PNG"}
	for kind := range kinds {
		for format, mark := range marks {
			out := filepath.Join(folder, kind+"-template")
			r := run("template", job, "-wheel", partOf(kind), "-kind", kind, "-as", format, "-out", out)
			require.Equal(t, ran{Done, "", ""}, r, "%s %s", kind, format)
			data, err := os.ReadFile(out)
			require.NoError(t, err)
			require.True(t, bytes.Contains(data, []byte(mark)), "%s %s", kind, format)
		}
	}
}

// movement is a job with a part for every kind of template.
func movement(t *testing.T) string {
	return jobFile(t, `{"tipline": 1, "wheels": [
		{"id": "wheel", "thickness": "1.6 mm", "bore": "5 mm", "teeth": {"form": "lantern driver", "count": 64, "module": "0.8 mm", "leaves": 8},
		 "cutter": {}, "dividing": {"ratio": 60},
		 "crossing": {"arms": 4, "rim": "2.4 mm", "hub": "16 mm", "arm_at_rim": "2 mm", "arm_at_hub": "3 mm",
		              "fillet_at_rim": "0.8 mm", "fillet_at_hub": "1 mm", "allowance": "0.3 mm", "blade": "2/0"},
		 "mount": {"screws": 4, "thread": "BA 10", "screw_circle": "10 mm"}},
		{"id": "upper", "thickness": "1.6 mm", "bore": "5 mm", "teeth": {"form": "measured", "count": 30, "tip_diameter": "30 mm", "root_diameter": "27 mm"}}],
		"stacks": [{"id": "stack", "wheels": ["wheel", "upper"], "mount": {"screws": 4, "thread": "BA 10", "screw_circle": "10 mm"}}],
		"pinions": [{"id": "lantern", "form": "lantern", "leaves": 8, "module": "0.8 mm", "bore": "2 mm"}],
		"pairs": [{"id": "mesh", "wheel": "wheel", "pinion": "lantern"}],
		"trains": [{"id": "train", "from": "wheel", "to": "lantern"}]}`)
}

// partOf names the part of the movement that has a template of the kind.
func partOf(kind string) string {
	switch kind {
	case "shroud":
		return "lantern"
	case "depthing":
		return "mesh"
	case "train", "stack":
		return kind
	}
	return "wheel"
}

func TestTheNamesEndingSaysTheFormat(t *testing.T) {
	job, folder := sampleJob(t), t.TempDir()
	for name, start := range map[string]string{"a.SVG": "<", "a.png": "\x89PNG", "a": "%PDF-", "a.txt": "%PDF-"} {
		out := filepath.Join(folder, name)
		require.Equal(t, Done, run("template", job, "-wheel", "great", "-kind", "crossing", "-out", out).code)
		data, err := os.ReadFile(out)
		require.NoError(t, err)
		require.True(t, bytes.HasPrefix(data, []byte(start)), name)
	}
}

func TestAStepThatIsNotThere(t *testing.T) {
	job := jobFile(t, `{"tipline": 1, "wheels": [
		{"id": "plain", "teeth": {"form": "measured", "count": 60, "tip_diameter": "50 mm", "root_diameter": "46 mm"}},
		{"id": "hubless", "thickness": "1.5 mm", "teeth": {"form": "measured", "count": 60, "tip_diameter": "50 mm", "root_diameter": "46 mm"},
		 "crossing": {"arms": 5, "rim": "2 mm", "hub": "60 mm", "arm_at_rim": "2 mm", "arm_at_hub": "2 mm",
		              "fillet_at_rim": "0.5 mm", "fillet_at_hub": "0.5 mm"}}]}`)
	out := filepath.Join(t.TempDir(), "out.svg")
	r := run("template", job, "-wheel", "plain", "-kind", "grinding", "-out", out)
	require.Equal(t, ran{Nothing, "", "tipline: plain has no such template, because the job says nothing of that step. There are: blank, crossing.\n"}, r)
	require.Equal(t, Done, run("template", job, "-wheel", "plain", "-kind", "crossing", "-out", out).code)
	r = run("template", job, "-wheel", "hubless", "-kind", "crossing", "-out", out)
	require.Equal(t, Nothing, r.code)
	require.Contains(t, r.err, "tipline: hubless cannot be drawn because of crossing.hub: The hub")
}

// A kind that a part never has is refused with what the part is and which it may have;
// an error on another step is not the reason.
func TestKindsThatAPartNeverHas(t *testing.T) {
	job, out := sampleJob(t), filepath.Join(t.TempDir(), "out.svg")
	for _, row := range []struct{ part, kind, says string }{
		{"third-pinion", "depth", "third-pinion is a lantern pinion, drilled and not cut, which has no template of the kind depth. It may have: blank, dividing, shroud."},
		{"third-pinion", "grinding", "no template of the kind grinding. It may have: blank, dividing, shroud."},
		{"third", "depthing", "third is a wheel, which has no template of the kind depthing."},
		{"centre-pinion", "crossing", "centre-pinion is a pinion of cut leaves, which"},
		{"going", "setting", "going is a train, which has no template of the kind setting. It may have: train."},
		{"centre-third", "grinding", "centre-third is a pair in mesh, which has no template of the kind grinding. It may have: depthing."},
		{"hour-pipe", "blank", "hour-pipe is a stack of wheels, which has no template of the kind blank. It may have: stack."},
	} {
		r := run("template", job, "-wheel", row.part, "-kind", row.kind, "-out", out)
		require.Equal(t, Nothing, r.code)
		require.Contains(t, r.err, row.says)
	}
	bad := jobFile(t, `{"tipline": 1, "wheels": [{"id": "w", "teeth": {"form": "cycloidal", "count": 60, "module": 1, "leaves": 8},
		"dividing": {"ratio": "often"}}]}`)
	require.Contains(t, run("template", bad, "-wheel", "w", "-kind", "grinding", "-out", out).err, "says nothing of that step")
	require.Contains(t, run("template", bad, "-wheel", "w", "-kind", "dividing", "-out", out).err, "because of dividing.ratio")
}

// A square of 20 mm with its margin is 24 mm of paper; the picture says how large
// its pixels are.
func TestPictureSaysItsScale(t *testing.T) {
	side, err := geometry.NewOutline([]geometry.Vertex{
		{Point: geometry.Point{X: -10, Y: -10}},
		{Point: geometry.Point{X: 10, Y: -10}},
		{Point: geometry.Point{X: 10, Y: 10}},
		{Point: geometry.Point{X: -10, Y: 10}},
	})
	require.NoError(t, err)
	d := &render.Drawing{Scale: 1, Items: []render.Item{{Layer: render.LayerForm, Pen: render.Visible, Fill: render.Steel, Outlines: []geometry.Outline{side}}}}
	var b bytes.Buffer
	require.NoError(t, writePNG(&b, d))
	picture, err := png.Decode(bytes.NewReader(b.Bytes()))
	require.NoError(t, err)
	require.InDelta(t, 24*300/25.4, picture.Bounds().Dx(), 5)
	at := bytes.Index(b.Bytes(), []byte("pHYs"))
	require.Positive(t, at)
	require.EqualValues(t, 11811, binary.BigEndian.Uint32(b.Bytes()[at+4:]), "300 dots an inch are 11811 to the metre")
	centre, corner := picture.At(picture.Bounds().Dx()/2, picture.Bounds().Dy()/2), picture.At(1, 1)
	require.NotEqual(t, centre, corner)
}
