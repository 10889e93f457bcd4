package hand

import (
	"errors"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// Stitches beside the gusset are held with it, so that the palm has at least as many before it.
func TestStitchesBesideAGusset(t *testing.T) {
	in := ThumbInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HandStitches: new(44), BesideStitches: new(2)}
	out, err := PlanThumb(in)
	if err != nil {
		t.Fatal(err)
	}
	if out.HoldStitches != out.GussetStitches+4 {
		t.Errorf("%d held, gusset %d", out.HoldStitches, out.GussetStitches)
	}
	in.BesideStitches, in.PalmStitches = new(10), new(10)
	_, err = PlanThumb(in)
	var refusal *fault.InputError
	if !errors.As(err, &refusal) {
		t.Fatal(err)
	}
	advised := false
	for _, v := range refusal.Violations {
		advised = advised || v.Field == "beside_stitches" && strings.Contains(v.Detail, "9")
	}
	if !advised {
		t.Errorf("no remedy: %+v", refusal.Violations)
	}
}

// One stitch, and once the hand's circumference, are no plural.
func TestThumbsInTheSingular(t *testing.T) {
	_, err := PlanThumb(ThumbInput{Gauge: &gauge.Gauge{Stitches: 28, Rows: 38}, HandStitches: new(48),
		BesideStitches: new(1), PalmStitches: new(0)})
	if err == nil || !strings.Contains(err.Error(), "1 stitch beside the gusset is held too") {
		t.Error(err)
	}
	out, err := PlanThumb(ThumbInput{Gauge: &gauge.Gauge{Stitches: 32, Rows: 16}, HandStitches: new(72), PalmStitches: new(9)})
	if err != nil {
		t.Fatal(err)
	}
	told := ""
	for _, n := range out.Notices {
		told += n.Description + "\n"
	}
	if !strings.Contains(told, "high, as much as the hand's circumference") {
		t.Error(told)
	}
}
