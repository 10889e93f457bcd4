package swatch

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

func TestNeedleTable(t *testing.T) {
	rows := knittest.Table(t, "gauge/needles.csv")
	if len(rows) != len(needleSizes) {
		t.Fatalf("%d needles, the transcription has %d", len(needleSizes), len(rows))
	}
	for i, row := range rows {
		want := NeedleSize{knittest.Cell(t, row["mm"]), row["us"], row["uk"], row["japanese"], row["status"] == "disputed"}
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
		if swg := knittest.Cell(t, row["swg_mm_of_uk_number"]); swg != 0 && (want.Mm-swg > 0.6 || swg-want.Mm > 0.6) {
			t.Errorf("UK %s: %v mm, wire gauge %v", want.UK, want.Mm, swg)
		}
		// Japanese numbers run by rule.
		if want.Japanese != "" {
			knittest.Near(t, "Japanese "+want.Japanese, want.Mm, 2.1+0.3*knittest.Cell(t, want.Japanese), 1e-12)
		}
	}
	for _, mm := range []float64{0.5, 4.02, 4.1, 50} {
		if got := needleSize(mm); got != nil {
			t.Errorf("%v mm is found as %+v", mm, got)
		}
	}
}
