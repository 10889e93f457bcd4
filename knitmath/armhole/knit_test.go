package armhole

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// questions are bodies of babies to the widest, at gauges from fine to thick, by
// measures and by counts, with caps of every rule.
func questions() []Input {
	var list []Input
	for _, g := range [][2]float64{{22, 30}, {18, 24}, {28, 36}, {14, 20}, {24, 40}} {
		for chest := 50.0; chest <= 146; chest += knittestStep() {
			for i, share := range []float64{0.74, 0.8, 0.86} {
				for k, arm := range []float64{0.28, 0.31, 0.34} {
					in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, ChestCm: &chest, AcrossBackCm: new(chest / 2 * share),
						ArmholeDepthCm: new(7 + chest*0.13), UpperArmCm: new(chest * arm), CapHeightRule: CapHeightRule((i + k) % 5)}
					switch (i*3 + k + int(chest)) % 4 {
					case 1:
						in.FrontStitches = new(int(chest*g[0]/20) + 9)
					case 2:
						in.CapExcessPercent, in.LargestGroupStitches = new(1.0), new(1)
					case 3:
						in.StitchRule, in.SleeveRule = &gauge.CountRule{Multiple: new(4), Remainder: new(2)}, &gauge.CountRule{Multiple: new(3)}
						in.ToleranceStitches, in.WithOutline = new(0.0), true
					}
					list = append(list, in)
				}
			}
		}
	}
	return list
}

func knittestStep() float64 { return float64(knittest.Sweep(2, 12)) }

// Every piece of every plan is knit, and its fabric measured: the counts are those of the
// rows, the two edges are as long as is said, and so is the cap with its top.
func TestPiecesAreKnit(t *testing.T) {
	planned, refused, stitches, rows := 0, 0, 0.0, 0.0
	for _, in := range questions() {
		out, err := Plan(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			refused++
			continue
		}
		planned++
		far := max(out.Back.GreatestDepartureStitches, out.Front.GreatestDepartureStitches, out.Cap.GreatestDepartureStitches)
		stitches, rows = max(stitches, far), max(rows, far*in.Gauge.Rows/in.Gauge.Stitches)
		knittest.CheckFinite(t, out)
		around := checkPiece(t, in, out.Back, out.UnderarmStitches, 0) + checkPiece(t, in, out.Front, out.UnderarmStitches, 0)
		long := 2 * checkPiece(t, in, out.Cap, out.UnderarmStitches, out.Cap.EndStitches)
		checkSteady(t, out.sew.top)
		if s := out.Cap.Steps; len(s) > 1 && s[1].BoundOff && s[1].Stitches > s[0].Stitches {
			t.Fatalf("%+v: a cap binds off %d and then %d", in, s[0].Stitches, s[1].Stitches)
		}
		knittest.Near(t, "armhole", out.ArmholeEdgeCm, around, 1e-9)
		knittest.Near(t, "cap", out.CapEdgeCm, long, 1e-9)
		if more := (long/around - 1) * 100; math.Abs(more-out.CapExcessPercent) > 1e-6 || more < 0 || more > 5 {
			t.Fatalf("%+v: %v %% longer, %v said", in, more, out.CapExcessPercent)
		}
		if in.CapHeightRule > CapHeightRuleFree {
			off := float64(out.Cap.HeightRows-out.set.capRows) * 10 / in.Gauge.Rows
			if math.Abs(off) > 1.27+5/in.Gauge.Rows || off != 0 != hasNotice(out, CapMoved) {
				t.Fatalf("a cap of %d rows, the rule gives %d: %v", out.Cap.HeightRows, out.set.capRows, out.Notices)
			}
		}
	}
	t.Logf("%d planned, %d refused; at most %.1f stitches or %.1f rows from the curve", planned, refused, stitches, rows)
	if refused > planned/6 || planned < knittest.Sweep(1500, 250) {
		t.Errorf("%d planned, %d refused", planned, refused)
	}
}

func hasNotice(out Armhole, reason report.Reason) bool {
	return slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == reason })
}

// checkPiece knits a piece and returns the mean length of its edges, measured on the
// fabric.
func checkPiece(t *testing.T, in Input, p Piece, underarm, top int) float64 {
	t.Helper()
	m, f := knitPiece(t, in, p, top)
	checkUnderarm(t, in, p, underarm, top)
	if want := p.EndStitches - top; m.StitchCount() != want {
		t.Fatalf("%+v: %d stitches, want %d", in, m.StitchCount(), want)
	}
	st, rw := 10/in.Gauge.Stitches, 10/in.Gauge.Rows
	right, left := f.Selvedge(stitch.RightHand, 1, p.HeightRows), f.Selvedge(stitch.LeftHand, 2, p.HeightRows)
	knittest.Near(t, "edge along its steps", p.SteppedEdgeCm, (right.LengthCm(st, rw)+left.LengthCm(st, rw))/2, 1e-9)
	over := float64(top) / 2 * st
	sewn := (right.SewnCm(st, rw, over) + left.SewnCm(st, rw, over)) / 2
	knittest.Near(t, "edge", p.EdgeCm, sewn, 1e-9)
	return sewn
}

