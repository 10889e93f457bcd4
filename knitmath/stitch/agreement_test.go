package stitch

import (
	"math/rand/v2"
	"slices"
	"testing"
)

// byHandOnly are the reasons that only the machine can know.
var byHandOnly = []Reason{
	ReasonDouble, ReasonNotDouble, ReasonWrapped, ReasonNotWrapped, ReasonYarnOver,
	ReasonNotAtTurn, ReasonNoStrand, ReasonStrandUsed, ReasonNoNext, ReasonEdge, ReasonNotEdge, ReasonGap, ReasonOnNeedle,
	ReasonNotPossible,
}

// agree works the row and compares with what Count and Expand say of it. It
// reports whether the row could be worked.
func agree(t *testing.T, m *Machine, r Row) bool {
	t.Helper()
	on, behind := m.ToWork(), m.StitchCount()-m.ToWork()
	takes, leaves, countErr := r.Count(on)
	workErr := m.Work(r)
	switch {
	case countErr != nil && workErr == nil:
		t.Fatalf("%q on %d: worked, but %v", r.Text(), on, countErr)
	case countErr == nil && workErr != nil:
		reason := reasonOf(workErr)
		if !slices.Contains(byHandOnly, reason) && (reason != ReasonTooLarge || behind == 0) {
			t.Fatalf("%q on %d: counted, but %v", r.Text(), on, workErr)
		}
	case countErr == nil:
		if got, want := m.StitchCount(), behind+on-takes+leaves; got != want {
			t.Fatalf("%q on %d: %d stitches, counted %d", r.Text(), on, got, want)
		}
		// What the turn leaves unworked is now behind; the rest is in front.
		if now := m.StitchCount() - m.ToWork(); r.EndsRow() && now != on-takes {
			t.Fatalf("%q on %d: %d stitches behind, counted %d", r.Text(), on, now, on-takes)
		}
	}
	checkExpanded(t, r, on, takes, leaves, countErr)
	return workErr == nil
}

// checkExpanded compares a row written out with what Count says of it.
func checkExpanded(t *testing.T, r Row, on, takes, leaves int, countErr error) {
	t.Helper()
	runs, err := Expand(r, on)
	if reasonOf(err) != reasonOf(countErr) {
		t.Fatalf("%q on %d: %v, but expanded with %v", r.Text(), on, countErr, err)
	}
	took, left := 0, 0
	for i, run := range runs {
		took += run.Count * run.Op.Takes()
		left += run.Count * run.Op.Leaves()
		if i > 0 && runs[i-1].Op == run.Op {
			t.Fatalf("%q on %d: neighbours not joined: %v", r.Text(), on, runs)
		}
	}
	if err == nil && (took != takes || left != leaves) {
		t.Fatalf("%q on %d: expanded to %d, %d, counted %d, %d", r.Text(), on, took, left, takes, leaves)
	}
}

// TestOpsAgreeWithMachine: what the hands do is what the table says.
func TestOpsAgreeWithMachine(t *testing.T) {
	for _, op := range Ops() {
		m, _ := knit(t, Flat, 6, RowOf(Do(Knit, 4), Do(Turn, 1)))
		r := RowOf(Do(op, 1), Do(Turn, 1))
		switch op { // what has to come before
		case KnitDouble, PurlDouble:
			must(t, m.Work(RowOf(Do(MakeDouble, 1), Do(Turn, 1))))
		case KnitWrapped, PurlWrapped:
			must(t, m.Work(RowOf(Do(WrapTurn, 1))))
			must(t, m.Work(RowOf(Do(Turn, 1)))) // back to the wrapped stitch
		case BindOff: // the next is on the right needle already
			r = RowOf(Do(op, 1), Do(Slip, 1), Do(Turn, 1))
		case Turn, WrapTurn:
			r = RowOf(Do(op, 1))
		case PickUp, PickUpTwo, SkipRow:
			m, r = edge(t, 1), RowOf(Do(op, 1))
		}
		before := m.StitchCount()
		if !agree(t, m, r) {
			t.Errorf("%s: %v", op, m.Work(r))
		}
		if got := m.StitchCount() - before; got != op.Net() {
			t.Errorf("%s: %+d stitches, want %+d", op, got, op.Net())
		}
	}
}

