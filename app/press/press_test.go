package press

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/render/sheet"
)

// path makes a folder the only one that programs are looked for in, with the scripts
// given by name. In a script $HERE is that folder.
func path(t *testing.T, scripts map[string]string) (folder string) {
	if runtime.GOOS == "windows" {
		scripts = nil // its programs are no scripts
	}
	folder = t.TempDir()
	for name, script := range scripts {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte("#!/bin/sh\nHERE='"+folder+"'\n"+script+"\n"), 0o755))
	}
	t.Setenv("PATH", folder)
	return folder
}

func a4(t *testing.T) sheet.Paper {
	p, err := sheet.ParsePaper("a4")
	require.NoError(t, err)
	return p
}

// refused returns the refusal, which the catalogue can say on one line.
func refused(t *testing.T, err error) *Refusal {
	t.Helper()
	var r *Refusal
	require.ErrorAs(t, err, &r)
	said := r.Say(words.English().Say)
	require.True(t, words.English().Has(r.Code), r.Code)
	require.NotContains(t, said, "{")
	require.NotContains(t, said, "\n")
	return r
}

const listing = `for a in "$@"; do echo "<$a>"; done >> "$HERE/said"`

func TestSheetsAreSentAsTheyAre(t *testing.T) {
	folder := path(t, map[string]string{"lp": listing + "\necho 'request id is Shed-7'\necho ' (1 file(s))'"})
	require.True(t, CanPrint())
	answer, err := Print(t.Context(), Sheets{File: "/a folder/p $(x).pdf", Title: "A\nclock; `ls`", Queue: "Shed", Paper: a4(t)})
	require.NoError(t, err)
	require.Equal(t, "request id is Shed-7 (1 file(s))", answer)
	said, err := os.ReadFile(filepath.Join(folder, "said"))
	require.NoError(t, err)
	require.Equal(t, strings.Fields("<-c> <-d> <Shed> <-t>"), strings.Fields(string(said))[:4])
	require.Contains(t, string(said), "<A clock; `ls`>\n<-o>\n<print-scaling=none>\n<-o>\n<media=A4>\n<-o>\n<sides=one-sided>\n</a folder/p $(x).pdf>\n")
}

func TestPapersAsThePrintCommandCallsThem(t *testing.T) {
	for name, want := range map[string]string{
		"a4": "A4", "a3": "A3", "letter": "Letter", "legal": "Legal", "tabloid": "Tabloid", "210x297.5mm": "Custom.210x297.5mm",
	} {
		p, err := sheet.ParsePaper(name)
		require.NoError(t, err)
		require.Equal(t, want, media(p))
	}
}

func TestWhereThereIsNoPrintCommand(t *testing.T) {
	path(t, nil)
	require.False(t, CanPrint())
	require.Empty(t, Queues(t.Context()))
	_, err := Print(t.Context(), Sheets{File: "/p.pdf", Paper: a4(t)})
	require.Equal(t, "press.missing", refused(t, err).Code)
	require.Equal(t, "press.no-viewer", refused(t, Open(t.Context(), "/p.pdf")).Code)
}

func TestWhatAFailingPrintCommandSaid(t *testing.T) {
	const noise = "printf 'perl: warning: Setting locale failed.\\n\\tLANG = \"xx\"\\n' >&2; "
	path(t, map[string]string{"lp": noise + "echo '/usr/bin/lp: Error - no default destination available.' >&2; exit 1", "xdg-open": noise + "exit 3"})
	_, err := Print(t.Context(), Sheets{File: "/p.pdf", Paper: a4(t)})
	r := refused(t, err)
	require.Equal(t, "press.refused", r.Code)
	require.Contains(t, r.Say(words.English().Say), "did not take the sheets: no default destination available. Choose")
	r = refused(t, Open(t.Context(), "/p.pdf"))
	require.Equal(t, "press.no-viewer", r.Code)
	path(t, map[string]string{"lp": noise + "exit 1"})
	_, err = Print(t.Context(), Sheets{File: "/p.pdf", Paper: a4(t)})
	require.Equal(t, "press.failed", refused(t, err).Code, "what is no word of its own is not passed on")
}

// A print command that hangs is stopped; a viewer that runs on is left to.
func TestWhatDoesNotEnd(t *testing.T) {
	makeFIFO, err := exec.LookPath("mkfifo")
	require.NoError(t, err)
	folder := path(t, map[string]string{"lp": `echo begun > "$HERE/begun"; exec /bin/sleep 600`, "xdg-open": "exec /bin/sleep 2", "lpstat": "exec /bin/sleep 600"})
	begun := filepath.Join(folder, "begun")
	require.NoError(t, exec.Command(makeFIFO, begun).Run())
	ctx, stop := context.WithCancel(t.Context())
	over := make(chan error)
	go func() {
		_, err := Print(ctx, Sheets{File: "/p.pdf", Paper: a4(t)})
		over <- err
	}()
	_, err = os.ReadFile(begun) // comes back once the command runs
	require.NoError(t, err)
	stop()
	require.ErrorIs(t, <-over, context.Canceled)
	require.Empty(t, Queues(ctx))
	require.NoError(t, Open(ctx, "/p.pdf"))
}

func TestPrintersAreListed(t *testing.T) {
	for name, row := range map[string]struct {
		script string
		want   []string
	}{
		"a name a line": {`[ "$1" = -e ] && printf 'Shed\nOffice\n\n  Bench  \n'`, []string{"Shed", "Office", "Bench"}},
		"older": {`[ "$1" = -p ] || { echo unknown option >&2; exit 1; }
			printf 'printer Shed is idle.  enabled since Sat\n\tready to print\nprinter Office disabled\nnonsense\nprinter \n'`, []string{"Shed", "Office"}},
		"none":     {`exit 0`, nil},
		"failing":  {`echo lpstat: No destinations added. >&2; exit 1`, nil},
		"nonsense": {`printf '\377\376\n'`, nil},
	} {
		t.Run(name, func(t *testing.T) {
			path(t, map[string]string{"lpstat": row.script})
			require.Equal(t, row.want, Queues(t.Context()))
		})
	}
}

func TestTheViewerOfEachSystem(t *testing.T) {
	for system, want := range map[string]string{"linux": "xdg-open", "freebsd": "xdg-open", "darwin": "open", "windows": "rundll32"} {
		program, args := viewer(system, "/p.pdf")
		require.Equal(t, want, program)
		require.Contains(t, args, "/p.pdf")
	}
}

func TestLongAnswersAreCut(t *testing.T) {
	require.Len(t, []rune(oneLine(strings.Repeat("ä", 5000))), longestAnswer+1)
	require.Equal(t, "a b", oneLine("a\r\n\tb\n"))
}
