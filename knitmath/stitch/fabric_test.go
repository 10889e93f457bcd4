package stitch

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
)

// recorded casts on with the fabric remembered, and works the rows.
func recorded(t *testing.T, work Construction, stitches int, rows ...Row) (*Machine, *Fabric) {
	t.Helper()
	m := NewMachine(work)
	f, err := m.Record()
	must(t, err)
	must(t, m.CastOn(stitches))
	for _, r := range rows {
		if err := m.Work(r); err != nil {
			t.Fatalf("%q: %v", r.Text(), err)
		}
		checkFabric(t, m, f)
	}
	return m, f
}

// drawn writes every closed line: L live, H held, b bound off, c cast on, the sides of
// rows with hand and rows, and by how many half stitches they move.
func drawn(f *Fabric) string {
	var lines []string
	for _, e := range f.Boundary() {
		var b strings.Builder
		for _, p := range e.Parts() {
			switch p.Kind {
			case EdgeLive:
				b.WriteString("L")
			case EdgeHeld:
				b.WriteString("H")
			case EdgeBoundOff:
				b.WriteString("b")
			case EdgeCastOn:
				b.WriteString("c")
			default:
				fmt.Fprintf(&b, "%c%d", " RL"[p.Hand], p.Up)
				if p.Across != 0 {
					fmt.Fprintf(&b, "%+d", p.Across)
				}
				b.WriteString(" ")
			}
		}
		lines = append(lines, turnedToLive(b.String()))
	}
	slices.Sort(lines)
	return strings.Join(lines, "\n")
}

// turnedToLive is the line from its first live stitch on.
func turnedToLive(s string) string {
	for i := range s {
		if s[i] == 'L' && s[(i+len(s)-1)%len(s)] != 'L' && !strings.ContainsAny(s[(i+1)%len(s):(i+1)%len(s)+1], "0123456789") {
			return s[i:] + s[:i]
		}
	}
	return s
}

