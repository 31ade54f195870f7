package command

import (
	"archive/zip"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A packet of some kinds has their sheets and no others.
func TestPacketOfSomeKinds(t *testing.T) {
	job := sampleJob(t)
	out := filepath.Join(t.TempDir(), "some.pdf")
	for _, row := range []struct{ kinds, wheel, want string }{
		{"cover", "", "1 page."},
		{"crossing", "escape", "1 page."},
		{"crossing,scribing", "escape", "2 pages."},
		{"grinding", "escape", "2 pages."}, // of the rake face and of the clearance face
		{"cautions", "escape", "1 page."},
	} {
		require.Equal(t, ran{Done, out + ": " + row.want + "\n", ""}, run(packetArgs(job, out, row.kinds, row.wheel)...), row.kinds)
	}
	for kinds, want := range map[string]string{
		"crossing,sundial": `The flag -kinds is "crossing,sundial", but must be of: ` + strings.Join(sheetNames(), ", ") + ", with commas between.",
		"":                 `The flag -kinds is "", but must be of: ` + strings.Join(sheetNames(), ", ") + ", with commas between.",
		"shroud":           "Of the sheets asked for the job has none.",
	} {
		require.Equal(t, ran{Nothing, "", "tipline: " + want + "\n"}, run(packetArgs(job, out, kinds, "escape")...))
	}
}

func packetArgs(job, out, kinds, wheel string) []string {
	return []string{"packet", job, "-out", out, "-kinds", kinds, "-wheel", wheel}
}

// The zip holds the templates of those kinds alone.
func TestZipOfSomeKinds(t *testing.T) {
	out := filepath.Join(t.TempDir(), "some.zip")
	require.Equal(t, Done, run("packet", sampleJob(t), "-out", out, "-kinds", "crossing,cover").code)
	z, err := zip.OpenReader(out)
	require.NoError(t, err)
	defer func() { require.NoError(t, z.Close()) }()
	for _, f := range z.File {
		require.Regexp(t, `/packet\.pdf$|/crossing\.(svg|dxf)$`, f.Name)
	}
}

// Every name that -kinds takes is known to the completion and to the man page.
func TestPapersOfThePackagesKnowTheSheets(t *testing.T) {
	page, completion := packed(t, "tipline.1"), packed(t, "tipline.bash")
	known := regexp.MustCompile(`local kinds="([^"]*)"`).FindStringSubmatch(completion)[1] + " " +
		regexp.MustCompile(`-W "\$kinds ([^"]*)"`).FindStringSubmatch(completion)[1]
	require.ElementsMatch(t, sheetNames(), strings.Fields(known))
	for name := range ofNoPart {
		require.Regexp(t, `\b`+name+`\b`, page)
		require.Contains(t, run("help").out, name)
	}
}
