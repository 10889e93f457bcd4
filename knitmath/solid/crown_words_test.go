package solid

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// checkCrownWords: sentences that begin and end, one thing told as one.
func checkCrownWords(t *testing.T, out Crown) {
	t.Helper()
	knittest.CheckDirections(t, out.Summary(), out.Directions())
	knittest.CheckNotices(t, "PlanCrown", out.Notices)
	lines := append(out.Directions(), out.Summary())
	for _, n := range out.Notices {
		lines = append(lines, report.Sentence(n.Description)+".")
	}
	for _, s := range lines {
		for _, bad := range []string{" 1 stitches", " 1 rounds", "  ", "..", " ,", "plain", " 0 ", "(1 wedges"} {
			if strings.Contains(s, bad) {
				t.Fatalf("%q has %q", s, bad)
			}
		}
		if !strings.HasSuffix(s, ".") || report.Sentence(s) != s {
			t.Fatalf("%q is no sentence", s)
		}
	}
	// What is worked even and what changes are all rounds, one after the other.
	want := 1
	for _, s := range out.Directions() {
		first, last, ok := roundsOf(s)
		if !ok {
			continue
		}
		if first != want || last < first {
			t.Fatalf("%q does not follow round %d", s, want-1)
		}
		want = last + 1
	}
	if want != out.TotalRounds+1 {
		t.Fatalf("the directions end with round %d of %d", want-1, out.TotalRounds)
	}
}

// roundsOf reads "Round 3" or "Rounds 3-7".
func roundsOf(line string) (first, last int, ok bool) {
	rest, ok := strings.CutPrefix(line, "Round")
	if !ok {
		return 0, 0, false
	}
	rest = strings.TrimPrefix(rest, "s")
	read := func() (n int) {
		for rest = rest[1:]; rest != "" && rest[0] >= '0' && rest[0] <= '9'; rest = rest[1:] {
			n = 10*n + int(rest[0]-'0')
		}
		return n
	}
	first = read()
	if last = first; rest[0] == '-' {
		last = read()
	}
	return first, last, true
}

func TestCrownNotices(t *testing.T) {
	ordinary := CrownInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HatStitches: new(120)}
	for reason, change := range map[report.Reason]func(*CrownInput){
		CrownRuffles: func(in *CrownInput) { in.CrownRounds = new(15) },
		CrownPoints:  func(in *CrownInput) { in.CrownRounds = new(60); in.TotalRounds = new(90) },
		BabyCare:     func(in *CrownInput) { in.HatStitches = new(80) },
		gauge.Halfway: func(in *CrownInput) {
			in.HatStitches, in.HatCm, in.StitchRule = nil, new(50.0), &gauge.CountRule{Multiple: new(4)}
		},
	} {
		in := ordinary
		change(&in)
		out, err := PlanCrown(in)
		if err != nil || !told(out.Notices, reason) {
			t.Errorf("%s: %v, %v", reason, out.Notices, err)
		}
	}
	if out, err := PlanCrown(ordinary); err != nil || len(out.Notices) > 0 {
		t.Errorf("an ordinary crown: %v, %v", out.Notices, err)
	}
}

// Wedges of two sizes that come again but for one are a repeat and the rest. By hand: 88 stitches in 7 wedges are four of 13 and three
// of 12, one of each three times, and one more.
func TestTwoSizesAreRepeated(t *testing.T) {
	out, err := PlanCrown(CrownInput{Gauge: &gauge.Gauge{Stitches: 18, Rows: 24}, HatStitches: new(88), WedgeCount: new(7),
		Uneven: UnevenTwoSizes})
	if err != nil {
		t.Fatal(err)
	}
	if got, want := out.Rounds[0].Instruction.Row.Text(), "[k11, k2tog, k10, k2tog] 3 times, k11, k2tog"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	for _, r := range out.Rounds {
		if r.Instruction.StartStitches > 3*7 && r.Instruction.Row.Items() > 8 {
			t.Errorf("%q", r.Instruction.Row.Text())
		}
	}
}

// Where the rounds begin is said before they are begun.
func TestCrownsSayFirstWhereRoundsBegin(t *testing.T) {
	out, err := PlanCrown(CrownInput{Gauge: &gauge.Gauge{Stitches: 23, Rows: 34.5}, HatCm: new(40.0), Uneven: UnevenLeftOver})
	if err != nil {
		t.Fatal(err)
	}
	at := func(words string) int {
		return slices.IndexFunc(out.Directions(), func(s string) bool { return strings.Contains(s, words) })
	}
	if begins, joins := at("centre of the back"), at("join in the round"); begins < 0 || begins > joins {
		t.Errorf("%q", out.Directions())
	}
}
