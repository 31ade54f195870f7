package solve_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
	"tipline/geometry/measure"
)

// added is a crossed wheel of 60 mm with additions of its maker's own and a mount.
func added(t testing.TB, hub, additions, mount string) *job.Job {
	return read(t, fmt.Sprintf(`{"tipline": 1, "units": "mm", "wheels": [{"id": "third", "thickness": 1.6, "bore": 6, "material": "brass",
		"teeth": {"form": "measured", "count": 72, "tip_diameter": 60, "root_diameter": 55},
		"crossing": {"arms": 6, "rim": 2.4, "hub": "%s", "arm_at_rim": 2.2, "arm_at_hub": 3, "fillet_at_rim": 0.8, "fillet_at_hub": 0.8},
		"additions": [%s], "mount": %s}]}`, hub, additions, mount))
}

// What a hole's error says would do does when it is typed back as it is shown.
func TestAHolesBoundBuildsAsItIsShown(t *testing.T) {
	for _, row := range []struct {
		radius, angle, diameter string
		field                   geometry.Quantity
	}{
		{"26.3", "30", "3", "additions[0].diameter"},
		{"0", "30", "1", "additions[0].radius"},
		{"0", "0", "0.7", "additions[0].radius"},
		{"27.4", "0", "1", "additions[0].diameter"},
		{"26.3", "17", "4", "additions[0].diameter"},
		{"5.5", "30", "5", "additions[0].diameter"},
		{"12", "30", "0.9", "additions[0].radius"},
		{"21", "30", "0.9", "additions[0].radius"},
	} {
		t.Run(row.radius+" "+row.diameter, func(t *testing.T) {
			for _, units := range []string{"mm", "in"} {
				j := added(t, "16 mm", fmt.Sprintf(`{"kind": "hole", "radius": "%s mm", "angle": %s, "diameter": "%s mm"}`, row.radius, row.angle, row.diameter), "null")
				j = set(t, metricWheel(t, j), "", "units", units)
				values := told(solve.Solve(context.Background(), j), "third", row.field)
				require.Len(t, values, 1)
				after := solve.Solve(context.Background(), set(t, j, "third", row.field, values[0]))
				require.Empty(t, errorsOf(after, "third"), "%s was told to do", values[0])
			}
		})
	}
}

// metricWheel writes the units of the wheel's own lengths out.
func metricWheel(t testing.TB, j *job.Job) *job.Job {
	for _, field := range []geometry.Quantity{
		"thickness", "bore", "teeth.tip_diameter", "teeth.root_diameter",
		"crossing.rim", "crossing.arm_at_rim", "crossing.arm_at_hub", "crossing.fillet_at_rim", "crossing.fillet_at_hub",
	} {
		text, _ := j.Text("third", field)
		j = set(t, j, "third", field, text+" mm")
	}
	return j
}

// Of two holes that meet, the later one is to blame and the other is named.
func TestTwoAddedHolesThatMeet(t *testing.T) {
	j := added(t, "14", `{"kind": "note", "radius": "10", "text": "up"}, {"kind": "hole", "radius": "26.3", "angle": "30", "diameter": "1.2"},
		{"kind": "hole", "radius": "26.3", "angle": "31", "diameter": "1.2"}`, "null")
	r := solve.Solve(context.Background(), j)
	require.Empty(t, errorOn(r, "third", "additions[1].diameter"))
	said := errorsOf(r, "third")
	require.Len(t, said, 1)
	require.Contains(t, said[0], "additions[2].radius: ")
	require.Contains(t, said[0], "addition 2.")
}

// A screw that meets an added hole is told which, and the circle it is told would do
// leaves the hole and the screw the metal that each is refused without.
func TestAScrewThatMeetsAnAddedHole(t *testing.T) {
	for _, hole := range []string{"5", "6.9", "4.4"} {
		j := added(t, "16", `{"kind": "note", "radius": "10", "text": "up"}, {"kind": "hole", "radius": "`+hole+`", "angle": "30", "diameter": "1"}`,
			`{"screws": 3, "thread": "BA 10", "screw_circle": "11.2", "collet": {"bore": "4", "register": "6", "flange": "16"}}`)
		r := solve.Solve(context.Background(), j)
		said := errorsOf(r, "third")
		require.Len(t, said, 1)
		require.Contains(t, said[0], "mount.screw_circle: ")
		require.Contains(t, said[0], "addition 2.")
		values := told(r, "third", "mount.screw_circle")
		require.Len(t, values, 1, said)
		after := solve.Solve(context.Background(), set(t, j, "third", "mount.screw_circle", values[0]))
		require.Empty(t, errorsOf(after, "third"), "%s was told to do", values[0])
		require.NotNil(t, after.Wheel("third").Mounting)
	}
}