// sweep is how far a sweep goes: not all the way in a short run, which is for
// mutants, hundreds of which are tried one after the other.
func sweep(full, short int) int {
	if testing.Short() {
		return short
	}
	return full
}

// TestAllSmallRows works every row of up to five operations on up to four
// stitches.
func TestAllSmallRows(t *testing.T) {
	ops := []Op{Knit, Slip, K2tog, CDD, KFB, YO, M1L, BindOff, CastOn, Turn}
	could, rows, longest := 0, 0, sweep(5, 4)
	for style := Flat; style <= InTheRound; style++ {
		for n := range 5 {
			var steps []Step
			var walk func()
			walk = func() {
				m := NewMachine(style)
				_ = m.CastOn(n) // none to cast on is a case too
				rows++
				if agree(t, m, Row{steps}) {
					could++
				}
				if len(steps) == longest {
					return
				}
				for _, op := range ops {
					steps = append(steps, Do(op, 1))
					walk()
					steps = steps[:len(steps)-1]
				}
			}
			walk()
		}
	}
	t.Logf("%d rows, %d can be worked", rows, could)
}

// randomStep returns a step for about the given number of stitches.
func randomStep(rng *rand.Rand, stitches, depth int) Step {
	switch k := rng.IntN(10); {
	case k == 0 && depth == 0:
		return ToLast(Op(1+rng.IntN(int(opEnd)-1)), rng.IntN(4))
	case k < 4 && depth < MaxDepth:
		g := make([]Step, 1+rng.IntN(3))
		for i := range g {
			g[i] = randomStep(rng, stitches/4, depth+1)
		}
		return Repeat(1+rng.IntN(4), g...)
	}
	op := Op(1 + rng.IntN(int(Turn)-1))
	if rng.IntN(8) == 0 {
		op = Op(1 + rng.IntN(int(opEnd)-1))
	}
	return Do(op, 1+rng.IntN(max(1, stitches/3)))
}

// TestRandomRows works pieces of random rows, most of them made to fit by a
// last step.
func TestRandomRows(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	could, rows := 0, 0
	for range sweep(4000, 400) {
		m := NewMachine([]Construction{Flat, InTheRound}[rng.IntN(2)])
		must(t, m.CastOn(1+rng.IntN(60)))
		for range 12 {
			var r Row
			for range 1 + rng.IntN(4) {
				r.Steps = append(r.Steps, randomStep(rng, m.ToWork(), 0))
			}
			switch rng.IntN(4) {
			case 0:
				r.Steps = append(r.Steps, Do(Turn, 1))
			case 1:
				r.Steps = append(r.Steps, Do(WrapTurn, 1))
			default:
				r.Steps = append(r.Steps, ToEnd(Slip))
			}
			rows++
			if agree(t, m, r) {
				could++
			}
			if n := len(m.Heights()); n != m.StitchCount() {
				t.Fatalf("%d heights of %d stitches", n, m.StitchCount())
			}
		}
	}
	t.Logf("%d rows, %d can be worked", rows, could)
	if could < rows/10 {
		t.Error("too few rows can be worked to prove anything")
	}
}

// TestCompressedRowsKnitTheSame works a row and its compressed form.
func TestCompressedRowsKnitTheSame(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	plain := []Op{Knit, Purl, Slip, K2tog, SSK, CDD, KFB, YO, BindOff, CastOn}
	for i := range sweep(2000, 200) {
		runs := randomRuns(rng, 1+i%80, len(plain), 4)
		on := 0
		for k := range runs {
			runs[k].Op = plain[runs[k].Op-1]
			on += runs[k].Count * runs[k].Op.Takes()
		}
		if on == 0 {
			continue
		}
		a, errA := knit(t, Flat, on, plainRow(runs))
		b, errB := knit(t, Flat, on, Compress(runs))
		if reasonOf(errA) != reasonOf(errB) || !slices.Equal(a.Heights(), b.Heights()) || !slices.Equal(a.BoundOff(), b.BoundOff()) {
			t.Fatalf("%q knits otherwise than %q: %v, %v", Compress(runs).Text(), plainRow(runs).Text(), errA, errB)
		}
	}
}
