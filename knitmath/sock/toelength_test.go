package sock

import (
	"testing"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
)

func toldOf(list []report.Notice, reason report.Reason) *report.Notice {
	for _, n := range list {
		if n.Reason == reason {
			return &n
		}
	}
	return nil
}

// A toe by its defaults is never told to be long, but for the shortest rounds, of a doll, and one of 250 rounds is, with gauge and without.
func TestLongToesAreTold(t *testing.T) {
	for round := 20; round <= MaxRound; round++ {
		for kind := ToeKindWedge; kind <= ToeKindShortRows; kind++ {
			for _, in := range []ToeInput{{Kind: kind, RoundStitches: &round}, {Kind: kind, RoundStitches: &round, Gauge: standard}} {
				o, err := PlanToe(in)
				if err != nil {
					t.Fatal(err)
				}
				if n := toldOf(o.Notices, ToeUnlikeFeet); n != nil {
					t.Errorf("%d stitches, kind %d: %s", round, kind, n.Description)
				}
				if kind != ToeKindWedge && kind != ToeKindStar {
					continue
				}
				in.Rates = []solid.Rate{rate(50, 5), rate(2, 1)}
				o, err = PlanToe(in)
				if err != nil {
					continue // too long for any foot
				}
				if n := toldOf(o.Notices, ToeUnlikeFeet); round < 200 && (n == nil || n.Field != "rates") {
					t.Errorf("%d stitches, kind %d: %d rounds without a word: %v", round, kind, o.LengthRows, o.Notices)
				}
			}
		}
	}
}
