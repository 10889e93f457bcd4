package trace

import (
	"strings"
	"testing"
)

// An id is taken as it is asked for, or is one of ours; both are plain words.
func TestID(t *testing.T) {
	for _, c := range []struct {
		asked []string
		taken bool
	}{
		{[]string{"7f3c1a52-9f0e-4c60-b7a4-6f6f3f0a1c11"}, true},
		{[]string{"Root=1:a/b+c_d.e"}, true},
		{[]string{strings.Repeat("x", maxIDLength)}, true},
		{[]string{strings.Repeat("x", maxIDLength+1)}, false},
		{nil, false},
		{[]string{""}, false},
		{[]string{"a", "b"}, false},
		{[]string{"a b"}, false},
		{[]string{"a\nlevel=ERROR"}, false},
		{[]string{`a"b`}, false},
		{[]string{"ä"}, false},
		{[]string{"a\xff"}, false},
	} {
		if got := NewRequest(c.asked).ID(); c.taken != (len(c.asked) == 1 && got == c.asked[0]) || !plain(got) {
			t.Errorf("%q became %q", c.asked, got)
		}
	}
	one, other := NewRequest(nil), NewRequest(nil)
	if one.ID() == other.ID() || one.ID() != one.ID() || one.Asked() != "" { //nolint:staticcheck // asked twice
		t.Errorf("%s and %s, asked %q", one.ID(), other.ID(), one.Asked())
	}
}
