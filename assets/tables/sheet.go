package tables

import (
	"embed"
	"encoding/csv"
	"fmt"
	"strconv"
)

//go:embed *.csv
var files embed.FS

// row is one row of a table, by the names of its columns.
type row map[string]string

// sheet reads a table that is built in; a test reads each, so that one that
// cannot be read never leaves the bench.
func sheet(name string) []row {
	file, err := files.Open(name)
	if err != nil {
		panic(err)
	}
	records, err := csv.NewReader(file).ReadAll()
	if err != nil {
		panic(fmt.Errorf("%s: %w", name, err))
	}
	rows := make([]row, 0, len(records)-1)
	for _, record := range records[1:] {
		r := row{}
		for i, column := range records[0] {
			r[column] = record[i]
		}
		rows = append(rows, r)
	}
	return rows
}

// number returns the number in a column; an empty cell is 0.
func (r row) number(column string) float64 {
	if r[column] == "" {
		return 0
	}
	v, err := strconv.ParseFloat(r[column], 64)
	if err != nil {
		panic(fmt.Errorf("%s: %w", column, err))
	}
	return v
}
