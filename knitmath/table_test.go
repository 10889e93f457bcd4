package knitmath

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"
)

// table reads a published table, its rows by column name. Every row must say
// where it comes from.
func table(t *testing.T, path string) []map[string]string {
	t.Helper()
	f, err := os.Open("../testdata/" + path)
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
		if row["source"] == "" {
			t.Errorf("%s: %v has no source", path, record)
		}
		rows = append(rows, row)
	}
	return rows
}

// cell reads a number; 0 where the table has none.
func cell(t *testing.T, s string) float64 {
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

func TestYarnWeightTable(t *testing.T) {
	rows := table(t, "yarn/yarn_weights.csv")
	if len(rows) != len(yarnWeights) {
		t.Fatalf("%d categories, the transcription has %d", len(yarnWeights), len(rows))
	}
	for i, row := range rows {
		want := yarnWeight{row["name"], int64(cell(t, row["st_per_4in_low"])), int64(cell(t, row["st_per_4in_high"])),
			cell(t, row["needle_mm_low"]), cell(t, row["needle_mm_high"])}
		if row["category"] != strconv.Itoa(i) || yarnWeights[i] != want {
			t.Errorf("category %d is %+v, transcribed %s: %+v", i, yarnWeights[i], row["category"], want)
		}
	}
}

func TestNeedleTable(t *testing.T) {
	rows := table(t, "gauge/needles.csv")
	if len(rows) != len(needleSizes) {
		t.Fatalf("%d needles, the transcription has %d", len(needleSizes), len(rows))
	}
	for i, row := range rows {
		want := NeedleSize{cell(t, row["mm"]), row["us"], row["uk"], row["japanese"], row["status"] == "disputed"}
		if needleSizes[i] != want {
			t.Errorf("needle %+v, transcribed %+v", needleSizes[i], want)
		}
		if got := needleSize(want.Mm); got == nil || *got != want {
			t.Errorf("%v mm is found as %+v", want.Mm, got)
		}
		if i > 0 && needleSizes[i-1].Mm >= want.Mm {
			t.Errorf("%v mm is out of order", want.Mm)
		}
		// A slipped column would show: no UK number is farther than 0.6 mm from
		// its wire gauge, of which it is the rounded metric convention.
		if swg := cell(t, row["swg_mm_of_uk_number"]); swg != 0 && (want.Mm-swg > 0.6 || swg-want.Mm > 0.6) {
			t.Errorf("UK %s: %v mm, wire gauge %v", want.UK, want.Mm, swg)
		}
		// Japanese numbers run by rule.
		if want.Japanese != "" {
			near(t, "Japanese "+want.Japanese, want.Mm, 2.1+0.3*cell(t, want.Japanese), 1e-12)
		}
	}
	for _, mm := range []float64{0.5, 4.02, 4.1, 50} {
		if got := needleSize(mm); got != nil {
			t.Errorf("%v mm is found as %+v", mm, got)
		}
	}
}

// None, one or two categories, from both ends of each range, at the exact edge.
func TestYarnCategoryLookup(t *testing.T) {
	for _, c := range []struct {
		stitches, over float64
		want           []int
		nominal        bool
	}{
		// Over 4 in: the printed ranges. What lies below an edge over 4 in lies
		// 1.6 % farther below over 10 cm.
		{40, 10.16, []int{0}, false},
		{33, 10.16, []int{0}, true}, // 32.48 over 10 cm
		{32, 10.16, []int{1}, false},
		{24, 10.16, []int{2, 3}, false},
		{20, 10.16, []int{4}, false},
		{15.8, 10.16, nil, false}, // 15.55 over 10 cm: in the gap both ways
		{6, 10.16, []int{7}, false},
		{1, 10.16, []int{7}, false},
		// Over 10 cm: the trade's reading.
		{22, 10, []int{3}, false},
		{20, 10, []int{4}, true},         // 20.32 over 4 in
		{24, 10, []int{2, 3}, true},      // 24.384 over 4 in: Fine only
		{24.000001, 10, []int{2}, false}, // a millionth beyond the edge
		{20.5, 10, nil, false},           // 20.828 over 4 in
		{40.1, 10, nil, false},
		{18, 10, []int{4}, false},
		{4.5, 2.5, []int{4}, false},
	} {
		d := density{toMillionths(c.stitches), micrometres(c.over)}
		found, nominal := yarnCategories(d)
		var got []int
		for _, f := range found {
			got = append(got, f.Category)
			if (f.StitchesLow == nil) != (f.Category == 7) || (f.NeedleHighMm == nil) != (f.Category == 7) {
				t.Errorf("category %d: open ends %+v", f.Category, f)
			}
		}
		if len(got) != len(c.want) || nominal != c.nominal {
			t.Errorf("%v over %v cm: got %v (nominal %v), want %v (%v)", c.stitches, c.over, got, nominal, c.want, c.nominal)
			continue
		}
		for i := range got {
			if got[i] != c.want[i] {
				t.Errorf("%v over %v cm: got %v, want %v", c.stitches, c.over, got, c.want)
			}
		}
	}
}
