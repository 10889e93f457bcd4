package report

import (
	"testing"

	"example.com/knitmath/knitmath/measure"
)

func TestWords(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{CountOf(1, "stitches"), "1 stitch"},
		{CountOf(2, "stitches"), "2 stitches"},
		{CountOf(1, "rows"), "1 row"},
		{CountOf(1, "balls"), "1 ball"},
		{CountOf(0, "rows"), "0 rows"},
		{Ordinal(1), "1st"}, {Ordinal(2), "2nd"}, {Ordinal(3), "3rd"}, {Ordinal(4), "4th"},
		{Ordinal(11), "11th"}, {Ordinal(12), "12th"}, {Ordinal(13), "13th"}, {Ordinal(21), "21st"},
		{Ordinal(102), "102nd"}, {Ordinal(111), "111th"},
		{Times(1), "once"}, {Times(2), "twice"}, {Times(3), "3 times"},
		{measure.Decimal(2.5, 0), "3"}, {measure.Decimal(-2.5, 0), "-2"}, {measure.Decimal(1.25, 1), "1.3"}, {measure.Decimal(10, 2), "10"},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
}
