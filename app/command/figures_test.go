package command

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/samples"
)

// plain is what another program reads of the figures.
type plain map[string]any

func figuresOf(t *testing.T, args ...string) plain {
	r := run(append([]string{"figures", "-json"}, args...)...)
	require.Equal(t, Done, r.code, r.err)
	var p plain
	require.NoError(t, json.Unmarshal([]byte(r.out), &p))
	return p
}

func (p plain) wheel(t *testing.T, id string) plain { return p.part(t, "wheels", id) }

func (p plain) part(t *testing.T, list, id string) plain {
	for _, part := range p[list].([]any) {
		if part.(map[string]any)["id"] == id {
			return part.(map[string]any)
		}
	}
	require.Fail(t, "no part", id)
	return nil
}

func (p plain) at(name string) plain { return p[name].(map[string]any) }

func (p plain) names() []string {
	var names []string
	for name := range p {
		names = append(names, name)
	}
	return names
}

func TestNamesOfTheFigures(t *testing.T) {
	p := figuresOf(t, sampleJob(t))
	require.ElementsMatch(t, []string{"wheels", "pinions", "pairs", "trains", "stacks", "findings"}, p.names())
	require.Len(t, p["wheels"], 8)
	great := p.wheel(t, "great")
	require.ElementsMatch(t, []string{
		"id", "teeth", "tip_diameter_mm", "root_diameter_mm", "pitch_diameter_mm", "crossing", "cutter", "dividing",
		"mount", "additions",
	}, great.names())
	require.ElementsMatch(t, []string{
		"hole_angles_deg", "screw_circle_mm", "thread", "drill_mm", "drill", "tap_drill_mm", "starter_mm", "depth_mm",
		"chord_mm", "edge_mm",
	}, great.at("mount").names())
	require.ElementsMatch(t, []string{"area_mm2", "mass_g", "inertia_g_mm2"}, p.wheel(t, "click").at("solid").names())
	require.ElementsMatch(t, []string{
		"id", "wheels", "turns_deg", "hole_angles_deg", "screw_circle_mm", "thread", "depth_mm", "edge_mm", "twist_deg",
		"error_mm", "smaller", "larger", "marks",
	}, p.part(t, "stacks", "hour-pipe").names())
	require.ElementsMatch(t, []string{
		"arm_tips", "arm_angles_deg", "window_area_mm2", "area_mm2", "mass_g", "inertia_g_mm2", "unbalance_g_mm",
		"removed_share", "windup_um_per_n", "divider_chord_mm", "cut_length_mm", "arm_narrowest_mm",
		"arm_narrowest_radius_mm", "least_section_mm2", "uncrossed",
	}, great.at("crossing").names())
	require.ElementsMatch(t, []string{
		"set_over_mm", "touch_height_mm", "infeed_mm", "root_radius_mm", "usable_thickness_mm",
		"smallest_concave_radius_mm", "cutting_speed_m_min", "spindle_speed_rpm",
	}, great.at("cutter").names())
	require.ElementsMatch(t, []string{"turns", "holes", "circle", "error_um"}, great.at("dividing").names())
	escape := p.wheel(t, "escape")
	require.NotContains(t, escape.names(), "pitch_diameter_mm")
	require.ElementsMatch(t, []string{
		"set_over_mm", "touch_height_mm", "infeed_mm", "land_mm", "root_radius_mm", "back_radius_mm",
		"usable_thickness_mm", "cutting_speed_m_min", "spindle_speed_rpm", "ground",
	}, escape.at("cutter").names())
	require.ElementsMatch(t, []string{"turns", "holes", "error_um"}, escape.at("dividing").names(), "60 to 30 is whole turns")
	for _, f := range p["findings"].([]any) {
		require.Subset(t, []string{"severity", "wheel", "field", "code", "text"}, plain(f.(map[string]any)).names())
	}
}

// With the swing of the sample's cutters no heel fouls, so that there is no limit;
// on a shorter one there is.
func TestHeelLimitWhereThereIsOne(t *testing.T) {
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	short := strings.Replace(string(data), `"swing": "1 in"`, `"swing": "4 mm"`, 1)
	cutter := figuresOf(t, jobFile(t, short)).wheel(t, "escape").at("cutter")
	require.Greater(t, cutter["heel_limit_mm"], 0.0)
	require.Less(t, cutter["heel_limit_mm"], cutter["usable_thickness_mm"])
	require.Greater(t, cutter["swing_needed_mm"], 4.0)
}

// What follows from the plan's numbers by one line of arithmetic.
func TestFiguresByHand(t *testing.T) {
	p := figuresOf(t, sampleJob(t))
	great := p.wheel(t, "great")
	require.InDelta(t, 84.0, great["pitch_diameter_mm"], 1e-9, "84 teeth of module 1 mm")
	require.InDelta(t, 84-math.Pi, great["root_diameter_mm"], 1e-3, "dedendum π/2 of the module")
	require.Equal(t, []any{0.0, 14.0, 28.0, 42.0, 56.0, 70.0}, great.at("crossing")["arm_tips"])
	tip := great["tip_diameter_mm"].(float64)
	require.InDelta(t, tip*math.Sin(math.Pi/6), great.at("crossing")["divider_chord_mm"], 1e-6, "six arms: the chord is the radius")
	require.InDelta(t, 0, great.at("crossing")["unbalance_g_mm"], 1e-9)
	escape := p.wheel(t, "escape")
	require.InDelta(t, 44.45, escape["tip_diameter_mm"], 1e-9, "1 3/4 in")
	require.InDelta(t, 44.45/2*math.Sin(10*math.Pi/180), escape.at("cutter")["set_over_mm"], 1e-9, "e = R sin u")
	require.InDelta(t, 0.2, escape.at("cutter")["land_mm"], 1e-9)
	require.InDelta(t, 2, escape.at("dividing")["turns"], 0)
	minute := p.wheel(t, "minute")
	require.Equal(t, []any{0.0, 11.0, 23.0, 34.0}, minute.at("crossing")["arm_tips"], "tip floor(45 j/4 + 1/2)")
	require.InDelta(t, 90, minute.at("crossing")["arm_angles_deg"].([]any)[1], 1e-9, "evenly spread, not on tips")
}

