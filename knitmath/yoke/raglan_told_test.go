package yoke

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

var (
	roundLine  = regexp.MustCompile(`^Rounds? ([\d, and-]+?)(?: \((.*)\))?: (.*?)(?:: (\d+) stitch(?:es)?)?\.$`)
	againLine  = regexp.MustCompile(`^Work the (.*?) (every .* more): (\d+) stitch(?:es)?\.$`)
	everyPart  = regexp.MustCompile(`^every (?:(\d+)\w\w )?round (once|twice|\d+ times) more$`)
	repeatLine = regexp.MustCompile(`^Repeat rounds (\d+)-(\d+) (once more|twice more|another \d+ times)` +
		`(?:, then rounds (\d+)-(\d+) once)?: (\d+) stitch(?:es)?\.$`)
	asLine = regexp.MustCompile(`^Rounds (\d+)-(\d+): as rounds (\d+)-(\d+): (\d+) stitch(?:es)?\.$`)
)

// A toldRaglan is what a knitter makes of the directions: for every round the name of what is
// worked, even where it is that, and the text of each name.
type toldRaglan struct {
	c     raglanCheck
	names []string // of the rounds, from the first
	last  string   // the name that was worked last
	texts map[string]string
}

// checkTold reads the directions as a knitter would, and finds the rounds and the counts of the table.
func (c raglanCheck) checkTold() {
	c.t.Helper()
	told := toldRaglan{c, nil, "", map[string]string{}}
	for _, line := range c.out.Directions() {
		if m := asLine.FindStringSubmatch(line); m != nil {
			told.as(m)
		} else if m := roundLine.FindStringSubmatch(line); m != nil {
			told.rounds(m)
		} else if m := againLine.FindStringSubmatch(line); m != nil {
			told.again(m)
		} else if m := repeatLine.FindStringSubmatch(line); m != nil {
			told.repeat(m)
		} else if strings.HasPrefix(line, "Round") || strings.HasPrefix(line, "Work") || strings.HasPrefix(line, "Repeat") {
			c.t.Fatalf("not read: %q", line)
		}
	}
	all := strings.Join(c.out.Directions(), "\n")
	if len(told.names) != c.out.DepthRounds {
		c.t.Fatalf("%d rounds are told, not %d:\n%s", len(told.names), c.out.DepthRounds, all)
	}
	kinds := map[string]int{}
	for i, r := range c.out.Rounds {
		name := told.names[i]
		if (name == even) != (r.InstructionNumber == 0) {
			c.t.Fatalf("round %d is told as %q, not as kind %d:\n%s", i+1, name, r.InstructionNumber, all)
		}
		if name == even || i == 0 {
			continue
		}
		if kind, ok := kinds[name]; ok && kind != r.InstructionNumber {
			c.t.Fatalf("round %d is told as %q, as another kind is:\n%s", i+1, name, all)
		}
		c.checkName(name, c.out.Instructions[r.InstructionNumber-1])
		if kinds[name] = r.InstructionNumber; told.texts[name] != c.out.Instructions[r.InstructionNumber-1].Description {
			c.t.Fatalf("round %d is told as %q, which is %q:\n%s", i+1, name, told.texts[name], all)
		}
	}
}

// checkName reads out of a name what decreases, unless all does.
func (c raglanCheck) checkName(name string, kind RaglanInstruction) {
	c.t.Helper()
	says := func(words ...string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(name, w) })
	}
	if name != "decrease round" && (says("back", "body") != kind.BackDecreases || says("front", "body") != kind.FrontDecreases ||
		says("sleeve") != kind.SleevesDecrease) {
		c.t.Fatalf("%q is %s", name, kind.Description)
	}
}

// even names the rounds that are worked so.
const even = "work even"

// leaves compares a count that is told with the last round told.
func (d *toldRaglan) leaves(said string) {
	d.c.t.Helper()
	d.leavesAt(len(d.names), said)
}

// leavesAt compares a count that is told with what is left after a round.
func (d *toldRaglan) leavesAt(n int, said string) {
	d.c.t.Helper()
	if said != "" && strconv.Itoa(d.c.out.Rounds[n-1].TotalStitches) != said {
		d.c.t.Fatalf("round %d leaves %d stitches, not %s", n, d.c.out.Rounds[n-1].TotalStitches, said)
	}
}

// roundsOf are the rounds of "3 and 5-6".
func roundsOf(list string) (rounds []int) {
	for _, span := range strings.Split(strings.ReplaceAll(list, " and ", ", "), ", ") {
		from, to, ok := strings.Cut(span, "-")
		first, _ := strconv.Atoi(from)
		last := first
		if ok {
			last, _ = strconv.Atoi(to)
		}
		for round := first; round <= last; round++ {
			rounds = append(rounds, round)
		}
	}
	return rounds
}

