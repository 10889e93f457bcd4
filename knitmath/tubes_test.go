package knitmath_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/hand"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// tubesRead checks that directions in the round are read without a question, that every count
// in them agrees, and that they come to so many stitches. Where start is 0 they cast on.
func tubesRead(t *testing.T, at string, directions []string, start, end int) {
	t.Helper()
	for i, d := range directions {
		if strings.HasPrefix(d, "Cut the yarn") { // what is left is drawn up or grafted
			directions = directions[:i]
			break
		}
	}
	q := pattern.CheckInstructionsInput{Text: strings.Join(directions, "\n"), Construction: stitch.InTheRound}
	if start > 0 {
		q.StartStitches = []int{start}
	}
	checked, err := pattern.CheckInstructions(t.Context(), q)
	if err != nil || !checked.Agrees || checked.EndStitches[0] != end {
		var found []string
		for _, f := range checked.Findings {
			if f.Kind != pattern.KindReading {
				found = append(found, fmt.Sprintf("%d %s %q %s", f.LineNumber, f.Reason, f.Text, f.Description))
			}
		}
		t.Fatalf("%s: %v, %v, want %d\n%s\n%s", at, err, checked.EndStitches, end, q.Text, strings.Join(found, "\n"))
	}
}

// What a crown, a toe, a top of a mitten and a heel say is read, and comes to the answer's
// counts.
func TestTubesAreReadBack(t *testing.T) {
	g := &gauge.Gauge{Stitches: 22, Rows: 30}
	read := 0
	for n := 40; n <= 120; n += knittest.Sweep(3, 13) {
		for kind := range 6 {
			at := fmt.Sprintf("%d stitches, kind %d", n, kind)
			crown := solid.CrownInput{Gauge: g, HatStitches: &n, Shape: solid.CrownShape(kind % 4), Uneven: solid.Uneven(kind % 4)}
			if o, err := solid.PlanCrown(crown); err == nil {
				read++
				tubesRead(t, "crown of "+at, o.Directions(), 0, o.EndStitches)
			}
			top := hand.MittenTopInput{Gauge: g, HandStitches: &n, Kind: hand.TopKind(kind % 5), LengthRounds: new(70)}
			if o, err := hand.PlanMittenTop(top); err == nil {
				read++
				tubesRead(t, "top of "+at, o.Directions(), n, o.EndStitches)
			}
			toe := sock.ToeInput{RoundStitches: &n, Kind: sock.ToeKind(kind % 5)}
			if toe.Kind == sock.ToeKindShortRows {
				toe.TurnMethod = shortrow.TurnMethod(n % 3)
			}
			if o, err := sock.PlanToe(toe); err == nil {
				read++
				tubesRead(t, "toe of "+at, o.Directions(), n, o.TipStitches)
			}
			toe.Direction = sock.DirectionToeUp
			if o, err := sock.PlanToe(toe); err == nil {
				read++
				tubesRead(t, "toe from its tip of "+at, o.Directions(), 0, n)
			}
		}
	}
	if read < knittest.Sweep(350, 80) {
		t.Errorf("%d read", read)
	}
}

// What a heel says is read, in both directions, and comes back to the round. A heel knit in
// afterwards is two tubes: the round that it is knit in with, and its closing.
func TestHeelsAreReadBack(t *testing.T) {
	read := 0
	for n := 24; n <= 90; n += knittest.Sweep(3, 11) {
		for kind := sock.HeelKindRound; kind <= sock.HeelKindShortRows; kind++ {
			for direction := sock.DirectionCuffDown; direction <= sock.DirectionToeUp; direction++ {
				for every := 1; every <= 3; every++ {
					in := sock.HeelInput{Kind: kind, Direction: direction, RoundStitches: &n, HeelStitches: new(n/2 + n%2)}
					if kind < sock.HeelKindShortRows {
						in.GussetEveryRounds = &every
					} else {
						in.TurnMethod = shortrow.TurnMethod(every - 1)
					}
					if kind == sock.HeelKindRound && direction == sock.DirectionToeUp {
						in.TurnMethod = shortrow.TurnMethod((every + n) % 4)
					}
					if kind < sock.HeelKindShortRows && direction == sock.DirectionCuffDown {
						in.SuccessiveRounds = &every
					}
					o, err := sock.PlanHeel(in)
					if err != nil {
						continue
					}
					read++
					tubesRead(t, fmt.Sprintf("heel of %d, kind %d, direction %d, every %d", n, kind, direction, every), o.Directions(), n, n)
				}
			}
		}
	}
	if read < knittest.Sweep(380, 100) {
		t.Errorf("%d read", read)
	}
}

// The closing of a heel knit in afterwards is read, from the stitches around its opening to those
// that are grafted.
func TestHeelsKnitInAfterwardsAreReadBack(t *testing.T) {
	for n := 24; n <= 90; n += knittest.Sweep(3, 11) {
		for direction := sock.DirectionCuffDown; direction <= sock.DirectionToeUp; direction++ {
			o, err := sock.PlanHeel(sock.HeelInput{Kind: sock.HeelKindWasteYarn, Direction: direction, RoundStitches: &n,
				CornerStitches: new(n % 3)})
			if err != nil {
				t.Fatal(err)
			}
			d := o.Directions()
			first := slices.IndexFunc(d, func(line string) bool { return strings.HasPrefix(line, "Round 1:") })
			tubesRead(t, fmt.Sprintf("opening of %d, direction %d", n, direction), d[first:], *o.ClosingStitches, *o.EndStitches)
		}
	}
}

// What a thumb says is read: each hand from its stitches, and the thumb from those on hold.
func TestThumbsAreReadBack(t *testing.T) {
	for n := 24; n <= 80; n += knittest.Sweep(3, 11) {
		for gusset := hand.GussetWidened; gusset <= hand.GussetNone; gusset++ {
			o, err := hand.PlanThumb(hand.ThumbInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HandStitches: &n, Gusset: gusset})
			if err != nil {
				t.Fatal(err)
			}
			var parts [3][]string
			part := 0
			for _, d := range o.Directions()[1:] {
				if strings.HasPrefix(d, "Left hand:") || strings.HasPrefix(d, "Thumb, both hands:") {
					part++
				}
				if !strings.HasSuffix(d, "and joins.") { // the stitches on hold are the start
					parts[part] = append(parts[part], d)
				}
			}
			for i, start := range []int{n, n, o.HoldStitches} {
				end := o.AfterStitches
				if i == 2 {
					end = o.EndStitches
				}
				tubesRead(t, fmt.Sprintf("thumb of %d, part %d", n, i), parts[i], start, end)
			}
		}
	}
}