// knitPiece knits a piece; every row fits where it stands.
func knitPiece(t *testing.T, in Input, p Piece, top int) (*stitch.Machine, *stitch.Fabric) {
	t.Helper()
	m := stitch.NewMachine(stitch.Flat)
	f, err := m.Record()
	if err != nil {
		t.Fatal(err)
	}
	if err := m.CastOn(p.StartStitches); err != nil {
		t.Fatal(err)
	}
	next, last := 0, p.HeightRows
	if top > 0 {
		last++
	}
	for row := 1; row <= last; row++ {
		work := knittest.PlainRow(m)
		if next < len(p.Rows) && p.Rows[next].RowNumber == row {
			r := p.Rows[next]
			if r.Side != m.Side() || r.Instruction.StartStitches != m.StitchCount() {
				t.Fatalf("%+v: row %d: %v, %d stitches", in, row, m.Side(), m.StitchCount())
			}
			work = r.Instruction.Row
			next++
		}
		if err := m.Work(work); err != nil {
			t.Fatalf("%+v: row %d, %q: %v", in, row, work.Text(), err)
		}
		if next > 0 && p.Rows[next-1].RowNumber == row && p.Rows[next-1].Instruction.EndStitches != m.StitchCount() {
			t.Fatalf("%+v: row %d leaves %d", in, row, m.StitchCount())
		}
	}
	if next != len(p.Rows) {
		t.Fatalf("%+v: %d rows of %d", in, next, len(p.Rows))
	}
	return m, f
}

// checkSteady: no stretch of even rows within a cap stands alone between shorter ones, and
// the edge, once it leans more towards the top, grows no steeper again.
func checkSteady(t *testing.T, p shaped) {
	t.Helper()
	var gaps []int
	for i, s := range p.plan.Right[2:] {
		gaps = append(gaps, s.RowNumber-p.plan.Right[i+1].RowNumber)
	}
	leans := false
	for i := 1; i < len(gaps); i++ {
		if alone := i+1 < len(gaps) && gaps[i] > gaps[i-1] && gaps[i] > gaps[i+1] && gaps[i] > 2; alone {
			t.Fatalf("%d to %d stitches, rows from step to step %v", p.start, p.top, gaps)
		}
		if leans && gaps[i] > gaps[i-1] {
			t.Fatalf("%d to %d stitches, rows from step to step %v", p.start, p.top, gaps)
		}
		leans = leans || gaps[i] < gaps[i-1]
	}
}

// checkUnderarm: the first two rows bind off as many at every edge, each where it begins,
// and no later one binds off more than a cap's inch or the underarm.
func checkUnderarm(t *testing.T, in Input, p Piece, underarm, steady int) {
	t.Helper()
	for i := range 2 {
		r := p.Rows[i]
		if first := r.Instruction.Row.Steps[0]; r.RowNumber != i+1 || first.Op != stitch.BindOff || first.Count != underarm {
			t.Fatalf("%+v: row %d begins with %+v, not %d bound off", in, r.RowNumber, first, underarm)
		}
	}
	// A cap may lie farther off, so that its slope has no kink.
	most := p.LeastDepartureStitches + curve.DefaultTolerance + 1e-9
	if steady > 0 {
		most += 2
	}
	if p.GreatestDepartureStitches > most {
		t.Fatalf("%+v: %v off, the nearest %v", in, p.GreatestDepartureStitches, p.LeastDepartureStitches)
	}
}

// Every measure that a refusal names is moved by as much as it says, and then does.
func TestRemediesDo(t *testing.T) {
	tried := 0
	for _, in := range questions() {
		for _, arm := range []float64{0.45, 0.2} {
			in.UpperArmCm = new(*in.ChestCm * arm)
			if arm < 0.3 && in.CapHeightRule == CapHeightRuleFree {
				in.CapHeightRule, in.CapHeightRows = 0, new(10)
			}
			s, ok := settledOf(in)
			if !ok {
				continue
			}
			if _, ok := s.solve(); ok {
				continue
			}
			for _, mv := range s.moves() {
				moved, ok := s.moved(mv)
				if !ok {
					continue
				}
				tried++
				again := in
				switch {
				case moved.sleeve != s.sleeve:
					again.UpperArmCm, again.SleeveRule, again.SleeveStitches = nil, nil, &moved.sleeve
				case moved.depth != s.depth:
					again.ArmholeDepthCm, again.ArmholeDepthRows = nil, &moved.depth
				default:
					again.CapHeightCm, again.CapHeightRows = nil, &moved.capRows
				}
				if _, err := Plan(again); err != nil {
					t.Fatalf("%+v: %s: %v", in, mv.words(moved, s), err)
				}
			}
		}
		if tried > knittest.Sweep(300, 30) {
			break
		}
	}
	if tried < 30 {
		t.Errorf("%d remedies tried", tried)
	}
}
