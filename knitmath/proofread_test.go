package knitmath_test

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/hand"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/neck"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// proofread checks directions as they are printed, on so many stitches, 0 if they cast on, and
// reports whether nothing is asked and nothing is called wrong.
func proofread(t *testing.T, directions []string, start int, work stitch.Construction) bool {
	t.Helper()
	in := pattern.CheckInstructionsInput{Text: strings.Join(directions, "\n"), Construction: work}
	if start > 0 {
		in.StartStitches = []int{start}
	}
	out, err := pattern.CheckInstructions(t.Context(), in)
	if err != nil || !out.Agrees {
		t.Errorf("%v on %d:", err, start)
		for _, f := range out.Findings {
			if f.Kind != pattern.KindReading {
				t.Errorf("%d %s %q: %s\n%s", f.LineNumber, f.Reason, f.Text, f.Description, directions[f.LineNumber-1])
			}
		}
		return false
	}
	return true
}

// ordinary are gauges from fine to chunky, over 10 cm. Invented, and no check of anything.
var ordinary = []gauge.Gauge{{Stitches: 30, Rows: 42}, {Stitches: 24, Rows: 32}, {Stitches: 22, Rows: 30}, {Stitches: 18, Rows: 24},
	{Stitches: 14, Rows: 19}}

// pieces are directions of a garment piece by piece: each begins on stitches of its own.
func pieces(directions []string, names ...string) [][]string {
	var list [][]string
	for _, d := range directions {
		first := len(list) == 0
		for _, n := range names {
			first = first || d == n+":"
		}
		if first {
			list = append(list, nil)
		}
		list[len(list)-1] = append(list[len(list)-1], d)
	}
	return list
}

// Whatever is planned for a sock is read back whole: every heel and toe, from the cuff and from the
// toe, with each kind of turn.
func TestSocksAreProofread(t *testing.T) {
	planned := 0
	for stitches := 32; stitches <= 80; stitches += 4 {
		for turn := shortrow.TurnMethodWrapAndTurn; turn <= shortrow.TurnMethodYarnOver; turn++ {
			for kind := sock.HeelKindRound; kind < sock.HeelKindWasteYarn; kind++ {
				for way := sock.DirectionCuffDown; way <= sock.DirectionToeUp; way++ {
					in := sock.HeelInput{Kind: kind, Direction: way, RoundStitches: knittest.Ptr(stitches)}
					if kind == sock.HeelKindShortRows || way == sock.DirectionToeUp {
						in.TurnMethod = turn
					}
					if out, err := sock.PlanHeel(in); err == nil && proofread(t, out.Directions(), stitches, stitch.InTheRound) {
						planned++
					}
				}
			}
			for kind := sock.ToeKindWedge; kind <= sock.ToeKindShortRows; kind++ {
				in := sock.ToeInput{Kind: kind, RoundStitches: knittest.Ptr(stitches)}
				if kind == sock.ToeKindShortRows {
					in.TurnMethod = turn
				}
				if out, err := sock.PlanToe(in); err == nil && proofread(t, out.Directions(), stitches, stitch.InTheRound) {
					planned++
				}
				in.Direction = sock.DirectionToeUp
				if out, err := sock.PlanToe(in); err == nil && proofread(t, out.Directions(), 0, stitch.InTheRound) {
					planned++
				}
			}
		}
	}
	t.Logf("%d read back whole", planned)
	if planned < 200 {
		t.Errorf("only %d", planned)
	}
}

// So are crowns, tops of mittens and thumbs.
func TestHatsAndMittensAreProofread(t *testing.T) {
	planned := 0
	for i := range ordinary {
		g := &ordinary[i]
		for shape := solid.CrownShapeFlat; shape <= solid.CrownShapeSlouchy; shape++ {
			for head := 36.0; head <= 60; head += 6 {
				if out, err := solid.PlanCrown(solid.CrownInput{Gauge: g, HeadCm: &head, Shape: shape}); err == nil &&
					proofread(t, out.Directions(), 0, stitch.InTheRound) {
					planned++
				}
			}
		}
		for cm := 13.0; cm <= 23; cm += 2.5 {
			for kind := hand.TopKindWedge; kind <= hand.TopKindShort; kind++ {
				if out, err := hand.PlanMittenTop(hand.MittenTopInput{Gauge: g, HandCm: &cm, Kind: kind}); err == nil &&
					proofread(t, out.Directions(), out.HandStitches, stitch.InTheRound) {
					planned++
				}
			}
			for kind := hand.GussetWidened; kind <= hand.GussetNone; kind++ {
				out, err := hand.PlanThumb(hand.ThumbInput{Gauge: g, HandCm: &cm, Gusset: kind})
				if err != nil {
					continue
				}
				good := true
				for n, piece := range handPieces(out.Directions()) {
					start := out.HandStitches
					if n == 2 {
						continue // the thumb takes up what the hand has put aside
					}
					good = proofread(t, piece, start, stitch.InTheRound) && good
				}
				if good {
					planned++
				}
			}
		}
	}
	t.Logf("%d read back whole", planned)
	if planned < 150 {
		t.Errorf("only %d", planned)
	}
}

// handPieces are the directions of the right hand, of the left, and of the thumb.
func handPieces(directions []string) [][]string {
	list := [][]string{nil}
	for _, d := range directions {
		if strings.HasPrefix(d, "Left hand:") || strings.HasPrefix(d, "Thumb, both hands:") {
			list = append(list, nil)
		}
		list[len(list)-1] = append(list[len(list)-1], d)
	}
	return list
}

// So are necklines with their shoulders, back and front, though stitches are put aside after a turn.
func TestNecklinesAreProofread(t *testing.T) {
	planned := 0
	for i := range ordinary {
		for shape := neck.ShapeRound; shape <= neck.ShapeBoat; shape++ {
			for method := neck.ShoulderMethodSteppedBindOff; method <= neck.ShoulderMethodShortRows; method++ {
				for centre := neck.CentreBoundOff; centre <= neck.CentreHeld; centre++ {
					for width := 38.0; width <= 50; width += 6 {
						in := neck.Input{Gauge: &ordinary[i], Shape: shape, WidthCm: &width, ShoulderMethod: method, Centre: centre}
						if method == neck.ShoulderMethodShortRows {
							in.TurnMethod = shortrow.TurnMethod(1 + planned%3)
						}
						out, err := neck.PlanNeckline(in)
						if err != nil {
							continue
						}
						good := true
						for _, piece := range pieces(out.Directions(), "Front") {
							good = proofread(t, piece, out.WidthStitches, stitch.Flat) && good
						}
						if good {
							planned++
						}
					}
				}
			}
		}
	}
	t.Logf("%d read back whole", planned)
	if planned < 100 {
		t.Errorf("only %d", planned)
	}
}
