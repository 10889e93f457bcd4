package yarn

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// The charts against their transcription.
func TestWeightCharts(t *testing.T) {
	rows := knittest.Table(t, "yarn/yarn_weights.csv")
	if len(rows) != len(weightCharts) {
		t.Fatalf("%d rows, %d charts", len(rows), len(weightCharts))
	}
	for i, row := range rows {
		c := weightCharts[i]
		cells := func(low, high string) span { return span{knittest.Cell(t, row[low]), knittest.Cell(t, row[high])} }
		if c.usLow != row["us_low"] || c.usHigh != row["us_high"] || c.wraps != cells("wpi_cyc_low", "wpi_cyc_high") ||
			c.spinners != cells("wpi_spinoff_low", "wpi_spinoff_high") || c.yards != cells("ydlb_spinoff_low", "ydlb_spinoff_high") {
			t.Errorf("%d is %+v, transcribed %v", i, c, row)
		}
	}
}

func TestListYarnWeights(t *testing.T) {
	all, err := ListYarnWeights(WeightListInput{})
	if err != nil || len(all.Rows) != 8 || len(all.Sources()) != 4 {
		t.Fatalf("%+v, %v", all, err)
	}
	for i, r := range all.Rows {
		if r.Category != i || r.Name == "" || r.OtherNames == "" || r.Status == 0 || r.Citation == "" {
			t.Errorf("%+v is not whole", r)
		}
	}
}

func TestOpenEndsOfWeights(t *testing.T) {
	all, err := ListYarnWeights(WeightListInput{})
	if err != nil {
		t.Fatal(err)
	}
	lace, jumbo := all.Rows[0], all.Rows[7]
	if lace.HighWrapsPerInch != nil || *lace.LowWrapsPerInch != 30 || jumbo.LowSpinnersWrapsPerInch != nil || jumbo.HighNeedleMm != nil ||
		jumbo.LowStitches != nil || jumbo.HighNeedleUS != "" {
		t.Errorf("open ends: %+v, %+v", lace, jumbo)
	}
	one, err := ListYarnWeights(WeightListInput{new(4)})
	if err != nil || len(one.Rows) != 1 || one.Rows[0].Name != "Medium" || one.Summary()[:13] != "1 yarn weight" {
		t.Errorf("%+v, %v", one, err)
	}
	_, err = ListYarnWeights(WeightListInput{new(8)})
	knittest.WantViolations(t, err, "category OUT_OF_RANGE")
}

// Published: wraps per inch of the spinners' chart are 0.35 to 0.39 times the root of its
// yards per pound, in every category with two ends: a check that no column has slipped.
func TestSpinnersChartIsOneScale(t *testing.T) {
	for i, c := range weightCharts {
		if c.spinners.low == 0 || c.spinners.high == 0 {
			continue
		}
		k := (c.spinners.low + c.spinners.high) / 2 / math.Sqrt((c.yards.low+c.yards.high)/2)
		if k < 0.35 || k > 0.39 {
			t.Errorf("category %d: %v", i, k)
		}
	}
}

func BenchmarkListYarnWeights(b *testing.B) {
	for b.Loop() {
		if out, err := ListYarnWeights(WeightListInput{}); err != nil || out.Summary() == "" {
			b.Fatal(err)
		}
	}
}

// A row is trusted as far as its weakest column, and says where each column is from.
func TestWeightRowsStandByTheirWeakestColumn(t *testing.T) {
	out, err := ListYarnWeights(WeightListInput{})
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range out.Rows {
		spinners := strings.Contains(r.Citation, spinnersCited.Citation)
		if r.Status != report.SourceStatusSecondHand || !strings.Contains(r.Citation, wrapsCited.Citation) || spinners != (r.Category < 7) {
			t.Errorf("category %d: status %v, %q", r.Category, r.Status, r.Citation)
		}
	}
}
