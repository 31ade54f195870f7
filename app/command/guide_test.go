package command

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	pages "tipline/assets/guide"
)

// placeholder are the words that stand in the guide for what a maker types.
var placeholder = regexp.MustCompile(`^(JOB|ID|FILE(\.[a-z]+)?|FOLDER|L|NAME|[a-z0-9-]+)$`)

// Every command and every flag that the guide names is there.
func TestTheGuideNamesCommandsAndFlagsThatAreThere(t *testing.T) {
	named := 0
	for _, p := range pages.Pages() {
		for _, b := range p.Blocks {
			for _, r := range b.Runs {
				line, is := strings.CutPrefix(r.Text+" ", "tipline ")
				if r.Style != pages.Typed || !is {
					continue
				}
				named++
				args := strings.Fields(line)
				if _, opens := Opens(args); opens || len(args) == 2 && args[0] == "-window" || len(args) == 1 && args[0] == "JOB" {
					continue
				}
				require.NotEmpty(t, args, p.Name)
				known, ok := find(args[0])
				require.True(t, ok, "%s: there is no command %q", p.Name, args[0])
				_, operands, err := parseFlags(known, args[1:])
				require.NoError(t, err, "%s: %s", p.Name, r.Text)
				for _, o := range operands {
					require.Regexp(t, placeholder, o, "%s: %s", p.Name, r.Text)
				}
			}
		}
	}
	require.Greater(t, named, 10)
}

// The page of commands leaves out no command and no flag, and names none that is not there.
func TestThePageOfCommandsNamesEveryCommandAndFlag(t *testing.T) {
	page, ok := pages.Named("commands")
	require.True(t, ok)
	said := map[string]bool{}
	for _, b := range page.Blocks {
		for _, r := range b.Runs {
			if r.Style == pages.Typed {
				for _, word := range strings.Fields(r.Text) {
					said[word] = true
				}
			}
		}
	}
	flags := []string{"-window"}
	for _, k := range commands() {
		require.True(t, said[k.name], "the page says nothing of %s", k.name)
		for _, f := range k.flags {
			require.True(t, said["-"+f.name], "the page says nothing of -%s of %s", f.name, k.name)
			flags = append(flags, "-"+f.name)
		}
	}
	for word := range said {
		if strings.HasPrefix(word, "-") {
			require.True(t, slices.Contains(flags, word), "the page says something of %s", word)
		}
	}
}

func TestTheGuideIsListedPrintedAndWritten(t *testing.T) {
	listed := run("guide")
	require.Equal(t, Done, listed.code)
	require.Contains(t, listed.out, "set-over  Set-over\n")
	require.Len(t, strings.Split(strings.TrimSpace(listed.out), "\n"), len(pages.Pages()))

	heel, ok := pages.Named("heel")
	require.True(t, ok)
	require.Equal(t, ran{code: Done, out: heel.Text()}, run("guide", "heel"))

	folder := filepath.Join(t.TempDir(), "guide")
	require.Equal(t, Done, run("guide", "-out", folder).code)
	link := regexp.MustCompile(`\]\(([a-z0-9/.-]+)\)`)
	for _, p := range pages.Pages() {
		text, err := os.ReadFile(filepath.Join(folder, p.Name+".md"))
		require.NoError(t, err)
		require.Equal(t, p.Text(), string(text))
		for _, to := range link.FindAllStringSubmatch(string(text), -1) {
			require.FileExists(t, filepath.Join(folder, filepath.FromSlash(to[1])), p.Name)
		}
	}

	require.Equal(t, ran{Nothing, "", "tipline: There is no page \"zeppelin\"; the command guide lists what there is.\n"}, run("guide", "zeppelin"))
	inTheWay := filepath.Join(folder, "heel.md")
	require.Equal(t, Nothing, run("guide", "-out", inTheWay).code)
}
