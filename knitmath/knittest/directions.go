package knittest

import (
	"regexp"
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
	taken    = regexp.MustCompile(`back on the needles|take the waste yarn out`)
)

// CheckDirections reads directions as a knitter works them: what is slipped or worked to was marked before, what is marked
// is used up; stitches that rest are taken up again, with the yarn joined before they are worked; and rows are named once each, in
// order, from 1 on, in each part that begins with words of its own.
func CheckDirections(t *testing.T, at string, lines []string) {
	t.Helper()
	all := strings.Join(lines, "\n")
	wrong := func(what string) { t.Fatalf("%s: %s:\n%s", at, what, all) }
	place := func(r *regexp.Regexp) int {
		if found := r.FindStringIndex(all); found != nil {
			return found[0]
		}
		return -1
	}
	if used, set := place(marked), place(marking); used >= 0 && (set < 0 || set > used) {
		wrong("a marker that nobody placed")
	} else if left := place(unmarked); set >= 0 && left < set {
		wrong("a marker stays where it is")
	}
	if rest, back := place(resting), place(taken); rest >= 0 {
		if back < rest {
			wrong("stitches that rest are not taken up")
		}
		if join := strings.Index(strings.ToLower(all[back:]), "join the yarn"); join < 0 {
			wrong("no yarn is joined to stitches that rested")
		}
	}
	if at := pickedUp.FindStringIndex(all); at != nil && !strings.Contains(strings.ToLower(all[:at[1]]), "join the yarn") {
		wrong("stitches are picked up with no yarn")
	}
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
			wrong(line + " does not come after " + found[1] + " " + strconv.Itoa(next-1))
		}
		next, words, again = last+1, false, false
	}
}
