package edge

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

func TestPickUpRefusals(t *testing.T) {
	ten, zero, many, one, tooMany := 10, 0, stitch.MaxRows+1, 1, 21
	nan, cm, tiny, thousand := math.NaN(), 20.0, 0.1, 1000.0
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	for name, c := range map[string]struct {
		in   PickUpInput
		want []string
	}{
		"empty": {PickUpInput{}, []string{"length_rows REQUIRED", "length_cm REQUIRED", "gauge REQUIRED"}},
		"twice": {PickUpInput{LengthRows: &ten, LengthCm: &cm, Gauge: standard},
			[]string{"length_rows CONTRADICTORY", "length_cm CONTRADICTORY"}},
		"no rows":   {PickUpInput{LengthRows: &zero, Gauge: standard}, []string{"length_rows OUT_OF_RANGE"}},
		"many rows": {PickUpInput{LengthRows: &many, Gauge: standard}, []string{"length_rows OUT_OF_RANGE"}},
		"nan":       {PickUpInput{LengthCm: &nan, Gauge: standard}, []string{"length_cm NOT_FINITE"}},
		"no row": {PickUpInput{LengthCm: &tiny, Gauge: &gauge.Gauge{Stitches: 5, Rows: 5}},
			[]string{"length_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"long": {PickUpInput{LengthCm: &thousand, Gauge: &gauge.Gauge{Stitches: 5, Rows: 500}},
			[]string{"length_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"bad gauges": {PickUpInput{LengthRows: &ten, Gauge: &gauge.Gauge{}, BandGauge: &gauge.Gauge{Stitches: -1, Rows: 1}},
			[]string{"gauge.stitches REQUIRED", "gauge.rows REQUIRED", "band_gauge.stitches OUT_OF_RANGE"}},
		"rule": {PickUpInput{LengthRows: &ten, Gauge: standard, StitchRule: &gauge.CountRule{Multiple: &zero, Rounding: 9}},
			[]string{"stitch_rule.multiple OUT_OF_RANGE", "stitch_rule.rounding UNKNOWN_VALUE"}},
		"misfit": {PickUpInput{LengthRows: &one, Gauge: standard,
			StitchRule: &gauge.CountRule{Multiple: &ten, Rounding: measure.RoundingDown}},
			[]string{"length_rows INFEASIBLE", "gauge INFEASIBLE", "stitch_rule INFEASIBLE"}},
		"two a row": {PickUpInput{LengthRows: &ten, Gauge: standard, BandGauge: &gauge.Gauge{Stitches: 62, Rows: 30}},
			[]string{"length_rows INFEASIBLE", "band_gauge INFEASIBLE"}},
		"rule above": {PickUpInput{LengthRows: &one, Gauge: standard, StitchRule: &gauge.CountRule{Multiple: &ten}},
			[]string{"length_rows INFEASIBLE", "gauge INFEASIBLE", "stitch_rule INFEASIBLE"}},
		"number": {PickUpInput{LengthRows: &ten, Gauge: standard, LargestTerm: &one}, []string{"largest_term OUT_OF_RANGE"}},
		"several": {PickUpInput{LengthRows: &zero, LargestTerm: &tooMany, Spread: 4, DisplayUnit: 3},
			[]string{"length_rows OUT_OF_RANGE", "gauge REQUIRED", "largest_term OUT_OF_RANGE", "spread UNKNOWN_VALUE",
				"display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanPickUp(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
	// Two in every row is the most, and is possible.
	out, err := PlanPickUp(PickUpInput{LengthRows: &ten, Gauge: standard, BandGauge: &gauge.Gauge{Stitches: 60, Rows: 30}})
	if err != nil || out.Instruction.Row.Text() != "[pick up and knit 2 in one row] 10 times" {
		t.Errorf("%q, %v", out.Instruction.Row.Text(), err)
	}
}

// An edge in cm may come to a single row, and to ten thousand: 2 cm at 5 rows and
// 1000 cm at 100 rows to 10 cm.
func TestPickUpBoundsInCm(t *testing.T) {
	for _, c := range []struct {
		cm, perTen float64
		rows       int
	}{{2, 5, 1}, {1000, 100, stitch.MaxRows}} {
		out, err := PlanPickUp(PickUpInput{LengthCm: &c.cm, Gauge: &gauge.Gauge{Stitches: c.perTen, Rows: c.perTen}})
		if err != nil || out.LengthRows != c.rows {
			t.Errorf("%v cm: %d rows, %v", c.cm, out.LengthRows, err)
		}
	}
}

// Too many stitches are told. 10 rows are 10/3 cm: at 62 stitches to 10 cm 20.67, at 66 22, at
// 69 23.
func TestPickUpSaysTooMany(t *testing.T) {
	for band, want := range map[float64]int{62: 21, 66: 22, 69: 23} {
		_, err := PlanPickUp(PickUpInput{LengthRows: new(10), Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
			BandGauge: &gauge.Gauge{Stitches: band, Rows: 30}})
		var refusal *fault.InputError
		if !errors.As(err, &refusal) {
			t.Fatalf("%v to 10 cm: %v", band, err)
		}
		const words = "%d stitches are wanted, and an edge of 10 rows takes at most 20, two in every row; it takes a band of 60 stitches to 10 cm"
		if text := refusal.Violations[0].Detail; text != fmt.Sprintf(words, want) {
			t.Errorf("%q", text)
		}
	}
}

var (
	longerEdge = regexp.MustCompile(`it takes an edge of (\d+) row`)
	looserBand = regexp.MustCompile(`a band of (\d+) stitches`)
)

// What is said to take so many stitches does: an edge, a band, each asked again. Where the band
// alone has more than two stitches to a row no edge is long enough, and none is named.
func TestPickUpRemediesAreTaken(t *testing.T) {
	edges, bands, refused := 0, 0, 0
	for rows := 1; rows <= 60; rows++ {
		for _, stitches := range []float64{20, 55, 59, 60.5, 62, 66, 90} {
			for _, multiple := range []int{1, 4, 10} {
				in := PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BandGauge: &gauge.Gauge{Stitches: stitches, Rows: 30},
					StitchRule: &gauge.CountRule{Multiple: &multiple, Rounding: measure.RoundingUp}}
				_, err := PlanPickUp(in)
				if err == nil || !strings.Contains(err.Error(), "two in every row") {
					continue
				}
				refused++
				if m := longerEdge.FindStringSubmatch(err.Error()); m != nil {
					longer, err := strconv.Atoi(m[1])
					if err != nil {
						t.Fatal(err)
					}
					again := in
					again.LengthRows = &longer
					if _, err := PlanPickUp(again); err != nil {
						t.Errorf("%d rows at %v, multiples of %d: %v", rows, stitches, multiple, err)
					}
					edges++
				}
				if m := looserBand.FindStringSubmatch(err.Error()); m != nil {
					looser, err := strconv.ParseFloat(m[1], 64)
					if err != nil {
						t.Fatal(err)
					}
					again := in
					again.BandGauge = &gauge.Gauge{Stitches: looser, Rows: 30}
					if _, err := PlanPickUp(again); err != nil {
						t.Errorf("%d rows at %v, multiples of %d: %v", rows, stitches, multiple, err)
					}
					bands++
				}
			}
		}
	}
	if refused < 200 || edges < 10 || bands < 100 {
		t.Errorf("%d refused, %d edges and %d bands named: the sweep has shrunk", refused, edges, bands)
	}
}
