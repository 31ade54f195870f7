package solve_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/geometry"
)

// Two wheels of 70 and 44 mm over their tips, tip 5 of the small one's 60 over tip 0
// of the large one's: the small one turns back by 30°, and 0.05 mm at 22 mm are 0.0795
// at 35.
func TestStackByHand(t *testing.T) {
	r := solve.Solve(context.Background(), read(t, collets))
	require.Len(t, r.Stacks, 1)
	s := r.Stacks[0]
	require.Empty(t, errorsOf(r, "two"))
	angles(t, []float64{0, 330}, func(i int) geometry.Angle { return s.Stacked.Turns[i] })
	angles(t, []float64{30, 150, 270}, func(i int) geometry.Angle { return s.Stacked.Mounting.Places[i].Angle })
	angles(t, []float64{60, 180, 300}, func(i int) geometry.Angle { return r.Wheel("small").Mounting.Places[i].Angle })
	require.InDelta(t, 0.05/22*35, s.Stacked.Error, 1e-12)
	require.Equal(t, "two", r.Wheel("large").Stack)
	require.Same(t, r.Wheel("large"), s.Wheels[0])
	require.Same(t, s, r.Part("two"))
	require.InDelta(t, 2.7, s.Stacked.Mounting.Depth, 1e-12)
	shape, ok := s.Template()
	require.True(t, ok)
	require.Len(t, shape.Wheels, 2)
	require.NotNil(t, shape.Wheels[1].Mounting)
	require.Subset(t, codesOf(r, "two"), []string{"mount.drills-assumed", "mount.holes", "stack.marks", "stack.twist-usual"})
	r = solve.Solve(context.Background(), set(t, read(t, collets), "two", "misplacement", "0.1 mm"))
	require.InDelta(t, 0.1/22*35, r.Stacks[0].Stacked.Error, 1e-12)
	require.Contains(t, codesOf(r, "two"), "stack.twist")
}

// A stack without a mount takes that of its first wheel that has one; without any it
// is only set in line.
func TestWhoseMountAStackHas(t *testing.T) {
	j, err := read(t, collets).Clear("two", "mount")
	require.NoError(t, err)
	r := solve.Solve(context.Background(), j)
	require.Contains(t, codesOf(r, "two"), "stack.no-screws")
	require.Empty(t, r.Stacks[0].Stacked.Mounting.Places)
	require.InDelta(t, 0.05/22*35, r.Stacks[0].Stacked.Error, 1e-12)
	require.Nil(t, r.Wheel("small").Mounting)
	for field, text := range map[geometry.Quantity]string{"mount.screws": "3", "mount.thread": "10BA", "mount.screw_circle": "12"} {
		j = set(t, j, "small", field, text)
	}
	r = solve.Solve(context.Background(), j)
	require.Len(t, r.Wheel("large").Mounting.Places, 3)
	require.Len(t, r.Wheel("small").Mounting.Places, 3)
	r = solve.Solve(context.Background(), set(t, j, "small", "mount.screw_circle", "6.5"))
	require.Contains(t, errorsOf(r, "small")[0], "mount.screw_circle: ", "on the wheel whose mount it is")
	require.Nil(t, r.Wheel("large").Mounting)
	own := set(t, read(t, collets), "small", "mount.screws", "99")
	r = solve.Solve(context.Background(), own)
	require.Contains(t, errorsOf(r, "small")[0], "mount.screws: ", "what is typed is read, though the stack's counts")
	require.NotNil(t, r.Stacks[0].Stacked)
	require.Contains(t, codesOf(r, "small"), "stack.overrides")
}

