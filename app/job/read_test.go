package job

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/samples"
)

// awkward is the folder of job files that no maker should have.
const awkward = "../../testdata/jobs/"

func TestWhatIsNoJobIsRefusedInOneSentence(t *testing.T) {
	for _, row := range []struct{ file, want string }{
		{"empty", `The file is empty, so it holds no job.`},
		{"blank", `The file is empty, so it holds no job.`},
		{"truncated", `The file breaks off at line 5, column 34, before the job is complete.`},
		{"not-json", `The file is no job: what stands at line 1, column 2 is not JSON.`},
		{"trailing", `The file is no job: what stands at line 2, column 1 is not JSON.`},
		{"latin1", `The file is no job: line 2, column 13 is not UTF-8 text.`},
		{"nested", `Line 1 is nested more than 100 levels deep, which no job is.`},
		{"list", `The file is no Tipline job: it has no field "tipline" that says which version it is.`},
		{"foreign", `The file is no Tipline job: it has no field "tipline" that says which version it is.`},
		{"newer", `The job is of version 2, newer than this program, which reads up to version 1.`},
		{"version-nought", `Line 1: tipline is 0, but must be a version from 1 to 1.`},
		{"version-text", `Line 1: tipline is a text, but must be a whole number.`},
		{"wrong-type", `Line 6: wheels[1].teeth.count is a list, but must be a text or a number.`},
		{"wheels-object", `Line 3: wheels is a group of fields, but must be a list.`},
		{"title-number", `Line 1: title is a number, but must be a text.`},
		{"null-wheel", `Line 2: wheels[0] is empty, but must be a group of fields.`},
		{"missing-id", `Line 5: wheels[1] has no id.`},
		{"duplicate-id", `Line 7: pinions[0] has the id "centre", which wheels[0] has already.`},
		{"field-twice", `Line 4: wheels[0].bore stands there twice.`},
	} {
		t.Run(row.file, func(t *testing.T) {
			name := row.file + ".tipline"
			_, err := Load(awkward + name)
			require.EqualError(t, err, name+": "+row.want)
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
		})
	}
}

func TestMoreRefusals(t *testing.T) {
	part := func(id string) string { return `{"id": "` + id + `"}` }
	many := make([]string, maxParts+1)
	for i := range many {
		many[i] = part(string(rune('a'+i%26)) + strings.Repeat("x", i/26))
	}
	for _, row := range []struct{ name, in, want string }{
		{"too many parts", `{"tipline": 1, "arbors": [` + strings.Join(many, ",") + `]}`, "job.too-many-parts"},
		{"names without end", `{"tipline": 1, "arbors": [{"id": "a", "parts": ["w"` + strings.Repeat(`,"w"`, maxValues) + `]}]}`, "job.too-many-values"},
		{"a list too long", `{"tipline": 1, "arbors": [{"id": "a", "parts": ["w"` + strings.Repeat(`,"w"`, maxItems) + `]}]}`, "job.too-many-items"},
		{"groups without end", `{"tipline": 1, "wheels": [{}` + strings.Repeat(`,{}`, maxValues) + `]}`, "job.too-many-values"},
		{"unknown fields without end", `{"tipline": 1` + strings.Repeat(`,"x":1`, maxValues) + `}`, "job.too-many-values"},
		{"too large", `{"tipline": 1, "title": "` + strings.Repeat("x", maxBytes) + `"}`, "job.too-large"},
		{"id a number", `{"tipline": 1, "wheels": [{"id": 3}]}`, "job.wrong-type"},
		{"id empty", `{"tipline": 1, "stacks": [{"id": ""}]}`, "job.missing-id"},
		{"value true", `{"tipline": 1, "wheels": [{"id": "a", "bore": true}]}`, "job.wrong-type"},
		{"step a text", `{"tipline": 1, "wheels": [{"id": "a", "teeth": "72"}]}`, "job.wrong-type"},
		{"part a text", `{"tipline": 1, "wheels": ["a"]}`, "job.wrong-type"},
		{"names a number", `{"tipline": 1, "arbors": [{"id": "a", "parts": [1]}]}`, "job.wrong-type"},
		{"circles a null", `{"tipline": 1, "wheels": [{"id": "a", "dividing": {"circles": [15, null]}}]}`, "job.wrong-type"},
		{"version a fraction", `{"tipline": 1.5}`, "job.bad-version"},
		{"version enormous", `{"tipline": 1e400}`, "job.bad-version"},
		{"version null", `{"tipline": null}`, "job.wrong-type"},
		{"deep lists of groups", `{"tipline": 1, "x": ` + strings.Repeat(`{"a":[`, 60) + strings.Repeat(`]}`, 60) + `}`, "job.too-deep"},
		{"a number cut short", `{"tipline": 1`, "job.truncated"},
		{"a bare word", `tipline`, "job.not-json"},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := Read(strings.NewReader(row.in))
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
			require.Equal(t, row.want, refusal.Code)
			require.NotContains(t, err.Error(), "‹", "a sentence is missing from the catalogue")
			require.NotContains(t, err.Error(), "{", "a place of the sentence is not filled")
		})
	}
}

