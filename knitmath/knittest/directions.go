package knittest

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

var (
	pickedUp = regexp.MustCompile(`(?i)pick up and knit [^.;]*(?: and join in the round|on the body)`)
	numbered = regexp.MustCompile(`^(?:Gusset |Wedge \d+, )?(Row|Round)s? (\d+)(?:-(\d+))?\b[^:]*:`)
	marking  = regexp.MustCompile(`\bpm\b|Place a marker|Mark the`)
	marked   = regexp.MustCompile(`\bsm\b|\b(?:to|before|until) m\b|centre st\b`)
	unmarked = regexp.MustCompile(`remove m\b|marker out|move the mark|begins there`)
	repeated = regexp.MustCompile(`^(?:Repeat|Work the|Work \d+ rows? even|Next)`)
	resting  = regexp.MustCompile(`on hold|with a smooth waste yarn`)
	together = regexp.MustCompile(`\d,? (?:\d+ (?:more )?times|\d+ times more)\b`)
	taken    = regexp.MustCompile(`back on the needles|take the waste yarn out`)
)

// CheckDirections reads directions as a knitter works them: what is slipped or worked to was marked before, what is marked
// is used up; no number stands straight before a number of times; stitches that rest are taken up again, with the yarn joined
// before they are worked; and rows are named once each, in order, from 1 on, in each part that begins with words of its own.
func CheckDirections(t *testing.T, at string, lines []string) {
	t.Helper()
	all := strings.Join(lines, "\n")
	for _, wrong := range []string{markersWrong(all), restingWrong(all), numbersWrong(lines)} {
		if wrong != "" {
			t.Fatalf("%s: %s:\n%s", at, wrong, all)
		}
	}
	if found := NumbersRunTogether(lines); found != "" {
		t.Fatalf("%s: numbers run together in %q", at, found)
	}
}

// NumbersRunTogether is a line in which the number of a row stands straight before a number of times, as in "rows 3 and 4
// 13 times"; empty where there is none.
func NumbersRunTogether(lines []string) string {
	for _, line := range lines {
		if strings.Contains(line, " times") && together.MatchString(line) {
			return line
		}
	}
	return ""
}

// needs are words of which a text has some wherever an expression is found: they are looked for in no time, and it in much.
var needs = map[*regexp.Regexp][]string{
	marking: {"pm", "Place a marker", "Mark the"}, marked: {"sm", "to m", "before m", "until m", "centre st"},
	unmarked: {"remove m", "marker out", "move the mark", "begins there"}, resting: {"on hold", "smooth waste yarn"},
	taken: {"back on the needles", "waste yarn out"},
}

// place is where a text first says something, -1 where it does not.
func place(all string, r *regexp.Regexp) int {
	if !slices.ContainsFunc(needs[r], func(s string) bool { return strings.Contains(all, s) }) {
		return -1
	}
	if found := r.FindStringIndex(all); found != nil {
		return found[0]
	}
	return -1
}

// markersWrong says what is wrong with the markers of directions.
func markersWrong(all string) string {
	used, set := place(all, marked), place(all, marking)
	switch {
	case used >= 0 && (set < 0 || set > used):
		return "a marker that nobody placed"
	case set >= 0 && place(all, unmarked) < set:
		return "a marker stays where it is"
	}
	return ""
}

// restingWrong says what is wrong with stitches that rest, and with the yarn for them and for
// those that are picked up.
func restingWrong(all string) string {
	joined := func(text string) bool { return strings.Contains(strings.ToLower(text), "join the yarn") }
	if rest, back := place(all, resting), place(all, taken); rest >= 0 {
		if back < rest {
			return "stitches that rest are not taken up"
		}
		if !joined(all[back:]) {
			return "no yarn is joined to stitches that rested"
		}
	}
	if !strings.Contains(all, "ick up and knit ") {
		return ""
	}
	if at := pickedUp.FindStringIndex(all); at != nil && !joined(all[:at[1]]) {
		return "stitches are picked up with no yarn"
	}
	return ""
}

// numbersWrong says which row is not named in its order.
func numbersWrong(lines []string) string {
	next, words, again := 1, true, false
	for _, line := range lines {
		found := numbered.FindStringSubmatch(line)
		if found == nil {
			words, again = true, again || repeated.MatchString(line)
			continue
		}
		first, _ := strconv.Atoi(found[2])
		last := first
		if found[3] != "" {
			last, _ = strconv.Atoi(found[3])
		}
		if first != next && !again && !(first == 1 && words) {
			return line + " does not come after " + found[1] + " " + strconv.Itoa(next-1)
		}
		next, words, again = last+1, false, false
	}
	return ""
}
