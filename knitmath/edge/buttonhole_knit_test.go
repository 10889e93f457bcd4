package edge

import (
	"fmt"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// Every small band is knit from its pick-up or cast-on to its last row. The holes
// are where they are said to be: the stitches cast on in a row are the only ones
// with nothing under them when it has been worked.
func TestButtonholesAreKnit(t *testing.T) {
	planned, refused := 0, 0
	for _, in := range smallBands() {
		out, err := PlanButtonholes(in)
		if err != nil {
			refused++
			checkButtonholeRefusal(t, in, err)
			continue
		}
		planned++
		checkButtonholes(t, in, out)
	}
	if planned < 4000 || refused < 1000 {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
}

// smallBands are bands of 3 to 26 places, across and upward.
func smallBands() []ButtonholesInput {
	var bands []ButtonholesInput
	for length := 3; length <= 26; length++ {
		for holes := 1; holes <= 5; holes++ {
			for width := 1; width <= 3; width++ {
				across := ButtonholesInput{Direction: BandDirectionAlongStitches, BandStitches: length, BandRows: 3 + length%6,
					HoleCount: holes, HoleStitches: &width}
				bands = append(bands, withEnds(across)...)
				for rows := shaping.RowChoiceUnspecified; rows <= shaping.RowChoiceAny; rows++ {
					upward := across
					upward.Direction, upward.BandStitches, upward.BandRows = BandDirectionAlongRows, width+2+length%2, length
					upward.RowChoice = rows
					bands = append(bands, withEnds(upward)...)
				}
			}
		}
	}
	return bands
}

// withEnds asks for up to 4 places before the first hole, and for up to 3 after
// the last. Without the first only a single hole is asked for.
func withEnds(in ButtonholesInput) []ButtonholesInput {
	var bands []ButtonholesInput
	for first := range 5 {
		for last := range 4 {
			if first > 0 || in.HoleCount == 1 {
				in.BeforeFirstPlaces, in.AfterLastPlaces = asked(first), asked(last)
				bands = append(bands, in)
			}
		}
	}
	return bands
}

// asked is a distance asked for; 0 is none.
func asked(n int) *int {
	if n == 0 {
		return nil
	}
	return &n
}

func describeBand(in ButtonholesInput) string {
	return fmt.Sprintf("direction %d, %d stitches, %d rows, %d holes of %d, first %d, last %d, hole row %d, rows %d",
		in.Direction, in.BandStitches, in.BandRows, in.HoleCount, fault.Or(in.HoleStitches, 0), fault.Or(in.BeforeFirstPlaces, 0),
		fault.Or(in.AfterLastPlaces, 0), fault.Or(in.HoleRowNumber, 0), in.RowChoice)
}

// onNeedle is a band before its first row: picked up along an edge, or cast on.
func onNeedle(t *testing.T, in ButtonholesInput) *stitch.Machine {
	t.Helper()
	if in.Direction == BandDirectionAlongRows {
		return knittest.CastOn(t, in.BandStitches, false)
	}
	m := stitch.NewMachine(stitch.Flat)
	if err := m.LoadEdge(in.BandStitches); err != nil {
		t.Fatal(err)
	}
	if err := m.Work(stitch.RowOf(stitch.ToEnd(stitch.PickUp))); err != nil {
		t.Fatal(err)
	}
	return m
}

// checkButtonholes knits the band and compares it with the answer.
func checkButtonholes(t *testing.T, in ButtonholesInput, out Buttonholes) {
	t.Helper()
	at := describeBand(in)
	m := onNeedle(t, in)
	next := 0
	for row := 1; row <= in.BandRows; row++ {
		if next < len(out.Rows) && out.Rows[next].RowNumber == row {
			workBandRow(t, at, m, out.Rows[next])
			checkHoles(t, at, m, row, out)
			next++
			continue
		}
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatalf("%s: row %d: %v", at, row, err)
		}
	}
	if next != len(out.Rows) || m.StitchCount() != in.BandStitches || len(out.Holes) != in.HoleCount ||
		len(m.BoundOff()) != in.HoleCount*out.HoleStitches {
		t.Fatalf("%s: ends with %d stitches, %d bound off", at, m.StitchCount(), len(m.BoundOff()))
	}
	checkGaps(t, at, in, out)
	checkMirror(t, at, out)
	checkMoves(t, at, in, out)
}

// workBandRow works a row that makes or closes holes.
func workBandRow(t *testing.T, at string, m *stitch.Machine, r BandRow) {
	t.Helper()
	if (m.Side() == stitch.WrongSide) != (r.Side == stitch.WrongSide) || m.StitchCount() != r.Instruction.StartStitches {
		t.Fatalf("%s: row %d: %v, %d stitches", at, r.RowNumber, m.Side(), m.StitchCount())
	}
	if err := m.Work(r.Instruction.Row); err != nil {
		t.Fatalf("%s: row %d, %q: %v", at, r.RowNumber, r.Instruction.Row.Text(), err)
	}
	if m.StitchCount() != r.Instruction.EndStitches {
		t.Fatalf("%s: row %d leaves %d", at, r.RowNumber, m.StitchCount())
	}
}

// checkHoles compares the stitches just cast on with the holes said.
func checkHoles(t *testing.T, at string, m *stitch.Machine, row int, out Buttonholes) {
	t.Helper()
	cast := map[int]bool{}
	for _, h := range out.Holes {
		if h.CastOnRowNumber == row {
			for s := h.FirstStitchNumber; s <= h.LastStitchNumber; s++ {
				cast[s] = true
			}
		}
	}
	if len(cast) == 0 {
		return
	}
	for i, h := range m.Heights() {
		if (h == 0) != cast[i+1] {
			t.Fatalf("%s: row %d: heights %v, holes %+v", at, row, m.Heights(), out.Holes)
		}
	}
}

// bandPlaces is how many places a band has, how many of them a hole takes, and how
// far it is from one that may begin a hole to the next.
func bandPlaces(in ButtonholesInput, width int) (length, places, step int) {
	switch {
	case in.Direction != BandDirectionAlongRows:
		return in.BandStitches, width, 1
	case in.RowChoice == shaping.RowChoiceAny:
		return in.BandRows, 2, 1
	}
	return in.BandRows, 2, 2
}

// checkGaps: ends, holes and gaps fill the band, and the gaps differ by a step.
func checkGaps(t *testing.T, at string, in ButtonholesInput, out Buttonholes) {
	t.Helper()
	length, places, step := bandPlaces(in, out.HoleStitches)
	sum, low, high := out.BeforeFirstPlaces+out.AfterLastPlaces+in.HoleCount*places, 1<<30, 0
	for _, g := range out.GapPlaces {
		sum += g
		low, high = min(low, g), max(high, g)
	}
	if sum != length || len(out.GapPlaces) != in.HoleCount-1 || len(out.GapPlaces) > 0 && (low < 1 || high-low > step) {
		t.Fatalf("%s: %d, gaps %v, %d", at, out.BeforeFirstPlaces, out.GapPlaces, out.AfterLastPlaces)
	}
}

func noted(out Buttonholes) map[string]bool {
	reasons := map[string]bool{}
	for _, n := range out.Notices {
		reasons[string(n.Reason)] = true
	}
	return reasons
}

// checkMirror: gaps that do not read the same from both ends are told of, and
// could not do so.
func checkMirror(t *testing.T, at string, out Buttonholes) {
	t.Helper()
	mirrored, larger := true, 0
	for i, g := range out.GapPlaces {
		mirrored = mirrored && g == out.GapPlaces[len(out.GapPlaces)-1-i]
		if g > slices.Min(out.GapPlaces) {
			larger++
		}
	}
	if noted(out)["NOT_MIRRORED"] == mirrored {
		t.Fatalf("%s: gaps %v, notices %v", at, out.GapPlaces, out.Notices)
	}
	// An odd number of larger gaps among an even number: there is no palindrome.
	if !mirrored && (len(out.GapPlaces)%2 != 0 || larger%2 == 0) {
		t.Fatalf("%s: gaps %v could read the same both ways", at, out.GapPlaces)
	}
}

// checkMoves compares the ends with those asked for: they move only where not
// every row binds off, by one, and it is told.
func checkMoves(t *testing.T, at string, in ButtonholesInput, out Buttonholes) {
	t.Helper()
	_, _, step := bandPlaces(in, out.HoleStitches)
	moved := 0
	if in.BeforeFirstPlaces != nil {
		moved = measure.Abs(out.BeforeFirstPlaces - *in.BeforeFirstPlaces)
	}
	switch {
	case in.AfterLastPlaces != nil:
		moved = max(moved, measure.Abs(out.AfterLastPlaces-*in.AfterLastPlaces))
	case in.HoleCount > 1:
		moved = max(moved, measure.Abs(out.AfterLastPlaces-*in.BeforeFirstPlaces))
	}
	if moved > 0 != noted(out)["MOVED_TO_RIGHT_SIDE"] || moved > 1 || moved > 0 && step == 1 {
		t.Fatalf("%s: %d and %d, notices %v", at, out.BeforeFirstPlaces, out.AfterLastPlaces, out.Notices)
	}
	if step == 2 && out.BeforeFirstPlaces%2 != 0 {
		t.Fatalf("%s: bound off on the wrong side", at)
	}
}
