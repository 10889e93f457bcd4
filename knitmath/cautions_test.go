package knitmath_test

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/hand"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/solid"
)

// A caution is what an answer must say to whoever knits for a child, and what must be among its sources.
type caution struct {
	answer      report.Answer
	notices     []report.Notice
	reason      report.Reason
	says, cited []string
}

// cords are the standards of cords on clothes. Their scopes were read; hats and mittens are out of them, and assessed alike.
var cords = []string{"EN 14682", "ASTM F1816", "16 CFR 1120", "local rules govern"}

func cautions(t *testing.T) map[string]caution {
	ball := func(cm float64) solid.Solid {
		out, err := solid.PlanSolid(solid.SolidInput{Gauge: mittenGauge, Form: solid.FormSphere, AcrossCm: &cm})
		return must(t, out, err)
	}
	small, large := ball(2.5), ball(12)
	crown, err := solid.PlanCrown(solid.CrownInput{Gauge: mittenGauge, HeadCm: new(42.0)})
	must(t, crown, err)
	top, err := hand.PlanMittenTop(hand.MittenTopInput{Gauge: mittenGauge, HandSize: hand.SizeYears2})
	must(t, top, err)
	thumb, err := hand.PlanThumb(hand.ThumbInput{Gauge: mittenGauge, HandSize: hand.SizeYears2})
	must(t, thumb, err)
	baby := toe(t, sock.ToeInput{Gauge: &gauge.Gauge{Stitches: 28, Rows: 40}, FootCircumferenceCm: new(12.0)})
	mitten := []string{"no loops, floats or long ends inside", "no cords or small parts", "local health service", "rules of the place"}
	return map[string]caution{
		"a small ball": {small, small.Notices, solid.SmallPart, []string{"under 3", "3.17 cm", "leave it off"},
			[]string{"16 CFR 1501.4", "EN 71-1, clause 8.2"}},
		"a ball": {large, large.Notices, solid.ToyCare,
			[]string{"filling that washes", "no cord round a neck", "under 3", "cot of a baby", "rules of the place"},
			[]string{"16 CFR 1501.4", "EN 71", "ASTM F963", "American Academy of Pediatrics", "local advice governs"}},
		"a hat": {crown, crown.Notices, solid.BabyCare, []string{"no ties, cords or buttons", "no hat in sleep", "local health service",
			"rules of the place"}, cords},
		"a mitten": {top, top.Notices, hand.BabyCare, mitten, cords},
		"a thumb":  {thumb, thumb.Notices, hand.BabyCare, mitten, cords},
		"a sock":   {baby, baby.Notices, sock.LooseEnds, []string{"no loop inside can catch a toe", "local advice"}, nil},
	}
}

// What may hurt a child is said with what to mind, defers to the rules of the place, and has the standards behind it among the sources.
func TestCautionsNameTheirStandards(t *testing.T) {
	for of, c := range cautions(t) {
		said, cited := "", ""
		for _, n := range c.notices {
			if n.Reason == c.reason {
				said = n.Description
			}
		}
		for _, s := range c.answer.Sources() {
			cited += s.Citation + "\n"
		}
		for _, words := range c.says {
			if !strings.Contains(said, words) {
				t.Errorf("%s: no %q in %q", of, words, said)
			}
		}
		for _, words := range c.cited {
			if !strings.Contains(cited, words) {
				t.Errorf("%s: no %q among the sources:\n%s", of, words, cited)
			}
		}
	}
}