// Each bad value of a stack is said on its own field, and its wheels stay wheels.
func TestBadStacks(t *testing.T) {
	for _, row := range []struct {
		field      geometry.Quantity
		text, says string
	}{
		{"wheels", "large", "at least 2 wheels"},
		{"wheels", "", "at least 2 wheels"},
		{"wheels", "large, nowhere", "“nowhere”"},
		{"wheels", "large, lantern", "“lantern”"},
		{"wheels", "large, large", "twice"},
		{"tips", "0, 60", "from 0 to 59"},
		{"tips", "0, -1", ""},
		{"tips", "0, second", "“second”"},
		{"tips", "0, 0, 0", "more reference tips than wheels"},
		{"misplacement", "wide", "“wide”"},
		{"misplacement", "30 mm", "to 22.00 mm"},
		{"misplacement", "-1 mm", ""},
		{"mount.screws", "", "still empty"},
		{"mount.screws", "0", "from 1 to 24"},
		{"mount.thread", "9/16 Whitworth", "BA 0 – 16"},
		{"mount.screw_circle", "7 mm", "At least"},
		{"mount.screw_circle", "39 mm", "at most"},
		{"mount.collet.register", "6.5 mm", "at most 6.00 mm"},
		{"mount.collet.flange", "5 mm", "at least"},
	} {
		t.Run(string(row.field)+" "+row.text, func(t *testing.T) {
			r := solve.Solve(context.Background(), set(t, read(t, collets), "two", row.field, row.text))
			says := errorsOf(r, "two")
			require.NotEmpty(t, says)
			require.Contains(t, says[0], string(row.field)+": ")
			require.Contains(t, says[0], row.says)
			require.NotContains(t, says[0], "{")
			require.Nil(t, r.Stacks[0].Stacked)
			_, ok := r.Stacks[0].Template()
			require.False(t, ok)
			require.NotNil(t, r.Wheel("large").Crossing)
			require.NotNil(t, r.Wheel("small").Uncrossed)
		})
	}
	r := solve.Solve(context.Background(), set(t, read(t, collets), "small", "thickness", ""))
	require.Contains(t, errorsOf(r, "two")[0], "small cannot be worked out yet")
}

// A wheel stands in the first stack that has it; the other is told.
func TestWheelInTwoStacks(t *testing.T) {
	j := read(t, collets)
	second := &job.Stack{ID: "again", Wheels: []string{"small", "single"}}
	j.Stacks = append(j.Stacks, second)
	r := solve.Solve(context.Background(), j)
	require.Equal(t, "two", r.Wheel("small").Stack)
	require.Equal(t, "again", r.Wheel("single").Stack)
	require.Contains(t, codesOf(r, "again"), "stack.elsewhere")
}

// An edit of a wheel costs it and its stack; one of another wheel leaves both as
// they were.
func TestEditsAndStacks(t *testing.T) {
	var s solve.Solver
	j := read(t, collets)
	before := s.Solve(context.Background(), j)
	after := s.Solve(context.Background(), set(t, j, "single", "bore", "5 mm"))
	require.Same(t, before.Stacks[0], after.Stacks[0])
	require.Same(t, before.Wheel("large"), after.Wheel("large"))
	require.NotSame(t, before.Wheel("single"), after.Wheel("single"))
	before = s.Solve(context.Background(), j)
	after = s.Solve(context.Background(), set(t, j, "small", "thickness", "2 mm"))
	require.NotSame(t, before.Stacks[0], after.Stacks[0])
	require.InDelta(t, 3.5, after.Wheel("large").Mounting.Depth, 1e-12)
	require.Same(t, before.Wheel("single"), after.Wheel("single"))
	freed := *j
	freed.Stacks = nil
	after = s.Solve(context.Background(), &freed)
	require.Nil(t, after.Wheel("large").Mounting)
	require.Empty(t, after.Stacks)
}

// Every finding of a stack has a sentence.
func TestStacksSentences(t *testing.T) {
	for _, f := range solve.Solve(context.Background(), read(t, collets)).Findings {
		require.NotRegexp(t, `[{‹]`, f.Sentence(words.English(), solve.Units(read(t, collets), english)), f.Code)
	}
}