func TestFilesThatCannotBeRead(t *testing.T) {
	folder := t.TempDir()
	missing := filepath.Join(folder, "missing.tipline")
	_, err := Load(missing)
	require.EqualError(t, err, missing+": The job cannot be read: no such file or directory.")
	require.ErrorIs(t, err, os.ErrNotExist)
	_, err = Load(folder)
	require.EqualError(t, err, folder+": The job cannot be read: is a directory.")
}

func TestJustWithinTheBounds(t *testing.T) {
	many := make([]string, maxParts)
	for i := range many {
		many[i] = `{"id": "` + strings.Repeat("x", i+1) + `"}`
	}
	j := read(t, `{"tipline": 1, "wheels": [`+strings.Join(many, ",")+`]}`)
	require.Len(t, j.Wheels, maxParts)
	deep := maxDepth - 1
	j = read(t, `{"tipline": 1, "deep": `+strings.Repeat("[", deep)+strings.Repeat("]", deep)+`}`)
	require.Len(t, j.Unknown, 1)
}

func TestByteOrderMarkIsPassedOver(t *testing.T) {
	j, err := Load(awkward + "byte-order-mark.tipline")
	require.NoError(t, err)
	require.Equal(t, "Régulateur", j.Title)
	require.Equal(t, "{\n  \"tipline\": 1,\n  \"title\": \"Régulateur\"\n}\n", written(t, j))
}

func TestNullIsAFieldLeftOut(t *testing.T) {
	j := read(t, `{"tipline": 1, "title": null, "pinions": null, "wheels": [{"id": "a", "bore": null, "teeth": null}]}`)
	require.Equal(t, read(t, `{"tipline": 1, "wheels": [{"id": "a"}]}`), j)
}

func TestValuesAreNotLookedAt(t *testing.T) {
	j, err := Load(awkward + "absurd-values.tipline")
	require.NoError(t, err)
	require.Equal(t, "about a millimetre", j.Wheel("senseless").Teeth.Module.Text)
	require.Equal(t, "hexagonal", j.Wheel("unknown-form").Teeth.Form.Text)
	require.Equal(t, j, read(t, written(t, j)))
}

func TestOlderVersionsAreLiftedAStepAtATime(t *testing.T) {
	var order []string
	lift := func(name string) migration {
		return func(root *node) error {
			order = append(order, name)
			root.add(name, textNode("done"))
			return nil
		}
	}
	steps := []migration{lift("one to two"), lift("two to three")}
	for _, row := range []struct {
		version string
		want    []string
	}{
		{"1", []string{"one to two", "two to three"}},
		{"2", []string{"two to three"}},
		{"3", nil},
	} {
		order = nil
		root, err := parse([]byte(`{"tipline": ` + row.version + `}`))
		require.NoError(t, err)
		version, err := checkVersion(root, len(steps)+1)
		require.NoError(t, err)
		require.NoError(t, migrate(root, version, steps))
		require.Equal(t, row.want, order)
		j, err := decodeJob(root)
		require.NoError(t, err)
		require.Equal(t, Version, j.Version)
		require.Len(t, j.Unknown, len(row.want))
	}
}

func TestSampleReadsBackTheSame(t *testing.T) {
	list, err := samples.List()
	require.NoError(t, err)
	require.NotEmpty(t, list)
	for _, s := range list {
		data, err := samples.Read(s.Name)
		require.NoError(t, err)
		j := read(t, string(data))
		require.Empty(t, j.UnknownFields())
		require.Equal(t, j, read(t, written(t, j)))
	}
}

func read(t require.TestingT, s string) *Job {
	j, err := Read(strings.NewReader(s))
	require.NoError(t, err)
	return j
}

func written(t require.TestingT, j *Job) string {
	var b strings.Builder
	require.NoError(t, j.Write(&b))
	return b.String()
}
