package packet_test

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/assets/samples"
	"tipline/render"
	"tipline/render/sheet"
)

// eachSample calls back with every sample job worked out.
func eachSample(t *testing.T, do func(name string, r *solve.Result)) {
	list, err := samples.List()
	require.NoError(t, err)
	for _, s := range list {
		data, err := samples.Read(s.Name)
		require.NoError(t, err)
		j, err := job.Read(bytes.NewReader(data))
		require.NoError(t, err)
		do(s.Name, solve.Solve(t.Context(), j))
	}
}

// The profile of a printer that errs as printers do takes no more sheets, or hardly any.
func TestAProfileTakesHardlyAnyMoreSheets(t *testing.T) {
	r := solve.Solve(t.Context(), sample(t))
	o := options(t, r.Job)
	_, plain, err := packet.Plan(t.Context(), r, o)
	require.NoError(t, err)
	for _, x := range []float64{0.996, 1.004} {
		for _, y := range []float64{0.996, 1.004} {
			o.Printing.Profile = sheet.Profile{Name: "Kitchen", Paper: o.Paper.Name, X: x, Y: y}
			_, shaped, err := packet.Plan(t.Context(), r, o)
			require.NoError(t, err)
			require.LessOrEqual(t, shaped.Len(), plain.Len()+2, "%g, %g", x, y)
		}
	}
}

// The form at full size, beside its enlargement, stands clear of all that is written there.
func TestTheFormAtFullSizeStandsClear(t *testing.T) {
	drawn := 0
	eachSample(t, func(name string, r *solve.Result) {
		for _, p := range r.Parts() {
			for _, scale := range []float64{5, 10, 20} {
				if !packet.Grinding.Needs(p) {
					continue
				}
				d, err := packet.Draw(r, p, packet.Grinding, scale, options(t, r.Job).Style)
				require.NoError(t, err)
				drawn += len(requireFormsClear(t, d, name+" "+p.ID()))
			}
		}
	})
	require.Greater(t, drawn, 50)
}

// requireFormsClear requires that no text stands on a form other than the first, and returns
// the forms.
func requireFormsClear(t *testing.T, d *render.Drawing, name string) (forms []render.Item) {
	for _, it := range d.Items {
		if it.Layer == render.LayerForm && len(it.Outlines) > 0 {
			forms = append(forms, it)
		}
	}
	for _, form := range forms[1:] {
		for _, it := range d.Items {
			if it.Text != nil {
				require.False(t, it.Text.Bounds().Touches(form.Outlines[0].Bounds()), "%s: %q stands on the form", name, it.Text.String)
			}
		}
	}
	return forms
}

// One pair's card comes with how it is used on the same sheet, and every pair's cards hold it
// once, two and more to a sheet.
func TestHowAPairIsSetIsSaidOnce(t *testing.T) {
	r := solve.Solve(t.Context(), sample(t))
	o := options(t, r.Job)
	one, err := packet.One(t.Context(), r, r.Pairs[1], packet.Depthing, 1, o)
	require.NoError(t, err)
	require.Len(t, one.Pages, 1)
	require.True(t, says(one.Pages[0], o.Style.Words.Say("cards.depthing.set")))
	o.Kinds = []packet.Kind{packet.Depthing}
	all, err := packet.Build(t.Context(), r, o)
	require.NoError(t, err)
	require.Len(t, all.Pages, (len(r.Pairs)+2)/2)
	for i, page := range all.Pages {
		require.Equal(t, i == 0, says(page, o.Style.Words.Say("cards.depthing.set")))
	}
}

// An arbor's findings stand on the cover beside those of the parts.
func TestTheCoverSpeaksOfArbors(t *testing.T) {
	j := sample(t)
	j.Arbors[0].Parts = append(j.Arbors[0].Parts, "nobody")
	r := solve.Solve(t.Context(), j)
	require.NotEmpty(t, r.On(j.Arbors[0].ID))
	o := options(t, j)
	o.Kinds = []packet.Kind{packet.Cover}
	doc, err := packet.Build(t.Context(), r, o)
	require.NoError(t, err)
	require.True(t, says(front(doc), j.Arbors[0].ID+", "))
	require.True(t, says(front(doc), "nobody"))
}
