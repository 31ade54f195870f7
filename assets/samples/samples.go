// Package samples holds the sample jobs: movements of our own invention, each
// complete enough to print.
package samples

import (
	"embed"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"strings"
)

//go:embed *.tipline
var files embed.FS

// First is the job that a new maker sees.
const First = "signal-cabin"

// Sample names one sample job.
type Sample struct{ Name, Title string }

// List returns the sample jobs by name.
func List() ([]Sample, error) {
	names, err := fs.Glob(files, "*.tipline")
	if err != nil {
		return nil, err
	}
	var list []Sample
	for _, file := range names {
		data, err := files.ReadFile(file)
		if err != nil {
			return nil, err
		}
		var head struct{ Title string }
		if err := json.Unmarshal(data, &head); err != nil {
			return nil, fmt.Errorf("sample %s: %w", file, err)
		}
		list = append(list, Sample{strings.TrimSuffix(file, path.Ext(file)), head.Title})
	}
	return list, nil
}

// Read returns the job file of the sample with this name.
func Read(name string) ([]byte, error) {
	list, err := List()
	if err != nil {
		return nil, err
	}
	var names []string
	for _, s := range list {
		if s.Name == name {
			return files.ReadFile(name + ".tipline")
		}
		names = append(names, s.Name)
	}
	return nil, fmt.Errorf("no sample job %q; there are: %s", name, strings.Join(names, ", "))
}
