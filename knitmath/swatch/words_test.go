package swatch

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// An answer says what was read and asked, and no more, and names a source for each
// kind of figure it has.
func TestInWords(t *testing.T) {
	half := "half-width of the 95 % interval, outlying reading"
	for _, c := range []struct {
		name, summary, sources string
		in                     Input
	}{
		{"one reading of stitches", "40.2 stitches to 10 cm.", half, Input{StitchesBefore: readingsOver(10, 40.2)}},
		{"rows alone, after washing", "30 ± 0 rows to 10 cm.", half, Input{RowsAfter: readingsOver(10, 30, 30)}},
		{"before, where nothing was washed", "41 stitches and 50 rows to 3.94 in.", half,
			Input{StitchesBefore: readingsOver(10, 41), RowsBefore: readingsOver(10, 50), DisplayUnit: measure.DisplayUnitIn}},
		{"washed in one direction", "41 stitches and 51 rows to 10 cm.", half + ", change on washing",
			Input{StitchesBefore: readingsOver(10, 41), RowsBefore: readingsOver(10, 50), RowsAfter: readingsOver(10, 51)}},
		{"in a category", "20 stitches to 10 cm.", half + ", yarn weight categories 4 to 7", Input{StitchesAfter: readingsOver(10, 20)}},
		{"with sizes", "41 stitches and 50 rows to 10 cm. 82 stitches: 20 cm wide. 100 rows: 20 cm tall.",
			half + ", smallest and largest size",
			Input{StitchesAfter: readingsOver(10, 41), RowsAfter: readingsOver(10, 50), WidthCm: new(20.0), HeightCm: new(20.0)}},
		// 10 and 30: mean 20, s = 14.142, half-width 12.706 * 10 = 127.06, more than the mean.
		{"a gauge that may be nothing", "20 ± 127.06 rows to 10 cm. 40 rows: 20 cm tall, at 95 % from 2.7 cm up.",
			half + ", smallest and largest size", Input{RowsAfter: readingsOver(10, 10, 30), HeightCm: new(20.0)}},
		{"on a needle", "41 stitches to 10 cm.", half + ", needle names", Input{StitchesAfter: readingsOver(10, 41), NeedleMm: new(4.0)}},
	} {
		out, err := ComputeGauge(c.in)
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		if got := out.Summary(); got != c.summary {
			t.Errorf("%s: got %q, want %q", c.name, got, c.summary)
		}
		var figures []string
		for _, s := range out.Sources() {
			figures = append(figures, s.Figure)
			if s.Citation == "" || s.Status == report.SourceStatusUnspecified {
				t.Errorf("%s: source %+v", c.name, s)
			}
		}
		if got := strings.Join(figures, ", "); got != c.sources {
			t.Errorf("%s: sources of %q, want %q", c.name, got, c.sources)
		}
		if len(out.Directions()) != 0 {
			t.Errorf("%s: directions %q, and there is nothing to work", c.name, out.Directions())
		}
	}
}

// How far the names of a needle can be trusted goes by its row.
func TestNeedleSources(t *testing.T) {
	for _, c := range []struct {
		mm     float64
		status report.SourceStatus
		doubt  bool
	}{
		{4, report.SourceStatusCommonPractice, false},
		{10, report.SourceStatusCommonPractice, false},
		{15, report.SourceStatusCommonPractice, false}, // tables agree on it too
		{19, report.SourceStatusFromMemory, true},      // beyond the general tables
		{30, report.SourceStatusFromMemory, false},
		{2.5, report.SourceStatusCommonPractice, true},
	} {
		s := needleSize(c.mm).source()
		if s.Status != c.status || strings.Contains(s.Citation, "disagree") != c.doubt ||
			strings.Contains(s.Citation, "memory") != (c.status == report.SourceStatusFromMemory) {
			t.Errorf("%v mm: %+v", c.mm, s)
		}
	}
}
