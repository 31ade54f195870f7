package command

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/samples"
	"tipline/assets/words"
)

const awkward = "../../testdata/jobs/"

// ran is what a command left behind.
type ran struct {
	code     int
	out, err string
}

func run(args ...string) ran { return runWith("", args...) }

func runWith(in string, args ...string) ran {
	var out, err bytes.Buffer
	code := Run(words.English(), args, strings.NewReader(in), &out, &err)
	return ran{code, out.String(), err.String()}
}

// sampleJob writes the sample job into a folder of the test and returns its name.
func sampleJob(t *testing.T) string {
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	return jobFile(t, string(data))
}

func jobFile(t *testing.T, text string) string {
	name := filepath.Join(t.TempDir(), "job.tipline")
	require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
	return name
}

// Every refusal is one sentence on stderr, nothing on stdout, and exit code 2.
func TestWhatCannotBeDone(t *testing.T) {
	job := sampleJob(t)
	out := filepath.Join(t.TempDir(), "out.pdf")
	protected := filepath.Join(t.TempDir(), "protected")
	require.NoError(t, os.WriteFile(protected, []byte("old"), 0o444))
	for _, row := range []struct {
		args []string
		want string
	}{
		{[]string{"frobnicate"}, `There is no command "frobnicate" and no job of that name; the commands are packet, template, figures, findings, stock, printer, sample, guide, version, help.`},
		{[]string{"--packet", job}, `There is no command "--packet" and no job of that name; the commands are packet, template, figures, findings, stock, printer, sample, guide, version, help.`},
		{[]string{"figures"}, "figures needs the name of a job file."},
		{[]string{"figures", "-json"}, "figures needs the name of a job file."},
		{[]string{"figures", job, "more"}, `figures has no use for "more".`},
		{[]string{"figures", job, "-fast"}, "figures has no flag -fast; its flags are: -json, -lang."},
		{[]string{"figures", job, "-json=yes"}, "The flag -json takes no value."},
		{[]string{"figures", job, "-json", "--json"}, "The flag -json is given twice."},
		{[]string{"findings", job, "-lang", "xx"}, `The flag -lang is "xx", but must be one of: ` + strings.Join(words.Languages(), ", ") + "."},
		{[]string{"-lang"}, "The flag -lang needs a value after it."},
		{[]string{"-lang", "xx"}, `The flag -lang is "xx", but must be one of: ` + strings.Join(words.Languages(), ", ") + "."},
		{[]string{"job.tipline", "-lang=xx"}, `The flag -lang is "xx", but must be one of: ` + strings.Join(words.Languages(), ", ") + "."},
		{[]string{"-lang", "fr", "figures"}, "figures demande le nom d’un fichier de projet."},
		{[]string{"version", "-x"}, "version has no flag -x; its flags are: -lang."},
		{[]string{"sample", "nobody"}, `There is no sample job "nobody"; the command sample lists what there is.`},
		{[]string{"packet", job}, "packet needs the flag -out."},
		{[]string{"packet", job, "-out"}, "The flag -out needs a value after it."},
		{[]string{"packet", job, "-out", out, "-copies", "0"}, `The flag -copies is "0", but must be a number from 1 to 50.`},
		{[]string{"packet", job, "-out", out, "-copies", "1.5"}, `The flag -copies is "1.5", but must be a whole number from 1 to 50.`},
		{[]string{"packet", job, "-out", out, "-copies", "NaN"}, `The flag -copies is "NaN", but must be a number from 1 to 50.`},
		{[]string{"packet", job, "-out", out, "-paper", "a5"}, `The flag -paper is "a5", but must be a4, a3, letter, legal, tabloid or a size of 140 to 2000 mm by 200 to 2000 mm such as 200x280mm or 8x11in.`},
		{[]string{"packet", job, "-out", out, "-together", "-apart"}, "-together and -apart are opposites; give one of them."},
		{[]string{"help", "sundial"}, `There is no command "sundial" and no job of that name; the commands are packet, template, figures, findings, stock, printer, sample, guide, version, help.`},
		{[]string{"packet", job, "-out", out, "-wheel", "nobody"}, `The job has no part "nobody"; its parts are: great, centre, third, escape, minute, hour, day, click, centre-pinion, third-pinion, escape-pinion, cannon, minute-pinion, great-centre, centre-third, third-escape, cannon-minute, minute-hour, going, motion, hour-pipe.`},
		{[]string{"packet", job, "-out", job}, job + ` is the job itself; write to another file.`},
		{[]string{"packet", job, "-out", "/dev/full"}, "/dev/full cannot be written: no space left on device. What was there before is untouched."},
		{[]string{"packet", job, "-out", filepath.Join(job, "x.pdf")}, filepath.Join(job, "x.pdf") + " cannot be written: not a directory. What was there before is untouched."},
		{[]string{"packet", job, "-out", filepath.Join(filepath.Dir(job), "none", "x.zip")}, filepath.Join(filepath.Dir(job), "none", "x.zip") + " cannot be written: no such file or directory. What was there before is untouched."},
		{[]string{"template", job, "-wheel", "great", "-kind", "crossing", "-out", filepath.Join(filepath.Dir(job), "none", "x.svg")}, filepath.Join(filepath.Dir(job), "none", "x.svg") + " cannot be written: no such file or directory. What was there before is untouched."},
		{[]string{"printer", "-out", filepath.Join(filepath.Dir(job), "none", "x.pdf")}, filepath.Join(filepath.Dir(job), "none", "x.pdf") + " cannot be written: no such file or directory. What was there before is untouched."},
		{[]string{"packet", job, "-as", "zip", "-out", "/dev/full"}, "/dev/full cannot be written: no space left on device. What was there before is untouched."},
		{[]string{"packet", job, "-as", "zip", "-out", protected}, protected + " cannot be written: the file is write-protected. What was there before is untouched."},
		{[]string{"packet", job, "-as", "zip", "-out", filepath.Dir(job)}, filepath.Dir(job) + " cannot be written: there is a folder of that name. What was there before is untouched."},
		{[]string{"template", job, "-wheel", "great", "-kind", "crossing", "-as", "svg", "-out", "/dev/full"}, "/dev/full cannot be written: no space left on device. What was there before is untouched."},
		{[]string{"template", job, "-wheel", "great", "-kind", "crossing", "-as", "svg", "-out", protected}, protected + " cannot be written: the file is write-protected. What was there before is untouched."},
		{[]string{"template", job, "-wheel", "great", "-kind", "crossing", "-as", "svg", "-out", filepath.Dir(job)}, filepath.Dir(job) + " cannot be written: there is a folder of that name. What was there before is untouched."},
		{[]string{"printer", "-out", "/dev/full"}, "/dev/full cannot be written: no space left on device. What was there before is untouched."},
		{[]string{"printer", "-out", protected}, protected + " cannot be written: the file is write-protected. What was there before is untouched."},
		{[]string{"printer", "-out", filepath.Dir(job)}, filepath.Dir(job) + " cannot be written: there is a folder of that name. What was there before is untouched."},
		{[]string{"guide", "-out", "/dev/null/guide"}, "/dev/null/guide cannot be written: not a directory. What was there before is untouched."},
		{[]string{"packet", job, "-out", filepath.Join(filepath.Dir(job), "none", "x.pdf")}, filepath.Join(filepath.Dir(job), "none", "x.pdf") + " cannot be written: no such file or directory. What was there before is untouched."},
		{[]string{"template", job, "-out", out}, "template needs the flag -kind."},
		{[]string{"template", job, "-out", out, "-kind", "crossing"}, "template needs the flag -wheel."},
		{[]string{"template", job, "-out", out, "-kind", "sundial", "-wheel", "great"}, `The flag -kind is "sundial", but must be one of: blank, crossing, depth, depthing, dividing, drilling, grinding, scribing, setting, shroud, stack, train.`},
		{[]string{"template", job, "-out", out, "-kind", "crossing", "-wheel", "great", "-as", "doc"}, `The flag -as is "doc", but must be one of: pdf, svg, dxf, png.`},
		{[]string{"template", job, "-out", out, "-kind", "crossing", "-wheel", "great", "-scale", "10"}, "Only a grinding template is drawn at another scale; leave out -scale."},
		{[]string{"template", job, "-out", out, "-kind", "grinding", "-wheel", "great", "-scale", "0"}, `The flag -scale is "0", but must be a number from 0.1 to 100.`},
		{[]string{"template", job, "-out", out, "-kind", "crossing", "-wheel", "great", "-side", "clearance"}, "Only a grinding template is laid on one side or the other; leave out -side."},
		{[]string{"template", job, "-out", out, "-kind", "grinding", "-wheel", "great", "-side", "left"}, `The flag -side is "left", but must be one of: rake, clearance.`},
		{[]string{"figures", awkward + "newer.tipline"}, "newer.tipline: The job is of version 2, newer than this program, which reads up to version 1."},
		{[]string{"findings", awkward + "wrong-type.tipline"}, "wrong-type.tipline: Line 6: wheels[1].teeth.count is a list, but must be a text or a number."},
		{[]string{"packet", awkward + "empty.tipline", "-out", out}, "empty.tipline: The file is empty, so it holds no job."},
		{[]string{"figures", "no-such.tipline"}, "no-such.tipline: The job cannot be read: no such file or directory."},
		{[]string{"packet", awkward + "byte-order-mark.tipline", "-out", out}, "The job has no parts, so there is nothing to print."},
	} {
		t.Run(strings.Join(row.args, " "), func(t *testing.T) {
			require.Equal(t, ran{Nothing, "", "tipline: " + row.want + "\n"}, run(row.args...))
			require.NoFileExists(t, out)
		})
	}
	untouched(t, protected)
	left, err := os.ReadDir(filepath.Dir(job))
	require.NoError(t, err)
	require.Len(t, left, 1, "nothing half-written beside the job")
}

