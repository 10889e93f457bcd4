package solid

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Closings that others printed: the count after each decrease round, and how many rounds
// are worked even after it; of the last only where they are printed.
func TestPublishedClosings(t *testing.T) {
	for _, row := range knittest.Table(t, "solid/closings.csv") {
		q := Closing{StartStitches: number(t, row["start"]), Wedges: number(t, row["wedges"]), EndStitches: number(t, row["end"])}
		switch row["uneven"] {
		case "left over":
			q.Uneven = UnevenLeftOver
		case "two sizes":
			q.Uneven = UnevenTwoSizes
		case "paired":
			q.Paired, q.EdgeStitches = true, 1
		}
		switch row["pace"] {
		case "plain":
			q.Pace = PlainAfter(0)
		case "plain and 1":
			q.Pace = PlainAfter(1)
		case "to half":
			q.Pace = ToHalf()
		case "every 1st":
			q.Pace = EveryRound()
		case "every 2nd":
			q.Pace = AtRates(Rate{EveryRounds: 2})
		case "every 3rd":
			q.Pace = AtRates(Rate{EveryRounds: 3})
		}
		plan, refused := q.Plan()
		if refused != "" {
			t.Errorf("%s: %s", row["id"], refused)
			continue
		}
		var counts, even []string
		for i, r := range plan.Rounds {
			next := plan.RoundCount + 1
			if i+1 < len(plan.Rounds) {
				next = plan.Rounds[i+1].RoundNumber
			}
			counts = append(counts, strconv.Itoa(r.Instruction.EndStitches))
			even = append(even, strconv.Itoa(next-r.RoundNumber-1))
		}
		if want := row["counts"]; want != "" && strings.Join(counts, " ") != want {
			t.Errorf("%s: %v, want %s", row["id"], counts, want)
		}
		if want := row["even"]; want != "" && !strings.HasPrefix(strings.Join(even, " "), want) {
			t.Errorf("%s: rounds even %v, want %s", row["id"], even, want)
		}
		sizes := slices.Sorted(slices.Values(plan.WedgeStitches))
		if want := row["sizes"]; want != "" && strings.Trim(fmt.Sprint(sizes), "[]") != want {
			t.Errorf("%s: wedges of %v, want %s", row["id"], sizes, want)
		}
	}
}

func number(t *testing.T, s string) int { return int(knittest.Cell(t, s)) }

// Every small closing is knit, round by round.
func TestClosingsAreKnit(t *testing.T) {
	planned, refused := 0, 0
	for _, q := range smallClosings() {
		plan, why := q.Plan()
		if why != "" {
			refused++
			continue
		}
		planned++
		checkClosing(t, q, plan)
	}
	if planned < knittest.Sweep(6_000, 800) || refused < 100 {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
}

func smallClosings() []Closing {
	paces := []Pace{EveryRound(), ToHalf(), PlainAfter(0), PlainAfter(1), AtRates(Rate{4, 2}, Rate{2, 3}, Rate{1, 1}),
		Along(func(left float64) float64 { return 1 - left/150 }, 30, 3, 2),
		Along(func(left float64) float64 { return 1 / (left + 1) }, 40, 1, 0.6)}
	var all []Closing
	for start := 3; start < 100; start += knittest.Sweep(1, 7) {
		for wedges := 1; wedges <= 12; wedges++ {
			for uneven := UnevenUnspecified; uneven <= UnevenLeftOver; uneven++ {
				q := Closing{StartStitches: start, Wedges: wedges, Uneven: uneven, EndStitches: 1 + start*wedges%14,
					Pace: paces[(start+wedges)%len(paces)]}
				all = append(all, q)
				q.Paired, q.EdgeStitches = true, start%4
				all = append(all, q)
			}
		}
	}
	return all
}

// checkClosing knits a plan, the rounds between even, and asks of it what it says.
func checkClosing(t *testing.T, q Closing, plan ClosingPlan) {
	t.Helper()
	m := knittest.CastOn(t, q.StartStitches, true)
	at := 0
	for round := 1; round <= plan.RoundCount; round++ {
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if at < len(plan.Rounds) && plan.Rounds[at].RoundNumber == round {
			r := plan.Rounds[at]
			row = r.Instruction.Row
			if m.StitchCount() != r.Instruction.StartStitches || r.Instruction.EndStitches >= r.Instruction.StartStitches {
				t.Fatalf("%+v: round %d begins with %d stitches, said %+v", q, round, m.StitchCount(), r.Instruction)
			}
			at++
		}
		if err := m.Work(row); err != nil {
			t.Fatalf("%+v: round %d, %s: %v", q, round, row.Text(), err)
		}
		if at > 0 && m.StitchCount() != plan.Rounds[at-1].Instruction.EndStitches {
			t.Fatalf("%+v: %d stitches after round %d", q, m.StitchCount(), round)
		}
	}
	if at != len(plan.Rounds) || m.StitchCount() != plan.EndStitches {
		t.Fatalf("%+v: %d of %d rounds worked, %d stitches left, said %d", q, at, len(plan.Rounds), m.StitchCount(), plan.EndStitches)
	}
	if last := plan.Rounds[len(plan.Rounds)-1].RoundNumber; q.Pace.way != pacePlain && plan.RoundCount != last {
		t.Fatalf("%+v: %d rounds, the last decrease in round %d", q, plan.RoundCount, last)
	}
	// What is left is no more than asked, or no wedge can be narrowed.
	if plan.EndStitches > q.EndStitches && (!q.Paired || plan.EndStitches >= q.Wedges*(2*q.EdgeStitches+4)) {
		t.Fatalf("%+v: %d stitches left", q, plan.EndStitches)
	}
	sum := 0
	for _, n := range plan.WedgeStitches {
		sum += n
	}
	if adjusted := plan.Rounds[0].Adjusts; adjusted && sum%q.Wedges != 0 || !adjusted && sum != q.StartStitches {
		t.Fatalf("%+v: wedges of %v", q, plan.WedgeStitches)
	}
}

func TestClosingRefusals(t *testing.T) {
	for want, q := range map[string]Closing{
		"that can be decreased need at least 16": {StartStitches: 15, Wedges: 8, EndStitches: 1},
		"no more than may be left":               {StartStitches: 20, Wedges: 2, EndStitches: 20},
		"is out of range":                        {StartStitches: 20, EndStitches: 2},
		"takes more than 300 decrease rounds":    {StartStitches: 1000, Wedges: 2, EndStitches: 2},
	} {
		if _, got := q.Plan(); !strings.Contains(got, want) {
			t.Errorf("%+v: %q, want %q", q, got, want)
		}
	}
}
