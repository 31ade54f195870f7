package job

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"reflect"
	"strconv"
)

// Load reads the job file of this name.
func Load(name string) (*Job, error) {
	f, err := os.Open(name)
	if err != nil {
		return nil, &Refusal{Code: "job.unreadable", File: name, Err: reason(err)}
	}
	j, err := Read(f)
	err = errors.Join(err, f.Close())
	if err == nil {
		return j, nil
	}
	var refusal *Refusal
	if errors.As(err, &refusal) {
		named := *refusal
		named.File = name
		if named.Code != "job.unreadable" {
			named.File = filepath.Base(name)
		}
		return nil, &named
	}
	return nil, &Refusal{Code: "job.unreadable", File: name, Err: reason(err)}
}

// reason drops the operation and the name from an error of the system.
func reason(err error) error {
	var path *os.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}

// Read reads a job. It refuses, with a *Refusal, only what is no job: not JSON,
// wrong types, parts without an id or two with the same, a newer version, and
// files beyond 16 MB, 2,000 parts, 2,000 items of a list, 100 levels or 250,000
// values. An older version is lifted to the present one. Values are not looked at:
// a length without sense is kept as typed.
func Read(r io.Reader) (*Job, error) {
	data, err := io.ReadAll(io.LimitReader(r, maxBytes+1))
	if err != nil {
		return nil, &Refusal{Code: "job.unreadable", Err: reason(err)}
	}
	if len(data) > maxBytes {
		return nil, &Refusal{Code: "job.too-large"}
	}
	data = bytes.TrimPrefix(data, []byte("\ufeff"))
	j, err := readJob(data)
	var refusal *Refusal
	if errors.As(err, &refusal) && refusal.node != nil {
		at(data, int(refusal.node.offset), refusal).node = nil
	}
	return j, err
}

func readJob(data []byte) (*Job, error) {
	root, err := parse(data)
	if err != nil {
		return nil, err
	}
	version, err := checkVersion(root, Version)
	if err != nil {
		return nil, err
	}
	if err := migrate(root, version, migrations); err != nil {
		return nil, err
	}
	return decodeJob(root)
}

func decodeJob(root *node) (*Job, error) {
	if err := checkParts(root); err != nil {
		return nil, err
	}
	j := new(Job)
	if err := decodeObject(root, "", reflect.ValueOf(j).Elem()); err != nil {
		return nil, err
	}
	j.Version = Version
	return j, nil
}

// partLists are the fields of a job that hold parts.
var partLists = []string{"wheels", "pinions", "arbors", "pairs", "stacks", "trains"}

// checkParts refuses too many parts, a part without an id, and two with the same.
func checkParts(root *node) error {
	seen := map[string]string{}
	count := 0
	for _, name := range partLists {
		parts := root.member(name)
		if parts == nil || parts.shape != list {
			continue
		}
		if count += len(parts.open().items); count > maxParts {
			return parts.refuse(&Refusal{Code: "job.too-many-parts", Max: strconv.Itoa(maxParts)})
		}
		items := parts.open().items
		for i := range items {
			if err := checkID(&items[i], index(name, i), seen); err != nil {
				return err
			}
		}
	}
	return nil
}

// checkID leaves a part that is no object, or an id that is no text, to be refused
// for its shape.
func checkID(part *node, path string, seen map[string]string) error {
	if part.shape != object {
		return nil
	}
	id := part.member("id")
	if id == nil || id.shape == null || (id.shape == text && id.text() == "") {
		return part.refuse(&Refusal{Code: "job.missing-id", Path: path})
	}
	if id.shape != text {
		return nil
	}
	if other, twice := seen[id.text()]; twice {
		return id.refuse(&Refusal{Code: "job.duplicate-id", Path: path, Value: id.text(), Max: other})
	}
	seen[id.text()] = path
	return nil
}

func index(path string, i int) string { return path + "[" + strconv.Itoa(i) + "]" }
