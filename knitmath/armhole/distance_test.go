package armhole

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Pieces of the sweep are knit, and the corners of their edges above the underarm measured on the
// fabric, as the crow flies, against the curve by its closed form: a quarter of an ellipse of an
// armhole, of a cap two arcs of a circle and a line that goes on from both. Over how many rows and how
// steep is not in the answer: of all there are the nearest one counts. No corner lies farther off than
// the answer says.
func TestPiecesLieNearTheirCurves(t *testing.T) {
	measured, armholes, caps, rows := 0, 0.0, 0.0, 0.0
	for i, in := range questions() {
		if i%knittest.Sweep(12, 12) != 0 {
			continue
		}
		out, err := Plan(in)
		if err != nil {
			continue
		}
		measured++
		st, rw := 10/in.Gauge.Stitches, 10/in.Gauge.Rows
		for _, p := range []Piece{out.Back, out.Cap} {
			top, curves := 0, ellipses(p)
			if p.EndStitches == out.Cap.EndStitches && p.StartStitches == out.Cap.StartStitches {
				top, curves = p.EndStitches, bells(p, st, rw)
			}
			_, f := knitPiece(t, in, p, top)
			off := math.Inf(1)
			for _, curve := range curves {
				off = min(off, farthestOf(f, p, curve, st, rw))
			}
			if off > p.GreatestDepartureStitches+0.1 {
				t.Fatalf("%+v: %v stitches off, %v said", in, off, p.GreatestDepartureStitches)
			}
			if rows = max(rows, off*st/rw); top > 0 {
				caps = max(caps, off)
			} else {
				armholes = max(armholes, off)
			}
		}
	}
	t.Logf("%d measured: armholes at most %.2f stitches from their curve, caps %.2f; at most %.2f rows", measured, armholes, caps, rows)
	if measured < knittest.Sweep(120, 20) || armholes > 3 || caps > 3 || rows > 4.5 {
		t.Errorf("%d measured, %v and %v stitches, %v rows", measured, armholes, caps, rows)
	}
}

// farthestOf is how far the corners of both edges above the underarm lie from a curve, in stitches.
func farthestOf(f *stitch.Fabric, p Piece, curve []knittest.Corner, st, rw float64) float64 {
	off := 0.0
	for i, hand := range []stitch.Hand{stitch.RightHand, stitch.LeftHand} {
		for _, c := range knittest.Corners(f.Selvedge(hand, 1+i, p.HeightRows)) {
			if c.Up += float64(i); c.Across >= float64(p.Steps[0].Stitches) && c.Up >= underarmRows {
				off = max(off, knittest.DistanceCm(c, curve, st, rw)/st)
			}
		}
	}
	return off
}

// ellipses are those that an armhole may follow, one for every number of rows, upright above.
func ellipses(p Piece) [][]knittest.Corner {
	foot := float64(p.Steps[0].Stitches)
	wide := float64(p.StartStitches-p.EndStitches)/2 - foot
	var all [][]knittest.Corner
	for rows := 4; rows <= p.HeightRows; rows++ {
		var line []knittest.Corner
		for k := range 41 {
			sin, cos := math.Sincos(math.Pi / 2 * float64(k) / 40)
			line = append(line, knittest.Corner{Across: foot + wide*sin, Up: underarmRows + float64(rows-underarmRows)*(1-cos)})
		}
		all = append(all, append(line, knittest.Corner{Across: foot + wide, Up: float64(p.HeightRows)}))
	}
	return all
}

// bells are those that a cap may follow: level for a part of the width, then up by arcs that bend by
// an angle, whose radius is such that the line between them goes on from both.
func bells(p Piece, st, rw float64) [][]knittest.Corner {
	foot := float64(p.Steps[0].Stitches)
	wide, high := (float64(p.StartStitches-p.EndStitches)/2-foot)*st, float64(p.HeightRows-underarmRows)*rw
	var all [][]knittest.Corner
	for share := 0.0; share <= 0.15; share += 0.025 {
		level := share * wide
		least := math.Atan2(high, wide-2*level)
		for k := range 30 {
			angle := least + (math.Pi/2-least)*float64(k)/30
			// The line between the arcs falls short of the angle where the radius is too small.
			low, large := 0.0, min(wide/2-level, high/2)/math.Sin(angle)
			for range 40 {
				radius := (low + large) / 2
				across, up := wide-2*level-2*radius*math.Sin(angle), high-2*radius*(1-math.Cos(angle))
				if math.Atan2(up, across) < angle {
					low = radius
				} else {
					large = radius
				}
			}
			var first, second []knittest.Corner
			for n := range 13 {
				sin, cos := math.Sincos(angle * float64(n) / 12)
				x, y := level+low*sin, low*(1-cos)
				first = append(first, knittest.Corner{Across: foot + x/st, Up: underarmRows + y/rw})
				second = append([]knittest.Corner{{Across: foot + (wide-x)/st, Up: underarmRows + (high-y)/rw}}, second...)
			}
			line := append([]knittest.Corner{{Across: foot, Up: underarmRows}}, append(first, second...)...)
			all = append(all, append(line, knittest.Corner{Across: foot + wide/st, Up: float64(p.HeightRows)}))
		}
	}
	return all
}
