package gauge

import (
	"testing"

	"example.com/knitmath/knitmath/measure"
)

func TestAmong(t *testing.T) {
	rule := func(multiple, remainder int64, r measure.Rounding) Rule { return Rule{multiple, remainder, r} }
	for _, c := range []struct {
		rule           Rule
		num, den       int64
		from, to, step int
		want           int
	}{
		{AnyCount, 79, 1, 1, 100, 2, 79},
		{AnyCount, 78, 1, 1, 100, 2, 77}, // half-way, the smaller
		{AnyCount, 157, 2, 1, 100, 2, 79},
		{rule(4, 1, 0), 79, 1, 1, 100, 2, 77}, // 77 and 81 lie as near
		{rule(4, 1, 0), 159, 2, 1, 100, 2, 81},
		{rule(4, 1, measure.RoundingDown), 80, 1, 1, 100, 2, 77},
		{rule(4, 1, measure.RoundingUp), 78, 1, 1, 100, 2, 81},
		{rule(4, 2, 0), 79, 1, 1, 100, 2, 0}, // no odd count
		{rule(4, 1, measure.RoundingUp), 98, 1, 1, 100, 2, 0},
		{rule(40, 1, 0), 10, 1, 3, 100, 2, 41}, // 1 is not among them
	} {
		got, ok := c.rule.Among(c.num, c.den, c.from, c.to, c.step)
		if got != c.want || ok != (c.want > 0) {
			t.Errorf("%+v: %d, %v", c, got, ok)
		}
	}
	if rule(4, 2, 0).Allows(-2) || !rule(4, 2, 0).Allows(2) || rule(4, 0, 0).Allows(0) {
		t.Error("the smallest counts")
	}
}
