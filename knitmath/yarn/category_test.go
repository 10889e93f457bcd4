package yarn

import (
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

func TestYarnWeightTable(t *testing.T) {
	rows := knittest.Table(t, "yarn/yarn_weights.csv")
	if len(rows) != len(yarnWeights) {
		t.Fatalf("%d categories, the transcription has %d", len(yarnWeights), len(rows))
	}
	for i, row := range rows {
		want := yarnWeight{row["name"], int64(knittest.Cell(t, row["st_per_4in_low"])), int64(knittest.Cell(t, row["st_per_4in_high"])),
			knittest.Cell(t, row["needle_mm_low"]), knittest.Cell(t, row["needle_mm_high"])}
		if row["category"] != strconv.Itoa(i) || yarnWeights[i] != want {
			t.Errorf("category %d is %+v, transcribed %s: %+v", i, yarnWeights[i], row["category"], want)
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
		found, nominal := Categories(gauge.MeanPerCm(gauge.NewDensity(c.stitches, c.over)))
		var got []int
		for _, f := range found {
			got = append(got, f.Category)
			if (f.LowStitches == nil) != (f.Category == 7) || (f.HighNeedleMm == nil) != (f.Category == 7) {
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
