package command

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/samples"
)

func TestNamesOfThePartsFigures(t *testing.T) {
	p := figuresOf(t, sampleJob(t))
	require.ElementsMatch(t, []string{
		"id", "form", "leaves", "pitch_diameter_mm", "tip_diameter_mm", "root_diameter_mm", "ratio", "cutter", "dividing",
	}, p.part(t, "pinions", "centre-pinion").names())
	require.ElementsMatch(t, []string{
		"id", "form", "leaves", "pitch_diameter_mm", "trundle_diameter_mm", "trundle_drill", "trundle_drill_mm",
		"shroud_diameter_mm", "hole_angles_deg", "step_chord_mm", "dividing",
	}, p.part(t, "pinions", "third-pinion").names())
	require.ElementsMatch(t, []string{
		"id", "wheel", "pinion", "ratio", "centre_distance_mm", "pitch_centre_distance_mm", "backlash_mm", "backlash_deg",
		"velocity_error_share", "contact_ratio", "approach_deg", "recess_deg",
		"wheel_tip_clearance_mm", "pinion_tip_clearance_mm",
	}, p.part(t, "pairs", "great-centre").names())
	require.ElementsMatch(t, []string{
		"id", "from", "to", "ratio", "ratio_exact", "pairs", "reverse", "turns_per_hour", "beats_per_hour",
		"beats_per_hour_exact", "beat_s", "pendulum_mm",
	}, p.part(t, "trains", "going").names())
	require.ElementsMatch(t, []string{
		"id", "from", "to", "ratio", "ratio_exact", "pairs", "reverse", "turns_per_hour",
	}, p.part(t, "trains", "motion").names())
	require.ElementsMatch(t, []string{
		"deviation_um", "deviation_at_mm", "land_mm", "root_radius_mm", "nearest_infeed_mm", "nearest_deviation_um",
		"nearest_land_mm",
	}, p.wheel(t, "escape").at("cutter").at("ground").names())
}

// A wheel for a lantern pinion tells how it drives and how closely its flanks are fitted;
// other wheels have no such figures.
func TestFiguresOfALanternDriver(t *testing.T) {
	p := figuresOf(t, sampleJob(t))
	driver := p.wheel(t, "centre")
	require.InDelta(t, 1.1, driver["contact_ratio"], 1e-9, "as far as its teeth are cut, where their points allow it")
	require.Positive(t, driver["fit_error_um"])
	require.LessOrEqual(t, driver["fit_error_um"], 1.0, "µm")
	require.NotContains(t, p.wheel(t, "great").names(), "contact_ratio")
	text := run("figures", sampleJob(t)).out
	require.Regexp(t, `flanks' arcs fitted to +0\.\d+ µm`, text)
}

// What follows from the plan's numbers by one line of arithmetic.
func TestPartsFiguresByHand(t *testing.T) {
	p := figuresOf(t, sampleJob(t))
	lantern := p.part(t, "pinions", "third-pinion")
	require.InDelta(t, 5.6, lantern["pitch_diameter_mm"], 1e-12, "8 trundles of module 0.7 mm")
	require.InDelta(t, 0.735, lantern["trundle_diameter_mm"], 1e-12, "1.05 modules")
	require.Equal(t, []any{0.0, 45.0, 90.0, 135.0, 180.0, 225.0, 270.0, 315.0}, lantern["hole_angles_deg"])
	require.InDelta(t, 5.6*math.Sin(math.Pi/8), lantern["step_chord_mm"], 1e-12)
	// Number drill 69 is 0.0292 in, 0.742 mm (assets/tables/drills.csv); 70 is 0.711 mm.
	require.Equal(t, "#69", lantern["trundle_drill"])
	cut := p.part(t, "pinions", "centre-pinion")
	require.InDelta(t, 12+2*0.625, cut["tip_diameter_mm"], 1e-9, "addendum 0.625 of the module above 10 leaves")
	require.InDelta(t, 7, cut["ratio"], 1e-12, "84 / 12, from the pair")
	pair := p.part(t, "pairs", "great-centre")
	require.InDelta(t, 48, pair["centre_distance_mm"], 1e-9, "1 mm · (84 + 12)/2")
	require.InDelta(t, 7, pair["ratio"], 1e-12)
	require.InDelta(t, 0, pair["approach_deg"], 0, "twelve leaves act wholly after the line of centres")
	require.InDelta(t, pair["backlash_mm"].(float64), pair["backlash_deg"].(float64)*math.Pi/180*6, 1e-9)
	going := p.part(t, "trains", "going")
	require.Equal(t, "840/1", going["ratio_exact"], "84/12 · 96/8 · 80/8")
	require.Equal(t, []any{"great-centre", "centre-third", "third-escape"}, going["pairs"])
	require.Equal(t, true, going["reverse"])
	require.InDelta(t, 7200, going["beats_per_hour"], 1e-9, "120 turns of 30 teeth, two beats each")
	require.InDelta(t, 0.5, going["beat_s"], 1e-12)
	motion := p.part(t, "trains", "motion")
	require.Equal(t, "1/12", motion["ratio_exact"], "15/45 · 8/32")
	require.Equal(t, false, motion["reverse"])
	speed := p.wheel(t, "great").at("cutter")["spindle_speed_rpm"].([]any)
	require.InDelta(t, 46_000/(2*math.Pi*24), speed[0], 1e-9)
}

// Parts that cannot be built, pairs that do not turn and trains that lead nowhere
// are left out; the others stay.
func TestPartsThatCannotBeBuiltAreLeftOut(t *testing.T) {
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	job := strings.Replace(string(data), `"centres": "26.4 mm"`, `"centres": "25 mm"`, 1)
	job = strings.Replace(job, `"module": "1 mm",
      "thickness"`, `"module": "1 kg",
      "thickness"`, 1)
	p := figuresOf(t, jobFile(t, job))
	require.Len(t, p["pinions"], 4)
	require.Len(t, p["pairs"], 3, "one jams, one has no pinion")
	require.Len(t, p["trains"], 2, "counted from what is typed")
}

func TestPartsInTheText(t *testing.T) {
	out := run("figures", sampleJob(t)).out
	for _, line := range []string{
		"Third pinion (third-pinion)\n    form                          lantern\n",
		"    holes at                      0°, 45°, 90°, 135°, 180°, 225°, 270°, 315°\n",
		"Great wheel – Centre pinion (great-centre)\n    driver                        great\n",
		"    centre distance               48.000 mm\n",
		"Great wheel – Escape wheel (going)\n    from                          great\n",
		"    through                       great-centre, centre-third, third-escape\n    turns the other way round     yes\n",
		"    a beat                        0.5000 s\n",
		"  The bit as ground\n    flank off by at most          -",
		"    spindle, from and to          305 turns a minute, 909 turns a minute\n",
	} {
		require.Contains(t, out, line)
	}
}
