package job

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// small is a picture of 3 by 2 pixels, one of them red.
func small() image.Image {
	m := image.NewRGBA(image.Rect(0, 0, 3, 2))
	m.Set(2, 1, color.RGBA{255, 0, 0, 255})
	return m
}

func pngOf(t testing.TB, m image.Image) []byte {
	var b bytes.Buffer
	require.NoError(t, png.Encode(&b, m))
	return b.Bytes()
}

// claiming returns the head of a PNG that says it is so large, its check sum
// right, with no picture behind it.
func claiming(t testing.TB, m image.Image, width, height uint32) []byte {
	data := pngOf(t, m)
	header := data[8+4 : 8+4+4+13]
	binary.BigEndian.PutUint32(header[4:], width)
	binary.BigEndian.PutUint32(header[8:], height)
	binary.BigEndian.PutUint32(data[8+4+4+13:], crc32.ChecksumIEEE(header))
	return data
}

func TestPictureIsToldByWhatIsInIt(t *testing.T) {
	folder := t.TempDir()
	var b bytes.Buffer
	require.NoError(t, jpeg.Encode(&b, small(), nil))
	for name, data := range map[string][]byte{"bit.png": pngOf(t, small()), "bit.jpg": b.Bytes(), "scan.txt": pngOf(t, small())} {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), data, 0o600))
		m, err := Picture(folder, name)
		require.NoError(t, err, name)
		require.Equal(t, image.Rect(0, 0, 3, 2), m.Bounds())
	}
	m, err := Picture(folder, "bit.png")
	require.NoError(t, err)
	require.Equal(t, color.RGBA{255, 0, 0, 255}, color.RGBAModel.Convert(m.At(2, 1)))
}

// A link within the folder is followed, one to another folder is not.
func TestPictureByALink(t *testing.T) {
	folder, other := t.TempDir(), t.TempDir()
	for _, name := range []string{filepath.Join(folder, "bit.png"), filepath.Join(other, "bit.png")} {
		require.NoError(t, os.WriteFile(name, pngOf(t, small()), 0o600))
	}
	for name, to := range map[string]string{"near": "bit.png", "whole": filepath.Join(folder, "bit.png"), "far": filepath.Join(other, "bit.png")} {
		require.NoError(t, os.Symlink(to, filepath.Join(folder, name)))
		_, err := Picture(folder, name)
		if name == "far" {
			require.EqualError(t, err, `"far" is no file that could hold a picture.`)
			continue
		}
		require.NoError(t, err, name)
	}
}

func TestPicturesThatAreRefused(t *testing.T) {
	folder := t.TempDir()
	beside := filepath.Join(folder, "job")
	require.NoError(t, os.MkdirAll(filepath.Join(beside, "folder"), 0o700))
	require.NoError(t, os.WriteFile(filepath.Join(folder, "other.png"), pngOf(t, small()), 0o600))
	whole := pngOf(t, small())
	for name, data := range map[string][]byte{
		"text.png": []byte("no picture at all"), "empty.png": nil, "cut.png": whole[:40], "cut-head.png": whole[:12],
		"wide.png": claiming(t, small(), 50_000, 2_001), "overflow.png": claiming(t, small(), 1<<31-1, 1<<31-1),
		"deep.png": claiming(t, image.NewNRGBA64(small().Bounds()), 50_000, 1_001),
		"gif.png":  []byte("GIF89a\x01\x00\x01\x00\x00\x00\x00;"),
	} {
		require.NoError(t, os.WriteFile(filepath.Join(beside, name), data, 0o600))
	}
	large, err := os.Create(filepath.Join(beside, "large.png"))
	require.NoError(t, err)
	require.NoError(t, large.Truncate(mostPicture+1))
	require.NoError(t, large.Close())
	for _, row := range []struct{ file, code string }{
		{"", "picture.not-bare"},
		{"..", "picture.not-bare"},
		{"../other.png", "picture.not-bare"},
		{`..\other.png`, "picture.not-bare"},
		{filepath.Join(folder, "other.png"), "picture.not-bare"},
		{"C:bit.png", "picture.not-bare"},
		{"bit\x00.png", "picture.not-bare"},
		{"missing.png", "picture.missing"},
		{"folder", "picture.no-file"},
		{"large.png", "picture.too-large"},
		{"text.png", "picture.neither"},
		{"empty.png", "picture.neither"},
		{"gif.png", "picture.neither"},
		{"cut.png", "picture.damaged"},
		{"cut-head.png", "picture.damaged"},
		{"wide.png", "picture.too-many-pixels"},
		{"deep.png", "picture.too-many-pixels"},
		{"overflow.png", "picture.damaged"},
	} {
		t.Run(row.file, func(t *testing.T) {
			_, err := Picture(beside, row.file)
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
			require.Equal(t, row.code, refusal.Code)
			require.NotContains(t, err.Error(), "‹")
			require.NotContains(t, err.Error(), "{")
			if row.file != "" {
				require.Contains(t, err.Error(), `"`+row.file+`"`)
			}
		})
	}
}
