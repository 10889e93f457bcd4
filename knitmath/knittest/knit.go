// Package knittest is what the tests of the rooms share: stitches on a machine,
// violations wanted, answers whose numbers are all finite, published tables.
package knittest

import (
	"errors"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/stitch"
)

// CastOn starts a machine with n stitches, flat or in the round.
func CastOn(t *testing.T, n int, round bool) *stitch.Machine {
	t.Helper()
	style := stitch.Flat
	if round {
		style = stitch.InTheRound
	}
	m := stitch.NewMachine(style)
	if err := m.CastOn(n); err != nil {
		t.Fatalf("cast on %d: %v", n, err)
	}
	if round {
		if err := m.JoinInTheRound(); err != nil {
			t.Fatalf("join: %v", err)
		}
	}
	return m
}

// PlainRow is a row of stocking stitch on the side that faces.
func PlainRow(m *stitch.Machine) stitch.Row {
	if m.Side() == stitch.WrongSide {
		return stitch.RowOf(stitch.ToEnd(stitch.Purl))
	}
	return stitch.RowOf(stitch.ToEnd(stitch.Knit))
}

// Reasons lists field and reason of every violation of an error, in order.
func Reasons(err error) []fault.Violation {
	var in *fault.InputError
	if !errors.As(err, &in) {
		return nil
	}
	out := make([]fault.Violation, len(in.Violations))
	for i, v := range in.Violations {
		out[i] = fault.Violation{Field: v.Field, Reason: v.Reason}
	}
	return out
}

// WantViolations compares fields and reasons, never prose.
func WantViolations(t *testing.T, err error, want ...string) {
	t.Helper()
	got := Reasons(err)
	if err == nil || got == nil {
		t.Fatalf("got error %v, want violations %v", err, want)
	}
	var flat []string
	for _, v := range got {
		flat = append(flat, v.Field+" "+string(v.Reason))
	}
	if len(flat) != len(want) {
		t.Fatalf("got %q, want %q (%v)", flat, want, err)
	}
	for i := range want {
		if flat[i] != want[i] {
			t.Fatalf("got %q, want %q (%v)", flat, want, err)
		}
	}
}
