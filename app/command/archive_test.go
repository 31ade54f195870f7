package command

import (
	"archive/zip"
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A zip holds the packet as it is printed, and each template as it is written alone.
func TestAZipHoldsEverything(t *testing.T) {
	job, folder := sampleJob(t), t.TempDir()
	out, again := filepath.Join(folder, "all.zip"), filepath.Join(folder, "again")
	require.Equal(t, Done, run("packet", job, "-out", out).code, "the name's ending says zip")
	require.Equal(t, Done, run("packet", job, "-out", again, "-as", "zip").code)
	one, err := os.ReadFile(out)
	require.NoError(t, err)
	two, err := os.ReadFile(again)
	require.NoError(t, err)
	require.True(t, bytes.Equal(one, two), "the same bytes each time")

	held := unzipped(t, one)
	alone := filepath.Join(folder, "alone")
	require.Equal(t, Done, run("packet", job, "-out", alone+".pdf").code)
	require.Equal(t, read(t, alone+".pdf"), held["Signal-cabin timepiece/packet.pdf"])
	for _, as := range []string{"svg", "dxf"} {
		require.Equal(t, Done, run("template", job, "-wheel", "third", "-kind", "crossing", "-as", as, "-out", alone).code)
		require.Equal(t, read(t, alone), held["Signal-cabin timepiece/third/crossing."+as])
	}
	require.NotContains(t, held, "Signal-cabin timepiece/third/blank.svg", "cards stand in the packet")
	for _, name := range []string{"escape/grinding.dxf", "third-pinion/shroud.svg", "hour-pipe/stack.svg"} {
		require.Contains(t, held, "Signal-cabin timepiece/"+name)
	}
	require.Contains(t, run("packet", job, "-out", out, "-as", "tar").err, "pdf, zip")
}

func unzipped(t *testing.T, data []byte) map[string]string {
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	require.NoError(t, err)
	held := map[string]string{}
	for _, f := range z.File {
		require.Equal(t, "1980-01-01 00:00", f.Modified.Format("2006-01-02 15:04"), "%s bears the first day there is", f.Name)
		r, err := f.Open()
		require.NoError(t, err)
		text, err := io.ReadAll(r)
		require.NoError(t, err)
		require.NotContains(t, held, f.Name)
		held[f.Name] = string(text)
	}
	return held
}

func read(t *testing.T, name string) string {
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	return string(data)
}

// No id leads out of the zip's folders, and no two share one.
func TestFileNames(t *testing.T) {
	seen := map[string]string{}
	for _, id := range []string{"third", "../../etc", "a/b", "a_2f_b", "a\\b", "Räderwerk", "nul\x00", "...", "C:"} {
		name := fileName(id)
		require.Empty(t, strings.Trim(name, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_"), name)
		require.NotContains(t, seen, name)
		seen[name] = id
	}
}

// The zip's one folder is called as the job is, else as its file is.
func TestTheFolderInAZip(t *testing.T) {
	for _, row := range []struct{ title, file, want string }{
		{"Hall clock", "a/b.tipline", "Hall clock"},
		{"Hall / clock.", "-", "Hall - clock"},
		{"", "a/shed.tipline", "shed"},
		{"..", ".tipline", "packet"},
		{"", "-", "packet"},
	} {
		require.Equal(t, row.want, (&call{name: row.file}).folder(row.title), row)
	}
}
