package knitmath_test

import (
	"testing"

	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/stitch"
)

// Every row of heels and toes is read as it is meant, from its text alone.
func TestSocksAreReadBack(t *testing.T) {
	read := 0
	row := func(in stitch.Instruction, edge int) {
		on := in.StartStitches + edge
		if taken := takes(in.Row.Steps); taken > 0 {
			on = taken // a row after a turn has as many to work as it takes
		}
		readBack(t, in, on)
		read++
	}
	for round := 32; round <= 64; round += 8 {
		for kind := sock.HeelKindRound; kind <= sock.HeelKindWasteYarn; kind++ {
			for _, method := range []shortrow.TurnMethod{shortrow.TurnMethodUnspecified, shortrow.TurnMethodGerman} {
				in := sock.HeelInput{Kind: kind, RoundStitches: &round}
				if kind == sock.HeelKindShortRows {
					in.TurnMethod = method
				}
				heel, err := sock.PlanHeel(in)
				if err != nil {
					t.Fatal(err)
				}
				for _, r := range heel.Rows {
					edge := 0
					if r.Part == sock.HeelPartPickUp {
						edge = 2 * *heel.PickUpStitches // what is picked up is taken of an edge
					}
					row(r.Instruction, edge)
				}
			}
		}
		for kind := sock.ToeKindWedge; kind <= sock.ToeKindShortRows; kind++ {
			toe, err := sock.PlanToe(sock.ToeInput{Kind: kind, RoundStitches: &round})
			if err != nil {
				t.Fatal(err)
			}
			for _, r := range toe.Rows {
				row(r.Instruction, 0)
			}
		}
	}
	if read < 2000 {
		t.Errorf("%d rows", read)
	}
}

// takes is how many stitches steps take; 0 where they go to the end.
func takes(steps []stitch.Step) int {
	n := 0
	for _, s := range steps {
		switch {
		case s.ToLast != nil:
			return 0
		case s.Group != nil:
			n += s.Times * takes(s.Group)
		default:
			n += s.Count * s.Op.Takes()
		}
	}
	return n
}
