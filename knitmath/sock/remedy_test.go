package sock

import (
	"errors"
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/fault"
)

// offered reads the numbers out of what a refusal of one field offers.
func offered(t *testing.T, err error, field, format string, into ...any) bool {
	t.Helper()
	var faults *fault.InputError
	if !errors.As(err, &faults) {
		t.Fatalf("%v", err)
	}
	for _, v := range faults.Violations {
		if v.Field == field {
			if n, _ := fmt.Sscanf(v.Detail, format, into...); n == len(into) {
				return true
			}
		}
	}
	return false
}

// Every number that a refusal of a heel offers is planned, and none beyond it.
func TestRemediesArePlanned(t *testing.T) {
	tried := 0
	for round := 16; round <= 90; round += 3 {
		for _, kind := range []HeelKind{HeelKindRound, HeelKindSquare, HeelKindHeart, HeelKindShortRows} {
			for centre := 1; centre <= round/2; centre++ {
				in := HeelInput{Kind: kind, RoundStitches: &round, CentreStitches: &centre}
				_, err := PlanHeel(in)
				if err == nil {
					continue
				}
				var a, b, heel int
				var least, most int
				switch {
				case offered(t, err, "centre_stitches", "leaves an odd number of the %d stitches beside it; %d or %d would do", &heel, &a, &b):
				case offered(t, err, "centre_stitches", "leaves an odd number of the %d stitches beside it; %d would do", &heel, &a):
					b = a
				case offered(t, err, "centre_stitches", "the centre of %d stitches can have %d to %d", &heel, &least, &most):
					a, b = least, most
				default:
					continue
				}
				for _, c := range []int{a, b} {
					in.CentreStitches = &c
					tried++
					if _, again := PlanHeel(in); again != nil {
						t.Fatalf("%d stitches, kind %d: %v, but %d: %v", round, kind, err, c, again)
					}
				}
			}
			if kind == HeelKindShortRows {
				continue
			}
			for p := 1; p < 12; p++ {
				in := HeelInput{Kind: kind, RoundStitches: &round, PickUpStitches: &p}
				_, err := PlanHeel(in)
				var left, picked, heel, least int
				if err == nil || !offered(t, err, "pick_up_stitches", "the turned heel of %d stitches and %d picked up at each edge "+
					"are fewer than the %d of the heel; pick up at least %d", &left, &picked, &heel, &least) {
					continue
				}
				tried++
				in.PickUpStitches = &least
				if _, again := PlanHeel(in); again != nil {
					t.Fatalf("%d stitches, kind %d: %v, but %v", round, kind, err, again)
				}
				in.PickUpStitches = new(least - 1)
				if _, again := PlanHeel(in); again == nil {
					t.Fatalf("%d stitches, kind %d: %v, and %d do too", round, kind, err, least-1)
				}
			}
		}
	}
	if tried < 1000 {
		t.Errorf("%d remedies", tried)
	}
}

// Every end that a refusal of a heel knit in afterwards offers is planned.
func TestEndsOfferedArePlanned(t *testing.T) {
	tried := 0
	for round := 16; round <= 80; round += 3 {
		for end := 4; end <= round+8; end++ {
			in := HeelInput{Kind: HeelKindWasteYarn, RoundStitches: &round, EndStitches: &end}
			_, err := PlanHeel(in)
			var all, a, b int
			switch {
			case err == nil:
				continue
			case offered(t, err, "end_stitches", "decreases go four at a time from %d stitches; %d or %d would do", &all, &a, &b):
			case offered(t, err, "end_stitches", "decreases go four at a time from %d stitches; %d would do", &all, &a):
				b = a
			default:
				continue
			}
			for _, e := range []int{a, b} {
				in.EndStitches = &e
				tried++
				if _, again := PlanHeel(in); again != nil {
					t.Fatalf("%d stitches: %v, but %d: %v", round, err, e, again)
				}
			}
		}
	}
	if tried < 1000 {
		t.Errorf("%d remedies", tried)
	}
}
