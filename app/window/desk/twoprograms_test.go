package desk

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/assets/words"
)

// otherProgram names the file that this program, started again by its test, opens as
// another does, and otherMemory where that remembers what it has open.
const (
	otherProgram = "TIPLINE_TEST_OTHER_PROGRAM"
	otherMemory  = "TIPLINE_TEST_OTHER_MEMORY"
)

func TestMain(m *testing.M) {
	if file := os.Getenv(otherProgram); file != "" {
		fmt.Print(writeTheirs(file))
		os.Exit(0)
	}
	os.Exit(m.Run())
}

// writeTheirs opens a job, changes it and saves it.
func writeTheirs(file string) (failed error) {
	d := New(words.English(), Recent{File: os.Getenv(otherMemory)})
	if err := d.Open(file); err != nil {
		return err
	}
	d.Type("great", "bore", "9 mm")
	d.Save(func(err error) { failed = err })
	return failed
}

// another has another program change the job in a file, and returns what it said.
func another(t *testing.T, file, memory string) string {
	again := exec.Command(os.Args[0])
	again.Env = append(os.Environ(), otherProgram+"="+file, otherMemory+"="+memory)
	said, err := again.Output()
	require.NoError(t, err)
	return string(said)
}

// Two programs of one maker cannot work on one job: the second is told so, and the file
// stays as it is. What the first left behind when it was killed keeps nobody out.
func TestTwoProgramsOfOneMaker(t *testing.T) {
	d, file := filed(t)
	before, err := os.ReadFile(file)
	require.NoError(t, err)
	require.Equal(t, ErrElsewhere.Error(), another(t, file, d.recent.File))
	after, err := os.ReadFile(file)
	require.NoError(t, err)
	require.Equal(t, before, after)
	require.Equal(t, Kept, d.Look())
	crashed(t, d)
	require.Equal(t, "<nil>", another(t, file, d.recent.File))
}

// Two programs that do not know of each other, as on two machines with one disk: the first
// notices what the second saved, and either keeps both or takes one by the maker's word.
func TestTwoProgramsThatDoNotKnowOfEachOther(t *testing.T) {
	bore := func(file string) string {
		j, err := job.Load(file)
		require.NoError(t, err)
		text, _ := j.Text("great", "bore")
		return text
	}
	d, file := filed(t)
	d.Type("great", "bore", "7 mm")
	require.Equal(t, "<nil>", another(t, file, filepath.Join(t.TempDir(), "recent")))
	require.Equal(t, "9 mm", bore(file))
	require.Equal(t, Altered, d.Look(), "before anything is saved over it")
	text, _ := d.Job().Text("great", "bore")
	require.Equal(t, "7 mm", text, "ours is on the desk")

	beside := filepath.Join(t.TempDir(), "mine.tipline")
	saveAs(t, d, beside)
	require.Equal(t, []string{"9 mm", "7 mm"}, []string{bore(file), bore(beside)})
}
