package pattern

import "testing"

// TestNumbersAgree: another number is spelt as the one before it, and what it counts agrees with it.
func TestNumbersAgree(t *testing.T) {
	for _, c := range []struct {
		text string
		n    int
		want string
	}{
		{"three times more", 2, "twice more"},
		{"three more times.", 2, "twice more."},
		{"3 times more", 2, "2 times more"},
		{"3 times more", 1, "once more"},
		{"two more times", 1, "once more"},
		{"two more times", 4, "four more times"},
		{"twice more", 3, "3 times more"},
		{"once", 2, "twice"},
		{"2 sts", 1, "1 st"},
		{"1 st.", 2, "2 sts."},
		{"1 more row", 3, "3 more rows"},
		{"2 sts, then", 3, "3 sts, then"},
		{"eleven rows", 21, "21 rows"},
		{"K2 st", 1, "K1 st"},
	} {
		s := spotsIn(c.text, span{end: int32(len(c.text)), line: 1, column: 1})[0]
		e := renumbering{list: []spot{s}}
		e.set(&e.list[0], c.n)
		got := e.candidate(c.text, -1, "")[0]
		if text := c.text[:got.at.start] + got.put + c.text[got.at.end:]; text != c.want {
			t.Errorf("%q with %d: %q, want %q", c.text, c.n, text, c.want)
		}
	}
}