// untold is the first round that no line has told yet.
func (d *toldRaglan) untold() int {
	if at := slices.Index(d.names, ""); at >= 0 {
		return at + 1
	}
	return len(d.names) + 1
}

// rounds takes "Rounds 3 and 5-6 (decrease round): ...": they are written in their places. Whoever reads on
// finds the round that is next, not one after it.
func (d *toldRaglan) rounds(m []string) {
	d.c.t.Helper()
	name := m[2]
	switch {
	case strings.Contains(m[3], "pm"):
		if name = even; strings.Contains(m[3], "ssk") || strings.Contains(m[3], "CDD") {
			name = "joining"
		}
	case m[3] == even:
		name = even
	case name == "":
		if name = strings.TrimPrefix(m[3], "work the "); d.texts[name] == "" {
			d.c.t.Fatalf("%q was never written", name)
		}
	default:
		if was := d.texts[name]; was != "" && was != m[3] {
			d.c.t.Fatalf("%s is %q and %q", name, was, m[3])
		}
		d.texts[name] = m[3]
	}
	rounds := roundsOf(m[1])
	if next := d.untold(); rounds[0] != next {
		d.c.t.Fatalf("round %d is told before round %d: %q", rounds[0], next, m[0])
	}
	for _, round := range rounds {
		for len(d.names) < round {
			d.names = append(d.names, "")
		}
		if d.names[round-1] != "" {
			d.c.t.Fatalf("round %d is both %s and %s", round, d.names[round-1], name)
		}
		d.names[round-1] = name
	}
	if name != even {
		d.last = name
	}
	d.leavesAt(rounds[len(rounds)-1], m[4])
}

// as takes "Rounds 10-12: as rounds 4-6": they come after all that are told.
func (d *toldRaglan) as(m []string) {
	d.c.t.Helper()
	var n [5]int
	for i := range n {
		n[i], _ = strconv.Atoi(m[i+1])
	}
	if n[0] != d.untold() || n[1]-n[0] != n[3]-n[2] || n[3] >= n[0] {
		d.c.t.Fatalf("%q after round %d", m[0], len(d.names))
	}
	d.names = append(d.names, d.names[n[2]-1:n[3]]...)
	d.leaves(m[5])
}

// again takes "Work the decrease round every 3rd round twice more": the last one told is such a round.
func (d *toldRaglan) again(m []string) {
	d.c.t.Helper()
	if d.names[len(d.names)-1] != m[1] {
		d.c.t.Fatalf("%q comes after %s", m[0], d.names[len(d.names)-1])
	}
	for _, part := range strings.Split(m[2], ", then ") {
		every := everyPart.FindStringSubmatch(part)
		if every == nil {
			d.c.t.Fatalf("%q", m[0])
		}
		for range timesOf(every[2]) {
			for n, _ := strconv.Atoi(every[1]); n > 1; n-- {
				d.names = append(d.names, even)
			}
			d.names = append(d.names, m[1])
		}
	}
	d.leaves(m[3])
}

// repeat takes "Repeat rounds 5-10 twice more, then rounds 5-9 once": they are the last rounds told, to the last.
func (d *toldRaglan) repeat(m []string) {
	d.c.t.Helper()
	from, _ := strconv.Atoi(m[1])
	to, _ := strconv.Atoi(m[2])
	if to != d.untold()-1 || m[4] != "" && m[4] != m[1] {
		d.c.t.Fatalf("%q after round %d", m[0], len(d.names))
	}
	turn := append([]string(nil), d.names[from-1:to]...)
	for range timesOf(m[3]) {
		d.names = append(d.names, turn...)
	}
	if m[5] != "" {
		end, _ := strconv.Atoi(m[5])
		d.names = append(d.names, turn[:end-from+1]...)
	}
	d.leaves(m[6])
}

func timesOf(word string) int {
	switch word = strings.TrimSuffix(strings.TrimPrefix(word, "another "), " more"); word {
	case "once":
		return 1
	case "twice":
		return 2
	}
	n, _ := strconv.Atoi(strings.TrimSuffix(word, " times"))
	return n
}

// Where there is no spare round the one that joins decreases, and the markers are placed in it.
func TestRaglanThatDecreasesAtTheJoin(t *testing.T) {
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}, BodyStitches: 60, SleeveStitches: new(20), UnderarmStitches: new(4),
		FrontNeckStitches: new(12), BackNeckStitches: new(12), DepthRounds: new(7)}
	out, err := PlanRaglan(in)
	if err != nil {
		t.Fatal(err)
	}
	checkRaglan(t, in, out)
	const want = "Round 1: ssk, k20, k2tog, pm, k2, ssk, k10, k2tog, k2, pm, ssk, k20, k2tog, pm, k2, ssk, k10, k2tog, k2: 76 stitches."
	if got := out.Directions()[3]; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
