package flat

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outlinetest"
)

// A disc has a mark for each stitch it gains, or loses when it is worked inwards, and each
// lies in the middle of its round; those of a round stand apart alike, since its changes do.
func TestMarks(t *testing.T) {
	across, hole := 24.0, 8.0
	for _, in := range []Input{
		{Form: FormDisc, AcrossCm: &across}, {Form: FormDisc, AcrossCm: &across, Direction: DirectionInwards},
		{Form: FormDisc, AcrossCm: &across, Arrangement: ArrangementWedges}, {Form: FormRing, AcrossCm: &across, HoleCm: &hole},
	} {
		in.Gauge, in.WithOutline = &gauge.Gauge{Stitches: 20, Rows: 28}, true
		out, err := PlanFlatShape(in)
		if err != nil {
			t.Fatal(err)
		}
		outlinetest.CheckFrame(t, out.Outline)
		line := out.Outline.Lines[len(out.Outline.Lines)-1]
		name, gained := "increases", out.EndStitches-out.StartStitches
		if gained < 0 {
			name, gained = "decreases", -gained
		}
		if line.Name != name || len(line.Points) != gained {
			t.Errorf("%+v: %d %s for %d stitches", in, len(line.Points), line.Name, gained)
		}
		i := 0
		for _, r := range out.Rows {
			n := r.Instruction.EndStitches - r.Instruction.StartStitches
			up := float64(r.RowNumber) - 0.5
			if n < 0 {
				n, up = -n, float64(out.TotalRows)-up
			}
			want := up * 10 / 28
			if in.Form == FormRing {
				want += out.WidthCm/2 - float64(out.TotalRows)*10/28
			}
			for k := range n {
				p, q := line.Points[i+k], line.Points[i+(k+1)%n]
				turn := math.Mod(math.Atan2(q.X, -q.Y)-math.Atan2(p.X, -p.Y)+4*math.Pi, 2*math.Pi)
				if math.Abs(math.Hypot(p.X, p.Y)-want) > 1e-9 || math.Abs(turn-2*math.Pi/float64(n)) > 1e-9 {
					t.Fatalf("%+v: round %d, mark %d: %v cm out, want %v; %v to the next", in, r.RowNumber, k, math.Hypot(p.X, p.Y), want, turn)
				}
			}
			i += n
		}
	}
}

// A polygon has a line of increases to each corner, a star to each point and each valley;
// more marks than could be told apart are left out.
func TestLinesOfChanges(t *testing.T) {
	side, across, valley, wide := 12.0, 24.0, 16.0, 300.0
	six, five := 6, 5
	for _, c := range []struct {
		in    Input
		lines int
	}{
		{Input{Form: FormPolygon, SideCm: &side, CornerCount: &six}, 1 + 6},
		{Input{Form: FormStar, AcrossCm: &across, ValleyCm: &valley, CornerCount: &five}, 1 + 10},
		{Input{Form: FormDisc, AcrossCm: &wide, Arrangement: ArrangementDoubling}, 1},
		{Input{Form: FormMitredSquare, SideCm: &side}, 2},
	} {
		c.in.Gauge, c.in.WithOutline = &gauge.Gauge{Stitches: 20, Rows: 28}, true
		out, err := PlanFlatShape(c.in)
		if err != nil {
			t.Fatal(err)
		}
		outlinetest.CheckFrame(t, out.Outline)
		marked := 0
		for _, line := range out.Outline.Lines {
			if line.Name == "line of increases" {
				marked++
				if line.Points[0].X != 0 || line.Points[0].Y != 0 || len(line.Points) != 2 {
					t.Errorf("%+v", line)
				}
			}
		}
		if len(out.Outline.Lines) != c.lines {
			t.Errorf("%+v: %d lines, %d of increases", c.in, len(out.Outline.Lines), marked)
		}
	}
}
