package swatch

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// Fixed points that every list agrees on, and what each filter leaves.
func TestListNeedleSizes(t *testing.T) {
	all, err := ListNeedleSizes(NeedleListInput{})
	if err != nil || len(all.Rows) != len(needleSizes) {
		t.Fatalf("%d rows, %v", len(all.Rows), err)
	}
	found := map[float64]NeedleRow{}
	for _, r := range all.Rows {
		found[r.Mm] = r
		if r.Citation == "" || r.Status == 0 {
			t.Errorf("%v mm has no source", r.Mm)
		}
	}
	for mm, want := range map[float64][2]string{
		4: {"6", "8"}, 4.5: {"7", "7"}, 5: {"8", "6"}, 8: {"11", "0"}, 9: {"13", "00"}, 10: {"15", "000"},
	} {
		if r := found[mm]; r.US != want[0] || r.UK != want[1] {
			t.Errorf("%v mm is %+v, want %v", mm, r, want)
		}
	}
	for _, c := range []struct {
		in   NeedleListInput
		rows int
	}{
		{NeedleListInput{System: NeedleSystemJapanese}, 16},
		{NeedleListInput{System: NeedleSystemJapanese, MaxMm: new(3.0)}, 4},
		{NeedleListInput{System: NeedleSystemUK, MinMm: new(4.0), MaxMm: new(5.0)}, 3},
		{NeedleListInput{MinMm: new(26.0)}, 3},
		{NeedleListInput{MinMm: new(12.0), MaxMm: new(12.0)}, 1},
		{NeedleListInput{MaxMm: new(1.2)}, 2},
		{NeedleListInput{MinMm: new(45.0)}, 0},
		{NeedleListInput{System: NeedleSystemUK, MinMm: new(11.0)}, 0},
		{NeedleListInput{MinMm: new(11.0), MaxMm: new(11.5)}, 0},
	} {
		out, err := ListNeedleSizes(c.in)
		if err != nil || len(out.Rows) != c.rows || (len(out.Notices) > 0) != (c.rows == 0) {
			t.Errorf("%+v: %d rows, %v, want %d", c.in, len(out.Rows), err, c.rows)
		}
	}
}

// A row is disputed where something is said of what lists disagree about, and nowhere else.
func TestDisagreementsAreOfDisputedRows(t *testing.T) {
	disputed := 0
	for _, n := range needleSizes {
		if n.Disputed != (disagreements[n.Mm] != "") {
			t.Errorf("%v mm is disputed: %v, and there is said %q", n.Mm, n.Disputed, disagreements[n.Mm])
		}
		if n.Disputed {
			disputed++
		}
	}
	if disputed != len(disagreements) {
		t.Errorf("%d disagreements for %d rows", len(disagreements), disputed)
	}
}

// Why a list is empty is said: beyond the table, without a name in the system, or between.
func TestEmptyNeedleLists(t *testing.T) {
	for want, in := range map[string]NeedleListInput{
		"from 0.75 to 40 mm": {MinMm: new(45.0)}, "ask without system": {System: NeedleSystemUK, MinMm: new(11.0)},
		"between these two": {MinMm: new(11.0), MaxMm: new(11.5)},
	} {
		out, err := ListNeedleSizes(in)
		if err != nil || len(out.Notices) != 1 || !strings.Contains(out.Notices[0].Description, want) {
			t.Errorf("%+v: %+v, want %q", in, out.Notices, want)
		}
	}
	if least, most := needleSizes[0].Mm, needleSizes[len(needleSizes)-1].Mm; least != 0.75 || most != 40 {
		t.Errorf("the table goes from %v to %v mm", least, most)
	}
}

func TestNeedleListFaults(t *testing.T) {
	_, err := ListNeedleSizes(NeedleListInput{System: 4, MinMm: new(math.NaN()), MaxMm: new(51.0)})
	knittest.WantViolations(t, err, "system UNKNOWN_VALUE", "min_mm NOT_FINITE", "max_mm OUT_OF_RANGE")
	_, err = ListNeedleSizes(NeedleListInput{MinMm: new(5.0), MaxMm: new(4.0)})
	knittest.WantViolations(t, err, "min_mm INFEASIBLE", "max_mm INFEASIBLE")
}

func BenchmarkListNeedleSizes(b *testing.B) {
	for b.Loop() {
		if out, err := ListNeedleSizes(NeedleListInput{}); err != nil || out.Summary() == "" {
			b.Fatal(err)
		}
	}
}

// Each row stands by one rule as its transcription does: what was read in tables that agree,
// or goes by the Japanese rule, is common practice, what lists or memory have is from memory,
// and a row is uncertain exactly where somebody disagrees.
func TestNeedleRowsStandByOneRule(t *testing.T) {
	out, err := ListNeedleSizes(NeedleListInput{})
	if err != nil {
		t.Fatal(err)
	}
	for i, row := range knittest.Table(t, "gauge/needles.csv") {
		got, source := out.Rows[i], row["source"]
		remembered := got.Mm < 2 || got.Mm > 10 && !strings.HasPrefix(source, "tables agree")
		if (got.Status == report.SourceStatusFromMemory) != remembered || !remembered && got.Status != report.SourceStatusCommonPractice {
			t.Errorf("%v mm has status %v, transcribed %q", got.Mm, got.Status, source)
		}
		if got.Uncertain != (row["status"] == "disputed") || got.Uncertain != (got.Disagreement != "") ||
			got.Uncertain != strings.Contains(got.Citation, "disagree") {
			t.Errorf("%v mm is uncertain: %v, transcribed %q, said %q, %q", got.Mm, got.Uncertain, row["status"], got.Disagreement, got.Citation)
		}
		if cited := strings.Contains(got.Citation, "0.3 n"); cited != (got.Japanese != "") {
			t.Errorf("%v mm, Japanese %q, cites %q", got.Mm, got.Japanese, got.Citation)
		}
		if (got.Remark != "") != strings.Contains(source, "note says") {
			t.Errorf("%v mm: %q, transcribed %q", got.Mm, got.Remark, source)
		}
	}
}
