package report

import "testing"

func TestOfSizes(t *testing.T) {
	for want, words := range map[string][]string{
		"5":              {"5"},
		"8th":            {"8th", "8th", "8th"},
		"5 (6, 6)":       {"5", "6", "6"},
		"8th (8th, 6th)": {"8th", "8th", "6th"},
		"0 (0, 0, 1)":    {"0", "0", "0", "1"},
	} {
		if got := OfSizes(words); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
