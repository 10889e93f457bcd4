package pattern

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// Of the edits of whole drafts that are agreed with, so many of a hundred are agreed with after them. Most of what is
// left shows in no count: rows worked even, lengths, needles, how often something comes, k1 before "k to". Of the
// dropped lines about half were looked through by hand. Known and open: a numbered row that contradicts a rule for even
// rows.
const (
	everyNumberAgreed = 16
	everyLineAgreed   = 47
)

// TestEveryNumberAndLine changes every number of every whole draft of all corpora that is agreed with by one, up and
// down, and leaves out and doubles every line from its cast-on: one of some each time the test runs.
func TestEveryNumberAndLine(t *testing.T) {
	step, turn := knittest.Sweep(3, 29), 0
	var numbers, lines [2]int // tried, agreed
	edited := func(of *[2]int, text string) {
		if turn++; turn%step == 0 {
			of[0]++
			if agreedText(text) {
				of[1]++
			}
		}
	}
	for _, text := range rightDrafts(t) {
		begin := max(castOnAt(text), 0)
		for _, at := range anyNumber.FindAllStringIndex(text[begin:], -1) {
			before, after := text[:begin+at[0]], text[begin+at[1]:]
			if n, err := strconv.Atoi(text[begin+at[0] : begin+at[1]]); err == nil && n > 1 {
				edited(&numbers, before+strconv.Itoa(n+1)+after)
				edited(&numbers, before+strconv.Itoa(n-1)+after)
			}
		}
		for at := begin; at < len(text); {
			end := len(text)
			if k := strings.IndexByte(text[at:], '\n'); k >= 0 {
				end = at + k + 1
			}
			if line := text[at:end]; strings.TrimSpace(line) != "" && at > begin {
				edited(&lines, text[:at]+text[end:])
				edited(&lines, text[:at]+line+text[at:])
			}
			at = end
		}
	}
	t.Logf("%d of %d numbers and %d of %d lines agreed with", numbers[1], numbers[0], lines[1], lines[0])
	if numbers[0] < knittest.Sweep(1500, 150) || 100*numbers[1] > knittest.Sweep(everyNumberAgreed, 22)*numbers[0] ||
		100*lines[1] > knittest.Sweep(everyLineAgreed, 55)*lines[0] {
		t.Errorf("%d of %d numbers and %d of %d lines are agreed with", numbers[1], numbers[0], lines[1], lines[0])
	}
}

// rightDrafts are the drafts of all corpora that are agreed with.
func rightDrafts(t *testing.T) []string {
	t.Helper()
	texts := slices.DeleteFunc(wholeDrafts(t), func(text string) bool { return !agreedText(text) })
	if len(texts) < 34 {
		t.Errorf("only %d drafts are agreed with", len(texts))
	}
	return texts
}

// castOnAt is where a text casts on first, -1 if nowhere.
func castOnAt(text string) int {
	at := strings.Index(strings.ToLower(text), "cast on")
	if i := strings.Index(text, "CO "); i >= 0 && (at < 0 || i < at) {
		at = i
	}
	return at
}

// agreedText reports whether nothing is found in a text, without looking for what would mend it.
func agreedText(text string) bool {
	p := Read(text, Options{})
	w := p.Work(Start{})
	return p.CastsOn() && len(judged(w)) == 0 && w.MoreCount == 0
}