// untouched holds that a file is the old one, alone in its folder.
func untouched(t *testing.T, name string) {
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, "old", string(data))
	left, err := os.ReadDir(filepath.Dir(name))
	require.NoError(t, err)
	require.Len(t, left, 1)
}

func TestStdoutThatIsFull(t *testing.T) {
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	require.NoError(t, err)
	defer func() { require.NoError(t, full.Close()) }()
	var said bytes.Buffer
	require.Equal(t, Nothing, Run(words.English(), []string{"sample"}, strings.NewReader(""), full, &said))
	require.Equal(t, "tipline: The output cannot be written: no space left on device.\n", said.String())
}

func TestFlagsStandAnywhereWithOneDashOrTwo(t *testing.T) {
	job := sampleJob(t)
	want := run("figures", job, "-json")
	require.Equal(t, Done, want.code)
	for _, args := range [][]string{
		{"figures", "-json", job},
		{"figures", "--json", job},
		{"figures", job, "--json"},
		{"figures", "--lang=en", "-json", job},
		{"figures", "-json", "-lang", "en", "--", job},
	} {
		require.Equal(t, want, run(args...), args)
	}
}

func TestAJobThatComesIn(t *testing.T) {
	job := sampleJob(t)
	data, err := os.ReadFile(job)
	require.NoError(t, err)
	require.Equal(t, run("figures", job), runWith(string(data), "figures", "-"))
	require.Equal(t, "tipline: The file is empty, so it holds no job.\n", runWith("", "figures", "-").err)
}

