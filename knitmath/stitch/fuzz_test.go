package stitch

import (
	"slices"
	"strings"
	"testing"
)

// reader turns fuzz bytes into steps. It reads zeros when they are used up.
type reader struct{ data []byte }

func (r *reader) next() int {
	if len(r.data) == 0 {
		return 0
	}
	b := r.data[0]
	r.data = r.data[1:]
	return int(b)
}

// number is small for most bytes, and nonsense or huge for the rest.
func (r *reader) number() int {
	switch b := r.next(); {
	case b < 200:
		return b % 25
	case b < 220:
		return -b
	case b < 240:
		return b * 100
	default:
		return int(^uint(0)>>1) / (b - 239)
	}
}

func (r *reader) step(depth int) Step {
	switch k := r.next(); {
	case k < 140 || depth > MaxDepth+1:
		return Do(Op(k)%(opEnd+1), r.number())
	case k < 170:
		return ToLast(Op(r.next())%(opEnd+1), r.number())
	case k < 245:
		g := make([]Step, k%4)
		for i := range g {
			g[i] = r.step(depth + 1)
		}
		return Repeat(r.number(), g...)
	default:
		s := r.step(depth + 1)
		s.Count, s.Times = s.Count+k%2, s.Times+k%3
		return s
	}
}

func (r *reader) row() Row {
	var row Row
	for range r.next() % 8 {
		row.Steps = append(row.Steps, r.step(0))
	}
	return row
}

// FuzzMachine: any rows give an error or a consistent count, never a panic, and
// never more loops than the limits allow.
func FuzzMachine(f *testing.F) {
	f.Add([]byte{0, 6, 2, 1, 4, 31, 1, 1, 2, 4})
	f.Add([]byte{1, 20, 3, 1, 6, 30, 1, 2, 37, 1, 2, 4, 30, 1})
	f.Add([]byte{0, 40, 2, 142, 3, 1, 1, 6, 1, 150, 1, 0})
	f.Fuzz(func(t *testing.T, data []byte) {
		r := &reader{data}
		m := NewMachine([]Construction{Flat, InTheRound}[r.next()%2])
		must(t, m.CastOn(1+r.next()))
		for range 20 {
			agree(t, m, r.row())
			heights := m.Heights()
			if len(heights) != m.StitchCount() || m.StitchCount() > MaxStitches || m.Unresolved() > m.StitchCount() {
				t.Fatalf("%d heights, %d stitches, %d unresolved", len(heights), m.StitchCount(), m.Unresolved())
			}
			for _, h := range heights {
				if h < 0 || h > m.RowsWorked()+1 {
					t.Fatalf("height %d after %d rows", h, m.RowsWorked())
				}
			}
		}
	})
}

// FuzzRow: any row has a text; its count and its expansion agree; within the
// limits, or an error.
func FuzzRow(f *testing.F) {
	f.Add(uint16(20), []byte{3, 1, 6, 143, 1, 2, 6, 1, 4, 150, 1, 0})
	f.Fuzz(func(t *testing.T, on uint16, data []byte) {
		row := (&reader{data}).row()
		text := row.Text()
		takes, leaves, err := row.Count(int(on))
		if reason := reasonOf(err); reason != "" && reason != ReasonUnworked && (takes != 0 || leaves != 0) {
			t.Fatalf("%q: %d, %d with %v", text, takes, leaves, err)
		}
		if takes < 0 || takes > int(on) || leaves < 0 || leaves > MaxStitches {
			t.Fatalf("%q on %d: %d, %d", text, on, takes, leaves)
		}
		runs, err := Expand(row, int(on))
		if err != nil {
			return
		}
		if strings.Contains(text, "?") {
			t.Fatalf("%q counts", text)
		}
		if again, err := Expand(Compress(runs), int(on)); err != nil || !slices.Equal(again, runs) {
			t.Fatalf("%q: %v compressed to %q", text, runs, Compress(runs).Text())
		}
	})
}

// FuzzCompress: what is compressed expands to what it was, no longer and no
// deeper than promised.
func FuzzCompress(f *testing.F) {
	f.Add([]byte{1, 5, 6, 1, 1, 8, 6, 1, 1, 8, 6, 1, 1, 13})
	f.Add([]byte{6, 3, 25, 1, 1, 1, 25, 1, 1, 1, 6, 6, 25, 1, 1, 1, 25, 1, 1, 1, 6, 3})
	f.Fuzz(func(t *testing.T, data []byte) {
		var runs []Run
		on, ops := 0, 0
		for len(data) > 1 && len(runs) < 2000 {
			r := Run{1 + Op(data[0])%(PlaceMarker-1), int(data[1]) % 12}
			data = data[2:]
			if on+3*r.Count > MaxStitches || ops+2*r.Count > MaxStitches {
				break
			}
			on, ops = on+r.Count*r.Op.Takes(), ops+2*r.Count
			runs = append(runs, r)
		}
		mustRoundTrip(t, runs)
	})
}
