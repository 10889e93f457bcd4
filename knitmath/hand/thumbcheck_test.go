package hand

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// checkThumb knits both hands to a round above the thumb, binds off, and knits the thumb.
func checkThumb(t *testing.T, in ThumbInput, out Thumb) {
	t.Helper()
	knittest.CheckNotices(t, "PlanThumb", out.Notices)
	knittest.CheckFinite(t, out)
	back := out.HandStitches / 2
	for _, right := range []bool{true, false} {
		m := knittest.CastOn(t, out.HandStitches, true)
		next := 0
		for round := 1; next < len(out.HandRounds); round++ {
			r := out.HandRounds[next]
			if r.RoundNumber > round {
				work(t, m, stitch.RowOf(stitch.ToEnd(stitch.Knit)))
				continue
			}
			i := r.Left
			if right {
				i = r.Right
			}
			if m.StitchCount() != i.StartStitches {
				t.Fatalf("%+v: %d stitches before round %d, said %d", in, m.StitchCount(), round, i.StartStitches)
			}
			work(t, m, i.Row)
			next++
			if m.StitchCount() != i.EndStitches {
				t.Fatalf("%+v: %d stitches after round %d, said %d", in, m.StitchCount(), round, i.EndStitches)
			}
			// Before the thumb come the back and some of the palm of a right hand, of a left hand
			// the rest of the palm.
			before := i.Row.Steps[0].Count
			if i.Row.Steps[0].Op != stitch.Knit {
				before = 0
			}
			if right && before < back-1 || !right && before > out.HandStitches-back {
				t.Fatalf("%+v: right %v: %d stitches before the thumb", in, right, before)
			}
		}
		if held := m.Holders(); len(held) != 1 || held[0] != out.HoldStitches || m.StitchCount() != out.AfterStitches {
			t.Fatalf("%+v: %v held, %d stitches above", in, held, m.StitchCount())
		}
		work(t, m, stitch.RowOf(stitch.ToEnd(stitch.BindOff)))
		knitThumb(t, m, in, out)
	}
}

func knitThumb(t *testing.T, m *stitch.Machine, in ThumbInput, out Thumb) {
	t.Helper()
	if err := m.LoadEdge(out.picked); err != nil {
		t.Fatalf("%+v: %v", in, err)
	}
	if err := m.TakeUpAtEnd(0); err != nil {
		t.Fatalf("%+v: %v", in, err)
	}
	next := 0
	for round := 1; round <= out.LengthRounds; round++ {
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if next < len(out.ThumbRounds) && out.ThumbRounds[next].RoundNumber == round {
			row = out.ThumbRounds[next].Instruction.Row
			next++
		}
		work(t, m, row)
		if want := out.ThumbRounds[next-1].Instruction.EndStitches; m.StitchCount() != want {
			t.Fatalf("%+v: thumb round %d leaves %d stitches, said %d", in, round, m.StitchCount(), want)
		}
	}
	if next != len(out.ThumbRounds) || m.StitchCount() != out.EndStitches {
		t.Fatalf("%+v: %d of %d thumb rounds, %d stitches left", in, next, len(out.ThumbRounds), m.StitchCount())
	}
}

func work(t *testing.T, m *stitch.Machine, row stitch.Row) {
	t.Helper()
	if err := m.Work(row); err != nil {
		t.Fatalf("%s: %v", row.Text(), err)
	}
}

// checkWords: sentences that begin and end, one thing told as one.
func checkWords(t *testing.T, lines []string, notices []report.Notice) {
	t.Helper()
	knittest.CheckDirections(t, lines[len(lines)-1], lines[:len(lines)-1])
	for _, n := range notices {
		lines = append(lines, report.Sentence(n.Description)+".")
	}
	for _, s := range lines {
		for _, bad := range []string{" 1 stitches", " 1 rounds", "  ", "..", " ,", "plain", " 0 ", " k0"} {
			if strings.Contains(s, bad) {
				t.Fatalf("%q has %q", s, bad)
			}
		}
		if !strings.HasSuffix(s, ".") || report.Sentence(s) != s {
			t.Fatalf("%q is no sentence", s)
		}
	}
}
