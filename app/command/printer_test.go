package command

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/adrg/xdg"
	"github.com/stretchr/testify/require"
)

// atHome makes a folder of the test's own the user's config folder.
func atHome(t *testing.T) string {
	home := t.TempDir()
	t.Setenv("XDG_CONFIG_HOME", home)
	xdg.Reload()
	t.Cleanup(xdg.Reload)
	require.Equal(t, home, xdg.ConfigHome)
	return home
}

// A printer is measured, listed, used, and measured again.
func TestAPrinterIsMeasured(t *testing.T) {
	home := atHome(t)
	require.Equal(t, ran{Done, "No printer was measured yet: print the sheet that printer -out writes.\n", ""}, run("printer"))
	out := filepath.Join(t.TempDir(), "test.pdf")
	require.Equal(t, ran{Done, out + ": 1 page.\n", ""}, run("printer", "-out", out, "-paper", "letter"))
	require.FileExists(t, out)
	plain := read(t, out)
	require.Equal(t, ran{Done, out + ": 1 page.\nShed laser was not measured on letter yet, so the sheet is as it is.\n", ""},
		run("printer", "Shed laser", "-out", out, "-paper", "letter"))
	require.Equal(t, plain, read(t, out))
	require.Equal(t, ran{Done, "Shed laser on a4: it prints −0.40 % across and +0.30 % along, which -printer will put right.\n", ""},
		run("printer", "Shed laser", "-across", "99.6", "-along", "100.3 mm"))
	inches := run("printer", "Shed laser", "-across", "4.02 in", "-along", "3.99 in", "-paper", "letter")
	require.Equal(t, Done, inches.code, inches.err)
	require.Equal(t, "Shed laser on a4: −0.40 % across, +0.30 % along\nShed laser on letter: +0.50 % across, −0.25 % along\n", run("printer").out)

	require.Equal(t, ran{Done, out + ": 1 page.\n", ""}, run("printer", "-out", out, "Shed laser", "-paper", "letter"))
	require.NotEqual(t, plain, read(t, out), "the sheet is as the profile shapes it")
	shaped := read(t, out)
	both := run("printer", "Shed laser", "-paper", "letter", "-out", out+"2", "-across", "4.02 in", "-along", "3.99 in")
	require.Equal(t, inches.out+out+"2: 1 page.\n", both.out, "kept, and the sheet written that it shapes")
	require.Equal(t, shaped, read(t, out+"2"))
	either := run("printer", "Either", "-across", "100mm", "-along", "4in", "-paper", "legal")
	require.Equal(t, ran{Done, "Either on legal: it prints true both ways and needs no correction.\n", ""}, either)

	job := sampleJob(t)
	require.NotEqual(t, Nothing, run("packet", job, "-out", out, "-wheel", "escape", "-printer", "shed  LASER").code)
	require.Equal(t, "There is no profile of a printer Attic for a4 paper.", refusalOf(run("packet", job, "-out", out, "-printer", "Attic")))
	require.Equal(t, Done, run("printer", "Shed laser", "-again", "-across", "100", "-along", "100").code)
	require.Contains(t, run("printer", "shed laser").out, "Shed laser on a4: −0.40 % across, +0.30 % along")

	files, err := filepath.Glob(filepath.Join(home, "tipline", "printers", "*.json"))
	require.NoError(t, err)
	require.Len(t, files, 3)
	require.NoError(t, os.WriteFile(files[1], []byte("{"), 0o600))
	require.Contains(t, refusalOf(run("packet", job, "-out", out, "-printer", "Shed laser")), files[1]+" cannot be read")
}

// refusalOf returns the one sentence on stderr of a command that did nothing.
func refusalOf(r ran) string {
	if r.code != Nothing || r.out != "" || strings.Count(r.err, "\n") != 1 {
		return "no refusal: " + r.out + r.err
	}
	return strings.TrimSuffix(strings.TrimPrefix(r.err, "tipline: "), "\n")
}

func TestMeasuresThatCannotBe(t *testing.T) {
	home := atHome(t)
	for _, row := range []struct {
		args []string
		want string
	}{
		{[]string{"L", "-across", "94", "-along", "94"}, "The bar measured 94.000 mm, but no printer is out by more than 3 %: 97.000 mm to 103.000 mm would do. The page was fitted to the paper: print it again at 100 %, as actual size."},
		{[]string{"L", "-across", "4 in", "-along", "3.7 in"}, "The bar measured 3.7000 in, but no printer is out by more than 3 %: 3.8800 in to 4.1200 in would do. The page was fitted to the paper: print it again at 100 %, as actual size."},
		{[]string{"L", "-across", "100mm", "-along", "101.6mm"}, "101.600 mm is rather what the 4 in bar measures, in mm. Type the 100 mm bar in mm and the 4 in bar in inches. If it is the 100 mm bar, give the 4 in bar in its place."},
		{[]string{"L", "-across", "100"}, "Give both -across and -along, and the printer's name."},
		{[]string{"-across", "100", "-along", "100"}, "Give both -across and -along, and the printer's name."},
		{[]string{"L", "-across", "ten", "-along", "100"}, `The flag -across is "ten", but must be a length such as 99.8 mm or 3.99 in.`},
		{[]string{"L", "-again", "-across", "100", "-along", "100"}, "There is no profile of a printer L for a4 paper."},
		{[]string{"L", "-paper", "a9", "-across", "100", "-along", "100"}, `The flag -paper is "a9", but must be a4, a3, letter, legal, tabloid or a size of 140 to 2000 mm by 200 to 2000 mm such as 200x280mm or 8x11in.`},
	} {
		require.Equal(t, row.want, refusalOf(run(append([]string{"printer"}, row.args...)...)))
	}
	entries, err := os.ReadDir(home)
	require.NoError(t, err)
	require.Empty(t, entries, "nothing is kept")
}

func TestLooksThatAreAskedFor(t *testing.T) {
	job, out := sampleJob(t), filepath.Join(t.TempDir(), "out.pdf")
	args := []string{"template", job, "-wheel", "great", "-kind", "crossing", "-out", out}
	plain := run(args...)
	require.Equal(t, Done, plain.code, plain.err)
	usual, err := os.ReadFile(out)
	require.NoError(t, err)
	for _, look := range append(looks, strings.Join(looks, ",")) {
		require.Equal(t, Done, run(append(args, "-look", look)...).code)
		other, err := os.ReadFile(out)
		require.NoError(t, err)
		require.NotEqual(t, usual, other, look)
	}
	require.Equal(t, `The flag -look is "pink", but must be of: mirrored, outlines, thin, punch, black, with commas between.`, refusalOf(run(append(args, "-look", "pink")...)))
	together := run("packet", job, "-out", out, "-copies", "3", "-together")
	apart := run("packet", job, "-out", out, "-copies", "3")
	require.Equal(t, apart.code, together.code)
	require.Less(t, saidPages(t, together), saidPages(t, apart))
}

// saidPages returns how many pages a packet was said to have.
func saidPages(t *testing.T, r ran) int {
	var pages int
	_, err := fmt.Sscanf(r.out[strings.LastIndex(r.out, ": "):], ": %d pages.", &pages)
	require.NoError(t, err)
	return pages
}
