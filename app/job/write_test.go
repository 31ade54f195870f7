package job

import (
	"encoding/json"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestUnknownFieldsAreKeptLastInTheOrderReadAndReported(t *testing.T) {
	j, err := Load(awkward + "unknown-fields.tipline")
	require.NoError(t, err)
	require.Equal(t, []string{
		"centre.teeth.polished", "centre.additions[0].why", "centre.colour", "centre.age", "zebra", "almanac",
	}, j.UnknownFields())
	data, err := os.ReadFile(awkward + "unknown-fields.tipline")
	require.NoError(t, err)
	require.Equal(t, string(data), written(t, j))
}

func TestAnEditKeepsUnknownFields(t *testing.T) {
	j, err := Load(awkward + "unknown-fields.tipline")
	require.NoError(t, err)
	next, err := j.Set("centre", "teeth.count", "80")
	require.NoError(t, err)
	require.Equal(t, strings.Replace(written(t, j), `"count": 72`, `"count": 80`, 1), written(t, next))
}

func TestLayout(t *testing.T) {
	long := strings.Repeat("a long note ", 12)
	j := &Job{
		Version: 1, Title: `A "quoted" title & <more>`, Units: "in",
		Wheels: []*Wheel{{
			ID: "a", Bore: Typed(`3/8"`), Note: long,
			Teeth:    &Teeth{Form: Typed("measured"), Count: Counted("60"), TipDiameter: Counted("2.50")},
			Crossing: &Crossing{},
			Dividing: &Dividing{Circles: []Value{Counted("15"), Typed("x"), {}}},
		}},
		Arbors: []*Arbor{{ID: "b", Parts: []string{"a"}}},
	}
	want := `{
  "tipline": 1,
  "title": "A \"quoted\" title & <more>",
  "units": "in",
  "wheels": [
    {
      "id": "a",
      "bore": "3/8\"",
      "note": "` + long + `",
      "teeth": {"form": "measured", "count": 60, "tip_diameter": 2.50},
      "dividing": {"circles": [15, "x", ""]},
      "crossing": {}
    }
  ],
  "arbors": [
    {"id": "b", "parts": ["a"]}
  ]
}
`
	require.Equal(t, want, written(t, j))
	require.Equal(t, j, read(t, want))
}

// anyJob draws a job with every kind of field at random.
func anyJob(t *rapid.T) *Job {
	j := &Job{}
	fillStruct(t, reflect.ValueOf(j).Elem(), 0)
	j.Version = Version
	n := 0
	for _, list := range partLists {
		parts := reflect.ValueOf(j).Elem().Field(planOf(reflect.TypeOf(Job{})).at[list])
		for i := range parts.Len() {
			n++
			parts.Index(i).Elem().FieldByName("ID").SetString(string(rune('A' + n)))
		}
	}
	return j
}

func fillStruct(t *rapid.T, v reflect.Value, depth int) {
	for i := range v.NumField() {
		if rapid.IntRange(0, 2).Draw(t, "filled") > 0 {
			fillField(t, v.Field(i), depth)
		}
	}
}

func fillField(t *rapid.T, v reflect.Value, depth int) {
	switch {
	case v.Type() == valueType:
		v.Set(reflect.ValueOf(anyValue(t)))
	case v.Type() == pixelsType:
		v.SetBytes([]byte(anyRaw(t)))
	case v.Type() == reflect.TypeOf([]Member{}):
		for _, name := range []string{"x-first", "a-second", "x-first"}[:rapid.IntRange(1, 3).Draw(t, "members")] {
			v.Set(reflect.Append(v, reflect.ValueOf(Member{name, json.RawMessage(anyRaw(t))})))
		}
	case v.Kind() == reflect.String:
		v.SetString(strings.ToValidUTF8(rapid.String().Draw(t, "text"), "?"))
	case v.Kind() == reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		fillStruct(t, v.Elem(), depth+1)
	case v.Kind() == reflect.Slice:
		n := rapid.IntRange(1, 3).Draw(t, "items")
		v.Set(reflect.MakeSlice(v.Type(), n, n))
		for i := range n {
			fillField(t, v.Index(i), depth+1)
		}
	}
}

func anyValue(t *rapid.T) Value {
	return rapid.OneOf(
		rapid.Map(rapid.IntRange(-5, 3000), func(n int) Value { return Counted(json.Number(rapidInt(n)).String()) }),
		rapid.Map(rapid.SampledFrom([]string{"1e400", "-0", "2.50", "01", "3/8 in", "NaN", "#60", "null", ""}), Counted),
		rapid.Map(rapid.String(), func(s string) Value { return Typed(strings.ToValidUTF8(s, "?")) }),
	).Draw(t, "value")
}

func rapidInt(n int) string { b, _ := json.Marshal(n); return string(b) }

func anyRaw(t *rapid.T) string {
	return rapid.SampledFrom([]string{
		`true`, `null`, `1.50`, `"\u00e9\/"`, `[]`, `{}`, `[1,[2,{"a":[]}]]`, `{"b":1,"a":{"b":2},"b":3}`, `{"}\\\"":"]"}`,
		`["` + strings.Repeat("long ", 40) + `",2]`,
	}).Draw(t, "raw")
}

func TestWhatIsWrittenReadsBackTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := anyJob(t)
		first := written(t, j)
		again := read(t, first)
		require.Equal(t, j, again)
		require.Equal(t, first, written(t, again), "not the same bytes for the same job")
		require.True(t, json.Valid([]byte(first)))
		require.True(t, utf8.ValidString(first))
	})
}

func TestValueAsJSON(t *testing.T) {
	for _, row := range []struct{ in, text, out string }{
		{`72`, "72", `72`},
		{`72.0`, "72.0", `72.0`},
		{`"72"`, "72", `"72"`},
		{`"3/8 in"`, "3/8 in", `"3/8 in"`},
		{`"5°30'"`, "5°30'", `"5°30'"`},
		{`null`, "", `""`},
	} {
		var v Value
		require.NoError(t, json.Unmarshal([]byte(row.in), &v), row.in)
		require.Equal(t, row.text, v.String())
		out, err := json.Marshal(v)
		require.NoError(t, err)
		require.Equal(t, row.out, string(out))
	}
	require.Error(t, json.Unmarshal([]byte(`[1]`), new(Value)))
}

func TestSaveKeepsTheOldFileWhenItCannotWrite(t *testing.T) {
	name := filepath.Join(t.TempDir(), "job.tipline")
	require.NoError(t, Save(name, New("mm")))
	before, err := os.ReadFile(name)
	require.NoError(t, err)
	broken := New("mm")
	broken.Unknown = []Member{{"x", json.RawMessage(`{"cut`)}}
	require.Error(t, Save(name, broken))
	after, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, before, after)

	err = Save(filepath.Join(filepath.Dir(name), "no-folder", "job.tipline"), New("mm"))
	require.ErrorContains(t, err, "The job cannot be saved: no such file or directory.")
}

func FuzzRead(f *testing.F) {
	names, err := filepath.Glob(awkward + "*.tipline")
	require.NoError(f, err)
	for _, name := range names {
		data, err := os.ReadFile(name)
		require.NoError(f, err)
		f.Add(string(data))
	}
	f.Fuzz(func(t *testing.T, in string) {
		j, err := Read(strings.NewReader(in))
		if err != nil {
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
			require.NotContains(t, err.Error(), "‹")
			return
		}
		first := written(t, j)
		again := read(t, first)
		require.Equal(t, first, written(t, again))
		require.Equal(t, j.UnknownFields(), again.UnknownFields())
	})
}
