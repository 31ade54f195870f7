package desk

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
)

// A value that cannot be read, in whatever field of whatever part, is refused in a field
// that its remark leads to, be it one that the part's kind of teeth or arms has no use for.
func TestWhatIsRefusedIsInAFieldThatCanBeGoneTo(t *testing.T) {
	d, _ := opened(t)
	for _, part := range d.order() {
		for _, known := range job.Fields() {
			if inSection(known.Path) || known.Path == "id" {
				continue
			}
			d.Choose(part)
			before := d.Job()
			d.Go(Paper)
			d.Type(part, known.Path, "wide of the mark")
			for _, r := range d.Remarks() {
				if r.Part != part || r.Severity != solve.Error || inSection(geometry.Quantity(r.Field)) {
					continue
				}
				d.Go(Paper)
				d.Follow(r)
				bare, _, _ := strings.Cut(string(r.Field), "[")
				at := slices.IndexFunc(d.Fields(), func(f Field) bool { return string(f.Path) == bare })
				require.GreaterOrEqual(t, at, 0, "%s of %s on %s", r.Field, part, d.Step())
				require.NotEmpty(t, d.Fields()[at].Refusal, "%s of %s", r.Field, part)
			}
			for d.Job() != before {
				d.Undo()
			}
		}
	}
}

// Which way teeth point is asked of those that have a front and a back.
func TestFacesAreAskedOfLeaningTeethAlone(t *testing.T) {
	d, _ := opened(t)
	for part, asked := range map[string]bool{"great": false, "centre": false, "escape": true, "click": true} {
		d.Choose(part)
		d.Go(Blank)
		has := slices.ContainsFunc(d.Fields(), func(f Field) bool { return f.Path == "hand" })
		require.Equal(t, asked, has, part)
	}
}

// A hand that cannot be read does not make a pinion of a wheel whose teeth have no front.
func TestAWheelIsAWheelWhateverItsHand(t *testing.T) {
	d, _ := opened(t)
	d.Go(Blank)
	before := d.Summary()
	d.Type("great", "hand", "widdershins")
	require.Equal(t, before, d.Summary())
	require.Equal(t, 1, d.Mark(Blank).Errors)
	_, stale := d.Drawing()
	require.False(t, stale)
}

// What is said of the whole job says on which step it counts, and leads there.
func TestWhatIsSaidOfTheJobNamesItsStep(t *testing.T) {
	d, _ := opened(t)
	d.Go(Crossing)
	i := slices.IndexFunc(d.Remarks(), func(r Remark) bool { return strings.Contains(r.Sentence, "crank one way") })
	require.GreaterOrEqual(t, i, 0)
	r := d.Remarks()[i]
	require.Equal(t, "Dividing", r.Where)
	require.Equal(t, "Dividing: "+r.Sentence, r.Said)
	d.Follow(r)
	require.Equal(t, Dividing, d.Step())
}

// A value that is refused is told of with its field's name, and where it keeps a pair or a
// stack from being worked out, their remark leads to it.
func TestARefusedValueNamesItsField(t *testing.T) {
	d, _ := opened(t)
	d.Type("great", "crossing.arms", "56")
	d.Go(Paper)
	require.True(t, slices.ContainsFunc(d.Remarks(), func(r Remark) bool {
		return r.Field == "crossing.arms" && strings.HasPrefix(r.Said, "Great wheel, Arms: 56 ")
	}))
	d.Go(Crossing)
	require.True(t, slices.ContainsFunc(d.Remarks(), func(r Remark) bool { return strings.HasPrefix(r.Said, "Crossing, Arms: 56 ") }))
	d.Type("great", "teeth.count", "banana")
	d.Choose("great-centre")
	i := slices.IndexFunc(d.Remarks(), func(r Remark) bool { return strings.Contains(r.Sentence, "cannot be worked out yet") })
	require.GreaterOrEqual(t, i, 0)
	went := d.Follow(d.Remarks()[i])
	require.Equal(t, "great", d.Part())
	require.Equal(t, Blank, d.Step())
	require.Equal(t, geometry.Quantity("teeth.count"), went.Field)
	require.Equal(t, "× banana", d.LitText(), "beside a drawing of an older value")
}

// What is lit in a list of parts is called as the maker calls it.
func TestALitPartIsCalledByItsName(t *testing.T) {
	d, _ := opened(t)
	d.Choose("great-centre")
	d.Light("wheel")
	require.Equal(t, "Great wheel", d.LitText())
}

// The gravest come first, and what waits for another part after what that waits for; a
// remark on a train leads through the pair on its way to the wheel that cannot be made.
func TestCausesComeFirstAndAreLedTo(t *testing.T) {
	d, _ := opened(t)
	d.Type("third", "teeth.count", "")
	d.Go(Paper)
	list := d.Remarks()
	at := func(part string) int {
		return slices.IndexFunc(list, func(r Remark) bool { return r.Part == part && r.Severity == solve.Error })
	}
	require.GreaterOrEqual(t, at("third"), 0)
	require.Less(t, at("third"), at("third-escape"))
	require.Less(t, at("third-escape"), at("going"))
	require.True(t, slices.IsSortedFunc(list, func(a, b Remark) int { return rank(b.Severity) - rank(a.Severity) }))
	went := d.Follow(list[at("going")])
	require.Equal(t, "third", went.Part)
	require.Equal(t, "third", d.Part())
	require.EqualValues(t, "teeth.count", d.LitField())
	d.Undo()
	d.Type("third-escape", "centres", "26.1 mm")
	d.Choose("going")
	list = d.Remarks()
	stuck := slices.IndexFunc(list, func(r Remark) bool { return r.Severity == solve.Caution })
	require.GreaterOrEqual(t, stuck, 0)
	d.Follow(list[stuck])
	require.Equal(t, "third-escape", d.Part())
}
