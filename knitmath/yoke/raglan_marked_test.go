package yoke

import (
	"regexp"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// marks are the places of the markers on these stitches: the beginnings of the parts that follow
// back, sleeve and so on, with a line on either side of each sleeve.
func (c raglanCheck) marks(now RaglanRound) []int {
	places := []int{now.BackStitches, now.SleeveStitches + 2*c.line, now.FrontStitches, now.SleeveStitches + 2*c.line}
	for i := 1; i < len(places); i++ {
		places[i] += places[i-1]
	}
	return places
}

var (
	groupPart  = regexp.MustCompile(`^\[(.*?)\] (twice|\d+ times)(?:, )?`)
	stepPart   = regexp.MustCompile(`^([^,]+)(?:, )?`)
	beforePart = regexp.MustCompile(`^k to (\d+) sts before m$`)
)

// workedByWords works the words of a decrease round on so many stitches, from marker to marker.
func (c raglanCheck) workedByWords(text string, now RaglanRound) []stitch.Run {
	c.t.Helper()
	var steps []string
	for text != "" {
		if m := groupPart.FindStringSubmatch(text); m != nil {
			for range timesOf(m[2]) {
				steps = append(steps, strings.Split(m[1], ", ")...)
			}
			text = text[len(m[0]):]
			continue
		}
		m := stepPart.FindStringSubmatch(text)
		steps, text = append(steps, m[1]), text[len(m[0]):]
	}
	var runs []stitch.Run
	at, marks := 0, c.marks(now)
	do := func(op stitch.Op, times, takes int) {
		if times > 0 {
			runs, at = stitch.AppendRun(runs, op, times), at+times*takes
		}
	}
	for _, s := range steps {
		before := beforePart.FindStringSubmatch(s)
		switch {
		case before != nil:
			n, _ := strconv.Atoi(before[1])
			if marks[0]-n < at {
				c.t.Fatalf("%q on %+v: %q at stitch %d, the marker after %d", text, now, s, at, marks[0])
			}
			do(stitch.Knit, marks[0]-n-at, 1)
		case s == "k to m":
			do(stitch.Knit, marks[0]-at, 1)
		case s == "k to end":
			do(stitch.Knit, c.total(now)-at, 1)
		case s == "sm":
			if at != marks[0] {
				c.t.Fatalf("a marker is passed at stitch %d and lies after %d", at, marks[0])
			}
			marks = marks[1:]
		case s == "ssk":
			do(stitch.SSK, 1, 2)
		case s == "k2tog":
			do(stitch.K2tog, 1, 2)
		case s == "CDD":
			do(stitch.CDD, 1, 3)
		default:
			n, err := strconv.Atoi(strings.TrimPrefix(s, "k"))
			if err != nil {
				c.t.Fatalf("%q", s)
			}
			do(stitch.Knit, n, 1)
		}
	}
	return runs
}