// An addition that cannot be read, or lies off the wheel, is left out with an error on
// its field; the crossing and the other additions stand, each under its own number.
func TestAnAdditionThatIsLeftOut(t *testing.T) {
	for _, row := range []struct {
		text, field, code string
	}{
		{`{"kind": "note", "radius": "10"}`, "text", "finding.missing"},
		{`{"kind": "circle"}`, "diameter", "finding.missing"},
		{`{"radius": "3"}`, "kind", "finding.missing"},
		{`{"kind": "circle", "diameter": "1500"}`, "diameter", "crossing.addition-off-wheel"},
		{`{"kind": "circle", "diameter": "100"}`, "diameter", "crossing.addition-off-wheel"},
		{`{"kind": "circle", "radius": "32.999", "diameter": "10"}`, "radius", "crossing.addition-off-wheel"},
		{`{"kind": "note", "radius": "500", "text": "far"}`, "radius", "crossing.addition-off-wheel"},
		{`{"kind": "line", "radius": "10", "to_radius": "190"}`, "to_radius", "crossing.addition-off-wheel"},
		{`{"kind": "hole", "radius": "40", "diameter": "1"}`, "radius", "crossing.addition-hole-off-wheel"},
		{`{"kind": "circle", "radius": "500", "diameter": "1500"}`, "radius", "crossing.addition-off-wheel"},
	} {
		t.Run(row.text, func(t *testing.T) {
			j := added(t, "14", row.text+`, {"kind": "hole", "radius": "5", "angle": "30", "diameter": "1"}`, "null")
			r := solve.Solve(context.Background(), j)
			require.Len(t, errorsOf(r, "third"), 1)
			field := geometry.Quantity("additions[0]." + row.field)
			require.Equal(t, row.code, errorOn(r, "third", field))
			w := r.Wheel("third")
			require.NotNil(t, w.Crossing)
			require.Len(t, w.Additions(), 1)
			require.Len(t, w.Template().Additions, 2)
			for _, v := range told(r, "third", field) {
				after := solve.Solve(context.Background(), set(t, j, "third", field, v))
				require.NotEqual(t, row.code, errorOn(after, "third", field), v)
			}
			worse := solve.Solve(context.Background(), set(t, j, "third", "additions[1].diameter", "30"))
			require.NotEmpty(t, errorOn(worse, "third", "additions[1].diameter")+errorOn(worse, "third", "additions[1].radius"))
		})
	}
}

// What reaches a little beyond the tips is made, and told.
func TestAnAdditionThatReachesBeyondTheTips(t *testing.T) {
	for text, told := range map[string]bool{
		`{"kind": "line", "radius": "10", "to_radius": "32"}`: true,
		`{"kind": "circle", "diameter": "61"}`:                true,
		`{"kind": "line", "radius": "10", "to_radius": "30"}`: false,
		`{"kind": "circle", "diameter": "60"}`:                false,
	} {
		r := solve.Solve(context.Background(), added(t, "14", text, "null"))
		require.Empty(t, errorsOf(r, "third"), text)
		require.Len(t, r.Wheel("third").Additions(), 1)
		if told {
			require.Contains(t, codesOf(r, "third"), "crossing.addition-outside-tips", text)
		} else {
			require.NotContains(t, codesOf(r, "third"), "crossing.addition-outside-tips", text)
		}
	}
}

// A field left empty is called by its name, and a blade too coarse tells the sheet's
// thickness with its unit.
func TestSentencesThatStandByThemselves(t *testing.T) {
	for _, f := range job.Fields() {
		if strings.HasPrefix(string(f.Path), "crossing.") || strings.HasPrefix(string(f.Path), "mount.") || strings.HasPrefix(string(f.Path), "additions.") {
			says := solve.Finding{Field: f.Path, Code: "finding.missing"}.Sentence(english, measure.Units{})
			require.NotContains(t, says, string(f.Path)+" ")
			require.NotContains(t, says, "{")
		}
	}
	j := set(t, set(t, added(t, "14", "", "null"), "third", "crossing.blade", "2/0"), "third", "thickness", "0.26")
	var says []string
	for _, f := range solve.Solve(context.Background(), j).Findings {
		if f.Code == "crossing.blade-too-coarse" {
			says = append(says, f.Sentence(english, measure.Units{}))
		}
	}
	require.Len(t, says, 1)
	require.Contains(t, says[0], "In a sheet 0.26 mm thick the blade")
}

// A collet's flange is told of without screws as well, and thin parts by their field.
func TestWhatWillNotLast(t *testing.T) {
	for _, row := range []struct {
		field      geometry.Quantity
		text, code string
	}{
		{"mount.collet.flange", "14.1", "mount.flange-over-windows"},
		{"mount.collet.flange", "55.1", "mount.flange-beyond-root"},
		{"mount.collet.flange", "14", ""},
		{"crossing.hub", "7.9", "crossing.hub-wall-frail"},
		{"crossing.hub", "8", ""},
		{"crossing.rim", "0.29", "crossing.rim-frail"},
		{"crossing.arm_at_rim", "0.29", "crossing.arm-frail"},
		{"crossing.arm_at_hub", "0.29", "crossing.arm-frail"},
		{"crossing.arm_at_hub", "0.3", ""},
	} {
		j := added(t, "14", "", `{"collet": {"bore": "4", "register": "6"}}`)
		j = set(t, set(t, j, "third", "crossing.arm_at_hub", "1"), "third", row.field, row.text)
		r := solve.Solve(context.Background(), j)
		require.Empty(t, errorsOf(r, "third"))
		var cautions []string
		for _, f := range r.On("third") {
			if f.Severity == solve.Caution {
				require.Equal(t, row.field, f.Field, f.Code)
				cautions = append(cautions, f.Code)
			}
		}
		require.Equal(t, strings.Fields(row.code), append([]string{}, cautions...), "%s %s", row.field, row.text)
	}
}
