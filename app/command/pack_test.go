package command

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/packet"
)

// The man page and the completion know every command, flag and kind, and no others.
func TestPapersOfThePackagesKnowTheCommands(t *testing.T) {
	page, completion := packed(t, "tipline.1"), packed(t, "tipline.bash")
	page = strings.ReplaceAll(page, `\-`, "-")
	known := map[string]bool{"-window": true}
	for _, c := range commands() {
		require.Regexp(t, `\.B `+c.name+"\n", page)
		require.Regexp(t, `local commands="[^"]*\b`+c.name+`\b`, completion)
		if len(c.flags) > 0 {
			require.Contains(t, completion, c.name+`) flags="`+strings.ReplaceAll(c.flagNames(), ",", "")+`"`)
		}
		for _, f := range c.flags {
			known["-"+f.name] = true
			require.Regexp(t, `\n\.BI? (\S+ "[^"]*" )?-`+f.name+`\b`, page)
		}
	}
	for _, flag := range regexp.MustCompile(`\s(-[a-z]+)`).FindAllStringSubmatch(page, -1) {
		require.True(t, known[flag[1]], flag[1])
	}
	for _, k := range packet.Kinds() {
		if k != packet.Clearance { // a side of grinding
			require.Regexp(t, `\b`+string(k)+`\b`, page)
			require.Regexp(t, `local kinds="[^"]*\b`+string(k)+`\b`, completion)
		}
	}
}

// The version has one place; AppStream's newest release is that one.
func TestPackagesAreOfThisVersion(t *testing.T) {
	releases := regexp.MustCompile(`<release version="([^"]+)"`).FindAllStringSubmatch(packed(t, "org.tipline.Tipline.metainfo.xml"), -1)
	require.Equal(t, Version, releases[0][1])
	require.Regexp(t, `(?m)^const Version = "`+regexp.QuoteMeta(Version)+`"$`, contents(t, "version.go"))
}

// What opens a job by a double click opens what the type of jobs says a job is.
func TestDesktopOpensJobs(t *testing.T) {
	kind := regexp.MustCompile(`<mime-type type="([^"]+)">`).FindStringSubmatch(packed(t, "org.tipline.Tipline.mime.xml"))[1]
	entry := strings.Split(packed(t, "org.tipline.Tipline.desktop"), "\n")
	require.True(t, slices.Contains(entry, "MimeType="+kind+";"))
	require.Contains(t, packed(t, "org.tipline.Tipline.mime.xml"), `<glob pattern="*.tipline"/>`)
}

func packed(t *testing.T, name string) string { return contents(t, "../pack/"+name) }

func contents(t *testing.T, name string) string {
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	return string(data)
}
