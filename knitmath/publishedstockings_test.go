package knitmath_test

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/stitch"
)

// legShaped is a leg that is knit from one count to others by so many stitches a round, on every so many rounds: the counts that
// it comes to.
func legShaped(t *testing.T, each, every int, counts ...int) (came []int) {
	t.Helper()
	m := knittest.CastOn(t, counts[0], true)
	for _, to := range counts[1:] {
		from := m.StitchCount()
		times := max(to-from, from-to) / each
		in := shaping.TaperInput{StartStitches: from, EndStitches: to, HeightRows: new((times-1)*every + 1), Construction: stitch.InTheRound,
			EdgeChangeStitches: new(1), EvenBeforeRows: new(0), EvenAfterRows: new(0)}
		if each == 1 {
			in.Edges = shaping.ShapedEdgesEnd
		}
		out, err := shaping.PlanTaper(in)
		must(t, out, err)
		for i, next := 1, 0; i <= out.HeightRows; i++ {
			row := knittest.PlainRow(m)
			if next < len(out.Rows) && out.Rows[next].RowNumber == i {
				row, next = out.RightSideRow.Row, next+1
			}
			must(t, 0, m.Work(row))
		}
		came = append(came, m.StitchCount())
	}
	return came
}

// publishedStockings are legs and ankles.
var publishedStockings = map[string]printed{
	"ryder1_backneedle": {work: func(t *testing.T) string {
		// As a pattern would have it, the book's count at its end: our reader finds nothing wrong with it, and does with any other.
		less, more := "K2tog, k to end.\n", "K1, m1, k to end.\n"
		text := strings.Repeat(less, 2) + strings.Repeat(more, 6) + strings.Repeat(less, 8+16) + "K2tog, k to end (%d sts)."
		if out := checked(t, 31, fmt.Sprintf(text, 10), stitch.Flat); !out.Agrees {
			t.Errorf("%+v", out.Findings)
		}
		return strings.Fields(disagrees(t, 31, fmt.Sprintf(text, 11), stitch.Flat))[0]
	}},
	"ryder2_leg": {work: func(t *testing.T) string {
		came, back := legShaped(t, 1, 2, 77, 77+9, 77+9-30), legShaped(t, 1, 2, 28, 28+9)
		return fmt.Sprintf("%d;%d (back needle 28 to %d)", came[0], came[1], back[0])
	}},
	"wwi_rcs_ankle": {work: func(t *testing.T) string {
		return fmt.Sprintf("%d (%d)", legShaped(t, 2, 11, 64, 64-4*2)[0], legShaped(t, 2, 11, 60, 60-4*2)[0])
	}},
	"dillmont_roundtoe": {work: func(t *testing.T) string {
		const sections = 6 // own choice: the book has as many as divide the stitches
		toe := toe(t, sock.ToeInput{Kind: sock.ToeKindRound, RoundStitches: new(10 * sections), WedgeCount: new(sections),
			TipStitches: new(3 * sections)})
		counts, even := toeRounds(toe)
		all := 0
		for _, n := range even {
			all += n
		}
		return fmt.Sprintf("%d decrease rounds; plain rounds %s=%d; section 10 to %d", *toe.DecreaseRounds, joined(even, "+"), all,
			counts[len(counts)-1]/sections)
	}},
	"fil_roundtoe": {work: func(t *testing.T) string {
		counts, even := toeRounds(toe(t, sock.ToeInput{Kind: sock.ToeKindRound, RoundStitches: new(60), WedgeCount: new(10),
			MoreEvenRounds: new(1)}))
		return "60 " + joined(counts, " ") + "; plain " + joined(even, " ")
	}},
}

func toe(t *testing.T, in sock.ToeInput) sock.Toe {
	t.Helper()
	out, err := sock.PlanToe(in)
	return must(t, out, err)
}

// toeRounds are the counts after the decrease rounds of a toe, and the rounds even after each.
func toeRounds(out sock.Toe) (counts, even []int) {
	for _, r := range out.Rows {
		if r.Instruction.EndStitches != r.Instruction.StartStitches {
			counts, even = append(counts, r.Instruction.EndStitches), append(even, 0)
		} else if len(even) > 0 {
			even[len(even)-1]++
		}
	}
	return counts, even
}
