package main

import (
	"encoding/csv"
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// licences reads which licence every module in the program is under.
func licences(t *testing.T) map[string]string {
	f, err := os.Open("../testdata/licences.csv")
	require.NoError(t, err)
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	list := map[string]string{}
	for _, row := range rows[1:] {
		require.NotEmpty(t, row[1], row[0])
		require.NotContains(t, list, row[0])
		list[row[0]] = row[1]
	}
	return list
}

// Every module that is built into the program stands in the list of licences, and the
// list names no other.
func TestEveryModuleInTheProgramHasItsLicenceListed(t *testing.T) {
	out, err := exec.Command("go", "list", "-deps", "-tags", "gles,migrated_fynedo",
		"-f", "{{with .Module}}{{if not .Main}}{{.Path}}{{end}}{{end}}", ".").Output()
	require.NoError(t, err)
	built := strings.Fields(string(out))
	slices.Sort(built)
	var listed []string
	for module := range licences(t) {
		listed = append(listed, module)
	}
	slices.Sort(listed)
	require.Equal(t, slices.Compact(built), listed)
}
