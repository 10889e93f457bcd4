package knitmath_test

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/flat"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/stitch"
	"example.com/knitmath/knitmath/yarn"
)

// misprints are printed figures that do not add up, and are said not to.
var misprints = map[string]printed{
	"neg_prj": {work: func(t *testing.T) string {
		return disagrees(t, 104, "Rnd 1: [k8, m1] 13 times (116 sts).", stitch.InTheRound)
	}},
	"neg_kns07_a": {work: func(t *testing.T) string {
		return disagrees(t, 112, strings.Repeat("K1, m1, k to last st, m1, k1.\n", 7)+"(128 sts)", stitch.Flat)
	}},
	"neg_kns07_b": {work: func(t *testing.T) string {
		return disagrees(t, 188, "CO 9, k to end.\nCO 9, p to end (200 sts).", stitch.Flat)
	}},
	"neg_ozl": {work: func(t *testing.T) string {
		return disagrees(t, 162, "BO 9, k to end.\nBO 9, p to end.\n"+strings.Repeat("Ssk, k to last 2 sts, k2tog.\n", 17)+
			"Ssk, k to last 2 sts, k2tog (104 sts).", stitch.Flat)
	}},
	"neg_mwk": {work: func(t *testing.T) string {
		out := flatShape(t, flat.Input{Gauge: perInch(5, 7), Form: flat.FormDisc, AcrossCm: new(24 * 2.54)})
		return fmt.Sprintf("rim %.0f (printed %d = diameter x gauge)", out.WantedRimStitches, 24*5)
	}},
	"neg_crs": {work: func(t *testing.T) string { // 90 yards of what weighs a pound
		yards := 90.0
		out, err := yarn.ConvertYarnCount(yarn.ConvertInput{Count: &yarn.Count{Number: &yards, System: yarn.CountSystemYardsPerPound}})
		return fmt.Sprintf("%.1f (printed 80; round up for amounts)", must(t, out, err).MetresPer100G*4.5359237)
	}},
	"neg_fdm": {work: func(t *testing.T) string {
		// Of 27 stitches of a side 9 go to the neck, and three times 9 to the shoulder.
		const shoulder = "P.\nBO 9, k to end.\n"
		text := "BO 9, k to end (18 sts).\n" + strings.Repeat(shoulder, 3)
		out := checked(t, 27, text, stitch.Flat)
		if out.Agrees {
			t.Errorf("%q: nothing is found", text)
		}
		return fmt.Sprintf("%d left, %d needed: excerpt must start with more shoulder sts or mean a wider row",
			27-9, 9*strings.Count(text, shoulder))
	}},
}

var claimed = regexp.MustCompile(`\((\d+) sts\)`)

// disagrees is what a text comes to and the count that it prints, at which it must be found to be wrong, and nowhere else.
func disagrees(t *testing.T, start int, text string, work stitch.Construction) string {
	t.Helper()
	out, count := checked(t, start, text, work), claimed.FindStringSubmatch(text)[1]
	wrong := 0
	for _, f := range out.Findings {
		if f.Kind != pattern.KindReading {
			wrong++
			if !strings.Contains(f.Description, count) {
				t.Errorf("%q: %s", text, f.Description)
			}
		}
	}
	if out.Agrees || wrong != 1 {
		t.Errorf("%q: %+v", text, out.Findings)
	}
	return fmt.Sprintf("%d (printed %s)", out.EndStitches[0], count)
}

func checked(t *testing.T, start int, text string, work stitch.Construction) pattern.CheckedInstructions {
	t.Helper()
	out, err := pattern.CheckInstructions(t.Context(), pattern.CheckInstructionsInput{Text: text, StartStitches: []int{start},
		Construction: work})
	return must(t, out, err)
}
