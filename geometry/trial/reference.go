package trial

import (
	"encoding/csv"
	"os"
	"testing"
)

// Reference returns the rows of a table of published values in testdata, each by
// its columns' names; the test fails where a row has no source. Packages one
// folder below geometry find it.
func Reference(t testing.TB, name string) []map[string]string {
	t.Helper()
	file, err := os.Open("../../testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	records, err := csv.NewReader(file).ReadAll()
	if err != nil || len(records) < 2 {
		t.Fatalf("%s: no rows (%v)", name, err)
	}
	var rows []map[string]string
	for _, record := range records[1:] {
		row := map[string]string{}
		for i, column := range records[0] {
			row[column] = record[i]
		}
		if row["source"] == "" {
			t.Fatalf("%s: no source: %v", name, record)
		}
		rows = append(rows, row)
	}
	return rows
}

// Of returns the rows whose column says that, at least one.
func Of(t testing.TB, rows []map[string]string, column, says string) []map[string]string {
	t.Helper()
	var of []map[string]string
	for _, row := range rows {
		if row[column] == says {
			of = append(of, row)
		}
	}
	if len(of) == 0 {
		t.Fatalf("no row whose %s is %q", column, says)
	}
	return of
}
