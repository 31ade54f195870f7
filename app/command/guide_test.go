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
	"tipline/assets/words"
)

// placeholder are the words that stand in the guide for what a maker types.
var placeholder = regexp.MustCompile(`^(JOB|ID|FILE(\.[a-z]+)?|FOLDER|L|NAME|[a-z0-9-]+)$`)

// Every command and every flag that the guide names is there.
func TestTheGuideNamesCommandsAndFlagsThatAreThere(t *testing.T) {
	for _, language := range pages.Languages() {
		named := 0
		for _, p := range pages.In(language).Pages() {
			for _, typed := range typedOn(p) {
				if line, is := strings.CutPrefix(typed+" ", "tipline "); is {
					named++
					requireKnown(t, strings.Fields(line), language+"/"+p.Name)
				}
			}
		}
		require.Greater(t, named, 10, language)
	}
}

// typedOn lists what a page has that is typed.
func typedOn(p pages.Page) (all []string) {
	for _, b := range p.Blocks {
		for _, r := range b.Runs {
			if r.Style == pages.Typed {
				all = append(all, r.Text)
			}
		}
	}
	return all
}

// requireKnown requires that there is a command with the flags that a page gives it.
func requireKnown(t *testing.T, args []string, page string) {
	if _, opens := Opens(args); opens || len(args) == 2 && args[0] == "-window" || len(args) == 1 && args[0] == "JOB" {
		return
	}
	require.NotEmpty(t, args, page)
	known, ok := find(args[0])
	require.True(t, ok, "%s: there is no command %q", page, args[0])
	_, operands, err := parseFlags(known, args[1:])
	require.NoError(t, err, "%s: %s", page, args)
	for _, o := range operands {
		require.Regexp(t, placeholder, o, "%s: %s", page, args)
	}
}

// The page of commands leaves out no command and no flag, and names none that is not there.
func TestThePageOfCommandsNamesEveryCommandAndFlag(t *testing.T) {
	for _, language := range pages.Languages() {
		page, ok := pages.In(language).Named("commands")
		require.True(t, ok)
		requireAllCommands(t, page)
	}
}

func requireAllCommands(t *testing.T, page pages.Page) {
	said := map[string]bool{}
	for _, typed := range typedOn(page) {
		for _, word := range strings.Fields(typed) {
			said[word] = true
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
	require.Len(t, strings.Split(strings.TrimSpace(listed.out), "\n"), len(pages.In(pages.First).Pages()))

	heel, ok := pages.In(pages.First).Named("heel")
	require.True(t, ok)
	require.Equal(t, ran{code: Done, out: heel.Text()}, run("guide", "heel"))

	require.Equal(t, ran{Nothing, "", "tipline: There is no page \"zeppelin\"; the command guide lists what there is.\n"}, run("guide", "zeppelin"))
}

// The guide is written with all that its pages lead to, in the language that is spoken, and
// so are its pictures.
func TestTheGuideIsWrittenInEveryLanguage(t *testing.T) {
	link := regexp.MustCompile(`\]\(([a-z0-9/.-]+)\)`)
	setting := map[string]bool{}
	for _, language := range words.Languages() {
		folder := filepath.Join(t.TempDir(), "guide")
		require.Equal(t, Done, run("guide", "-lang", language, "-out", folder).code)
		for _, p := range pages.In(language).Pages() {
			text, err := os.ReadFile(filepath.Join(folder, p.Name+".md"))
			require.NoError(t, err)
			require.Equal(t, p.Text(), string(text))
			for _, to := range link.FindAllStringSubmatch(string(text), -1) {
				require.FileExists(t, filepath.Join(folder, filepath.FromSlash(to[1])), p.Name)
			}
		}
		drawn, err := os.ReadFile(filepath.Join(folder, "pictures", "escape-setting.svg"))
		require.NoError(t, err)
		setting[string(drawn)] = true

		inTheWay := filepath.Join(folder, "heel.md")
		require.Equal(t, ran{Nothing, "", "tipline: " + inTheWay + " cannot be written: not a directory. What was there before is untouched.\n"}, run("guide", "-out", inTheWay))
	}
	require.Len(t, setting, len(words.Languages()), "pictures speak the language")
}
