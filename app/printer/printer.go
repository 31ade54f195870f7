// Package printer keeps what printers do with paper: a profile for each printer and
// paper, in a file of its own in the user's config folder.
package printer

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/adrg/xdg"

	"tipline/app/keep"
	"tipline/render/sheet"
)

// Folder is where profiles are kept.
type Folder struct{ Path string }

// Usual returns the folder in the user's config folder.
func Usual() Folder { return Folder{filepath.Join(xdg.ConfigHome, "tipline", "printers")} }

// written is a profile as its file holds it.
type written struct {
	Printer string  `json:"printer"`
	Paper   string  `json:"paper"`
	X       float64 `json:"x"`
	Y       float64 `json:"y"`
}

// Load returns the profile of a printer with a paper. Capitals and spacing of the
// name do not matter. The error is a *Refusal.
func (f Folder) Load(name, paper string) (sheet.Profile, error) {
	key, err := keyOf(name, paper)
	if err != nil {
		return sheet.Profile{}, err
	}
	file := filepath.Join(f.Path, key)
	p, err := read(file)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return p, &Refusal{Code: "printer.unknown", Name: name, Paper: paper}
	case err != nil:
		return p, &Refusal{Code: "printer.damaged", Name: name, Paper: paper, File: file, Reason: err}
	}
	return p, nil
}

// mostBytes is the most of a file that is read, far beyond any profile.
const mostBytes = 1 << 16

// read reads one file.
func read(file string) (sheet.Profile, error) {
	data, err := bytesOf(file)
	if err != nil {
		return sheet.Profile{}, err
	}
	return profileIn(data, filepath.Base(file))
}

// bytesOf returns what is in a file; one beyond mostBytes is an error.
func bytesOf(file string) ([]byte, error) {
	f, err := os.Open(file)
	if err != nil {
		return nil, err
	}
	data, err := io.ReadAll(io.LimitReader(f, mostBytes+1))
	if err = errors.Join(err, f.Close()); err == nil && len(data) > mostBytes {
		err = errors.New("it is too large")
	}
	return data, err
}

// profileIn returns the profile that a file of this name holds.
func profileIn(data []byte, file string) (sheet.Profile, error) {
	var w written
	if json.Unmarshal(data, &w) != nil {
		return sheet.Profile{}, errors.New("it is not written as one")
	}
	p := sheet.Profile{Name: w.Printer, Paper: w.Paper, X: w.X, Y: w.Y}
	if p.None() {
		return p, errors.New("it says nothing")
	}
	if key, err := keyOf(p.Name, p.Paper); err != nil || key != file {
		return sheet.Profile{}, errors.New("it is of another printer or paper than its name says")
	}
	if p.Check() != nil {
		return sheet.Profile{}, errors.New("no printer is out by so much")
	}
	return p, nil
}

// Save keeps a profile in place of an older one of the same printer and paper. A
// file there that cannot be read as a profile is kept beside it, its name ending in
// ".damaged". On an error, a *Refusal or that of an impossible profile, all is as it
// was.
func (f Folder) Save(p sheet.Profile) error {
	key, err := keyOf(p.Name, p.Paper)
	if err != nil {
		return err
	}
	if err := p.Check(); err != nil {
		return err
	}
	file := filepath.Join(f.Path, key)
	if err := f.put(file, p); err != nil {
		return &Refusal{Code: "printer.unwritable", Name: p.Name, Paper: p.Paper, File: file, Reason: err}
	}
	return nil
}

func (f Folder) put(file string, p sheet.Profile) error {
	if err := os.MkdirAll(f.Path, 0o755); err != nil {
		return err
	}
	if _, err := read(file); err != nil && !errors.Is(err, fs.ErrNotExist) {
		if err := setAside(file); err != nil {
			return err
		}
	}
	data, err := json.MarshalIndent(written{tidy(p.Name), p.Paper, p.X, p.Y}, "", "  ")
	if err != nil {
		return err
	}
	return keep.Write(file, func(w io.Writer) error {
		_, err := w.Write(append(data, '\n'))
		return err
	})
}

// setAside copies a file that cannot be read as a profile beside itself, under a
// name that is free.
func setAside(file string) error {
	data, err := bytesOf(file)
	if err != nil {
		return err
	}
	for n := 1; ; n++ {
		beside := file + ".damaged"
		if n > 1 {
			beside = fmt.Sprintf("%s-%d", beside, n)
		}
		was, err := bytesOf(beside)
		switch {
		case errors.Is(err, fs.ErrNotExist):
			return keep.Write(beside, func(w io.Writer) error {
				_, err := w.Write(data)
				return err
			})
		case err != nil:
			return err
		case slices.Equal(was, data):
			return nil
		}
	}
}

// List returns the profiles that can be read, by name and paper, and the joined
// *Refusals of those that cannot. A folder that is not there holds none.
func (f Folder) List() ([]sheet.Profile, error) {
	entries, err := os.ReadDir(f.Path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, &Refusal{Code: "printer.damaged", File: f.Path, Reason: err}
	}
	var list []sheet.Profile
	var faults []error
	for _, e := range entries {
		if filepath.Ext(e.Name()) != ending || strings.HasPrefix(e.Name(), ".") {
			continue
		}
		file := filepath.Join(f.Path, e.Name())
		p, err := read(file)
		if err != nil {
			faults = append(faults, &Refusal{Code: "printer.damaged", File: file, Reason: err})
			continue
		}
		list = append(list, p)
	}
	slices.SortFunc(list, func(a, b sheet.Profile) int {
		return strings.Compare(a.Name+"\x00"+a.Paper, b.Name+"\x00"+b.Paper)
	})
	return list, errors.Join(faults...)
}
