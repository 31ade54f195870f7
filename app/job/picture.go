package job

import (
	"bytes"
	"errors"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"io"
	"os"
	"path/filepath"
	"strings"
)

// What a photograph of the bit may be.
const (
	mostPicture = 64 << 20    // bytes
	mostPixels  = 100_000_000 // told by the header, before the picture is unpacked
)

// format is a kind of picture that is read, told by how its file begins.
type format struct {
	begins string
	size   func(io.Reader) (image.Config, error)
	decode func(io.Reader) (image.Image, error)
}

var formats = []format{
	{"\x89PNG\r\n\x1a\n", png.DecodeConfig, png.Decode},
	{"\xff\xd8\xff", jpeg.DecodeConfig, jpeg.Decode},
}

// Picture reads a photograph that lies in a folder: a PNG or JPEG file, told by
// what is in it, of up to 64 MB and 100 megapixels. The file is a bare name, and no link to
// another folder, so that a job reaches none. What is none of this is a *Refusal.
func Picture(folder, file string) (image.Image, error) {
	if !BareName(file) {
		return nil, &Refusal{Code: "picture.not-bare", Value: file}
	}
	data, err := pictureFile(filepath.Join(folder, file))
	if err != nil {
		var refusal *Refusal
		if !errors.As(err, &refusal) {
			refusal = &Refusal{Code: "picture.unreadable", Err: reason(err)}
		}
		refusal.Value = file
		return nil, refusal
	}
	return pictureIn(data, file)
}

// pictureIn returns the picture that a file of this name holds.
func pictureIn(data []byte, file string) (image.Image, error) {
	for _, f := range formats {
		if bytes.HasPrefix(data, []byte(f.begins)) {
			return f.read(data, file)
		}
	}
	return nil, &Refusal{Code: "picture.neither", Value: file}
}

// BareName reports whether a name is that of a file beside the job, on any system.
func BareName(file string) bool {
	return file != "" && file != "." && file != ".." && !strings.ContainsAny(file, "/\\:\x00")
}

// pictureFile reads a file that is a plain one and not too large.
func pictureFile(name string) ([]byte, error) {
	info, err := os.Stat(name)
	switch {
	case errors.Is(err, os.ErrNotExist):
		return nil, &Refusal{Code: "picture.missing"}
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular() || leadsOut(name):
		return nil, &Refusal{Code: "picture.no-file"}
	case info.Size() > mostPicture:
		return nil, &Refusal{Code: "picture.too-large"}
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	data, err := io.ReadAll(io.LimitReader(f, mostPicture+1))
	if err = errors.Join(err, f.Close()); err == nil && len(data) > mostPicture {
		return nil, &Refusal{Code: "picture.too-large"}
	}
	return data, err
}

// leadsOut reports whether a name is a link to a file in another folder.
func leadsOut(name string) bool {
	info, err := os.Lstat(name)
	if err != nil || info.Mode()&os.ModeSymlink == 0 {
		return false
	}
	end, err := filepath.EvalSymlinks(name)
	if err != nil {
		return true
	}
	there, err := os.Stat(filepath.Dir(end))
	here, failed := os.Stat(filepath.Dir(name))
	return err != nil || failed != nil || !os.SameFile(here, there)
}

// most is how many pixels a picture of these colours may have: those of 16 bits take twice
// the memory.
func most(colours color.Model) int {
	if colours == color.RGBA64Model || colours == color.NRGBA64Model {
		return mostPixels / 2
	}
	return mostPixels
}

func (f format) read(data []byte, file string) (image.Image, error) {
	size, err := f.size(bytes.NewReader(data))
	if err != nil {
		return nil, &Refusal{Code: "picture.damaged", Value: file}
	}
	if size.Width <= 0 || size.Height <= 0 || size.Width > most(size.ColorModel)/size.Height {
		return nil, &Refusal{Code: "picture.too-many-pixels", Value: file}
	}
	picture, err := f.decode(bytes.NewReader(data))
	if err != nil {
		return nil, &Refusal{Code: "picture.damaged", Value: file}
	}
	return picture, nil
}
