package knittest

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"
)

// Ptr points to a value, as fields that may be absent are given.
func Ptr[T any](v T) *T { return &v }

// Table reads a published table, its rows by column name. Every row must say
// where it comes from, or how sure it is.
func Table(t *testing.T, path string) []map[string]string {
	t.Helper()
	return TableAt(t, "../../testdata/"+path)
}

// TableAt is Table of a file.
func TableAt(t *testing.T, path string) []map[string]string {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	records, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(records) < 2 {
		t.Fatalf("%s is empty", path)
	}
	var rows []map[string]string
	for _, record := range records[1:] {
		row := map[string]string{}
		for i, cell := range record {
			row[records[0][i]] = cell
		}
		if row["source"] == "" && row["status"] == "" {
			t.Errorf("%s: %v has no source", path, record)
		}
		rows = append(rows, row)
	}
	return rows
}

// Cell reads a number; 0 where the table has none.
func Cell(t *testing.T, s string) float64 {
	t.Helper()
	if s == "" {
		return 0
	}
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}