func TestLinesAround(t *testing.T) {
	kAll, pAll := RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl))
	for _, c := range []struct {
		name string
		work Construction
		on   int
		rows []Row
		want string
	}{
		{"cast on", Flat, 3, nil, "LLLccc"},
		{"two rows", Flat, 3, []Row{kAll, pAll}, "LLLL1 L1 cccR1 R1 "},
		{"a round", InTheRound, 3, []Row{kAll, kAll}, "LLL\nccc"},
		{"slipped edge", Flat, 3, []Row{RowOf(Do(Slip, 1), ToEnd(Knit)), RowOf(Do(Slip, 1), ToEnd(Purl)),
			RowOf(Do(Slip, 1), ToEnd(Knit)), RowOf(Do(Slip, 1), ToEnd(Purl))}, "LLLL2 L1 cccR2 R2 "},
		{"decreased at both ends", Flat, 8, []Row{RowOf(Do(Knit, 1), Do(SSK, 1), Do(Knit, 2), Do(K2tog, 1), Do(Knit, 1)), pAll},
			"LLLLLLL1 L1+2 ccccccccR1+2 R1 "},
		{"increased at the right edge", Flat, 4, []Row{RowOf(Do(Knit, 1), Do(M1L, 1), ToEnd(Knit))}, "LLLLLL1 ccccR1-2 "},
		{"bound off as rows begin", Flat, 7, []Row{RowOf(Do(BindOff, 2), ToEnd(Knit)), RowOf(Do(BindOff, 2), ToEnd(Purl))},
			"LLLL1 bbL1 cccccccbbR1 R1 "},
		{"bound off as a row ends", Flat, 5, []Row{RowOf(Do(Knit, 3), ToEnd(BindOff)), pAll}, "LLLL1 L1 bbcccccR1 R1 "},
		{"cast on as a row begins and ends", Flat, 3, []Row{RowOf(Do(CastOn, 2), ToEnd(Knit), Do(CastOn, 1)), pAll},
			"LLLLLLL1 ccccccR1 R1 "},
		{"a neck", Flat, 6, []Row{RowOf(Do(Knit, 2), Do(BindOff, 2), Do(Knit, 2))}, "LLL1 ccccccR1 LLL1 bbR1 "},
		{"a buttonhole", Flat, 6, []Row{RowOf(Do(Knit, 2), Do(BindOff, 2), Do(Knit, 2)), RowOf(Do(Purl, 2), Do(CastOn, 2), Do(Purl, 2))},
			"LLLLLLL1 L1 ccccccR1 R1 \nbbR1 ccL1 "},
		{"a thumb", InTheRound, 6, []Row{RowOf(Do(Knit, 2), Do(Hold, 2), Do(CastOn, 1), Do(Knit, 2)), kAll}, "HHcL1 \nLLLLL\ncccccc"},
		{"a short row", Flat, 4, []Row{RowOf(Do(Knit, 2), Do(Turn, 1)), pAll, kAll}, "L1 L1 \nLLLLL1 ccccR1 R1 R1 "},
		{"all bound off", Flat, 2, []Row{kAll, RowOf(ToEnd(BindOff))}, "ccR1 bbL1 "},
		{"held to the end of the row", Flat, 4, []Row{RowOf(Do(Knit, 2), Do(Hold, 2)), pAll}, "LLL1 L1 HHccccR1 R1 "},
		{"a dart in the middle", Flat, 5, []Row{RowOf(Do(Knit, 1), Do(CDD, 1), Do(Knit, 1))}, "LLLL1+2 cccccR1+2 "},
		{"a decrease in the very middle", Flat, 4, []Row{RowOf(Do(Knit, 1), Do(K2tog, 1), Do(Knit, 1))}, "LLLL1+1 ccccR1+1 "},
		{"decreased after a slipped edge", Flat, 5, []Row{RowOf(Do(Slip, 1), Do(SSK, 1), ToEnd(Knit)), RowOf(Do(Slip, 1), ToEnd(Purl))},
			"LLLLL1 cccccR2+2 "},
	} {
		_, f := recorded(t, c.work, c.on, c.rows...)
		if got := drawn(f); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// A heel flap of 8 stitches and 10 rows with slipped edges: five chains a side, each over
// two rows. Five are picked up down its left edge, the instep of 7 is taken up, five are
// picked up its right edge, and it is a round.
func TestGussetIsPickedUp(t *testing.T) {
	m, f := recorded(t, Flat, 15, RowOf(Do(Knit, 8), Do(Hold, 7)))
	for range 5 {
		must(t, m.Work(RowOf(Do(Slip, 1), ToEnd(Purl))))
		must(t, m.Work(RowOf(Do(Slip, 1), ToEnd(Knit))))
	}
	must(t, m.Work(RowOf(ToEnd(Purl))))
	left, right := f.Selvedge(LeftHand, 2, 11), f.Selvedge(RightHand, 2, 11)
	if left.Len() != 5 || right.Len() != 5 || left.LengthCm(0.5, 0.25) != 2.5 {
		t.Fatalf("%v, %v", left.Parts(), right.Parts())
	}
	must(t, m.LayEdge(left))
	must(t, m.TakeUpAtEnd(0))
	must(t, m.LayEdge(right))
	must(t, m.JoinInTheRound())
	must(t, m.Work(RowOf(Do(Knit, 8), Do(PickUp, 5), Do(Knit, 7), Do(PickUpTwo, 1), Do(PickUp, 4))))
	checkFabric(t, m, f)
	must(t, m.Work(RowOf(ToEnd(Knit))))
	checkFabric(t, m, f)
	if m.StitchCount() != 8+5+7+6 {
		t.Errorf("%d stitches", m.StitchCount())
	}
	if got, want := drawn(f), "L1 \n"; !strings.HasPrefix(got, want) {
		t.Errorf("%q", got)
	}
}

// A hole is picked up around, and what is grafted is one fabric without an edge there.
func TestGraftedLines(t *testing.T) {
	m, f := recorded(t, InTheRound, 6, RowOf(ToEnd(Knit)), RowOf(Do(Hold, 3), Do(Hold, 3)))
	must(t, m.Graft(0, 1))
	checkFabric(t, m, f)
	if got := drawn(f); got != "cccccc" {
		t.Errorf("a toe: %q", got)
	}
	m, f = recorded(t, Flat, 4, RowOf(Do(Hold, 4)))
	must(t, m.CastOn(4))
	must(t, m.Work(RowOf(ToEnd(Knit))))
	must(t, m.Work(RowOf(Do(Hold, 4))))
	must(t, m.BindOffTogether(0, 1))
	checkFabric(t, m, f)
	if got := drawn(f); got != "ccccL1 ccccR1 " {
		t.Errorf("two strips: %q", got)
	}
}

// Lengths by hand, for stitches of 0.5 and rows of 0.3 cm.
func TestLengthsByHand(t *testing.T) {
	kAll, pAll := RowOf(ToEnd(Knit)), RowOf(ToEnd(Purl))
	dec := RowOf(Do(Knit, 1), Do(SSK, 1), ToLast(Knit, 3), Do(K2tog, 1), Do(Knit, 1))
	rows := []Row{kAll, pAll, RowOf(Do(BindOff, 3), ToEnd(Knit)), RowOf(Do(BindOff, 3), ToEnd(Purl)), dec, pAll, dec, pAll, kAll, pAll}
	_, f := recorded(t, Flat, 30, rows...)
	// Three bound off; rows 3 to 5 to the first decrease, 2 to the next, 3 to the end.
	// On the left the edge is bound off a row later, in row 4.
	right := 3*0.5 + math.Hypot(0.5, 0.9) + math.Hypot(0.5, 0.6) + 3*0.3
	left := 3*0.5 + math.Hypot(0.5, 0.6) + math.Hypot(0.5, 0.6) + 3*0.3
	for h, want := range map[Hand]float64{RightHand: right, LeftHand: left} {
		from := 3
		if h == LeftHand {
			from = 4
		}
		e := f.Selvedge(h, from, 10)
		if got := e.LengthCm(0.5, 0.3); math.Abs(got-want) > 1e-12 {
			t.Errorf("hand %d: %v, want %v: %v", h, got, want, e.Parts())
		}
	}
	if got, want := f.Stitches(), 2*30+27+24+22+22+20*4; got != want {
		t.Errorf("%d stitches, want %d", got, want)
	}
	if got, want := f.AreaSquareCm(0.5, 0.3), float64(f.Stitches())*0.15; math.Abs(got-want) > 1e-9 {
		t.Errorf("area %v, want %v", got, want)
	}
	if got, want := f.StitchesIn(5, 6), 44; got != want {
		t.Errorf("%d in rows 5 and 6", got)
	}
}

// What a decrease was made of, and what it stands beside.
func TestStitchesAreRemembered(t *testing.T) {
	m, f := recorded(t, Flat, 4, RowOf(Do(Knit, 1), Do(K2tog, 1), Do(Knit, 1)))
	n := m.Numbers()
	got := f.Stitch(n[1])
	if want := (Recorded{Op: K2tog, Row: 1, Level: 1, Under: []int{2, 3}, Beside: n[0]}); fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("%+v, want %+v", got, want)
	}
	if got := f.Stitch(len(f.cells)); got.Op != 0 || NewMachine(Flat).Numbers() != nil {
		t.Errorf("%+v", got)
	}
}
