package body

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// Between two wearers a head and a hand lie between theirs; beyond the largest they stay,
// and who is smaller than a child born early is a toy.
func TestWearerOf(t *testing.T) {
	for _, c := range []struct{ body, head, least, hand float64 }{
		{30, 30.5, 26, 7.5}, {34, 33.2, 28.75, 8.25}, {38, 35.9, 31.5, 9}, {45, 40.5, 37, 10.5}, {50, 44.4, 40.75, 11.75},
		{55, 48.3, 44.5, 13}, {74, 54.8, 51, 16.25}, {80, 56.9, 52.5, 17.5}, {140, 56.9, 52.5, 17.5},
	} {
		w, ok := WearerOf(c.body)
		if !ok {
			t.Errorf("a body of %v cm is nobody's", c.body)
		}
		knittest.Near(t, "head", w.HeadCm, c.head, 1e-9)
		knittest.Near(t, "least head", w.LeastHeadCm, c.least, 1e-9)
		knittest.Near(t, "hand", w.HandCm, c.hand, 1e-9)
	}
	if _, ok := WearerOf(29.9); ok {
		t.Error("a toy has a head")
	}
}
