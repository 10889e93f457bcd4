package stitch

import "testing"

// Every shape a step can have, most of them no step: the three kinds by their
// definition, and what the text, the arithmetic and the machine make of each.
func TestKindsOfSteps(t *testing.T) {
	number := func(n int) *int { return &n }
	for _, op := range []Op{0, Knit, opEnd} {
		for _, count := range []int{-1, 0, 1} {
			for _, group := range [][]Step{nil, {}, {Do(Knit, 1)}} {
				for _, times := range []int{-1, 0, 1} {
					for _, last := range []*int{nil, number(-1), number(0), number(1)} {
						s := Step{Op: op, Count: count, Group: group, Times: times, ToLast: last}
						checkKind(t, s, wantedKind(s))
					}
				}
			}
		}
	}
}

// wantedKind is the kind of a step by the definition of the three.
func wantedKind(s Step) kind {
	if s.Op == 0 {
		if s.Count == 0 && s.ToLast == nil && len(s.Group) == 1 && s.Times == 1 {
			return kindGroup
		}
		return kindNone
	}
	switch known := s.Op == Knit && s.Group == nil && s.Times == 0; {
	case known && s.Count == 1 && s.ToLast == nil:
		return kindCount
	case known && s.Count == 0 && s.ToLast != nil && *s.ToLast != -1:
		return kindToLast
	}
	return kindNone
}

// checkKind works a step on one stitch.
func checkKind(t *testing.T, s Step, want kind) {
	t.Helper()
	if got := s.kind(); got != want {
		t.Errorf("%+v: kind %d, want %d", s, got, want)
	}
	row, none := RowOf(s), want == kindNone
	if got := row.Text() == "?"; got != none {
		t.Errorf("%+v: written %q", s, row.Text())
	}
	if _, _, err := row.Count(1); (reasonOf(err) == ReasonMalformed) != none {
		t.Errorf("%+v: counted %v", s, err)
	}
	if _, err := knit(t, Flat, 1, row); (reasonOf(err) == ReasonMalformed) != none {
		t.Errorf("%+v: worked %v", s, err)
	}
}
