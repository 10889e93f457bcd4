package edge

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// rulesTried is how many gauges of a band are asked: each a stitch to 10 cm less, for where a
// rule rounds up.
const rulesTried = 4

// tooManyStitches says what would be picked up instead of more than two stitches a row, after
// the rest of the sentence. Every remedy has been asked: a longer edge wants more stitches
// as well, and helps only where they were too many by a rule.
func tooManyStitches(count, rows int, st, rw gauge.Density, r gauge.Rule) string {
	var remedies []string
	if longer := (count + 1) / MaxPerRow; takes(longer, st, rw, r) {
		remedies = append(remedies, "an edge of "+report.CountOf(longer, "rows"))
	}
	most := int(10 * MaxPerRow * rw.PerCm()) // stitches to 10 cm
	for n := most; n > 0 && n > most-rulesTried; n-- {
		var c fault.Checks
		looser, _ := gauge.Vet(&c, "band_gauge", &gauge.Gauge{Stitches: float64(n), Rows: float64(n)})
		if c.Err() == nil && takes(rows, looser, rw, r) {
			remedies = append(remedies, "a band of "+strconv.Itoa(n)+" stitches to 10 cm")
			break
		}
	}
	if len(remedies) == 0 {
		return ""
	}
	return "; it takes " + strings.Join(remedies, ", or ")
}

// takes reports whether an edge of so many rows takes the stitches of a band.
func takes(rows int, st, rw gauge.Density, r gauge.Rule) bool {
	if rows < 1 || rows > stitch.MaxRows {
		return false
	}
	var c fault.Checks
	f := gauge.Change(rw, st).VetFit(&c, rows, r, "stitches", "length_rows")
	return f != nil && f.Count <= MaxPerRow*rows
}