func TestOpens(t *testing.T) {
	for _, row := range []struct {
		args []string
		want Opening
		ok   bool
	}{
		{nil, Opening{}, true},
		{[]string{"job.tipline"}, Opening{Job: "job.tipline"}, true},
		{[]string{"."}, Opening{Job: "."}, true},
		{[]string{"-window"}, Opening{Anyhow: true}, true},
		{[]string{"--window", "figures"}, Opening{Job: "figures", Anyhow: true}, true},
		{[]string{"-window", "a.tipline", "b.tipline"}, Opening{}, false},
		{[]string{"window"}, Opening{}, false},
		{[]string{"frobnicate"}, Opening{}, false},
		{[]string{"figures"}, Opening{}, false},
		{[]string{"help"}, Opening{}, false},
		{[]string{"--help"}, Opening{}, false},
		{[]string{"job.tipline", "-json"}, Opening{}, false},
		{[]string{"-lang", "fr"}, Opening{Language: "fr"}, true},
		{[]string{"--lang=de"}, Opening{Language: "de"}, true},
		{[]string{"-lang", "fr", "job.tipline"}, Opening{Job: "job.tipline", Language: "fr"}, true},
		{[]string{"job.tipline", "-lang", "fr"}, Opening{Job: "job.tipline", Language: "fr"}, true},
		{[]string{"-lang", "fr", "-window", "figures"}, Opening{Job: "figures", Anyhow: true, Language: "fr"}, true},
		{[]string{"-window", "figures", "-lang=fr"}, Opening{Job: "figures", Anyhow: true, Language: "fr"}, true},
		{[]string{"-window", "-lang"}, Opening{Job: "-lang", Anyhow: true}, true},
		{[]string{"-lang"}, Opening{}, false},
		{[]string{"-lang", "xx"}, Opening{}, false},
		{[]string{"-lang", "xx", "job.tipline"}, Opening{}, false},
		{[]string{"-lang", "fr", "figures"}, Opening{}, false},
		{[]string{"figures", "job.tipline", "-lang", "fr"}, Opening{}, false},
	} {
		o, ok := Opens(row.args)
		require.Equal(t, row.ok, ok, row.args)
		if ok {
			require.Equal(t, row.want, o, row.args)
		}
	}
}

func TestSmallCommands(t *testing.T) {
	list := run("sample")
	require.Equal(t, Done, list.code)
	require.Contains(t, list.out, "signal-cabin  Signal-cabin timepiece\n")
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	require.Equal(t, ran{Done, string(data), ""}, run("sample", samples.First))
	require.Equal(t, ran{Done, "Tipline " + Version + "\n", ""}, run("version"))
	require.Equal(t, run("version"), run("--version"))
	help := run("help")
	require.Equal(t, Done, help.code)
	for _, name := range names() {
		require.Contains(t, help.out, "tipline "+name)
	}
	require.Equal(t, help, run("-h"))
	require.Equal(t, help, run("--help"))
	require.Equal(t, help, run("-lang", "en"))
	require.Equal(t, help, run())
	for _, name := range names() {
		its := run(name, "-h")
		require.Equal(t, Done, its.code, name)
		require.Contains(t, its.out, "  tipline "+name, name)
		for _, args := range [][]string{{name, "--help"}, {"help", name}, {name, "-help", "-lang", "en"}} {
			require.Equal(t, its, run(args...), args)
		}
		known, ok := find(name)
		require.True(t, ok)
		for _, f := range known.flags {
			if f.name != "lang" {
				require.Contains(t, its.out, "-"+f.name, "%s says nothing of a flag", name)
			}
		}
	}
	require.Contains(t, run("packet", "no-such-job", "-h", "-lang", "de").out, "Schablone")
	require.Equal(t, Nothing, run("figures", "-fast", "-h").code)
}
