package command

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// What follows from the plan's numbers by one line of arithmetic; drills from
// testdata/threads.csv and testdata/drills.csv.
func TestMountFiguresByHand(t *testing.T) {
	p := figuresOf(t, sampleJob(t))
	centre := p.wheel(t, "centre").at("mount")
	for i, degrees := range []float64{30, 150, 270} {
		require.InDelta(t, degrees, centre["hole_angles_deg"].([]any)[i], 1e-9, "between arms 0 and 1 of six")
	}
	require.InDelta(t, 11.2, centre["screw_circle_mm"], 1e-12)
	require.InDelta(t, 1.613, centre["drill_mm"], 1e-3, "0-80 UNF, close fit")
	require.Equal(t, "#52", centre["drill"])
	require.InDelta(t, 1.191, centre["tap_drill_mm"], 1e-3)
	require.Equal(t, "3/64", centre["tap_drill"])
	require.InDelta(t, 11.2*math.Sqrt(3)/2, centre["chord_mm"], 1e-9, "a third of a circle")
	require.InDelta(t, 8-5.6, centre["edge_mm"], 1e-9, "from the flange of 16 mm")
	great := p.wheel(t, "great")
	require.Len(t, great["additions"], 2)
	hole := plain(great["additions"].([]any)[0].(map[string]any))
	require.InDelta(t, 30, hole["angles_deg"].([]any)[0], 1e-9)
	require.InDelta(t, 210, hole["angles_deg"].([]any)[1], 1e-9)
	removed := great.at("crossing").at("uncrossed")["area_mm2"].(float64) - great.at("crossing")["area_mm2"].(float64)
	require.InDelta(t, 6*great.at("crossing")["window_area_mm2"].(float64), removed, 1e-6, "six windows")
}

func TestStackFiguresByHand(t *testing.T) {
	p := figuresOf(t, sampleJob(t))
	s := p.part(t, "stacks", "hour-pipe")
	hour, day := p.wheel(t, "hour"), p.wheel(t, "day")
	require.Equal(t, []any{"hour", "day"}, s["wheels"])
	require.Equal(t, []any{0.0, 0.0}, s["turns_deg"])
	small, large := day["tip_diameter_mm"].(float64)/2, hour["tip_diameter_mm"].(float64)/2
	require.InDelta(t, 0.05/small*180/math.Pi, s["twist_deg"], 1e-9)
	require.InDelta(t, 0.05/small*large, s["error_mm"], 1e-9)
	require.Equal(t, s["hole_angles_deg"], hour.at("mount")["hole_angles_deg"])
	require.Equal(t, s["hole_angles_deg"], day.at("mount")["hole_angles_deg"])
	require.InDelta(t, 36, s["hole_angles_deg"].([]any)[0], 1e-9, "where the job says the first stands")
	require.InDelta(t, 2.2, s["depth_mm"], 1e-12)
	require.Equal(t, "hour-pipe", day.at("mount")["stack"])
	require.Equal(t, []any{1.0, 2.0}, s["marks"])
}

// A count that no circle gives has its two moves beside the nearest circle, and they
// lead to the tooth: turns and both moves together are ratio/count.
func TestCompoundFigures(t *testing.T) {
	job := jobFile(t, `{"tipline": 1, "units": "mm", "wheels": [{"id": "a", "dividing": {"ratio": 40},
		"teeth": {"form": "measured", "count": 96, "tip_diameter": 60, "root_diameter": 56}}]}`)
	d := figuresOf(t, job).wheel(t, "a").at("dividing")
	require.Greater(t, d["error_um"], 1.0)
	c := d.at("compound")
	require.InDelta(t, 0, c["error_um"], 0)
	part := func(holes, circle string) float64 { return c[holes].(float64) / c[circle].(float64) }
	require.InDelta(t, 40.0/96*c["every"].(float64), c["turns"].(float64)+part("holes", "circle")+part("then_holes", "then_circle"), 1e-12)
}

func TestMountsInTheText(t *testing.T) {
	out := run("figures", sampleJob(t)).out
	for _, line := range []string{
		"  Mounting\n    holes at                      30°, 150°, 270°\n    screw circle                  17.000 mm\n    thread                        BA 8\n",
		"  The same wheel uncrossed\n    area of metal ",
		"Hour wheel + Day driver (hour-pipe)\n    wheels, from the collet up    hour, day\n    each turned by                0°, 0°\n",
		"  Addition\n    kind                          note\n",
		"    note                          dial\n",
	} {
		require.Contains(t, out, line)
	}
}

// Whatever is sound of absurd mounts, stacks and additions stands in the figures,
// everything else in the findings, on its own field.
func TestAbsurdMounts(t *testing.T) {
	p := figuresOf(t, awkward+"absurd-mounts.tipline")
	require.Len(t, p["wheels"], 6)
	require.Len(t, p["stacks"], 1)
	require.Len(t, p.wheel(t, "sound").at("mount")["hole_angles_deg"], 3, "its stack's")
	require.Len(t, p.wheel(t, "airy").at("mount")["hole_angles_deg"], 3, "its own screws in the air do not count")
	require.NotContains(t, p.wheel(t, "wooden").names(), "mount")
	var fields []string
	for _, f := range p["findings"].([]any) {
		if f := plain(f.(map[string]any)); f["severity"] == "error" {
			fields = append(fields, f["wheel"].(string)+" "+f["field"].(string))
		}
	}
	require.ElementsMatch(t, []string{
		"wooden mount.screws", "wooden mount.thread", "wooden mount.screw_circle", "wooden mount.collet.register", "thin thickness",
		"cluttered additions[0].kind", "cluttered additions[1].kind", "cluttered additions[2].radius", "cluttered additions[3].repeat", "cluttered additions[4].text",
		"cluttered additions[5].to_radius", "adrift additions[0].radius",
		"lone wheels", "void wheels", "phantom wheels", "phantom tips", "phantom misplacement", "doubled wheels", "flimsy wheels",
	}, fields)
	require.Equal(t, Faulty, run("findings", awkward+"absurd-mounts.tipline").code)
	require.Equal(t, Done, run("stock", awkward+"absurd-mounts.tipline").code)
}