func TestWindowsThatDifferAreAList(t *testing.T) {
	hour := figuresOf(t, sampleJob(t)).wheel(t, "hour").at("crossing")
	require.Len(t, hour["window_area_mm2"], 5, "five arms on 32 tips")
	require.Len(t, hour["divider_chord_mm"], 5)
	tip := figuresOf(t, sampleJob(t)).wheel(t, "hour")["tip_diameter_mm"].(float64)
	require.InDelta(t, tip*math.Sin(6*math.Pi/32), hour["divider_chord_mm"].([]any)[0], 1e-9, "from tip 0 to tip 6")
	require.Greater(t, hour["unbalance_g_mm"], 0.01)
}

func TestAWheelThatCannotBeBuiltIsLeftOut(t *testing.T) {
	p := figuresOf(t, awkward+"absurd-values.tipline")
	require.Equal(t, 60.0, p.wheel(t, "sound")["teeth"])
	for _, w := range p["wheels"].([]any) {
		require.Contains(t, []any{"sound", "negative"}, w.(map[string]any)["id"])
	}
	var fields []any
	for _, f := range p["findings"].([]any) {
		if f.(map[string]any)["severity"] == "error" {
			fields = append(fields, f.(map[string]any)["wheel"].(string)+" "+f.(map[string]any)["field"].(string))
		}
	}
	require.Equal(t, []any{
		"negative thickness", "unknown-form teeth.form", "two-teeth teeth.count", "senseless teeth.module",
		"huge teeth.tip_diameter", "ten-metres teeth.tip_diameter",
	}, fields)
}

// Every part that is sound stands in the figures, every other in the findings.
func TestAbsurdParts(t *testing.T) {
	p := figuresOf(t, awkward+"absurd-parts.tipline")
	for list, ids := range map[string][]any{
		"wheels": {"sound"}, "pinions": {"good"}, "pairs": {"turns"}, "trains": {"counts"}, "stacks": nil,
	} {
		var found []any
		for _, part := range p[list].([]any) {
			found = append(found, part.(map[string]any)["id"])
		}
		require.Equal(t, ids, found, list)
	}
	faulty := run("findings", awkward+"absurd-parts.tipline")
	require.Equal(t, Faulty, faulty.code)
	for _, where := range []string{
		"shaft parts", "sound cutter.bit.chain[0].x", "click teeth.back_angle", "few leaves", "involute form", "thick trundle",
		"senseless leaves", "senseless module", "senseless ratio", "nothing form", "apart centres", "jams centres",
		"unbuilt pinion", "alone pinion", "empty wheel", "empty pinion", "nowhere turns", "void from", "void to",
	} {
		require.Contains(t, faulty.out, "Error: "+where+": ")
	}
	require.Contains(t, faulty.out, "sound.cutter.bit.photograph.points")
}

func TestFiguresWithoutWheels(t *testing.T) {
	r := run("figures", awkward+"byte-order-mark.tipline", "-json")
	require.JSONEq(t, `{"wheels": [], "pinions": [], "pairs": [], "trains": [], "stacks": [], "findings": []}`, r.out)
}

func TestFiguresInTheJobsUnits(t *testing.T) {
	metric := run("figures", sampleJob(t))
	require.Contains(t, metric.out, "Escape wheel (escape)\n    teeth                         30\n    tip diameter                  44.450 mm\n")
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	inches := run("figures", jobFile(t, strings.Replace(string(data), `"units": "mm"`, `"units": "in"`, 1)))
	require.Contains(t, inches.out, "    tip diameter                  1.7500 in\n")
	for _, r := range []ran{metric, inches} {
		require.Equal(t, Done, r.code)
		require.NotContains(t, r.out, "‹", "a label is missing from the catalogue")
		require.NotContains(t, r.out, "NaN")
	}
}

func TestFindings(t *testing.T) {
	sound := run("findings", sampleJob(t))
	require.Equal(t, Done, sound.code)
	require.Contains(t, sound.out, "Caution: hour crossing.arms: ")
	faulty := run("findings", awkward+"absurd-values.tipline")
	require.Equal(t, Faulty, faulty.code)
	require.Empty(t, faulty.err)
	require.Contains(t, faulty.out, "Error: senseless teeth.module: “about a millimetre”")
	quiet := run("findings", awkward+"byte-order-mark.tipline")
	require.Equal(t, ran{Done, "There is nothing to say: every part can be made.\n", ""}, quiet)
	unknown := run("findings", awkward+"unknown-fields.tipline")
	require.Contains(t, unknown.out, "centre.teeth.polished")
}

func TestEach(t *testing.T) {
	for _, row := range []struct {
		each Each
		want string
	}{
		{Each{2, 2, 2}, `2`},
		{Each{2, 2 + 1e-12, 2}, `2`},
		{Each{2, 2.001}, `[2,2.001]`},
		{Each{0, 0}, `0`},
	} {
		got, err := json.Marshal(row.each)
		require.NoError(t, err)
		require.JSONEq(t, row.want, string(got))
	}
}
