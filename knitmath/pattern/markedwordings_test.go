package pattern

import (
	"strings"
	"testing"
)

// askMarked asks texts that are right, of which so many of a hundred are to be read, and the same with each number between « and »
// one higher: none of those may be agreed with. All words are common practice.
func askMarked(t *testing.T, texts []toldCase, floor int) {
	t.Helper()
	right, planted := 0, 0
	for i := range texts {
		c := &texts[i]
		ok, agrees, out := c.judged(t, c.text)
		switch {
		case ok:
			right++
		case agrees:
			t.Errorf("agreed with, and is not %v stitches in %v rows: %v in %v\n%s", c.ends, c.rows, out.EndStitches, out.WorkedRows, c.text)
		case testing.Verbose():
			t.Logf("not read: %v in %v, wants %v in %v: %s\n%s", out.EndStitches, out.WorkedRows, c.ends, c.rows, judgedText(out.Findings), c.text)
		}
		for _, wrong := range plantedIn(c.text) {
			planted++
			if _, agrees, out := c.judged(t, wrong); agrees {
				t.Errorf("a mistake is agreed with: %v in %v\n%s", out.EndStitches, out.WorkedRows, wrong)
			}
		}
	}
	t.Logf("%d of %d read, %d planted", right, len(texts), planted)
	if 100*right < floor*len(texts) {
		t.Errorf("%d of %d, %d %% stood", right, len(texts), floor)
	}
}

// wordsIn puts each word of a list in the place of "W" in each frame.
func wordsIn(frames []toldCase, words ...string) []toldCase {
	var all []toldCase
	for _, f := range frames {
		for _, w := range words {
			c := f
			c.text = strings.ReplaceAll(f.text, "W~", w)
			all = append(all, c)
		}
	}
	return all
}
