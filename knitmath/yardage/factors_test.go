package yardage

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// The tables of factors against their transcription, row by row.
func TestFactorTables(t *testing.T) {
	seen := 0
	for _, row := range knittest.Table(t, "yardage/yarn_factors.csv") {
		i := int(knittest.Cell(t, row["value"]))
		want := Range{knittest.Cell(t, row["low"]), knittest.Cell(t, row["likely"]), knittest.Cell(t, row["high"])}
		got := map[string]func() Range{
			"pattern": func() Range { return patternFactors[i] },
			"edge":    func() Range { return edgeFactors[i] },
		}[row["kind"]]()
		if got != want {
			t.Errorf("%s is %+v, transcribed %+v", row["name"], got, want)
		}
		seen++
	}
	if want := len(patternFactors) + len(edgeFactors) - 2; seen != want {
		t.Errorf("%d rows for %d factors", seen, want)
	}
}
