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
